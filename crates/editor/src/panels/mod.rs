//! Everything around the drawing. Each part reads the document and the desk and asks for actions.

mod arrange;
mod block;
mod checked;
mod costs;
mod face;
mod fill;
mod findings;
mod first_steps;
mod job;
mod penetration;
mod quantities;
mod side;
mod site;
mod status;
mod tools;
mod top_bar;

pub(crate) use arrange::show as arrange;
pub(crate) use costs::Costs;
pub(crate) use findings::Filter;
pub(crate) use first_steps::show as first_steps;
pub(crate) use side::show as side;
pub(crate) use status::show as status;
pub(crate) use tools::show as tools;
pub(crate) use top_bar::show as top_bar;

use crate::theme;
use egui::{Response, RichText, Ui};

/// The heading of a part of a panel.
fn heading(ui: &mut Ui, words: &str) -> Response {
    ui.label(RichText::new(words).heading().strong())
}

/// Words that matter less.
fn quiet(ui: &mut Ui, words: &str) -> Response {
    let color = theme::of(ui).quiet;
    ui.label(RichText::new(words).small().color(color))
}
