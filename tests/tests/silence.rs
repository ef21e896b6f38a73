//! Computing a plan formats no text: it yields facts, and whoever shows them formats them. So a plan is the same in every
//! language, and switching the language recomputes nothing.

#![allow(clippy::unwrap_used, clippy::panic, missing_docs, reason = "a test may stop at the first surprise")]

use chalkcourse_job::{Resolved, Stage};
use chalkcourse_plan::{
    Evaluator, Fill, Mode, Offers, Plan, Seen, Size, Target, Way, Worth, evaluate, fill, fills_text,
    findings_text, fix_words, fixes, hold_back, order_text_by, pallet_report, plan_report,
};
use chalkcourse_takeoff::{compare, pallet, stages_ready};
use chalkcourse_telling::order::By;
use chalkcourse_tests::{houses, samples};
use chalkcourse_words::{Language, silent, speaking};

/// The samples, and usual houses, with blocks on them as in the samples.
fn jobs() -> Vec<(String, Resolved)> {
    let samples = samples::all().into_iter().map(|(name, job)| (name.to_owned(), job));
    let houses = (0..20).map(|seed| (format!("house {seed}"), houses::usual(seed).job));
    samples.chain(houses).collect()
}

#[test]
fn computing_a_plan_formats_no_text() {
    let mut counted = 0;
    for (name, job) in jobs() {
        let (plan, said) = silent(|| evaluate(&job));
        assert_eq!(said, None, "{name}: put into words while evaluating");
        let (_, said) = silent(|| {
            let mut evaluator = Evaluator::default();
            evaluator.evaluate(&job);
            evaluator.evaluate(&job)
        });
        assert_eq!(said, None, "{name}: put into words with a memory");
        let ((), said) = silent(|| {
            let rows = pallet(&plan.takeoff, &job.order.delivery);
            let ready = stages_ready(&rows);
            assert!(ready.iter().all(|stage| Stage::ALL.contains(&stage.stage)));
            assert!(compare(&plan.takeoff, &plan.takeoff).is_empty());
        });
        assert_eq!(said, None, "{name}: put into words on the pallet");
        counted += plan.takeoff.lines.len() + plan.findings.len();
    }
    assert!(counted > 500, "there is something to say: {counted}");
}

/// Every text derived from a plan.
fn texts_of(job: &Resolved, plan: &Plan) -> Vec<String> {
    let json = |value: serde_json::Result<String>| value.unwrap();
    vec![
        order_text_by(job, plan, By::Stage),
        findings_text(job, plan, &Offers::default()),
        json(serde_json::to_string(&plan_report(job, plan))),
        json(serde_json::to_string(&pallet_report(job, plan))),
    ]
}

/// A plan is shown in its reader's language, whatever the language was when it was computed.
#[test]
fn a_plan_is_shown_in_its_readers_language() {
    for (name, job) in jobs() {
        let plans = Language::ALL.map(|language| speaking(language, || evaluate(&job)));
        for reader in Language::ALL {
            let texts: Vec<_> = plans.iter().map(|plan| speaking(reader, || texts_of(&job, plan))).collect();
            assert!(texts.windows(2).all(|pair| pair[0] == pair[1]), "{name} as {reader:?} reads it");
        }
        let [one, other] = [0, 1].map(|nth| speaking(Language::ALL[nth], || texts_of(&job, &plans[0])));
        assert_ne!(one, other, "{name} sounds alike in two languages");
    }
}

/// Ways to fill one face, of each kind of claim.
fn modes() -> [Mode; 6] {
    [
        Mode::SlidingRows,
        Mode::OneGrid,
        Mode::OnCourses,
        Mode::WholeBlocks(2),
        Mode::ByWorth(Worth { module: 500.0, by_area: false }),
        Mode::ToNumber(Target { size: Size::Modules(3), way: Way::Cheapest }),
    ]
}

/// A claim survives a switch of the language: it is made without words, including what limits the fill.
#[test]
fn a_fill_claim_is_made_without_text() {
    let job = houses::usual(3).job;
    let face = job.faces.iter().max_by(|a, b| a.outline.area().total_cmp(&b.outline.area())).unwrap().id;
    let of = |mode: Mode| -> Vec<Fill> {
        let mut fills = fill(&job, &[face], mode, &|| false).unwrap();
        fills[0].held = Some(hold_back(&job, &fills[0], mode, &|| false).unwrap());
        fills
    };
    for mode in modes() {
        let (fills, said) = silent(|| of(mode));
        assert_eq!(said, None, "{mode:?}: put into words while filling");
        let spanish = speaking(Language::SPANISH, || of(mode));
        assert_eq!(fills, spanish, "{mode:?}");
        let plan = evaluate(&job);
        let [one, other] = Language::ALL.map(|language| {
            speaking(language, || (fills_text(&job, &fills, &plan), fills[0].claim.to_string()))
        });
        assert!(one.0 != other.0 && one.1 != other.1, "{mode:?} sounds alike in two languages: {}", one.1);
    }
}

/// So does the name of a fix: it is in the list of steps for as long as the job is open.
#[test]
fn a_fix_is_named_without_text() {
    let mut named = 0;
    for (name, job) in jobs() {
        let plan = evaluate(&job);
        for finding in &plan.findings {
            let found = fixes(&job, &plan, &finding.key, &|| false);
            for fix in found.offered() {
                let (words, said) = silent(|| fix_words(&job, fix, Seen::Plan));
                assert_eq!(said, None, "{name}: {words} was put into words");
                assert_ne!(words.within(Language::ENGLISH), words.within(Language::SPANISH), "{name}");
                named += 1;
            }
        }
    }
    assert!(named >= 5, "there is something to mend: {named}");
}
