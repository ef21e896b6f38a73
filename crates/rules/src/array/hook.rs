//! Each module above the lowest row hooks into modules below it, over a share of its lower edge.
//!
//! Source: the rule book; half is common practice, no source. A module hangs in the row below as the lowest row
//! hangs in the base rail: where nothing is below, nothing holds it.

use super::off_face::switch_off;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Candidate, Change, Facts};
use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{Block, Cell, Edit, Kit, Quantity, Required, Subject};
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

/// A share this much too small passes: a tenth of a millimetre on a metre.
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
        candidate: Some(candidate(laid.block, row, &cells, view.kit(), least.value - SLACK)),
        place: Place { face: Some(laid.on.id), block: Some(laid.block.id), cells, penetration: None, shape },
        ..Finding::of(RULE.code, Severity::Stop, subject, facts)
    }
}

/// Shift the row over the one below, or switch on what is missing below, or switch off what hangs free: the first
/// after which the whole row hooks.
fn candidate(block: &Block, row: u32, cells: &[Cell], kit: &Kit, least: f64) -> Candidate {
    let below = row.saturating_sub(1);
    let shifted = block.with_shift(row, block.shift(below));
    let hooks = |block: &Block| row_hooks(block, row, kit, least);
    if shifted != *block && hooks(&shifted) {
        return Candidate { change: Change::ShiftOver(block.id, row), edit: Edit::PutBlock(shifted) };
    }
    let missing: Vec<Cell> = block
        .off
        .iter()
        .copied()
        .filter(|off| off.row == below && cells.iter().any(|cell| over(block, *cell, *off, kit) > 0.0))
        .collect();
    if !missing.is_empty() {
        let mut filled = block.clone();
        filled.off.retain(|cell| !missing.contains(cell));
        if hooks(&filled) {
            let change = Change::SwitchOn(block.id, below, missing.len());
            return Candidate { change, edit: Edit::PutBlock(filled) };
        }
    }
    switch_off(block, cells)
}

/// How far the lower edge of one place lies over the upper edge of another, in metres.
fn over(block: &Block, cell: Cell, below: Cell, kit: &Kit) -> f64 {
    let width = block.module_size(kit).x;
    let apart = (block.corner_of(cell, kit).x - block.corner_of(below, kit).x).abs();
    (width - apart).max(0.0)
}

/// Whether all modules of a row hook enough. The reveals between modules below count, as they do for the layout;
/// leaving them out here only makes an offered change the surer.
fn row_hooks(block: &Block, row: u32, kit: &Kit, least: f64) -> bool {
    let width = block.module_size(kit).x;
    let of_row = |row: u32| {
        let off = &block.off;
        (0..block.columns).map(move |column| Cell { row, column }).filter(move |cell| !off.contains(cell))
    };
    let shift = (block.shift(row) - block.shift(row - 1)).metres();
    of_row(row).all(|cell| {
        // Only the places below the module's two ends can be under it.
        let first = f64::from(cell.column) + (shift / block.spacing(kit).x).floor();
        let from = (first - 2.0).max(0.0) as u32;
        let under =
            (from..block.columns.min(from.saturating_add(5))).map(|column| Cell { row: row - 1, column });
        let hooked: f64 = under.filter(|c| !block.off.contains(c)).map(|c| over(block, cell, c, kit)).sum();
        hooked / width >= least
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, fixed, gable_job, of, one};
    use crate::{Change, Facts};
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
        let job = shifted(0.9);
        let short = one(&job, "hook");
        let Quantity::Share(share) = short.measured else { panic!("{short:#?}") };
        assert_eq!((short.facts.clone(), (share * 100.0).floor()), (Facts::Hook { modules: 1 }, 47.0));
        let change = &short.candidate.as_ref().unwrap().change;
        assert_eq!(*change, Change::ShiftOver(chalkcourse_job::BlockId(3), 1));
        assert_eq!(short.key.to_string(), "hook/block-3/row-2");
        fixed(&job, &short);
    }

    #[test]
    fn a_gap_below_is_switched_on() {
        let mut job = gable_job();
        job.blocks[0].off.insert(Cell { row: 0, column: 1 });
        let short = one(&job, "hook");
        let change = &short.candidate.as_ref().unwrap().change;
        assert_eq!(*change, Change::SwitchOn(chalkcourse_job::BlockId(3), 0, 1));
        assert!(fixed(&job, &short).blocks[0].off.is_empty());
    }

    #[test]
    fn what_can_not_hook_is_switched_off() {
        let mut job = shifted(-0.9);
        job.blocks[0].off.insert(Cell { row: 0, column: 2 });
        job.blocks[0] = job.blocks[0].with_shift(0, Length::from_metres(-0.9));
        book(&mut job).hooked_share.value = 1.0;
        let short = one(&job, "hook");
        fixed(&job, &short);
        // nothing switched off below: a share of all can't be had from a row that is shifted and stays so
        let mut job = shifted(0.0);
        job.blocks[0].off = (0..3).map(|column| Cell { row: 0, column }).collect();
        fixed(&job, &one(&job, "hook"));
    }
}
