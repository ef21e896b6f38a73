//! The legend of a wire diagram: each line and sign as the drawing has it, with what it stands for below.

use super::strokes::{arrow, bar, bare_copper, device, extension, junction, lead, lug};
use crate::drawing::{Drawing, Shape};
use crate::wire_words::circuit_name;
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::Kind;
use chalkcourse_words as words;

/// A place of the legend, points wide and high; so many stand in a row.
const PLACE: DVec2 = dvec2(101.0, 27.0);
const IN_A_ROW: usize = 7;
const SIZE: f32 = 6.6;

/// Circuits first, then the signs. A unit of it is a point.
pub(super) fn legend(plan: &Plan) -> Drawing {
    let mut places: Vec<(Vec<Shape>, String)> = Vec::new();
    let (from, to) = (dvec2(-26.0, 0.0), dvec2(26.0, 0.0));
    for (nth, circuit) in plan.wires.circuits.iter().enumerate() {
        let shapes = std::iter::once(lead(&[from, to], nth)).chain(arrow(&[from, to], 0.0, 1.0));
        places.push((shapes.collect(), circuit_name(circuit)));
    }
    let mut sign = |shapes: Vec<Shape>, text: &str| places.push((shapes, text.to_owned()));
    sign(bare_copper(&[from, to]).to_vec(), words::diagram::BARE_COPPER.now());
    sign(vec![lug(DVec2::ZERO, 1.0)], words::diagram::LUG.now());
    sign(vec![device(DVec2::ZERO, 1.0)], words::diagram::DEVICE.now());
    let piece = vec![lead(&[from, to], 0), extension([dvec2(-6.0, 0.0), dvec2(6.0, 0.0)])];
    sign(piece, words::diagram::EXTENSION_LEAD.now());
    if plan.wires.circuits.iter().any(|circuit| circuit.kind == Kind::AcDevices) {
        let shapes = std::iter::once(lead(&[from, to], 0)).chain(bar(&[from, to], 1.0));
        sign(shapes.collect(), words::diagram::CAP.now());
    }
    sign(junction(DVec2::ZERO, 1.0).to_vec(), words::diagram::JUNCTION_BOX.now());
    let rows = places.len().div_ceil(IN_A_ROW);
    let size = PLACE * dvec2(IN_A_ROW as f64, rows as f64);
    let mut shapes = Vec::new();
    for (nth, (signs, text)) in places.into_iter().enumerate() {
        let (row, column) = (nth / IN_A_ROW, nth % IN_A_ROW);
        let at = dvec2((column as f64 + 0.5) * PLACE.x, size.y - row as f64 * PLACE.y - 8.0);
        shapes.extend(signs.into_iter().map(|shape| moved(shape, at)));
        shapes.push(Shape::Words { at: at - dvec2(0.0, 12.0), turn: 0.0, size: SIZE, text });
    }
    let title = words::diagram::LEGEND.now().to_owned();
    Drawing { title, bounds: Rect { min: DVec2::ZERO, max: size }, shapes, beside: Vec::new() }
}

fn moved(shape: Shape, by: DVec2) -> Shape {
    let all = |points: Vec<DVec2>| points.into_iter().map(|point| point + by).collect();
    match shape {
        Shape::Line { points, width, dashes, ink } => Shape::Line { points: all(points), width, dashes, ink },
        Shape::Area { ring, ink } => Shape::Area { ring: all(ring), ink },
        Shape::Words { at, turn, size, text } => Shape::Words { at: at + by, turn, size, text },
    }
}
