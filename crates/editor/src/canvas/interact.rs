use super::gesture::Gesture;
use super::hit::{Hit, resize_cursor};
use super::tools::Frame;
use super::{Canvas, Stage, keys, menu, pan_key};
use crate::action::{Action, Actions};
use crate::state::State;
use crate::{Document, Selection};
use egui::{CursorIcon, EventFilter, Key, PointerButton, Ui};

/// Handles pointer and keyboard input on the drawing in this frame.
pub(crate) fn run(
    ui: &mut Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    let response = &stage.response;
    if response.clicked() || response.drag_started() || response.secondary_clicked() {
        response.request_focus();
    }
    // Arrow keys nudge; they must not move the focus to the next button.
    let filter = EventFilter { tab: false, horizontal_arrows: true, vertical_arrows: true, escape: true };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));

    let pos = response.hover_pos().or_else(|| response.interact_pointer_pos());
    let mut at = Frame { ui, stage, document, state, hit: Hit::Nothing };
    if own.drag.gesture.is_none()
        && let Some(pos) = pos
    {
        at.hit = at.hit_at(pos);
    }
    let hover = match at.hit {
        _ if own.drag.gesture.is_some() => state.hover,
        Hit::Module { block, cell } => Selection::Module { block, cell },
        hit => hit.selection(state.selection),
    };
    if (state.hover, state.pointer) != (hover, stage.pointer) {
        actions.push(Action::Hover(hover, stage.pointer));
    }
    if state.hover != hover {
        // The lists were drawn before the drawing: repaint, so that they show what the pointer is on now.
        ui.ctx().request_repaint();
    }
    own.tools.of_mut(state.tool).pointer(&at, &mut own.drag, actions);
    if ui.input(|input| input.multi_touch().is_some()) {
        // A second finger moves the view.
        give_up(own, actions);
    }
    drag(&at, own, actions);
    keys::run(&at, own, actions);
    menu::context_menu(stage, document, state, &mut own.menu, actions);
    cursor(&at, own);
}

/// Cancels a drag: on Esc, and when a second finger comes down.
fn give_up(own: &mut Canvas, actions: &mut Actions) {
    if own.drag.give_up() {
        actions.push(Action::Abort);
    }
}

/// Continues the drag in progress, and ends it.
fn drag(at: &Frame, own: &mut Canvas, actions: &mut Actions) {
    let Some(gesture) = own.drag.gesture.clone() else { return };
    let (ui, response) = (at.ui, &at.stage.response);
    if ui.input(|input| input.key_pressed(Key::Escape)) {
        give_up(own, actions);
        return;
    }
    let tool = own.tools.of_mut(at.state.tool);
    if response.dragged_by(PointerButton::Primary)
        && let Some(pos) = response.interact_pointer_pos()
    {
        let plan = at.stage.space.plan(pos);
        tool.dragged(&gesture, plan);
        if let Some(step) = gesture.step(at.scene(), plan, at.free(), at.shift()) {
            own.drag.guides = step.guides;
            actions.push(Action::Preview(step.label, step.edit));
        }
    }
    if response.drag_stopped() || !ui.input(|input| input.pointer.any_down()) {
        if !matches!(gesture, Gesture::Dropped) {
            tool.dropped(gesture, at, actions);
        }
        own.drag.end();
    }
}

fn cursor(at: &Frame, own: &Canvas) {
    if !at.stage.response.hovered() && own.drag.gesture.is_none() {
        return;
    }
    let icon = match &own.drag.gesture {
        _ if pan_key(at.ui) => CursorIcon::Grab,
        Some(Gesture::ResizeBlock { side, .. }) => resize_cursor(*side),
        Some(Gesture::ShiftRow { .. }) => CursorIcon::ResizeHorizontal,
        Some(Gesture::Tape { .. } | Gesture::String) => CursorIcon::Crosshair,
        Some(_) => CursorIcon::Grabbing,
        None => own.tools.of(at.state.tool).cursor(at.hit),
    };
    at.ui.ctx().set_cursor_icon(icon);
}
