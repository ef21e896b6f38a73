//! Parts of the house: moving, adding corners, removing.

use crate::action::Action;
use crate::state::PartPlace;
use crate::{Selection, text};
use chalkcourse_geometry::{DVec2, nearest_on_segment};
use chalkcourse_job::{Edit, PartId, PartKind, PlanMove, Resolved};

/// The parts that move together: a main house with everything on or against it; any other part alone.
pub(crate) fn moving(job: &Resolved, id: PartId) -> Vec<PartId> {
    match job.part(id).map(|part| part.kind) {
        Some(PartKind::Main) => job.parts_joined_to(id),
        _ => vec![id],
    }
}

/// Moves the selected corner, or the part.
pub(crate) fn nudged(job: &Resolved, id: PartId, place: PartPlace, by: DVec2) -> Option<Action> {
    let part = job.part(id)?;
    match place {
        PartPlace::Corner { ring, corner } => {
            let from = *part.outline.rings().nth(ring)?.get(corner)?;
            let next = part.with_corner_moved(ring, corner, from + by)?;
            Some(Action::Edit(text::move_corner_of(&part.name), Edit::PutPart(next)))
        }
        _ => {
            let edit = Edit::MoveParts { parts: moving(job, id), how: PlanMove::shift(by) };
            Some(Action::Edit(text::nudge_of(&part.name), edit))
        }
    }
}

/// Adds a corner on a side, at the pointer.
pub(crate) fn add_corner(
    job: &Resolved,
    id: PartId,
    ring: usize,
    side: usize,
    at: Option<DVec2>,
) -> Option<Action> {
    let part = job.part(id)?;
    let (.., a, b) = part.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))?;
    let on = at.map_or((a + b) / 2.0, |at| nearest_on_segment(at, a, b));
    let next = part.with_corner_added(ring, side, on)?;
    let held = Selection::Part(id, PartPlace::Corner { ring, corner: side + 1 });
    Some(Action::EditAndSelect(text::add_corner_of(&part.name), Edit::PutPart(next), held))
}

/// The action that removes the selected corner or part.
pub(crate) fn delete(job: &Resolved, id: PartId, place: PartPlace) -> Option<Action> {
    let part = job.part(id)?;
    let PartPlace::Corner { ring, corner } = place else {
        return Some(Action::EditAndSelect(
            text::delete_of(&part.name),
            Edit::RemovePart(id),
            Selection::Nothing,
        ));
    };
    Some(match part.without_corner(ring, corner) {
        Some(next) => Action::EditAndSelect(
            text::delete_corner_of(&part.name),
            Edit::PutPart(next),
            Selection::Part(id, PartPlace::Whole),
        ),
        None => Action::Say(text::LAST_CORNERS_OF_PART.now().to_owned()),
    })
}
