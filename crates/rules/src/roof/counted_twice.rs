//! Faces of about the same height do not overlap in plan.
//!
//! Source: geometry; a face 2 m or more above another is another storey and may.

use super::pairs;
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::DrawnView;
use crate::{Authority, Facts};
use chalkcourse_geometry::RoofProblem;
use chalkcourse_job::{Quantity, Required};

pub(crate) const RULE: Rule = Rule {
    code: "counted-twice",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [62.0, 8.0], [62.0, 38.0], [8.0, 38.0]]),
        Stroke::Roof(&[[38.0, 22.0], [92.0, 22.0], [92.0, 52.0], [38.0, 52.0]]),
        Stroke::Wrong([38.0, 22.0, 24.0, 16.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(view: DrawnView<'_>, findings: &mut Vec<Finding>) {
    let overlaps = view.roof().problems.iter().filter_map(|problem| match *problem {
        RoofProblem::Overlap { face, other, area, at } => Some((face, other, (area, at))),
        _ => None,
    });
    for (subject, list) in pairs(view, overlaps) {
        let Some(&(face, other, _)) = list.first() else { continue };
        let area: f64 = list.iter().map(|(.., (area, _))| area).sum();
        findings.push(Finding {
            measured: Quantity::Area(area),
            required: Required::AtMost(Quantity::Area(0.0)),
            place: Location {
                face: Some(face),
                shape: list.iter().map(|(.., (_, at))| *at).collect(),
                ..Location::default()
            },
            ..Finding::of(RULE.code, Severity::Stop, subject, Facts::CountedTwice { face, other })
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use chalkcourse_job::Quantity;

    fn pushed(metres: f64) -> chalkcourse_job::Resolved {
        let mut job = gable_job();
        for corner in &mut job.faces[1].outline.outer {
            corner.y -= metres;
        }
        job
    }

    #[test]
    fn meeting_at_the_tolerance_and_over() {
        assert!(of(&pushed(0.0), "counted-twice").is_empty());
        assert!(of(&pushed(0.009), "counted-twice").is_empty());
        // 12 m × 1 m = 12 m² = 129.2 ft²
        let twice = one(&pushed(1.0), "counted-twice");
        let Quantity::Area(area) = twice.measured else { panic!("{twice:#?}") };
        assert!((area / 0.3048f64.powi(2) - 129.2).abs() < 0.05, "{area}");
    }
}
