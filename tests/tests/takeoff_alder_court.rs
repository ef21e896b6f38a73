//! The 3 × 4 block of Alder Court, counted by hand, part by part.
//!
//! The face is one side of a gable of 60 × 30 ft at 6:12: 60 ft along the eave, 15 × 1.1180 = 16.77 ft up the slope (slope factor
//! √(1 + (6/12)²)). Shingle exposure is 5 in. The block is 18 ft from the left rake and 25 in above the eave, on a course line.
//! Modules are landscape, 1722 × 1134 mm, with a reveal of 1/8 in = 3.175 mm.
//!
//! Counts per module, seam, head and corner are common practice, no source. Published: the size of step flashing (IRC R905.2.8.3,
//! 2018), the roll of ASTM D1970 membrane as sold, 36 in × 66.7 ft = 200 ft², and one piece of step flashing per course as in
//! roofing handbooks, ceil(length / exposure) + 1 (from memory).

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, Units, dvec2};
use chalkcourse_job::{
    Block, BlockId, Face, FaceId, Orientation, Resolved, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Takeoff, take_off};
use chalkcourse_telling::order::{Header, TakeoffData, takeoff_schema, to_json};
use rust_decimal::Decimal;

fn alder_court(up: Length) -> Resolved {
    let feet = |x: f64, y: f64| dvec2(Length::from_feet(x).metres(), Length::from_feet(y).metres());
    let mut job = Resolved::new("Alder Court".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces.push(Face::new(
        FaceId(1),
        "South".into(),
        Polygon::new(vec![feet(0.0, 0.0), feet(60.0, 0.0), feet(60.0, 15.0), feet(0.0, 15.0)]),
        Pitch::from_rise_in_12(6.0).unwrap(),
        Azimuth::from_degrees(180.0),
        Length::ZERO,
    ));
    job.blocks.push(Block {
        id: BlockId(2),
        name: "A".into(),
        face: FaceId(1),
        at: dvec2(Length::from_feet(18.0).metres(), up.metres()),
        rows: 3,
        columns: 4,
        orientation: Orientation::Landscape,
        reveal: Length::parse("1/8 in", Units::FeetInches).unwrap(),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    });
    job.next_id = 3;
    job
}

fn order(job: &Resolved) -> Takeoff {
    take_off(job, &Layout::of(job))
}

/// The array's own parts; the rest are the roof, safety, work and disposal.
fn of_array(number: &str) -> bool {
    number < "FH-200"
}

/// Square feet per square metre.
const SQUARE_FEET: f64 = 10.763_910_416_709_722;

#[test]
fn counted_by_hand() {
    let takeoff = order(&alder_court(Length::from_inches(25.0)));
    // wide  = 4 × 1.722 + 3 × 0.003175 = 6.897525 m  = 271.556 in = 22.6297 ft
    // high  = 3 × 1.134 + 2 × 0.003175 = 3.408350 m  = 134.187 in = 11.1823 ft
    // number, need, need with waste, packages
    let by_hand: &[(&str, f64, f64, u64)] = &[
        ("FH-101", 12.0, 12.0, 12), // 3 × 4
        ("FH-102", 60.0, 62.0, 3),  // 12 × 5; × 1.02 = 61.2; boxes of 25
        ("FH-103", 60.0, 63.0, 1),  // one per foot; × 1.05 = 63; box of 100
        ("FH-104", 12.0, 12.0, 12), // one per module
        ("FH-105", 12.0, 13.0, 2),  // one per device; × 1.02 = 12.24; boxes of 10
        ("FH-107", 12.0, 13.0, 1),  // one per bracket; × 1.05 = 12.6; bag of 25
        ("FH-110", 3.0, 3.0, 3),    // 271.556 / 96 = 2.83
        ("FH-111", 2.0, 2.0, 1),    // three pieces, two joints; bag of 5
        ("FH-112", 84.0, 89.0, 1), // 22.63 spaces of 12 in: 23, and 1; one for each of 60 feet; × 1.05 = 88.2; box of 100
        ("FH-113", 1.0, 1.0, 1),   // one left end
        ("FH-114", 1.0, 1.0, 1),   // one right end
        ("FH-120", 6.0, 6.0, 6),   // 134.187 / 48 = 2.80, 3 per side
        ("FH-121", 56.0, 59.0, 3), // ceil(134.187 / 5 = 26.8) + 1 = 28 per side; × 1.05 = 58.8; boxes of 25
        ("FH-122", 6.0, 6.0, 6),   // (134.187 - 2) / (48 - 2) = 2.87, 3 per side
        ("FH-130", 4.0, 4.0, 4),   // one per module of the top row
        ("FH-131", 4.0, 4.0, 4),   // one per head flashing
        ("FH-132", 5.0, 5.0, 1),   // 2 ends and 3 seams; bag of 5
        ("FH-133", 1.0, 1.0, 1),   // one left corner
        ("FH-134", 1.0, 1.0, 1),   // one right corner
        ("FH-153", 2.0, 2.0, 2),   // one per head corner
        ("FH-160", 4.0, 4.0, 1),   // one per head flashing; bag of 10
        ("FH-161", 12.0, 13.0, 2), // one per device; × 1.02 = 12.24; bags of 10
        ("FH-163", 3.0, 3.0, 3),   // one per row
        ("FH-164", 1.0, 1.0, 1),   // one per block
        ("FH-165", 1.0, 1.0, 1),   // one per block
        ("FH-166", 4.0, 4.0, 4),   // an allowance of 4 per block
        ("FH-167", 1.0, 1.0, 1),   // one set per block
    ];
    // Under the array, 134.187 in up the slope, 48 in strips lapped 4 in: 48 + 2 × 44 = 136 in is three strips of 22.6297 ft. The
    // first roll of 50 ft ends in the third, a lap of 6 in: 68.389 ft × 4 = 273.56 ft², × 1.05 = 287.23; rolls of 200 ft²
    let underlayment = ("FH-150", 273.556 / SQUARE_FEET, 287.234 / SQUARE_FEET, 2);
    // With 18 in on all sides 170.187 in up, 36 in strips lapped 3 1/2 in: 36 + 4 × 32.5 = 166 in is too little, so six strips of
    // 25.6297 ft, 153.778 ft. Two rolls of 66.7 ft end within a strip, a lap of 6 in each: 154.778 × 3 = 464.33 ft², × 1.05 =
    // 487.55; rolls of 200 ft²
    let membrane = ("FH-152", 464.334 / SQUARE_FEET, 487.551 / SQUARE_FEET, 3);
    // 22.6297 ft of head plus 12 in at each of two corners, × 1.05; a roll of 50 ft
    let strip = ("FH-155", 24.6297 * 0.3048, 25.8612 * 0.3048, 1);
    // 2 × 22.6297 + 2 × 11.1823 + 2 × 1 = 69.624 ft, × 1.05 = 73.105; rolls of 33 ft
    let starter = ("FH-154", 69.624 * 0.3048, 73.105 * 0.3048, 3);
    // 3 rows × 3 steps × 1.725175 + 2 × 1.137175 + 1.134 / 2 = 18.3679 m = 60.262 ft, + 6 ft, × 1.05 = 69.575; 250 ft
    let copper = ("FH-162", 66.262 * 0.3048, 69.575 * 0.3048, 1);
    let measured = [underlayment, membrane, strip, starter, copper];
    for &(number, need, with_waste, packages) in by_hand.iter().chain(&measured) {
        let line = takeoff.lines.iter().find(|line| line.number == number).expect(number);
        let near = |got: f64, expect: f64| (got - expect).abs() <= 1e-3;
        assert!(near(line.need, need), "{number} needs {}, by hand {need}", line.need);
        assert!(near(line.with_waste, with_waste), "{number}: {}, by hand {with_waste}", line.with_waste);
        assert_eq!(line.packages, packages, "packages of {number}");
    }
    // FH-135 is for inside corners, and a full block has none; FH-156, primer, is only used if an office says so.
    let array = takeoff.lines.iter().filter(|line| of_array(&line.number));
    assert_eq!(array.count(), by_hand.len() + measured.len());
    let kit = builtin_kit();
    assert_eq!(
        kit.parts.iter().filter(|part| of_array(&part.number)).count(),
        // Nine more are for circuits, and count only once these are drawn.
        by_hand.len() + measured.len() + 2 + 9
    );
}

/// Packages × price, added on paper:
/// solar 12 × 212.00 + 3 × 61.25 + 14.80 + 12 × 58.40 + 2 × 46.50 + 9.40 = 3545.75;
/// flashing 3 × 38.75 + 17.50 + 24.60 + 2 × 6.15 + 6 × 11.40 + 3 × 29.95 + 6 × 16.85 + 4 × 44.60 + 4 × 9.20
/// plus 27.50 + 2 × 23.10 = 718.90;
/// roofing 2 × 148.00 + 3 × 121.75 + 2 × 13.45 + 31.50 + 3 × 36.20 = 828.25;
/// wire 42.00 + 2 × 33.60 + 168.40 + 3 × 18.25 + 64.00 + 88.50 + 4 × 9.80 + 14.50 = 538.55.
#[test]
fn the_total_foots_to_the_cent() {
    let takeoff = order(&alder_court(Length::from_inches(25.0)));
    assert!(takeoff.unpriced.is_empty());
    let by_hand: Decimal =
        ["3545.75", "718.90", "828.25", "538.55"].iter().map(|s| s.parse::<Decimal>().unwrap()).sum();
    let array = takeoff.lines.iter().filter(|line| of_array(&line.number)).filter_map(|line| line.cost);
    assert_eq!(array.sum::<Decimal>(), by_hand);
}

/// Between two course lines the side touches one more course: 24 in is 3.8 courses above the first line, the top (158.187 in)
/// 30.6, so it is in courses 3 to 30, 28 of them, and takes 29 pieces.
#[test]
fn a_block_between_course_lines_takes_one_step_flashing_more_a_side() {
    let takeoff = order(&alder_court(Length::from_inches(24.0)));
    let steps = takeoff.lines.iter().find(|line| line.number == "FH-121").unwrap();
    assert_eq!(steps.need, 58.0);
}

/// The file conforms to its published schema (JSON Schema 2020-12), by an independent validator.
#[test]
fn the_json_is_what_its_schema_says() {
    let job = alder_court(Length::from_inches(25.0));
    let takeoff = order(&job);
    let json: serde_json::Value =
        serde_json::from_str(&to_json(&takeoff, &Header::of(&job), job.units).unwrap()).unwrap();
    let validator = jsonschema::validator_for(takeoff_schema().as_value()).unwrap();
    let wrong: Vec<String> = validator.iter_errors(&json).map(|error| error.to_string()).collect();
    assert!(wrong.is_empty(), "{wrong:?}");
    assert_eq!(json["format"], "chalkcourse-takeoff");
    let order = &json["data"]["takeoff"];
    assert_eq!(order, &serde_json::to_value(TakeoffData::of(&takeoff, job.units)).unwrap());
    // Any number can be traced to its places.
    let feet = &order["lines"][1];
    assert_eq!(feet["terms"][0]["words"], "12 modules × 5");
    let measure = &order["measures"][feet["terms"][0]["measure"].as_u64().unwrap() as usize];
    assert_eq!(measure["places"][11]["label"], "row 3, column 4");
    let shares: f64 =
        feet["terms"][0]["shares"].as_array().unwrap().iter().map(|s| s.as_f64().unwrap()).sum();
    assert_eq!(shares, feet["need"].as_f64().unwrap());
}
