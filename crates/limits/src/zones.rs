//! What keep-outs take of a face and what they leave, for drawing.

use crate::keep_out::{ConstrainedPart, KeepOut, Shape};
use chalkcourse_geometry::{Convex, Polygon, RoofFace, dvec2};

/// Zones of a face, as shapes in its frame.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Zones {
    /// Where a module may lie entirely; empty if only the border of the face limits it.
    pub free: Vec<Polygon>,
    /// Where modules may lie but the lower edge of the lowest row may not, because of the rail below it.
    pub not_lowest: Vec<Polygon>,
}

/// Shapes smaller than this, m², are slivers of rounding between two shapes that touch.
const CRUMB: f64 = 1e-6;

impl Zones {
    /// Zones of the keep-outs of a face, clipped to its border. Empty for an unsound face.
    pub fn of(face: &RoofFace, keep_outs: &[KeepOut]) -> Self {
        if !face.sound {
            return Self::default();
        }
        let of_modules = keep_outs.iter().filter(|keep_out| keep_out.held == ConstrainedPart::Module);
        let modules = sized(of_modules.flat_map(KeepOut::outlines));
        let rails = sized(keep_outs.iter().flat_map(below_rails));
        let free = if modules.is_empty() {
            vec![face.frame.clone()]
        } else {
            sized(face.frame.difference(&modules).into_iter())
        };
        let rails = if rails.is_empty() { rails } else { Polygon::union(&rails) };
        let in_free = rails.iter().flat_map(|rail| free.iter().flat_map(|free| rail.intersection(free)));
        let not_lowest = sized(in_free);
        Self { free: if modules.is_empty() { Vec::new() } else { free }, not_lowest }
    }
}

/// Shapes large enough to draw.
fn sized(shapes: impl Iterator<Item = Polygon>) -> Vec<Polygon> {
    shapes.filter(|shape| shape.area() > CRUMB).collect()
}

/// Where the lower edge of a module may not be because of a keep-out of the rail: the keep-out extended up by the depth of the
/// rail.
fn below_rails(keep_out: &KeepOut) -> Vec<Polygon> {
    let ConstrainedPart::Rail { depth } = keep_out.held else { return Vec::new() };
    let up = dvec2(0.0, depth);
    let raised = |points: &[_]| Convex::around(points.iter().flat_map(|&p| [p, p + up]));
    let pieces: Vec<Convex> = match &keep_out.shape {
        Shape::Pieces(_) => keep_out.outlines().iter().filter_map(|it| raised(&it.outer)).collect(),
        Shape::Outside(inside) => inside.sides().filter_map(|(_, _, a, b)| raised(&[a, b])).collect(),
    };
    pieces.iter().map(|piece| Polygon::new(piece.corners().to_vec())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{INCH, SLOPE, book, gable, kit};
    use crate::{KeepOutContext, keep_outs};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Resolved;
    use chalkcourse_layout::Layout;

    fn zones(job: &Resolved) -> Zones {
        let layout = Layout::of(job);
        let given = KeepOutContext::as_laid(job, &layout);
        Zones::of(&layout.roof.faces[0], &keep_outs(job, &layout, 0, &given))
    }

    /// The demo book's setbacks: rakes 12 in, eave 6 in; at the ridge 18 in of plan for fire access, more than 18 in on the
    /// slope.
    #[test]
    fn what_is_left_of_a_gable() {
        let left = |zones: &Zones| zones.free.iter().map(Polygon::area).sum::<f64>();
        let (wide, high) = (12.0 - 24.0 * INCH, 6.0 * SLOPE - 6.0 * INCH - 18.0 * INCH * SLOPE);
        let all = zones(&gable());
        assert!((left(&all) - wide * high).abs() < 1e-3 && all.free.len() == 1, "{all:?}");
        assert!(all.not_lowest.is_empty(), "2 in and 2 in at the eave are within 6 in");
        let mut job = gable();
        book(&mut job).off.insert("setback".into());
        let high = high + 6.0 * INCH;
        assert!((left(&zones(&job)) - 12.0 * high).abs() < 1e-3);
        let off = ["setback", "fire-ridge", "ridge-course", "base-rail"].map(str::to_owned);
        book(&mut job).off.extend(off);
        assert_eq!(zones(&job), Zones::default(), "all that is switched off is gone");
    }

    #[test]
    fn the_lowest_row_has_a_zone_where_nothing_else_has() {
        let area = |job: &Resolved| zones(job).not_lowest.iter().map(Polygon::area).sum::<f64>();
        let mut job = gable();
        kit(&mut job).base_rail.as_mut().unwrap().least_above_eave = Length::from_inches(8.0);
        assert!((area(&job) - 4.0 * INCH * (12.0 - 24.0 * INCH)).abs() < 1e-3, "8 in and 2 in, less 6 in");
        // Over a hole the rail has no deck, 2 in up from its upper side.
        kit(&mut job).base_rail.as_mut().unwrap().least_above_eave = Length::ZERO;
        book(&mut job).off.insert("setback".into());
        let hole = [(4.0, 1.0), (4.5, 1.0), (4.5, 1.3), (4.0, 1.3)];
        job.faces[0].outline.holes.push(hole.map(Into::into).to_vec());
        assert!((area(&job) - 2.0 * INCH * 12.5).abs() < 1e-3, "and along the eave");
    }
}
