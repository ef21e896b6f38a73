//! Going to an object found by search.

use super::Editor;
use crate::action::Action;
use crate::state::{Camera, Tool, View};
use crate::{Selection, state::PartPlace};
use chalkcourse_geometry::Rect;
use egui::{Context, Vec2};

/// The share of the drawing that the object gets, leaving enough around it for orientation.
const AROUND: f64 = 0.8;

impl Editor {
    /// Selects an object and brings it into view.
    pub(super) fn go_to(&mut self, ctx: &Context, thing: Selection) {
        self.take(Tool::Select);
        let shown_alone =
            matches!(self.state.view, View::FaceOn(face) if thing.face(self.document.job()) == Some(face));
        if !shown_alone {
            self.look(View::Plan);
        }
        let room = self.space.map_or(Vec2::new(600.0, 400.0), |space| space.area.size());
        if let Some(bounds) = self.bounds_of(thing).filter(|_| !shown_alone) {
            let margin = bounds.size().max_element().max(2.0) * AROUND;
            self.state.camera = Camera::fitted(bounds.grown(margin), room);
            (self.state.fit, self.state.fitted_to) = (false, None);
        }
        self.carry_out(ctx, vec![Action::Select(thing)]);
    }

    /// The bounds of an object in plan.
    fn bounds_of(&self, thing: Selection) -> Option<Rect> {
        let (job, layout) = (self.document.job(), &self.document.plan().layout);
        match thing {
            Selection::Face(id) => layout.face(id)?.1.plan.bounds(),
            Selection::Part(id, PartPlace::Whole) => job.part(id)?.outline.bounds(),
            Selection::Penetration(id) => layout.penetration(id)?.plan.bounds(),
            Selection::Block(id) => {
                let placed = layout.block(id)?;
                let plane = layout.roof.faces.get(placed.face)?.plane;
                Rect::around(placed.bounds?.corners().map(|corner| plane.to_plan(corner)))
            }
            Selection::Circuit(id) => {
                let places = self.document.plan().wires.circuit(id)?.devices.iter();
                let in_plan = places.filter_map(|device| {
                    Some(layout.roof.faces.get(device.face)?.plane.to_plan(device.point))
                });
                Rect::around(in_plan)
            }
            Selection::JunctionBox(id) => Rect::around([job.junction_box(id)?.at]),
            _ => None,
        }
    }
}
