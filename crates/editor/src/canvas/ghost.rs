//! A preview of what a click would place.

use super::brush::Brush;
use crate::edits::pieces::Placement;
use crate::{Document, theme};
use chalkcourse_job::Penetration;
use chalkcourse_layout::{PlacedBlock, outline_on_deck};
use egui::{Pos2, Shape, Stroke};

/// Paints modules dashed, and penetrations by their outline.
pub(super) fn paint(brush: &Brush, document: &Document, stand: &Placement) {
    let (job, layout) = (document.job(), &document.plan().layout);
    let stroke = Stroke::new(1.6, brush.palette.accent);
    let fill = theme::faint(brush.palette.accent, 46);
    for block in &stand.blocks {
        let Some((index, face)) = layout.face(block.face) else { continue };
        for module in PlacedBlock::of(block, index, &job.kit).modules {
            let corners = module.rect.corners().map(|p| brush.space.screen_from_frame(&face.plane, p));
            dashed(brush, corners.to_vec(), fill, stroke);
        }
    }
    for penetration in &stand.penetrations {
        dashed(brush, outline(brush, document, penetration), fill, stroke);
    }
}

fn outline(brush: &Brush, document: &Document, penetration: &Penetration) -> Vec<Pos2> {
    let faces = document.plan().layout.roof.faces.iter();
    let plane = faces.filter(|face| face.sound && face.plan.contains(penetration.at)).map(|face| face.plane);
    let plane = plane.max_by(|a, b| a.height_at(penetration.at).total_cmp(&b.height_at(penetration.at)));
    let deck = outline_on_deck(&penetration.shape);
    let on_plan = |corner| match &plane {
        Some(plane) => plane.to_plan(plane.to_frame(penetration.at) + corner),
        None => penetration.at + corner,
    };
    deck.outer.into_iter().map(|corner| brush.space.screen_from_plan(on_plan(corner))).collect()
}

fn dashed(brush: &Brush, corners: Vec<Pos2>, fill: egui::Color32, stroke: Stroke) {
    let mut line = corners.clone();
    line.extend(corners.first().copied());
    brush.painter.add(Shape::convex_polygon(corners, fill, Stroke::NONE));
    brush.painter.extend(Shape::dashed_line(&line, stroke, 6.0, 4.0));
}
