//! Incremental checking: findings equal those of a full run, and rules do not run again for what did not change.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod random_jobs;

use chalkcourse_geometry::{EdgeKind, Length, Units, dvec2};
use chalkcourse_job::{Block, Cell, Edit, Resolved, apply};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Evaluator, evaluate};
use chalkcourse_rules::{Checker, RULES, RuleRun, Unit, check};
use chalkcourse_tests::samples;
use proptest::prelude::*;
use random_jobs::jobs;
use std::collections::BTreeMap;
use std::sync::Arc;

/// One change of a kind, to the thing picked by a number, by some metres.
fn change(job: &Resolved, (kind, which, by): (u8, usize, (f64, f64))) -> Option<Edit> {
    let block = |change: &dyn Fn(&mut Block)| {
        let mut block = job.blocks.get(which % job.blocks.len().max(1))?.clone();
        change(&mut block);
        Some(Edit::PutBlock(block))
    };
    let step = dvec2(by.0, by.1);
    match kind {
        0 | 1 => block(&|block| block.at += step),
        2 => block(&|block| {
            block.off.insert(Cell { row: 0, column: which as u32 % block.columns });
        }),
        3 => block(&|block| block.reveal = Length::from_metres(by.0.abs() * 0.01)),
        4 => Some(Edit::RemoveBlock(job.blocks.get(which % job.blocks.len().max(1))?.id)),
        5 => {
            let mut other = job.blocks.get(which % job.blocks.len().max(1))?.clone();
            other.id = chalkcourse_job::BlockId(job.next_id);
            other.at += step;
            Some(Edit::PutBlock(other))
        }
        6 => {
            let mut moved = job.penetrations.get(which % job.penetrations.len().max(1))?.clone();
            moved.at += step;
            Some(Edit::PutPenetration(moved))
        }
        7 => Some(Edit::RemovePenetration(job.penetrations.get(which % job.penetrations.len().max(1))?.id)),
        8 => {
            let mut face = job.faces.get(which % job.faces.len().max(1))?.clone();
            let corners = face.outline.outer.len();
            *face.outline.outer.get_mut(which % corners.max(1))? += step * 0.2;
            Some(Edit::PutFace(face))
        }
        9 => {
            let mut book = (*job.rule_book).clone();
            book.setbacks.get_mut(&EdgeKind::Rake)?.value = Length::from_metres(by.0.abs() * 0.3);
            Some(Edit::SetRuleBook(Arc::new(book)))
        }
        10 => Some(Edit::SetUnits(if which % 2 == 0 { Units::Metric } else { Units::FeetInches })),
        11 => {
            let mut site = job.site.clone();
            site.building.sprinklers = which % 2 == 0;
            Some(Edit::SetSite(site))
        }
        12 => {
            let mut face = job.faces.get(which % job.faces.len().max(1))?.clone();
            face.name = format!("Renamed {which}");
            Some(Edit::PutFace(face))
        }
        13 => Some(Edit::RemoveFace(job.faces.get(which % job.faces.len().max(1))?.id)),
        _ => {
            let word = || "agreed".to_owned();
            Some(Edit::Waive(check(job, &Layout::of(job)).get(which)?.waiver(word(), word(), word())))
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(300) })]

    #[test]
    fn cached_findings_equal_a_full_run(
        job in jobs(),
        changes in proptest::collection::vec((0..15u8, 0..64usize, (-1.5..1.5f64, -1.5..1.5f64)), 1..12),
    ) {
        let mut checker = Checker::default();
        let mut job = job;
        prop_assert_eq!(checker.check(&job, &Layout::of(&job)), check(&job, &Layout::of(&job)));
        for step in changes {
            let before = job.clone();
            if let Some(edit) = change(&job, step) {
                job = apply(&job, &edit).unwrap_or(job);
            }
            prop_assert_eq!(checker.check(&job, &Layout::of(&job)), check(&job, &Layout::of(&job)), "{:?}", step);
            // And back, as by undo.
            if step.1 % 3 == 0 {
                job = before;
                prop_assert_eq!(checker.check(&job, &Layout::of(&job)), check(&job, &Layout::of(&job)));
            }
        }
    }
}

/// How many rule runs there were for each kind of thing.
fn counts(ran: &[RuleRun]) -> BTreeMap<&'static str, usize> {
    let mut counts = BTreeMap::new();
    for run in ran {
        let kind = match run.on {
            Unit::Whole => "whole",
            Unit::Face(_) => "face",
            Unit::Block(_) => "block",
            Unit::Penetration(_) => "penetration",
        };
        *counts.entry(kind).or_insert(0) += 1;
    }
    counts
}

/// On a terrace of 200 faces with a block on each, one block moves: rules run for that block and its face, and for nothing else
/// except the whole-job rules.
#[test]
fn one_block_moves_and_the_other_199_are_left_alone() {
    let job = samples::mill_row();
    let mut evaluator = Evaluator::default();
    let before = evaluator.evaluate(&job);
    let first = counts(evaluator.rule_runs());
    assert!(
        first["block"] >= 200 * 5 && first["face"] >= 200 * 4 && first["penetration"] >= 100,
        "{first:?}"
    );

    let moving = job.blocks[77].clone();
    let to = Block { at: moving.at + dvec2(0.02, 0.01), ..moving.clone() };
    let next = apply(&job, &Edit::PutBlock(to)).unwrap();
    let plan = evaluator.evaluate(&next);
    assert_eq!(plan, evaluate(&next));
    let kept =
        before.layout.blocks.iter().zip(&plan.layout.blocks).filter(|(old, new)| Arc::ptr_eq(old, new));
    assert_eq!(kept.count(), 199);
    let again = counts(evaluator.rule_runs());
    assert!(!again.contains_key("penetration"), "{again:?}");
    assert!(again["block"] <= RULES.len() && again["face"] <= RULES.len() && again["whole"] <= RULES.len());
    for run in evaluator.rule_runs() {
        match run.on {
            Unit::Block(block) => assert_eq!(block, moving.id, "{}", run.rule),
            Unit::Face(face) => assert_eq!(face, moving.face, "{}", run.rule),
            Unit::Whole | Unit::Penetration(_) => {}
        }
    }
    // Rules about the roof as drawn, or about a pitch, do not run again.
    for code in ["outline", "height-gap", "near-miss", "shingle-slope", "underlayment"] {
        assert!(evaluator.rule_runs().iter().all(|run| run.rule != code), "{code} ran again");
    }

    // Nothing moved: only whole-job rules run.
    evaluator.evaluate(&next);
    assert_eq!(counts(evaluator.rule_runs()).into_keys().collect::<Vec<_>>(), ["whole"]);
}

/// A pipe moves: rules for its face and the block there run again, those for the other 199 faces do not.
#[test]
fn a_pipe_moves() {
    let job = samples::mill_row();
    let mut evaluator = Evaluator::default();
    evaluator.evaluate(&job);
    let mut pipe = job.penetrations[7].clone();
    pipe.at.x += 0.1;
    let next = apply(&job, &Edit::PutPenetration(pipe.clone())).unwrap();
    let plan = evaluator.evaluate(&next);
    assert_eq!(plan, evaluate(&next));
    let home = plan.layout.penetration(pipe.id).unwrap().home.unwrap();
    let face = plan.layout.faces[home].id;
    for run in evaluator.rule_runs() {
        match run.on {
            Unit::Face(on) => assert_eq!(on, face, "{}", run.rule),
            Unit::Penetration(id) => assert_eq!(id, pipe.id, "{}", run.rule),
            Unit::Block(id) => assert_eq!(job.block(id).unwrap().face, face, "{}", run.rule),
            Unit::Whole => {}
        }
    }
}
