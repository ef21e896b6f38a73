//! Words about the picture under the plan.

use chalkcourse_geometry::{DVec2, Length, Units};
use chalkcourse_words::{self as words, Say};
use std::path::Path;

pub(crate) const TOOL_PICTURE: Say = words::picture::PICTURE;
pub(crate) const TOOL_PICTURE_HELP: Say = words::picture::LAY_AN_AERIAL_PHOTO_OR;
pub(crate) const PICTURE: Say = words::picture::PICTURE_UNDER_THE_PLAN;
pub(crate) const LAY_PICTURE: Say = words::picture::PICTURE_UNDER_THE_PLAN_2;
pub(crate) const CHOOSE_PICTURE: Say = words::picture::CHOOSE_A_PICTURE;
pub(crate) const CHOOSE_ANOTHER: Say = words::picture::CHOOSE_ANOTHER;
pub(crate) const NO_PICTURE: Say = words::picture::AN_AERIAL_PHOTO_OR_A;
pub(crate) const TAKE_AS_IT_IS: Say = words::picture::TAKE_IT_AS_IT_IS;
pub(crate) const LOOK_AGAIN: Say = words::picture::LOOK_AGAIN;
pub(crate) const READING_PICTURE: Say = words::picture::THE_PICTURE_IS_BEING_READ;
pub(crate) const CANT_LAY: Say = words::picture::THIS_PICTURE_CANT_BE_LAID;
pub(crate) const PICTURE_MODES: [Say; 4] =
    [words::picture::MOVE_2, words::picture::TURN, words::picture::SCALE, words::picture::CROP];
pub(crate) const PICTURE_MODES_HELP: [Say; 4] = [
    words::picture::DRAG_THE_PICTURE_OR_MOVE,
    words::picture::DRAG_AROUND_THE_PICTURES_MIDDLE,
    words::picture::CLICK_TWO_POINTS_WHOSE_DISTANCE,
    words::picture::DRAG_OVER_THE_PART_THAT,
];
pub(crate) const GROUND_LENGTH: Say = words::picture::LENGTH_ON_THE_GROUND;
pub(crate) const MAKE_SQUARE: Say = words::picture::MAKE_THE_LINE_SQUARE;
pub(crate) const MAKE_SQUARE_HELP: Say = words::picture::TURN_THE_PICTURE_SO_THAT;
pub(crate) const WIDE_ON_GROUND: Say = words::picture::WIDTH;
pub(crate) const WIDE_HELP: Say = words::picture::HOW_WIDE_THE_WHOLE_PICTURE;
pub(crate) const PICTURE_TURN: Say = words::picture::TURNED_BY;
pub(crate) const PICTURE_TURN_HELP: Say = words::picture::DEGREES_CLOCKWISE;
pub(crate) const PICTURE_MIDDLE_HELP: Say = words::picture::WHERE_THE_MIDDLE_OF_THE;
pub(crate) const PICTURE_DIM: Say = words::picture::DIMMED_BY;
pub(crate) const PICTURE_DIM_BY_HAND: Say = words::picture::DIM_THE_PICTURE;
pub(crate) const PICTURE_CROP: Say = words::picture::CROPPED_IN_PERCENT_OF_THE;
pub(crate) const CROP_SIDES: [Say; 4] = [
    words::common::FROM_THE_LEFT,
    words::picture::FROM_THE_TOP,
    words::picture::FROM_THE_RIGHT,
    words::picture::FROM_THE_BOTTOM,
];
pub(crate) const SHOW_WHOLE: Say = words::picture::SHOW_ALL_OF_IT;
pub(crate) const TAKE_AWAY: Say = words::picture::TAKE_IT_AWAY;
pub(crate) const CROP_TOO_MUCH: Say = words::picture::SOMETHING_OF_THE_PICTURE_MUST;
pub(crate) const NO_SUCH_SCALE: Say = words::picture::THE_PICTURE_WOULD_BE_OF;
pub(crate) const BAD_PERCENT: Say = words::picture::TYPE_A_NUMBER_FROM_0;
pub(crate) const BAD_TURN: Say = words::picture::TYPE_DEGREES_SUCH_AS_12;

// Steps
pub(crate) const LAY_A_PICTURE: Say = words::picture::LAY_A_PICTURE_UNDER_THE;
pub(crate) const MOVE_PICTURE: Say = words::picture::MOVE_THE_PICTURE;
pub(crate) const TURN_PICTURE: Say = words::picture::TURN_THE_PICTURE;
pub(crate) const SCALE_PICTURE: Say = words::picture::SCALE_THE_PICTURE;
pub(crate) const CROP_PICTURE: Say = words::picture::CROP_THE_PICTURE;
pub(crate) const DIM_PICTURE: Say = words::picture::DIM_THE_PICTURE_2;
pub(crate) const CHANGE_PICTURE: Say = words::picture::TAKE_THE_CHANGED_PICTURE;
pub(crate) const REMOVE_PICTURE: Say = words::picture::TAKE_THE_PICTURE_AWAY;

/// The file name.
pub(crate) fn picture_name(path: &str) -> String {
    super::own_name(Path::new(path))
}

pub(crate) fn picture_words(path: &str) -> String {
    format!("{PICTURE}: {}", picture_name(path))
}

pub(crate) fn picture_laid(path: &str) -> String {
    words::picture::lies_under_the_plan_set(&picture_name(path))
}

/// "20' × 15' on the ground, 400 × 300 pixels"
pub(crate) fn picture_size(size: DVec2, pixels: [u32; 2], units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    words::picture::on_the_ground_pixels(&show(size.x), &show(size.y), &pixels[0], &pixels[1])
}

pub(crate) fn not_shown(path: &str) -> String {
    words::picture::cant_be_shown(&picture_name(path))
}

/// The hint for the picture tool.
pub(crate) fn picture_hint(mode: usize, points: usize) -> &'static str {
    match (mode, points) {
        (2, 0) => words::picture::CLICK_A_POINT_THEN_ANOTHER.now(),
        (2, 1) => words::picture::CLICK_THE_OTHER_POINT.now(),
        (2, _) => words::picture::TYPE_HOW_FAR_APART_THEY.now(),
        (mode, _) => PICTURE_MODES_HELP.get(mode).map_or("", |help| help.now()),
    }
}
