//! The strip over the drawing: the current tool, and its inputs and options.

use super::Canvas;
use super::tools::Tool;
use crate::action::Actions;
use crate::state::State;
use crate::{Document, theme};
use egui::{RichText, Ui};

/// Shows the strip, with a second row if the tool needs one; the hint is at the end of the first row, which has more
/// space.
pub(crate) fn draw_bar(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Canvas,
    actions: &mut Actions,
) {
    super::cross::walk(ui, document, state, own);
    let tool = own.tools.of_mut(state.tool);
    let rows = tool.rows();
    if rows == 1 {
        ui.horizontal_centered(|ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            tool.bar(0, ui, document, state, actions);
            hint(ui, tool, document, state);
        });
        return;
    }
    let row = egui::vec2(ui.available_width(), ui.available_height() / f32::from(rows));
    let left = egui::Layout::left_to_right(egui::Align::Center);
    ui.spacing_mut().item_spacing.y = 0.0;
    for nth in 0..rows {
        ui.allocate_ui_with_layout(row, left, |ui| {
            ui.spacing_mut().item_spacing.x = theme::GAP * 2.0;
            tool.bar(nth, ui, document, state, actions);
            if nth == 0 {
                hint(ui, tool, document, state);
            }
        });
    }
}

/// The hint on what to do next.
fn hint(ui: &mut Ui, tool: &dyn Tool, document: &Document, state: &State) {
    let quiet = theme::of(ui).quiet;
    ui.add(egui::Label::new(RichText::new(tool.hint(document, state)).color(quiet)).truncate());
}
