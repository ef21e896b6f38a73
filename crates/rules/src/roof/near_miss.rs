//! Sides of two faces that run beside each other and all but meet were meant to meet.
//!
//! Source: geometry; within 10 mm they count as one edge, beyond 150 mm as two.

use super::{grouped, pair};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::{length, sentence};
use chalkcourse_geometry::RoofProblem;

pub(crate) const RULE: Rule = Rule {
    code: "near-miss",
    title: "Edges that all but meet, meet",
    reason: "Two edges a hand apart are counted as two, and the ridge or valley between them is lost.",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [46.0, 8.0], [46.0, 52.0], [8.0, 52.0]]),
        Stroke::Roof(&[[54.0, 8.0], [92.0, 8.0], [92.0, 52.0], [54.0, 52.0]]),
        Stroke::Measure([46.0, 30.0], [54.0, 30.0]),
    ],
    source: |_| "geometry: sides beside each other within 150 mm were meant to be one".into(),
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let misses = case.layout.roof.problems.iter().filter_map(|problem| match *problem {
        RoofProblem::NearMiss { face, other, gap, along } => {
            Some((format!("near-miss/{}", pair(case, face, other)), (face, other, gap, along)))
        }
        _ => None,
    });
    for (key, list) in grouped(misses.collect()) {
        let Some(&(face, other, gap, _)) = list.iter().max_by(|a, b| a.2.total_cmp(&b.2)) else { continue };
        let measured = length(gap, case.units);
        findings.push(Finding {
            message: format!(
                "An edge of {} runs {measured} beside an edge of {} and does not meet it. Move the corners of one onto the \
                 other; if the gap is meant, waive this.",
                case.face_name(face),
                case.face_name(other),
            ),
            place: Place {
                face: case.face_id(face),
                shape: list.iter().flat_map(|miss| [miss.3.0, miss.3.1]).collect(),
                ..Place::default()
            },
            measured: sentence(&format!("{measured} apart")),
            required: "one edge, or two that lie well apart".into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Caution, key)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};

    fn apart(mm: f64) -> chalkcourse_job::Job {
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
        assert!(miss.message.contains("2 3/8\" beside"), "{}", miss.message);
        assert!(of(&apart(151.0), "near-miss").is_empty());
    }
}
