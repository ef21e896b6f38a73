//! Above the head flashing there are full courses of shingles before the ridge.
//!
//! Source: the rule book; one course is common practice, no source. The head flashing is lapped by the course above
//! it, and the ridge cap needs something to lie on. The room is measured straight up the slope from the end of the
//! flashing to the ridge, and counted in courses of the face's exposure.

use super::moves::{MustMove, ends, place_of};
use crate::case::{Case, Laid};
use crate::clear::{Move, first_free};
use crate::finding::{Finding, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence, too_short};
use chalkcourse_geometry::{EdgeKind, EdgeSpan, Rect, SideId};
use chalkcourse_job::Cell;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "ridge-course",
    title: say(
        "Full courses are left between the head flashing and the ridge",
        "Quedan hiladas enteras entre el tapajuntas superior y la cumbrera",
    ),
    reason: say(
        "The course above laps the head flashing, and the ridge cap needs a course to lie on.",
        "La hilada de arriba cubre el tapajuntas superior, y la tapa de cumbrera necesita una hilada en \
        que apoyarse.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Limit(&[[8.0, 46.0], [92.0, 46.0]]),
        Stroke::Limit(&[[8.0, 40.0], [92.0, 40.0]]),
        Stroke::Module([18.0, 10.0, 26.0, 16.0]),
        Stroke::Module([18.0, 26.0, 26.0, 14.0]),
        Stroke::Wrong([52.0, 28.0, 26.0, 16.0]),
        Stroke::Measure([84.0, 40.0], [84.0, 52.0]),
    ],
    source: |job| job.rule_book.courses_to_ridge.source.clone(),
    missing: nothing_missing,
    run: Run::block(run),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let exposure = laid.on.courses.exposure;
    if exposure > 0.0 {
        let mut sides: Vec<SideId> = Vec::new();
        for span in laid.face.edges.iter().filter(|span| span.kind == EdgeKind::Ridge) {
            if !sides.contains(&span.id) {
                sides.push(span.id);
                findings.extend(finding(case, laid, span.id, exposure));
            }
        }
    }
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, side: SideId, exposure: f64) -> Option<Finding> {
    let asked = f64::from(case.book.courses_to_ridge.value);
    let head = case.job.kit.flashing.head.metres();
    let needs = head + asked * exposure;
    let spans: Vec<&EdgeSpan> =
        laid.face.edges.iter().filter(|s| s.id == side && s.kind == EdgeKind::Ridge).collect();
    let ridge_over = |rect: &Rect| {
        let low = spans.iter().filter_map(|span| lowest_over(span, rect)).fold(f64::INFINITY, f64::min);
        (low.is_finite() && rect.min.y < low).then_some(low)
    };
    // The bounds reach as high as any module: most blocks end here.
    let ridge = spans.iter().map(|s| s.frame.0.y.min(s.frame.1.y)).fold(f64::INFINITY, f64::min);
    if laid.bounds.max.y + needs <= ridge + TOLERANCE {
        return None;
    }
    let mut room = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        let Some(ridge) = ridge_over(&module.rect) else { continue };
        let left = ridge - module.rect.max.y - head;
        if left < asked * exposure - TOLERANCE {
            cells.push(module.cell);
            room = room.min(left);
        }
    }
    if cells.is_empty() {
        return None;
    }
    // Moving down, a module is wrong from where its foot passes below the ridge to where its head is far enough.
    let stretches = laid.placed.modules.iter().filter_map(|module| {
        let rect = &module.rect;
        let low = spans.iter().filter_map(|span| lowest_over(span, rect)).fold(f64::INFINITY, f64::min);
        low.is_finite().then_some((rect.min.y - low, rect.max.y + needs - low))
    });
    let units = case.units;
    let by = Move { way: Way::Down, by: first_free(stretches.collect(), units) };
    let courses = case.book.courses_to_ridge.value;
    let required = tell!(
        "{courses} full {} ({})",
        "{courses} {} ({})",
        if courses == 1 { pick("course", "hilada entera") } else { pick("courses", "hiladas enteras") },
        length(asked * exposure, units)
    );
    let (left, measured) = if room > 0.0 {
        let measured = tell!(
            "{} ({:.2} course)",
            "{} ({:.2} hiladas)",
            too_short(room, units),
            (room / exposure * 100.0 + 1e-6).floor() / 100.0
        );
        (tell!("{measured} is left", "Quedan {measured}"), measured)
    } else {
        (pick("Nothing is left", "No queda nada").to_owned(), pick("nothing", "nada").to_owned())
    };
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!("ridge-course/block-{}/face-{}/side-{side}", laid.block.id, laid.on.id),
        says: tell!(
            "{left} between the head flashing of {} and the ridge of {}; the book asks {required}",
            "{left} entre el tapajuntas superior de {} y la cumbrera de {}; el libro pide {required}",
            block_name(laid.block),
            case.face_name(laid.placed.face),
        ),
        named: false,
        measured: sentence(&measured),
        required,
        source: RULE.source(case.job),
        place: place_of(laid, cells, ends(spans)),
        moving: laid,
        by,
    };
    Some(found.finding(case))
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
    use crate::testing::{book, fixed, gable_job, of, one};
    use chalkcourse_job::Job;

    const INCH: f64 = 0.0254;

    /// The block with so many inches from its upper edge to the ridge.
    fn below_ridge(inches: f64) -> Job {
        let mut job = gable_job();
        job.blocks[0].at.y = 6.0 * 1.25f64.sqrt() - 2.271 - inches * INCH;
        job
    }

    /// The demo kit's head flashing reaches 8 in, a course is 5 in: 13 in are needed.
    #[test]
    fn short_of_at_and_beyond_one_course() {
        assert!(of(&below_ridge(14.0), "ridge-course").is_empty());
        assert!(of(&below_ridge(13.0), "ridge-course").is_empty());
        let job = below_ridge(12.0);
        let short = one(&job, "ridge-course");
        assert_eq!(
            short.message,
            "4\" (0.80 course) is left between the head flashing of block 3 and the ridge of face South; the book asks 1 \
             full course (5\"). Move the block 1\" down the slope."
        );
        assert_eq!(short.place.cells.len(), 3);
        fixed(&job, &short);
    }

    #[test]
    fn two_courses() {
        let mut job = below_ridge(17.0);
        book(&mut job).courses_to_ridge.value = 2;
        let short = one(&job, "ridge-course");
        assert!(short.message.contains("2 full courses (10\")"), "{}", short.message);
        fixed(&job, &short);
    }

    #[test]
    fn nothing_is_left() {
        let job = below_ridge(2.0);
        let short = one(&job, "ridge-course");
        assert!(short.message.starts_with("Nothing is left"));
        fixed(&job, &short);
    }
}
