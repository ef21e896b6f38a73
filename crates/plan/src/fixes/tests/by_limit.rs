//! The move past each limit, worked out by hand, and that no shorter straight one works.

use super::*;
use chalkcourse_geometry::{EdgeKind, Units};
use chalkcourse_job::{Limit, Overrule, RowShift, Source, Standing};
use chalkcourse_rules::Severity;
use chalkcourse_words::Language;
use proptest::prelude::*;

/// The right side of the block.
const SIDE: f64 = 8.172;
/// Length up a 6:12 slope per length in plan.
fn slope() -> f64 {
    1.25f64.sqrt()
}

fn at(u: f64, v: f64) -> Resolved {
    let mut job = gable();
    job.blocks[0].at = dvec2(u, v);
    job
}

/// A path of 36 in in plan past a window, half on each side of its centre: the block is 15 in away.
#[test]
fn moves_off_the_path_below_an_escape_window() {
    let mut job = gable();
    job.penetrations = vec![vent(SIDE + 15.0 * INCH, 4.5, PenetrationKind::EscapeWindow)];
    let (along, up) = (Length::from_inches(24.0), Length::from_inches(30.0));
    job.penetrations[0].shape = Shape::Rectangle { along, up };
    moves(&job, "fire-escape", -3.0, 0.0);
}

/// 16 in in plan to the ridge, 18 are required: 2 in in plan are 2.236 in on a 6:12 slope, 2 1/4 in in sixteenths.
#[test]
fn moves_down_from_a_ridge_measured_in_plan() {
    moves(&at(3.0, (6.0 - 16.0 * INCH) * slope() - 2.271), "fire-ridge", 0.0, -2.25);
}

/// A vent requires 9 in: the block is 3 in beside it; 18 in above it and 12 in below it if the book requires that.
#[test]
fn moves_past_a_vent_on_each_side() {
    let mut job = gable();
    job.penetrations = vec![vent(SIDE + 3.0 * INCH + 0.2, 2.0, PenetrationKind::Vent)];
    moves(&job, "clearance", -6.0, 0.0);
    let source = || Source::new("office", Standing::Office);
    let limit = |inches| Limit { value: Length::from_inches(inches), source: source() };
    let book = Arc::make_mut(&mut job.rule_book);
    book.clearances_above = [(PenetrationKind::Vent, limit(18.0))].into();
    book.clearances_below = [(PenetrationKind::Vent, limit(12.0))].into();
    job.penetrations[0].at = dvec2(5.5, (1.0 - 16.0 * INCH - 0.2) / slope());
    moves(&job, "clearance", 0.0, 2.0);
    job.penetrations[0].at = dvec2(5.5, (1.0 + 2.271 + 10.0 * INCH + 0.2) / slope());
    moves(&job, "clearance", 0.0, -2.0);
}

/// A wall line requires 9 in, and so does the edge of a hole, which starts 5 in to the right of the block.
#[test]
fn moves_away_from_a_hole() {
    let mut job = gable();
    let x = SIDE + 5.0 * INCH;
    let hole = [(x, 2.0), (x + 1.0, 2.0), (x + 1.0, 3.0), (x, 3.0)].map(DVec2::from);
    job.faces[0] = job.faces[0].with_hole(hole.to_vec());
    moves(&job, "setback", -4.0, 0.0);
}

/// A hip requires 9 in. The corner at (2, 2.134) is (1.1180 · 2 − 2.134) / 1.5 m = 2.679 in from the line that rises
/// 1.1180 m per metre; perpendicular to it 6.321 in are missing, 8.481 along the eave, 8 1/2 in in sixteenths, and
/// 9.482 up the slope.
#[test]
fn moves_off_a_hip_in_the_shorter_direction() {
    let mut job = at(2.0, 1.0);
    job.faces = vec![
        face(1, &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 180.0),
        face(2, &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 270.0),
    ];
    job.blocks[0] = block(3, (2.0, 1.0), 1, 2);
    without(&mut job, &["valley-hip"]);
    moves(&job, "setback", 8.5, 0.0);
}

/// Of two blocks the later one is moved, 1 in or 2 in to the right; if it is locked, the other one is moved 0.172 m to
/// the left, 6.772 in, 6 13/16 in in sixteenths.
#[test]
fn moves_away_from_another_block() {
    let beside = |u: f64| {
        let mut job = gable();
        kit(&mut job).clearances.between_blocks = Length::ZERO;
        job.blocks.push(block(4, (u, 1.0), 1, 1));
        job
    };
    let other = |job: &Resolved, rule: &str, inches: f64| {
        let Change::Move(BlockId(4), by) = best(job, rule).0 else { panic!("{rule}") };
        assert!(by.distance(dvec2(inches, 0.0) * INCH) < 1e-9, "{rule}: {by}");
    };
    other(&beside(SIDE - INCH), "overlap", 1.0);
    let mut apart = beside(SIDE + 10.0 * INCH);
    kit(&mut apart).clearances.between_blocks = Length::from_inches(12.0);
    other(&apart, "between-blocks", 2.0);
    let mut locked = beside(8.0);
    locked.blocks[1].locked = true;
    moves(&locked, "overlap", -6.8125, 0.0);
}

/// The block is 5.172 m wide on 12 m, and 2.271 m high on 6.708 m: 1 in over the rake; or 0.172 m over it and 0.563 m
/// over the ridge, 6 13/16 in and 22 3/16 in in sixteenths.
#[test]
fn moves_onto_the_face() {
    let border_alone = |u: f64, v: f64| {
        let mut job = at(u, v);
        without(&mut job, &["setback", "ridge-course", "fire-ridge"]);
        job
    };
    moves(&border_alone(6.828 + INCH, 1.0), "off-face", -1.0, 0.0);
    moves(&border_alone(7.0, 5.0), "off-face", -6.8125, -22.1875);
}

/// Six columns of 1.725 m fit on 12 m; three of nine extend over the rake.
#[test]
fn modules_that_do_not_fit_are_switched_off() {
    let mut job = at(0.0, 0.0);
    job.blocks[0].columns = 9;
    without(&mut job, &["setback"]);
    let all = offered(&job, "off-face");
    let off = |fix: &Fix| matches!(&fix.steps[0].change, Change::SwitchOff(BLOCK, cells) if cells.len() == 6);
    assert!(all.iter().any(off), "{all:#?}");
}

/// The first module of the upper row is off and the others are offset by half a metre.
#[test]
fn a_row_shifted_from_a_later_cell_is_slid_into_joint() {
    let mut job = gable();
    kit(&mut job).laying.joints = vec![RowJoints::Aligned];
    job.blocks[0].shifts = vec![RowShift { row: 1, from: 1, by: Length::from_metres(0.5) }];
    job.blocks[0].off.insert(Cell { row: 1, column: 0 });
    let Change::Slide { row: 1, by, .. } = best(&job, "laying").0 else { panic!() };
    assert!((by.metres() + 0.5).abs() < 1e-9, "{by:?}");
}

/// Corners less than a millimetre apart are the same corner; farther apart they are two.
#[test]
fn repeated_corners_are_removed() {
    let mut job = gable();
    job.faces[1].outline.outer.insert(1, dvec2(0.0008, 6.0));
    job.faces[1].outline.outer.insert(2, dvec2(0.0012, 6.0));
    let (change, next) = best(&job, "outline");
    assert_eq!(change, Change::RepeatedCorner);
    assert!(next.faces[1].outline.defects(1e-3).is_empty());
}

#[test]
fn settings_of_deleted_sides_are_removed() {
    let mut job = gable();
    let said = |side| Overrule { side: SideId(side), kind: EdgeKind::WallLine };
    job.faces[0].overruled = vec![said(2), said(99)];
    let (change, next) = best(&job, "lost-sides");
    assert_eq!(change, Change::TakeBack(FaceId(1)));
    assert_eq!(next.faces[0].overruled, [said(2)]);
    let told = fix_words(&job, &offered(&job, "lost-sides")[0], Seen::Text);
    assert_eq!(told.within(Language::ENGLISH), "Take back what was said of sides that face 1 no longer has");
    assert_eq!(told.within(Language::SPANISH), "Retirar lo que se dijo de lados que el faldón 1 ya no tiene");
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(48) })]

    /// No shorter straight move leaves no stop: along each axis a position in between is tried.
    #[test]
    fn no_shorter_straight_move_clears(
        (u, v) in (3.0..7.0f64, 1.0..3.5f64),
        clearance in 1.0..20.0f64,
        share in 0.0..1.0f64,
    ) {
        let mut job = gable();
        job.units = Units::Metric;
        job.blocks = vec![block(3, (4.0, 2.0), 1, 1)];
        job.penetrations = vec![vent(u, v, PenetrationKind::Vent)];
        job.penetrations[0].clearance = Some(Length::from_inches(clearance));
        let stops = |by: DVec2| {
            let mut moved = job.clone();
            moved.blocks[0].at += by;
            evaluate(&moved).findings.into_iter().find(|finding| finding.severity == Severity::Stop)
        };
        let Some(stop) = stops(DVec2::ZERO) else { return Ok(()) };
        let Change::Move(BLOCK, by) = best(&job, stop.rule).0 else { panic!("{stop:#?}") };
        prop_assert_eq!(stops(by), None);
        let shorter = share * (by.abs().element_sum() - 0.002).max(0.0);
        for axis in [DVec2::X, DVec2::NEG_X, DVec2::Y, DVec2::NEG_Y] {
            prop_assert!(stops(axis * shorter).is_some(), "{} m along {} is enough for {}", shorter, axis, by);
        }
    }
}
