//! Rows that slide but are carried: the best over all base lines. On fixed lines the optimum is exact (`carry`).
//! Between lines at which a left end is whole pitches from a right end nothing changes. Ranges of base lines are
//! halved, the one with the largest bound first, until no bound exceeds what was found.

use super::carry::{Carried, Round};
use super::grid::{Band, Row, bands, intersect, widest};
use super::kernel::{Placed, Tile};
use super::room::{Room, THIN};
use super::row_lines::{Domain, greedy, inside, steps, whole_pitches};
use crate::Rect;
use glam::dvec2;
use std::collections::BinaryHeap;

/// How many steps of `carry` the first result may take: about a tenth of a second.
pub(super) const MOST_STEPS: usize = 30_000_000;

pub(super) struct Hooked {
    pub(super) placed: Vec<Placed>,
    pub(super) bound: usize,
    pub(super) cells: usize,
    pub(super) ruled_out: usize,
    pub(super) finished: bool,
}

/// What a bound considers: each row on its own, positions on positions, or runs on runs.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Stage {
    Rows,
    Positions,
    Runs,
}

/// A range of base lines of a band. Sorted by bound; of equal ones, the more advanced comes first.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Part {
    bound: usize,
    /// Where the bound comes from.
    stage: Stage,
    /// Whether the layout found on a line of it is optimal for that line.
    exact: bool,
    depth: usize,
    band: std::cmp::Reverse<usize>,
    /// Index of the range: the lines themselves are kept elsewhere, since they can't be sorted.
    range: usize,
}

/// Lays as many tiles as possible in rows that slide and are carried, in at most a number of steps. `tell` is called
/// for each better layout and each lower bound.
pub(super) fn hooked_sliding(
    room: &Room,
    tile: &Tile,
    domains: &[Domain],
    most_steps: usize,
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(&Hooked, usize),
) -> Hooked {
    let pitch = tile.pitch().to_array();
    let steps = steps(room, pitch[0]);
    let bands: Vec<(bool, Band<'_>)> = domains
        .iter()
        .flat_map(|domain| bands(room, pitch, &steps, domain).into_iter().map(|band| (domain.grounded, band)))
        .collect();
    let mut search = Search {
        room,
        tile,
        best: Hooked { placed: Vec::new(), bound: 0, cells: 0, ruled_out: 0, finished: true },
        steps: 0,
    };
    let mut ranges: Vec<(f64, f64)> = bands.iter().map(|(_, band)| (band.lo, band.hi)).collect();
    let mut open: BinaryHeap<Part> = bands
        .iter()
        .enumerate()
        .map(|(i, (_, band))| Part {
            bound: band.bound,
            stage: Stage::Rows,
            exact: false,
            depth: 0,
            band: std::cmp::Reverse(i),
            range: i,
        })
        .collect();
    // What is left open by cells that can't be halved any more, because remainders had to be merged.
    let mut left_open = 0;
    let mut told = (0, usize::MAX);
    while let Some(part) = open.pop() {
        let now = (search.best.placed.len(), part.bound.max(left_open));
        if now != told && now.0 > 0 {
            told = now;
            tell(&search.best, now.1);
        }
        if part.bound <= search.best.placed.len() {
            search.best.ruled_out += open.len() + 1;
            break;
        }
        if stop() || search.steps > most_steps {
            search.best.finished = false;
            left_open = left_open.max(part.bound);
            break;
        }
        let (Some((grounded, band)), Some(&(lo, hi))) = (bands.get(part.band.0), ranges.get(part.range))
        else {
            continue;
        };
        let (low, high) = (rows(band, lo, pitch[1]), rows(band, hi, pitch[1]));
        let most = search.best.placed.len();
        let mut next = Part { stage: Stage::Runs, ..part };
        match part.stage {
            Stage::Rows => {
                next.bound = search.loose(&widest(&low, &high), *grounded).min(part.bound);
                next.stage = Stage::Positions;
            }
            Stage::Positions => {
                next.exact = search.look(band, *grounded, lo, hi);
                if part.bound > search.best.placed.len() {
                    next.bound = search.tight(&widest(&low, &high), *grounded).min(part.bound);
                }
            }
            Stage::Runs => {}
        }
        if part.stage != Stage::Runs {
            if next.bound > most.max(search.best.placed.len()) {
                open.push(next);
            } else {
                search.best.ruled_out += 1;
            }
            continue;
        }
        match halves(&low, &high, pitch[0], lo, hi) {
            Some(middle) => {
                for half in [(lo, middle), (middle, hi)] {
                    open.push(Part {
                        bound: part.bound,
                        stage: Stage::Rows,
                        exact: false,
                        depth: part.depth + 1,
                        band: part.band,
                        range: ranges.len(),
                    });
                    ranges.push(half);
                }
            }
            None if part.exact => {}
            None => left_open = left_open.max(part.bound),
        }
    }
    let mut best = search.best;
    best.bound = left_open.max(best.placed.len());
    best
}

fn rows(band: &Band<'_>, v: f64, pitch: f64) -> Vec<Row> {
    band.rows.iter().map(|&(k, slab)| Row::of(k, slab, v + k as f64 * pitch, 0.0)).collect()
}

/// The middle one of the lines between `lo` and `hi` at which a left end and a right end of any rows are whole pitches
/// apart; `None` if there is none.
fn halves(low: &[Row], high: &[Row], pitch: f64, lo: f64, hi: f64) -> Option<f64> {
    let ends = |of: fn(&(f64, f64)) -> f64| -> Vec<[f64; 2]> {
        let pairs = low.iter().zip(high).flat_map(|(p, q)| p.all().zip(q.all()));
        pairs.map(|(p, q)| [of(p), of(q)]).collect()
    };
    let mut cuts = Vec::new();
    let rights = ends(|p| p.1);
    for left in ends(|p| p.0) {
        for &right in &rights {
            whole_pitches(left, right, pitch, &mut cuts);
        }
    }
    cuts.retain(|cut| cut * (hi - lo) > THIN && (1.0 - cut) * (hi - lo) > THIN);
    let middle = cuts.len() / 2;
    if cuts.is_empty() {
        return None;
    }
    let (_, cut, _) = cuts.select_nth_unstable_by(middle, f64::total_cmp);
    Some(lo + (hi - lo) * *cut)
}

struct Search<'a> {
    room: &'a Room,
    tile: &'a Tile,
    best: Hooked,
    steps: usize,
}

impl Search<'_> {
    /// A quick upper bound on layouts in these rows, by positions. The higher the base, the less there is to hold, so
    /// most bases are ruled out by the counts of the rows on their own.
    fn loose(&self, rows: &[Row], grounded: bool) -> usize {
        let pitch = self.tile.pitch().x;
        let alone: Vec<usize> =
            rows.iter().map(|row| greedy(row.free.iter().copied(), pitch, |_, _| {})).collect();
        let mut from_here: usize = alone.iter().sum();
        let mut most = 0;
        for (i, (row, alone)) in rows.iter().zip(&alone).enumerate() {
            if from_here <= most.max(self.best.placed.len()) {
                return most.max(from_here);
            }
            if !grounded || row.k == 0 {
                most = most.max(by_positions(&rows[i..], pitch));
            }
            from_here -= alone;
        }
        most
    }

    /// An upper bound on layouts in these rows, by runs.
    fn tight(&mut self, rows: &[Row], grounded: bool) -> usize {
        let carried = Carried::new(rows, self.tile.pitch().x, Round::Bound, grounded);
        self.steps += carried.steps;
        carried.count()
    }

    /// Tries the lines at the lower end of a range. Returns whether the result is exact for that line.
    fn look(&mut self, band: &Band<'_>, grounded: bool, lo: f64, hi: f64) -> bool {
        self.best.cells += 1;
        let (tile, pitch) = (self.tile, self.tile.pitch());
        let v = inside(lo, hi, self.room.tolerance);
        let rows = rows(band, v, pitch.y);
        let carried = Carried::new(&rows, pitch.x, Round::Lay, grounded);
        self.steps += carried.steps;
        if carried.count() > self.best.placed.len() {
            let tiles = carried.tiles();
            // All are shifted together, so that none uses the tolerance unnecessarily.
            let base = tiles.iter().map(|tile| tile.0).min();
            let free = |row: usize| {
                let there = rows.iter().filter(move |r| r.k == row);
                there.flat_map(move |r| if Some(row) == base { r.lowest() } else { &r.free })
            };
            let slack = |&(row, u): &(usize, f64)| {
                let left = free(row).map(|&(_, b)| b - u).find(|&left| left >= -THIN * 10.0);
                // A module is in a free interval of its row.
                debug_assert!(left.is_some());
                left.unwrap_or(0.0)
            };
            let slack = tiles.iter().map(slack).fold(f64::INFINITY, f64::min);
            let nudge = self.room.tolerance.min(slack.max(0.0) / 2.0);
            let mut column = 0;
            let mut last = None;
            self.best.placed.clear();
            for (row, u) in tiles {
                column = if last == Some(row) { column + 1 } else { 0 };
                last = Some(row);
                let rect = Rect::at(dvec2(u + nudge, v + row as f64 * pitch.y), tile.size);
                self.best.placed.push(Placed { row, column, rect });
            }
        }
        carried.exact
    }
}

/// A quick bound: every row may be carried by any *position* that the rows below leave open.
fn by_positions(rows: &[Row], pitch: f64) -> usize {
    let mut below: Option<(usize, Vec<(f64, f64)>)> = None;
    let mut sum = 0;
    for row in rows {
        let (k, widest) = (&row.k, &row.free);
        let here = match &below {
            None => row.lowest().to_vec(),
            Some((row, _)) if row + 1 != *k => break,
            Some((_, below)) => {
                // Two tiles a pitch apart carry one between them.
                let mut bridged: Vec<(f64, f64)> = Vec::new();
                for &(a, b) in below {
                    match bridged.last_mut() {
                        Some(last) if a - last.1 <= pitch => last.1 = b,
                        _ => bridged.push((a, b)),
                    }
                }
                intersect(widest, &bridged)
            }
        };
        let count = greedy(here.iter().copied(), pitch, |_, _| {});
        if count == 0 {
            break;
        }
        sum += count;
        below = Some((*k, here));
    }
    sum
}

#[cfg(test)]
mod tests;
