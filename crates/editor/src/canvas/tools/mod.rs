//! The tools of the drawing. Each is a type that handles pointer and keys, emits actions, and provides its overlay and
//! hint; the rest of the drawing only knows the trait.

mod block;
mod circuit;
mod draft;
mod draw;
mod draw_bar;
mod drawn;
mod junction_box;
mod paste;
mod penetration;
mod picture;
mod select;
mod tape;

use super::cross::{self, Aimed};
use super::gesture::{Drag, Gesture};
use super::hit::{self, Hit};
use super::snap::Scene;
use super::{EscFor, Stage, brush::Brush};
use crate::action::{Action, Actions};
use crate::state::{PictureMode, State, View};
use crate::{Document, edits, state};
use chalkcourse_geometry::DVec2;
use egui::{CursorIcon, Key, PointerButton, Ui};

/// Input for a tool in a frame.
pub(super) struct Frame<'a> {
    pub(super) ui: &'a Ui,
    pub(super) stage: &'a Stage,
    pub(super) document: &'a Document,
    pub(super) state: &'a State,
    /// What is under the pointer; `Hit::Nothing` during a drag.
    pub(super) hit: Hit,
}

impl<'a> Frame<'a> {
    /// Ctrl or Alt disables snapping.
    pub(super) fn free(&self) -> bool {
        self.ui.input(|input| input.modifiers.command || input.modifiers.alt)
    }

    pub(super) fn shift(&self) -> bool {
        self.ui.input(|input| input.modifiers.shift)
    }

    pub(super) fn scene(&self) -> Scene<'a> {
        Scene {
            job: self.document.settled(),
            layout: &self.document.plan().layout,
            reach: self.stage.space.reach(f64::from(self.stage.space.grab())),
            one_face: self.stage.space.face_on.is_some(),
        }
    }

    /// Where on the screen a drag started in this frame; `None` if it moves the view.
    fn drag_from(&self) -> Option<egui::Pos2> {
        let began = self.stage.response.drag_started_by(PointerButton::Primary) && !super::pan_key(self.ui);
        self.ui.input(|input| input.pointer.press_origin()).filter(|_| began)
    }

    /// Where to place something: at a click; by Enter in the middle of the selected or shown face, or else of the
    /// first.
    fn place(&self) -> Option<DVec2> {
        self.stage.pointer.filter(|_| self.stage.response.clicked()).or_else(|| self.place_by_key())
    }

    /// The middle of the visible area, in plan.
    fn middle(&self) -> DVec2 {
        cross::middle(self.document, self.state)
    }

    fn place_by_key(&self) -> Option<DVec2> {
        let elsewhere = self.stage.esc == EscFor::Another;
        if elsewhere || !super::has_keys(self.ui) || !self.ui.input(|input| input.key_pressed(Key::Enter)) {
            return None;
        }
        let layout = &self.document.plan().layout;
        let shown = match self.state.view {
            View::FaceOn(face) => Some(face),
            _ => self.state.selection.face(self.document.job()),
        };
        let held = shown.and_then(|id| layout.face(id)).map(|(_, face)| face);
        let face = held.or_else(|| layout.roof.faces.first())?;
        Some(face.plane.to_plan(face.bounds.centre()))
    }

    /// What is at a point of the screen.
    pub(super) fn hit_at(&self, pos: egui::Pos2) -> Hit {
        let (job, layout) = (self.document.job(), &self.document.plan().layout);
        hit::at(&self.stage.space, job, layout, self.state.selection, pos)
    }
}

/// A tool of the drawing.
pub(super) trait Tool: std::fmt::Debug {
    /// Handles the pointer on the drawing; a drag that starts is put into `drag`.
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions);

    /// The tool's own drag moved to a point in plan.
    fn dragged(&mut self, _gesture: &Gesture, _to: DVec2) {}

    /// The tool's own drag ended.
    fn dropped(&mut self, _gesture: Gesture, _at: &Frame, actions: &mut Actions) {
        actions.push(Action::Commit);
    }

    /// State for aiming by arrow keys; `None` if the tool can't be aimed by them.
    fn aimed(&self) -> Option<Aimed> {
        None
    }

    /// Handles keys of the tool while the drawing has the focus.
    fn keys(&mut self, _at: &Frame, _actions: &mut Actions) {}

    /// The action for a displacement by arrow keys on the screen: by default moves the selection.
    fn nudged(&self, at: &Frame, by: DVec2) -> Option<Action> {
        let (document, state) = (at.document, at.state);
        match state.group.is_empty() {
            true => edits::nudged(document, state.view, state.selection, by),
            false => edits::group::nudged(&state.group, document, state.view, by),
        }
    }

    /// Undoes what Esc undoes before it leaves the tool. Returns false if there is nothing.
    fn take_back(&mut self) -> bool {
        false
    }

    /// Whether that is an undo step: then undo applies to it first, also while a text field is edited.
    fn has_steps(&self) -> bool {
        false
    }

    /// Redoes the last undone step. Returns false if there is none.
    fn step_again(&mut self) -> bool {
        false
    }

    /// Drops unfinished work.
    fn let_go(&mut self) {}

    /// The cursor over an object, outside of drags.
    fn cursor(&self, _over: Hit) -> CursorIcon {
        CursorIcon::Crosshair
    }

    /// Rows of the strip over the drawing.
    fn rows(&self) -> u8 {
        1
    }

    /// A row of the strip, from 0: its inputs and options.
    fn bar(&mut self, _row: u8, _ui: &mut Ui, _document: &Document, _state: &State, _actions: &mut Actions) {}

    /// A hint on what to do next.
    fn hint(&self, document: &Document, state: &State) -> &'static str;

    /// Paints unfinished work over the roof.
    fn paint(&self, _brush: &Brush, _document: &Document, _state: &State) {}

    /// Where the next point would be set, in plan.
    fn next_point(&self) -> Option<DVec2> {
        None
    }
}

/// All tools, each with its unfinished work.
#[derive(Debug, Default)]
pub(super) struct Tools {
    select: select::Select,
    draw: draw::DrawFace,
    penetration: penetration::PlacePenetration,
    block: block::PlaceBlock,
    paste: paste::Paste,
    tape: tape::Tape,
    picture: picture::Picture,
    circuit: circuit::StringModules,
    junction_box: junction_box::PlaceBox,
}

impl Tools {
    pub(super) fn of(&self, tool: state::Tool) -> &dyn Tool {
        match tool {
            state::Tool::Select => &self.select,
            state::Tool::DrawFace => &self.draw,
            state::Tool::Penetration => &self.penetration,
            state::Tool::Block => &self.block,
            state::Tool::Paste => &self.paste,
            state::Tool::Tape => &self.tape,
            state::Tool::Picture => &self.picture,
            state::Tool::Circuit => &self.circuit,
            state::Tool::JunctionBox => &self.junction_box,
        }
    }

    pub(super) fn of_mut(&mut self, tool: state::Tool) -> &mut dyn Tool {
        match tool {
            state::Tool::Select => &mut self.select,
            state::Tool::DrawFace => &mut self.draw,
            state::Tool::Penetration => &mut self.penetration,
            state::Tool::Block => &mut self.block,
            state::Tool::Paste => &mut self.paste,
            state::Tool::Tape => &mut self.tape,
            state::Tool::Picture => &mut self.picture,
            state::Tool::Circuit => &mut self.circuit,
            state::Tool::JunctionBox => &mut self.junction_box,
        }
    }

    /// Drops the unfinished work of all tools.
    pub(super) fn let_go(&mut self) {
        let Self { select, draw, penetration, block, paste, tape, picture, circuit, junction_box } = self;
        let all: [&mut dyn Tool; 9] =
            [select, draw, penetration, block, paste, tape, picture, circuit, junction_box];
        all.into_iter().for_each(Tool::let_go);
    }

    pub(super) fn hand_over(&mut self, pieces: chalkcourse_job::Pieces) {
        self.paste.take(pieces);
    }

    pub(super) fn handle_picture(&mut self, mode: PictureMode) {
        self.picture.handle(mode);
    }
}

/// Chooses the kind of penetration.
fn kinds(ui: &mut Ui, state: &State, actions: &mut Actions) {
    for kind in chalkcourse_job::PenetrationKind::ALL {
        if ui.add(egui::Button::selectable(state.kind() == kind, crate::text::kind(kind))).clicked() {
            actions.push(Action::PenetrationKind(kind));
        }
    }
    ui.separator();
}
