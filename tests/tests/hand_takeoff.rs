//! Two jobs taken off by hand, line by line, against the program's order: `data/hand` has the working of every number.
//!
//! What is published, from memory or common practice is noted there and in the kit's own sources.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Resolved, Unit};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Line, take_off};
use chalkcourse_telling::order::count_words;
use chalkcourse_tests::{samples, top};
use std::fmt::Write;

struct ByHand {
    number: String,
    need: f64,
    unit: String,
    packages: u64,
}

fn table(name: &str) -> Vec<ByHand> {
    let text = std::fs::read_to_string(top().join("tests/data/hand").join(name)).unwrap();
    let rows = text.lines().filter(|line| line.starts_with("| FH-"));
    rows.map(|row| {
        let cells: Vec<&str> = row.trim_matches('|').split('|').map(str::trim).collect();
        let [number, _, working, need, unit, packages] = cells[..] else { panic!("{row}") };
        assert!(!working.is_empty(), "{number} has no working");
        ByHand {
            number: number.to_owned(),
            need: need.parse().expect(row),
            unit: unit.to_owned(),
            packages: packages.parse().expect(row),
        }
    })
    .collect()
}

/// As a roofer counts: feet, square feet, pounds.
fn need(line: &Line) -> (f64, &'static str) {
    match line.unit {
        Unit::Each => (line.need, "each"),
        Unit::Time => (line.need, "h"),
        Unit::Length => (line.need / 0.3048, "ft"),
        Unit::Area => (line.need / (0.3048 * 0.3048), "sq ft"),
        Unit::Mass => (line.need / 0.453_592_37, "lb"),
    }
}

/// Every line of the order is in the table and every row of the table on the order. Pieces and packages are equal; measured
/// quantities agree to a thousandth, as written by hand.
fn compare(job: &Resolved, name: &str) {
    let takeoff = take_off(job, &Layout::of(job));
    let by_hand = table(name);
    let mut apart = String::new();
    for row in &by_hand {
        match takeoff.lines.iter().find(|line| line.number == row.number) {
            None => writeln!(apart, "{}: not on the order", row.number).unwrap(),
            Some(line) => {
                let (got, unit) = need(line);
                let slack = if unit == "each" { 1e-9 } else { row.need.abs() * 1e-3 };
                if unit != row.unit || (got - row.need).abs() > slack || line.packages != row.packages {
                    let words = count_words(line, job.units);
                    writeln!(
                        apart,
                        "{} {}: {got} {unit} in {}; by hand {} {} in {}; {words}",
                        row.number, line.name, line.packages, row.need, row.unit, row.packages
                    )
                    .unwrap();
                }
            }
        }
    }
    for line in takeoff.lines.iter().filter(|line| !by_hand.iter().any(|row| row.number == line.number)) {
        writeln!(apart, "{} {}: on the order, not taken off by hand", line.number, line.name).unwrap();
    }
    assert!(apart.is_empty(), "{name}\n{apart}");
}

#[test]
fn alder_court() {
    compare(&samples::alder_court(), "alder-court.md");
}

#[test]
fn heron_bend() {
    compare(&samples::heron_bend(), "heron-bend.md");
}

/// Safety: 29 CFR 1926.501(b)(13) requires protection for those on the roof. Hours: rounded once per crew.
#[test]
fn hours_of_both_jobs_are_whole_once_per_crew() {
    for (job, hours) in
        [(samples::alder_court(), [83.0, 4.0, 4.0]), (samples::heron_bend(), [93.0, 6.0, 5.0])]
    {
        let takeoff = take_off(&job, &Layout::of(&job));
        assert_eq!(takeoff.crews.iter().map(|crew| crew.person_hours).collect::<Vec<_>>(), hours);
    }
}

/// The overhang was entered once, when raising the house: nothing asks for it again.
#[test]
fn the_overhang_entered_when_raising_reaches_the_leak_barrier() {
    let job = samples::heron_bend();
    assert_eq!(job.site.building.overhang, None);
    let takeoff = take_off(&job, &Layout::of(&job));
    assert!(takeoff.notes.iter().all(|note| !note.now().contains("overhang")), "{:?}", takeoff.notes);
}
