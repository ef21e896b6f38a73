//! The drawing: where it is, what the pointer and keys do on it, and how it is painted.
//!
//! A frame goes: [`stage`] takes the room and moves the view, [`interact::run`] turns pointer and keys into
//! actions, the editor carries them out, [`paint::all`] draws the plan as it is then. [`Canvas`] has what is half done.

mod arrows;
mod brush;
mod cross;
mod crossings;
mod dimensions;
mod draw_bar;
mod gesture;
mod ghost;
mod group;
mod hit;
mod interact;
mod item;
mod keys;
mod labelling;
mod measure;
mod menu;
mod outline;
mod paint;
mod paint_blocks;
mod paint_courses;
mod paint_fill;
mod paint_legend;
mod paint_limits;
mod paint_marks;
mod paint_paths;
mod paint_preview;
mod paint_report;
mod paint_roof;
mod paint_wires;
mod paint_zones;
mod part;
mod picture;
mod snap;
mod tools;
mod words;

pub(crate) use dimensions::dimension_fields;
pub(crate) use draw_bar::draw_bar;
pub(crate) use interact::run as interact;
pub(crate) use outline::tell_things;
pub(crate) use paint::all as paint;
pub(crate) use paint_wires::is_shown as shows_circuits;

use crate::Document;
use crate::action::{Action, Actions};
use crate::state::{DRAWING, PictureMode, RoofReports, Space, State, Tool, View};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{FindingKey, Pieces};
use cross::Cross;
use dimensions::Typing;
use egui::{Key, PointerButton, Response, Sense, Ui};
use gesture::Drag;
use labelling::Shown;
use menu::MenuByKey;
use paint_limits::Zones;
use paint_paths::Paths;
use paint_preview::Preview;
use paint_zones::WindZones;
use tools::Tools;

/// What the drawing keeps for itself: what is half done with its tools, and what it worked out to paint.
#[derive(Debug, Default)]
pub(crate) struct Canvas {
    /// The tools, each with what is half done with it.
    tools: Tools,
    /// Where a tool aims by keys.
    cross: Cross,
    /// The menu of what is held, where a key opened it.
    menu: MenuByKey,
    drag: Drag,
    /// The dimension that is being typed over.
    typing: Option<Typing>,
    /// The zones where modules may not stand, kept for the next frame.
    zones: Option<Zones>,
    /// The labels of the drawing as they stand in this frame.
    shown: Vec<Shown>,
    /// Where they were placed, kept for the next frame.
    labels: chalkcourse_labels::Last,
    /// The pathways, kept for the next frame.
    paths: Option<Paths>,
    /// Zones of wind suction, kept for the next frame.
    wind_zones: Option<WindZones>,
    /// What a fix would do, kept while its button is pointed at.
    preview: Option<Preview>,
    /// The roof report of which a part is lit.
    reports: RoofReports,
}

impl Canvas {
    /// Drops what is half done: a drag, a face that is being drawn, the tape.
    pub(crate) fn let_go(&mut self) {
        self.tools.let_go();
        self.cross.put_away();
        self.drag.end();
    }

    /// The pointer of the drawing is where the keys aim, while they do.
    pub(crate) fn aim(&self, stage: &mut Stage, actions: &mut Actions) {
        stage.pointer = self.cross.at().or(stage.pointer);
        stage.by_keys = self.cross.is_ahead();
        cross::keep_in_view(stage, self, actions);
    }

    /// Whether a tool has steps of its own, such as the corners of a face that is half drawn.
    pub(crate) fn has_steps(&self, tool: Tool) -> bool {
        self.tools.of(tool).has_steps()
    }

    /// Where keys aim, in plan.
    pub(crate) fn aimed_at(&self) -> Option<DVec2> {
        self.cross.at()
    }

    pub(crate) fn is_dragging(&self) -> bool {
        self.drag.gesture.is_some()
    }

    /// Rows of the strip over the drawing.
    pub(crate) fn rows_of_bar(&self, tool: Tool) -> u8 {
        self.tools.of(tool).rows()
    }

    /// Takes a step back that is a tool's own. False where none is.
    pub(crate) fn step_back(&mut self, tool: Tool) -> bool {
        self.has_steps(tool) && self.tools.of_mut(tool).take_back()
    }

    /// Does a tool's own step again that was taken back last. False where there is none.
    pub(crate) fn step_again(&mut self, tool: Tool) -> bool {
        self.tools.of_mut(tool).step_again()
    }

    /// Opens the menu of what is held, as a right click does.
    pub(crate) fn open_menu(&mut self) {
        self.menu.ask();
    }

    /// Gives the drag up that is going on; the rest of it does nothing.
    pub(crate) fn drop_gesture(&mut self) {
        self.drag.give_up();
    }

    /// What the pointer does with the picture from here on.
    pub(crate) fn handle_picture(&mut self, mode: PictureMode) {
        self.tools.handle_picture(mode);
    }

    /// Hands the tool that sets copies down what was copied.
    pub(crate) fn hand_over(&mut self, pieces: Pieces) {
        self.tools.hand_over(pieces);
    }

    /// Why what is dragged stopped where it is, in words.
    pub(crate) fn why_there(&self) -> Vec<&str> {
        self.drag.guides.iter().map(|guide| guide.words.as_str()).collect()
    }

    /// The finding whose fix is drawn before it is done.
    pub(crate) fn previewed(&self) -> Option<&FindingKey> {
        self.preview.as_ref().map(Preview::key)
    }
}

/// The room of the drawing in this frame.
pub(crate) struct Stage {
    pub(crate) response: Response,
    pub(crate) space: Space,
    /// Where the pointer is, in plan; none where it is elsewhere.
    pub(crate) pointer: Option<DVec2>,
    /// Keys have moved the pointer since the tool set something.
    pub(crate) by_keys: bool,
    /// The keyboard is with the drawing, and not with a pane beside it.
    pub(crate) keys: bool,
    /// Whose Esc is.
    pub(crate) esc: EscFor,
}

/// What Esc is for when nothing else has the keyboard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum EscFor {
    Drawing,
    /// A window that asks something over the drawing.
    Window,
    /// A menu that was open, or a field or button that had the keyboard, when this frame began: it takes Esc by itself.
    Another,
}

/// Takes the room for the drawing and moves the view by wheel, pinch and drag.
pub(crate) fn stage(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    (keys, esc): (bool, EscFor),
    actions: &mut Actions,
) -> Stage {
    let area = ui.available_rect_before_wrap();
    let id = egui::Id::unique(DRAWING);
    ui.advance_cursor_after_rect(area);
    let response = ui.interact(area, id, Sense::click_and_drag());
    let resized = state.fitted_to.is_some_and(|size| size != area.size());
    let (mut camera, mut fitted_to) = (state.camera, state.fitted_to);
    if (state.fit || resized) && area.width() > 50.0 && area.height() > 50.0 {
        camera = state.fitted(document, area.size());
        fitted_to = Some(area.size());
        actions.push(Action::Fitted);
    }
    let fingers = ui.input(egui::InputState::has_touch_screen);
    let mut space = Space { area, camera, face_on: face_on(document, state), fingers };
    navigate(ui, &response, &mut space);
    if space.camera != camera {
        fitted_to = None;
    }
    if (space.camera, fitted_to) != (state.camera, state.fitted_to) {
        actions.push(Action::See(space.camera, fitted_to));
    }
    let pointer = response.hover_pos().or_else(|| response.interact_pointer_pos());
    Stage { pointer: pointer.map(|pos| space.plan(pos)), by_keys: false, response, space, keys, esc }
}

fn face_on(document: &Document, state: &State) -> Option<(usize, chalkcourse_geometry::Plane)> {
    match state.view {
        View::Plan => None,
        View::FaceOn(face) => document.plan().layout.face(face).map(|(index, face)| (index, face.plane)),
    }
}

fn navigate(ui: &Ui, response: &Response, space: &mut Space) {
    let panned = response.dragged_by(PointerButton::Middle)
        || response.dragged_by(PointerButton::Secondary)
        || response.dragged_by(PointerButton::Primary) && pan_key(ui);
    let mut moved = egui::Vec2::ZERO;
    if panned {
        moved += response.drag_delta();
    }
    let (scroll, pinch, fingers) =
        ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta(), input.multi_touch()));
    if let Some(fingers) = &fingers {
        moved += fingers.translation_delta;
    }
    if moved != egui::Vec2::ZERO {
        let world = chalkcourse_geometry::dvec2(f64::from(moved.x), -f64::from(moved.y)) / space.camera.scale;
        space.camera.centre -= world;
    }
    let factor = f64::from(pinch) * (f64::from(scroll) * 0.0035).exp();
    // Between two fingers the roof stays where they hold it.
    let middle = fingers.map(|fingers| fingers.center_pos).filter(|middle| space.area.contains(*middle));
    if let Some(pointer) = middle.or_else(|| response.hover_pos())
        && factor != 1.0
    {
        let fixed = space.world(pointer);
        space.camera = space.camera.zoomed(factor, fixed);
    }
}

/// Whether keys are for the drawing: it has the keyboard, or nothing has.
fn has_keys(ui: &Ui) -> bool {
    ui.memory(|memory| memory.focused().is_none_or(|focused| focused == egui::Id::unique(DRAWING)))
}

/// Whether the space bar turns a drag into a pan.
pub(crate) fn pan_key(ui: &Ui) -> bool {
    ui.input(|input| input.key_down(Key::Space)) && !ui.ctx().text_edit_focused()
}
