//! Tests of the command table, and that all of the window is generated from it.

use super::*;
use crate::{Editor, Options};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use std::collections::BTreeMap;

#[test]
fn every_command_has_a_unique_title_and_help() {
    let mut titles: Vec<&str> = Command::every().map(Command::title).collect();
    assert!(Command::every().all(|command| !command.help().is_empty()));
    let all = titles.len();
    titles.sort_unstable();
    titles.dedup();
    assert_eq!(titles.len(), all);
}

/// All commands are handled in the same place, so no two may share a key.
#[test]
fn no_key_is_used_twice() {
    let mut taken = BTreeMap::new();
    for (command, keys) in Command::with_keys() {
        for key in keys {
            if let Some(other) = taken.insert(format!("{key:?}"), command) {
                panic!("{key:?} asks for {command:?} and {other:?}");
            }
        }
    }
    assert!(taken.len() > 40, "{taken:?}");
}

#[test]
fn every_command_is_in_one_menu() {
    let menus = [
        Menu::File,
        Menu::Edit,
        Menu::View,
        Menu::Help,
        Menu::Export,
        Menu::Order,
        Menu::Panes,
        Menu::Circuits,
    ];
    for command in Command::every() {
        let there = menus.iter().filter(|menu| Command::of(**menu).any(|other| other == command)).count();
        assert_eq!(there, 1, "{command:?}");
    }
}

fn window() -> Harness<'static, Option<Editor>> {
    let options = Options { typed_paths: true, ..Options::default() };
    let mut window = Harness::builder().with_size([1280.0, 900.0]).build_ui_state(
        move |ui, editor: &mut Option<Editor>| {
            editor.get_or_insert_with(|| Editor::new(ui.ctx(), options.clone(), None)).show(ui);
        },
        None,
    );
    window.run();
    window
}

fn sees(window: &Harness<'static, Option<Editor>>, words: &str) -> bool {
    window.query_all_by_label_contains(words).next().is_some()
}

/// Every entry of the table is in the menu, the palette and, with its keys, in the list of keys, and has a tooltip:
/// including the one that is added for tests.
#[test]
fn a_new_command_appears_everywhere() {
    let mut window = window();
    for (menu, name) in [
        (Menu::File, "File"),
        (Menu::Edit, "Edit"),
        (Menu::View, "View"),
        (Menu::Help, "Help"),
        (Menu::Export, crate::text::EXPORT.now()),
    ] {
        window.get_by_label(name).click();
        window.run();
        for command in Command::of(menu) {
            assert!(sees(&window, command.title()), "{command:?} is not in {name}");
        }
        window.key_press(egui::Key::Escape);
        window.run();
    }
    window.get_by_label("File").click();
    window.run();
    window.get_by_label(crate::text::ORDER.now().trim_end_matches('…')).click();
    window.run();
    for command in Command::of(Menu::Order) {
        assert!(sees(&window, command.title()), "{command:?} is not within File");
    }
    (0..2).for_each(|_| window.key_press(egui::Key::Escape));
    window.run();
    window.get_by_label("Edit").click();
    window.run();
    window.get_by_label(crate::text::CIRCUITS.now()).click();
    window.run();
    for command in Command::of(Menu::Circuits) {
        assert!(sees(&window, command.title()), "{command:?} is not within Edit");
    }
    (0..2).for_each(|_| window.key_press(egui::Key::Escape));
    window.run();
    window.get_by_label("View").click();
    window.run();
    window.get_by_label(crate::text::PANES.now()).click();
    window.run();
    for command in Command::of(Menu::Panes) {
        assert!(sees(&window, command.title()), "{command:?} is not within View");
    }
    (0..2).for_each(|_| window.key_press(egui::Key::Escape));
    window.run();
    window.get_by_label("Help").click();
    window.run();
    let place = window.get_by_label_contains(Command::Rehearsal.title()).rect().center();
    assert!(!sees(&window, Command::Rehearsal.help()));
    window.hover_at(place);
    window.run_steps(70);
    assert!(sees(&window, Command::Rehearsal.help()), "no help");
    window.key_press(egui::Key::Escape);
    window.run();
    window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::F);
    window.run();
    window.event(egui::Event::Text(Command::Rehearsal.title().to_owned()));
    window.run();
    assert!(sees(&window, Command::Rehearsal.title()), "not in the palette");
    window.key_press(egui::Key::Escape);
    window.run();
    window.key_press(egui::Key::F1);
    window.run();
    for (command, keys) in Command::with_keys() {
        assert!(sees(&window, command.title()), "{command:?} is not in the sheet of keys");
        for key in keys {
            let words = crate::text::key_words(&window.ctx, &key);
            assert!(sees(&window, &words), "{words} is not in the sheet of keys");
        }
    }
}

/// A lesson step that mentions a key takes it from the table.
#[test]
fn the_lesson_teaches_commands_of_the_table() {
    let taught = [Step::Roof, Step::Vent, Step::Fill, Step::Finding, Step::Order].map(Command::taught_by);
    assert!(taught.iter().all(Option::is_some), "{taught:?}");
    let both: Vec<_> = Command::every().filter_map(|command| command.entry().lesson).collect();
    assert_eq!(both.len(), taught.len(), "a step teaches one command: {both:?}");
}
