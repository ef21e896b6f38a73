use super::Panels;
use super::{costs, quiet};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{Pointed, State};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::Units;
use chalkcourse_job::Group;
use chalkcourse_takeoff::{Line, Spot, show_amount};
use chalkcourse_telling::order::{money_rows, packages_words, show_money};
use egui::{Align, Layout, RichText, Sense, Ui, Vec2, WidgetInfo};

/// What to order, by group. A row highlights where its parts go; a click expands how the count is made up.
pub(super) fn quantities_list(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    actions: &mut Actions,
) {
    let takeoff = &document.plan().takeoff;
    if takeoff.lines.is_empty() {
        quiet(ui, text::NO_QUANTITIES.now());
        return;
    }
    if ui.button(text::OPEN_ORDER.now()).on_hover_text(text::ORDER_HELP.now()).clicked() {
        actions.push(Command::Order.action());
    }
    let units = document.job().units;
    ui.spacing_mut().item_spacing.y = 2.0;
    for group in Group::ALL {
        let mut lines = takeoff.lines.iter().filter(|line| line.group == group).peekable();
        if lines.peek().is_none() {
            continue;
        }
        ui.add_space(theme::GAP);
        ui.label(RichText::new(group.name()).strong());
        for line in lines {
            let before = document.plan_before().map(|plan| change(&plan.takeoff.lines, line));
            row(ui, state, line, before.unwrap_or_default(), units, actions);
            if state.opened_line.as_deref() == Some(line.number.as_str()) {
                terms(ui, line, units, actions);
            }
        }
    }
    for gone in gone(document) {
        quiet(
            ui,
            &text::line_gone(&gone.number, &gone.name.now(), &show_amount(gone.need, gone.unit, units)),
        );
    }
    ui.add_space(theme::GAP * 2.0);
    egui::Grid::new("totals").num_columns(2).show(ui, |ui| {
        let mut step = |what: RichText, amount: RichText| {
            ui.label(what);
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| ui.label(amount));
            ui.end_row();
        };
        for (what, amount) in money_rows(takeoff) {
            step(RichText::new(what), RichText::new(text::money(amount)));
        }
        step(
            RichText::new(text::total(takeoff)).strong(),
            RichText::new(text::money(Some(takeoff.totals.total))).strong(),
        );
    });
    if !takeoff.unpriced.is_empty() {
        ui.label(RichText::new(text::unpriced(&takeoff.unpriced)).small().color(theme::of(ui).caution));
    }
    costs::cost_charts(ui, document, own);
}

/// Parts that were needed before the drag but no longer.
fn gone(document: &Document) -> Vec<Line> {
    let now = &document.plan().takeoff.lines;
    document.plan_before().map_or_else(Vec::new, |before| {
        before.takeoff.lines.iter().filter(|l| !now.iter().any(|n| n.number == l.number)).cloned().collect()
    })
}

/// The increase of the need.
fn change(before: &[Line], line: &Line) -> f64 {
    line.need - before.iter().find(|l| l.number == line.number).map_or(0.0, |l| l.need)
}

fn row(ui: &mut Ui, state: &State, line: &Line, change: f64, units: Units, actions: &mut Actions) {
    let p = theme::of(ui);
    let (rect, response) = ui.allocate_exact_size(Vec2::new(ui.available_width(), 40.0), Sense::click());
    let open = state.opened_line.as_deref() == Some(line.number.as_str());
    let amount = show_amount(line.need, line.unit, units);
    let delta = if change.abs() > 1e-6 { text::delta(change, line.unit, units) } else { String::new() };
    response.widget_info(|| {
        WidgetInfo::selected(egui::Role::Button, true, open, text::line_words(line, &amount, &delta, units))
    });
    let lit = comes_from(line, state.hover);
    if response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, 5.0, p.button_hover);
        actions.push(Action::Point(Pointed::Line(line.number.clone())));
    } else if open {
        ui.painter().rect_filled(rect, 5.0, p.button);
    }
    if lit {
        let mark =
            egui::Rect::from_min_size(rect.min + Vec2::new(0.0, 6.0), Vec2::new(3.0, rect.height() - 12.0));
        ui.painter().rect_filled(mark, 1.5, p.light);
    }
    if response.clicked() {
        actions.push(Action::OpenLine((!open).then(|| line.number.clone())));
    }
    let inner = rect.shrink2(Vec2::new(8.0, 3.0));
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    let body = theme::font(theme::size::BODY);
    let small = theme::font(theme::size::SMALL);
    let amount = painter.layout_no_wrap(amount, body.clone(), p.text);
    let amount_left = inner.right() - amount.size().x;
    painter.galley(egui::pos2(amount_left, inner.top()), amount, p.text);
    let mut name_right = amount_left - 10.0;
    if !delta.is_empty() {
        let color = if change > 0.0 { p.accent } else { p.caution };
        let delta = painter.layout_no_wrap(delta, body.clone(), color);
        name_right -= delta.size().x;
        painter.galley(egui::pos2(name_right, inner.top()), delta, color);
        name_right -= 10.0;
    }
    let name = ellipsis(&painter, &line.name.now(), body, p.text, (name_right - inner.left()).max(20.0));
    painter.galley(inner.min, name, p.text);
    let cost = line.cost.map_or_else(|| text::NO_PRICE.now().to_owned(), show_money);
    let color = if line.cost.is_some() { p.quiet } else { p.caution };
    let cost = painter.layout_no_wrap(cost, small.clone(), color);
    let cost_left = inner.right() - cost.size().x;
    painter.galley(egui::pos2(cost_left, inner.bottom() - cost.size().y), cost, color);
    let order = format!("{}  ·  {}", line.number, packages_words(line, units));
    let order = ellipsis(&painter, &order, small, p.quiet, (cost_left - inner.left() - 10.0).max(20.0));
    let at = egui::pos2(inner.left(), inner.bottom() - order.size().y);
    painter.galley(at, order, p.quiet);
}

fn ellipsis(
    painter: &egui::Painter,
    words: &str,
    font: egui::FontId,
    color: egui::Color32,
    width: f32,
) -> std::sync::Arc<egui::Galley> {
    let mut job = egui::text::LayoutJob::simple_singleline(words.to_owned(), font, color);
    job.wrap = egui::text::TextWrapping::truncate_at_width(width);
    painter.layout_job(job)
}

/// The terms of a need.
fn terms(ui: &mut Ui, line: &Line, units: Units, actions: &mut Actions) {
    let p = theme::of(ui);
    egui::Frame::new().inner_margin(egui::Margin { left: 16, right: 4, top: 2, bottom: 6 }).show(ui, |ui| {
        for (index, term) in line.terms.iter().enumerate() {
            let words = text::term_words(term, units);
            let response = ui.add(egui::Label::new(RichText::new(words).small()).sense(Sense::hover()));
            if response.hovered() {
                actions.push(Action::Point(Pointed::Term(line.number.clone(), index)));
            }
        }
        let sums = text::waste_words(line, units);
        ui.label(RichText::new(sums).small().color(p.quiet));
        ui.label(RichText::new(line.source.now()).small().color(p.quiet));
    });
}

/// Whether some of a part goes where the pointer is.
fn comes_from(line: &Line, hover: Selection) -> bool {
    let Some(block) = hover.block() else { return false };
    line.terms.iter().flat_map(|term| term.places.iter()).any(|place| {
        place.block == Some(block)
            && match (hover, place.spot) {
                (Selection::Module { cell, .. }, Spot::Module(at)) => at == cell,
                (Selection::Module { .. }, _) => false,
                _ => true,
            }
    })
}
