//! Each stretch of a circuit has conductors that carry its current where they lie, and that their overcurrent device protects.
//!
//! Source: NEC 690.8(B) (2017): the larger of 1.25 times the largest current before any correction, and of that current after all of them,
//! not both at once. Ampacities of table 310.15(B)(16) (2017; 310.16 from 2020); of single conductors in free air of table 310.15(B)(17) (2017;
//! 310.17), from memory; corrected by the temperature around them, what a roof adds, and their number. Terminals by 110.14(C), overcurrent
//! devices by 240.4(B) and (D), from memory. Leads lie as warm as the cells above them.

use crate::facts::Thin;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, kit_silent, not_stated, not_wired, of_circuit};
use crate::{Authority, Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::{FindingKey, KitWiring, LiesIn, Quantity, Required, Resolved, Subject};
use chalkcourse_wiring::cite::{CONDUCTOR_CURRENT, PROTECTED, Section, TERMINALS};
use chalkcourse_wiring::conductors::{Short, least_gauge};
use chalkcourse_wiring::runs::{Part, Stretch, stretches};
use std::borrow::Cow;

pub(crate) const RULE: Rule = Rule {
    code: "conductor-size",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 30.0, 20.0, 14.0]),
        Stroke::Edge(&[[32.0, 37.0], [60.0, 37.0], [60.0, 10.0]]),
        Stroke::Wrong([57.0, 18.0, 6.0, 12.0]),
    ],
    source: |job| Authority::Source(CONDUCTOR_CURRENT.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_wired(job).or_else(|| gaps(job)).or_else(|| {
        let legs = || boxes(job).flat_map(|junction| &junction.legs);
        let attic = legs().any(|leg| leg.lies == LiesIn::Attic);
        let elsewhere = legs().any(|leg| leg.lies != LiesIn::Attic);
        let mut asked = vec![Unknown::HottestCell];
        asked.extend(elsewhere.then_some(Unknown::HighestTemperature));
        asked.extend(attic.then_some(Unknown::AtticTemperature));
        not_stated(job, &asked)
    })
}

type Says = fn(&KitWiring) -> bool;

const LEADS: (KitGap, Says) = (KitGap::LeadGauge, |wiring| wiring.leads.gauge.is_some());
const HOME_RUN: (KitGap, Says) = (KitGap::HomeRun, |wiring| wiring.home_run.is_some());
const RUN_DOWN: (KitGap, Says) = (KitGap::RunDown, |wiring| wiring.run_down.is_some());

/// What the kit does not say of the conductors that the job has.
pub(crate) fn gaps(job: &Resolved) -> Option<WhyNot> {
    if boxes(job).any(|junction| !junction.legs.is_empty()) {
        return kit_silent(job, [LEADS, HOME_RUN, RUN_DOWN]);
    }
    if boxes(job).next().is_some() {
        return kit_silent(job, [LEADS, HOME_RUN]);
    }
    kit_silent(job, [LEADS])
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for circuit in &view.wires().circuits {
        let mut told: Vec<&str> = Vec::new();
        for stretch in stretches(job, view.wires(), circuit) {
            let Some(short) = stretch.run.falls_short(stretch.gauge) else { continue };
            let matter = matter(stretch.part);
            // Of several legs the first that is too thin.
            if told.contains(&matter) {
                continue;
            }
            told.push(matter);
            let (how, measured, required, section) = amounts(&stretch, short);
            let least = least_gauge(&stretch.run);
            let facts = Facts::ConductorThin { part: stretch.part, gauge: stretch.gauge, least, how };
            let finding = of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts);
            let subject = Subject::OfCircuit(circuit.id, Cow::Borrowed(matter));
            findings.push(Finding {
                key: FindingKey::new(RULE.code, subject),
                measured,
                required,
                source: Authority::Source(section.of(job.wiring.edition)),
                ..finding
            });
        }
    }
}

fn matter(part: Part) -> &'static str {
    match part {
        Part::Leads => "leads",
        Part::HomeRun => "home-run",
        Part::Leg(_) => "way-down",
    }
}

fn amounts(stretch: &Stretch, short: Short) -> (Thin, Quantity, Required, Section) {
    let (amps, run) = (Quantity::Amps, &stretch.run);
    match short {
        Short::Carried(carried) => {
            (Thin::Carried, amps(carried), Required::AtLeast(amps(run.most_amps)), CONDUCTOR_CURRENT)
        }
        Short::Terminals(taken) => {
            (Thin::Terminals, amps(taken), Required::AtLeast(amps(run.continuous_amps)), TERMINALS)
        }
        Short::Protected(most) => {
            let device = run.breaker.unwrap_or_default();
            let most = Required::AtMost(amps(f64::from(most)));
            (Thin::Protected, amps(f64::from(device)), most, PROTECTED)
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::facts::Thin;
    use crate::testing::{boxed, kit, of, one, why_not, wired};
    use crate::{Facts, KitGap, Unknown, WhyNot};
    use chalkcourse_job::{Gauge, Quantity, Required, builtin_kits};
    use std::sync::Arc;

    /// 17.375 A in leads at 77 °C: 10 AWG carries 55 × 0.41 = 22.55 A in free air, 12 AWG 40 × 0.41 = 16.4 A.
    #[test]
    fn leads_under_the_array() {
        let mut job = wired();
        assert!(of(&job, "conductor-size").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().leads.gauge = Some(Gauge::Awg12);
        let found = one(&job, "conductor-size");
        let Quantity::Amps(amps) = found.measured else { panic!() };
        assert!((amps - 16.4).abs() < 1e-9);
        assert_eq!(found.required, Required::AtLeast(Quantity::Amps(17.375)));
        assert_eq!(found.key.to_string(), "conductor-size/circuit-8/leads");
        let Facts::ConductorThin { least, how, .. } = found.facts else { panic!() };
        assert_eq!((least, how), (Some(Gauge::Awg10), Thin::Carried));
        Arc::make_mut(&mut job.wiring).hottest_cell_celsius = None;
        assert_eq!(why_not(&job, "conductor-size"), Some(WhyNot::NotKnown(vec![Unknown::HottestCell])));
    }

    /// On a wall at 34 °C 12 AWG carries 30 × 0.96 = 28.8 A, and its terminals of 75 °C 25 A ≥ 21.7 A; of 60 °C 20 A. On the roof at 67 °C it
    /// carries 17.4 A, just enough for 17.375 A; one of 14 AWG 14.5 A.
    #[test]
    fn the_way_down() {
        let mut job = boxed();
        assert!(of(&job, "conductor-size").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().run_down.as_mut().unwrap().gauge = Gauge::Awg12;
        assert!(of(&job, "conductor-size").is_empty());
        let mut cool = job.clone();
        kit(&mut cool).wiring.as_mut().unwrap().run_down.as_mut().unwrap().terminals_celsius = 60;
        let Facts::ConductorThin { how, .. } = one(&cool, "conductor-size").facts else { panic!() };
        assert_eq!(how, Thin::Terminals);
        kit(&mut job).wiring.as_mut().unwrap().run_down.as_mut().unwrap().gauge = Gauge::Awg14;
        assert_eq!(one(&job, "conductor-size").key.to_string(), "conductor-size/circuit-8/way-down");
        kit(&mut job).wiring.as_mut().unwrap().run_down = None;
        assert_eq!(why_not(&job, "conductor-size"), Some(WhyNot::KitSilent(vec![KitGap::RunDown])));
    }

    /// A branch of six: 7.26 A on 20 A. A trunk of 14 AWG carries 25 × 0.41 = 10.25 A, and is protected by 15 A at most.
    #[test]
    fn a_trunk_and_its_breaker() {
        let mut job = wired();
        job.kit = builtin_kits()[1].clone();
        assert!(of(&job, "conductor-size").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().leads.gauge = Some(Gauge::Awg14);
        let found = one(&job, "conductor-size");
        assert_eq!(
            (found.measured, &found.required),
            (Quantity::Amps(20.0), &Required::AtMost(Quantity::Amps(15.0)))
        );
    }
}
