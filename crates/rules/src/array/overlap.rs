//! No module overlaps another.
//!
//! Source: geometry. Compares the blocks of a face with each other, and the modules of a row with the one before: a shift within
//! the row may be to the left. Rows can't overlap: a block's reveal is never below zero.

use crate::by_limit::{TooNear, place_of};
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{FaceView, LaidBlock};
use crate::{Authority, Facts};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Cell, Required, Subject};
use chalkcourse_limits::{Against, TOLERANCE};

pub(crate) const RULE: Rule = Rule {
    code: "overlap",
    sketch: &[SLOPE, Stroke::Module([22.0, 16.0, 30.0, 20.0]), Stroke::Wrong([44.0, 26.0, 30.0, 20.0])],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Face(run),
};

fn run(view: FaceView<'_>, findings: &mut Vec<Finding>) {
    findings.extend(view.laid().filter_map(within));
    for_pairs(view, RULE.code, |moving, other, near| {
        let facts = Facts::Overlap { block: moving.block.id, other: other.block.id };
        findings.push(Finding {
            place: place_on(other, &near, moving),
            ..near.finding(view.block(moving), Severity::Stop, facts)
        });
    });
}

/// Modules of a block that a shift to the left puts on or past the one before them in their row: what such a row takes in parts
/// can't be counted.
fn within(laid: &LaidBlock<'_>) -> Option<Finding> {
    let pairs = laid.placed.modules.windows(2).filter_map(|pair| match pair {
        [before, after] if before.cell.row == after.cell.row => {
            let over = before.rect.max.x - after.rect.min.x;
            (over > TOLERANCE).then(|| (after.cell, over.min(after.rect.size().x)))
        }
        _ => None,
    });
    let (cells, over): (Vec<Cell>, Vec<f64>) = pairs.unzip();
    let most = over.into_iter().reduce(f64::max)?;
    let facts = Facts::OverlapWithin { modules: cells.len() };
    Some(Finding {
        measured: length(most),
        required: Required::AtMost(length(0.0)),
        place: place_of(laid, cells, Vec::new()),
        ..Finding::of(RULE.code, Severity::Stop, Subject::OnFace(laid.block.id, laid.on.id), facts)
    })
}

/// Pairs of blocks on a face where the one to move is too near the other, by the limit of that rule.
pub(super) fn for_pairs<'s>(
    view: FaceView<'s>,
    code: &str,
    mut near: impl FnMut(&'s LaidBlock<'s>, &'s LaidBlock<'s>, TooNear<'_>),
) {
    let mut blocks: Vec<&LaidBlock<'_>> = view.laid().collect();
    if blocks.len() < 2 {
        return;
    }
    let keep_outs = view.keep_outs(code);
    let around =
        |laid: &LaidBlock<'_>| keep_outs.iter().find(|it| it.against == Against::Block(laid.block.id));
    let reach = keep_outs.iter().map(|keep_out| keep_out.reach).fold(0.0, f64::max);
    // Left to right, so that distant blocks are not compared.
    blocks.sort_by(|a, b| a.bounds.min.x.total_cmp(&b.bounds.min.x).then(a.block.id.cmp(&b.block.id)));
    for (index, one) in blocks.iter().enumerate() {
        let beside =
            blocks.iter().skip(index + 1).take_while(|two| two.bounds.min.x <= one.bounds.max.x + reach);
        for two in beside.filter(|two| one.bounds.distance(&two.bounds) <= reach) {
            let (moving, other) = which_moves(one, two);
            if let Some(found) = around(other).and_then(|keep_out| TooNear::of(moving, keep_out)) {
                near(moving, other, found);
            }
        }
    }
}

/// The one placed later moves, unless it is locked and the other is not.
fn which_moves<'s>(one: &'s LaidBlock<'s>, two: &'s LaidBlock<'s>) -> (&'s LaidBlock<'s>, &'s LaidBlock<'s>) {
    let (early, late) = if one.block.id < two.block.id { (one, two) } else { (two, one) };
    if late.block.locked && !early.block.locked { (early, late) } else { (late, early) }
}

/// Where one block is in the way of another: its bounding box.
pub(super) fn place_on(other: &LaidBlock<'_>, near: &TooNear<'_>, moving: &LaidBlock<'_>) -> Location {
    let plan = |p: DVec2| other.face.plane.to_plan(p);
    place_of(moving, near.cells.clone(), other.bounds.corners().map(plan).to_vec())
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{MODULE, block, gable_job, measures, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{BlockId, Cell, Resolved, RowShift};

    fn with_other(u: f64, v: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks.push(block(4, 1, (u, v), 1, 1));
        job
    }

    #[test]
    fn beside_touching_and_over() {
        assert!(of(&with_other(9.0, 1.0), "overlap").is_empty());
        assert!(of(&with_other(8.172, 1.0), "overlap").is_empty());
        let over = one(&with_other(8.172 - 0.0254, 1.0), "overlap");
        measures(&over, 1.0, 0.0);
        assert_eq!(over.facts, Facts::Overlap { block: BlockId(4), other: BlockId(3) });
        assert_eq!(over.key.to_string(), "overlap/block-3/block-4");
    }

    #[test]
    fn the_locked_one_stays() {
        let mut job = with_other(8.0, 1.0);
        job.blocks[1].locked = true;
        let over = one(&job, "overlap");
        assert_eq!(over.facts, Facts::Overlap { block: BlockId(3), other: BlockId(4) });
    }

    #[test]
    fn a_gap_in_a_block_is_free() {
        let mut job = with_other(3.0 + MODULE.x + 0.003, 1.0);
        assert_eq!(of(&job, "overlap").len(), 1);
        job.blocks[0].off.insert(Cell { row: 0, column: 1 });
        assert!(of(&job, "overlap").is_empty());
    }

    /// Modules are 1.722 m long, 3 mm apart.
    #[test]
    fn a_shift_within_a_row_short_of_at_and_beyond_the_reveal() {
        let shifted = |metres: f64| {
            let mut job = gable_job();
            job.blocks[0].shifts = vec![RowShift { row: 1, from: 1, by: Length::from_metres(metres) }];
            job
        };
        assert!(of(&shifted(0.2), "overlap").is_empty());
        assert!(of(&shifted(-0.003), "overlap").is_empty());
        let over = one(&shifted(-0.003 - 0.0254), "overlap");
        measures(&over, 1.0, 0.0);
        assert_eq!(over.facts, Facts::OverlapWithin { modules: 1 });
        assert_eq!(over.key.to_string(), "overlap/block-3/face-1");
        assert_eq!(over.place.cells, [Cell { row: 1, column: 1 }]);
        assert_eq!(of(&shifted(-9.0), "overlap").len(), 1, "past the one before it");
    }

    #[test]
    fn rows_of_one_block_may_shift() {
        let mut job = gable_job();
        job.blocks[0] = job.blocks[0].with_shift(1, Length::from_metres(0.3));
        assert!(of(&job, "overlap").is_empty());
    }
}
