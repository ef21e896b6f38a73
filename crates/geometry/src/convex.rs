//! Convex pieces of shapes against axis-aligned rectangles: clearance, penetration depth, offset outlines, and the interval of a
//! move that is too near.
//!
//! A rectangle overlaps a piece exactly when its centre is in the Minkowski sum of the piece and the rectangle, which is convex
//! too: every question here reduces to a point and a convex outline.

use crate::pieces::convex_pieces;
use crate::polygon::distance_to_segment;
use crate::{Polygon, Rect};
use glam::DVec2;
use std::f64::consts::{PI, TAU};

/// A convex piece: a point, a segment, or a counter-clockwise outline.
#[derive(Clone, Debug, PartialEq)]
pub struct Convex {
    corners: Vec<DVec2>,
}

/// An element of the offset curve around a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Border {
    /// Straight, with the piece on its left.
    Line(DVec2, DVec2),
    /// Around a corner, counter-clockwise.
    Arc {
        /// The corner.
        centre: DVec2,
        /// Metres.
        radius: f64,
        /// Start direction, radians from u.
        from: f64,
        /// Turn, radians, not negative.
        turn: f64,
    },
}

/// Shrinks a moving rectangle on all sides, so that one sliding along a limit does not catch on it.
const SLIDE: f64 = 1e-6;

impl Convex {
    /// The convex hull of some points (Andrew's monotone chain); `None` if there are none.
    pub fn around(points: impl IntoIterator<Item = DVec2>) -> Option<Self> {
        let mut points: Vec<DVec2> = points.into_iter().collect();
        points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
        points.dedup();
        if points.len() < 3 {
            return (!points.is_empty()).then_some(Self { corners: points });
        }
        let half = |points: &mut dyn Iterator<Item = DVec2>| {
            let mut chain: Vec<DVec2> = Vec::new();
            for p in points {
                while let [.., a, b] = chain[..]
                    && (b - a).perp_dot(p - b) <= 0.0
                {
                    chain.pop();
                }
                chain.push(p);
            }
            chain.pop();
            chain
        };
        let mut corners = half(&mut points.iter().copied());
        corners.extend(half(&mut points.iter().rev().copied()));
        Some(Self { corners })
    }

    /// A segment; a point if both ends coincide.
    pub fn segment(a: DVec2, b: DVec2) -> Self {
        Self { corners: if a == b { vec![a] } else { vec![a, b] } }
    }

    /// A rectangle.
    pub fn rect(rect: &Rect) -> Self {
        Self::around(rect.corners()).unwrap_or_else(|| Self { corners: vec![rect.min] })
    }

    /// Convex pieces that make up a shape; anything narrower than `tolerance` (metres) may be left out. A self-intersecting
    /// outline covers everything that it winds around.
    pub fn pieces(shape: &Polygon, tolerance: f64) -> Vec<Self> {
        convex_pieces(shape, tolerance).into_iter().filter_map(Self::around).collect()
    }

    /// Its corners.
    pub fn corners(&self) -> &[DVec2] {
        &self.corners
    }

    /// Its axis-aligned bounding box.
    pub fn bounds(&self) -> Rect {
        let none = Rect { min: DVec2::ZERO, max: DVec2::ZERO };
        Rect::around(self.corners.iter().copied()).unwrap_or(none)
    }

    /// Scaled along u and v by positive factors.
    pub fn stretched(&self, by: DVec2) -> Self {
        Self { corners: self.corners.iter().map(|&p| p * by).collect() }
    }

    fn sides(&self) -> impl Iterator<Item = (DVec2, DVec2)> + '_ {
        let n = self.corners.len();
        (0..n).map(move |i| (self.corners[i], self.corners[(i + 1) % n]))
    }

    /// Whether a point is inside; never for a segment or a point.
    fn contains(&self, p: DVec2) -> bool {
        self.corners.len() > 2 && self.sides().all(|(a, b)| (b - a).perp_dot(p - a) >= 0.0)
    }

    /// Distance of a rectangle, metres; if they overlap, minus the shortest move that separates them.
    pub fn clearance(&self, rect: &Rect) -> f64 {
        let apart = if self.contains(rect.centre()) {
            0.0
        } else {
            self.sides().map(|(a, b)| rect.distance_to_segment(a, b)).fold(f64::INFINITY, f64::min)
        };
        if apart > 0.0 {
            return apart;
        }
        let swept = self.swept(rect.size() / 2.0);
        let middle = rect.centre();
        -swept.sides().map(|(a, b)| distance_to_segment(middle, a, b)).fold(f64::INFINITY, f64::min)
    }

    /// The Minkowski sum with a rectangle of the given half size.
    fn swept(&self, half: DVec2) -> Self {
        let offsets = Rect { min: -half, max: half }.corners();
        let points = self.corners.iter().flat_map(|&c| offsets.iter().map(move |&o| c + o));
        Self::around(points).unwrap_or_else(|| self.clone())
    }

    /// Prepares moves of a rectangle past the piece.
    pub fn moves_of(&self, rect: &Rect) -> Moves {
        Moves { swept: self.swept((rect.size() / 2.0 - SLIDE).max(DVec2::ZERO)), from: rect.centre() }
    }

    /// The offset curve at distance `reach`: exact, counter-clockwise.
    pub fn border(&self, reach: f64) -> Vec<Border> {
        let mut border = Vec::new();
        for (corner, from, turn, next) in self.turns() {
            if reach > 0.0 {
                border.push(Border::Arc { centre: corner, radius: reach, from, turn });
            }
            if next != corner {
                let out = DVec2::from_angle(from + turn) * reach;
                border.push(Border::Line(corner + out, next + out));
            }
        }
        border
    }

    /// A polygon around the offset curve at `reach`: exact along sides, outside it by at most `slack` metres around corners, and
    /// nowhere inside it.
    pub fn outline(&self, reach: f64, slack: f64) -> Polygon {
        if reach <= 0.0 {
            return Polygon::new(self.corners.clone());
        }
        // At most an eighth of a turn on each side of a tangent point, however small the reach.
        let widest = (reach / (reach + slack)).acos().min(PI / 4.0);
        let mut outline = Vec::new();
        for (corner, from, turn, _) in self.turns() {
            // Tangents at both ends of the turn and evenly between.
            let steps = (turn / (2.0 * widest)).ceil().max(1.0);
            let half = turn / (2.0 * steps);
            let out = reach / half.cos();
            for step in 0..steps as u32 {
                let at = from + half * (2.0 * f64::from(step) + 1.0);
                outline.push(corner + DVec2::from_angle(at) * out);
            }
        }
        Polygon::new(outline)
    }

    /// Each corner with the outward direction of the side that ends in it, the turn there, and the next corner.
    fn turns(&self) -> impl Iterator<Item = (DVec2, f64, f64, DVec2)> + '_ {
        let n = self.corners.len();
        (0..n).map(move |i| {
            let (before, corner, next) =
                (self.corners[(i + n - 1) % n], self.corners[i], self.corners[(i + 1) % n]);
            let out = |a: DVec2, b: DVec2| -(b - a).perp();
            let from = out(before, corner).to_angle();
            let turn = match n {
                1 => TAU,
                2 => PI,
                _ => out(before, corner).angle_to(out(corner, next)).max(0.0),
            };
            (corner, if n == 1 { 0.0 } else { from }, turn, next)
        })
    }
}

/// Moves of one rectangle past one convex piece.
#[derive(Clone, Debug)]
pub struct Moves {
    /// Where the centre of the rectangle makes it overlap the piece.
    swept: Convex,
    /// The rectangle's current centre.
    from: DVec2,
}

impl Moves {
    /// The interval of a move along a unit vector, in metres from the current position, in which the rectangle is nearer than
    /// `reach` or overlaps the piece; `None` if it passes. Sliding along at exactly that distance passes.
    pub fn too_near_along(&self, reach: f64, way: DVec2) -> Option<(f64, f64)> {
        let from = self.from;
        let mut found: Option<(f64, f64)> = None;
        let mut meet = |t: f64| {
            found = Some(found.map_or((t, t), |(low, high)| (low.min(t), high.max(t))));
        };
        for (a, b) in self.swept.sides() {
            let side = b - a;
            let outward = -side.perp().normalize_or_zero() * reach;
            let cross = way.perp_dot(side);
            if cross != 0.0 {
                let to_side = a + outward - from;
                let along = to_side.perp_dot(way) / cross;
                if (0.0..=1.0).contains(&along) {
                    meet(to_side.perp_dot(side) / cross);
                }
            }
            // the rounded corner
            let middle = (a - from).dot(way);
            let off = (a - from).perp_dot(way);
            let half = reach * reach - off * off;
            if half >= 0.0 {
                meet(middle - half.sqrt());
                meet(middle + half.sqrt());
            }
        }
        found.filter(|(low, high)| high > low)
    }
}

impl Rect {
    /// The part of segment `a`–`b` inside the rectangle, as fractions of it; `None` if they do not meet.
    pub fn clip(&self, a: DVec2, b: DVec2) -> Option<(f64, f64)> {
        let along = b - a;
        let (mut from, mut to) = (0.0f64, 1.0f64);
        for (start, step, low, high) in
            [(a.x, along.x, self.min.x, self.max.x), (a.y, along.y, self.min.y, self.max.y)]
        {
            if step == 0.0 {
                if start < low || start > high {
                    return None;
                }
                continue;
            }
            let (near, far) = ((low - start) / step, (high - start) / step);
            from = from.max(near.min(far));
            to = to.min(near.max(far));
        }
        (from <= to).then_some((from, to))
    }

    /// Distance to a segment; 0 if they meet.
    pub fn distance_to_segment(&self, a: DVec2, b: DVec2) -> f64 {
        if self.clip(a, b).is_some() {
            return 0.0;
        }
        let corners = self.corners().into_iter().map(|corner| distance_to_segment(corner, a, b));
        let ends = [a, b].into_iter().map(|end| end.distance(self.nearest(end)));
        corners.chain(ends).fold(f64::INFINITY, f64::min)
    }

    /// How far it extends beyond a shape, holes being outside: 0 if it is inside within the tolerance (metres).
    ///
    /// Measured at its corners that are outside, and at corners of the shape or a hole that are inside it.
    pub fn overhang(&self, shape: &Polygon, tolerance: f64) -> f64 {
        // The rectangle may be thinner than the tolerance.
        let spare = (self.size() / 2.0).min(DVec2::splat(tolerance));
        let inside = Self { min: self.min + spare, max: self.max - spare };
        let crossed = shape.sides().any(|(_, _, a, b)| inside.clip(a, b).is_some());
        if !crossed && shape.contains(self.centre()) {
            return 0.0;
        }
        let corners =
            self.corners().into_iter().filter(|&p| !shape.contains(p)).map(|p| shape.distance_to_border(p));
        let pokes = shape.sides().filter(|&(_, _, a, _)| inside.contains(a)).map(|(_, _, a, _)| {
            let (low, high) = (a - self.min, self.max - a);
            low.min(high).min_element()
        });
        // A side may cut across without any corner in or out; then report at least a non-zero amount.
        corners.chain(pokes).fold(tolerance * 2.0, f64::max)
    }

    /// Distance to another rectangle; 0 if they meet.
    pub fn distance(&self, other: &Self) -> f64 {
        (-self.overlap(other)).max(DVec2::ZERO).length()
    }

    /// Scaled along u and v by positive factors.
    pub fn stretched(&self, by: DVec2) -> Self {
        Self { min: self.min * by, max: self.max * by }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use glam::dvec2;
    use proptest::prelude::*;

    fn unit() -> Rect {
        Rect::at(DVec2::ZERO, DVec2::ONE)
    }

    #[test]
    fn distance_to_a_segment() {
        let check = |a: (f64, f64), b: (f64, f64), expect: f64| {
            let got = unit().distance_to_segment(a.into(), b.into());
            assert!((got - expect).abs() < 1e-12, "{a:?} {b:?}: {got}, expected {expect}");
            let got = Convex::segment(a.into(), b.into()).clearance(&unit());
            assert!(expect == 0.0 || (got - expect).abs() < 1e-12, "{a:?} {b:?}: {got}, expected {expect}");
        };
        check((2.0, -5.0), (2.0, 5.0), 1.0);
        check((0.2, 0.2), (0.4, 0.4), 0.0);
        check((-1.0, 0.5), (2.0, 0.5), 0.0);
        check((4.0, 5.0), (9.0, 9.0), 5.0);
        // x + y = 3 passes the corner (1, 1) at 1/√2
        check((3.0, 0.0), (0.0, 3.0), std::f64::consts::FRAC_1_SQRT_2);
    }

    #[test]
    fn overhang_of_a_rectangle() {
        let face =
            Polygon::new(vec![dvec2(-1.0, -1.0), dvec2(0.75, -1.0), dvec2(0.75, 4.0), dvec2(-1.0, 4.0)]);
        let over = |rect: Rect, shape: &Polygon| rect.overhang(shape, 1e-4);
        assert!((over(unit(), &face) - 0.25).abs() < 1e-12);
        assert_eq!(over(unit().moved(dvec2(-0.25, 0.0)), &face), 0.0);
        let mut holed = Polygon::new(Rect::at(DVec2::splat(-5.0), DVec2::splat(10.0)).corners().to_vec());
        holed.holes.push(vec![dvec2(0.4, 0.9), dvec2(0.6, 0.9), dvec2(0.6, 2.0), dvec2(0.4, 2.0)]);
        assert!((over(unit(), &holed) - 0.1).abs() < 1e-12);
    }

    #[test]
    fn depth_is_the_shortest_separating_move() {
        let deep = |points: &[(f64, f64)]| {
            Convex::around(points.iter().map(|&p| p.into())).unwrap().clearance(&unit())
        };
        // Over its right side by 0.25, over a corner by 0.1 along both axes, and at the centre of a large one.
        assert!((deep(&[(0.75, -1.0), (3.0, -1.0), (3.0, 2.0), (0.75, 2.0)]) + 0.25).abs() < 1e-12);
        assert!((deep(&[(0.9, 0.9), (2.0, 0.9), (2.0, 2.0), (0.9, 2.0)]) + 0.1).abs() < 1e-12);
        assert!((deep(&[(-4.0, -4.0), (5.0, -4.0), (5.0, 5.0), (-4.0, 5.0)]) + 5.0).abs() < 1e-12);
        // A line x + y = 1.8 cuts the corner (1, 1) off, 0.2/√2 deep.
        assert!((deep(&[(1.8, 0.0), (0.0, 1.8)]) + 0.2 / 2.0_f64.sqrt()).abs() < 1e-12);
        assert!((deep(&[(0.5, 0.9)]) + 0.1).abs() < 1e-12);
    }

    #[test]
    fn around_a_segment_a_point_and_a_square() {
        let length = |border: Vec<Border>| {
            border
                .iter()
                .map(|b| match b {
                    Border::Line(a, b) => a.distance(*b),
                    Border::Arc { radius, turn, .. } => radius * turn,
                })
                .sum::<f64>()
        };
        // Steiner: the offset curve at distance r around a convex outline has its perimeter plus 2πr.
        assert!(
            (length(Convex::segment(dvec2(1.0, 2.0), dvec2(4.0, 6.0)).border(0.5)) - (10.0 + PI)).abs()
                < 1e-12
        );
        assert!((length(Convex::segment(dvec2(1.0, 2.0), dvec2(1.0, 2.0)).border(0.5)) - PI).abs() < 1e-12);
        assert!((length(Convex::rect(&unit()).border(0.25)) - (4.0 + PI / 2.0)).abs() < 1e-12);
        assert!((length(Convex::rect(&unit()).border(0.0)) - 4.0).abs() < 1e-12);
    }

    fn convex() -> impl Strategy<Value = Convex> {
        proptest::collection::vec((-2.0..2.0f64, -2.0..2.0f64), 1..7)
            .prop_map(|points| Convex::around(points.into_iter().map(Into::into)).unwrap())
    }

    proptest! {
        /// Against points sampled on the piece and in the rectangle.
        #[test]
        fn clearance_is_never_more_than_sampled(piece in convex(), (u, v) in (-3.0..3.0f64, -3.0..3.0f64), (w, h) in (0.1..2.0f64, 0.1..2.0f64)) {
            let rect = Rect::at(dvec2(u, v), dvec2(w, h));
            let away = piece.clearance(&rect);
            let sampled = piece.sides().flat_map(|(a, b)| (0..=200).map(move |i| a.lerp(b, f64::from(i) / 200.0)));
            let nearest = sampled.map(|p| p.distance(rect.nearest(p))).fold(f64::INFINITY, f64::min);
            if away > 0.0 {
                prop_assert!(away <= nearest + 1e-9 && nearest <= away + 0.03, "{away} {nearest}");
            } else {
                // A move of that depth separates them, in one of the directions square to a side of either.
                let out = -away + 1e-9;
                let ways = piece.sides().map(|(a, b)| -(b - a).perp().normalize_or_zero()).chain([DVec2::X, DVec2::Y]);
                let parted = ways.flat_map(|way| [way, -way]).any(|way| piece.clearance(&rect.moved(way * out)) > -2e-9);
                prop_assert!(parted, "{away}");
            }
        }

        /// The outline contains everything nearer than the reach, and nothing farther by more than the slack.
        #[test]
        fn an_outline_is_drawn_around(piece in convex(), reach in 0.001..1.5f64, p in (-4.0..4.0f64, -4.0..4.0f64)) {
            let slack = 1e-4;
            let outline = piece.outline(reach, slack);
            let point = Rect::at(p.into(), DVec2::ZERO);
            let away = piece.clearance(&point);
            prop_assert!(away >= reach - 1e-9 || outline.contains(p.into()) || outline.distance_to_border(p.into()) < 1e-9);
            prop_assert!(away <= reach + slack + 1e-9 || !outline.contains(p.into()));
            for corner in &outline.outer {
                let away = piece.clearance(&Rect::at(*corner, DVec2::ZERO));
                prop_assert!((reach - 1e-9..=reach + slack + 1e-9).contains(&away), "{away} for {reach}");
            }
        }

        /// At both ends of the interval the distance is the reach, between them less.
        #[test]
        fn a_stretch_ends_at_the_reach(piece in convex(), (u, v) in (-2.0..2.0f64, -2.0..2.0f64), reach in 0.0..0.6f64, way in 0..4u8) {
            let way = [DVec2::X, DVec2::NEG_X, DVec2::Y, DVec2::NEG_Y][usize::from(way)];
            let rect = Rect::at(dvec2(u, v), dvec2(1.6, 1.0));
            let at = |by: f64| piece.clearance(&rect.moved(way * by));
            match piece.moves_of(&rect).too_near_along(reach, way) {
                Some((low, high)) => {
                    prop_assert!((at(low) - reach).abs() < 1e-5 && (at(high) - reach).abs() < 1e-5);
                    prop_assert!(high - low < 1e-5 || at((low + high) / 2.0) < reach + 1e-9);
                }
                None => prop_assert!((-60..60).all(|i| at(f64::from(i) * 0.1) > reach - 1e-5)),
            }
        }
    }
}
