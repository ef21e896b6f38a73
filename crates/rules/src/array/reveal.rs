//! The gap between adjacent modules is within the kit's range.
//!
//! Source: the kit; 1/16 in to 1/4 in is common practice, no source. Too small leaves no room for thermal expansion, too large no
//! grip for the seal.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::{Authority, Facts};
use chalkcourse_job::{Quantity, Required, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "reveal",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 33.0, 24.0]),
        Stroke::Module([55.0, 18.0, 33.0, 24.0]),
        Stroke::Measure([45.0, 30.0], [55.0, 30.0]),
    ],
    source: |_| Authority::Kit,
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let range = view.kit().reveal;
    for block in &view.job().blocks {
        let has = block.reveal.metres();
        if (range.least.metres() - TOLERANCE..=range.most.metres() + TOLERANCE).contains(&has) {
            continue;
        }
        findings.push(Finding {
            measured: Quantity::Length(block.reveal),
            required: Required::Between(Quantity::Length(range.least), Quantity::Length(range.most)),
            source: Authority::Kit,
            place: Location { face: Some(block.face), block: Some(block.id), ..Location::default() },
            ..Finding::of(RULE.code, Severity::Stop, Subject::Block(block.id), Facts::Reveal)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Quantity;
    use chalkcourse_job::Resolved;

    fn with(inches: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks[0].reveal = Length::from_inches(inches);
        job
    }

    #[test]
    fn within_at_both_ends_and_outside() {
        for fine in [1.0 / 16.0, 1.0 / 8.0, 1.0 / 4.0] {
            assert!(of(&with(fine), "reveal").is_empty(), "{fine}");
        }
        for wrong in [0.0, 0.5] {
            let found = one(&with(wrong), "reveal");
            assert_eq!(found.measured, Quantity::Length(Length::from_inches(wrong)));
        }
    }
}
