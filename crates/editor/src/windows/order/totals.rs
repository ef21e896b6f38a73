//! How the total is made up: materials and labour down to the price, by stage of work, by group, and what has no price.

use super::right;
use crate::{text, theme};
use chalkcourse_takeoff::Takeoff;
use chalkcourse_telling::order::money_rows;
use egui::{RichText, ScrollArea, Ui};
use rust_decimal::Decimal;

/// Its height, points.
const HIGH: f32 = 210.0;
/// Width of a column, points.
const WIDE: f32 = 200.0;

pub(super) fn totals(ui: &mut Ui, takeoff: &Takeoff) {
    let high = HIGH.min(ui.available_height() * 0.5);
    ScrollArea::both().id_salt("totals").max_height(high).auto_shrink([false, true]).show(ui, |ui| {
        ui.horizontal_top(|ui| {
            let rows = money_rows(takeoff).map(|(what, amount)| (what.to_string(), amount));
            let total = (text::total(takeoff), Some(takeoff.totals.total));
            sums(ui, text::MATERIALS_AND_WORK.now(), rows.into_iter().chain([total]));
            let stages = takeoff.cost_by_stage().into_iter();
            let stages = stages.map(|(stage, cost)| (stage.name().to_string(), Some(cost)));
            sums(ui, text::SHOWN_BY_STAGE.now(), stages);
            let groups = takeoff.cost_by_group().into_iter();
            let groups = groups.map(|(group, cost)| (group.name().to_string(), Some(cost)));
            sums(ui, text::SHOWN_BY_GROUP.now(), groups);
        });
        if !takeoff.unpriced.is_empty() {
            ui.label(RichText::new(text::unpriced(&takeoff.unpriced)).small().color(theme::of(ui).caution));
        }
    });
    ui.separator();
}

fn sums(ui: &mut Ui, title: &str, rows: impl Iterator<Item = (String, Option<Decimal>)>) {
    ui.vertical(|ui| {
        ui.set_width(WIDE);
        ui.spacing_mut().item_spacing.y = 2.0;
        ui.strong(title);
        for (what, amount) in rows {
            ui.horizontal(|ui| {
                ui.label(what);
                right(ui, |ui| ui.label(text::money(amount)));
            });
        }
    });
    ui.add_space(theme::GAP * 3.0);
}
