//! Everything around the drawing. Each part reads the document and the desk and asks for actions.

mod arrange;
mod block;
mod checked;
mod costs;
mod deck;
mod face;
mod fill;
mod findings;
mod first_steps;
mod group;
mod job;
mod lesson;
mod part;
mod penetration;
mod picture;
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
pub(crate) use lesson::show as lesson;
pub(crate) use side::show as side;
pub(crate) use status::show as status;
pub(crate) use tools::show as tools;
pub(crate) use top_bar::show as top_bar;

use crate::theme;
use egui::{Response, RichText, Sense, Ui};

/// The heading of a part of a panel.
fn heading(ui: &mut Ui, words: &str) -> Response {
    ui.label(RichText::new(words).heading().strong())
}

/// Words that matter less.
pub(crate) fn quiet(ui: &mut Ui, words: &str) -> Response {
    let color = theme::of(ui).quiet;
    ui.label(RichText::new(words).small().color(color))
}

/// Dots that go round, a step each eighth of a second: a spinner that moves in every frame would have a large roof painted
/// sixty times a second, and the fill would wait for it.
fn turning(ui: &mut Ui) {
    let (rect, _) = ui.allocate_exact_size(egui::Vec2::splat(20.0), Sense::hover());
    let p = theme::of(ui);
    let now = (ui.input(|input| input.time) * 8.0) as usize % 8;
    for dot in 0..8 {
        let way = egui::Vec2::angled(std::f32::consts::TAU * dot as f32 / 8.0);
        let (radius, color) = if dot == now { (2.6, p.accent) } else { (1.6, p.quiet) };
        ui.painter().circle_filled(rect.center() + way * 7.5, radius, color);
    }
    ui.ctx().request_repaint_after(std::time::Duration::from_millis(125));
}
