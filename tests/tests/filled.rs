//! A filled roof has no stop that a person could clear by moving or removing modules, whatever was waived before.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::dvec2;
use chalkcourse_job::{Accepted, Block, Edit, Resolved, RuleBook, Waiver, apply};
use chalkcourse_layout::Layout;
use chalkcourse_limits::LIMITS;
use chalkcourse_plan::{evaluate, fixes};
use chalkcourse_rules::{RULES, Severity, check};
use chalkcourse_tests::houses::{self, USUAL, usual};
use chalkcourse_tests::{top, verdict};
use std::collections::BTreeSet;
use std::sync::Arc;

/// A job with all its faces filled.
fn filled(job: &Resolved) -> Resolved {
    verdict::claims(job, &verdict::steep_enough(job)).unwrap().1
}

/// Stops of the filled job that the job did not have before.
fn new_stops(before: &Resolved, after: &Resolved) -> BTreeSet<String> {
    let was = verdict::open(before).stops;
    verdict::open(after).stops.into_iter().filter(|stop| !was.contains(stop)).collect()
}

/// Variants of a job in which one block is moved, on a raster of half a metre, or has lost a module, a row or a column,
/// or is removed; and variants with a single module left. None is without modules.
fn moved_or_taken_out(job: &Resolved) -> Vec<Resolved> {
    let with = |old: &Block, new: Block| {
        job.with(|job| {
            for block in job.blocks.iter_mut().filter(|block| block.id == old.id) {
                *block = new.clone();
            }
        })
    };
    let mut found = Vec::new();
    for block in &job.blocks {
        let raster = (-10..=10).flat_map(|u| (-8..=8).map(move |v| dvec2(f64::from(u), f64::from(v)) * 0.5));
        found.extend(raster.map(|by| with(block, Block { at: block.at + by, ..block.clone() })));
        let cells: Vec<_> = block.cells().collect();
        let without = |gone: &dyn Fn(usize, usize) -> bool| {
            let mut block = block.clone();
            let away = cells.iter().filter(|cell| gone(cell.row as usize, cell.column as usize)).copied();
            block.off.extend(away);
            block
        };
        for cell in &cells {
            let (row, column) = (cell.row as usize, cell.column as usize);
            found.push(with(block, without(&|r, c| (r, c) == (row, column))));
            found.push(with(block, without(&|r, _| r == row)));
            found.push(with(block, without(&|_, c| c == column)));
            let alone = with(block, without(&|r, c| (r, c) != (row, column)));
            found.push(alone.with(|job| job.blocks.retain(|other| other.id == block.id)));
        }
        found.push(job.with(|job| job.blocks.retain(|other| other.id != block.id)));
        found.push(job.with(|job| job.blocks.retain(|other| other.face != block.face)));
    }
    found.retain(|job| job.blocks.iter().any(|block| block.cells().next().is_some()));
    found
}

/// Stops of a filled job that moving a block or removing some modules would clear without causing another.
fn clearable(before: &Resolved, after: &Resolved) -> BTreeSet<String> {
    let stops = new_stops(before, after);
    if stops.is_empty() {
        return stops;
    }
    let cleared = |other: &Resolved| {
        let left = new_stops(before, other);
        if left.is_subset(&stops) { stops.difference(&left).cloned().collect() } else { BTreeSet::new() }
    };
    moved_or_taken_out(after).iter().flat_map(cleared).collect()
}

/// Usual houses with all faces filled at once pass `check`.
#[test]
fn filled_houses_have_no_stop() {
    for seed in USUAL.step_by(9) {
        let house = usual(seed).job;
        assert_eq!(new_stops(&house, &filled(&house)), BTreeSet::new(), "usual {seed}");
    }
}

/// A stop left on a filled real roof is one that any module there causes, and the claim says so: no move and no removal
/// of modules clears it, and the available fixes leave no module. One of them is a small roof without room for a second
/// pathway.
#[test]
fn no_stop_on_a_filled_real_roof_is_cleared_by_moving_or_taking_out_modules() {
    let file = top().join("tests/data/3dbag-sample.city.jsonl");
    let mut stopped = 0;
    for (name, job) in houses::real(&file, true) {
        let Ok((_, after)) = verdict::claims(&job, &verdict::steep_enough(&job)) else { continue };
        let stops = new_stops(&job, &after);
        assert_eq!(clearable(&job, &after), BTreeSet::new(), "{name}");
        let plan = evaluate(&after);
        for finding in plan.findings.iter().filter(|finding| stops.contains(&finding.key.to_string())) {
            let fixes = fixes(&after, &plan, &finding.key, &|| false);
            let all = after.blocks.iter().map(|block| block.cells().count()).sum::<usize>();
            assert!(fixes.offered().iter().all(|fix| fix.lost == all), "{name}: {fixes:?}");
        }
        stopped += usize::from(!stops.is_empty());
    }
    assert!((1..=2).contains(&stopped), "{stopped}");
}

/// The search above detects a stop that can be cleared: a filled block pushed over the border of its face.
#[test]
fn the_search_detects_clearable_stops() {
    let house = usual(3).job;
    let mut after = filled(&house);
    after.blocks[0].at.y -= 1.0;
    let stops = new_stops(&house, &after);
    assert!(!stops.is_empty());
    assert_eq!(clearable(&house, &after), stops);
}

/// Waive everything that stops an array laid almost without rules, with the block ids that a fill would use: the fill
/// and its claims are the same as without waivers, and nothing on the roof needs a waiver.
#[test]
fn a_waiver_of_all_that_stops_an_array_changes_no_fill() {
    let mut waived_rules = BTreeSet::new();
    for seed in USUAL.filter(|&seed| usual(seed).job.rule_book.fire_access.is_some()).take(5) {
        let job = usual(seed).job;
        let faces = verdict::steep_enough(&job);
        let free = job.with(|job| {
            let mut book = RuleBook::clone(&job.rule_book);
            let fire = RULES.iter().map(|rule| rule.code).filter(|code| code.starts_with("fire"));
            book.off.extend(LIMITS.iter().map(|limit| limit.code).chain(fire).map(str::to_owned));
            job.rule_book = Arc::new(book);
        });
        let careless = filled(&free).with(|all| all.rule_book = Arc::clone(&job.rule_book));
        let stops = check(&careless, &Layout::of(&careless));
        let waived = stops.into_iter().filter(|stop| stop.severity == Severity::Stop).fold(
            job.clone(),
            |job, stop| {
                waived_rules.insert(stop.rule);
                let accepted = Some(Accepted { measured: stop.measured, required: stop.required });
                let (reason, by, date) = ("seen by the official".into(), "R. Vale".into(), "1 May".into());
                apply(&job, &Edit::Waive(Waiver { key: stop.key, accepted, reason, by, date })).unwrap()
            },
        );
        assert!(waived.waivers.len() > 3, "{seed}: {}", waived.waivers.len());
        let (with, after) = verdict::claims(&waived, &faces).unwrap();
        let (without, plain) = verdict::claims(&job, &faces).unwrap();
        assert_eq!(with, without, "{seed}");
        assert_eq!(after.blocks, plain.blocks, "{seed}");
        let bare = after.with(|job| job.waivers.clear());
        assert_eq!(new_stops(&job, &bare), BTreeSet::new(), "{seed}");
    }
    assert!(
        waived_rules.contains("setback") && waived_rules.iter().any(|rule| rule.starts_with("fire")),
        "{waived_rules:?}"
    );
}
