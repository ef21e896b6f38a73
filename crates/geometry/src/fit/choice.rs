//! Choosing among the places of one grid: the most valuable ones, or a given number.
//!
//! Values and the costs of exposed sides form a minimum cut: a side costs if its tile is taken and the neighbour is
//! not, so costs pull neighbours together. Corners don't: with places A to the right of C and B above it, taking C and
//! A, or C and B, makes no corner at C; taking all three makes an inner one, and C alone an outer one. So the two costs
//! together would have to be negative for a cut to be right. Corners are therefore counted by a sweep over the grid
//! that remembers its last row, which is exact as long as the shorter dimension of the grid is narrow enough. Beyond
//! that, the result without corners is the bound, and the result shows the difference.

use super::cells::{Cell, Costs, Field};
use super::cut::Network;
use super::kernel::{Allowed, FitError, Tile};
use super::profile::{Swept, sweep};
use super::{grid, room::Room};
use chalkcourse_words::{Said, Say, later as words};
use glam::DVec2;
use serde::{Deserialize, Serialize};

/// What to optimise for a given number of tiles.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Aim {
    /// Shortest perimeter, in metres.
    Compact,
    /// As few adjacent rows as will hold them; then the shortest perimeter.
    FewRows,
    /// Greatest worth: values minus costs.
    Worth(Costs),
}

/// Chosen cells.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Choice {
    /// Indices of cells, increasing.
    pub chosen: Vec<usize>,
    /// Values minus costs of the choice; for a compact one, minus the perimeter in metres.
    pub worth: f64,
    /// Upper bound on the worth of any choice of these cells under this aim.
    pub bound: f64,
    /// How it was found and what is proved.
    pub method: Said,
}

impl Choice {
    /// Whether nothing better exists among these cells (except for rounding).
    pub fn proved(&self) -> bool {
        self.bound - self.worth <= 1e-7 * (1.0 + self.worth.abs())
    }
}

/// All cells at which a tile may be, of a grid through `origin` (the lower left corner of any of its places, on the
/// face or not); each is worth 1.
///
/// Errors: an invalid tile, tolerance or corner.
pub fn cells(allowed: &Allowed, tile: &Tile, origin: DVec2) -> Result<Vec<Cell>, FitError> {
    let room = Room::footed(allowed, tile)?;
    let Some((lo, _)) = room.span() else { return Ok(Vec::new()) };
    let pitch = tile.pitch();
    let v = origin.y + ((lo - origin.y) / pitch.y).floor() * pitch.y;
    let at = grid::At { u: origin.x, v, base: 0 };
    let placed = grid::lay(&room, tile, 0.0, false, at);
    let cell = |p: &super::Placed| Cell { column: p.column, row: p.row, rect: p.rect, value: 1.0 };
    Ok(placed.iter().map(cell).collect())
}

/// The cells with the greatest total worth: values minus the costs of their exposed sides and corners.
///
/// Errors: negative costs, values that are not numbers, two cells in one place.
pub fn fit_worth(cells: &[Cell], costs: &Costs, stop: &dyn Fn() -> bool) -> Result<Choice, FitError> {
    let field = Field::new(cells, costs)?;
    let (mut chosen, bound) = field.cut(costs, 0.0);
    let corners = costs.outer_corner > 0.0 || costs.inner_corner > 0.0;
    let sides = words::fill::SMALLEST_CUT_OVER_VALUES_AND;
    if !corners {
        return Ok(field.choice(&chosen, bound, costs, sides));
    }
    match sweep(&field, costs, None, stop) {
        Swept::Best(Some(best)) => Ok(field.proved(best, costs, words::fill::SWEEP_OVER_EVERY_CHOICE_OF)),
        _ => {
            field.improve(&mut chosen, costs, None, stop);
            if field.worth(&chosen, costs) < 0.0 {
                chosen.fill(false);
            }
            let method = words::fill::SMALLEST_CUT_WITHOUT_CORNERS_AS;
            Ok(field.choice(&chosen, bound, costs, method))
        }
    }
}

/// Exactly `number` of the cells, by `aim`.
///
/// Errors: more than there are, and those of [`fit_worth`].
pub fn fit_number(
    cells: &[Cell],
    number: usize,
    aim: &Aim,
    stop: &dyn Fn() -> bool,
) -> Result<Choice, FitError> {
    if number > cells.len() {
        return Err(FitError::Choice(words::fill::tiles_were_asked_for_and(&number, &cells.len())));
    }
    if let Aim::Worth(costs) = aim {
        return Field::new(cells, costs)?.number(number, costs, stop);
    }
    let size = cells.first().map_or(DVec2::ZERO, |c| c.rect.size());
    let around = Costs { foot: size.x, head: size.x, side: size.y, ..Costs::default() };
    let plain: Vec<Cell> = cells.iter().map(|c| Cell { value: 0.0, ..*c }).collect();
    let whole = Field::new(&plain, &around)?;
    if *aim == Aim::Compact || number == 0 {
        return whole.number(number, &around, stop);
    }
    let in_row = |row: usize| plain.iter().filter(|c| c.row == row).count();
    let per_row: Vec<usize> = (0..whole.rows).map(in_row).collect();
    let holds = |&rows: &usize| per_row.windows(rows).any(|w| w.iter().sum::<usize>() >= number);
    let rows = (1..=whole.rows).find(holds).unwrap_or(whole.rows);
    let mut best: Option<Choice> = None;
    let mut bound = f64::NEG_INFINITY;
    for first in 0..=whole.rows.saturating_sub(rows) {
        let within: Vec<usize> =
            (0..plain.len()).filter(|&i| (first..first + rows).contains(&plain[i].row)).collect();
        if within.len() < number {
            continue;
        }
        let part: Vec<Cell> =
            within.iter().map(|&i| Cell { row: plain[i].row - first, ..plain[i] }).collect();
        let mut found = Field::new(&part, &around)?.number(number, &around, stop)?;
        found.chosen = found.chosen.iter().filter_map(|&i| within.get(i).copied()).collect();
        bound = bound.max(found.bound);
        if best.as_ref().is_none_or(|b| found.worth > b.worth) {
            best = Some(found);
        }
    }
    let best = best.ok_or_else(|| FitError::Choice(words::fill::no_rows_hold_tiles(&rows, &number)))?;
    let method = words::fill::rows_next_to_each_other(&rows, &number, &best.method);
    Ok(Choice { bound: bound.max(best.worth), method, ..best })
}

impl Field<'_> {
    /// Right, left, above, below, with the cost of the side there.
    fn neighbours(&self, cell: usize, costs: &Costs) -> [(Option<usize>, f64); 4] {
        let Cell { column, row, .. } = self.cells[cell];
        [
            (self.at(column + 1, row), costs.side),
            (column.checked_sub(1).and_then(|c| self.at(c, row)), costs.side),
            (self.at(column, row + 1), costs.head),
            (row.checked_sub(1).and_then(|r| self.at(column, r)), costs.foot),
        ]
    }

    fn worth(&self, taken: &[bool], costs: &Costs) -> f64 {
        let is = |cell: Option<usize>| cell.is_some_and(|c| taken[c]);
        let mut worth = 0.0;
        for cell in (0..self.cells.len()).filter(|&c| taken[c]) {
            worth += self.value(cell);
            worth -= self.neighbours(cell, costs).iter().filter(|n| !is(n.0)).map(|n| n.1).sum::<f64>();
        }
        if costs.outer_corner > 0.0 || costs.inner_corner > 0.0 {
            for row in 0..=self.rows {
                for column in 0..=self.columns {
                    worth -= self.corner(&is, column, row, costs);
                }
            }
        }
        worth
    }

    /// The cost of the corner between four places; `column` and `row` are those of the upper right one.
    fn corner(&self, is: &impl Fn(Option<usize>) -> bool, column: usize, row: usize, costs: &Costs) -> f64 {
        let left = column.checked_sub(1);
        let below = row.checked_sub(1);
        let here = is(self.at(column, row));
        let over_left = left.is_some_and(|c| is(self.at(c, row)));
        let under = below.is_some_and(|r| is(self.at(column, r)));
        let under_left = left.zip(below).is_some_and(|(c, r)| is(self.at(c, r)));
        match u8::from(here) + u8::from(over_left) + u8::from(under) + u8::from(under_left) {
            1 => costs.outer_corner,
            2 if here == under_left => 2.0 * costs.outer_corner,
            3 => costs.inner_corner,
            _ => 0.0,
        }
    }

    /// The best choice without corners if every cell is worth `more`, and an upper bound on the worth of any choice.
    fn cut(&self, costs: &Costs, more: f64) -> (Vec<bool>, f64) {
        let largest = self
            .cells
            .iter()
            .map(|c| (c.value + more).abs())
            .chain([costs.foot, costs.head, costs.side])
            .fold(0.0, f64::max);
        // Integers make the flow exact; the rounding errors widen the bound.
        let scale = 1e12 / largest.max(1e-12);
        let whole = |x: f64| (x * scale).round() as i64;
        let mut net = Network::new(self.cells.len());
        let (source, sink) = (net.source(), net.sink());
        let mut all = 0;
        for cell in 0..self.cells.len() {
            let value = whole(self.value(cell) + more);
            all += value.max(0);
            net.join(source, cell, value.max(0), 0);
            let mut open = (-value).max(0);
            for (k, (neighbour, cost)) in self.neighbours(cell, costs).into_iter().enumerate() {
                match neighbour {
                    None => open += whole(cost),
                    Some(other) if k == 0 => net.join(cell, other, whole(costs.side), whole(costs.side)),
                    Some(other) if k == 2 => net.join(cell, other, whole(costs.head), whole(costs.foot)),
                    Some(_) => {}
                }
            }
            net.join(cell, sink, open, 0);
        }
        let (taken, cost) = net.smallest_cut();
        (taken, ((all - cost) as f64 + 5.0 * self.cells.len() as f64) / scale)
    }

    fn number(&self, number: usize, costs: &Costs, stop: &dyn Fn() -> bool) -> Result<Choice, FitError> {
        if let Swept::Best(Some(best)) = sweep(self, costs, Some(number), stop) {
            let method = words::fill::SWEEP_OVER_EVERY_CHOICE_OF_THIS;
            return Ok(self.proved(best, costs, method));
        }
        // A reward for each tile: the cut with reward r bounds every choice of n by its worth minus n times r.
        let spread: f64 = 4.0 * (costs.foot + costs.head + 2.0 * costs.side)
            + self.cells.iter().map(|c| c.value.abs()).fold(0.0, f64::max);
        let (mut low, mut high) = (-spread - 1.0, spread + 1.0);
        let mut bound = f64::INFINITY;
        let mut best: Option<(Vec<bool>, f64)> = None;
        for _ in 0..40 {
            let reward = (low + high) / 2.0;
            let (mut taken, worth) = self.cut(costs, reward);
            bound = bound.min(worth - reward * number as f64);
            if taken.iter().filter(|&&t| t).count() < number {
                low = reward;
            } else {
                high = reward;
            }
            self.bring_to(&mut taken, number, costs);
            let worth = self.worth(&taken, costs);
            if best.as_ref().is_none_or(|b| worth > b.1) {
                best = Some((taken, worth));
            }
            if stop() {
                break;
            }
        }
        let mut taken = best.map_or(vec![false; self.cells.len()], |b| b.0);
        self.improve(&mut taken, costs, Some(number), stop);
        let method = words::fill::CUTS_WITH_A_REWARD_FOR;
        Ok(self.choice(&taken, bound, costs, method))
    }

    /// Takes or drops the cheapest cells one by one until the number is right.
    fn bring_to(&self, taken: &mut [bool], number: usize, costs: &Costs) {
        loop {
            let count = taken.iter().filter(|&&t| t).count();
            if count == number {
                return;
            }
            let drop = count > number;
            let cost = |&c: &usize| self.flip(taken, c, costs);
            let next =
                (0..taken.len()).filter(|&c| taken[c] == drop).max_by(|a, b| cost(a).total_cmp(&cost(b)));
            let Some(next) = next else { return };
            taken[next] = !drop;
        }
    }

    /// How the worth changes if one cell is flipped, without corners.
    fn flip(&self, taken: &[bool], cell: usize, costs: &Costs) -> f64 {
        let Cell { column, row, .. } = self.cells[cell];
        let mut gain = self.value(cell);
        let back = [costs.side, costs.side, costs.foot, costs.head];
        for ((neighbour, cost), other) in self.neighbours(cell, costs).into_iter().zip(back) {
            gain += if neighbour.is_some_and(|n| taken[n]) { other } else { -cost };
        }
        let now = if taken[cell] { -gain } else { gain };
        if costs.outer_corner == 0.0 && costs.inner_corner == 0.0 {
            return now;
        }
        let before = |c: Option<usize>| c.is_some_and(|c| taken[c]);
        let after = |c: Option<usize>| c.is_some_and(|c| taken[c] != (c == cell));
        let corners = [(0, 0), (1, 0), (0, 1), (1, 1)];
        now + corners
            .iter()
            .map(|&(c, r)| {
                self.corner(&before, column + c, row + r, costs)
                    - self.corner(&after, column + c, row + r, costs)
            })
            .sum::<f64>()
    }

    /// Flips cells, alone or (if the number is fixed) in pairs, as long as that improves the worth.
    fn improve(&self, taken: &mut [bool], costs: &Costs, number: Option<usize>, stop: &dyn Fn() -> bool) {
        let n = taken.len();
        let rounds = if number.is_some() { 20_000 / n.max(1) + 1 } else { n };
        for _ in 0..rounds {
            let mut changed = false;
            for cell in 0..n {
                if stop() {
                    return;
                }
                let gain = self.flip(taken, cell, costs);
                if number.is_none() {
                    if gain > 1e-9 {
                        taken[cell] = !taken[cell];
                        changed = true;
                    }
                    continue;
                }
                taken[cell] = !taken[cell];
                let other = (0..n)
                    .filter(|&c| c != cell && taken[c] == taken[cell])
                    .find(|&c| gain + self.flip(taken, c, costs) > 1e-9);
                if let Some(other) = other {
                    taken[other] = !taken[other];
                    changed = true;
                } else {
                    taken[cell] = !taken[cell];
                }
            }
            if !changed {
                return;
            }
        }
    }

    fn proved(&self, chosen: Vec<usize>, costs: &Costs, method: Say) -> Choice {
        let mut taken = vec![false; self.cells.len()];
        for &c in &chosen {
            taken[c] = true;
        }
        let worth = self.worth(&taken, costs);
        Choice { chosen, worth, bound: worth, method: method.into() }
    }

    fn choice(&self, taken: &[bool], bound: f64, costs: &Costs, method: Say) -> Choice {
        let worth = self.worth(taken, costs);
        let chosen = (0..taken.len()).filter(|&c| taken[c]).collect();
        Choice { chosen, worth, bound: bound.max(worth), method: method.into() }
    }
}

#[cfg(test)]
mod tests;
