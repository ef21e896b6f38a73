//! Below a window that people leave by in an emergency the roof is free, and a pathway leads to it.
//!
//! Source: IRC R324.6.3 / IFC 1205.2.3 (section numbers from memory): no module on the portion of a roof below an emergency
//! escape and rescue opening, and a pathway of at least 36 in to the opening. A strip straight down the slope is kept, from
//! the window to the lower edge of its face, as wide as the window and no narrower than the pathway. Faces farther down
//! are not looked at.

use super::{exempt, source_of};
use crate::array::near::place_of;
use crate::clear::{Obstacle, Way, least_move};
use crate::finding::{Finding, Place, Severity};
use crate::measure::length;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts, WhyNot};
use chalkcourse_geometry::{Convex, Length, Rect};
use chalkcourse_job::{Cell, Limit, PenetrationKind, Quantity, Required, Subject};
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_limits::{TOLERANCE, escape_strip};

pub(crate) const RULE: Rule = Rule {
    code: "fire-escape",
    sketch: &[
        SLOPE,
        Stroke::Thing([40.0, 36.0, 20.0, 14.0]),
        Stroke::Free(&[[40.0, 8.0], [60.0, 8.0], [60.0, 36.0], [40.0, 36.0]]),
        Stroke::Way([50.0, 34.0], [50.0, 12.0]),
        Stroke::Module([14.0, 14.0, 22.0, 14.0]),
        Stroke::Wrong([56.0, 14.0, 22.0, 14.0]),
    ],
    source: |job| source_of(job, |fire| fire.below_escape.as_ref().map(|limit| &limit.source)),
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.below_escape.is_some());
            if !asked {
                return Some(WhyNot::NotInEdition);
            }
            let any = job.penetrations.iter().any(|p| p.kind == PenetrationKind::EscapeWindow);
            (!any).then_some(WhyNot::NoEscapeWindow)
        })
    },
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &view.book().fire_access else { return };
    let Some(limit) = &fire.below_escape else { return };
    findings.extend(view.through().iter().filter_map(|through| {
        let strip = escape_strip(fire, through.placed, through.on, view.laid.face)?;
        finding(view, through.placed, strip, limit)
    }));
}

fn finding(
    view: BlockView<'_>,
    window: &PlacedPenetration,
    strip: Rect,
    limit: &Limit<Length>,
) -> Option<Finding> {
    let laid = view.laid;
    if strip.overlap(&laid.bounds).min_element() <= TOLERANCE {
        return None;
    }
    let over: Vec<(Cell, f64)> = laid
        .placed
        .modules
        .iter()
        .map(|module| (module.cell, strip.overlap(&module.rect)))
        .filter(|(_, over)| over.min_element() > TOLERANCE)
        .map(|(cell, over)| (cell, over.x))
        .collect();
    let most = over.iter().map(|(_, over)| *over).reduce(f64::max)?;
    let obstacle = Obstacle { piece: Convex::rect(&strip), reach: 0.0 };
    let by = least_move(&laid.rows, &[obstacle], &Way::ALL, view.units());
    let plan = strip.corners().map(|p| laid.face.plane.to_plan(p)).to_vec();
    let subject = Subject::Through(laid.block.id, window.id);
    Some(Finding {
        measured: length(most),
        required: Required::Free(Quantity::Length(Length::from_metres(strip.size().x))),
        source: Authority::of(&limit.source),
        candidate: by.map(|by| by.of(laid.block)),
        place: Place {
            penetration: Some(window.id),
            ..place_of(laid, over.into_iter().map(|(cell, _)| cell).collect(), plan)
        },
        ..Finding::of(RULE.code, Severity::Stop, subject, Facts::FireEscape)
    })
}

#[cfg(test)]
mod tests {
    use crate::WhyNot;
    use crate::testing::{book, fixed, gable_job, measures, moves, of, one, vent, why_not};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{PenetrationKind, Resolved, Shape};

    const INCH: f64 = 0.0254;

    /// A window so wide high above the block, its middle so far to the right of the block's right side.
    fn beside(wide: f64, away: f64) -> Resolved {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 8.172 + away * INCH, 4.5)];
        job.penetrations[0].kind = PenetrationKind::EscapeWindow;
        job.penetrations[0].shape =
            Shape::Rectangle { along: Length::from_inches(wide), up: Length::from_inches(30.0) };
        job
    }

    /// IRC R324.6.3: 36 in, half of it to each side of the middle.
    #[test]
    fn short_of_at_and_beyond_half_a_pathway() {
        assert!(of(&beside(24.0, 19.0), "fire-escape").is_empty());
        assert!(of(&beside(24.0, 18.0), "fire-escape").is_empty());
        let job = beside(24.0, 15.0);
        let short = one(&job, "fire-escape");
        measures(&short, 3.0, 36.0);
        moves(&short, -3.0, 0.0);
        fixed(&job, &short);
        // A wide window has a wide strip.
        assert!(of(&beside(60.0, 30.0), "fire-escape").is_empty());
        assert_eq!(of(&beside(60.0, 29.0), "fire-escape").len(), 1);
    }

    #[test]
    fn above_the_window_nothing_is_asked_and_unmarked_is_told() {
        let mut job = beside(24.0, -20.0);
        job.penetrations[0].at.y = 0.4;
        assert!(of(&job, "fire-escape").is_empty());
        job.penetrations[0].kind = PenetrationKind::Skylight;
        assert_eq!(why_not(&job, "fire-escape"), Some(WhyNot::NoEscapeWindow));
        let mut job = beside(24.0, 15.0);
        book(&mut job).fire_access.as_mut().unwrap().below_escape = None;
        assert!(of(&job, "fire-escape").is_empty());
    }
}
