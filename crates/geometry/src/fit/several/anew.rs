//! Improves a layout by removing some of it and laying that again beside the rest: one block or two, rows above a
//! level, one side of a vertical line. Also tries layouts that begin on one side of a line.

use super::super::Space;
use super::super::kernel::{Allowed, FitError, Placed, Tile};
use super::super::stretch::{Stretch, joined};
use super::packing::packed;
use super::yard::{HookRules, Several};
use crate::{Polygon, Rect};
use glam::dvec2;

/// The search ends after this many steps of packing rows.
const MOST_STEPS: usize = 3_000_000;

/// The maximum number of lines of one kind to begin beside.
const MOST_LINES: usize = 12;

/// Beyond any face, metres.
const FAR: f64 = 1e4;

/// Blocks of tiles.
type Blocks = Vec<Vec<Placed>>;

/// The best improvement of a layout.
pub(super) fn improved(
    (space, halves): (&Space, &[Polygon]),
    tile: &Tile,
    rules: &HookRules,
    first: Several,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    let mut search = Search { space, tile, rules, enough, stop, best: first };
    search.rounds()?;
    for half in halves {
        if search.is_over() {
            break;
        }
        let begun = packed(&space.less(std::slice::from_ref(half)), tile, rules, stop)?;
        search.best.steps += begun.steps;
        if search.laid(begun.blocks)? {
            search.rounds()?;
        }
    }
    Ok(search.best)
}

struct Search<'a> {
    space: &'a Space,
    tile: &'a Tile,
    rules: &'a HookRules,
    enough: usize,
    stop: &'a dyn Fn() -> bool,
    best: Several,
}

impl Search<'_> {
    fn is_over(&self) -> bool {
        self.best.count() >= self.enough || self.best.steps > MOST_STEPS || (self.stop)()
    }

    /// Continues as long as laying something again gains tiles.
    fn rounds(&mut self) -> Result<(), FitError> {
        let mut wins = true;
        while wins {
            wins = false;
            for kept in kept(&self.best.blocks, self.tile, self.rules) {
                if self.is_over() {
                    return Ok(());
                }
                if self.laid(kept)? {
                    wins = true;
                    break;
                }
            }
        }
        Ok(())
    }

    /// Packs what some blocks leave, and takes the result if it has more tiles in total; returns whether it does.
    fn laid(&mut self, mut blocks: Blocks) -> Result<bool, FitError> {
        let left = self.space.beside(&blocks, self.rules.apart);
        let more = packed(&left, self.tile, self.rules, self.stop)?;
        self.best.steps += more.steps + 1_000;
        let wins = more.count() + blocks.iter().map(Vec::len).sum::<usize>() > self.best.count();
        if wins {
            blocks.extend(more.blocks);
            blocks.sort_by(|p, q| {
                let v = |block: &[Placed]| block.first().map_or(0.0, |placed| placed.rect.min.y);
                v(p).total_cmp(&v(q))
            });
            self.best.blocks = blocks;
        }
        Ok(wins)
    }
}

/// What may be kept of a layout: all but one block or two; what is below a level, of all blocks or of one; what is on
/// one side of a vertical line.
fn kept(blocks: &Blocks, tile: &Tile, rules: &HookRules) -> Vec<Blocks> {
    let without = |gone: &[usize]| {
        let stay = blocks.iter().enumerate().filter(|(i, _)| !gone.contains(i));
        stay.map(|(_, block)| block.clone()).collect::<Blocks>()
    };
    let mut found = Vec::new();
    if blocks.len() > 1 {
        found.extend((0..blocks.len()).map(|i| without(&[i])));
    }
    if (3..=5).contains(&blocks.len()) {
        for i in 0..blocks.len() {
            found.extend((i + 1..blocks.len()).map(|j| without(&[i, j])));
        }
    }
    let ends = |of: &dyn Fn(&Placed) -> f64| {
        let mut ends: Vec<f64> = blocks.iter().flatten().map(of).collect();
        ends.sort_by(f64::total_cmp);
        ends.dedup_by(|a, b| *a - *b < 1e-6);
        ends
    };
    let mut levels = ends(&|placed| placed.rect.max.y);
    levels.pop();
    for level in levels.iter().rev() {
        let below = |placed: &Placed| placed.rect.max.y < level + 1e-6;
        found.push(part(blocks, tile, rules, &|_, placed| below(placed)));
        if blocks.len() > 1 {
            let one = |i: usize| part(blocks, tile, rules, &move |at, placed| at != i || below(placed));
            found.extend((0..blocks.len()).map(one));
        }
    }
    for line in ends(&|placed| placed.rect.max.x) {
        found.push(part(blocks, tile, rules, &|_, placed| placed.rect.max.x < line + 1e-6));
    }
    for line in ends(&|placed| placed.rect.min.x) {
        found.push(part(blocks, tile, rules, &|_, placed| placed.rect.min.x > line - 1e-6));
    }
    let all: usize = blocks.iter().map(Vec::len).sum();
    found.retain(|part| part.iter().map(Vec::len).sum::<usize>() < all);
    found
}

/// The tiles of some blocks that are kept, without those that depend on removed ones.
fn part(blocks: &Blocks, tile: &Tile, rules: &HookRules, stays: &dyn Fn(usize, &Placed) -> bool) -> Blocks {
    let mut parts = Vec::new();
    for (at, block) in blocks.iter().enumerate() {
        let mut stay: Vec<Placed> = Vec::new();
        let mut below: Vec<Stretch> = Vec::new();
        for row in block.chunk_by(|p, q| p.row == q.row) {
            let under = joined(below, tile.gap.x + 1e-6);
            let width = tile.size.x;
            let held = |u: f64| -> f64 {
                under.iter().map(|&(a, b)| ((u + width).min(b) - u.max(a)).max(0.0)).sum::<f64>() / width
            };
            let left: Vec<Placed> = row
                .iter()
                .filter(|p| stays(at, p) && (p.row == 0 || held(p.rect.min.x) >= rules.hooked - 1e-6))
                .copied()
                .collect();
            below = left.iter().map(|p| (p.rect.min.x, p.rect.max.x)).collect();
            stay.extend(left);
        }
        if !stay.is_empty() {
            parts.push(stay);
        }
    }
    parts
}

/// Half planes above and below, left and right of where an obstacle begins or ends, as shapes that would block them.
pub fn halves(allowed: &Allowed) -> Vec<Polygon> {
    let bounds: Vec<Rect> = allowed.blocked.iter().filter_map(|blocked| blocked.shape.bounds()).collect();
    let Some(all) = Rect::around(allowed.region.iter().flat_map(|shape| shape.outer.iter().copied())) else {
        return Vec::new();
    };
    let lines = |axis: usize| {
        let within = |x: &f64| all.min[axis] + 0.5 < *x && *x < all.max[axis] - 0.5;
        let mut lines: Vec<f64> =
            bounds.iter().flat_map(|b| [b.min[axis], b.max[axis]]).filter(within).collect();
        lines.sort_by(f64::total_cmp);
        lines.dedup_by(|a, b| *a - *b < 0.05);
        lines.truncate(MOST_LINES);
        lines
    };
    let rect = |min, max| Polygon::new(Rect { min, max }.corners().to_vec());
    let mut found = Vec::new();
    for v in lines(1) {
        found.push(rect(dvec2(-FAR, v), dvec2(FAR, FAR)));
        found.push(rect(dvec2(-FAR, -FAR), dvec2(FAR, v)));
    }
    for u in lines(0) {
        found.push(rect(dvec2(u, -FAR), dvec2(FAR, FAR)));
        found.push(rect(dvec2(-FAR, -FAR), dvec2(u, FAR)));
    }
    found
}
