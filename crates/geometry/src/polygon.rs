use crate::Rect;
use geo::algorithm::buffer::{BufferStyle, LineJoin};
use geo::{BooleanOps, Buffer, ConvexHull, TriangulateEarcut};
use glam::{DVec2, dvec2};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An outline with holes, in plan or in a face's frame. Rings are open (the last corner joins the first) and may run either way;
/// a polygon as drawn may be invalid, and [`Polygon::defects`] says how.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Polygon {
    /// The outline: x, y in metres.
    #[schemars(with = "Vec<[f64; 2]>")]
    pub outer: Vec<DVec2>,
    /// Holes: x, y in metres.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(with = "Vec<Vec<[f64; 2]>>")]
    pub holes: Vec<Vec<DVec2>>,
}

/// A defect of a polygon. Ring 0 is the outline, ring n the n-th hole; corners are 0-based.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Defect {
    /// A coordinate is not finite, or beyond 100 km: no roof is there.
    NotFinite {
        /// Which ring.
        ring: usize,
        /// Which corner.
        corner: usize,
    },
    /// A ring with fewer than three corners.
    TooFewCorners {
        /// Which ring.
        ring: usize,
    },
    /// Two consecutive corners coincide.
    RepeatedCorner {
        /// Which ring.
        ring: usize,
        /// The second of the two.
        corner: usize,
    },
    /// The outline encloses no area.
    NoArea {
        /// Which ring.
        ring: usize,
    },
    /// Two sides cross or touch where they should not.
    Crosses {
        /// Where.
        at: DVec2,
    },
    /// A hole is not inside the outline, or lies in another hole.
    HoleOutside {
        /// Which ring.
        ring: usize,
    },
}

/// The sharpest corner that an offset mitres, in radians.
const SHARPEST: f64 = 0.05;

/// Signed area of a ring, in m²: positive if counter-clockwise, zero if degenerate.
pub fn signed_area(ring: &[DVec2]) -> f64 {
    // Relative to the first corner: far from the origin the products would swamp the area.
    let Some(&first) = ring.first() else { return 0.0 };
    ring.windows(2).map(|pair| (pair[0] - first).perp_dot(pair[1] - first)).sum::<f64>() / 2.0
}

/// The point of segment `a`–`b` nearest to `p`.
pub fn nearest_on_segment(p: DVec2, a: DVec2, b: DVec2) -> DVec2 {
    let along = b - a;
    let length_squared = along.length_squared();
    if length_squared == 0.0 {
        return a;
    }
    a + along * ((p - a).dot(along) / length_squared).clamp(0.0, 1.0)
}

/// Distance from `p` to segment `a`–`b`.
pub fn distance_to_segment(p: DVec2, a: DVec2, b: DVec2) -> f64 {
    p.distance(nearest_on_segment(p, a, b))
}

impl Polygon {
    /// An outline without holes.
    pub fn new(outer: Vec<DVec2>) -> Self {
        Self { outer, holes: Vec::new() }
    }

    /// A circle as a regular polygon of `corners` corners with the same area.
    pub fn circle(centre: DVec2, radius: f64, corners: usize) -> Self {
        let turn = std::f64::consts::TAU / corners as f64;
        let radius = radius * (turn / turn.sin()).sqrt();
        Self::new((0..corners).map(|i| centre + DVec2::from_angle(turn * i as f64) * radius).collect())
    }

    /// The convex hull of some points.
    pub fn hull(points: &[DVec2]) -> Self {
        let points: geo::MultiPoint<f64> = points.iter().map(|p| geo::Point::new(p.x, p.y)).collect();
        let hull = points.convex_hull();
        Self::new(ring_from_geo(hull.exterior()))
    }

    /// All rings, the outline first.
    pub fn rings(&self) -> impl Iterator<Item = &[DVec2]> {
        std::iter::once(self.outer.as_slice()).chain(self.holes.iter().map(Vec::as_slice))
    }

    /// All sides of all rings: ring, start corner, start, end.
    pub fn sides(&self) -> impl Iterator<Item = (usize, usize, DVec2, DVec2)> {
        self.rings().enumerate().flat_map(|(ring, corners)| {
            (0..corners.len()).map(move |i| (ring, i, corners[i], corners[(i + 1) % corners.len()]))
        })
    }

    /// Area of the outline minus the holes, in m²; never negative.
    pub fn area(&self) -> f64 {
        let holes: f64 = self.holes.iter().map(|hole| signed_area(hole).abs()).sum();
        (signed_area(&self.outer).abs() - holes).max(0.0)
    }

    /// Bounding box of the outline; `None` without corners.
    pub fn bounds(&self) -> Option<Rect> {
        Rect::around(self.outer.iter().copied())
    }

    /// The same shape with every point mapped.
    pub fn map(&self, f: impl Fn(DVec2) -> DVec2) -> Self {
        let ring = |ring: &Vec<DVec2>| ring.iter().map(|&p| f(p)).collect();
        Self { outer: ring(&self.outer), holes: self.holes.iter().map(ring).collect() }
    }

    /// The same shape with the outline running counter-clockwise and holes clockwise.
    pub fn oriented(&self) -> Self {
        let ring = |ring: &[DVec2], counter_clockwise: bool| {
            let mut ring = ring.to_vec();
            if (signed_area(&ring) > 0.0) != counter_clockwise {
                ring.reverse();
            }
            ring
        };
        Self {
            outer: ring(&self.outer, true),
            holes: self.holes.iter().map(|hole| ring(hole, false)).collect(),
        }
    }

    /// Whether `p` is inside (and not in a hole); on the border either answer is possible.
    pub fn contains(&self, p: DVec2) -> bool {
        self.sides().filter(|&(_, _, a, b)| crosses_ray(p, a, b)).count() % 2 == 1
    }

    /// Distance from `p` to the nearest side, from inside or outside; infinite without sides.
    pub fn distance_to_border(&self, p: DVec2) -> f64 {
        self.sides().map(|(_, _, a, b)| distance_to_segment(p, a, b)).fold(f64::INFINITY, f64::min)
    }

    /// All defects, in the order in which to repair them. `tolerance` (metres, about 1 mm) is the distance within which two
    /// corners coincide.
    pub fn defects(&self, tolerance: f64) -> Vec<Defect> {
        let mut defects = Vec::new();
        for (ring, corners) in self.rings().enumerate() {
            if let Some(corner) = corners.iter().position(|p| !p.is_finite() || p.abs().max_element() > 1e5) {
                defects.push(Defect::NotFinite { ring, corner });
            }
        }
        if !defects.is_empty() {
            return defects;
        }
        for (ring, corners) in self.rings().enumerate() {
            if corners.len() < 3 {
                defects.push(Defect::TooFewCorners { ring });
                continue;
            }
            for (i, &p) in corners.iter().enumerate() {
                if p.distance(corners[(i + 1) % corners.len()]) <= tolerance {
                    defects.push(Defect::RepeatedCorner { ring, corner: (i + 1) % corners.len() });
                }
            }
        }
        if !defects.is_empty() {
            return defects;
        }
        if let Some(at) = self.first_crossing() {
            defects.push(Defect::Crosses { at });
            return defects;
        }
        for (ring, corners) in self.rings().enumerate() {
            let length: f64 =
                (0..corners.len()).map(|i| corners[i].distance(corners[(i + 1) % corners.len()])).sum();
            if signed_area(corners).abs() <= tolerance * length / 2.0 {
                defects.push(Defect::NoArea { ring });
            }
        }
        let outline = Self::new(self.outer.clone());
        for (index, hole) in self.holes.iter().enumerate() {
            let in_another = self
                .holes
                .iter()
                .enumerate()
                .any(|(other, ring)| other != index && Self::new(ring.clone()).contains(hole[0]));
            if !outline.contains(hole[0]) || in_another {
                defects.push(Defect::HoleOutside { ring: index + 1 });
            }
        }
        defects
    }

    /// The first point where two non-adjacent sides meet, or adjacent ones fold back on each other.
    fn first_crossing(&self) -> Option<DVec2> {
        let sides: Vec<_> = self.sides().collect();
        let ring_length: Vec<usize> = self.rings().map(<[DVec2]>::len).collect();
        let boxes: Vec<Rect> =
            sides.iter().map(|&(_, _, a, b)| Rect { min: a.min(b), max: a.max(b) }).collect();
        for (i, &(ring, corner, a, b)) in sides.iter().enumerate() {
            for (j, &(other_ring, other_corner, c, d)) in sides.iter().enumerate().skip(i + 1) {
                if boxes[i].overlap(&boxes[j]).min_element() < 0.0 {
                    continue;
                }
                let n = ring_length[ring];
                let same = ring == other_ring;
                if same && other_corner == corner + 1 {
                    // b == c: they share this corner, and must not fold back on each other
                    if folds_back(a, b, d) {
                        return Some(b);
                    }
                } else if same && (other_corner + 1) % n == corner {
                    if folds_back(c, a, b) {
                        return Some(a);
                    }
                } else if let Some(at) = meet(a, b, c, d) {
                    return Some(at);
                }
            }
        }
        None
    }

    /// Triangulation, for drawing and area. Empty for a polygon without area.
    pub fn triangles(&self) -> Vec<[DVec2; 3]> {
        if self.outer.len() < 3 || !self.rings().flatten().all(|p| p.is_finite()) {
            return Vec::new();
        }
        to_geo(self)
            .earcut_triangles()
            .into_iter()
            .map(|t| [t.v1(), t.v2(), t.v3()].map(|c| dvec2(c.x, c.y)))
            .collect()
    }

    /// This shape minus `others`, which may overlap each other. Needs shapes without [defects](Self::defects).
    pub fn difference(&self, others: &[Self]) -> Vec<Self> {
        // Without the union, ground under two of them would count as outside both.
        let others = unite(others);
        from_geo(&to_geo(self).difference(&others))
    }

    /// The intersection of this shape and `other`. Needs shapes without [defects](Self::defects).
    pub fn intersection(&self, other: &Self) -> Vec<Self> {
        from_geo(&to_geo(self).intersection(&to_geo(other)))
    }

    /// The union of some shapes. Needs shapes without [defects](Self::defects).
    pub fn union(shapes: &[Self]) -> Vec<Self> {
        from_geo(&unite(shapes))
    }

    /// The shape offset outwards by `distance` metres (inwards if negative), corners mitred; a corner sharper than 3° is cut off.
    /// Corners are accurate to about 1e-6 of the shape's size.
    pub fn offset(&self, distance: f64) -> Vec<Self> {
        let style = BufferStyle::new(distance).line_join(LineJoin::Miter(SHARPEST));
        from_geo(&to_geo(&self.oriented()).buffer_with_style(style))
    }
}

fn crosses_ray(p: DVec2, a: DVec2, b: DVec2) -> bool {
    (a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x
}

fn folds_back(before: DVec2, corner: DVec2, after: DVec2) -> bool {
    let (back, on) = (before - corner, after - corner);
    back.dot(on) > 0.0 && back.perp_dot(on).abs() <= 1e-9 * back.length() * on.length()
}

fn meet(a: DVec2, b: DVec2, c: DVec2, d: DVec2) -> Option<DVec2> {
    use geo::line_intersection::{LineIntersection, line_intersection};
    let line = |p: DVec2, q: DVec2| geo::Line::new((p.x, p.y), (q.x, q.y));
    line_intersection(line(a, b), line(c, d)).map(|meeting| match meeting {
        LineIntersection::SinglePoint { intersection, .. } => dvec2(intersection.x, intersection.y),
        LineIntersection::Collinear { intersection } => {
            dvec2(intersection.start.x + intersection.end.x, intersection.start.y + intersection.end.y) / 2.0
        }
    })
}

fn to_geo(polygon: &Polygon) -> geo::Polygon<f64> {
    let ring =
        |ring: &Vec<DVec2>| ring.iter().map(|p| geo::coord! { x: p.x, y: p.y }).collect::<geo::LineString>();
    geo::Polygon::new(ring(&polygon.outer), polygon.holes.iter().map(ring).collect())
}

fn unite(shapes: &[Polygon]) -> geo::MultiPolygon<f64> {
    // The library distinguishes holes from outlines by their orientation.
    let shapes: Vec<_> = shapes.iter().map(|shape| to_geo(&shape.oriented())).collect();
    geo::unary_union(&shapes)
}

fn from_geo(shapes: &geo::MultiPolygon<f64>) -> Vec<Polygon> {
    shapes
        .0
        .iter()
        .map(|shape| Polygon {
            outer: ring_from_geo(shape.exterior()),
            holes: shape.interiors().iter().map(ring_from_geo).collect(),
        })
        .collect()
}

/// Rings of the library repeat their first corner at the end; ours do not.
fn ring_from_geo(ring: &geo::LineString<f64>) -> Vec<DVec2> {
    let mut corners: Vec<DVec2> = ring.0.iter().map(|c| dvec2(c.x, c.y)).collect();
    corners.pop();
    corners
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(side: f64) -> Polygon {
        Polygon::new(vec![dvec2(0.0, 0.0), dvec2(side, 0.0), dvec2(side, side), dvec2(0.0, side)])
    }

    #[test]
    fn area_far_from_the_origin_is_the_same() {
        let far = square(3.0).map(|p| p + dvec2(9e4, -9e4));
        assert!((far.area() - 9.0).abs() < 1e-9);
    }

    #[test]
    fn a_circle_has_the_area_of_a_circle() {
        let circle = Polygon::circle(dvec2(5.0, 5.0), 0.5, 24);
        assert!((circle.area() - std::f64::consts::PI * 0.25).abs() < 1e-12);
    }

    #[test]
    fn names_each_defect() {
        let check = |points: &[(f64, f64)], expect: fn(&Defect) -> bool| {
            let shape = Polygon::new(points.iter().map(|&(x, y)| dvec2(x, y)).collect());
            let defects = shape.defects(1e-3);
            assert!(defects.first().is_some_and(expect), "{points:?}: {defects:?}");
        };
        check(&[(0.0, 0.0), (1.0, 0.0)], |d| matches!(d, Defect::TooFewCorners { ring: 0 }));
        check(&[(0.0, 0.0), (1.0, 0.0), (1.0, 0.0), (0.0, 1.0)], |d| {
            matches!(d, Defect::RepeatedCorner { ring: 0, corner: 2 })
        });
        check(
            &[(0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 2.0)],
            |d| matches!(d, Defect::Crosses { at } if at.distance(dvec2(1.0, 1.0)) < 1e-9),
        );
        check(&[(0.0, 0.0), (1.0, 0.0), (2.0, 0.0)], |d| {
            matches!(d, Defect::Crosses { .. } | Defect::NoArea { ring: 0 })
        });
        check(&[(0.0, 0.0), (f64::NAN, 0.0), (2.0, 0.0)], |d| {
            matches!(d, Defect::NotFinite { ring: 0, corner: 1 })
        });
        let mut holed = square(4.0);
        holed.holes.push(square(1.0).map(|p| p + dvec2(9.0, 0.0)).outer);
        assert_eq!(holed.defects(1e-3), vec![Defect::HoleOutside { ring: 1 }]);
        assert_eq!(square(4.0).defects(1e-3), vec![]);
    }

    #[test]
    fn a_hole_is_outside() {
        let mut holed = square(4.0);
        holed.holes.push(square(1.0).map(|p| p + dvec2(1.0, 1.0)).outer);
        assert_eq!(holed.area(), 15.0);
        assert!(!holed.contains(dvec2(1.5, 1.5)) && holed.contains(dvec2(0.5, 0.5)));
        let area: f64 = holed.triangles().iter().map(|t| signed_area(t).abs()).sum();
        assert!((area - 15.0).abs() < 1e-9);
    }
}
