use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::gesture::{Drag, Gesture, snapped};
use crate::canvas::{ghost, hit};
use crate::edits::new_block;
use crate::edits::pieces::Placement;
use crate::edits::standing::largest_on_face;
use crate::state::State;
use crate::{Document, Selection, state, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Block, BlockId, Edit};

/// Places a block: of the default size by a click, of any size by a drag.
#[derive(Debug, Default)]
pub(super) struct PlaceBlock {
    /// What a click would place; `None` if it can't.
    ghost: Option<Block>,
}

/// The block that a click at a point in plan would place: on the face there, as large as fits.
///
/// # Errors
/// A message for the user.
fn at_place(at: &Frame, plan: DVec2) -> Result<Block, &'static str> {
    let (job, layout) = (at.document.job(), &at.document.plan().layout);
    let Some((face, plane)) = hit::face(&at.stage.space, layout, plan) else {
        return Err(text::NO_FACE_HERE.now());
    };
    let mut block = new_block(job, face, plane.to_frame(plan));
    snapped(at.scene(), &mut block, at.free());
    largest_on_face(job, layout, &block).ok_or(text::NO_ROOM_HERE.now())
}

impl Tool for PlaceBlock {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions) {
        let space = &at.stage.space;
        let layout = &at.document.plan().layout;
        let over = at.stage.pointer.filter(|_| at.stage.response.hovered() && drag.gesture.is_none());
        self.ghost = over.and_then(|plan| at_place(at, plan).ok());
        if let Some(plan) = at.place() {
            match at_place(at, plan) {
                Ok(block) => {
                    let (label, id) = (text::place_of(text::block_heading(&block.name)), block.id);
                    actions.push(Action::EditAndSelect(label, Edit::PutBlock(block), Selection::Block(id)));
                    actions.push(Action::Use(state::Tool::Select));
                }
                Err(words) => actions.push(Action::Say(words.to_owned())),
            }
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

    fn let_go(&mut self) {
        self.ghost = None;
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Block, 0, document.job())
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        if let Some(block) = &self.ghost {
            let stand = Placement { blocks: vec![block.clone()], penetrations: Vec::new() };
            ghost::paint(brush, document, &stand);
        }
    }
}
