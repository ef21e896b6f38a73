//! Behind a wide penetration a cricket turns the water aside.
//!
//! Source: IRC R903.2.2 (from memory): on the ridge side of a penetration wider than 30 in, measured square to the slope. A
//! unit skylight that is flashed as its maker says may go without (from memory). Whether an array that is flashed into
//! the roof counts is a question for the official and the listing; it is not asked here.

use super::{missing, source};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{length, sentence};
use chalkcourse_job::PenetrationKind;
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_words::{say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "cricket",
    title: say(
        "Wide penetrations have a cricket behind them",
        "Las penetraciones anchas tienen detrás un desviador de agua",
    ),
    reason: say(
        "Water and snow pile up behind what is wide, and find their way in.",
        "El agua y la nieve se acumulan detrás de lo que es ancho, y hallan por dónde entrar.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Thing([36.0, 14.0, 28.0, 16.0]),
        Stroke::Edge(&[[36.0, 30.0], [50.0, 42.0], [64.0, 30.0]]),
        Stroke::Edge(&[[50.0, 42.0], [50.0, 30.0]]),
        Stroke::Way([30.0, 50.0], [22.0, 26.0]),
        Stroke::Way([70.0, 50.0], [78.0, 26.0]),
        Stroke::Measure([36.0, 11.0], [64.0, 11.0]),
    ],
    source: |job| source(job, |roofing| &roofing.cricket_from.source),
    missing,
    run: Run::Penetration(run),
};

fn run(case: &Case<'_>, penetration: &PlacedPenetration, findings: &mut Vec<Finding>) {
    let Some(roofing) = &case.book.roofing else { return };
    let most = roofing.cricket_from.value.metres();
    if matches!(penetration.kind, PenetrationKind::Skylight | PenetrationKind::EscapeWindow) {
        return;
    }
    let on = penetration.home.and_then(|home| Some((home, penetration.on_face(home)?)));
    if let Some((home, on)) = on
        && on.bounds.size().x > most + TOLERANCE
    {
        let wide = on.bounds.size().x;
        let measured = length(wide, case.units);
        let required = length(most, case.units);
        findings.push(Finding {
            message: tell!("{} “{}” is {measured} wide along the eave, more than {required}: build a cricket or saddle on its ridge side, and \
                 keep the array out of it.", "{} “{}” mide {measured} de ancho a lo largo del alero, más de {required}: construya un desviador \
        de agua del lado de la cumbrera, y no ponga arreglo sobre él.",
                sentence(penetration.kind.with_article()),
                penetration.name
            ),
            place: Place {
                face: case.face_id(home),
                penetration: Some(penetration.id),
                shape: penetration.plan.outer.clone(),
                ..Place::default()
            },
            measured: tell!("{measured} wide", "{measured} de ancho"),
            required: tell!("a cricket beyond {required}", "un desviador a partir de {required}"),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Note, format!("cricket/penetration-{}", penetration.id))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, vent};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{PenetrationKind, Shape};

    /// IRC R903.2.2, from memory.
    #[test]
    fn wider_than_30_in() {
        for (inches, expect) in [(29.0, 0), (30.0, 0), (30.25, 1), (32.0, 1)] {
            let mut job = gable_job();
            job.penetrations = vec![vent(5, 1.0, 5.0)];
            job.penetrations[0].kind = PenetrationKind::Chimney;
            job.penetrations[0].shape =
                Shape::Rectangle { along: Length::from_inches(inches), up: Length::from_inches(20.0) };
            assert_eq!(of(&job, "cricket").len(), expect, "{inches} in");
            job.penetrations[0].kind = PenetrationKind::Skylight;
            assert_eq!(of(&job, "cricket").len(), 0);
        }
    }
}
