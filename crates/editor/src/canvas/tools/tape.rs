use super::{Frame, Tool};
use crate::action::Actions;
use crate::canvas::brush::Brush;
use crate::canvas::cross::Aimed;
use crate::canvas::gesture::{Drag, Gesture};
use crate::canvas::hit;
use crate::canvas::labelling::{RIGHT_BELOW, around, rank};
use crate::canvas::measure::measure;
use crate::state::State;
use crate::{Document, state, text};
use chalkcourse_geometry::{DVec2, Length};
use egui::{Key, Modifiers, PointerButton, Rect};

/// Measures between two points: in plan, and on the slope if both are on one face.
#[derive(Debug, Default)]
pub(super) struct Tape {
    /// The measured line, in plan.
    laid: Option<(DVec2, DVec2)>,
    /// The start of a measurement by keyboard; the other end follows the keys until the next Enter.
    begun: Option<DVec2>,
}

impl Tool for Tape {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, _: &mut Actions) {
        if let Some(origin) = at.drag_from() {
            drag.gesture = Some(Gesture::Tape { from: at.stage.space.plan(origin) });
        }
        if at.stage.response.clicked_by(PointerButton::Primary) {
            (self.laid, self.begun) = (None, None);
        }
        if let Some((from, to)) = self.begun.zip(at.stage.pointer).filter(|_| at.stage.by_keys) {
            self.laid = Some((from, to));
        }
    }

    fn aimed(&self) -> Option<Aimed> {
        Some(Aimed { from: self.begun, typed: false })
    }

    fn keys(&mut self, at: &Frame, _: &mut Actions) {
        if at.ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
            self.begun = match self.begun {
                Some(_) => None,
                None => Some(at.stage.pointer.unwrap_or_else(|| at.middle())),
            };
        }
    }

    fn dragged(&mut self, gesture: &Gesture, to: DVec2) {
        if let Gesture::Tape { from } = gesture {
            self.laid = Some((*from, to));
        }
    }

    fn take_back(&mut self) -> bool {
        let begun = self.begun.take().is_some();
        self.laid.take().is_some() || begun
    }

    fn let_go(&mut self) {
        (self.laid, self.begun) = (None, None);
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        text::hint(state::Tool::Tape, 0, document.job())
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        let Some((from, to)) = self.laid else { return };
        let units = document.job().units;
        let layout = &document.plan().layout;
        let a = hit::face(&brush.space, layout, from);
        let b = hit::face(&brush.space, layout, to);
        let in_plan = Length::from_metres(from.distance(to));
        let words = match (a, b) {
            (Some((one, plane)), Some((other, _))) if one == other => {
                let along = plane.to_frame(to) - plane.to_frame(from);
                text::taped_on_face(Length::from_metres(along.length()), along, in_plan, units)
            }
            _ => text::taped(in_plan, units),
        };
        let (a, b) = (brush.space.screen_from_plan(from), brush.space.screen_from_plan(to));
        measure(brush, [a, b], brush.palette.guide, None);
        brush.say_at(rank::TYPED, around(Rect::from_pos(b), 12.0, RIGHT_BELOW), &words, brush.palette.guide);
    }
}
