use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::gesture::Drag;
use crate::edits::new_penetration;
use crate::state::State;
use crate::{Document, Selection, state, text};
use chalkcourse_job::Edit;
use egui::Ui;

/// Marks what comes through the roof.
#[derive(Debug, Default)]
pub(super) struct PlacePenetration;

impl Tool for PlacePenetration {
    fn pointer(&mut self, at: &Frame, _: &mut Drag, actions: &mut Actions) {
        let Some(place) = at.place() else { return };
        let kind = at.state.kind();
        let penetration = new_penetration(at.document.job(), kind, place, kind.usual_shape());
        let selection = Selection::Penetration(penetration.id);
        let label = text::place_of(&penetration.name);
        let edit = Edit::PutPenetration(penetration);
        actions.push(Action::EditAndSelect(label, edit, selection));
    }

    fn bar(&mut self, _: u8, ui: &mut Ui, _: &Document, state: &State, actions: &mut Actions) {
        super::kinds(ui, state, actions);
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Penetration, 0, document.job())
    }
}
