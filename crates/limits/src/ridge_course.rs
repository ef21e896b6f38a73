//! Above the head flashing there are full courses of shingles before the ridge.
//!
//! Source: the rule book; one course is common practice, no source. The head flashing is lapped by the course above
//! it, and the ridge cap needs something to lie on. The room is measured straight up the slope from the end of the
//! flashing to the ridge, and counted in courses of the face's exposure.

use crate::keep_out::{By, KeepOut, Shape};
use crate::registry::{Limit, nothing_missing};
use crate::site::Site;
use chalkcourse_geometry::{Convex, EdgeKind, EdgeSpan, dvec2};
use chalkcourse_job::Resolved;

pub(crate) const LIMIT: Limit = Limit { code: "ridge-course", missing: nothing_missing, gives };

/// How many full courses are left below a ridge: 0 where that is not asked.
pub fn courses_asked(job: &Resolved) -> u32 {
    if LIMIT.off(job).is_none() { job.rule_book.courses_to_ridge.value } else { 0 }
}

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let exposure = site.placed.courses.exposure;
    // Without courses there is nothing to count.
    if exposure.is_nan() || exposure <= 0.0 {
        return;
    }
    let limit = &site.job.rule_book.courses_to_ridge;
    let asked = f64::from(limit.value) * exposure;
    let down = dvec2(0.0, -(asked + site.job.kit.flashing.head.metres()));
    let below = |span: &EdgeSpan| {
        let (a, b) = span.frame;
        Convex::around([a, b, a + down, b + down])
    };
    for side in site.sides_with(|span| span.kind == EdgeKind::Ridge) {
        let shape = Shape::Pieces(side.spans.iter().filter_map(|(_, span)| below(span)).collect());
        let by = By::Source(limit.source.clone());
        found.push(KeepOut { shape, asked, ..side.keep_out(LIMIT.code, 0.0).by(by) });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, gable, just, of};
    use chalkcourse_geometry::{DVec2, Length};

    /// The demo kit's head flashing reaches 8 in, a course is 5 in: 13 in are needed, with two courses 18.
    #[test]
    fn short_of_at_and_beyond_so_many_courses() {
        let mut job = gable();
        just(&job, "ridge-course", (3.0, 6.0 * SLOPE - 1.134 - 13.0 * INCH), DVec2::Y);
        book(&mut job).courses_to_ridge.value = 2;
        just(&job, "ridge-course", (3.0, 6.0 * SLOPE - 1.134 - 18.0 * INCH), DVec2::Y);
        assert_eq!(super::courses_asked(&job), 2);
        job.faces[0].courses.exposure = Length::ZERO;
        assert!(of(&job, "ridge-course").is_empty(), "without courses there is nothing to count");
    }
}
