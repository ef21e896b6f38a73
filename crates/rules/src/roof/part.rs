//! Every part of the house carries a roof.
//!
//! Source: geometry; an edit that makes a footprint over which no roof closes is refused, so that only a file made elsewhere
//! or by an older program comes here.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use chalkcourse_job::PartTrouble;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "part",
    title: say("Every part of the house carries a roof", "Cada parte de la casa lleva un techo"),
    reason: say(
        "A part that can't be raised has no faces: nothing on it is counted.",
        "Una parte que no se puede levantar no tiene faldones: nada de ella se cuenta.",
    ),
    sketch: &[
        Stroke::Edge(&[[24.0, 6.0], [24.0, 32.0]]),
        Stroke::Edge(&[[76.0, 6.0], [76.0, 32.0]]),
        Stroke::Edge(&[[6.0, 6.0], [94.0, 6.0]]),
        Stroke::Limit(&[[18.0, 29.0], [50.0, 54.0], [82.0, 29.0]]),
    ],
    source: |_| {
        pick(
            "geometry: no roof closes over this footprint",
            "geometría: ningún techo cierra sobre esta huella",
        )
        .into()
    },
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    for problem in case.job.worked_out.problems() {
        let Some(part) = case.job.part(problem.part) else { continue };
        let name = if part.name.trim().is_empty() {
            tell!("Part {}", "La parte {}", part.id)
        } else {
            tell!("Part \u{201c}{}\u{201d}", "La parte \u{201c}{}\u{201d}", part.name)
        };
        let (message, measured, severity) = match &problem.trouble {
            PartTrouble::NotRaised(error) => (
                tell!(
                    "{name} carries no roof: {error}. Nothing on it is counted until then.",
                    "{name} no lleva techo: {error}. Hasta entonces nada de ella se cuenta."
                ),
                pick("no roof", "sin techo"),
                Severity::Stop,
            ),
            PartTrouble::Hidden => (
                tell!(
                    "{name} lies under other parts, so nothing of it is seen. Raise its eaves, or take it away.",
                    "{name} queda debajo de otras partes, así que no se ve nada de ella. Suba sus aleros, o quítela."
                ),
                pick("no roof that is seen", "ningún techo visible"),
                Severity::Caution,
            ),
            PartTrouble::NoCricket => (
                tell!(
                    "{name} has no side that looks up a slope, so no cricket stands there. Move it off the ridge, or do without \
                     a cricket.",
                    "{name} no tiene ningún lado que mire pendiente arriba, así que ahí no cabe un desviador. Quítela \
        de la cumbrera, o prescinda del desviador."
                ),
                pick("no cricket", "sin desviador"),
                Severity::Caution,
            ),
        };
        findings.push(Finding {
            message,
            place: Place { shape: part.outline.outer.clone(), ..Place::default() },
            measured: measured.into(),
            required: pick("a roof over all of its ground", "un techo sobre todo su suelo").into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, severity, format!("part/{}", part.id))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use chalkcourse_geometry::raise::Treatment;
    use chalkcourse_geometry::{Length, Pitch, Polygon, dvec2};
    use chalkcourse_job::{Edit, PartId, PartKind, RoofPart, apply, job_from_text, job_to_text};
    use std::path::Path;

    #[test]
    fn a_part_with_a_roof_and_one_from_a_file_that_has_none() {
        let outline = Polygon::new(
            [(30.0, 0.0), (38.0, 0.0), (38.0, 6.0), (30.0, 6.0)].map(|(x, y)| dvec2(x, y)).to_vec(),
        );
        let slope = Treatment::Slope(Pitch::from_rise_in_12(6.0).unwrap());
        let id = PartId(40);
        let (name, eave) = ("Barn".to_owned(), Length::from_metres(3.0));
        let part = RoofPart::new(id, name, PartKind::Main, outline, eave, slope, Length::ZERO);
        let job = apply(&gable_job(), &Edit::PutPart(part)).unwrap();
        assert!(of(&job, "part").is_empty());
        // A file with gables all around, as a slip of the hand in an editor makes it.
        let mut wrong = job;
        for side in wrong.parts.iter_mut().flat_map(|part| &mut part.sides).flatten() {
            side.treatment = Treatment::Gable;
        }
        let text = job_to_text(&wrong).unwrap();
        let job = job_from_text(&text, Path::new("barn")).unwrap();
        let finding = one(&job, "part");
        assert!(
            finding.message.contains("Barn") && finding.message.contains("side 1"),
            "{}",
            finding.message
        );
        assert_eq!(job.resting.len(), 4, "its faces wait");
    }
}
