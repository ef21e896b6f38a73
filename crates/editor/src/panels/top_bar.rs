use crate::action::{Action, Actions};
use crate::commands::{Command, Marked, Menu};
use crate::state::{Look, Pane, Settings, State, View};
use crate::{Document, text, theme};
use egui::containers::menu::MenuButton;
use egui::{Align, Button, Id, Layout, Popup, ScrollArea, TextWrapMode, Ui};

/// Width of the buttons after the menus in one row, points.
const ROOM: f32 = 520.0;

/// The key under which the id of the first menu's button is stored.
pub(crate) const FIRST_MENU: &str = "first menu";

/// Files and commands on the left, the view in the middle, the order on the right.
pub(crate) fn top_bar(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    settings: &Settings,
    actions: &mut Actions,
) {
    ui.horizontal_centered(|ui| {
        for (menu, words) in [
            (Menu::File, text::MENU_FILE),
            (Menu::Edit, text::MENU_EDIT),
            (Menu::View, text::MENU_VIEW),
            (Menu::Help, text::MENU_HELP),
        ] {
            let button = ui.menu_button(words.now(), |ui| {
                ui.set_min_width(if menu == Menu::Help { 220.0 } else { 240.0 });
                // A long menu scrolls in a low window, so that all of it is reachable.
                let room = ui.ctx().content_rect().bottom() - ui.max_rect().top() - 2.0 * theme::GAP;
                ScrollArea::vertical().max_height(room).min_scrolled_height(room).show(ui, |ui| {
                    ui.style_mut().wrap_mode = Some(TextWrapMode::Extend);
                    contents(ui, menu, document, state, settings, actions);
                });
            });
            if menu == Menu::File {
                ui.data_mut(|data| data.insert_temp(Id::unique(FIRST_MENU), button.response.id));
            }
        }
        ui.separator();
        // With large text in a narrow window these are only in their menu.
        if ui.available_width() > ROOM {
            let undo = document.history().undo_label();
            press(ui, Command::Undo, undo.is_some(), &text::undo_words(undo), actions);
            let redo = document.history().redo_label();
            press(ui, Command::Redo, redo.is_some(), &text::redo_words(redo), actions);
            ui.separator();
        }
        views(ui, document, state, actions);
        press(ui, Command::Fit, true, Command::Fit.help(), actions);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let button = Button::new(text::EXPORT.now()).fill(theme::of(ui).accent_ground);
            let (order, _) = MenuButton::from_button(button).ui(ui, |ui| {
                contents(ui, Menu::Export, document, state, settings, actions);
            });
            order.on_hover_text(text::EXPORT_HELP.now());
            ui.add_space(theme::GAP * 2.0);
            let name = text::title_of(document);
            ui.add(egui::Label::new(egui::RichText::new(name).strong()).truncate());
        });
    });
}

/// The commands of a menu, with separators between its sections. Recent jobs and the export menu are in File.
fn contents(
    ui: &mut Ui,
    menu: Menu,
    document: &Document,
    state: &State,
    settings: &Settings,
    actions: &mut Actions,
) {
    let mut part = Command::of(menu).next().map_or(1, Command::group);
    for command in Command::of(menu) {
        if command.group() != part {
            if (menu, part) == (Menu::File, 1) {
                recent(ui, settings, actions);
            } else {
                ui.separator();
            }
            if (menu, part) == (Menu::File, 5) {
                ui.menu_button(text::ORDER.now().trim_end_matches('…'), |ui| {
                    contents(ui, Menu::Order, document, state, settings, actions);
                });
                ui.separator();
            }
            if (menu, part) == (Menu::Edit, 4) {
                ui.menu_button(text::CIRCUITS.now(), |ui| {
                    contents(ui, Menu::Circuits, document, state, settings, actions);
                });
                ui.separator();
            }
            if (menu, part) == (Menu::View, 2) {
                ui.menu_button(text::PANES.now(), |ui| {
                    contents(ui, Menu::Panes, document, state, settings, actions);
                });
                ui.separator();
            }
            if (menu, part) == (Menu::File, 3) {
                ui.menu_button(text::EXPORT.now(), |ui| {
                    contents(ui, Menu::Export, document, state, settings, actions);
                });
                ui.separator();
            }
            part = command.group();
        }
        item(ui, command, document, state, actions);
    }
}

/// A menu item.
fn item(ui: &mut Ui, command: Command, document: &Document, state: &State, actions: &mut Actions) {
    let response = match command.mark(document, state) {
        Some(Marked::Tick(mut on)) => ui.checkbox(&mut on, command.title()),
        Some(Marked::Choice(chosen)) => ui.radio(chosen, command.title()),
        None => {
            let mut button = Button::new(command.title());
            if command.key().is_some() {
                button = button.shortcut_text(command.key_words(ui.ctx()));
            }
            ui.add_enabled(command.can(document, state), button)
        }
    };
    if response.on_hover_text(command.help()).clicked() {
        // Activating an item of a submenu by keyboard leaves the outer menu open.
        Popup::close_all(ui.ctx());
        actions.push(command.action());
    }
}

/// A permanently visible button.
fn press(ui: &mut Ui, command: Command, enabled: bool, help: &str, actions: &mut Actions) {
    let help = command.with_key(ui.ctx(), help);
    if ui.add_enabled(enabled, Button::new(command.title())).on_hover_text(help).clicked() {
        actions.push(command.action());
    }
}

/// Recent jobs.
fn recent(ui: &mut Ui, settings: &Settings, actions: &mut Actions) {
    ui.add_enabled_ui(!settings.recent.is_empty(), |ui| {
        ui.menu_button(text::OPEN_RECENT.now(), |ui| {
            ui.set_min_width(260.0);
            for path in &settings.recent {
                let name = text::own_name(path);
                if ui.button(name).on_hover_text(path.display().to_string()).clicked() {
                    Popup::close_all(ui.ctx());
                    actions.push(Action::OpenFile(path.clone()));
                }
            }
        });
    });
}

/// The view, and in the face-on view which face.
fn views(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    for (command, shown) in [
        (Command::PlanView, state.view == View::Plan),
        (Command::FaceOnView, matches!(state.view, View::FaceOn(_))),
        (Command::House, state.desk.is_open(Pane::House)),
    ] {
        let button = Button::selectable(shown, command.title());
        let button = ui.add_enabled(command.can(document, state), button);
        if button.on_hover_text(command.tip(ui.ctx())).clicked() {
            actions.push(command.action());
        }
    }
    if let View::FaceOn(shown) = state.view {
        let name = document.job().face(shown).map(|f| f.name.clone()).unwrap_or_default();
        egui::ComboBox::from_id_salt("face shown")
            .selected_text(name)
            .width(110.0)
            .show_ui(ui, |ui| {
                for face in &document.job().faces {
                    if ui.selectable_label(face.id == shown, &face.name).clicked() {
                        actions.push(Action::Look(Look::At(face.id)));
                    }
                }
            })
            .response
            .accessible_name(text::FACE_SHOWN.now());
    }
}
