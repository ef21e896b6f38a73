//! No module lies on another one.
//!
//! Source: geometry. Modules of one block can't: a block's reveal is never below zero and rows shift only along
//! themselves. So blocks of one face are held against each other.

use super::near::place_of;
use crate::clear::{Obstacle, Way, least_move, rows_or_bounds};
use crate::finding::{Finding, Place, Severity};
use crate::measure::length;
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{FaceView, Laid};
use crate::{Authority, Candidate, Facts};
use chalkcourse_geometry::{Convex, Rect, Units};
use chalkcourse_job::{Cell, Required, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "overlap",
    sketch: &[SLOPE, Stroke::Module([22.0, 16.0, 30.0, 20.0]), Stroke::Wrong([44.0, 26.0, 30.0, 20.0])],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Face(run),
};

fn run(view: FaceView<'_>, findings: &mut Vec<Finding>) {
    for (one, two) in pairs(view, 0.0) {
        let least = one.bounds.overlap(&two.bounds).min_element();
        if least <= TOLERANCE {
            continue;
        }
        let (moving, other) = which_moves(one, two);
        let (cells, depth) = covered(moving, other);
        if cells.is_empty() {
            continue;
        }
        let facts = Facts::Overlap { block: moving.block.id, other: other.block.id };
        findings.push(Finding {
            measured: length(depth),
            required: Required::AtMost(length(0.0)),
            candidate: move_off(moving, other, 0.0, view.units()),
            place: place_on(moving, other, cells),
            ..Finding::of(RULE.code, Severity::Stop, pair(one, two), facts)
        });
    }
}

/// The same whichever of two blocks comes first.
pub(super) fn pair(one: &Laid<'_>, two: &Laid<'_>) -> Subject {
    Subject::Blocks(one.block.id.min(two.block.id), one.block.id.max(two.block.id))
}

/// Pairs of blocks of a face whose bounds come nearer than `reach`.
pub(super) fn pairs<'s>(view: FaceView<'s>, reach: f64) -> Vec<(&'s Laid<'s>, &'s Laid<'s>)> {
    // From left to right, so that far blocks are not held against each other.
    let mut blocks: Vec<&Laid<'_>> = view.laid().collect();
    blocks.sort_by(|a, b| a.bounds.min.x.total_cmp(&b.bounds.min.x).then(a.block.id.cmp(&b.block.id)));
    let mut pairs = Vec::new();
    for (index, one) in blocks.iter().enumerate() {
        let near =
            blocks.iter().skip(index + 1).take_while(|two| two.bounds.min.x <= one.bounds.max.x + reach);
        pairs.extend(near.filter(|two| one.bounds.distance(&two.bounds) <= reach).map(|two| (*one, *two)));
    }
    pairs
}

/// The one that was placed later moves, unless it is locked and the other is not.
pub(super) fn which_moves<'a>(one: &'a Laid<'a>, two: &'a Laid<'a>) -> (&'a Laid<'a>, &'a Laid<'a>) {
    let (early, late) = if one.block.id < two.block.id { (one, two) } else { (two, one) };
    if late.block.locked && !early.block.locked { (early, late) } else { (late, early) }
}

/// The least move of a block after which it is `reach` away from another.
pub(super) fn move_off(moving: &Laid<'_>, other: &Laid<'_>, reach: f64, units: Units) -> Option<Candidate> {
    let there = rows_or_bounds(&other.rows, moving.rows.len());
    let obstacles: Vec<Obstacle> =
        there.iter().map(|row| Obstacle { piece: Convex::rect(row), reach }).collect();
    least_move(&moving.rows, &obstacles, &Way::ALL, units).map(|by| by.of(moving.block))
}

/// Where one block is in the way of another: the other's bounds.
pub(super) fn place_on(moving: &Laid<'_>, other: &Laid<'_>, cells: Vec<Cell>) -> Place {
    let plan = |p| other.face.plane.to_plan(p);
    place_of(moving, cells, other.bounds.corners().map(plan).to_vec())
}

/// The rows of a block that come within `reach` of a rectangle up the slope. Rows run from the eave up.
pub(super) fn rows_near<'a>(rows: &'a [Rect], rect: &Rect, reach: f64) -> &'a [Rect] {
    let from = rows.partition_point(|row| row.max.y < rect.min.y - reach);
    let rows = rows.get(from..).unwrap_or_default();
    let to = rows.partition_point(|row| row.min.y <= rect.max.y + reach);
    rows.get(..to).unwrap_or_default()
}

/// The modules of one block that lie on another, and how deep the deepest does.
fn covered(moving: &Laid<'_>, other: &Laid<'_>) -> (Vec<Cell>, f64) {
    let mut depth = 0.0f64;
    let mut cells = Vec::new();
    for module in &moving.placed.modules {
        let over = rows_near(&other.rows, &module.rect, 0.0)
            .iter()
            .map(|row| row.overlap(&module.rect).min_element())
            .fold(0.0, f64::max);
        if over > TOLERANCE {
            cells.push(module.cell);
            depth = depth.max(over);
        }
    }
    (cells, depth)
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{MODULE, block, fixed, gable_job, measures, moves, of, one};
    use chalkcourse_job::BlockId;
    use chalkcourse_job::{Cell, Resolved};

    fn with_other(u: f64, v: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks.push(block(4, 1, (u, v), 1, 1));
        job
    }

    #[test]
    fn beside_touching_and_over() {
        assert!(of(&with_other(9.0, 1.0), "overlap").is_empty());
        assert!(of(&with_other(8.172, 1.0), "overlap").is_empty());
        let job = with_other(8.172 - 0.0254, 1.0);
        let over = one(&job, "overlap");
        measures(&over, 1.0, 0.0);
        moves(&over, 1.0, 0.0);
        assert_eq!(over.facts, Facts::Overlap { block: BlockId(4), other: BlockId(3) });
        assert_eq!(over.key.to_string(), "overlap/block-3/block-4");
        fixed(&job, &over);
    }

    #[test]
    fn the_locked_one_stays() {
        let mut job = with_other(8.0, 1.0);
        job.blocks[1].locked = true;
        let over = one(&job, "overlap");
        assert_eq!(over.facts, Facts::Overlap { block: BlockId(3), other: BlockId(4) });
        fixed(&job, &over);
    }

    #[test]
    fn a_gap_in_a_block_is_free() {
        let mut job = with_other(3.0 + MODULE.x + 0.003, 1.0);
        assert_eq!(of(&job, "overlap").len(), 1);
        job.blocks[0].off.insert(Cell { row: 0, column: 1 });
        assert!(of(&job, "overlap").is_empty());
    }

    #[test]
    fn rows_of_one_block_may_shift() {
        let mut job = gable_job();
        job.blocks[0] = job.blocks[0].with_shift(1, chalkcourse_geometry::Length::from_metres(0.3));
        assert!(of(&job, "overlap").is_empty());
    }
}
