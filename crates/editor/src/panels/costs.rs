use super::Panels;
use super::quiet;
use crate::theme::{self, Palette};
use crate::{Document, text};
use chalkcourse_plan::{Plan, StepCost, cost_by_group, cost_by_rows};
use chalkcourse_telling::order::show_round_sum;
use egui::{Align2, CollapsingHeader, RichText, Ui, WidgetInfo};
use egui_plot::{Bar, BarChart, GridInput, GridMark, Plot, PlotPoint, Text};
use std::sync::Arc;

/// Totals by number of modules, cached per plan.
#[derive(Debug)]
pub(crate) struct Costs {
    plan: Arc<Plan>,
    steps: Vec<StepCost>,
}

/// A bar: its name, and its amount as a number and as text.
struct Amount {
    name: String,
    amount: f64,
    shown: String,
}

/// Cost charts: by group, by stage of work, and as the array grows.
pub(super) fn cost_charts(ui: &mut Ui, document: &Document, own: &mut Panels) {
    let takeoff = &document.plan().takeoff;
    if takeoff.lines.iter().all(|line| line.cost.is_none()) {
        return;
    }
    let currency = takeoff.currency.as_str();
    CollapsingHeader::new(text::COSTS.now()).show(ui, |ui| {
        let p = theme::of(ui);
        quiet(ui, text::COSTS_WHY.now());
        let groups = cost_by_group(takeoff);
        ui.label(RichText::new(text::COSTS_BY_GROUP.now()).strong());
        let bars = groups.iter().map(|group| Amount {
            name: group.group.name().into(),
            amount: amount(&group.cost),
            shown: show_round_sum(group.cost, ""),
        });
        chart(ui, "groups", text::CHART_GROUPS.now(), &bars.collect::<Vec<_>>(), p);
        for group in &groups {
            quiet(ui, &text::group_cost(group, currency));
        }
        ui.add_space(theme::GAP * 2.0);
        ui.label(RichText::new(text::COSTS_BY_STAGE.now()).strong());
        let bars = takeoff.cost_by_stage().into_iter().map(|(stage, cost)| Amount {
            name: stage.name().into(),
            amount: amount(&cost),
            shown: show_round_sum(cost, ""),
        });
        chart(ui, "stages", text::CHART_STAGES.now(), &bars.collect::<Vec<_>>(), p);
        ui.add_space(theme::GAP * 2.0);
        ui.label(RichText::new(text::COSTS_BY_ROWS.now()).strong());
        let steps = steps(document, own);
        let bars = steps.iter().map(|step| Amount {
            name: text::modules(step.modules),
            amount: amount(&step.cost),
            shown: show_round_sum(step.cost, ""),
        });
        chart(ui, "rows", text::CHART_ROWS.now(), &bars.collect::<Vec<_>>(), p);
        for step in steps {
            quiet(ui, &text::step_cost(step, currency));
        }
    });
}

/// During a drag the last totals are kept: each of them needs an order.
fn steps<'a>(document: &Document, own: &'a mut Panels) -> &'a [StepCost] {
    let plan = document.plan();
    let moving = document.history().in_gesture();
    let kept = own.costs.take().filter(|costs| moving || Arc::ptr_eq(&costs.plan, plan));
    let costs = own.costs.insert(
        kept.unwrap_or_else(|| Costs { plan: Arc::clone(plan), steps: cost_by_rows(document.job(), plan) }),
    );
    &costs.steps
}

/// Money as the length of a bar.
fn amount(cost: &impl ToString) -> f64 {
    cost.to_string().parse().unwrap_or(0.0)
}

/// Horizontal bars from the top down, each with its name before it and its amount after it.
fn chart(ui: &mut Ui, id: &str, words: &str, bars: &[Amount], p: &Palette) {
    let most = bars.iter().map(|bar| bar.amount).fold(0.0, f64::max);
    if most <= 0.0 {
        return;
    }
    let count = bars.len();
    let names: Vec<String> = bars.iter().map(|bar| bar.name.clone()).collect();
    let place = |index: usize| -(index as f64);
    let name_of = move |mark: GridMark| {
        let at = -mark.value.round();
        if (mark.value + at).abs() > 0.01 || at < 0.0 {
            return String::new();
        }
        names.get(at as usize).cloned().unwrap_or_default()
    };
    let marks = move |_: GridInput| {
        (0..count).map(|index| GridMark { value: place(index), step_size: 1.0 }).collect::<Vec<_>>()
    };
    let plot = Plot::new(("cost chart", id))
        .height(26.0 * count as f32 + 12.0)
        .width(ui.available_width())
        .show_axes([false, true])
        .show_grid(false)
        .show_background(false)
        .allow_drag(false)
        .allow_zoom(false)
        .allow_scroll(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .show_x(false)
        .show_y(false)
        .sense(egui::Sense::hover())
        .label_formatter(|_| None)
        .y_axis_min_width(62.0)
        .y_grid_spacer(marks)
        .y_axis_formatter(move |mark, _| name_of(mark))
        // Space for the amount after the longest bar.
        .default_x_bounds(0.0, most * 1.35)
        .default_y_bounds(place(count.saturating_sub(1)) - 0.6, 0.6);
    let shown = plot.show(ui, |plot| {
        let lengths = bars
            .iter()
            .enumerate()
            .map(|(index, bar)| {
                Bar::new(place(index), bar.amount).width(0.62).fill(p.accent_ground).stroke((1.0, p.accent))
            })
            .collect();
        plot.bar_chart(BarChart::new(words, lengths).horizontal().allow_hover(false));
        for (index, bar) in bars.iter().enumerate() {
            let at = PlotPoint::new(bar.amount + most * 0.02, place(index));
            let amount = RichText::new(&bar.shown).size(theme::size::SMALL).color(p.text);
            plot.text(
                Text::new(bar.name.as_str(), at, amount).anchor(Align2::LEFT_CENTER).allow_hover(false),
            );
        }
    });
    let told: Vec<String> = bars.iter().map(|bar| format!("{} {}", bar.name, bar.shown)).collect();
    let told = format!("{words}: {}", told.join(", "));
    shown.response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &told));
}
