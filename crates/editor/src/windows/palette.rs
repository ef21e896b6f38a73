//! One field that finds every command by its words.

use super::Windows;
use crate::action::Actions;
use crate::commands::Command;
use crate::state::State;
use crate::widgets::quiet;
use crate::{Document, text};
use chalkcourse_words::plain;
use egui::{Button, Context, Key, Modifiers, ScrollArea, TextEdit, Ui};

/// What was typed so far, and which line Enter would carry out.
#[derive(Debug, Default)]
pub(crate) struct Palette {
    typed: String,
    at: usize,
    shown: bool,
}

/// Shows the field and what it finds.
pub(super) fn palette_window(
    ctx: &Context,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let Some(mut palette) = windows.palette.take() else { return };
    let key = |key: Key| ctx.input_mut(|input| input.consume_key(Modifiers::NONE, key));
    let (left, down, up) = (key(Key::Escape), key(Key::ArrowDown), key(Key::ArrowUp));
    let entered = key(Key::Enter);
    let found = matching(&palette.typed);
    let last = found.len().saturating_sub(1);
    palette.at = (palette.at.saturating_add(usize::from(down)).min(last)).saturating_sub(usize::from(up));
    let mut run = found.get(palette.at).copied().filter(|command| entered && command.can(document, state));
    let mut open = true;
    egui::Window::new(text::FIND_COMMAND.now().trim_end_matches('…'))
        .id(egui::Id::unique(text::FIND_COMMAND.now()))
        .open(&mut open)
        .collapsible(false)
        .resizable(false)
        .anchor(egui::Align2::CENTER_TOP, [0.0, 84.0])
        .show(ctx, |ui| {
            ui.set_width(380.0);
            let field = TextEdit::singleline(&mut palette.typed)
                .hint_text(text::FIND_HINT.now())
                .desired_width(f32::INFINITY)
                .margin(egui::Margin::symmetric(6, 4));
            let field = ui.add(field).accessible_name(text::FIND_FIELD.now());
            if !palette.shown || !field.has_focus() {
                field.request_focus();
            }
            if field.changed() {
                palette.at = 0;
            }
            run = run.or(list(ui, &found, palette.at, down || up, document, state));
        });
    palette.shown = true;
    if let Some(command) = run {
        actions.push(command.action());
    } else if open && !left {
        windows.palette = Some(palette);
    }
}

fn list(
    ui: &mut Ui,
    found: &[Command],
    at: usize,
    moved: bool,
    document: &Document,
    state: &State,
) -> Option<Command> {
    if found.is_empty() {
        quiet(ui, text::FIND_NOTHING.now());
    }
    let mut run = None;
    ScrollArea::vertical().max_height(320.0).show(ui, |ui| {
        ui.with_layout(egui::Layout::top_down_justified(egui::Align::Min), |ui| {
            for (nth, command) in found.iter().enumerate() {
                let mut button = Button::selectable(nth == at, command.title());
                if command.key().is_some() {
                    button = button.shortcut_text(command.key_words(ui.ctx()));
                }
                let row = ui.add_enabled(command.can(document, state), button);
                if nth == at && moved {
                    row.scroll_to_me(None);
                }
                let row = row.on_hover_text(command.help());
                if row.on_disabled_hover_text(text::FIND_NOT_NOW.now()).clicked() {
                    run = Some(*command);
                }
            }
        });
    });
    run
}

/// Commands in whose names all words that were typed begin a word; names that begin with the first of them come first.
fn matching(typed: &str) -> Vec<Command> {
    let typed = plain(typed);
    let words: Vec<&str> = typed.split_whitespace().collect();
    let fits = |command: &Command| {
        let name = plain(command.title());
        words.iter().all(|word| name.split([' ', '-', '–']).any(|of_name| of_name.starts_with(word)))
    };
    let mut found: Vec<Command> =
        Command::every().filter(|command| *command != Command::Find).filter(fits).collect();
    let begins =
        |command: &Command| words.first().is_some_and(|word| plain(command.title()).starts_with(word));
    found.sort_by_key(|command| !begins(command));
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_find_a_command_in_any_order() {
        assert_eq!(matching("csv order"), [Command::ExportCsv]);
        assert_eq!(matching("und").first(), Some(&Command::Undo));
        assert_eq!(matching("no such thing"), []);
        assert_eq!(matching(" ").len(), Command::every().count() - 1);
    }
}
