//! A face with a block is at least as steep as the kit requires.
//!
//! Source: the kit; the demo kit's 4:12 is common practice, no source. Slow water backs up under flashing that is lapped like
//! shingles.

use crate::by_limit::place_of;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_job::{Quantity, Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "pitch",
    sketch: &[
        Stroke::Edge(&[[8.0, 10.0], [88.0, 24.0]]),
        Stroke::Limit(&[[8.0, 10.0], [88.0, 50.0]]),
        Stroke::Measure([88.0, 24.0], [88.0, 50.0]),
        Stroke::Edge(&[[8.0, 10.0], [88.0, 10.0]]),
    ],
    source: |_| Authority::Kit,
    missing: nothing_missing,
    run: Run::Block(run),
};

/// Tolerance on rise over run: less than a tenth of a millimetre over a rafter of 6 m.
const SLACK: f64 = 2e-5;

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let (laid, least) = (view.laid, view.kit().least_pitch);
    let pitch = laid.face.plane.pitch;
    if pitch.slope() < least.slope() - SLACK {
        findings.push(Finding {
            measured: Quantity::Pitch(pitch),
            required: Required::AtLeast(Quantity::Pitch(least)),
            source: Authority::Kit,
            place: place_of(laid, Vec::new(), laid.face.plan.outer.clone()),
            ..Finding::of(RULE.code, Severity::Stop, Subject::OnFace(laid.block.id, laid.on.id), Facts::Pitch)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{all, block, face, gable_job, of, one};
    use chalkcourse_job::Quantity;

    #[test]
    fn below_at_and_above_the_least_pitch() {
        let mut job = gable_job();
        let mut with = |rise: f64| {
            job.faces =
                vec![face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], rise, 180.0, 3.0)];
            job.clone()
        };
        assert!(of(&with(5.0), "pitch").is_empty());
        assert!(of(&with(4.0), "pitch").is_empty());
        let low = one(&with(3.9), "pitch");
        let Quantity::Pitch(pitch) = low.measured else { panic!("{low:#?}") };
        assert!((pitch.rise_in_12() - 3.9).abs() < 1e-9);
    }

    /// A 2:12 roof with a block well inside its setbacks fails on pitch alone.
    #[test]
    fn a_low_barn_is_refused_for_its_pitch_alone() {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 2.0, 180.0, 3.0),
            face(2, "North", &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 2.0, 0.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, (3.0, 1.0), 2, 3)];
        let stops: Vec<_> = all(&job).into_iter().filter(|f| f.severity == crate::Severity::Stop).collect();
        assert_eq!(stops.iter().map(|f| f.rule).collect::<Vec<_>>(), ["pitch"]);
    }
}
