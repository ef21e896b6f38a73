//! Plugs that are mated are of one make and type.
//!
//! Source: NEC 690.33 (2017), from memory. Plugs that fit one another and are of two makes heat up and burn.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_wired, of_circuit};
use crate::{Authority, Facts};
use chalkcourse_wiring::cite::PLUGS;
use chalkcourse_wiring::runs::inverter_of;

pub(crate) const RULE: Rule = Rule {
    code: "plugs-mate",
    sketch: &[
        SLOPE,
        Stroke::Way([12.0, 30.0], [40.0, 30.0]),
        Stroke::Thing([40.0, 26.0, 10.0, 8.0]),
        Stroke::Wrong([50.0, 24.0, 10.0, 12.0]),
        Stroke::Way([88.0, 30.0], [60.0, 30.0]),
    ],
    source: |job| Authority::Source(PLUGS.of(job.wiring.edition)),
    missing: not_wired,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let Some(wiring) = &job.kit.wiring else { return };
    let plug = &wiring.leads.plug;
    for circuit in &view.wires().circuits {
        let used = circuit.links.iter().filter_map(|link| link.leads.as_ref()).flatten();
        let of_leads = used.filter_map(|at| wiring.leads.extensions.get(*at)?.plug.as_ref());
        let of_input = inverter_of(job, circuit).and_then(|inverter| inverter.plug.as_ref());
        let Some(other) = of_leads.chain(of_input).find(|other| *other != plug) else { continue };
        let facts = Facts::PlugsDiffer { plug: plug.clone(), other: other.clone() };
        findings.push(Finding {
            source: RULE.source(job),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{kit, of, one, wired};

    /// Six modules back and forth need no extension lead; without the second they need one between the first and the third.
    #[test]
    fn of_one_make_and_of_two() {
        let mut job = wired();
        for lead in &mut kit(&mut job).wiring.as_mut().unwrap().leads.extensions {
            lead.plug = Some("Other P1".into());
        }
        assert!(of(&job, "plugs-mate").is_empty());
        job.circuits[0].modules.remove(1);
        let differ = Facts::PlugsDiffer { plug: "Fernhollow F4".into(), other: "Other P1".into() };
        assert_eq!(one(&job, "plugs-mate").facts, differ);
        let mut at_input = wired();
        kit(&mut at_input).wiring.as_mut().unwrap().inverters[0].plug = Some("Other P1".into());
        assert_eq!(one(&at_input, "plugs-mate").facts, differ);
        kit(&mut at_input).wiring.as_mut().unwrap().inverters[0].plug = Some("Fernhollow F4".into());
        assert!(of(&at_input, "plugs-mate").is_empty());
    }
}
