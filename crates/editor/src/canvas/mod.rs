//! The drawing: where it is, what the pointer and keys do on it, and how it is painted.
//!
//! A frame goes: [`stage`] takes the room and moves the view, [`interact::run`] turns pointer and keys into
//! actions, the editor carries them out, [`paint::all`] draws the plan as it is then.

mod dimensions;
mod draft;
mod draw_bar;
mod drawn;
mod gesture;
mod group;
mod hit;
mod interact;
mod keys;
mod labelling;
mod menu;
mod new_face;
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
mod paint_zones;
mod part;
mod picture;
mod raise_bar;
mod shaped;
mod snap;

pub(crate) use dimensions::{Dimension, Toward, Typing, show as dimensions};
pub(crate) use draft::{Aim, Draft};
pub(crate) use draw_bar::show as draw_bar;
pub(crate) use drawn::OutlineFor;
pub(crate) use gesture::{Gesture, Growth, grown};
pub(crate) use group::Group;
pub(crate) use hit::face as face_at;
pub(crate) use interact::run as interact;
pub(crate) use keys::delete;
pub(crate) use labelling::Shown;
pub(crate) use new_face::corners_at;
pub(crate) use outline::show as outline;
pub(crate) use paint::{all as paint, severity_sign};
pub(crate) use paint_limits::Zones;
pub(crate) use paint_paths::{Paths, hatch};
pub(crate) use paint_preview::Preview;
pub(crate) use paint_zones::WindZones;
pub(crate) use part::moving as moving_parts;
pub(crate) use picture::{Handling, Mode as PictureMode};
pub(crate) use raise_bar::{fields as raise_fields, usual as usual_roof};
pub(crate) use shaped::Shaped;
pub(crate) use snap::Guide;

use crate::Document;
use crate::desk::Desk;
use crate::view::{Space, View};
use egui::{Key, PointerButton, Response, Sense, Ui};

/// The room of the drawing in this frame.
pub(crate) struct Stage {
    pub(crate) response: Response,
    pub(crate) space: Space,
}

/// The id of the drawing: it has the keyboard after a click on it.
pub(crate) const ID: &str = "drawing";

/// Takes the room for the drawing and moves the view by wheel, pinch and drag.
pub(crate) fn stage(ui: &mut Ui, document: &Document, desk: &mut Desk) -> Stage {
    let area = ui.available_rect_before_wrap();
    let id = egui::Id::unique(ID);
    ui.advance_cursor_after_rect(area);
    let response = ui.interact(area, id, Sense::click_and_drag());
    let resized = desk.fitted_to.is_some_and(|size| size != area.size());
    if (desk.fit || resized) && area.width() > 50.0 && area.height() > 50.0 {
        desk.camera = desk.fitted(document, area.size());
        desk.fit = false;
        desk.fitted_to = Some(area.size());
    }
    let fingers = ui.input(egui::InputState::has_touch_screen);
    let mut space = Space { area, camera: desk.camera, face_on: face_on(document, desk), fingers };
    navigate(ui, &response, &mut space);
    if space.camera != desk.camera {
        desk.fitted_to = None;
        desk.camera = space.camera;
    }
    Stage { response, space }
}

fn face_on(document: &Document, desk: &Desk) -> Option<(usize, chalkcourse_geometry::Plane)> {
    match desk.view {
        View::Plan | View::Solid => None,
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
    ui.memory(|memory| memory.focused().is_none_or(|focused| focused == egui::Id::unique(ID)))
}

/// Whether the space bar turns a drag into a pan.
pub(crate) fn pan_key(ui: &Ui) -> bool {
    ui.input(|input| input.key_down(Key::Space)) && !ui.ctx().text_edit_focused()
}
