//! Leads and extension leads reach from each module of a circuit to the next.
//!
//! Source: the kit; a lead that is pulled to reach breaks its plug. NEC 690.33 (2017), from memory: plugs of two makes are never mated, so
//! that no other lead makes up for it.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_wired, of_circuit, place};
use crate::{Authority, Facts};
use chalkcourse_geometry::Length;
use chalkcourse_job::{Quantity, Required};
use chalkcourse_wiring::reach;

pub(crate) const RULE: Rule = Rule {
    code: "leads-reach",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Module([68.0, 18.0, 20.0, 24.0]),
        Stroke::Way([22.0, 30.0], [44.0, 30.0]),
        Stroke::Measure([44.0, 30.0], [68.0, 30.0]),
    ],
    source: |_| Authority::Kit,
    missing: not_wired,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let Some(wiring) = &view.kit().wiring else { return };
    for circuit in &view.wires().circuits {
        let short = |link: &&chalkcourse_wiring::Joined| link.leads.is_none();
        let links = circuit.links.iter().filter(short).count();
        let Some(at) = circuit.links.iter().position(|link| link.leads.is_none()) else { continue };
        let way = circuit.links.get(at).and_then(|link| link.way);
        findings.push(Finding {
            measured: way.map_or(Quantity::Unknown, |way| Quantity::Length(Length::from_metres(way))),
            required: Required::AtMost(Quantity::Length(Length::from_metres(reach(&wiring.leads)))),
            source: Authority::Kit,
            place: place(view.layout(), circuit, at..at + 2),
            ..of_circuit(RULE.code, Severity::Stop, view.layout(), circuit, Facts::LeadsShort { links })
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{block, inches, kit, of, one, wired};
    use chalkcourse_job::{BlockId, Cell, ModuleAt, Quantity};

    /// Back and forth at 1.725 m and 1.137 m with leads of 1 m and 1 m less 0.15 m.
    #[test]
    fn reached_and_not() {
        let mut job = wired();
        assert!(of(&job, "leads-reach").is_empty());
        let leads = &mut kit(&mut job).wiring.as_mut().unwrap().leads;
        leads.extensions.clear();
        assert!(of(&job, "leads-reach").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().leads.slack = chalkcourse_geometry::Length::from_metres(0.5);
        let found = one(&job, "leads-reach");
        assert_eq!(found.facts, Facts::LeadsShort { links: 4 });
        assert!((inches(found.measured) * 0.0254 - 1.725).abs() < 1e-9);
        assert_eq!(found.place.cells.len(), 2);
    }

    #[test]
    fn no_way_between_faces_that_do_not_meet() {
        let mut job = wired();
        job.faces[1].height = chalkcourse_geometry::Length::from_metres(9.0);
        job.blocks.push(block(4, 2, (-8.0, 2.0), 1, 1));
        job.circuits[0].modules.push(ModuleAt { block: BlockId(4), cell: Cell { row: 0, column: 0 } });
        let found = one(&job, "leads-reach");
        assert_eq!((found.measured, &found.facts), (Quantity::Unknown, &Facts::LeadsShort { links: 1 }));
    }
}
