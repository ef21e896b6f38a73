//! The lines as a table: sorted, filtered, grouped, edited in place, copied to a spreadsheet.

use super::OrderWindow;
use super::{change, change_prices, detail, new_line, parse_packages, right, set_packages};
use crate::action::{Action, Actions};
use crate::state::State;
use crate::widgets::{fields, quiet};
use crate::windows::Windows;
use crate::{Document, text, theme};
use chalkcourse_job::{Group, Price, Resolved, Stage, amount_from_text};
use chalkcourse_sheets::Output;
use chalkcourse_takeoff::{Line, LineState, cost_of, show_amount};
use chalkcourse_telling::order::state_words;
use chalkcourse_words::{self as words, Say};
use egui::{Align, Layout, RichText, Sense, Ui};
use egui_extras::{Column, TableBuilder};
use rust_decimal::Decimal;

/// Which lines are listed, and under which headings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Shown {
    #[default]
    ByGroup,
    ByStage,
    /// Without headings.
    Plain,
    /// What a person changed.
    Changed,
    /// What has no price.
    Unpriced,
}

/// What the lines are sorted by, within their headings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum SortBy {
    /// As the kit lists them.
    #[default]
    Listed,
    Number,
    What,
    Packages,
    Price,
    Cost,
}

const COLUMNS: [(Say, Option<SortBy>, bool); 8] = [
    (words::window::MARK, None, false),
    (text::COLUMN_NUMBER, Some(SortBy::Number), false),
    (text::COLUMN_WHAT, Some(SortBy::What), false),
    (text::COLUMN_NEED, None, true),
    (text::COLUMN_ORDER, Some(SortBy::Packages), true),
    (text::COLUMN_PACKAGE, None, false),
    (text::COLUMN_PRICE, Some(SortBy::Price), true),
    (text::COLUMN_COST, Some(SortBy::Cost), true),
];
const HIGH: f32 = 28.0;

enum Row<'a> {
    Heading(&'static str, Decimal),
    Line(&'a Line),
}

pub(super) fn lines_tab(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let (job, takeoff) = (document.job(), &document.plan().takeoff);
    let all: Vec<&Line> = takeoff.lines.iter().chain(&takeoff.off).collect();
    let rows = rows(&all, &windows.order);
    bar(ui, document, windows, &rows, actions);
    let held = state.opened_line.as_ref().and_then(|number| all.iter().find(|line| line.number == *number));
    let room = ui.available_height() - if held.is_some() { detail::HIGH } else { 0.0 };
    if rows.is_empty() {
        quiet(ui, text::NO_SUCH_LINE.now());
    } else {
        ui.allocate_ui(egui::vec2(ui.available_width(), room.max(120.0)), |ui| {
            table(ui, job, state, windows, &rows, actions);
        });
    }
    if let Some(line) = held {
        ui.separator();
        detail::line_detail(ui, job, line, actions);
    }
}

/// What to look for, what to list, and what can be done with the list.
fn bar(ui: &mut Ui, document: &Document, windows: &mut Windows, rows: &[Row<'_>], actions: &mut Actions) {
    let job = document.job();
    ui.horizontal(|ui| {
        let own = &mut windows.order;
        let find = egui::TextEdit::singleline(&mut own.find)
            .hint_text(text::FIND_LINE.now())
            .desired_width(170.0)
            .margin(egui::Margin::symmetric(6, 4));
        let words = ui.label(RichText::new(text::FIND.now()).color(theme::of(ui).quiet));
        ui.add(find).labelled_by(words.id);
        let choices = [
            (Shown::ByGroup, text::SHOWN_BY_GROUP.now()),
            (Shown::ByStage, text::SHOWN_BY_STAGE.now()),
            (Shown::Plain, text::SHOWN_PLAIN.now()),
            (Shown::Changed, text::SHOWN_CHANGED.now()),
            (Shown::Unpriced, text::SHOWN_UNPRICED.now()),
        ];
        let now = choices.iter().find(|(shown, _)| *shown == own.shown).map_or("", |(_, name)| *name);
        egui::ComboBox::from_id_salt("shown lines")
            .selected_text(now)
            .width(150.0)
            .show_ui(ui, |ui| {
                for (shown, name) in choices {
                    ui.selectable_value(&mut own.shown, shown, name);
                }
            })
            .response
            .accessible_name(text::SHOWN_LINES.now());
        if ui.button(text::COPY_LINES.now()).on_hover_text(text::COPY_LINES_HELP.now()).clicked() {
            let lines: Vec<&Line> = rows
                .iter()
                .filter_map(|row| match row {
                    Row::Line(line) => Some(*line),
                    Row::Heading(..) => None,
                })
                .collect();
            crate::windows::copy(ui, document, Output::OrderLines(&lines));
            actions.push(Action::Say(text::lines_copied(lines.len())));
        }
        if ui.button(text::ADD_LINE.now()).on_hover_text(text::ADD_LINE_HELP.now()).clicked() {
            let line = new_line(job);
            actions.push(Action::OpenLine(Some(line.number.clone())));
            change(actions, job, text::ADD_LINE.now().to_owned(), |order| order.added.push(line));
        }
    });
}

/// The lines that are listed, in their order, under their headings.
fn rows<'a>(all: &[&'a Line], own: &OrderWindow) -> Vec<Row<'a>> {
    let wanted = own.find.trim().to_lowercase();
    let found = |line: &&Line| {
        wanted.is_empty()
            || line.number.to_lowercase().contains(&wanted)
            || line.name.now().to_lowercase().contains(&wanted)
    };
    let kept = |line: &&Line| match own.shown {
        Shown::ByGroup | Shown::ByStage | Shown::Plain => true,
        Shown::Changed => line.state != LineState::Counted || line.alternate.is_some(),
        Shown::Unpriced => line.price.is_none(),
    };
    let mut lines: Vec<&Line> = all.iter().copied().filter(found).filter(kept).collect();
    match own.sorted {
        SortBy::Listed => {}
        SortBy::Number => lines.sort_by(|a, b| a.number.cmp(&b.number)),
        SortBy::What => lines.sort_by_key(|line| line.name.now().to_lowercase()),
        SortBy::Packages => lines.sort_by_key(|line| line.packages),
        SortBy::Price => lines.sort_by_key(|line| line.price),
        SortBy::Cost => lines.sort_by_key(|line| line.cost),
    }
    if own.down {
        lines.reverse();
    }
    let under = |heading: &'static str, of: &dyn Fn(&Line) -> bool| -> Vec<Row<'a>> {
        let lines: Vec<&Line> = lines.iter().copied().filter(|line| of(line)).collect();
        if lines.is_empty() {
            return Vec::new();
        }
        let sum = cost_of(lines.iter().copied().filter(|line| !is_off(line)));
        std::iter::once(Row::Heading(heading, sum)).chain(lines.into_iter().map(Row::Line)).collect()
    };
    match own.shown {
        Shown::ByGroup => {
            Group::ALL.into_iter().flat_map(|g| under(g.name().now(), &|line| line.group == g)).collect()
        }
        Shown::ByStage => {
            Stage::ALL.into_iter().flat_map(|s| under(s.name().now(), &|line| line.stage == s)).collect()
        }
        Shown::Plain | Shown::Changed | Shown::Unpriced => lines.iter().copied().map(Row::Line).collect(),
    }
}

pub(super) fn is_off(line: &Line) -> bool {
    matches!(line.state, LineState::Off { .. })
}

fn table(
    ui: &mut Ui,
    job: &Resolved,
    state: &State,
    windows: &mut Windows,
    rows: &[Row<'_>],
    actions: &mut Actions,
) {
    // A row is pressed and pointed at as a whole, its words too.
    ui.style_mut().interaction.selectable_labels = false;
    TableBuilder::new(ui)
        .striped(true)
        .sense(Sense::click())
        .cell_layout(Layout::left_to_right(Align::Center))
        .column(Column::exact(24.0))
        .column(Column::initial(84.0).at_least(60.0).resizable(true).clip(true))
        .column(Column::remainder().at_least(140.0).clip(true))
        .column(Column::initial(92.0).at_least(60.0).resizable(true).clip(true))
        .column(Column::exact(64.0))
        .column(Column::initial(84.0).at_least(50.0).resizable(true).clip(true))
        .column(Column::exact(84.0))
        .column(Column::exact(92.0))
        .header(HIGH, |mut header| {
            for (title, sort, right) in COLUMNS {
                header.col(|ui| heading(ui, &mut windows.order, title.now(), sort, right));
            }
        })
        .body(|body| {
            body.rows(HIGH, rows.len(), |mut row| match rows.get(row.index()) {
                Some(Row::Heading(name, sum)) => {
                    row.col(|_| {});
                    row.col(|ui| {
                        ui.add(egui::Label::new(RichText::new(*name).strong()).extend());
                    });
                    for _ in 2..7 {
                        row.col(|_| {});
                    }
                    row.col(|ui| right(ui, |ui| ui.strong(format!("{sum:.2}"))));
                }
                Some(Row::Line(line)) => {
                    row.set_selected(state.opened_line.as_deref() == Some(line.number.as_str()));
                    cells(&mut row, job, line, actions);
                    let response = row.response();
                    if response.hovered() {
                        windows.order.pointed = Some(line.number.clone());
                    }
                    if response.clicked() {
                        let open = state.opened_line.as_deref() == Some(line.number.as_str());
                        actions.push(Action::OpenLine((!open).then(|| line.number.clone())));
                    }
                }
                None => {}
            });
        });
}

/// A head that sorts: once up, once more down, then as listed.
fn heading(ui: &mut Ui, own: &mut OrderWindow, title: &str, sort: Option<SortBy>, at_right: bool) {
    let mut show = |ui: &mut Ui| {
        let Some(sort) = sort else {
            ui.label(RichText::new(title).strong());
            return;
        };
        let sign = match (own.sorted == sort, own.down) {
            (false, _) => "",
            (true, false) => " ↑",
            (true, true) => " ↓",
        };
        let button = egui::Button::new(RichText::new(format!("{title}{sign}")).strong()).frame(false);
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

fn cells(row: &mut egui_extras::TableRow<'_, '_>, job: &Resolved, line: &Line, actions: &mut Actions) {
    let off = is_off(line);
    let paint = |ui: &Ui, words: String| {
        let p = theme::of(ui);
        RichText::new(words).color(if off { p.quiet } else { p.text })
    };
    row.col(|ui| {
        let added = matches!(line.state, LineState::Added { .. });
        if fields::tick(ui, !off, !added, &text::order_this(&line.number), text::ON_ORDER_HELP.now()) {
            switch(actions, job, line);
        }
    });
    row.col(|ui| {
        ui.label(paint(ui, line.number.clone()));
    });
    row.col(|ui| {
        let changed = line.state != LineState::Counted || line.alternate.is_some();
        let words = if changed { format!("• {}", line.name) } else { line.name.clone().into() };
        let label = ui.add(egui::Label::new(paint(ui, words)).truncate());
        if let Some(own) = state_words(line, job.units) {
            label.on_hover_text(own);
        }
    });
    row.col(|ui| {
        let need = show_amount(line.need, line.unit, job.units);
        right(ui, |ui| ui.label(paint(ui, need)));
    });
    row.col(|ui| packages(ui, job, line, off, actions));
    row.col(|ui| {
        ui.label(paint(ui, line.package.name().into()));
    });
    row.col(|ui| price(ui, job, line, off, actions));
    row.col(|ui| {
        let (words, missing) = match line.cost {
            Some(cost) => (format!("{cost:.2}"), false),
            None => (text::NO_PRICE.now().to_owned(), true),
        };
        let words =
            if missing { RichText::new(words).color(theme::of(ui).caution) } else { paint(ui, words) };
        right(ui, |ui| ui.label(words));
    });
}

/// A line that is ordered no more, or again.
fn switch(actions: &mut Actions, job: &Resolved, line: &Line) {
    let (number, off) = (line.number.clone(), is_off(line));
    change(actions, job, text::switch_line(&line.number, off), |order| {
        if off {
            order.off.remove(&number);
        } else {
            order.off.insert(number, String::new());
        }
    });
}

fn packages(ui: &mut Ui, job: &Resolved, line: &Line, off: bool, actions: &mut Actions) {
    if off {
        return;
    }
    let label = text::packages_of(&line.number);
    let typed = fields::cell(
        ui,
        &label,
        &line.packages.to_string(),
        text::PACKAGES_HELP.now(),
        Align::RIGHT,
        |typed| {
            // An empty cell is the count again.
            if typed.trim().is_empty() { Ok(None) } else { parse_packages(typed).map(Some) }
        },
    );
    if let Some(typed) = typed {
        set_packages(actions, job, line, typed);
    }
}

fn price(ui: &mut Ui, job: &Resolved, line: &Line, off: bool, actions: &mut Actions) {
    if off {
        return;
    }
    // All decimals that it has: a nail may cost less than a cent.
    let shown =
        line.price.map(|price| format!("{price:.*}", price.scale().max(2) as usize)).unwrap_or_default();
    let label = text::price_of(&line.number);
    let alternate = line.alternate.as_ref().map(|(number, _)| number.clone());
    let parse = |typed: &str| match parse_price(typed) {
        // A list has no part in the place of another without a price.
        Ok(None) if alternate.is_some() => Err(text::BAD_PRICE.now().to_owned()),
        done => done,
    };
    let Some(typed) = fields::cell(ui, &label, &shown, text::PRICE_HELP.now(), Align::RIGHT, parse) else {
        return;
    };
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

/// A price as it is typed; none where the cell is empty.
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
