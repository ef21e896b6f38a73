//! End-to-end properties: whatever a person draws and does, nothing breaks, undo goes all the way back, files round-trip, and
//! counts depend neither on the order of corners nor on the position of the origin.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Edit, Face, FaceId, History, Orientation, Penetration, PenetrationId,
    PenetrationKind, Resolved, Waiver, apply, job_from_text, job_to_text,
};
use chalkcourse_plan::{Evaluator, evaluate};
use chalkcourse_tests::samples;
use proptest::prelude::*;
use std::path::Path;

/// Coordinates on a coarse grid, so that corners often coincide or line up, and now and then are slightly off.
fn coordinate() -> impl Strategy<Value = f64> {
    (-6..18i32, prop_oneof![4 => Just(0.0), 1 => Just(1e-9), 1 => Just(0.004), 1 => Just(-0.03)])
        .prop_map(|(whole, hair)| f64::from(whole) + hair)
}

fn point() -> impl Strategy<Value = DVec2> {
    (coordinate(), coordinate()).prop_map(|(x, y)| dvec2(x, y))
}

fn face() -> impl Strategy<Value = Face> {
    let ring = prop_oneof![
        // a rectangle that may share sides with others
        (point(), 1..8i32, 1..6i32).prop_map(|(at, w, h)| {
            let (w, h) = (f64::from(w), f64::from(h));
            vec![at, at + dvec2(w, 0.0), at + dvec2(w, h), at + dvec2(0.0, h)]
        }),
        // anything, self-intersecting or not
        prop::collection::vec(point(), 0..7),
    ];
    (1..5u32, ring, 0..15u32, 0..8u32, 0..4u32).prop_map(|(id, outer, rise, eighth, height)| {
        Face::new(
            FaceId(id),
            format!("F{id}"),
            Polygon::new(outer),
            Pitch::from_rise_in_12(f64::from(rise)).unwrap(),
            Azimuth::from_degrees(f64::from(eighth) * 45.0),
            Length::from_metres(f64::from(height) * 0.5),
        )
    })
}

fn block() -> impl Strategy<Value = Block> {
    (
        5..8u32,
        1..5u32,
        point(),
        0..5u32,
        0..6u32,
        any::<bool>(),
        0..20u32,
        prop::collection::vec((0..4u32, 0..4u32), 0..4),
    )
        .prop_map(|(id, face, at, rows, columns, portrait, reveal, off)| {
            let mut block = Block {
                id: BlockId(id),
                name: format!("B{id}"),
                face: FaceId(face),
                at: at / 3.0,
                rows,
                columns,
                orientation: if portrait { Orientation::Portrait } else { Orientation::Landscape },
                reveal: Length::from_mm(f64::from(reveal)),
                shifts: Vec::new(),
                off: Default::default(),
                locked: false,
            };
            if reveal % 3 == 0 {
                block = block.with_shift(1, Length::from_mm(f64::from(reveal) * 40.0 - 300.0));
            }
            block.off.extend(off.into_iter().map(|(row, column)| Cell { row, column }));
            block
        })
}

fn penetration() -> impl Strategy<Value = Penetration> {
    (8..11u32, point(), 0..5usize, prop::option::of(0..300u32)).prop_map(|(id, at, kind, clearance)| {
        Penetration {
            id: PenetrationId(id),
            name: format!("P{id}"),
            kind: PenetrationKind::ALL[kind],
            at,
            shape: PenetrationKind::ALL[kind].usual_shape(),
            clearance: clearance.map(|mm| Length::from_mm(f64::from(mm))),
        }
    })
}

fn edit() -> impl Strategy<Value = Edit> {
    prop_oneof![
        4 => face().prop_map(Edit::PutFace),
        4 => block().prop_map(Edit::PutBlock),
        2 => penetration().prop_map(Edit::PutPenetration),
        1 => (1..5u32).prop_map(|id| Edit::RemoveFace(FaceId(id))),
        1 => (5..8u32).prop_map(|id| Edit::RemoveBlock(BlockId(id))),
        1 => (8..11u32).prop_map(|id| Edit::RemovePenetration(PenetrationId(id))),
        1 => (0..3u32).prop_map(|i| Edit::Waive(Waiver {
            key: format!("setback/block-{i}").parse().unwrap(), accepted: None, reason: "agreed".into(), by: "T".into(), date: "2026-03-01".into(),
        })),
        1 => Just(Edit::PutBlock(Block { at: dvec2(f64::NAN, 0.0), ..samples::alder_court().blocks[0].clone() })),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(250))]

    #[test]
    fn any_sequence_of_edits_can_be_undone_and_saved(edits in prop::collection::vec(edit(), 1..14)) {
        let start = samples::alder_court();
        let first = job_to_text(&start.with(|job| {
            job.faces.clear();
            job.blocks.clear();
            job.penetrations.clear();
        })).unwrap();
        let mut history = History::new(job_from_text(&first, Path::new("start")).unwrap());
        let mut evaluator = Evaluator::default();
        let mut steps = 0;
        for edit in &edits {
            if history.edit("edit", edit).unwrap_or(false) {
                steps += 1;
            }
            let job = history.job();
            let plan = evaluator.evaluate(job);
            prop_assert!(plan == evaluate(job), "the memo changes the answer");
            let text = job_to_text(job).unwrap();
            let back = job_from_text(&text, Path::new("kept")).unwrap();
            prop_assert!(back == **job, "save and load is not identity");
            prop_assert_eq!(job_to_text(&back).unwrap(), text);
        }
        for _ in 0..steps {
            prop_assert!(history.undo().is_some());
        }
        prop_assert!(history.undo().is_none());
        prop_assert_eq!(job_to_text(history.job()).unwrap(), first, "undo to the start is not byte-identical");
    }

    #[test]
    fn counts_do_not_depend_on_the_order_of_corners(turn in 0..9usize, reverse in any::<bool>()) {
        for (name, job) in samples::all().into_iter().filter(|(name, _)| !name.starts_with("mill")) {
            let mut other = job.clone();
            for face in &mut other.faces {
                for ring in std::iter::once(&mut face.outline.outer).chain(&mut face.outline.holes) {
                    let by = turn % ring.len();
                    ring.rotate_left(by);
                    if reverse {
                        ring.reverse();
                    }
                }
            }
            same_counts(name, &job, &other)?;
        }
    }

    #[test]
    fn counts_do_not_depend_on_the_origin(x in -900.0..900.0f64, y in -900.0..900.0f64) {
        for (name, job) in samples::all().into_iter().filter(|(name, _)| !name.starts_with("mill")) {
            let by = dvec2(x, y);
            let mut other = job.clone();
            for face in &mut other.faces {
                face.outline = face.outline.map(|p| p + by);
                face.datum += by;
            }
            for penetration in &mut other.penetrations {
                penetration.at += by;
            }
            same_counts(name, &job, &other)?;
        }
    }
}

fn same_counts(name: &str, one: &Resolved, two: &Resolved) -> Result<(), TestCaseError> {
    let (one, two) = (evaluate(one), evaluate(two));
    let orders = |plan: &chalkcourse_plan::Plan| -> Vec<(String, u64)> {
        plan.takeoff.lines.iter().map(|line| (line.number.clone(), line.packages)).collect()
    };
    prop_assert_eq!(orders(&one), orders(&two), "{} orders something else", name);
    let codes = |plan: &chalkcourse_plan::Plan| {
        let mut codes: Vec<_> = plan.findings.iter().map(|f| (f.rule, f.severity)).collect();
        codes.sort_unstable();
        codes
    };
    prop_assert_eq!(codes(&one), codes(&two), "{} finds something else", name);
    let (lines_one, lines_two) = (one.lines(), two.lines());
    for kind in EdgeKind::ALL {
        let length =
            |lines: &std::collections::BTreeMap<EdgeKind, f64>| lines.get(&kind).copied().unwrap_or(0.0);
        prop_assert!((length(&lines_one) - length(&lines_two)).abs() < 1e-6, "{} {}", name, kind.name());
    }
    Ok(())
}

#[test]
fn a_block_that_moves_leaves_the_roof_as_it_was() {
    let job = samples::alder_court();
    let mut evaluator = Evaluator::default();
    evaluator.evaluate(&job);
    for step in 0..20 {
        let mut block = job.blocks[0].clone();
        block.at.x += f64::from(step) * 0.1;
        evaluator.evaluate(&apply(&job, &Edit::PutBlock(block)).unwrap());
    }
    assert_eq!(evaluator.roofs_assembled(), 1);
    let mut face = job.faces[0].clone();
    face.outline.outer[0].x -= 0.5;
    evaluator.evaluate(&apply(&job, &Edit::PutFace(face)).unwrap());
    assert_eq!(evaluator.roofs_assembled(), 2);
}

#[test]
fn alder_court_is_clean_and_low_barn_is_refused_for_its_pitch_alone() {
    let clean = evaluate(&samples::alder_court());
    // the chimney is wide enough for a cricket, which is only a note
    assert_eq!(clean.findings.iter().map(|f| f.rule).collect::<Vec<_>>(), vec!["cricket"]);
    assert_eq!(clean.worst(), Some(chalkcourse_rules::Severity::Note));
    assert_eq!(clean.summary.modules, 12);
    let refused = evaluate(&samples::low_barn());
    let stops: Vec<_> =
        refused.findings.iter().filter(|f| f.severity == chalkcourse_rules::Severity::Stop).collect();
    assert_eq!(stops.iter().map(|f| f.rule).collect::<Vec<_>>(), vec!["pitch"], "{stops:?}");
}
