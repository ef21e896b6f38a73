//! What comes through the roof comes through a face of it.
//!
//! Source: geometry; a penetration beside all faces is measured against nothing.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_layout::PlacedPenetration;

pub(crate) const RULE: Rule = Rule {
    code: "no-home",
    title: "Penetrations lie on a face",
    reason: "No module keeps clear of what lies beside the roof: it was put in the wrong place, or a face is missing.",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [68.0, 8.0], [68.0, 52.0], [8.0, 52.0]]),
        Stroke::Pipe([84.0, 30.0, 4.0]),
        Stroke::Way([78.0, 30.0], [62.0, 30.0]),
    ],
    source: |_| "geometry: it is measured against nothing".into(),
    missing: nothing_missing,
    run: Run::Penetration(run),
};

fn run(case: &Case<'_>, penetration: &PlacedPenetration, findings: &mut Vec<Finding>) {
    if penetration.home.is_none() {
        let what = if penetration.name.trim().is_empty() {
            format!("{} {}", penetration.kind.name(), penetration.id)
        } else {
            format!("the {} “{}”", penetration.kind.name(), penetration.name)
        };
        findings.push(Finding {
            message: format!(
                "{} has its middle on no sound face, so nothing keeps clear of it. Move it onto a face, or draw the face that it \
                 comes through.",
                sentence(&what)
            ),
            place: Place {
                penetration: Some(penetration.id),
                shape: penetration.plan.outer.clone(),
                ..Place::default()
            },
            measured: "on no face".into(),
            required: "on a face".into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Caution, format!("no-home/penetration-{}", penetration.id))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one, vent};

    #[test]
    fn on_a_face_and_beside_all() {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 11.9, 5.9)];
        assert!(of(&job, "no-home").is_empty());
        job.penetrations = vec![vent(5, 12.1, 5.9)];
        assert_eq!(one(&job, "no-home").key, "no-home/penetration-5");
    }
}
