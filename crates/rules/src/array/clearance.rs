//! Modules keep the clearance of each penetration, by its kind or its own.
//!
//! Source: the rule book, per kind: see its `clearances`; or the person, for one penetration. The distance is exact, from the
//! module to the outline in the frame of the face. A book may require more straight above a penetration, since water and snow
//! pile up there, and straight below: then the keep-out is a strip as wide as the penetration along the eave.

use crate::by_limit::TooNear;
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, Through};
use crate::{Authority, Beside, Facts};
use chalkcourse_geometry::Rect;
use chalkcourse_job::{FindingKey, Required, Subject};
use chalkcourse_limits::{Against, KeepOut, RequiredBy};

pub(crate) const RULE: Rule = Rule {
    code: "clearance",
    sketch: &[
        SLOPE,
        Stroke::Pipe([50.0, 30.0, 4.0]),
        Stroke::Limit(&[
            [59.0, 30.0],
            [56.4, 36.4],
            [50.0, 39.0],
            [43.6, 36.4],
            [41.0, 30.0],
            [43.6, 23.6],
            [50.0, 21.0],
            [56.4, 23.6],
            [59.0, 30.0],
        ]),
        Stroke::Module([16.0, 22.0, 24.0, 16.0]),
        Stroke::Wrong([56.0, 22.0, 24.0, 16.0]),
        Stroke::Measure([50.0, 46.0], [59.0, 46.0]),
    ],
    source: |_| Authority::EachItsOwn,
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    for through in view.through() {
        let against = Against::Penetration(through.placed.id);
        let own = keep_outs.iter().filter(|keep_out| keep_out.against == against);
        let near = own.filter_map(|keep_out| TooNear::of(view.laid, keep_out));
        findings.extend(near.map(|near| finding(view, through, near)));
    }
}

fn finding(view: BlockView<'_>, through: &Through<'_>, near: TooNear<'_>) -> Finding {
    let (block, id, keep_out) = (view.laid.block.id, through.placed.id, near.keep_out);
    let (side, measured) = beside(&near, view, through);
    let facts = Facts::Clearance { side, own: keep_out.by == RequiredBy::Person };
    let subject = match side {
        Beside::Around => Subject::Through(block, id),
        Beside::Above => Subject::BesideOf(block, id, "above".into()),
        Beside::Below => Subject::BesideOf(block, id, "below".into()),
    };
    let finding = near.finding(view, Severity::Stop, facts);
    Finding {
        key: FindingKey::new(RULE.code, subject),
        measured: length(measured),
        required: Required::AtLeast(length(keep_out.asked)),
        place: Location { penetration: Some(id), shape: through.placed.plan.outer.clone(), ..finding.place },
        ..finding
    }
}

/// On which side modules are too near, and the distance of the nearest; for a strip, straight up or down the slope from its foot.
fn beside(near: &TooNear<'_>, view: BlockView<'_>, through: &Through<'_>) -> (Beside, f64) {
    if near.keep_out.reach >= near.keep_out.asked {
        return (Beside::Around, near.away());
    }
    let bounds = through.on.bounds;
    let modules = view.laid.placed.modules.iter().filter(|module| near.cells.contains(&module.cell));
    let nearest = |gap: fn(&Rect, &Rect) -> f64| {
        modules.map(|module| gap(&module.rect, &bounds)).fold(f64::INFINITY, f64::min).max(0.0)
    };
    if near.keep_out.bounds().is_some_and(|strip| strip.centre().y > bounds.centre().y) {
        (Beside::Above, nearest(|module, bounds| module.min.y - bounds.max.y))
    } else {
        (Beside::Below, nearest(|module, bounds| bounds.min.y - module.max.y))
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, gable_job, inches, measures, of, office, one, vent};
    use crate::{Authority, Beside, Facts};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::{Limit, PenetrationKind, Resolved, Shape};

    const INCH: f64 = 0.0254;
    /// Where the block's right side is.
    const SIDE: f64 = 8.172;

    /// A 0.4 m vent at a distance to the right of the block, at half its height.
    fn beside(away: f64) -> Resolved {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, SIDE + away + 0.2, 2.0)];
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_clearance() {
        assert!(of(&beside(10.0 * INCH), "clearance").is_empty());
        assert!(of(&beside(9.0 * INCH), "clearance").is_empty());
        let short = one(&beside(3.0 * INCH), "clearance");
        measures(&short, 3.0, 9.0);
        assert_eq!(short.key.to_string(), "clearance/block-3/penetration-5");
    }

    #[test]
    fn a_clearance_of_its_own() {
        let mut job = beside(3.0 * INCH);
        job.penetrations[0].clearance = Some(Length::from_inches(3.0));
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].clearance = Some(Length::from_inches(4.0));
        assert_eq!(one(&job, "clearance").source, Authority::Person);
    }

    #[test]
    fn a_zero_clearance_may_be_touched_but_not_covered() {
        let mut job = beside(0.0);
        job.penetrations[0].clearance = Some(Length::ZERO);
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].at.x -= 0.05;
        assert_eq!(inches(one(&job, "clearance").measured), 0.0);
    }

    #[test]
    fn a_round_penetration_is_measured_as_a_circle() {
        // A circle of 0.6 m diagonally off the block's corner at (8.172, 3.271): the distance along the diagonal is centre to
        // corner minus the radius.
        let mut job = gable_job();
        let corner = dvec2(SIDE, 1.0 + 2.271);
        let away = 10.0 * INCH;
        let centre = corner + (away + 0.3) / std::f64::consts::SQRT_2;
        job.penetrations = vec![vent(5, centre.x, centre.y / 1.25f64.sqrt())];
        job.penetrations[0].shape = Shape::Circle { diameter: Length::from_metres(0.6) };
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].clearance = Some(Length::from_inches(10.5));
        // It is drawn as a 24-gon of equal area with a corner on the diagonal: 12 r'^2 sin 15 degrees are pi r^2.
        let corner = 0.3 * (std::f64::consts::PI / (12.0 * 15f64.to_radians().sin())).sqrt();
        measures(&one(&job, "clearance"), 10.0 - (corner - 0.3) / INCH, 10.5);
    }

    /// A 0.4 m vent at a distance below or above the block, in the middle of it, with a book that requires 9 in around, 18 in
    /// above and 12 in below.
    fn in_line(away: f64, block_is_above: bool) -> Resolved {
        let mut job = gable_job();
        let slope = 1.25f64.sqrt();
        let v = if block_is_above { 1.0 - away - 0.2 } else { 1.0 + 2.271 + away + 0.2 };
        job.penetrations = vec![vent(5, 5.5, v / slope)];
        let book = book(&mut job);
        book.setbacks.clear();
        let limit = |inches: f64| Limit { value: Length::from_inches(inches), source: office() };
        book.clearances_above = [(PenetrationKind::Vent, limit(18.0))].into();
        book.clearances_below = [(PenetrationKind::Vent, limit(12.0))].into();
        job
    }

    #[test]
    fn more_is_required_above_than_beside() {
        for (above, asked, side) in [(true, 18.0, "above"), (false, 12.0, "below")] {
            assert!(of(&in_line((asked + 1.0) * INCH, above), "clearance").is_empty());
            assert!(of(&in_line(asked * INCH, above), "clearance").is_empty());
            let short = one(&in_line((asked - 2.0) * INCH, above), "clearance");
            measures(&short, asked - 2.0, asked);
            assert_eq!(short.key.to_string(), format!("clearance/block-3/penetration-5/{side}"));
            assert_eq!(short.source, Authority::Source(office()));
        }
        // Beside the vent the strips do not apply.
        let mut beside = in_line(14.0 * INCH, true);
        beside.penetrations[0].at.x = 3.0 - 9.0 * INCH - 0.2;
        assert!(of(&beside, "clearance").is_empty());
        // A clearance set by a person for this vent applies on all sides.
        let mut own = in_line(14.0 * INCH, true);
        own.penetrations[0].clearance = Some(Length::from_inches(10.0));
        assert!(of(&own, "clearance").is_empty());
    }

    #[test]
    fn in_the_middle_of_the_block() {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 5.5, 2.0)];
        let all = of(&job, "clearance");
        let short =
            all.iter().find(|it| it.facts == Facts::Clearance { side: Beside::Around, own: false }).unwrap();
        assert_eq!(inches(short.measured), 0.0);
    }
}
