//! Keys of commands, and when they are handled.

use super::chord::Chord;
use super::{Command, table};
use crate::action::Action;
use crate::state::{DRAWING, HOUSE};
use egui::text_selection::LabelSelectionState;
use egui::{Event, Id, KeyboardShortcut, Modifiers};

/// The actions for the keys of this frame; `drawing` while a side of an outline is drawn.
pub(crate) fn pressed(ctx: &egui::Context, drawing: bool) -> Vec<Action> {
    let mut asked: Vec<Action> = by_keys(ctx, drawing).into_iter().map(Command::action).collect();
    asked.extend(of_clipboard(ctx));
    asked
}

/// The toolkit reports clipboard keys as events, with the pasted text. A text field being edited takes precedence, and
/// so does selected text.
fn of_clipboard(ctx: &egui::Context) -> Vec<Action> {
    let marked = ctx.plugin::<LabelSelectionState>().lock().has_selection();
    if ctx.text_edit_focused() {
        return Vec::new();
    }
    ctx.input_mut(|input| {
        let mut asked = Vec::new();
        input.events.retain(|event| {
            let action = match event {
                Event::Copy if !marked => Action::Copy,
                Event::Cut if !marked => Action::Cut,
                Event::Paste(text) => Action::PasteText(text.clone()),
                _ => return true,
            };
            asked.push(action);
            false
        });
        asked
    })
}

/// Whether the focus is neither on the drawing nor on the 3-D view of the house.
pub(crate) fn is_elsewhere(focused: Option<Id>) -> bool {
    let drawings = [DRAWING, HOUSE].map(Id::unique);
    focused.is_some_and(|focused| !drawings.contains(&focused))
}

fn by_keys(ctx: &egui::Context, drawing: bool) -> Vec<Command> {
    let typing = ctx.text_edit_focused();
    let elsewhere = is_elsewhere(ctx.memory(egui::Memory::focused));
    let all = table::TABLE.iter().flat_map(|(command, entry)| entry.keys.iter().map(|key| (*command, *key)));
    let mut all: Vec<(Command, Chord)> =
        all.filter(|(_, key)| key.heard(typing, elsewhere, drawing)).collect();
    // Ctrl+S would also match Ctrl+Shift+S: check keys with more modifiers first.
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
    /// Every command with keys and all its keys, for the list of keys.
    pub(crate) fn with_keys() -> impl Iterator<Item = (Self, Vec<KeyboardShortcut>)> {
        let all = table::TABLE.iter();
        all.filter(|(_, entry)| !entry.keys.is_empty())
            .map(|(command, entry)| (*command, entry.keys.iter().map(|key| key.shortcut).collect()))
    }
}
