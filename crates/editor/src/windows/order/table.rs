//! The lines as a table: a fixed header, selectable and resizable columns, editable cells, keyboard navigation.

use super::by_hand::ByHand;
use super::changes::{Changes, More};
use super::rows::{Row, SortBy, is_off};
use super::walk::{switch, walk};
use super::{OrderWindow, cells, right, widths};
use crate::action::{Action, Actions};
use crate::state::panes::Pane;
use crate::state::{OrderColumn, State};
use crate::widgets::fields;
use crate::widgets::tree::{self, ToldRow};
use crate::{Document, text, theme};
use chalkcourse_job::Resolved;
use chalkcourse_takeoff::{Line, LineState};
use chalkcourse_telling::order::{show_money, state_words};
use chalkcourse_words::Say;
use egui::{Align, Color32, Id, IdSalt, Layout, Pos2, Rect, RichText, Sense, Ui, Vec2};
use egui_extras::{Column, TableBuilder, TableRow};

/// Height of a row, points: thirty lines fit beside the drawing on a screen of 1366 by 768.
const HIGH: f32 = 18.0;
const HEAD: f32 = 22.0;
/// The same for touch input.
const HIGH_FOR_FINGERS: f32 = 36.0;
/// Font size, points.
const TYPE: f32 = 13.0;

/// Input for drawing the rows.
pub(super) struct Rows<'a> {
    pub(super) rows: &'a [Row<'a>],
    pub(super) changes: &'a Changes<'a>,
    pub(super) by_hand: &'a ByHand,
}

/// The title of a column, its sort key, and whether it is right-aligned.
fn head(column: OrderColumn) -> (Say, Option<SortBy>, bool) {
    use chalkcourse_words::window::MARK;
    match column {
        OrderColumn::Ordered => (MARK, None, false),
        OrderColumn::Number => (text::COLUMN_NUMBER, Some(SortBy::Number), false),
        OrderColumn::What => (text::COLUMN_WHAT, Some(SortBy::What), false),
        OrderColumn::Need => (text::COLUMN_NEED, None, true),
        OrderColumn::Waste => (text::OWN_WASTE, None, true),
        OrderColumn::Packages => (text::COLUMN_ORDER, Some(SortBy::Packages), true),
        OrderColumn::Change => (text::COLUMN_CHANGE, Some(SortBy::Change), true),
        OrderColumn::Package => (text::COLUMN_PACKAGE, None, false),
        OrderColumn::Price => (text::COLUMN_PRICE, Some(SortBy::Price), true),
        OrderColumn::Cost => (text::COLUMN_COST, Some(SortBy::Cost), true),
    }
}

/// The name of a column in the column menu.
pub(super) fn column_name(column: OrderColumn) -> &'static str {
    head(column).0.now()
}

/// The table, under its own node.
pub(super) fn table(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut OrderWindow,
    of: &Rows<'_>,
    actions: &mut Actions,
) {
    let words = (text::LINES_OF_ORDER.now(), of.rows.len());
    tree::table(ui, Id::unique("order table"), words, |ui| lines(ui, document, state, own, of, actions));
}

fn lines(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut OrderWindow,
    of: &Rows<'_>,
    actions: &mut Actions,
) {
    let job = document.job();
    let fingers = ui.input(egui::InputState::has_touch_screen);
    let high = if fingers { HIGH_FOR_FINGERS } else { HIGH };
    let area = ui.available_rect_before_wrap();
    let walked = walk(ui, job, state, own, of.rows, (area.height() / high) as usize, actions);
    let pointer_moved =
        ui.input(|input| input.pointer.delta() != egui::Vec2::ZERO || input.pointer.any_down());
    own.walked = (own.walked || walked.is_some()) && !pointer_moved;
    dense(ui, high);
    let bar = ui.spacing().scroll.bar_width + ui.spacing().scroll.bar_inner_margin;
    let shown = state.order_table.fitting(area.width() - bar, of.changes.count > 0);
    let told = tell(ui, job, state, own, of, high, actions);
    let mut builder = TableBuilder::new(ui)
        .id_salt(&shown)
        .striped(true)
        // Cells can be clicked but not focused: keys select rows.
        .sense(Sense::CLICK)
        .auto_shrink([false, false])
        .min_scrolled_height(0.0)
        .max_scroll_height(f32::INFINITY)
        .cell_layout(Layout::left_to_right(Align::Center));
    for column in &shown {
        let width = state.order_table.width(*column);
        builder = builder.column(match column {
            OrderColumn::What => Column::remainder().at_least(60.0).clip(true),
            OrderColumn::Ordered => Column::exact(width),
            _ => Column::initial(width).at_least(36.0).resizable(true).clip(true),
        });
    }
    if let Some(row) = walked.or(told).or_else(|| newly_opened(own, state, of.rows)) {
        builder = builder.scroll_to_row(row, None);
    }
    let mut widths = Vec::new();
    let drawn = builder
        .header(HEAD, |mut header| {
            for column in &shown {
                header.col(|ui| tree::head(ui, |ui| heading(ui, own, *column)));
            }
        })
        .body(|body| {
            widths = body.widths().to_vec();
            body.rows(high, of.rows.len(), |mut row| match of.rows.get(row.index()) {
                Some(Row::Heading(name, sum)) => between(&mut row, &shown, name, &show_money(*sum)),
                Some(Row::Gone(line)) => gone(&mut row, &shown, line),
                Some(Row::Line(line)) => {
                    let at = own.at.as_deref() == Some(line.number.as_str());
                    let opened = state.opened_line.as_deref() == Some(line.number.as_str());
                    row.set_selected(at || opened);
                    of_line(&mut row, &shown, job, line, of, actions);
                    let response = row.response();
                    if response.hovered() && !own.walked {
                        own.pointed = Some(line.number.clone());
                    }
                    if response.clicked() {
                        own.at = Some(line.number.clone());
                        actions.push(Action::OpenLine((!opened).then(|| line.number.clone())));
                    }
                }
                None => {}
            });
        });
    own.scrolled = drawn.state.clamped_offset().y;
    if own.pointed.is_none() && state.desk.keys() == Pane::Order {
        // The row selected by keyboard is highlighted too.
        own.pointed.clone_from(&own.at);
    }
    widths::keep(ui, &state.order_table, &shown, &widths, actions);
    let names = shown.iter().map(|column| column_name(*column));
    widths::name(ui, ui.scope_id().with(IdSalt::new(&shown)), names);
}

/// Small type and flat fields, so that many rows fit; a field shows its border under the pointer.
fn dense(ui: &mut Ui, high: f32) {
    let style = ui.style_mut();
    // A row reacts as a whole, including its text.
    style.interaction.selectable_labels = false;
    style.override_font_id = Some(theme::font(TYPE));
    style.spacing.item_spacing = egui::vec2(crate::state::ORDER_BETWEEN, 0.0);
    style.spacing.interact_size.y = high;
    style.spacing.button_padding.y = 0.0;
    style.spacing.icon_width = 14.0;
    style.spacing.icon_width_inner = 8.0;
    style.visuals.text_edit_bg_color = Some(Color32::TRANSPARENT);
    style.visuals.widgets.inactive.bg_stroke = egui::Stroke::NONE;
    // No lines between columns: they would cross the headings between rows. One is shown under the pointer.
    style.visuals.widgets.noninteractive.bg_stroke = egui::Stroke::NONE;
}

/// A heading that sorts: first click ascending, second descending, third as listed.
fn heading(ui: &mut Ui, own: &mut OrderWindow, column: OrderColumn) {
    let (title, sort, at_right) = head(column);
    let mut show = |ui: &mut Ui| {
        let Some(sort) = sort else {
            ui.label(RichText::new(title.now()).strong());
            return;
        };
        let sign = match (own.sorted == sort, own.down) {
            (false, _) => "",
            (true, false) => " ↑",
            (true, true) => " ↓",
        };
        let button = egui::Button::new(RichText::new(format!("{}{sign}", title.now())).strong()).frame(false);
        if ui.add(button).on_hover_text(text::SORT_HELP.now()).clicked() {
            (own.sorted, own.down) = match (own.sorted == sort, own.down) {
                (false, _) => (sort, false),
                (true, false) => (sort, true),
                (true, true) => (SortBy::Listed, false),
            };
        }
    };
    if at_right {
        right(ui, show);
    } else {
        show(ui);
    }
}

/// A heading between lines, with the sum of those below it.
fn between(row: &mut TableRow<'_, '_>, shown: &[OrderColumn], name: &str, sum: &str) {
    for column in shown {
        row.col(|ui| match column {
            OrderColumn::Number => {
                // It may extend over the columns to its right, which are empty.
                ui.set_clip_rect(ui.clip_rect().with_max_x(f32::INFINITY));
                ui.add(egui::Label::new(RichText::new(name).strong()).extend());
            }
            OrderColumn::Cost => {
                right(ui, |ui| ui.strong(sum));
            }
            _ => {}
        });
    }
}

/// A line that no longer exists.
fn gone(row: &mut TableRow<'_, '_>, shown: &[OrderColumn], line: &Line) {
    for column in shown {
        row.col(|ui| {
            let quiet = theme::of(ui).quiet;
            let words = |words: String| RichText::new(words).color(quiet).strikethrough();
            match column {
                OrderColumn::Number => drop(ui.label(words(line.number.clone()))),
                OrderColumn::What => {
                    drop(ui.add(egui::Label::new(words(line.name.clone().into())).truncate()));
                }
                OrderColumn::Change => {
                    let more =
                        More { packages: -(i64::try_from(line.packages).unwrap_or(0)), need: -line.need };
                    chip(ui, more, line, chalkcourse_geometry::Units::default());
                }
                _ => {}
            }
        });
    }
}

/// The cells of a line.
fn of_line(
    row: &mut TableRow<'_, '_>,
    shown: &[OrderColumn],
    job: &Resolved,
    line: &Line,
    of: &Rows<'_>,
    actions: &mut Actions,
) {
    let off = is_off(line);
    let more = of.changes.of(line);
    let price_before = of.by_hand.price_before(line);
    let node = node_of(line);
    let cell = |ui: &mut Ui, column: OrderColumn, actions: &mut Actions| {
        let p = theme::of(ui);
        let color = if off { p.quiet } else { p.text };
        let words = |words: String| RichText::new(words).color(color);
        match column {
            OrderColumn::Ordered => {
                let added = matches!(line.state, LineState::Added { .. });
                let label = text::order_this(&line.number);
                if fields::tick(ui, !off, !added, &label, text::ON_ORDER_HELP.now()) {
                    switch(actions, job, line);
                }
            }
            OrderColumn::Number => {
                ui.label(words(line.number.clone()));
            }
            OrderColumn::What => {
                let changed = of.by_hand.changed(line);
                let name = if changed { format!("• {}", line.name) } else { line.name.to_string() };
                let label = ui.add(egui::Label::new(words(name)).truncate());
                if let Some(own) = state_words(line, job.units) {
                    label.on_hover_text(own);
                }
            }
            OrderColumn::Need => {
                let need = chalkcourse_takeoff::show_amount(line.need, line.unit, job.units);
                right(ui, |ui| ui.label(words(need)));
            }
            OrderColumn::Waste if !off => cells::waste(ui, job, line, actions),
            OrderColumn::Packages if !off => cells::packages(ui, job, line, actions),
            OrderColumn::Change => chip(ui, more, line, job.units),
            OrderColumn::Package => drop(ui.label(words(line.package.name().into()))),
            OrderColumn::Price if !off => cells::price(ui, job, line, price_before, actions),
            OrderColumn::Cost => {
                let words = match line.cost {
                    Some(cost) => words(show_money(cost)),
                    None => RichText::new(text::NO_PRICE.now()).color(p.caution),
                };
                right(ui, |ui| ui.label(words));
            }
            OrderColumn::Waste | OrderColumn::Packages | OrderColumn::Price => {}
        }
    };
    for column in shown {
        row.col(|ui| tree::cell(ui, node, |ui| cell(ui, *column, actions)));
    }
}

/// The row of a line that was just opened: its details take space from the table, and may have covered it.
fn newly_opened(own: &mut OrderWindow, state: &State, rows: &[Row<'_>]) -> Option<usize> {
    if own.was_open == state.opened_line {
        return None;
    }
    own.was_open.clone_from(&state.opened_line);
    let opened = state.opened_line.as_ref()?;
    rows.iter().position(|row| matches!(row, Row::Line(line) if line.number == *opened))
}

/// The node of a line.
fn node_of(line: &Line) -> Id {
    Id::unique(("order line", &line.number))
}

/// The whole line as text.
fn words_of(job: &Resolved, line: &Line, more: More) -> String {
    let amount = chalkcourse_takeoff::show_amount(line.need, line.unit, job.units);
    let cost = line.cost.map_or_else(|| text::NO_PRICE.now().to_owned(), |cost| text::sum(cost, &job.prices));
    let delta = if more.is_none() { String::new() } else { change_words(more, line, job.units) };
    format!("{}, {cost}", text::line_words(line, &amount, &delta, job.units))
}

/// Adds all lines to the accessibility tree, including invisible ones, before they are drawn: a row must exist before
/// its cells. Returns the row to show if requested by assistive technology.
fn tell(
    ui: &mut Ui,
    job: &Resolved,
    state: &State,
    own: &mut OrderWindow,
    of: &Rows<'_>,
    high: f32,
    actions: &mut Actions,
) -> Option<usize> {
    if !tree::is_read(ui) {
        return None;
    }
    let (area, mut show) = (ui.available_rect_before_wrap(), None);
    for (index, row) in of.rows.iter().enumerate() {
        let Row::Line(line) = row else { continue };
        let opened = state.opened_line.as_deref() == Some(line.number.as_str());
        let at = own.at.as_deref() == Some(line.number.as_str());
        // The scroll offset is known only after drawing.
        let top = area.top() + HEAD + high * index as f32 - own.scrolled;
        let told = ToldRow {
            words: &words_of(job, line, of.changes.of(line)),
            index,
            selected: at || opened,
            at: Rect::from_min_size(Pos2::new(area.left(), top), Vec2::new(area.width(), high)),
        };
        let asked = tree::row(ui, node_of(line), &told);
        if at && state.desk.keys() == Pane::Order {
            tree::set_active_row(ui, crate::windows::node(Pane::Order), node_of(line));
        }
        if asked.press {
            own.at = Some(line.number.clone());
            actions.push(Action::OpenLine((!opened).then(|| line.number.clone())));
        }
        if asked.press || asked.show {
            show = Some(index);
        }
    }
    show
}

/// The change in packages; if there is none, in what is needed.
fn change_words(more: More, line: &Line, units: chalkcourse_geometry::Units) -> String {
    match more.packages {
        0 => text::delta(more.need, line.unit, units),
        packages if packages < 0 => format!("−{}", packages.unsigned_abs()),
        packages => format!("+{packages}"),
    }
}

/// The change of a line, beside its number of packages.
fn chip(ui: &mut Ui, more: More, line: &Line, units: chalkcourse_geometry::Units) {
    if more.is_none() {
        return;
    }
    let p = theme::of(ui);
    let color = match more.packages {
        0 => p.quiet,
        packages if packages > 0 => p.accent,
        _ => p.caution,
    };
    right(ui, |ui| {
        ui.add(egui::Label::new(RichText::new(change_words(more, line, units)).color(color)).truncate());
    });
}
