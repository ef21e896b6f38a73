//! What comes through the roof comes through a face of it.
//!
//! Source: geometry; a penetration beside all faces is measured against nothing.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "no-home",
    title: say("Penetrations lie on a face", "Las penetraciones están sobre un faldón"),
    reason: say(
        "No module keeps clear of what lies beside the roof: it was put in the wrong place, or a face is missing.",
        "Ningún módulo se aparta de lo que está fuera del techo: se puso en mal lugar, o falta un faldón.",
    ),
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [68.0, 8.0], [68.0, 52.0], [8.0, 52.0]]),
        Stroke::Pipe([84.0, 30.0, 4.0]),
        Stroke::Way([78.0, 30.0], [62.0, 30.0]),
    ],
    source: |_| {
        pick("geometry: it is measured against nothing", "geometría: no hay contra qué medirla").into()
    },
    missing: nothing_missing,
    run: Run::Penetration(run),
};

fn run(case: &Case<'_>, penetration: &PlacedPenetration, findings: &mut Vec<Finding>) {
    if penetration.home.is_none() {
        let what = if penetration.name.trim().is_empty() {
            format!("{} {}", penetration.kind.name(), penetration.id)
        } else {
            format!("{} “{}”", penetration.kind.with_article(), penetration.name)
        };
        findings.push(Finding {
            message: tell!("{} has its middle on no sound face, so nothing keeps clear of it. Move it onto a face, or draw the face that it \
                 comes through.", "El centro de {} no está en ningún faldón válido, así que nada se aparta de ella. Muévala a un \
        faldón, o dibuje el faldón que atraviesa.",
                sentence(&what)
            ),
            place: Place {
                penetration: Some(penetration.id),
                shape: penetration.plan.outer.clone(),
                ..Place::default()
            },
            measured: pick("on no face", "en ningún faldón").into(),
            required: pick("on a face", "en un faldón").into(),
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
