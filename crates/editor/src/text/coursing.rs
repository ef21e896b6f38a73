//! Words about courses of shingles.

use crate::coursing::Among;
use chalkcourse_geometry::coursing::{Exposure, Laid, OnCourse};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::Place;

pub(crate) const COURSING: &str = "Courses and base rail";
pub(crate) const COURSES_IN_PLAN_HELP: &str = "Face-on they are drawn always.";
pub(crate) const BLOCK: &str = "Block";
pub(crate) const NO_BLOCK_ON_FACE: &str =
    "No block lies on this face yet. Place one to see where its base rail falls among the courses.";
pub(crate) const NO_MODULES_AMONG: &str =
    "This block has no modules, or the outline of its face is not sound yet.";
pub(crate) const RAIL_ON_A_LINE: &str = "Rail on a course line";
pub(crate) const RAIL_IS_ON_A_LINE: &str = "It is on one now. Others near it:";
pub(crate) const MOVE_IT: &str = "Move it";
pub(crate) const USE_IT: &str = "Use it";
pub(crate) const WHOLE_BY_EXPOSURE: &str = "An exposure that leaves whole courses at both ends";
pub(crate) const LEAST_EXPOSURE: &str = "Exposure from";
pub(crate) const MOST_EXPOSURE: &str = "Exposure to";
pub(crate) const SHINGLE_RANGE_HELP: &str = "What the shingle may be laid to: its package says so. 5\" to 5 5/8\" is usual (common practice, no source).";
pub(crate) const NO_EXPOSURE: &str =
    "No exposure in this range comes out at both ends to 1/16\": move the block, or allow another range.";

/// "South: courses"
pub(crate) fn courses_of(face: &str) -> String {
    format!("change the courses of {face}")
}
pub(crate) fn rail_to_line(block: &str, course: usize) -> String {
    format!("set the rail of {block} on course line {}", course + 1)
}

/// "on course line 28", or "1 1/4" above course line 28"
pub(crate) fn on_line(on: &OnCourse, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    match on.course {
        line if on.above == 0.0 && line >= 0 => format!("on course line {}", line + 1),
        line if line >= 0 => format!("{} above course line {}", small(on.above), line + 1),
        _ => "below the first course line".to_owned(),
    }
}

/// How a block lies among the courses, in sentences.
pub(crate) fn laid(laid: &Laid, among: &Among, units: Units) -> [String; 3] {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let up = Length::from_metres(among.span.bottom - among.courses.eave).show(units);
    let whole = among.courses.exposure;
    let base = if laid.base.above == 0.0 {
        format!("Base rail line {up} up from the eave, {}.", on_line(&laid.base, units))
    } else {
        format!(
            "Base rail line {up} up from the eave, {}: {} of a course shows below it.",
            on_line(&laid.base, units),
            small(laid.cut_at_base)
        )
    };
    let head = if (laid.cut_at_head - whole).abs() < 1e-9 {
        "The head flashing ends on a course line: the first course above it is whole.".to_owned()
    } else {
        format!("{} is left of the course behind the head flashing.", small(laid.cut_at_head))
    };
    let courses = if laid.whole_to_top == 1 { "course" } else { "courses" };
    let top = if laid.left_at_top == 0.0 {
        format!("{} whole {courses} above the array; the last one is whole.", laid.whole_to_top)
    } else {
        format!(
            "{} whole {courses} above the array; {} is left of the last one below the top.",
            laid.whole_to_top,
            small(laid.left_at_top)
        )
    };
    [base, head, top]
}

/// "Course line 29, 1 3/4" up: 3" left at the head, 9 whole courses above"
pub(crate) fn base_place(place: &Place, by: f64, units: Units) -> String {
    let Place { base: place, clear } = place;
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let way = if by > 0.0 { "up" } else { "down" };
    let courses = if place.whole_to_top == 1 { "course" } else { "courses" };
    format!(
        "Course line {}, {} {way}: {} left at the head, {} whole {courses} above{}",
        place.course + 1,
        small(by),
        small(place.cut_at_head),
        place.whole_to_top,
        if *clear { "" } else { "; the rules are against it" }
    )
}
pub(crate) fn no_base_place(least: u32) -> String {
    let courses = if least == 1 { "whole course" } else { "whole courses" };
    format!("No course line leaves {least} {courses} above this block, as the rule book asks.")
}
/// "5 3/8": 27 courses below the rail, 9 above, 1/32" off at most"
pub(crate) fn exposure_proposal(exposure: &Exposure, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let off = if exposure.miss() < chalkcourse_geometry::coursing::READ {
        "as even as a tape reads".to_owned()
    } else {
        format!("{} off at most", small(exposure.miss()))
    };
    format!(
        "{}: {} below the rail, {} above, {off}",
        small(exposure.exposure),
        exposure.below,
        exposure.above
    )
}

// On the drawing
pub(crate) const MARK_HEAD_WHOLE: &str = "head flashing ends on a course line";
pub(crate) fn mark_of_rail(on: &str) -> String {
    format!("base rail {on}")
}
pub(crate) fn mark_of_head(left: &str) -> String {
    format!("head flashing ends here: {left} left of the course")
}
pub(crate) fn mark_of_top(whole: usize, left: &str, cut: bool) -> String {
    let courses = if whole == 1 { "course" } else { "courses" };
    if cut { format!("{whole} whole {courses} and {left}") } else { format!("{whole} whole {courses}") }
}
