//! Outlines slightly out of square: by how much, and how to square them.
//!
//! A house has one pair of perpendicular directions that its walls follow. Sides near one of them are meant to follow it; others,
//! such as the slanted sides of a bay, are left alone.

use crate::{DVec2, Polygon, signed_area};
use std::f64::consts::FRAC_PI_2;

/// A side farther from square than this is intentional: 3°, radians (common practice, no source).
const NEARLY_SQUARE: f64 = 3.0 * std::f64::consts::PI / 180.0;
/// Angles below this are rounding, radians: a millimetre in 100 m.
const NO_ANGLE: f64 = 1e-5;

/// How far an outline is out of square at its worst corner, radians, among corners with two nearly square sides. `None` if none
/// is out of square by more than rounding, or the outline has fewer than three corners.
pub fn out_of_square(corners: &[DVec2]) -> Option<f64> {
    let sides = Side::all(corners)?;
    let off = sides.iter().zip(sides.iter().cycle().skip(1)).filter_map(|(side, next)| {
        let (a, b) = (side.keeps?, next.keeps?);
        Some((a.turned - b.turned).abs())
    });
    off.reduce(f64::max).filter(|&off| off > NO_ANGLE)
}

/// The squared outline: nearly square sides rotated about their midpoints to the two directions of the house, runs of collinear
/// sides moved to one line. `None` if nothing is out of square, or squaring would make an invalid outline.
pub fn squared(corners: &[DVec2]) -> Option<Vec<DVec2>> {
    out_of_square(corners)?;
    let mut sides = Side::all(corners)?;
    in_line(&mut sides);
    let before = sides.iter().cycle().skip(sides.len() - 1);
    let square: Vec<DVec2> =
        corners.iter().zip(before.zip(&sides)).map(|(&corner, (a, b))| meet(corner, a, b)).collect();
    let sound = Polygon::new(square.clone()).defects(1e-3).is_empty()
        && signed_area(&square) * signed_area(corners) > 0.0;
    sound.then_some(square)
}

/// A side of an outline.
#[derive(Clone, Copy)]
struct Side {
    middle: DVec2,
    length: f64,
    /// The direction of the house it follows; `None` for a slanted side.
    keeps: Option<Keeps>,
}

#[derive(Clone, Copy)]
struct Keeps {
    /// Unit vector in the direction of the side.
    along: DVec2,
    /// Rotation of the side from it, to the left, radians.
    turned: f64,
}

impl Side {
    /// The sides, from the first corner on.
    fn all(corners: &[DVec2]) -> Option<Vec<Self>> {
        if corners.len() < 3 || corners.iter().any(|p| !p.is_finite()) {
            return None;
        }
        let ways: Vec<(DVec2, DVec2)> = corners
            .iter()
            .zip(corners.iter().cycle().skip(1))
            .map(|(&a, &b)| ((a + b) / 2.0, b - a))
            .collect();
        let longest = ways.iter().map(|(_, way)| *way).max_by(|a, b| a.length().total_cmp(&b.length()))?;
        // The mean of the sides nearly aligned with the longest one, weighted by length.
        let first = longest.to_angle();
        let near = ways.iter().map(|(_, way)| (way.length(), from_square(way.to_angle() - first)));
        let near: Vec<(f64, f64)> = near.filter(|(_, off)| off.abs() <= NEARLY_SQUARE).collect();
        let whole: f64 = near.iter().map(|(length, _)| length).sum();
        let house = first + near.iter().map(|(length, off)| length * off).sum::<f64>() / whole;
        let side = |&(middle, way): &(DVec2, DVec2)| {
            let off = from_square(way.to_angle() - house);
            let along = DVec2::from_angle(way.to_angle() - off);
            let keeps = (off.abs() <= NEARLY_SQUARE).then_some(Keeps { along, turned: off });
            Self { middle, length: way.length(), keeps }
        };
        whole.is_finite().then(|| ways.iter().map(side).collect())
    }
}

/// Deviation of an angle from the nearest quarter turn.
fn from_square(angle: f64) -> f64 {
    angle - (angle / FRAC_PI_2).round() * FRAC_PI_2
}

/// Marks consecutive sides in the same direction as collinear.
fn in_line(sides: &mut [Side]) {
    let same =
        |a: &Side, b: &Side| matches!((a.keeps, b.keeps), (Some(a), Some(b)) if a.along.dot(b.along) > 0.5);
    let before = sides.iter().cycle().skip(sides.len().saturating_sub(1));
    let Some(turn) = before.zip(sides.iter()).position(|(before, side)| !same(before, side)) else { return };
    sides.rotate_left(turn);
    for run in sides.chunk_by_mut(same) {
        let Some(across) = run.first().and_then(|side| side.keeps).map(|keeps| keeps.along.perp()) else {
            continue;
        };
        let whole: f64 = run.iter().map(|side| side.length).sum();
        let offset = run.iter().map(|side| side.length * side.middle.dot(across)).sum::<f64>() / whole;
        for side in run {
            side.middle += across * (offset - side.middle.dot(across));
        }
    }
    sides.rotate_right(turn);
}

/// The new position of a corner between its two sides.
fn meet(corner: DVec2, before: &Side, after: &Side) -> DVec2 {
    let onto = |side: &Side, along: DVec2| side.middle + along * (corner - side.middle).dot(along);
    match (before.keeps, after.keeps) {
        (None, None) => corner,
        (Some(keeps), None) => onto(before, keeps.along),
        (None, Some(keeps)) => onto(after, keeps.along),
        (Some(a), Some(b)) => {
            let turn = a.along.perp_dot(b.along);
            if turn.abs() < 0.5 {
                return onto(before, a.along);
            }
            before.middle + a.along * ((after.middle - before.middle).perp_dot(b.along) / turn)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dvec2;

    fn of(corners: &[(f64, f64)]) -> Vec<DVec2> {
        corners.iter().map(|&p| p.into()).collect()
    }

    fn degrees(corners: &[DVec2]) -> f64 {
        out_of_square(corners).map_or(0.0, f64::to_degrees)
    }

    /// By hand: the right side of a house of 10 m × 6 m leans 0.1 m, atan(0.1 / 6) = 0.955°.
    #[test]
    fn a_leaning_side_is_measured_and_squared() {
        let leaning = of(&[(0.0, 0.0), (10.0, 0.0), (10.1, 6.0), (0.0, 6.0)]);
        assert!((degrees(&leaning) - 0.9548).abs() < 1e-3, "{}", degrees(&leaning));
        let square = squared(&leaning).unwrap();
        assert_eq!(out_of_square(&square), None);
        let (wide, high) = (square[0].distance(square[1]), square[1].distance(square[2]));
        assert!((wide - 10.05).abs() < 0.01 && (high - 6.0).abs() < 0.01, "{square:?}");
        assert!(square.iter().zip(&leaning).all(|(a, b)| a.distance(*b) < 0.08));
    }

    #[test]
    fn square_outlines_are_unchanged() {
        for turned in [0.0_f64, 0.3, 1.2] {
            let at = |p: (f64, f64)| DVec2::from_angle(turned).rotate(p.into());
            let house: Vec<DVec2> =
                [(0.0, 0.0), (12.0, 0.0), (12.0, 5.0), (7.0, 5.0), (7.0, 9.0), (0.0, 9.0)].map(at).to_vec();
            assert_eq!((out_of_square(&house), squared(&house)), (None, None), "{turned}");
        }
        assert_eq!(out_of_square(&of(&[(0.0, 0.0), (1.0, 0.0)])), None);
        assert_eq!(squared(&of(&[(0.0, 0.0), (0.0, 0.0), (0.0, 0.0)])), None);
        // A triangle of 3, 4 and 5 has one right corner; one of 60 degrees has none.
        assert_eq!(out_of_square(&of(&[(0.0, 0.0), (4.0, 0.0), (0.0, 3.0)])), None);
        assert_eq!(out_of_square(&of(&[(0.0, 0.0), (4.0, 0.0), (2.0, 3.4641)])), None);
    }

    /// A bay with sides at 45 degrees keeps them; its corners slide along the squared walls.
    #[test]
    fn slanted_sides_stay_slanted() {
        let bay = of(&[
            (0.0, 0.0),
            (8.0, 0.05),
            (8.0, 6.0),
            (5.0, 6.0),
            (4.0, 7.0),
            (3.0, 7.0),
            (2.0, 6.0),
            (0.0, 6.0),
        ]);
        let square = squared(&bay).unwrap();
        assert_eq!(out_of_square(&square), None);
        for at in [3, 5] {
            let slant = (square[at + 1] - square[at]).to_angle().to_degrees().rem_euclid(90.0);
            assert!((slant - 45.0).abs() < 1.5, "{slant}");
        }
    }

    /// A corner in the middle of a straight wall stays on it, and both halves are collinear.
    #[test]
    fn a_straight_wall_of_two_sides_is_one_line() {
        let wall = of(&[(0.0, 0.0), (4.0, 0.04), (9.0, 0.0), (9.0, 6.0), (0.0, 6.0)]);
        let square = squared(&wall).unwrap();
        assert_eq!(out_of_square(&square), None);
        // The house itself may be rotated by the difference of the two halves, some 1e-8.
        assert!((square[0].y - square[1].y).abs() < 1e-6 && (square[1].y - square[2].y).abs() < 1e-6);
    }

    /// An unsteady hand: for any house in any orientation, each corner comes within the size of the error of its intended
    /// position, and everything is square.
    #[test]
    fn an_unsteady_hand_is_squared() {
        let mut seed = 7_u64;
        let mut tremble = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            ((seed >> 33) as f64 / f64::from(1_u32 << 31) - 0.5) * 0.1
        };
        let meant = of(&[
            (0.0, 0.0),
            (14.0, 0.0),
            (14.0, 8.0),
            (9.0, 8.0),
            (9.0, 12.0),
            (4.0, 12.0),
            (4.0, 8.0),
            (0.0, 8.0),
        ]);
        for turn in 0..90 {
            let turned = DVec2::from_angle(f64::from(turn) * 0.0698);
            let house: Vec<DVec2> = meant.iter().map(|&p| turned.rotate(p)).collect();
            let drawn: Vec<DVec2> = house.iter().map(|&p| p + dvec2(tremble(), tremble())).collect();
            let square = squared(&drawn).unwrap();
            assert!(degrees(&square) < 1e-3, "{turn}");
            for (a, b) in square.iter().zip(&house) {
                assert!(a.distance(*b) < 0.15, "{turn}: {a} {b}");
            }
        }
    }
}
