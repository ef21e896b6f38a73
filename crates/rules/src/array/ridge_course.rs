//! Above the head flashing there are full courses of shingles before the ridge.
//!
//! Source: the rule book; one course is common practice, no source. The head flashing is lapped by the course above
//! it, and the ridge cap needs something to lie on. The room is measured straight up the slope from the end of what stays
//! visible of the flashing to the ridge. Courses lie on the face's lines: what is over between the last line and the ridge
//! is part of no whole course, and comes on top.

use super::near::{Side, ends, place_of, sides};
use crate::clear::{Move, Way, first_free};
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_geometry::{EdgeKind, EdgeSpan, Length, Rect};
use chalkcourse_job::{Cell, Required, Subject};
use chalkcourse_limits::TOLERANCE;

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
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    if view.laid.on.courses.exposure > 0.0 {
        let ridges = view.laid.face.edges.iter().filter(|span| span.kind == EdgeKind::Ridge);
        findings.extend(sides(ridges).into_iter().filter_map(|side| finding(view, side)));
    }
}

fn finding(view: BlockView<'_>, side: Side<'_>) -> Option<Finding> {
    let (laid, limit, exposure) = (view.laid, &view.book().courses_to_ridge, view.laid.on.courses.exposure);
    let asked = |ridge: f64| view.laid.on.courses.room_for(limit.value, ridge);
    let head = view.kit().flashing.head.metres();
    let spans = &side.spans;
    let lowest = |rect: &Rect| {
        let low = spans.iter().filter_map(|span| lowest_over(span, rect)).fold(f64::INFINITY, f64::min);
        low.is_finite().then_some(low)
    };
    // The bounds reach as high as any module: most blocks end here.
    let ridge = spans.iter().map(|s| s.frame.0.y.min(s.frame.1.y)).fold(f64::INFINITY, f64::min);
    if laid.bounds.max.y + head + asked(ridge) <= ridge + TOLERANCE {
        return None;
    }
    let (mut room, mut required) = (f64::INFINITY, 0.0);
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        let Some(ridge) = lowest(&module.rect).filter(|low| module.rect.min.y < *low) else { continue };
        let left = ridge - module.rect.max.y - head;
        if left < asked(ridge) - TOLERANCE {
            cells.push(module.cell);
            room = room.min(left);
            required = f64::max(required, asked(ridge));
        }
    }
    if cells.is_empty() {
        return None;
    }
    // Moving down, a module is wrong from where its foot passes below the ridge to where its head is far enough.
    let stretches = laid.placed.modules.iter().filter_map(|module| {
        let low = lowest(&module.rect)?;
        Some((module.rect.min.y - low, module.rect.max.y + head + asked(low) - low))
    });
    let by = Move { way: Way::Down, by: first_free(stretches.collect(), view.units()) };
    let facts = Facts::RidgeCourse { courses: limit.value, exposure: Length::from_metres(exposure) };
    let subject = Subject::Side(laid.block.id, laid.on.id, side.id, side.kind);
    Some(Finding {
        measured: length(room),
        required: Required::AtLeast(length(required)),
        source: Authority::of(&limit.source),
        candidate: Some(by.of(laid.block)),
        place: place_of(laid, cells, ends(side.spans)),
        ..Finding::of(RULE.code, Severity::Stop, subject, facts)
    })
}

/// The lowest height of an edge over the width of a rectangle; `None` where it runs beside it.
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
    use crate::testing::{book, fixed, gable_job, inches, measures, moves, of, one};
    use chalkcourse_job::Job;

    const INCH: f64 = 0.0254;

    /// The block with so many inches from its upper edge to the ridge, which is 264.102 in up.
    fn below_ridge(inches: f64) -> Job {
        let mut job = gable_job();
        job.blocks[0].at.y = 6.0 * 1.25f64.sqrt() - 2.271 - inches * INCH;
        job
    }

    /// The demo kit's head flashing shows 8 in, a course is 5 in. The ridge is 6 m × 1.118 = 264.102 in up, lines at multiples
    /// of 5: the last whole course lies from 255 to 260, 4.102 in are over. By hand: 8 + 5 + 4.102 = 17.102 in are needed.
    #[test]
    fn short_of_at_and_beyond_one_course() {
        assert!(of(&below_ridge(18.0), "ridge-course").is_empty());
        assert!(of(&below_ridge(17.11), "ridge-course").is_empty());
        // 13 in are a course of room, and no whole course on its lines.
        assert_eq!(of(&below_ridge(13.0), "ridge-course").len(), 1);
        // 6 m × √1.25 are 264.102517 in: 5 and 4.102517 are asked, 8 are there.
        let job = below_ridge(16.0);
        let short = one(&job, "ridge-course");
        measures(&short, 8.0, 9.102_517);
        moves(&short, 0.0, -1.125);
        assert_eq!(short.place.cells.len(), 3);
        fixed(&job, &short);
    }

    #[test]
    fn two_courses() {
        let mut job = below_ridge(17.0);
        book(&mut job).courses_to_ridge.value = 2;
        let short = one(&job, "ridge-course");
        assert!(matches!(short.facts, Facts::RidgeCourse { courses: 2, .. }));
        fixed(&job, &short);
    }

    #[test]
    fn nothing_is_left() {
        let job = below_ridge(2.0);
        let short = one(&job, "ridge-course");
        assert!(inches(short.measured) < 0.0);
        fixed(&job, &short);
    }
}
