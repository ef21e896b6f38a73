//! Words about a deck as measured.

use chalkcourse_geometry::fit_up::{Along, Deck, Snap};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_words::{self as words, Put, Said, Say, later};

pub(crate) const FIT_UP: Say = words::fitup::FIT_UP_OF_A_DECK;
pub(crate) const FACE_OF_WINDOW: Say = words::common::FACE;
pub(crate) const FIT_UP_WHY: Say = words::fitup::TYPE_WHAT_THE_TAPE_READS;
pub(crate) const MEASURED: Say = words::fitup::MEASURED_ON_THE_DECK;
pub(crate) const MEASURED_EAVE: Say = words::fitup::WIDTH_AT_THE_EAVE;
pub(crate) const MEASURED_HEAD: Say = words::fitup::WIDTH_AT_THE_HEAD;
pub(crate) const MEASURED_LEFT: Say = words::fitup::LEFT_RAKE;
pub(crate) const MEASURED_RIGHT: Say = words::fitup::RIGHT_RAKE;
pub(crate) const MEASURED_RISING: Say = words::fitup::RISING_DIAGONAL;
pub(crate) const MEASURED_FALLING: Say = words::fitup::FALLING_DIAGONAL;
pub(crate) const RISING_HELP: Say = words::fitup::FROM_THE_LEFT_END_OF;
pub(crate) const FALLING_HELP: Say = words::fitup::FROM_THE_RIGHT_END_OF;
pub(crate) const SIDE_HELP: Say = words::fitup::FROM_CORNER_TO_CORNER_ON;
pub(crate) const SIDE_EAVE: Say = words::common::EAVE;
pub(crate) const SIDE_HEAD: Say = words::fitup::HEAD;
pub(crate) const SIDE_LEFT: Say = words::fitup::LEFT;
pub(crate) const SIDE_RIGHT: Say = words::fitup::RIGHT;
pub(crate) const BOWS: Say = words::fitup::BOWS_AT_THE_MIDDLE_OF;
pub(crate) const BOW_EAVE: Say = words::fitup::BOW_OF_THE_EAVE;
pub(crate) const BOW_HEAD: Say = words::fitup::BOW_OF_THE_HEAD;
pub(crate) const BOW_LEFT: Say = words::fitup::BOW_OF_THE_LEFT_RAKE;
pub(crate) const BOW_RIGHT: Say = words::fitup::BOW_OF_THE_RIGHT_RAKE;
pub(crate) const BOW_HELP: Say = words::fitup::FROM_THE_STRING_BETWEEN_THE;
pub(crate) const AS_DRAWN: Say = words::fitup::AS_DRAWN;
pub(crate) const AS_DRAWN_HELP: Say = words::fitup::FORGET_WHAT_WAS_MEASURED_AND;
pub(crate) const NOT_FOUR: Say = words::fitup::THIS_FACE_HAS_NOT_FOUR;
pub(crate) const STILL_TO_MEASURE: Say = words::fitup::STILL_TO_MEASURE_BOTH_WIDTHS;
pub(crate) const OUT_OF_SQUARE: Say = words::fitup::OUT_OF_SQUARE;
pub(crate) const BASE_LINE: Say = words::fitup::BASE_LINE;
pub(crate) const LINE_UP: Say = words::fitup::UP_FROM_THE_EAVE;
pub(crate) const LINE_UP_HELP: Say = words::fitup::WHERE_THE_BASE_RAIL_LINE;
pub(crate) const LEVEL_WITH: Say = words::fitup::LEVEL_WITH;
pub(crate) const THE_ROW: Say = words::fitup::THE_ROW;
pub(crate) const MODULE_VARIES: Say = words::fitup::A_MODULE_VARIES_BY;
pub(crate) const MODULE_VARIES_HELP: Say = words::fitup::HOW_MUCH_ONE_MAY_BE;
pub(crate) const REVEAL_VARIES: Say = words::fitup::A_REVEAL_IS_SET_TO;
pub(crate) const REVEAL_VARIES_HELP: Say = words::fitup::HOW_FAR_ONE_REVEAL_CAN;
pub(crate) const SET_REVEAL: Say = words::fitup::SET_THIS_REVEAL;
pub(crate) const SET_REVEAL_HELP: Say = words::fitup::GIVE_THE_BLOCK_THIS_REVEAL;
pub(crate) const COPY_FIT_UP: Say = words::fitup::COPY_AS_TEXT;
pub(crate) const FIT_UP_COPIED: Say = words::fitup::THE_FIT_UP_IS_ON;

pub(crate) fn along(along: Along) -> &'static str {
    match along {
        Along::Eave => words::fitup::THE_EAVE.now(),
        Along::Head => words::fitup::THE_HEAD.now(),
        Along::Between => words::fitup::HALFWAY_BETWEEN.now(),
    }
}
pub(crate) fn measure_deck_of(face: impl Put) -> Said {
    later::fitup::measure_the_deck_of(&face)
}
pub(crate) fn set_reveal_of(block: impl Put) -> Said {
    later::fitup::set_the_reveal_of(&block)
}

fn small(metres: f64, units: Units) -> String {
    Length::from_metres(metres.abs()).show_small(units)
}

/// How a deck is out of square, in sentences.
pub(crate) fn deck(deck: &Deck, square: f64, units: Units) -> Vec<String> {
    let lean = |name: &str, by: f64| {
        if by.abs() < 0.5 / 1000.0 {
            words::fitup::the_rake_is_square_to(&name)
        } else {
            let way = if by > 0.0 { words::fitup::RIGHT_2.now() } else { words::fitup::LEFT_2.now() };
            words::fitup::the_rake_leans_to_the(&name, &small(by, units), &way)
        }
    };
    let mut said = vec![
        lean(words::fitup::LEFT.now(), deck.racked_left),
        lean(words::fitup::RIGHT.now(), deck.racked_right),
    ];
    said.push(if deck.head_out_of_parallel.abs() < 0.5 / 1000.0 {
        words::fitup::HEAD_AND_EAVE_ARE_PARALLEL.now().to_owned()
    } else {
        let end = if deck.head_out_of_parallel > 0.0 {
            words::fitup::RIGHT.now()
        } else {
            words::fitup::LEFT.now()
        };
        words::fitup::the_head_is_farther_from(&small(deck.head_out_of_parallel, units), &end)
    });
    said.push(words::fitup::square_with_this_eave_and(&Length::from_metres(square).show(units)));
    if deck.closing.abs() > 0.5 / 1000.0 {
        said.push(words::fitup::the_measures_disagree_by_spread(
            &small(deck.closing, units),
            &small(deck.adjusted, units),
        ));
    }
    said
}

pub(crate) fn snap(snap: &Snap, units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    words::fitup::snap_it_up_at_the(&show(snap.at_left), &show(snap.at_right), &show(snap.at_middle))
}

/// "6" kept free at the left and 6" at the right."
pub(crate) fn kept_beside((left, right): (f64, f64), units: Units) -> String {
    words::fitup::kept_free_at_the_left(&small(left, units), &small(right, units))
}
pub(crate) fn picture(times: f64) -> String {
    if times > 1.0 {
        words::fitup::solid_as_measured_what_is(&format_args!("{times:.0}"))
    } else {
        words::fitup::SOLID_AS_MEASURED_DASHED_SQUARE.now().to_owned()
    }
}
