//! Below an emergency escape window the roof is free of modules, and a pathway leads to it.
//!
//! Source: IRC R324.6.3 / IFC 1205.2.3 (section numbers from memory): no module on the portion of a roof below an emergency
//! escape and rescue opening, and a pathway of at least 36 in to the opening. A strip straight down the slope is kept free, from
//! the window to the lower edge of its face, as wide as the window and no narrower than the pathway. Faces farther down are not
//! checked.

use super::source_of;
use crate::Facts;
use crate::by_limit::TooNear;
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use chalkcourse_geometry::Rect;
use chalkcourse_job::Required;
use chalkcourse_limits::{Against, KeepOut};

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
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    findings.extend(keep_outs.iter().filter_map(|strip| finding(view, strip)));
}

fn finding(view: BlockView<'_>, strip: &KeepOut) -> Option<Finding> {
    let (near, bounds) = (TooNear::of(view.laid, strip)?, strip.bounds()?);
    let Against::Penetration(window) = strip.against else { return None };
    let most = widest_over(view, &near, &bounds);
    let plan = bounds.corners().map(|p| view.laid.face.plane.to_plan(p)).to_vec();
    let finding = near.finding(view, Severity::Stop, Facts::FireEscape);
    Some(Finding {
        measured: length(most),
        required: Required::Free(length(strip.asked)),
        place: Location { penetration: Some(window), shape: plan, ..finding.place },
        ..finding
    })
}

/// How much of a strip's width the worst module covers.
fn widest_over(view: BlockView<'_>, near: &TooNear<'_>, strip: &Rect) -> f64 {
    let modules = view.laid.placed.modules.iter().filter(|module| near.cells.contains(&module.cell));
    modules.map(|module| strip.overlap(&module.rect).x).fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use crate::WhyNot;
    use crate::testing::{book, gable_job, measures, of, one, vent, why_not};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{PenetrationKind, Resolved, Shape};

    const INCH: f64 = 0.0254;

    /// A window of a given width high above the block, its centre at a distance to the right of the block's right side.
    fn beside(wide: f64, away: f64) -> Resolved {
        let mut job = gable_job();
        job.penetrations = vec![vent(5, 8.172 + away * INCH, 4.5)];
        job.penetrations[0].kind = PenetrationKind::EscapeWindow;
        job.penetrations[0].shape =
            Shape::Rectangle { along: Length::from_inches(wide), up: Length::from_inches(30.0) };
        job
    }

    /// IRC R324.6.3: 36 in, half on each side of the centre.
    #[test]
    fn short_of_at_and_beyond_half_a_pathway() {
        assert!(of(&beside(24.0, 19.0), "fire-escape").is_empty());
        assert!(of(&beside(24.0, 18.0), "fire-escape").is_empty());
        measures(&one(&beside(24.0, 15.0), "fire-escape"), 3.0, 36.0);
        // A wide window has a wide strip.
        assert!(of(&beside(60.0, 30.0), "fire-escape").is_empty());
        assert_eq!(of(&beside(60.0, 29.0), "fire-escape").len(), 1);
    }

    #[test]
    fn nothing_is_required_above_the_window_and_an_unmarked_roof_says_so() {
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
