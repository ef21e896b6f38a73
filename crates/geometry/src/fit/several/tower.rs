//! One block of rows, each of which hooks into the row below over a share of its lower edge.
//!
//! From the lowest row up, a few of the best towers of rows are kept. Each is continued with several ways to lay the
//! next row where it is held: pushed to the left, pushed to the right, split at each place, spread. A row that is
//! spread, or split beside an obstacle, can hold more above it than one that is pushed together.

use super::super::kernel::Placed;
use super::super::stretch::{Stretch, both, enough, first, joined};
use super::dice::Dice;
use super::phases::{Line, Phase};
use super::yard::Yard;
use crate::Rect;
use glam::dvec2;

/// How much effort to spend.
#[derive(Clone, Copy, Debug)]
pub(super) struct Effort {
    /// The number of base lines to lay rows from, most promising first.
    pub(super) bases: usize,
    /// The number of towers that are kept from row to row.
    pub(super) kept: usize,
}

/// Rows so far.
struct Tower {
    /// Index of the tower without its last row.
    below: Option<usize>,
    row: Vec<f64>,
    /// Tiles in total.
    count: usize,
    /// Where tiles of the next row may be, and how many fit there.
    next: Vec<Stretch>,
    promise: usize,
    /// A random number to break ties.
    lot: f64,
}

/// The block with the most tiles that is found on some sets of lines, by rows from below and from the left; and the
/// steps taken.
pub(super) fn tower(
    yard: &Yard<'_>,
    phases: &[Phase],
    effort: Effort,
    dice: &mut Dice,
) -> (Vec<Placed>, usize) {
    let (size, pitch) = (yard.tile.size, yard.tile.pitch());
    let mut bases: Vec<(usize, f64, &[Line])> = Vec::new();
    for phase in phases {
        let mut above = 0;
        for (at, line) in phase.lines.iter().enumerate().rev() {
            let lowest = left(&line.lowest, pitch.x).len();
            if lowest > 0 && (at == 0 || !phase.grounded) {
                bases.push((lowest + above, dice.unit(), &phase.lines[at..]));
            }
            let here = left(&line.free, pitch.x).len();
            above = if here == 0 { 0 } else { above + here };
        }
    }
    bases.sort_by(|p, q| q.0.cmp(&p.0).then(p.1.total_cmp(&q.1)));
    let (mut best, mut steps) = (Vec::new(), bases.len());
    for (promise, _, lines) in bases.into_iter().take(effort.bases) {
        if promise <= best.len() {
            break;
        }
        let (rows, more) = rows(yard, lines, effort.kept, best.len(), dice);
        steps += more;
        if rows.iter().map(Vec::len).sum::<usize>() > best.len() {
            let numbered = rows.iter().zip(lines).enumerate();
            let placed = numbered.flat_map(|(row, (starts, line))| {
                let tiles = starts.iter().enumerate();
                tiles.map(move |(column, &u)| Placed { row, column, rect: Rect::at(dvec2(u, line.v), size) })
            });
            best = placed.collect();
        }
    }
    (best, steps)
}

/// The rows above one base line, if they have more than `beyond` tiles; and the steps taken.
fn rows(
    yard: &Yard<'_>,
    lines: &[Line],
    kept: usize,
    beyond: usize,
    dice: &mut Dice,
) -> (Vec<Vec<f64>>, usize) {
    let pitch = yard.tile.pitch().x;
    let Some(base) = lines.first() else { return (Vec::new(), 0) };
    let mut to_come: Vec<usize> = lines.iter().skip(1).map(|line| left(&line.free, pitch).len()).collect();
    for at in (1..to_come.len()).rev() {
        to_come[at - 1] += to_come[at];
    }
    let mut all: Vec<Tower> = Vec::new();
    let mut best: Option<usize> = None;
    let mut top: Vec<Option<usize>> = vec![None];
    for level in 0..lines.len() {
        let mut here: Vec<Tower> = Vec::new();
        for below in top {
            let (free, before) = below.map_or((&base.lowest, 0), |at| (&all[at].next, all[at].count));
            for row in ways(free, pitch, dice) {
                let count = before + row.len();
                if count + to_come.get(level).unwrap_or(&0) <= beyond {
                    continue;
                }
                let next =
                    lines.get(level + 1).map_or_else(Vec::new, |line| both(&line.free, &held(yard, &row)));
                let promise = count + left(&next, pitch).len();
                here.push(Tower { below, row, count, next, promise, lot: dice.unit() });
            }
        }
        here.sort_by(|p, q| q.promise.cmp(&p.promise).then(p.lot.total_cmp(&q.lot)));
        here.dedup_by(|p, q| p.promise == q.promise && p.row == q.row);
        here.truncate(kept);
        top = Vec::new();
        for tower in here {
            if tower.count > best.map_or(beyond, |at| all[at].count) {
                best = Some(all.len());
            }
            if !tower.next.is_empty() {
                top.push(Some(all.len()));
            }
            all.push(tower);
        }
        if top.is_empty() {
            break;
        }
    }
    let mut found = Vec::new();
    while let Some(at) = best {
        found.push(all[at].row.clone());
        best = all[at].below;
    }
    found.reverse();
    (found, all.len() * 10)
}

/// Where tiles of the next row hook into a row.
pub(super) fn held(yard: &Yard<'_>, row: &[f64]) -> Vec<Stretch> {
    let width = yard.tile.size.x;
    let under = joined(row.iter().map(|&u| (u, u + width)).collect(), yard.tile.gap.x + 1e-6);
    enough(&under, width, yard.rules.hooked * width - 1e-7)
}

/// As many tiles as fit, each as far to the left as possible.
fn left(free: &[Stretch], pitch: f64) -> Vec<f64> {
    let mut row: Vec<f64> = Vec::new();
    while let Some(u) = first(free, row.last().map_or(f64::NEG_INFINITY, |last| last + pitch)) {
        row.push(u);
    }
    row
}

/// The same, to the right.
fn right(free: &[Stretch], pitch: f64) -> Vec<f64> {
    let mut row: Vec<f64> = Vec::new();
    let mut before = f64::INFINITY;
    for &(a, b) in free.iter().rev() {
        while b.min(before) >= a {
            let u = b.min(before);
            row.push(u);
            before = u - pitch;
        }
    }
    row.reverse();
    row
}

/// Several ways to lay as many as fit.
fn ways(free: &[Stretch], pitch: f64, dice: &mut Dice) -> Vec<Vec<f64>> {
    let (left, right) = (left(free, pitch), right(free, pitch));
    let n = left.len();
    if n == 0 || right.len() != n {
        return if n == 0 { Vec::new() } else { vec![left] };
    }
    let on_one = |i: usize| free.iter().any(|&(a, b)| a <= left[i] && right[i] <= b);
    // From the left (0) to the right (1), with no tile's share less than the one before.
    let laid = |share: &dyn Fn(usize) -> f64| -> Option<Vec<f64>> {
        let place = |i: usize| {
            let share = share(i);
            if share <= 0.0 || (share < 0.5 && !on_one(i)) {
                left[i]
            } else if share >= 1.0 || !on_one(i) {
                right[i]
            } else {
                left[i] + (right[i] - left[i]) * share
            }
        };
        let row: Vec<f64> = (0..n).map(place).collect();
        row.windows(2).all(|pair| pair[1] - pair[0] >= pitch - 1e-9).then_some(row)
    };
    let mut found: Vec<Vec<f64>> = vec![left.clone()];
    for parted in (0..n).rev().filter(|&at| right[at] - left[at] > 1e-9) {
        found.extend(laid(&|i| if i < parted { 0.0 } else { 1.0 }));
    }
    if found.len() > 1 {
        let mut lots: Vec<f64> = (0..n).map(|_| dice.unit()).collect();
        lots.sort_by(f64::total_cmp);
        found.extend(laid(&|i| if n == 1 { 0.5 } else { i as f64 / (n - 1) as f64 }));
        found.extend(laid(&|i| (i as f64 + 0.5) / n as f64));
        found.extend(laid(&|_| 0.5));
        found.extend(laid(&|i| lots.get(i).copied().unwrap_or(0.5)));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: two of 2 fit from 0 to 3, a pitch of 2 apart, with 1 to spare.
    #[test]
    fn rows_are_pushed_parted_and_spread() {
        let found = ways(&[(0.0, 3.0)], 2.0, &mut Dice::new(1));
        for row in [[0.0, 2.0], [0.0, 3.0], [1.0, 3.0], [0.25, 2.75], [0.5, 2.5]] {
            assert!(found.contains(&row.to_vec()), "{row:?} of {found:?}");
        }
        assert!(found.iter().all(|row| row[1] - row[0] >= 2.0 && row[0] >= 0.0 && row[1] <= 3.0));
        assert_eq!(ways(&[(0.0, 2.0)], 2.0, &mut Dice::new(1)), [[0.0, 2.0]]);
        assert_eq!(ways(&[], 2.0, &mut Dice::new(1)), Vec::<Vec<f64>>::new());
        // If the places are separate, one tile goes to either.
        let found = ways(&[(0.0, 0.5), (5.0, 5.5)], 6.0, &mut Dice::new(1));
        assert_eq!(found[0], [0.0]);
        assert!(found.contains(&vec![5.5]) && found.iter().flatten().all(|u| *u <= 0.5 || *u >= 5.0));
    }
}
