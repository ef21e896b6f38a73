//! The roof as a drawing of lines, areas and words: in plan, or one face true to size. What it is put on, a sheet of paper or an
//! SVG file, only scales it.

use crate::labels::{Labels, around};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, Polygon, Rect, Units, dvec2};
use chalkcourse_job::Resolved;
use chalkcourse_plan::{FromEdge, Plan, base_line};
use chalkcourse_words::{self as words, face_heading};

/// What an ink is for; on paper each is told apart by shape too.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Edges of the roof, modules, words.
    Dark,
    /// Dimensions and courses.
    Soft,
    /// The ground of modules.
    Module,
    /// The ground of penetrations.
    Penetration,
}

/// A thing on a drawing. Places are metres, x to the right, y up; widths and sizes are points of 1/72 in.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A line.
    Line {
        /// From place to place; once more to the first where it is closed.
        points: Vec<DVec2>,
        /// How wide.
        width: f32,
        /// Dashes and gaps in turn; none for a solid line.
        dashes: Vec<f32>,
        /// Its ink.
        ink: Ink,
    },
    /// A filled area with a thin border.
    Area {
        /// Its border.
        ring: Vec<DVec2>,
        /// What fills it.
        ink: Ink,
    },
    /// Words around a place.
    Words {
        /// Their middle.
        at: DVec2,
        /// How far they are turned, radians counter-clockwise.
        turn: f64,
        /// The size of the letters.
        size: f32,
        /// What they say.
        text: String,
    },
}

/// A drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// What it shows, for who can't see it.
    pub title: String,
    /// All of it, metres.
    pub bounds: Rect,
    /// From the back to the front.
    pub shapes: Vec<Shape>,
    /// What found no free spot on it, to stand beside it: each with the number that stands for it on the drawing, where that has room.
    pub beside: Vec<String>,
}

/// How a kind of edge is drawn everywhere: width, then dashes and gaps in points; no dashes for a solid line.
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
/// The base line to snap: a dash and three dots, which no edge has.
const BASE_LINE: [f32; 8] = [9.0, 2.0, 1.5, 2.0, 1.5, 2.0, 1.5, 2.0];
/// A way that is shorter than this (metres) is none.
const SHORT: f64 = 0.01;
/// The room of the roof and of a face on the plan to build from, points wide and high. Words are placed for that size; where the drawing
/// is larger they have more room.
pub(crate) const PLAN_ROOM: (f32, f32) = (526.0, 380.0);
pub(crate) const FACE_ROOM: (f32, f32) = (526.0, 300.0);

fn edge(kind: EdgeKind, from: DVec2, to: DVec2) -> Shape {
    let (width, dashes, gaps) = edge_line(kind);
    let dashes = dashes.iter().zip(gaps).flat_map(|(dash, gap)| [dash * 0.6, gap * 0.6]).collect();
    Shape::Line { points: vec![from, to], width: width * 0.6, dashes, ink: Ink::Dark }
}

/// The line of a dimension, from an edge that a tape is held on.
fn dimension_line(shapes: &mut Vec<Shape>, labels: &mut Labels, from: FromEdge) {
    if from.length() >= SHORT {
        let points = vec![from.edge, from.to];
        shapes.push(Shape::Line { points, width: 0.5, dashes: vec![2.0, 1.5], ink: Ink::Soft });
        labels.take_line(from.edge, from.to);
    }
}

/// The length of a dimension, beside its line where nothing else lies; else in the list of what it is of.
fn dimension_words(labels: &mut Labels, from: FromEdge, of: &str, units: Units) -> Option<Shape> {
    let (a, b) = (from.edge, from.to);
    if from.length() < SHORT {
        return None;
    }
    let text = Length::from_metres(from.length()).show(units);
    let aside = (b - a).perp().normalize_or_zero() * labels.points(f64::from(SMALL) * 0.9);
    let turns = [upright(b - a), 0.0];
    let spots: Vec<_> = turns
        .into_iter()
        .flat_map(|turn| [1.0, -1.0, 2.0, -2.0, 3.5, -3.5, 5.0, -5.0].map(|side| (turn, side)))
        .flat_map(|(turn, side)| {
            [0.5, 0.35, 0.65, 0.2, 0.8, 0.0, 1.0].map(|share| (a.lerp(b, share) + aside * side, turn))
        })
        .collect();
    labels.put(text.clone(), SMALL, spots).or_else(|| {
        let middle = a.midpoint(b);
        let told = words::sheets::from_the(&text, &from.kind.name(), &of);
        labels.list(&told, SMALL, Rect { min: middle, max: middle })
    })
}

/// The turn of words along a line that are never upside down.
fn upright(along: DVec2) -> f64 {
    let turn = along.y.atan2(along.x);
    let half = std::f64::consts::FRAC_PI_2;
    if turn > half + 1e-6 {
        turn - 2.0 * half
    } else if turn < -half + 1e-6 {
        turn + 2.0 * half
    } else {
        turn
    }
}

fn bounds_of(points: impl Iterator<Item = DVec2>) -> Option<Rect> {
    let bounds = Rect::around(points)?;
    let margin = DVec2::splat(bounds.size().max_element() * 0.04 + 0.2);
    Some(Rect { min: bounds.min - margin, max: bounds.max + margin })
}

/// The roof from above, north up: faces with pitch and fall, edges by kind with their true lengths, penetrations, modules. None
/// where nothing is drawn yet.
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
    // Each line of the roof once: drawn from both faces its dashes would fill each other's gaps.
    let lines = layout.roof.lines();
    for line in &lines {
        let (a, b) = (line.space.0.truncate(), line.space.1.truncate());
        shapes.push(edge(line.kind, a, b));
    }
    let mut words = Vec::new();
    for (face, placed) in faces.iter().zip(&layout.faces) {
        let text = format!("{}  {}", placed.name, face.plane.pitch);
        if let Some(middle) = inside(&face.plan) {
            let at = Rect { min: middle, max: middle };
            let spots = around(at, &labels, &text, SMALL + 1.5, 8);
            let put = labels.put(text.clone(), SMALL + 1.5, std::iter::once((middle, 0.0)).chain(spots));
            words.extend(put.or_else(|| {
                let (name, falls) = (face_heading(&text), face.plane.downslope);
                let told = words::sheets::falls(&name, &falls);
                labels.list(&told, SMALL, at)
            }));
        }
    }
    for line in &lines {
        let (a, b) = (line.space.0.truncate(), line.space.1.truncate());
        let length = Length::from_metres(line.length).show(job.units);
        let text = format!("{} {length}", line.kind.name());
        let out = (b - a).perp().normalize_or_zero() * -labels.points(f64::from(SMALL));
        let spots = || {
            [1.0, -1.0].into_iter().flat_map(|side| {
                [0.5, 0.35, 0.65, 0.25, 0.75].map(|share| (a.lerp(b, share) + out * side, upright(b - a)))
            })
        };
        // Words are no longer than their edge; the kind is told by its dash too.
        let shown = [&text, &length].into_iter().find_map(|words| {
            let fits = (b - a).length() >= labels.length(words, SMALL);
            fits.then(|| labels.put(words.clone(), SMALL, spots())).flatten()
        });
        words.extend(shown.or_else(|| {
            let face = layout.faces.get(line.face).map_or("", |face| face.name.as_str());
            let told = format!("{text}, {}", face_heading(face));
            labels.list(&told, SMALL, Rect { min: a.midpoint(b), max: a.midpoint(b) })
        }));
    }
    shapes.append(&mut words);
    let title = words::sheets::plan_north_up(&job.name);
    Some(Drawing { title, bounds, shapes, beside: labels.into_beside() })
}

/// A place inside a shape, far from its border where that is simple.
fn inside(shape: &Polygon) -> Option<DVec2> {
    let largest = shape.triangles().into_iter().max_by(|a, b| {
        let area = |t: &[DVec2; 3]| (t[1] - t[0]).perp_dot(t[2] - t[0]).abs();
        area(a).total_cmp(&area(b))
    })?;
    Some(largest.iter().sum::<DVec2>() / 3.0)
}

/// The arrow to the north. What it takes.
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

/// One face true to size, its eave down: edges, penetrations, modules, and the lines to snap with their distances from the eave
/// and from the left end. None for a face that is not sound.
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
    shapes.extend(face.edges.iter().map(|span| edge(span.kind, span.frame.0, span.frame.1)));
    let mut words = Vec::new();
    let blocks = || layout.blocks.iter().filter(|block| block.face == index);
    let lines: Vec<_> =
        blocks().filter_map(|block| Some((base_line(face, block)?, block.name.as_str()))).collect();
    // The base line runs on to both sides, as it is snapped.
    for (line, _) in &lines {
        let (from, to) = (line.start - dvec2(0.4, 0.0), dvec2(line.end + 0.4, line.start.y));
        shapes.push(Shape::Line {
            points: vec![from, to],
            width: 1.8,
            dashes: BASE_LINE.to_vec(),
            ink: Ink::Dark,
        });
        labels.take_line(from, to);
    }
    // All lines first: no length stands on the line of another.
    for from in lines.iter().flat_map(|(line, _)| [line.up, line.along]).flatten() {
        dimension_line(&mut shapes, &mut labels, from);
    }
    for (line, block) in &lines {
        for from in [line.up, line.along].into_iter().flatten() {
            let of = words::sheets::base_line_of_block(&block);
            words.extend(dimension_words(&mut labels, from, &of, job.units));
        }
    }
    for (on, name) in named.into_iter().filter(|(_, name)| !name.trim().is_empty()) {
        // Beside what they name, which is often smaller than they are.
        let spots = around(on, &labels, &name, SMALL, 8);
        words.extend(labels.put(name.clone(), SMALL, spots).or_else(|| labels.list(&name, SMALL, on)));
    }
    for block in blocks() {
        let Some(on) = block.bounds else { continue };
        let text = words::sheets::block(&block.name);
        let within = [0.5, 0.65, 0.35, 0.8, 0.2]
            .into_iter()
            .flat_map(|v| [0.5, 0.35, 0.65, 0.2, 0.8].map(|u| (on.min + on.size() * dvec2(u, v), 0.0)));
        let put = labels.put(text.clone(), SMALL + 1.5, within);
        words.extend(put.or_else(|| labels.list(&text, SMALL, on)));
    }
    shapes.append(&mut words);
    let face = face_heading(&placed.name);
    let title = words::sheets::true_size_eave_down(&face);
    Some(Drawing { title, bounds, shapes, beside: labels.into_beside() })
}

/// What the signs of a drawing mean: each kind of edge by what [`edge_line`] draws it with.
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
