//! One grid in which every tile is on another tile or on one base line, chosen by cost: stacks next to each other.
//!
//! If every upper tile is carried straight from below, a choice of places is one height per column. The cost of a
//! layout is then a sum over neighbouring columns (their sides, the corners where they step, their lower and upper
//! ends), so the best heights for given places follow from one pass over the columns, exactly and with corners. As
//! offsets vary, the set of places changes only where ends meet. Sets of places that were seen before are skipped, and
//! so are those where no layout with that many tiles could be better.

mod sweep;

use super::grid::{self, At, Band, Row, Stretches};
use super::kernel::{Allowed, Base, FitError, Placed, Tile};
use super::room::{Room, THIN};
use super::row_lines::{domains, inside, steps};
use chalkcourse_words::later as words;
use serde::{Deserialize, Serialize};
use std::collections::HashSet;
use sweep::Sweep;

/// The costs of the outline of stacks; none is negative.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct StackCosts {
    /// A tile's lower side on the base line.
    pub foot: f64,
    /// An upper side without a tile above it.
    pub head: f64,
    /// A left or right side without a neighbour.
    pub side: f64,
    /// A corner at the base line.
    pub foot_corner: f64,
    /// An outer corner at a head.
    pub head_corner: f64,
    /// A corner where a head meets the side of a higher stack.
    pub inside_corner: f64,
}

impl StackCosts {
    /// The perimeter of tiles, for compactness.
    pub fn length_around(tile: &Tile) -> Self {
        Self { foot: tile.size.x, head: tile.size.x, side: tile.size.y, ..Self::default() }
    }

    fn check(&self) -> Result<(), FitError> {
        for (name, cost) in [
            (words::fill::FOOT, self.foot),
            (words::fill::HEAD, self.head),
            (words::common::SIDE, self.side),
            (words::fill::CORNER_AT_THE_FOOT, self.foot_corner),
            (words::fill::CORNER_AT_THE_HEAD, self.head_corner),
            (words::common::INSIDE_CORNER, self.inside_corner),
        ] {
            if !(0.0..1e12).contains(&cost) {
                return Err(FitError::Choice(words::fill::the_cost_of_a_is(&name, &cost)));
            }
        }
        Ok(())
    }

    /// The cost of stepping from one height to the next.
    fn step(&self, from: usize, to: usize) -> f64 {
        let sides = self.side * from.abs_diff(to) as f64;
        match (from, to) {
            _ if from == to => 0.0,
            (0, _) | (_, 0) => sides + self.foot_corner + self.head_corner,
            _ => sides + self.head_corner + self.inside_corner,
        }
    }

    /// The minimum cost of `tiles` in any layout of at most this many columns and rows; infinite if they don't fit.
    fn least(&self, tiles: usize, columns: usize, rows: usize) -> f64 {
        if tiles == 0 {
            return 0.0;
        }
        (1..=columns.min(tiles))
            .map(|wide| (wide, tiles.div_ceil(wide)))
            .filter(|&(_, high)| high <= rows)
            .map(|(wide, high)| (self.foot + self.head) * wide as f64 + 2.0 * self.step(0, high))
            .fold(f64::INFINITY, f64::min)
    }
}

/// What to search for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Want {
    /// The greatest worth, if a tile is worth this much.
    Worth(f64),
    /// The minimum cost for each number of tiles from one to another.
    Numbers(usize, usize),
}

/// The stacks that were found, and what is proved.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Stacks {
    /// The tiles, by rows from below and from the left.
    pub placed: Vec<Placed>,
    /// The cost of their outline.
    pub cost: f64,
    /// Lower bound in the space that was searched. For a number of tiles: on the cost of any layout with exactly that
    /// many. For the greatest worth: this layout's value minus the worth of any.
    pub least: f64,
}

impl Stacks {
    /// Whether nothing better exists in the space that was searched (except for rounding).
    pub fn proved(&self) -> bool {
        self.cost - self.least <= 1e-7 * (1.0 + self.cost.abs())
    }
}

/// Everything that a search for stacks found.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StacksFound {
    /// By number of tiles, increasing; for the greatest worth a single entry, which may be without tiles.
    pub found: Vec<Stacks>,
    /// Upper bound on the tiles of any layout in the space that was searched. If the numbers searched for were lower
    /// than this, more may fit than was searched for. If they were higher and the search finished, exactly this many
    /// fit.
    pub most: usize,
    /// Different sets of places that were evaluated.
    pub sets: usize,
    /// Ranges of offsets that a bound ruled out.
    pub ruled_out: usize,
    /// Whether the search finished.
    pub finished: bool,
}

/// The best stacks on one grid at every offset: by worth, or for each of several numbers of tiles.
///
/// `stop` is called often; once it returns true, the result is the best so far with the remaining bound.
///
/// # Errors
/// An invalid tile, tolerance or corner; invalid courses; negative costs.
pub fn fit_stacks(
    allowed: &Allowed,
    tile: &Tile,
    base: Base,
    costs: &StackCosts,
    want: Want,
    stop: &dyn Fn() -> bool,
) -> Result<StacksFound, FitError> {
    costs.check()?;
    if let Want::Worth(value) = want
        && !(-1e12..1e12).contains(&value)
    {
        return Err(FitError::Choice(words::fill::a_tile_is_worth_give(&value)));
    }
    let room = Room::new(allowed, tile)?;
    let pitch = tile.pitch().to_array();
    let steps = steps(&room, pitch[0]);
    let mut bands: Vec<(bool, Band<'_>)> = Vec::new();
    for domain in domains(&room, tile, base)? {
        let of_domain = grid::bands(&room, pitch, &steps, &domain);
        bands.extend(of_domain.into_iter().map(|band| (domain.grounded, band)));
    }
    bands.sort_by_key(|band| std::cmp::Reverse(band.1.bound));
    let most = bands.first().map_or(0, |band| band.1.bound);
    let mut search = Search::new(&room, pitch, costs, want, most, stop);
    for (i, (grounded, band)) in bands.iter().enumerate() {
        if !search.hopes(band.bound) {
            search.rule_out(bands.len() - i, band.bound);
            break;
        }
        search.grounded = *grounded;
        if !search.part(band, band.lo, band.hi) {
            search.left_open = band.bound;
            break;
        }
    }
    Ok(search.answer(tile))
}

/// Ranges of columns, from the left.
type Places = Vec<(i64, i64)>;

/// Where the best was found.
#[derive(Clone)]
struct Found {
    gain: f64,
    at: At,
    /// The column of the first height, in pitches from `at.u`.
    first: i64,
    heights: Vec<usize>,
}

struct Search<'a> {
    pitch: [f64; 2],
    tolerance: f64,
    costs: &'a StackCosts,
    want: Want,
    /// The minimum cost of 0, 1, 2 … tiles on any face of this width and height.
    least: Vec<f64>,
    /// For each number of tiles, the greatest worth of at most that many on any such face.
    promise: Vec<f64>,
    /// By number; for the greatest worth a single entry.
    best: Vec<Option<Found>>,
    /// Numbers that could still get cheaper: the lowest of them.
    open: usize,
    seen: HashSet<(bool, Vec<usize>)>,
    grounded: bool,
    capacity: usize,
    ruled_out: usize,
    /// Upper bound on the tiles in what was ruled out.
    passed: usize,
    /// Upper bound on the tiles in what was not searched.
    left_open: usize,
    folds: Vec<(f64, i64)>,
    stop: &'a dyn Fn() -> bool,
}

impl<'a> Search<'a> {
    fn new(
        room: &Room,
        pitch: [f64; 2],
        costs: &'a StackCosts,
        want: Want,
        most: usize,
        stop: &'a dyn Fn() -> bool,
    ) -> Self {
        let high = room.span().map_or(0.0, |(lo, hi)| hi - lo);
        let ends = || room.slabs.iter().flat_map(|slab| &slab.gaps);
        let left = ends().flat_map(|gap| gap.a).fold(f64::INFINITY, f64::min);
        let right = ends().flat_map(|gap| gap.b).fold(f64::NEG_INFINITY, f64::max);
        let whole = |length: f64, pitch: f64| {
            if length >= 0.0 { (length / pitch + 1e-9).floor() as usize + 1 } else { 0 }
        };
        let (columns, rows) = (whole(right - left, pitch[0]), whole(high, pitch[1]));
        let least: Vec<f64> = (0..=most).map(|tiles| costs.least(tiles, columns, rows)).collect();
        let mut promise = Vec::new();
        if let Want::Worth(value) = want {
            let mut top = 0.0_f64;
            for (tiles, cost) in least.iter().enumerate() {
                top = top.max(value * tiles as f64 - cost);
                promise.push(top);
            }
        }
        let kept = match want {
            Want::Worth(_) => 1,
            Want::Numbers(_, to) => to.min(most) + 1,
        };
        let mut search = Self {
            pitch,
            tolerance: room.tolerance,
            costs,
            want,
            least,
            promise,
            best: vec![None; kept],
            open: 0,
            seen: HashSet::new(),
            grounded: false,
            capacity: 0,
            ruled_out: 0,
            passed: 0,
            left_open: 0,
            folds: Vec::new(),
            stop,
        };
        search.mark_open();
        search
    }

    fn mark_open(&mut self) {
        let Want::Numbers(from, to) = self.want else { return };
        let better = |&n: &usize| {
            let least = self.least.get(n).copied().unwrap_or(f64::INFINITY);
            let got = self.best.get(n).and_then(Option::as_ref).map_or(f64::INFINITY, |found| -found.gain);
            least.is_finite() && got > least + 1e-9 * (1.0 + least)
        };
        self.open =
            (from.max(1)..=to.min(self.best.len().saturating_sub(1))).find(better).unwrap_or(usize::MAX);
    }

    /// Whether places that hold at most this many tiles could improve on what was found; for a number of tiles also
    /// whether more fit, as long as there were too few.
    fn hopes(&self, tiles: usize) -> bool {
        match self.want {
            Want::Worth(_) => {
                let promise = self.promise.get(tiles).or(self.promise.last()).copied().unwrap_or(0.0);
                let got = self.best.first().and_then(Option::as_ref).map_or(0.0, |found| found.gain);
                promise > got + 1e-9 * (1.0 + got.abs())
            }
            Want::Numbers(_, to) => tiles >= self.open || (tiles > self.capacity && self.capacity < to),
        }
    }

    fn rule_out(&mut self, ranges: usize, tiles: usize) {
        self.ruled_out += ranges;
        self.passed = self.passed.max(tiles);
    }

    /// Searches base lines from `lo` to `hi` of a band; false if stopped.
    fn part(&mut self, band: &Band<'_>, lo: f64, hi: f64) -> bool {
        if (self.stop)() {
            return false;
        }
        let (low, high) = (rows(band, lo, self.pitch[1]), rows(band, hi, self.pitch[1]));
        let widest = grid::widest(&low, &high);
        let most = grid::deepest_carried(
            &widest,
            self.pitch[0],
            0.0,
            self.grounded,
            self.tolerance,
            0,
            &mut self.folds,
        );
        if !self.hopes(most.0) {
            self.rule_out(1, most.0);
            return true;
        }
        let cuts = grid::meetings(&low, &high, self.pitch[0]);
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

    /// Tries one cell of base lines at every offset along u.
    fn look(&mut self, band: &Band<'_>, lo: f64, hi: f64) {
        let v = inside(lo, hi, self.tolerance);
        let rows = rows(band, v, self.pitch[1]);
        let pitch = self.pitch[0];
        let mut ends: Vec<f64> = rows
            .iter()
            .flat_map(|row| row.all().flat_map(|&(a, b)| [a, b]))
            .map(|end| end.rem_euclid(pitch))
            .chain([0.0, pitch])
            .collect();
        ends.sort_unstable_by(f64::total_cmp);
        for pair in ends.windows(2).filter(|pair| pair[1] - pair[0] > THIN) {
            self.stand(&rows, inside(pair[0], pair[1], self.tolerance), v);
        }
    }

    /// Evaluates the places of one grid, from each base row.
    fn stand(&mut self, rows: &[Row], u: f64, v: f64) {
        let pitch = self.pitch[0];
        let columns = |&(a, b): &(f64, f64)| {
            let (from, to) = (((a - u) / pitch).ceil() as i64, ((b - u) / pitch).floor() as i64);
            (from <= to).then_some((from, to))
        };
        let places = |gaps: &Stretches| -> Places { gaps.iter().filter_map(columns).collect() };
        let held: Vec<(usize, Places, Option<Places>)> =
            rows.iter().map(|row| (row.k, places(&row.free), row.foot.as_ref().map(places))).collect();
        let all: usize = held.iter().flat_map(|row| &row.1).map(|(a, b)| (b - a + 1) as usize).sum();
        if !self.hopes(all) {
            self.passed = self.passed.max(all);
            return;
        }
        let spans = || held.iter().flat_map(|row| row.1.iter());
        let (Some(first), Some(last)) = (spans().map(|s| s.0).min(), spans().map(|s| s.1).max()) else {
            return;
        };
        let mut heights = vec![0_usize; (last - first + 1) as usize];
        let mut above: Option<usize> = None;
        // From the highest row down: how many places are stacked from this row up.
        for (k, row, lowest) in held.iter().rev() {
            let on = above == Some(k + 1);
            let mut from = first;
            for &(a, b) in row.iter().chain([&(last + 1, last)]) {
                for place in heights.iter_mut().take((a - first) as usize).skip((from - first) as usize) {
                    *place = 0;
                }
                for place in
                    heights.iter_mut().take((b + 1 - first).max(0) as usize).skip((a - first) as usize)
                {
                    *place = if on { *place + 1 } else { 1 };
                }
                from = from.max(b + 1);
            }
            above = Some(*k);
            if self.grounded && *k != 0 {
                continue;
            }
            let at = At { u, v, base: *k };
            match lowest {
                None => self.weigh(&heights, at, first),
                Some(lowest) => {
                    let stands = |column: i64| lowest.iter().any(|&(a, b)| a <= column && column <= b);
                    let on = (first..).zip(&heights).map(|(column, &h)| if stands(column) { h } else { 0 });
                    self.weigh(&on.collect::<Vec<_>>(), at, first);
                }
            }
        }
    }

    /// Finds the best heights within those of the places.
    fn weigh(&mut self, heights: &[usize], at: At, first: i64) {
        let tiles: usize = heights.iter().sum();
        self.capacity = self.capacity.max(tiles);
        if tiles == 0 || !self.hopes(tiles) {
            return;
        }
        let from = heights.iter().take_while(|&&h| h == 0).count();
        let to = heights.iter().rposition(|&h| h > 0).map_or(0, |last| last + 1);
        let Some(heights) = heights.get(from..to) else { return };
        // Places on a course line and places anywhere are not distinguished: the same places have the same worth.
        if !self.seen.insert((self.grounded, heights.to_vec())) {
            return;
        }
        let mut sweep = Sweep::new(self.costs, self.want, heights, tiles);
        for &height in heights {
            sweep.column(height, None);
        }
        let gains = sweep.ends();
        let found = Found { gain: 0.0, at, first: first + from as i64, heights: heights.to_vec() };
        for (n, &gain) in gains.iter().enumerate() {
            let Some(best) = self.best.get_mut(n) else { break };
            let before = best.as_ref().map_or(f64::NEG_INFINITY, |found| found.gain);
            if gain > before + 1e-9 * (1.0 + gain.abs()) {
                *best = Some(Found { gain, ..found.clone() });
            }
        }
        self.mark_open();
    }

    fn answer(self, tile: &Tile) -> StacksFound {
        let finished = self.left_open == 0;
        let mut found = Vec::new();
        for (n, best) in self.best.iter().enumerate() {
            let wanted = match self.want {
                Want::Worth(_) => true,
                Want::Numbers(from, to) => (from..=to).contains(&n),
            };
            if !wanted {
                continue;
            }
            let placed = match best {
                Some(best) if best.gain > f64::NEG_INFINITY => self.lay(best, n, tile),
                _ if n == 0 => Vec::new(),
                _ => continue,
            };
            let cost = cost_of(&placed, self.costs);
            let left = match self.want {
                Want::Worth(value) => {
                    let promise = self.promise.get(self.left_open).copied().unwrap_or(0.0);
                    value * placed.len() as f64 - promise
                }
                Want::Numbers(..) if n <= self.left_open => self.least.get(n).copied().unwrap_or(0.0),
                Want::Numbers(..) => cost,
            };
            let least = if finished { cost } else { cost.min(left) };
            found.push(Stacks { placed, cost, least });
        }
        let most = self.capacity.max(self.passed).max(self.left_open);
        StacksFound { found, most, sets: self.seen.len(), ruled_out: self.ruled_out, finished }
    }

    /// The tiles of a result.
    fn lay(&self, found: &Found, number: usize, tile: &Tile) -> Vec<Placed> {
        let tiles: usize = found.heights.iter().sum();
        let mut sweep = Sweep::new(self.costs, self.want, &found.heights, tiles);
        let mut trace = Vec::new();
        for &height in &found.heights {
            let mut marks = Vec::new();
            sweep.column(height, Some(&mut marks));
            trace.push(marks);
        }
        let heights = sweep.back(&trace, number);
        let rows = heights.iter().copied().max().unwrap_or(0);
        let mut placed = Vec::new();
        let begins = heights.iter().position(|&h| h > 0).unwrap_or(0);
        for row in 0..rows {
            for (column, _) in heights.iter().enumerate().filter(|(_, h)| **h > row) {
                let u = found.at.u + (found.first + column as i64) as f64 * self.pitch[0];
                let v = found.at.v + (found.at.base + row) as f64 * self.pitch[1];
                let rect = crate::Rect::at(glam::dvec2(u, v), tile.size);
                placed.push(Placed { row, column: column - begins, rect });
            }
        }
        placed
    }
}

fn rows(band: &Band<'_>, v: f64, pitch: f64) -> Vec<Row> {
    band.rows.iter().map(|&(k, slab)| Row::of(k, slab, v + k as f64 * pitch, 0.0)).collect()
}

/// The cost of stacks, counted from their tiles.
fn cost_of(placed: &[Placed], costs: &StackCosts) -> f64 {
    let columns = placed.iter().map(|p| p.column + 1).max().unwrap_or(0);
    let mut heights = vec![0_usize; columns];
    for p in placed {
        if let Some(height) = heights.get_mut(p.column) {
            *height = (*height).max(p.row + 1);
        }
    }
    let mut cost = (costs.foot + costs.head) * heights.iter().filter(|&&h| h > 0).count() as f64;
    let mut last = 0;
    for height in heights.into_iter().chain([0]) {
        cost += costs.step(last, height);
        last = height;
    }
    cost
}

#[cfg(test)]
mod tests;
