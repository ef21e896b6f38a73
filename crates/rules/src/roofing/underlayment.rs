//! Low slopes have their underlayment laid double.
//!
//! Source: IRC R905.2.2 and table R905.1.1(2): double from 2:12 to less than 4:12. A note: it is something to order and to
//! do, not something that is wrong.

use super::{SLACK, missing, source};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_words::{of_data, pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "underlayment",
    title: say("Low slopes have a double underlayment", "Las pendientes bajas llevan membrana doble"),
    reason: say(
        "Water runs slowly on a low slope and finds its way under shingles.",
        "El agua corre despacio en una pendiente baja y halla por dónde pasar bajo las tejas.",
    ),
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

fn run(case: &Case<'_>, index: usize, findings: &mut Vec<Finding>) {
    let Some(roofing) = &case.book.roofing else { return };
    let single = roofing.single_underlayment_from.value;
    if let (Some(face), Some(id)) = (case.layout.roof.faces.get(index), case.face_id(index)) {
        let pitch = face.plane.pitch;
        let shingled = pitch.slope() >= roofing.least_pitch.value.slope() - SLACK;
        if !shingled || pitch.slope() >= single.slope() - SLACK {
            return;
        }
        findings.push(Finding {
            message: tell!(
                "{} is {:.1}:12, less than {:.1}:12: lay its underlayment double. {}",
                "{} tiene {:.1}:12, menos de {:.1}:12: coloque doble su membrana. {}",
                sentence(&case.face_name(index)),
                pitch.rise_in_12(),
                single.rise_in_12(),
                of_data(&roofing.double_underlayment),
            ),
            place: Place { face: Some(id), shape: face.plan.outer.clone(), ..Place::default() },
            measured: format!("{:.1}:12", pitch.rise_in_12()),
            required: pick("double underlayment", "membrana doble").into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Note, format!("underlayment/face-{id}"))
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
