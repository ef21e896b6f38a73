//! Two blocks on one face leave room for the flashing of both.
//!
//! Source: the kit's own clearance between blocks. A caution: a crew may find another way to flash a narrow gap.

use super::of_kit;
use super::overlap::{move_off, pair_key, pairs, place_of, rows_near, which_moves};
use crate::case::{Case, Laid};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, to_rect};
use crate::registry::Rule;
use crate::words::{block_name, length, move_fix, sentence, too_short};
use chalkcourse_geometry::Length;
use chalkcourse_job::Cell;

pub(crate) const RULE: Rule = Rule {
    code: "between-blocks",
    title: "Blocks leave room for each other's flashing",
    reason: "Side flashing of two blocks must not overlap, and someone must be able to mend it.",
    source: of_kit,
    missing: |job| {
        (job.kit.clearances.between_blocks <= Length::ZERO)
            .then(|| "the kit asks no room between blocks".into())
    },
    run,
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let room = case.job.kit.clearances.between_blocks.metres();
    for (one, two) in pairs(case, room) {
        let (moving, other) = which_moves(one, two);
        let (cells, nearest) = near(moving, other, room - TOLERANCE);
        // Blocks that lie on each other are told by another rule.
        if cells.is_empty() || overlaps(moving, other) {
            continue;
        }
        let Some(it) = move_off(moving, other, room, case) else { continue };
        let (measured, required) = (too_short(nearest, case.units), length(room, case.units));
        findings.push(Finding {
            message: format!(
                "{} is {measured} from {}; the kit asks {required} for the flashing of both. Move {} {} {}.",
                sentence(&block_name(moving.block)),
                block_name(other.block),
                block_name(moving.block),
                length(it.by, case.units),
                it.way.name(),
            ),
            place: place_of(moving, other, cells),
            measured,
            required: format!("at least {required}"),
            source: RULE.source(case.job),
            fix: Some(move_fix(moving.block, it, case.units)),
            ..Finding::of(RULE.code, Severity::Caution, pair_key(RULE.code, one, two))
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
    for module in moving.placed.modules.iter().filter(|m| to_rect(&m.rect, &other.bounds) < limit) {
        let away = rows_near(&other.rows, &module.rect, limit)
            .iter()
            .map(|row| to_rect(row, &module.rect))
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
    use crate::testing::{all, block, fixed, gable_job, kit, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Job;

    const INCH: f64 = 0.0254;

    fn apart(inches: f64) -> Job {
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
        assert!(near.message.contains("is 10\" from block 3; the kit asks 12\""), "{}", near.message);
        fixed(&job, &near);
    }

    #[test]
    fn blocks_on_each_other_are_told_once() {
        let codes: Vec<_> = all(&apart(-2.0)).iter().map(|f| f.code).collect();
        assert_eq!(codes, ["overlap"]);
    }
}
