//! Building dimensions: as entered for the site, otherwise from the house as drawn. Look them up here, so that nothing has to be
//! entered twice.

use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{DVec2, Length, Polygon};
use chalkcourse_job::{FaceId, PartKind, Resolved, RoofPart};

/// A dimension of the building and its origin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownLength {
    /// The length.
    pub length: Length,
    /// Its origin.
    pub from: KnownFrom,
}

/// Where a dimension comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KnownFrom {
    /// Entered for the site.
    Typed,
    /// From the house as drawn.
    Drawn,
}

fn typed(length: Option<Length>) -> Option<KnownLength> {
    length.map(|length| KnownLength { length, from: KnownFrom::Typed })
}

fn drawn(length: Length) -> KnownLength {
    KnownLength { length, from: KnownFrom::Drawn }
}

/// How far the eave of a face extends past the outer wall, in plan. The overhang of its own side takes precedence over the one
/// entered for the site, which is for all of them; a side drawn without one may have been drawn along the edge of the roof, so it
/// says nothing.
pub fn overhang(job: &Resolved, face: FaceId) -> Option<KnownLength> {
    let side = job.side_of(face).and_then(|(part, at)| part.side(at));
    let own = side.map(|side| side.overhang).filter(|overhang| *overhang > Length::ZERO);
    own.map(drawn).or_else(|| typed(job.site.building.overhang))
}

/// Eaves lower than this above the job's level, in metres, mean that the level is not the ground.
const LEAST_EAVE: f64 = 1.5;

/// Height of the eave above ground: as entered, otherwise the height of the largest part's roof over its walls, if the job's
/// level can be the ground. (The eave's edge is lower by the fall of its overhang, which errs on the safe side.)
pub fn eave_height(job: &Resolved) -> Option<KnownLength> {
    let largest = || {
        let part = housing(job).max_by(|a, b| a.outline.area().total_cmp(&b.outline.area()))?;
        let sloped = part.sides.iter().flatten().filter(|s| matches!(s.treatment, Treatment::Slope(_)));
        let heights = sloped.map(|side| side.eave_height.unwrap_or(part.eave_height));
        heights.reduce(Length::max).or(Some(part.eave_height)).filter(|height| height.metres() >= LEAST_EAVE)
    };
    typed(job.site.building.eave_height).or_else(|| largest().map(drawn))
}

/// The least horizontal dimension of the building: as entered, otherwise of the walls of its parts together, or of its drawn
/// faces less the overhang entered for them.
pub fn least_width(job: &Resolved) -> Option<KnownLength> {
    let of_parts = || {
        let corners: Vec<DVec2> = housing(job).flat_map(|part| part.outline.outer.iter().copied()).collect();
        narrowest(&corners)
    };
    let of_faces = || {
        let faces = job.faces.iter().filter(|face| face.from.is_none());
        let corners: Vec<DVec2> = faces.flat_map(|face| face.outline.outer.iter().copied()).collect();
        let eaves = 2.0 * job.site.building.overhang.map_or(0.0, Length::metres);
        narrowest(&corners).map(|width| (width - eaves).max(0.0))
    };
    let as_drawn = || of_parts().or_else(of_faces).map(|width| drawn(Length::from_metres(width)));
    typed(job.site.building.least_width).or_else(as_drawn)
}

/// Parts that count as building: a dormer, a porch or a chimney makes it neither wider nor higher.
fn housing(job: &Resolved) -> impl Iterator<Item = &RoofPart> {
    job.parts.iter().filter(|part| matches!(part.kind, PartKind::Main | PartKind::Ell | PartKind::Other))
}

/// The least distance, in metres, between two parallel lines that enclose all points: one of them runs along a side of the hull
/// (Houle and Toussaint, 1988, from memory). `None` for points that enclose no area.
fn narrowest(points: &[DVec2]) -> Option<f64> {
    if points.len() < 3 {
        return None;
    }
    let hull: Polygon = Polygon::hull(points);
    let across = |(_, _, a, b): (usize, usize, DVec2, DVec2)| {
        let normal = (b - a).perp().normalize_or_zero();
        (normal != DVec2::ZERO)
            .then(|| hull.outer.iter().map(|p| (*p - a).dot(normal).abs()).fold(0.0, f64::max))
    };
    hull.sides().filter_map(across).reduce(f64::min).filter(|width| *width > 0.01)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Pitch, dvec2};
    use chalkcourse_job::{Edit, PartId, apply, builtin_kit, builtin_prices, builtin_rule_book};

    fn house(overhang_in: f64) -> Resolved {
        let job = Resolved::new("Test".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let feet = |x: f64, y: f64| dvec2(x, y) * 0.3048;
        // 48 × 30 ft with an ell 20 ft wide that extends 12 ft farther
        let corners = [(0.0, 0.0), (48.0, 0.0), (48.0, 30.0), (20.0, 30.0), (20.0, 42.0), (0.0, 42.0)];
        let outline = Polygon::new(corners.iter().map(|&(x, y)| feet(x, y)).collect());
        let part = RoofPart::new(
            PartId(1),
            "Main".into(),
            PartKind::Main,
            outline,
            Length::from_feet(9.0),
            Treatment::Slope(Pitch::from_rise_in_12(6.0).unwrap()),
            Length::from_inches(overhang_in),
        );
        apply(&job, &Edit::PutPart(part)).unwrap()
    }

    #[test]
    fn values_entered_when_raising_are_known() {
        let job = house(16.0);
        for face in &job.faces {
            assert_eq!(overhang(&job, face.id), Some(drawn(Length::from_inches(16.0))), "{}", face.name);
        }
        assert_eq!(eave_height(&job), Some(drawn(Length::from_feet(9.0))));
        // the hull is 48 × 42 ft with a corner cut off, 46.5 ft across that corner
        let width = least_width(&job).unwrap();
        assert!((width.length.feet() - 42.0).abs() < 1e-9, "{width:?}");
        assert_eq!(width.from, KnownFrom::Drawn);
    }

    /// A right triangle with legs of 3 and 4: its least width is its height over the hypotenuse, 12 / 5.
    #[test]
    fn the_least_width_is_not_that_of_a_box() {
        let triangle = [dvec2(0.0, 0.0), dvec2(4.0, 0.0), dvec2(0.0, 3.0), dvec2(1.0, 1.0)];
        assert!((narrowest(&triangle).unwrap() - 2.4).abs() < 1e-12);
        assert_eq!(narrowest(&[dvec2(0.0, 0.0), dvec2(1.0, 0.0), dvec2(2.0, 0.0)]), None);
    }

    #[test]
    fn entered_site_values_take_precedence() {
        let mut job = house(0.0);
        let face = job.faces[0].id;
        assert_eq!(overhang(&job, face), None, "a side without an overhang says nothing");
        job.site.building.overhang = Some(Length::from_inches(12.0));
        job.site.building.eave_height = Some(Length::from_feet(18.0));
        job.site.building.least_width = Some(Length::from_feet(24.0));
        assert_eq!(overhang(&job, face), typed(Some(Length::from_inches(12.0))));
        assert_eq!(eave_height(&job).unwrap().length.feet(), 18.0);
        assert_eq!(least_width(&job).unwrap().length.feet(), 24.0);
        // The overhang of the side itself takes precedence.
        let mut own = house(16.0);
        own.site.building.overhang = Some(Length::from_inches(12.0));
        assert_eq!(overhang(&own, own.faces[0].id), Some(drawn(Length::from_inches(16.0))));
    }
}
