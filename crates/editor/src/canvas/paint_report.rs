//! Highlights the part of the roof that a row of the roof report is about.

use super::Canvas;
use super::brush::Brush;
use crate::state::{RoofPart, State, View};
use crate::{Document, theme};
use chalkcourse_geometry::dvec2;
use egui::Stroke;

pub(super) fn part(brush: &Brush, document: &Document, state: &State, own: &mut Canvas) {
    let Some(part) = state.lit_roof else { return };
    let stroke = Stroke::new(4.5, brush.palette.light);
    let layout = &document.plan().layout;
    let (kind, only) = match part {
        RoofPart::Face(id) => {
            if let Some((index, face)) = layout.face(id)
                && brush.space.shows(index)
            {
                brush.fill(&face.plan, theme::faint(brush.palette.light, 60));
                brush.outline(&face.plan, stroke, None);
            }
            return;
        }
        RoofPart::Edges(kind) => (kind, None),
        RoofPart::Line(kind, index) => (kind, Some(index)),
    };
    let (view, report) = (state.view, own.reports.of(document));
    let lines =
        report.edges.iter().filter(|row| row.kind == kind).flat_map(|row| row.lines.iter().enumerate());
    for (_, line) in lines.filter(|(index, _)| only.is_none_or(|only| only == *index)) {
        let beside = match view {
            View::Plan => true,
            View::FaceOn(face) => line.face == face.0 || line.other == Some(face.0),
        };
        if beside {
            let [a, b] = line.ends_m.map(|[x, y, _]| brush.space.screen_from_plan(dvec2(x, y)));
            brush.painter.line_segment([a, b], stroke);
        }
    }
}
