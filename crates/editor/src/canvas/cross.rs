//! The cross for aiming a tool by keyboard: arrow keys move it over the drawing, and Enter acts like a click there.

use super::arrows::arrows;
use super::brush::Brush;
use super::{Canvas, Stage, has_keys};
use crate::Document;
use crate::action::{Action, Actions};
use crate::state::{Camera, Pane, State, View};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use egui::{Id, Modifiers, Stroke, Ui, Vec2};

/// The field for the length of the side being drawn: its arrow keys aim while it is empty.
pub(super) const LENGTH_FIELD: &str = "next length";
/// Half the size of the cross, in points, and the distance from the border of the drawing at which the view starts to
/// follow.
const ARM: f32 = 11.0;
const MARGIN: f32 = 24.0;

/// The state of a tool that is aimed by keyboard.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Aimed {
    /// The last point set by the tool, in plan.
    pub(super) from: Option<DVec2>,
    /// Whether text is typed, in which Left and Right move the cursor.
    pub(super) typed: bool,
}

/// The cross.
#[derive(Debug, Default)]
pub(super) struct Cross {
    /// Position in plan; `None` while the pointer aims.
    at: Option<DVec2>,
    /// The last point of the tool when the cross was last moved.
    from: Option<DVec2>,
}

impl Cross {
    /// Hides it.
    pub(super) fn put_away(&mut self) {
        *self = Self::default();
    }

    /// Its position in plan.
    pub(super) fn at(&self) -> Option<DVec2> {
        self.at
    }

    /// Whether it was moved since the tool last set a point.
    pub(super) fn is_ahead(&self) -> bool {
        self.at.is_some() && self.at != self.from
    }

    /// Moves it in plan, starting from the tool's last point, or from the middle of the view.
    fn go(&mut self, by: DVec2, middle: DVec2) {
        self.at = Some(self.at.or(self.from).unwrap_or(middle) + by);
    }

    /// Restarts from the tool's last point after it has set one.
    fn follow(&mut self, from: Option<DVec2>) {
        if from != self.from {
            self.from = from;
            self.at = self.at.map(|at| from.unwrap_or(at));
        }
    }

    /// Paints it.
    pub(super) fn paint(&self, brush: &Brush) {
        let Some(at) = self.at else { return };
        let at = brush.space.screen_from_plan(at);
        for (color, width) in [(brush.palette.ground, 4.0), (brush.palette.accent, 2.0)] {
            let stroke = Stroke::new(width, color);
            brush.painter.line_segment([at - Vec2::X * ARM, at + Vec2::X * ARM], stroke);
            brush.painter.line_segment([at - Vec2::Y * ARM, at + Vec2::Y * ARM], stroke);
        }
    }
}

/// Handles the arrow keys for aiming, before a text field of the strip does.
pub(super) fn walk(ui: &Ui, document: &Document, state: &State, own: &mut Canvas) {
    let Some(aimed) = own.tools.of(state.tool).aimed() else {
        own.cross.put_away();
        return;
    };
    own.cross.follow(aimed.from);
    if ui.input(|input| input.pointer.delta() != Vec2::ZERO || input.pointer.any_pressed()) {
        own.cross.at = None;
    }
    let in_field = ui.memory(|memory| memory.has_focus(Id::unique(LENGTH_FIELD)));
    let mine = in_field || has_keys(ui);
    if !mine || state.desk.keys() != Pane::Drawing || egui::Popup::is_any_open(ui.ctx()) {
        return;
    }
    let lengths = [
        (Modifiers::SHIFT, Length::from_feet(10.0)),
        (Modifiers::ALT, Length::from_inches(1.0)),
        (Modifiers::NONE, Length::from_feet(1.0)),
    ];
    if let Some(by) = arrows(ui, &lengths, !(in_field && aimed.typed)) {
        own.cross.go(state.view.in_plan(&document.plan().layout, by), middle(document, state));
    }
}

/// The middle of the visible area, in plan.
pub(super) fn middle(document: &Document, state: &State) -> DVec2 {
    let centre = state.camera.centre;
    match state.view {
        View::Plan => centre,
        View::FaceOn(face) => {
            document.plan().layout.face(face).map_or(centre, |(_, on)| on.plane.to_plan(centre))
        }
    }
}

/// Scrolls the view to follow the cross near the border.
pub(super) fn keep_in_view(stage: &Stage, own: &Canvas, actions: &mut Actions) {
    let Some(at) = own.cross.at else { return };
    let room = stage.space.area.shrink(MARGIN);
    let at = stage.space.screen_from_plan(at);
    if room.contains(at) || !room.is_positive() {
        return;
    }
    let over = at - room.clamp(at);
    let over = dvec2(f64::from(over.x), -f64::from(over.y)) / stage.space.camera.scale;
    let camera = Camera { centre: stage.space.camera.centre + over, ..stage.space.camera };
    actions.push(Action::See(camera, None));
}
