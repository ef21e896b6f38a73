//! The roofing of each sample roof, counted by hand.
//!
//! Published: laps of drip edge (IRC R905.2.8.5, 2018), underlayment by slope (IRC table R905.1.1(2), 2018), the leak
//! barrier (IRC R905.1.2, 2018), 320 nails and 3 bundles a square of three-tab shingles, 35 ft of caps a bundle, No. 15 felt
//! of 36 in × 144 ft = 432 sq ft that nets about 400, waste of 10 % on a gable and 15 % on a hip roof (roofing handbooks).
//! From memory: starter of 100 to 120 ft a bundle, end laps, a piece of step flashing a course and one more. Allowances for
//! sheathing, sealant, safety and work are the kit's own.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Job, Unit};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Line, Takeoff, take_off};
use chalkcourse_tests::samples;

fn order(job: &Job) -> Takeoff {
    take_off(job, &Layout::of(job))
}

fn line<'a>(takeoff: &'a Takeoff, number: &str) -> &'a Line {
    takeoff.lines.iter().find(|line| line.number == number).expect(number)
}

/// In feet, square feet and pounds, as a roofer counts.
fn need(line: &Line) -> f64 {
    match line.unit {
        Unit::Each | Unit::Time => line.need,
        Unit::Length => line.need / 0.3048,
        Unit::Area => line.need / (0.3048 * 0.3048),
        Unit::Mass => line.need / 0.453_592_37,
    }
}

fn check(takeoff: &Takeoff, by_hand: &[(&str, f64, u64)]) {
    for &(number, expect, packages) in by_hand {
        let line = line(takeoff, number);
        let got = need(line);
        let slack = 1e-4 * expect.max(1.0);
        assert!((got - expect).abs() <= slack, "{number} {}: {got}, by hand {expect}", line.name);
        assert_eq!(line.packages, packages, "packages of {number} {}", line.name);
    }
}

/// Two faces of 60 × 15 × 1.118034 = 16.77051 ft, 1006.2306 sq ft each; the array covers 253.0526 sq ft of one of them.
#[test]
fn alder_court() {
    let takeoff = order(&samples::alder_court());
    check(
        &takeoff,
        &[
            // 2012.4612 / 1600 = 1.26
            ("FH-201", 2.0, 2),
            // 2 × 60, × 1.05 = 126; box of 500
            ("FH-202", 120.0, 1),
            // two eaves of 720 in: 6 whole sticks (6 × 118 = 708) and a piece of 12 in each; both pieces from one more
            ("FH-203", 13.0, 13),
            // four rakes of 201.246 in: a whole stick and 201.246 − 118 = 83.246 in each, one from a stick
            ("FH-204", 8.0, 8),
            // each 12 in and one more: 2 × (60 + 1) + 4 × (17 + 1) = 194, × 1.05 = 203.7; box of 250
            ("FH-205", 194.0, 1),
            // 24 in inside the wall, no overhang: 24 × 1.118 = 26.8 in up, one course of 36 in along each eave, 2 × 60 ft and
            // a lap of 6 in where the first roll of 66.7 ft ends: 120.5 × 3 = 361.5; around three pipes of 4 in 3 ×
            // (16² − 4²) = 720 sq in, around the chimney 44 × 32 − 32 × 20 = 768 sq in: 10.3333. × 1.05 = 390.4; rolls of 200
            ("FH-210", 371.8333, 2),
            // 16.77 ft = 201.2 in of courses of 34 in: 6 a face, 12 × 60 = 720 ft, and a lap of 4 in where each of 5 rolls
            // ends: 721.6667 × 3; rolls of 432. By the handbook's net coverage 2012.46 / 400 = 5.03, 6 rolls too
            ("FH-211", 2165.0, 6),
            // 21.65 squares × 80 = 1732, × 1.05 = 1818.6; box of 2000
            ("FH-212", 1732.0, 1),
            // 2 × 60 + 4 × 16.77051, × 1.05 = 196.4; bundles of 105 ft
            ("FH-213", 187.0820, 2),
            // 2012.4612 − 253.0526, × 1.1 = 1935.35; a third of a square a bundle: 58.06
            ("FH-214", 1759.4086, 59),
            // 17.594086 × 320 = 5630.1, and 2 each 5 in of 60 ft of caps, 288: 5918.1; × 1.05 = 6215; box of 7200
            ("FH-215", 5919.0, 1),
            // 60, × 1.05 = 63; bundles of 35 ft
            ("FH-216", 60.0, 2),
            // the chimney reaches from 151.0 to 171.0 in up: courses 30 to 34 of 5 in, 5 of them, and one more, on two sides
            ("FH-220", 12.0, 1),
            // below and above the chimney 32 in each, from one stick of 10 ft
            ("FH-221", 1.0, 1),
            ("FH-224", 3.0, 3),
            // 3 × 0.5 + 64 / 120 + 1 = 3.03
            ("FH-227", 4.0, 4),
            // seven people; the ridge of 60 ft takes 3 spaces of 20 ft and one more
            ("FH-301", 7.0, 7),
            ("FH-302", 4.0, 4),
            // 2012.46 / 1200 = 1.68
            ("FH-304", 2.0, 2),
            // 20.124612 h, whole hours
            ("FH-401", 20.124_612, 21),
            // 12 × 0.5
            ("FH-406", 6.0, 6),
            // 20.124612 × 230 = 4628.66 lb, × 1.05 = 4860; containers of 6000
            ("FH-501", 4628.6608, 1),
        ],
    );
    for number in ["FH-217", "FH-222", "FH-223", "FH-225", "FH-226"] {
        assert!(takeoff.lines.iter().all(|line| line.number != number), "{number} has no place here");
    }
    // A gable loses nothing at its rakes: what they cut off begins the next course. The handbook's 10 % is for the rest.
    assert!(line(&takeoff, "FH-214").waste_by_geometry.unwrap() < 1e-9);
    // 3 bundles a square
    assert!((100.0 / (line(&takeoff, "FH-214").holds / (0.3048 * 0.3048)) - 3.0).abs() < 1e-6);
}

/// A barn of 40 × 36 ft at 2:12: 18 × 1.013794 = 18.24829 ft up each face, 218.98 in. Below 4:12 the felt lies double.
#[test]
fn low_barn() {
    let takeoff = order(&samples::low_barn());
    check(
        &takeoff,
        &[
            // two eaves of 480 in: 4 × 118 = 472 leave 8 in, less than a piece of 12 in may be: 3 whole sticks, 116 and 12
            // in; the two of 12 in share a stick: 6 + 2 + 1
            ("FH-203", 9.0, 9),
            // four rakes of 218.98 in: a whole stick and 100.98 in
            ("FH-204", 8.0, 8),
            // sheets each 17 in while 19 in of the one below do not reach the top: 0 to 187 in, 12 a face, 24 × 40 = 960 ft;
            // 19 in strips 2 × 40 × 19/36 = 42.2222 ft; six rolls end within a course, a lap of 4 in each: 1004.2222 × 3
            ("FH-211", 3012.6667, 7),
            // 2 × 40 + 4 × 18.24829, × 1.05 = 160.6; bundles of 105 ft
            ("FH-213", 152.9932, 2),
            // 40 × 1.05 = 42
            ("FH-216", 40.0, 2),
            // 1459.863 / 1200 = 1.2
            ("FH-304", 2.0, 2),
        ],
    );
}

/// In metres: an L of 12 × 8 and 6 × 6 at 6:12 with a dormer over its own ground, 132 m² in plan, and a porch of 4 × 2.4 at
/// 4:12: 132 × 1.118034 + 9.6 × 1.054093 = 157.6997 m² = 1697.466 sq ft of deck.
#[test]
fn quarry_lane() {
    let takeoff = order(&samples::quarry_lane());
    let feet = |metres: f64| metres / 0.3048;
    let caps = line(&takeoff, "FH-216");
    // ridges 4 + 9 + 2.4 m; hips of 4, 4, 4 and 1 m of common run, × 1.5 at 6:12 (hip factor): 19.5 m
    assert!((need(caps) - feet(15.4 + 19.5)).abs() < 1e-3, "{}", need(caps));
    // 114.50 ft × 1.05 = 120.2
    assert_eq!(caps.packages, 4);
    // valleys of 3, 1 and 1 m of common run, × 1.5. 177.17 in is a whole piece of 120 in and 177.17 − 114 = 63.17 in; the two
    // of 59.06 in come from one piece, the 63.17 in from another
    let valley = line(&takeoff, "FH-217");
    assert_eq!((valley.need, valley.packages), (3.0, 3));
    assert!((valley.terms[0].measured - 7.5).abs() < 1e-6);
    // eaves 6 + 8 + 12 + 14 + 6 of the L, 2 × 1.4 of the dormer, 4 of the porch
    let starter = line(&takeoff, "FH-213");
    assert!((starter.terms[0].measured - 52.8).abs() < 1e-6, "{}", starter.terms[0].measured);
    // deck less 4 × 2 modules (6.897525 × 2.271175 m) and 2 × 2 (3.447175 × 2.271175)
    let shingles = line(&takeoff, "FH-214");
    assert!((shingles.need - (157.6997 - 15.6655 - 7.8291)).abs() < 1e-3, "{}", shingles.need);
    // The hips and valleys of this roof cut off less than the handbook's 15 % for a hip roof, which is for breakage too.
    let cut_off = shingles.waste_by_geometry.unwrap();
    assert!(cut_off > 0.01 && cut_off < 0.15, "{cut_off}");
    assert_eq!(line(&takeoff, "FH-224").packages, 1);
    assert_eq!(line(&takeoff, "FH-226").packages, 1);
}

/// A hundred houses of 10 × 15 m at 6:12: 15000 × 1.118034 = 16770.51 m² of deck, and two arrays of 8.6227 × 5.6827 m each.
#[test]
fn mill_row() {
    let takeoff = order(&samples::mill_row());
    let shingles = line(&takeoff, "FH-214");
    assert!((shingles.need - (16_770.51 - 200.0 * 8.6227 * 5.6827)).abs() < 0.1, "{}", shingles.need);
    // 100 ridges of 10 m = 3280.84 ft, × 1.05 = 3444.88; bundles of 35 ft: 98.4
    assert_eq!(line(&takeoff, "FH-216").packages, 99);
    // 200 eaves of 10 m = 393.70 in: 3 whole sticks (354 in) and 39.70 in; three of those from a stick of 120: 600 + 67
    let eaves = line(&takeoff, "FH-203");
    assert_eq!(eaves.packages, 667);
    assert!(eaves.terms[0].cuts.as_ref().unwrap().proved);
    assert_eq!(line(&takeoff, "FH-101").packages, 5000);
    assert_eq!(line(&takeoff, "FH-224").packages, 100);
}
