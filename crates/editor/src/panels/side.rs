use super::{block, face, fill, findings, group, job, part, penetration, picture, quantities};
use crate::action::Actions;
use crate::desk::{Desk, List};
use crate::selection::PartPlace;
use crate::settings::Settings;
use crate::tool::Tool;
use crate::{Document, Selection, text, theme};
use egui::{Button, Panel, ScrollArea, Ui};

/// What is held above, what follows from the job below.
pub(crate) fn show(
    ui: &mut Ui,
    document: &Document,
    desk: &mut Desk,
    settings: &mut Settings,
    actions: &mut Actions,
) {
    let height = ui.available_height();
    Panel::bottom("lists")
        .resizable(true)
        .default_size((height * 0.52).max(160.0))
        .size_range(140.0..=(height - 120.0).max(160.0))
        .frame(egui::Frame::new().inner_margin(egui::Margin::symmetric(12, 8)))
        .show(ui, |ui| lists(ui, document, desk, settings, actions));
    egui::CentralPanel::no_frame()
        .frame(egui::Frame::new().inner_margin(egui::Margin::symmetric(12, 8)))
        .show(ui, |ui| {
            ScrollArea::vertical().id_salt("held").auto_shrink([false, false]).show(ui, |ui| {
                held(ui, document, desk, actions);
            });
        });
}

fn held(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    if desk.tool == Tool::Picture {
        picture::show(ui, document, desk, actions);
        return;
    }
    if !desk.group.is_empty() {
        group::show(ui, document, desk, actions);
        return;
    }
    // Fields keep what is being typed by their id: another thing has other fields.
    let key = match desk.selection {
        Selection::Side { face, .. } | Selection::Corner { face, .. } => Selection::Face(face),
        Selection::Module { block, .. } => Selection::Block(block),
        Selection::Part(part, _) => Selection::Part(part, PartPlace::Whole),
        other => other,
    };
    ui.push_id(key, |ui| match desk.selection {
        Selection::Nothing => job::show(ui, document, actions),
        Selection::Face(id) | Selection::Side { face: id, .. } | Selection::Corner { face: id, .. } => {
            face::show(ui, document, desk, id, actions);
        }
        Selection::Part(id, _) => part::show(ui, document, desk, id, actions),
        Selection::Penetration(id) => penetration::show(ui, document, id, actions),
        Selection::Block(id) | Selection::Module { block: id, .. } => {
            block::show(ui, document, desk, id, actions);
        }
    });
}

fn lists(ui: &mut Ui, document: &Document, desk: &mut Desk, settings: &mut Settings, actions: &mut Actions) {
    let open = document.plan().findings.iter().filter(|f| f.waived.is_none()).count();
    ui.horizontal(|ui| {
        let width = ui.available_width() - ui.spacing().item_spacing.x * 2.0;
        for (list, words, share) in [
            (List::Findings, text::findings_tab(open), 0.41),
            (List::Quantities, text::QUANTITIES.now().to_owned(), 0.36),
            (List::Fill, text::FILL_TAB.now().to_owned(), 0.23),
        ] {
            let size = egui::vec2(width * share, theme::PRESS);
            if ui.add(Button::selectable(desk.list == list, words).min_size(size)).clicked() {
                desk.list = list;
            }
        }
    });
    ui.separator();
    // What a row of the order's window points at is known from the frame before.
    let order = &desk.windows.order;
    let line = order.pointed.clone().filter(|_| order.open);
    desk.pointed = line.map_or(crate::desk::Pointed::Nothing, crate::desk::Pointed::Line);
    ScrollArea::vertical().id_salt(desk.list).auto_shrink([false, false]).show(ui, |ui| match desk.list {
        List::Findings => findings::show(ui, document, desk, settings, actions),
        List::Quantities => quantities::show(ui, document, desk, actions),
        List::Fill => fill::show(ui, document, desk, actions),
    });
}
