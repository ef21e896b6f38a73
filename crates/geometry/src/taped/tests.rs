use super::*;
use crate::{Azimuth, Pitch};
use glam::{dvec2, dvec3};
use proptest::prelude::*;

const FOOT: f64 = 0.3048;

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn side(from: usize, to: usize, length: f64) -> Reading {
    Reading { of: TapedLine::Between(from, to), length: feet(length) }
}

fn up(corner: usize, length: f64) -> Reading {
    Reading { of: TapedLine::Up(corner), length: feet(length) }
}

/// Readings in feet, spreading at most 1 in.
fn laid(form: Form, readings: &[Reading]) -> Result<Taped, TapedError> {
    lay_out(form, readings, Length::from_inches(1.0))
}

fn square_feet(taped: &Taped) -> f64 {
    taped.area() / (FOOT * FOOT)
}

fn near(got: f64, want: f64) {
    assert!((got - want).abs() < 1e-9, "{got} is not {want}");
}

/// Heron's formula on the triangle 13, 14, 15: the area is 84 and the height over 14 is 12 (any table of Heronian
/// triangles).
#[test]
fn a_triangle_from_its_three_sides() {
    let taped = laid(Form::Triangle, &[side(0, 1, 14.0), side(1, 2, 15.0), side(2, 0, 13.0)]).unwrap();
    near(square_feet(&taped), 84.0);
    near(taped.corners[2].y / FOOT, 12.0);
    near(taped.corners[2].x / FOOT, 5.0);
    assert!(taped.spare == 0 && taped.closing_error.metres() < 1e-12);
}

/// The hip roof of 60 × 30 ft at 6:12 (closed forms: hips 22.50 ft, half the width 15 ft in plan): its end is 30 ft wide
/// and 15 ft deep in plan, its side has 675 ft² in plan.
#[test]
fn a_hip_end_and_a_hip_side_fall_on_their_plan() {
    let plane = Plane {
        datum: dvec3(2.0, 3.0, 2.7),
        pitch: Pitch::from_rise_in_12(6.0).unwrap(),
        downslope: Azimuth::SOUTH,
    };
    let end = laid(Form::Triangle, &[side(0, 1, 30.0), side(1, 2, 22.5), side(0, 2, 22.5)]).unwrap();
    let plan = end.plan(&plane);
    assert!(plan.outer[0].distance(dvec2(2.0, 3.0)) < 1e-12);
    assert!(plan.outer[2].distance(dvec2(2.0 + 15.0 * FOOT, 3.0 + 15.0 * FOOT)) < 1e-9);
    let sides = [side(0, 1, 60.0), side(1, 2, 22.5), side(2, 3, 30.0), side(3, 0, 22.5)];
    let long = laid(Form::Trapezoid, &sides).unwrap();
    near(long.plan(&plane).area() / (FOOT * FOOT), 675.0);
    near(square_feet(&long), 675.0 * 1.25f64.sqrt());
}

/// A trapezoid with sides 10, 5, 4, 5 is 4 high (Pythagoras on its ends of 3, 4, 5); one that leans has one right angle: 10, 5,
/// 7, 4.
#[test]
fn trapezoids_from_four_sides() {
    let even = laid(Form::Trapezoid, &[side(0, 1, 10.0), side(1, 2, 5.0), side(2, 3, 4.0), side(3, 0, 5.0)]);
    let even = even.unwrap();
    near(even.corners[3].y / FOOT, 4.0);
    near(square_feet(&even), 28.0);
    let square =
        laid(Form::Trapezoid, &[side(0, 1, 10.0), side(1, 2, 5.0), side(2, 3, 7.0), side(3, 0, 4.0)]);
    let square = square.unwrap();
    near(square.corners[3].x, 0.0);
    near(square.corners[2].x / FOOT, 7.0);
    // A ridge longer than the eave, as over a recessed wall.
    let wide = laid(Form::Trapezoid, &[side(0, 1, 4.0), side(1, 2, 5.0), side(2, 3, 10.0), side(3, 0, 5.0)]);
    near(square_feet(&wide.unwrap()), 28.0);
}

/// The parallelogram law: the squares of the diagonals add up to twice those of two adjacent sides (follows from Euclid's
/// Elements II).
#[test]
fn a_parallelogram_from_two_sides_and_a_diagonal() {
    let readings = [side(0, 1, 20.0), side(0, 3, 13.0), side(0, 2, 29.0)];
    let taped = laid(Form::Parallelogram, &readings).unwrap();
    let other = taped.corners[1].distance(taped.corners[3]) / FOOT;
    near(29.0 * 29.0 + other * other, 2.0 * (400.0 + 169.0));
}

#[test]
fn a_rectangle_checked_by_its_diagonal() {
    let fits = laid(Form::Rectangle, &[side(0, 1, 40.0), side(1, 2, 30.0), side(0, 2, 50.0)]).unwrap();
    near(square_feet(&fits), 1200.0);
    assert_eq!(fits.spare, 1);
    assert!(fits.closing_error.metres() < 1e-9, "{:?}", fits.closing_error);
    let alone = laid(Form::Rectangle, &[side(0, 1, 40.0), up(3, 30.0)]).unwrap();
    near(square_feet(&alone), 1200.0);
}

/// Two readings of one length are each corrected to their mean: the simplest least squares.
#[test]
fn misclosure_is_spread_evenly_or_refused() {
    let inch = 1.0 / 12.0;
    let readings =
        |more: f64| [side(0, 1, 30.0), side(1, 2, 16.0), side(2, 3, 30.0 + more * inch), side(3, 0, 16.0)];
    let taped = laid(Form::Rectangle, &readings(1.0)).unwrap();
    near(taped.corrections[0].inches(), 0.5);
    near(taped.corrections[2].inches(), -0.5);
    near(taped.closing_error.inches(), 0.5);
    assert_eq!(taped.spare, 2);
    match laid(Form::Rectangle, &readings(12.0)).unwrap_err() {
        TapedError::DoesNotClose { closing_error, limit, .. } => {
            near(closing_error.inches(), 6.0);
            near(limit.inches(), 1.0);
        }
        other => panic!("{other}"),
    }
}

/// With two diagonals a misread one is found.
#[test]
fn the_wrong_reading_is_named() {
    let inch = 1.0 / 12.0;
    let right = 25.0; // 20, 15, 25
    let readings = [
        side(0, 1, 20.0),
        side(1, 2, 15.0),
        side(2, 3, 20.0),
        side(3, 0, 15.0),
        side(0, 2, right),
        side(1, 3, right + inch),
    ];
    let taped = laid(Form::Polygon(4), &readings);
    // A single redundant reading can't tell.
    assert_eq!(taped.unwrap().suspect, None);
    let taped = laid(Form::Rectangle, &readings).unwrap();
    assert_eq!(taped.suspect, Some(5));
    let mut wrong = readings;
    wrong[5].length = feet(right + 2.0);
    let error = laid(Form::Rectangle, &wrong).unwrap_err();
    assert!(matches!(error, TapedError::DoesNotClose { worst: TapedLine::Between(1, 3), .. }), "{error}");
    assert!(error.to_string().contains("the line from corner 2 to 4"), "{error}");
}

#[test]
fn impossible_readings_report_why() {
    let told = |form, readings: &[Reading], words: &str| {
        let error = laid(form, readings).unwrap_err().to_string();
        assert!(error.contains(words), "{error}");
    };
    told(Form::Triangle, &[side(0, 1, 30.0), side(1, 2, 10.0), side(2, 0, 12.0)], "8' (2.438 m) less");
    told(Form::Triangle, &[side(0, 1, 30.0), side(1, 2, 10.0)], "corner 3 has too few readings");
    told(Form::Rectangle, &[side(0, 1, 30.0)], "corner 4");
    told(Form::Parallelogram, &[side(0, 1, 30.0), side(0, 3, 10.0)], "lean either way");
    let even = [side(0, 1, 30.0), side(1, 2, 10.0), side(2, 3, 30.0), side(3, 0, 10.0)];
    told(Form::Trapezoid, &even, "lean either way");
    told(Form::Polygon(4), &even, "corner 3 has too few readings");
    told(Form::Polygon(2), &[], "3 to 40 corners");
    told(Form::Polygon(41), &[], "3 to 40 corners");
    told(Form::Triangle, &[side(0, 3, 3.0)], "corner 1 to 4: the face has 3 corners");
    told(Form::Triangle, &[up(1, 3.0)], "the height of corner 2");
    for length in [0.0, -3.0, f64::NAN, f64::INFINITY, 1e9] {
        told(Form::Triangle, &[side(0, 1, length)], "more than 0 and less than 1 km");
    }
    // flat: all on the eave
    told(Form::Triangle, &[side(0, 1, 30.0), side(1, 2, 10.0), side(2, 0, 20.0)], "no area");
    told(Form::Trapezoid, &[side(0, 1, 30.0), side(1, 2, 3.0), side(2, 3, 10.0), side(3, 0, 3.0)], "14'");
}

/// An ell with a re-entrant corner, by its interior diagonals.
#[test]
fn an_ell_from_sides_and_diagonals() {
    let corners = [(0.0, 0.0), (30.0, 0.0), (30.0, 12.0), (14.0, 12.0), (14.0, 25.0), (0.0, 25.0)];
    let reading = |a: usize, b: usize| {
        let at = |c: usize| dvec2(corners[c].0, corners[c].1);
        side(a, b, at(a).distance(at(b)))
    };
    let sides = (0..6).map(|c| reading(c, (c + 1) % 6));
    let readings: Vec<Reading> = sides.chain([reading(0, 3), reading(1, 3), reading(3, 5)]).collect();
    let taped = laid(Form::Polygon(6), &readings).unwrap();
    for (got, want) in taped.corners.iter().zip(corners) {
        assert!((*got / FOOT).distance(dvec2(want.0, want.1)) < 1e-9, "{got} is not {want:?}");
    }
}

/// Corners around a centre, rotated so that the first side is along u.
fn around(radii: &[f64]) -> Vec<DVec2> {
    let turn = std::f64::consts::TAU / radii.len() as f64;
    let at = |(i, r): (usize, &f64)| DVec2::from_angle(turn * i as f64) * *r;
    let ring: Vec<DVec2> = radii.iter().enumerate().map(at).collect();
    let along = (ring[1] - ring[0]).normalize();
    ring.iter().map(|&p| dvec2((p - ring[0]).dot(along), along.perp_dot(p - ring[0]))).collect()
}

/// All sides, and the diagonals of a triangulation.
fn taped_net(ring: &[DVec2]) -> Vec<TapedLine> {
    let index = |p: DVec2| ring.iter().position(|q| q.distance(p) < 1e-9).unwrap();
    let mut net: Vec<(usize, usize)> = (0..ring.len()).map(|i| (i, (i + 1) % ring.len())).collect();
    for triangle in Polygon::new(ring.to_vec()).triangles() {
        for (a, b) in [(0, 1), (1, 2), (2, 0)].map(|(a, b)| (index(triangle[a]), index(triangle[b]))) {
            if !net.contains(&(a, b)) && !net.contains(&(b, a)) {
                net.push((a, b));
            }
        }
    }
    net.into_iter().map(|(a, b)| TapedLine::Between(a, b)).collect()
}

fn exact(ring: &[DVec2], of: TapedLine) -> f64 {
    match of {
        TapedLine::Between(a, b) => ring[a].distance(ring[b]),
        TapedLine::Up(corner) => ring[corner].y,
    }
}

proptest! {
    /// Exact readings reproduce the face, with no correction.
    #[test]
    fn exact_readings_reproduce_the_face(radii in prop::collection::vec(3.0..9.0f64, 3..12)) {
        let ring = around(&radii);
        let readings: Vec<Reading> = taped_net(&ring)
            .into_iter()
            .map(|of| Reading { of, length: Length::from_metres(exact(&ring, of)) })
            .collect();
        let taped = laid(Form::Polygon(ring.len()), &readings).unwrap();
        prop_assert_eq!(taped.spare, 0);
        for (got, want) in taped.corners.iter().zip(&ring) {
            prop_assert!(got.distance(*want) < 1e-6, "{} is not {}", got, want);
        }
        prop_assert!(taped.closing_error.metres() < 1e-9);
    }

    /// With every line taped and each slightly misread: the shape is the least-squares one (no small move of a corner improves
    /// it), no correction exceeds the limit, and the face is within a few misreadings of the true one.
    #[test]
    fn small_misreadings_are_spread_by_least_squares(
        radii in prop::collection::vec(4.0..6.0f64, 4..8),
        misread in prop::collection::vec(-0.005..0.005f64, 40),
    ) {
        let ring = around(&radii);
        let lines = (0..ring.len()).flat_map(|a| (a + 1..ring.len()).map(move |b| TapedLine::Between(a, b)));
        let readings: Vec<Reading> = lines
            .zip(misread)
            .map(|(of, by)| Reading { of, length: Length::from_metres(exact(&ring, of) + by) })
            .collect();
        let taped = laid(Form::Polygon(ring.len()), &readings).unwrap();
        let squares = |ring: &[DVec2]| -> f64 {
            readings.iter().map(|r| (exact(ring, r.of) - r.length.metres()).powi(2)).sum()
        };
        let best = squares(&taped.corners);
        prop_assert!(best <= squares(&ring) + 1e-15);
        for corner in 1..ring.len() {
            for by in [DVec2::X, -DVec2::X, DVec2::Y, -DVec2::Y] {
                let mut moved = taped.corners.clone();
                moved[corner] += by * 1e-5;
                prop_assert!(squares(&moved) >= best - 1e-16);
            }
        }
        for (reading, by) in readings.iter().zip(&taped.corrections) {
            let length = exact(&taped.corners, reading.of);
            prop_assert!((reading.length.metres() + by.metres() - length).abs() < 1e-12);
        }
        for (got, want) in taped.corners.iter().zip(&ring) {
            prop_assert!(got.distance(*want) < 0.05);
        }
    }

    /// No input panics, hangs or gives an invalid outline.
    #[test]
    fn any_readings_give_a_face_or_an_error(
        form in 0..5usize,
        readings in prop::collection::vec((0..6usize, 0..7usize, -1.0..60.0f64), 0..16),
    ) {
        let form = [Form::Triangle, Form::Rectangle, Form::Parallelogram, Form::Trapezoid, Form::Polygon(5)][form];
        let readings: Vec<Reading> = readings
            .into_iter()
            .map(|(a, b, length)| {
                let of = if b == 6 { TapedLine::Up(a) } else { TapedLine::Between(a, b) };
                Reading { of, length: Length::from_metres(length) }
            })
            .collect();
        for limit in [0.0, 0.025, 10.0] {
            match lay_out(form, &readings, Length::from_metres(limit)) {
                Ok(taped) => {
                    prop_assert_eq!(taped.corners.len(), form.corners());
                    prop_assert!(taped.area() > 0.0 && taped.corners.iter().all(|p| p.is_finite()));
                    prop_assert!(taped.closing_error.metres() <= limit + 1e-12);
                }
                Err(error) => prop_assert!(!error.to_string().is_empty()),
            }
        }
    }
}
