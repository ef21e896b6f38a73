//! Modules as they lie, and the ones that break a rule.

use super::brush::Brush;
use super::hit::cell_rect;
use super::labelling::{Words, point, rank};
use crate::state::State;
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{Plane, Rect};
use chalkcourse_job::{BlockId, Cell};
use chalkcourse_labels::{Anchor, How, Weight};
use chalkcourse_layout::PlacedBlock;
use chalkcourse_rules::Severity;
use egui::{Color32, Mesh, Pos2, Shape, Stroke};
use std::collections::BTreeMap;

/// Modules narrower than this, in points, show no cells.
const CELLS_FROM: f32 = 34.0;
/// Blocks narrower than this, in points, show no name.
const NAMES_FROM: f32 = 40.0;

/// The worst finding of each module that is not waived.
type Marked = BTreeMap<(BlockId, Cell), Severity>;

fn marked(document: &Document) -> Marked {
    let mut marked = Marked::new();
    for finding in document.plan().findings.iter().filter(|f| f.waived.is_none()) {
        let Some(block) = finding.place.block else { continue };
        for &cell in &finding.place.cells {
            let worst = marked.entry((block, cell)).or_insert(finding.severity);
            *worst = (*worst).min(finding.severity);
        }
    }
    marked
}

pub(super) fn blocks(brush: &Brush, document: &Document, state: &State) {
    let layout = &document.plan().layout;
    let marked = marked(document);
    // Thousands of small modules are one shape: each by itself would have its border smoothed, in more time than there is
    // between two frames.
    let mut small = Mesh::default();
    let mut marks: Vec<([Pos2; 4], Severity)> = Vec::new();
    let mut named = Vec::new();
    for placed in layout.blocks.iter().filter(|placed| brush.space.shows(placed.face)) {
        let Some(face) = layout.roof.faces.get(placed.face) else { continue };
        if is_small(brush, placed, &face.plane) && state.selection.block() != Some(placed.id) {
            let p = brush.palette;
            let line = if state.hover.block() == Some(placed.id) { p.accent } else { p.module_line };
            for module in &placed.modules {
                let corners = quad(brush, &face.plane, module.rect);
                framed(&mut small, corners, p.module, line);
                marks.extend(marked.get(&(placed.id, module.cell)).map(|severity| (corners, *severity)));
            }
            named.push((placed, &face.plane));
        } else {
            block(brush, document, state, placed, &face.plane, &marked);
        }
    }
    brush.painter.add(Shape::mesh(small));
    for (corners, severity) in marks {
        hatch(brush, &corners, severity);
    }
    for (placed, plane) in named {
        label(brush, state, placed, plane);
    }
}

/// Whether the modules of a block are too small on the screen for their cells to show.
fn is_small(brush: &Brush, placed: &PlacedBlock, plane: &Plane) -> bool {
    let Some(module) = placed.modules.first() else { return true };
    let [a, b, _, d] = quad(brush, plane, module.rect);
    (b - a).length().min((d - a).length()) < CELLS_FROM
}

/// A module with its frame, as two quads: the border first, the glass in it.
fn framed(mesh: &mut Mesh, corners: [Pos2; 4], glass: Color32, line: Color32) {
    let [a, b, c, d] = corners;
    let (along, up) = (b - a, d - a);
    // Where a module is a few points wide its frame would be all that is left of it.
    let width = (along.length().min(up.length()) * 0.12).min(1.0);
    let (right, over) = (along.normalized() * width, up.normalized() * width);
    quad_into(mesh, corners, line);
    quad_into(mesh, [a + right + over, b - right + over, c - right - over, d + right - over], glass);
}

fn quad_into(mesh: &mut Mesh, corners: [Pos2; 4], color: Color32) {
    let first = mesh.vertices.len() as u32;
    for corner in corners {
        mesh.colored_vertex(corner, color);
    }
    mesh.add_triangle(first, first + 1, first + 2);
    mesh.add_triangle(first, first + 2, first + 3);
}

fn block(
    brush: &Brush,
    document: &Document,
    state: &State,
    placed: &PlacedBlock,
    plane: &Plane,
    marked: &Marked,
) {
    let p = brush.palette;
    let held = state.selection.block() == Some(placed.id);
    let hovered = state.hover.block() == Some(placed.id);
    if held {
        places_without_module(brush, document, placed.id, plane);
    }
    for module in &placed.modules {
        let corners = quad(brush, plane, module.rect);
        let line = if held || hovered { p.accent } else { p.module_line };
        let outline = Stroke::new(if held { 1.6 } else { 1.0 }, line);
        brush.painter.add(Shape::convex_polygon(corners.to_vec(), p.module, outline));
        cells(brush, &corners);
        if let Some(severity) = marked.get(&(placed.id, module.cell)) {
            hatch(brush, &corners, *severity);
        }
        if state.selection == (Selection::Module { block: placed.id, cell: module.cell }) {
            brush.painter.add(Shape::closed_line(corners.to_vec(), Stroke::new(3.0, p.accent)));
        }
    }
    label(brush, state, placed, plane);
}

/// The name of a block, where there is room; and words keep off its modules.
fn label(brush: &Brush, state: &State, placed: &PlacedBlock, plane: &Plane) {
    let held = state.selection.block() == Some(placed.id);
    // What is held has dimensions there, and its name in the panel.
    let Some(bounds) = placed.bounds else { return };
    let corners = quad(brush, plane, bounds);
    brush.keep_off_shape(&corners, Weight::Ground);
    let around = egui::Rect::from_points(&corners);
    if held || around.width() < NAMES_FROM || !around.intersects(brush.space.area) {
        return;
    }
    let color = brush.palette.text;
    let whole = brush.small(&text::block_label(&placed.name, placed.modules.len()), color);
    let name = brush.small(&text::block_heading(&placed.name).now(), color);
    brush.say(Words::of(
        rank::BLOCK,
        // Inside it: below a block that fills its face the eave has its own words.
        Anchor::Within {
            rings: vec![corners.iter().copied().map(point).collect()],
            home: point(around.center_bottom() - egui::vec2(0.0, 15.0)),
        },
        vec![(whole, How::Home), (name, How::Home)],
        color,
    ));
}

/// A rectangle of a frame on the screen, counter-clockwise in the frame from its lower left.
fn quad(brush: &Brush, plane: &Plane, rect: Rect) -> [Pos2; 4] {
    rect.corners().map(|corner| brush.space.screen_from_frame(plane, corner))
}

fn places_without_module(brush: &Brush, document: &Document, id: BlockId, plane: &Plane) {
    let job = document.job();
    let Some(block) = job.block(id) else { return };
    for cell in &block.off {
        let mut corners = quad(brush, plane, cell_rect(job, block, *cell)).to_vec();
        corners.extend(corners.first().copied());
        let stroke = Stroke::new(1.2, brush.palette.quiet);
        brush.painter.extend(Shape::dashed_line(&corners, stroke, 5.0, 4.0));
    }
}

/// The cells of a module, where it is large enough to show them: it looks like what it is.
fn cells(brush: &Brush, corners: &[Pos2; 4]) {
    let [a, b, _, d] = *corners;
    let (along, up) = (b - a, d - a);
    if along.length().min(up.length()) < CELLS_FROM {
        return;
    }
    let stroke = Stroke::new(0.5, theme::faint(brush.palette.module_line, 90));
    let count = |length: f32, other: f32| if length >= other { 9 } else { 6 };
    let (columns, rows) = (count(along.length(), up.length()), count(up.length(), along.length() + 0.1));
    for column in 1..columns {
        let from = a + along * (column as f32 / columns as f32);
        brush.painter.line_segment([from, from + up], stroke);
    }
    for row in 1..rows {
        let from = a + up * (row as f32 / rows as f32);
        brush.painter.line_segment([from, from + along], stroke);
    }
}

/// Slanted lines over a module that breaks a rule, and a heavy outline: told apart without colour.
fn hatch(brush: &Brush, corners: &[Pos2; 4], severity: Severity) {
    let p = brush.palette;
    let [a, b, c, d] = *corners;
    let (lines, color) = match severity {
        Severity::Stop => (9, p.module_stop),
        Severity::Caution => (5, p.module_caution),
        Severity::Note => (0, p.module_line),
    };
    // From the lower and right sides to the left and upper ones.
    for line in 1..lines {
        let part = 2.0 * line as f32 / lines as f32;
        let walk = |t: f32, first: (Pos2, Pos2), second: (Pos2, Pos2)| {
            if t <= 1.0 {
                first.0 + (first.1 - first.0) * t
            } else {
                second.0 + (second.1 - second.0) * (t - 1.0)
            }
        };
        let from = walk(part, (a, b), (b, c));
        let to = walk(part, (a, d), (d, c));
        brush.painter.line_segment([from, to], Stroke::new(1.4, color));
    }
    brush.painter.add(Shape::closed_line(corners.to_vec(), Stroke::new(2.2, color)));
}
