use crate::finding::{Finding, Severity};
use crate::{Authority, Facts};
use chalkcourse_job::{FindingKey, Resolved, Subject, WAIVER, Waiver};
use std::collections::{HashMap, HashSet};

/// Attaches each waiver to its finding, as covering it or as lapsed; one without a finding becomes a note.
pub(crate) fn settle(job: &Resolved, findings: &mut Vec<Finding>) {
    if job.waivers.is_empty() {
        return;
    }
    let by_key: HashMap<&FindingKey, &Waiver> = job.waivers.iter().map(|w| (&w.key, w)).collect();
    let mut used = HashSet::new();
    for finding in findings.iter_mut() {
        let Some(&waiver) = by_key.get(&finding.key) else { continue };
        used.insert(&waiver.key);
        match waiver.lapse(finding.measured, &finding.required) {
            None => finding.waived = Some(waiver.clone()),
            Some(lapse) => finding.lapsed = Some((waiver.clone(), lapse)),
        }
    }
    for waiver in job.waivers.iter().filter(|w| !used.contains(&w.key)) {
        let facts = Facts::WaiverIdle { waiver: waiver.clone(), missing: waiver.key.missing(job) };
        findings.push(Finding {
            source: Authority::Waivers,
            ..Finding::of(WAIVER, Severity::Note, Subject::Waiver(Box::new(waiver.key.clone())), facts)
        });
    }
}
