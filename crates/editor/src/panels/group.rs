use super::{heading, quiet};
use crate::action::Actions;
use crate::state::State;
use crate::{Document, edits, text};
use egui::Ui;

/// The form of a multiple selection: how many objects, and the commands for all of them.
pub(super) fn group_form(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let (job, group) = (document.job(), &state.group);
    heading(ui, &text::group_words(group).now());
    quiet(ui, text::GROUP_HELP.now());
    ui.add_space(crate::theme::GAP);
    if !group.blocks.is_empty() || !group.modules.is_empty() {
        if group.has_off(job) && ui.button(text::GROUP_ON.now()).clicked() {
            actions.extend(edits::group::switched(group, job, true));
        }
        if !group.modules.is_empty() && ui.button(text::GROUP_OFF.now()).clicked() {
            actions.extend(edits::group::switched(group, job, false));
        }
    }
    if ui.button(text::GROUP_DELETE.now()).clicked() {
        actions.extend(edits::group::deleted(group, job));
    }
}
