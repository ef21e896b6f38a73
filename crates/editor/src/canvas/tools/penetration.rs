use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::gesture::Drag;
use crate::state::State;
use crate::{Document, Selection, state, text};
use chalkcourse_job::{Edit, Penetration, PenetrationId};
use egui::Ui;

/// Marks what comes through the roof.
#[derive(Debug, Default)]
pub(super) struct PlacePenetration;

impl Tool for PlacePenetration {
    fn pointer(&mut self, at: &Frame, _: &mut Drag, actions: &mut Actions) {
        let Some(place) = at.place() else { return };
        let job = at.document.job();
        let kind = at.state.kind();
        let id = PenetrationId(job.next_id);
        let penetration = Penetration {
            id,
            name: text::new_penetration_name(job, kind),
            kind,
            at: place,
            shape: kind.usual_shape(),
            clearance: None,
        };
        let label = text::place_of(&penetration.name);
        let edit = Edit::PutPenetration(penetration);
        actions.push(Action::EditAndSelect(label, edit, Selection::Penetration(id)));
    }

    fn bar(&mut self, _: u8, ui: &mut Ui, _: &Document, state: &State, actions: &mut Actions) {
        super::kinds(ui, state, actions);
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Penetration, 0, document.job())
    }
}
