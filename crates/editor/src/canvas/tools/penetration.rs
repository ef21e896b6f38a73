use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::gesture::Drag;
use crate::canvas::ghost;
use crate::edits::new_penetration;
use crate::edits::pieces::Placement;
use crate::state::State;
use crate::{Document, Selection, state, text};
use chalkcourse_job::{Edit, Penetration};
use egui::Ui;

/// Places penetrations.
#[derive(Debug, Default)]
pub(super) struct PlacePenetration {
    /// What a click would place.
    ghost: Option<Penetration>,
}

impl Tool for PlacePenetration {
    fn pointer(&mut self, at: &Frame, _: &mut Drag, actions: &mut Actions) {
        let kind = at.state.kind();
        let new = |place| new_penetration(at.document.job(), kind, place, kind.usual_shape());
        self.ghost = at.stage.pointer.filter(|_| at.stage.response.hovered()).map(new);
        let Some(penetration) = at.place().map(new) else { return };
        let selection = Selection::Penetration(penetration.id);
        let label = text::place_of(&penetration.name);
        let edit = Edit::PutPenetration(penetration);
        actions.push(Action::EditAndSelect(label, edit, selection));
    }

    fn bar(&mut self, _: u8, ui: &mut Ui, _: &Document, state: &State, actions: &mut Actions) {
        super::kinds(ui, state, actions);
    }

    fn let_go(&mut self) {
        self.ghost = None;
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        let stand = Placement { blocks: Vec::new(), penetrations: self.ghost.iter().cloned().collect() };
        ghost::paint(brush, document, &stand);
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Penetration, 0, document.job())
    }
}
