//! The widths of the columns.

use crate::action::{Action, Actions};
use crate::state::{OrderColumn, OrderTable};
use crate::text;
use egui::{Id, Ui};

/// Remembers widths that a person dragged.
pub(super) fn keep(ui: &Ui, kept: &OrderTable, shown: &[OrderColumn], widths: &[f32], actions: &mut Actions) {
    if !ui.input(|input| input.pointer.primary_down()) {
        return;
    }
    let mut next = kept.clone();
    let mut other = false;
    for (column, width) in shown.iter().zip(widths) {
        if !matches!(column, OrderColumn::What | OrderColumn::Ordered) {
            other |= next.keep(*column, *width);
        }
    }
    if other {
        actions.push(Action::OrderTable(next));
    }
}

/// Names the borders of the columns for screen readers: the toolkit draws them, and has no words for them.
pub(super) fn name<'a>(ui: &Ui, table: Id, columns: impl Iterator<Item = &'a str>) {
    for (index, column) in columns.enumerate() {
        let border = table.with("resize_column").with(index);
        if ui.ctx().read_response(border).is_some() {
            ui.ctx().accesskit_node_builder(border, |node| {
                node.set_role(egui::accesskit::Role::Splitter);
                node.set_label(text::width_of_column(column));
            });
        }
    }
}
