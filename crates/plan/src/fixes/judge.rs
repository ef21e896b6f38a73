//! A change is judged by a full check of the resulting job.

use chalkcourse_geometry::Roof;
use chalkcourse_job::{Edit, FindingKey, Quantity, Required, Resolved, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Checker, Finding, Severity};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Counts of open stops, cautions and notes. Every offered fix makes this smaller in lexicographic order, so that
/// applying fixes until none is offered terminates.
pub fn open_findings(findings: &[Finding]) -> [usize; 3] {
    Standing::of(findings).0.map(|open| open.len())
}

const SEVERITIES: [Severity; 3] = [Severity::Stop, Severity::Caution, Severity::Note];

/// Open findings of a job, stops first: measured value and requirement of each.
#[derive(Clone, Debug)]
pub(super) struct Standing([BTreeMap<FindingKey, (Quantity, Required)>; 3]);

impl Standing {
    pub(super) fn of(findings: &[Finding]) -> Self {
        Self(SEVERITIES.map(|severity| {
            let open = findings.iter().filter(|f| f.severity == severity && f.waived.is_none());
            open.map(|f| (f.key.clone(), (f.measured, f.required.clone()))).collect()
        }))
    }

    /// The severity index of an open finding, 0 for a stop.
    fn weight(&self, key: &FindingKey) -> Option<usize> {
        self.0.iter().position(|open| open.contains_key(key))
    }

    /// Findings of the same severity or more that are new or worse after a change.
    pub(super) fn broken(&self, key: &FindingKey, after: &Self) -> Vec<FindingKey> {
        let Some(weight) = self.weight(key) else { return Vec::new() };
        let mut broken = Vec::new();
        for (was, is) in self.0.iter().zip(&after.0).take(weight + 1) {
            broken.extend(is.iter().filter_map(|(key, (now, required))| {
                let fine = was.get(key).is_some_and(|(then, asked)| {
                    required.is_same(asked) && required.is_no_worse(*now, *then)
                });
                (!fine).then(|| key.clone())
            }));
        }
        broken
    }

    /// Whether a finding is gone, or has become less severe.
    pub(super) fn is_gone(&self, key: &FindingKey, after: &Self) -> bool {
        self.weight(key).is_some_and(|weight| after.weight(key).is_none_or(|now| now > weight))
    }
}

/// A job with its layout and findings.
#[derive(Clone, Debug)]
pub(super) struct State {
    pub(super) job: Resolved,
    pub(super) layout: Layout,
    pub(super) findings: Vec<Finding>,
}

impl State {
    pub(super) fn modules(&self) -> usize {
        self.layout.blocks.iter().map(|block| block.modules.len()).sum()
    }

    pub(super) fn finding(&self, key: &FindingKey) -> Option<&Finding> {
        self.findings.iter().find(|finding| finding.key == *key)
    }
}

/// Tries changes, up to a budget.
pub(super) struct Trials<'a> {
    roof: Arc<Roof>,
    checker: Checker,
    stop: &'a dyn Fn() -> bool,
    left: usize,
    done: usize,
}

impl<'a> Trials<'a> {
    pub(super) fn on(layout: &Layout, left: usize, stop: &'a dyn Fn() -> bool) -> Self {
        Self { roof: Arc::clone(&layout.roof), checker: Checker::default(), stop, left, done: 0 }
    }

    /// Increases the budget.
    pub(super) fn allow(&mut self, more: usize) {
        self.left += more;
    }

    /// How many were tried.
    pub(super) fn done(&self) -> usize {
        self.done
    }

    /// Whether it was asked to stop early.
    pub(super) fn stopped(&self) -> bool {
        (self.stop)()
    }

    /// The state after an edit; `None` if the edit fails or changes nothing, or the budget is used up.
    pub(super) fn run(&mut self, from: &Resolved, edit: &Edit) -> Option<State> {
        if self.left == 0 || self.stopped() {
            return None;
        }
        self.left -= 1;
        self.done += 1;
        let job = apply(from, edit).ok().filter(|job| job != from)?;
        let layout = if job.faces == from.faces {
            Layout::on_roof(&job, Arc::clone(&self.roof))
        } else {
            Layout::of(&job)
        };
        let findings = self.checker.check(&job, &layout);
        Some(State { job, layout, findings })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Subject;

    fn standing(stops: &[(&'static str, f64)], notes: &[&'static str]) -> Standing {
        let required = || Required::AtLeast(Quantity::Length(Length::from_metres(1.0)));
        let key = |rule| FindingKey::new(rule, Subject::Whole);
        let stop = |&(rule, metres): &(&'static str, f64)| {
            (key(rule), (Quantity::Length(Length::from_metres(metres)), required()))
        };
        let note = |rule: &&'static str| (key(rule), (Quantity::Nothing, Required::So));
        Standing([stops.iter().map(stop).collect(), BTreeMap::new(), notes.iter().map(note).collect()])
    }

    #[test]
    fn only_new_and_worse_findings_of_that_severity_count() {
        let key = FindingKey::new("a", Subject::Whole);
        let before = standing(&[("a", 0.5), ("b", 0.5)], &[]);
        let broken = |after: &Standing| before.broken(&key, after).len();
        assert_eq!(broken(&standing(&[("b", 0.5)], &["n"])), 0);
        assert_eq!(broken(&standing(&[("b", 0.6)], &[])), 0);
        assert_eq!(broken(&standing(&[("b", 0.4)], &[])), 1);
        assert_eq!(broken(&standing(&[("b", 0.5), ("c", 0.9)], &[])), 1);
        assert!(before.is_gone(&key, &standing(&[("b", 0.5)], &["a"])));
        assert!(!before.is_gone(&key, &standing(&[("a", 0.9)], &[])));
        // For a note, nothing new at all is acceptable.
        let before = standing(&[("b", 0.5)], &["a"]);
        assert_eq!(before.broken(&key, &standing(&[("b", 0.5)], &["c"])).len(), 1);
    }
}
