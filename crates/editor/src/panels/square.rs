use crate::action::{Action, Actions};
use crate::edits::squaring;
use crate::{text, theme};
use chalkcourse_geometry::Polygon;
use chalkcourse_job::Edit;
use chalkcourse_words::Said;
use egui::{RichText, Ui};

/// How far an outline is out of square, with a button to square it.
pub(super) fn square(
    ui: &mut Ui,
    outline: &Polygon,
    edit: impl FnOnce() -> Option<(Said, Edit)>,
    actions: &mut Actions,
) {
    let Some(off) = squaring::off(outline) else { return };
    ui.horizontal(|ui| {
        ui.label(RichText::new(text::out_of_square(off)).color(theme::of(ui).caution));
        if ui.button(text::SQUARE_IT.now()).on_hover_text(text::SQUARE_IT_HELP.now()).clicked() {
            actions.extend(edit().map(|(label, edit)| Action::Edit(label, edit)));
        }
    });
}
