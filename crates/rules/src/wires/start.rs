//! A string of bare modules has enough voltage on a hot day for its inverter to work.
//!
//! Source: the inverter's maker. By the temperature of the cells, which is far above that of the air.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{led_to, not_bare, not_stated, of_circuit};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};

pub(crate) const RULE: Rule = Rule {
    code: "string-start",
    sketch: &[
        SLOPE,
        Stroke::Wrong([12.0, 18.0, 20.0, 24.0]),
        Stroke::Limit(&[[40.0, 14.0], [40.0, 46.0]]),
        Stroke::Measure([12.0, 46.0], [32.0, 46.0]),
    ],
    source: |_| Authority::Kit,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_bare(job).or_else(|| not_stated(job, &[Unknown::Inverter, Unknown::HottestCell]))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    if missing(job).is_some() {
        return;
    }
    let Some(wiring) = &job.kit.wiring else { return };
    for circuit in &view.wires().circuits {
        let number = led_to(job, circuit).or(job.wiring.inverters.first());
        let Some(inverter) = number.and_then(|number| wiring.inverter(number)) else { continue };
        let Some(volts) = circuit.volts.lowest.filter(|volts| *volts < inverter.least_volts - 1e-6) else {
            continue;
        };
        let facts = Facts::StringStart { modules: circuit.devices.len() };
        findings.push(Finding {
            measured: Quantity::Volts(volts),
            required: Required::AtLeast(Quantity::Volts(inverter.least_volts)),
            source: Authority::Kit,
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{Unknown, WhyNot};
    use chalkcourse_job::Quantity;
    use std::sync::Arc;

    /// 6 × 31.2 V × (1 − 0.0034 × 52) = 154.103 V with cells of 77 °C.
    #[test]
    fn enough_just_enough_and_too_little() {
        let mut job = wired();
        let mut least = |volts: f64| {
            kit(&mut job).wiring.as_mut().unwrap().inverters[0].least_volts = volts;
            job.clone()
        };
        assert!(of(&least(120.0), "string-start").is_empty());
        assert!(of(&least(154.1028), "string-start").is_empty());
        let found = one(&least(154.2), "string-start");
        let Quantity::Volts(volts) = found.measured else { panic!("{found:#?}") };
        assert!((volts - 154.103).abs() < 1e-3, "{volts}");
    }

    #[test]
    fn what_is_not_known_and_what_has_devices() {
        let mut job = wired();
        Arc::make_mut(&mut job.wiring).hottest_cell_celsius = None;
        let unknown = WhyNot::NotKnown(vec![Unknown::HottestCell]);
        assert_eq!(why_not(&job, "string-start"), Some(unknown));
        job.kit = chalkcourse_job::builtin_kit();
        assert_eq!(why_not(&job, "string-start"), Some(WhyNot::WithDevices));
    }
}
