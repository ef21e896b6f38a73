//! Parts with one slope, away from the house: a porch that runs up into its roof, a lean-to against its wall.

use super::{SMALL_OVERHANG, outward_sides};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch};
use chalkcourse_job::{PartSide, Resolved, RoofPart};

/// Rise in 12 of either (common practice, no source).
const RISE: f64 = 3.0;
/// A porch's eave below that of the house, feet (common practice, no source).
const PORCH_BELOW: f64 = 1.0;
/// The top of a lean-to below the eave of the house, feet: space for its flashing under the soffit (common practice, no
/// source).
const LEAN_TO_BELOW: f64 = 1.0;

/// The height of a part that leans on the house.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Leaning {
    /// Its eave is below that of the house, and it runs into its roof.
    IntoRoof,
    /// Its top is below the eave of the house.
    OnWall,
}

/// Gives the part one slope away from the house, with open ends. Unchanged if there is no house.
pub(super) fn shape_as_lean_to(part: &mut RoofPart, job: &Resolved, leaning: Leaning) {
    let Some(house) = job.parts.iter().min_by(|a, b| away(a, part).total_cmp(&away(b, part))) else { return };
    let outs = outward_sides(part);
    // The side nearest to the house.
    let Some(&(wall, ..)) = outs.iter().min_by(|a, b| to_house(house, a.1).total_cmp(&to_house(house, b.1)))
    else {
        return;
    };
    let way = outs.iter().find(|out| out.0 == wall).map_or(DVec2::ZERO, |out| out.2);
    let pitch = Pitch::from_rise_in_12(RISE).unwrap_or(Pitch::FLAT);
    let below = match leaning {
        Leaning::IntoRoof => Length::from_feet(PORCH_BELOW),
        Leaning::OnWall => {
            Length::from_feet(LEAN_TO_BELOW)
                + Length::from_metres(depth_behind(part, wall, way) * pitch.slope())
        }
    };
    part.eave_height = (house.eave_height - below).max(Length::ZERO);
    for (at, _, out) in outs {
        let front = out.dot(way) < -0.7;
        let treatment = if at == wall {
            Treatment::Wall
        } else if front {
            Treatment::Slope(pitch)
        } else {
            Treatment::Gable
        };
        let overhang = if at == wall { Length::ZERO } else { Length::from_inches(SMALL_OVERHANG) };
        if let Some(next) = part.with_side(at, |there| PartSide { treatment, overhang, ..there }) {
            *part = next;
        }
    }
}

/// The depth of a part from a side with the given outward direction, metres.
fn depth_behind(part: &RoofPart, wall: SideRef, out: DVec2) -> f64 {
    let Some((a, _)) = part.wall_line(wall) else { return 0.0 };
    part.outline.outer.iter().map(|p| (a - *p).dot(out)).fold(0.0, f64::max)
}

/// Distance of a point from the house in plan, metres; 0 inside it.
pub(super) fn to_house(house: &RoofPart, p: DVec2) -> f64 {
    if house.outline.contains(p) { 0.0 } else { house.outline.distance_to_border(p) }
}

/// Distance of the centre of a part from the house, metres.
pub(super) fn away(house: &RoofPart, part: &RoofPart) -> f64 {
    let middle = part.outline.bounds().map_or(DVec2::ZERO, |bounds| bounds.centre());
    to_house(house, middle)
}
