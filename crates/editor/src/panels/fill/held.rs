//! What limits a fill: each line highlights its place on the roof, and a click selects it.

use crate::action::{Action, Actions};
use crate::state::Pointed;
use crate::widgets::quiet;
use crate::{Document, Selection, text, theme};
use chalkcourse_job::{Edit, FaceId, Penetration};
use chalkcourse_limits::Against;
use chalkcourse_plan::{Fill, HeldBack, Seen, What, Win};
use chalkcourse_words::Said;
use egui::{Frame, Key, Margin, Sense, Stroke, Ui, WidgetInfo};

/// The lines of one face.
pub(super) fn held_back_list(
    ui: &mut Ui,
    document: &Document,
    found: &Fill,
    held: &HeldBack,
    seen: Seen,
    pointed: &mut Pointed,
    actions: &mut Actions,
) {
    if held.is_empty() {
        quiet(ui, text::NOTHING_HOLDS.now());
    }
    if !held.finished {
        quiet(ui, text::ASKED_IN_PART.now());
    }
    let mut point = |line: &Said| *pointed = Pointed::Near(found.face, line.clone());
    let costs: Vec<_> = held.costs.iter().filter(|cost| cost.modules > 0).collect();
    for (place, cost) in costs.iter().enumerate() {
        let words = cost.words.now();
        let row = line(ui, place, &words, &text::cost_named(&words), None);
        if row.pointed {
            point(&cost.words);
        }
        if row.pressed {
            actions.push(Action::Select(selection_of(document, found.face, cost.what)));
        }
    }
    for (place, win) in held.wins.iter().enumerate() {
        let words = win.told(document.job(), found.face, seen);
        let words = words.now();
        let row = line(ui, place, &words, &text::win_named(&words), Some(&win.searched.now()));
        if row.pointed {
            point(&win.words);
        }
        if row.moved {
            actions.extend(moved(document, found.face, win));
        } else if row.pressed {
            actions.push(Action::Select(Selection::Penetration(win.penetration)));
        }
    }
    for (place, (words, places)) in held.near_by_words().into_iter().enumerate() {
        let said = text::near_row(&words.now(), places);
        let row = line(ui, place, &said, &text::near_named(&said), None);
        if row.pointed {
            point(words);
        }
        let stop = held.near.iter().find(|near| near.words == *words).and_then(|near| near.stops.first());
        if let Some(stop) = stop.filter(|_| row.pressed) {
            actions.push(Action::Select(selection_of(document, found.face, stop.what)));
        }
    }
}

struct Row {
    pointed: bool,
    pressed: bool,
    moved: bool,
}

/// A card that highlights its place while the pointer is on it; with a button for a move that gains modules. Two cards
/// may have the same text, as for two rakes: their indices make them distinct.
fn line(ui: &mut Ui, place: usize, words: &str, name: &str, move_help: Option<&str>) -> Row {
    let p = theme::of(ui);
    let frame = Frame::new()
        .fill(p.field)
        .stroke(Stroke::new(1.0, p.rule))
        .corner_radius(6)
        .inner_margin(Margin::symmetric(8, 5));
    let mut button = None;
    let card = ui.push_id((place, name), |ui| {
        frame.show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            ui.label(words);
            if let Some(help) = move_help {
                let press = ui.button(text::MOVE_IT.now()).on_hover_text(text::move_help(help));
                press.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, text::move_named(words)));
                button = Some(press);
            }
        })
    });
    let rect = card.inner.response.rect;
    let id = ui.make_persistent_id(("held back", place, name));
    let response = ui.interact(rect, id, Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::ListItem, true, name));
    let moved = button.as_ref().is_some_and(egui::Response::clicked);
    let on_button = button.as_ref().is_some_and(|button| button.hovered() || button.has_focus());
    let under = ui.rect_contains_pointer(rect);
    let clicked = under && !on_button && ui.input(|input| input.pointer.primary_clicked());
    let entered = response.has_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    Row { pointed: under || on_button || response.has_focus(), pressed: clicked || entered, moved }
}

/// The object that a line is about, as a selection.
fn selection_of(document: &Document, face: FaceId, what: What) -> Selection {
    let edges = document.plan().layout.face(face).map_or(&[][..], |(_, on)| &on.edges);
    match what.against {
        Against::Side { side, .. } | Against::Hole { side, .. } => edges
            .iter()
            .find(|edge| edge.id == side)
            .map_or(Selection::Face(face), |edge| Selection::Side { face, ring: edge.ring, side: edge.side }),
        Against::Penetration(id) => Selection::Penetration(id),
        Against::Block(id) => Selection::Block(id),
        Against::Border | Against::Pathway => Selection::Face(face),
    }
}

/// The move of a penetration that gains modules, as a step.
fn moved(document: &Document, face: FaceId, win: &Win) -> Option<Action> {
    let penetration = document.job().penetration(win.penetration)?;
    let (_, on) = document.plan().layout.face(face)?;
    let at = on.plane.to_plan(on.plane.to_frame(penetration.at) + win.by);
    let edit = Edit::PutPenetration(Penetration { at, ..penetration.clone() });
    Some(Action::EditAndSelect(
        text::move_of(&penetration.name),
        edit,
        Selection::Penetration(penetration.id),
    ))
}
