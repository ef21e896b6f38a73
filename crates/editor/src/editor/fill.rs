//! Filling faces: starting a fill, and applying its result.

use super::Editor;
use crate::state::{How, List, same_roof};
use crate::{Selection, text};
use chalkcourse_job::{Edit, FaceId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Fill, Mode, fill_edit};
use egui::Context;
use std::sync::Arc;

impl Editor {
    /// Starts to fill faces, by default all that may carry modules.
    pub(super) fn fill(&mut self, ctx: &Context, mut faces: Vec<FaceId>) {
        let job = Arc::clone(self.document.settled());
        if faces.is_empty() {
            faces = fillable(&job, &self.document.plan().layout);
        }
        self.state.list = List::Fill;
        if faces.is_empty() {
            self.state.fill.said = text::NO_FACE_TO_FILL.now().to_owned();
        } else {
            self.state.fill.start(ctx, job, faces);
        }
    }

    /// Applies a completed fill to its faces, as one step.
    pub(super) fn answer_fill(&mut self, ctx: &Context) {
        self.state.fill.hear();
        // A drag in progress must end first.
        if self.document.history().in_gesture() {
            return;
        }
        let Some(answer) = self.state.fill.answer() else { return };
        if !same_roof(&answer.job, self.document.settled()) {
            self.state.fill.said = text::FILL_DROPPED.now().to_owned();
            return;
        }
        match answer.fills {
            None => self.state.fill.said = text::FILL_BROKE.now().to_owned(),
            Some(Err(error)) => self.state.fill.said = text::sentence(&error.to_string()),
            Some(Ok(fills)) if answer.stopped => {
                // By worth or to a number, fewer modules may be what was asked for.
                let most = !matches!(answer.how.mode, Mode::ByWorth(_) | Mode::ToNumber(_));
                let better = |fill: &Fill| !most || fill.modules > standing(&answer.job, fill.face);
                self.put_fill(ctx, fills.into_iter().filter(better).collect(), answer.how);
            }
            Some(Ok(fills)) => self.put_fill(ctx, fills, answer.how),
        }
    }

    fn put_fill(&mut self, ctx: &Context, fills: Vec<Fill>, how: How) {
        if fills.is_empty() {
            self.state.fill.said = text::FILL_STOPPED.now().to_owned();
            return;
        }
        let job = Arc::clone(self.document.settled());
        let edit = Edit::Several(fills.iter().map(|fill| fill_edit(&job, fill)).collect());
        let label = text::fill_of(&job, &fills);
        if let Err(error) = self.document.edit(label, &edit) {
            self.state.fill.said = text::sentence(&error.to_string());
            return;
        }
        self.state.said = text::filled(&fills);
        let after = self.document.settled();
        let gone = job.blocks.iter().filter(|block| after.block(block.id).is_none());
        let gone: Vec<&str> = gone.map(|block| block.name.as_str()).collect();
        if !gone.is_empty() {
            self.state.said = text::filled_in_place_of(&self.state.said, &gone);
        }
        if let [fill] = fills.as_slice() {
            self.state.selection = Selection::Face(fill.face);
        }
        self.state.fill.list(ctx, Arc::clone(self.document.settled()), fills, how);
        self.state.keep_in_step(&self.document);
    }
}

/// Modules on a face that a fill would replace.
fn standing(job: &Resolved, face: FaceId) -> usize {
    let goes = job.blocks.iter().filter(|block| block.face == face && !block.locked);
    goes.map(|block| block.cells().count()).sum()
}

/// The faces that may carry modules; all if none may, so that the result says why.
fn fillable(job: &Resolved, layout: &Layout) -> Vec<FaceId> {
    let pitch =
        chalkcourse_rules::RULES.iter().any(|rule| rule.code == "pitch" && rule.why_not(job).is_none());
    let carries = |index: usize| {
        let steep = job.faces.get(index).is_some_and(|face| face.pitch >= job.kit.least_pitch);
        (steep || !pitch) && layout.roof.faces.get(index).is_some_and(|face| face.sound)
    };
    let may: Vec<FaceId> =
        job.faces.iter().enumerate().filter(|(index, _)| carries(*index)).map(|(_, face)| face.id).collect();
    if may.is_empty() { job.faces.iter().map(|face| face.id).collect() } else { may }
}
