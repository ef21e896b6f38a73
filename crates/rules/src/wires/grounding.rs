//! The grounding conductor of the array is thick enough, and protected where it is thin.
//!
//! Source: NEC 690.45 and table 250.122 (2017): by the overcurrent device; of a string without one, by the device that it would have. 690.46
//! and 250.120(C) (2017; the second part from memory): thinner than 6 AWG it is protected against damage.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{kit_silent, not_wired, of_circuit};
use crate::{Authority, Facts, KitGap, WhyNot};
use chalkcourse_job::{Gauge, Resolved, Subject};
use chalkcourse_wiring::cite::{GROUNDING, GROUNDING_PROTECTED};
use chalkcourse_wiring::runs::grounding;
use std::borrow::Cow;

pub(crate) const RULE: Rule = Rule {
    code: "grounding-conductor",
    sketch: &[
        SLOPE,
        Stroke::Module([14.0, 14.0, 30.0, 14.0]),
        Stroke::Module([14.0, 32.0, 30.0, 14.0]),
        Stroke::Edge(&[[29.0, 18.0], [29.0, 50.0], [80.0, 50.0]]),
    ],
    source: |job| Authority::Source(GROUNDING.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_wired(job).or_else(|| kit_silent(job, [(KitGap::Grounding, |wiring| wiring.grounding.is_some())]))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let Some(gauge) = view.kit().wiring.as_ref().and_then(|wiring| wiring.grounding) else { return };
    for circuit in &view.wires().circuits {
        let Some((device, least)) = grounding(job, circuit).filter(|(_, least)| gauge < *least) else {
            continue;
        };
        let facts = Facts::GroundThin { gauge, least, device };
        findings.push(Finding {
            source: RULE.source(job),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts)
        });
    }
    if gauge < Gauge::Awg6 && !view.wires().circuits.is_empty() {
        let subject = Subject::Matter(Cow::Borrowed("protection"));
        findings.push(Finding {
            source: Authority::Source(GROUNDING_PROTECTED.of(job.wiring.edition)),
            ..Finding::of(RULE.code, Severity::Caution, subject, Facts::GroundBare { gauge })
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, why_not, wired};
    use crate::{Facts, KitGap, WhyNot};
    use chalkcourse_job::Gauge;

    /// 1.25 × 17.375 A = 21.7 A would be 25 A: 10 AWG by the table. Thinner than 6 AWG it needs protection.
    #[test]
    fn thick_enough_thin_and_too_thin() {
        let with = |gauge| {
            let mut job = wired();
            kit(&mut job).wiring.as_mut().unwrap().grounding = gauge;
            job
        };
        let keys = |gauge| -> Vec<String> {
            of(&with(Some(gauge)), "grounding-conductor").iter().map(|found| found.key.to_string()).collect()
        };
        assert!(keys(Gauge::Awg6).is_empty());
        assert_eq!(keys(Gauge::Awg10), ["grounding-conductor/protection"]);
        let thin = of(&with(Some(Gauge::Awg12)), "grounding-conductor");
        let facts = Facts::GroundThin { gauge: Gauge::Awg12, least: Gauge::Awg10, device: 25 };
        assert_eq!((thin.len(), &thin[0].facts), (2, &facts));
        assert_eq!(
            why_not(&with(None), "grounding-conductor"),
            Some(WhyNot::KitSilent(vec![KitGap::Grounding]))
        );
    }
}
