//! Making a part of the house from a drawn footprint: what it is on, which way it faces, how high it is.

mod ell;
mod lean;

use crate::state::PartPreset;
use crate::text;
use chalkcourse_geometry::raise::{RaiseError, SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Defect, Length, Pitch, Plane, Polygon, signed_area};
use chalkcourse_job::{Face, PartId, PartSide, Resolved, RoofPart, first_free};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Ends, RaiseAs, part_over};
use lean::{Leaning, shape_as_lean_to};

/// Height of a dormer's front wall over the roof, feet (common practice, no source).
const DORMER_WALL: f64 = 4.0;
/// Below this front wall height, in metres, a dormer has no front.
const LEAST_WALL: f64 = 0.15;
/// Overhang of a dormer's and a porch's roof, inches (common practice, no source).
const SMALL_OVERHANG: f64 = 6.0;
/// Height of a chimney's top over the roof, feet: 3 ft where it passes through (IRC R1003.9, from memory).
const CHIMNEY_OVER: f64 = 3.0;
/// Chimneys wider than this along the eave get a cricket, inches (IRC R903.2.2, from memory).
const CRICKET_FROM: f64 = 30.0;

/// Default settings for raising a roof: 6:12, walls of 9 ft, 1 ft of overhang, gables.
pub(crate) fn usual_roof() -> RaiseAs {
    RaiseAs {
        pitch: Pitch::from_rise_in_12(6.0).unwrap_or(Pitch::FLAT),
        eave: Length::from_feet(9.0),
        overhang: Length::from_feet(1.0),
        ends: Ends::Gable,
    }
}

/// A part over a drawn footprint. `how` are the present settings for raising a roof.
pub(crate) fn new_part(
    job: &Resolved,
    layout: &Layout,
    preset: PartPreset,
    outline: &Polygon,
    how: &RaiseAs,
) -> RoofPart {
    let mut part = part_over(job, outline, how);
    part.kind = preset.kind();
    part.name = first_free(text::part_preset(preset), |name| job.parts.iter().any(|part| part.name == name));
    let below = outline.bounds().and_then(|bounds| slope_at(layout, bounds.centre()));
    match preset {
        PartPreset::Dormer => {
            if let Some((plane, top)) = below {
                shape_as_dormer(&mut part, &plane, top);
            }
        }
        PartPreset::Porch => shape_as_lean_to(&mut part, job, Leaning::IntoRoof),
        PartPreset::LeanTo => shape_as_lean_to(&mut part, job, Leaning::OnWall),
        PartPreset::Chimney => return chimney(job, part, below.map(|(plane, _)| plane)),
        PartPreset::Ell => {
            // A wing has the eaves of the house.
            if let Some(house) = job.parts.first() {
                part.eave_height = house.eave_height;
            }
            ell::run_into(&mut part, job, layout, how);
        }
    }
    part
}

/// How many user-set edge kinds were lost with their sides when parts changed.
pub(crate) fn kinds_lost(before: &Resolved, after: &Resolved) -> usize {
    if before.parts == after.parts {
        return 0;
    }
    let of_parts = before.faces.iter().filter(|face| face.from.is_some());
    let lost = |face: &Face| face.lost_overrules().count();
    let lost_now = |before: &Face| {
        let there = after.face(before.id).or_else(|| after.resting.iter().find(|face| face.id == before.id));
        there.map_or(before.overruled.len(), lost)
    };
    of_parts.map(|face| lost_now(face).saturating_sub(lost(face))).sum()
}

/// The plane of the uppermost face at a plan point, and the greatest height of that face.
fn slope_at(layout: &Layout, plan: DVec2) -> Option<(Plane, f64)> {
    let there = layout.roof.faces.iter().filter(|face| face.sound && face.plan.contains(plan));
    let height = |plane: &Plane| plane.height_at(plan);
    let face = there.max_by(|a, b| height(&a.plane).total_cmp(&height(&b.plane)))?;
    let heights = face.plan.outer.iter().map(|&p| face.plane.height_at(p));
    Some((face.plane, heights.fold(f64::NEG_INFINITY, f64::max)))
}

/// The sides of the outline with the outward direction of each.
fn outward_sides(part: &RoofPart) -> Vec<(SideRef, DVec2, DVec2)> {
    let turn = if signed_area(&part.outline.outer) > 0.0 { -1.0 } else { 1.0 };
    part.outline
        .sides()
        .filter(|(ring, ..)| *ring == 0)
        .map(|(ring, side, a, b)| {
            (SideRef { ring, side }, (a + b) / 2.0, (b - a).normalize_or_zero().perp() * turn)
        })
        .collect()
}

/// Turns the part into a dormer: its front faces down the slope, its ridge runs back into it, its cheeks are under its
/// eaves.
fn shape_as_dormer(part: &mut RoofPart, plane: &Plane, top: f64) {
    let down = plane.downslope.unit();
    let outs = outward_sides(part);
    let facing = |way: DVec2| outs.iter().max_by(|a, b| a.2.dot(way).total_cmp(&b.2.dot(way))).copied();
    let (Some((front, middle, _)), Some((back, ..))) = (facing(down), facing(-down)) else { return };
    // Its ridge stays below that of the house: on a short slope the wall is lower.
    let half = part.wall_line(front).map_or(0.0, |(a, b)| a.distance(b) / 2.0);
    let foot = plane.height_at(middle);
    let room = top - foot - half * plane.pitch.slope();
    let wall = Length::from_feet(DORMER_WALL).metres().min(room).max(LEAST_WALL);
    part.eave_height = Length::from_metres(foot + wall);
    let reach = Length::from_inches(SMALL_OVERHANG);
    let slope = Treatment::Slope(plane.pitch);
    for (ring, sides) in part.sides.iter_mut().enumerate() {
        for (side, there) in sides.iter_mut().enumerate() {
            let at = SideRef { ring, side };
            let end = at == front || at == back;
            let overhang = if at == back { Length::ZERO } else { reach };
            *there = PartSide { treatment: if end { Treatment::Gable } else { slope }, overhang, ..*there };
        }
    }
    reach_the_slope(part, plane, front, back);
}

/// Extends the back of a four-cornered dormer as far up the slope as its ridge needs to run into it.
fn reach_the_slope(part: &mut RoofPart, plane: &Plane, front: SideRef, back: SideRef) {
    if part.outline.outer.len() != 4 || plane.pitch.slope() <= 0.0 || (front.side + 2) % 4 != back.side {
        return;
    }
    let (Some(at_front), Some(at_back)) = (part.wall_line(front), part.wall_line(back)) else { return };
    let up = -plane.downslope.unit();
    let half = at_front.0.distance(at_front.1) / 2.0;
    let ridge = part.eave_height.metres() + half * plane.pitch.slope();
    let middle = (at_back.0 + at_back.1) / 2.0;
    let short = (ridge - plane.height_at(middle)) / plane.pitch.slope();
    if short > 0.0 {
        for corner in [back.side, (back.side + 1) % 4] {
            if let Some(p) = part.outline.outer.get_mut(corner) {
                *p += up * short;
            }
        }
    }
}

fn chimney(job: &Resolved, part: RoofPart, below: Option<Plane>) -> RoofPart {
    let RoofPart { name, outline, eave_height, .. } = part;
    let Some(plane) = below else {
        let top = eave_height + Length::from_feet(CHIMNEY_OVER);
        return RoofPart::chimney(PartId(job.next_id), name, outline, top, None);
    };
    let heights = outline.outer.iter().map(|&p| plane.height_at(p));
    let top =
        Length::from_metres(heights.fold(f64::NEG_INFINITY, f64::max)) + Length::from_feet(CHIMNEY_OVER);
    let along = outline.outer.iter().map(|&p| p.dot(plane.along()));
    let (least, most) = along.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), u| (a.min(u), b.max(u)));
    let cricket = (most - least > Length::from_inches(CRICKET_FROM).metres()).then_some(plane.pitch);
    RoofPart::chimney(PartId(job.next_id), name, outline, top, cricket)
}

/// The location in plan of an error about raising.
pub(crate) fn trouble_spot(error: &RaiseError, outline: &Polygon) -> Option<DVec2> {
    let corner = |ring: usize, corner: usize| outline.rings().nth(ring)?.get(corner).copied();
    let side = |at: SideRef| {
        let (.., a, b) = outline.sides().find(|&(ring, side, ..)| (ring, side) == (at.ring, at.side))?;
        Some((a + b) / 2.0)
    };
    match *error {
        RaiseError::Outline(Defect::Crosses { at }) => Some(at),
        RaiseError::Outline(
            Defect::RepeatedCorner { ring, corner: at } | Defect::NotFinite { ring, corner: at },
        ) => corner(ring, at),
        RaiseError::Outline(
            Defect::TooFewCorners { ring } | Defect::NoArea { ring } | Defect::HoleOutside { ring },
        )
        | RaiseError::SideCount { ring, .. } => corner(ring, 0),
        RaiseError::BadNumber { at, .. } | RaiseError::NoSlope { at } => side(at),
        RaiseError::Overhang { near, .. } => Some(near),
        RaiseError::Knot { ring, corner: at, .. } => corner(ring, at),
    }
    .filter(|spot| spot.is_finite())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;
    use chalkcourse_geometry::dvec2;
    use chalkcourse_job::{Edit, PartKind, apply};

    fn rectangle(x: (f64, f64), y: (f64, f64)) -> Polygon {
        Polygon::new(vec![dvec2(x.0, y.0), dvec2(x.1, y.0), dvec2(x.1, y.1), dvec2(x.0, y.1)])
    }

    /// A gable house 20 m long with its ridge east–west.
    fn house(deep: f64) -> Resolved {
        let job = sample::empty();
        let part = part_over(&job, &rectangle((0.0, 20.0), (0.0, deep)), &usual_roof());
        apply(&job, &Edit::PutPart(part)).unwrap()
    }

    fn added(job: &Resolved, preset: PartPreset, outline: &Polygon) -> RoofPart {
        let part = new_part(job, &Layout::of(job), preset, outline, &usual_roof());
        apply(job, &Edit::PutPart(part.clone())).unwrap();
        part
    }

    #[test]
    fn a_dormer_looks_down_the_slope_and_runs_back_into_it() {
        let job = house(16.0);
        for (y, front) in [((1.0, 2.0), 0), ((14.0, 15.0), 2)] {
            let dormer = added(&job, PartPreset::Dormer, &rectangle((4.0, 6.0), y));
            assert_eq!(dormer.sides[0][front].treatment, Treatment::Gable);
            assert!(matches!(dormer.sides[0][1].treatment, Treatment::Slope(_)));
            let (plane, _) = slope_at(&Layout::of(&job), dvec2(5.0, (y.0 + y.1) / 2.0)).unwrap();
            let (a, b) = dormer.wall_line(SideRef { ring: 0, side: front }).unwrap();
            let over = dormer.eave_height.metres() - plane.height_at((a + b) / 2.0);
            assert!((over - Length::from_feet(4.0).metres()).abs() < 1e-9, "{over}");
            let (a, b) = dormer.wall_line(SideRef { ring: 0, side: 2 - front }).unwrap();
            let ridge = dormer.eave_height.metres() + plane.pitch.slope();
            assert!(plane.height_at((a + b) / 2.0) >= ridge - 1e-9);
        }
        // On a short slope its ridge is no higher than that of the house, and its back no farther.
        let job = house(6.0);
        let dormer = added(&job, PartPreset::Dormer, &rectangle((4.0, 6.0), (0.5, 1.5)));
        let (_, top) = slope_at(&Layout::of(&job), dvec2(5.0, 1.0)).unwrap();
        assert!(dormer.eave_height.metres() + 0.5 <= top + 1e-9);
        assert!(dormer.outline.outer.iter().all(|p| p.y <= 3.0 + 1e-9), "{:?}", dormer.outline.outer);
    }

    #[test]
    fn an_edge_kind_lost_with_its_side_is_counted() {
        let mut job = house(8.0);
        let slope = job.parts[0].sides[0][0].treatment;
        let east = 1;
        let mut hipped = job.parts[0].clone();
        hipped.sides[0][east].treatment = slope;
        job = apply(&job, &Edit::PutPart(hipped.clone())).unwrap();
        let east_side = Some(SideRef { ring: 0, side: east });
        let is_end = |from: chalkcourse_job::FromPart| hipped.place_of(from.side) == east_side;
        let end = job.faces.iter().find(|face| face.from.is_some_and(is_end));
        let end = end.unwrap().with_side_overruled(
            chalkcourse_geometry::SideId(0),
            Some(chalkcourse_geometry::EdgeKind::WallLine),
        );
        job = apply(&job, &Edit::PutFace(end)).unwrap();
        assert_eq!(kinds_lost(&job, &job), 0);
        // Raising the walls loses nothing.
        let mut higher = hipped.clone();
        higher.eave_height = Length::from_metres(4.0);
        assert_eq!(kinds_lost(&job, &apply(&job, &Edit::PutPart(higher)).unwrap()), 0);
        // A gable end has no face.
        hipped.sides[0][east].treatment = Treatment::Gable;
        assert_eq!(kinds_lost(&job, &apply(&job, &Edit::PutPart(hipped)).unwrap()), 1);
    }

    #[test]
    fn a_porch_leans_on_the_house_and_a_wide_chimney_has_a_cricket() {
        let job = house(8.0);
        let porch = added(&job, PartPreset::Porch, &rectangle((3.0, 7.0), (-2.5, 0.0)));
        assert_eq!(porch.sides[0][2].treatment, Treatment::Wall);
        assert!(matches!(porch.sides[0][0].treatment, Treatment::Slope(_)));
        assert_eq!(porch.sides[0][1].treatment, Treatment::Gable);
        let wide = added(&job, PartPreset::Chimney, &rectangle((8.0, 9.0), (2.0, 2.6)));
        assert!(wide.cricket.is_some());
        assert!(added(&job, PartPreset::Chimney, &rectangle((8.0, 8.6), (2.0, 2.6))).cricket.is_none());
        assert_eq!(added(&job, PartPreset::Ell, &rectangle((8.0, 11.0), (6.0, 12.0))).name, "Ell");
    }

    /// By hand: 3 in 12 over 2.4 m rises 0.6 m, so that the top of a lean-to is 1 ft below the eave; a porch of that
    /// depth would be above it.
    #[test]
    fn a_lean_to_ends_under_the_eave() {
        let job = house(8.0);
        let outline = rectangle((3.0, 7.0), (-2.4, 0.0));
        let lean = added(&job, PartPreset::LeanTo, &outline);
        assert_eq!((lean.kind, lean.name.as_str()), (PartKind::Other, "Lean-to"));
        assert_eq!(lean.sides[0][2].treatment, Treatment::Wall);
        let top = lean.eave_height.metres() + 2.4 * 0.25;
        let eave = job.parts[0].eave_height.metres();
        assert!((eave - top - 0.3048).abs() < 1e-9, "{top} under {eave}");
        let porch = added(&job, PartPreset::Porch, &outline);
        assert!(porch.eave_height.metres() + 2.4 * 0.25 > eave);
    }

    #[test]
    fn raise_errors_have_a_location() {
        let crossed =
            Polygon::new([(0.0, 0.0), (4.0, 0.0), (0.0, 4.0), (4.0, 4.0)].map(|(x, y)| dvec2(x, y)).to_vec());
        let error = chalkcourse_plan::raise_roof(&sample::empty(), &crossed, &usual_roof()).unwrap_err();
        assert!(trouble_spot(&error, &crossed).unwrap().distance(dvec2(2.0, 2.0)) < 1e-6);
    }
}
