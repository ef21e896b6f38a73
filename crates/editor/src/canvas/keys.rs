//! Keys on the drawing: nudging, switching modules, cancelling.

use super::arrows::nudge;
use super::tools::Frame;
use super::{Canvas, EscFor};
use crate::action::{Action, Actions};
use crate::state::{Group, PartPlace, State, Tool};
use crate::{Selection, edits};
use egui::{Key, Modifiers};

/// Handles the keys of the drawing. Keys belong to what has the focus: none is handled here while a text field is
/// edited, a drag is in progress, or something other than the drawing has the focus.
pub(crate) fn run(at: &Frame, own: &mut Canvas, actions: &mut Actions) {
    let (ui, document, state) = (at.ui, at.document, at.state);
    // A key that ends editing a dimension does nothing else.
    if ui.ctx().text_edit_focused() || own.drag.gesture.is_some() || own.typing.is_some() {
        return;
    }
    if !at.stage.keys || !super::has_keys(ui) {
        return;
    }
    let tool = own.tools.of_mut(state.tool);
    if let Some(by) = nudge(ui) {
        actions.extend(tool.nudged(at, by));
    }
    if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::X)) {
        let (group, job) = (&state.group, document.job());
        actions.extend(match group.is_empty() {
            true => edits::switch(document, state.selection),
            false => edits::group::switched(group, job, group.has_off(job)),
        });
    }
    // The Enter that ended a field beside the drawing was for that field alone.
    if at.stage.esc != EscFor::Another {
        tool.keys(at, actions);
    }
    if ui.input(|input| input.key_pressed(Key::Escape)) {
        match at.stage.esc {
            EscFor::Drawing => escape(state, own, actions),
            EscFor::Window => actions.push(Action::CloseTopWindow),
            EscFor::Another => {}
        }
    }
}

/// Esc goes back one step on the drawing: what the tool undoes (the last corner, the tape), then the tool, then the
/// selection, and at last a window over it.
fn escape(state: &State, own: &mut Canvas, actions: &mut Actions) {
    if own.tools.of_mut(state.tool).take_back() {
        actions.push(Action::Trouble(None));
    } else if state.tool != Tool::Select {
        actions.push(Action::Use(Tool::Select));
    } else if !state.group.is_empty() {
        actions.push(Action::Hold(Group::default()));
    } else if state.selection == Selection::Nothing {
        actions.push(Action::CloseTopWindow);
    } else {
        actions.push(Action::Select(match state.selection {
            Selection::Module { block, .. } => Selection::Block(block),
            Selection::Corner { face, .. } | Selection::Side { face, .. } => Selection::Face(face),
            Selection::Part(part, place) if place != PartPlace::Whole => {
                Selection::Part(part, PartPlace::Whole)
            }
            _ => Selection::Nothing,
        }));
    }
}
