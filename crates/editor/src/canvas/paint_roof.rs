//! Faces, their edges and courses, and what comes through the roof.

use super::brush::Brush;
use super::crossings::crossings;
use super::picture;
use crate::state::{State, View};
use crate::widgets::severity_sign;
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, RoofFace, dvec2};
use chalkcourse_layout::Layout;
use chalkcourse_rules::Severity;
use egui::{Align2, Stroke};

/// How much of a face is seen over a picture, of 255.
const OVER_PICTURE: u8 = 96;

pub(super) fn faces(brush: &Brush, document: &Document, state: &State) {
    let job = document.job();
    let layout = &document.plan().layout;
    let held = state.selection.face(job);
    let over_picture = picture::shows(document, state);
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if !brush.space.shows(index) {
            continue;
        }
        let p = brush.palette;
        let hovered = state.hover == Selection::Face(placed.id);
        let fill = if held == Some(placed.id) || hovered { p.face_held } else { p.face };
        brush.fill(&face.plan, if over_picture { theme::faint(fill, OVER_PICTURE) } else { fill });
        if !face.sound {
            brush.outline(&face.plan, Stroke::new(2.0, p.stop), Some((4.0, 4.0)));
        }
        if state.view != View::Plan || state.courses_in_plan {
            courses(brush, face, placed.courses);
        }
    }
}

/// Course lines, cut where the face ends; none where they would be denser than the eye can tell.
fn courses(brush: &Brush, face: &RoofFace, courses: chalkcourse_layout::CourseLines) {
    if courses.exposure * brush.space.camera.scale < 4.0 {
        return;
    }
    let stroke = Stroke::new(1.0, brush.palette.course);
    for v in courses.lines() {
        let crossings = crossings(&face.frame, v);
        for pair in crossings.chunks_exact(2) {
            let on_screen = |u: f64| brush.space.screen_from_frame(&face.plane, dvec2(u, v));
            brush.painter.line_segment([on_screen(pair[0]), on_screen(pair[1])], stroke);
        }
    }
}

pub(super) fn edges(brush: &Brush, document: &Document, state: &State) {
    let layout = &document.plan().layout;
    let units = document.job().units;
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if !brush.space.shows(index) {
            continue;
        }
        for edge in &face.edges {
            let told =
                brush.space.face_on.is_none() && told_by_neighbour(layout, index, edge.kind, edge.neighbour);
            let (a, b) =
                (brush.space.screen_from_plan(edge.plan.0), brush.space.screen_from_plan(edge.plan.1));
            let held =
                state.selection == Selection::Side { face: placed.id, ring: edge.ring, side: edge.side };
            let color = if held { brush.palette.accent } else { brush.palette.line };
            if told && !held {
                continue;
            }
            let (width, dashes, gaps) = theme::edge_style(edge.kind);
            brush.styled(a, b, color, (if held { width + 1.5 } else { width }, dashes, gaps));
            let words = text::edge(edge.kind, Length::from_metres(edge.length), units);
            // A free edge has its words outside, where nothing else is; a shared one has them on the line.
            let free = edge.neighbour.is_none() || brush.space.face_on.is_some();
            let beside = if free { -12.0 } else { 0.0 };
            brush.label_along(a, b, beside, &words, if held { color } else { brush.palette.text });
        }
    }
}

/// A line that two faces share is drawn once, by the first of them.
fn told_by_neighbour(
    layout: &Layout,
    index: usize,
    kind: EdgeKind,
    neighbour: Option<chalkcourse_geometry::Neighbour>,
) -> bool {
    neighbour.is_some_and(|neighbour| {
        neighbour.face < index
            && layout.roof.faces.get(neighbour.face).is_some_and(|other| {
                other.edges.iter().any(|e| e.kind == kind && e.neighbour.is_some_and(|n| n.face == index))
            })
    })
}

/// Name, pitch and the way that water runs, where there is room on the face.
pub(super) fn names(brush: &Brush, document: &Document, state: &State) {
    let still = document.plan_before().unwrap_or(document.plan());
    let layout = &document.plan().layout;
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if !brush.space.shows(index) {
            continue;
        }
        let words = format!("{}  {}", placed.name, face.plane.pitch);
        let corners: Vec<_> = face.plan.outer.iter().map(|&p| brush.space.screen_from_plan(p)).collect();
        let room = egui::Rect::from_points(&corners).size();
        // Words that are wider than their face would lie on another one.
        let width = brush.width(&words, theme::size::BODY);
        if room.min_elem() < 40.0 || width + 48.0 > room.x {
            continue;
        }
        let Some(at) = free_spot(face, index, &still.layout) else { continue };
        // While a block is dragged over it the name is out of the way, and nothing jumps.
        if layout
            .blocks
            .iter()
            .any(|b| b.face == index && b.bounds.is_some_and(|r| r.grown(0.3).contains(at)))
        {
            continue;
        }
        let spot = brush.space.screen_from_frame(&face.plane, at);
        let p = brush.palette;
        let worst = document
            .plan()
            .findings
            .iter()
            .filter(|f| f.waived.is_none() && f.place.face == Some(placed.id) && f.place.block.is_none())
            .map(|f| f.severity)
            .min();
        let held = state.selection == Selection::Face(placed.id);
        let color = if held { p.accent } else { p.text };
        let rect = brush.label(spot, Align2::CENTER_CENTER, &words, theme::size::BODY, color);
        let water = brush.space.screen_from_plan(face.plane.to_plan(at) + face.plane.downslope.unit() * 0.1)
            - brush.space.screen_from_plan(face.plane.to_plan(at));
        let arrow = water.normalized() * 18.0;
        let base = rect.right_center() + egui::vec2(20.0, 0.0) - arrow * 0.5;
        brush.painter.arrow(base, arrow, Stroke::new(1.6, p.quiet));
        if let Some(severity) = worst.filter(|s| *s <= Severity::Caution) {
            severity_sign(&brush.painter, rect.left_center() - egui::vec2(18.0, 0.0), 8.0, severity, p);
        }
    }
}

/// A place on a face far from its border and clear of blocks.
fn free_spot(face: &RoofFace, index: usize, layout: &Layout) -> Option<DVec2> {
    const STEPS: i32 = 6;
    let blocks: Vec<_> = layout
        .blocks
        .iter()
        .filter(|b| b.face == index)
        .filter_map(|b| b.bounds)
        .chain(layout.penetrations.iter().filter_map(|p| p.on_face(index)).map(|on| on.bounds))
        .collect();
    let size = face.bounds.size();
    (1..STEPS)
        .flat_map(|row| (1..STEPS).map(move |column| (column, row)))
        .map(|(column, row)| {
            face.bounds.min + size * dvec2(f64::from(column), f64::from(row)) / f64::from(STEPS)
        })
        .filter(|p| face.frame.contains(*p))
        .map(|p| {
            let to_block = blocks.iter().map(|b| (p - b.nearest(p)).length()).fold(f64::INFINITY, f64::min);
            (p, to_block.min(face.frame.distance_to_border(p)))
        })
        .filter(|(_, room)| *room > 0.05)
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(p, _)| p)
}

pub(super) fn penetrations(brush: &Brush, document: &Document, state: &State) {
    let layout = &document.plan().layout;
    let p = brush.palette;
    for placed in &layout.penetrations {
        if brush.space.face_on.is_some_and(|(face, _)| placed.on_face(face).is_none()) {
            continue;
        }
        let held = state.selection == Selection::Penetration(placed.id);
        let hovered = state.hover == Selection::Penetration(placed.id);
        brush.fill(&placed.plan, p.penetration);
        let color = if held || hovered { p.accent } else { p.line };
        brush.outline(&placed.plan, Stroke::new(if held { 2.5 } else { 1.5 }, color), None);
    }
}

/// The names of penetrations: over blocks, which would cut them off.
pub(super) fn penetration_names(brush: &Brush, document: &Document, state: &State) {
    let p = brush.palette;
    for placed in &document.plan().layout.penetrations {
        if brush.space.face_on.is_some_and(|(face, _)| placed.on_face(face).is_none()) {
            continue;
        }
        let held = state.selection == Selection::Penetration(placed.id);
        let hovered = state.hover == Selection::Penetration(placed.id);
        if let Some(bounds) = placed.plan.bounds() {
            let low = brush.space.screen_from_plan(dvec2(bounds.centre().x, bounds.min.y));
            let high = brush.space.screen_from_plan(dvec2(bounds.centre().x, bounds.max.y));
            let below = if low.y > high.y { low } else { high };
            if brush.space.camera.scale > 14.0 || held || hovered {
                brush.label(
                    below + egui::vec2(0.0, 5.0),
                    Align2::CENTER_TOP,
                    &placed.name,
                    theme::size::SMALL,
                    if held { p.accent } else { p.quiet },
                );
            }
        }
    }
}
