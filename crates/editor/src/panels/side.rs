use super::Panels;
use super::{
    block, circuit, face, fill, findings, group, job, junction_box, part, penetration, picture, quantities,
};
use crate::action::{Action, Actions};
use crate::state::{List, PartPlace, Settings, State, Tool};
use crate::{Document, Selection, text, theme};
use egui::{Button, Panel, ScrollArea, Ui};

/// The form of the selection above, the lists below.
pub(crate) fn side_panel(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    settings: &Settings,
    actions: &mut Actions,
) {
    let height = ui.available_height();
    Panel::bottom("lists")
        .resizable(true)
        .default_size((height * 0.52).max(160.0))
        .size_range(140.0..=(height - 120.0).max(160.0))
        .frame(egui::Frame::new().inner_margin(egui::Margin::symmetric(12, 8)))
        .show(ui, |ui| lists(ui, document, state, own, settings, actions));
    egui::CentralPanel::no_frame()
        .frame(egui::Frame::new().inner_margin(egui::Margin::symmetric(12, 8)))
        .show(ui, |ui| {
            ScrollArea::vertical().id_salt("held").auto_shrink([false, false]).show(ui, |ui| {
                held(ui, document, state, actions);
            });
        });
}

fn held(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    if state.tool == Tool::Picture {
        picture::picture_form(ui, document, state, actions);
        return;
    }
    if !state.group.is_empty() {
        group::group_form(ui, document, state, actions);
        return;
    }
    // Fields store what is being typed by their id: another object must have other fields.
    let key = match state.selection {
        Selection::Side { face, .. } | Selection::Corner { face, .. } => Selection::Face(face),
        Selection::Module { block, .. } => Selection::Block(block),
        Selection::Part(part, _) => Selection::Part(part, PartPlace::Whole),
        other => other,
    };
    ui.push_id(key, |ui| match state.selection {
        Selection::Nothing => job::job_form(ui, document, actions),
        Selection::Face(id) | Selection::Side { face: id, .. } | Selection::Corner { face: id, .. } => {
            face::face_form(ui, document, state, id, actions);
        }
        Selection::Part(id, _) => part::part_form(ui, document, state, id, actions),
        Selection::Penetration(id) => penetration::penetration_form(ui, document, id, actions),
        Selection::Circuit(id) => circuit::circuit_form(ui, document, id, actions),
        Selection::JunctionBox(id) => junction_box::box_form(ui, document, id, actions),
        Selection::Block(id) | Selection::Module { block: id, .. } => {
            block::block_form(ui, document, state, id, actions);
        }
    });
}

fn lists(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    settings: &Settings,
    actions: &mut Actions,
) {
    let open = document.plan().findings.iter().filter(|f| f.waived.is_none()).count();
    ui.horizontal(|ui| {
        let width = ui.available_width() - ui.spacing().item_spacing.x * 2.0;
        for (list, words, share) in [
            (List::Findings, text::findings_tab(open), 0.41),
            (List::Quantities, text::QUANTITIES.now().to_owned(), 0.36),
            (List::Fill, text::FILL_TAB.now().to_owned(), 0.23),
        ] {
            let size = egui::vec2(width * share, theme::PRESS);
            if ui.add(Button::selectable(state.list == list, words).min_size(size)).clicked() {
                actions.push(Action::ShowList(list));
            }
        }
    });
    ui.separator();
    ScrollArea::vertical().id_salt(state.list).auto_shrink([false, false]).show(ui, |ui| match state.list {
        List::Findings => findings::findings_list(ui, document, state, own, settings, actions),
        List::Quantities => quantities::quantities_list(ui, document, state, own, actions),
        List::Fill => fill::fill_list(ui, document, state, actions),
    });
}
