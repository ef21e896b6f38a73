use crate::theme::GRAB;
use chalkcourse_geometry::{DVec2, Plane, Rect, dvec2};
use chalkcourse_job::FaceId;
use chalkcourse_layout::Layout;
use chalkcourse_plan::Seen;
use egui::{Pos2, Vec2};

/// The id of the drawing, which has the focus after a click on it.
pub(crate) const DRAWING: &str = "drawing";
/// The id of the 3-D view of the house.
pub(crate) const HOUSE: &str = "solid";

/// What the drawing shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum View {
    /// The roof from above, north up.
    #[default]
    Plan,
    /// One face true to size, eave at the bottom.
    FaceOn(FaceId),
}

/// A view to go to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Look {
    Plan,
    /// The selected face, or the one with a block on it, or the first one.
    FaceOn,
    /// One face, which becomes selected.
    At(FaceId),
}

impl View {
    /// How the user sees directions on a face.
    pub(crate) fn seen(self) -> Seen {
        match self {
            Self::FaceOn(_) => Seen::FaceOn,
            Self::Plan => Seen::Plan,
        }
    }

    /// A step on the screen (right, up) as one in plan.
    pub(crate) fn in_plan(self, layout: &Layout, screen: DVec2) -> DVec2 {
        let Self::FaceOn(face) = self else { return screen };
        layout.face(face).map_or(screen, |(_, on)| on.plane.to_plan(screen) - on.plane.to_plan(DVec2::ZERO))
    }
}

/// Position and scale of the view.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Camera {
    /// The point in the middle of the drawing area, metres.
    pub(crate) centre: DVec2,
    /// Screen points per metre.
    pub(crate) scale: f64,
}

impl Default for Camera {
    fn default() -> Self {
        Self { centre: DVec2::ZERO, scale: 40.0 }
    }
}

/// From kilometres on the screen to fractions of a millimetre.
const SCALES: std::ops::RangeInclusive<f64> = 0.2..=20_000.0;

impl Camera {
    /// Fits `bounds` into an area of `size`, with a margin.
    pub(crate) fn fitted(bounds: Rect, size: Vec2) -> Self {
        let room = dvec2(f64::from(size.x), f64::from(size.y)) * 0.84;
        let need = bounds.size().max(DVec2::splat(1.0));
        let scale = (room / need).min_element().clamp(*SCALES.start(), *SCALES.end());
        Self { centre: bounds.centre(), scale }
    }

    /// Zooms, with the world point `fixed` staying in place.
    pub(crate) fn zoomed(self, factor: f64, fixed: DVec2) -> Self {
        let scale = (self.scale * factor).clamp(*SCALES.start(), *SCALES.end());
        Self { centre: fixed + (self.centre - fixed) * (self.scale / scale), scale }
    }
}

/// The transforms of one frame: plan, a face's frame, and the screen.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Space {
    /// The drawing area.
    pub(crate) area: egui::Rect,
    /// The camera.
    pub(crate) camera: Camera,
    /// The face and its plane in the face-on view.
    pub(crate) face_on: Option<(usize, Plane)>,
    /// Whether touch input is used: then handles are larger.
    pub(crate) fingers: bool,
}

impl Space {
    /// World (plan, or the frame of the face shown) to screen.
    pub(crate) fn screen(&self, world: DVec2) -> Pos2 {
        let from_centre = (world - self.camera.centre) * self.camera.scale;
        let centre = self.area.center();
        Pos2::new(centre.x + from_centre.x as f32, centre.y - from_centre.y as f32)
    }

    /// Screen to world.
    pub(crate) fn world(&self, screen: Pos2) -> DVec2 {
        let from_centre = screen - self.area.center();
        self.camera.centre + dvec2(f64::from(from_centre.x), -f64::from(from_centre.y)) / self.camera.scale
    }

    /// Plan to screen.
    pub(crate) fn screen_from_plan(&self, plan: DVec2) -> Pos2 {
        match &self.face_on {
            None => self.screen(plan),
            Some((_, plane)) => self.screen(plane.to_frame(plan)),
        }
    }

    /// Screen to plan.
    pub(crate) fn plan(&self, screen: Pos2) -> DVec2 {
        match &self.face_on {
            None => self.world(screen),
            Some((_, plane)) => plane.to_plan(self.world(screen)),
        }
    }

    /// The frame of a face to screen.
    pub(crate) fn screen_from_frame(&self, plane: &Plane, frame: DVec2) -> Pos2 {
        match &self.face_on {
            // The plane is nearly always the one shown; going by plan works for all.
            Some((_, shown)) if shown == plane => self.screen(frame),
            _ => self.screen_from_plan(plane.to_plan(frame)),
        }
    }

    /// A distance in screen points as a length in the world, metres.
    pub(crate) fn reach(&self, points: f64) -> f64 {
        points / self.camera.scale
    }

    /// Distance within which something can be grabbed, in points: a target 44 points wide for a finger (WCAG 2.2,
    /// 2.5.5).
    pub(crate) fn grab(&self) -> f32 {
        if self.fingers { 22.0 } else { GRAB }
    }

    /// Enlargement of handles, and of their distance from the object.
    pub(crate) fn grown(&self) -> f32 {
        if self.fingers { 2.0 } else { 1.0 }
    }

    /// Whether a face is drawn: all in plan, only the one shown in the face-on view.
    pub(crate) fn shows(&self, face: usize) -> bool {
        self.face_on.is_none_or(|(shown, _)| shown == face)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn zooming_keeps_the_point_under_the_pointer() {
        let area = egui::Rect::from_min_size(Pos2::new(100.0, 50.0), Vec2::new(600.0, 400.0));
        let camera = Camera { centre: dvec2(3.0, -7.0), scale: 25.0 };
        let space = Space { area, camera, face_on: None, fingers: false };
        let pointer = Pos2::new(180.0, 330.0);
        let under = space.world(pointer);
        let near = Space { camera: camera.zoomed(3.7, under), ..space };
        assert!((near.world(pointer) - under).length() < 1e-9);
        assert!((near.screen(under) - pointer).length() < 1e-3);
    }

    #[test]
    fn fitting_shows_all_with_a_margin() {
        let area = egui::Rect::from_min_size(Pos2::ZERO, Vec2::new(600.0, 400.0));
        let bounds = Rect { min: dvec2(-10.0, 0.0), max: dvec2(50.0, 10.0) };
        let space =
            Space { area, camera: Camera::fitted(bounds, area.size()), face_on: None, fingers: false };
        for corner in bounds.corners() {
            assert!(area.shrink(20.0).contains(space.screen(corner)), "{corner} is off the screen");
        }
    }
}
