//! Copy, cut, paste and duplicate: blocks and penetrations by way of the clipboard, or directly.

use super::Editor;
use crate::action::Action;
use crate::edits::pieces::{beside, group_of, set_down, taken};
use crate::state::{Group, Tool};
use crate::{edits, text};
use chalkcourse_job::{PIECES_FORMAT, Pieces, pieces_from_text, pieces_to_text};
use egui::Context;

impl Editor {
    fn held_pieces(&self) -> Option<(Group, Pieces)> {
        let group = group_of(self.state.selection, &self.state.group);
        let (job, layout) = (self.document.job(), &self.document.plan().layout);
        let pieces = taken(job, layout, &group)?;
        Some((group, pieces))
    }

    /// Copies the selection. Returns what was copied; `None`, with a message, if nothing can be.
    pub(super) fn copy_held(&mut self, ctx: &Context) -> Option<Group> {
        let Some((group, pieces)) = self.held_pieces() else {
            text::NOTHING_TO_COPY.now().clone_into(&mut self.state.said);
            return None;
        };
        match pieces_to_text(&pieces) {
            Ok(copy) => {
                ctx.copy_text(copy);
                self.state.said = text::copied(&text::group_words(&group).now());
                Some(group)
            }
            Err(error) => {
                self.state.said = error.to_string();
                None
            }
        }
    }

    pub(super) fn cut_held(&mut self, ctx: &Context) {
        let Some(group) = self.copy_held(ctx) else { return };
        let said = self.state.said.clone();
        if let Some(Action::EditAndSelect(_, edit, none)) = edits::group::deleted(&group, self.document.job())
        {
            let label = text::cut_of(text::group_words(&group));
            self.carry_out(ctx, vec![Action::EditAndSelect(label, edit, none)]);
        }
        self.state.said = said;
    }

    /// Picks up the pieces in a clipboard text, to be placed on the drawing; shows a message if it can't.
    pub(super) fn paste(&mut self, copy: &str) {
        match pieces_from_text(copy) {
            Ok(pieces) if pieces.is_empty() => text::NOTHING_TO_COPY.now().clone_into(&mut self.state.said),
            Ok(_) if self.document.job().faces.is_empty() => {
                text::NO_FACE_YET.now().clone_into(&mut self.state.said);
            }
            Ok(pieces) => {
                self.take(Tool::Paste);
                self.canvas.hand_over(pieces);
                self.state.said.clear();
            }
            Err(error) if copy.contains(PIECES_FORMAT) => {
                self.state.said = text::cant_set_down(&error.to_string());
            }
            Err(_) => self.state.said = text::other_text(copy),
        }
    }

    /// Places a copy beside the selection.
    pub(super) fn duplicate(&mut self, ctx: &Context) {
        let group = group_of(self.state.selection, &self.state.group);
        if group.is_empty() {
            text::NOTHING_TO_COPY.now().clone_into(&mut self.state.said);
            return;
        }
        let (job, layout) = (self.document.job(), &self.document.plan().layout);
        let made = beside(job, layout, &group).and_then(|stand| set_down(job, &stand));
        match made {
            Some((edit, copies)) => {
                let label = text::duplicate_of(text::group_words(&group));
                self.carry_out(ctx, vec![Action::Edit(label, edit), edits::group::held(copies)]);
            }
            None => text::NO_ROOM_BESIDE.now().clone_into(&mut self.state.said),
        }
    }
}
