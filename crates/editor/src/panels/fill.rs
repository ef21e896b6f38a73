//! Filling faces: the way of laying, the buttons, and what came out.

use super::{quiet, turning};
use crate::action::{Action, Actions};
use crate::desk::{Desk, Pointed};
use crate::{Document, fields, text, theme};
use chalkcourse_job::FaceId;
use chalkcourse_plan::{Fill, Mode};
use egui::{Frame, Margin, RichText, Sense, Stroke, Ui, WidgetInfo};

/// With more faces than this each one is folded up.
const MANY: usize = 2;

/// The list of a fill.
pub(super) fn show(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    ways(ui, desk);
    if let Some(faces) = desk.fill.running().map(<[FaceId]>::to_vec) {
        running(ui, document, desk, &faces);
        return;
    }
    buttons(ui, document, desk, actions);
    if !desk.fill.said.is_empty() {
        ui.label(RichText::new(&desk.fill.said).color(theme::of(ui).stop));
    } else if desk.fill.fills().is_empty() {
        quiet(ui, text::FILL_HINT);
    }
    let mut pointed = Pointed::Nothing;
    let many = desk.fill.fills().len() > MANY;
    for found in desk.fill.fills() {
        let name = document.job().face(found.face).map_or("", |face| face.name.as_str());
        ui.add_space(theme::GAP);
        ui.push_id(found.face, |ui| {
            if many {
                egui::CollapsingHeader::new(text::fill_row(name, found))
                    .show(ui, |ui| result(ui, found, &mut pointed));
            } else {
                ui.strong(text::face_heading(name));
                result(ui, found, &mut pointed);
            }
        });
    }
    if pointed != Pointed::Nothing {
        desk.pointed = pointed;
    }
}

fn ways(ui: &mut Ui, desk: &mut Desk) {
    let most = if let Mode::WholeBlocks(most) = desk.fill.way { most } else { 2 };
    let ways = [Mode::SlidingRows, Mode::OneGrid, Mode::HalfLapped, Mode::OnCourses, Mode::WholeBlocks(most)]
        .map(|way| (way, text::way(way)));
    if let Some(way) = fields::choice(ui, text::WAY, desk.fill.way, &ways) {
        desk.fill.way = way;
    }
    if let Mode::WholeBlocks(most) = desk.fill.way {
        let most = u32::try_from(most).unwrap_or(u32::MAX);
        if let Some(most) = fields::count(ui, text::MOST_BLOCKS, most, text::MOST_BLOCKS_HELP) {
            desk.fill.way = Mode::WholeBlocks(most as usize);
        }
    }
}

fn running(ui: &mut Ui, document: &Document, desk: &Desk, faces: &[FaceId]) {
    let names: Vec<&str> =
        faces.iter().filter_map(|id| document.job().face(*id)).map(|face| face.name.as_str()).collect();
    ui.horizontal(|ui| {
        turning(ui);
        if ui.button(text::STOP).on_hover_text(text::STOP_HELP).clicked() {
            desk.fill.stop();
        }
        ui.add(egui::Label::new(text::filling(&names)).truncate());
    });
}

fn buttons(ui: &mut Ui, document: &Document, desk: &Desk, actions: &mut Actions) {
    let held = desk.selection.face(document.job()).and_then(|id| document.job().face(id));
    ui.horizontal_wrapped(|ui| {
        if let Some(face) = held {
            let button = egui::Button::new(text::fill_face(&face.name)).fill(theme::of(ui).accent_ground);
            if ui.add(button).on_hover_text(text::FILL_HELP).clicked() {
                actions.push(Action::Fill(Some(face.id)));
            }
        }
        let any = !document.job().faces.is_empty();
        let all = ui.add_enabled(any, egui::Button::new(text::FILL_ALL));
        if all.on_hover_text(text::FILL_ALL_HELP).on_disabled_hover_text(text::NO_FACE_TO_FILL).clicked() {
            actions.push(Action::Fill(None));
        }
    });
}

fn result(ui: &mut Ui, found: &Fill, pointed: &mut Pointed) {
    ui.label(&found.claim);
    egui::CollapsingHeader::new(text::SEARCHED).id_salt("searched").default_open(false).show(ui, |ui| {
        ui.label(text::sentence(&found.searched));
    });
    let Some(held) = &found.held else { return };
    ui.strong(text::HOLDS_BACK);
    if held.is_empty() {
        quiet(ui, text::NOTHING_HOLDS);
    }
    for words in held.words() {
        ui.label(words);
    }
    for (words, places) in held.near_by_words() {
        if near_row(ui, words, places) {
            *pointed = Pointed::Near(found.face, words.to_owned());
        }
    }
}

/// A row whose places light up while it is pointed at.
fn near_row(ui: &mut Ui, words: &str, places: usize) -> bool {
    let p = theme::of(ui);
    let said = text::near_row(words, places);
    let frame = Frame::new()
        .fill(p.field)
        .stroke(Stroke::new(1.0, p.rule))
        .corner_radius(6)
        .inner_margin(Margin::symmetric(8, 5));
    let card = frame.show(ui, |ui| {
        ui.set_min_width(ui.available_width());
        ui.label(&said);
    });
    let rect = card.response.rect;
    let id = ui.make_persistent_id(("near", words));
    let response = ui.interact(rect, id, Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::ListItem, true, format!("Nearly fits: {said}")));
    ui.rect_contains_pointer(rect) || response.has_focus()
}
