//! Rules on random layouts: no panics, no duplicate keys, and removing the modules that a finding names opens the pathway.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod random_jobs;

use chalkcourse_job::{FindingKey, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Facts, Finding, RULES, check};
use proptest::prelude::*;
use random_jobs::jobs;
use std::collections::HashSet;

fn all(job: &Resolved) -> Vec<Finding> {
    check(job, &Layout::of(job))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    #[test]
    fn keys_are_unique_and_removing_the_named_modules_opens_a_pathway(job in jobs()) {
        let findings = all(&job);
        let keys: HashSet<_> = findings.iter().map(|f| &f.key).collect();
        prop_assert_eq!(keys.len(), findings.len(), "a key is taken twice");
        for finding in &findings {
            let told = chalkcourse_telling::report(&job, finding);
            prop_assert!(!told.message.is_empty() && !told.source.is_empty() && !told.required.is_empty());
            prop_assert_eq!(&finding.key.to_string().parse::<FindingKey>().unwrap(), &finding.key);
            prop_assert_eq!(finding.key.missing(&job), None);
            let (Facts::FirePaths { opening: Some(opening), .. } | Facts::FirePlanePath { opening: Some(opening) }) =
                &finding.facts
            else {
                continue;
            };
            let mut next = job.clone();
            for block in &mut next.blocks {
                let of = opening.iter().filter(|(id, _)| *id == block.id);
                block.off.extend(of.flat_map(|(_, cells)| cells.iter().copied()));
            }
            let still = all(&next).into_iter().find(|f| f.key == finding.key);
            prop_assert!(still.is_none(), "{finding:#?} is not cleared, which leaves {still:#?}");
        }
        prop_assert_eq!(chalkcourse_telling::checked(&job).len(), RULES.len());
    }
}
