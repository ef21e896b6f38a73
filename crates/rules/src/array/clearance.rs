//! Modules stay away from what comes through the roof, by the clearance of its kind or its own.
//!
//! Source: the rule book, for each kind its own: see its `clearances`; or the person, for one penetration. The
//! distance is exact, from the module to the outline in the frame of the face.

use crate::case::{Case, Laid};
use crate::clear::{Obstacle, convex_pieces, least_move};
use crate::finding::{Finding, Place, Severity};
use crate::measure::{TOLERANCE, to_polygon, to_rect};
use crate::registry::{Rule, nothing_missing};
use crate::words::{Way, block_name, length, move_fix, sentence, too_short};
use chalkcourse_job::Cell;
use chalkcourse_layout::{OnFace, PlacedPenetration};

pub(crate) const RULE: Rule = Rule {
    code: "clearance",
    title: "Modules keep clear of what comes through the roof",
    reason: "A boot, a curb or a chimney needs its own flashing, and room to mend it.",
    source: |job| format!("{}: clearances, each with its own source", job.rule_book.name),
    missing: nothing_missing,
    run,
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    for penetration in &case.layout.penetrations {
        for on in &penetration.on {
            let blocks = case.on_face.get(on.face).into_iter().flatten();
            for laid in blocks.filter_map(|&index| case.blocks.get(index)) {
                findings.extend(finding(case, laid, penetration, on));
            }
        }
    }
}

fn finding(
    case: &Case<'_>,
    laid: &Laid<'_>,
    penetration: &PlacedPenetration,
    on: &OnFace,
) -> Option<Finding> {
    let clearance = penetration.clearance;
    let limit = clearance - TOLERANCE;
    // With no clearance at all a module still may not lie on it.
    let too_near = |away: f64, overlap: bool| away < limit || limit <= 0.0 && overlap;
    if !too_near(to_rect(&laid.bounds, &on.bounds), true) {
        return None;
    }
    let mut nearest = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        if to_rect(&module.rect, &on.bounds) > clearance {
            continue;
        }
        let away = to_polygon(&module.rect, &on.outline);
        let overlap = to_polygon(&module.rect.grown(-TOLERANCE), &on.outline) == 0.0;
        if too_near(away, overlap) {
            cells.push(module.cell);
            nearest = nearest.min(away);
        }
    }
    if cells.is_empty() {
        return None;
    }
    let units = case.units;
    let obstacles: Vec<Obstacle> = convex_pieces(&on.outline)
        .into_iter()
        .map(|corners| Obstacle { corners, reach: clearance })
        .collect();
    let it = least_move(&laid.rows, &obstacles, &Way::ALL, units)?;
    let (measured, required) = (too_short(nearest, units), length(clearance, units));
    let what = if penetration.name.trim().is_empty() {
        format!("the {}", penetration.kind.name())
    } else {
        format!("the {} “{}”", penetration.kind.name(), penetration.name)
    };
    let own = case.job.penetration(penetration.id).is_some_and(|p| p.clearance.is_some());
    let source = match case.book.clearances.get(&penetration.kind) {
        _ if own => "set by a person for this one".to_owned(),
        Some(limit) => limit.source.clone(),
        None => RULE.source(case.job),
    };
    let is = if nearest > 0.0 { format!("is {measured} from {what}") } else { format!("lies on {what}") };
    let whose = if own { "it is to have" } else { "the book asks" };
    Some(Finding {
        message: format!(
            "{} {is}; {whose} {required}. Move the block {} {}.",
            sentence(&block_name(laid.block)),
            length(it.by, units),
            it.way.name(),
        ),
        place: Place {
            face: Some(laid.on.id),
            block: Some(laid.block.id),
            cells,
            penetration: Some(penetration.id),
            shape: penetration.plan.outer.clone(),
        },
        measured,
        required: format!("at least {required}"),
        source,
        fix: Some(move_fix(laid.block, it, units)),
        ..Finding::of(
            RULE.code,
            Severity::Stop,
            format!("clearance/block-{}/penetration-{}", laid.block.id, penetration.id),
        )
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, of, one, vent};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::{Job, Shape};

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

    #[test]
    fn in_the_middle_of_the_block() {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 5.5, 2.0)];
        let short = one(&job, "clearance");
        assert!(short.message.contains("lies on the vent"));
        fixed(&job, &short);
    }
}
