//! The introductory lesson, and the glossary of trade terms.

use chalkcourse_words::{self as words, Say};

pub(crate) const LESSON: Say = words::lesson::A_FIRST_JOB_STEP_BY;
pub(crate) const LESSON_SHOW: Say = words::lesson::SHOW_ME_STEP_BY_STEP;
pub(crate) const LESSON_SKIP: Say = words::lesson::SKIP_THIS_STEP;
pub(crate) const LESSON_LEAVE: Say = words::lesson::LEAVE_THE_STEPS;
pub(crate) const LESSON_END: Say = words::common::CLOSE;

pub(crate) fn lesson_place(number: usize, of: usize) -> String {
    if number >= of {
        words::lesson::ALL_DONE.now().to_owned()
    } else {
        words::lesson::step_of(&(number + 1), &of)
    }
}

pub(crate) const GLOSSARY: Say = words::lesson::WORDS_OF_THE_TRADE;
pub(crate) const GLOSSARY_FIND: Say = words::lesson::FIND_A_WORD;
pub(crate) const GLOSSARY_NONE: Say = words::lesson::NO_WORD_IS_LIKE_THAT;
pub(crate) const GLOSSARY_WHY: Say = words::lesson::AS_ROOFERS_AND_INSTALLERS_USE;

/// A term, and its meaning.
pub(crate) type Entry = (Say, Say);

pub(crate) const WORDS_OF_THE_TRADE: [Entry; 36] = [
    (words::lesson::ARRAY, words::lesson::ALL_MODULES_OF_A_JOB),
    (words::lesson::BASE_RAIL, words::lesson::THE_RAIL_UNDER_THE_LOWEST),
    (words::common::BLOCK_2, words::lesson::ROWS_OF_MODULES_THAT_INTERLOCK),
    (words::lesson::BONDING, words::lesson::JOINING_ALL_METAL_SO_THAT),
    (words::lesson::CHALK_LINE, words::lesson::A_STRAIGHT_LINE_SNAPPED_ON),
    (words::lesson::CLEARANCE, words::lesson::HOW_FAR_MODULES_STAY_AWAY),
    (words::lesson::COUNTER_FLASHING, words::lesson::FLASHING_THAT_COVERS_THE_UPPER),
    (words::lesson::COURSE, words::lesson::ONE_ROW_OF_SHINGLES_ITS),
    (words::lesson::CRICKET, words::lesson::A_SMALL_RIDGE_BEHIND_A),
    (words::lesson::DECK, words::lesson::THE_SHEATHING_OF_THE_ROOF),
    (words::lesson::DECK_MOUNTED, words::lesson::MODULES_SCREWED_STRAIGHT_TO_THE),
    (words::lesson::DOWNSLOPE, words::lesson::THE_WAY_IN_WHICH_WATER),
    (words::lesson::DRIP_EDGE, words::lesson::METAL_ALONG_EAVES_AND_RAKES),
    (words::common::EAVE, words::lesson::THE_LOWER_LEVEL_EDGE_OF),
    (words::common::EXPOSURE, words::lesson::HOW_MUCH_OF_EACH_COURSE),
    (words::common::FACE_2, words::lesson::ONE_PLANE_OF_THE_ROOF),
    (words::lesson::FINDING, words::lesson::WHAT_A_RULE_HAS_TO),
    (words::lesson::FIT_UP, words::lesson::SETTING_OUT_THE_ARRAY_ON),
    (words::lesson::FLASHING, words::lesson::SHEET_METAL_THAT_LAPS_INTO),
    (words::common::GABLE, words::lesson::THE_UPRIGHT_END_OF_A),
    (words::lesson::HEAD_FLASHING, words::lesson::FLASHING_ALONG_THE_UPPER_EDGE),
    (words::common::HIP, words::lesson::WHERE_TWO_FACES_MEET_OUTWARD),
    (words::lesson::ICE_BARRIER, words::lesson::SELF_ADHERED_MEMBRANE_ALONG_EAVES),
    (words::common::MODULE, words::lesson::ONE_SOLAR_PANEL_IT_IS),
    (words::lesson::OVERHANG, words::common::HOW_FAR_THE_ROOF_REACHES),
    (words::lesson::PATHWAY, words::lesson::A_STRIP_WITHOUT_MODULES_ON),
    (words::common::PENETRATION, words::lesson::WHAT_COMES_THROUGH_THE_ROOF),
    (words::lesson::PITCH, words::lesson::RISE_IN_12_OF_RUN),
    (words::common::RAKE, words::lesson::THE_SLOPING_EDGE_OF_A),
    (words::lesson::REVEAL, words::lesson::THE_GAP_BETWEEN_NEIGHBOURING_MODULES),
    (words::common::RIDGE, words::lesson::THE_LEVEL_LINE_AT_THE),
    (words::lesson::SETBACK, words::lesson::HOW_FAR_MODULES_STAY_AWAY_FROM),
    (words::lesson::SQUARE, words::lesson::SQUARE_FEET_OF_ROOF),
    (words::lesson::TAKEOFF, words::lesson::COUNTING_FROM_A_DRAWING_WHAT),
    (words::lesson::UNDERLAYMENT, words::lesson::THE_LAYER_ON_THE_DECK),
    (words::common::VALLEY, words::lesson::WHERE_TWO_FACES_MEET_INWARD),
];
