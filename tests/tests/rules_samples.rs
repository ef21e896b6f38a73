//! Findings of the sample roofs: the golden file of each, and by key.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_layout::Layout;
use chalkcourse_rules::{Severity, check};
use chalkcourse_tests::{findings_of, samples, top};

/// Findings of a sample that stop the work, then all others, by key.
fn keys(name: &str) -> (Vec<String>, Vec<String>) {
    let (_, job) = samples::all().into_iter().find(|(file, _)| file.starts_with(name)).unwrap();
    let findings = check(&job, &Layout::of(&job));
    let of = |stop: bool| {
        let some = findings.iter().filter(|f| (f.severity == Severity::Stop) == stop);
        some.map(|f| f.key.to_string()).collect()
    };
    (of(true), of(false))
}

fn expect(name: &str, stops: &[&str], others: &[&str]) {
    let (found_stops, found_others) = keys(name);
    assert_eq!(found_stops, stops, "{name}");
    assert_eq!(found_others, others, "{name}");
}

/// Complete findings files, with words, sources and what was not checked. After an intended change: `cargo run -p
/// chalkcourse-tests --example write-samples findings`, and review every difference.
#[test]
fn every_sample_finds_what_its_golden_file_says() {
    for (name, job) in samples::all() {
        let path = top().join("tests/data/findings").join(name.replace(".chalk.", ".findings."));
        let expected = std::fs::read_to_string(&path).unwrap();
        assert!(
            findings_of(&job).unwrap() == expected,
            "{name}: the findings are not those of {}",
            path.display()
        );
    }
}

#[test]
fn alder_court_may_be_built() {
    expect("alder-court", &[], &["cricket/penetration-6"]);
}

#[test]
fn low_barn_is_refused_for_its_pitch_alone() {
    expect("low-barn", &["pitch/block-3/face-1"], &["underlayment/face-1", "underlayment/face-2"]);
}

#[test]
fn mill_row_may_be_built() {
    expect("mill-row", &[], &[]);
}

#[test]
fn quarry_lane_is_too_near_its_valley() {
    // One valley, two findings: the modules are too near, and so their side flashing is on its lining.
    expect(
        "quarry-lane",
        &["setback/block-16/face-2/side-1/valley", "valley-hip/block-16/face-2/side-1/valley"],
        &[],
    );
}
