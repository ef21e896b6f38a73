//! For tests only: faces like those of real houses, with the setbacks and clearances of the demo rule book.

use super::brute::Dice;
use super::kernel::{Allowed, Constraint, FINE};
use crate::{Polygon, Rect};
use glam::{DVec2, dvec2};

pub(super) struct House {
    pub(super) name: &'static str,
    pub(super) allowed: Allowed,
}

const EAVE: f64 = 0.1524;
const RAKE: f64 = 0.3048;
const RIDGE: f64 = 0.4572;
const HIP: f64 = 0.2286;
const VALLEY: f64 = 0.3048;

/// The nth house face: gable, hip, ell or dormer, with two to six penetrations.
pub(super) fn house(nth: u64) -> House {
    let mut dice = Dice::new(nth + 77_000);
    let (mut w, h) = (dice.between(6.0, 13.0), dice.between(3.5, 6.5));
    let (name, outline): (&str, Vec<(DVec2, f64)>) = match dice.below(10) {
        0..4 => ("gable", sides(&[(0.0, 0.0, EAVE), (w, 0.0, RAKE), (w, h, RIDGE), (0.0, h, RAKE)])),
        4 => {
            let s = h * dice.between(0.6, 0.9);
            w = w.max(2.0 * s + 2.0);
            ("hip", sides(&[(0.0, 0.0, EAVE), (w, 0.0, HIP), (w - s, h, RIDGE), (s, h, HIP)]))
        }
        5 => {
            let s = h * dice.between(0.6, 0.9);
            ("half hip", sides(&[(0.0, 0.0, EAVE), (w, 0.0, RAKE), (w, h, RIDGE), (s, h, HIP)]))
        }
        6 => {
            w = dice.between(6.0, 10.0);
            let top = w / 2.0 * dice.between(1.05, 1.25);
            ("hip end", sides(&[(0.0, 0.0, EAVE), (w, 0.0, HIP), (w / 2.0, top, HIP)]))
        }
        7 => {
            let (a, b) = (dice.between(0.35, 0.65) * w, dice.between(0.3, 0.6) * h);
            let up = [
                (0.0, 0.0, EAVE),
                (w, 0.0, RAKE),
                (w, h, RIDGE),
                (a, h, RAKE),
                (a, b, RIDGE),
                (0.0, b, RAKE),
            ];
            let down =
                [(0.0, b, EAVE), (a, b, RAKE), (a, 0.0, EAVE), (w, 0.0, RAKE), (w, h, RIDGE), (0.0, h, RAKE)];
            ("ell", sides(if dice.below(2) == 0 { &up } else { &down }))
        }
        8 => {
            let (a, d, b) = (dice.between(0.25, 0.5) * w, dice.between(1.8, 3.0), dice.between(0.4, 0.7) * h);
            let cut = [
                (0.0, 0.0, EAVE),
                (a, 0.0, VALLEY),
                (a + d / 2.0, b, VALLEY),
                (a + d, 0.0, EAVE),
                (w, 0.0, RAKE),
                (w, h, RIDGE),
                (0.0, h, RAKE),
            ];
            ("dormer", sides(&cut))
        }
        _ => {
            let s = h * dice.between(0.5, 0.8);
            ("valley", sides(&[(s, 0.0, EAVE), (w, 0.0, RAKE), (w, h, RIDGE), (0.0, h, VALLEY)]))
        }
    };
    let region = Polygon::new(outline.iter().map(|side| side.0).collect());
    let mut blocked = Vec::new();
    for (i, &(a, back)) in outline.iter().enumerate() {
        let b = outline[(i + 1) % outline.len()].0;
        blocked.push(Constraint { id: i, shape: around(&[a, b], back) });
    }
    for n in 0..2 + dice.below(5) {
        let at = dvec2(dice.between(0.05, 0.95) * w, dice.between(0.1, 0.9) * h);
        let (half, clear, above) = match dice.below(6) {
            0..2 => (dvec2(0.04, 0.04), 0.1524, 0.2286),
            2..4 => (dvec2(0.15, 0.15), 0.2286, 0.3048),
            4 => (dvec2(0.3, 0.45), 0.3048, 0.4572),
            _ => (dvec2(0.35, 0.3), 0.3048, 0.6096),
        };
        if !region.contains(at) {
            continue;
        }
        let body = Rect { min: at - half, max: at + half };
        let strip = Rect { min: body.min, max: body.max + dvec2(0.0, above) };
        blocked.push(Constraint { id: 100 + n, shape: around(&body.corners(), clear) });
        blocked.push(Constraint { id: 100 + n, shape: Polygon::new(strip.corners().to_vec()) });
    }
    House { name, allowed: Allowed { region: vec![region], blocked, foot: None, tolerance: FINE } }
}

fn sides(corners: &[(f64, f64, f64)]) -> Vec<(DVec2, f64)> {
    corners.iter().map(|&(u, v, back)| (dvec2(u, v), back)).collect()
}

/// Everything within a distance of the hull of some points, as a circumscribed polygon.
fn around(points: &[DVec2], distance: f64) -> Polygon {
    let turn = std::f64::consts::TAU / 64.0;
    let out = distance / (turn / 2.0).cos();
    let disc = (0..64).map(|i| DVec2::from_angle(turn * (f64::from(i) + 0.5)) * out);
    let swept: Vec<DVec2> = disc.flat_map(|d| points.iter().map(move |&p| p + d)).collect();
    Polygon::hull(&swept)
}
