//! What works a plan out says nothing: it gives facts, and whoever shows them puts them into words. So a plan is the same in every
//! language, and a switch of the language works nothing out anew.

#![allow(clippy::unwrap_used, clippy::panic, missing_docs, reason = "a test may stop at the first surprise")]

use chalkcourse_job::{Resolved, Stage};
use chalkcourse_plan::{Evaluator, Plan, evaluate, findings_text, order_text_by, plan_report};
use chalkcourse_plan::{Offers, pallet_report};
use chalkcourse_takeoff::{compare, pallet, stages_ready};
use chalkcourse_telling::order::By;
use chalkcourse_tests::{houses, samples};
use chalkcourse_words::{Language, silent, speaking};

/// The samples, and houses as they are usually built, with blocks on them where the samples have some.
fn jobs() -> Vec<(String, Resolved)> {
    let samples = samples::all().into_iter().map(|(name, job)| (name.to_owned(), job));
    let houses = (0..20).map(|seed| (format!("house {seed}"), houses::usual(seed).job));
    samples.chain(houses).collect()
}

#[test]
fn nothing_is_said_while_a_plan_is_worked_out() {
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

/// All that is told of a plan.
fn told(job: &Resolved, plan: &Plan) -> Vec<String> {
    let json = |value: serde_json::Result<String>| value.unwrap();
    vec![
        order_text_by(job, plan, By::Stage),
        findings_text(job, plan, &Offers::default()),
        json(serde_json::to_string(&plan_report(job, plan))),
        json(serde_json::to_string(&pallet_report(job, plan))),
    ]
}

/// The language of a plan is that of its reader, whatever was spoken when it was worked out.
#[test]
fn a_plan_is_told_in_the_language_of_its_reader() {
    for (name, job) in jobs() {
        let plans = Language::ALL.map(|language| speaking(language, || evaluate(&job)));
        for reader in Language::ALL {
            let texts: Vec<_> = plans.iter().map(|plan| speaking(reader, || told(&job, plan))).collect();
            assert!(texts.windows(2).all(|pair| pair[0] == pair[1]), "{name} as {reader:?} reads it");
        }
        let [one, other] = [0, 1].map(|nth| speaking(Language::ALL[nth], || told(&job, &plans[0])));
        assert_ne!(one, other, "{name} sounds alike in two languages");
    }
}
