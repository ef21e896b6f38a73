//! The editable cells of a line: packages, price, waste.

use super::{change, change_prices, parse_packages, set_packages};
use crate::action::Actions;
use crate::widgets::fields;
use crate::{text, theme};
use chalkcourse_job::{OwnWaste, Price, Resolved, amount_from_text};
use chalkcourse_takeoff::{Line, LineState};
use egui::{Align, Ui};
use rust_decimal::Decimal;

/// Manual changes are shown in the accent colour, with the original value in the tooltip.
fn changed<R>(ui: &mut Ui, is: bool, add: impl FnOnce(&mut Ui) -> R) -> R {
    if is {
        let accent = theme::of(ui).accent;
        ui.visuals_mut().override_text_color = Some(accent);
    }
    add(ui)
}

pub(super) fn packages(ui: &mut Ui, job: &Resolved, line: &Line, actions: &mut Actions) {
    let label = text::packages_of(&line.number);
    let by_hand = matches!(line.state, LineState::Overridden { .. });
    let help = match by_hand {
        true => text::packages_counted(line.counted),
        false => text::PACKAGES_HELP.now().to_owned(),
    };
    let shown = line.packages.to_string();
    let typed = changed(ui, by_hand, |ui| {
        fields::cell(ui, &label.now(), &shown, &help, Align::RIGHT, |typed| {
            // Emptying the cell restores the count.
            if typed.trim().is_empty() { Ok(None) } else { parse_packages(typed).map(Some) }
        })
    });
    if let Some(typed) = typed {
        set_packages(actions, job, line, typed);
    }
}

/// `before` is the price before a manual change, if there was one; its inner `None` means no price.
pub(super) fn price(
    ui: &mut Ui,
    job: &Resolved,
    line: &Line,
    before: Option<Option<Decimal>>,
    actions: &mut Actions,
) {
    // With all its decimals: a nail may cost less than a cent.
    let shown =
        line.price.map(|price| format!("{price:.*}", price.scale().max(2) as usize)).unwrap_or_default();
    let label = text::price_of(&line.number);
    let alternate = line.alternate.as_ref().map(|(number, _)| number.clone());
    let parse = |typed: &str| match parse_price(typed) {
        // A list can't have an alternate without a price.
        Ok(None) if alternate.is_some() => Err(text::BAD_PRICE.now().to_owned()),
        done => done,
    };
    let help = match before {
        Some(before) => text::price_was(before),
        None => text::PRICE_HELP.now().to_owned(),
    };
    let typed = changed(ui, before.is_some(), |ui| {
        fields::cell(ui, &label.now(), &shown, &help, Align::RIGHT, parse)
    });
    let Some(typed) = typed else { return };
    let number = line.number.clone();
    if job.order.added.iter().any(|own| own.number == number) {
        change(actions, job, label, |order| {
            for own in order.added.iter_mut().filter(|own| own.number == number) {
                own.price = typed;
            }
        });
        return;
    }
    change_prices(actions, job, label, |list| {
        let Some(typed) = typed else {
            list.prices.remove(&number);
            return;
        };
        let price = list.prices.entry(number).or_insert_with(|| Price::of(typed));
        match price.alternates.iter_mut().find(|other| Some(&other.number) == alternate.as_ref()) {
            Some(other) => other.package = typed,
            None => price.package = typed,
        }
    });
}

/// The share of waste, in percent: the office's own in the accent colour, otherwise the kit's, which is restored by
/// emptying the cell.
pub(super) fn waste(ui: &mut Ui, job: &Resolved, line: &Line, actions: &mut Actions) {
    let number = line.number.as_str();
    if job.order.added.iter().any(|own| own.number == number) {
        return;
    }
    let own = job.order.waste.contains_key(number);
    let shown = percent(line.waste);
    let typed = changed(ui, own, |ui| {
        let label = text::waste_of(number);
        fields::cell(ui, &label.now(), &shown, text::OWN_WASTE_HELP.now(), Align::RIGHT, parse_waste)
    });
    if let Some(typed) = typed {
        set_waste(actions, job, number, typed);
    }
}

/// A share as a percentage with all its decimals.
pub(super) fn percent(share: f64) -> String {
    ((share * 1e6).round() / 1e4).to_string()
}

/// Parses a share of waste in percent; `None` if the field is empty.
pub(super) fn parse_waste(typed: &str) -> Result<Option<f64>, &'static str> {
    match typed.trim().trim_end_matches('%').trim() {
        "" => Ok(None),
        typed => match typed.parse::<f64>() {
            Ok(percent) if (0.0..=100.0).contains(&percent) => Ok(Some(percent / 100.0)),
            _ => Err(text::BAD_WASTE.now()),
        },
    }
}

/// Sets the office's own waste of a part, or restores the kit's.
pub(super) fn set_waste(actions: &mut Actions, job: &Resolved, number: &str, typed: Option<f64>) {
    change(actions, job, text::waste_of(number), |order| match typed {
        Some(share) => {
            let why = order.waste.get(number).map_or_else(String::new, |old| old.why.clone());
            order.waste.insert(number.to_owned(), OwnWaste { share, why });
        }
        None => drop(order.waste.remove(number)),
    });
}

/// Parses a price; `None` if the cell is empty.
pub(super) fn parse_price(typed: &str) -> Result<Option<Decimal>, String> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    match amount_from_text(typed)? {
        price if price.is_sign_negative() => Err(text::BAD_PRICE.now().to_owned()),
        price => Ok(Some(price)),
    }
}
