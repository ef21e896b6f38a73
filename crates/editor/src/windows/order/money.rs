//! Settings beside the lines: extent of the roof work, waste, options, tax, delivery, overhead, profit, stock.

use super::cells::parse_price;
use super::{change, change_prices};
use crate::action::Actions;
use crate::commands::Command;
use crate::widgets::{fields, quiet};
use crate::{text, theme};
use chalkcourse_job::{Holds, Leftover, Profit, Resolved, RoofKind, RoofScope, WasteAs};
use chalkcourse_words::of_data;
use egui::{Align, RichText, ScrollArea, Ui};
use rust_decimal::Decimal;

/// Width of the label of a field.
const WORDS: f32 = 170.0;
const WIDE: f32 = 420.0;

pub(super) fn money_tab(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        ui.set_max_width(WIDE);
        roof(ui, job, actions);
        ui.add_space(theme::GAP * 3.0);
        choices(ui, job, actions);
        ui.add_space(theme::GAP * 3.0);
        prices(ui, job, actions);
        ui.add_space(theme::GAP * 3.0);
        pricing(ui, job, actions);
        ui.add_space(theme::GAP * 3.0);
        stock(ui, job, actions);
    });
}

fn roof(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    ui.strong(text::ROOF_WORK.now());
    let work = &job.order.roof;
    let scopes = [
        (0, RoofScope::Whole, text::SCOPE_WHOLE.now()),
        (1, RoofScope::ArrayFaces, text::SCOPE_ARRAY_FACES.now()),
        (2, RoofScope::ArrayOnly, text::SCOPE_ARRAY_ONLY.now()),
    ];
    let now = scopes.iter().find(|(_, scope, _)| *scope == work.scope).map_or(3, |(at, ..)| *at);
    let mut choices: Vec<(usize, &str)> = scopes.iter().map(|(at, _, name)| (*at, *name)).collect();
    if now == 3 {
        choices.push((3, text::SCOPE_FACES.now()));
    }
    if let Some(chosen) = fields::choice_at(ui, WORDS, text::COVERED_ANEW.now(), now, &choices)
        && let Some((_, scope, _)) = scopes.into_iter().find(|(at, ..)| *at == chosen)
    {
        change(actions, job, text::COVERED_ANEW, |order| order.roof.scope = scope);
    }
    let layers = fields::parsed_at(ui, WORDS, text::LAYERS.now(), &work.layers.to_string(), "", |typed| {
        typed.trim().parse::<u32>().ok().filter(|layers| *layers <= 5).ok_or(text::BAD_LAYERS.now())
    });
    if let Some(layers) = layers {
        change(actions, job, text::LAYERS, |order| order.roof.layers = layers);
    }
    let ways = [
        (WasteAs::AsDrawn, text::WASTE_AS_DRAWN.now()),
        (WasteAs::Gable, RoofKind::Gable.name().now()),
        (WasteAs::Hip, RoofKind::Hip.name().now()),
        (WasteAs::CutUp, RoofKind::CutUp.name().now()),
    ];
    if let Some(way) = fields::choice_at(ui, WORDS, text::WASTE_AS.now(), job.order.waste_as, &ways) {
        change(actions, job, text::WASTE_AS, |order| order.waste_as = way);
    }
}

/// The kit's options for an order.
fn choices(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    if job.kit.choices.is_empty() {
        return;
    }
    ui.strong(text::WITH_ORDER.now());
    for choice in &job.kit.choices {
        let (name, why) = (of_data(&choice.name), of_data(&choice.why));
        let taken = job.order.taken.contains(&choice.code);
        ui.horizontal(|ui| {
            if fields::tick(ui, taken, true, &name, &why) {
                change(actions, job, name.clone(), |order| {
                    if !order.taken.remove(&choice.code) {
                        order.taken.insert(choice.code.clone());
                    }
                });
            }
            ui.label(&name).on_hover_text(&why);
        });
    }
}

fn prices(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    let list = &job.prices;
    ui.horizontal(|ui| {
        ui.strong(text::PRICE_LIST.now());
        if ui.small_button(text::LOAD.now()).clicked() {
            actions.push(Command::LoadPrices.action());
        }
    });
    quiet(ui, &text::list_words(list));
    let shown = |amount: Option<Decimal>| amount.map(|amount| amount.to_string()).unwrap_or_default();
    let tax = shown(list.tax_percent);
    if let Some(tax) =
        fields::parsed_at(ui, WORDS, text::TAX_PERCENT.now(), &tax, text::UNKNOWN_HELP.now(), parse_price)
    {
        change_prices(actions, job, text::TAX_PERCENT, |list| list.tax_percent = tax);
    }
    let delivery = shown(list.delivery);
    if let Some(delivery) =
        fields::parsed_at(ui, WORDS, text::DELIVERY.now(), &delivery, text::UNKNOWN_HELP.now(), parse_price)
    {
        change_prices(actions, job, text::DELIVERY, |list| list.delivery = delivery);
    }
}

fn pricing(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    ui.strong(text::ON_TOP.now());
    let pricing = &job.order.pricing;
    let percent = |typed: &str| parse_price(typed).map(Option::unwrap_or_default);
    let overhead = pricing.overhead_percent.to_string();
    if let Some(share) = fields::parsed_at(ui, WORDS, text::OVERHEAD.now(), &overhead, "", percent) {
        change(actions, job, text::OVERHEAD, |order| order.pricing.overhead_percent = share);
    }
    let (kind, share) = match pricing.profit {
        Profit::None => (0, Decimal::ZERO),
        Profit::Markup { percent } => (1, percent),
        Profit::Margin { percent } => (2, percent),
    };
    let profit = |kind: usize, percent: Decimal| match kind {
        0 => Profit::None,
        1 => Profit::Markup { percent },
        _ => Profit::Margin { percent },
    };
    let kinds =
        [(0, text::PROFIT_NONE.now()), (1, text::PROFIT_MARKUP.now()), (2, text::PROFIT_MARGIN.now())];
    if let Some(kind) = fields::choice_at(ui, WORDS, text::PROFIT.now(), kind, &kinds) {
        change(actions, job, text::PROFIT, |order| {
            order.pricing.profit = profit(kind, share);
        });
    }
    if kind > 0
        && let Some(share) =
            fields::parsed_at(ui, WORDS, text::PROFIT_PERCENT.now(), &share.to_string(), "", percent)
    {
        change(actions, job, text::PROFIT, |order| {
            order.pricing.profit = profit(kind, share);
        });
    }
}

fn stock(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    ui.horizontal(|ui| {
        ui.strong(text::STOCK.now());
        if ui.small_button(text::LOAD.now()).on_hover_text(text::STOCK_HELP.now()).clicked() {
            actions.push(Command::LoadStock.action());
        }
    });
    if job.order.stock.is_empty() {
        quiet(ui, text::STOCK_EMPTY.now());
    }
    for (at, left) in job.order.stock.iter().enumerate() {
        ui.push_id(at, |ui| leftover(ui, job, at, left, actions));
    }
    if ui.button(text::ADD_STOCK.now()).clicked()
        && let Some(part) = job.kit.parts.first()
    {
        let number = part.number.clone();
        change(actions, job, text::ADD_STOCK, |order| {
            order.stock.push(Leftover { number, amount: Holds::Pieces(0.0), note: String::new() });
        });
    }
}

/// A leftover: its part, how much, and where it is stored. Amounts are written as in a warehouse list.
fn leftover(ui: &mut Ui, job: &Resolved, at: usize, left: &Leftover, actions: &mut Actions) {
    let nth = at + 1;
    let known = |typed: &str| match job.kit.parts.iter().find(|part| part.number == typed.trim()) {
        Some(part) => Ok(part.number.clone()),
        None => Err(text::no_such_part(typed)),
    };
    let words = |typed: &str| Ok::<_, String>(typed.trim().to_owned());
    let mut changed = left.clone();
    let mut removed = false;
    ui.horizontal(|ui| {
        let narrow = |ui: &mut Ui, width: f32, add: &mut dyn FnMut(&mut Ui)| {
            ui.allocate_ui(egui::vec2(width, theme::PRESS), add);
        };
        narrow(ui, 96.0, &mut |ui| {
            if let Some(number) =
                fields::cell(ui, &text::stock_part(nth), &left.number, "", Align::LEFT, known)
            {
                changed.number = number;
            }
        });
        narrow(ui, 96.0, &mut |ui| {
            let (shown, help) = (left.amount.show(job.units), text::STOCK_AMOUNT_HELP.now());
            if let Some(amount) =
                fields::cell(ui, &text::stock_amount(nth), &shown, help, Align::RIGHT, Holds::parse_cell)
            {
                changed.amount = amount;
            }
        });
        narrow(ui, 130.0, &mut |ui| {
            if let Some(note) = fields::cell(
                ui,
                &text::stock_note(nth),
                &left.note,
                text::STOCK_NOTE.now(),
                Align::LEFT,
                words,
            ) {
                changed.note = note;
            }
        });
        removed = ui.small_button(text::REMOVE.now()).clicked();
    });
    if removed || changed != *left {
        change(actions, job, text::STOCK, |order| {
            if removed {
                order.stock.remove(at);
            } else if let Some(left) = order.stock.get_mut(at) {
                *left = changed;
            }
        });
    }
    let name = job.kit.parts.iter().find(|part| part.number == left.number).map(|part| part.name.as_str());
    ui.label(RichText::new(name.unwrap_or_default()).small().color(theme::of(ui).quiet));
}
