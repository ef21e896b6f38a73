//! Rules on random layouts: nothing panics, keys are never taken twice, and an offered fix clears its finding.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod random_jobs;

use chalkcourse_job::{Job, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Finding, check, checked};
use proptest::prelude::*;
use random_jobs::jobs;
use std::collections::HashSet;

fn all(job: &Job) -> Vec<Finding> {
    check(job, &Layout::of(job))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    #[test]
    fn an_offered_fix_clears_its_finding(job in jobs()) {
        let findings = all(&job);
        let keys: HashSet<&str> = findings.iter().map(|f| f.key.as_str()).collect();
        prop_assert_eq!(keys.len(), findings.len(), "a key is taken twice");
        for finding in &findings {
            prop_assert!(!finding.message.is_empty() && !finding.source.is_empty() && !finding.required.is_empty());
            let Some(fix) = &finding.fix else { continue };
            let next = apply(&job, &fix.edit).unwrap();
            let still = all(&next).into_iter().find(|f| f.key == finding.key);
            prop_assert!(still.is_none(), "{} does not clear {:#?}, which leaves {:#?}", fix.label, finding, still);
        }
        prop_assert!(checked(&job).iter().all(|line| line.on || line.why_not.is_some()));
    }
}
