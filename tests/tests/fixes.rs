//! A fix is offered only after it was tried: on random jobs, applying any fix leaves fewer stops and no new one, applying fixes
//! repeatedly terminates, and what a brute-force search of moves clears is cleared by a fix that keeps all modules too.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod random_jobs;

use chalkcourse_geometry::dvec2;
use chalkcourse_job::{Block, BlockId, Edit, FindingKey, Quantity, Required, Resolved, Subject, apply};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Fix, Plan, Seen, evaluate, fix_words, fixes, open_findings};
use chalkcourse_rules::{Checker, Finding, Severity, check};
use chalkcourse_tests::dice::Dice;
use chalkcourse_tests::houses::{USUAL, usual};
use chalkcourse_tests::samples;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use random_jobs::jobs;
use std::collections::{BTreeMap, BTreeSet};

const NEVER: &dyn Fn() -> bool = &|| false;

/// The given number of random jobs that have findings.
fn some_jobs(count: usize) -> Vec<Resolved> {
    let mut runner = TestRunner::deterministic();
    let strategy = jobs();
    let any = std::iter::repeat_with(|| strategy.new_tree(&mut runner).unwrap().current());
    any.filter(|job| !stops(&all(job)).is_empty()).take(count).collect()
}

/// Typical houses with blocks at random places on their faces.
fn some_houses(count: usize) -> Vec<Resolved> {
    let dropped = |seed: u64| {
        let mut job = usual(seed).job;
        let mut dice = Dice::new(seed ^ 0xf1);
        let layout = Layout::of(&job);
        for number in 0..1 + dice.below(3) as u32 {
            let face = dice.below(layout.faces.len());
            let bounds = layout.roof.faces[face].bounds;
            let at = bounds.min + bounds.size() * dvec2(dice.within(-0.1, 0.7), dice.within(-0.1, 0.7));
            let block = Block {
                id: BlockId(900 + number),
                name: number.to_string(),
                face: layout.faces[face].id,
                at,
                rows: 1 + dice.below(3) as u32,
                columns: 1 + dice.below(5) as u32,
                orientation: Default::default(),
                reveal: job.kit.reveal.usual,
                shifts: Vec::new(),
                off: BTreeSet::new(),
                locked: dice.chance(0.1),
            };
            job.blocks.push(block);
        }
        job.next_id = 950;
        job
    };
    USUAL.map(dropped).filter(|job| !stops(&all(job)).is_empty()).take(count).collect()
}

fn all(job: &Resolved) -> Vec<Finding> {
    check(job, &Layout::of(job))
}

/// Open findings of a severity, by key.
fn open(findings: &[Finding], weighs: Severity) -> BTreeMap<&FindingKey, &Finding> {
    let of = findings.iter().filter(|f| f.severity == weighs && f.waived.is_none());
    of.map(|f| (&f.key, f)).collect()
}

fn stops(findings: &[Finding]) -> BTreeMap<&FindingKey, &Finding> {
    open(findings, Severity::Stop)
}

/// How far a finding exceeds its limit, calculated independently; `None` if it has no number.
fn beyond(finding: &Finding) -> Option<f64> {
    let number = |quantity: &Quantity| match quantity {
        Quantity::Length(length) | Quantity::InPlan(length) => Some(length.metres()),
        Quantity::Area(it) | Quantity::Share(it) | Quantity::Pounds(it) => Some(*it),
        _ => None,
    };
    let now = number(&finding.measured)?;
    match &finding.required {
        Required::AtLeast(least) => Some(number(least)? - now),
        Required::AtMost(most) => Some(now - number(most)?),
        Required::Between(least, most) => Some((number(least)? - now).max(now - number(most)?)),
        Required::Joints(_) => Some(now),
        _ => None,
    }
}

/// Findings of a severity that are new, or exceed their limit by noticeably more than before.
fn broken(before: &[Finding], after: &[Finding], weighs: Severity) -> Vec<String> {
    let was = open(before, weighs);
    let fine = |now: &Finding| match was.get(&now.key) {
        Some(then) => match (beyond(then), beyond(now)) {
            (Some(then), Some(now)) => now <= then + 1.1e-4,
            _ => true,
        },
        None => false,
    };
    open(after, weighs).values().filter(|now| !fine(now)).map(|now| now.key.to_string()).collect()
}

/// An offered fix keeps its promises.
fn assert_holds(job: &Resolved, before: &[Finding], finding: &Finding, fix: &Fix) -> Resolved {
    let next = apply(job, &fix.edit()).unwrap();
    let after = all(&next);
    let weights = [Severity::Stop, Severity::Caution, Severity::Note];
    for weighs in weights.into_iter().filter(|weighs| *weighs <= finding.severity) {
        let broken = broken(before, &after, weighs);
        assert!(broken.is_empty(), "{fix:?} for {} breaks {broken:?}", finding.key);
    }
    let count = |findings: &[Finding]| open(findings, finding.severity).len();
    assert!(count(&after) < count(before), "{fix:?} for {} leaves as many", finding.key);
    assert!(!open(&after, finding.severity).contains_key(&finding.key), "{fix:?} leaves {}", finding.key);
    for block in job.blocks.iter().filter(|block| block.locked) {
        assert_eq!(next.block(block.id), Some(block), "{fix:?} touches a locked block");
    }
    next
}

#[test]
fn every_offered_fix_leaves_fewer_and_nothing_new() {
    let mut offered = 0;
    for job in some_jobs(150).into_iter().chain(some_houses(30)) {
        let plan = evaluate(&job);
        for finding in plan.findings.iter().filter(|f| f.waived.is_none()) {
            for fix in fixes(&job, &plan, &finding.key, NEVER).offered() {
                assert_holds(&job, &plan.findings, finding, fix);
                offered += 1;
            }
        }
    }
    assert!(offered > 100, "only {offered} fixes were offered");
}

/// Applies the first offered fix until there is none; returns the job and how many were applied.
fn apply_until_none(job: &Resolved, pick: impl Fn(&[&Fix]) -> Option<Fix>) -> (Resolved, usize) {
    let (mut job, mut pressed) = (job.clone(), 0);
    let offers = |job: &Resolved, plan: &Plan| {
        let mut offers = plan.findings.iter().map(|f| pick(&fixes(job, plan, &f.key, NEVER).offered()));
        offers.find_map(|fix| fix)
    };
    loop {
        let plan = evaluate(&job);
        let Some(fix) = offers(&job, &plan) else { return (job, pressed) };
        let next = apply(&job, &fix.edit()).unwrap();
        let (before, after) = (open_findings(&plan.findings), open_findings(&all(&next)));
        assert!(after < before, "{fix:?} turns {before:?} into {after:?}");
        (job, pressed) = (next, pressed + 1);
        assert!(pressed < 100, "there is no end");
    }
}

#[test]
fn applying_fixes_terminates_whichever_is_chosen() {
    for job in some_jobs(60).into_iter().chain(some_houses(15)) {
        for last in [false, true] {
            let pick = |fixes: &[&Fix]| if last { fixes.last() } else { fixes.first() }.map(|&it| it.clone());
            let (fixed, _) = apply_until_none(&job, pick);
            let before = open_findings(&all(&job));
            let after = open_findings(&all(&fixed));
            assert!(after <= before);
        }
    }
}

#[test]
fn quarry_lane_is_cleared_and_does_not_go_round() {
    let job = samples::quarry_lane();
    assert_eq!(stops(&all(&job)).len(), 2);
    let plan = evaluate(&job);
    for finding in &plan.findings {
        let offered = fixes(&job, &plan, &finding.key, NEVER);
        let fix = offered.best().unwrap();
        assert_eq!((fix.steps.len(), fix.lost), (1, 0), "{fix:?}");
        assert_eq!(stops(&all(&assert_holds(&job, &plan.findings, finding, fix))).len(), 0);
    }
    let (fixed, pressed) = apply_until_none(&job, |fixes| fixes.first().map(|&it| it.clone()));
    assert!(pressed <= 2 && stops(&all(&fixed)).is_empty(), "{pressed}: {:#?}", all(&fixed));
}

/// The blocks to move to clear a stop.
fn movers(job: &Resolved, finding: &Finding) -> Vec<BlockId> {
    let ids = match &finding.key.subject {
        Subject::Blocks(one, two) => vec![*one, *two],
        _ => finding.place.block.into_iter().collect(),
    };
    ids.into_iter().filter(|id| job.block(*id).is_some_and(|block| !block.locked)).collect()
}

/// Stops that moving a block to some point of a raster, or along the two lines through it, clears without a new or worse one.
fn cleared_by_moves(job: &Resolved, before: &[Finding], block: &Block) -> BTreeSet<FindingKey> {
    let raster = (-12..=12).flat_map(|u| (-10..=10).map(move |v| dvec2(f64::from(u), f64::from(v)) * 0.5));
    let lines = (-60..=60).map(|i| f64::from(i) * 0.1).flat_map(|by| [dvec2(by, 0.0), dvec2(0.0, by)]);
    let mut cleared = BTreeSet::new();
    let mut checker = Checker::default();
    let roof = Layout::of(job).roof;
    for by in raster.chain(lines) {
        let moved = Block { at: block.at + by, ..block.clone() };
        let Ok(next) = apply(job, &Edit::PutBlock(moved)) else { continue };
        let after = checker.check(&next, &Layout::on_roof(&next, roof.clone()));
        if broken(before, &after, Severity::Stop).is_empty() {
            let left = stops(&after);
            cleared.extend(stops(before).into_keys().filter(|key| !left.contains_key(key)).cloned());
        }
    }
    cleared
}

/// The search is this test's own: a raster of half a metre and two lines by a tenth, each position judged by the check alone.
#[test]
fn stops_cleared_by_a_move_have_a_fix_that_keeps_all_modules() {
    let (mut clearable, mut kept, mut any) = (0, 0, 0);
    for job in some_jobs(60).into_iter().chain(some_houses(25)) {
        let plan = evaluate(&job);
        let mut by_moves: BTreeMap<BlockId, BTreeSet<FindingKey>> = BTreeMap::new();
        for finding in stops(&plan.findings).values() {
            let found = movers(&job, finding).into_iter().any(|id| {
                let cleared = by_moves
                    .entry(id)
                    .or_insert_with(|| cleared_by_moves(&job, &plan.findings, job.block(id).unwrap()));
                cleared.contains(&finding.key)
            });
            if found {
                let offered = fixes(&job, &plan, &finding.key, NEVER);
                clearable += 1;
                any += usize::from(offered.best().is_some());
                let whole = offered.offered().iter().any(|fix| fix.lost == 0);
                kept += usize::from(whole);
                if !whole {
                    println!("no fix that keeps all modules: {}", finding.key);
                }
            }
        }
    }
    println!("of {clearable} stops that moves clear, {any} have a fix and {kept} one that keeps all modules");
    assert!(clearable > 30, "only {clearable}");
    assert!(kept * 10 >= clearable * 9, "{kept} of {clearable}");
}

#[test]
fn no_fix_without_finding_and_stopping_ends_at_once() {
    let job = samples::quarry_lane();
    let plan = evaluate(&job);
    let nothing = FindingKey::new("setback", Subject::Whole);
    assert!(fixes(&job, &plan, &nothing, NEVER).offered().is_empty());
    let stopped = fixes(&job, &plan, &plan.findings[0].key, &|| true);
    assert!(stopped.stopped && stopped.offered().is_empty());
}

/// A block over the left rake, and another one so near on its right that the first can't move in before that one has
/// made room.
#[test]
fn a_sequence_clears_without_loss_what_one_step_clears_at_a_loss() {
    let mut job = samples::alder_court();
    job.penetrations.clear();
    let first = job.blocks[0].clone();
    let width = 4.0 * first.spacing(&job.kit).x;
    job.blocks[0].at.x = -0.6;
    let at = dvec2(width + 0.1, first.at.y);
    job.blocks.push(Block { id: BlockId(20), name: "B".into(), at, ..first });
    job.next_id = 21;
    let plan = evaluate(&job);
    let over = plan.findings.iter().find(|f| f.rule == "off-face").unwrap();
    let offered = fixes(&job, &plan, &over.key, NEVER);
    let best = offered.best().unwrap();
    assert_eq!((best.steps.len(), best.lost), (2, 0), "{offered:#?}");
    assert_holds(&job, &plan.findings, over, best);
    let words = String::from(fix_words(&job, best, Seen::Plan));
    assert!(words.starts_with("First move block A ") && words.contains(", then move block B "), "{words}");
    // With the other one locked, modules have to go.
    job.blocks[1].locked = true;
    let plan = evaluate(&job);
    let offered = fixes(&job, &plan, &over.key, NEVER);
    assert!(offered.best().is_some_and(|fix| fix.lost > 0), "{offered:#?}");
}
