//! Parts next to each other: vertical cuts from left to right, and between two of them rows of one phase packed from
//! the left. For each number of tiles, the least u that they reach, with a separate phase for each part.

use super::super::stretch::{Stretch, both, enough, first, joined, without};
use super::phases::Phase;
use super::yard::{Spots, Yard};
use glam::dvec2;

/// The search of parts ends with what it has after laying this many tiles in total.
const MOST_STEPS: usize = 400_000;

/// One tile of a part.
#[derive(Clone, Copy, Debug)]
struct PackedTile {
    row: usize,
    u: f64,
    /// Whether the row below holds it; otherwise it is in the lowest row of a block.
    held: bool,
    /// The right end of it and of everything that holds it.
    end: f64,
}

/// The best of the parts, and the best of each single phase if that is more: several to choose from, as corners of
/// tiles.
pub(super) fn lay(
    yard: &Yard<'_>,
    phases: &[Phase],
    mirrored: bool,
    stop: &dyn Fn() -> bool,
) -> (Vec<Spots>, usize) {
    let width = yard.tile.size.x;
    let turn = |free: &[Stretch]| -> Vec<Stretch> {
        if mirrored {
            free.iter().rev().map(|&(a, b)| (-b - width, -a - width)).collect()
        } else {
            free.to_vec()
        }
    };
    let frees: Vec<Vec<[Vec<Stretch>; 2]>> = phases
        .iter()
        .map(|phase| phase.lines.iter().map(|line| [turn(&line.free), turn(&line.lowest)]).collect())
        .collect();
    let spot = |phase: &Phase, laid: &PackedTile| {
        let u = if mirrored { -laid.u - width } else { laid.u };
        dvec2(u, phase.lines.get(laid.row).map_or(0.0, |line| line.v))
    };
    let mut steps = 0;
    // For each number of tiles: how far they reach, and the part that they end with: the number before it, its phase,
    // and how many of it.
    let mut reach: Vec<(f64, Option<(usize, usize)>)> = vec![(f64::NEG_INFINITY, None)];
    let mut n = 0;
    while n < reach.len() && steps < MOST_STEPS && !stop() {
        let from = reach[n].0 + yard.rules.apart;
        for (at, phase) in phases.iter().enumerate() {
            let laid = rows(yard, phase, &frees[at], from);
            steps += laid.len() + phase.lines.len();
            let mut end = f64::NEG_INFINITY;
            for (i, tile) in laid.iter().enumerate() {
                end = end.max(tile.end);
                let count = n + i + 1;
                if reach.len() <= count {
                    reach.resize(count + 1, (f64::INFINITY, None));
                }
                if end < reach[count].0 - 1e-9 {
                    reach[count] = (end, Some((n, at)));
                }
            }
        }
        n += 1;
    }
    let mut found = Vec::new();
    for count in (1..reach.len()).rev().take(3) {
        let (mut spots, mut count) = (Vec::new(), count);
        while let Some(&(_, Some((before, at)))) = reach.get(count) {
            let laid = rows(yard, &phases[at], &frees[at], reach[before].0 + yard.rules.apart);
            spots.extend(laid.iter().take(count - before).map(|tile| spot(&phases[at], tile)));
            count = before;
        }
        found.push(spots);
    }
    (found, steps)
}

/// Rows packed from the left, each tile held by the row below or far enough from it to be the lowest of a block. Sorted
/// by where they end.
fn rows(yard: &Yard<'_>, phase: &Phase, free: &[[Vec<Stretch>; 2]], from: f64) -> Vec<PackedTile> {
    let (size, gap, pitch) = (yard.tile.size, yard.tile.gap, yard.tile.pitch());
    let mut all: Vec<PackedTile> = Vec::new();
    let mut below: Vec<PackedTile> = Vec::new();
    for (row, [free, free_lowest]) in free.iter().enumerate() {
        let under = joined(below.iter().map(|b| (b.u, b.u + size.x)).collect(), gap.x + 1e-6);
        let held = both(free, &enough(&under, size.x, yard.rules.hooked * size.x - 1e-7));
        let mut near: Vec<Stretch> = Vec::new();
        for other in &all {
            let above = (row - other.row) as f64 * pitch.y - size.y;
            if above < yard.rules.apart {
                let aside = yard.aside(above) + size.x;
                near.push((other.u - aside, other.u + aside));
            }
        }
        let lowest =
            if phase.grounded && row > 0 { Vec::new() } else { without(free_lowest, &joined(near, 0.0)) };
        let mut here: Vec<PackedTile> = Vec::new();
        loop {
            let next = |of: &[Stretch], held: bool| {
                let after = here.last().map_or(from, |last: &PackedTile| {
                    last.u + if last.held == held { pitch.x } else { size.x + yard.rules.apart }
                });
                first(of, after)
            };
            let (u, is_held) = match (next(&held, true), next(&lowest, false)) {
                (Some(p), Some(q)) if q < p => (q, false),
                (Some(p), _) => (p, true),
                (None, Some(q)) => (q, false),
                (None, None) => break,
            };
            let mut end = u + size.x;
            if is_held {
                let holds = below.iter().filter(|b| b.u < u + size.x && u < b.u + size.x);
                end = holds.map(|b| b.end).fold(end, f64::max);
            }
            here.push(PackedTile { row, u, held: is_held, end });
        }
        all.extend(&here);
        below = here;
    }
    all.sort_by(|p, q| p.end.total_cmp(&q.end).then(p.row.cmp(&q.row)).then(p.u.total_cmp(&q.u)));
    all
}
