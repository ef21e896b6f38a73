//! The module is one that its device takes: voltage when cold, short-circuit current, power.
//!
//! Source: the device's maker; NEC 690.7 (2017) for the voltage of one module at the lowest temperature.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::wires::not_wired;
use crate::{Authority, Facts, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved, Subject};
use chalkcourse_wiring::volts;
use std::borrow::Cow;

pub(crate) const RULE: Rule = Rule {
    code: "device-input",
    sketch: &[
        Stroke::Module([12.0, 16.0, 48.0, 30.0]),
        Stroke::Wrong([70.0, 24.0, 16.0, 14.0]),
        Stroke::Way([60.0, 31.0], [70.0, 31.0]),
    ],
    source: |_| Authority::Kit,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let device = job.kit.wiring.as_ref().and_then(|wiring| wiring.device_input());
    not_wired(job).or_else(|| device.is_none().then_some(WhyNot::WithoutDevices))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let (job, kit) = (view.job(), view.kit());
    if missing(job).is_some() {
        return;
    }
    let Some(input) = kit.wiring.as_ref().and_then(|wiring| wiring.device_input()) else { return };
    let module = &kit.module.electrical;
    let cold = job
        .wiring
        .lowest_celsius
        .map(|celsius| volts::highest(module, celsius, job.wiring.voltage_by_table).unwrap_or(f64::INFINITY));
    // Without a temperature, at least the voltage at 25 °C must hold.
    let volts = cold.unwrap_or(module.voc_volts);
    for (matter, has, most, of) in [
        ("volts", volts, input.most_volts, Quantity::Volts as fn(f64) -> Quantity),
        ("amps", module.isc_amps, input.most_isc_amps, Quantity::Amps),
        ("watts", kit.module.watts, input.most_watts, Quantity::Watts),
    ] {
        if has > most + 1e-9 {
            findings.push(Finding {
                measured: of(has),
                required: Required::AtMost(of(most)),
                source: Authority::Kit,
                ..Finding::of(
                    RULE.code,
                    Severity::Stop,
                    Subject::Matter(Cow::Borrowed(matter)),
                    Facts::DeviceInput,
                )
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::WhyNot;
    use crate::testing::{kit, of, one, why_not, wired};
    use chalkcourse_job::{ModuleDevice, Quantity, Resolved, builtin_kits};
    use std::sync::Arc;

    fn with(volts: f64, amps: f64, watts: f64) -> Resolved {
        let mut job = wired();
        job.kit = builtin_kits()[1].clone();
        let ModuleDevice::Ac(device) = &mut kit(&mut job).wiring.as_mut().unwrap().device else { panic!() };
        (device.input.most_volts, device.input.most_isc_amps, device.input.most_watts) = (volts, amps, watts);
        job
    }

    /// 37.2 V × (1 + 0.0026 × 47) = 41.746 V at −22 °C, 13.9 A, 405 W.
    #[test]
    fn each_limit_met_and_broken() {
        assert!(of(&with(41.7459, 13.9, 405.0), "device-input").is_empty());
        let found = one(&with(41.7, 13.9, 405.0), "device-input");
        let Quantity::Volts(volts) = found.measured else { panic!("{found:#?}") };
        assert!((volts - 41.746).abs() < 1e-3);
        assert_eq!(one(&with(60.0, 13.8, 405.0), "device-input").measured, Quantity::Amps(13.9));
        assert_eq!(one(&with(60.0, 13.9, 400.0), "device-input").key.to_string(), "device-input/watts");
        let mut unknown = with(37.2, 13.9, 405.0);
        Arc::make_mut(&mut unknown.wiring).lowest_celsius = None;
        assert!(of(&unknown, "device-input").is_empty());
    }

    #[test]
    fn modules_without_devices() {
        assert_eq!(why_not(&wired(), "device-input"), Some(WhyNot::WithoutDevices));
    }
}
