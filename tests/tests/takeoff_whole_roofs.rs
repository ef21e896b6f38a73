//! The roofing of each sample roof, counted by hand.
//!
//! Published: laps of drip edge (IRC R905.2.8.5, 2018), underlayment by slope (IRC table R905.1.1(2), 2018), the leak barrier
//! (IRC R905.1.2, 2018), 320 nails and 3 bundles per square of three-tab shingles, 35 ft of caps per bundle, No. 15 felt of 36 in
//! × 144 ft = 432 sq ft that nets about 400, waste of 10 % on a gable and 15 % on a hip roof (roofing handbooks), 15 to 20 % on a
//! cut-up one (from memory). From memory: starter of 100 to 120 ft per bundle, end laps, a piece of step flashing per course plus
//! one. Allowances for sheathing, sealant, safety and work are the kit's own.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Resolved, Unit};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Line, Takeoff, take_off};
use chalkcourse_tests::samples;

fn order(job: &Resolved) -> Takeoff {
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

/// The complete takeoff of Alder Court is in `hand_takeoff.rs`.
#[test]
fn alder_court() {
    let takeoff = order(&samples::alder_court());
    // IRC R905.1.2 (2018): 26.83 in along 2 × 60 ft, under the array too.
    let barrier = &line(&takeoff, "FH-210").terms[0];
    assert!((barrier.measured / (0.3048 * 0.3048) - 268.328).abs() < 1e-2, "{}", barrier.measured);
    // There is a cricket in place of the back pan, the ridge is not vented, and no wall ends an eave.
    for number in ["FH-217", "FH-222", "FH-223", "FH-225", "FH-226", "FH-228", "FH-229", "FH-230", "FH-233"] {
        assert!(takeoff.lines.iter().all(|line| line.number != number), "{number} has no place here");
    }
    // A gable has no waste at its rakes: offcuts start the next course. The handbook's 10 % is for the rest.
    assert!(line(&takeoff, "FH-214").waste_by_geometry.unwrap() < 1e-9);
    // 3 bundles per square
    assert!((100.0 / (line(&takeoff, "FH-214").holds / (0.3048 * 0.3048)) - 3.0).abs() < 1e-6);
}

/// A barn of 40 × 36 ft at 2:12: 18 × 1.013794 = 18.24829 ft up each face, 218.98 in. Below 4:12 the felt is double.
#[test]
fn low_barn() {
    let takeoff = order(&samples::low_barn());
    check(
        &takeoff,
        &[
            // two eaves of 480 in: 4 × 118 = 472 leaves 8 in, less than the minimum piece of 12 in: 3 whole sticks, 116 and 12
            // in; the two of 12 in share a stick: 6 + 2 + 1
            ("FH-203", 9.0, 9),
            // four rakes of 218.98 in: a whole stick and 100.98 in
            ("FH-204", 8.0, 8),
            // from 34 in up, where the barrier's roll ends less a lap, sheets every 17 in as long as 19 in of the one below do
            // not reach the top: 34 to 187 in, 10 per face. South, seven beside the array's membrane, 4.6667 + 10.0370 ft, and
            // three of 40 ft: 222.9256 ft; north 400 ft. 19 in strips of 14.7037 and 40 ft × 19/36 = 28.8714 ft; a remnant of
            // 1.0744 ft is too short to lay, and three rolls end within a course, a lap of 4 in each: 653.8714 × 3
            ("FH-211", 1961.6141, 5),
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
    // valleys of 3, 1 and 1 m of common run, × 1.5. 177.17 in is a whole piece of 120 in and 177.17 − 114 = 63.17 in; the two of
    // 59.06 in come from one piece, the 63.17 in from another
    let valley = line(&takeoff, "FH-217");
    assert_eq!((valley.need, valley.packages), (3.0, 3));
    assert!((valley.terms[0].measured - 7.5).abs() < 1e-6);
    // eaves 6 + 8 + 12 + 14 + 6 of the L, 2 × 1.4 of the dormer, 4 of the porch
    let starter = line(&takeoff, "FH-213");
    assert!((starter.terms[0].measured - 52.8).abs() < 1e-6, "{}", starter.terms[0].measured);
    // deck less 4 × 2 modules (6.897525 × 2.271175 m) and 2 × 2 (3.447175 × 2.271175)
    let shingles = line(&takeoff, "FH-214");
    assert!((shingles.need - (157.6997 - 15.6655 - 7.8291)).abs() < 1e-3, "{}", shingles.need);
    // The hips and valleys of this roof waste less than the handbook's 15 % for a hip roof, which also covers breakage.
    let cut_off = shingles.waste_by_geometry.unwrap();
    assert!(cut_off > 0.01 && cut_off < 0.15, "{cut_off}");
    assert_eq!(line(&takeoff, "FH-224").packages, 1);
    assert_eq!(line(&takeoff, "FH-226").packages, 1);
    // A skylight needs its maker's kit; valleys make the roof a cut-up one.
    assert_eq!(line(&takeoff, "FH-229").packages, 1);
    assert_eq!(shingles.waste, 0.2);
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
