//! The gap between neighbouring modules is within what the kit allows.
//!
//! Source: the kit; 1/16 in to 1/4 in is common practice, no source. Too little leaves no room to grow in the sun,
//! too much no grip for the seal.

use super::of_kit;
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, length, sentence, too_much, too_short};
use chalkcourse_job::{Block, Edit};
use chalkcourse_words::{say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "reveal",
    title: say("The reveal is within the kit's range", "La separación está en el rango del kit"),
    reason: say(
        "Modules need room to grow in the sun, and seals a gap that they can close.",
        "Los módulos necesitan lugar para dilatarse al sol, y los sellos un espacio que puedan cerrar.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 33.0, 24.0]),
        Stroke::Module([55.0, 18.0, 33.0, 24.0]),
        Stroke::Measure([45.0, 30.0], [55.0, 30.0]),
    ],
    source: of_kit,
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let range = case.job.kit.reveal;
    let units = case.units;
    for block in &case.job.blocks {
        let (has, least, most) = (block.reveal.metres(), range.least.metres(), range.most.metres());
        let (measured, nearest) = if has < least - TOLERANCE {
            (too_short(has, units), range.least)
        } else if has > most + TOLERANCE {
            (too_much(has, units), range.most)
        } else {
            continue;
        };
        let allowed = tell!("{} to {}", "de {} a {}", length(least, units), length(most, units));
        let set = length(nearest.metres(), units);
        findings.push(Finding {
            message: tell!(
                "The reveal of {} is {measured}; the kit allows {allowed}. Set it to {set}.",
                "La separación de {} es {measured}; el kit permite {allowed}. Póngala en {set}.",
                block_name(block)
            ),
            place: Place { face: Some(block.face), block: Some(block.id), ..Place::default() },
            measured,
            required: allowed,
            source: RULE.source(case.job),
            fix: Some(Fix {
                label: sentence(&tell!(
                    "set the reveal of {} to {set}",
                    "poner la separación de {} en {set}",
                    block_name(block)
                )),
                edit: Edit::PutBlock(Block { reveal: nearest, ..block.clone() }),
            }),
            ..Finding::of(RULE.code, Severity::Stop, format!("reveal/block-{}", block.id))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Job;

    fn with(inches: f64) -> Job {
        let mut job = gable_job();
        job.blocks[0].reveal = Length::from_inches(inches);
        job
    }

    #[test]
    fn within_at_both_ends_and_outside() {
        for fine in [1.0 / 16.0, 1.0 / 8.0, 1.0 / 4.0] {
            assert!(of(&with(fine), "reveal").is_empty(), "{fine}");
        }
        let job = with(0.5);
        let wide = one(&job, "reveal");
        assert_eq!(
            wide.message,
            "The reveal of block 3 is 1/2\"; the kit allows 1/16\" to 1/4\". Set it to 1/4\"."
        );
        assert_eq!(fixed(&job, &wide).blocks[0].reveal, Length::from_inches(0.25));
        let job = with(0.0);
        assert_eq!(fixed(&job, &one(&job, "reveal")).blocks[0].reveal, Length::from_inches(1.0 / 16.0));
    }
}
