//! Keys of commands, and when they are heard.

use super::{Command, table};
use egui::{Key, KeyboardShortcut, Modifiers};

/// When the key of a command is heard while a field is typed in. With no field, each is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum InField {
    Heard,
    /// It is the field's own: a letter, an arrow, all of the text.
    Fields,
    /// The field takes back its own words, but for the length of a side that is being drawn.
    HeardWhileDrawing,
}

/// A key of a command.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Chord {
    pub(crate) shortcut: KeyboardShortcut,
    in_field: InField,
}

impl Chord {
    const fn new(modifiers: Modifiers, key: Key, in_field: InField) -> Self {
        Self { shortcut: KeyboardShortcut::new(modifiers, key), in_field }
    }

    pub(super) const fn plain(key: Key) -> Self {
        Self::new(Modifiers::NONE, key, InField::Fields)
    }

    pub(super) const fn shift(key: Key) -> Self {
        Self::new(Modifiers::SHIFT, key, InField::Fields)
    }

    /// A key that no field knows: F1.
    pub(super) const fn function(key: Key) -> Self {
        Self::new(Modifiers::NONE, key, InField::Heard)
    }

    pub(super) const fn ctrl(key: Key) -> Self {
        Self::new(Modifiers::COMMAND, key, InField::Heard)
    }

    pub(super) const fn ctrl_shift(key: Key) -> Self {
        Self::new(Modifiers::COMMAND.plus(Modifiers::SHIFT), key, InField::Heard)
    }

    /// Fields have a use of their own for it.
    pub(super) const fn also_of_fields(self) -> Self {
        Self { in_field: InField::Fields, ..self }
    }

    /// Fields take back their own words by it.
    pub(super) const fn also_undo_of_fields(self) -> Self {
        Self { in_field: InField::HeardWhileDrawing, ..self }
    }

    fn heard(self, typing: bool, drawing: bool) -> bool {
        !typing
            || match self.in_field {
                InField::Heard => true,
                InField::Fields => false,
                InField::HeardWhileDrawing => drawing,
            }
    }
}

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
