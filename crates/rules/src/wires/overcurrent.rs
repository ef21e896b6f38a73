//! A string has a fuse where others on its input could send more into it than it holds, and the fuse is of the right size.
//!
//! Source: NEC 690.9(A), exception (2017), from memory: none is needed where the others' currents are no more than its conductors carry
//! and its modules' series fuse; 690.9(B) (2017): a device is at least 1.25 times the largest current. The modules' maker says the most. The
//! breaker of a branch is held against its count (circuit-size) and its conductors (conductor-size).

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{kit_silent, not_dc, not_stated, of_circuit};
use crate::{Authority, Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::cite::{NO_OVERCURRENT, OVERCURRENT};
use chalkcourse_wiring::runs::protection;

pub(crate) const RULE: Rule = Rule {
    code: "overcurrent",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 38.0, 16.0, 10.0]),
        Stroke::Module([12.0, 25.0, 16.0, 10.0]),
        Stroke::Wrong([12.0, 12.0, 16.0, 10.0]),
        Stroke::Way([28.0, 43.0], [70.0, 30.0]),
        Stroke::Way([28.0, 30.0], [70.0, 30.0]),
        Stroke::Way([70.0, 30.0], [28.0, 17.0]),
    ],
    source: |job| Authority::Source(OVERCURRENT.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_dc(job)
        .or_else(|| not_stated(job, &[Unknown::Inverter, Unknown::HottestCell]))
        .or_else(|| kit_silent(job, [(KitGap::LeadGauge, |wiring| wiring.leads.gauge.is_some())]))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for circuit in &view.wires().circuits {
        let Some(found) = protection(job, view.wires(), circuit) else { continue };
        let amps = Quantity::Amps;
        let (facts, measured, required, section) = match (found.device.map(f64::from), found.most) {
            (None, _) if found.needed => {
                let held = Required::AtMost(amps(found.held_amps));
                (Facts::NoFuse, amps(found.others_amps), held, NO_OVERCURRENT)
            }
            (Some(fuse), _) if fuse < found.least - 1e-6 => {
                (Facts::FuseSmall, amps(fuse), Required::AtLeast(amps(found.least)), OVERCURRENT)
            }
            (Some(fuse), Some(most)) if fuse > most + 1e-6 => {
                (Facts::FuseLarge, amps(fuse), Required::AtMost(amps(most)), OVERCURRENT)
            }
            _ => continue,
        };
        let source = match facts {
            Facts::FuseLarge => Authority::Kit,
            _ => Authority::Source(section.of(job.wiring.edition)),
        };
        let finding = of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts);
        findings.push(Finding { measured, required, source, ..finding });
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{kit, of, one, wired};
    use chalkcourse_job::{Circuit, CircuitId, Quantity, Required, Resolved};

    /// The six modules as three strings of two on one input.
    fn three() -> Resolved {
        let mut job = wired();
        for id in [9, 10] {
            let at = job.circuits[0].modules.len() - 2;
            let modules = job.circuits[0].modules.split_off(at);
            let next = Circuit { id: CircuitId(id), modules, ..job.circuits[0].clone() };
            job.circuits.push(next);
        }
        job
    }

    /// 1.25 × 13.9 A = 17.375 A: one other sends that, two 34.75 A; the modules' series fuse is 25 A, leads of 10 AWG carry 22.55 A.
    #[test]
    fn two_need_none_and_three_do() {
        let mut job = three();
        let found = of(&job, "overcurrent");
        assert_eq!(found.len(), 3);
        assert_eq!((found[0].measured, &found[0].facts), (Quantity::Amps(34.75), &Facts::NoFuse));
        let Required::AtMost(Quantity::Amps(held)) = found[0].required else { panic!() };
        assert!((held - 22.55).abs() < 1e-9);
        job.circuits.pop();
        assert!(of(&job, "overcurrent").is_empty());
        // Leads of 12 AWG carry 40 × 0.41 = 16.4 A, less than one other sends.
        kit(&mut job).wiring.as_mut().unwrap().leads.gauge = Some(chalkcourse_job::Gauge::Awg12);
        assert_eq!(of(&job, "overcurrent").len(), 2);
    }

    /// A fuse is at least 1.25 × 17.375 = 21.72 A, and at most 25 A.
    #[test]
    fn the_size_of_a_fuse() {
        let fused = |amps: f64| {
            let mut job = wired();
            kit(&mut job).wiring.as_mut().unwrap().inverters[0].string_fuse_amps = Some(amps);
            job
        };
        assert!(of(&fused(25.0), "overcurrent").is_empty());
        assert_eq!(one(&fused(20.0), "overcurrent").facts, Facts::FuseSmall);
        assert_eq!(one(&fused(30.0), "overcurrent").facts, Facts::FuseLarge);
    }
}
