//! Shingles are laid only on slopes that shed water.
//!
//! Source: IRC R905.2.2: asphalt shingles on 2:12 or more.

use super::{SLACK, missing, source};
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::GroundView;
use crate::{Authority, Facts};
use chalkcourse_job::{Quantity, Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "shingle-slope",
    sketch: &[
        Stroke::Edge(&[
            [8.0, 14.0],
            [30.0, 20.0],
            [30.0, 23.0],
            [52.0, 29.0],
            [52.0, 32.0],
            [74.0, 38.0],
            [74.0, 41.0],
            [92.0, 46.0],
        ]),
        Stroke::Limit(&[[8.0, 8.0], [92.0, 8.0]]),
        Stroke::Way([12.0, 28.0], [36.0, 35.0]),
    ],
    source: |job| source(job, |roofing| &roofing.least_pitch.source),
    missing,
    run: Run::Ground(run),
};

fn run(view: GroundView<'_>, findings: &mut Vec<Finding>) {
    let Some(roofing) = &view.book().roofing else { return };
    let (pitch, least, id) = (view.face.plane.pitch, &roofing.least_pitch, view.on.id);
    if pitch.slope() < least.value.slope() - SLACK {
        findings.push(Finding {
            measured: Quantity::Pitch(pitch),
            required: Required::AtLeast(Quantity::Pitch(least.value)),
            source: Authority::of(&least.source),
            place: Location { face: Some(id), shape: view.face.plan.outer.clone(), ..Location::default() },
            ..Finding::of(RULE.code, Severity::Caution, Subject::Face(id), Facts::ShingleSlope)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{face, gable_job, of};

    /// IRC R905.2.2 (2018).
    #[test]
    fn below_at_and_above_2_in_12() {
        for (rise, expect) in [(1.9, 1), (2.0, 0), (2.1, 0)] {
            let mut job = gable_job();
            job.faces =
                vec![face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], rise, 180.0, 3.0)];
            assert_eq!(of(&job, "shingle-slope").len(), expect, "{rise}:12");
        }
    }
}
