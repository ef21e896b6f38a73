use crate::action::{Action, Actions};
use crate::state::CrewSheet;
use crate::{Document, text, theme};
use chalkcourse_sheets::Output;
use egui::{RichText, ScrollArea, Ui};

/// What the crew checks before and during the work.
pub(super) fn checklist_pane(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    let (job, plan) = (document.job(), document.plan());
    let quiet = theme::of(ui).quiet;
    ui.label(RichText::new(text::CHECKLIST_WHY.now()).small().color(quiet));
    ui.horizontal(|ui| {
        if ui.button(text::COPY.now()).clicked() {
            super::copy(ui, document, Output::Checklist);
            actions.push(Action::Say(text::COPIED.now().to_owned()));
        }
        if ui.button(text::PRINT.now()).on_hover_text(text::PRINT_HELP.now()).clicked() {
            actions.push(Action::Print(CrewSheet::Checklist));
        }
    });
    ui.separator();
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        let mut about = String::new();
        for line in chalkcourse_telling::checklist(job, &plan.layout) {
            if line.about != about {
                ui.add_space(theme::GAP);
                ui.label(RichText::new(&line.about).strong());
                about.clone_from(&line.about);
            }
            ui.label(&line.text);
            ui.label(RichText::new(&line.source.text).small().color(quiet));
            ui.add_space(theme::GAP);
        }
        ui.separator();
        ui.label(text::CAUTION.now());
    });
}
