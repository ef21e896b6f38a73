//! The roof as a drawing of lines, areas and words: in plan, or one face true to size. What it is put on, a sheet of paper or an
//! SVG file, only scales it.

use chalkcourse_geometry::{DVec2, EdgeKind, Length, Polygon, Rect, Units, dvec2};
use chalkcourse_job::Resolved;
use chalkcourse_plan::Plan;
use chalkcourse_words::{pick, tell};

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

fn edge(kind: EdgeKind, from: DVec2, to: DVec2) -> Shape {
    let (width, dashes, gaps) = edge_line(kind);
    let dashes = dashes.iter().zip(gaps).flat_map(|(dash, gap)| [dash * 0.6, gap * 0.6]).collect();
    Shape::Line { points: vec![from, to], width: width * 0.6, dashes, ink: Ink::Dark }
}

/// A line with a length beside it, as dimensions are drawn.
fn dimension(shapes: &mut Vec<Shape>, from: DVec2, to: DVec2, units: Units) {
    let length = (to - from).length();
    if length < 0.01 {
        return;
    }
    shapes.push(Shape::Line { points: vec![from, to], width: 0.5, dashes: vec![2.0, 1.5], ink: Ink::Soft });
    let text = Length::from_metres(length).show(units);
    shapes.push(Shape::Words { at: (from + to) / 2.0, turn: upright(to - from), size: SMALL, text });
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
    for face in faces {
        for span in &face.edges {
            shapes.push(edge(span.kind, span.plan.0, span.plan.1));
        }
    }
    for (index, (face, placed)) in faces.iter().zip(&layout.faces).enumerate() {
        for span in &face.edges {
            // An edge of two faces is named once.
            if span.neighbour.is_none_or(|other| other.face >= index) {
                let (a, b) = span.plan;
                let out = (b - a).perp().normalize_or_zero() * -0.25;
                let text =
                    format!("{} {}", span.kind.name(), Length::from_metres(span.length).show(job.units));
                if (b - a).length() > room_of(&text, bounds) {
                    shapes.push(Shape::Words {
                        at: (a + b) / 2.0 + out,
                        turn: upright(b - a),
                        size: SMALL,
                        text,
                    });
                }
            }
        }
        let text = format!("{}  {}", placed.name, face.plane.pitch);
        if let Some(middle) = inside(&face.plan) {
            shapes.push(Shape::Words { at: middle, turn: 0.0, size: SMALL + 1.5, text });
        }
    }
    north(&mut shapes, bounds);
    let title = tell!("{}, plan, north up", "{}, planta, el norte arriba", job.name);
    Some(Drawing { title, bounds, shapes })
}

/// How long a line must be for words beside it, metres: as on a drawing of some 480 points.
fn room_of(text: &str, bounds: Rect) -> f64 {
    let points = text.chars().count() as f64 * f64::from(SMALL) * 0.5;
    points * bounds.size().max_element() / 480.0
}

/// A place inside a shape, far from its border where that is simple.
fn inside(shape: &Polygon) -> Option<DVec2> {
    let largest = shape.triangles().into_iter().max_by(|a, b| {
        let area = |t: &[DVec2; 3]| (t[1] - t[0]).perp_dot(t[2] - t[0]).abs();
        area(a).total_cmp(&area(b))
    })?;
    Some(largest.iter().sum::<DVec2>() / 3.0)
}

fn north(shapes: &mut Vec<Shape>, bounds: Rect) {
    let size = bounds.size().max_element() * 0.05;
    let foot = dvec2(bounds.max.x - size * 0.6, bounds.max.y - size * 1.8);
    let head = foot + dvec2(0.0, size);
    let wing = size * 0.28;
    let points = vec![foot, head, head - dvec2(wing, wing), head, head + dvec2(wing, -wing)];
    shapes.push(Shape::Line { points, width: 1.0, dashes: Vec::new(), ink: Ink::Dark });
    let at = head + dvec2(0.0, size * 0.35);
    shapes.push(Shape::Words { at, turn: 0.0, size: SMALL + 1.0, text: "N".to_owned() });
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
    for penetration in &layout.penetrations {
        if let Some(on) = penetration.on_face(index) {
            shapes.push(Shape::Area { ring: on.outline.outer.clone(), ink: Ink::Penetration });
            if let Some(on) = on.outline.bounds() {
                // Beside what they name, which is often smaller than they are.
                let below = on.size().y / 2.0 + bounds.size().max_element() * 0.016;
                let at = on.centre() - dvec2(0.0, below);
                shapes.push(Shape::Words { at, turn: 0.0, size: SMALL, text: penetration.name.clone() });
            }
        }
    }
    shapes.extend(face.edges.iter().map(|span| edge(span.kind, span.frame.0, span.frame.1)));
    for block in layout.blocks.iter().filter(|block| block.face == index) {
        let Some(on) = block.bounds else { continue };
        // The base line runs on to both sides, as it is snapped.
        let line = vec![dvec2(on.min.x - 0.4, on.min.y), dvec2(on.max.x + 0.4, on.min.y)];
        shapes.push(Shape::Line {
            points: line,
            width: 1.8,
            dashes: vec![9.0, 2.0, 2.0, 2.0],
            ink: Ink::Dark,
        });
        let x = on.min.x + on.size().x * 0.35;
        dimension(&mut shapes, dvec2(x, face.bounds.min.y), dvec2(x, on.min.y), job.units);
        let y = on.min.y + on.size().y * 0.5;
        dimension(&mut shapes, dvec2(face.bounds.min.x, y), dvec2(on.min.x, y), job.units);
        let text = tell!("Block {}", "Bloque {}", block.name);
        shapes.push(Shape::Words { at: on.centre(), turn: 0.0, size: SMALL + 1.5, text });
    }
    let title = tell!("Face {}, true size, eave down", "Faldón {}, tamaño real, alero abajo", placed.name);
    Some(Drawing { title, bounds, shapes })
}

/// What the signs of a drawing mean.
pub(crate) fn legend() -> &'static str {
    pick(
        "Thick line: eave. Thin: rake. Long dashes: ridge. Dash and dot: hip. Short dashes: valley. Heavy dots: wall. \
         Dash with two dots, running on beside a block: the base line to snap.",
        "Línea gruesa: alero. Delgada: borde inclinado. Guiones largos: cumbrera. Guion y punto: limatesa. Guiones \
         cortos: limahoya. Puntos gruesos: muro. Guion y dos puntos, que sigue a los lados de un bloque: la línea base por trazar.",
    )
}
