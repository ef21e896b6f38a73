//! Places where one more module nearly fits, drawn as ghosts while the fill list is open.

use super::Canvas;
use super::brush::Brush;
use super::labelling::{BELOW, Show, Words, around, rank};
use crate::state::{List, Pointed, State};
use crate::{Document, text, theme};
use chalkcourse_geometry::{Plane, Rect};
use chalkcourse_job::FaceId;
use chalkcourse_labels::How;
use chalkcourse_plan::{HeldBack, Near};
use chalkcourse_words::Said;
use egui::{Pos2, Shape, Stroke};

/// Line length of text on the roof, in points.
const LINE: f32 = 260.0;

/// Narrower ghosts are not drawn, in points.
const LEAST: f32 = 8.0;

/// Draws the ghosts; the one that the list or the pointer is on with its text.
pub(super) fn near(brush: &Brush, document: &Document, state: &State, own: &Canvas) {
    if state.list != List::Fill || own.drag.gesture.is_some() {
        return;
    }
    let layout = &document.plan().layout;
    let mut told: Option<(Pos2, &Said)> = None;
    for fill in state.fill.fills() {
        let Some((_, face)) = layout.face(fill.face).filter(|(index, _)| brush.space.shows(*index)) else {
            continue;
        };
        let plane = &face.plane;
        let Some(held) = &fill.held else { continue };
        if let Pointed::Near(on, words) = &state.pointed
            && *on == fill.face
        {
            costs(brush, plane, held, words);
            wins(brush, document, plane, held, words);
        }
        let under = under_pointer(brush, document, state, fill.face, &held.near);
        for near in &held.near {
            let listed = matches!(&state.pointed, Pointed::Near(face, words) if *face == fill.face && *words == near.words);
            let lit =
                listed || state.pointed == Pointed::Nothing && under.is_some_and(|it| std::ptr::eq(it, near));
            let low = ghost(brush, plane, near.rect, lit);
            if lit && told.is_none() {
                told = Some((low, &near.words));
            }
        }
    }
    if let Some((at, words)) = told {
        say(brush, at, &text::sentence(&words.now()));
    }
}

/// The places that an obstacle which costs modules keeps them from.
fn costs(brush: &Brush, plane: &Plane, held: &HeldBack, line: &Said) {
    let p = brush.palette;
    for cost in held.costs.iter().filter(|cost| cost.words == *line) {
        for shape in &cost.shapes {
            let in_plan = shape.map(|at| plane.to_plan(at));
            brush.fill(&in_plan, theme::faint(p.light, 70));
            brush.outline(&in_plan, Stroke::new(2.4, p.light), None);
        }
    }
}

/// A penetration whose move would gain modules, at its present and its new position.
fn wins(brush: &Brush, document: &Document, plane: &Plane, held: &HeldBack, line: &Said) {
    let stroke = Stroke::new(2.4, brush.palette.light);
    for win in held.wins.iter().filter(|win| win.words == *line) {
        let Some(placed) = document.plan().layout.penetration(win.penetration) else { continue };
        brush.outline(&placed.plan, stroke, None);
        let there = placed.plan.map(|at| plane.to_plan(plane.to_frame(at) + win.by));
        brush.outline(&there, stroke, Some((5.0, 3.0)));
        if let (Some(from), Some(to)) = (placed.plan.bounds(), there.bounds()) {
            let (a, b) =
                (brush.space.screen_from_plan(from.centre()), brush.space.screen_from_plan(to.centre()));
            brush.painter.arrow(a, b - a, stroke);
        }
    }
}

/// The best result so far of a fill in progress: drawn, not placed.
pub(super) fn so_far(brush: &Brush, document: &Document, state: &State) {
    let job = document.job();
    for fill in state.fill.best_so_far() {
        let Some((_, face)) =
            document.plan().layout.face(fill.face).filter(|(index, _)| brush.space.shows(*index))
        else {
            continue;
        };
        for block in &fill.blocks {
            let size = block.module_size(&job.kit);
            for cell in block.cells() {
                ghost(brush, &face.plane, Rect::at(block.corner_of(cell, &job.kit), size), false);
            }
        }
    }
}

/// The place on a face under the pointer.
fn under_pointer<'a>(
    brush: &Brush,
    document: &Document,
    state: &State,
    face: FaceId,
    near: &'a [Near],
) -> Option<&'a Near> {
    let pointer = state.pointer?;
    let (on, plane) = super::hit::face(&brush.space, &document.plan().layout, pointer)?;
    let at = plane.to_frame(pointer);
    near.iter().find(|near| on == face && near.rect.contains(at))
}

/// Draws a module that is not there. Returns the middle of its lowest side on the screen.
fn ghost(brush: &Brush, plane: &Plane, rect: Rect, lit: bool) -> Pos2 {
    let p = brush.palette;
    let corners = rect.corners().map(|corner| brush.space.screen_from_frame(plane, corner));
    let around = egui::Rect::from_points(&corners);
    // For tiny or invisible modules, dashes would be a waste of time.
    if around.width() < LEAST || !around.intersects(brush.space.area) {
        return around.center_bottom();
    }
    if lit {
        let fill = theme::faint(p.light, 50);
        brush.painter.add(Shape::convex_polygon(corners.to_vec(), fill, Stroke::NONE));
    }
    let mut line = corners.to_vec();
    line.extend(corners.first().copied());
    let stroke = if lit { Stroke::new(2.6, p.light) } else { Stroke::new(1.0, p.quiet) };
    let (dash, gap) = if lit { (8.0, 5.0) } else { (3.0, 4.0) };
    brush.painter.extend(Shape::dashed_line(&line, stroke, dash, gap));
    around.center_bottom()
}

/// Text below a point, in lines.
fn say(brush: &Brush, at: Pos2, words: &str) {
    let color = brush.palette.text;
    let galley = brush.painter.layout(words.to_owned(), theme::font(theme::size::SMALL), color, LINE);
    let show = Show::Words(galley);
    let anchor = around(egui::Rect::from_pos(at), 6.0, BELOW);
    let tries = vec![(show.clone(), How::Home), (show, How::Leader(200.0))];
    brush.say(Words { framed: true, ..Words::of(rank::TYPED, anchor, tries, color) });
}
