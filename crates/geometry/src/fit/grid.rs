//! One grid: the free intervals of all rows, folded onto one pitch along u; the offset that most intervals cover is the
//! best. The ends of the folded intervals are linear in v, so the best offset changes only where ends meet.

use super::kernel::{Placed, Tile};
use super::room::{Room, Slab, THIN};
use super::row_lines::{Domain, Step, inside, lines, renumber, steps, whole_pitches};
use crate::Rect;
use glam::dvec2;

/// A grid: u offset of row 0, v of row 0, and the row that it starts from.
#[derive(Clone, Copy, Debug)]
pub(super) struct At {
    pub(super) u: f64,
    pub(super) v: f64,
    pub(super) base: usize,
}

pub(super) struct Best {
    pub(super) at: Option<At>,
    pub(super) bound: usize,
    pub(super) cells: usize,
    pub(super) ruled_out: usize,
    pub(super) finished: bool,
}

/// A band of base lines in which every row stays within one slab.
pub(super) struct Band<'a> {
    pub(super) lo: f64,
    pub(super) hi: f64,
    pub(super) rows: Vec<(usize, &'a Slab)>,
    /// Upper bound on the count of any grid in the band.
    pub(super) bound: usize,
}

/// Free intervals, from the left.
pub(super) type Stretches = Vec<(f64, f64)>;

/// The intervals of one row at some base line, shifted back to the columns of row 0.
#[derive(Clone, Debug)]
pub(super) struct Row {
    /// The number of the row.
    pub(super) k: usize,
    /// Where its tiles may be.
    pub(super) free: Stretches,
    /// Where they may be if it is the lowest row, if that is less.
    pub(super) foot: Option<Stretches>,
}

impl Row {
    /// The row on a line of a slab, shifted to the left by `aside`.
    pub(super) fn of(k: usize, slab: &Slab, line: f64, aside: f64) -> Self {
        let shifted = |(a, b): (f64, f64)| (a - aside, b - aside);
        let foot = slab.foot.as_ref().map(|_| slab.foot_at(line).map(shifted).collect());
        Self { k, free: slab.at(line).map(shifted).collect(), foot }
    }

    /// Where its tiles may be if it is the lowest row.
    pub(super) fn lowest(&self) -> &[(f64, f64)] {
        self.foot.as_ref().unwrap_or(&self.free)
    }

    /// All its intervals, including those as the lowest row.
    pub(super) fn all(&self) -> impl Iterator<Item = &(f64, f64)> {
        self.free.iter().chain(self.foot.iter().flatten())
    }

    /// For the same row at two lines: each interval as wide as on either.
    fn wider(&self, other: &Self) -> Self {
        let wider = |p: &Stretches, q: &Stretches| {
            p.iter().zip(q).map(|(p, q)| (p.0.min(q.0), p.1.max(q.1))).collect()
        };
        let foot = self.foot.as_ref().zip(other.foot.as_ref()).map(|(p, q)| wider(p, q));
        Self { k: self.k, free: wider(&self.free, &other.free), foot }
    }
}

/// The grid with most tiles. `shift` is the fraction of a pitch by which every other row is offset.
pub(super) fn lattice(
    room: &Room,
    pitch: [f64; 2],
    shift: f64,
    hooked: bool,
    domains: &[Domain],
    stop: &dyn Fn() -> bool,
) -> Best {
    let mut search = Search {
        pitch,
        shift: shift * pitch[0],
        hooked,
        tolerance: room.tolerance,
        grounded: false,
        best: Best { at: None, bound: 0, cells: 0, ruled_out: 0, finished: true },
        folds: Vec::new(),
        stop,
    };
    let mut bands: Vec<(bool, Band<'_>)> = Vec::new();
    let steps = steps(room, pitch[0]);
    for domain in domains {
        bands
            .extend(self::bands(room, pitch, &steps, domain).into_iter().map(|band| (domain.grounded, band)));
    }
    bands.sort_by_key(|band| std::cmp::Reverse(band.1.bound));
    for (i, (grounded, band)) in bands.iter().enumerate() {
        if band.bound <= search.best.bound {
            search.best.ruled_out += bands.len() - i;
            break;
        }
        search.grounded = *grounded;
        if !search.part(band, band.lo, band.hi) {
            search.best.finished = false;
            search.best.bound = band.bound;
            return search.best;
        }
    }
    search.best
}

pub(super) fn bands<'a>(room: &'a Room, pitch: [f64; 2], steps: &[Step], domain: &Domain) -> Vec<Band<'a>> {
    let mut levels = vec![domain.lo, domain.hi];
    for v in room.slabs.iter().flat_map(|s| [s.lo, s.hi]) {
        let mut k = ((v - domain.hi) / pitch[1]).ceil().max(0.0);
        while v - k * pitch[1] > domain.lo {
            levels.push((v - k * pitch[1]).min(domain.hi));
            k += 1.0;
        }
    }
    levels.sort_unstable_by(f64::total_cmp);
    let mut bands = Vec::new();
    for pair in levels.windows(2).filter(|p| p[1] - p[0] > THIN) {
        let (lo, hi) = (pair[0], pair[1]);
        let (mut rows, mut bound) = (Vec::new(), 0);
        for (k, line) in lines(room, pitch[1], (lo + hi) / 2.0) {
            if let Some(slab) = room.slab(line) {
                rows.push((k, slab));
                let (from, to) = (lo + k as f64 * pitch[1], hi + k as f64 * pitch[1]);
                let first = steps.partition_point(|s| s.hi <= from);
                bound += steps[first..].iter().take_while(|s| s.lo < to).map(|s| s.count).max().unwrap_or(0);
            }
        }
        bands.push(Band { lo, hi, rows, bound });
    }
    bands
}

struct Search<'a> {
    pitch: [f64; 2],
    shift: f64,
    hooked: bool,
    tolerance: f64,
    grounded: bool,
    best: Best,
    folds: Vec<(f64, i64)>,
    stop: &'a dyn Fn() -> bool,
}

impl Search<'_> {
    /// Searches base lines from `lo` to `hi` of a band; false if stopped.
    fn part(&mut self, band: &Band<'_>, lo: f64, hi: f64) -> bool {
        if (self.stop)() {
            return false;
        }
        // Every interval as wide as anywhere in this part: no grid here has more than fit those.
        let (low, high) = (self.rows(band, lo), self.rows(band, hi));
        if self.deepest(&widest(&low, &high)).0 <= self.best.bound {
            self.best.ruled_out += 1;
            return true;
        }
        let cuts = meetings(&low, &high, self.pitch[0]);
        if cuts.len() > 18 {
            let middle = lo + (hi - lo) * cuts[cuts.len() / 2];
            if middle - lo > THIN && hi - middle > THIN {
                self.look(band, lo, hi);
                return self.part(band, lo, middle) && self.part(band, middle, hi);
            }
        }
        for cut in cuts.windows(2).filter(|c| (c[1] - c[0]) * (hi - lo) > THIN) {
            self.look(band, lo + (hi - lo) * cut[0], lo + (hi - lo) * cut[1]);
        }
        true
    }

    /// Tries one cell of base lines.
    fn look(&mut self, band: &Band<'_>, lo: f64, hi: f64) {
        self.best.cells += 1;
        let v = inside(lo, hi, self.tolerance);
        let rows = self.rows(band, v);
        let (count, u, base) = self.deepest(&rows);
        if count > self.best.bound {
            self.best.bound = count;
            self.best.at = Some(At { u, v, base });
        }
    }

    fn rows(&self, band: &Band<'_>, v: f64) -> Vec<Row> {
        band.rows
            .iter()
            .map(|&(k, slab)| {
                let aside = if k % 2 == 1 { self.shift } else { 0.0 };
                Row::of(k, slab, v + k as f64 * self.pitch[1], aside)
            })
            .collect()
    }

    /// The most tiles of one grid in these rows, its u, and its lowest row.
    fn deepest(&mut self, rows: &[Row]) -> (usize, f64, usize) {
        let (pitch, grounded, tolerance) = (self.pitch[0], self.grounded, self.tolerance);
        if self.hooked {
            let beat = self.best.bound;
            return deepest_carried(rows, pitch, self.shift, grounded, tolerance, beat, &mut self.folds);
        }
        let all = rows.iter().flat_map(|row| row.free.iter().map(|&gap| (row.k == 0, gap)));
        let (count, u) = deepest(all, pitch, grounded, tolerance, &mut self.folds);
        (count, u, 0)
    }
}

/// Every interval as wide as it gets between two base lines.
pub(super) fn widest(low: &[Row], high: &[Row]) -> Vec<Row> {
    low.iter().zip(high).map(|(low, high)| low.wider(high)).collect()
}

/// Fractions of the way between two base lines at which a left end meets a right end, whole pitches apart; sorted, with
/// 0 and 1.
pub(super) fn meetings(low: &[Row], high: &[Row], pitch: f64) -> Vec<f64> {
    let ends = |of: fn(&(f64, f64)) -> f64| -> Vec<[f64; 2]> {
        low.iter()
            .zip(high)
            .flat_map(|(p, q)| p.all().zip(q.all()).map(move |(p, q)| [of(p), of(q)]))
            .collect()
    };
    let (lefts, rights) = (ends(|p| p.0), ends(|p| p.1));
    let mut cuts = vec![0.0, 1.0];
    for &left in &lefts {
        for &right in &rights {
            whole_pitches(left, right, pitch, &mut cuts);
        }
    }
    cuts.sort_unstable_by(f64::total_cmp);
    cuts.dedup();
    cuts
}

/// The most tiles of one grid in these rows if every tile above the lowest row is carried, its u, and its lowest row;
/// nothing if that is no more than `beat`.
pub(super) fn deepest_carried(
    rows: &[Row],
    pitch: f64,
    shift: f64,
    grounded: bool,
    tolerance: f64,
    beat: usize,
    folds: &mut Vec<(f64, i64)>,
) -> (usize, f64, usize) {
    let mut best = (0, 0.0, 0);
    let bases = if grounded { 1 } else { rows.len() };
    // The count of each row on its own: no more of it can be carried.
    let most = |row: &[(f64, f64)]| row.iter().map(|(a, b)| ((b - a) / pitch) as usize + 1).sum::<usize>();
    let alone: Vec<usize> = rows.iter().map(|row| most(&row.free)).collect();
    let mut above: usize = alone.iter().sum();
    for (i, base) in rows.iter().map(|row| row.k).enumerate().take(bases) {
        if (grounded && base != 0) || above <= best.0.max(beat) {
            break;
        }
        // Count carried rows so far, and all others as if nothing had to carry them; give up if that is too few.
        let (mut hope, mut others) = (above, alone[i..].iter());
        let enough = |row: &[(f64, f64)]| {
            // An interval that is cut in two may seem to hold more than before: then ignore the gain.
            hope -= others.next().map_or(0, |alone| alone.saturating_sub(most(row)));
            hope > best.0.max(beat)
        };
        above -= alone[i];
        let Some(carried) = carried(&rows[i..], shift, enough) else { continue };
        let all = carried.iter().flat_map(|(k, row)| row.iter().map(move |&gap| (*k == base, gap)));
        let (count, u) = deepest(all, pitch, grounded, tolerance, folds);
        if count > best.0.max(beat) {
            best = (count, u, base);
        }
    }
    best
}

/// What is left of each row if every tile above the first row must be on tiles of the row below: directly on one or, if
/// lapped, on two that are half a pitch aside. `None` as soon as what is left of a row is not `enough` to go on.
fn carried(
    rows: &[Row],
    shift: f64,
    mut enough: impl FnMut(&[(f64, f64)]) -> bool,
) -> Option<Vec<(usize, Stretches)>> {
    let mut result: Vec<(usize, Stretches)> = Vec::new();
    for Row { k, free: row, .. } in rows {
        let next = match result.last() {
            None => rows.first().map_or_else(Vec::new, |row| row.lowest().to_vec()),
            Some((below, _)) if below + 1 != *k => break,
            Some((_, below)) if shift == 0.0 => intersect(row, below),
            Some((_, below)) => {
                // Columns count from row 0's offset: a tile of an odd row at x is at x + shift, on x and x + 2 shift
                // below; a tile of an even row at x is on x - 2 shift and x.
                let aside = if k % 2 == 1 { -2.0 * shift } else { 2.0 * shift };
                let moved: Vec<_> = below.iter().map(|&(a, b)| (a + aside, b + aside)).collect();
                intersect(&intersect(row, below), &moved)
            }
        };
        if !enough(&next) {
            return None;
        }
        if next.is_empty() {
            break;
        }
        result.push((*k, next));
    }
    Some(result)
}

/// The intersection of two sorted lists of intervals.
pub(super) fn intersect(p: &[(f64, f64)], q: &[(f64, f64)]) -> Stretches {
    let (mut i, mut j) = (0, 0);
    let mut shared = Vec::with_capacity(p.len().max(q.len()));
    while let (Some(a), Some(b)) = (p.get(i), q.get(j)) {
        let (from, to) = (a.0.max(b.0), a.1.min(b.1));
        if to - from > THIN {
            shared.push((from, to));
        }
        if a.1 < b.1 { i += 1 } else { j += 1 }
    }
    shared
}

/// The offset that most intervals contain, each counted as often as whole pitches fit into it. `grounded` requires at
/// least one of those marked.
pub(super) fn deepest(
    gaps: impl Iterator<Item = (bool, (f64, f64))>,
    pitch: f64,
    grounded: bool,
    tolerance: f64,
    folds: &mut Vec<(f64, i64)>,
) -> (usize, f64) {
    // Marked intervals add one in a second digit, so that one sweep maintains both sums.
    const MARK: i64 = 1 << 32;
    folds.clear();
    let mut sum = 0;
    for (marked, (a, b)) in gaps {
        if b - a <= THIN {
            continue;
        }
        let one = if marked { 1 + MARK } else { 1 };
        let whole = ((b - a) / pitch) as i64;
        sum += one * whole;
        let from = a - (a / pitch).floor() * pitch;
        let to = from + (b - a - whole as f64 * pitch);
        folds.extend([(from, one), (if to > pitch { to - pitch } else { to }, -one)]);
        if to > pitch {
            sum += one;
        }
    }
    folds.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
    let (mut best, mut at) = (0, 0.0);
    let mut last = 0.0;
    for &(u, change) in folds.iter().chain([&(pitch, 0)]) {
        let count = sum % MARK;
        if u - last > THIN && count > best && (!grounded || sum >= MARK) {
            (best, at) = (count, inside(last, u, tolerance));
        }
        (sum, last) = (sum + change, u);
    }
    (best as usize, at)
}

/// The tiles of the grid `at`.
pub(super) fn lay(room: &Room, tile: &Tile, shift: f64, hooked: bool, at: At) -> Vec<Placed> {
    let pitch = tile.pitch();
    let mut placed: Vec<Placed> = Vec::new();
    let mut below: Option<Vec<i64>> = None;
    for (row, v) in lines(room, pitch.y, at.v).filter(|&(row, _)| !hooked || row >= at.base) {
        let aside = if row % 2 == 1 { shift * pitch.x } else { 0.0 };
        let mut columns = Vec::new();
        let there = room.slab(v).map(|slab| Row::of(row, slab, v, 0.0));
        let lowest = hooked && row == at.base;
        for &(a, b) in there.iter().flat_map(|row| if lowest { row.lowest() } else { &row.free }) {
            let mut n = ((a - at.u - aside) / pitch.x).ceil();
            while at.u + aside + n * pitch.x <= b {
                columns.push(n as i64);
                n += 1.0;
            }
        }
        if let Some(below) = below.as_ref().filter(|_| hooked) {
            let other = if shift == 0.0 {
                0
            } else if row % 2 == 1 {
                1
            } else {
                -1
            };
            columns.retain(|n| below.binary_search(n).is_ok() && below.binary_search(&(n + other)).is_ok());
        }
        for &n in &columns {
            let u = at.u + aside + n as f64 * pitch.x;
            placed.push(Placed { row, column: n as usize, rect: Rect::at(dvec2(u, v), tile.size) });
        }
        below = Some(columns);
    }
    // Count columns from the leftmost one.
    let least = placed.iter().map(|p| p.rect.min.x).fold(f64::INFINITY, f64::min);
    for p in &mut placed {
        p.column = ((p.rect.min.x - least) / pitch.x + 1e-6).floor() as usize;
    }
    renumber(&mut placed);
    placed
}
