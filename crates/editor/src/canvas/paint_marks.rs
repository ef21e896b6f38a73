//! What is drawn over the roof: lights, handles, dimensions, guides, the face that is being drawn, and the frame.

use super::Canvas;
use super::brush::Brush;
use super::gesture::Gesture;
use super::hit::{HANDLES, block_rect, corners, handle_at, row_end_at, row_rect};
use super::measure::measure;
use crate::state::{Pointed, State, View};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, Length, RoofFace, Units};
use chalkcourse_takeoff::PlaceShape;
use egui::{Align2, CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2};

/// Lights the place of the row that a list points at.
pub(super) fn lights(brush: &Brush, document: &Document, state: &State) {
    let plan = document.plan();
    match &state.pointed {
        Pointed::Nothing | Pointed::Near(..) => {}
        Pointed::Finding(key) | Pointed::Fix(key, _) => {
            if let Some(finding) = plan.findings.iter().find(|f| f.key == *key) {
                light_finding(brush, document, &finding.place);
            }
        }
        Pointed::Line(number) | Pointed::Term(number, _) => {
            let Some(line) = plan.takeoff.lines.iter().find(|l| l.number == *number) else { return };
            let only = if let Pointed::Term(_, index) = &state.pointed { Some(*index) } else { None };
            for (_, term) in line.terms.iter().enumerate().filter(|(i, _)| only.is_none_or(|only| only == *i))
            {
                for place in term.places.iter() {
                    light_place(brush, document, place);
                }
            }
        }
    }
}

fn light_finding(brush: &Brush, document: &Document, place: &chalkcourse_rules::Place) {
    let layout = &document.plan().layout;
    let stroke = Stroke::new(4.0, brush.palette.light);
    let block = place.block.and_then(|id| layout.block(id));
    if let Some(placed) = block
        && let Some(face) = layout.roof.faces.get(placed.face).filter(|_| brush.space.shows(placed.face))
    {
        for module in placed.modules.iter().filter(|m| place.cells.contains(&m.cell)) {
            let points = module.rect.corners().map(|c| brush.space.screen_from_frame(&face.plane, c));
            brush.painter.add(Shape::closed_line(points.to_vec(), stroke));
        }
    }
    if let Some(penetration) = place.penetration.and_then(|id| layout.penetration(id)) {
        brush.outline(&penetration.plan, stroke, None);
    }
    match place.shape.as_slice() {
        [] => {
            if let Some((_, face)) = place.face.and_then(|id| layout.face(id))
                && place.block.is_none()
                && place.penetration.is_none()
            {
                brush.outline(&face.plan, stroke, None);
            }
        }
        [point] => {
            brush.painter.circle_stroke(brush.space.screen_from_plan(*point), 10.0, stroke);
        }
        points => {
            let mut points: Vec<Pos2> = points.iter().map(|&p| brush.space.screen_from_plan(p)).collect();
            if points.len() > 2 {
                points.extend(points.first().copied());
            }
            brush.painter.add(Shape::line(points, stroke));
        }
    }
}

fn light_place(brush: &Brush, document: &Document, place: &chalkcourse_takeoff::Place) {
    let layout = &document.plan().layout;
    // A quantity for the job as a whole has no place of its own.
    let Some((index, face)) = place.face.and_then(|id| layout.face(id)) else { return };
    if !brush.space.shows(index) {
        return;
    }
    let on_screen = |p: DVec2| brush.space.screen_from_frame(&face.plane, p);
    let stroke = Stroke::new(3.5, brush.palette.light);
    let area = |rects: &[chalkcourse_geometry::Rect], width: f32| {
        for rect in rects {
            let points = rect.corners().map(on_screen).to_vec();
            let fill = theme::faint(brush.palette.light, if width > 0.0 { 40 } else { 110 });
            brush.painter.add(Shape::convex_polygon(points, fill, Stroke::new(width, brush.palette.light)));
        }
    };
    match &place.shape {
        PlaceShape::Point(p) => {
            brush.painter.circle(
                on_screen(*p),
                4.5,
                brush.palette.light,
                Stroke::new(1.5, brush.palette.ground),
            );
        }
        PlaceShape::Path(points) => {
            brush.painter.add(Shape::line(points.iter().map(|&p| on_screen(p)).collect(), stroke));
        }
        PlaceShape::Rect(rect) => area(std::slice::from_ref(rect), 2.0),
        PlaceShape::Area(rects) => area(rects, 0.0),
        PlaceShape::Outlines(outlines) => {
            for outline in outlines {
                for triangle in outline.triangles() {
                    let points = triangle.map(on_screen).to_vec();
                    let fill = theme::faint(brush.palette.light, 70);
                    brush.painter.add(Shape::convex_polygon(points, fill, Stroke::NONE));
                }
                brush.outline(&outline.map(|p| face.plane.to_plan(p)), stroke, None);
            }
        }
        PlaceShape::Whole => {}
    }
}

/// Handles and dimensions of what is held.
pub(super) fn held(brush: &Brush, document: &Document, state: &State) {
    let job = document.job();
    let layout = &document.plan().layout;
    if let Some(block) = state.selection.block().and_then(|id| job.block(id))
        && let Some((index, face)) = layout.face(block.face)
        && brush.space.shows(index)
    {
        let bounds = block_rect(job, block);
        dimensions(brush, face, bounds, job.units);
        for side in HANDLES {
            handle(brush, handle_at(&brush.space, &face.plane, bounds, side), false);
        }
        for row in (0..block.rows.min(200)).filter(|_| block.rows > 1) {
            let at = row_end_at(&brush.space, &face.plane, row_rect(job, block, row));
            let grip = Rect::from_center_size(at, Vec2::new(6.0, 14.0) * brush.space.grown());
            brush.painter.rect(
                grip,
                CornerRadius::same(3),
                brush.palette.panel,
                Stroke::new(1.5, brush.palette.accent),
                StrokeKind::Middle,
            );
        }
    }
    let on_face =
        matches!(state.selection, Selection::Face(_) | Selection::Side { .. } | Selection::Corner { .. });
    if let Some(face) = state.selection.face(job).filter(|_| on_face && state.view == View::Plan) {
        for (ring, corner, p) in corners(job, face) {
            let this = state.selection == Selection::Corner { face, ring, corner };
            handle(brush, brush.space.screen_from_plan(p), this);
        }
    }
}

pub(super) fn handle(brush: &Brush, at: Pos2, held: bool) {
    let p = brush.palette;
    let (fill, radius) = if held { (p.accent, theme::HANDLE + 1.5) } else { (p.panel, theme::HANDLE) };
    brush.painter.circle(at, radius * brush.space.grown(), fill, Stroke::new(1.6, p.accent));
}

/// From the block to the border of its face: eave, top, and both sides.
fn dimensions(brush: &Brush, face: &RoofFace, bounds: chalkcourse_geometry::Rect, units: Units) {
    for (_, from, to) in super::dimensions::of_block(face, bounds) {
        let length = Length::from_metres(from.distance(to));
        let (a, b) = (
            brush.space.screen_from_frame(&face.plane, from),
            brush.space.screen_from_frame(&face.plane, to),
        );
        measure(brush, a, b, &length.show(units), brush.palette.accent);
    }
}

/// The lines that say why something stopped where it did.
pub(super) fn guides(brush: &Brush, state: &State, own: &Canvas) {
    let color = brush.palette.guide;
    // The second of two has its words a line lower.
    for (index, guide) in own.drag.guides.iter().enumerate() {
        let (a, b) = (brush.space.screen_from_plan(guide.line.0), brush.space.screen_from_plan(guide.line.1));
        brush.styled(a, b, color, (1.2, &[6.0], &[3.0]));
        if (a - b).length() < 1.0 {
            brush.painter.circle_stroke(a, 8.0, Stroke::new(1.5, color));
        }
        let seen = brush.space.area.shrink(40.0);
        let next = own.tools.of(state.tool).next_point();
        let corner = matches!(own.drag.gesture, Some(Gesture::MoveCorner { .. }));
        let (at, anchor) = if let Some(next) = next.or(state.pointer.filter(|_| corner)) {
            let beside = Vec2::new(14.0, 14.0 + 20.0 * index as f32);
            (brush.space.screen_from_plan(next) + beside, Align2::LEFT_TOP)
        } else if (b - a).x.abs() > (b - a).y.abs() {
            let end = if a.x < b.x { a } else { b };
            (end - Vec2::new(8.0, 0.0), Align2::RIGHT_CENTER)
        } else {
            let end = if a.y < b.y { a } else { b };
            (end - Vec2::new(0.0, 6.0), Align2::CENTER_BOTTOM)
        };
        brush.label(at.clamp(seen.min, seen.max), anchor, &guide.words, theme::size::SMALL, color);
    }
}

/// Scale bar, north, and what is shown.
pub(super) fn frame(brush: &Brush, document: &Document, state: &State) {
    let area = brush.space.area.shrink(14.0);
    let p = brush.palette;
    let units = document.job().units;
    if let Some(length) = scale_length(brush.space.camera.scale, units) {
        let width = (length.metres() * brush.space.camera.scale) as f32;
        let at = area.left_bottom() + Vec2::new(2.0, -4.0);
        let stroke = Stroke::new(2.0, p.quiet);
        let end = at + Vec2::new(width, 0.0);
        brush.painter.line_segment([at, end], stroke);
        for tick in [at, end] {
            brush.painter.line_segment([tick, tick - Vec2::new(0.0, 7.0)], stroke);
        }
        brush.label(
            at + Vec2::new(width / 2.0, -8.0),
            Align2::CENTER_BOTTOM,
            &length.show(units),
            theme::size::SMALL,
            p.quiet,
        );
    }
    match state.view {
        View::Solid => {}
        View::Plan => {
            let centre = area.right_top() + Vec2::new(-12.0, 22.0);
            let points = [
                centre + Vec2::new(0.0, -16.0),
                centre + Vec2::new(7.0, 10.0),
                centre + Vec2::new(0.0, 5.0),
                centre + Vec2::new(-7.0, 10.0),
            ];
            // A dart is not convex: two halves are.
            for half in [[0, 1, 2], [0, 2, 3]] {
                brush.painter.add(Shape::convex_polygon(
                    half.map(|i| points[i]).to_vec(),
                    p.quiet,
                    Stroke::NONE,
                ));
            }
            brush.label(
                centre + Vec2::new(0.0, 14.0),
                Align2::CENTER_TOP,
                text::NORTH,
                theme::size::SMALL,
                p.quiet,
            );
        }
        View::FaceOn(face) => {
            if let Some(face) = document.job().face(face) {
                brush.label(
                    area.left_top(),
                    Align2::LEFT_TOP,
                    &text::face_on(&face.name),
                    theme::size::SMALL,
                    p.text,
                );
            }
        }
    }
}

/// A round length that is 60 to 150 points long on the screen.
fn scale_length(scale: f64, units: Units) -> Option<Length> {
    let steps = [1.0, 2.0, 5.0];
    let unit = match units {
        Units::FeetInches if scale > 400.0 => Length::from_inches(1.0).metres(),
        Units::FeetInches => Length::from_feet(1.0).metres(),
        Units::Metric => 0.001,
    };
    (0..7)
        .flat_map(|power| steps.map(|step| step * 10f64.powi(power) * unit))
        .find(|length| length * scale >= 60.0)
        .map(Length::from_metres)
}
