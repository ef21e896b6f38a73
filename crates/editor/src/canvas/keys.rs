//! Keys on the drawing: nudging, switching, letting go.

use crate::action::{Action, Actions};
use crate::canvas::interact::close_draft;
use crate::desk::Desk;
use crate::selection::PartPlace;
use crate::tool::Tool;
use crate::view::View;
use crate::{Document, Selection, text, windows};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::{Edit, Penetration};
use egui::{Context, Key, Modifiers, Ui};

/// Carries out the keys that the drawing knows. None while a field is typed in.
pub(crate) fn run(ui: &Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    // A key that leaves a dimension that is typed over is for that alone.
    if ui.ctx().text_edit_focused() || desk.gesture.is_some() || desk.typing.is_some() {
        return;
    }
    if !super::has_keys(ui) {
        return;
    }
    // What is held behind a window that is worked in does not move.
    let on_drawing = !desk.windows.has_keys;
    if on_drawing && let Some(by) = nudge(ui) {
        actions.extend(match desk.tool {
            Tool::Picture => super::picture::nudged(document, by),
            _ if !desk.group.is_empty() => desk.group.nudged(document, desk.view, by),
            _ => nudged(document, desk.view, desk.selection, by),
        });
    }
    if on_drawing && ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::X)) {
        let group = &desk.group;
        actions.extend(match group.is_empty() {
            true => switch(document, desk.selection),
            false => group.switched(document.job(), group.has_off(document.job())),
        });
    }
    if desk.draft.is_some() {
        if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
            close_draft(document, desk, actions);
        } else if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Backspace))
            && let Some(draft) = &mut desk.draft
        {
            draft.back();
        }
    }
    if ui.input(|input| input.key_pressed(Key::Escape)) {
        escape(ui.ctx(), desk, actions);
    }
}

/// Esc lets go of the nearest thing: the last corner of an outline, the tape, a tool, what is held, a window over the drawing.
pub(super) fn escape(ctx: &Context, desk: &mut Desk, actions: &mut Actions) {
    let draft = desk.draft.as_mut().filter(|draft| !draft.corners.is_empty());
    if let Some(draft) = draft {
        draft.back();
    } else if desk.tape.is_some() || !desk.handling.points.is_empty() {
        desk.let_go();
    } else if desk.tool != Tool::Select {
        desk.take(Tool::Select);
    } else if !desk.group.is_empty() {
        desk.group = super::Group::default();
    } else if desk.selection == Selection::Nothing {
        windows::close_top(ctx, &mut desk.windows);
    } else {
        actions.push(Action::Select(match desk.selection {
            Selection::Module { block, .. } => Selection::Block(block),
            Selection::Corner { face, .. } | Selection::Side { face, .. } => Selection::Face(face),
            Selection::Part(part, place) if place != PartPlace::Whole => {
                Selection::Part(part, PartPlace::Whole)
            }
            _ => Selection::Nothing,
        }));
    }
}

/// How far the arrow keys of this frame go on the screen, to the right and up: 1 in, with Shift 1 ft, with Alt 1/16 in.
fn nudge(ui: &Ui) -> Option<DVec2> {
    let steps = [
        (Modifiers::SHIFT, Length::from_feet(1.0)),
        (Modifiers::ALT, Length::from_inches(1.0 / 16.0)),
        (Modifiers::NONE, Length::from_inches(1.0)),
    ];
    let keys = [
        (Key::ArrowLeft, dvec2(-1.0, 0.0)),
        (Key::ArrowRight, dvec2(1.0, 0.0)),
        (Key::ArrowUp, dvec2(0.0, 1.0)),
        (Key::ArrowDown, dvec2(0.0, -1.0)),
    ];
    ui.input_mut(|input| {
        let mut by = DVec2::ZERO;
        for (modifiers, length) in steps {
            for (key, toward) in keys {
                by += toward * length.metres() * input.count_and_consume_key(modifiers, key) as f64;
            }
        }
        (by != DVec2::ZERO).then_some(by)
    })
}

/// Moves what is held by so much on the screen: what lies on a face along the axis of that face that is nearest to the key, a
/// corner just so.
fn nudged(document: &Document, view: View, held: Selection, screen: DVec2) -> Option<Action> {
    let job = document.job();
    let layout = &document.plan().layout;
    let by = view.in_plan(layout, screen);
    match held {
        Selection::Block(id) | Selection::Module { block: id, .. } => {
            let mut block = job.block(id)?.clone();
            block.at += view.seen().on_face(&job.face(block.face)?.plane(), screen);
            Some(Action::Edit(text::nudge_of(&text::block_name(&block.name)), Edit::PutBlock(block)))
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
            let edits = super::new_face::corners_at(job, from)
                .into_iter()
                .filter_map(|(face, ring, corner)| job.face(face)?.with_corner_moved(ring, corner, from + by))
                .map(Edit::PutFace)
                .collect();
            Some(Action::Edit(text::move_corner_of(&job.face(face)?.name), Edit::Several(edits)))
        }
        Selection::Part(id, place) => super::part::nudged(job, id, place, by),
        Selection::Face(_) | Selection::Side { .. } | Selection::Nothing => None,
    }
}

/// Switches the module that is held.
pub(super) fn switch(document: &Document, held: Selection) -> Option<Action> {
    let Selection::Module { block, cell } = held else { return None };
    let block = document.job().block(block)?;
    Some(Action::Edit(
        text::switch_of(&text::block_name(&block.name)),
        Edit::PutBlock(block.with_switched(cell)),
    ))
}

/// What taking away the thing that is held means.
pub(crate) fn delete(document: &Document, held: Selection) -> Option<Action> {
    let job = document.job();
    let (name, edit) = match held {
        Selection::Face(id) | Selection::Side { face: id, .. } => {
            (job.face(id)?.name.clone(), Edit::RemoveFace(id))
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
        Selection::Penetration(id) => (job.penetration(id)?.name.clone(), Edit::RemovePenetration(id)),
        Selection::Block(id) => (text::block_name(&job.block(id)?.name), Edit::RemoveBlock(id)),
        Selection::Module { .. } => return switch(document, held),
        Selection::Part(id, place) => return super::part::delete(job, id, place),
        Selection::Nothing => return None,
    };
    Some(Action::EditAndSelect(text::delete_of(&name), edit, Selection::Nothing))
}
