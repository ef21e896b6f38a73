use super::chord::Chord;
use crate::Document;
use crate::action::Action;
use crate::state::{State, Step};
use chalkcourse_words::Say;

/// The menu of a command.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Menu {
    File,
    Edit,
    View,
    Help,
    /// The export button at the top right; also within File.
    Export,
    /// Inputs of the order; within File.
    Order,
    /// The panes beside the drawing; within View.
    Panes,
    /// Strings, branches and boxes; within Edit.
    Circuits,
}

/// The mark before a menu item in its present state.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Marked {
    Tick(bool),
    Choice(bool),
}

/// The mark before a menu item.
#[derive(Clone, Copy, Debug)]
pub(super) enum Mark {
    None,
    /// On or off.
    Tick(fn(&Document, &State) -> bool),
    /// One of several.
    Choice(fn(&Document, &State) -> bool),
}

/// The definition of a command.
#[derive(Clone, Debug)]
pub(super) struct Entry {
    pub(super) title: Say,
    pub(super) help: Say,
    pub(super) menu: Menu,
    pub(super) group: u8,
    pub(super) does: Action,
    pub(super) keys: &'static [Chord],
    pub(super) enabled: fn(&Document, &State) -> bool,
    pub(super) mark: Mark,
    pub(super) lesson: Option<Step>,
}

impl Entry {
    /// A command that is always enabled and has no key. `group` is the section of the menu, from 1.
    pub(super) const fn new(title: Say, help: Say, (menu, group): (Menu, u8), does: Action) -> Self {
        let enabled = always;
        Self { title, help, menu, group, does, keys: &[], enabled, mark: Mark::None, lesson: None }
    }

    /// With keys; the first one is displayed.
    pub(super) const fn keys(mut self, keys: &'static [Chord]) -> Self {
        self.keys = keys;
        self
    }

    /// Only enabled if `enabled` returns true.
    pub(super) const fn when(mut self, enabled: fn(&Document, &State) -> bool) -> Self {
        self.enabled = enabled;
        self
    }

    pub(super) const fn mark(mut self, mark: Mark) -> Self {
        self.mark = mark;
        self
    }

    /// Taught by a step of the lesson.
    pub(super) const fn lesson(mut self, step: Step) -> Self {
        self.lesson = Some(step);
        self
    }
}

fn always(_: &Document, _: &State) -> bool {
    true
}
