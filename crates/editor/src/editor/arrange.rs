//! Commands for the selected block, and the result of a search for room.

use super::Editor;
use crate::action::Action;
use crate::edits::arranging;
use crate::state::{MakingRoom, same_roof};
use crate::{Selection, text};
use chalkcourse_job::BlockId;
use egui::Context;
use std::sync::Arc;

impl Editor {
    /// Carries out a command for the selected block.
    pub(super) fn arrange(&mut self, ctx: &Context, command: &Action) {
        let document = &self.document;
        let action = match (self.state.selection.block(), command) {
            (None, _) => Action::Say(text::SELECT_A_BLOCK.now().to_owned()),
            (Some(id), Action::Mirror) => arranging::mirrored(document, id),
            (Some(id), Action::CopyToFace) => {
                self.windows.copy_to = Some(id);
                return;
            }
            (Some(id), Action::Split) => arranging::cut_at(document, self.state.selection, id),
            (Some(id), Action::Join) => arranging::joined_with_nearest(document, id),
            (Some(id), Action::Spread(way)) => arranging::spread(document, id, *way),
            (Some(id), Action::AlignTo(to)) => {
                arranging::aligned_with_nearest(document, id, *to, self.state.view.seen())
            }
            (Some(id), _) => {
                self.make_room(ctx, id);
                return;
            }
        };
        self.carry_out(ctx, vec![action]);
    }

    /// Starts a search for the shortest move that clears a block.
    fn make_room(&mut self, ctx: &Context, block: BlockId) {
        if arranging::is_in_trouble(&self.document, block) {
            let job = Arc::clone(self.document.settled());
            self.state.making_room = Some(MakingRoom::begin(ctx, job, block));
            self.state.said.clear();
        } else {
            self.state.said = text::NOTHING_IN_THE_WAY.now().to_owned();
        }
    }

    /// Moves the block after its move was found, as one step.
    pub(super) fn answer_room(&mut self) {
        // A drag in progress must end first.
        if self.document.history().in_gesture() {
            return;
        }
        let Some((job, block, found)) = self.state.making_room.as_ref().and_then(MakingRoom::answer) else {
            return;
        };
        self.state.making_room = None;
        if !same_roof(&job, self.document.settled()) {
            self.state.said = text::ROOM_DROPPED.now().to_owned();
            return;
        }
        match found {
            Ok(Some(slide)) => {
                let name = job.block(block).map(|block| text::block_heading(&block.name)).unwrap_or_default();
                self.edit(text::room_for(&name), &slide.edit);
                self.state.selection = Selection::Block(block);
                self.state.said = text::moved_clear(&name.now(), slide.by, slide.proved, job.units);
                self.state.keep_in_step(&self.document);
            }
            Ok(None) => self.state.said = text::NO_ROOM.now().to_owned(),
            Err(stopped) => self.state.said = stopped.to_owned(),
        }
    }
}
