//! The accessibility tree of the drawing: each object has a name, a position and can be selected by keyboard.

use super::Stage;
use super::hit::cell_rect;
use super::item::item;
use crate::action::Actions;
use crate::state::State;
use crate::{Document, Selection, text};
use chalkcourse_job::Cell;
use egui::{Role, Ui, WidgetInfo};

/// Exposes every painted object of the frame.
pub(crate) fn tell_things(
    ui: &mut Ui,
    stage: &Stage,
    document: &Document,
    state: &State,
    actions: &mut Actions,
) {
    let layout = &document.plan().layout;
    let job = document.job();
    let units = job.units;
    stage.response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, text::drawing(job, state.view)));
    super::picture::tell(ui, stage, document, state);
    super::part::tell(ui, stage, document, state, actions);
    let space = &stage.space;
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if space.shows(index) {
            let points = face.plan.outer.iter().map(|&p| space.screen_from_plan(p));
            let words = || text::face_words(&placed.name, face, units);
            item(ui, stage, points, Selection::Face(placed.id), state.selection, words, actions);
        }
    }
    for penetration in &layout.penetrations {
        if space.face_on.is_none_or(|(face, _)| penetration.on_face(face).is_some()) {
            let points = penetration.plan.outer.iter().map(|&p| space.screen_from_plan(p));
            let words = || text::penetration_words(penetration);
            item(ui, stage, points, Selection::Penetration(penetration.id), state.selection, words, actions);
        }
    }
    for junction in job.boxes.iter().filter(|it| super::hit::shows_box(space, layout, it)) {
        let points = super::paint_wires::box_corners(space.screen_from_plan(junction.at));
        let leads_here = job.circuits.iter().filter(|circuit| circuit.to == Some(junction.id)).count();
        let words = || format!("{}: {}", junction.name, text::box_words(leads_here));
        item(ui, stage, points, Selection::JunctionBox(junction.id), state.selection, words, actions);
    }
    for placed in layout.blocks.iter().filter(|placed| space.shows(placed.face)) {
        let (Some(face), Some(block)) = (layout.roof.faces.get(placed.face), job.block(placed.id)) else {
            continue;
        };
        let on_screen = |rect: chalkcourse_geometry::Rect| {
            rect.corners().map(|corner| space.screen_from_frame(&face.plane, corner))
        };
        let bounds = super::hit::block_rect(job, block);
        let words = || text::block_words(block, placed.modules.len());
        item(ui, stage, on_screen(bounds), Selection::Block(block.id), state.selection, words, actions);
        if state.selection.block() != Some(block.id) {
            continue;
        }
        for row in 0..block.rows.min(100) {
            for column in 0..block.columns.min(100) {
                let cell = Cell { row, column };
                let words = || text::module_words(cell, block.off.contains(&cell));
                let held = Selection::Module { block: block.id, cell };
                item(
                    ui,
                    stage,
                    on_screen(cell_rect(job, block, cell)),
                    held,
                    state.selection,
                    words,
                    actions,
                );
            }
        }
    }
}
