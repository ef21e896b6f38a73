use crate::finding::{Finding, Fix, Severity};
use chalkcourse_job::{Edit, Job, Waiver};
use chalkcourse_words::{pick, tell};
use std::collections::{HashMap, HashSet};

/// Puts each waiver on its finding; one whose finding is gone is a note.
pub(crate) fn settle(job: &Job, findings: &mut Vec<Finding>) {
    if job.waivers.is_empty() {
        return;
    }
    let by_key: HashMap<&str, &Waiver> = job.waivers.iter().map(|w| (w.key.as_str(), w)).collect();
    let mut used = HashSet::new();
    for finding in findings.iter_mut() {
        if let Some(waiver) = by_key.get(finding.key.as_str()) {
            finding.waived = Some((*waiver).clone());
            used.insert(waiver.key.as_str());
        }
    }
    for waiver in job.waivers.iter().filter(|w| !used.contains(w.key.as_str())) {
        findings.push(Finding {
            message: tell!("A waiver by {} ({}) is for a finding that is no longer there: “{}”. Take it away, or keep it if the trouble may \
                 come back.", "Una dispensa de {} ({}) es de un hallazgo que ya no existe: “{}”. Quítela, o consérvela si el \
        problema puede volver.",
                waiver.by, waiver.date, waiver.reason
            ),
            measured: pick("no such finding", "ese hallazgo no existe").into(),
            required: waiver.key.clone(),
            source: pick("the job's own waivers", "las dispensas de la obra").into(),
            fix: Some(Fix { label: pick("Take the waiver away", "Quitar la dispensa").into(), edit: Edit::Unwaive(waiver.key.clone()) }),
            ..Finding::of("waiver", Severity::Note, format!("waiver/{}", waiver.key))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::{Severity, check, testing};
    use chalkcourse_job::Waiver;
    use chalkcourse_layout::Layout;

    fn waiver(key: &str) -> Waiver {
        Waiver {
            key: key.into(),
            reason: "agreed on site".into(),
            by: "R. Vale".into(),
            date: "2026-03-02".into(),
        }
    }

    #[test]
    fn a_waiver_stays_with_its_finding_and_a_stale_one_is_told() {
        let mut job = testing::gable_job();
        job.blocks[0].at.x = 0.1;
        let key = check(&job, &Layout::of(&job))[0].key.clone();
        job.waivers = vec![waiver(&key), waiver("pitch/block-9/face-9")];
        job.blocks[0].at.x = 0.12;
        let findings = check(&job, &Layout::of(&job));
        let waived: Vec<_> = findings.iter().filter(|f| f.waived.is_some()).map(|f| f.key.as_str()).collect();
        assert_eq!(waived, [key.as_str()]);
        let notes: Vec<_> =
            findings.iter().filter(|f| f.severity == Severity::Note).map(|f| f.code).collect();
        assert_eq!(notes, ["waiver"]);
    }
}
