//! Parts of the house on the drawing: wall lines, draggable corners, and the location of an error.

use super::Stage;
use super::brush::Brush;
use super::hit::{part_corners, part_held};
use super::labelling::{ABOVE_RIGHT, around, rank};
use crate::action::Actions;
use crate::state::{PartPlace, State, View};
use crate::{Document, Selection, text, theme};
use chalkcourse_job::PartKind;
use egui::{Pos2, Stroke, Ui};

/// The wall lines and corners of the selected part, the outlines of parts without faces, and the location of an error.
pub(super) fn paint(brush: &Brush, document: &Document, state: &State) {
    if state.view != View::Plan {
        return;
    }
    let (job, p) = (document.job(), brush.palette);
    for part in job.parts.iter().filter(|part| part.kind == PartKind::Chimney) {
        brush.outline(&part.outline, Stroke::new(1.5, p.line), None);
    }
    if let Some(part) = part_held(job, state.selection) {
        brush.outline(&part.outline, Stroke::new(1.6, p.accent), Some((7.0, 4.0)));
        if let Selection::Part(_, PartPlace::Side { ring, side }) = state.selection
            && let Some((.., a, b)) = part.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))
        {
            let ends = [a, b].map(|end| brush.space.screen_from_plan(end));
            brush.painter.line_segment(ends, Stroke::new(3.5, p.accent));
        }
        for (ring, corner, at) in part_corners(part) {
            let this = state.selection == Selection::Part(part.id, PartPlace::Corner { ring, corner });
            super::paint_marks::handle(brush, brush.space.screen_from_plan(at), this);
        }
    }
    if let Some(spot) = state.trouble {
        let at = brush.space.screen_from_plan(spot);
        brush.painter.circle_stroke(at, 12.0, Stroke::new(2.5, p.stop));
        let around = around(egui::Rect::from_center_size(at, egui::Vec2::splat(24.0)), 2.0, ABOVE_RIGHT);
        brush.say_at(rank::TYPED, around, text::TROUBLE_HERE.now(), p.stop);
    }
}

/// Exposes parts, and corners and sides of the selected one, to screen readers and keyboard focus.
pub(super) fn tell(ui: &mut Ui, stage: &Stage, document: &Document, state: &State, actions: &mut Actions) {
    if state.view != View::Plan {
        return;
    }
    let job = document.job();
    let space = &stage.space;
    let mut item = |ui: &mut Ui, points: Vec<Pos2>, what: Selection, words: &dyn Fn() -> String| {
        super::item::item(ui, stage, points, what, state.selection, words, actions);
    };
    for part in &job.parts {
        let points = part.outline.outer.iter().map(|&c| space.screen_from_plan(c)).collect();
        item(ui, points, Selection::Part(part.id, PartPlace::Whole), &|| text::part_words(part));
    }
    let Some(part) = part_held(job, state.selection) else { return };
    for (ring, corner, at) in part_corners(part) {
        let at = space.screen_from_plan(at);
        let grip = egui::vec2(theme::HANDLE, theme::HANDLE);
        let what = Selection::Part(part.id, PartPlace::Corner { ring, corner });
        item(ui, vec![at - grip, at + grip], what, &|| text::part_corner_words(&part.name, corner));
    }
}
