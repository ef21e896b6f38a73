//! The widths of the columns.

use crate::action::{Action, Actions};
use crate::state::{OrderColumn, OrderTable};
use crate::text;
use crate::widgets::tree;
use egui::{Id, Ui};

/// Stores widths set by dragging.
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

/// Names the borders of the columns for screen readers.
pub(super) fn name<'a>(ui: &Ui, table: Id, columns: impl Iterator<Item = &'a str>) {
    for (index, column) in columns.enumerate() {
        let border = table.with("resize_column").with(index);
        tree::name_border(ui.ctx(), border, || text::width_of_column(column));
    }
}
