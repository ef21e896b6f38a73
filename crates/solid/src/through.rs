//! Penetrations.

use crate::build::{Build, Lifted};
use crate::{Kind, Marks, SolidObject};
use chalkcourse_geometry::{Azimuth, DVec2, DVec3, Pitch, Plane, RoofFace, nearest_on_segment};
use chalkcourse_job::PenetrationKind;
use chalkcourse_layout::{Layout, PlacedPenetration};

/// Height above the deck, at the centre, of a pipe; of a vent, a curb and anything else (common practice, no source).
const PIPE: f64 = 0.35;
const VENT: f64 = 0.18;
const CURB: f64 = 0.12;
const OTHER: f64 = 0.30;

/// A chimney ends 2 ft above anything within 10 ft, and 3 ft above where it penetrates the roof (International Residential Code,
/// section R1003.9).
const CHIMNEY_ABOVE_NEAR: f64 = 2.0 * 0.3048;
const CHIMNEY_NEAR: f64 = 10.0 * 0.3048;
const CHIMNEY_ABOVE_ROOF: f64 = 3.0 * 0.3048;

/// All penetrations on a sound face.
pub(crate) fn penetrations(build: &mut Build, layout: &Layout) {
    for penetration in &layout.penetrations {
        let home = penetration.home.and_then(|index| layout.roof.faces.get(index)).filter(|face| face.sound);
        if let Some(home) = home {
            one(build, layout, penetration, home);
        }
    }
}

fn one(build: &mut Build, layout: &Layout, penetration: &PlacedPenetration, home: &RoofFace) {
    let plan = penetration.plan.oriented();
    let Some(bounds) = plan.bounds() else { return };
    let of = SolidObject::Penetration(penetration.id);
    let middle = bounds.centre();
    let level =
        |height: f64| Plane { datum: middle.extend(height), pitch: Pitch::FLAT, downslope: Azimuth::SOUTH };
    let raised = |by: f64| Plane { datum: home.plane.datum + DVec3::Z * by, ..home.plane };
    let (kind, cap, top) = match penetration.kind {
        PenetrationKind::PipeBoot => {
            (Kind::Penetration, Kind::Penetration, level(home.plane.height_at(middle) + PIPE))
        }
        PenetrationKind::Chimney => {
            (Kind::Chimney, Kind::Chimney, level(chimney_top(layout, &plan.outer, middle, home)))
        }
        PenetrationKind::Skylight | PenetrationKind::EscapeWindow => {
            (Kind::Penetration, Kind::Glass, raised(CURB))
        }
        PenetrationKind::Vent => (Kind::Penetration, Kind::Penetration, raised(VENT)),
        PenetrationKind::Other => (Kind::Penetration, Kind::Penetration, raised(OTHER)),
    };
    for (_, _, a, b) in plan.sides() {
        let foot = |p: DVec2| p.extend(foot_height(layout, penetration, home, p));
        let head = |p: DVec2| p.extend(top.height_at(p));
        build.quad(kind, of, [foot(a), foot(b), head(b), head(a)], Marks::Plain);
    }
    build.lifted(cap, of, &plan, Lifted { plane: &top, up: 0.0, turned: false }, Marks::Plain);
}

/// The foot of a side on the roof: the lowest of the faces it intersects, so that no gap shows over a ridge.
fn foot_height(layout: &Layout, penetration: &PlacedPenetration, home: &RoofFace, p: DVec2) -> f64 {
    penetration
        .on
        .iter()
        .filter_map(|on| layout.roof.faces.get(on.face))
        .map(|face| face.plane.height_at(p))
        .fold(home.plane.height_at(p), f64::min)
}

fn chimney_top(layout: &Layout, outline: &[DVec2], middle: DVec2, home: &RoofFace) -> f64 {
    let through = outline.iter().map(|&p| home.plane.height_at(p)).fold(f64::NEG_INFINITY, f64::max);
    let reach = outline.iter().map(|p| p.distance(middle)).fold(0.0, f64::max) + CHIMNEY_NEAR;
    // Within reach, a face is highest at a vertex of the clipped face: one of its own, or on the rim.
    let rim = (0..36).map(|step| middle + Azimuth::from_degrees(f64::from(step) * 10.0).unit() * reach);
    let around: Vec<DVec2> = rim.collect();
    let near = layout
        .roof
        .faces
        .iter()
        .filter(|face| face.sound)
        .flat_map(|face| {
            let corners = face.plan.outer.iter().filter(|p| p.distance(middle) <= reach);
            let sides = face.plan.sides().map(|(_, _, a, b)| nearest_highest(face, a, b, middle, reach));
            corners
                .chain(around.iter().filter(|p| face.plan.contains(**p)))
                .map(|&p| face.plane.height_at(p))
                .chain(sides.flatten())
                .collect::<Vec<f64>>()
        })
        .fold(f64::NEG_INFINITY, f64::max);
    (through + CHIMNEY_ABOVE_ROOF).max(near + CHIMNEY_ABOVE_NEAR)
}

/// The greatest height within reach along a side of a face.
fn nearest_highest(face: &RoofFace, a: DVec2, b: DVec2, middle: DVec2, reach: f64) -> Option<f64> {
    let nearest = nearest_on_segment(middle, a, b);
    if nearest.distance(middle) > reach {
        return None;
    }
    let high = if face.plane.height_at(a) > face.plane.height_at(b) { a } else { b };
    let half = (reach * reach - nearest.distance_squared(middle)).max(0.0).sqrt();
    let up = (high - nearest).clamp_length_max(half);
    Some(face.plane.height_at(nearest + up))
}
