//! Full courses of shingles fit between the head flashing and the ridge.
//!
//! Source: the rule book; one course is common practice, no source. The head flashing is lapped by the course above it, and the
//! ridge cap needs something to lie on. The distance is measured straight up the slope from the end of the flashing's exposed
//! part to the ridge. Courses follow the face's course lines: the remainder between the last line and the ridge is not part of a
//! full course, and is required in addition.

use crate::by_limit::TooNear;
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_geometry::{EdgeSpan, Length, Rect};
use chalkcourse_limits::{KeepOut, TOLERANCE};

pub(crate) const RULE: Rule = Rule {
    code: "ridge-course",
    sketch: &[
        SLOPE,
        Stroke::Limit(&[[8.0, 46.0], [92.0, 46.0]]),
        Stroke::Limit(&[[8.0, 40.0], [92.0, 40.0]]),
        Stroke::Module([18.0, 10.0, 26.0, 16.0]),
        Stroke::Module([18.0, 26.0, 26.0, 14.0]),
        Stroke::Wrong([52.0, 28.0, 26.0, 16.0]),
        Stroke::Measure([84.0, 40.0], [84.0, 52.0]),
    ],
    source: |job| Authority::of(&job.rule_book.courses_to_ridge.source),
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    let courses = view.book().courses_to_ridge.value;
    let exposure = Length::from_metres(view.laid.on.courses.exposure);
    findings.extend(keep_outs.iter().filter_map(|keep_out| {
        let near = TooNear::of(view.laid, keep_out)?;
        let room = room(view, &near);
        let finding = near.finding(view, Severity::Stop, Facts::RidgeCourse { courses, exposure });
        Some(Finding { measured: length(room), ..finding })
    }));
}

/// The least distance between head flashing and ridge, straight up the slope.
fn room(view: BlockView<'_>, near: &TooNear<'_>) -> f64 {
    let head = view.kit().flashing.head.metres();
    let ridge = |rect: &Rect| {
        let spans = near.keep_out.edges.iter().filter_map(|edge| view.laid.face.edges.get(*edge));
        spans.filter_map(|span| lowest_over(span, rect)).fold(f64::INFINITY, f64::min)
    };
    let modules = view.laid.placed.modules.iter().filter(|module| near.cells.contains(&module.cell));
    modules
        .map(|module| ridge(&module.rect) - module.rect.max.y - head)
        .fold(f64::INFINITY, f64::min)
        .min(near.keep_out.asked)
}

/// The lowest height of an edge over the width of a rectangle; `None` if the edge does not extend over it.
fn lowest_over(span: &EdgeSpan, rect: &Rect) -> Option<f64> {
    let (a, b) = span.frame;
    let (from, to) = (a.x.min(b.x).max(rect.min.x), a.x.max(b.x).min(rect.max.x));
    if to - from <= TOLERANCE {
        return None;
    }
    let at = |u: f64| a.y + (b.y - a.y) * (u - a.x) / (b.x - a.x);
    Some(at(from).min(at(to)))
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{book, gable_job, inches, measures, of, one};
    use chalkcourse_job::Resolved;

    const INCH: f64 = 0.0254;

    /// The block at a distance in inches from its upper edge to the ridge, which is 264.102 in up.
    fn below_ridge(inches: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks[0].at.y = 6.0 * 1.25f64.sqrt() - 2.271 - inches * INCH;
        job
    }

    /// The demo kit's head flashing is exposed 8 in, a course is 5 in. The ridge is 6 m × 1.118 = 264.102 in up, course lines at
    /// multiples of 5: the last full course lies from 255 to 260, the remainder is 4.102 in. By hand: 8 + 5 + 4.102 = 17.102 in
    /// are needed.
    #[test]
    fn short_of_at_and_beyond_one_course() {
        assert!(of(&below_ridge(18.0), "ridge-course").is_empty());
        assert!(of(&below_ridge(17.11), "ridge-course").is_empty());
        // 13 in is enough for a course, but not for a full course on the course lines.
        assert_eq!(of(&below_ridge(13.0), "ridge-course").len(), 1);
        // 6 m × √1.25 is 264.102517 in: 5 plus 4.102517 is required, 8 is there.
        let short = one(&below_ridge(16.0), "ridge-course");
        measures(&short, 8.0, 9.102_517);
        assert_eq!(short.place.cells.len(), 3);
    }

    #[test]
    fn two_courses() {
        let mut job = below_ridge(17.0);
        book(&mut job).courses_to_ridge.value = 2;
        let short = one(&job, "ridge-course");
        assert!(matches!(short.facts, Facts::RidgeCourse { courses: 2, .. }));
        // Two courses plus the remainder of 4.102517 in.
        measures(&short, 9.0, 14.102_517);
    }

    #[test]
    fn nothing_is_left() {
        assert!(inches(one(&below_ridge(2.0), "ridge-course").measured) < 0.0);
    }
}
