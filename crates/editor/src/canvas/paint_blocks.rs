//! Painting modules, and marking the ones that break a rule.

use super::brush::{Brush, fan_into};
use super::hit::cell_rect;
use super::labelling::{Words, point, rank};
use crate::state::State;
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, Plane, Rect};
use chalkcourse_job::{BlockId, Cell};
use chalkcourse_labels::{Anchor, How, Weight};
use chalkcourse_layout::{PlacedBlock, PlacedModule};
use chalkcourse_rules::Severity;
use egui::{Color32, Mesh, Pos2, Shape, Stroke, Vec2};
use std::collections::BTreeMap;

/// Narrower modules show no cells, in points.
const CELLS_FROM: f32 = 34.0;
/// Modules of a row that are this close, in points, share one border line.
const SEAM: f64 = 0.5;
/// Narrower blocks show no name, in points.
const NAMES_FROM: f32 = 40.0;

/// The worst unwaived finding of each module.
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
    // Thousands of small modules are one shape of few triangles: antialiasing the border of each would take longer than
    // a frame.
    let mut small = Mesh::default();
    let mut marks: Vec<([Pos2; 4], Severity)> = Vec::new();
    let mut named = Vec::new();
    for placed in layout.blocks.iter().filter(|placed| brush.space.shows(placed.face)) {
        let Some(face) = layout.roof.faces.get(placed.face) else { continue };
        if is_small(brush, placed, &face.plane) && state.selection.block() != Some(placed.id) {
            let p = brush.palette;
            let line = if state.hover.block() == Some(placed.id) { p.accent } else { p.module_line };
            let on_screen = |rect: Rect| quad(brush, &face.plane, rect);
            let (seam, pixel) = (SEAM / brush.space.camera.scale, 1.0 / brush.painter.pixels_per_point());
            let rows: Vec<_> = rows(&placed.modules, seam).collect();
            for stack in rows.chunk_by(|one, next| are_stacked(one, next, seam)) {
                framed(&mut small, stack, &on_screen, pixel, (p.module, line));
            }
            for module in placed.modules.iter().filter(|_| !marked.is_empty()) {
                let severity = marked.get(&(placed.id, module.cell));
                marks.extend(severity.map(|severity| (on_screen(module.rect), *severity)));
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

/// Whether the modules of a block are too small on the screen to show cells.
fn is_small(brush: &Brush, placed: &PlacedBlock, plane: &Plane) -> bool {
    let Some(module) = placed.modules.first() else { return true };
    let [a, b, _, d] = quad(brush, plane, module.rect);
    (b - a).length().min((d - a).length()) < CELLS_FROM
}

/// Groups of adjacent modules in a row, separated by no more than a seam.
fn rows(modules: &[PlacedModule], seam: f64) -> impl Iterator<Item = &[PlacedModule]> {
    modules.chunk_by(move |one, next| {
        let (one, next) = (one.rect, next.rect);
        (-seam..=seam).contains(&(next.min.x - one.max.x))
            && (one.min.y, one.max.y) == (next.min.y, next.max.y)
    })
}

/// Whether two rows are stacked, module on module.
fn are_stacked(one: &[PlacedModule], next: &[PlacedModule], seam: f64) -> bool {
    let on = |(one, next): (&PlacedModule, &PlacedModule)| {
        let (one, next) = (one.rect, next.rect);
        (-seam..=seam).contains(&(next.min.y - one.max.y))
            && (one.min.x - next.min.x).abs() <= seam
            && (one.max.x - next.max.x).abs() <= seam
    };
    one.len() == next.len() && one.iter().zip(next).all(on)
}

/// Stacked rows of modules: their glass as one quad, with lines over it between rows and columns. A line is as wide as
/// two module frames; below a pixel it is drawn a pixel wide and paler, so that all lines are equally visible.
fn framed(
    mesh: &mut Mesh,
    rows: &[&[PlacedModule]],
    on_screen: &impl Fn(Rect) -> [Pos2; 4],
    pixel: f32,
    (glass, line): (Color32, Color32),
) {
    let ends = |row: &[PlacedModule]| Some((row.first()?.rect, row.last()?.rect));
    let (Some(&lowest), Some(&highest)) = (rows.first(), rows.last()) else { return };
    let (Some((first, right)), Some((_, last))) = (ends(lowest), ends(highest)) else { return };
    let [a, b, _, d] = on_screen(first);
    let (along, up) = (b - a, d - a);
    // On a module a few points wide only the frame would be visible.
    let frames = (along.length().min(up.length()) * 0.24).min(2.0);
    let wide = frames.max(pixel);
    let color = glass.lerp_to_gamma(line, frames / wide);
    let (along, up) = (along.normalized() * wide / 2.0, up.normalized() * wide / 2.0);
    fan_into(mesh, on_screen(Rect { min: first.min, max: last.max }), glass);
    let mut ruled = |from: DVec2, to: DVec2, aside: Vec2| {
        let [a, _, b, _] = on_screen(Rect { min: from, max: to });
        fan_into(mesh, [a - aside, b - aside, b + aside, a + aside], color);
    };
    let middles =
        lowest.iter().zip(lowest.iter().skip(1)).map(|(one, next)| one.rect.max.x.midpoint(next.rect.min.x));
    for x in [first.min.x].into_iter().chain(middles).chain([right.max.x]) {
        ruled(DVec2::new(x, first.min.y), DVec2::new(x, last.max.y), along);
    }
    let rows = || rows.iter().filter_map(|row| row.first()).map(|module| module.rect);
    let middles = rows().zip(rows().skip(1)).map(|(one, next)| one.max.y.midpoint(next.min.y));
    for y in [first.min.y].into_iter().chain(middles).chain([last.max.y]) {
        ruled(DVec2::new(first.min.x, y), DVec2::new(last.max.x, y), up);
    }
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

/// The name of a block, if there is room; and the obstacle for other labels on its modules.
fn label(brush: &Brush, state: &State, placed: &PlacedBlock, plane: &Plane) {
    let held = state.selection.block() == Some(placed.id);
    // A selected block has dimensions there, and its name in the panel.
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
        // Inside it: below a block that fills its face is the label of the eave.
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

/// The cells of a module, if it is large enough to show them.
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

/// Hatching and a heavy outline for a module that breaks a rule: recognisable without colour.
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
