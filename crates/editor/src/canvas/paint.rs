//! Painting the plan: the order of things.

use super::brush::Brush;
use super::gesture::Gesture;
use super::{
    Canvas, Stage, group, paint_blocks, paint_courses, paint_fill, paint_legend, paint_limits, paint_marks,
    paint_paths, paint_preview, paint_report, paint_roof, paint_wires, paint_zones, part, picture,
};
use crate::state::State;
use crate::{Document, theme};
use egui::Ui;
use std::cell::RefCell;

/// Paints the drawing as the document and the state are now. Its ground is there already: see [`theme::ground`].
pub(crate) fn all(ui: &Ui, stage: &Stage, document: &Document, state: &State, own: &mut Canvas) {
    let brush = Brush {
        painter: ui.painter().with_clip_rect(stage.space.area),
        space: stage.space,
        palette: theme::of(ui),
        words: RefCell::default(),
        obstacles: RefCell::default(),
    };
    picture::paint(&brush, document, state);
    paint_roof::faces(&brush, document, state);
    paint_limits::zones(&brush, document, state, own);
    paint_zones::zones(&brush, document, state, own);
    paint_paths::pathways(&brush, document, state, own);
    paint_roof::penetrations(&brush, document, state);
    paint_blocks::blocks(&brush, document, state);
    paint_roof::penetration_names(&brush, document, state);
    paint_roof::edges(&brush, document, state);
    paint_roof::names(&brush, document, state);
    paint_wires::wires(&brush, document, state);
    paint_marks::signs(&brush, document);
    paint_marks::lights(&brush, document, state);
    paint_report::part(&brush, document, state, own);
    paint_preview::preview(&brush, document, state, own);
    paint_fill::so_far(&brush, document, state);
    paint_fill::near(&brush, document, state, own);
    paint_courses::marks(&brush, document, state);
    paint_courses::ghost(&brush, document, state);
    paint_marks::held(&brush, document, state);
    group::paint(&brush, &document.plan().layout, &state.group);
    if let (Some(Gesture::Box { from, .. }), Some(to)) =
        (&own.drag.gesture, ui.input(|i| i.pointer.latest_pos()))
    {
        group::paint_box(&brush, brush.space.screen_from_plan(*from), to);
    }
    part::paint(&brush, document, state);
    own.tools.of(state.tool).paint(&brush, document, state);
    own.cross.paint(&brush);
    paint_marks::guides(&brush, state, own);
    paint_marks::frame(&brush, document, state);
    paint_legend::legend(&brush, document, state, own);
    own.shown = brush.place_words(&mut own.labels);
}
