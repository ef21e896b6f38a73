//! Marks for the courses pane: the base rail line, the cut courses at head and top, and the result of a proposal.

use super::brush::Brush;
use super::crossings::crossings;
use super::labelling::{ON_IT, around, point, rank};
use crate::state::{
    Ghost, State,
    coursing::{among, block_spoken_of, face_spoken_of},
};
use crate::{Document, text};
use chalkcourse_geometry::{Length, RoofFace, dvec2};
use chalkcourse_labels::Anchor;
use egui::{Color32, Pos2, Shape, Stroke};

/// Marks how a block lies among the courses, while the courses pane is open.
pub(super) fn marks(brush: &Brush, document: &Document, state: &State) {
    let Some(own) = &state.courses else { return };
    let Some(id) = face_spoken_of(document, state.selection, own.face) else { return };
    let Some((_, face)) = document.plan().layout.face(id).filter(|(index, _)| brush.space.shows(*index))
    else {
        return;
    };
    let Some(among) =
        block_spoken_of(document, state.selection, own.block, id).and_then(|block| among(document, block))
    else {
        return;
    };
    let Ok(laid) = among.courses.laid(&among.span) else { return };
    let (p, units) = (brush.palette, document.job().units);
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let rail = text::mark_of_rail(&text::on_line(&laid.base, units));
    let line = Line { color: p.accent, width: 2.0, words: &rail };
    level(brush, face, among.span.bottom, &line);
    let head = if laid.cut_at_head == 0.0 {
        text::MARK_HEAD_WHOLE.now().to_owned()
    } else {
        text::mark_of_head(&small(laid.cut_at_head))
    };
    level(brush, face, among.span.end(), &Line { color: p.guide, width: 1.4, words: &head });
    let top = text::mark_of_top(laid.whole_to_top, &small(laid.left_at_top), laid.left_at_top > 0.0);
    let at = brush.space.screen_from_frame(
        &face.plane,
        dvec2(among.bounds.max.x, (among.span.end() + among.courses.top) / 2.0),
    );
    brush.say_at(rank::COURSE, around(egui::Rect::from_pos(at), 0.0, ON_IT), &top, p.text);
}

/// The result of the proposal under the pointer.
pub(super) fn ghost(brush: &Brush, document: &Document, state: &State) {
    let Some(Ghost { face, rects, lines }) = &state.ghost else { return };
    let Some((_, face)) = document.plan().layout.face(*face).filter(|(index, _)| brush.space.shows(*index))
    else {
        return;
    };
    let stroke = Stroke::new(2.4, brush.palette.light);
    for rect in rects {
        let mut line: Vec<Pos2> =
            rect.corners().iter().map(|&corner| brush.space.screen_from_frame(&face.plane, corner)).collect();
        line.extend(line.first().copied());
        brush.painter.extend(Shape::dashed_line(&line, stroke, 8.0, 5.0));
    }
    for &v in lines {
        let thin = Line { color: brush.palette.light, width: 1.0, words: "" };
        level(brush, face, v, &thin);
    }
}

struct Line<'a> {
    color: Color32,
    width: f32,
    words: &'a str,
}

/// A level line across a face, labelled at its left end.
fn level(brush: &Brush, face: &RoofFace, v: f64, line: &Line<'_>) {
    let across = crossings(&face.frame, v);
    for (nth, pair) in across.chunks_exact(2).enumerate() {
        let on_screen = |u: f64| brush.space.screen_from_frame(&face.plane, dvec2(u, v));
        let [a, b] = [on_screen(pair[0]), on_screen(pair[1])];
        brush.painter.line_segment([a, b], Stroke::new(line.width, line.color));
        if nth == 0 && !line.words.is_empty() {
            let end = if a.x <= b.x { a } else { b };
            let other = if a.x <= b.x { b } else { a };
            let (from, to) = (point(end), point(other));
            let anchor = Anchor::Along { from, to, beside: &[-1.0, 1.0], gap: 3.0, turned: true, home: 0.0 };
            brush.say_at(rank::DIMENSION, anchor, line.words, line.color);
        }
    }
}
