//! Files of older versions keep their meaning. `tests/data/version-1` has the samples as that version wrote them, and
//! one more with everything that referred to sides by ring and corner.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

use chalkcourse_geometry::{EdgeKind, Length, SideId, Sides};
use chalkcourse_job::{FaceId, Lapse, Resolved, job_from_text, job_to_text, load};
use chalkcourse_layout::Layout;
use chalkcourse_rules::check;
use chalkcourse_tests::{samples, top};
use std::path::Path;

fn old(name: &str) -> Resolved {
    load(&top().join("tests/data/version-1").join(name)).unwrap()
}

/// The job without the numbering history of its parts' faces: today's samples number sides in the order they were
/// drawn, while a file of version 1 gets ids in the order of the outlines.
fn without_numbers(mut job: Resolved) -> Resolved {
    for face in job.faces.iter_mut().filter(|face| face.from.is_some()) {
        (face.sides, face.borders) = (Sides::in_order(&face.outline), Vec::new());
        face.kinds.clear();
    }
    job
}

#[test]
fn the_samples_of_version_1_are_the_jobs_that_they_were() {
    for (name, job) in samples::all() {
        let mut old = old(name);
        // Shipped data may have changed since; it is tested separately.
        (old.kit, old.rule_book, old.prices) = (job.kit.clone(), job.rule_book.clone(), job.prices.clone());
        // The format had no wiring then.
        assert!(old.circuits.is_empty() && *old.wiring == Default::default());
        old.wiring = job.wiring.clone();
        for face in old.faces.iter().filter(|face| face.from.is_some()) {
            assert_eq!(face.sides, Sides::in_order(&face.outline), "{name}");
        }
        assert_eq!(without_numbers(old), without_numbers(job), "{name}");
    }
}

/// The annotated file was written by hand in the format of version 1. What its keys refer to follows from its outlines by
/// counting corners: the two limits at a valley, the west rake and the shaft of the shed; there never was a side 77.
#[test]
fn references_to_sides_by_position_name_the_same_sides() {
    let job = old("marked.chalk.json");
    let findings = check(&job, &Layout::of(&job));
    // None of them records what was accepted: they are shown on their findings, and cover nothing until they are
    // granted again.
    assert!(findings.iter().all(|finding| finding.waived.is_none()));
    let lapsed: Vec<(&str, &str)> = findings
        .iter()
        .filter_map(|finding| {
            let (waiver, why) = finding.lapsed.as_ref()?;
            assert_eq!(*why, Lapse::NoNumbers);
            Some((finding.rule, waiver.reason.as_str()))
        })
        .collect();
    for known in [
        ("setback", "the valley is lined wide"),
        ("valley-hip", "the valley is lined wide"),
        ("setback", "the shaft is coming out"),
        ("setback", "agreed on site"),
    ] {
        assert!(lapsed.contains(&known), "{known:?} is not told: {lapsed:?}");
    }
    assert_eq!(lapsed.len(), 4);
    let told: Vec<String> =
        findings.iter().filter(|f| f.rule == "waiver").map(|f| f.key.to_string()).collect();
    assert_eq!(told, ["waiver/setback/block-16/face-2/ring-0-side-77/rake"]);

    // Ring 1, side 1 of the shed is the second side of its hole; side 2 of the outline is its ridge.
    let shed = job.face(FaceId(18)).unwrap();
    assert_eq!(shed.overruled_kind(SideId(2)), Some(EdgeKind::WallLine));
    assert_eq!(shed.overruled_kind(SideId(5)), Some(EdgeKind::Step));
    let spans = &Layout::of(&job).face(shed.id).unwrap().1.edges.clone();
    let overruled: Vec<_> = spans.iter().filter(|s| s.overruled).map(|s| (s.ring, s.side, s.kind)).collect();
    assert_eq!(overruled, [(0, 2, EdgeKind::WallLine), (1, 1, EdgeKind::Step)]);
    let taped = shed.taped_now();
    assert_eq!((taped.eave, taped.left), (Some(Length::from_mm(9980.0)), Some(Length::from_mm(6710.0))));
    assert_eq!(taped.of, Some([SideId(0), SideId(2), SideId(3), SideId(1)]));

    // On the face of a part, side 4 of the outline is a step; it never had a ring 3, and that reference is kept as referring to
    // nothing.
    let south = job.face(FaceId(2)).unwrap();
    let (.., south_on_roof) = Layout::of(&job).face(south.id).map(|(i, face)| (i, face.clone())).unwrap();
    let steps: Vec<usize> = south_on_roof.edges.iter().filter(|s| s.overruled).map(|s| s.side).collect();
    assert!(!steps.is_empty() && steps.iter().all(|side| *side == 4), "{steps:?}");
    let lost: Vec<EdgeKind> = south.lost_overrules().map(|o| o.kind).collect();
    assert_eq!(lost, [EdgeKind::Ridge]);

    // Written by today's version it means the same.
    let again = job_from_text(&job_to_text(&job).unwrap(), Path::new("again")).unwrap();
    assert_eq!(again, job);
}
