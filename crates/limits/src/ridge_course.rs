//! Full courses of shingles fit between the head flashing and the ridge.
//!
//! Source: the rule book; one course is common practice, no source. The head flashing is lapped by the course above it, and the
//! ridge cap needs something to lie on. The distance is measured straight up the slope from the end of the flashing's exposed
//! part to the ridge. Courses follow the face's course lines: the remainder between the last line and the ridge is not part of a
//! full course, and is required in addition.

use crate::keep_out::{KeepOut, RequiredBy, Shape};
use crate::limit::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::{Convex, EdgeKind, EdgeSpan, dvec2};
use chalkcourse_job::Resolved;

pub(crate) const LIMIT: Limit = Limit { code: "ridge-course", missing: nothing_missing, gives };

/// How many full courses are required below a ridge: 0 if none are.
pub fn courses_asked(job: &Resolved) -> u32 {
    if LIMIT.off(job).is_none() { job.rule_book.courses_to_ridge.value } else { 0 }
}

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let (courses, limit) = (site.placed.courses, &site.job.rule_book.courses_to_ridge);
    // Without courses there is nothing to count.
    if courses.exposure.is_nan() || courses.exposure <= 0.0 {
        return;
    }
    let room = |span: &EdgeSpan| courses.room_for(limit.value, span.frame.0.y.min(span.frame.1.y));
    let below = |span: &EdgeSpan| {
        let (a, b) = span.frame;
        let down = dvec2(0.0, -(room(span) + site.job.kit.flashing.head.metres()));
        Convex::around([a, b, a + down, b + down])
    };
    for side in site.sides_with(|span| span.kind == EdgeKind::Ridge) {
        let asked = side.spans.iter().map(|(_, span)| room(span)).fold(0.0, f64::max);
        let shape = Shape::Pieces(side.spans.iter().filter_map(|(_, span)| below(span)).collect());
        let by = RequiredBy::Source(limit.source.clone());
        found.push(KeepOut { shape, asked, ..side.keep_out(LIMIT.code, 0.0).by(by) });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, gable, just, of};
    use chalkcourse_geometry::{DVec2, Length};

    /// The demo kit's head flashing is exposed 8 in, a course is 5 in. The face is 6 × 1.118 = 6.7082 m, 264.102 in up: the last
    /// line is 260, the remainder 4.102 in, and one course starts at 255. By hand: 17.102 in are needed, with two courses 22.102.
    #[test]
    fn short_of_at_and_beyond_the_required_courses() {
        let mut job = gable();
        let on_line = 255.0 * INCH - 8.0 * INCH - 1.134;
        just(&job, "ridge-course", (3.0, on_line), DVec2::Y);
        assert!((6.0 * SLOPE - on_line - 1.134 - 17.102 * INCH).abs() < 1e-4);
        book(&mut job).courses_to_ridge.value = 2;
        just(&job, "ridge-course", (3.0, on_line - 5.0 * INCH), DVec2::Y);
        assert_eq!(super::courses_asked(&job), 2);
        job.faces[0].courses.exposure = Length::ZERO;
        assert!(of(&job, "ridge-course").is_empty(), "without courses there is nothing to count");
    }
}
