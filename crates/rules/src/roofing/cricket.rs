//! A cricket behind a wide penetration diverts the water.
//!
//! Source: IRC R903.2.2 (from memory): on the ridge side of a penetration wider than 30 in, measured square to the slope. A unit
//! skylight flashed per its maker's instructions is exempt (from memory). Whether an array that is flashed into the roof counts
//! is a question for the official and the listing; it is not checked here.

use super::{missing, source};
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::PenetrationView;
use crate::{Authority, Facts};
use chalkcourse_job::{Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "cricket",
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

fn run(view: PenetrationView<'_>, findings: &mut Vec<Finding>) {
    let Some(roofing) = &view.drawn.book().roofing else { return };
    let (penetration, most) = (view.penetration, roofing.cricket_from.value.metres());
    let on = penetration.home.and_then(|home| Some((home, penetration.on_face(home)?)));
    let Some((home, on)) = on.filter(|(_, on)| roofing.asks_cricket(penetration.kind, on.bounds.size().x))
    else {
        return;
    };
    findings.push(Finding {
        measured: length(on.bounds.size().x),
        required: Required::AtMost(length(most)),
        source: Authority::of(&roofing.cricket_from.source),
        place: Location {
            face: view.drawn.id(home),
            penetration: Some(penetration.id),
            shape: penetration.plan.outer.clone(),
            ..Location::default()
        },
        ..Finding::of(RULE.code, Severity::Note, Subject::Penetration(penetration.id), Facts::Cricket)
    });
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
