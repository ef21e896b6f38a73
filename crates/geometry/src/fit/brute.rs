//! For tests only: an independent, slow way to the same results, by testing whether single rectangles fit; and random
//! faces to test with.

use super::kernel::{Allowed, Constraint, FINE, Tile};
use crate::{Polygon, Rect};
use glam::{DVec2, dvec2};

/// A small random number generator (xorshift), the same on every machine.
pub(super) struct Dice(u64);

impl Dice {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1)
    }
    pub(super) fn below(&mut self, n: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as usize % n
    }
    pub(super) fn between(&mut self, lo: f64, hi: f64) -> f64 {
        lo + (hi - lo) * (self.below(1 << 30) as f64 / (1u64 << 30) as f64)
    }
}

pub(super) fn shape(points: &[(f64, f64)]) -> Polygon {
    Polygon::new(points.iter().map(|&(x, y)| dvec2(x, y)).collect())
}

pub(super) fn rectangle(u: f64, v: f64, w: f64, h: f64) -> Polygon {
    Polygon::new(Rect::at(dvec2(u, v), dvec2(w, h)).corners().to_vec())
}

pub(super) fn tile(w: f64, h: f64, gap: f64) -> Tile {
    Tile { size: dvec2(w, h), gap: DVec2::splat(gap) }
}

pub(super) fn face(region: Polygon, blocked: Vec<Polygon>) -> Allowed {
    let named = blocked.into_iter().enumerate().map(|(i, shape)| Constraint { id: i, shape });
    Allowed { region: vec![region], blocked: named.collect(), foot: None, tolerance: FINE }
}

/// A face of roughly `width` by `height`: a rectangle, a trapezoid, a convex or star-shaped outline, an L, or a notched
/// one; with holes, clearances that touch each other or the border, slivers, and blocked corners.
pub(super) fn random_face(dice: &mut Dice, width: f64, height: f64) -> Allowed {
    let (w, h) = (dice.between(0.5, 1.0) * width, dice.between(0.5, 1.0) * height);
    let mut region = match dice.below(6) {
        0 => rectangle(0.0, 0.0, w, h),
        1 => {
            let (a, b) = (dice.between(0.0, w / 2.0), dice.between(0.0, w / 2.0));
            shape(&[(0.0, 0.0), (w, 0.0), (w - b, h), (a, h)])
        }
        2 => ring(dice, w, h, 0.0),
        3 => ring(dice, w, h, 0.6),
        4 => {
            let (a, b) = (dice.between(0.3, 0.7) * w, dice.between(0.3, 0.7) * h);
            shape(&[(0.0, 0.0), (w, 0.0), (w, b), (a, b), (a, h), (0.0, h)])
        }
        _ => {
            let (a, b) = (dice.between(0.3, 0.6) * w, dice.between(0.1, 0.8) * h);
            shape(&[(0.0, 0.0), (w, 0.0), (w, h), (a + 0.2, h), (a, b), (a - 0.1, h), (0.0, h)])
        }
    };
    if dice.below(3) == 0 {
        let at = dvec2(w * 0.5, h * 0.4);
        region.holes.push(ring(dice, 0.8, 0.6, 0.3).map(|p| p + at - dvec2(0.4, 0.3)).outer);
    }
    let mut blocked: Vec<Polygon> = Vec::new();
    for _ in 0..dice.below(4) {
        let at = dvec2(dice.between(0.0, w), dice.between(0.0, h));
        blocked.push(match dice.below(4) {
            // On a coarse lattice, so that borders touch exactly.
            0 => rectangle((at.x * 2.0).round() / 2.0, (at.y * 2.0).round() / 2.0, 0.5, 0.5),
            1 => ring(dice, 0.9, 0.7, 0.0).map(|p| p + at),
            2 => {
                let along = DVec2::from_angle(dice.between(0.0, 3.2)) * dice.between(0.5, 3.0);
                let thin = along.perp().normalize() * 1e-4;
                Polygon::new(vec![at, at + along, at + along + thin, at + thin])
            }
            _ => shape(&[(0.0, 0.0), (0.8, 0.0), (0.8, 0.8), (0.4, 0.2), (0.0, 0.8)]).map(|p| p + at),
        });
    }
    face(region, blocked)
}

fn ring(dice: &mut Dice, w: f64, h: f64, uneven: f64) -> Polygon {
    let n = 4 + dice.below(4);
    let turn = dice.between(0.0, 1.0);
    Polygon::new(
        (0..n)
            .map(|i| {
                let angle = std::f64::consts::TAU * (i as f64 + turn) / n as f64;
                let radius = 1.0 - uneven * dice.between(0.0, 1.0);
                dvec2(w, h) / 2.0 * (DVec2::ONE + DVec2::from_angle(angle) * radius)
            })
            .collect(),
    )
}

/// The part of the side `a`–`b` within the open rectangle, if any.
fn clip(a: DVec2, b: DVec2, rect: &Rect) -> Option<(DVec2, DVec2)> {
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    for axis in 0..2 {
        let (p, d) = (a[axis], b[axis] - a[axis]);
        let (lo, hi) = (rect.min[axis], rect.max[axis]);
        if d == 0.0 {
            if p <= lo || p >= hi {
                return None;
            }
        } else {
            let (s, t) = ((lo - p) / d, (hi - p) / d);
            from = from.max(s.min(t));
            to = to.min(s.max(t));
        }
    }
    (from < to).then(|| (a + (b - a) * from, a + (b - a) * to))
}

/// Whether a tile with this lower left corner fits when shrunk by `spare` on all sides.
pub(super) fn stands(allowed: &Allowed, tile: &Tile, p: DVec2, spare: f64) -> bool {
    let rect = Rect::at(p, tile.size).grown(-spare);
    let clear = |shape: &Polygon| shape.sides().all(|(_, _, a, b)| clip(a, b, &rect).is_none());
    allowed.region.iter().any(|shape| clear(shape) && shape.contains(rect.centre()))
        && allowed.blocked.iter().all(|c| clear(&c.shape) && !c.shape.contains(rect.centre()))
}

pub(super) fn all_sides(allowed: &Allowed) -> Vec<(DVec2, DVec2)> {
    let shapes = allowed.region.iter().chain(allowed.blocked.iter().map(|c| &c.shape));
    shapes.flat_map(|shape| shape.sides().map(|(_, _, a, b)| (a, b)).collect::<Vec<_>>()).collect()
}

/// Positions along u at which a tile at `v` just touches something.
pub(super) fn touching(sides: &[(DVec2, DVec2)], tile: &Tile, v: f64) -> Vec<f64> {
    let strip = Rect { min: dvec2(-1e6, v + FINE), max: dvec2(1e6, v + tile.size.y - FINE) };
    let mut touching = Vec::new();
    for &(a, b) in sides {
        if let Some((p, q)) = clip(a, b, &strip) {
            touching.extend([p.x.min(q.x) - tile.size.x + FINE, p.x.max(q.x) - FINE]);
        }
    }
    touching.sort_unstable_by(f64::total_cmp);
    touching
}

/// The number of tiles in a row at `v`.
pub(super) fn row_count(allowed: &Allowed, sides: &[(DVec2, DVec2)], tile: &Tile, v: f64) -> usize {
    let touching = touching(sides, tile, v);
    let (mut count, mut cursor) = (0, f64::NEG_INFINITY);
    // Left to right: the next tile is placed as near as possible, at the cursor or where it just touches something.
    loop {
        let from_here = std::iter::once(cursor).filter(|c| c.is_finite());
        let next = from_here
            .chain(touching.iter().copied().filter(|&u| u > cursor))
            .find(|&u| stands(allowed, tile, dvec2(u, v), FINE + 1e-12));
        let Some(u) = next else { return count };
        count += 1;
        cursor = u + tile.pitch().x;
    }
}

pub(super) fn span(allowed: &Allowed) -> (f64, f64) {
    let ys = allowed.region.iter().flat_map(|shape| &shape.outer).map(|p| p.y);
    ys.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), y| (a.min(y), b.max(y)))
}

/// Every base line at which anything can change: where corners meet the lower or upper edge of a row, and where pairs
/// of sides (or their ends, via the levels) are whole pitches apart; and the midpoints between those.
pub(super) fn base_lines(allowed: &Allowed, tile: &Tile, across_rows: bool) -> Vec<f64> {
    let sides = all_sides(allowed);
    let (pitch, (lo, hi)) = (tile.pitch(), span(allowed));
    let fold = |v: f64| lo + (v - lo).rem_euclid(pitch.y);
    let mut lines = vec![lo, lo + pitch.y];
    for &(a, _) in &sides {
        lines.extend([fold(a.y), fold(a.y - tile.size.y)]);
    }
    // u = c + s v for each interval end that a slanted side, or a corner, causes in a row: at its lower and upper edge,
    // row by row.
    let rows = ((hi - lo) / pitch.y) as usize + 1;
    let mut ends: Vec<(f64, f64)> = Vec::new();
    for k in 0..if across_rows { rows } else { 1 } {
        for &(a, b) in &sides {
            ends.push((a.x, 0.0));
            if a.y != b.y {
                let slope = (b.x - a.x) / (b.y - a.y);
                for lift in [0.0, tile.size.y] {
                    ends.push((a.x + slope * (k as f64 * pitch.y + lift - a.y), slope));
                }
            }
        }
    }
    for &(c, s) in &ends {
        for &(d, t) in ends.iter().filter(|e| (e.1 - s).abs() > 1e-12) {
            for extra in [0.0, tile.size.x, -tile.size.x] {
                let at = |v: f64| (c - d + extra + (s - t) * v) / pitch.x;
                let (from, to) = if across_rows { (lo, lo + pitch.y) } else { (lo, hi) };
                let (p, q) = (at(from).min(at(to)), at(from).max(at(to)));
                let mut n = p.ceil();
                while n <= q {
                    lines.push(fold((n * pitch.x - (c - d + extra)) / (s - t)));
                    n += 1.0;
                }
            }
        }
    }
    lines.sort_unstable_by(f64::total_cmp);
    lines.dedup_by(|a, b| (*a - *b).abs() < 1e-10);
    lines.windows(2).map(|p| (p[0] + p[1]) / 2.0).collect()
}

/// The optimum of sliding rows, by testing every cell between critical base lines, or `samples` random ones.
pub(super) fn sliding(allowed: &Allowed, tile: &Tile, samples: Option<(&mut Dice, usize)>) -> usize {
    let sides = all_sides(allowed);
    let (lo, hi) = span(allowed);
    let lines = match samples {
        Some((dice, n)) => (0..n).map(|_| dice.between(lo, lo + tile.pitch().y)).collect(),
        None => base_lines(allowed, tile, false),
    };
    let rows = ((hi - lo) / tile.pitch().y) as usize + 1;
    let count =
        |v: f64| (0..rows).map(|k| row_count(allowed, &sides, tile, v + k as f64 * tile.pitch().y)).sum();
    lines.into_iter().map(count).max().unwrap_or(0)
}

/// The tiles of one grid, with odd rows offset by `shift` of a pitch, by row and column.
pub(super) fn grid_cells(allowed: &Allowed, tile: &Tile, shift: f64, at: DVec2) -> Vec<(usize, i64)> {
    let (pitch, (lo, hi)) = (tile.pitch(), span(allowed));
    let us = || allowed.region.iter().flat_map(|shape| &shape.outer).map(|p| p.x);
    let (left, right) = (us().fold(f64::INFINITY, f64::min), us().fold(f64::NEG_INFINITY, f64::max));
    let mut cells = Vec::new();
    for k in 0..((hi - lo) / pitch.y) as usize + 1 {
        for n in ((left - at.x) / pitch.x) as i64 - 2..=((right - at.x) / pitch.x) as i64 + 1 {
            let aside = if k % 2 == 1 { shift } else { 0.0 };
            let p = at + dvec2((n as f64 + aside) * pitch.x, k as f64 * pitch.y);
            if stands(allowed, tile, p, FINE) {
                cells.push((k, n));
            }
        }
    }
    cells
}

/// The largest number of them that are carried, starting from one base row.
pub(super) fn carried_count(cells: &[(usize, i64)], shift: f64) -> usize {
    let bases = cells.iter().map(|c| c.0).max().map_or(0, |top| top + 1);
    (0..bases)
        .map(|base| {
            let mut kept: Vec<(usize, i64)> = Vec::new();
            for &(k, n) in cells.iter().filter(|c| c.0 >= base) {
                let other = if shift == 0.0 {
                    n
                } else if k % 2 == 1 {
                    n + 1
                } else {
                    n - 1
                };
                if k == base || [n, other].iter().all(|&m| kept.contains(&(k - 1, m))) {
                    kept.push((k, n));
                }
            }
            kept.len()
        })
        .max()
        .unwrap_or(0)
}

/// The optimum of one grid over every cell of offsets, or over `samples` random offsets.
pub(super) fn grid(
    allowed: &Allowed,
    tile: &Tile,
    shift: f64,
    hooked: bool,
    samples: Option<(&mut Dice, usize)>,
) -> usize {
    let pitch = tile.pitch();
    let lo = span(allowed).0;
    let count = |at: DVec2| {
        let cells = grid_cells(allowed, tile, shift, at);
        if hooked { carried_count(&cells, shift) } else { cells.len() }
    };
    if let Some((dice, n)) = samples {
        return (0..n)
            .map(|_| count(dvec2(dice.between(0.0, pitch.x), dice.between(lo, lo + pitch.y))))
            .max()
            .unwrap_or(0);
    }
    let sides = all_sides(allowed);
    let rows = ((span(allowed).1 - lo) / pitch.y) as usize + 1;
    let mut best = 0;
    for v in base_lines(allowed, tile, true) {
        let mut us: Vec<f64> = (0..rows)
            .flat_map(|k| {
                let aside = if k % 2 == 1 { shift * pitch.x } else { 0.0 };
                touching(&sides, tile, v + k as f64 * pitch.y).into_iter().map(move |u| u - aside)
            })
            .map(|u| u.rem_euclid(pitch.x))
            .chain([0.0, pitch.x])
            .collect();
        us.sort_unstable_by(f64::total_cmp);
        us.dedup_by(|a, b| (*a - *b).abs() < 1e-10);
        best = us.windows(2).map(|p| count(dvec2((p[0] + p[1]) / 2.0, v))).fold(best, usize::max);
    }
    best
}
