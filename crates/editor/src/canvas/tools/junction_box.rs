use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::cross::Aimed;
use crate::canvas::gesture::Drag;
use crate::canvas::paint_wires::box_sign;
use crate::edits::wiring::placed_box;
use crate::state::State;
use crate::{Document, state, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::BoxStands;
use egui::{Key, Modifiers};

/// Places a junction box.
#[derive(Debug, Default)]
pub(super) struct PlaceBox {
    /// Where one would come at a click, in plan.
    ghost: Option<DVec2>,
}

impl PlaceBox {
    fn place(at: &Frame, plan: DVec2, actions: &mut Actions) {
        actions.push(placed_box(at.document.job(), plan));
        actions.push(Action::Use(state::Tool::Select));
    }
}

impl Tool for PlaceBox {
    fn pointer(&mut self, at: &Frame, _: &mut Drag, actions: &mut Actions) {
        self.ghost = at.stage.pointer.filter(|_| at.stage.response.hovered() || at.stage.by_keys);
        if let Some(plan) = at.stage.pointer.filter(|_| at.stage.response.clicked()) {
            Self::place(at, plan, actions);
        }
    }

    fn aimed(&self) -> Option<Aimed> {
        Some(Aimed::default())
    }

    fn keys(&mut self, at: &Frame, actions: &mut Actions) {
        if at.ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
            Self::place(at, at.stage.pointer.unwrap_or_else(|| at.middle()), actions);
        }
    }

    fn let_go(&mut self) {
        self.ghost = None;
    }

    fn paint(&self, brush: &Brush, _: &Document, _: &State) {
        if let Some(at) = self.ghost {
            box_sign(brush, brush.space.screen_from_plan(at), BoxStands::OnRoof, brush.palette.accent);
        }
    }

    fn hint(&self, _: &Document, _: &State) -> &'static str {
        text::PLACE_BOX_HINT.now()
    }
}
