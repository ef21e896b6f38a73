//! The strip over the drawing while an outline is drawn.

use super::draft::Draft;
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{OutlineFor, PartPreset, Shaped, State};
use crate::widgets::{LEAST, preset_button, raise_fields};
use crate::{Document, text, theme};
use chalkcourse_geometry::Units;
use egui::{Button, Key, Modifiers, RichText, TextEdit, Ui};

/// What the strip requests.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum After {
    GoOn,
    /// Apply what was drawn.
    Close,
    /// Remove the last corner.
    TakeBack,
}

/// Chooses between face, hole and penetration before the first corner; shown until the last.
pub(super) fn outline_for(ui: &mut Ui, state: &State, begun: bool, actions: &mut Actions) {
    for what in OutlineFor::ALL {
        let chosen = state.outline_for == what;
        if begun && !chosen {
            continue;
        }
        if ui
            .add(Button::selectable(chosen, text::outline_for(what)))
            .on_hover_text(text::outline_help(what))
            .clicked()
        {
            actions.push(Action::OutlineFor(what));
        }
    }
    if state.outline_for == OutlineFor::Face
        && !begun
        && ui.button(text::FROM_MEASUREMENTS.now()).on_hover_text(text::TAPED_FACE_HELP.now()).clicked()
    {
        actions.push(Command::TapedFace.action());
    }
}

/// Options before the first corner: the shape, and what the outline becomes.
pub(super) fn choices(ui: &mut Ui, state: &State, units: Units, actions: &mut Actions) {
    shapes(ui, state, actions);
    match state.outline_for {
        OutlineFor::Part => {
            for preset in PartPreset::ALL {
                if preset_button(ui, preset, state.part == preset) {
                    actions.push(Action::PartPreset(preset));
                }
            }
            ui.separator();
        }
        OutlineFor::Penetration => super::kinds(ui, state, actions),
        OutlineFor::Roof => {
            actions.extend(raise_fields(ui, state.raise_as, units).map(Action::RaiseAs));
            ui.separator();
        }
        OutlineFor::Face | OutlineFor::Hole => {}
    }
}

/// Chooses the shape before the first corner.
fn shapes(ui: &mut Ui, state: &State, actions: &mut Actions) {
    for shaped in Shaped::ALL {
        if ui
            .add(Button::selectable(state.shaped == shaped, text::shaped(shaped)).min_size(LEAST))
            .on_hover_text(text::shaped_help(shaped))
            .clicked()
        {
            actions.push(Action::Shape(shaped));
        }
    }
    ui.separator();
}

/// The input fields for the side being drawn, and what they request.
pub(super) fn fields(ui: &mut Ui, document: &Document, draft: &mut Draft) -> After {
    let units = document.job().units;
    let by_corners = draft.shaped == Shaped::Corners;
    let (words, hint) = match draft.shaped {
        Shaped::Corners => (text::NEXT_LENGTH.now(), text::length_hint(units)),
        _ if draft.corners.len() < 2 => (text::SIZE.now(), text::size_hint(units)),
        _ => (text::CUT_SIZE.now(), text::size_hint(units)),
    };
    let label = ui.label(words);
    let field = ui
        .add(
            TextEdit::singleline(&mut draft.typed)
                .id(egui::Id::unique(crate::canvas::cross::LENGTH_FIELD))
                .desired_width(110.0)
                .hint_text(hint),
        )
        .labelled_by(label.id);
    let mut fields = vec![field.clone()];
    if by_corners {
        let first = draft.corners.len() == 1;
        let label = ui.label(if first { text::BEARING.now() } else { text::ANGLE.now() });
        let hint = if first { text::BEARING_HELP.now() } else { text::ANGLE_HELP.now() };
        let angle = ui
            .add(
                TextEdit::singleline(&mut draft.angle)
                    .id(egui::Id::unique("next angle"))
                    .desired_width(44.0)
                    .hint_text("90°"),
            )
            .labelled_by(label.id)
            .on_hover_text(hint);
        fields.push(angle);
    }
    if fields.iter().any(egui::Response::changed) {
        draft.wrong.clear();
    }
    // A key that leaves a field does nothing else.
    let left = fields.iter().any(egui::Response::lost_focus);
    let left_by = |key| left && ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
    let mut close = false;
    let mut give_up = false;
    if left_by(Key::Enter) {
        if draft.typed.trim().is_empty() && draft.angle.trim().is_empty() {
            close = !draft.by_keys || draft.set();
        } else {
            close = draft.set_typed(units);
        }
    } else if left_by(Key::Escape) {
        give_up = true;
    } else if field.has_focus()
        && draft.typed.is_empty()
        && !field.changed()
        && ui.input(|input| input.key_pressed(Key::Backspace))
    {
        draft.back();
    }
    // The user may type at any time: the field has the focus unless something else took it.
    let drawing = egui::Id::unique(crate::state::DRAWING);
    if !close && !give_up && ui.memory(|m| m.focused().is_none_or(|f| f == drawing)) {
        field.request_focus();
    }
    if by_corners {
        close |= ui.add_enabled(draft.corners.len() >= 3, Button::new(text::CLOSE_FACE.now())).clicked();
    }
    if ui.button(text::TAKE_BACK_CORNER.now()).clicked() {
        draft.back();
    }
    if !draft.wrong.is_empty() {
        ui.add(egui::Label::new(RichText::new(&draft.wrong).color(theme::of(ui).stop)).truncate());
    }
    ui.separator();
    match (close, give_up) {
        (true, _) => After::Close,
        (_, true) => After::TakeBack,
        _ => After::GoOn,
    }
}
