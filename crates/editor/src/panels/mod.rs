//! The panels around the drawing. Each reads the state and emits actions.

mod block;
mod checked;
mod circuit;
mod costs;
mod deck;
mod face;
mod fill;
mod findings;
mod first_steps;
mod form;
mod group;
mod job;
mod junction_box;
mod lesson;
mod part;
mod penetration;
mod picture;
mod quantities;
mod side;
mod site;
mod square;
mod status;
mod tools;
mod top_bar;

pub(crate) use first_steps::first_steps_card;
pub(crate) use lesson::lesson_card;
pub(crate) use side::side_panel;
pub(crate) use status::status_bar;
pub(crate) use tools::tool_buttons;
pub(crate) use top_bar::{FIRST_MENU, top_bar};

use crate::widgets::{heading, quiet, turning};
use costs::Costs;
use findings::{Filter, Waiving};

/// The panels' own state.
#[derive(Debug, Default)]
pub(crate) struct Panels {
    /// Which findings are listed.
    filter: Filter,
    /// A waiver being written.
    waiving: Option<Waiving>,
    /// Cached totals by number of modules.
    costs: Option<Costs>,
}
