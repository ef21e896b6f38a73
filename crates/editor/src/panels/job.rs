use super::{heading, part, quiet, site};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::{Document, Selection, fields, text};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Edit, Site};
use egui::Ui;

/// The job as a whole: where, by which kit, rules and prices.
pub(super) fn show(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    let job = document.job();
    heading(ui, text::THE_JOB);
    if let Some(name) = fields::name(ui, text::NAME, &job.name) {
        actions.push(Action::Edit(text::RENAME_JOB.to_owned(), Edit::SetName(name)));
    }
    if let Some(address) = fields::words(ui, text::ADDRESS, &job.site.address) {
        let site = Site { address, ..job.site.clone() };
        actions.push(Action::Edit(text::CHANGE_SITE.to_owned(), Edit::SetSite(site)));
    }
    if let Some(notes) = fields::words(ui, text::NOTES, &job.site.notes) {
        let site = Site { notes, ..job.site.clone() };
        actions.push(Action::Edit(text::CHANGE_SITE.to_owned(), Edit::SetSite(site)));
    }
    let units = [(Units::FeetInches, text::FEET_INCHES), (Units::Metric, text::METRIC)];
    if let Some(units) = fields::choice(ui, text::UNITS, job.units, &units) {
        actions.push(Action::Run(Command::Show(units)));
    }
    ui.add_space(6.0);
    for (label, name, command) in [
        (text::KIT, format!("{}, {}", job.kit.name, job.kit.issue), Command::LoadKit),
        (text::RULE_BOOK, format!("{}, {}", job.rule_book.name, job.rule_book.date), Command::LoadRuleBook),
        (text::PRICES, format!("{}, {}", job.prices.name, job.prices.date), Command::LoadPrices),
    ] {
        fields::row(ui, label, |ui, _| {
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if command == Command::LoadRuleBook
                    && ui.small_button(text::EDIT_BOOK).on_hover_text(text::EDIT_BOOK_HELP).clicked()
                {
                    actions.push(Action::Run(Command::RuleBook));
                }
                if ui.small_button(text::LOAD).on_hover_text(command.name()).clicked() {
                    actions.push(Action::Run(command));
                }
                ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                    ui.add(egui::Label::new(&name).truncate()).on_hover_text(&name);
                });
            });
        });
    }
    part::list(ui, job, Selection::Nothing, actions);
    site::show(ui, document, actions);
    let summary = &document.plan().summary;
    if summary.slope_area > 0.0 {
        ui.add_space(6.0);
        quiet(ui, &text::roof_words(summary, job.faces.len(), job.units));
    }
}
