//! Rectangles clipped to the outline of a face. Exact for any outline, and cheap: the clip window is a rectangle.

use crate::MeasuredShape;
use chalkcourse_geometry::{DVec2, Polygon, Rect, signed_area};

/// The part of some rectangles that lies on a face: its area and its shape.
pub(crate) fn to_face(rects: &[Rect], face: &Polygon) -> (f64, MeasuredShape) {
    let mut area = 0.0;
    let mut whole = true;
    let mut pieces: Vec<(Rect, Polygon)> = Vec::with_capacity(rects.len());
    for rect in rects {
        let piece = clipped(rect, face);
        let left = piece.area();
        if left <= 1e-12 {
            whole = false;
            continue;
        }
        whole &= rect.area() - left <= 1e-9;
        area += left;
        pieces.push((*rect, piece));
    }
    let shape = if whole {
        MeasuredShape::Area(pieces.into_iter().map(|(rect, _)| rect).collect())
    } else {
        MeasuredShape::Outlines(pieces.into_iter().map(|(_, piece)| piece).collect())
    };
    (area, shape)
}

/// An outline clipped to a rectangle, ring by ring and side by side (Sutherland and Hodgman, 1974). Where the outline leaves and
/// re-enters, the ring runs along the side of the rectangle and back, which encloses no area.
pub(crate) fn clipped(rect: &Rect, outline: &Polygon) -> Polygon {
    let cut = |ring: &[DVec2]| {
        let mut ring = ring.to_vec();
        for (axis, limit, keep_above) in
            [(0, rect.min.x, true), (0, rect.max.x, false), (1, rect.min.y, true), (1, rect.max.y, false)]
        {
            ring = half(&ring, axis, limit, keep_above);
        }
        ring
    };
    let mut piece = Polygon::new(cut(&outline.outer));
    piece.holes = outline.holes.iter().map(|hole| cut(hole)).filter(|hole| hole.len() > 2).collect();
    piece
}

fn half(ring: &[DVec2], axis: usize, limit: f64, keep_above: bool) -> Vec<DVec2> {
    let inside = |p: DVec2| if keep_above { p[axis] >= limit } else { p[axis] <= limit };
    let mut kept = Vec::with_capacity(ring.len() + 2);
    let Some(&last) = ring.last() else { return kept };
    let mut before = last;
    for &p in ring {
        if inside(before) != inside(p) {
            let at = (limit - before[axis]) / (p[axis] - before[axis]);
            let mut crossing = before.lerp(p, at);
            crossing[axis] = limit;
            kept.push(crossing);
        }
        if inside(p) {
            kept.push(p);
        }
        before = p;
    }
    if signed_area(&kept).abs() <= 1e-12 { Vec::new() } else { kept }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec2;
    use proptest::prelude::*;

    fn rect(x: f64, y: f64, w: f64, h: f64) -> Rect {
        Rect::at(dvec2(x, y), dvec2(w, h))
    }

    #[test]
    fn a_triangle_cuts_a_strip_along_its_base() {
        // A triangle 10 wide and 5 high; a strip 1 high along its base loses half a square metre at each end.
        let face = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(5.0, 5.0)]);
        let (area, shape) = to_face(&[rect(0.0, 0.0, 10.0, 1.0)], &face);
        assert!((area - 9.0).abs() < 1e-12, "{area}");
        assert!(matches!(shape, MeasuredShape::Outlines(_)));
        let (area, shape) = to_face(&[rect(3.0, 0.5, 2.0, 1.0), rect(20.0, 0.0, 1.0, 1.0)], &face);
        assert!((area - 2.0).abs() < 1e-12);
        assert!(matches!(shape, MeasuredShape::Outlines(ref pieces) if pieces.len() == 1));
        assert!(matches!(to_face(&[rect(3.0, 0.5, 2.0, 1.0)], &face).1, MeasuredShape::Area(_)));
    }

    proptest! {
        /// Against the general polygon intersection on a face with a notch and a hole.
        #[test]
        fn agrees_with_polygon_intersection(x in -2.0f64..11.0, y in -2.0f64..8.0, w in 0.1f64..8.0, h in 0.1f64..6.0) {
            let mut face = Polygon::new(
                [(0.0, 0.0), (4.0, 0.0), (5.0, 2.0), (6.0, 0.0), (10.0, 0.0), (8.0, 6.0), (1.0, 6.0)]
                    .map(|(x, y)| dvec2(x, y))
                    .to_vec(),
            );
            face.holes.push([(3.0, 3.0), (3.0, 5.0), (5.0, 5.0), (5.0, 3.0)].map(|(x, y)| dvec2(x, y)).to_vec());
            let window = rect(x, y, w, h);
            let expect: f64 = face
                .intersection(&Polygon::new(window.corners().to_vec()))
                .iter()
                .map(Polygon::area)
                .sum();
            let (got, _) = to_face(&[window], &face);
            prop_assert!((got - expect).abs() < 1e-6, "{got} against {expect}");
        }
    }
}
