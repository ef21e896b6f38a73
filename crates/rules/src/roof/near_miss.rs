//! Sides of two faces that run alongside each other and nearly meet were meant to meet.
//!
//! Source: geometry; within 10 mm they count as one edge, beyond 150 mm as two.

use super::pairs;
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::DrawnView;
use crate::{Authority, Facts};
use chalkcourse_geometry::{RoofProblem, Tolerances};
use chalkcourse_job::Required;

pub(crate) const RULE: Rule = Rule {
    code: "near-miss",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [46.0, 8.0], [46.0, 52.0], [8.0, 52.0]]),
        Stroke::Roof(&[[54.0, 8.0], [92.0, 8.0], [92.0, 52.0], [54.0, 52.0]]),
        Stroke::Measure([46.0, 30.0], [54.0, 30.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(view: DrawnView<'_>, findings: &mut Vec<Finding>) {
    let misses = view.roof().problems.iter().filter_map(|problem| match *problem {
        RoofProblem::NearMiss { face, other, gap, along } => Some((face, other, (gap, along))),
        _ => None,
    });
    for (subject, list) in pairs(view, misses) {
        let Some(&(face, other, (gap, _))) = list.iter().max_by(|a, b| a.2.0.total_cmp(&b.2.0)) else {
            continue;
        };
        findings.push(Finding {
            measured: length(gap),
            required: Required::AtMost(length(Tolerances::default().shared)),
            place: Location {
                face: Some(face),
                shape: list.iter().flat_map(|(.., (_, along))| [along.0, along.1]).collect(),
                ..Location::default()
            },
            ..Finding::of(RULE.code, Severity::Caution, subject, Facts::NearMiss { face, other })
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, inches, of, one};

    fn apart(mm: f64) -> chalkcourse_job::Resolved {
        let mut job = gable_job();
        for corner in &mut job.faces[1].outline.outer {
            corner.y += mm / 1000.0;
        }
        job
    }

    #[test]
    fn one_edge_a_near_miss_and_two_edges() {
        assert!(of(&apart(9.9), "near-miss").is_empty());
        let miss = one(&apart(60.0), "near-miss");
        assert!((inches(miss.measured) - 2.375).abs() < 0.03);
        assert!(of(&apart(151.0), "near-miss").is_empty());
    }
}
