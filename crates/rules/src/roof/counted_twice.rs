//! No ground lies under two faces of one height.
//!
//! Source: geometry; a face 2 m or more above another is another storey and may.

use super::{grouped, pair};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use chalkcourse_geometry::{RoofProblem, Units};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "counted-twice",
    title: say("No roof is counted twice", "Ningún techo se cuenta dos veces"),
    reason: say(
        "Where two faces lie over the same ground, their area and their shingles are ordered twice.",
        "Donde dos faldones están sobre el mismo suelo, su área y sus tejas se piden dos veces.",
    ),
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [62.0, 8.0], [62.0, 38.0], [8.0, 38.0]]),
        Stroke::Roof(&[[38.0, 22.0], [92.0, 22.0], [92.0, 52.0], [38.0, 52.0]]),
        Stroke::Wrong([38.0, 22.0, 24.0, 16.0]),
    ],
    source: |_| {
        pick(
            "geometry: two decks can't have one place",
            "geometría: dos entablados no pueden tener un mismo lugar",
        )
        .into()
    },
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let overlaps = case.layout.roof.problems.iter().filter_map(|problem| match *problem {
        RoofProblem::Overlap { face, other, area, at } => {
            Some((format!("counted-twice/{}", pair(case, face, other)), (face, other, area, at)))
        }
        _ => None,
    });
    for (key, list) in grouped(overlaps.collect()) {
        let Some(&(face, other, ..)) = list.first() else { continue };
        let area: f64 = list.iter().map(|one| one.2).sum();
        let measured = match case.units {
            Units::FeetInches => format!("{:.1} ft²", area / 0.3048f64.powi(2)),
            Units::Metric => format!("{area:.2} m²"),
        };
        findings.push(Finding {
            message: tell!("{measured} of plan lie under both {} and {}, and are counted twice. Pull one face back to where they meet.", "{measured} de planta están bajo {} y también bajo {}, y se cuentan dos veces. Retire un faldón \
        hasta donde se juntan.",
                case.face_name(face),
                case.face_name(other),
            ),
            place: Place {
                face: case.face_id(face),
                shape: list.iter().map(|one| one.3).collect(),
                ..Place::default()
            },
            measured,
            required: pick("no ground under two faces", "ningún suelo bajo dos faldones").into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Stop, key)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};

    fn pushed(metres: f64) -> chalkcourse_job::Job {
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
        assert!(twice.message.starts_with("129.2 ft² of plan"), "{}", twice.message);
    }
}
