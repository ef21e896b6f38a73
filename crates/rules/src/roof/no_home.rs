//! Every penetration is on a face.
//!
//! Source: geometry; a penetration off all faces is not measured against anything.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::PenetrationView;
use crate::{Authority, Facts};
use chalkcourse_job::Subject;

pub(crate) const RULE: Rule = Rule {
    code: "no-home",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [68.0, 8.0], [68.0, 52.0], [8.0, 52.0]]),
        Stroke::Pipe([84.0, 30.0, 4.0]),
        Stroke::Way([78.0, 30.0], [62.0, 30.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Penetration(run),
};

fn run(view: PenetrationView<'_>, findings: &mut Vec<Finding>) {
    let penetration = view.penetration;
    if penetration.home.is_none() {
        findings.push(Finding {
            place: Location {
                penetration: Some(penetration.id),
                shape: penetration.plan.outer.clone(),
                ..Location::default()
            },
            ..Finding::of(RULE.code, Severity::Caution, Subject::Penetration(penetration.id), Facts::NoHome)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one, vent};

    #[test]
    fn on_a_face_and_off_all() {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 11.9, 5.9)];
        assert!(of(&job, "no-home").is_empty());
        job.penetrations = vec![vent(5, 12.1, 5.9)];
        assert_eq!(one(&job, "no-home").key.to_string(), "no-home/penetration-5");
    }
}
