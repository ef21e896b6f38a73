//! Some of a layout taken away and laid anew beside the rest: one block or two, all rows above a level. And layouts that begin on
//! one side of a line.

use super::super::{Allowed, Constraint, FitError, Placed, Tile};
use super::{HookRules, Several, packed};
use crate::{Convex, Polygon, Rect};
use glam::dvec2;

/// The search ends after so many steps of packing rows.
const MOST_STEPS: usize = 3_000_000;

/// At most so many lines of one kind are begun beside.
const MOST_LINES: usize = 12;

/// Round corners are drawn around by so much, metres.
const SLACK: f64 = 1e-4;

/// Beyond any face, metres.
const FAR: f64 = 1e4;

/// Blocks of tiles.
type Blocks = Vec<Vec<Placed>>;

/// The best that comes of a layout.
pub(super) fn improved(
    allowed: &Allowed,
    tile: &Tile,
    rules: &HookRules,
    first: Several,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    let mut search = Search { allowed, tile, rules, enough, stop, best: first };
    search.rounds()?;
    for side in sides(allowed) {
        if search.is_over() {
            break;
        }
        let mut beside = allowed.clone();
        beside.blocked.push(Constraint { id: usize::MAX, shape: side });
        let begun = packed(&beside, tile, rules, stop)?;
        search.best.steps += begun.steps;
        if search.laid(begun.blocks)? {
            search.rounds()?;
        }
    }
    Ok(search.best)
}

struct Search<'a> {
    allowed: &'a Allowed,
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

    /// As long as something that is laid anew wins.
    fn rounds(&mut self) -> Result<(), FitError> {
        let mut wins = true;
        while wins {
            wins = false;
            for kept in kept(&self.best.blocks) {
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

    /// Lays what some blocks leave, and takes all of it where that is more; whether it is.
    fn laid(&mut self, mut blocks: Blocks) -> Result<bool, FitError> {
        let more =
            packed(&beside(self.allowed, &blocks, self.rules.apart), self.tile, self.rules, self.stop)?;
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

/// What may stay of a layout.
fn kept(blocks: &Blocks) -> Vec<Blocks> {
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
    let mut levels: Vec<f64> = blocks.iter().flatten().map(|placed| placed.rect.max.y).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|a, b| *a - *b < 1e-6);
    levels.pop();
    for level in levels.into_iter().rev() {
        let below = |block: &Vec<Placed>| -> Vec<Placed> {
            block.iter().filter(|placed| placed.rect.max.y < level + 1e-6).copied().collect()
        };
        found.push(blocks.iter().map(below).filter(|block| !block.is_empty()).collect());
    }
    found
}

/// The room that some blocks leave for others.
fn beside(allowed: &Allowed, blocks: &Blocks, apart: f64) -> Allowed {
    let mut left = allowed.clone();
    for block in blocks {
        // Neighbours of a row count as one: fewer shapes to look at.
        let mut runs: Vec<Rect> = Vec::new();
        for placed in block {
            match runs.last_mut() {
                Some(run) if run.min.y == placed.rect.min.y && placed.rect.min.x - run.max.x < apart => {
                    run.max = run.max.max(placed.rect.max);
                }
                _ => runs.push(placed.rect),
            }
        }
        let around = runs.iter().map(|run| Convex::rect(run).outline(apart, SLACK));
        left.blocked.extend(around.map(|shape| Constraint { id: usize::MAX, shape }));
    }
    left
}

/// Half planes above and below, left and right of where something in the way begins or ends.
fn sides(allowed: &Allowed) -> Vec<Polygon> {
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
