//! The strip over the drawing: what the tool does, and what can be typed or chosen for it.

use super::drawn::OutlineFor;
use super::interact::close_draft;
use super::keys::escape;
use super::shaped::Shaped;
use crate::action::Actions;
use crate::commands::Command;
use crate::desk::Desk;
use crate::tool::Tool;
use crate::view::View;
use crate::{Document, text, theme};
use chalkcourse_geometry::Units;
use chalkcourse_job::{PartKind, PenetrationKind};
use egui::{Button, Key, Modifiers, RichText, TextEdit, Ui};

/// Shows the strip.
pub(crate) fn show(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    if desk.tool == Tool::DrawFace {
        let row = egui::vec2(ui.available_width(), ui.available_height() / 2.0);
        let left = egui::Layout::left_to_right(egui::Align::Center);
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.allocate_ui_with_layout(row, left, |ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            outline_for(ui, desk, actions);
        });
        ui.allocate_ui_with_layout(row, left, |ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            choices(ui, desk, document.job().units);
            drawing(ui, document, desk, actions);
            hint(ui, document, desk);
        });
        return;
    }
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
        match desk.tool {
            Tool::Penetration => kinds(ui, desk),
            Tool::Picture => super::picture::bar(ui, document, desk, actions),
            _ => {}
        }
        hint(ui, document, desk);
    });
}

/// What to do next.
fn hint(ui: &mut Ui, document: &Document, desk: &Desk) {
    let quiet = theme::of(ui).quiet;
    let corners = desk.draft.as_ref().map_or(0, |draft| draft.corners.len());
    let hint = match desk.tool {
        Tool::Picture if document.job().underlay.is_some() => super::picture::hint(&desk.handling),
        Tool::Select if desk.view == View::Solid => text::HOUSE_HINT.now(),
        Tool::DrawFace if desk.shaped != Shaped::Corners => text::shape_hint(corners),
        tool => text::hint(tool, corners, document.job()),
    };
    ui.add(egui::Label::new(RichText::new(hint).color(quiet)).truncate());
}

fn kinds(ui: &mut Ui, desk: &mut Desk) {
    for kind in PenetrationKind::ALL {
        let chosen = desk.kind() == kind;
        if ui.add(Button::selectable(chosen, text::kind(kind))).clicked() {
            desk.penetration_kind = Some(kind);
        }
    }
    ui.separator();
}

/// A face, a hole or a penetration: chosen before the first corner, shown until the last.
fn outline_for(ui: &mut Ui, desk: &mut Desk, actions: &mut Actions) {
    let begun = desk.draft.as_ref().is_some_and(|draft| !draft.corners.is_empty());
    for what in OutlineFor::ALL {
        let chosen = desk.outline_for == what;
        if begun && !chosen {
            continue;
        }
        if ui
            .add(Button::selectable(chosen, text::outline_for(what)))
            .on_hover_text(text::outline_help(what))
            .clicked()
        {
            desk.outline_for = what;
        }
    }
    if desk.outline_for == OutlineFor::Face
        && !begun
        && ui.button(text::FROM_MEASUREMENTS.now()).on_hover_text(text::TAPED_FACE_HELP.now()).clicked()
    {
        actions.push(Command::TapedFace.action());
    }
}

/// What there is to choose before the first corner: what the corners make, and what comes of the outline.
fn choices(ui: &mut Ui, desk: &mut Desk, units: Units) {
    if desk.draft.as_ref().is_some_and(|draft| !draft.corners.is_empty()) {
        return;
    }
    shapes(ui, desk);
    match desk.outline_for {
        OutlineFor::Part => {
            for kind in [PartKind::Dormer, PartKind::Porch, PartKind::Ell, PartKind::Chimney] {
                let chosen = desk.part_kind() == kind;
                if ui.add(Button::selectable(chosen, text::part_kind(kind))).clicked() {
                    desk.part_kind = Some(kind);
                }
            }
            ui.separator();
        }
        OutlineFor::Penetration => kinds(ui, desk),
        OutlineFor::Roof => super::raise_bar::show(ui, desk, units),
        OutlineFor::Face | OutlineFor::Hole => {}
    }
}

/// What the corners make: chosen before the first one.
fn shapes(ui: &mut Ui, desk: &mut Desk) {
    for shaped in Shaped::ALL {
        if ui
            .add(Button::selectable(desk.shaped == shaped, text::shaped(shaped)))
            .on_hover_text(text::shaped_help(shaped))
            .clicked()
        {
            desk.shaped = shaped;
        }
    }
    ui.separator();
}

fn drawing(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let Some(draft) = &mut desk.draft else { return };
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
        close_draft(document, desk, actions);
    } else if give_up {
        escape(ui.ctx(), desk, actions);
    }
}
