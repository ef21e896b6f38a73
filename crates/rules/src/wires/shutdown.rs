//! What rapid shutdown leaves live, and where.
//!
//! Source: NEC 690.12(B) (2017): beyond 1 ft from the array in all directions no more than 30 V within 30 s; 690.12(B)(2) (2017) within it: a
//! listed array, or no more than 80 V, or no exposed wiring and no metal within reach. Devices at the modules do both; plain strings do neither by
//! themselves, which is told. Ac devices stop with the house's voltage. That the initiator stands outside at the service, and works, is for
//! the electrician.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, not_dc, of_box, of_circuit};
use crate::{Authority, Facts};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{JunctionBox, Quantity, Required, Subject};
use chalkcourse_layout::Layout;
use chalkcourse_wiring::cite::{RAPID_SHUTDOWN, SHUTDOWN_WITHIN};
use chalkcourse_wiring::{Kind, face_of_box};
use std::borrow::Cow;

/// Beyond this far from the array conductors are shut down, in metres: 1 ft (NEC 690.12(B), 2017).
const BOUNDARY: f64 = 0.3048;
/// To no more than so many volts (as above).
const MOST_VOLTS: f64 = 30.0;

pub(crate) const RULE: Rule = Rule {
    code: "rapid-shutdown",
    sketch: &[
        SLOPE,
        Stroke::Module([14.0, 18.0, 30.0, 24.0]),
        Stroke::Limit(&[[10.0, 14.0], [48.0, 14.0], [48.0, 46.0], [10.0, 46.0], [10.0, 14.0]]),
        Stroke::Way([44.0, 30.0], [80.0, 30.0]),
        Stroke::Thing([80.0, 26.0, 8.0, 8.0]),
        Stroke::Measure([48.0, 22.0], [80.0, 22.0]),
    ],
    source: |job| Authority::Source(RAPID_SHUTDOWN.of(job.wiring.edition)),
    missing: not_dc,
    run: Run::Whole(run),
};

/// How far a box is from the nearest module on its face, in metres; `None` where none lies there, or the box is on no face.
fn from_array(layout: &Layout, junction: &JunctionBox) -> Option<f64> {
    let (face, at) = face_of_box(&layout.roof, junction)?;
    let modules = layout.blocks.iter().filter(|block| block.face == face).flat_map(|block| &block.modules);
    modules
        .map(|module| {
            let nearest: DVec2 = at.clamp(module.rect.min, module.rect.max);
            (at - nearest).length()
        })
        .min_by(f64::total_cmp)
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let (job, layout, wires) = (view.job(), view.layout(), view.wires());
    match job.kit.wiring.as_ref().map(Kind::of) {
        Some(Kind::DcDevices) => {
            for circuit in wires.circuits.iter().filter(|circuit| circuit.volts.shown > MOST_VOLTS + 1e-9) {
                findings.push(Finding {
                    measured: Quantity::Volts(circuit.volts.shown),
                    required: Required::AtMost(Quantity::Volts(MOST_VOLTS)),
                    source: RULE.source(job),
                    ..of_circuit(RULE.code, Severity::Stop, layout, circuit, Facts::StandbyVolts)
                });
            }
        }
        Some(Kind::Bare) => {
            let subject = Subject::Matter(Cow::Borrowed("modules"));
            findings.push(Finding {
                source: Authority::Source(SHUTDOWN_WITHIN.of(job.wiring.edition)),
                ..Finding::of(RULE.code, Severity::Caution, subject, Facts::NoModuleShutdown)
            });
            for junction in boxes(job) {
                let away = from_array(layout, junction);
                if away.is_some_and(|away| away <= BOUNDARY + 1e-6) {
                    continue;
                }
                let length = |metres| Quantity::Length(Length::from_metres(metres));
                let facts = Facts::ShutdownBoundary { junction: junction.id };
                findings.push(Finding {
                    measured: away.map_or(Quantity::Unknown, length),
                    required: Required::AtMost(length(BOUNDARY)),
                    source: RULE.source(job),
                    ..of_box(RULE.code, Severity::Stop, layout, junction, facts)
                });
            }
        }
        Some(Kind::AcDevices) | None => {}
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{boxed, inches, kit, of, why_not, wired};
    use crate::{Facts, WhyNot};
    use chalkcourse_job::{ModuleDevice, Quantity, builtin_kit, builtin_kits};

    /// The block ends 8.172 m along and, at (1 + 2.271) m up the slope; a box 0.3 m beside it is within the foot, one 0.31 m is not.
    #[test]
    fn plain_strings_within_and_beyond_a_foot() {
        let at = |along: f64| {
            let mut job = boxed();
            job.boxes[0].at = (8.172 + along, 2.0).into();
            of(&job, "rapid-shutdown")
        };
        let facts = |along| at(along).into_iter().map(|found| found.facts).collect::<Vec<_>>();
        assert_eq!(facts(0.3), [Facts::NoModuleShutdown]);
        assert_eq!(facts(-1.0), [Facts::NoModuleShutdown]);
        let found = at(0.31);
        assert_eq!(found.len(), 2);
        let beyond = found.iter().find(|found| found.facts != Facts::NoModuleShutdown).unwrap();
        assert!((inches(beyond.measured) - 0.31 / 0.0254).abs() < 1e-6);
        assert_eq!(of(&wired(), "rapid-shutdown").len(), 1);
    }

    /// Six devices of 1 V on standby are 6 V; of 5 V 30 V, just enough; of 5.1 V 30.6 V.
    #[test]
    fn devices_on_standby() {
        let volts = |each: f64| {
            let mut job = wired();
            job.kit = builtin_kit();
            let ModuleDevice::Dc(device) = &mut kit(&mut job).wiring.as_mut().unwrap().device else {
                panic!()
            };
            device.standby_volts = each;
            of(&job, "rapid-shutdown")
        };
        assert!(volts(1.0).is_empty() && volts(5.0).is_empty());
        let found = volts(5.1);
        let Quantity::Volts(live) = found[0].measured else { panic!() };
        assert!((live - 30.6).abs() < 1e-9 && found[0].facts == Facts::StandbyVolts);
        let mut branch = wired();
        branch.kit = builtin_kits()[1].clone();
        assert_eq!(why_not(&branch, "rapid-shutdown"), Some(WhyNot::BranchesInstead));
    }
}
