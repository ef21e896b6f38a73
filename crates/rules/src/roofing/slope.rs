//! Shingles lie on slopes that shed water.
//!
//! Source: IRC R905.2.2: asphalt shingles on 2:12 or more.

use super::{SLACK, missing, source};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_words::{say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "shingle-slope",
    title: say("Shingles lie on slopes that shed water", "Las tejas están en pendientes que escurren"),
    reason: say(
        "Lapped shingles let water in where it stands or is blown back.",
        "Las tejas solapadas dejan entrar el agua donde se estanca o el viento la empuja.",
    ),
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

fn run(case: &Case<'_>, index: usize, findings: &mut Vec<Finding>) {
    let Some(roofing) = &case.book.roofing else { return };
    let least = roofing.least_pitch.value;
    if let (Some(face), Some(id)) = (case.layout.roof.faces.get(index), case.face_id(index)) {
        let pitch = face.plane.pitch;
        if pitch.slope() >= least.slope() - SLACK {
            return;
        }
        let measured = format!("{:.1}:12", pitch.rise_in_12());
        let required = tell!("at least {:.1}:12", "al menos {:.1}:12", least.rise_in_12());
        findings.push(Finding {
            message: tell!("{} is {measured}; asphalt shingles need {required}. Choose another roof covering there.", "{} tiene {measured}; las tejas asfálticas necesitan {required}. Elija ahí otro recubrimiento.",
                sentence(&case.face_name(index))
            ),
            place: Place { face: Some(id), shape: face.plan.outer.clone(), ..Place::default() },
            measured,
            required,
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Caution, format!("shingle-slope/face-{id}"))
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
