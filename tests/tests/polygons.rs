//! Polygon operations against the `geo` crate's own independent operations (area, containment, validity, distance) and against
//! closed forms. `tests/peers/polygons_against_geos.py` does the same against GEOS.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{DVec2, Polygon, dvec2};
use geo::{Area, Contains, Distance, Euclidean, Validation};
use proptest::prelude::*;

fn to_geo(polygon: &Polygon) -> geo::Polygon<f64> {
    let ring = |ring: &[DVec2]| ring.iter().map(|p| (p.x, p.y)).collect::<geo::LineString>();
    geo::Polygon::new(ring(&polygon.outer), polygon.holes.iter().map(|h| ring(h)).collect())
}

/// Overlays and offsets round corners to a grid of about 1e-8 m: over these perimeters that is up to 2e-5 m².
const GRID: f64 = 2e-5;

fn area(shapes: &[Polygon]) -> f64 {
    shapes.iter().map(Polygon::area).sum()
}

prop_compose! {
    /// A star-shaped outline of 3 to 12 corners around a centre, sometimes with a small hole there.
    fn outline()(
        radii in prop::collection::vec(1.0..8.0f64, 3..12),
        cx in -30.0..30.0f64, cy in -30.0..30.0f64, turn in 0.0..6.0f64, hole in any::<bool>(),
    ) -> Polygon {
        let centre = dvec2(cx, cy);
        let step = std::f64::consts::TAU / radii.len() as f64;
        let ring = |scale: f64| -> Vec<DVec2> {
            radii.iter().enumerate()
                .map(|(i, r)| centre + DVec2::from_angle(turn + step * i as f64) * (*r * scale))
                .collect()
        };
        let mut polygon = Polygon::new(ring(1.0));
        // A triangle may not contain its centre; a smaller copy of the ring is inside a star with more corners.
        if hole && radii.len() > 4 {
            polygon.holes.push(ring(0.2));
        }
        polygon
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn area_and_soundness(polygon in outline()) {
        let reference = to_geo(&polygon);
        prop_assert!((polygon.area() - reference.unsigned_area()).abs() < 1e-9);
        prop_assert_eq!(polygon.defects(1e-9).is_empty(), reference.is_valid());
    }

    #[test]
    fn crossed_rings_are_reported(points in prop::collection::vec((-5.0..5.0f64, -5.0..5.0f64), 3..9)) {
        let polygon = Polygon::new(points.iter().map(|&(x, y)| dvec2(x, y)).collect());
        prop_assert_eq!(polygon.defects(1e-12).is_empty(), to_geo(&polygon).is_valid());
    }

    #[test]
    fn inside_and_distance(polygon in outline(), x in -40.0..40.0f64, y in -40.0..40.0f64) {
        let reference = to_geo(&polygon);
        let border: f64 = std::iter::once(reference.exterior()).chain(reference.interiors())
            .map(|ring| Euclidean.distance(&geo::Point::new(x, y), ring))
            .fold(f64::INFINITY, f64::min);
        prop_assert!((polygon.distance_to_border(dvec2(x, y)) - border).abs() < 1e-9);
        if border > 1e-9 {
            prop_assert_eq!(polygon.contains(dvec2(x, y)), reference.contains(&geo::Point::new(x, y)));
        }
    }

    #[test]
    fn parts_add_up(a in outline(), b in outline(), shift in 0.0..1.0f64) {
        // Moved close together, so that they often overlap.
        let by = (a.outer[0] - b.outer[0]) * shift;
        let b = b.map(|p| p + by);
        let common = area(&a.intersection(&b));
        let without = area(&a.difference(std::slice::from_ref(&b)));
        let both = area(&Polygon::union(&[a.clone(), b.clone()]));
        prop_assert!((common + without - a.area()).abs() < GRID, "A = A∩B + A\\B");
        prop_assert!((a.area() + b.area() - common - both).abs() < GRID, "A + B = A∩B + A∪B");
    }

    /// Subtracted shapes may overlap: what two of them cover is gone all the same.
    #[test]
    fn overlapping_shapes_are_subtracted_once(a in outline(), b in outline(), c in outline()) {
        let b = b.map(|p| p + a.outer[0] - b.outer[0]);
        let c = c.map(|p| p + a.outer[0] - c.outer[0]);
        let together = area(&a.difference(&[b.clone(), c.clone()]));
        let step: f64 = a.difference(&[b]).iter().map(|left| area(&left.difference(std::slice::from_ref(&c)))).sum();
        prop_assert!((together - step).abs() < GRID);
    }

    #[test]
    fn triangles_tile(polygon in outline()) {
        let sum: f64 = polygon.triangles().iter()
            .map(|t| (t[1] - t[0]).perp_dot(t[2] - t[0]).abs() / 2.0).sum();
        prop_assert!((sum - polygon.area()).abs() < 1e-9);
    }

    /// No point of an inward offset is closer to the border than the distance.
    #[test]
    fn an_inward_offset_keeps_its_distance(polygon in outline(), distance in 0.05..0.6f64) {
        for piece in polygon.offset(-distance) {
            for corner in piece.rings().flatten() {
                prop_assert!(polygon.contains(*corner));
                prop_assert!(polygon.distance_to_border(*corner) > distance - 1e-6);
            }
        }
    }

    /// A regular polygon offset inwards by d is scaled by (r − d) / r, where r is the inradius.
    #[test]
    fn offsets_of_regular_polygons(corners in 3..12usize, radius in 1.0..9.0f64, part in 0.01..0.9f64) {
        let step = std::f64::consts::TAU / corners as f64;
        let shape = Polygon::new((0..corners).map(|i| DVec2::from_angle(step * i as f64) * radius).collect());
        let inner = radius * (step / 2.0).cos();
        let near = 1e-6 * shape.area() + GRID;
        let inset = area(&shape.offset(-inner * part));
        prop_assert!((inset - shape.area() * (1.0 - part).powi(2)).abs() < near);
        let outset = area(&shape.offset(inner * part));
        prop_assert!((outset - shape.area() * (1.0 + part).powi(2)).abs() < near);
    }
}

#[test]
fn offsets_of_a_rectangle_in_closed_form() {
    let rectangle = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(10.0, 4.0), dvec2(0.0, 4.0)]);
    assert!((area(&rectangle.offset(-0.5)) - 9.0 * 3.0).abs() < 1e-9);
    assert!((area(&rectangle.offset(0.5)) - 11.0 * 5.0).abs() < 1e-9);
    assert_eq!(rectangle.offset(-2.5), vec![]);
}
