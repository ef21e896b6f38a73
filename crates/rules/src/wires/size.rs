//! A circuit of devices has as many modules as device, inverter and breaker allow.
//!
//! Source: the device's maker for count and power; NEC 690.8(B) (2017) for a branch: its breaker is 1.25 times the rated current of all
//! devices on it.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_wired, of_circuit};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::{Kind, Window, window};

pub(crate) const RULE: Rule = Rule {
    code: "circuit-size",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 14.0, 16.0, 14.0]),
        Stroke::Module([34.0, 14.0, 16.0, 14.0]),
        Stroke::Module([56.0, 14.0, 16.0, 14.0]),
        Stroke::Wrong([56.0, 32.0, 16.0, 14.0]),
        Stroke::Way([20.0, 21.0], [64.0, 39.0]),
    ],
    source: |_| Authority::Kit,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let kind = job.kit.wiring.as_ref().map(Kind::of);
    not_wired(job)
        .or_else(|| (kind == Some(Kind::Bare)).then_some(WhyNot::WithoutDevices))
        .or_else(|| window(job).err().map(|_| WhyNot::NotKnown(vec![Unknown::Inverter])))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if missing(view.job()).is_some() {
        return;
    }
    let wires = view.wires();
    let Some(Window { least, most, .. }) = &wires.window else { return };
    for circuit in &wires.circuits {
        let count = u32::try_from(circuit.devices.len()).unwrap_or(u32::MAX);
        let bar = match count {
            few if few < least.modules => least,
            many if many > most.modules => most,
            _ => continue,
        };
        findings.push(Finding {
            measured: Quantity::Count(count),
            required: Required::Between(Quantity::Count(least.modules), Quantity::Count(most.modules)),
            source: Authority::Source(bar.source.clone()),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::CircuitSize { by: bar.by })
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{Facts, WhyNot};
    use chalkcourse_job::{ModuleDevice, Quantity, Required, Resolved, builtin_kits};
    use chalkcourse_wiring::LimitedBy;

    fn with_devices(least: u32, most: u32) -> Resolved {
        let mut job = wired();
        job.kit = builtin_kits()[0].clone();
        let ModuleDevice::Dc(device) = &mut kit(&mut job).wiring.as_mut().unwrap().device else { panic!() };
        (device.least_in_string, device.most_in_string) = (least, most);
        job
    }

    #[test]
    fn within_at_both_ends_and_outside() {
        for (least, most) in [(1, 25), (6, 25), (1, 6)] {
            assert!(of(&with_devices(least, most), "circuit-size").is_empty(), "{least} to {most}");
        }
        for (least, most) in [(7, 25), (1, 5)] {
            let found = one(&with_devices(least, most), "circuit-size");
            assert_eq!(found.measured, Quantity::Count(6));
            assert_eq!(found.facts, Facts::CircuitSize { by: LimitedBy::DeviceCount });
        }
    }

    /// Six ac devices of 1.21 A: 1.25 × 7.26 A = 9.075 A.
    #[test]
    fn a_branch_by_its_breaker() {
        let mut job = wired();
        job.kit = builtin_kits()[1].clone();
        assert!(of(&job, "circuit-size").is_empty());
        let ModuleDevice::Ac(device) = &mut kit(&mut job).wiring.as_mut().unwrap().device else { panic!() };
        device.branch_breaker_amps = 9.0;
        let found = one(&job, "circuit-size");
        assert_eq!(found.required, Required::Between(Quantity::Count(1), Quantity::Count(5)));
        assert_eq!(found.facts, Facts::CircuitSize { by: LimitedBy::Breaker });
    }

    #[test]
    fn bare_strings_are_judged_by_their_volts() {
        assert_eq!(why_not(&wired(), "circuit-size"), Some(WhyNot::WithoutDevices));
    }
}
