//! Modules stay away from what comes through the roof, by the clearance of its kind or its own.
//!
//! Source: the rule book, for each kind its own: see its `clearances`; or the person, for one penetration. The
//! distance is exact, from the module to the outline in the frame of the face. Straight above it a book may ask for more,
//! since water and snow pile up there, and straight below: then the strip that is as wide as it is along the eave.

use super::near::place_of;
use crate::clear::{Obstacle, Way, convex_pieces, least_move};
use crate::finding::{Finding, Place, Severity};
use crate::measure::{length, to_polygon};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, Laid, Through};
use crate::{Authority, Beside, Facts};
use chalkcourse_geometry::{Convex, Rect};
use chalkcourse_job::{Cell, Required, Subject};
use chalkcourse_layout::OnFace;
use chalkcourse_limits::TOLERANCE;

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
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    for through in view.through() {
        let Through { placed, on, .. } = *through;
        let strips: Vec<Rect> = placed.strips(on).collect();
        let kept = strips.iter().copied().fold(on.bounds, |all, strip| all.union(&strip));
        if view.laid.bounds.distance(&kept) > placed.clearance {
            continue;
        }
        findings.extend(
            around(view.laid, on, placed.clearance)
                .map(|(cells, nearest)| finding(view, through, &strips, (Beside::Around, cells, nearest))),
        );
        for side in [Beside::Above, Beside::Below] {
            let in_strip = in_strip(view.laid, on, &strips, side);
            findings.extend(in_strip.map(|(cells, gap)| finding(view, through, &strips, (side, cells, gap))));
        }
    }
}

fn finding(
    view: BlockView<'_>,
    through: &Through<'_>,
    strips: &[Rect],
    (side, cells, measured): (Beside, Vec<Cell>, f64),
) -> Finding {
    let (laid, id) = (view.laid, through.placed.id);
    let (asked, limits, subject) = match side {
        Beside::Around => {
            (through.placed.clearance, &view.book().clearances, Subject::Through(laid.block.id, id))
        }
        Beside::Above => {
            let subject = Subject::BesideOf(laid.block.id, id, "above".into());
            (through.placed.above, &view.book().clearances_above, subject)
        }
        Beside::Below => {
            let subject = Subject::BesideOf(laid.block.id, id, "below".into());
            (through.placed.below, &view.book().clearances_below, subject)
        }
    };
    let around = convex_pieces(&through.on.outline).into_iter();
    let around = around.map(|piece| Obstacle { piece, reach: through.placed.clearance });
    let beside = strips.iter().map(|strip| Obstacle { piece: Convex::rect(strip), reach: 0.0 });
    let by = least_move(&laid.rows, &around.chain(beside).collect::<Vec<_>>(), &Way::ALL, view.units());
    let own = through.penetration.clearance.is_some();
    let source = match limits.get(&through.placed.kind) {
        _ if own => Authority::Person,
        Some(limit) => Authority::of(&limit.source),
        None => Authority::EachItsOwn,
    };
    Finding {
        measured: length(measured),
        required: Required::AtLeast(length(asked)),
        source,
        candidate: by.map(|by| by.of(laid.block)),
        place: Place { penetration: Some(id), ..place_of(laid, cells, through.placed.plan.outer.clone()) },
        ..Finding::of(RULE.code, Severity::Stop, subject, Facts::Clearance { side, own })
    }
}

/// The modules that are too near all around, and how near the nearest is.
fn around(laid: &Laid<'_>, on: &OnFace, clearance: f64) -> Option<(Vec<Cell>, f64)> {
    let limit = clearance - TOLERANCE;
    let mut nearest = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        if module.rect.distance(&on.bounds) > clearance {
            continue;
        }
        let away = to_polygon(&module.rect, &on.outline);
        // With no clearance at all a module still may not lie on it.
        let over = || limit <= 0.0 && to_polygon(&module.rect.grown(-TOLERANCE), &on.outline) == 0.0;
        if away < limit || over() {
            cells.push(module.cell);
            nearest = nearest.min(away);
        }
    }
    (!cells.is_empty()).then_some((cells, nearest))
}

/// The modules that reach into the strip above or below, and how near the nearest is up or down the slope.
fn in_strip(laid: &Laid<'_>, on: &OnFace, strips: &[Rect], side: Beside) -> Option<(Vec<Cell>, f64)> {
    let above = side == Beside::Above;
    let of_side = |strip: &&Rect| (strip.centre().y > on.bounds.centre().y) == above;
    let strip = strips.iter().find(of_side)?;
    let mut nearest = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        if strip.overlap(&module.rect).min_element() > TOLERANCE {
            let (rect, bounds) = (&module.rect, &on.bounds);
            let gap = if above { rect.min.y - bounds.max.y } else { bounds.min.y - rect.max.y };
            cells.push(module.cell);
            nearest = nearest.min(gap.max(0.0));
        }
    }
    (!cells.is_empty()).then_some((cells, nearest))
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, fixed, gable_job, inches, measures, moves, of, office, one, vent};
    use crate::{Authority, Beside, Facts};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::{Limit, PenetrationKind, Resolved, Shape};

    const INCH: f64 = 0.0254;
    /// Where the block's right side is.
    const SIDE: f64 = 8.172;

    /// A 0.4 m vent so far to the right of the block, at half its height.
    fn beside(away: f64) -> Resolved {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, SIDE + away + 0.2, 2.0)];
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_clearance() {
        assert!(of(&beside(10.0 * INCH), "clearance").is_empty());
        assert!(of(&beside(9.0 * INCH), "clearance").is_empty());
        let job = beside(3.0 * INCH);
        let short = one(&job, "clearance");
        measures(&short, 3.0, 9.0);
        moves(&short, -6.0, 0.0);
        assert_eq!(short.key.to_string(), "clearance/block-3/penetration-5");
        fixed(&job, &short);
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
    fn none_at_all_may_be_touched_but_not_covered() {
        let mut job = beside(0.0);
        job.penetrations[0].clearance = Some(Length::ZERO);
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].at.x -= 0.05;
        let short = one(&job, "clearance");
        fixed(&job, &short);
    }

    #[test]
    fn a_round_thing_is_measured_round() {
        // A circle of 0.6 m diagonally off the block's corner at (8.172, 3.271): the distance along the diagonal
        // is that of centre to corner less the radius.
        let mut job = gable_job();
        let corner = dvec2(SIDE, 1.0 + 2.271);
        let away = 10.0 * INCH;
        let centre = corner + (away + 0.3) / std::f64::consts::SQRT_2;
        job.penetrations = vec![vent(5, centre.x, centre.y / 1.25f64.sqrt())];
        job.penetrations[0].shape = Shape::Circle { diameter: Length::from_metres(0.6) };
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].clearance = Some(Length::from_inches(10.5));
        let short = one(&job, "clearance");
        fixed(&job, &short);
    }

    /// A 0.4 m vent so far below or above the block, in the middle of it, with a book that asks 9 in around, 18 in above it and
    /// 12 in below it.
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
    fn more_is_asked_above_than_beside() {
        for (above, asked, side) in [(true, 18.0, "above"), (false, 12.0, "below")] {
            assert!(of(&in_line((asked + 1.0) * INCH, above), "clearance").is_empty());
            assert!(of(&in_line(asked * INCH, above), "clearance").is_empty());
            let job = in_line((asked - 2.0) * INCH, above);
            let short = one(&job, "clearance");
            measures(&short, asked - 2.0, asked);
            assert_eq!(short.key.to_string(), format!("clearance/block-3/penetration-5/{side}"));
            assert_eq!(short.source, Authority::Source(office()));
            fixed(&job, &short);
        }
        // Beside it the strips do not reach.
        let mut beside = in_line(14.0 * INCH, true);
        beside.penetrations[0].at.x = 3.0 - 9.0 * INCH - 0.2;
        assert!(of(&beside, "clearance").is_empty());
        // Where a person decided for this one, that holds on all sides.
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
        fixed(&job, short);
    }
}
