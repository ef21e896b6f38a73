//! Two blocks on one face leave room for the flashing of both.
//!
//! Source: the kit's own clearance between blocks. A caution: a crew may find another way to flash a narrow gap.

use super::moves::MustMove;
use super::of_kit;
use super::overlap::{move_off, pair_key, pairs, place_on, rows_near, which_moves};
use crate::case::{Case, Laid};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, to_rect};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, length, sentence, too_short};
use chalkcourse_geometry::Length;
use chalkcourse_job::Cell;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "between-blocks",
    title: say(
        "Blocks leave room for each other's flashing",
        "Los bloques dejan lugar para los tapajuntas del otro",
    ),
    reason: say(
        "Side flashing of two blocks must not overlap, and someone must be able to mend it.",
        "Los tapajuntas laterales de dos bloques no deben encimarse, y alguien debe poder repararlos.",
    ),
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
    source: of_kit,
    missing: |job| {
        (job.kit.clearances.between_blocks <= Length::ZERO).then(|| {
            pick("the kit asks no room between blocks", "el kit no pide espacio entre bloques").into()
        })
    },
    run: Run::face(run),
};

fn run(case: &Case<'_>, face: usize, findings: &mut Vec<Finding>) {
    let room = case.job.kit.clearances.between_blocks.metres();
    for (one, two) in pairs(case, face, room) {
        let (moving, other) = which_moves(one, two);
        let (cells, nearest) = near(moving, other, room - TOLERANCE);
        // Blocks that lie on each other are told by another rule.
        if cells.is_empty() || overlaps(moving, other) {
            continue;
        }
        let Some(by) = move_off(moving, other, room, case) else { continue };
        let (measured, required) = (too_short(nearest, case.units), length(room, case.units));
        let found = MustMove {
            code: RULE.code,
            severity: Severity::Caution,
            key: pair_key(RULE.code, one, two),
            says: tell!(
                "{} is {measured} from {}; the kit asks {required} for the flashing of both",
                "{} está a {measured} de {}; el kit pide {required} para los tapajuntas de ambos",
                sentence(&block_name(moving.block)),
                block_name(other.block),
            ),
            named: true,
            measured,
            required: tell!("at least {required}", "al menos {required}"),
            source: RULE.source(case.job),
            place: place_on(moving, other, cells),
            moving,
            by,
        };
        findings.push(found.finding(case));
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
