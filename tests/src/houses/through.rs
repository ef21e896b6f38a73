//! Penetrations of a usual roof, at usual places.

use crate::dice::Dice;
use chalkcourse_geometry::{DVec2, Length, distance_to_segment};
use chalkcourse_job::{Face, Penetration, PenetrationId, PenetrationKind, Resolved, Shape};

/// Adds two to six pipes and vents, with at most two skylights and one chimney, on faces with enough room.
pub(super) fn put(dice: &mut Dice, job: &mut Resolved) {
    let many = 2 + dice.below(5);
    let mut kinds = vec![PenetrationKind::PipeBoot; 4];
    kinds.extend([PenetrationKind::Vent; 3]);
    kinds.extend([PenetrationKind::Skylight, PenetrationKind::Skylight, PenetrationKind::Chimney]);
    for _ in 0..many {
        let kind = *dice.one(&kinds);
        if kind != PenetrationKind::PipeBoot && kind != PenetrationKind::Vent {
            let at = kinds.iter().position(|&k| k == kind).unwrap_or_default();
            kinds.remove(at);
        }
        let shape = shape(dice, kind);
        if let Some(at) = place(dice, job, kind) {
            let id = PenetrationId(job.next_id);
            job.next_id += 1;
            job.penetrations.push(Penetration {
                id,
                name: format!("{id}"),
                kind,
                at,
                shape,
                clearance: None,
            });
        }
    }
}

fn shape(dice: &mut Dice, kind: PenetrationKind) -> Shape {
    let inches = Length::from_inches;
    match kind {
        PenetrationKind::PipeBoot => Shape::Circle { diameter: inches(*dice.one(&[2.0, 3.0, 4.0])) },
        PenetrationKind::Skylight => Shape::Rectangle {
            along: inches(*dice.one(&[21.0, 24.0, 30.0])),
            up: inches(*dice.one(&[38.0, 46.0])),
        },
        PenetrationKind::Chimney => Shape::Rectangle {
            along: inches(*dice.one(&[24.0, 32.0, 48.0])),
            up: inches(*dice.one(&[20.0, 28.0])),
        },
        kind => kind.usual_shape(),
    }
}

/// A place in a face, well away from its border and from other penetrations; `None` if none was found.
fn place(dice: &mut Dice, job: &Resolved, kind: PenetrationKind) -> Option<DVec2> {
    // The range up the slope, as shares of its height, and the distance from the border, metres.
    let (from, to, off) = match kind {
        PenetrationKind::Vent => (0.65, 0.92, 0.4),
        PenetrationKind::Chimney => (0.45, 0.95, 0.6),
        PenetrationKind::Skylight => (0.3, 0.7, 0.9),
        _ => (0.25, 0.9, 0.25),
    };
    let faces: Vec<&Face> = job.faces.iter().filter(|face| face.outline.area() > 8.0).collect();
    if faces.is_empty() {
        return None;
    }
    for _ in 0..40 {
        let face = *dice.one(&faces);
        let plane = face.plane();
        let bounds = face.outline.map(|p| plane.to_frame(p)).bounds()?;
        let share = DVec2::new(dice.unit(), dice.within(from, to));
        let at = plane.to_plan(bounds.min + bounds.size() * share);
        let border = face.outline.sides().map(|(_, _, a, b)| distance_to_segment(at, a, b));
        let clear = face.outline.contains(at) && border.fold(f64::INFINITY, f64::min) > off;
        // Where parts overlap, only the visible face counts.
        let seen = job.faces.iter().filter(|face| face.outline.contains(at)).count() == 1;
        if clear && seen && job.penetrations.iter().all(|other| other.at.distance(at) > 1.2) {
            return Some(at);
        }
    }
    None
}
