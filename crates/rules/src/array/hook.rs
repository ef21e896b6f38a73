//! Each module above the lowest row hooks into modules below it, over a share of its lower edge.
//!
//! Source: the rule book; half is common practice, no source. A module hangs in the row below as the lowest row hangs in the base
//! rail: with nothing below, nothing holds it.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{Cell, Quantity, Required, Subject};
use chalkcourse_layout::PlacedModule;

pub(crate) const RULE: Rule = Rule {
    code: "hook",
    sketch: &[
        SLOPE,
        Stroke::Module([18.0, 12.0, 22.0, 15.0]),
        Stroke::Module([40.0, 12.0, 22.0, 15.0]),
        Stroke::Module([18.0, 27.0, 22.0, 15.0]),
        Stroke::Wrong([64.0, 27.0, 22.0, 15.0]),
        Stroke::Way([75.0, 26.0], [75.0, 13.0]),
    ],
    source: |job| Authority::of(&job.rule_book.hooked_share.source),
    missing: nothing_missing,
    run: Run::Block(run),
};

/// Tolerance on the share: a tenth of a millimetre per metre.
const SLACK: f64 = 1e-4;

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let least = view.book().hooked_share.value;
    let modules = &view.laid.placed.modules;
    let short: Vec<_> = modules.iter().filter(|m| m.cell.row > 0 && m.hooked < least - SLACK).collect();
    for row in short.chunk_by(|a, b| a.cell.row == b.cell.row) {
        let Some(worst) = row.iter().min_by(|a, b| a.hooked.total_cmp(&b.hooked)) else { continue };
        findings.push(finding(view, worst.cell.row, worst.hooked, row));
    }
}

fn finding(view: BlockView<'_>, row: u32, hooked: f64, short: &[&PlacedModule]) -> Finding {
    let (laid, least) = (view.laid, &view.book().hooked_share);
    let cells: Vec<Cell> = short.iter().map(|module| module.cell).collect();
    let plan = |p: DVec2| laid.face.plane.to_plan(p);
    let shape = Rect::around(short.iter().flat_map(|module| module.rect.corners()))
        .map_or_else(Vec::new, |bounds| bounds.corners().map(plan).to_vec());
    let (subject, facts) = (Subject::Row(laid.block.id, row + 1), Facts::Hook { modules: cells.len() });
    Finding {
        measured: Quantity::Share(hooked),
        required: Required::AtLeast(Quantity::Share(least.value)),
        source: Authority::of(&least.source),
        place: Location {
            face: Some(laid.on.id),
            block: Some(laid.block.id),
            cells,
            shape,
            ..Location::default()
        },
        ..Finding::of(RULE.code, Severity::Stop, subject, facts)
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{gable_job, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Quantity;
    use chalkcourse_job::{Cell, Resolved};

    fn shifted(metres: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks[0] = job.blocks[0].with_shift(1, Length::from_metres(metres));
        job
    }

    /// The last module of a row shifted by x hooks by (1.722 − x) / 1.722; half is reached at x = 0.861.
    #[test]
    fn more_than_just_and_less_than_half() {
        assert!(of(&shifted(0.5), "hook").is_empty());
        assert!(of(&shifted(0.861), "hook").is_empty());
        let short = one(&shifted(0.9), "hook");
        let Quantity::Share(share) = short.measured else { panic!("{short:#?}") };
        assert_eq!((short.facts, (share * 100.0).floor()), (Facts::Hook { modules: 1 }, 47.0));
        assert_eq!(short.key.to_string(), "hook/block-3/row-2");
    }

    #[test]
    fn over_a_gap_nothing_holds() {
        let mut job = gable_job();
        job.blocks[0].off.insert(Cell { row: 0, column: 1 });
        let short = one(&job, "hook");
        assert_eq!(short.place.cells, [Cell { row: 1, column: 1 }]);
        job.blocks[0].off = (0..3).map(|column| Cell { row: 0, column }).collect();
        let all = one(&job, "hook");
        assert_eq!((all.facts, all.measured), (Facts::Hook { modules: 3 }, Quantity::Share(0.0)));
    }
}
