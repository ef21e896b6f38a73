//! Modules keep the clearance of each penetration, by its kind or its own.
//!
//! Source: the rule book, per kind: see its `clearances`; or the person, for one penetration. The distance is exact, from the
//! module to the outline in the frame of the face. A book may require more straight above a penetration, since water and snow
//! pile up there, and straight below: then the keep-out is a strip as wide as the penetration along the eave.

use crate::keep_out::{Against, KeepOut, RequiredBy, Shape};
use crate::limit::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::{Convex, Length};
use chalkcourse_job::PenetrationKind;
use chalkcourse_layout::PlacedPenetration;
use std::collections::BTreeMap;

pub(crate) const LIMIT: Limit = Limit { code: "clearance", missing: nothing_missing, gives };

/// Tolerance for cutting an outline into convex pieces, metres: far below the tolerance of limits.
const FINE: f64 = 1e-9;

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    for (penetration, on) in site.through() {
        let of =
            |pieces| KeepOut::of(LIMIT.code, Against::Penetration(penetration.id), Shape::Pieces(pieces));
        let (book, clearance) = (&site.job.rule_book, penetration.clearance);
        let around = of(Convex::pieces(&on.outline, FINE)).reaching(clearance);
        found.push(around.by(by(site, penetration, &book.clearances)));
        let middle = on.bounds.centre().y;
        for strip in penetration.strips(on) {
            let (asked, limits) = if strip.centre().y > middle {
                (penetration.above, &book.clearances_above)
            } else {
                (penetration.below, &book.clearances_below)
            };
            let strip = of(vec![Convex::rect(&strip)]).by(by(site, penetration, limits));
            found.push(KeepOut { asked, ..strip });
        }
    }
}

/// The source: a person may have set the clearance of this one.
fn by(
    site: &Site<'_>,
    penetration: &PlacedPenetration,
    limits: &BTreeMap<PenetrationKind, chalkcourse_job::Limit<Length>>,
) -> RequiredBy {
    let own = site.job.penetration(penetration.id).is_some_and(|it| it.clearance.is_some());
    match limits.get(&penetration.kind) {
        _ if own => RequiredBy::Person,
        Some(limit) => RequiredBy::Source(limit.source.clone()),
        None => RequiredBy::Book,
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, gable, just, through};
    use chalkcourse_geometry::{DVec2, Length};
    use chalkcourse_job::{Limit, PenetrationKind};

    /// The demo book requires 9 in around a vent.
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
    fn more_is_required_above_and_below_than_beside() {
        let mut job = gable();
        job.penetrations = vec![through(PenetrationKind::Vent, 6.0, 2.5)];
        let limit = |inches: f64| Limit {
            value: Length::from_inches(inches),
            source: chalkcourse_job::Source::new("office", chalkcourse_job::Standing::Office),
        };
        book(&mut job).clearances_above = [(PenetrationKind::Vent, limit(18.0))].into();
        book(&mut job).clearances_below = [(PenetrationKind::Vent, limit(12.0))].into();
        just(&job, "clearance", (5.5, 2.5 * SLOPE + 0.2 + 18.0 * INCH), DVec2::NEG_Y);
        just(&job, "clearance", (5.5, 2.5 * SLOPE - 0.2 - 12.0 * INCH - 1.134), DVec2::Y);
    }
}
