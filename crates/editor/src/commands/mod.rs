//! Everything that a menu, a key, the palette or a lesson can trigger: one table, used by all of them.
//!
//! A new command is one entry in `table`: the macro generates its [`Command`] from it, so that every command has a
//! title, help and a place in a menu.

mod chord;
mod entry;
mod keys;
mod table;

pub(crate) use entry::{Marked, Menu};
pub(crate) use keys::{is_elsewhere, pressed};
pub(crate) use table::Command;

use crate::action::Action;
use crate::state::{State, Step, Tool};
use crate::{Document, text};
use chalkcourse_words::{Language, spoken};
use egui::KeyboardShortcut;
use entry::{Entry, Mark};

impl Command {
    /// Every command, in the order of the menus.
    pub(crate) fn every() -> impl Iterator<Item = Self> {
        let of_table = table::TABLE.iter().map(|(command, _)| *command);
        of_table.chain(Language::ALL.map(Self::Speak))
    }

    /// The commands of a menu, in its order.
    pub(crate) fn of(menu: Menu) -> impl Iterator<Item = Self> {
        let mut commands: Vec<Self> = Self::every().filter(|command| command.entry().menu == menu).collect();
        commands.sort_by_key(|command| command.group());
        commands.into_iter()
    }

    /// Its section in the menu, from 1; sections are separated by lines.
    pub(crate) fn group(self) -> u8 {
        self.entry().group
    }

    /// The commands that switch tools, each with its tool.
    pub(crate) fn of_tools() -> impl Iterator<Item = (Self, Tool)> {
        table::TABLE.iter().filter_map(|(command, entry)| match entry.does {
            Action::Use(tool) => Some((*command, tool)),
            _ => None,
        })
    }

    /// Its text in a menu.
    pub(crate) fn title(self) -> &'static str {
        match self {
            Self::Speak(language) => language.name(),
            _ => self.entry().title.now(),
        }
    }

    /// Its help sentence.
    pub(crate) fn help(self) -> &'static str {
        self.entry().help.now()
    }

    /// Its help sentence with its key, if any: for buttons that show neither.
    pub(crate) fn tip(self, ctx: &egui::Context) -> String {
        self.with_key(ctx, self.help())
    }

    /// Any text with its key, if any.
    pub(crate) fn with_key(self, ctx: &egui::Context, words: &str) -> String {
        match self.key() {
            Some(_) => format!("{words}  ({})", self.key_words(ctx)),
            None => words.to_owned(),
        }
    }

    /// The key displayed for it, if any.
    pub(crate) fn key(self) -> Option<KeyboardShortcut> {
        self.entry().keys.first().map(|key| key.shortcut)
    }

    /// The label of that key; empty if there is none.
    pub(crate) fn key_words(self, ctx: &egui::Context) -> String {
        self.key().map(|key| text::key_words(ctx, &key)).unwrap_or_default()
    }

    /// Whether it is enabled.
    pub(crate) fn can(self, document: &Document, state: &State) -> bool {
        (self.entry().enabled)(document, state)
    }

    /// The mark before its menu item.
    pub(crate) fn mark(self, document: &Document, state: &State) -> Option<Marked> {
        match (self, self.entry().mark) {
            (Self::Speak(language), _) => Some(Marked::Choice(spoken() == language)),
            (_, Mark::None) => None,
            (_, Mark::Tick(on)) => Some(Marked::Tick(on(document, state))),
            (_, Mark::Choice(chosen)) => Some(Marked::Choice(chosen(document, state))),
        }
    }

    /// The action that it triggers.
    pub(crate) fn action(self) -> Action {
        match self {
            Self::Speak(language) => Action::Speak(language),
            _ => self.entry().does.clone(),
        }
    }

    /// The command that a step of the lesson teaches.
    pub(crate) fn taught_by(step: Step) -> Option<Self> {
        Self::every().find(|command| command.entry().lesson == Some(step))
    }

    fn entry(self) -> &'static Entry {
        let known = table::TABLE.iter().find(|(command, _)| *command == self);
        known.map_or(&table::LANGUAGE, |(_, entry)| entry)
    }
}

#[cfg(test)]
mod tests;
