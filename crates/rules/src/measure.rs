//! Distances between a module and what stands in its way, all in the frame of one face.

use chalkcourse_geometry::{DVec2, Length, Polygon, Rect, distance_to_segment};
use chalkcourse_job::Quantity;

/// Touching a limit passes: a tenth of a millimetre, far below what a tape can tell.
pub(crate) const TOLERANCE: f64 = 1e-4;

/// Metres on the slope as an amount.
pub(crate) fn length(metres: f64) -> Quantity {
    Quantity::Length(Length::from_metres(metres))
}

/// Metres in plan as an amount.
pub(crate) fn in_plan(metres: f64) -> Quantity {
    Quantity::InPlan(Length::from_metres(metres))
}

/// The part of segment `a`–`b` inside a rectangle, as fractions of it; `None` when it passes by.
pub(crate) fn clip(rect: &Rect, a: DVec2, b: DVec2) -> Option<(f64, f64)> {
    let along = b - a;
    let (mut from, mut to) = (0.0f64, 1.0f64);
    for (start, step, low, high) in
        [(a.x, along.x, rect.min.x, rect.max.x), (a.y, along.y, rect.min.y, rect.max.y)]
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

/// Distance between a rectangle and a segment; 0 where they meet.
pub(crate) fn to_segment(rect: &Rect, a: DVec2, b: DVec2) -> f64 {
    if clip(rect, a, b).is_some() {
        return 0.0;
    }
    let corners = rect.corners().into_iter().map(|corner| distance_to_segment(corner, a, b));
    let ends = [a, b].into_iter().map(|end| end.distance(rect.nearest(end)));
    corners.chain(ends).fold(f64::INFINITY, f64::min)
}

/// Distance between a rectangle and a shape without holes; 0 where they have ground in common.
pub(crate) fn to_polygon(rect: &Rect, shape: &Polygon) -> f64 {
    if shape.contains(rect.centre()) {
        return 0.0;
    }
    shape.sides().map(|(_, _, a, b)| to_segment(rect, a, b)).fold(f64::INFINITY, f64::min)
}

/// Distance between two rectangles; 0 where they meet.
pub(crate) fn to_rect(one: &Rect, two: &Rect) -> f64 {
    (-one.overlap(two)).max(DVec2::ZERO).length()
}

/// How near the bounds of a segment come to a rectangle: never more than the true distance.
pub(crate) fn at_least_to_segment(rect: &Rect, a: DVec2, b: DVec2) -> f64 {
    to_rect(rect, &Rect { min: a.min(b), max: a.max(b) })
}

/// How far a rectangle reaches beyond a shape: 0 when it lies inside, holes being outside.
///
/// Measured at the corners that are out, and where a corner of the shape or a hole pokes in.
pub(crate) fn overhang(rect: &Rect, shape: &Polygon) -> f64 {
    let inside = rect.grown(-TOLERANCE);
    let crossed = shape.sides().any(|(_, _, a, b)| clip(&inside, a, b).is_some());
    if !crossed && shape.contains(rect.centre()) {
        return 0.0;
    }
    let corners =
        rect.corners().into_iter().filter(|&p| !shape.contains(p)).map(|p| shape.distance_to_border(p));
    let pokes = shape.sides().filter(|&(_, _, a, _)| inside.contains(a)).map(|(_, _, a, _)| {
        let (low, high) = (a - rect.min, rect.max - a);
        low.min(high).min_element()
    });
    // A side may cut across without any corner in or out; then it is at least more than nothing.
    corners.chain(pokes).fold(TOLERANCE * 2.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec2;

    fn unit() -> Rect {
        Rect::at(DVec2::ZERO, DVec2::ONE)
    }

    #[test]
    fn distance_to_a_segment() {
        let check = |a: (f64, f64), b: (f64, f64), expect: f64| {
            let got = to_segment(&unit(), a.into(), b.into());
            assert!((got - expect).abs() < 1e-12, "{a:?} {b:?}: {got}, expected {expect}");
        };
        check((2.0, -5.0), (2.0, 5.0), 1.0);
        check((0.2, 0.2), (0.4, 0.4), 0.0);
        check((-1.0, 0.5), (2.0, 0.5), 0.0);
        check((4.0, 5.0), (9.0, 9.0), 5.0);
        // x + y = 3 passes the corner (1, 1) at 1/√2
        check((3.0, 0.0), (0.0, 3.0), std::f64::consts::FRAC_1_SQRT_2);
    }

    #[test]
    fn how_far_over() {
        let face =
            Polygon::new(vec![dvec2(-1.0, -1.0), dvec2(0.75, -1.0), dvec2(0.75, 4.0), dvec2(-1.0, 4.0)]);
        assert!((overhang(&unit(), &face) - 0.25).abs() < 1e-12);
        assert_eq!(overhang(&unit().moved(dvec2(-0.25, 0.0)), &face), 0.0);
        let mut holed = Polygon::new(Rect::at(DVec2::splat(-5.0), DVec2::splat(10.0)).corners().to_vec());
        holed.holes.push(vec![dvec2(0.4, 0.9), dvec2(0.6, 0.9), dvec2(0.6, 2.0), dvec2(0.4, 2.0)]);
        assert!((overhang(&unit(), &holed) - 0.1).abs() < 1e-12);
    }
}
