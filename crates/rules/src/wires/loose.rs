//! Every module is in a circuit, and every circuit has the modules that it names.
//!
//! Source: geometry; a module in no circuit gives nothing, and its leads stay live.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_wired, of_circuit};
use crate::{Authority, Facts};
use chalkcourse_job::{BlockId, Cell, Quantity, Required, Subject};
use std::collections::BTreeMap;

pub(crate) const RULE: Rule = Rule {
    code: "modules-wired",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Module([40.0, 18.0, 20.0, 24.0]),
        Stroke::Wrong([68.0, 18.0, 20.0, 24.0]),
        Stroke::Way([22.0, 30.0], [50.0, 30.0]),
    ],
    source: |_| Authority::Geometry,
    missing: not_wired,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if not_wired(view.job()).is_some() {
        return;
    }
    let wires = view.wires();
    let count = |modules: usize| Quantity::Count(u32::try_from(modules).unwrap_or(u32::MAX));
    let mut loose: BTreeMap<BlockId, Vec<Cell>> = BTreeMap::new();
    for module in &wires.loose {
        loose.entry(module.block).or_default().push(module.cell);
    }
    for (block, cells) in loose {
        let face = view.job().block(block).map(|block| block.face);
        findings.push(Finding {
            measured: count(cells.len()),
            required: Required::AtMost(Quantity::Count(0)),
            place: Location { face, block: Some(block), cells, ..Location::default() },
            ..Finding::of(RULE.code, Severity::Caution, Subject::Block(block), Facts::NotWired)
        });
    }
    for circuit in wires.circuits.iter().filter(|circuit| !circuit.gone.is_empty()) {
        findings.push(Finding {
            measured: count(circuit.gone.len()),
            required: Required::AtMost(Quantity::Count(0)),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::CircuitGone)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one, why_not, wired};
    use crate::{Facts, WhyNot};
    use chalkcourse_job::{Cell, Quantity};

    #[test]
    fn all_one_left_out_and_one_gone() {
        let mut job = wired();
        assert!(of(&job, "modules-wired").is_empty());
        let last = job.circuits[0].modules.pop().unwrap();
        let found = one(&job, "modules-wired");
        assert_eq!((&found.facts, found.measured), (&Facts::NotWired, Quantity::Count(1)));
        assert_eq!(found.place.cells, [last.cell]);
        job.circuits[0].modules.push(last);
        job.blocks[0].off.insert(Cell { row: 0, column: 0 });
        let found = one(&job, "modules-wired");
        assert_eq!(
            (&found.facts, found.key.to_string().as_str()),
            (&Facts::CircuitGone, "modules-wired/circuit-8")
        );
    }

    #[test]
    fn a_job_without_circuits_is_not_wired_yet() {
        let job = gable_job();
        assert!(of(&job, "modules-wired").is_empty());
        assert_eq!(why_not(&job, "modules-wired"), Some(WhyNot::NotWired));
    }
}
