//! Filling faces: mode, faces, progress, and results.

mod held;

use super::{quiet, turning};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{Asked, Laying, Pointed, State};
use crate::widgets::fields;
use crate::{Document, text, theme};
use chalkcourse_job::{FaceId, Orientation, Resolved};
use chalkcourse_plan::{Fill, Seen, Size, Way};
use egui::{RichText, ScrollArea, Ui};

/// With more faces than this, they are collapsed.
const MANY: usize = 2;

/// The fill list.
pub(super) fn fill_list(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let job = document.job();
    let mut asked = state.fill.asked.clone();
    ways(ui, &mut asked, job);
    quiet(ui, &text::kit_allows(&job.kit));
    if let Some((faces, since)) = state.fill.running().map(|(faces, since)| (faces.to_vec(), since)) {
        running(ui, document, state, &faces, since, actions);
        change(state, asked, actions);
        return;
    }
    faces(ui, document, &mut asked);
    change(state, asked, actions);
    buttons(ui, document, state, actions);
    if !state.fill.said.is_empty() {
        ui.label(RichText::new(&state.fill.said).color(theme::of(ui).stop));
    } else if state.fill.fills().is_empty() {
        quiet(ui, text::FILL_HINT.now());
    }
    if state.fill.is_asking() {
        ui.horizontal(|ui| {
            turning(ui);
            if ui.button(text::STOP_ASKING.now()).on_hover_text(text::STOP_ASKING_HELP.now()).clicked() {
                actions.push(Action::StopHoldBack);
            }
            ui.add(egui::Label::new(text::ASKING.now()).truncate());
        });
    }
    let mut pointed = Pointed::Nothing;
    let many = state.fill.fills().len() > MANY;
    let (asking, seen) = (state.fill.is_asking(), state.view.seen());
    for found in state.fill.fills() {
        let name = document.job().face(found.face).map_or("", |face| face.name.as_str());
        ui.add_space(theme::GAP);
        ui.push_id(found.face, |ui| {
            let mut result = |ui: &mut Ui| result(ui, document, found, asking, seen, &mut pointed, actions);
            if many {
                egui::CollapsingHeader::new(text::fill_row(name, found)).show(ui, result);
            } else {
                ui.strong(text::face_heading(name).now());
                result(ui);
            }
        });
    }
    if pointed != Pointed::Nothing {
        actions.push(Action::Point(pointed));
    }
}

fn change(state: &State, asked: Asked, actions: &mut Actions) {
    if asked != state.fill.asked {
        actions.push(Action::FillAs(asked));
    }
}

fn ways(ui: &mut Ui, asked: &mut Asked, job: &Resolved) {
    let ways = Laying::ALL.map(|way| (way, text::way(way)));
    if let Some(way) = fields::choice(ui, text::WAY.now(), asked.laying, &ways) {
        asked.laying = way;
    }
    if let [_, _, ..] = job.kit.orientations.as_slice() {
        let lie = [
            (None, text::LIE_EITHER.now()),
            (Some(Orientation::Landscape), text::LANDSCAPE.now()),
            (Some(Orientation::Portrait), text::PORTRAIT.now()),
        ];
        if let Some(lie) = fields::choice(ui, text::MODULES_LIE.now(), asked.lie, &lie) {
            asked.lie = lie;
        }
    } else {
        asked.lie = None;
    }
    match asked.laying {
        Laying::WholeBlocks => {
            if let Some(most) =
                fields::count(ui, text::MOST_BLOCKS.now(), asked.most, text::MOST_BLOCKS_HELP.now())
            {
                asked.most = most;
            }
        }
        Laying::ByWorth => {
            let label = text::worth_of_module(&job.prices.currency);
            let shown = format!("{:.2}", asked.worth.module);
            if let Some(worth) =
                fields::parsed(ui, &label, &shown, text::WORTH_HELP.now(), text::positive_number)
            {
                asked.worth.module = worth;
            }
            ui.checkbox(&mut asked.worth.by_area, text::BY_AREA.now())
                .on_hover_text(text::BY_AREA_HELP.now());
        }
        Laying::ToNumber => target(ui, asked, job),
        _ => {}
    }
}

/// A number of modules or kilowatts.
fn target(ui: &mut Ui, asked: &mut Asked, job: &Resolved) {
    let watts = job.kit.module.watts.max(1.0);
    let by_power = matches!(asked.target.size, Size::Kilowatts(_));
    let kinds = [(false, text::BY_MODULES.now()), (true, text::BY_POWER.now())];
    if let Some(power) = fields::choice(ui, text::SIZE_BY.now(), by_power, &kinds) {
        asked.target.size = match asked.target.size {
            Size::Modules(count) if power => Size::Kilowatts(count as f64 * watts / 1000.0),
            Size::Kilowatts(power) => Size::Modules((power * 1000.0 / watts).ceil().max(1.0) as usize),
            same => same,
        };
    }
    match asked.target.size {
        Size::Modules(count) => {
            let count = u32::try_from(count).unwrap_or(u32::MAX);
            if let Some(count) = fields::count(ui, text::HOW_MANY.now(), count, text::HOW_MANY_HELP.now()) {
                asked.target.size = Size::Modules(count as usize);
            }
        }
        Size::Kilowatts(power) => {
            let shown = format!("{power:.2}");
            let label = text::HOW_MUCH_POWER.now();
            if let Some(power) =
                fields::parsed(ui, label, &shown, text::HOW_MANY_HELP.now(), text::positive_number)
            {
                asked.target.size = Size::Kilowatts(power);
            }
        }
    }
    let ways = [(Way::Compact, text::COMPACT.now()), (Way::Cheapest, text::CHEAPEST.now())];
    if let Some(way) = fields::choice(ui, text::LAID_TO_BE.now(), asked.target.way, &ways) {
        asked.target.way = way;
    }
}

fn running(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    faces: &[FaceId],
    since: f64,
    actions: &mut Actions,
) {
    let names: Vec<&str> =
        faces.iter().filter_map(|id| document.job().face(*id)).map(|face| face.name.as_str()).collect();
    ui.horizontal(|ui| {
        turning(ui);
        if ui.button(text::STOP.now()).on_hover_text(text::STOP_HELP.now()).clicked() {
            actions.push(Action::StopFill);
        }
        ui.add(egui::Label::new(text::filling(&names, since)).truncate());
    });
    let best = state.fill.best_so_far();
    if best.is_empty() {
        quiet(ui, text::NOTHING_YET.now());
    } else {
        ui.strong(text::so_far(best));
        let share = text::share_found(best);
        let bar = egui::ProgressBar::new(share).desired_height(6.0);
        ui.add(bar).on_hover_text(text::SHARE_FOUND_HELP.now());
        quiet(ui, text::IMPROVING.now());
    }
}

/// Selects which faces to fill at once, if there are several.
fn faces(ui: &mut Ui, document: &Document, asked: &mut Asked) {
    let faces = &document.job().faces;
    if faces.len() < 2 {
        return;
    }
    let chosen = &mut asked.faces;
    let words = text::some_faces(chosen.len());
    egui::CollapsingHeader::new(words).id_salt("some faces").default_open(false).show(ui, |ui| {
        ScrollArea::vertical().id_salt("faces").max_height(150.0).show(ui, |ui| {
            for face in faces {
                let mut on = chosen.contains(&face.id);
                if ui.checkbox(&mut on, text::face_heading(&face.name).now()).changed() {
                    if on {
                        chosen.insert(face.id);
                    } else {
                        chosen.remove(&face.id);
                    }
                }
            }
        });
    });
}

fn buttons(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let held = state.selection.face(document.job()).and_then(|id| document.job().face(id));
    ui.horizontal_wrapped(|ui| {
        let strong = theme::of(ui).accent_ground;
        let chosen: Vec<FaceId> = state.fill.asked.faces.iter().copied().collect();
        if !chosen.is_empty() {
            let button = egui::Button::new(text::fill_chosen(chosen.len())).fill(strong);
            if ui.add(button).on_hover_text(text::FILL_CHOSEN_HELP.now()).clicked() {
                actions.push(Action::Fill(chosen));
            }
        }
        if let Some(face) = held {
            let button = egui::Button::new(text::fill_face(&face.name)).fill(strong);
            if ui.add(button).on_hover_text(Command::Fill.with_key(ui.ctx(), text::FILL_HELP.now())).clicked()
            {
                actions.push(Action::Fill(vec![face.id]));
            }
        }
        let any = !document.job().faces.is_empty();
        let all = ui.add_enabled(any, egui::Button::new(text::FILL_ALL.now()));
        if all
            .on_hover_text(text::fill_all_help(&Command::Fill.key_words(ui.ctx())))
            .on_disabled_hover_text(text::NO_FACE_TO_FILL.now())
            .clicked()
        {
            actions.push(Action::Fill(Vec::new()));
        }
    });
}

fn result(
    ui: &mut Ui,
    document: &Document,
    found: &Fill,
    asking: bool,
    seen: Seen,
    pointed: &mut Pointed,
    actions: &mut Actions,
) {
    ui.label(found.claim.now());
    if let Some(words) = text::gap(found) {
        ui.label(RichText::new(words).color(theme::of(ui).caution));
    }
    egui::CollapsingHeader::new(text::SEARCHED.now()).id_salt("searched").default_open(false).show(
        ui,
        |ui| {
            ui.label(text::sentence(&found.searched.now()));
        },
    );
    ui.strong(text::HOLDS_BACK.now());
    match &found.held {
        Some(held) => held::held_back_list(ui, document, found, held, seen, pointed, actions),
        None if asking => {
            quiet(ui, text::NOT_ASKED_YET.now());
        }
        None => {
            quiet(ui, text::NOT_FOUND_OUT.now());
        }
    }
}
