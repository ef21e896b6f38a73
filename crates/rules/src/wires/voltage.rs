//! A string's highest voltage is within what inverter, module and code allow.
//!
//! Source: NEC 690.7 (2017): the sum of the modules' open-circuit voltages at the lowest temperature, 600 V in dwellings; 690.7(B),
//! from memory, for devices: what their maker says, else the sum of what they are rated for. Of the limits the lowest counts.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{led_to, not_stated, not_wired, of_circuit};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{ModuleDevice, Quantity, Required, Resolved, Source};
use chalkcourse_wiring::cite::{DEVICE_VOLTAGE, LARGEST_VOLTAGE};
use chalkcourse_wiring::{Kind, LimitedBy, Wired, most_volts};

pub(crate) const RULE: Rule = Rule {
    code: "string-voltage",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Module([40.0, 18.0, 20.0, 24.0]),
        Stroke::Wrong([68.0, 18.0, 20.0, 24.0]),
        Stroke::Measure([12.0, 46.0], [88.0, 46.0]),
    ],
    source: |job| {
        let bare = job.kit.wiring.as_ref().is_some_and(|wiring| wiring.device == ModuleDevice::None);
        let section = if bare { LARGEST_VOLTAGE } else { DEVICE_VOLTAGE };
        Authority::Source(section.of(job.wiring.edition))
    },
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let kind = job.kit.wiring.as_ref().map(Kind::of);
    not_wired(job).or_else(|| match kind {
        Some(Kind::Bare) => not_stated(job, &[Unknown::Inverter, Unknown::LowestTemperature]),
        Some(Kind::AcDevices) => Some(WhyNot::BranchesInstead),
        _ => not_stated(job, &[Unknown::Inverter]),
    })
}

/// The lowest of the limits on a circuit's voltage, and what it is.
fn limit(job: &Resolved, circuit: &Wired) -> Option<(f64, LimitedBy, Source)> {
    let wiring = job.kit.wiring.as_ref()?;
    let section = if circuit.kind == Kind::Bare { LARGEST_VOLTAGE } else { DEVICE_VOLTAGE };
    let led_to = led_to(job, circuit);
    let numbers = led_to.into_iter().chain(job.wiring.inverters.iter().filter(|_| led_to.is_none()));
    let inverters = numbers.filter_map(|number| wiring.inverter(number));
    let all = most_volts(wiring, inverters, section.of(job.wiring.edition));
    all.min_by(|a, b| a.0.total_cmp(&b.0))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if missing(view.job()).is_some() {
        return;
    }
    for circuit in &view.wires().circuits {
        let (Some(volts), Some((most, by, source))) = (circuit.volts.highest, limit(view.job(), circuit))
        else {
            continue;
        };
        if volts <= most + 1e-6 {
            continue;
        }
        let facts = Facts::StringVoltage { modules: circuit.devices.len(), by };
        findings.push(Finding {
            measured: Quantity::Volts(volts),
            required: Required::AtMost(Quantity::Volts(most)),
            source: Authority::Source(source),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{Facts, Unknown, WhyNot};
    use chalkcourse_job::{ModuleDevice, Quantity, Required};
    use chalkcourse_wiring::LimitedBy;
    use std::sync::Arc;

    /// 6 × 37.2 V × (1 + 0.0026 × 47) = 250.475 V at −22 °C, against an inverter of 250.5 V and one of 250 V.
    #[test]
    fn below_at_and_above() {
        let mut job = wired();
        assert!(of(&job, "string-voltage").is_empty());
        let most = |job: &mut chalkcourse_job::Resolved, volts: f64| {
            kit(job).wiring.as_mut().unwrap().inverters[0].most_volts = volts;
        };
        most(&mut job, 250.4755);
        assert!(of(&job, "string-voltage").is_empty());
        most(&mut job, 250.0);
        let found = one(&job, "string-voltage");
        let Quantity::Volts(volts) = found.measured else { panic!("{found:#?}") };
        assert!((volts - 250.475).abs() < 1e-3, "{volts}");
        assert_eq!(found.required, Required::AtMost(Quantity::Volts(250.0)));
        assert_eq!(found.facts, Facts::StringVoltage { modules: 6, by: LimitedBy::InverterVolts });
        assert_eq!(found.key.to_string(), "string-voltage/circuit-8");
    }

    #[test]
    fn without_a_temperature_it_is_told_as_unknown() {
        let mut job = wired();
        Arc::make_mut(&mut job.wiring).lowest_celsius = None;
        assert!(of(&job, "string-voltage").is_empty());
        let unknown = WhyNot::NotKnown(vec![Unknown::LowestTemperature]);
        assert_eq!(why_not(&job, "string-voltage"), Some(unknown));
    }

    /// Devices of 60 V whose maker gives no voltage of a string: 6 × 60 V against 350 V; with the maker's word of 300 V they hold.
    #[test]
    fn devices_by_their_maker_or_their_sum() {
        let mut job = wired();
        let device = chalkcourse_job::builtin_kit().wiring.clone().unwrap().device;
        let ModuleDevice::Dc(mut device) = device else { panic!() };
        device.most_string_volts = None;
        let wiring = kit(&mut job).wiring.as_mut().unwrap();
        wiring.inverters[0].most_volts = 350.0;
        wiring.device = ModuleDevice::Dc(device);
        assert_eq!(one(&job, "string-voltage").measured, Quantity::Volts(360.0));
        device.most_string_volts = Some(300.0);
        kit(&mut job).wiring.as_mut().unwrap().device = ModuleDevice::Dc(device);
        assert!(of(&job, "string-voltage").is_empty());
    }
}
