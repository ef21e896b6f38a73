use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::gesture::{Drag, snapped};
use crate::canvas::ghost;
use crate::edits::pieces::{Placement, set_down, standing};
use crate::edits::standing::{face_at, keep_on_face};
use crate::state::State;
use crate::{Document, edits, state, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::Pieces;

/// Places what was copied.
#[derive(Debug, Default)]
pub(super) struct Paste {
    pieces: Pieces,
    /// What a click would place; `None` if it can't.
    ghost: Option<Placement>,
}

impl Paste {
    pub(super) fn take(&mut self, pieces: Pieces) {
        *self = Self { pieces, ghost: None };
    }

    /// The placement of the pieces for a click at a point in plan.
    fn at_place(&self, at: &Frame, plan: DVec2) -> Option<Placement> {
        let (job, layout) = (at.document.job(), &at.document.plan().layout);
        let mut stand = standing(job, layout, &self.pieces, plan)?;
        // A single object snaps as if it were dragged.
        if let ([block], []) = (stand.blocks.as_mut_slice(), stand.penetrations.as_slice()) {
            let (scene, was) = (at.scene(), block.clone());
            // Give it an unused id, so that it is not mistaken for the block that it was copied from.
            block.id = chalkcourse_job::BlockId(job.next_id);
            snapped(scene, block, at.free());
            if !keep_on_face(job, layout, block) {
                *block = was;
            }
        }
        let shown = stand
            .blocks
            .iter()
            .all(|block| layout.face(block.face).is_some_and(|(index, _)| at.stage.space.shows(index)));
        shown.then_some(stand)
    }
}

impl Tool for Paste {
    fn pointer(&mut self, at: &Frame, _: &mut Drag, actions: &mut Actions) {
        let over = at.stage.pointer.filter(|_| at.stage.response.hovered());
        self.ghost = over.and_then(|plan| self.at_place(at, plan));
        let Some(plan) = at.place() else { return };
        let job = at.document.job();
        match self.at_place(at, plan).and_then(|stand| set_down(job, &stand)) {
            Some((edit, group)) => {
                let label = text::paste_of(text::group_words(&group));
                actions.push(Action::Edit(label, edit));
                actions.push(edits::group::held(group));
                actions.push(Action::Use(state::Tool::Select));
            }
            None => {
                let on_face = face_at(&at.document.plan().layout, plan).is_some();
                let words = if on_face { text::NO_ROOM_HERE } else { text::NO_FACE_HERE };
                actions.push(Action::Say(words.now().to_owned()));
            }
        }
    }

    fn let_go(&mut self) {
        self.ghost = None;
    }

    fn hint(&self, _: &Document, _: &State) -> &'static str {
        text::PASTE_HINT.now()
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        if let Some(stand) = &self.ghost {
            ghost::paint(brush, document, stand);
        }
    }
}
