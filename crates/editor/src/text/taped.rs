//! Words about a face by measurements.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_words::{self as words, Say};

pub(crate) const TAPED_FACE: Say = words::tape::FACE_FROM_MEASUREMENTS;
pub(crate) const FROM_MEASUREMENTS: Say = words::tape::FROM_MEASUREMENTS;
pub(crate) const TAPED_FACE_HELP: Say = words::tape::TYPE_WHAT_A_TAPE_SAID;
pub(crate) const FORM: Say = words::tape::FORM;
pub(crate) const FORM_TRIANGLE: Say = words::tape::TRIANGLE;
pub(crate) const FORM_RECTANGLE: Say = words::common::RECTANGLE;
pub(crate) const FORM_PARALLELOGRAM: Say = words::tape::PARALLELOGRAM;
pub(crate) const FORM_TRAPEZOID: Say = words::tape::TRAPEZOID;
pub(crate) const FORM_POLYGON: Say = words::tape::ANY_WITH_DIAGONALS;
pub(crate) const TAPED_EAVE: Say = words::tape::EAVE;
pub(crate) const TAPED_RIGHT: Say = words::tape::RIGHT_SIDE;
pub(crate) const TAPED_LEFT: Say = words::tape::LEFT_SIDE;
pub(crate) const TAPED_TOP: Say = words::tape::TOP;
pub(crate) const TAPED_HEIGHT: Say = words::tape::STRAIGHT_UP;
pub(crate) const A_CHECK: Say = words::tape::IF_TAPED;
pub(crate) const TAPED_PITCH: Say = words::common::PITCH;
pub(crate) const PITCH_TYPED: Say = words::tape::AS_A_PITCH;
pub(crate) const PITCH_BY_LEVEL: Say = words::tape::BY_A_LEVEL;
pub(crate) const PITCH_AS_TYPED: Say = words::tape::PITCH_AS_TYPED;
pub(crate) const PITCH_TYPED_HELP: Say = words::tape::OR_12_OVER_24;
pub(crate) const LEVEL_RISE: Say = words::tape::RISE;
pub(crate) const LEVEL_RISE_HELP: Say = words::tape::HOLD_THE_LEVEL_LEVEL_WITH;
pub(crate) const LEVEL_LONG: Say = words::tape::LENGTH_OF_THE_LEVEL;
pub(crate) const SPREAD_LIMIT: Say = words::tape::SPREAD_AT_MOST;
pub(crate) const SPREAD_LIMIT_HELP: Say = words::tape::READINGS_THAT_ARE_CORRECTED_BY;
pub(crate) const WHERE_TO: Say = words::tape::LAY_IT;
pub(crate) const BESIDE_THE_ROOF: Say = words::tape::BESIDE_THE_ROOF;
pub(crate) const SELECT_A_SIDE: Say = words::tape::TO_JOIN_IT_TO_A;
pub(crate) const ADD_FACE: Say = words::tape::ADD_FACE;
pub(crate) const ADD_CORNER_TAPED: Say = words::tape::ONE_CORNER_MORE;
pub(crate) const LESS_CORNER_TAPED: Say = words::tape::ONE_CORNER_LESS;
pub(crate) const ADD_DIAGONAL: Say = words::tape::ANOTHER_DIAGONAL;
pub(crate) const TAKE_DIAGONAL: Say = words::tape::TAKE_THIS_DIAGONAL_AWAY;
pub(crate) const DIAGONAL_FROM: Say = words::tape::DIAGONAL_FROM_CORNER;
pub(crate) const DIAGONAL_TO: Say = words::tape::TO_CORNER;
pub(crate) const LIVE_PICTURE: Say = words::tape::PICTURE_OF_THE_FACE_AS;

pub(crate) fn side_between(from: usize, to: usize) -> String {
    words::tape::side(&(from + 1), &(to + 1))
}

pub(crate) fn diagonal_between(from: usize, to: usize) -> String {
    words::tape::diagonal(&(from + 1), &(to + 1))
}

/// "a  Eave"
pub(crate) fn lettered(letter: char, words: &str) -> String {
    format!("{letter}   {words}")
}

pub(crate) const STILL_NEEDED: Say = words::tape::STILL_NEEDED;

/// Which measurement is still missing.
pub(crate) fn still_needed(name: &str) -> String {
    format!("{STILL_NEEDED}{name}.")
}

/// What can't be read, and where.
pub(crate) fn wrong_in(name: &str, error: &impl std::fmt::Display) -> String {
    format!("{name}: {error}.")
}

/// "+ 1/2""
pub(crate) fn correction(by: Length, units: Units) -> String {
    let sign = if by < Length::ZERO { "−" } else { "+" };
    format!("{sign} {}", by.abs().show_small(units))
}

pub(crate) fn closes(closing_error: Length, spare: usize, units: Units) -> String {
    match spare {
        0 => words::tape::NOTHING_CHECKS_THESE_READINGS_ONE.now().to_owned(),
        _ if closing_error < Length::from_mm(0.5) => words::tape::THE_READINGS_AGREE.now().to_owned(),
        _ => words::tape::the_readings_miss_by_at(&closing_error.show_small(units)),
    }
}

pub(crate) fn suspect(name: &str) -> String {
    words::tape::if_one_was_misread_it(&name)
}

/// "with its top on side 3 of South"
pub(crate) fn against(own: &str, side: usize, face: &str) -> String {
    words::tape::on_side_of(&own.to_lowercase(), &(side + 1), &face)
}
