//! Intervals along the eave where the lower left corner of a rectangle may not be, at one height, so that it keeps
//! clear of an obstacle.
//!
//! A rectangle is closer than `reach` to a convex obstacle exactly while its corner is within `reach` of the Minkowski
//! sum of the obstacle and the reflected rectangle: a convex outline with round corners. A level line cuts that in one
//! interval, whose ends are on a round corner or a straight side and are computed here in closed form.

use chalkcourse_geometry::{DVec2, Polygon, Rect, dvec2};

/// An interval along the eave, metres.
pub(super) type Stretch = (f64, f64);

/// Something that rectangles keep clear of. All in the face's frame.
#[derive(Clone, Debug)]
pub(super) enum Thing {
    /// Closer than `reach` to a convex shape is too close. Measured with heights divided by `squeeze`: 1 on the slope,
    /// the slope factor in plan. The rectangle is shrunk by `less` on all sides.
    Convex { corners: Vec<DVec2>, reach: f64, squeeze: f64, less: f64 },
    /// An overlap of more than `by` in both directions is too much.
    Ground { rect: Rect, by: f64 },
    /// The centre must not be in it.
    Middle(Polygon),
    /// Where the line from `a` to `b` is above the foot of a rectangle, its head must stay `room` below the line.
    Below { a: DVec2, b: DVec2, room: f64 },
}

/// An obstacle as seen by the corner of one size of rectangle.
#[derive(Clone, Debug)]
pub(super) enum Swept {
    Convex { hull: Vec<DVec2>, reach: f64, squeeze: f64, bounds: Rect },
    Ground(Rect),
    Middle { sides: Vec<(DVec2, DVec2)>, half: DVec2 },
    Below { a: DVec2, b: DVec2, room: f64, size: DVec2 },
}

/// Sides shorter than this along the eave are beside a rectangle, not above it.
const HAIR: f64 = 1e-4;

impl Swept {
    pub(super) fn of(thing: &Thing, size: DVec2) -> Self {
        match thing {
            Thing::Convex { corners, reach, squeeze, less } => {
                let flat = |p: DVec2| dvec2(p.x, p.y / squeeze);
                let (low, high) = (flat(DVec2::splat(*less)), flat(size - *less));
                let swept: Vec<DVec2> = corners
                    .iter()
                    .flat_map(|&p| {
                        let p = flat(p);
                        [low, dvec2(high.x, low.y), high, dvec2(low.x, high.y)].map(|corner| p - corner)
                    })
                    .collect();
                let hull = hull(swept);
                let bounds = Rect::around(hull.iter().copied())
                    .map_or(Rect { min: DVec2::ZERO, max: DVec2::ZERO }, |bounds| bounds.grown(*reach));
                Self::Convex { hull, reach: *reach, squeeze: *squeeze, bounds }
            }
            Thing::Ground { rect, by } => {
                Self::Ground(Rect { min: rect.min - size + *by, max: rect.max - *by })
            }
            Thing::Middle(shape) => {
                Self::Middle { sides: shape.sides().map(|(_, _, a, b)| (a, b)).collect(), half: size / 2.0 }
            }
            Thing::Below { a, b, room } => Self::Below { a: *a, b: *b, room: *room, size },
        }
    }

    /// Adds the intervals in which the corner may not be at a height; touching their ends is allowed.
    pub(super) fn at(&self, v: f64, out: &mut Vec<Stretch>) {
        match self {
            Self::Convex { hull, reach, squeeze, bounds } => {
                let v = v / squeeze;
                if v > bounds.min.y && v < bounds.max.y {
                    out.extend(across(hull, *reach, v));
                }
            }
            Self::Ground(rect) => {
                if v > rect.min.y && v < rect.max.y && rect.min.x < rect.max.x {
                    out.push((rect.min.x, rect.max.x));
                }
            }
            Self::Middle { sides, half } => {
                out.extend(inside(sides, v + half.y).map(|(a, b)| (a - half.x, b - half.x)));
            }
            Self::Below { a, b, room, size } => out.extend(below(*a, *b, *room, *size, v)),
        }
    }
}

/// Where a level line is closer than `reach` to a convex outline.
fn across(hull: &[DVec2], reach: f64, v: f64) -> Option<Stretch> {
    let (mut from, mut to) = (f64::INFINITY, f64::NEG_INFINITY);
    let mut meet = |u: f64| {
        from = from.min(u);
        to = to.max(u);
    };
    for (i, &p) in hull.iter().enumerate() {
        let q = hull[(i + 1) % hull.len()];
        let up = v - p.y;
        if up.abs() <= reach {
            let half = (reach * reach - up * up).max(0.0).sqrt();
            meet(p.x - half);
            meet(p.x + half);
        }
        let along = q - p;
        let out = along.perp().normalize_or_zero() * reach;
        for (a, b) in [(p + out, q + out), (p - out, q - out)] {
            if (a.y - v) * (b.y - v) <= 0.0 && a.y != b.y {
                meet(a.x + (b.x - a.x) * (v - a.y) / (b.y - a.y));
            }
        }
    }
    (from < to).then_some((from, to))
}

/// The intervals of a level line inside an outline.
pub(super) fn inside(sides: &[(DVec2, DVec2)], v: f64) -> impl Iterator<Item = Stretch> + use<> {
    let mut cuts: Vec<f64> = sides
        .iter()
        .filter(|(a, b)| (a.y > v) != (b.y > v))
        .map(|(a, b)| a.x + (b.x - a.x) * (v - a.y) / (b.y - a.y))
        .collect();
    cuts.sort_by(f64::total_cmp);
    let pairs: Vec<Stretch> = cuts.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect();
    pairs.into_iter()
}

/// Where the rectangle has its foot below a line and its head less than `room` below it, measured at the lower end of
/// the line over the width of the rectangle.
fn below(a: DVec2, b: DVec2, room: f64, size: DVec2, v: f64) -> Option<Stretch> {
    let (a, b) = if a.x <= b.x { (a, b) } else { (b, a) };
    if b.x - a.x <= HAIR {
        return None;
    }
    // Only rectangles that overlap it by more than a hair along the eave.
    let (mut from, mut to) = (a.x - size.x + HAIR, b.x - HAIR);
    let slope = (b.y - a.y) / (b.x - a.x);
    let (low, high) = (v, v + size.y + room);
    if slope.abs() < 1e-12 {
        return (low < a.y && a.y < high && from < to).then_some((from, to));
    }
    let at = |y: f64| a.x + (y - a.y) / slope;
    if slope > 0.0 {
        // The lower end is at the left side, or where the line starts.
        if a.y >= high {
            return None;
        }
        to = to.min(at(high));
        if a.y <= low {
            from = from.max(at(low));
        }
    } else {
        if b.y >= high {
            return None;
        }
        from = from.max(at(high) - size.x);
        if b.y <= low {
            to = to.min(at(low) - size.x);
        }
    }
    (from < to).then_some((from, to))
}

/// The convex hull, counter-clockwise (Andrew, 1979).
pub(super) fn hull(mut points: Vec<DVec2>) -> Vec<DVec2> {
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    points.dedup();
    if points.len() < 3 {
        return points;
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
    let mut lower = half(&mut points.iter().copied());
    lower.extend(half(&mut points.iter().rev().copied()));
    lower
}

#[cfg(test)]
mod tests {
    use super::*;

    fn one(thing: &Thing, size: (f64, f64), v: f64) -> Option<Stretch> {
        let mut out = Vec::new();
        Swept::of(thing, size.into()).at(v, &mut out);
        assert!(out.len() <= 1);
        out.pop()
    }

    fn near(got: Option<Stretch>, want: Option<Stretch>) {
        match (got, want) {
            (Some(g), Some(w)) => {
                assert!((g.0 - w.0).abs() < 1e-9 && (g.1 - w.1).abs() < 1e-9, "{g:?} {w:?}");
            }
            _ => assert_eq!(got.is_some(), want.is_some(), "{got:?} {want:?}"),
        }
    }

    /// A point with reach 5: beside it, 4 above it (then 3 to each side: a 3-4-5 triangle), and out of reach.
    #[test]
    fn keeps_off_a_point() {
        let point = Thing::Convex { corners: vec![dvec2(10.0, 10.0)], reach: 5.0, squeeze: 1.0, less: 0.0 };
        near(one(&point, (2.0, 1.0), 9.5), Some((3.0, 15.0)));
        near(one(&point, (2.0, 1.0), 14.0), Some((5.0, 13.0)));
        near(one(&point, (2.0, 1.0), 15.0), None);
        near(one(&point, (2.0, 1.0), 4.0), None);
        near(one(&point, (2.0, 1.0), 5.0), Some((5.0, 13.0)));
    }

    /// A 45° line with reach √2/2 perpendicular to it: 1 along the eave from the nearest corner.
    #[test]
    fn keeps_off_a_slanted_line() {
        let line = Thing::Convex {
            corners: vec![dvec2(0.0, 0.0), dvec2(10.0, 10.0)],
            reach: std::f64::consts::FRAC_1_SQRT_2,
            squeeze: 1.0,
            less: 0.0,
        };
        // The upper left corner at (u, v + 1) is 1 to the right of the line at height v + 1; the lower right corner to
        // the left of it.
        near(one(&line, (2.0, 1.0), 4.0), Some((4.0 - 2.0 - 1.0, 5.0 + 1.0)));
    }

    /// In plan with a slope factor of 2, 5 in plan are 10 up the slope.
    #[test]
    fn measured_in_plan() {
        let point = Thing::Convex { corners: vec![dvec2(0.0, 0.0)], reach: 5.0, squeeze: 2.0, less: 0.0 };
        near(one(&point, (2.0, 1.0), 8.0), Some((-5.0, 3.0)));
        near(one(&point, (2.0, 1.0), 10.0), None);
    }

    #[test]
    fn below_a_line() {
        let level = Thing::Below { a: dvec2(2.0, 5.0), b: dvec2(8.0, 5.0), room: 1.0 };
        near(one(&level, (2.0, 1.0), 3.0), None);
        near(one(&level, (2.0, 1.0), 3.1), Some((HAIR, 8.0 - HAIR)));
        near(one(&level, (2.0, 1.0), 5.0), None);
        // Rising 1 in 2 from (0, 4): at its left side, a rectangle with its head at 4.5 needs the line at 5.5, so u =
        // 3.
        let rising = Thing::Below { a: dvec2(0.0, 4.0), b: dvec2(8.0, 8.0), room: 1.0 };
        near(one(&rising, (2.0, 1.0), 3.5), Some((-2.0 + HAIR, 3.0)));
        let falling = Thing::Below { a: dvec2(0.0, 8.0), b: dvec2(8.0, 4.0), room: 1.0 };
        near(one(&falling, (2.0, 1.0), 3.5), Some((3.0, 8.0 - HAIR)));
    }

    #[test]
    fn overlap_and_centre_limits() {
        let ground = Thing::Ground { rect: Rect { min: dvec2(1.0, 1.0), max: dvec2(2.0, 2.0) }, by: 0.1 };
        near(one(&ground, (2.0, 1.0), 0.5), Some((-0.9, 1.9)));
        near(one(&ground, (2.0, 1.0), 0.1), None);
        let square = Polygon::new([(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)].map(DVec2::from).to_vec());
        near(one(&Thing::Middle(square), (2.0, 1.0), 1.0), Some((-1.0, 3.0)));
    }
}
