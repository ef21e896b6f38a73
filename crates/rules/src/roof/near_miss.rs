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
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "near-miss",
    title: say("Edges that all but meet, meet", "Los bordes que casi se juntan, se juntan"),
    reason: say(
        "Two edges a hand apart are counted as two, and the ridge or valley between them is lost.",
        "Dos bordes a un palmo cuentan como dos, y la cumbrera o limahoya entre ellos se pierde.",
    ),
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [46.0, 8.0], [46.0, 52.0], [8.0, 52.0]]),
        Stroke::Roof(&[[54.0, 8.0], [92.0, 8.0], [92.0, 52.0], [54.0, 52.0]]),
        Stroke::Measure([46.0, 30.0], [54.0, 30.0]),
    ],
    source: |_| {
        pick(
            "geometry: sides beside each other within 150 mm were meant to be one",
            "geometría: lados a menos de 150 mm uno de otro debían ser uno solo",
        )
        .into()
    },
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
            message: tell!("An edge of {} runs {measured} beside an edge of {} and does not meet it. Move the corners of one onto the \
                 other; if the gap is meant, waive this.", "Un borde de {} corre a {measured} de un borde de {} y no se junta con él. Mueva las esquinas de \
        uno sobre el otro; si el espacio es a propósito, dispense esto.",
                case.face_name(face),
                case.face_name(other),
            ),
            place: Place {
                face: case.face_id(face),
                shape: list.iter().flat_map(|miss| [miss.3.0, miss.3.1]).collect(),
                ..Place::default()
            },
            measured: sentence(&tell!("{measured} apart", "{measured} de separación")),
            required: pick("one edge, or two that lie well apart", "un solo borde, o dos bien separados").into(),
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
