//! All modules of a string of bare modules face one way.
//!
//! Source: common practice, no source: the module with the least sun holds the current of the whole string. Devices at the modules let
//! them be mixed.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::wires::{not_bare, of_circuit};
use crate::{Authority, Facts};

pub(crate) const RULE: Rule = Rule {
    code: "string-faces",
    sketch: &[
        Stroke::Edge(&[[8.0, 12.0], [50.0, 50.0], [92.0, 12.0]]),
        Stroke::Module([18.0, 26.0, 18.0, 8.0]),
        Stroke::Wrong([64.0, 26.0, 18.0, 8.0]),
        Stroke::Way([36.0, 34.0], [64.0, 34.0]),
    ],
    source: |_| Authority::Practice,
    missing: not_bare,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if not_bare(view.job()).is_some() {
        return;
    }
    for circuit in view.wires().circuits.iter().filter(|circuit| circuit.mixed) {
        findings.push(Finding {
            source: Authority::Practice,
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::StringFaces)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, of, one, wired};
    use chalkcourse_job::{BlockId, Cell, ModuleAt};

    #[test]
    fn one_way_and_two() {
        let mut job = wired();
        job.blocks.push(block(4, 2, (-8.0, 2.0), 1, 1));
        assert!(of(&job, "string-faces").is_empty());
        job.circuits[0].modules.push(ModuleAt { block: BlockId(4), cell: Cell { row: 0, column: 0 } });
        let found = one(&job, "string-faces");
        assert_eq!((found.place.block, found.place.shape.len()), (None, 7));
        job.kit = chalkcourse_job::builtin_kit();
        assert!(of(&job, "string-faces").is_empty());
    }
}
