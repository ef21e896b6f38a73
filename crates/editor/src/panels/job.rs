use super::{heading, part, quiet, site};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::widgets::{LittleButton, fields};
use crate::{Document, Selection, text};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Edit, Site};
use egui::Ui;

/// The form of the job: address, kit, rule book and prices.
pub(super) fn job_form(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    let job = document.job();
    heading(ui, text::THE_JOB.now());
    if let Some(name) = fields::name(ui, text::NAME.now(), &job.name) {
        actions.push(Action::Edit(text::RENAME_JOB.into(), Edit::SetName(name)));
    }
    if let Some(address) = fields::words(ui, text::ADDRESS.now(), &job.site.address) {
        let site = Site { address, ..job.site.clone() };
        actions.push(Action::Edit(text::CHANGE_SITE.into(), Edit::SetSite(site)));
    }
    if let Some(notes) = fields::words(ui, text::NOTES.now(), &job.site.notes) {
        let site = Site { notes, ..job.site.clone() };
        actions.push(Action::Edit(text::CHANGE_SITE.into(), Edit::SetSite(site)));
    }
    let units = [(Units::FeetInches, text::FEET_INCHES.now()), (Units::Metric, text::METRIC.now())];
    if let Some(units) = fields::choice(ui, text::UNITS.now(), job.units, &units) {
        actions.push(Action::Show(units));
    }
    ui.add_space(6.0);
    for (label, name, command) in [
        (text::KIT.now(), format!("{}, {}", job.kit.name, job.kit.issue), Command::LoadKit),
        (
            text::RULE_BOOK.now(),
            format!("{}, {}", job.rule_book.name, job.rule_book.date),
            Command::LoadRuleBook,
        ),
        (text::PRICES.now(), format!("{}, {}", job.prices.name, job.prices.date), Command::LoadPrices),
    ] {
        fields::row(ui, label, |ui, _| {
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if command == Command::LoadRuleBook
                    && ui
                        .little_button(text::EDIT_BOOK.now())
                        .on_hover_text(text::EDIT_BOOK_HELP.now())
                        .clicked()
                {
                    actions.push(Command::RuleBook.action());
                }
                if ui.little_button(text::LOAD.now()).on_hover_text(command.title()).clicked() {
                    actions.push(command.action());
                }
                ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                    ui.add(egui::Label::new(&name).truncate()).on_hover_text(&name);
                });
            });
        });
    }
    part::list(ui, job, Selection::Nothing, actions);
    site::site_form(ui, document, actions);
    let summary = &document.plan().summary;
    if summary.slope_area > 0.0 {
        ui.add_space(6.0);
        quiet(ui, &text::roof_words(summary, job.faces.len(), job.units));
    }
}
