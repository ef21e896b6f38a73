//! The lines of the order: filter, table, and details of the open line.

use super::OrderWindow;
use super::by_hand::ByHand;
use super::changes::Changes;
use super::rows::{Row, Shown, rows};
use super::table::{Rows, column_name, table};
use super::{change, detail, new_line, right, totals};
use crate::action::{Action, Actions};
use crate::state::{OrderColumn, OrderTable, State};
use crate::widgets::quiet;
use crate::windows::Windows;
use crate::{Document, text, theme};
use chalkcourse_sheets::Output;
use chalkcourse_takeoff::{Line, Takeoff};
use chalkcourse_telling::order::show_sum_more;
use egui::{RichText, Ui};

pub(super) fn lines_tab(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let (job, takeoff) = (document.job(), &document.plan().takeoff);
    let own = &mut windows.order;
    own.since.look(document);
    // The table changes the pane's state, and the earlier order is part of it.
    let since = std::mem::take(&mut own.since);
    let changes = Changes::between(since.before(), takeoff);
    let by_hand = ByHand::of(document);
    let all: Vec<&Line> = takeoff.lines.iter().chain(&takeoff.off).collect();
    let rows = rows(&all, own, &changes, &by_hand);
    let pin = bar(ui, document, own, state, (&rows, since.pinned), actions);
    let asked = changed_bar(ui, takeoff, since.pinned, &changes).or(pin.then_some(Asked::Pin));
    if state.order_table.totals {
        totals::totals(ui, takeoff);
    }
    let held = state.opened_line.as_ref().and_then(|number| all.iter().find(|line| line.number == *number));
    let room = ui.available_height() - held.map_or(0.0, |line| detail::high(line));
    if rows.is_empty() {
        quiet(ui, text::NO_SUCH_LINE.now());
    } else {
        ui.allocate_ui(egui::vec2(ui.available_width(), room.max(120.0)), |ui| {
            table(
                ui,
                document,
                state,
                own,
                &Rows { rows: &rows, changes: &changes, by_hand: &by_hand },
                actions,
            );
        });
    }
    if let Some(line) = held {
        ui.separator();
        detail::line_detail(ui, job, line, actions);
    }
    drop(changes);
    own.since = since;
    match asked {
        Some(Asked::Seen) => own.since.begin(document, false),
        Some(Asked::Pin) => own.since.begin(document, true),
        Some(Asked::Unpin) => own.since.pinned = false,
        None => {}
    }
}

/// Requests about the moment from which changes are counted.
enum Asked {
    Seen,
    Pin,
    Unpin,
}

/// How many lines changed since when, and the increase of the total.
fn changed_bar(ui: &mut Ui, takeoff: &Takeoff, pinned: bool, changes: &Changes<'_>) -> Option<Asked> {
    if changes.count == 0 && !pinned {
        return None;
    }
    let mut asked = None;
    ui.horizontal(|ui| {
        let mut words = text::many_changed(changes.count, pinned);
        if let Some(more) = changes.total {
            words = format!("{words}  ·  {}", show_sum_more(more, &takeoff.currency));
        }
        ui.label(RichText::new(words).color(theme::of(ui).accent));
        right(ui, |ui| {
            if pinned {
                if ui.selectable_label(true, text::PIN.now()).on_hover_text(text::PIN_HELP.now()).clicked() {
                    asked = Some(Asked::Unpin);
                }
                return;
            }
            if ui.small_button(text::SEEN.now()).on_hover_text(text::SEEN_HELP.now()).clicked() {
                asked = Some(Asked::Seen);
            }
        });
    });
    asked
}

/// Search, filter and list commands. Returns whether to pin this moment.
fn bar(
    ui: &mut Ui,
    document: &Document,
    own: &mut OrderWindow,
    state: &State,
    (rows, pinned): (&[Row<'_>], bool),
    actions: &mut Actions,
) -> bool {
    let job = document.job();
    let mut pin = false;
    ui.horizontal_wrapped(|ui| {
        let find = egui::TextEdit::singleline(&mut own.find)
            .hint_text(text::FIND_LINE.now())
            .desired_width(116.0)
            .margin(egui::Margin::symmetric(6, 4));
        ui.add(find).accessible_name(text::FIND.now());
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
            .width(132.0)
            .truncate()
            .show_ui(ui, |ui| {
                for (shown, name) in choices {
                    ui.selectable_value(&mut own.shown, shown, name);
                }
            })
            .response
            .accessible_name(text::SHOWN_LINES.now());
        columns(ui, &state.order_table, actions);
        if ui.button(text::COPY_LINES.now()).on_hover_text(text::COPY_LINES_HELP.now()).clicked() {
            let lines: Vec<&Line> = rows
                .iter()
                .filter_map(|row| if let Row::Line(line) = row { Some(*line) } else { None })
                .collect();
            crate::windows::copy(ui, document, Output::OrderLines(&lines));
            actions.push(Action::Say(text::lines_copied(lines.len())));
        }
        if ui.button(text::ADD_LINE.now()).on_hover_text(text::ADD_LINE_HELP.now()).clicked() {
            let line = new_line(job);
            actions.push(Action::OpenLine(Some(line.number.clone())));
            change(actions, job, text::ADD_LINE, |order| order.added.push(line));
        }
        pin = !pinned && ui.button(text::PIN.now()).on_hover_text(text::PIN_HELP.now()).clicked();
    });
    pin
}

/// The column menu.
fn columns(ui: &mut Ui, table: &OrderTable, actions: &mut Actions) {
    let menu = ui.menu_button(text::ORDER_COLUMNS.now(), |ui| {
        for column in OrderColumn::ALL.into_iter().filter(|column| !column.always()) {
            let mut on = !table.hidden.contains(&column);
            if ui.checkbox(&mut on, column_name(column)).clicked() {
                let mut next = table.clone();
                if on {
                    next.hidden.remove(&column);
                } else {
                    next.hidden.insert(column);
                }
                actions.push(Action::OrderTable(next));
            }
        }
    });
    menu.response.on_hover_text(text::ORDER_COLUMNS_HELP.now());
}
