//! Copying to the clipboard: the drawing as an image or as vector graphics; the history as edits.

use super::Editor;
use crate::state::View;
use crate::text;
use chalkcourse_job::edits_to_text;
use chalkcourse_sheets::Output;
use egui::{ColorImage, Context, Rect, ScreenshotCallback, Vec2, ViewportCommand};
use std::sync::Arc;

impl Editor {
    /// Copies the drawing as an image, after the window was painted.
    pub(super) fn copy_picture(&mut self, ctx: &Context) {
        let Some(area) = self.space.map(|space| space.area) else { return };
        let (painted, scale) = (ctx.clone(), ctx.pixels_per_point());
        let take = ScreenshotCallback::new(move |image: Arc<ColorImage>| {
            let [width, height] = image.size.map(|pixels| pixels as f32 / scale);
            let all = Rect::from_min_size(egui::Pos2::ZERO, Vec2::new(width, height));
            painted.copy_image(image.region(&area.intersect(all), Some(scale)));
            painted.request_repaint();
        });
        ctx.send_viewport_cmd(ViewportCommand::Screenshot(take));
        self.state.said = text::PICTURE_COPIED.now().to_owned();
    }

    /// Copies the current view as an SVG file: the plan, or the face shown.
    pub(super) fn copy_svg(&mut self, ctx: &Context) {
        let (job, plan) = (self.document.job(), self.document.plan());
        let output = match self.state.view {
            View::FaceOn(face) => plan.layout.face(face).map(|(index, _)| Output::FaceDrawing(index)),
            View::Plan => Some(Output::PlanDrawing),
        };
        self.state.said = match output.and_then(|output| output.text(job, plan).ok()) {
            Some(drawing) => {
                ctx.copy_text(drawing);
                text::SVG_COPIED.now().to_owned()
            }
            None => text::NO_FACE_YET.now().to_owned(),
        };
    }

    /// Copies the steps since the job was opened as an edit script.
    pub(super) fn copy_steps(&mut self, ctx: &Context) {
        match self.steps_text() {
            Ok(steps) => {
                ctx.copy_text(steps);
                self.state.said = text::STEPS_COPIED.now().to_owned();
            }
            Err(words) => self.wrong(text::CANT_COPY_STEPS.now(), words),
        }
    }

    /// The steps since the job was opened as an edit script, without undone ones.
    pub(super) fn steps_text(&self) -> Result<String, String> {
        edits_to_text(self.document.history().edits()).map_err(|error| error.to_string())
    }
}
