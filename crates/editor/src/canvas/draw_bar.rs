//! The strip over the drawing: what the tool does, and what can be typed or chosen for it.

use super::Canvas;
use super::interact::close_draft;
use super::keys::escape;
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{OutlineFor, Shaped, State, Tool, View};
use crate::widgets::raise_fields;
use crate::{Document, text, theme};
use chalkcourse_geometry::Units;
use chalkcourse_job::{PartKind, PenetrationKind};
use egui::{Button, Key, Modifiers, RichText, TextEdit, Ui};

/// Shows the strip.
pub(crate) fn show(ui: &mut Ui, document: &Document, state: &State, own: &mut Canvas, actions: &mut Actions) {
    if state.tool == Tool::DrawFace {
        let row = egui::vec2(ui.available_width(), ui.available_height() / 2.0);
        let left = egui::Layout::left_to_right(egui::Align::Center);
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.allocate_ui_with_layout(row, left, |ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            outline_for(ui, state, own, actions);
        });
        ui.allocate_ui_with_layout(row, left, |ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            choices(ui, state, own, document.job().units, actions);
            drawing(ui, document, state, own, actions);
            hint(ui, document, state, own);
        });
        return;
    }
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
        match state.tool {
            Tool::Penetration => kinds(ui, state, actions),
            Tool::Picture => super::picture::bar(ui, document, own, actions),
            _ => {}
        }
        hint(ui, document, state, own);
    });
}

/// What to do next.
fn hint(ui: &mut Ui, document: &Document, state: &State, own: &Canvas) {
    let quiet = theme::of(ui).quiet;
    let corners = own.draft.as_ref().map_or(0, |draft| draft.corners.len());
    let hint = match state.tool {
        Tool::Picture if document.job().underlay.is_some() => super::picture::hint(&own.handling),
        Tool::Select if state.view == View::Solid => text::HOUSE_HINT.now(),
        Tool::DrawFace if state.shaped != Shaped::Corners => text::shape_hint(corners),
        tool => text::hint(tool, corners, document.job()),
    };
    ui.add(egui::Label::new(RichText::new(hint).color(quiet)).truncate());
}

fn kinds(ui: &mut Ui, state: &State, actions: &mut Actions) {
    for kind in PenetrationKind::ALL {
        let chosen = state.kind() == kind;
        if ui.add(Button::selectable(chosen, text::kind(kind))).clicked() {
            actions.push(Action::PenetrationKind(kind));
        }
    }
    ui.separator();
}

/// A face, a hole or a penetration: chosen before the first corner, shown until the last.
fn outline_for(ui: &mut Ui, state: &State, own: &Canvas, actions: &mut Actions) {
    let begun = own.is_drawing();
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

/// What there is to choose before the first corner: what the corners make, and what comes of the outline.
fn choices(ui: &mut Ui, state: &State, own: &Canvas, units: Units, actions: &mut Actions) {
    if own.is_drawing() {
        return;
    }
    shapes(ui, state, actions);
    match state.outline_for {
        OutlineFor::Part => {
            for kind in [PartKind::Dormer, PartKind::Porch, PartKind::Ell, PartKind::Chimney] {
                let chosen = state.part_kind() == kind;
                if ui.add(Button::selectable(chosen, text::part_kind(kind))).clicked() {
                    actions.push(Action::PartKind(kind));
                }
            }
            ui.separator();
        }
        OutlineFor::Penetration => kinds(ui, state, actions),
        OutlineFor::Roof => {
            actions.extend(raise_fields(ui, state.raise_as, units).map(Action::RaiseAs));
            ui.separator();
        }
        OutlineFor::Face | OutlineFor::Hole => {}
    }
}

/// What the corners make: chosen before the first one.
fn shapes(ui: &mut Ui, state: &State, actions: &mut Actions) {
    for shaped in Shaped::ALL {
        if ui
            .add(Button::selectable(state.shaped == shaped, text::shaped(shaped)))
            .on_hover_text(text::shaped_help(shaped))
            .clicked()
        {
            actions.push(Action::Shape(shaped));
        }
    }
    ui.separator();
}

fn drawing(ui: &mut Ui, document: &Document, state: &State, own: &mut Canvas, actions: &mut Actions) {
    let Some(draft) = &mut own.draft else { return };
    if draft.corners.is_empty() {
        return;
    }
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
                .id(egui::Id::unique("next length"))
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
    // A key that leaves a field is for that alone.
    let left = fields.iter().any(egui::Response::lost_focus);
    let left_by = |key| left && ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
    let mut close = false;
    let mut give_up = false;
    if left_by(Key::Enter) {
        if draft.typed.trim().is_empty() && draft.angle.trim().is_empty() {
            close = true;
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
    // Whoever draws may type at any time: the field has the keyboard unless something else took it.
    let drawing = egui::Id::unique(super::ID);
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
    if close {
        close_draft(document, state, own, actions);
    } else if give_up {
        escape(state, own, actions);
    }
}
