//! Each kind of fix on a small job, with hand-worked numbers: a 12 × 12 m gable at 6:12, its south face 6.708 m up the slope, block 3
//! of 2 rows of 3 (5.172 × 2.271 m) at (3, 1) on it. The demo module is 1.722 × 1.134 m, the reveal 3 mm.

mod by_limit;

use super::*;
use crate::evaluate;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, SideId, dvec2};
use chalkcourse_job::{
    BaseRail, Cell, DripEdge, Face, FaceId, Kit, Penetration, PenetrationId, PenetrationKind, RowJoints,
    Shape, Waiver, apply, builtin_kit, builtin_prices, builtin_rule_book,
};
use std::sync::Arc;

const INCH: f64 = 0.0254;
const SPACING: f64 = 1.725;
const BLOCK: BlockId = BlockId(3);

fn face(id: u32, corners: &[(f64, f64)], downslope: f64) -> Face {
    let outline = Polygon::new(corners.iter().map(|&c| c.into()).collect());
    let pitch = Pitch::from_rise_in_12(6.0).unwrap();
    let way = Azimuth::from_degrees(downslope);
    Face::new(FaceId(id), id.to_string(), outline, pitch, way, Length::from_metres(3.0))
}

fn block(id: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(id),
        name: id.to_string(),
        face: FaceId(1),
        at: at.into(),
        rows,
        columns,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

fn gable() -> Resolved {
    let mut job = Resolved::new("Gable".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces = vec![
        face(1, &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 180.0),
        face(2, &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 0.0),
    ];
    job.blocks = vec![block(3, (3.0, 1.0), 2, 3)];
    job.next_id = 10;
    job
}

fn kit(job: &mut Resolved) -> &mut Kit {
    Arc::make_mut(&mut job.kit)
}

/// Switches rules off.
fn without(job: &mut Resolved, rules: &[&str]) {
    Arc::make_mut(&mut job.rule_book).off.extend(rules.iter().map(|&rule| rule.to_owned()));
}

fn vent(x: f64, y: f64, kind: PenetrationKind) -> Penetration {
    Penetration {
        id: PenetrationId(5),
        name: "Vent".into(),
        kind,
        at: dvec2(x, y),
        shape: Shape::Rectangle { along: Length::from_metres(0.4), up: Length::from_metres(0.4) },
        clearance: None,
    }
}

/// The fixes offered for the first finding of a rule.
#[track_caller]
fn offered(job: &Resolved, rule: &str) -> Vec<Fix> {
    let plan = evaluate(job);
    let found = plan.findings.iter().find(|finding| finding.rule == rule);
    let found = found.unwrap_or_else(|| panic!("{:#?}", plan.findings));
    let fixes = fixes(job, &plan, &found.key, &|| false);
    fixes.offered().into_iter().cloned().collect()
}

/// The best single step, and the job after it.
#[track_caller]
fn best(job: &Resolved, rule: &str) -> (Change, Resolved) {
    let fix = offered(job, rule).into_iter().next().expect("no fix");
    let [step] = fix.steps.as_slice() else { panic!("{fix:#?}") };
    (step.change.clone(), apply(job, &fix.edit()).unwrap())
}

/// The best fix moves the block by this many inches along the eave and up the slope.
#[track_caller]
fn moves(job: &Resolved, rule: &str, along: f64, up: f64) {
    let (change, _) = best(job, rule);
    let Change::Move(BLOCK, by) = change else { panic!("{change:?}") };
    assert!(by.distance(dvec2(along, up) * INCH) < 1e-9, "{by:?} is {} in", by / INCH);
}

/// A rake requires 12 in; the block is 4 1/2 in away. Anything above a sixteenth is rounded up to the next one.
#[test]
fn a_block_is_moved_off_a_rake_in_whole_sixteenths() {
    let mut job = gable();
    job.blocks[0].at.x = 4.5 * INCH;
    moves(&job, "setback", 7.5, 0.0);
    job.blocks[0].at.x = 4.5 * INCH - 2e-4;
    moves(&job, "setback", 7.5 + 1.0 / 16.0, 0.0);
    job.units = chalkcourse_geometry::Units::Metric;
    let Change::Move(_, by) = best(&job, "setback").0 else { panic!() };
    assert!((by.x - 0.191).abs() < 1e-9, "{by}: 12 in are 304.8 mm, 114.1 are there");
}

/// Head flashing 8 in, one course of 5 in and the 4.103 in above the last line on a slope of 264.103 in make 17.103 in
/// to the ridge; the block is 12 in away, and 5 1/8 is the next sixteenth. Fire access requires 18 in in plan, 20.125
/// in up a slope of 6:12: if that is required too, it is the larger.
#[test]
fn a_block_is_moved_down_from_a_ridge() {
    let mut job = gable();
    job.blocks[0].at.y = 6.0 * 1.25f64.sqrt() - 2.271 - 12.0 * INCH;
    moves(&job, "ridge-course", 0.0, -8.125);
    without(&mut job, &["fire-ridge", "setback"]);
    moves(&job, "ridge-course", 0.0, -5.125);
}

/// The rail extends 2 in below the modules and must be 2 in above the eave.
#[test]
fn a_rail_is_moved_up_from_the_eave() {
    let mut job = gable();
    job.blocks[0].at.y = 3.0 * INCH;
    without(&mut job, &["setback"]);
    moves(&job, "base-rail", 0.0, 1.0);
}

/// The shortest move past all limits at once: an obstacle to the right of the block rules out that direction.
#[test]
fn the_shortest_move_clears_all_limits_at_once() {
    let mut job = gable();
    // 3 in over the rake; a locked block is 8 in to the right of the block.
    job.blocks[0].at.x = -3.0 * INCH;
    let right = -3.0 * INCH + 3.0 * SPACING - 0.003 + 8.0 * INCH;
    job.blocks.push(Block { locked: true, ..block(4, (right, 1.0), 2, 2) });
    let (change, next) = best(&job, "off-face");
    // 15 in to the right it would overlap the other block, so it moves above it.
    let Change::Move(BLOCK, by) = change else { panic!("{change:?}") };
    assert!(by.x >= 15.0 * INCH - 1e-9 && by.y > 2.0, "{by}");
    assert_eq!(next.blocks[1], job.blocks[1]);
}

#[test]
fn a_locked_block_is_not_changed() {
    let mut job = gable();
    job.blocks[0].at.x = 4.5 * INCH;
    job.blocks[0].locked = true;
    assert_eq!(offered(&job, "setback"), vec![]);
}

/// Courses of 5 in from 5 in up the slope. The base rail may be 10 to 20 mm above a course line.
#[test]
fn a_rail_among_the_courses_goes_to_the_nearest_allowed_height() {
    let line = 8.0 * 0.127;
    for (at, goes_to) in [(line, line + 0.01), (line + 0.03, line + 0.02), (line + 0.12, line + 0.127 + 0.01)]
    {
        let mut job = gable();
        kit(&mut job).laying.base_rail = BaseRail {
            anywhere: false,
            above_course_from: Length::from_metres(0.01),
            above_course_to: Length::from_metres(0.02),
        };
        job.blocks[0].at.y = at;
        let (_, next) = best(&job, "laying");
        let there = next.blocks[0].at.y;
        assert!((goes_to - there).abs() < INCH / 16.0 + 1e-9, "{at}: {there}, not {goes_to}");
    }
}

#[test]
fn a_row_is_slid_into_joint_with_those_above_it() {
    let mut job = gable();
    kit(&mut job).laying.joints = vec![RowJoints::Aligned];
    job.blocks[0].rows = 3;
    for row in [1, 2] {
        job.blocks[0] = job.blocks[0].with_shift(row, Length::from_metres(0.1));
    }
    let (change, next) = best(&job, "laying");
    assert!(matches!(change, Change::Slide { row: 1, above: true, .. }), "{change:?}");
    assert_eq!(next.blocks[0].shift(1), Length::ZERO);
    // Closer to the next joint, it moves on to that one.
    job.blocks[0] = block(3, (3.0, 1.0), 2, 3).with_shift(1, Length::from_metres(SPACING - 0.1));
    without(&mut job, &["hook"]);
    let (_, next) = best(&job, "laying");
    assert!((next.blocks[0].shift(1).metres() - SPACING).abs() < 1e-9);
}

/// Half of 1.722 m must hook: an offset of 0.861 m is just acceptable, 0.9 m is 39 mm too much.
#[test]
fn a_row_that_hooks_too_little_is_slid_until_it_does() {
    let mut job = gable();
    job.blocks[0] = job.blocks[0].with_shift(1, Length::from_metres(0.9));
    let (change, next) = best(&job, "hook");
    let Change::Slide { row: 1, by, .. } = change else { panic!("{change:?}") };
    assert!((0.039..0.041).contains(&-by.metres()), "{by:?}");
    assert!(evaluate(&next).findings.iter().all(|finding| finding.rule != "hook"));
}

/// The lower row lacks a module: it is switched on, or the unsupported one is switched off.
#[test]
fn an_unsupported_module_gets_support_or_is_switched_off() {
    let mut job = gable();
    job.blocks[0].off.insert(Cell { row: 0, column: 1 });
    let all = offered(&job, "hook");
    let changes: Vec<&Change> = all.iter().map(|fix| &fix.steps[0].change).collect();
    assert!(changes.contains(&&Change::SwitchOn(BLOCK, 0, 1)), "{changes:?}");
    assert!(changes.contains(&&Change::SwitchOff(BLOCK, vec![Cell { row: 1, column: 1 }])), "{changes:?}");
}

/// Switched off with what hooked into it: over a vent in the lower row the module above goes too.
#[test]
fn modules_are_switched_off_with_those_they_supported() {
    let mut job = gable();
    // The block is as wide as its face allows, so that it can't move sideways.
    job.faces[0] = face(1, &[(2.6, 0.0), (8.6, 0.0), (8.6, 3.1), (2.6, 3.1)], 180.0);
    job.faces.truncate(1);
    job.blocks[0].at.x = 0.4;
    without(&mut job, &["setback", "fire-ridge", "fire-paths", "fire-plane-path"]);
    let middle = job.blocks[0].at + dvec2(1.5 * SPACING, 0.5);
    let at = job.faces[0].plane().to_plan(middle);
    job.penetrations = vec![vent(at.x, at.y, PenetrationKind::Chimney)];
    let off = offered(&job, "clearance").into_iter().find_map(|fix| match &fix.steps[0].change {
        Change::SwitchOff(BLOCK, cells) => Some(cells.clone()),
        _ => None,
    });
    let off = off.expect("no module is switched off");
    assert!(off.iter().any(|cell| cell.row == 0) && off.iter().any(|cell| cell.row == 1), "{off:?}");
}

#[test]
fn a_reveal_is_moved_into_the_range_of_the_kit() {
    for (inches, to) in [(0.5, 0.25), (0.0, 1.0 / 16.0)] {
        let mut job = gable();
        job.blocks[0].reveal = Length::from_inches(inches);
        assert_eq!(best(&job, "reveal").0, Change::Reveal(BLOCK, Length::from_inches(to)));
    }
}

/// A vent below the block's corner is moved if the block is locked; a chimney can't be moved.
#[test]
fn movable_penetrations_are_moved_off_a_locked_block() {
    let mut job = gable();
    let at = job.faces[0].plane().to_plan(job.blocks[0].at);
    job.penetrations = vec![vent(at.x, at.y, PenetrationKind::Vent)];
    assert!(matches!(best(&job, "clearance").0, Change::Move(..)), "a block is moved before a vent");
    job.blocks[0].locked = true;
    let (change, next) = best(&job, "clearance");
    assert!(matches!(change, Change::MoveThrough { .. }), "{change:?}");
    assert_eq!(next.blocks, job.blocks);
    job.penetrations[0].kind = PenetrationKind::Chimney;
    assert_eq!(offered(&job, "clearance"), vec![]);
}

/// By hand: 0.1 m of plan below the ridge is 0.1 · √1.25 m of slope, so that a vent of 0.4 m extends 0.2 − 0.1118 =
/// 0.0882 m = 3.47 in over it: 3 1/2 in down, to the next sixteenth. A chimney can't be moved.
#[test]
fn a_vent_over_the_ridge_is_moved_down_by_the_excess() {
    let mut job = gable();
    job.penetrations = vec![vent(1.0, 5.9, PenetrationKind::Vent)];
    let (change, next) = best(&job, "one-plane");
    let Change::MoveThrough { by, .. } = change else { panic!("{change:?}") };
    assert!((by - dvec2(0.0, -3.5 * INCH)).length() < 1e-9, "{by}");
    assert!((next.penetrations[0].at.y - (5.9 - 3.5 * INCH / 1.25f64.sqrt())).abs() < 1e-9);
    job.penetrations[0].kind = PenetrationKind::Chimney;
    assert_eq!(offered(&job, "one-plane"), vec![]);
}

/// Block 4 has nowhere to go on a face that both fill: the last resort is to remove one.
#[test]
fn removing_a_block_is_the_last_resort() {
    let mut job = gable();
    let corners = [(0.0, 0.0), (3.0, 0.0), (3.0, 2.2), (0.0, 2.2)];
    job.faces = vec![face(1, &corners, 180.0)];
    job.blocks = vec![block(3, (0.5, 0.5), 1, 1), Block { locked: true, ..block(4, (0.6, 0.5), 1, 1) }];
    let plan = evaluate(&job);
    let finding = plan.findings.iter().find(|finding| finding.rule == "overlap").unwrap();
    let found = fixes(&job, &plan, &finding.key, &|| false);
    assert_eq!(found.best().unwrap().steps[0].change, Change::Take(BLOCK), "{found:#?}");
    assert!(!found.has_a_single_step());
}

#[test]
fn defects_of_the_house_are_repaired() {
    let mut job = gable();
    job.faces[1].height = Length::from_metres(3.08);
    let (change, _) = best(&job, "height-gap");
    let Change::Lift(_, by) = change else { panic!("{change:?}") };
    assert!((by.metres().abs() - 0.08).abs() < 1e-9);

    let mut job = gable();
    job.faces[0] = job.faces[0].with_hole([(20.0, 1.0), (21.0, 1.0), (21.0, 2.0)].map(DVec2::from).to_vec());
    assert_eq!(best(&job, "outline").0, Change::Hole(1));

    let mut job = gable();
    job.site.building.drip_edge = Some(DripEdge::Absent);
    assert_eq!(best(&job, "drip-edge").0, Change::DripEdge);

    let mut job = gable();
    job.waivers.push(Waiver {
        key: FindingKey::new(
            "setback",
            Subject::Side(BLOCK, FaceId(1), SideId(1), chalkcourse_geometry::EdgeKind::Rake),
        ),
        accepted: None,
        reason: "agreed".into(),
        by: "R. Fenn".into(),
        date: "2026-03-01".into(),
    });
    let (change, next) = best(&job, "waiver");
    assert!(change == Change::Unwaive && next.waivers.is_empty());
}

/// 36 in take one column of two modules at the end of full rows; a block that may move makes the room by moving.
#[test]
fn a_pathway_is_opened_at_the_least_loss() {
    let mut job = gable();
    let wide = 36.0 * INCH - 0.1 + 4.0 * SPACING - 0.003 + 0.31;
    job.faces = vec![
        face(1, &[(0.0, 0.0), (wide, 0.0), (wide, 6.0), (0.0, 6.0)], 180.0),
        face(2, &[(0.0, 6.0), (wide, 6.0), (wide, 12.0), (0.0, 12.0)], 0.0),
    ];
    job.blocks = vec![block(3, (0.31, 1.0), 2, 4)];
    let north = Block { id: BlockId(4), face: FaceId(2), ..job.blocks[0].clone() };
    job.blocks.push(north);
    let plan = evaluate(&job);
    for finding in plan.findings.iter().filter(|finding| finding.rule.starts_with("fire-p")) {
        let found = fixes(&job, &plan, &finding.key, &|| false);
        let best = found.best().unwrap();
        assert!(matches!(best.steps[0].change, Change::OpenPathway(_)) && best.lost <= 4, "{best:#?}");
    }
}
