//! The accessibility tree of a table: its rows, visible or not, and their cells.
//!
//! Each is a node without a widget: none of them takes the focus or the pointer.

use egui::accesskit::{Action, Role};
use egui::{Id, Rect, Ui, UiBuilder};

/// A row for screen readers.
pub(crate) struct ToldRow<'w> {
    pub(crate) words: &'w str,
    /// Its index, from 0.
    pub(crate) index: usize,
    /// Whether it is open, or selected by keyboard.
    pub(crate) selected: bool,
    /// Its rectangle, or where it would be if visible.
    pub(crate) at: Rect,
}

/// Draws a table under its own node.
pub(crate) fn table<R>(
    ui: &mut Ui,
    id: Id,
    (words, rows): (&str, usize),
    add: impl FnOnce(&mut Ui) -> R,
) -> R {
    let bounds = bounds(ui.available_rect_before_wrap());
    let builder = UiBuilder::new().scope_id(id).accessibility_role(Role::Table).accessibility_label(words);
    let inner = ui.scope_builder(builder, |ui| {
        ui.ctx().accesskit_node_builder(id, |node| {
            node.set_row_count(rows);
            node.set_bounds(bounds);
        });
        add(ui)
    });
    inner.inner
}

/// Whether assistive technology is active: otherwise row texts are not needed.
pub(crate) fn is_read(ui: &Ui) -> bool {
    ui.ctx().accesskit_node_builder(ui.unique_id(), |_| ()).is_some()
}

/// Adds a row of the table being drawn. Returns what was requested of it.
pub(crate) fn row(ui: &mut Ui, id: Id, row: &ToldRow<'_>) -> Asked {
    let builder = UiBuilder::new()
        .scope_id(id)
        .max_rect(row.at)
        .accessibility_role(Role::Row)
        .accessibility_label(row.words);
    let _ = ui.new_child(builder);
    ui.ctx().accesskit_node_builder(id, |node| {
        node.set_bounds(bounds(row.at));
        node.set_row_index(row.index);
        node.set_selected(row.selected);
        node.add_action(Action::Click);
        node.add_action(Action::ScrollIntoView);
    });
    ui.input(|input| Asked {
        press: input.has_accesskit_action_request(id, Action::Click),
        show: input.has_accesskit_action_request(id, Action::ScrollIntoView),
    })
}

/// What assistive technology requests of a row.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Asked {
    /// To activate it.
    pub(crate) press: bool,
    /// To scroll it into view.
    pub(crate) show: bool,
}

/// The contents of a cell of a row.
pub(crate) fn cell<R>(ui: &mut Ui, row: Id, add: impl FnOnce(&mut Ui) -> R) -> R {
    let builder = UiBuilder::new().accessibility_parent(row).accessibility_role(Role::Cell);
    ui.scope_builder(builder, add).inner
}

/// The heading of a column.
pub(crate) fn head<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    ui.scope_builder(UiBuilder::new().accessibility_role(Role::ColumnHeader), add).inner
}

/// Marks the row that the focused node's keyboard selection is on.
pub(crate) fn set_active_row(ui: &Ui, node: Id, row: Id) {
    ui.ctx().accesskit_node_builder(node, |node| node.set_active_descendant(row.accesskit_id()));
}

/// Names a draggable border after it was drawn: the toolkit gives it no name.
pub(crate) fn name_border(ctx: &egui::Context, border: Id, words: impl FnOnce() -> String) {
    if ctx.read_response(border).is_some() {
        ctx.accesskit_node_builder(border, |node| {
            node.set_role(Role::Splitter);
            node.set_label(words());
        });
    }
}

fn bounds(rect: Rect) -> egui::accesskit::Rect {
    egui::accesskit::Rect {
        x0: rect.min.x.into(),
        y0: rect.min.y.into(),
        x1: rect.max.x.into(),
        y1: rect.max.y.into(),
    }
}
