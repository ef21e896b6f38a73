//! Two blocks on one face leave room for the flashing of both.
//!
//! Source: the kit's own clearance between blocks. A caution: a crew may find another way to flash a narrow gap.

use super::overlap::{move_off, pair, pairs, place_on, rows_near, which_moves};
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{FaceView, Laid};
use crate::{Authority, Facts, WhyNot};
use chalkcourse_geometry::Length;
use chalkcourse_job::{Cell, Required};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "between-blocks",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 16.0, 18.0, 14.0]),
        Stroke::Module([30.0, 16.0, 18.0, 14.0]),
        Stroke::Module([12.0, 30.0, 18.0, 14.0]),
        Stroke::Module([30.0, 30.0, 18.0, 14.0]),
        Stroke::Limit(&[[60.0, 10.0], [60.0, 50.0]]),
        Stroke::Wrong([54.0, 16.0, 18.0, 14.0]),
        Stroke::Wrong([72.0, 16.0, 18.0, 14.0]),
        Stroke::Measure([48.0, 38.0], [60.0, 38.0]),
    ],
    source: |_| Authority::Kit,
    missing: |job| (job.kit.clearances.between_blocks <= Length::ZERO).then_some(WhyNot::NoRoomBetween),
    run: Run::Face(run),
};

fn run(view: FaceView<'_>, findings: &mut Vec<Finding>) {
    let room = view.kit().clearances.between_blocks.metres();
    for (one, two) in pairs(view, room) {
        let (moving, other) = which_moves(one, two);
        let (cells, nearest) = near(moving, other, room - TOLERANCE);
        // Blocks that lie on each other are told by another rule.
        if cells.is_empty() || overlaps(moving, other) {
            continue;
        }
        let facts = Facts::BetweenBlocks { block: moving.block.id, other: other.block.id };
        findings.push(Finding {
            measured: length(nearest),
            required: Required::AtLeast(length(room)),
            source: Authority::Kit,
            candidate: move_off(moving, other, room, view.units()),
            place: place_on(moving, other, cells),
            ..Finding::of(RULE.code, Severity::Caution, pair(one, two), facts)
        });
    }
}

fn overlaps(moving: &Laid<'_>, other: &Laid<'_>) -> bool {
    moving.rows.iter().any(|row| {
        rows_near(&other.rows, row, 0.0).iter().any(|there| row.overlap(there).min_element() > TOLERANCE)
    })
}

/// The modules of one block that are nearer than `limit` to another, and how near the nearest is.
fn near(moving: &Laid<'_>, other: &Laid<'_>, limit: f64) -> (Vec<Cell>, f64) {
    let mut nearest = f64::INFINITY;
    let mut cells = Vec::new();
    for module in moving.placed.modules.iter().filter(|m| m.rect.distance(&other.bounds) < limit) {
        let away = rows_near(&other.rows, &module.rect, limit)
            .iter()
            .map(|row| row.distance(&module.rect))
            .fold(f64::INFINITY, f64::min);
        if away < limit {
            cells.push(module.cell);
            nearest = nearest.min(away);
        }
    }
    (cells, nearest)
}

#[cfg(test)]
mod tests {
    use crate::Severity;
    use crate::testing::{all, block, fixed, gable_job, kit, measures, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Resolved;

    const INCH: f64 = 0.0254;

    fn apart(inches: f64) -> Resolved {
        let mut job = gable_job();
        kit(&mut job).clearances.between_blocks = Length::from_inches(12.0);
        job.blocks.push(block(4, 1, (8.172 + inches * INCH, 1.0), 1, 1));
        job
    }

    #[test]
    fn short_of_at_and_beyond() {
        assert!(of(&apart(13.0), "between-blocks").is_empty());
        assert!(of(&apart(12.0), "between-blocks").is_empty());
        let job = apart(10.0);
        let near = one(&job, "between-blocks");
        assert_eq!(near.severity, Severity::Caution);
        measures(&near, 10.0, 12.0);
        fixed(&job, &near);
    }

    #[test]
    fn blocks_on_each_other_are_told_once() {
        let codes: Vec<_> = all(&apart(-2.0)).iter().map(|f| f.rule).collect();
        assert_eq!(codes, ["overlap"]);
    }
}
