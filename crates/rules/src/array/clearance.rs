//! Modules stay away from what comes through the roof, by the clearance of its kind or its own.
//!
//! Source: the rule book, for each kind its own: see its `clearances`; or the person, for one penetration. The
//! distance is exact, from the module to the outline in the frame of the face. Straight above it a book may ask for more,
//! since water and snow pile up there, and straight below: then the strip that is as wide as it is along the eave.

use super::moves::{MustMove, place_of};
use crate::case::{Case, Laid};
use crate::clear::{Obstacle, convex_pieces, least_move};
use crate::finding::{Finding, Place, Severity};
use crate::measure::{TOLERANCE, to_polygon, to_rect};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence, too_short};
use chalkcourse_geometry::Rect;
use chalkcourse_job::Cell;
use chalkcourse_layout::{OnFace, PlacedModule, PlacedPenetration};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "clearance",
    title: say(
        "Modules keep clear of what comes through the roof",
        "Los módulos se apartan de lo que atraviesa el techo",
    ),
    reason: say(
        "A boot, a curb or a chimney needs its own flashing, and room to mend it.",
        "Una bota, un marco o una chimenea necesita sus propios tapajuntas, y lugar para repararlos.",
    ),
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
    source: |job| {
        tell!(
            "{}: clearances, each with its own source",
            "{}: holguras, cada una con su propia fuente",
            job.rule_book.name
        )
    },
    missing: nothing_missing,
    run: Run::block(run),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let near = case.through(laid.placed.face);
    findings.extend(near.filter_map(|(penetration, on)| finding(case, laid, penetration, on)));
}

fn finding(
    case: &Case<'_>,
    laid: &Laid<'_>,
    penetration: &PlacedPenetration,
    on: &OnFace,
) -> Option<Finding> {
    let clearance = penetration.clearance;
    let strips: Vec<Rect> = penetration.strips(on).collect();
    let kept = strips.iter().copied().fold(on.bounds, |all, strip| all.union(&strip));
    if to_rect(&laid.bounds, &kept) > clearance {
        return None;
    }
    let (mut cells, trouble) = around(laid, on, clearance);
    let in_strips = |module: &&PlacedModule| {
        strips.iter().any(|strip| strip.overlap(&module.rect).min_element() > TOLERANCE)
    };
    let by_side: Vec<&PlacedModule> = laid.placed.modules.iter().filter(in_strips).collect();
    let (is, asked, measured, limits) = match trouble {
        Some(nearest) => {
            let measured = too_short(nearest, case.units);
            let is = if nearest > 0.0 {
                tell!("is {measured} from", "está a {measured} de")
            } else {
                pick("lies on", "está encima de").to_owned()
            };
            (is, clearance, measured, &case.book.clearances)
        }
        None => {
            let above = by_side.iter().any(|module| module.rect.centre().y > on.bounds.centre().y);
            let gap = |module: &&PlacedModule| {
                let rect = module.rect;
                if above { rect.min.y - on.bounds.max.y } else { on.bounds.min.y - rect.max.y }
            };
            let measured = too_short(by_side.iter().map(gap).reduce(f64::min)?.max(0.0), case.units);
            let side = if above { pick("above", "arriba de") } else { pick("below", "debajo de") };
            let (asked, limits) = if above {
                (penetration.above, &case.book.clearances_above)
            } else {
                (penetration.below, &case.book.clearances_below)
            };
            (tell!("is {measured} {side}", "está {measured} {side}"), asked, measured, limits)
        }
    };
    cells.extend(by_side.iter().map(|module| module.cell));
    cells.sort_unstable();
    cells.dedup();
    let around = convex_pieces(&on.outline).into_iter().map(|corners| Obstacle { corners, reach: clearance });
    let beside = strips.iter().map(|strip| Obstacle { corners: strip.corners().to_vec(), reach: 0.0 });
    let by = least_move(&laid.rows, &around.chain(beside).collect::<Vec<_>>(), &Way::ALL, case.units)?;
    let required = length(asked, case.units);
    let own = case.job.penetration(penetration.id).is_some_and(|p| p.clearance.is_some());
    let source = match limits.get(&penetration.kind) {
        _ if own => pick("set by a person for this one", "puesta por una persona para esta").to_owned(),
        Some(limit) => limit.source.clone(),
        None => RULE.source(case.job),
    };
    let whose =
        if own { pick("it is to have", "debe tener") } else { pick("the book asks", "el libro pide") };
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!("clearance/block-{}/penetration-{}", laid.block.id, penetration.id),
        says: format!(
            "{} {is} {}; {whose} {required}",
            sentence(&block_name(laid.block)),
            case.penetration_name(penetration)
        ),
        named: false,
        measured,
        required: tell!("at least {required}", "al menos {required}"),
        source,
        place: Place {
            penetration: Some(penetration.id),
            ..place_of(laid, cells, penetration.plan.outer.clone())
        },
        moving: laid,
        by,
    };
    Some(found.finding(case))
}

/// The modules that are too near all around, and how near the nearest is.
fn around(laid: &Laid<'_>, on: &OnFace, clearance: f64) -> (Vec<Cell>, Option<f64>) {
    let limit = clearance - TOLERANCE;
    let mut nearest: Option<f64> = None;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        if to_rect(&module.rect, &on.bounds) > clearance {
            continue;
        }
        let away = to_polygon(&module.rect, &on.outline);
        // With no clearance at all a module still may not lie on it.
        let over = || limit <= 0.0 && to_polygon(&module.rect.grown(-TOLERANCE), &on.outline) == 0.0;
        if away < limit || over() {
            cells.push(module.cell);
            nearest = Some(nearest.map_or(away, |nearest| nearest.min(away)));
        }
    }
    (cells, nearest)
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, fixed, gable_job, of, one, vent};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::{Job, Limit, PenetrationKind, Shape};

    const INCH: f64 = 0.0254;
    /// Where the block's right side is.
    const SIDE: f64 = 8.172;

    /// A 0.4 m vent so far to the right of the block, at half its height.
    fn beside(away: f64) -> Job {
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
        assert_eq!(
            short.message,
            "Block 3 is 3\" from the vent “vent 5”; the book asks 9\". Move the block 6\" to the left."
        );
        assert_eq!(short.key, "clearance/block-3/penetration-5");
        fixed(&job, &short);
    }

    #[test]
    fn a_clearance_of_its_own() {
        let mut job = beside(3.0 * INCH);
        job.penetrations[0].clearance = Some(Length::from_inches(3.0));
        assert!(of(&job, "clearance").is_empty());
        job.penetrations[0].clearance = Some(Length::from_inches(4.0));
        assert!(one(&job, "clearance").source.contains("person"));
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
    fn in_line(away: f64, block_is_above: bool) -> Job {
        let mut job = gable_job();
        let slope = 1.25f64.sqrt();
        let v = if block_is_above { 1.0 - away - 0.2 } else { 1.0 + 2.271 + away + 0.2 };
        job.penetrations = vec![vent(5, 5.5, v / slope)];
        let book = book(&mut job);
        book.setbacks.clear();
        let limit = |inches: f64| Limit { value: Length::from_inches(inches), source: "office".into() };
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
            let words =
                format!("Block 3 is {}\" {side} the vent “vent 5”; the book asks {asked}\"", asked - 2.0);
            assert!(short.message.starts_with(&words), "{}", short.message);
            assert_eq!(short.source, "office");
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
        let short = one(&job, "clearance");
        assert!(short.message.contains("lies on the vent"));
        fixed(&job, &short);
    }
}
