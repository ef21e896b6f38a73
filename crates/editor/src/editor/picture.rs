//! The picture under the plan: requested, read in the background, placed.

use super::Editor;
use crate::action::Action;
use crate::state::{PictureMode, Tool, View, replaced};
use crate::text;
use chalkcourse_job::{Crop, Edit, Underlay};
use egui::Context;
use std::path::Path;

/// Initial width of a picture as a share of the view.
const SHARE: f64 = 0.7;
/// Initial fading of a picture.
const DIM: f64 = 0.25;

impl Editor {
    /// Reads the picture of the job, and places a requested one once it is read.
    pub(super) fn update_pictures(&mut self, ctx: &Context) {
        if let Some(wanted) = self.state.pictures.answer(ctx) {
            match wanted.found {
                Ok((sha256, pixels)) => self.lay(ctx, &wanted.path, &sha256, pixels),
                Err(words) => self.wrong(text::CANT_LAY.now(), words),
            }
        }
        let underlay = self.document.job().underlay.as_ref();
        self.state.pictures.keep_in_step(ctx, underlay);
    }

    /// Starts to read a picture for the plan.
    pub(super) fn lay_picture(&mut self, ctx: &Context, path: &Path) {
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        self.state.pictures.ask(ctx, &path);
    }

    fn lay(&mut self, ctx: &Context, path: &Path, sha256: &str, pixels: [u32; 2]) {
        let path = path.to_string_lossy();
        let underlay = match &self.document.settled().underlay {
            Some(there) => Underlay { crop: Crop::default(), ..replaced(there, &path, sha256, pixels) },
            None => {
                let seen = self.space.map_or(800.0, |space| f64::from(space.area.width()));
                let wide = seen * SHARE / self.state.camera.scale;
                Underlay {
                    path: path.clone().into_owned(),
                    sha256: sha256.to_owned(),
                    pixels,
                    at: self.state.camera.centre,
                    turn: 0.0,
                    metres_per_pixel: wide / f64::from(pixels[0].max(1)),
                    dim: DIM,
                    crop: Crop::default(),
                }
            }
        };
        self.look(View::Plan);
        let edit = Edit::SetUnderlay(Some(underlay));
        self.carry_out(ctx, vec![Action::Edit(text::LAY_A_PICTURE.into(), edit)]);
        self.take(Tool::Picture);
        self.canvas.handle_picture(PictureMode::Scale);
        self.state.said = text::picture_laid(&path);
    }
}
