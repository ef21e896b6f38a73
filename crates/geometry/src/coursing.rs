//! Shingle courses and an array together: where the base rail falls among the courses, what is left of the last course at the
//! head of the array and below the ridge, and which exposures or block positions leave full courses.
//!
//! All heights are v in the face's frame, metres up the slope. A course line is where the butts of a course lie; the lines are at
//! `first + n · exposure`, n = 0, 1, 2 … up to the top of the face.

use chalkcourse_words::later as words;
use serde::Serialize;

/// Remainders of a course below this (metres) count as none: less than the 1/32 in that a tape is read to.
pub const READ: f64 = 0.000_79;

/// Maximum courses of a face.
const MOST: f64 = 100_000.0;

/// The courses of a face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Coursing {
    /// v of the eave, metres.
    pub eave: f64,
    /// v of the ridge or of the upper edge, metres.
    pub top: f64,
    /// v of the first course line, metres.
    pub first: f64,
    /// Distance between course lines, metres.
    pub exposure: f64,
}

/// The extent of an array along v.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Span {
    /// v of the base rail line: the lower edge of the lowest row, metres.
    pub bottom: f64,
    /// v of the upper edge of the highest row, metres.
    pub top: f64,
    /// Exposed height of the head flashing above that, metres.
    pub head: f64,
}

impl Span {
    /// v at which shingles resume, above the exposed part of the head flashing, metres.
    pub fn end(&self) -> f64 {
        self.top + self.head
    }
}

/// Position of a line among the courses.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct OnCourse {
    /// The course line at or below it: 0 is the first; negative is below the first.
    pub course: i64,
    /// How far above that line, metres: from 0 to less than the exposure.
    pub above: f64,
    /// Signed distance to the nearest course line, metres: positive up, negative down.
    pub to_nearest: f64,
}

/// Position of an array among the courses.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ArrayCourses {
    /// Position of the base rail line.
    pub base: OnCourse,
    /// Exposed height of the course that the rail cuts, between the last line below the rail and the rail, metres; the full
    /// exposure if the rail is on a line.
    pub cut_at_base: f64,
    /// Exposed height of the course cut to the head flashing, up to the next course line or to the top of the face, metres; 0 if
    /// the flashing ends on a line.
    pub cut_at_head: f64,
    /// Full courses from the first course line at or above the head flashing to the top of the face: courses lie on the lines, so
    /// the part between the flashing and that line is not one of them.
    pub whole_to_top: usize,
    /// Remainder above the last line below the top, metres; 0 if that course is full. Cut course, full courses and this add up to
    /// the distance from the head flashing to the top.
    pub left_at_top: f64,
}

/// Why there is no result.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CoursingError {
    /// A number is not finite, or the heights are in the wrong order.
    #[error("{}", words::coursing::heights_from_to_m_give(&from, &to))]
    Heights {
        /// The lower one.
        from: f64,
        /// The upper one.
        to: f64,
    },
    /// An invalid exposure.
    #[error("{}", words::coursing::an_exposure_of_m_give(&_0))]
    Exposure(f64),
    /// A tolerance too large to assign course lines.
    #[error("{}", words::coursing::a_miss_of_up_to(&_0))]
    Within(f64),
    /// The range is empty.
    #[error("{}", words::coursing::exposures_from_to_m_give(&from, &to))]
    Range {
        /// Its minimum.
        from: f64,
        /// Its maximum.
        to: f64,
    },
}

impl Coursing {
    fn check(&self) -> Result<(), CoursingError> {
        let finite = [self.eave, self.top, self.first].iter().all(|v| v.is_finite());
        if !(finite && self.top > self.eave) {
            return Err(CoursingError::Heights { from: self.eave, to: self.top });
        }
        let reach = (self.top - self.first).abs().max(self.top - self.eave);
        if !(self.exposure >= 1e-3 && self.exposure.is_finite() && reach / self.exposure <= MOST) {
            return Err(CoursingError::Exposure(self.exposure));
        }
        Ok(())
    }

    /// The position of `v` among the courses. Within [`READ`] of a line counts as on it.
    ///
    /// # Errors
    /// Heights or an exposure that define no course lines, or an invalid `v`.
    pub fn at(&self, v: f64) -> Result<OnCourse, CoursingError> {
        self.check()?;
        let turns = (v - self.first) / self.exposure;
        if turns.is_nan() || turns.abs() > MOST * 10.0 {
            return Err(CoursingError::Heights { from: self.first, to: v });
        }
        let nearest = turns.round();
        let off = (turns - nearest) * self.exposure;
        let course = if off.abs() <= READ { nearest } else { turns.floor() };
        let above = if off.abs() <= READ { 0.0 } else { (turns - course) * self.exposure };
        Ok(OnCourse { course: course as i64, above, to_nearest: -off })
    }

    /// The position of an array among the courses.
    ///
    /// # Errors
    /// As [`Coursing::at`], and an array whose upper edge is not above its lower one.
    pub fn laid(&self, array: &Span) -> Result<ArrayCourses, CoursingError> {
        if !(array.top > array.bottom && array.head >= 0.0) {
            return Err(CoursingError::Heights { from: array.bottom, to: array.top });
        }
        let (base, end, top) = (self.at(array.bottom)?, self.at(array.end())?, self.at(self.top)?);
        let cut_at_base = if base.above == 0.0 { self.exposure } else { base.above };
        let next = if end.above == 0.0 { end.course } else { end.course + 1 };
        let room = (self.top - array.end()).max(0.0);
        let (cut_at_head, left_at_top) = if next > top.course {
            // No line is left above the flashing: everything exposed is one cut course.
            (room, 0.0)
        } else if end.above == 0.0 {
            (0.0, top.above)
        } else {
            (self.exposure - end.above, top.above)
        };
        let whole_to_top = usize::try_from(top.course - next).unwrap_or(0);
        Ok(ArrayCourses { base, cut_at_base, cut_at_head, whole_to_top, left_at_top })
    }
}

/// An exposure that puts both the base rail and the top of the face on course lines.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Exposure {
    /// Distance between course lines, metres.
    pub exposure: f64,
    /// Courses from the first line to the base rail line.
    pub below: usize,
    /// Full courses from the first line at or above the head flashing to the top of the face.
    pub above: usize,
    /// Exposed height of the course cut to the head flashing, metres; 0 if the flashing ends on a line.
    pub cut_at_head: f64,
    /// Offset of the course line from the base rail line, metres: negative is below it.
    pub off_base: f64,
    /// Offset of the last line from the top of the face, metres: negative is below it.
    pub off_top: f64,
}

impl Exposure {
    /// The larger offset, metres.
    pub fn miss(&self) -> f64 {
        self.off_base.abs().max(self.off_top.abs())
    }
}

/// The exposures within `range` (minimum, maximum; metres) that put a course line both at the base rail and at the top of the
/// face, each to `within` metres; smallest miss first. The exposure of `courses` itself is ignored. Courses continue beside the
/// array, so one set of lines serves both ends; the cut at the head is reported with each.
///
/// With m courses up to the rail and n up to the top, both misses are linear in the exposure: the least maximum miss is where
/// they are equal and opposite, or at an end of the range. Every pair (m, n) that the range allows is tried.
///
/// # Errors
/// Heights in the wrong order, an empty range, or a tolerance of half a course or more.
pub fn propose_exposure(
    range: (f64, f64),
    courses: &Coursing,
    array: &Span,
    within: f64,
) -> Result<Vec<Exposure>, CoursingError> {
    let (least, greatest) = range;
    if !(least >= 1e-3 && greatest >= least && greatest.is_finite()) {
        return Err(CoursingError::Range { from: least, to: greatest });
    }
    if !(within >= 0.0 && within < least / 2.0) {
        return Err(CoursingError::Within(within));
    }
    let (low, high) = (array.bottom - courses.first, courses.top - courses.first);
    Coursing { exposure: least, ..*courses }.check()?;
    if !(array.top > array.bottom && array.head >= 0.0 && low.is_finite() && high.is_finite()) {
        return Err(CoursingError::Heights { from: array.bottom, to: array.top });
    }
    if low < -within || courses.top - array.end() < -within {
        return Ok(Vec::new());
    }
    let counts = |length: f64| {
        let from = ((length - within) / greatest).ceil().max(0.0) as usize;
        from..=((length + within) / least).floor().min(MOST) as usize
    };
    let mut found: Vec<Exposure> = Vec::new();
    for below in counts(low) {
        // The exposures this count allows, and with them the counts up to the top.
        let m = below as f64;
        let (from, to) = if below == 0 {
            range
        } else {
            (((low - within) / m).max(least), ((low + within) / m).min(greatest))
        };
        if from > to {
            continue;
        }
        let all_from = ((high - within) / to).ceil().max(0.0) as usize;
        let all_to = ((high + within) / from).floor().min(MOST) as usize;
        for all in all_from..=all_to {
            let n = all as f64;
            // |m e - low| and |n e - high|: both increase with e, so the best e balances them, or zeroes the only one.
            let best = if m + n > 0.0 { (low + high) / (m + n) } else { from };
            let exposure = best.clamp(from, to);
            let (off_base, off_top) = (m * exposure - low, n * exposure - high);
            if off_base.abs().max(off_top.abs()) > within {
                continue;
            }
            // The last line is the top, however small its miss.
            let top = courses.first + n * exposure;
            let laid = Coursing { exposure, top, ..*courses }.laid(array)?;
            let (above, cut_at_head) = (laid.whole_to_top, laid.cut_at_head);
            found.push(Exposure { exposure, below, above, cut_at_head, off_base, off_top });
        }
    }
    found.sort_by(|p, q| p.miss().total_cmp(&q.miss()).then(q.exposure.total_cmp(&p.exposure)));
    Ok(found)
}

/// A position of an array that leaves full courses.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BasePlace {
    /// The course line that the base rail lies on: 0 is the first.
    pub course: usize,
    /// v of the base rail line, metres.
    pub bottom: f64,
    /// Exposed height of the course cut to the head flashing, metres; 0 if the flashing ends on a line.
    pub cut_at_head: f64,
    /// Full courses from the first line at or above the head flashing to the top of the face.
    pub whole_to_top: usize,
}

/// Base rail lines `above` the course lines (metres; 0 is on them) at which an array of this height leaves at least
/// `least_at_top` full courses below the top, nearest to its current position first.
///
/// On course lines, the cut at the head depends only on the array's height, so it is the same for all of them; it is reported
/// with each.
///
/// # Errors
/// As [`Coursing::laid`].
pub fn propose_base(
    courses: &Coursing,
    array: &Span,
    above: f64,
    least_at_top: usize,
) -> Result<Vec<BasePlace>, CoursingError> {
    courses.laid(array)?;
    if above.is_nan() || above.abs() > courses.exposure {
        return Err(CoursingError::Heights { from: courses.first, to: courses.first + above });
    }
    let mut found = Vec::new();
    let mut course = 0_usize;
    loop {
        let bottom = courses.first + course as f64 * courses.exposure + above;
        let by = bottom - array.bottom;
        let moved = Span { bottom, top: array.top + by, head: array.head };
        if moved.end() > courses.top + READ || course as f64 > MOST {
            break;
        }
        let laid = courses.laid(&moved)?;
        if laid.whole_to_top >= least_at_top {
            let ArrayCourses { cut_at_head, whole_to_top, .. } = laid;
            found.push(BasePlace { course, bottom, cut_at_head, whole_to_top });
        }
        course += 1;
    }
    found.sort_by(|p, q| (p.bottom - array.bottom).abs().total_cmp(&(q.bottom - array.bottom).abs()));
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const INCH: f64 = 0.0254;

    fn five_inch() -> Coursing {
        Coursing { eave: 0.0, top: 200.0 * INCH, first: 5.0 * INCH, exposure: 5.0 * INCH }
    }

    #[test]
    fn a_rail_on_the_seventh_line_and_a_head_that_ends_on_one() {
        // By hand, in inches: lines at 5, 10 …; a rail at 35 is on line 6, counted from 0; the head ends at 150, a line; 50 left:
        // ten.
        let laid =
            five_inch().laid(&Span { bottom: 35.0 * INCH, top: 142.0 * INCH, head: 8.0 * INCH }).unwrap();
        assert_eq!((laid.base.course, laid.base.above), (6, 0.0));
        assert_eq!((laid.whole_to_top, laid.left_at_top), (10, 0.0));
        assert!(laid.cut_at_head == 0.0);
        // 2 in higher: 2 in of a course are exposed below the rail, 3 in up to the line at 155, then nine full ones.
        let laid =
            five_inch().laid(&Span { bottom: 37.0 * INCH, top: 144.0 * INCH, head: 8.0 * INCH }).unwrap();
        assert!((laid.base.above - 2.0 * INCH).abs() < 1e-12 && laid.base.course == 6);
        assert!((laid.base.to_nearest + 2.0 * INCH).abs() < 1e-12);
        assert!((laid.cut_at_head - 3.0 * INCH).abs() < 1e-12 && laid.whole_to_top == 9);
    }

    /// A strip at the head and a remainder at the top that add up to a course are not a course: both are cut.
    #[test]
    fn strip_and_remainder_are_not_added_up_to_a_course() {
        let laid = |top: f64, end: f64| {
            let courses = Coursing { top: top * INCH, ..five_inch() };
            let span = Span { bottom: 35.0 * INCH, top: (end - 8.0) * INCH, head: 8.0 * INCH };
            let laid = courses.laid(&span).unwrap();
            let inches = |metres: f64| (metres / INCH * 1e6).round() / 1e6;
            (inches(laid.cut_at_head), laid.whole_to_top, inches(laid.left_at_top))
        };
        // 60 ft by 15 ft at 6:12 is 201.246 in up; the flashing ends at 166.187: the next line is 170, the last 200: six,
        // with 3.813 in below and 1.246 in above. 35.059 / 5 is 7.01, which is not the number of courses.
        assert_eq!(laid(201.246, 166.187), (3.813, 6, 1.246));
        // By hand: the flashing ends at 192, lines at 195 and 200: one full; at 196 none, although 6 in are left.
        assert_eq!(laid(202.0, 192.0), (3.0, 1, 2.0));
        assert_eq!(laid(202.0, 196.0), (4.0, 0, 2.0));
        // Past the last line everything exposed is one strip.
        assert_eq!(laid(204.0, 201.0), (3.0, 0, 0.0));
        assert_eq!(laid(204.0, 205.0), (0.0, 0, 0.0));
        // On the line, to the 1/32 in that a tape reads.
        assert_eq!(laid(200.0, 195.02), (0.0, 1, 0.0));
    }

    #[test]
    fn an_exposure_that_brings_a_line_to_the_rail_and_to_the_ridge() {
        // By hand, in inches: from the first line at 5 up to the rail at 38 is 33, up to the ridge at 203 is 198: 5 1/2 divides
        // them 6 and 36 times. Lines at 5 + 5.5 n: above the flashing's end at 156 the next is 159.0, the 28th: 3.0 cut, 8 full.
        let courses = Coursing { eave: 0.0, top: 203.0 * INCH, first: 5.0 * INCH, exposure: 5.0 * INCH };
        let array = Span { bottom: 38.0 * INCH, top: 148.0 * INCH, head: 8.0 * INCH };
        let found = propose_exposure((5.0 * INCH, 6.0 * INCH), &courses, &array, INCH / 16.0).unwrap();
        let best = found.first().unwrap();
        assert!((best.exposure - 5.5 * INCH).abs() < 1e-9 && (best.below, best.above) == (6, 8), "{best:?}");
        assert!(best.miss() < 1e-9 && (best.cut_at_head - 3.0 * INCH).abs() < 1e-9, "{best:?}");
    }

    #[test]
    fn impossible_input_is_refused() {
        let array = Span { bottom: 1.0, top: 2.0, head: 0.1 };
        for courses in [
            Coursing { exposure: 0.0, ..five_inch() },
            Coursing { exposure: f64::NAN, ..five_inch() },
            Coursing { top: -1.0, ..five_inch() },
            Coursing { first: f64::INFINITY, ..five_inch() },
        ] {
            assert!(courses.laid(&array).is_err() && propose_base(&courses, &array, 0.0, 0).is_err());
        }
        assert!(five_inch().laid(&Span { top: 0.5, ..array }).is_err());
        assert!(propose_exposure((0.2, 0.1), &five_inch(), &array, 0.001).is_err());
        assert!(
            propose_exposure((0.1, 0.2), &five_inch(), &Span { bottom: f64::NAN, ..array }, 0.001).is_err()
        );
    }

    proptest! {
        #[test]
        fn no_sampled_exposure_is_missing_from_the_proposals(
            top in 3.0..8.0f64, bottom in 0.3..1.5f64, height in 1.0..1.4f64, e in 0.12..0.16f64,
        ) {
            let courses = Coursing { eave: 0.0, top, first: 0.127, exposure: 0.127 };
            let array = Span { bottom, top: bottom + height, head: 0.2 };
            let within = 0.004;
            let found = propose_exposure((0.12, 0.16), &courses, &array, within).unwrap();
            for p in &found {
                prop_assert!((0.12..=0.16).contains(&p.exposure) && p.miss() <= within);
                let base = 0.127 + p.below as f64 * p.exposure;
                prop_assert!((base - bottom).abs() <= within + 1e-9);
                // Lines from the first one up, one by one: the last is the top, and those at or above the flashing are full.
                let lines: Vec<f64> = (0..).map(|n| 0.127 + f64::from(n) * p.exposure)
                    .take_while(|v| *v <= top + within + 1e-9).collect();
                prop_assert!((lines.last().unwrap() - top).abs() <= within + 1e-9);
                let above = lines.iter().filter(|v| **v >= array.end() - READ).count();
                prop_assert_eq!(p.above, above.saturating_sub(1));
            }
            let whole = |length: f64| ((length / e).round() * e - length).abs() <= within;
            if whole(bottom - 0.127) && whole(top - 0.127) {
                let below = ((bottom - 0.127) / e).round() as usize;
                let all = |exposure: f64| ((top - 0.127) / exposure).round();
                let same = |p: &Exposure| p.below == below && all(p.exposure) == all(e);
                prop_assert!(found.iter().any(same), "{e} {below} {found:?}");
            }
        }

        #[test]
        fn parts_add_up(top in 3.0..8.0f64, bottom in 0.2..1.5f64, height in 0.5..1.4f64, e in 0.1..0.3f64) {
            let courses = Coursing { eave: 0.0, top, first: 0.15, exposure: e };
            let array = Span { bottom, top: bottom + height, head: 0.2 };
            let laid = courses.laid(&array).unwrap();
            let back = 0.15 + laid.base.course as f64 * e + laid.base.above;
            prop_assert!((back - bottom).abs() <= READ);
            prop_assert!(laid.cut_at_head >= 0.0 && laid.cut_at_head <= e + 1e-12);
            let sum = laid.cut_at_head + laid.whole_to_top as f64 * e + laid.left_at_top;
            prop_assert!((sum - (top - array.end()).max(0.0)).abs() <= 2.0 * READ, "{laid:?}");
            for place in propose_base(&courses, &array, 0.0, 3).unwrap() {
                prop_assert!(place.whole_to_top >= 3);
                let on = courses.at(place.bottom).unwrap();
                prop_assert!(on.above == 0.0 && on.course == place.course as i64);
                prop_assert!(place.bottom + height + 0.2 + 3.0 * e <= top + READ);
            }
        }
    }
}
