//! Words about courses of shingles.

use crate::state::coursing::BlockAmongCourses;
use chalkcourse_geometry::coursing::{ArrayCourses, Exposure, OnCourse};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::CoursedPlace;
use chalkcourse_words::{self as words, Put, Said, Say, later};

pub(crate) const COURSING: Say = words::coursing::COURSES_AND_BASE_RAIL;
pub(crate) const COURSES_IN_PLAN_HELP: Say = words::coursing::FACE_ON_THEY_ARE_DRAWN;
pub(crate) const BLOCK: Say = words::common::BLOCK;
pub(crate) const NO_BLOCK_ON_FACE: Say = words::coursing::NO_BLOCK_LIES_ON_THIS;
pub(crate) const NO_MODULES_AMONG: Say = words::coursing::THIS_BLOCK_HAS_NO_MODULES;
pub(crate) const RAIL_ON_A_LINE: Say = words::coursing::RAIL_ON_A_COURSE_LINE;
pub(crate) const RAIL_IS_ON_A_LINE: Say = words::coursing::IT_IS_ON_ONE_NOW;
pub(crate) const MOVE_IT: Say = words::coursing::MOVE_IT;
pub(crate) const USE_IT: Say = words::coursing::USE_IT;
pub(crate) const WHOLE_BY_EXPOSURE: Say = words::coursing::AN_EXPOSURE_THAT_BRINGS_A;
pub(crate) const LEAST_EXPOSURE: Say = words::coursing::EXPOSURE_FROM;
pub(crate) const MOST_EXPOSURE: Say = words::coursing::EXPOSURE_TO;
pub(crate) const SHINGLE_RANGE_HELP: Say = words::coursing::WHAT_THE_SHINGLE_MAY_BE;
pub(crate) const NO_EXPOSURE: Say = words::coursing::NO_EXPOSURE_IN_THIS_RANGE;

/// "South: courses"
pub(crate) fn courses_of(face: impl Put) -> Said {
    later::coursing::change_the_courses_of(&face)
}
pub(crate) fn rail_to_line(block: impl Put, course: usize) -> Said {
    later::coursing::set_the_rail_of_on(&block, &(course + 1))
}

/// "on course line 28", or "1 1/4" above course line 28"
pub(crate) fn on_line(on: &OnCourse, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    match on.course {
        line if on.above == 0.0 && line >= 0 => words::coursing::on_course_line(&(line + 1)),
        line if line >= 0 => words::coursing::above_course_line(&small(on.above), &(line + 1)),
        _ => words::coursing::BELOW_THE_FIRST_COURSE_LINE.now().to_owned(),
    }
}

/// How a block lies among the courses, in sentences.
pub(crate) fn laid(laid: &ArrayCourses, among: &BlockAmongCourses, units: Units) -> [String; 3] {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let up = Length::from_metres(among.span.bottom - among.courses.eave).show(units);
    let base = if laid.base.above == 0.0 {
        words::coursing::base_rail_line_up_from(&up, &on_line(&laid.base, units))
    } else {
        words::coursing::base_rail_line_up_from_the(
            &up,
            &on_line(&laid.base, units),
            &small(laid.cut_at_base),
        )
    };
    let head = if laid.cut_at_head == 0.0 {
        words::coursing::THE_HEAD_FLASHING_ENDS_ON.now().to_owned()
    } else {
        words::coursing::a_cut_course_shows_above(&small(laid.cut_at_head))
    };
    let courses =
        if laid.whole_to_top == 1 { words::common::COURSE.now() } else { words::common::COURSES.now() };
    let top = if laid.left_at_top == 0.0 {
        words::coursing::whole_above_the_array_the(&laid.whole_to_top, &courses)
    } else {
        words::coursing::whole_above_the_array_is(&laid.whole_to_top, &courses, &small(laid.left_at_top))
    };
    [base, head, top]
}

/// "Course line 29, 1 3/4" up: 3" of a cut course at the head, 9 whole courses above"
pub(crate) fn base_place(place: &CoursedPlace, by: f64, units: Units) -> String {
    let CoursedPlace { base: place, clear } = place;
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let way = if by > 0.0 { words::coursing::UP.now() } else { words::coursing::DOWN.now() };
    let courses =
        if place.whole_to_top == 1 { words::common::COURSE.now() } else { words::common::COURSES.now() };
    words::coursing::course_line_of_a_cut(
        &(place.course + 1),
        &small(by),
        &way,
        &small(place.cut_at_head),
        &place.whole_to_top,
        &courses,
        &if *clear { "" } else { words::coursing::THE_RULES_ARE_AGAINST_IT.now() },
    )
}
pub(crate) fn no_base_place(least: u32) -> String {
    let courses =
        if least == 1 { words::coursing::WHOLE_COURSE.now() } else { words::coursing::WHOLE_COURSES.now() };
    words::coursing::no_course_line_leaves_above(&least, &courses)
}
/// "5 3/8": 27 courses below the rail, 3" cut at the head and 9 whole above, 1/32" off at most"
pub(crate) fn exposure_proposal(exposure: &Exposure, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let off = if exposure.miss() < chalkcourse_geometry::coursing::READ {
        words::coursing::AS_EVEN_AS_A_TAPE.now().to_owned()
    } else {
        words::coursing::off_at_most(&small(exposure.miss()))
    };
    words::coursing::below_the_rail_cut_at(
        &small(exposure.exposure),
        &exposure.below,
        &small(exposure.cut_at_head),
        &exposure.above,
        &off,
    )
}

// On the drawing
pub(crate) const MARK_HEAD_WHOLE: Say = words::coursing::HEAD_FLASHING_ENDS_ON_A;
pub(crate) fn mark_of_rail(on: &str) -> String {
    words::coursing::base_rail(&on)
}
pub(crate) fn mark_of_head(left: &str) -> String {
    words::coursing::head_flashing_ends_here_of(&left)
}
pub(crate) fn mark_of_top(whole: usize, left: &str, cut: bool) -> String {
    let courses = if whole == 1 { words::common::COURSE.now() } else { words::common::COURSES.now() };
    if cut {
        words::coursing::whole_and(&whole, &courses, &left)
    } else {
        words::coursing::whole(&whole, &courses)
    }
}
