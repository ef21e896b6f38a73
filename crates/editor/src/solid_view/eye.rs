//! The camera, controlled by mouse, touch and keys.

use crate::Document;
use chalkcourse_picture::Camera;
use egui::{Context, EventFilter, Key, Modifiers, PointerButton, Rect, Response, Ui};

/// The viewpoint.
#[derive(Debug)]
pub(crate) struct Eye {
    pub(crate) camera: Camera,
    /// Whether the next picture is fitted to the whole house.
    pub(crate) fit: bool,
    /// When it last moved, by the window's clock.
    moved: Option<f64>,
    seen: Option<Camera>,
    /// The size that it was fitted to.
    fitted_to: Option<egui::Vec2>,
}

impl Default for Eye {
    fn default() -> Self {
        Self { camera: Camera::default(), fit: true, moved: None, seen: None, fitted_to: None }
    }
}

/// Seconds without movement after which it counts as still.
const STILL: f64 = 0.15;
/// Degrees per key press.
const TURN: f64 = 7.5;

impl Eye {
    /// Handles mouse, touch and, if they apply, the keys of this frame.
    pub(crate) fn follow(&mut self, ui: &Ui, response: &Response, keys: bool) {
        if response.clicked() || response.drag_started() {
            response.request_focus();
        }
        let filter = EventFilter { tab: false, horizontal_arrows: true, vertical_arrows: true, escape: true };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
        let high = f64::from(response.rect.height().max(1.0));
        let before = self.camera;
        let (scroll, pinch, fingers, shift) = ui.input(|input| {
            (input.smooth_scroll_delta().y, input.zoom_delta(), input.multi_touch(), input.modifiers.shift)
        });
        if let Some(touch) = fingers {
            let moved = touch.translation_delta;
            let turned = f64::from(touch.rotation_delta).to_degrees();
            self.camera = self
                .camera
                .moved(f64::from(moved.x) / high, f64::from(moved.y) / high)
                .turned(-turned, 0.0)
                .nearer(f64::from(touch.zoom_delta));
        } else {
            let by = response.drag_delta();
            let (x, y) = (f64::from(by.x), f64::from(by.y));
            let moves = response.dragged_by(PointerButton::Middle)
                || response.dragged_by(PointerButton::Secondary)
                || response.dragged_by(PointerButton::Primary) && shift;
            if moves {
                self.camera = self.camera.moved(x / high, y / high);
            } else if response.dragged_by(PointerButton::Primary) {
                self.camera = self.camera.turned(x * 0.35, y * 0.25);
            }
            if response.hovered() {
                self.camera = self.camera.nearer(f64::from(pinch) * (f64::from(scroll) * 0.0035).exp());
            }
        }
        let mine = ui.memory(|memory| memory.focused().is_none_or(|focused| focused == response.id));
        if keys && mine && !ui.ctx().text_edit_focused() {
            self.keys(ui);
        }
        if self.camera != before {
            self.fitted_to = None;
        }
    }

    fn keys(&mut self, ui: &Ui) {
        let arrows = [
            (Key::ArrowLeft, -1.0, 0.0),
            (Key::ArrowRight, 1.0, 0.0),
            (Key::ArrowUp, 0.0, 1.0),
            (Key::ArrowDown, 0.0, -1.0),
        ];
        ui.input_mut(|input| {
            for (key, x, y) in arrows {
                let slides = input.count_and_consume_key(Modifiers::SHIFT, key) as f64;
                self.camera = self.camera.moved(-x * slides * 0.05, y * slides * 0.05);
                let turns = input.count_and_consume_key(Modifiers::NONE, key) as f64 * TURN;
                self.camera = self.camera.turned(x * turns, y * turns);
            }
            for (key, factor) in [(Key::Plus, 1.15), (Key::Equals, 1.15), (Key::Minus, 1.0 / 1.15)] {
                let times = input.count_and_consume_key(Modifiers::NONE, key) as i32;
                self.camera = self.camera.nearer(f64::powi(factor, times));
            }
        });
    }

    /// Fits the house into the area if requested, and records whether the camera moved.
    pub(crate) fn settle(&mut self, ctx: &Context, document: &Document, area: Rect) {
        let resized = self.fitted_to.is_some_and(|size| size != area.size());
        if (self.fit || resized) && area.width() > 20.0 && area.height() > 20.0 {
            let points = chalkcourse_solid::outline_points(document.job(), &document.plan().layout);
            self.camera = self.camera.fitted(&points, f64::from(area.width() / area.height()));
            self.fit = false;
            self.fitted_to = Some(area.size());
        }
        if self.seen.is_some_and(|seen| seen != self.camera) {
            self.moved = Some(ctx.input(|input| input.time));
        }
        self.seen = Some(self.camera);
    }

    /// Something else changes the picture for a while.
    pub(crate) fn mark_moving(&mut self, ctx: &Context) {
        self.moved = Some(ctx.input(|input| input.time));
    }

    /// Whether it is still moving; requests a frame for when it will be at rest.
    pub(crate) fn is_moving(&self, ctx: &Context) -> bool {
        let Some(moved) = self.moved else { return false };
        let left = STILL - (ctx.input(|input| input.time) - moved);
        if left > 0.0 {
            ctx.request_repaint_after(std::time::Duration::from_secs_f64(left));
        }
        left > 0.0
    }
}
