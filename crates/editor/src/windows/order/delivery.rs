//! Counting deliveries: packages, damage, what can start, what to claim.

use super::{change, parse_packages, right};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::CrewSheet;
use crate::widgets::{fields, quiet};
use crate::{Document, text, theme};
use chalkcourse_job::{Received, Resolved};
use chalkcourse_sheets::Output;
use chalkcourse_takeoff::{PalletRow, pallet, stages_ready};
use chalkcourse_telling::order::counted_words;
use chalkcourse_words::Said;
use egui::{Align, Layout, RichText, Ui};
use egui_extras::{Column, TableBuilder};

const HIGH: f32 = 28.0;

pub(super) fn delivery_tab(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    let job = document.job();
    let rows = pallet(&document.plan().takeoff, &job.order.delivery);
    if rows.is_empty() {
        quiet(ui, text::NOTHING_ON_ORDER.now());
        return;
    }
    head(ui, document, &rows, actions);
    ui.separator();
    let room = (ui.available_height() - 150.0).max(140.0);
    ui.allocate_ui(egui::vec2(ui.available_width(), room), |ui| table(ui, job, &rows, actions));
    ui.separator();
    can_start(ui, &rows);
}

fn head(ui: &mut Ui, document: &Document, rows: &[PalletRow], actions: &mut Actions) {
    let job = document.job();
    let delivery = &job.order.delivery;
    ui.horizontal_wrapped(|ui| {
        let open = rows.iter().filter(|row| row.counted.is_none()).count();
        ui.label(text::counted_so_far(rows.len() - open, rows.len()));
        let rest = ui.add_enabled(open > 0, egui::Button::new(text::REST_CAME.now()));
        if rest.on_hover_text(text::REST_CAME_HELP.now()).clicked() {
            change(actions, job, text::REST_CAME, |order| {
                for row in rows.iter().filter(|row| row.counted.is_none()) {
                    let all = Received { packages: row.ordered, ..Received::default() };
                    order.delivery.counts.insert(row.number.clone(), all);
                }
            });
        }
        if ui.button(text::LOAD_COUNTS.now()).on_hover_text(text::LOAD_COUNTS_HELP.now()).clicked() {
            actions.push(Command::LoadCounts.action());
        }
        for (sheet, name) in
            [(CrewSheet::Pallet, text::PRINT_LIST.now()), (CrewSheet::Claim, text::PRINT_THE_CLAIM.now())]
        {
            if ui.button(name).clicked() {
                actions.push(Action::Print(sheet));
            }
        }
        if ui.button(text::COPY_CLAIM.now()).clicked() {
            crate::windows::copy(ui, document, Output::Claim);
            actions.push(Action::Say(text::CLAIM_COPIED.now().to_owned()));
        }
    });
    ui.horizontal(|ui| {
        let label = text::CHANGE_DELIVERY;
        ui.vertical(|ui| {
            ui.set_max_width(300.0);
            if let Some(date) = fields::words(ui, text::DELIVERY_DATE.now(), &delivery.date) {
                change(actions, job, label, |order| order.delivery.date = date);
            }
            if let Some(by) = fields::words(ui, text::DELIVERY_BY.now(), &delivery.by) {
                change(actions, job, label, |order| order.delivery.by = by);
            }
        });
        ui.vertical(|ui| {
            if let Some(note) = fields::words(ui, text::DELIVERY_NOTE.now(), &delivery.note) {
                change(actions, job, label, |order| order.delivery.note = note);
            }
        });
    });
}

fn table(ui: &mut Ui, job: &Resolved, rows: &[PalletRow], actions: &mut Actions) {
    let heads = [
        ("", false),
        (text::COLUMN_NUMBER.now(), false),
        (text::COLUMN_WHAT.now(), false),
        (text::COLUMN_ORDERED.now(), true),
        (text::COLUMN_CAME.now(), true),
        (text::COLUMN_DAMAGED.now(), true),
        (text::COLUMN_NOTE.now(), false),
        (text::COLUMN_STATE.now(), false),
    ];
    TableBuilder::new(ui)
        .striped(true)
        .cell_layout(Layout::left_to_right(Align::Center))
        .column(Column::exact(24.0))
        .column(Column::initial(84.0).at_least(60.0).resizable(true).clip(true))
        .column(Column::remainder().at_least(120.0).clip(true))
        .column(Column::initial(104.0).at_least(60.0).resizable(true).clip(true))
        .column(Column::exact(56.0))
        .column(Column::exact(68.0))
        .column(Column::initial(140.0).at_least(60.0).resizable(true).clip(true))
        .column(Column::initial(120.0).at_least(60.0).resizable(true).clip(true))
        .header(HIGH, |mut header| {
            for (title, at_right) in heads {
                header.col(|ui| {
                    if at_right {
                        right(ui, |ui| ui.strong(title));
                    } else {
                        ui.strong(title);
                    }
                });
            }
        })
        .body(|body| {
            body.rows(HIGH, rows.len(), |mut cells| {
                if let Some(row) = rows.get(cells.index()) {
                    of_row(&mut cells, job, row, actions);
                }
            });
        });
}

fn of_row(cells: &mut egui_extras::TableRow<'_, '_>, job: &Resolved, row: &PalletRow, actions: &mut Actions) {
    let number = row.number.as_str();
    let label = || text::count_part(number);
    cells.col(|ui| {
        let whole = row.is_complete() && row.over() == 0;
        if fields::tick(ui, whole, true, &text::all_came(number), text::ALL_CAME_HELP.now()) {
            change(actions, job, label(), |order| {
                if !whole {
                    let note =
                        order.delivery.counts.get(number).map_or_else(String::new, |old| old.note.clone());
                    let all = Received { packages: row.ordered, damaged: 0, note };
                    order.delivery.counts.insert(number.to_owned(), all);
                } else {
                    order.delivery.counts.remove(number);
                }
            });
        }
    });
    cells.col(|ui| {
        ui.label(number);
    });
    cells.col(|ui| {
        ui.add(egui::Label::new(row.name.now()).truncate()).on_hover_text(row.stage.name().now());
    });
    cells.col(|ui| {
        let words = row.package.counted(row.ordered);
        right(ui, |ui| ui.label(words.now()));
    });
    cells.col(|ui| {
        let shown = row.counted.map(|counted| counted.to_string()).unwrap_or_default();
        let typed = fields::cell(ui, &text::came_of(number), &shown, "", Align::RIGHT, |typed| {
            if typed.trim().is_empty() { Ok(None) } else { parse_packages(typed).map(Some) }
        });
        if let Some(typed) = typed {
            change(actions, job, label(), |order| match typed {
                Some(packages) => {
                    let count = order.delivery.counts.entry(number.to_owned()).or_default();
                    count.packages = packages;
                    count.damaged = count.damaged.min(packages);
                }
                None => {
                    order.delivery.counts.remove(number);
                }
            });
        }
    });
    cells.col(|ui| {
        let shown = row.counted.map(|_| row.damaged.to_string()).unwrap_or_default();
        let most = row.counted.unwrap_or(row.ordered);
        let typed = fields::cell(ui, &text::damaged_of(number), &shown, "", Align::RIGHT, |typed| {
            let damaged = if typed.trim().is_empty() { 0 } else { parse_packages(typed)? };
            if damaged <= most { Ok(damaged) } else { Err(text::too_many_damaged(most)) }
        });
        if let Some(damaged) = typed {
            change(actions, job, label(), |order| {
                let all = || Received { packages: row.ordered, ..Received::default() };
                order.delivery.counts.entry(number.to_owned()).or_insert_with(all).damaged = damaged;
            });
        }
    });
    cells.col(|ui| {
        // A note needs a count to go with.
        ui.add_enabled_ui(row.counted.is_some(), |ui| {
            let words = |typed: &str| Ok::<_, String>(typed.trim().to_owned());
            if let Some(note) = fields::cell(ui, &text::note_of(number), &row.note, "", Align::LEFT, words) {
                change(actions, job, label(), |order| {
                    if let Some(count) = order.delivery.counts.get_mut(number) {
                        count.note = note;
                    }
                });
            }
        });
    });
    cells.col(|ui| {
        let p = theme::of(ui);
        let wrong = row.short() + row.over() + row.damaged > 0;
        let color = if wrong { p.caution } else { p.quiet };
        ui.label(RichText::new(counted_words(row)).color(color));
    });
}

fn can_start(ui: &mut Ui, rows: &[PalletRow]) {
    ui.strong(text::CAN_START.now());
    egui::ScrollArea::vertical().id_salt("can start").auto_shrink([false, false]).show(ui, |ui| {
        for stage in stages_ready(rows) {
            let p = theme::of(ui);
            let (words, color) = if stage.can_start {
                (text::CAN.now().to_owned(), p.note)
            } else {
                (text::waits_for(&stage.waits_for), p.text)
            };
            ui.horizontal(|ui| {
                ui.label(RichText::new(stage.stage.name()).strong());
                let label = ui.add(egui::Label::new(RichText::new(words).color(color)).truncate());
                if !stage.can_start {
                    label.on_hover_text(Said::listed(stage.waits_for, "\n").now());
                }
            });
        }
    });
}
