//! Help texts of text and choice fields, by their labels. Number fields have help with unit, range and source of their
//! own.

use super::*;
use chalkcourse_words::{self as words, Say};

const HELP: [(Say, Say); 27] = [
    (NAME, words::help::WHAT_PEOPLE_CALL_IT_ON),
    (ADDRESS, words::help::WHERE_THE_HOUSE_STANDS_AS),
    (NOTES, words::help::WHAT_THE_CREW_MUST_KNOW),
    (UNITS, words::help::HOW_LENGTHS_ARE_SHOWN_ANY),
    (MODULES_LIE, words::help::WHICH_SIDE_OF_A_MODULE),
    (FACE, words::help::THE_FACE_THAT_THE_BLOCK),
    (KIND, words::help::WHAT_COMES_THROUGH_THE_ROOF),
    (SHAPE, words::help::ROUND_FOR_PIPES_A_RECTANGLE),
    (WAY, words::help::HOW_ROWS_LIE_TO_ONE),
    (SIZE_BY, words::help::WHETHER_THE_SIZE_OF_THE),
    (LAID_TO_BE, words::help::OF_ALL_ARRAYS_OF_THIS),
    (PART_KIND, words::help::WHAT_IT_IS_IN_A),
    (BLOCK, words::help::WHICH_BLOCK_IS_SPOKEN_OF),
    (REASON, words::help::WHY_THE_LINE_DIFFERS_FROM),
    (TAKE_INSTEAD, words::help::ANOTHER_PART_OF_THE_PRICE),
    (LINE_PACKAGE, words::help::WHAT_ONE_OF_IT_IS),
    (LINE_GROUP, words::help::UNDER_WHICH_HEADING_IT_STANDS),
    (LINE_STAGE, words::help::THE_STAGE_OF_WORK_THAT),
    (DELIVERY_DATE, words::help::YEAR_MONTH_DAY_2026_11),
    (DELIVERY_BY, words::help::WHO_COUNTED_AND_CAN_BE),
    (DELIVERY_NOTE, words::help::WHAT_THE_SUPPLIER_MUST_KNOW),
    (LEVEL_WITH, words::help::WHAT_THE_BASE_LINE_RUNS),
    (FACE_OF_WINDOW, words::help::WHICH_FACE_IS_SPOKEN_OF),
    (FORM, words::help::WHAT_SHAPE_THE_FACE_HAS),
    (TAPED_PITCH, words::help::HOW_THE_PITCH_WAS_FOUND),
    (COVERED_ANEW, words::help::HOW_MUCH_OF_THE_ROOF),
    (WASTE_AS, words::help::HANDBOOKS_GIVE_SHINGLES_10_ON),
];

/// The help of a field by its label; empty for one that has its own.
pub(crate) fn help_of(label: &str) -> &'static str {
    HELP.iter().find(|(words, _)| words.now() == label).map_or("", |(_, help)| help.now())
}
