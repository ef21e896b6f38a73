//! The picture under the plan: painted below everything else.

use super::Stage;
use super::brush::Brush;
use crate::state::{State, View};
use crate::{Document, text, theme};
use chalkcourse_job::Crop;
use egui::{Align2, Color32, Mesh, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo};

/// Whether the picture is visible: then faces over it are drawn translucent.
pub(super) fn shows(document: &Document, state: &State) -> bool {
    let underlay = document.job().underlay.as_ref();
    state.view == View::Plan && underlay.is_some_and(|underlay| state.pictures.texture(underlay).is_some())
}

/// Paints the picture, or its outline and why it is missing.
pub(super) fn paint(brush: &Brush, document: &Document, state: &State) {
    let Some(underlay) = document.job().underlay.as_ref().filter(|_| state.view == View::Plan) else {
        return;
    };
    let corners = underlay.corners().map(|corner| brush.space.screen_from_plan(corner));
    if let Some(texture) = state.pictures.texture(underlay) {
        let Crop { left, top, right, bottom } = underlay.crop;
        let places = [(left, top), (right, top), (right, bottom), (left, bottom)];
        let tint = Color32::WHITE.gamma_multiply((1.0 - underlay.dim) as f32);
        let mut mesh = Mesh::with_texture(texture.id());
        for (at, (x, y)) in corners.into_iter().zip(places) {
            mesh.vertices.push(egui::epaint::Vertex {
                pos: at,
                uv: Pos2::new(x as f32, y as f32),
                color: tint,
            });
        }
        mesh.add_triangle(0, 1, 2);
        mesh.add_triangle(0, 2, 3);
        brush.painter.add(Shape::mesh(mesh));
    } else if state.pictures.trouble(underlay).is_some() {
        let mut ring = corners.to_vec();
        ring.push(corners[0]);
        brush.painter.extend(Shape::dashed_line(&ring, Stroke::new(1.5, brush.palette.caution), 8.0, 6.0));
        let at = Rect::from_points(&corners).intersect(brush.space.area.shrink(20.0)).center_top();
        let words = text::not_shown(&underlay.path);
        brush.label(
            at + egui::vec2(0.0, 8.0),
            Align2::CENTER_TOP,
            &words,
            theme::size::SMALL,
            brush.palette.caution,
        );
    }
}

/// Exposes the picture to screen readers.
pub(super) fn tell(ui: &Ui, stage: &Stage, document: &Document, state: &State) {
    let Some(underlay) = document.job().underlay.as_ref().filter(|_| state.view == View::Plan) else {
        return;
    };
    let corners = underlay.corners().map(|corner| stage.space.screen_from_plan(corner));
    let rect = Rect::from_points(&corners).intersect(stage.space.area);
    if rect.is_positive() {
        let response = ui.interact(rect, egui::Id::unique("picture under the plan"), Sense::empty());
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, text::picture_words(&underlay.path)));
    }
}
