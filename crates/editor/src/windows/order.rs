//! The order pane: its lines, the money, deliveries, and comparison with others.

mod by_hand;
mod cells;
mod changes;
mod compare;
mod delivery;
mod detail;
mod lines;
mod money;
mod rows;
mod table;
mod totals;
mod walk;
mod widths;

use super::Windows;
use crate::action::{Action, Actions};
use crate::state::State;
use crate::{Document, text, theme};
use chalkcourse_job::{AddedLine, Edit, Group, OrderChoices, Override, PriceList, Resolved, Stage};
use chalkcourse_takeoff::{Line, Takeoff};
use chalkcourse_words::Said;
use egui::Ui;
use std::sync::Arc;

use changes::Since;
pub(crate) use compare::OtherOrder;
use rows::{Shown, SortBy};

/// State of the pane that is not part of the job; not saved.
#[derive(Debug, Default)]
pub(crate) struct OrderWindow {
    pub(crate) part: OrderPart,
    /// The line under the pointer: its places are highlighted on the roof.
    pub(crate) pointed: Option<String>,
    /// The line selected by keyboard.
    at: Option<String>,
    /// Whether keys were used since the pointer last moved: then the line under it does not count.
    walked: bool,
    /// The line that was open in the previous frame.
    was_open: Option<String>,
    /// Scroll offset of the lines, points.
    scrolled: f32,
    /// Since when changes are counted.
    since: Since,
    /// The search text.
    find: String,
    shown: Shown,
    sorted: SortBy,
    /// Whether sorting is descending.
    down: bool,
    /// The order to compare with.
    pub(crate) other: Option<OtherOrder>,
    /// Price lists of other suppliers.
    pub(crate) offers: Vec<Arc<PriceList>>,
}

/// A part of the pane.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum OrderPart {
    #[default]
    Lines,
    Money,
    Delivery,
    Compare,
}

/// Shows the pane.
pub(super) fn order_pane(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let before = windows.order.pointed.take();
    head(ui, document, state, windows, actions);
    ui.separator();
    match windows.order.part {
        OrderPart::Lines => lines::lines_tab(ui, document, state, windows, actions),
        OrderPart::Money => money::money_tab(ui, document.job(), actions),
        OrderPart::Delivery => delivery::delivery_tab(ui, document, actions),
        OrderPart::Compare => compare::compare_tab(ui, document, windows, actions),
    }
    if windows.order.pointed != before {
        // The drawing was painted before this pane.
        ui.ctx().request_repaint();
    }
}

/// The parts of the pane, and on the right the total with its omissions.
fn head(ui: &mut Ui, document: &Document, state: &State, windows: &mut Windows, actions: &mut Actions) {
    let takeoff = &document.plan().takeoff;
    ui.horizontal_wrapped(|ui| {
        for (part, name) in [
            (OrderPart::Lines, text::ORDER_LINES.now()),
            (OrderPart::Money, text::ORDER_MONEY.now()),
            (OrderPart::Delivery, text::ORDER_DELIVERY.now()),
            (OrderPart::Compare, text::ORDER_COMPARE.now()),
        ] {
            let now = &mut windows.order.part;
            if ui.selectable_label(*now == part, name).clicked() {
                *now = part;
            }
        }
        // On the right if it fits beside the parts, otherwise in a separate row.
        let wide = wide_as_button(ui, &text::order_total(takeoff))
            + match takeoff.unpriced.len() {
                0 => 0.0,
                many => wide_as_button(ui, &text::many_unpriced(many)),
            };
        let mut add = |ui: &mut Ui| total(ui, takeoff, state, windows, actions);
        if ui.available_size_before_wrap().x >= wide {
            right(ui, add);
        } else {
            add(ui);
        }
    });
}

/// Width of a text as a button, points.
fn wide_as_button(ui: &Ui, words: &str) -> f32 {
    let font = egui::TextStyle::Button.resolve(ui.style());
    let wide = ui.painter().layout_no_wrap(words.to_owned(), font, egui::Color32::WHITE).size().x;
    wide + 2.0 * ui.spacing().button_padding.x + ui.spacing().item_spacing.x
}

/// The total, which can be expanded, and what has no price.
fn total(ui: &mut Ui, takeoff: &Takeoff, state: &State, windows: &mut Windows, actions: &mut Actions) {
    let total = egui::RichText::new(text::order_total(takeoff)).strong();
    let shown = state.order_table.totals && windows.order.part == OrderPart::Lines;
    if ui.selectable_label(shown, total).on_hover_text(text::TOTALS_SHOWN.now()).clicked() {
        windows.order.part = OrderPart::Lines;
        let mut next = state.order_table.clone();
        next.totals = !shown;
        actions.push(Action::OrderTable(next));
    }
    if !takeoff.unpriced.is_empty() {
        let words = egui::RichText::new(text::many_unpriced(takeoff.unpriced.len()));
        let missing = egui::Button::new(words.color(theme::of(ui).caution)).frame(false);
        if ui.add(missing).on_hover_text(text::unpriced(&takeoff.unpriced)).clicked() {
            (windows.order.part, windows.order.shown) = (OrderPart::Lines, Shown::Unpriced);
        }
    }
}

impl OrderWindow {
    /// The order is not shown in this frame: changes from now on are reported when it is shown again.
    pub(crate) fn look_away(&mut self) {
        self.pointed = None;
        self.since.look_away();
    }
}

/// A step that changes decisions about the order.
fn change(
    actions: &mut Actions,
    job: &Resolved,
    label: impl Into<Said>,
    how: impl FnOnce(&mut OrderChoices),
) {
    actions.push(Action::Edit(label.into(), Edit::order(job, how)));
}

/// A step that changes the job's own copy of the price list. An implausible price is reported, and changes nothing.
fn change_prices(
    actions: &mut Actions,
    job: &Resolved,
    label: impl Into<Said>,
    how: impl FnOnce(&mut PriceList),
) {
    let mut prices = (*job.prices).clone();
    how(&mut prices);
    if !prices.name.ends_with(text::CHANGED_PRICES.now()) {
        prices.name.push_str(text::CHANGED_PRICES.now());
    }
    match prices.check() {
        Ok(()) => actions.push(Action::Edit(label.into(), Edit::SetPrices(Arc::new(prices)))),
        Err(words) => actions.push(Action::Say(words.into())),
    }
}

/// A user-defined line with an unused number.
fn new_line(job: &Resolved) -> AddedLine {
    let taken = |number: &str| {
        job.kit.parts.iter().any(|part| part.number == number)
            || job.order.added.iter().any(|line| line.number == number)
    };
    let number = (1..).map(|n| format!("X-{n}")).find(|number| !taken(number)).unwrap_or_default();
    AddedLine {
        number,
        name: text::NEW_LINE.now().to_owned(),
        group: Group::Roofing,
        stage: Stage::Shingles,
        package: text::PIECE.now().to_owned(),
        packages: 1,
        price: None,
        why: String::new(),
    }
}

/// Parses a whole number of packages.
fn parse_packages(typed: &str) -> Result<u64, String> {
    typed.trim().parse().map_err(|_| text::BAD_PACKAGES.now().to_owned())
}

/// Right-aligned: numbers and their headings.
fn right<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) {
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), add);
}

/// Sets the number of packages; `None` restores the count.
fn set_packages(actions: &mut Actions, job: &Resolved, line: &Line, typed: Option<u64>) {
    let number = line.number.clone();
    change(actions, job, text::packages_of(&line.number), |order| {
        if let Some(own) = order.added.iter_mut().find(|own| own.number == number) {
            own.packages = typed.unwrap_or(own.packages);
            return;
        }
        match typed.filter(|packages| *packages != line.counted) {
            Some(packages) => {
                let why = order.overrides.get(&number).map_or_else(String::new, |old| old.why.clone());
                order.overrides.insert(number, Override { packages, why });
            }
            None => {
                order.overrides.remove(&number);
            }
        }
    });
}
