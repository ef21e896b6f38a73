//! Roof geometry against published tables and closed forms.
//!
//! Slope and hip factors: closed forms √(1+(x/12)²) and √(2+(x/12)²), as carpentry and roofing handbooks tabulate them. The
//! unit lengths of common rafters agree with those on a framing square and in the US Army carpentry manual (TM 5-551B,
//! FM 5-426: 12 in of run and 13 in of rise, 17.69 in; 16 in of rise, 20.00 in).

#![allow(
    clippy::approx_constant,
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{
    Azimuth, DVec2, EdgeKind, FaceInput, Pitch, Plane, Polygon, Roof, Tolerances, dvec2,
};
use std::collections::BTreeMap;

const FOOT: f64 = 0.3048;

fn near(got: f64, expect: f64, within: f64, what: &str) {
    assert!((got - expect).abs() <= within, "{what}: {got}, expected {expect} ± {within}");
}

#[test]
fn slope_and_hip_factor_table() {
    // rise, degrees, slope factor, hip and valley factor, common in/ft of run, hip in/ft of run
    let table = [
        (3.0, 14.04, 1.0308, 1.4361, 12.37, 17.23),
        (4.0, 18.43, 1.0541, 1.4530, 12.65, 17.44),
        (5.0, 22.62, 1.0833, 1.4743, 13.00, 17.69),
        (6.0, 26.57, 1.1180, 1.5000, 13.42, 18.00),
        (7.0, 30.26, 1.1577, 1.5298, 13.89, 18.36),
        (8.0, 33.69, 1.2019, 1.5635, 14.42, 18.76),
        (9.0, 36.87, 1.2500, 1.6008, 15.00, 19.21),
        (10.0, 39.81, 1.3017, 1.6415, 15.62, 19.70),
        (11.0, 42.51, 1.3566, 1.6853, 16.28, 20.22),
        (12.0, 45.00, 1.4142, 1.7321, 16.97, 20.78),
    ];
    for (rise, degrees, slope, hip, common_inches, hip_inches) in table {
        let pitch = Pitch::from_rise_in_12(rise).unwrap();
        near(pitch.degrees(), degrees, 0.005, "degrees");
        near(pitch.slope_factor(), slope, 0.000_051, "slope factor");
        near(pitch.hip_valley_factor(), hip, 0.000_051, "hip factor");
        near(pitch.slope_factor() * 12.0, common_inches, 0.005_1, "common rafter, inches a foot of run");
        near(pitch.hip_valley_factor() * 12.0, hip_inches, 0.005_1, "hip rafter, inches a foot of run");
    }
}

#[test]
fn army_carpentry_manual_unit_lengths() {
    for (rise, inches) in [(13.0, 17.69), (16.0, 20.00)] {
        near(Pitch::from_rise_in_12(rise).unwrap().slope_factor() * 12.0, inches, 0.005, "unit length");
    }
}

fn face(corners: &[(f64, f64)], rise: f64, downslope: Azimuth, eave_point: (f64, f64)) -> FaceInput {
    FaceInput {
        outline: Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y) * FOOT).collect()),
        sides: Vec::new(),
        plane: Plane {
            datum: (DVec2::from(eave_point) * FOOT).extend(2.7),
            pitch: Pitch::from_rise_in_12(rise).unwrap(),
            downslope,
        },
        overruled: BTreeMap::new(),
    }
}

fn total(roof: &Roof, kind: EdgeKind) -> f64 {
    roof.lines().iter().filter(|line| line.kind == kind).map(|line| line.length).sum::<f64>() / FOOT
}

/// 4:12 on a building 28 ft wide: the common rafter is 14 ft 9 in (published worked example; closed form 14.7573 ft).
#[test]
fn common_rafter_example() {
    let roof = Roof::assemble(
        &[face(&[(0.0, 0.0), (40.0, 0.0), (40.0, 14.0), (0.0, 14.0)], 4.0, Azimuth::SOUTH, (0.0, 0.0))],
        Tolerances::default(),
    );
    let rake = roof.faces[0].edges.iter().find(|e| e.kind == EdgeKind::Rake).unwrap().length / FOOT;
    near(rake, 14.7573, 0.0001, "rafter");
    near(rake, 14.75, 1.0 / 96.0, "rafter, to the nearest eighth");
}

/// 5,000 ft² in plan at 6:12 is 5,590 ft² of roof (published worked example).
#[test]
fn plan_to_roof_area_example() {
    let roof = Roof::assemble(
        &[face(&[(0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0)], 6.0, Azimuth::SOUTH, (0.0, 0.0))],
        Tolerances::default(),
    );
    near(roof.slope_area() / FOOT.powi(2), 5_590.0, 0.5, "area");
}

/// Gable, 60 × 30 ft eave to eave at 6:12: 2,012.46 ft², rakes of 16.771 ft (closed form).
#[test]
fn gable_of_60_by_30() {
    let faces = [
        face(&[(0.0, 0.0), (60.0, 0.0), (60.0, 15.0), (0.0, 15.0)], 6.0, Azimuth::SOUTH, (0.0, 0.0)),
        face(&[(60.0, 30.0), (0.0, 30.0), (0.0, 15.0), (60.0, 15.0)], 6.0, Azimuth::NORTH, (60.0, 30.0)),
    ];
    let roof = Roof::assemble(&faces, Tolerances::default());
    assert!(roof.problems.is_empty());
    near(roof.slope_area() / FOOT.powi(2), 2_012.46, 0.005, "area");
    near(total(&roof, EdgeKind::Rake), 4.0 * 16.771, 0.002, "rakes");
    near(total(&roof, EdgeKind::Eave), 120.0, 1e-9, "eaves");
    near(total(&roof, EdgeKind::Ridge), 60.0, 1e-9, "ridge, counted once");
}

/// Hip on the same plan: two trapezoids and two triangles with the same total area, a ridge of 30 ft and hips of 22.50 ft = 15 ft
/// of common run × 1.5 (closed form).
#[test]
fn hip_of_60_by_30() {
    let faces = [
        face(&[(0.0, 0.0), (60.0, 0.0), (45.0, 15.0), (15.0, 15.0)], 6.0, Azimuth::SOUTH, (0.0, 0.0)),
        face(&[(60.0, 30.0), (0.0, 30.0), (15.0, 15.0), (45.0, 15.0)], 6.0, Azimuth::NORTH, (60.0, 30.0)),
        face(&[(60.0, 0.0), (60.0, 30.0), (45.0, 15.0)], 6.0, Azimuth::EAST, (60.0, 0.0)),
        face(&[(0.0, 30.0), (0.0, 0.0), (15.0, 15.0)], 6.0, Azimuth::WEST, (0.0, 30.0)),
    ];
    let roof = Roof::assemble(&faces, Tolerances::default());
    assert!(roof.problems.is_empty(), "{:?}", roof.problems);
    near(roof.slope_area() / FOOT.powi(2), 2_012.46, 0.005, "area");
    near(total(&roof, EdgeKind::Ridge), 30.0, 1e-9, "ridge");
    near(total(&roof, EdgeKind::Hip), 4.0 * 22.5, 1e-6, "hips");
    near(total(&roof, EdgeKind::Rake), 0.0, 1e-9, "no rakes");
}
