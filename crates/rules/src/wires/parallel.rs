//! Strings of bare modules on one input have as many modules each.
//!
//! Source: common practice, no source: a shorter string, or one that faces another way, pulls the others off their working point and
//! may be fed by them.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_bare, of_circuit};
use crate::{Authority, Facts};
use chalkcourse_job::{InverterInput, Quantity, Required};
use chalkcourse_wiring::Wired;
use std::collections::BTreeMap;

pub(crate) const RULE: Rule = Rule {
    code: "parallel-strings",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 32.0, 16.0, 14.0]),
        Stroke::Module([32.0, 32.0, 16.0, 14.0]),
        Stroke::Module([52.0, 32.0, 16.0, 14.0]),
        Stroke::Wrong([12.0, 14.0, 16.0, 14.0]),
        Stroke::Way([28.0, 21.0], [80.0, 30.0]),
    ],
    source: |_| Authority::Practice,
    missing: not_bare,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if not_bare(view.job()).is_some() {
        return;
    }
    let mut first: BTreeMap<InverterInput, &Wired> = BTreeMap::new();
    for circuit in &view.wires().circuits {
        let Some(input) = circuit.input else { continue };
        let one = *first.entry(input).or_insert(circuit);
        let count = |circuit: &Wired| u32::try_from(circuit.devices.len()).unwrap_or(u32::MAX);
        let alike = one.devices.first().zip(circuit.devices.first()).is_none_or(|(a, b)| {
            let faces = &view.layout().roof.faces;
            faces
                .get(a.face)
                .zip(faces.get(b.face))
                .is_none_or(|(a, b)| chalkcourse_wiring::faces_alike(a, b))
        });
        if count(one) != count(circuit) || !alike {
            let facts = Facts::ParallelStrings { other: one.id, faces: !alike };
            let same = Quantity::Count(count(one));
            findings.push(Finding {
                measured: Quantity::Count(count(circuit)),
                required: Required::Between(same, same),
                source: Authority::Practice,
                ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, facts)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{of, one, wired};
    use chalkcourse_job::{CircuitId, Quantity, Resolved};

    fn two(first: usize) -> Resolved {
        let mut job = wired();
        let mut second = job.circuits[0].clone();
        second.id = CircuitId(9);
        second.modules = job.circuits[0].modules.split_off(first);
        job.circuits.push(second);
        job
    }

    #[test]
    fn equal_and_unequal() {
        assert!(of(&two(3), "parallel-strings").is_empty());
        let found = one(&two(2), "parallel-strings");
        assert_eq!(found.measured, Quantity::Count(4));
        assert_eq!(found.facts, Facts::ParallelStrings { other: CircuitId(8), faces: false });
        let mut apart = two(2);
        apart.circuits[1].input.as_mut().unwrap().input = 1;
        assert!(of(&apart, "parallel-strings").is_empty());
    }
}
