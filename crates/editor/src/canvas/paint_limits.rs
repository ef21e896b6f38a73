//! Zones where modules may not be, by the same limits that the check uses.

use super::Canvas;
use super::brush::Brush;
use super::gesture::Gesture;
use crate::Document;
use crate::state::State;
use chalkcourse_geometry::RoofFace;
use chalkcourse_job::BlockId;
use chalkcourse_limits::{KeepOut, KeepOutContext, keep_outs};
use chalkcourse_plan::Plan;
use egui::Stroke;
use std::sync::Arc;

/// Below this scale, in points per metre, zones are only drawn on the face with the selection: a setback is a point or
/// two wide there.
const ALL_FROM: f64 = 8.0;

/// The zones of the faces that show them, cached per plan.
#[derive(Clone, Debug)]
pub(crate) struct Zones {
    plan: Arc<Plan>,
    dragged: Option<BlockId>,
    /// By face; `None` if not drawn.
    faces: Vec<Option<OfFace>>,
}

/// The zones of one face, cached while its keep-outs are the same.
#[derive(Clone, Debug)]
struct OfFace {
    face: RoofFace,
    keep_outs: Vec<KeepOut>,
    zones: chalkcourse_limits::Zones,
}

impl Zones {
    /// For a dragged block, other blocks are obstacles in addition to the face's own limits.
    fn of(
        document: &Document,
        dragged: Option<BlockId>,
        shows: impl Fn(usize) -> bool,
        before: Option<Self>,
    ) -> Self {
        let (job, plan) = (document.job(), document.plan());
        let layout = &plan.layout;
        let mut given = KeepOutContext::as_laid(job, layout);
        let face_of = |id: BlockId| layout.block(id).map(|block| block.face);
        let on = dragged.and_then(face_of);
        given.standing.retain(|id| on.is_some() && Some(*id) != dragged && face_of(*id) == on);
        let mut before = before.map_or_else(Vec::new, |zones| zones.faces).into_iter();
        let faces = layout.roof.faces.iter().enumerate().map(|(index, face)| {
            let before = before.next().flatten();
            if !shows(index) {
                return None;
            }
            let keep_outs = keep_outs(job, layout, index, &given);
            let same = before.filter(|it| it.keep_outs == keep_outs && it.face == *face);
            Some(same.unwrap_or_else(|| OfFace {
                zones: chalkcourse_limits::Zones::of(face, &keep_outs),
                face: face.clone(),
                keep_outs,
            }))
        });
        let faces = faces.collect();
        Self { plan: Arc::clone(plan), dragged, faces }
    }

    /// Whether any is drawn.
    pub(super) fn are_drawn(&self) -> bool {
        self.faces.iter().any(Option::is_some)
    }
}

/// The block that a drag moves or changes.
fn dragged(gesture: Option<&Gesture>) -> Option<BlockId> {
    match gesture? {
        Gesture::MoveBlock { start, .. }
        | Gesture::ResizeBlock { start, .. }
        | Gesture::ShiftRow { start, .. } => Some(start.id),
        _ => None,
    }
}

pub(super) fn zones(brush: &Brush, document: &Document, state: &State, own: &mut Canvas) {
    let dragged = dragged(own.drag.gesture.as_ref());
    let layout = &document.plan().layout;
    let held = state.selection.face(document.job()).and_then(|id| layout.face(id)).map(|(index, _)| index);
    let near = brush.space.camera.scale >= ALL_FROM;
    let shows = |index: usize| brush.space.shows(index) && (near || held == Some(index));
    let kept = own.zones.take();
    let same = |zones: &Zones| {
        Arc::ptr_eq(&zones.plan, document.plan())
            && zones.dragged == dragged
            && zones.faces.iter().enumerate().all(|(index, it)| it.is_some() == shows(index))
    };
    let zones = match kept {
        Some(zones) if same(&zones) => zones,
        kept => Zones::of(document, dragged, shows, kept),
    };
    let stroke = Stroke::new(1.0, brush.palette.zone);
    for it in zones.faces.iter().flatten() {
        // Dotted around the free area for modules, dashed around what is not allowed for the lowest row.
        for (shapes, dashes) in [(&it.zones.free, (2.0, 4.0)), (&it.zones.not_lowest, (7.0, 4.0))] {
            for shape in shapes {
                let in_plan = shape.map(|p| it.face.plane.to_plan(p));
                brush.keep_off_border(&in_plan);
                brush.outline(&in_plan, stroke, Some(dashes));
            }
        }
    }
    own.zones = Some(zones);
}
