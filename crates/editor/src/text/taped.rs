//! Words about a face from measurements.

use chalkcourse_geometry::{Length, Units};

pub(crate) const TAPED_FACE: &str = "Face from measurements…";
pub(crate) const FROM_MEASUREMENTS: &str = "From measurements…";
pub(crate) const TAPED_FACE_HELP: &str = "Type what a tape said on the deck: sides, diagonals, pitch";
pub(crate) const FORM: &str = "Form";
pub(crate) const FORM_TRIANGLE: &str = "Triangle";
pub(crate) const FORM_RECTANGLE: &str = "Rectangle";
pub(crate) const FORM_PARALLELOGRAM: &str = "Parallelogram";
pub(crate) const FORM_TRAPEZOID: &str = "Trapezoid";
pub(crate) const FORM_POLYGON: &str = "Any, with diagonals";
pub(crate) const TAPED_EAVE: &str = "Eave";
pub(crate) const TAPED_RIGHT: &str = "Right side";
pub(crate) const TAPED_LEFT: &str = "Left side";
pub(crate) const TAPED_TOP: &str = "Top";
pub(crate) const TAPED_HEIGHT: &str = "Straight up";
pub(crate) const A_CHECK: &str = "if taped";
pub(crate) const TAPED_PITCH: &str = "Pitch";
pub(crate) const PITCH_TYPED: &str = "as a pitch";
pub(crate) const PITCH_BY_LEVEL: &str = "by a level";
pub(crate) const PITCH_AS_TYPED: &str = "Pitch as typed";
pub(crate) const PITCH_TYPED_HELP: &str = "6:12, 26.6°, 50%, or 12\" over 24\"";
pub(crate) const LEVEL_RISE: &str = "Rise";
pub(crate) const LEVEL_RISE_HELP: &str =
    "Hold the level level with one end on the deck: from its other end straight down to the deck.";
pub(crate) const LEVEL_LONG: &str = "Length of the level";
pub(crate) const SPREAD_LIMIT: &str = "Spread at most";
pub(crate) const SPREAD_LIMIT_HELP: &str = "Readings that are corrected by more than this make no face; 1\" for a face of a house is common practice, no source.";
pub(crate) const WHERE_TO: &str = "Lay it";
pub(crate) const BESIDE_THE_ROOF: &str = "beside the roof";
pub(crate) const SELECT_A_SIDE: &str =
    "To join it to a face, select a side of that face on the drawing; then choose here which side meets it.";
pub(crate) const ADD_FACE: &str = "Add face";
pub(crate) const ADD_CORNER_TAPED: &str = "One corner more";
pub(crate) const LESS_CORNER_TAPED: &str = "One corner less";
pub(crate) const ADD_DIAGONAL: &str = "Another diagonal";
pub(crate) const TAKE_DIAGONAL: &str = "Take this diagonal away";
pub(crate) const DIAGONAL_FROM: &str = "Diagonal from corner";
pub(crate) const DIAGONAL_TO: &str = "to corner";
pub(crate) const LIVE_PICTURE: &str = "Picture of the face as typed";

pub(crate) fn side_between(from: usize, to: usize) -> String {
    format!("Side {}–{}", from + 1, to + 1)
}

pub(crate) fn diagonal_between(from: usize, to: usize) -> String {
    format!("Diagonal {}–{}", from + 1, to + 1)
}

/// "a  Eave"
pub(crate) fn lettered(letter: char, words: &str) -> String {
    format!("{letter}   {words}")
}

pub(crate) const STILL_NEEDED: &str = "Still needed: ";

/// Which reading is still needed.
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
        0 => "Nothing checks these readings: one diagonal more would.".to_owned(),
        _ if closing_error < Length::from_mm(0.5) => "The readings agree.".to_owned(),
        _ => format!(
            "The readings miss by {} at most. It is spread over all of them (least squares, each weighing the same).",
            closing_error.show_small(units)
        ),
    }
}

pub(crate) fn suspect(name: &str) -> String {
    format!("If one was misread, it is most likely: {name}.")
}

/// "with its top on side 3 of South"
pub(crate) fn against(own: &str, side: usize, face: &str) -> String {
    format!("{} on side {} of {face}", own.to_lowercase(), side + 1)
}
