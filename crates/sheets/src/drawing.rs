//! The roof as a drawing of lines, areas and labels: in plan, or one face to scale. Paper and SVG output only scale it.

use crate::labels::{BELOW, Labels, Wanted};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, Polygon, Rect, Units, dvec2};
use chalkcourse_job::Resolved;
use chalkcourse_labels::{Anchor, Weight};
use chalkcourse_plan::{FromEdge, Plan, base_line};
use chalkcourse_words::{self as words, face_heading};

/// What a line or fill stands for; on paper each also differs in shape, not only in colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Roof edges, modules, labels.
    Dark,
    /// Dimensions and courses.
    Soft,
    /// A leader from a label to what it names.
    Leader,
    /// Module fill.
    Module,
    /// Penetration fill.
    Penetration,
    /// White, over what lies below.
    Paper,
}

/// An element of a drawing. Positions are metres, x right, y up; line widths and text sizes are points (1/72 in).
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A line.
    Line {
        /// Vertices in order; a closed line repeats the first.
        points: Vec<DVec2>,
        /// Line width.
        width: f32,
        /// Alternating dash and gap lengths; empty for a solid line.
        dashes: Vec<f32>,
        /// Colour.
        ink: Ink,
    },
    /// A filled area with a thin border.
    Area {
        /// Its outline.
        ring: Vec<DVec2>,
        /// Fill.
        ink: Ink,
    },
    /// Text centred on a point.
    Words {
        /// Centre.
        at: DVec2,
        /// Rotation, radians counter-clockwise.
        turn: f64,
        /// Text size.
        size: f32,
        /// The text.
        text: String,
    },
}

/// A drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// What it shows, as text for screen readers.
    pub title: String,
    /// Bounding box, metres.
    pub bounds: Rect,
    /// In drawing order, back to front.
    pub shapes: Vec<Shape>,
    /// Labels that did not fit, to be listed beside the drawing; each starts with its number on the drawing where there was room
    /// for that.
    pub beside: Vec<String>,
}

/// Line style of an edge kind, the same on every drawing: width, then dash and gap lengths in points; none for a solid line.
pub fn edge_line(kind: EdgeKind) -> (f32, &'static [f32], &'static [f32]) {
    match kind {
        EdgeKind::Eave => (3.0, &[], &[]),
        EdgeKind::Rake => (1.6, &[], &[]),
        EdgeKind::Ridge => (2.6, &[16.0], &[4.0]),
        EdgeKind::Hip => (2.0, &[12.0, 2.5], &[4.0, 4.0]),
        EdgeKind::Valley => (2.4, &[6.0], &[4.0]),
        EdgeKind::WallLine => (4.0, &[2.0], &[4.0]),
        EdgeKind::Step => (2.0, &[10.0, 3.0, 3.0], &[3.5, 3.5, 3.5]),
        EdgeKind::PitchChange => (1.4, &[2.0], &[3.0]),
    }
}

const SMALL: f32 = 7.0;
/// The base line to snap: a dash and three dots, a pattern no edge uses.
const BASE_LINE: [f32; 8] = [9.0, 2.0, 1.5, 2.0, 1.5, 2.0, 1.5, 2.0];
/// Distances shorter than this (metres) are not dimensioned.
const SHORT: f64 = 0.01;
/// Space for the roof plan and for a face on the build sheet, points wide and high. Labels are placed for that size; a larger
/// drawing only gives them more room.
pub(crate) const PLAN_ROOM: (f32, f32) = (526.0, 380.0);
pub(crate) const FACE_ROOM: (f32, f32) = (526.0, 300.0);

fn edge(kind: EdgeKind, from: DVec2, to: DVec2) -> Shape {
    let (width, dashes, gaps) = edge_line(kind);
    let dashes = dashes.iter().zip(gaps).flat_map(|(dash, gap)| [dash * 0.6, gap * 0.6]).collect();
    Shape::Line { points: vec![from, to], width: width * 0.6, dashes, ink: Ink::Dark }
}

/// A dimension line, from the edge the tape is hooked on.
fn dimension_line(shapes: &mut Vec<Shape>, labels: &mut Labels, from: FromEdge, number: u32) {
    if from.length() >= SHORT {
        let points = vec![from.edge, from.to];
        shapes.push(Shape::Line { points, width: 0.5, dashes: vec![2.0, 1.5], ink: Ink::Soft });
        labels.take_line(from.edge, from.to, 3.0, Weight::Solid, Some(number));
    }
}

/// The dimension text, beside its line where that is free; otherwise further out with a leader.
fn dimension_words(labels: &mut Labels, from: FromEdge, number: u32, of: &str, units: Units) {
    if from.length() < SHORT {
        return;
    }
    let text = Length::from_metres(from.length()).show(units);
    labels.want(Wanted {
        rank: 0,
        names: Some(number),
        anchor: Anchor::Along {
            from: from.edge,
            to: from.to,
            beside: &[1.0, -1.0],
            gap: labels.points(1.0),
            turned: true,
            home: 0.5,
        },
        told: words::sheets::from_the(&text, &from.kind.name(), &of),
        texts: vec![text],
        size: SMALL,
    });
}

fn bounds_of(points: impl Iterator<Item = DVec2>) -> Option<Rect> {
    let bounds = Rect::around(points)?;
    let margin = DVec2::splat(bounds.size().max_element() * 0.04 + 0.2);
    Some(Rect { min: bounds.min - margin, max: bounds.max + margin })
}

/// The roof in plan, north up: faces with pitch and fall direction, edges by kind with true lengths, penetrations, modules.
/// `None` if nothing is drawn yet.
pub fn plan_drawing(job: &Resolved, plan: &Plan) -> Option<Drawing> {
    let layout = &plan.layout;
    let faces = &layout.roof.faces;
    let bounds = bounds_of(faces.iter().flat_map(|face| face.plan.outer.iter().copied()))?;
    let mut shapes = Vec::new();
    for placed in &layout.blocks {
        let Some(face) = faces.get(placed.face) else { continue };
        let on_plan = |rect: Rect| rect.corners().map(|corner| face.plane.to_plan(corner)).to_vec();
        shapes.extend(placed.modules.iter().map(|m| Shape::Area { ring: on_plan(m.rect), ink: Ink::Module }));
    }
    for penetration in &layout.penetrations {
        shapes.push(Shape::Area { ring: penetration.plan.outer.clone(), ink: Ink::Penetration });
    }
    let mut labels = Labels::new(bounds, PLAN_ROOM);
    layout.penetrations.iter().filter_map(|it| it.plan.bounds()).for_each(|rect| labels.take_rect(rect));
    labels.take_rect(north(&mut shapes, bounds));
    // Draw each line of the roof once: drawn from both faces, the dashes of one would fill the gaps of the other.
    let lines = layout.roof.lines();
    for (number, line) in (0..).zip(&lines) {
        let (a, b) = (line.space.0.truncate(), line.space.1.truncate());
        shapes.push(edge(line.kind, a, b));
        labels.take_line(a, b, edge_line(line.kind).0 * 0.6, Weight::Line, Some(number));
    }
    for (face, placed) in faces.iter().zip(&layout.faces) {
        let text = format!("{}  {}", placed.name, face.plane.pitch);
        let Some(home) = inside(&face.plan) else { continue };
        let (name, falls) = (face_heading(&text), face.plane.downslope);
        labels.want(Wanted {
            rank: 1,
            names: None,
            anchor: Anchor::Within { rings: face.plan.rings().map(<[DVec2]>::to_vec).collect(), home },
            told: words::sheets::falls(&name, &falls),
            texts: vec![text],
            size: SMALL + 1.5,
        });
    }
    for (number, line) in (0..).zip(&lines) {
        let (from, to) = (line.space.0.truncate(), line.space.1.truncate());
        let length = Length::from_metres(line.length).show(job.units);
        let text = format!("{} {length}", line.kind.name());
        let face = layout.faces.get(line.face).map_or("", |face| face.name.as_str());
        labels.want(Wanted {
            rank: 2,
            names: Some(number),
            // Outside first: the outline runs counter-clockwise.
            anchor: Anchor::Along {
                from,
                to,
                beside: &[-1.0, 1.0],
                gap: labels.points(1.5),
                turned: true,
                home: 0.5,
            },
            told: format!("{text}, {}", face_heading(face)),
            // Keep the text no longer than its edge; the dash pattern shows the kind as well.
            texts: vec![text, length],
            size: SMALL,
        });
    }
    let (mut words, beside) = labels.placed();
    shapes.append(&mut words);
    let title = words::sheets::plan_north_up(&job.name);
    Some(Drawing { title, bounds, shapes, beside })
}

/// A point inside a shape, well away from its border if the shape is simple.
fn inside(shape: &Polygon) -> Option<DVec2> {
    let largest = shape.triangles().into_iter().max_by(|a, b| {
        let area = |t: &[DVec2; 3]| (t[1] - t[0]).perp_dot(t[2] - t[0]).abs();
        area(a).total_cmp(&area(b))
    })?;
    Some(largest.iter().sum::<DVec2>() / 3.0)
}

/// Draws the north arrow; returns the rectangle it occupies.
fn north(shapes: &mut Vec<Shape>, bounds: Rect) -> Rect {
    let size = bounds.size().max_element() * 0.05;
    let foot = dvec2(bounds.max.x - size * 0.6, bounds.max.y - size * 1.8);
    let head = foot + dvec2(0.0, size);
    let wing = size * 0.28;
    let points = vec![foot, head, head - dvec2(wing, wing), head, head + dvec2(wing, -wing)];
    shapes.push(Shape::Line { points, width: 1.0, dashes: Vec::new(), ink: Ink::Dark });
    let at = head + dvec2(0.0, size * 0.35);
    shapes.push(Shape::Words { at, turn: 0.0, size: SMALL + 1.0, text: "N".to_owned() });
    Rect { min: foot - dvec2(wing, 0.0), max: bounds.max }
}

/// One face to scale, eave at the bottom: edges, penetrations, modules, and the lines to snap with their distances from the eave
/// and from the left end. `None` for an unsound face.
pub fn face_drawing(job: &Resolved, plan: &Plan, index: usize) -> Option<Drawing> {
    let layout = &plan.layout;
    let (face, placed) = (layout.roof.faces.get(index)?, layout.faces.get(index)?);
    if !face.sound {
        return None;
    }
    let bounds = bounds_of(face.frame.outer.iter().copied())?;
    let mut shapes = Vec::new();
    for block in layout.blocks.iter().filter(|block| block.face == index) {
        let modules = block.modules.iter();
        shapes.extend(modules.map(|m| Shape::Area { ring: m.rect.corners().to_vec(), ink: Ink::Module }));
    }
    let mut labels = Labels::new(bounds, FACE_ROOM);
    let mut named = Vec::new();
    for penetration in &layout.penetrations {
        if let Some(on) = penetration.on_face(index) {
            shapes.push(Shape::Area { ring: on.outline.outer.clone(), ink: Ink::Penetration });
            if let Some(on) = on.outline.bounds() {
                labels.take_rect(on);
                named.push((on, penetration.name.clone()));
            }
        }
    }
    for span in &face.edges {
        shapes.push(edge(span.kind, span.frame.0, span.frame.1));
        labels.take_line(span.frame.0, span.frame.1, edge_line(span.kind).0 * 0.6, Weight::Line, None);
    }
    let blocks = || layout.blocks.iter().filter(|block| block.face == index);
    let lines: Vec<_> =
        blocks().filter_map(|block| Some((base_line(face, block)?, block.name.as_str()))).collect();
    // Extend the base line past the block on both sides, as it is snapped.
    for (line, _) in &lines {
        let (from, to) = (line.start - dvec2(0.4, 0.0), dvec2(line.end + 0.4, line.start.y));
        shapes.push(Shape::Line {
            points: vec![from, to],
            width: 1.8,
            dashes: BASE_LINE.to_vec(),
            ink: Ink::Dark,
        });
        labels.take_line(from, to, 3.0, Weight::Line, None);
    }
    // All lines first, so that no dimension text lands on another dimension's line.
    let measures = || lines.iter().flat_map(|(line, block)| [(line.up, *block), (line.along, *block)]);
    for (number, (from, _)) in (0..).zip(measures()) {
        from.into_iter().for_each(|from| dimension_line(&mut shapes, &mut labels, from, number));
    }
    for (number, (from, block)) in (0..).zip(measures()) {
        let of = words::sheets::base_line_of_block(&block);
        from.into_iter().for_each(|from| dimension_words(&mut labels, from, number, &of, job.units));
    }
    for (on, name) in named.into_iter().filter(|(_, name)| !name.trim().is_empty()) {
        labels.want(Wanted {
            rank: 1,
            names: None,
            // Beside what they name, which is often smaller than the label.
            anchor: Anchor::Around { thing: on, gap: labels.points(1.5), sides: BELOW },
            told: name.clone(),
            texts: vec![name],
            size: SMALL,
        });
    }
    for block in blocks() {
        let Some(on) = block.bounds else { continue };
        let text = words::sheets::block(&block.name);
        labels.want(Wanted {
            rank: 2,
            names: None,
            anchor: Anchor::Within { rings: vec![on.corners().to_vec()], home: on.centre() },
            told: text.clone(),
            texts: vec![text],
            size: SMALL + 1.5,
        });
    }
    let (mut words, beside) = labels.placed();
    shapes.append(&mut words);
    let face = face_heading(&placed.name);
    let title = words::sheets::true_size_eave_down(&face);
    Some(Drawing { title, bounds, shapes, beside })
}

/// The legend: each edge kind as drawn by [`edge_line`].
pub(crate) fn legend() -> String {
    let kinds = EdgeKind::ALL.into_iter().map(|kind| format!("{}: {}.", sign_words(kind), kind.name()));
    let base = words::sheets::DASH_WITH_THREE_DOTS_RUNNING.now();
    kinds.chain([base.to_owned()]).collect::<Vec<_>>().join(" ")
}

fn sign_words(kind: EdgeKind) -> &'static str {
    match kind {
        EdgeKind::Eave => words::sheets::THICK_LINE.now(),
        EdgeKind::Rake => words::sheets::THIN_LINE.now(),
        EdgeKind::Ridge => words::sheets::LONG_DASHES.now(),
        EdgeKind::Hip => words::sheets::DASH_AND_DOT.now(),
        EdgeKind::Valley => words::sheets::SHORT_DASHES.now(),
        EdgeKind::WallLine => words::sheets::HEAVY_DOTS.now(),
        EdgeKind::Step => words::sheets::DASH_WITH_TWO_SHORT_ONES.now(),
        EdgeKind::PitchChange => words::sheets::LIGHT_DOTS.now(),
    }
}
