//! Faces, their edges and courses, and penetrations.

use super::brush::Brush;
use super::crossings::crossings;
use super::labelling::{BELOW, Of, Show, Words, around, point, rank, thing};
use super::picture;
use crate::state::{Dimension, State, View};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Length, Rect as Bounds, RoofFace, dvec2};
use chalkcourse_labels::{Anchor, How, Over, Weight};
use chalkcourse_layout::Layout;
use egui::{Color32, Mesh, Rect, Shape, Stroke};
use std::sync::Arc;

/// Opacity of a face over a picture, of 255.
const OVER_PICTURE: u8 = 96;
/// Shorter edges have no label at all, in points; slightly longer ones none on a leader.
const SHORT: f32 = 7.0;
const SEEN: f32 = 10.0;
/// How far the label of an edge may be moved out on a leader.
const OUT: f64 = 160.0;
/// Penetrations of at least this size, in points, are drawn with their shape.
const ROUND_FROM: f64 = 5.0;
/// Names of penetrations are shown from this scale, in points per metre.
const NAMES_FROM: f64 = 14.0;

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

/// Course lines, clipped to the face; none where they would be too dense to distinguish.
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
    let held_face = super::dimensions::face_of_sides(document, state);
    let mut lines = Mesh::default();
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if !brush.space.shows(index) {
            continue;
        }
        for (nth, edge) in face.edges.iter().enumerate() {
            let told =
                brush.space.face_on.is_none() && drawn_by_neighbour(layout, index, edge.kind, edge.neighbour);
            let (a, b) =
                (brush.space.screen_from_plan(edge.plan.0), brush.space.screen_from_plan(edge.plan.1));
            let held =
                state.selection == Selection::Side { face: placed.id, ring: edge.ring, side: edge.side };
            let color = if held { brush.palette.accent } else { brush.palette.line };
            if told && !held {
                continue;
            }
            let (width, dashes, gaps) = theme::edge_style(edge.kind);
            let width = if held { width + 1.5 } else { width };
            brush.styled_into(&mut lines, (a, b), color, (width, dashes, gaps));
            brush.keep_off_line(a, b, width, Weight::Line, Some(thing::edge(index, nth)));
            let long = (b - a).length();
            if long < SHORT || !brush.space.area.intersects(Rect::from_two_pos(a, b).expand(1.0)) {
                continue;
            }
            let color = if held { color } else { brush.palette.text };
            let length = Length::from_metres(edge.length);
            let whole = brush.small(&text::edge(edge.kind, length, units), color);
            let short = brush.small(&length.show(units), color);
            let mut tries =
                vec![(whole, How::Home), (short.clone(), How::Home), (short.clone(), How::Overhanging)];
            if long >= SEEN {
                tries.push((short, How::Leader(OUT)));
            }
            // A free edge has its label outside, where there is nothing else; a shared one on the line.
            let free = edge.neighbour.is_none() || brush.space.face_on.is_some();
            let beside: &[f64] = if free { &[1.0, -1.0] } else { &[0.0, 1.0, -1.0] };
            let (from, to) = (point(a), point(b));
            let typed = held_face == Some(placed.id) && whole_side(face, edge);
            brush.say(Words {
                names: Some(thing::edge(index, nth)),
                of: match typed {
                    true => Of::Dimension(Dimension::Side(placed.id, edge.ring, edge.side)),
                    false => Of::Edge(index, nth),
                },
                ..Words::of(
                    if typed || held { rank::DIMENSION } else { rank::EDGE },
                    Anchor::Along { from, to, beside, gap: 3.0, turned: true, home: 0.5 },
                    tries,
                    color,
                )
            });
        }
    }
    brush.painter.add(Shape::mesh(lines));
}

/// Whether a span is its entire side: a side that borders several others gets a label for each of them.
fn whole_side(face: &RoofFace, span: &EdgeSpan) -> bool {
    face.edges.iter().filter(|it| (it.ring, it.side) == (span.ring, span.side)).count() == 1
}

/// Whether a shared line is drawn by the other face: it is drawn once, by the first of the two.
pub(super) fn drawn_by_neighbour(
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

/// Name, pitch and slope direction of a face, if there is room.
pub(super) fn names(brush: &Brush, document: &Document, state: &State) {
    let still = document.plan_before().unwrap_or(document.plan());
    let layout = &document.plan().layout;
    for (index, (face, placed)) in layout.roof.faces.iter().zip(&layout.faces).enumerate() {
        if !brush.space.shows(index) {
            continue;
        }
        let corners: Vec<_> = face.plan.outer.iter().map(|&p| brush.space.screen_from_plan(p)).collect();
        let room = Rect::from_points(&corners);
        if room.size().min_elem() < 26.0 || !room.intersects(brush.space.area) {
            continue;
        }
        let p = brush.palette;
        let color = if state.selection == Selection::Face(placed.id) { p.accent } else { p.text };
        let Some(at) = home(face, index, &still.layout) else { continue };
        let water = brush.space.screen_from_plan(face.plane.to_plan(at) + face.plane.downslope.unit() * 0.1)
            - brush.space.screen_from_plan(face.plane.to_plan(at));
        let name = |words: &str| brush.galley(words, theme::size::BODY, color);
        let whole = name(&format!("{}  {}", placed.name, face.plane.pitch));
        let mut tries = vec![(Show::Arrow(Arc::clone(&whole), water.normalized()), How::Home)];
        // While something is dragged over it, the label is not moved around.
        if document.plan_before().is_none() {
            tries.push((Show::Words(Arc::clone(&whole)), How::Home));
            tries.push((Show::Words(name(&placed.name)), How::Home));
            tries.push((Show::Words(whole), How::Leader(40.0)));
        }
        let ring = |ring: &[DVec2]| ring.iter().map(|&p| point(brush.space.screen_from_plan(p))).collect();
        brush.say(Words {
            over: Over::Faint,
            ..Words::of(
                rank::FACE,
                Anchor::Within {
                    rings: face.plan.rings().map(ring).collect(),
                    home: point(brush.space.screen_from_frame(&face.plane, at)),
                },
                tries,
                color,
            )
        });
    }
}

/// A point on a face far from its border and clear of blocks.
pub(super) fn home(face: &RoofFace, index: usize, layout: &Layout) -> Option<DVec2> {
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

/// A penetration too small to show its shape, as a square of its size.
fn dot(brush: &Brush, bounds: Bounds, color: Color32) {
    let ends = bounds.corners().map(|corner| brush.space.screen_from_plan(corner));
    let mut dot = Mesh::default();
    dot.add_colored_rect(Rect::from_points(&ends), color);
    brush.painter.add(Shape::mesh(dot));
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
        let color = if held || hovered { p.accent } else { p.line };
        let small = |bounds: &Bounds| bounds.size().max_element() * brush.space.camera.scale < ROUND_FROM;
        if let Some(bounds) = placed.plan.bounds().filter(small) {
            dot(brush, bounds, color);
            continue;
        }
        brush.fill(&placed.plan, p.penetration);
        brush.outline(&placed.plan, Stroke::new(if held { 2.5 } else { 1.5 }, color), None);
    }
}

/// The names of penetrations: over blocks, which would cover them.
pub(super) fn penetration_names(brush: &Brush, document: &Document, state: &State) {
    let p = brush.palette;
    for (index, placed) in document.plan().layout.penetrations.iter().enumerate() {
        if brush.space.face_on.is_some_and(|(face, _)| placed.on_face(face).is_none()) {
            continue;
        }
        let held = state.selection == Selection::Penetration(placed.id);
        let hovered = state.hover == Selection::Penetration(placed.id);
        if let Some(bounds) = placed.plan.bounds() {
            let ends = bounds.corners().map(|corner| brush.space.screen_from_plan(corner));
            let on_screen = Rect::from_points(&ends);
            brush.keep_off_rect(on_screen, Weight::Solid);
            if (brush.space.camera.scale > NAMES_FROM || held || hovered)
                && on_screen.intersects(brush.space.area)
            {
                let color = if held { p.accent } else { p.quiet };
                let name = brush.small(&placed.name, color);
                brush.say(Words {
                    of: Of::Penetration(index),
                    ..Words::of(
                        rank::PENETRATION,
                        around(on_screen, 3.0, BELOW),
                        vec![(name.clone(), How::Home), (name, How::Leader(60.0))],
                        color,
                    )
                });
            }
        }
    }
}
