//! Edits of the selected object: moving it by keys, switching, removing, adding a corner.

use super::{corners_at, part};
use crate::action::Action;
use crate::state::View;
use crate::{Document, Selection, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Edit, JunctionBox, Penetration, Underlay};
use chalkcourse_words::Said;

/// Moves the selection on the screen: objects on a face along the nearest axis of that face, corners exactly.
pub(crate) fn nudged(document: &Document, view: View, held: Selection, screen: DVec2) -> Option<Action> {
    let job = document.job();
    let layout = &document.plan().layout;
    let by = view.in_plan(layout, screen);
    match held {
        Selection::Block(id) | Selection::Module { block: id, .. } => {
            let mut block = job.block(id)?.clone();
            block.at += view.seen().on_face(&job.face(block.face)?.plane(), screen);
            Some(Action::Edit(text::nudge_of(text::block_heading(&block.name)), Edit::PutBlock(block)))
        }
        Selection::Penetration(id) => {
            let penetration = job.penetration(id)?;
            let home = layout.penetration(id)?.home.and_then(|index| layout.roof.faces.get(index));
            let at = match home {
                Some(face) => {
                    let along = view.seen().on_face(&face.plane, screen);
                    face.plane.to_plan(face.plane.to_frame(penetration.at) + along)
                }
                None => penetration.at + by,
            };
            let label = text::nudge_of(&penetration.name);
            Some(Action::Edit(label, Edit::PutPenetration(Penetration { at, ..penetration.clone() })))
        }
        Selection::Corner { face, ring, corner } => {
            let from = *job.face(face)?.outline.rings().nth(ring)?.get(corner)?;
            let edits = corners_at(job, from)
                .into_iter()
                .filter_map(|(face, ring, corner)| job.face(face)?.with_corner_moved(ring, corner, from + by))
                .map(Edit::PutFace)
                .collect();
            Some(Action::Edit(text::move_corner_of(&job.face(face)?.name), Edit::Several(edits)))
        }
        Selection::Part(id, place) => part::nudged(job, id, place, by),
        Selection::JunctionBox(id) => {
            let junction = job.junction_box(id)?;
            let moved = JunctionBox { at: junction.at + by, ..junction.clone() };
            Some(Action::Edit(text::nudge_of(&junction.name), Edit::PutBox(moved)))
        }
        Selection::Face(_) | Selection::Side { .. } | Selection::Circuit(_) | Selection::Nothing => None,
    }
}

/// Switches the selected module.
pub(crate) fn switch(document: &Document, held: Selection) -> Option<Action> {
    let Selection::Module { block, cell } = held else { return None };
    let block = document.job().block(block)?;
    Some(Action::Edit(
        text::switch_of(text::block_heading(&block.name)),
        Edit::PutBlock(block.with_switched(cell)),
    ))
}

/// The action that removes the selected object.
pub(crate) fn delete(document: &Document, held: Selection) -> Option<Action> {
    let job = document.job();
    let (name, edit) = match held {
        Selection::Face(id) | Selection::Side { face: id, .. } => {
            (Said::own(&job.face(id)?.name), Edit::RemoveFace(id))
        }
        Selection::Corner { face, ring, corner } => {
            let face = job.face(face)?;
            let Some(next) = face.without_corner(ring, corner) else {
                return Some(Action::Say(text::LAST_CORNERS.now().to_owned()));
            };
            return Some(Action::EditAndSelect(
                text::delete_corner_of(&face.name),
                Edit::PutFace(next),
                Selection::Face(face.id),
            ));
        }
        Selection::Penetration(id) => (Said::own(&job.penetration(id)?.name), Edit::RemovePenetration(id)),
        Selection::Block(id) => (text::block_heading(&job.block(id)?.name), Edit::RemoveBlock(id)),
        Selection::Module { .. } => return switch(document, held),
        Selection::Part(id, place) => return part::delete(job, id, place),
        Selection::Circuit(id) => return Some(super::wiring::removed(job.circuit(id)?)),
        Selection::JunctionBox(id) => (Said::own(&job.junction_box(id)?.name), Edit::RemoveBox(id)),
        Selection::Nothing => return None,
    };
    Some(Action::EditAndSelect(text::delete_of(&name), edit, Selection::Nothing))
}

/// The edit that adds a corner on a side, at the pointer.
pub(crate) fn add_corner(
    document: &Document,
    face: chalkcourse_job::FaceId,
    ring: usize,
    side: usize,
    at: DVec2,
) -> Option<Action> {
    // The corners of a part's face follow from the part.
    let face = document.job().face(face).filter(|face| face.from.is_none())?;
    let (_, _, a, b) = face.outline.sides().find(|&(r, s, _, _)| (r, s) == (ring, side))?;
    let on_side = chalkcourse_geometry::nearest_on_segment(at, a, b);
    let next = face.with_corner_added(ring, side, on_side)?;
    let held = Selection::Corner { face: face.id, ring, corner: side + 1 };
    Some(Action::EditAndSelect(text::add_corner_of(&face.name), Edit::PutFace(next), held))
}

/// Moves the picture by the arrow keys.
pub(crate) fn picture_nudged(document: &Document, by: DVec2) -> Option<Action> {
    let underlay = document.job().underlay.as_ref()?;
    let next = Underlay { at: underlay.at + by, ..underlay.clone() };
    Some(Action::Edit(text::MOVE_PICTURE.into(), Edit::SetUnderlay(Some(next))))
}
