//! Every penetration is on a single plane.
//!
//! Source: common practice, no source: a pipe boot or a curb is flashed into one plane. Across a hip, a ridge or a valley its
//! flanges lie flat on neither side; across an eave or a rake there is nothing to flash to. A chimney is flashed by hand on each
//! side, so one that straddles a line is only a note.

use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::PenetrationView;
use crate::{Authority, Facts};
use chalkcourse_geometry::Length;
use chalkcourse_job::{PenetrationKind, Quantity, Required, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "one-plane",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [92.0, 8.0], [92.0, 52.0], [8.0, 52.0]]),
        Stroke::Edge(&[[28.0, 8.0], [72.0, 52.0]]),
        Stroke::Pipe([53.0, 30.0, 6.0]),
        Stroke::Way([62.0, 24.0], [74.0, 16.0]),
    ],
    source: |_| Authority::Practice,
    missing: nothing_missing,
    run: Run::Penetration(run),
};

fn run(view: PenetrationView<'_>, findings: &mut Vec<Finding>) {
    let penetration = view.penetration;
    let home = penetration.home.and_then(|home| {
        Some((view.drawn.id(home)?, view.drawn.roof().faces.get(home)?, penetration.on_face(home)?))
    });
    let Some((id, face, on)) = home else { return };
    let Some(over) = chalkcourse_layout::reaches_over(face, &on.outline, TOLERANCE) else { return };
    let severity = match penetration.kind {
        PenetrationKind::Chimney => Severity::Note,
        _ => Severity::Caution,
    };
    let facts = Facts::OnePlane { kind: over.span.kind };
    findings.push(Finding {
        measured: length(over.by),
        required: Required::AtMost(Quantity::Length(Length::ZERO)),
        source: Authority::Practice,
        place: Location {
            face: Some(id),
            penetration: Some(penetration.id),
            shape: penetration.plan.outer.clone(),
            ..Location::default()
        },
        ..Finding::of(RULE.code, severity, Subject::Penetration(penetration.id), facts)
    });
}

#[cfg(test)]
mod tests {
    use crate::testing::{face, gable_job, of, one, vent};
    use crate::{Facts, Severity};
    use chalkcourse_geometry::{EdgeKind, Length};
    use chalkcourse_job::{PenetrationKind, Quantity, Resolved, Shape};

    /// Two planes of 6:12 at a hip from (0, 0) to (6, 6) in plan, and a vent 0.4 m square on the slope at (x, 3).
    fn at_the_hip(x: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks.clear();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        job.penetrations = vec![vent(5, x, 3.0)];
        job
    }

    fn by(job: &Resolved) -> f64 {
        let Quantity::Length(by) = one(job, "one-plane").measured else { panic!() };
        by.metres()
    }

    /// By hand: on the slope the hip runs (1, √1.25) to the right and up, of length 1.5. A vent with its centre 0.2 m to the
    /// right of it is 0.2 · √1.25 / 1.5 = 0.14907 m away from it. Its upper left corner is 0.2 m straight above the hip, 0.2 /
    /// 1.5 = 0.13333 m past it. It is clear at 0.2 · (1 + √1.25) / 1.5 = 0.28240 m, 0.2 · (1 + 1 / √1.25) = 0.37889 m to the
    /// right.
    #[test]
    fn a_vent_at_a_hip() {
        assert!((by(&at_the_hip(3.2)) - 0.2 / 1.5).abs() < 1e-9);
        let found = one(&at_the_hip(3.2), "one-plane");
        assert_eq!(
            (found.facts, found.severity),
            (Facts::OnePlane { kind: EdgeKind::Hip }, Severity::Caution)
        );
        assert!(by(&at_the_hip(3.378)) > 0.0005);
        assert!(of(&at_the_hip(3.379), "one-plane").is_empty());
        // On the other plane it is the same hip.
        assert_eq!(one(&at_the_hip(2.9), "one-plane").place.face.unwrap().0, 2);
    }

    /// By hand: a pipe of 0.2 m radius 0.14907 m from the hip extends 0.05093 m past it. It is measured as a 24-gon of equal
    /// area, whose corners are √(15° / sin 15°) · 0.2 = 0.20115 m from the centre and its sides 0.20115 · cos 7.5° = 0.19943 m:
    /// 0.05036 to 0.05208 m.
    #[test]
    fn a_pipe_at_a_hip() {
        let mut job = at_the_hip(3.2);
        job.penetrations[0].shape = Shape::Circle { diameter: Length::from_metres(0.4) };
        let over = by(&job);
        assert!((0.050_35..=0.052_09).contains(&over), "{over}");
    }

    /// By hand: 0.1 m of plan below the ridge is 0.1 · √1.25 = 0.11180 m of slope; the vent extends 0.2 m up.
    #[test]
    fn a_vent_at_a_ridge_a_chimney_and_one_over_the_eave() {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 1.0, 5.9)];
        assert!((by(&job) - (0.2 - 0.1 * 1.25f64.sqrt())).abs() < 1e-9);
        assert_eq!(one(&job, "one-plane").facts, Facts::OnePlane { kind: EdgeKind::Ridge });
        job.penetrations[0].kind = PenetrationKind::Chimney;
        assert_eq!(one(&job, "one-plane").severity, Severity::Note);
        job.penetrations = vec![vent(5, 1.0, 0.05)];
        assert_eq!(one(&job, "one-plane").facts, Facts::OnePlane { kind: EdgeKind::Eave });
        job.penetrations = vec![vent(5, 1.0, 3.0)];
        assert!(of(&job, "one-plane").is_empty());
    }
}
