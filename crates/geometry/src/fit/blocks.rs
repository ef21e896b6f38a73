//! A limited number of whole rectangles of tiles, each anywhere.
//!
//! For each block size (columns by rows), the positions of the whole block are found as for one tile. Up to three
//! rectangles that do not overlap can always be separated by a straight horizontal or vertical cut with one of them
//! alone on a side. Pushing that one as far from the cut as possible leaves the most room for the others. So trying
//! every size, pushed to each side, with the rest in what is left, misses nothing: the search is exact for up to three
//! blocks. For more blocks the same search gives a good layout, and sums of the exact counts for fewer blocks give the
//! bound.

use super::kernel::{Allowed, Base, FitError, Placed, Tile};
use super::room::{Gap, Room};
use super::row_lines::domains;
use crate::Rect;
use chalkcourse_words::{Said, later as words};
use glam::{DVec2, dvec2};
use serde::{Deserialize, Serialize};
use std::cell::Cell;
use std::collections::HashMap;

/// Limits on the blocks.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct BlockRules {
    /// The maximum number of blocks.
    pub most: usize,
    /// The minimum distance between blocks along u or along v, metres.
    pub apart: f64,
    /// Where the lower edge of each may be.
    #[serde(default)]
    pub base: Base,
}

/// One block.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Block {
    /// Tiles next to each other.
    pub columns: usize,
    /// Tiles above each other.
    pub rows: usize,
    /// The whole block.
    pub rect: Rect,
    /// Its tiles; rows and columns are counted within the block.
    pub placed: Vec<Placed>,
}

/// The blocks that were found, and what is proved.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Blocks {
    /// The blocks, largest first.
    pub blocks: Vec<Block>,
    /// Number of tiles in all of them.
    pub count: usize,
    /// Upper bound on the tiles of any blocks under the same rules.
    pub bound: usize,
    /// What was searched.
    pub method: Said,
}

/// Lays at most `rules.most` rectangles of tiles with as many tiles as possible.
///
/// Exact for up to three blocks unless `stop` ends it early; otherwise `bound` shows what is left open. Errors: an
/// invalid tile, tolerance or corner; a negative distance.
pub fn fit_blocks(
    allowed: &Allowed,
    tile: &Tile,
    rules: &BlockRules,
    stop: &dyn Fn() -> bool,
) -> Result<Blocks, FitError> {
    if !(rules.apart >= 0.0 && rules.apart < 1e5) {
        return Err(FitError::Choice(words::fill::blocks_m_apart_give_0(&rules.apart)));
    }
    let mut yard = Yard::new(allowed, tile, rules, stop)?;
    let mut exact: Vec<usize> = vec![0];
    let mut found = Vec::new();
    let everywhere = Rect { min: DVec2::splat(-1e7), max: DVec2::splat(1e7) };
    for most in 1..=rules.most.min(64) {
        let before = total(&found);
        let more = yard.best(&everywhere, most, before);
        if total(&more) > before {
            found = more;
        }
        let whole = !yard.stopped.get();
        let sum = (1..most).filter_map(|n| Some(exact.get(n)? + exact.get(most - n)?)).min();
        let bound =
            if most <= 3 && whole { total(&found) } else { sum.unwrap_or(usize::MAX).min(yard.area_bound) };
        exact.push(bound.max(total(&found)));
        if !whole || (most > 3 && total(&found) == before) {
            // Stopped; or one more block is too much for the search, or not worth the time.
            let last = exact.last().copied().unwrap_or(0);
            for n in most + 1..=rules.most.min(64) {
                let sum = (1..n).filter_map(|k| Some(exact.get(k)? + exact.get(n - k)?)).min();
                exact.push(sum.unwrap_or(last).min(yard.area_bound));
            }
            break;
        }
    }
    let count = total(&found);
    let bound = exact.get(rules.most.min(64)).copied().unwrap_or(0).max(count);
    let blocks = found.into_iter().map(|spot| spot.block(tile)).collect();
    let end =
        if yard.stopped.get() { words::fill::STOPPED_BEFORE_THE_END } else { words::fill::RAN_TO_ITS_END };
    let method = words::fill::sizes_of_blocks_each_at(
        &yard.sizes.len(),
        &rules.apart,
        &if rules.most <= 3 {
            words::fill::EVERY_PARTING_BY_STRAIGHT_CUTS
        } else {
            words::fill::PARTINGS_BY_STRAIGHT_CUTS_THE
        },
        &end,
    );
    Ok(Blocks { blocks, count, bound, method })
}

/// A block of some size at some place.
#[derive(Clone, Copy, Debug)]
struct Spot {
    columns: usize,
    rows: usize,
    rect: Rect,
}

impl Spot {
    fn block(self, tile: &Tile) -> Block {
        let mut placed = Vec::new();
        for row in 0..self.rows {
            for column in 0..self.columns {
                let at = self.rect.min + dvec2(column as f64, row as f64) * tile.pitch();
                placed.push(Placed { row, column, rect: Rect::at(at, tile.size) });
            }
        }
        Block { columns: self.columns, rows: self.rows, rect: self.rect, placed }
    }
}

fn total(spots: &[Spot]) -> usize {
    spots.iter().map(|s| s.columns * s.rows).sum()
}

struct Yard<'a> {
    /// Sizes that fit somewhere, largest count first, with their positions.
    sizes: Vec<((usize, usize), Room)>,
    tile: Tile,
    apart: f64,
    area_bound: usize,
    /// Known results for one block in a window.
    known: HashMap<[u64; 4], Option<Spot>>,
    stop: &'a dyn Fn() -> bool,
    stopped: Cell<bool>,
}

#[derive(Clone, Copy)]
enum Side {
    Left,
    Right,
    Below,
    Above,
}

impl<'a> Yard<'a> {
    fn new(
        allowed: &Allowed,
        tile: &Tile,
        rules: &BlockRules,
        stop: &'a dyn Fn() -> bool,
    ) -> Result<Self, FitError> {
        let mut yard = Self {
            sizes: Vec::new(),
            tile: *tile,
            apart: rules.apart,
            area_bound: 0,
            known: HashMap::new(),
            stop,
            stopped: Cell::new(false),
        };
        let area: f64 = allowed.region.iter().map(crate::Polygon::area).sum();
        super::kernel::check(allowed, tile)?;
        yard.area_bound = (area / (tile.size.x * tile.size.y) * (1.0 + 1e-6)) as usize + 1;
        // A block that fits nowhere doesn't fit with more columns or rows either.
        let mut widest = usize::MAX;
        for rows in 1.. {
            let mut columns = 0;
            while columns < widest {
                if stop() {
                    yard.stopped.set(true);
                    break;
                }
                let whole = Tile { size: yard.size(columns + 1, rows), gap: DVec2::ZERO };
                let mut room = Room::footed(allowed, &whole)?;
                if rules.base != Base::Anywhere {
                    let domains = domains(&room, &whole, rules.base)?;
                    room = room.within(&domains.iter().map(|d| (d.lo, d.hi)).collect::<Vec<_>>());
                }
                if room.slabs.is_empty() {
                    break;
                }
                columns += 1;
                yard.sizes.push(((columns, rows), room));
            }
            widest = columns;
            if columns == 0 || yard.stopped.get() {
                break;
            }
        }
        yard.sizes.sort_by_key(|((columns, rows), _)| std::cmp::Reverse(columns * rows));
        Ok(yard)
    }

    fn size(&self, columns: usize, rows: usize) -> DVec2 {
        dvec2(columns as f64, rows as f64) * self.tile.pitch() - self.tile.gap
    }

    /// The best of at most `most` blocks within a window; nothing if it would not beat `least`.
    fn best(&mut self, window: &Rect, most: usize, least: usize) -> Vec<Spot> {
        let Some(one) = self.single(window) else { return Vec::new() };
        let largest = one.columns * one.rows;
        let mut best = if largest > least { vec![one] } else { Vec::new() };
        if most < 2 {
            return best;
        }
        let mut least = least.max(largest);
        let sides: &[Side] = if most == 2 {
            &[Side::Left, Side::Below]
        } else {
            &[Side::Left, Side::Below, Side::Right, Side::Above]
        };
        for index in 0..self.sizes.len() {
            let (columns, rows) = self.sizes[index].0;
            let count = columns * rows;
            if count + (most - 1) * largest <= least {
                break;
            }
            for &side in sides {
                if (self.stop)() {
                    self.stopped.set(true);
                    return best;
                }
                let Some(rect) = self.pushed(index, window, side) else { continue };
                let rest = self.beside(window, &rect, side);
                let Some(next) = self.single(&rest) else { continue };
                if count + (most - 1) * next.columns * next.rows <= least {
                    continue;
                }
                let mut others = self.best(&rest, most - 1, least.saturating_sub(count));
                if count + total(&others) > least && !others.is_empty() {
                    least = count + total(&others);
                    others.insert(0, Spot { columns, rows, rect });
                    best = others;
                }
            }
        }
        best.sort_by_key(|s| std::cmp::Reverse(s.columns * s.rows));
        best
    }

    fn single(&mut self, window: &Rect) -> Option<Spot> {
        let key = [window.min.x, window.min.y, window.max.x, window.max.y].map(f64::to_bits);
        if let Some(&known) = self.known.get(&key) {
            return known;
        }
        let found = (0..self.sizes.len()).find_map(|index| {
            let (columns, rows) = self.sizes[index].0;
            Some(Spot { columns, rows, rect: self.pushed(index, window, Side::Below)? })
        });
        if self.known.len() < 1_000_000 {
            self.known.insert(key, found);
        }
        found
    }

    /// A block of a size, pushed to a side as far as the window and the face allow.
    fn pushed(&self, index: usize, window: &Rect, side: Side) -> Option<Rect> {
        let ((columns, rows), room) = self.sizes.get(index)?;
        let size = self.size(*columns, *rows);
        let window = Rect { min: window.min, max: window.max - size };
        if window.size().min_element() < 0.0 {
            return None;
        }
        let score = |p: DVec2| match side {
            Side::Left => -p.x,
            Side::Right => p.x,
            Side::Below => -p.y,
            Side::Above => p.y,
        };
        let mut best: Option<DVec2> = None;
        for slab in &room.slabs {
            if slab.hi < window.min.y || slab.lo > window.max.y {
                continue;
            }
            for gap in &slab.gaps {
                for p in clipped(slab.lo, slab.hi, gap, &window) {
                    if best.is_none_or(|b| score(p) > score(b)) {
                        best = Some(p);
                    }
                }
            }
        }
        best.map(|p| Rect::at(p, size))
    }

    /// What is left of a window beside a block that was pushed to a side.
    fn beside(&self, window: &Rect, block: &Rect, side: Side) -> Rect {
        let mut rest = *window;
        match side {
            Side::Left => rest.min.x = block.max.x + self.apart,
            Side::Right => rest.max.x = block.min.x - self.apart,
            Side::Below => rest.min.y = block.max.y + self.apart,
            Side::Above => rest.max.y = block.min.y - self.apart,
        }
        rest
    }
}

/// The corners of the part of a trapezoid of positions that is in the window.
pub(super) fn clipped(lo: f64, hi: f64, gap: &Gap, window: &Rect) -> Vec<DVec2> {
    let left = gap.a[0].min(gap.a[1]);
    let right = gap.b[0].max(gap.b[1]);
    if right < window.min.x || left > window.max.x {
        return Vec::new();
    }
    let mut corners =
        vec![dvec2(gap.a[0], lo), dvec2(gap.b[0], lo), dvec2(gap.b[1], hi), dvec2(gap.a[1], hi)];
    for (axis, limit, sign) in
        [(0, window.min.x, 1.0), (0, window.max.x, -1.0), (1, window.min.y, 1.0), (1, window.max.y, -1.0)]
    {
        let depth = |p: DVec2| (p[axis] - limit) * sign;
        if corners.iter().all(|&p| depth(p) >= 0.0) {
            continue;
        }
        let mut kept = Vec::with_capacity(corners.len() + 1);
        for (i, &p) in corners.iter().enumerate() {
            let q = corners[(i + 1) % corners.len()];
            let (from, to) = (depth(p), depth(q));
            if from >= 0.0 {
                kept.push(p);
            }
            if (from > 0.0 && to < 0.0) || (from < 0.0 && to > 0.0) {
                kept.push(p + (q - p) * (from / (from - to)));
            }
        }
        corners = kept;
    }
    corners
}

#[cfg(test)]
mod tests;
