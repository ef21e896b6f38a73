//! Improves a layout by randomly removing some of it and laying that again beside the rest, over and over: a block,
//! rows above or below a level, what is on one side of a vertical line, or everything, to begin on one side of a line.
//! Results that are equally good are accepted too, so that a layout can change before it grows. The random numbers are
//! the same for the same face.

use super::super::Space;
use super::super::kernel::{FitError, Placed, Tile};
use super::super::room::Room;
use super::Look;
use super::dice::Dice;
use super::phases::{is_base, phases};
use super::tower::{Effort, held, tower};
use super::yard::{HookRules, Several, Yard};
use crate::{Polygon, Rect};
use glam::{DVec2, dvec2};

/// After this many attempts the search goes back to the best layout.
const BACK: usize = 16;

/// After this many attempts the search starts again from the first layout.
const AGAIN: usize = 200;

/// How often a result with one tile less is accepted.
const LESS: f64 = 0.15;

/// Steps counted for the space of a block.
const A_BLOCK: usize = 500;

/// The maximum number of blocks.
const MOST_BLOCKS: usize = 12;

const EFFORT: Effort = Effort { bases: 4, kept: 6 };

/// Beyond any face, metres.
const FAR: f64 = 1e4;

/// Blocks of tiles.
type Blocks = Vec<Vec<Placed>>;

/// The best improvement of a layout, or the first with enough tiles.
pub(super) fn climbed(
    space: &Space,
    tile: &Tile,
    rules: &HookRules,
    first: Several,
    look: Look,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    let room = space.room();
    let Some((low, high)) = room.span() else { return Ok(first) };
    let ends = room.slabs.iter().flat_map(|slab| &slab.gaps);
    let (left, right) =
        ends.fold((FAR, -FAR), |(l, r), gap| (gap.a[0].min(gap.a[1]).min(l), gap.b[0].max(gap.b[1]).max(r)));
    let bounds = Rect { min: dvec2(left, low), max: dvec2(right, high) + tile.size };
    let mut climb = Climb { space, room: &room, tile, rules, bounds, dice: Dice::new(1), steps: 0 };
    let (mut here, mut now) = (first.blocks.clone(), first.blocks.clone());
    let mut best = first.clone();
    let mut round = 0;
    while best.count() < look.enough && climb.steps < look.by_chance && !stop() {
        round += 1;
        if round % AGAIN == 0 {
            here.clone_from(&first.blocks);
            now.clone_from(&here);
        } else if round % BACK == 0 {
            now.clone_from(&here);
        }
        let next = climb.anew(&now)?;
        if count(&next) + usize::from(climb.dice.unit() < LESS) >= count(&now) {
            now = next;
        }
        if count(&now) > count(&here) {
            here.clone_from(&now);
        }
        if count(&here) > best.count() {
            best.blocks.clone_from(&here);
        }
    }
    best.by_chance = climb.steps;
    best.steps += climb.steps;
    Ok(best)
}

fn count(blocks: &Blocks) -> usize {
    blocks.iter().map(Vec::len).sum()
}

struct Climb<'a> {
    space: &'a Space,
    room: &'a Room,
    tile: &'a Tile,
    rules: &'a HookRules,
    /// The bounds of all tiles.
    bounds: Rect,
    dice: Dice,
    steps: usize,
}

impl Climb<'_> {
    fn anew(&mut self, now: &Blocks) -> Result<Blocks, FitError> {
        let mut blocks = now.clone();
        let at = self.dice.below(blocks.len());
        let (min, max) = (self.bounds.min, self.bounds.max);
        let point = dvec2(self.dice.between(min.x, max.x), self.dice.between(min.y, max.y));
        let upper = self.dice.below(2) == 0;
        match self.dice.below(6) {
            0 if blocks.len() > 1 => {
                blocks.remove(at);
            }
            0 | 1 => {
                if let Some(block) = blocks.get_mut(at) {
                    let row = self.dice.below(block.last().map_or(0, |placed| placed.row) + 1);
                    block.retain(|placed| if upper { placed.row >= row } else { placed.row < row });
                }
            }
            2 => {
                let stays = |r: &Rect| if upper { r.min.x >= point.x } else { r.max.x <= point.x };
                blocks.iter_mut().for_each(|block| block.retain(|placed| stays(&placed.rect)));
            }
            3 => {
                let stays = |r: &Rect| if upper { r.min.y >= point.y } else { r.max.y <= point.y };
                blocks.iter_mut().for_each(|block| block.retain(|placed| stays(&placed.rect)));
            }
            side => {
                let axis = side - 4;
                let (mut from, mut to) = (DVec2::splat(-FAR), DVec2::splat(FAR));
                if upper {
                    from[axis] = point[axis];
                } else {
                    to[axis] = point[axis];
                }
                let half = Polygon::new(Rect { min: from, max: to }.corners().to_vec());
                blocks = self.block(&self.space.less(&[half]))?.into_iter().collect();
            }
        }
        let mut blocks: Blocks = blocks.iter().map(|block| self.settled(block)).collect();
        blocks.retain(|block| !block.is_empty());
        let mut left = self.space.beside(&blocks, self.rules.apart);
        while let Some(block) = self.block(&left)?.filter(|_| blocks.len() < MOST_BLOCKS) {
            left = left.beside(std::slice::from_ref(&block), self.rules.apart);
            blocks.push(block);
        }
        Ok(blocks)
    }

    /// The best block that is found in some space.
    fn block(&mut self, space: &Space) -> Result<Option<Vec<Placed>>, FitError> {
        let room = space.room();
        let yard = Yard { room: &room, tile: *self.tile, rules: *self.rules };
        let phases = phases(&yard)?;
        let (block, steps) = tower(&yard, &phases, EFFORT, &mut self.dice);
        self.steps += steps + A_BLOCK;
        Ok((!block.is_empty()).then_some(block))
    }

    /// The part of a block that is still valid after some of it is removed: rows count from the lowest that is left.
    fn settled(&self, block: &[Placed]) -> Vec<Placed> {
        let yard = Yard { room: self.room, tile: *self.tile, rules: *self.rules };
        let mut stay: Vec<Placed> = Vec::new();
        let mut below: Vec<f64> = Vec::new();
        for (at, row) in block.chunk_by(|p, q| p.row == q.row).enumerate() {
            let v = row.first().map_or(0.0, |placed| placed.rect.min.y);
            let number = row.first().map_or(0, |placed| placed.row);
            let free = if at == 0 {
                let slab = self.room.slab(v).filter(|_| is_base(self.rules.base, v, self.room.tolerance));
                slab.map_or_else(Vec::new, |slab| slab.foot_at(v).collect())
            } else if stay.last().is_some_and(|last| last.row + 1 == number - first_row(block)) {
                held(&yard, &below)
            } else {
                Vec::new()
            };
            let stands = |u: f64| free.iter().any(|&(a, b)| a - 1e-9 <= u && u <= b + 1e-9);
            let row = row.iter().filter(|placed| stands(placed.rect.min.x));
            let row: Vec<Placed> = row
                .enumerate()
                .map(|(column, placed)| Placed { row: number - first_row(block), column, ..*placed })
                .collect();
            below = row.iter().map(|placed| placed.rect.min.x).collect();
            stay.extend(row);
        }
        stay
    }
}

fn first_row(block: &[Placed]) -> usize {
    block.first().map_or(0, |placed| placed.row)
}
