use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::gesture::{Drag, Gesture, snapped};
use crate::canvas::hit;
use crate::edits::new_block;
use crate::state::State;
use crate::{Document, Selection, state, text};
use chalkcourse_job::{BlockId, Edit};

/// Places a block: of the usual size at a click, of any over a drag.
#[derive(Debug, Default)]
pub(super) struct PlaceBlock;

impl Tool for PlaceBlock {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions) {
        let space = &at.stage.space;
        let layout = &at.document.plan().layout;
        if let Some(plan) = at.place() {
            let Some((face, plane)) = hit::face(space, layout, plan) else {
                actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
                return;
            };
            let mut block = new_block(at.document.job(), face, plane.to_frame(plan));
            snapped(at.scene(), &mut block, at.free());
            let (label, id) = (text::place_of(&text::block_name(&block.name)), block.id);
            actions.push(Action::EditAndSelect(label, Edit::PutBlock(block), Selection::Block(id)));
            actions.push(Action::Use(state::Tool::Select));
        }
        if let Some(origin) = at.drag_from() {
            let plan = space.plan(origin);
            drag.gesture = hit::face(space, layout, plan).map(|(face, plane)| Gesture::NewBlock {
                face,
                plane,
                from: plane.to_frame(plan),
            });
            if drag.gesture.is_none() {
                actions.push(Action::Say(text::NO_FACE_HERE.now().to_owned()));
            }
        }
    }

    fn dropped(&mut self, _: Gesture, at: &Frame, actions: &mut Actions) {
        let id = BlockId(at.document.settled().next_id);
        actions.push(Action::Commit);
        if at.document.job().block(id).is_some() {
            actions.push(Action::Select(Selection::Block(id)));
            actions.push(Action::Use(state::Tool::Select));
        }
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Block, 0, document.job())
    }
}
