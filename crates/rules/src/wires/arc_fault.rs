//! Something stops at an arc in a dc circuit of 80 V or more.
//!
//! Source: NEC 690.11 (2017). An arc of direct current does not go out by itself. Circuits of ac devices have no dc beyond their module.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{inverter_silent, not_bare, not_dc, not_stated, of_circuit};
use crate::{Authority, Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::cite::ARC_FAULT;
use chalkcourse_wiring::runs::inverter_of;

/// Circuits of fewer volts are not asked for it (NEC 690.11, 2017).
const FROM_VOLTS: f64 = 80.0;

pub(crate) const RULE: Rule = Rule {
    code: "arc-fault",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Way([32.0, 30.0], [48.0, 30.0]),
        Stroke::Wrong([48.0, 26.0, 8.0, 8.0]),
        Stroke::Way([56.0, 30.0], [88.0, 30.0]),
    ],
    source: |job| Authority::Source(ARC_FAULT.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let bare = not_bare(job).is_none();
    not_dc(job)
        .or_else(|| not_stated(job, &[Unknown::Inverter]))
        .or_else(|| not_stated(job, &[Unknown::LowestTemperature]).filter(|_| bare))
        .or_else(|| inverter_silent(job, KitGap::ArcFault, |inverter| inverter.arc_fault.is_some()))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for circuit in &view.wires().circuits {
        let stops = inverter_of(job, circuit).and_then(|inverter| inverter.arc_fault);
        let Some(volts) = circuit.volts.highest.filter(|volts| *volts >= FROM_VOLTS) else { continue };
        if stops == Some(false) {
            findings.push(Finding {
                measured: Quantity::Volts(volts),
                required: Required::AtMost(Quantity::Volts(FROM_VOLTS)),
                source: RULE.source(job),
                ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::ArcFault)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{KitGap, WhyNot};
    use chalkcourse_job::{Quantity, builtin_kits};

    /// One module at −22 °C is 41.75 V, two are 83.5 V.
    #[test]
    fn provided_not_provided_and_below_80_volts() {
        let mut job = wired();
        assert!(of(&job, "arc-fault").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().inverters[0].arc_fault = Some(false);
        assert_eq!(one(&job, "arc-fault").key.to_string(), "arc-fault/circuit-8");
        job.circuits[0].modules.truncate(2);
        let Quantity::Volts(volts) = one(&job, "arc-fault").measured else { panic!() };
        assert!((volts - 83.492).abs() < 1e-3);
        job.circuits[0].modules.truncate(1);
        assert!(of(&job, "arc-fault").is_empty());
    }

    #[test]
    fn what_is_not_said_and_what_is_ac() {
        let mut job = wired();
        kit(&mut job).wiring.as_mut().unwrap().inverters[0].arc_fault = None;
        assert_eq!(why_not(&job, "arc-fault"), Some(WhyNot::KitSilent(vec![KitGap::ArcFault])));
        job.kit = builtin_kits()[1].clone();
        assert_eq!(why_not(&job, "arc-fault"), Some(WhyNot::BranchesInstead));
    }
}
