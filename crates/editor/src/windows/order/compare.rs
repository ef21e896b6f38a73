//! Comparing the order with another job's, and with the prices of other suppliers.

use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::widgets::quiet;
use crate::windows::Windows;
use crate::{Document, text, theme};
use chalkcourse_job::{Edit, PriceList};
use chalkcourse_takeoff::{Change, Takeoff, compare, compare_prices};
use chalkcourse_telling::order::{show_money, show_sum_more};
use egui::{RichText, ScrollArea, Ui};
use std::sync::Arc;

/// The order of another job, or an earlier one of this job.
#[derive(Debug)]
pub(crate) struct OtherOrder {
    /// Its display name.
    pub(crate) name: String,
    pub(crate) takeoff: Takeoff,
}

pub(super) fn compare_tab(ui: &mut Ui, document: &Document, windows: &mut Windows, actions: &mut Actions) {
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        orders(ui, document, windows, actions);
        ui.add_space(theme::GAP * 4.0);
        suppliers(ui, document, windows, actions);
    });
}

fn orders(ui: &mut Ui, document: &Document, windows: &mut Windows, actions: &mut Actions) {
    let (job, takeoff) = (document.job(), &document.plan().takeoff);
    ui.strong(text::COMPARE_ORDERS.now());
    ui.horizontal_wrapped(|ui| {
        if ui.button(text::KEEP_THIS.now()).on_hover_text(text::KEEP_THIS_HELP.now()).clicked() {
            let name = text::as_it_was(&job.name);
            windows.order.other = Some(OtherOrder { name, takeoff: takeoff.clone() });
        }
        if ui.button(text::COMPARE_JOB.now()).clicked() {
            actions.push(Command::CompareJob.action());
        }
    });
    let Some(other) = &windows.order.other else {
        quiet(ui, text::COMPARE_ORDERS_WHY.now());
        return;
    };
    let found = compare(&other.takeoff, takeoff);
    ui.label(text::compared_with(&other.name));
    if found.is_empty() {
        ui.label(text::ORDERS_ALIKE.now());
        return;
    }
    match &found.money_apart {
        Some(why) => ui.label(RichText::new(why.now()).color(theme::of(ui).caution)),
        None => ui.strong(text::total_moved(&found)),
    };
    egui::Grid::new("compared orders").num_columns(5).striped(true).spacing([16.0, 4.0]).show(ui, |ui| {
        for head in [
            text::COLUMN_NUMBER.now(),
            text::COLUMN_WHAT.now(),
            text::COLUMN_NEED.now(),
            text::COLUMN_ORDER.now(),
            text::COLUMN_COST.now(),
        ] {
            ui.strong(head);
        }
        ui.end_row();
        for change in &found.changes {
            changed(ui, change, &found.currency);
        }
    });
}

fn changed(ui: &mut Ui, change: &Change, currency: &str) {
    let p = theme::of(ui);
    ui.label(&change.number);
    ui.label(change.name.now());
    ui.label(text::from_to(&change.need_words[0], &change.need_words[1]));
    ui.label(text::from_to(&change.packages[0].to_string(), &change.packages[1].to_string()));
    let more =
        change.more.map_or_else(|| text::NO_PRICE.now().to_owned(), |more| show_sum_more(more, currency));
    let color = match change.more {
        Some(more) if more.is_sign_negative() => p.note,
        Some(_) => p.text,
        None => p.caution,
    };
    ui.label(RichText::new(more).color(color));
    ui.end_row();
}

fn suppliers(ui: &mut Ui, document: &Document, windows: &mut Windows, actions: &mut Actions) {
    let (job, takeoff) = (document.job(), &document.plan().takeoff);
    ui.strong(text::COMPARE_SUPPLIERS.now());
    ui.horizontal_wrapped(|ui| {
        if ui.button(text::ADD_SUPPLIER.now()).clicked() {
            actions.push(Command::AddOffer.action());
        }
        let some = !windows.order.offers.is_empty();
        if ui.add_enabled(some, egui::Button::new(text::FORGET_SUPPLIERS.now())).clicked() {
            windows.order.offers.clear();
        }
    });
    let offers = &windows.order.offers;
    if offers.is_empty() {
        quiet(ui, text::COMPARE_SUPPLIERS_WHY.now());
        return;
    }
    let mut lists: Vec<&PriceList> = vec![&job.prices];
    lists.extend(offers.iter().map(|list| &**list));
    let found = compare_prices(takeoff, &lists);
    let p = theme::of(ui);
    if let Some(why) = &found.money_apart {
        ui.label(RichText::new(why.now()).color(p.caution));
    }
    for (offer, list) in found.offers.iter().zip(std::iter::once(None).chain(offers.iter().map(Some))) {
        ui.horizontal(|ui| {
            ui.label(RichText::new(text::offer_words(offer)).strong());
            // The first is the job's own.
            if let Some(list) = list
                && ui.small_button(text::TAKE_LIST.now()).on_hover_text(text::TAKE_LIST_HELP.now()).clicked()
            {
                let taken = Edit::SetPrices(Arc::clone(list));
                actions.push(Action::Edit(text::TAKE_LIST.into(), taken));
            }
        });
        quiet(ui, &text::offer_sums(offer));
        if !offer.missing.is_empty() {
            let words = text::unpriced(&offer.missing);
            ui.label(RichText::new(words).small().color(p.caution));
        }
    }
    ui.label(text::cheapest_words(&found));
    egui::Grid::new("suppliers").num_columns(2 + lists.len()).striped(true).spacing([16.0, 4.0]).show(
        ui,
        |ui| {
            ui.strong(text::COLUMN_NUMBER.now());
            ui.strong(text::COLUMN_WHAT.now());
            for list in &lists {
                ui.strong(&list.name);
            }
            ui.end_row();
            for row in &found.rows {
                ui.label(&row.number);
                ui.label(row.name.now());
                for (at, cost) in row.costs.iter().enumerate() {
                    let words = match cost {
                        Some(cost) if row.cheapest == Some(at) => {
                            RichText::new(text::cheapest(*cost)).strong()
                        }
                        Some(cost) => RichText::new(show_money(*cost)),
                        None => RichText::new(text::NO_PRICE.now()).color(p.caution),
                    };
                    ui.label(words);
                }
                ui.end_row();
            }
        },
    );
}
