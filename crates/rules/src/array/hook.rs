//! Each module above the lowest row hooks into modules below it, over a share of its lower edge.
//!
//! Source: the rule book; half is common practice, no source. A module hangs in the row below as the lowest row
//! hangs in the base rail: where nothing is below, nothing holds it.

use super::off_face::switch_off;
use crate::case::{Case, Laid};
use crate::finding::{Finding, Fix, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, modules, sentence};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Block, Cell, Edit, Kit};
use chalkcourse_layout::PlacedModule;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "hook",
    title: say("Modules hook into the row below", "Los módulos se enganchan en la fila de abajo"),
    reason: say(
        "The row below holds a module; where nothing is below, nothing holds it.",
        "La fila de abajo sostiene un módulo; donde no hay nada debajo, nada lo sostiene.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Module([18.0, 12.0, 22.0, 15.0]),
        Stroke::Module([40.0, 12.0, 22.0, 15.0]),
        Stroke::Module([18.0, 27.0, 22.0, 15.0]),
        Stroke::Wrong([64.0, 27.0, 22.0, 15.0]),
        Stroke::Way([75.0, 26.0], [75.0, 13.0]),
    ],
    source: |job| job.rule_book.hooked_share.source.clone(),
    missing: nothing_missing,
    run: Run::block(run),
};

/// A share this much too small passes: a tenth of a millimetre on a metre.
const SLACK: f64 = 1e-4;

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let least = case.book.hooked_share.value;
    let short: Vec<_> =
        laid.placed.modules.iter().filter(|m| m.cell.row > 0 && m.hooked < least - SLACK).collect();
    for row in short.chunk_by(|a, b| a.cell.row == b.cell.row) {
        let Some(worst) = row.iter().min_by(|a, b| a.hooked.total_cmp(&b.hooked)) else { continue };
        findings.push(finding(case, laid, worst.cell.row, worst.hooked, row));
    }
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, row: u32, hooked: f64, short: &[&PlacedModule]) -> Finding {
    let cells: Vec<Cell> = short.iter().map(|module| module.cell).collect();
    let percent = |share: f64| format!("{:.0} %", (share * 100.0).floor());
    let measured = percent(hooked);
    let required = format!("{:.0} %", (case.book.hooked_share.value * 100.0).ceil());
    let fix = fix(laid.block, row, &cells, &case.job.kit, case.book.hooked_share.value - SLACK);
    let hooks = if cells.len() == 1 {
        pick("1 module hooks", "1 módulo se engancha").to_owned()
    } else {
        tell!("{} hook", "{} se enganchan", modules(cells.len()))
    };
    let plan = |p: DVec2| laid.face.plane.to_plan(p);
    let shape = chalkcourse_geometry::Rect::around(short.iter().flat_map(|module| module.rect.corners()))
        .map_or_else(Vec::new, |bounds| bounds.corners().map(plan).to_vec());
    Finding {
        message: tell!(
            "In row {} of {} {hooks} into the row below by {measured} of the lower edge at the least; the book asks {required}. {}.",
            "En la fila {} de {} {hooks} en la fila de abajo con {measured} del borde inferior como mínimo; el \
        libro pide {required}. {}.",
            row + 1,
            block_name(laid.block),
            fix.label,
        ),
        place: Place { face: Some(laid.on.id), block: Some(laid.block.id), cells, penetration: None, shape },
        measured: tell!("{measured} of the lower edge", "{measured} del borde inferior"),
        required: tell!("at least {required}", "al menos {required}"),
        source: RULE.source(case.job),
        fix: Some(fix),
        ..Finding::of(RULE.code, Severity::Stop, format!("hook/block-{}/row-{}", laid.block.id, row + 1))
    }
}

/// Shift the row over the one below, or switch on what is missing below, or switch off what hangs free: the first
/// after which the whole row hooks.
fn fix(block: &Block, row: u32, cells: &[Cell], kit: &Kit, least: f64) -> Fix {
    let below = row.saturating_sub(1);
    let shifted = block.with_shift(row, block.shift(below));
    let name = block_name(block);
    let hooks = |block: &Block| row_hooks(block, row, kit, least);
    if shifted != *block && hooks(&shifted) {
        let label = sentence(&tell!(
            "shift row {} of {name} over the row below",
            "correr la fila {} de {name} sobre la fila de abajo",
            row + 1
        ));
        return Fix { label, edit: Edit::PutBlock(shifted) };
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
            let label = tell!(
                "Switch on {} in row {} of {name}",
                "Encender {} en la fila {} de {name}",
                modules(missing.len()),
                below + 1
            );
            return Fix { label, edit: Edit::PutBlock(filled) };
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
/// leaving them out here only makes an offered fix the surer.
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
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Cell, Job};

    fn shifted(metres: f64) -> Job {
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
        assert!(short.message.contains("1 module hooks into the row below by 47 %"), "{}", short.message);
        assert!(short.message.contains("Shift row 2 of block 3 over the row below"), "{}", short.message);
        assert_eq!(short.key, "hook/block-3/row-2");
        fixed(&job, &short);
    }

    #[test]
    fn a_gap_below_is_switched_on() {
        let mut job = gable_job();
        job.blocks[0].off.insert(Cell { row: 0, column: 1 });
        let short = one(&job, "hook");
        assert!(short.message.contains("Switch on 1 module in row 1"), "{}", short.message);
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
