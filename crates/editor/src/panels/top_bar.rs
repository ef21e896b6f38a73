use crate::action::{Action, Actions};
use crate::commands::{ARRANGE, Command, CrewSheet, OrderFormat, PlanFormat, Tool};
use crate::desk::Desk;
use crate::settings::Settings;
use crate::view::View;
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::Units;
use chalkcourse_words::{Language, spoken};
use egui::containers::menu::MenuButton;
use egui::{Align, Button, Layout, Ui};

/// Files and commands left, the view in the middle, the order right.
pub(crate) fn show(
    ui: &mut Ui,
    document: &Document,
    desk: &mut Desk,
    settings: &Settings,
    actions: &mut Actions,
) {
    ui.horizontal_centered(|ui| {
        ui.menu_button(text::MENU_FILE.now(), |ui| file_menu(ui, document, settings, actions));
        ui.menu_button(text::MENU_EDIT.now(), |ui| edit_menu(ui, document, desk, actions));
        ui.menu_button(text::MENU_VIEW.now(), |ui| view_menu(ui, document, desk, actions));
        ui.menu_button(text::MENU_HELP.now(), |ui| {
            ui.set_min_width(220.0);
            for command in [
                Command::Lesson,
                Command::Find,
                Command::Keys,
                Command::Glossary,
                Command::Cautions,
                Command::Checklist,
            ] {
                item(ui, command, true, actions);
            }
        });
        ui.separator();
        let undo = document.history().undo_label();
        press(ui, Command::Undo, undo.is_some(), &text::undo_words(undo), actions);
        let redo = document.history().redo_label();
        press(ui, Command::Redo, redo.is_some(), &text::redo_words(redo), actions);
        ui.separator();
        views(ui, document, desk, actions);
        press(ui, Command::Fit, true, text::FIT_HELP.now(), actions);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let button = Button::new(text::EXPORT.now()).fill(theme::of(ui).accent_ground);
            let (order, _) = MenuButton::from_button(button).ui(ui, |ui| {
                order_out(ui, actions);
                plan_out(ui, document, actions);
            });
            order.on_hover_text(text::EXPORT_HELP.now());
            ui.add_space(theme::GAP * 2.0);
            let name = text::title_of(document);
            ui.add(egui::Label::new(egui::RichText::new(name).strong()).truncate());
        });
    });
}

/// A line of a menu.
fn item(ui: &mut Ui, command: Command, enabled: bool, actions: &mut Actions) {
    let mut button = Button::new(command.name());
    if let Some(key) = command.key() {
        button = button.shortcut_text(text::key_words(ui.ctx(), &key));
    }
    if ui.add_enabled(enabled, button).clicked() {
        actions.push(Action::Run(command));
    }
}

/// A button that always shows.
fn press(ui: &mut Ui, command: Command, enabled: bool, help: &str, actions: &mut Actions) {
    let key = command.key().map(|key| format!("  ({})", text::key_words(ui.ctx(), &key))).unwrap_or_default();
    let button = ui.add_enabled(enabled, Button::new(command.name()));
    if button.on_hover_text(format!("{help}{key}")).clicked() {
        actions.push(Action::Run(command));
    }
}

/// What the plan is written as.
fn order_out(ui: &mut Ui, actions: &mut Actions) {
    for format in OrderFormat::ALL {
        item(ui, Command::Export(format), true, actions);
    }
    ui.separator();
    for sheet in CrewSheet::ALL {
        item(ui, Command::Print(sheet), true, actions);
    }
    ui.separator();
}

fn plan_out(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    for format in PlanFormat::ALL {
        item(ui, Command::ExportPlan(format), !document.job().faces.is_empty(), actions);
    }
    ui.separator();
    item(ui, Command::SaveSteps, document.history().undo_label().is_some(), actions);
}

fn file_menu(ui: &mut Ui, document: &Document, settings: &Settings, actions: &mut Actions) {
    ui.set_min_width(240.0);
    item(ui, Command::New, true, actions);
    item(ui, Command::Open, true, actions);
    ui.add_enabled_ui(!settings.recent.is_empty(), |ui| {
        ui.menu_button(text::OPEN_RECENT.now(), |ui| {
            ui.set_min_width(260.0);
            for path in &settings.recent {
                let name = path
                    .file_name()
                    .map_or_else(|| path.display().to_string(), |n| n.to_string_lossy().into());
                if ui.button(name).on_hover_text(path.display().to_string()).clicked() {
                    actions.push(Action::Open(path.clone()));
                }
            }
        });
    });
    if ui.button(text::OPEN_SAMPLE.now()).clicked() {
        actions.push(Action::OpenSample);
    }
    for command in [Command::Import, Command::ImportFolder] {
        item(ui, command, true, actions);
    }
    ui.separator();
    item(ui, Command::Save, true, actions);
    item(ui, Command::SaveAs, true, actions);
    ui.separator();
    ui.menu_button(text::EXPORT.now(), |ui| {
        order_out(ui, actions);
        plan_out(ui, document, actions);
    });
    ui.separator();
    item(ui, Command::LayPicture, true, actions);
    for command in [Command::LoadKit, Command::LoadRuleBook, Command::LoadPrices] {
        item(ui, command, true, actions);
    }
    ui.separator();
    for command in [Command::RuleBook, Command::SaveRuleBook, Command::CompareRuleBook] {
        item(ui, command, true, actions);
    }
    ui.separator();
    item(ui, Command::Quit, true, actions);
}

fn edit_menu(ui: &mut Ui, document: &Document, desk: &Desk, actions: &mut Actions) {
    ui.set_min_width(240.0);
    item(ui, Command::Undo, Command::Undo.can(document, desk), actions);
    item(ui, Command::Redo, Command::Redo.can(document, desk), actions);
    item(ui, Command::History, true, actions);
    ui.separator();
    item(ui, Command::Delete, Command::Delete.can(document, desk), actions);
    item(ui, Command::HoldAll, Command::HoldAll.can(document, desk), actions);
    ui.separator();
    for command in [Command::CopyPicture, Command::CopySvg, Command::CopySteps] {
        item(ui, command, command.can(document, desk), actions);
    }
    ui.separator();
    item(ui, Command::Fill, Command::Fill.can(document, desk), actions);
    for command in ARRANGE {
        item(ui, command, command.can(document, desk), actions);
    }
    ui.separator();
    for tool in Tool::ALL {
        item(ui, Command::Use(tool), Command::Use(tool).can(document, desk), actions);
    }
    for command in [Command::RaiseRoof, Command::TapedFace] {
        item(ui, command, command.can(document, desk), actions);
    }
}

fn view_menu(ui: &mut Ui, document: &Document, desk: &Desk, actions: &mut Actions) {
    ui.set_min_width(240.0);
    item(ui, Command::PlanView, Command::PlanView.can(document, desk), actions);
    item(ui, Command::FaceOnView, Command::FaceOnView.can(document, desk), actions);
    item(ui, Command::SolidView, Command::SolidView.can(document, desk), actions);
    item(ui, Command::ShowHome, Command::ShowHome.can(document, desk), actions);
    item(ui, Command::SavePicture, Command::SavePicture.can(document, desk), actions);
    item(ui, Command::Fit, Command::Fit.can(document, desk), actions);
    item(ui, Command::RoofReport, Command::RoofReport.can(document, desk), actions);
    item(ui, Command::Order, Command::Order.can(document, desk), actions);
    ui.separator();
    for command in [Command::Coursing, Command::FitUp] {
        item(ui, command, command.can(document, desk), actions);
    }
    ui.separator();
    let mut courses = desk.courses_in_plan;
    if ui.checkbox(&mut courses, text::COURSES_IN_PLAN.now()).clicked() {
        actions.push(Action::Run(Command::CoursesInPlan));
    }
    let mut pathways = desk.show_pathways;
    if ui.checkbox(&mut pathways, text::PATHWAYS.now()).clicked() {
        actions.push(Action::Run(Command::Pathways));
    }
    let mut lines = desk.show_lines;
    if ui.checkbox(&mut lines, text::LINES_MEAN.now()).clicked() {
        actions.push(Action::Run(Command::Lines));
    }
    let mut zones = desk.show_zones;
    if ui.checkbox(&mut zones, text::WIND_ZONES.now()).on_hover_text(text::WIND_ZONES_HELP.now()).clicked() {
        actions.push(Action::Run(Command::WindZones));
    }
    ui.separator();
    for units in [Units::FeetInches, Units::Metric] {
        let chosen = document.job().units == units;
        if ui.radio(chosen, Command::Show(units).name()).clicked() {
            actions.push(Action::Run(Command::Show(units)));
        }
    }
    ui.separator();
    for language in Language::ALL {
        if ui.radio(spoken() == language, Command::Speak(language).name()).clicked() {
            actions.push(Action::Run(Command::Speak(language)));
        }
    }
    ui.separator();
    item(ui, Command::Theme, Command::Theme.can(document, desk), actions);
}

fn views(ui: &mut Ui, document: &Document, desk: &mut Desk, actions: &mut Actions) {
    let plan = desk.view == View::Plan;
    if ui.add(Button::selectable(plan, text::PLAN_VIEW.now())).on_hover_text(text::PLAN_HELP.now()).clicked()
    {
        actions.push(Action::Run(Command::PlanView));
    }
    let any = !document.job().faces.is_empty();
    let button = ui
        .add_enabled(any, Button::selectable(matches!(desk.view, View::FaceOn(_)), text::FACE_ON_VIEW.now()));
    if button.on_hover_text(text::FACE_ON_HELP.now()).clicked() {
        actions.push(Action::Run(Command::FaceOnView));
    }
    let solid = Button::selectable(desk.view == View::Solid, text::SOLID_VIEW.now());
    if ui.add(solid).on_hover_text(text::SOLID_HELP.now()).clicked() {
        actions.push(Action::Run(Command::SolidView));
    }
    if let View::FaceOn(shown) = desk.view {
        let name = document.job().face(shown).map(|f| f.name.clone()).unwrap_or_default();
        egui::ComboBox::from_id_salt("face shown")
            .selected_text(name)
            .width(110.0)
            .show_ui(ui, |ui| {
                for face in &document.job().faces {
                    if ui.selectable_label(face.id == shown, &face.name).clicked() {
                        desk.view = View::FaceOn(face.id);
                        desk.fit = true;
                        actions.push(Action::Select(Selection::Face(face.id)));
                    }
                }
            })
            .response
            .accessible_name(text::FACE_SHOWN.now());
    }
}
