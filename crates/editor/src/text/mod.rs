//! All words of the window, in one place, so that they can be reviewed and translated.
//!
//! - here: fixed words
//! - `formats`: geographic positions, import and export in open formats
//! - `rules`: the building, the rule book, the checklist, costs
//! - `arrange`, `coursing`, `fit_up`: filling and arranging, courses, a deck as measured
//! - `lesson`: the introductory lesson; the glossary
//! - `order`: the order's pane
//! - `part`: parts of the house
//! - `picture`: the picture under the plan
//! - `taped`: a face by measurements
//! - `desk`: the panes beside the drawing
//! - `wires`: circuits and junction boxes
//! - `solid`: the 3-D view, the homeowner's view
//! - `drawing`, `files`, `lists`, `steps`: sentences with names and numbers in them

use chalkcourse_words::{self as words, Say};
mod arrange;
mod coursing;
mod desk;
mod drawing;
mod files;
mod fit_up;
mod formats;
mod help;
mod lesson;
mod limits;
mod lists;
mod order;
mod part;
mod picture;
mod rules;
mod solid;
mod steps;
mod taped;
mod wires;

pub(crate) use arrange::*;
pub(crate) use chalkcourse_words::sentence;
pub(crate) use coursing::*;
pub(crate) use desk::*;
pub(crate) use drawing::*;
pub(crate) use files::*;
pub(crate) use fit_up::*;
pub(crate) use formats::*;
pub(crate) use help::help_of;
pub(crate) use lesson::*;
pub(crate) use limits::*;
pub(crate) use lists::*;
pub(crate) use order::*;
pub(crate) use part::*;
pub(crate) use picture::*;
pub(crate) use rules::*;
pub(crate) use solid::*;
pub(crate) use steps::*;
pub(crate) use taped::*;
pub(crate) use wires::*;

// Commands
pub(crate) const MENU_FILE: Say = words::window::FILE;
pub(crate) const MENU_EDIT: Say = words::window::EDIT;
pub(crate) const MENU_VIEW: Say = words::window::VIEW;
pub(crate) const MENU_HELP: Say = words::window::HELP;
pub(crate) const NEW: Say = words::window::NEW_JOB;
pub(crate) const OPEN: Say = words::window::OPEN_JOB;
pub(crate) const OPEN_RECENT: Say = words::window::OPEN_RECENT;
pub(crate) const OPEN_SAMPLE: Say = words::window::OPEN_THE_SAMPLE;
pub(crate) const SAVE: Say = words::common::SAVE;
pub(crate) const SAVE_AS: Say = words::common::SAVE_AS;
pub(crate) const EXPORT: Say = words::window::EXPORT;
pub(crate) const EXPORT_HELP: Say = words::window::WRITE_WHAT_TO_ORDER_TO;
pub(crate) const EXPORT_WORKBOOK: Say = words::window::ORDER_AS_XLSX;
pub(crate) const EXPORT_BY_PART: Say = words::window::ORDER_TO_PRINT_BY_PART;
pub(crate) const EXPORT_BY_STAGE: Say = words::window::ORDER_TO_PRINT_BY_STAGE;
pub(crate) const PRINT_BUILD: Say = words::window::PLAN_TO_BUILD_FROM_TO;
pub(crate) const EXPORT_SVG: Say = words::window::PLAN_AS_SVG;
pub(crate) const COPY_PICTURE: Say = words::window::COPY_THE_DRAWING_AS_A;
pub(crate) const COPY_SVG: Say = words::window::COPY_THE_DRAWING_AS_SVG;
pub(crate) const COPY_STEPS: Say = words::window::COPY_THE_STEPS_SINCE_OPENING;
pub(crate) const SAVE_STEPS: Say = words::window::STEPS_SINCE_OPENING_AS_EDITS;
pub(crate) const STEPS_COPIED: Say = words::window::THE_STEPS_ARE_ON_THE;
pub(crate) const CANT_COPY_STEPS: Say = words::window::THE_STEPS_COULD_NOT_BE;
pub(crate) const PICTURE_COPIED: Say = words::window::THE_DRAWING_IS_ON_THE;
pub(crate) const SVG_COPIED: Say = words::window::THE_DRAWING_IS_ON_THE_CLIPBOARD;
pub(crate) const PRINT_CHECKLIST: Say = words::window::CHECKLIST_TO_PRINT;
pub(crate) const PRINT_PALLET: Say = words::window::PALLET_LIST_TO_PRINT;
pub(crate) const PRINT_CLAIM: Say = words::window::DELIVERY_CLAIM_TO_PRINT;
pub(crate) const PRINT: Say = words::window::PRINT;
pub(crate) const PRINT_HELP: Say = words::window::WRITE_A_PDF_OF_THIS;
pub(crate) const EXPORT_TEXT: Say = words::window::ORDER_AS_TEXT;
pub(crate) const EXPORT_CSV: Say = words::window::ORDER_AS_CSV;
pub(crate) const EXPORT_JSON: Say = words::window::ORDER_AS_JSON;
pub(crate) const LOAD_KIT: Say = words::window::LOAD_A_KIT;
pub(crate) const LOAD_RULE_BOOK: Say = words::window::LOAD_A_RULE_BOOK;
pub(crate) const LOAD_PRICES: Say = words::window::LOAD_A_PRICE_LIST;
pub(crate) const QUIT: Say = words::window::QUIT;
pub(crate) const UNDO: Say = words::window::UNDO;
pub(crate) const REDO: Say = words::window::REDO;
pub(crate) const DELETE: Say = words::window::DELETE_WHAT_IS_SELECTED;
pub(crate) const COPY_HELD: Say = words::window::COPY;
pub(crate) const CUT: Say = words::window::CUT;
pub(crate) const PASTE: Say = words::window::PASTE;
pub(crate) const DUPLICATE: Say = words::window::DUPLICATE;
pub(crate) const ZOOM_IN: Say = words::window::NEARER;
pub(crate) const ZOOM_OUT: Say = words::window::FARTHER;
pub(crate) const LARGER: Say = words::window::LARGER;
pub(crate) const SMALLER: Say = words::window::SMALLER;
pub(crate) const USUAL_SIZE: Say = words::window::USUAL_SIZE;
pub(crate) const START_PAGE: Say = words::window::START_PAGE;
pub(crate) const FIT: Say = words::window::FIT;
pub(crate) const FIT_HELP: Say = words::window::SHOW_ALL_OF_IT;
pub(crate) const PLAN_VIEW: Say = words::common::PLAN;
pub(crate) const PLAN_HELP: Say = words::window::THE_ROOF_FROM_ABOVE_NORTH;
pub(crate) const FACE_ON_VIEW: Say = words::window::FACE_ON;
pub(crate) const FACE_ON_HELP: Say = words::window::ONE_FACE_TRUE_TO_SIZE;
pub(crate) const FACE_SHOWN: Say = words::window::FACE_SHOWN;
pub(crate) const COURSES_IN_PLAN: Say = words::window::COURSE_LINES_IN_PLAN;
pub(crate) const THEME: Say = words::window::DARK_OR_LIGHT;
pub(crate) const TO_LIGHT: Say = words::window::LIGHT;
pub(crate) const TO_DARK: Say = words::window::DARK;
pub(crate) const FEET_INCHES: Say = words::window::FEET_AND_INCHES;
pub(crate) const METRIC: Say = words::window::METRIC;
pub(crate) const CAUTIONS: Say = words::window::BEFORE_ANYONE_CLIMBS;
pub(crate) const GO_TO_MENUS: Say = words::window::MENUS;
pub(crate) const HELD_MENU: Say = words::window::HELD_MENU;
pub(crate) const KEYS: Say = words::window::KEYS;
pub(crate) const FIND_COMMAND: Say = words::window::FIND_A_COMMAND;
pub(crate) const FIND_FIELD: Say = words::window::WHAT_TO_DO;
pub(crate) const FIND_HINT: Say = words::window::TYPE_A_WORD_OF_WHAT;
pub(crate) const FIND_NOTHING: Say = words::window::NO_COMMAND_HAS_THESE_WORDS;
pub(crate) const FIND_NOT_NOW: Say = words::window::THERE_IS_NOTHING_THAT_THIS;
pub(crate) const OK: Say = words::window::OK;
pub(crate) const CLOSE: Say = words::common::CLOSE;
pub(crate) const CANCEL: Say = words::window::CANCEL;

/// Keys that don't trigger commands.
pub(crate) const OTHER_KEYS: [(Say, Say); 13] = [
    (words::window::NUDGE_BY_1_IN, words::window::ARROW_KEYS),
    (words::window::NUDGE_BY_1_FT, words::window::SHIFT_ARROW_KEYS),
    (words::window::NUDGE_BY_1_16_IN, words::window::ALT_ARROW_KEYS),
    (words::window::AIM_WHILE_DRAWING, words::window::AIM_KEYS),
    (words::window::SWITCH_THE_SELECTED_MODULE, words::window::X_OR_DOUBLE_CLICK),
    (words::window::HOLD_SEVERAL_THINGS, words::window::DRAG_A_BOX_OR_SHIFT),
    (words::window::ADD_A_CORNER_TO_A, words::window::DOUBLE_CLICK_THE_SIDE),
    (words::window::DRAG_WITHOUT_SNAPPING, words::window::CTRL_OR_ALT),
    (words::window::DRAG_ONE_FACES_CORNER_ALONE, words::window::SHIFT),
    (words::window::LET_GO_GIVE_UP_A, words::window::ESC),
    (words::window::PAN, words::window::SPACE_MIDDLE_OR_RIGHT_DRAG),
    (words::order::WALK_ROWS, words::order::WALK_KEYS),
    (words::order::LEAVE_LINE, words::order::SPACE_BAR),
];

/// A key with its modifiers, as labelled on keyboards of the language.
pub(crate) fn key_words(ctx: &egui::Context, key: &egui::KeyboardShortcut) -> String {
    let words = ctx.format_shortcut(key);
    let spanish = [
        ("Shift", "Mayús"),
        ("Right", "Derecha"),
        ("Left", "Izquierda"),
        ("Down", "Abajo"),
        ("Up", "Arriba"),
        ("Delete", "Supr"),
    ];
    if chalkcourse_words::spoken() != chalkcourse_words::Language::SPANISH {
        return words;
    }
    let named = |part| spanish.iter().find(|(name, _)| *name == part).map_or(part, |(_, own)| *own);
    words.split('+').map(named).collect::<Vec<_>>().join("+")
}

// Tools
pub(crate) const TOOL_SELECT: Say = words::window::SELECT;
pub(crate) const TOOL_FACE: Say = words::window::DRAW_FACE;
pub(crate) const TOOL_PENETRATION: Say = words::window::PENETRATION;
pub(crate) const TOOL_BLOCK: Say = words::common::BLOCK;
pub(crate) const TOOL_TAPE: Say = words::window::TAPE;
pub(crate) const NEXT_LENGTH: Say = words::window::LENGTH_OF_THIS_SIDE;
pub(crate) const ANGLE: Say = words::window::ANGLE;
pub(crate) const ANGLE_HELP: Say = words::window::TO_THE_SIDE_BEFORE_ON;
pub(crate) const BEARING: Say = words::window::BEARING;
pub(crate) const BEARING_HELP: Say = words::window::OF_THE_FIRST_SIDE_BY;
pub(crate) const SIZE: Say = words::window::SIZE;
pub(crate) const CUT_SIZE: Say = words::window::SIZE_OF_THE_NOTCH;
pub(crate) const TWO_LENGTHS: Say = words::window::TYPE_BOTH_LENGTHS_ACROSS_AND;
pub(crate) const NO_ANGLE: Say = words::window::TYPE_THE_ANGLE_IN_DEGREES;
pub(crate) const SHAPE_NOT_WHOLE: Say = words::window::SET_THE_CORNER_ACROSS_OR;
pub(crate) const SQUARE_TO_FIRST: Say = words::window::SQUARE_TO_THE_FIRST_SIDE;
pub(crate) const SQUARE_IT: Say = words::window::SQUARE_IT;
pub(crate) const SQUARE_IT_HELP: Say = words::window::TURNS_SIDES_THAT_ARE_NEARLY;
pub(crate) const CLOSE_FACE: Say = words::window::CLOSE_THE_OUTLINE;
pub(crate) const TAKE_BACK_CORNER: Say = words::window::TAKE_BACK_A_CORNER;

// The drawing
pub(crate) const NORTH: &str = "N";
pub(crate) const EAST_WEST: Say = words::window::DUE_EAST_WEST;
pub(crate) const NORTH_SOUTH: Say = words::window::DUE_NORTH_SOUTH;
pub(crate) const DIAGONAL: Say = words::window::AT_45;
pub(crate) const LEVEL_WITH_START: Say = words::window::IN_LINE_WITH_A_CORNER;
pub(crate) const CLOSES: Say = words::window::CLOSES_THE_FACE;
pub(crate) const CENTRED: Say = words::window::IN_THE_MIDDLE_OF_THE;
pub(crate) const NO_DIRECTION: Say = words::window::POINT_WHERE_THE_SIDE_SHOULD;
pub(crate) const LENGTH_NOT_POSITIVE: Say = words::window::A_SIDE_IS_LONGER_THAN;
pub(crate) const THREE_CORNERS: Say = words::window::AN_OUTLINE_HAS_AT_LEAST;
pub(crate) const NO_AREA: Say = words::window::THESE_CORNERS_LIE_ON_ONE;
pub(crate) const HOLE_IN_NO_FACE: Say = words::window::A_HOLE_LIES_INSIDE_ONE;
pub(crate) const NO_FACE_HERE: Say = words::window::THERE_IS_NO_FACE_HERE;
pub(crate) const NO_FACE_YET: Say = words::window::THERE_IS_NO_FACE_TO;
pub(crate) const LAST_CORNERS: Say = words::window::A_FACE_KEEPS_ITS_LAST;
pub(crate) const DELETE_ON_DRAWING: Say = words::window::DELETE_IS_FOR_WHAT_IS;
pub(crate) const SWITCH_ON: Say = words::window::SWITCH_THIS_MODULE_ON;
pub(crate) const SWITCH_OFF: Say = words::window::SWITCH_THIS_MODULE_OFF;
pub(crate) const SWITCH_ALL_ON: Say = words::window::SWITCH_ALL_MODULES_ON;
pub(crate) const ADD_CORNER: Say = words::window::ADD_A_CORNER_HERE;
pub(crate) const DELETE_CORNER: Say = words::window::DELETE_THIS_CORNER;
pub(crate) const DELETE_BLOCK: Say = words::window::DELETE_THE_BLOCK;
pub(crate) const DELETE_PENETRATION: Say = words::window::DELETE_THE_PENETRATION;
pub(crate) const DELETE_FACE: Say = words::window::DELETE_THE_FACE;
pub(crate) const SHOW_FACE_ON: Say = words::window::SHOW_FACE_ON;
pub(crate) const PLACE_BLOCK: Say = words::window::PLACE_A_BLOCK;

// First steps
pub(crate) const EMPTY_TITLE: Say = words::window::START_WITH_THE_ROOF;
pub(crate) const EMPTY_STEPS: [Say; 3] = [
    words::window::DRAW_THE_WALLS_ONE_CORNER,
    words::window::MARK_WHAT_COMES_THROUGH_THE,
    words::window::PLACE_A_BLOCK_OF_MODULES,
];
pub(crate) const RAISE_OVER_WALLS: Say = words::window::RAISE_A_ROOF_OVER_THE;
pub(crate) const EMPTY_DRAW: Say = words::window::DRAW_A_FACE;
pub(crate) const EMPTY_OPEN: Say = words::window::OPEN_A_JOB;

// Fields
pub(crate) const NEW_JOB: Say = words::window::NEW_JOB;
pub(crate) const THE_JOB: Say = words::window::THE_JOB;
pub(crate) const NAME: Say = words::window::NAME;
pub(crate) const ADDRESS: Say = words::common::ADDRESS;
pub(crate) const NOTES: Say = words::window::CREW_NOTES;
pub(crate) const UNITS: Say = words::window::UNITS;
pub(crate) const KIT: Say = words::common::KIT;
pub(crate) const RULE_BOOK: Say = words::common::RULE_BOOK;
pub(crate) const PRICES: Say = words::common::PRICE_LIST;
pub(crate) const LOAD: Say = words::common::LOAD;
pub(crate) const NO_NAME: Say = words::window::A_NAME_IS_NEEDED;
pub(crate) const BAD_COUNT: Say = words::window::TYPE_A_WHOLE_NUMBER_FROM;
pub(crate) const PITCH: Say = words::common::PITCH;
pub(crate) const PITCH_HELP: Say = words::window::RISE_IN_12_OF_RUN;
pub(crate) const DOWNSLOPE: Say = words::window::DOWNSLOPE;
pub(crate) const DOWNSLOPE_HELP: Say = words::window::THE_WAY_THAT_WATER_RUNS;
pub(crate) const HEIGHT: Say = words::common::EAVE_HEIGHT;
pub(crate) const HEIGHT_HELP: Say = words::window::HEIGHT_OF_THE_FACE_AT;
pub(crate) const EXPOSURE: Say = words::common::EXPOSURE_2;
pub(crate) const EXPOSURE_HELP: Say = words::window::HOW_MUCH_OF_EACH_COURSE;
pub(crate) const FIRST_COURSE: Say = words::window::FIRST_COURSE_LINE;
pub(crate) const FIRST_COURSE_HELP: Say = words::window::FROM_THE_EAVE_UP_TO;
pub(crate) const SIDES: Say = words::window::SIDES_TRUE_LENGTH;
pub(crate) const WORKED_OUT: Say = words::window::WORKED_OUT_FROM_THE_ROOF;
pub(crate) const KIND_HELP: Say = words::window::THE_KIND_FOLLOWS_FROM_THE;
pub(crate) const FACE_NOT_SOUND: Say = words::window::THE_OUTLINE_FOLDS_OVER_ITSELF;
pub(crate) const EAST: Say = words::window::EAST;
pub(crate) const NORTHWARD: Say = words::window::NORTH;
pub(crate) const CORNER_HELP: Say = words::window::IN_PLAN_FROM_THE_CORNER;
pub(crate) const KIND: Say = words::window::KIND;
pub(crate) const SHAPE: Say = words::window::SHAPE;
pub(crate) const ROUND: Say = words::window::ROUND;
pub(crate) const RECTANGLE: Say = words::window::RECTANGLE;
pub(crate) const ANY_OUTLINE: Say = words::window::ANY_OUTLINE;
pub(crate) const DIAMETER: Say = words::window::ACROSS;
pub(crate) const ALONG: Say = words::window::ALONG_THE_EAVE;
pub(crate) const UP_SLOPE: Say = words::window::UP_THE_SLOPE;
pub(crate) const TAPED_HELP: Say = words::window::AS_TAPED_ON_THE_DECK;
pub(crate) const CLEARANCE: Say = words::window::CLEARANCE;
pub(crate) const CLEARANCE_HELP: Say = words::window::HOW_FAR_MODULES_STAY_AWAY;
pub(crate) const AS_THE_BOOK: Say = words::window::AS_THE_BOOK_SAYS;
pub(crate) const MIDDLE_HELP: Say = words::window::FROM_THE_LOWER_LEFT_OF;
pub(crate) const BESIDE_FACES: Say = words::window::IT_LIES_BESIDE_ALL_FACES;
pub(crate) const ROWS: Say = words::window::ROWS;
pub(crate) const ROWS_HELP: Say = words::window::FROM_THE_EAVE_UP;
pub(crate) const COLUMNS: Say = words::window::MODULES_IN_A_ROW;
pub(crate) const COLUMNS_HELP: Say = words::window::ALONG_THE_EAVE_2;
pub(crate) const MODULES_LIE: Say = words::window::MODULES_LIE;
pub(crate) const LANDSCAPE: Say = words::window::LONG_SIDE_ALONG_THE_EAVE;
pub(crate) const PORTRAIT: Say = words::window::LONG_SIDE_UP_THE_SLOPE;
pub(crate) const REVEAL: Say = words::common::REVEAL;
pub(crate) const REVEAL_HELP: Say = words::window::THE_GAP_BETWEEN_NEIGHBOURING_MODULES;
pub(crate) const FACE: Say = words::window::ON_FACE;
pub(crate) const FROM_LEFT: Say = words::common::FROM_THE_LEFT;
pub(crate) const FROM_LEFT_HELP: Say = words::window::FROM_THE_LEFT_END_OF;
pub(crate) const FROM_EAVE: Say = words::window::UP_FROM_THE_EAVE;
pub(crate) const FROM_EAVE_HELP: Say = words::window::FROM_THE_LOWEST_POINT_OF;
pub(crate) const ROW_SHIFTS: Say = words::window::SHIFT_ROWS;
pub(crate) const SHIFT_HELP: Say = words::window::TO_THE_RIGHT_AGAINST_THE;
pub(crate) const LOCKED: Say = words::window::LOCKED;
pub(crate) const LOCKED_HELP: Say = words::window::A_LOCKED_BLOCK_STAYS_WHERE;

// Lists
pub(crate) const QUANTITIES: Say = words::window::QUANTITIES;
pub(crate) const NO_QUANTITIES: Say = words::window::NOTHING_TO_ORDER_YET_PLACE;
pub(crate) const NO_PRICE: Say = words::common::NO_PRICE;
pub(crate) const ACCEPTED: Say = words::window::ACCEPTED_BY_A_PERSON;
pub(crate) const WAIVED: Say = words::common::WAIVED;
pub(crate) const FIX_HELP: Say = words::window::DO_THIS_UNDO_TAKES_IT;
pub(crate) const FIX_IS_SOUGHT: Say = words::window::LOOKING_FOR_A_FIX;
pub(crate) const NO_FIX: Say = words::window::NO_FIX_WAS_FOUND_AMONG;
pub(crate) const FEWER_MODULES: Say = words::window::NO_SINGLE_STEP_CLEARS_IT;
pub(crate) const NO_SINGLE_FIX: Say = words::window::NO_SINGLE_STEP_CLEARS_IT_THESE;
pub(crate) const WAIVE: Say = words::window::WAIVE;
pub(crate) const WAIVE_AGAIN: Say = words::window::ACCEPT_IT_AGAIN;
pub(crate) const WAIVE_HELP: Say = words::window::ACCEPT_THIS_FINDING_WITH_A;
pub(crate) const WAIVE_REASON: Say = words::window::WHY_MAY_IT_BE_BUILT;
pub(crate) const WAIVE_BY: Say = words::window::WHO_SAYS_SO;
pub(crate) const WAIVE_DO: Say = words::window::WAIVE_IT;
pub(crate) const WAIVE_NEEDS: Say = words::window::WRITE_A_REASON_AND_A;
pub(crate) const UNWAIVE: Say = words::window::TAKE_THE_WAIVER_BACK;
pub(crate) const SUMMARY_HELP: Say = words::window::MODULES_ON_THE_ROOF_THEIR;

/// A cancelled gesture, which redo can restore.
pub(crate) fn given_up(what: &chalkcourse_words::Said) -> String {
    words::window::given_up(&what)
}

// Files
pub(crate) const CANT_BE: Say = words::window::THAT_CANT_BE_DONE;
pub(crate) const CANT_OPEN: Say = words::window::THIS_FILE_CANT_BE_OPENED;
pub(crate) const CANT_SAVE: Say = words::window::THE_JOB_COULD_NOT_BE;
pub(crate) const CANT_EXPORT: Say = words::window::THE_ORDER_COULD_NOT_BE;
pub(crate) const CANT_PRINT: Say = words::window::THE_SHEET_COULD_NOT_BE;
pub(crate) const UNSAVED: Say = words::window::THE_CHANGES_SINCE_IT_WAS;
pub(crate) const SAVE_NOW: Say = words::common::SAVE;
pub(crate) const DISCARD: Say = words::window::DONT_SAVE;
pub(crate) const PATH: Say = words::window::PATH_OF_THE_FILE;
pub(crate) const REPLACE: Say = words::window::REPLACE_IT;
pub(crate) const NO_PATH: Say = words::window::TYPE_WHERE_THE_FILE_IS;
pub(crate) const IS_FOLDER: Say = words::window::THIS_IS_A_FOLDER_ADD;
pub(crate) const IS_THERE: Say = words::window::THERE_IS_A_FILE_OF;
pub(crate) const RECOVERED_TITLE: Say = words::window::UNSAVED_WORK_WAS_KEPT;
pub(crate) const RECOVERED: Say = words::window::THE_PROGRAM_DID_NOT_END;
pub(crate) const OPEN_COPY: Say = words::window::OPEN_THIS_COPY;
pub(crate) const DELETE_COPY: Say = words::window::DELETE_IT;
pub(crate) const LATER: Say = words::window::ASK_AGAIN_NEXT_TIME;
pub(crate) const RECOVERED_SAID: Say = words::window::OPENED_FROM_THE_KEPT_COPY;

// Cautions
pub(crate) const CAUTIONS_SHORT: Say = words::window::PLANNING_AID_ONLY_READ_THE;
pub(crate) const CAUTION: Say = chalkcourse_telling::order::CAUTION;
pub(crate) const CAUTIONS_LONG: [Say; 4] = [
    words::window::CHALKCOURSE_IS_A_PLANNING_AID,
    words::window::STRUCTURAL_DESIGN_BELONGS_TO_A,
    words::window::FALLS_KILL_KEEP_OFF_THE,
    words::window::DIRECT_CURRENT_KILLS_AND_IT,
];
