//! An inverter's input gets no more strings and no more current than it takes.
//!
//! Source: the inverter's maker for count and current; NEC 690.8(A)(1) (2017): bare modules give up to 1.25 times their short-circuit
//! current in bright light. Of devices counts the current at the voltage at which the inverter holds them.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{led_to, not_stated, not_wired, of_circuit};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{Inverter, Quantity, Required, Resolved};
use chalkcourse_wiring::{Kind, Wired};
use std::collections::BTreeMap;

pub(crate) const RULE: Rule = Rule {
    code: "inverter-input",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 34.0, 20.0, 14.0]),
        Stroke::Module([12.0, 14.0, 20.0, 14.0]),
        Stroke::Way([32.0, 41.0], [66.0, 30.0]),
        Stroke::Way([32.0, 21.0], [66.0, 30.0]),
        Stroke::Wrong([66.0, 22.0, 18.0, 16.0]),
    ],
    source: |_| Authority::Kit,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let kind = job.kit.wiring.as_ref().map(Kind::of);
    not_wired(job)
        .or_else(|| (kind == Some(Kind::AcDevices)).then_some(WhyNot::BranchesInstead))
        .or_else(|| not_stated(job, &[Unknown::Inverter]))
}

/// What one string brings to an input, and what that takes, in amperes.
fn amps(circuit: &Wired, inverter: &Inverter) -> (f64, f64) {
    match (circuit.kind, inverter.string_volts) {
        (Kind::Bare, _) => (circuit.currents.most, inverter.most_isc_amps),
        (_, Some(volts)) => (circuit.watts / volts, inverter.most_amps),
        (_, None) => (circuit.currents.most, inverter.most_amps),
    }
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    if missing(job).is_some() {
        return;
    }
    let Some(wiring) = &job.kit.wiring else { return };
    let mut taken: BTreeMap<_, (u32, f64)> = BTreeMap::new();
    for circuit in &view.wires().circuits {
        let mut push = |finding: Finding| findings.push(finding);
        let of = |facts| of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts);
        let inverter = led_to(job, circuit).and_then(|number| wiring.inverter(number));
        let (Some(input), Some(inverter)) = (circuit.input, inverter) else {
            let finding = of(Facts::NoInput);
            push(Finding { severity: Severity::Caution, source: Authority::Kit, ..finding });
            continue;
        };
        let (own, most) = amps(circuit, inverter);
        let (strings, amps) = taken.entry(input).or_default();
        (*strings, *amps) = (*strings + 1, *amps + own);
        let room = if input.input < inverter.inputs { inverter.strings_an_input } else { 0 };
        if *strings > room {
            push(Finding {
                measured: Quantity::Count(*strings),
                required: Required::AtMost(Quantity::Count(room)),
                source: Authority::Kit,
                ..of(Facts::InputStrings)
            });
        } else if *amps > most + 1e-6 {
            push(Finding {
                measured: Quantity::Amps(*amps),
                required: Required::AtMost(Quantity::Amps(most)),
                source: Authority::Kit,
                ..of(Facts::InputCurrent)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{kit, of, one, wired};
    use chalkcourse_job::{InverterInput, Quantity};

    /// 1.25 × 13.9 A = 17.375 A.
    #[test]
    fn current_within_at_and_above() {
        let mut job = wired();
        assert!(of(&job, "inverter-input").is_empty());
        let inverter = |job: &mut chalkcourse_job::Resolved, amps: f64| {
            kit(job).wiring.as_mut().unwrap().inverters[0].most_isc_amps = amps;
        };
        inverter(&mut job, 17.375);
        assert!(of(&job, "inverter-input").is_empty());
        inverter(&mut job, 17.3);
        let found = one(&job, "inverter-input");
        assert_eq!((found.measured, &found.facts), (Quantity::Amps(17.375), &Facts::InputCurrent));
    }

    /// Of dc devices counts what 6 × 405 W are at 380 V: 6.39 A.
    #[test]
    fn devices_at_the_voltage_of_the_string() {
        let mut job = wired();
        job.kit = chalkcourse_job::builtin_kit();
        assert!(of(&job, "inverter-input").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().inverters[0].most_amps = 6.0;
        let Quantity::Amps(amps) = one(&job, "inverter-input").measured else { panic!() };
        assert!((amps - 2430.0 / 380.0).abs() < 1e-9);
    }

    #[test]
    fn no_input_no_such_input_and_one_too_many() {
        let mut job = wired();
        job.circuits[0].input = None;
        assert_eq!(one(&job, "inverter-input").facts, Facts::NoInput);
        job.circuits[0].input = Some(InverterInput { inverter: 3, input: 0 });
        assert_eq!(one(&job, "inverter-input").facts, Facts::NoInput);
        job.circuits[0].input = Some(InverterInput { inverter: 0, input: 2 });
        assert_eq!(one(&job, "inverter-input").facts, Facts::InputStrings);
        let mut two = wired();
        let mut second = two.circuits[0].clone();
        second.id = chalkcourse_job::CircuitId(9);
        second.modules = two.circuits[0].modules.split_off(3);
        two.circuits.push(second);
        let found = one(&two, "inverter-input");
        assert_eq!(
            (found.measured, found.key.to_string().as_str()),
            (Quantity::Count(2), "inverter-input/circuit-9")
        );
    }
}
