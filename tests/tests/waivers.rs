//! Waivers as a job changes: a waiver covers what was accepted, on the side it was given for, and nothing worse.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

use chalkcourse_geometry::{Azimuth, EdgeKind, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, Edit, Face, FaceId, Lapse, Missing, Resolved, apply, builtin_kit, builtin_prices,
    builtin_rule_book,
};
use chalkcourse_layout::Layout;
use chalkcourse_plan::evaluate;
use chalkcourse_rules::{Facts, Finding, Severity, check};
use proptest::prelude::*;
use std::sync::Arc;

const INCH: f64 = 0.0254;

/// A gable of 12 × 12 m at 6:12; its south face has two more corners on the eave. A block is at a distance in inches from the
/// east rake, one module of another at a distance from the west rake.
fn job(east: f64, west: f64) -> Resolved {
    let mut job = Resolved::new("Gable".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let face = |id: u32, corners: &[(f64, f64)], downslope: f64| {
        Face::new(
            FaceId(id),
            id.to_string(),
            Polygon::new(corners.iter().map(|&c| c.into()).collect()),
            Pitch::from_rise_in_12(6.0).unwrap(),
            Azimuth::from_degrees(downslope),
            Length::from_metres(3.0),
        )
    };
    job.faces = vec![
        face(1, &[(0.0, 0.0), (4.0, 0.0), (8.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 180.0),
        face(2, &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 0.0),
    ];
    let width = job.kit.module.length.metres().max(job.kit.module.width.metres());
    let block = |id: u32, u: f64| Block {
        id: BlockId(id),
        name: String::new(),
        face: FaceId(1),
        at: dvec2(u, 1.5),
        rows: 1,
        columns: 1,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    };
    job.blocks = vec![block(3, 12.0 - width - east * INCH), block(4, west * INCH)];
    job.next_id = 10;
    job
}

fn rakes(job: &Resolved) -> Vec<Finding> {
    let findings = check(job, &Layout::of(job)).into_iter();
    findings.filter(|f| f.rule == "setback" && f.facts == Facts::Setback { kind: EdgeKind::Rake }).collect()
}

fn of_block(job: &Resolved, id: u32) -> Finding {
    rakes(job).into_iter().find(|f| f.place.block == Some(BlockId(id))).unwrap()
}

/// The job with the finding of block 3 at the east rake waived as it is.
fn waived(job: &Resolved) -> Resolved {
    let words = |text: &str| text.to_owned();
    let waiver =
        of_block(job, 3).waiver(words("the rake is bricked up"), words("R. Fenn"), words("2026-05-02"));
    apply(job, &Edit::Waive(waiver)).unwrap()
}

fn put(job: &Resolved, face: Face) -> Resolved {
    apply(job, &Edit::PutFace(face)).unwrap()
}

/// Whether a plan stops: then `check` exits with 1.
fn stops(job: &Resolved) -> bool {
    evaluate(job).worst() == Some(Severity::Stop)
}

#[test]
fn a_waiver_stays_with_its_rake_when_eave_corners_are_removed() {
    let job = waived(&job(3.0, 3.0));
    let mut face = job.faces[0].clone();
    for _ in 0..2 {
        face = face.without_corner(0, 1).unwrap();
    }
    let job = put(&job, face);
    assert_eq!(job.faces[0].outline.outer.len(), 4);
    assert!(of_block(&job, 3).waived.is_some(), "the waiver left the east rake");
    assert!(of_block(&job, 4).waived.is_none(), "the waiver went to the west rake");
    assert!(stops(&job));
}

#[test]
fn a_waiver_stays_with_its_rake_when_corners_are_added() {
    let mut job = waived(&job(3.0, 20.0));
    job.blocks.pop();
    let mut face = job.faces[0].clone();
    for at in [dvec2(3.0, 0.0), dvec2(2.0, 0.0), dvec2(1.0, 0.0)] {
        face = face.with_corner_added(0, 0, at).unwrap();
    }
    let job = put(&job, face);
    assert!(of_block(&job, 3).waived.is_some() && !stops(&job));
}

#[test]
fn a_waiver_lapses_when_it_is_worse_and_says_both_numbers() {
    let mut job = waived(&job(11.6875, 20.0));
    job.blocks.truncate(1);
    assert!(!stops(&job));
    job.blocks[0].at.x += 11.25 * INCH;
    let worse = of_block(&job, 3);
    assert_eq!(worse.lapsed.as_ref().map(|(_, why)| *why), Some(Lapse::Worse));
    assert!(worse.waived.is_none() && stops(&job));
    let words = chalkcourse_telling::lapse_words(&job, &worse).unwrap();
    assert!(words.contains("was for 11 11/16\"") && words.contains("now it is 7/16\""), "{words}");
    // Back where it was, or better, it applies again.
    job.blocks[0].at.x -= 11.5 * INCH;
    assert!(of_block(&job, 3).waived.is_some() && !stops(&job));
}

#[test]
fn a_waiver_lapses_when_the_limit_is_another() {
    let mut job = waived(&job(3.0, 20.0));
    job.blocks.truncate(1);
    Arc::make_mut(&mut job.rule_book).setbacks.get_mut(&EdgeKind::Rake).unwrap().value =
        Length::from_inches(10.0);
    let other = of_block(&job, 3);
    assert_eq!(other.lapsed.as_ref().map(|(_, why)| *why), Some(Lapse::OtherLimit));
    assert!(stops(&job));
    let words = chalkcourse_telling::lapse_words(&job, &other).unwrap();
    assert!(words.contains("at least 12\"") && words.contains("at least 10\""), "{words}");
}

/// Moved off the rake, the block needs no waiver: its purpose is stated in words, not as a key.
#[test]
fn a_waiver_without_its_finding_says_what_it_was_for() {
    let mut job = waived(&job(3.0, 20.0));
    job.blocks.truncate(1);
    job.blocks[0].at.x -= 2.0;
    let findings = check(&job, &Layout::of(&job));
    let told = findings.iter().find(|f| f.rule == "waiver").unwrap();
    let words = chalkcourse_telling::told(&job, told);
    for said in [&words.message, &words.required] {
        assert!(said.contains("side") && said.contains("face") && !said.contains('/'), "{said}");
        assert!(!said.contains("setback-"), "{said}");
    }
}

#[test]
fn a_waiver_whose_key_names_nothing_is_reported() {
    let job = waived(&job(3.0, 20.0));
    let job = apply(&job, &Edit::RemoveBlock(BlockId(3))).unwrap();
    let findings = check(&job, &Layout::of(&job));
    let told = findings.iter().find(|f| f.rule == "waiver").unwrap();
    let Facts::WaiverIdle { missing, .. } = &told.facts else { panic!("{told:#?}") };
    assert_eq!(*missing, Some(Missing::Block(BlockId(3))));
    let words = chalkcourse_telling::message(&job, told);
    assert!(words.contains("block 3, which the job no longer has"), "{words}");
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(200) })]

    /// Wherever the block is moved, and whatever the limit becomes: what is covered is no nearer than what was accepted.
    #[test]
    fn a_waiver_never_covers_something_worse(given in 0.0..11.9f64, then in -4.0..11.9f64, limit in prop_oneof![Just(12.0), 2.0..30.0f64]) {
        let mut job = waived(&job(given, 20.0));
        job.blocks.truncate(1);
        job.blocks[0].at.x += (given - then) * INCH;
        Arc::make_mut(&mut job.rule_book).setbacks.get_mut(&EdgeKind::Rake).unwrap().value = Length::from_inches(limit);
        if let Some(finding) = rakes(&job).into_iter().find(|f| f.place.block == Some(BlockId(3))) {
            let covered = finding.waived.is_some();
            let same = (limit - 12.0).abs() < 1e-6;
            prop_assert_eq!(covered, same && then.max(0.0) >= given - 0.004, "{} after {} of {}", then, given, limit);
        }
    }
}
