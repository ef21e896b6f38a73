//! Keys of commands, and when they are heard.

use super::chord::Chord;
use super::{Command, table};
use egui::{KeyboardShortcut, Modifiers};

/// What the keys of this frame ask for. `drawing` while a side of an outline is drawn.
pub(crate) fn pressed(ctx: &egui::Context, drawing: bool) -> Vec<Command> {
    let typing = ctx.text_edit_focused();
    let all = table::TABLE.iter().flat_map(|(command, entry)| entry.keys.iter().map(|key| (*command, *key)));
    let mut all: Vec<(Command, Chord)> = all.filter(|(_, key)| key.heard(typing, drawing)).collect();
    // Ctrl+S would be heard in Ctrl+Shift+S: what is held with more is asked first.
    all.sort_by_key(|(_, key)| std::cmp::Reverse(held_beside(key.shortcut.modifiers)));
    ctx.input_mut(|input| {
        all.retain(|(_, key)| input.consume_shortcut(&key.shortcut));
    });
    all.into_iter().map(|(command, _)| command).collect()
}

fn held_beside(modifiers: Modifiers) -> usize {
    [modifiers.shift, modifiers.alt, modifiers.command].into_iter().filter(|held| *held).count()
}

impl Command {
    /// Every command that has a key with all its keys, for the sheet of keys.
    pub(crate) fn with_keys() -> impl Iterator<Item = (Self, Vec<KeyboardShortcut>)> {
        let all = table::TABLE.iter();
        all.filter(|(_, entry)| !entry.keys.is_empty())
            .map(|(command, entry)| (*command, entry.keys.iter().map(|key| key.shortcut).collect()))
    }
}
