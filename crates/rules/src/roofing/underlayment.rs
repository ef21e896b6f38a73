//! Low slopes get double underlayment.
//!
//! Source: IRC R905.2.2 and table R905.1.1(2): double from 2:12 to less than 4:12. A note: it is something to order and to do,
//! not a fault.

use super::{SLACK, missing, source};
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::GroundView;
use crate::{Authority, Facts};
use chalkcourse_job::{Quantity, Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "underlayment",
    sketch: &[
        Stroke::Edge(&[[8.0, 10.0], [92.0, 26.0]]),
        Stroke::Limit(&[[8.0, 16.0], [66.0, 27.0]]),
        Stroke::Limit(&[[34.0, 25.0], [92.0, 36.0]]),
        Stroke::Measure([34.0, 30.0], [66.0, 36.0]),
    ],
    source: |job| source(job, |roofing| &roofing.single_underlayment_from.source),
    missing,
    run: Run::Ground(run),
};

fn run(view: GroundView<'_>, findings: &mut Vec<Finding>) {
    let Some(roofing) = &view.book().roofing else { return };
    let (pitch, single, id) = (view.face.plane.pitch, &roofing.single_underlayment_from, view.on.id);
    let shingled = pitch.slope() >= roofing.least_pitch.value.slope() - SLACK;
    if shingled && pitch.slope() < single.value.slope() - SLACK {
        findings.push(Finding {
            measured: Quantity::Pitch(pitch),
            required: Required::AtLeast(Quantity::Pitch(single.value)),
            source: Authority::of(&single.source),
            place: Location { face: Some(id), shape: view.face.plan.outer.clone(), ..Location::default() },
            ..Finding::of(RULE.code, Severity::Note, Subject::Face(id), Facts::Underlayment)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{face, gable_job, of};

    /// IRC R905.2.2 (2018).
    #[test]
    fn double_from_2_in_12_to_less_than_4_in_12() {
        for (rise, expect) in [(1.9, 0), (2.0, 1), (3.9, 1), (4.0, 0), (6.0, 0)] {
            let mut job = gable_job();
            job.faces =
                vec![face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], rise, 180.0, 3.0)];
            assert_eq!(of(&job, "underlayment").len(), expect, "{rise}:12");
        }
    }
}
