//! Forbidden positions from shapes: the complement of the region and every blocked shape are cut into convex pieces,
//! and each piece swept by the tile gives one convex patch of forbidden positions.

use super::kernel::{Allowed, Foot, Tile};
use crate::Rect;
use crate::pieces::{convex_pieces, trapezoids};
use glam::{DVec2, dvec2};

/// A convex open patch of forbidden positions: `v` strictly between `lo` and `hi`, u strictly between the two chains.
#[derive(Clone, Debug)]
pub(super) struct Patch {
    pub(super) lo: f64,
    pub(super) hi: f64,
    /// (v, u) by increasing v; convex.
    left: Vec<(f64, f64)>,
    /// (v, u) by increasing v; concave.
    right: Vec<(f64, f64)>,
}

impl Patch {
    /// The positions inside a rectangle.
    pub(super) fn rectangle(rect: Rect) -> Self {
        let Rect { min, max } = rect;
        let side = |u: f64| vec![(min.y, u), (max.y, u)];
        Self { lo: min.y, hi: max.y, left: side(min.x), right: side(max.x) }
    }
    pub(super) fn left_at(&self, v: f64) -> f64 {
        along(&self.left, v)
    }
    pub(super) fn right_at(&self, v: f64) -> f64 {
        along(&self.right, v)
    }
    /// The patch moved by a vector.
    pub(super) fn shifted(mut self, by: DVec2) -> Self {
        (self.lo, self.hi) = (self.lo + by.y, self.hi + by.y);
        for p in self.left.iter_mut().chain(&mut self.right) {
            *p = (p.0 + by.y, p.1 + by.x);
        }
        self
    }
    /// All v at which one of the sides bends.
    pub(super) fn bends(&self) -> impl Iterator<Item = f64> {
        self.left.iter().chain(&self.right).map(|p| p.0)
    }
}

fn along(chain: &[(f64, f64)], v: f64) -> f64 {
    let after = chain.partition_point(|p| p.0 <= v);
    match (after.checked_sub(1).and_then(|i| chain.get(i)), chain.get(after)) {
        (Some(&(v0, u0)), Some(&(v1, u1))) => u0 + (u1 - u0) * ((v - v0) / (v1 - v0)),
        (Some(&(_, u)), None) | (None, Some(&(_, u))) => u,
        (None, None) => f64::NAN,
    }
}

/// The patches of everything that forbids positions, for a tile shrunk by the tolerance on all sides.
pub(super) fn patches(allowed: &Allowed, tile: &Tile, bounds: Rect) -> Vec<Patch> {
    let t = allowed.tolerance;
    let mut patches: Vec<Patch> =
        outside(allowed, tile, bounds).iter().filter_map(|piece| swept(piece, tile.size, t)).collect();
    for constraint in &allowed.blocked {
        for piece in convex_pieces(&constraint.shape, t) {
            patches.extend(swept(&piece, tile.size, t));
        }
    }
    patches
}

/// The foot below a tile as a tile of its own. It is at least as thick as the arithmetic can resolve, so that a foot
/// without depth is the lower edge of the tile.
pub(super) fn foot_strip(foot: &Foot, tile: &Tile, tolerance: f64) -> Tile {
    Tile { size: dvec2(tile.size.x, foot.depth.max(10.0 * tolerance)), gap: DVec2::ZERO }
}

/// The patches of positions of a tile of the lowest row at which its foot would overlap something that it must not.
pub(super) fn foot_patches(allowed: &Allowed, foot: &Foot, tile: &Tile, bounds: Rect) -> Vec<Patch> {
    let t = allowed.tolerance;
    let strip = foot_strip(foot, tile, t);
    let around = if foot.within.is_some() { outside(allowed, &strip, bounds) } else { Vec::new() };
    let blocked = foot.blocked.iter().flat_map(|constraint| convex_pieces(&constraint.shape, t));
    let swept = around.into_iter().chain(blocked).filter_map(|piece| swept(&piece, strip.size, t));
    swept.map(|patch| patch.shifted(dvec2(0.0, foot.depth))).collect()
}

fn outside(allowed: &Allowed, tile: &Tile, bounds: Rect) -> Vec<Vec<DVec2>> {
    let sides: Vec<_> = allowed
        .region
        .iter()
        .flat_map(|shape| shape.oriented().sides().map(|(_, _, a, b)| (a, b)).collect::<Vec<_>>())
        .collect();
    let around = bounds.grown(tile.size.max_element());
    trapezoids(&sides, Some((around.min.x, around.max.x)), allowed.tolerance)
}

/// A convex piece swept by a tile of `size` shrunk by `t` on all sides. `None` without corners.
pub(super) fn swept(piece: &[DVec2], size: DVec2, t: f64) -> Option<Patch> {
    let mut points: Vec<(f64, f64)> = piece.iter().map(|p| (p.y, p.x)).collect();
    points.sort_unstable_by(|p, q| p.0.total_cmp(&q.0).then(p.1.total_cmp(&q.1)));
    let (width, height) = (size.x - 2.0 * t, size.y - 2.0 * t);
    // The tile first touches the left side with its upper edge, then along its height, last with its lower edge.
    let left = sweep_chain(&hull(&points, 1.0), height, 1.0, -width - t, t);
    let right = sweep_chain(&hull(&points, -1.0), height, -1.0, -t, t);
    let (lo, hi) = (left.first()?.0, left.last()?.0);
    Some(Patch { lo, hi, left, right })
}

fn sweep_chain(chain: &[(f64, f64)], height: f64, sign: f64, add: f64, t: f64) -> Vec<(f64, f64)> {
    let far = (0..chain.len()).min_by(|&i, &j| (chain[i].1 * sign).total_cmp(&(chain[j].1 * sign)));
    let Some(far) = far else { return Vec::new() };
    let below = chain[..=far].iter().map(|&(v, u)| (v - height - t, u + add));
    let above = chain[far..].iter().map(|&(v, u)| (v - t, u + add));
    below.chain(above).collect()
}

/// The side of the convex hull with the smallest u (`sign` 1) or the largest (−1), by increasing v.
fn hull(points: &[(f64, f64)], sign: f64) -> Vec<(f64, f64)> {
    let mut chain: Vec<(f64, f64)> = Vec::new();
    for &(v, u) in points {
        if chain.last().is_some_and(|last| last.0 == v) {
            if chain.last().is_some_and(|last| u * sign >= last.1 * sign) {
                continue;
            }
            chain.pop();
        }
        while let [.., a, b] = chain.as_slice() {
            let turn = (b.0 - a.0) * (u - a.1) - (b.1 - a.1) * (v - a.0);
            if turn * sign > 0.0 {
                break;
            }
            chain.pop();
        }
        chain.push((v, u));
    }
    chain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_swept_triangle_has_the_sides_of_its_sum_with_the_tile() {
        let piece = [dvec2(0.0, 0.0), dvec2(4.0, 0.0), dvec2(2.0, 4.0)];
        let patch = swept(&piece, dvec2(1.0, 1.0), 0.0).unwrap();
        assert_eq!((patch.lo, patch.hi), (-1.0, 4.0));
        // At v = -0.5 the strip covers -0.5..0.5: the whole base. At v = 2 it starts half way up.
        assert_eq!((patch.left_at(-0.5), patch.right_at(-0.5)), (-1.0, 4.0));
        assert_eq!((patch.left_at(2.0), patch.right_at(2.0)), (0.0, 3.0));
    }
}
