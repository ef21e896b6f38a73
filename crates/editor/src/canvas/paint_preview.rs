//! Preview of a fix: modules at their new position dashed, removed ones crossed out.

use super::Canvas;
use super::brush::Brush;
use crate::state::{Pointed, State};
use crate::{Document, theme};
use chalkcourse_geometry::{Polygon, Rect};
use chalkcourse_job::{FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, PlacedModule};
use chalkcourse_plan::Plan;
use egui::Stroke;
use std::sync::Arc;

/// The layout after a fix, cached while the pointer is on its button.
#[derive(Debug)]
pub(crate) struct Preview {
    key: FindingKey,
    /// Index of the offered fix.
    which: usize,
    plan: Arc<Plan>,
    job: Resolved,
    layout: Layout,
}

impl Preview {
    /// The key of the finding that the fix clears.
    pub(crate) fn key(&self) -> &FindingKey {
        &self.key
    }
}

/// Draws the preview of the fix whose button has the pointer or the focus.
pub(super) fn preview(brush: &Brush, document: &Document, state: &State, own: &mut Canvas) {
    let Pointed::Fix(key, which) = &state.pointed else {
        own.preview = None;
        return;
    };
    let plan = document.plan();
    let same = |preview: &Preview| (&preview.key, preview.which) == (key, *which);
    let kept = own.preview.take().filter(|preview| same(preview) && Arc::ptr_eq(&preview.plan, plan));
    own.preview = kept.or_else(|| {
        let fix = *state.fixing.of(document.job(), key)?.offered().get(*which)?;
        let job = apply(document.job(), &fix.edit()).ok()?;
        let layout = if job.faces == document.job().faces {
            Layout::on_roof(&job, Arc::clone(&plan.layout.roof))
        } else {
            Layout::of(&job)
        };
        Some(Preview { key: key.clone(), which: *which, plan: Arc::clone(plan), job, layout })
    });
    if let Some(preview) = &own.preview {
        paint(brush, document, preview);
    }
}

fn paint(brush: &Brush, document: &Document, preview: &Preview) {
    let p = brush.palette;
    let dashes = Some((6.0, 4.0));
    let now = document.job();
    for face in &preview.job.faces {
        if now.face(face.id) != Some(face) {
            brush.outline(&face.outline, Stroke::new(2.0, p.note), dashes);
        }
    }
    for penetration in &preview.layout.penetrations {
        if now.penetration(penetration.id).map(|it| it.at)
            != preview.job.penetration(penetration.id).map(|it| it.at)
        {
            brush.outline(&penetration.plan, Stroke::new(1.8, p.note), dashes);
        }
    }
    let changed = |id| preview.job.block(id) != now.block(id) || preview.job.block(id).is_none();
    for placed in plan_blocks(&document.plan().layout, brush).filter(|placed| changed(placed.1.id)) {
        let (face, block) = placed;
        let after = preview.layout.block(block.id);
        for module in &block.modules {
            let stays = after.is_some_and(|after| after.modules.iter().any(|m| m.cell == module.cell));
            if stays {
                continue;
            }
            let [a, b, c, d] = module.rect.corners().map(|p| brush.space.screen_from_frame(&face.plane, p));
            let stroke = Stroke::new(2.0, p.stop);
            brush.painter.line_segment([a, c], stroke);
            brush.painter.line_segment([b, d], stroke);
        }
    }
    for (face, block) in plan_blocks(&preview.layout, brush).filter(|placed| changed(placed.1.id)) {
        let before = document.plan().layout.block(block.id).filter(|before| before.face == block.face);
        let stays = |module: &PlacedModule| before.is_some_and(|before| before.modules.contains(module));
        for module in block.modules.iter().filter(|module| !stays(module)) {
            let outline = on_plan(&face.plane, &module.rect);
            brush.fill(&outline, theme::faint(p.note, 46));
            brush.outline(&outline, Stroke::new(1.8, p.note), dashes);
        }
    }
}

/// Blocks with their faces, of the faces shown.
fn plan_blocks<'l>(
    layout: &'l Layout,
    brush: &'l Brush,
) -> impl Iterator<Item = (&'l chalkcourse_geometry::RoofFace, &'l chalkcourse_layout::PlacedBlock)> {
    layout
        .blocks
        .iter()
        .filter(|block| brush.space.shows(block.face))
        .filter_map(|block| Some((layout.roof.faces.get(block.face)?, block.as_ref())))
}

fn on_plan(plane: &chalkcourse_geometry::Plane, rect: &Rect) -> Polygon {
    Polygon::new(rect.corners().map(|p| plane.to_plan(p)).to_vec())
}
