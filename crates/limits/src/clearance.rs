//! Modules stay away from what comes through the roof, by the clearance of its kind or its own.
//!
//! Source: the rule book, for each kind its own: see its `clearances`; or the person, for one penetration. The distance is
//! exact, from the module to the outline in the frame of the face. Straight above it a book may ask for more, since water and
//! snow pile up there, and straight below: then the strip that is as wide as it is along the eave.

use crate::keep_out::{Against, Held, KeepOut, Metric, Shape};
use crate::registry::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::Convex;

pub(crate) const LIMIT: Limit = Limit { code: "clearance", missing: nothing_missing, keep_outs };

/// What an outline is cut into pieces to, metres: far below the tolerance.
const FINE: f64 = 1e-9;

fn keep_outs(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    for (penetration, on) in site.through() {
        let mut keep = |pieces: Vec<Convex>, reach: f64, asked: f64| {
            found.push(KeepOut {
                rule: LIMIT.code,
                against: Against::Penetration(penetration.id),
                shape: Shape::Pieces(pieces),
                reach,
                metric: Metric::OnSlope,
                held: Held::Module,
                asked,
                edges: Vec::new(),
            });
        };
        keep(Convex::pieces(&on.outline, FINE), penetration.clearance, penetration.clearance);
        let middle = on.bounds.centre().y;
        for strip in penetration.strips(on) {
            let above = strip.centre().y > middle;
            let asked = if above { penetration.above } else { penetration.below };
            keep(vec![Convex::rect(&strip)], 0.0, asked);
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, gable, just, through};
    use chalkcourse_geometry::{DVec2, Length};
    use chalkcourse_job::{Limit, PenetrationKind};

    /// The demo book asks 9 in around a vent.
    #[test]
    fn short_of_at_and_beyond_the_clearance_of_a_kind_and_of_its_own() {
        let mut job = gable();
        job.penetrations = vec![through(PenetrationKind::Vent, 6.0, 2.0)];
        just(&job, "clearance", (6.2 + 9.0 * INCH, 2.0), DVec2::NEG_X);
        job.penetrations[0].clearance = Some(Length::from_inches(4.0));
        just(&job, "clearance", (6.2 + 4.0 * INCH, 2.0), DVec2::NEG_X);
        job.penetrations[0].clearance = Some(Length::ZERO);
        just(&job, "clearance", (6.2, 2.0), DVec2::NEG_X);
    }

    #[test]
    fn more_is_asked_above_and_below_than_beside() {
        let mut job = gable();
        job.penetrations = vec![through(PenetrationKind::Vent, 6.0, 2.5)];
        let limit = |inches: f64| Limit { value: Length::from_inches(inches), source: "office".into() };
        book(&mut job).clearances_above = [(PenetrationKind::Vent, limit(18.0))].into();
        book(&mut job).clearances_below = [(PenetrationKind::Vent, limit(12.0))].into();
        just(&job, "clearance", (5.5, 2.5 * SLOPE + 0.2 + 18.0 * INCH), DVec2::NEG_Y);
        just(&job, "clearance", (5.5, 2.5 * SLOPE - 0.2 - 12.0 * INCH - 1.134), DVec2::Y);
    }
}
