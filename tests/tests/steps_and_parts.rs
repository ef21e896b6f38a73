//! The steps of the work and the parts that each one uses, with worked numbers for Alder Court (3 rows of 4 modules).
//!
//! The steps and their parts are common practice of the trade, no source; drip edge, leak barrier, underlayment: IRC R905.2.8.5,
//! R905.1.2 and table R905.1.1(2) (2018). The working of each number is in `data/hand/alder-court.md`.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Group, Resolved, Stage};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::take_off;
use chalkcourse_tests::samples;

/// A step, its stage, and the parts it uses; with counts for pieces.
type Step = (&'static str, Stage, &'static [(&'static str, f64)]);

const MEASURED: f64 = 0.0;
const STEPS: &[Step] = &[
    ("drip edge at the eaves", Stage::DryIn, &[("FH-203", 13.0)]),
    ("leak barrier, full length", Stage::DryIn, &[("FH-210", MEASURED)]),
    ("underlayment, cap nails", Stage::DryIn, &[("FH-211", MEASURED), ("FH-212", 1200.0)]),
    ("drip edge at the rakes", Stage::DryIn, &[("FH-204", 8.0)]),
    ("drip edge nailed", Stage::DryIn, &[("FH-215", 194.0)]),
    ("starter at eaves and rakes", Stage::FirstCourses, &[("FH-213", MEASURED)]),
    ("shingles up to the rail", Stage::FirstCourses, &[("FH-214", MEASURED)]),
    ("chimney flashed", Stage::FirstCourses, &[("FH-221", 1.0), ("FH-121", 12.0), ("FH-231", 1.0)]),
    ("cricket", Stage::Deck, &[("FH-234", 1.0), ("FH-201", 2.0)]),
    ("cricket covered", Stage::FirstCourses, &[("FH-232", MEASURED)]),
    ("boots", Stage::FirstCourses, &[("FH-224", 3.0), ("FH-227", 3.0)]),
    ("foot bolted on", Stage::Ground, &[("FH-102", 60.0), ("FH-103", 60.0), ("FH-101", 12.0)]),
    ("bracket on", Stage::Ground, &[("FH-105", 12.0), ("FH-107", 12.0)]),
    ("device on", Stage::Ground, &[("FH-104", 12.0)]),
    ("membrane under the array", Stage::UnderArray, &[("FH-152", MEASURED)]),
    ("fire-rated layer, cap nails", Stage::UnderArray, &[("FH-150", MEASURED), ("FH-212", 254.0)]),
    ("rail on the line", Stage::BaseRail, &[("FH-110", 3.0), ("FH-111", 2.0), ("FH-112", 24.0)]),
    ("rail's ends", Stage::BaseRail, &[("FH-113", 1.0), ("FH-114", 1.0)]),
    ("module set, feet down to the deck", Stage::Modules, &[("FH-112", 60.0)]),
    ("lug on", Stage::Modules, &[("FH-161", 12.0)]),
    ("lead to the next, home run aside", Stage::Modules, &[("FH-163", 3.0), ("FH-164", 1.0)]),
    ("bare copper through every lug", Stage::Modules, &[("FH-162", MEASURED)]),
    ("insert snapped in", Stage::Head, &[("FH-131", 4.0)]),
    ("supports at ends and seams", Stage::Head, &[("FH-132", 5.0), ("FH-215", 30.0)]),
    ("jumper threaded", Stage::Head, &[("FH-160", 4.0)]),
    ("head flashing pressed in, nailed", Stage::Head, &[("FH-130", 4.0)]),
    ("step flashing, a piece a course", Stage::Sides, &[("FH-121", 58.0), ("FH-120", 6.0)]),
    ("counter flashing snapped on", Stage::Sides, &[("FH-122", 6.0)]),
    ("corners interlocked", Stage::Around, &[("FH-133", 1.0), ("FH-134", 1.0)]),
    ("L-piece over each corner", Stage::Around, &[("FH-153", 2.0)]),
    ("membrane strip", Stage::Around, &[("FH-155", MEASURED)]),
    ("peel-and-stick starter", Stage::Around, &[("FH-154", MEASURED)]),
    ("caps", Stage::Shingles, &[("FH-216", MEASURED)]),
    ("junction box flashed in", Stage::Shingles, &[("FH-165", 1.0)]),
    ("wires into the box", Stage::Wires, &[("FH-166", 4.0), ("FH-167", 1.0)]),
];

/// Parts of steps that Alder Court does not have, and lines that are not built in, by the first stage that needs them.
const OTHERS: &[(Stage, &[&str])] = &[
    // Rigged before the first trip up; tear-off goes straight into the container.
    (
        Stage::TearOff,
        &["FH-301", "FH-302", "FH-303", "FH-304", "FH-305", "FH-306", "FH-307", "FH-401", "FH-501", "FH-502"],
    ),
    (Stage::Deck, &["FH-202", "FH-402", "FH-403"]),
    // Valley lining is laid under the adjacent felt.
    (Stage::DryIn, &["FH-156", "FH-217", "FH-404"]),
    // Flashed as the shingles get there.
    (
        Stage::FirstCourses,
        &["FH-222", "FH-223", "FH-225", "FH-226", "FH-227", "FH-229", "FH-230", "FH-233", "FH-409"],
    ),
    (Stage::Ground, &["FH-405"]),
    (Stage::BaseRail, &["FH-407"]),
    (Stage::Modules, &["FH-406"]),
    (Stage::Head, &["FH-411"]),
    (Stage::Sides, &["FH-412"]),
    (Stage::Around, &["FH-135", "FH-227"]),
    (Stage::FirstCourses, &["FH-215"]),
    (Stage::Shingles, &["FH-215", "FH-228", "FH-408"]),
    (Stage::Wires, &["FH-410"]),
];

/// The stages that need a part, by the tables.
fn by_hand(number: &str) -> Vec<Stage> {
    let steps = STEPS.iter().filter(|(_, _, parts)| parts.iter().any(|part| part.0 == number));
    let others = OTHERS.iter().filter(|(_, numbers)| numbers.contains(&number));
    steps.map(|(_, stage, _)| *stage).chain(others.map(|(stage, _)| *stage)).collect()
}

/// Lines of a job that are not in the first stage that needs them, or that a stage outside the tables needs.
fn misplaced(job: &Resolved) -> Vec<String> {
    let takeoff = take_off(job, &Layout::of(job));
    let wrong = takeoff.lines.iter().filter(|line| {
        let stages = by_hand(&line.number);
        let needed: Vec<Stage> =
            line.terms.iter().filter(|term| term.need > 0.0).map(|term| term.stage).collect();
        let known = needed.iter().all(|stage| stages.contains(stage));
        !known || needed.iter().min() != Some(&line.stage)
    });
    wrong.map(|line| format!("{} {} in {:?}", line.number, line.name, line.stage)).collect()
}

/// Every line of every sample is in the first stage that needs it; and a part that is moved is detected.
#[test]
fn every_line_of_every_sample_is_in_the_stage_that_needs_it_first() {
    let mut seen = std::collections::BTreeSet::new();
    let heron = ("heron-bend", samples::heron_bend());
    for (name, job) in samples::all().into_iter().chain(std::iter::once(heron)) {
        assert_eq!(misplaced(&job), [""; 0], "{name}");
        seen.extend(take_off(&job, &Layout::of(&job)).lines.into_iter().map(|line| line.number));
        // Each part of its kit moved to the next stage.
        for number in seen.clone() {
            let mut moved = job.clone();
            let kit = std::sync::Arc::make_mut(&mut moved.kit);
            let Some(part) = kit.parts.iter_mut().find(|part| part.number == number) else { continue };
            let next =
                |stage: Stage| Stage::ALL.into_iter().find(|other| *other > stage).unwrap_or(Stage::TearOff);
            part.stage = Some(next(part.stage()));
            for term in &mut part.needs {
                term.stage = term.stage.map(next);
            }
            let ordered =
                take_off(&moved, &Layout::of(&moved)).lines.iter().any(|line| line.number == number);
            assert!(!ordered || !misplaced(&moved).is_empty(), "{name}: {number} can be moved unseen");
        }
    }
    assert!(seen.len() > 60, "{seen:?}");
}

/// Each part of a step is on the order, at the step's stage, in the quantity that the step uses.
#[test]
fn every_step_has_its_parts_on_the_order() {
    let job = samples::alder_court();
    let takeoff = take_off(&job, &Layout::of(&job));
    for (step, stage, parts) in STEPS {
        for (number, pieces) in *parts {
            let line = takeoff.lines.iter().find(|line| line.number == *number).expect(step);
            let at = line.terms.iter().filter(|term| term.stage == *stage && term.need > 0.0);
            let need: f64 = at.map(|term| term.need).sum();
            assert!(need > 0.0, "{step}: {number} is not needed for {stage:?}");
            if *pieces > 0.0 {
                // Fractions of a piece (a rate, nails by the square) round up to whole pieces together.
                assert!((need.ceil() - pieces).abs() < 1e-9, "{step}: {need} of {number}, by hand {pieces}");
            }
        }
    }
}

/// Conversely, every built-in part on the order has a step that uses it.
#[test]
fn every_part_on_the_order_belongs_to_a_step() {
    let job = samples::alder_court();
    let takeoff = take_off(&job, &Layout::of(&job));
    let built_in = |group| matches!(group, Group::Solar | Group::Flashing | Group::Roofing | Group::Wire);
    for line in takeoff.lines.iter().filter(|line| built_in(line.group)) {
        let steps =
            STEPS.iter().filter(|(_, _, parts)| parts.iter().any(|(number, _)| *number == line.number));
        assert!(steps.count() > 0, "{} {} belongs to no step", line.number, line.name);
        let first = line.needed_by_stage().first().map(|(stage, _)| *stage);
        assert_eq!(first, Some(line.stage), "{}: the stage that needs it first", line.number);
    }
}
