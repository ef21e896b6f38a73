//! Something stops at a fault to ground in a dc circuit.
//!
//! Source: NEC 690.41(B) (2017), from memory. Its exceptions (not more than two circuits, none of them on or in a building) are not for
//! a roof.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{inverter_silent, not_dc, not_stated, of_circuit};
use crate::{Authority, Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::Resolved;
use chalkcourse_wiring::cite::GROUND_FAULT;
use chalkcourse_wiring::runs::inverter_of;

pub(crate) const RULE: Rule = Rule {
    code: "ground-fault",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 26.0, 20.0, 20.0]),
        Stroke::Way([32.0, 36.0], [88.0, 36.0]),
        Stroke::Way([60.0, 36.0], [60.0, 10.0]),
        Stroke::Wrong([56.0, 32.0, 8.0, 8.0]),
    ],
    source: |job| Authority::Source(GROUND_FAULT.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_dc(job)
        .or_else(|| not_stated(job, &[Unknown::Inverter]))
        .or_else(|| inverter_silent(job, KitGap::GroundFault, |inverter| inverter.ground_fault.is_some()))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for circuit in &view.wires().circuits {
        if inverter_of(job, circuit).and_then(|inverter| inverter.ground_fault) == Some(false) {
            findings.push(Finding {
                source: RULE.source(job),
                ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::GroundFault)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{KitGap, WhyNot};

    #[test]
    fn provided_not_provided_and_not_said() {
        let mut job = wired();
        assert!(of(&job, "ground-fault").is_empty());
        let mut says = |stops| {
            kit(&mut job).wiring.as_mut().unwrap().inverters[0].ground_fault = stops;
            job.clone()
        };
        let found = one(&says(Some(false)), "ground-fault");
        assert_eq!(found.key.to_string(), "ground-fault/circuit-8");
        assert_eq!(why_not(&says(None), "ground-fault"), Some(WhyNot::KitSilent(vec![KitGap::GroundFault])));
    }
}
