//! Two blocks on one face leave room for the flashing of both.
//!
//! Source: the kit's own clearance between blocks. A caution: a crew may find another way to flash a narrow gap.

use super::overlap::{for_pairs, place_on};
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::FaceView;
use crate::{Authority, Facts};
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
    missing: nothing_missing,
    run: Run::Face(run),
};

fn run(view: FaceView<'_>, findings: &mut Vec<Finding>) {
    for_pairs(view, RULE.code, |moving, other, near| {
        // Overlapping blocks are covered by another rule.
        if near.nearest < -TOLERANCE {
            return;
        }
        let facts = Facts::BetweenBlocks { block: moving.block.id, other: other.block.id };
        findings.push(Finding {
            place: place_on(other, &near, moving),
            ..near.finding(view.block(moving), Severity::Caution, facts)
        });
    });
}

#[cfg(test)]
mod tests {
    use crate::Severity;
    use crate::testing::{all, block, gable_job, kit, measures, of, one};
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
        let near = one(&apart(10.0), "between-blocks");
        assert_eq!(near.severity, Severity::Caution);
        measures(&near, 10.0, 12.0);
    }

    #[test]
    fn overlapping_blocks_are_reported_once() {
        let codes: Vec<_> = all(&apart(-2.0)).iter().map(|f| f.rule).collect();
        assert_eq!(codes, ["overlap"]);
    }
}
