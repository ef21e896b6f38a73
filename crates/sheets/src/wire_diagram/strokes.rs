//! Line styles and small signs of wire diagrams, the same in the drawing and in its legend.

use crate::drawing::{Ink, Shape};
use chalkcourse_geometry::{DVec2, Rect, dvec2};

/// Line style of a circuit by its place in the list of circuits, on paper and on the screen: width, then dashes and gaps in points; none for
/// a solid line. From the seventh on styles come again, wider: the number on it tells them apart.
pub fn circuit_line(nth: usize) -> (f32, &'static [f32], &'static [f32]) {
    const STYLES: [(&[f32], &[f32]); 6] = [
        (&[], &[]),
        (&[7.0], &[3.0]),
        (&[2.2], &[2.2]),
        (&[9.0, 2.0], &[2.5, 2.5]),
        (&[9.0, 2.0, 2.0], &[2.0, 2.0, 2.0]),
        (&[4.0, 1.0], &[1.5, 1.5]),
    ];
    let round = (nth / STYLES.len()).min(3) as f32;
    let (dashes, gaps) = STYLES[nth % STYLES.len()];
    (1.3 + 0.6 * round, dashes, gaps)
}

/// A line of a circuit.
pub(super) fn lead(route: &[DVec2], circuit: usize) -> Shape {
    let (width, dashes, gaps) = circuit_line(circuit);
    let dashes = dashes.iter().zip(gaps).flat_map(|(dash, gap)| [*dash, *gap]).collect();
    Shape::Line { points: route.to_vec(), width, dashes, ink: Ink::Dark }
}

/// Bare copper: two thin lines side by side.
pub(super) fn bare_copper(route: &[DVec2]) -> [Shape; 2] {
    let line = |width, ink| Shape::Line { points: route.to_vec(), width, dashes: Vec::new(), ink };
    [line(2.8, Ink::Dark), line(1.6, Ink::Paper)]
}

/// An arrow head with its tip at the end of a route, `point` metres to a point.
pub(super) fn arrow(route: &[DVec2], back: f64, point: f64) -> Option<Shape> {
    let [.., from, to] = route else { return None };
    let way = (*to - *from).normalize_or_zero();
    let tip = *to - way * back * point;
    let foot = tip - way * 5.0 * point;
    let wing = way.perp() * 2.0 * point;
    Some(Shape::Area { ring: vec![tip, foot + wing, foot - wing], ink: Ink::Dark })
}

/// A bar across the end of a route.
pub(super) fn bar(route: &[DVec2], point: f64) -> Option<Shape> {
    let [.., from, to] = route else { return None };
    let wing = (*to - *from).normalize_or_zero().perp() * 3.0 * point;
    let points = vec![*to + wing, *to - wing];
    Some(Shape::Line { points, width: 1.8, dashes: Vec::new(), ink: Ink::Dark })
}

/// Where the sign of an extension lead is on a route: in the middle of its longest stretch.
pub(super) fn lead_piece(route: &[DVec2], point: f64) -> Option<[DVec2; 2]> {
    let longest = route.windows(2).max_by(|a, b| a[0].distance(a[1]).total_cmp(&b[0].distance(b[1])))?;
    let (middle, way) = (longest[0].midpoint(longest[1]), (longest[1] - longest[0]).normalize_or_zero());
    let half = (longest[0].distance(longest[1]) / 4.0).min(5.0 * point);
    Some([middle - way * half, middle + way * half])
}

/// An extension lead: a thick piece of the line.
pub(super) fn extension(piece: [DVec2; 2]) -> Shape {
    Shape::Line { points: piece.to_vec(), width: 4.0, dashes: Vec::new(), ink: Ink::Dark }
}

/// Around a sign of so many points.
pub(super) fn around(at: DVec2, points: f64, point: f64) -> Rect {
    let half = DVec2::splat(points * point / 2.0);
    Rect { min: at - half, max: at + half }
}

/// A device, or the box at the back of a module: a small square.
pub(super) fn device(at: DVec2, point: f64) -> Shape {
    Shape::Area { ring: around(at, 5.0, point).corners().to_vec(), ink: Ink::Paper }
}

/// A lug: a small dot.
pub(super) fn lug(at: DVec2, point: f64) -> Shape {
    let turn = |eighth: u32| DVec2::from_angle(f64::from(eighth) * std::f64::consts::TAU / 8.0);
    Shape::Area { ring: (0..8).map(|eighth| at + turn(eighth) * 2.0 * point).collect(), ink: Ink::Dark }
}

/// A junction box: a square with a cross.
pub(super) fn junction(at: DVec2, point: f64) -> [Shape; 3] {
    let square = around(at, 12.0, point);
    let stroke = |from: DVec2, to: DVec2| Shape::Line {
        points: vec![from, to],
        width: 0.6,
        dashes: Vec::new(),
        ink: Ink::Dark,
    };
    [
        Shape::Area { ring: square.corners().to_vec(), ink: Ink::Paper },
        stroke(square.min, square.max),
        stroke(dvec2(square.min.x, square.max.y), dvec2(square.max.x, square.min.y)),
    ]
}
