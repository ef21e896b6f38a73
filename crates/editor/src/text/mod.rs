//! Every word that the window says, in one place: so that it can be read through, and put into another language.
//!
//! - here: words that never change
//! - `formats`: places on the globe, buildings that come in and go out in open formats
//! - `rules`: the house, the rule book, the checklist, costs
//! - `arrange`, `coursing`, `fit_up`: filling and arranging, courses, a deck as measured
//! - `order`: the order's window
//! - `part`: parts of the house
//! - `picture`: the picture under the plan
//! - `taped`: a face from measurements
//! - `solid`: the house in space, the view for its owner
//! - `drawing`, `files`, `lists`, `steps`: sentences with names and numbers in them

mod arrange;
mod coursing;
mod drawing;
mod files;
mod fit_up;
mod formats;
mod lists;
mod order;
mod part;
mod picture;
mod rules;
mod solid;
mod steps;
mod taped;

pub(crate) use arrange::*;
pub(crate) use coursing::*;
pub(crate) use drawing::*;
pub(crate) use files::*;
pub(crate) use fit_up::*;
pub(crate) use formats::*;
pub(crate) use lists::*;
pub(crate) use order::*;
pub(crate) use part::*;
pub(crate) use picture::*;
pub(crate) use rules::*;
pub(crate) use solid::*;
pub(crate) use steps::*;
pub(crate) use taped::*;

// Commands
pub(crate) const MENU_FILE: &str = "File";
pub(crate) const MENU_EDIT: &str = "Edit";
pub(crate) const MENU_VIEW: &str = "View";
pub(crate) const MENU_HELP: &str = "Help";
pub(crate) const NEW: &str = "New job";
pub(crate) const OPEN: &str = "Open job…";
pub(crate) const OPEN_RECENT: &str = "Open recent";
pub(crate) const OPEN_SAMPLE: &str = "Open the sample";
pub(crate) const SAVE: &str = "Save";
pub(crate) const SAVE_AS: &str = "Save as…";
pub(crate) const EXPORT: &str = "Export";
pub(crate) const EXPORT_HELP: &str = "Write what to order: to print, for a spreadsheet, to read, or for another program; what the crew prints; or the plan for maps, the house for 3-D programs";
pub(crate) const EXPORT_WORKBOOK: &str = "Order as XLSX…";
pub(crate) const EXPORT_BY_PART: &str = "Order to print, by part…";
pub(crate) const EXPORT_BY_STAGE: &str = "Order to print, by stage…";
pub(crate) const PRINT_CHECKLIST: &str = "Checklist to print…";
pub(crate) const PRINT_PALLET: &str = "Pallet list to print…";
pub(crate) const PRINT_CLAIM: &str = "Delivery claim to print…";
pub(crate) const PRINT: &str = "Print…";
pub(crate) const PRINT_HELP: &str = "Write a PDF of this list, with boxes to tick";
pub(crate) const EXPORT_TEXT: &str = "Order as text…";
pub(crate) const EXPORT_CSV: &str = "Order as CSV…";
pub(crate) const EXPORT_JSON: &str = "Order as JSON…";
pub(crate) const LOAD_KIT: &str = "Load a kit…";
pub(crate) const LOAD_RULE_BOOK: &str = "Load a rule book…";
pub(crate) const LOAD_PRICES: &str = "Load a price list…";
pub(crate) const QUIT: &str = "Quit";
pub(crate) const UNDO: &str = "Undo";
pub(crate) const REDO: &str = "Redo";
pub(crate) const DELETE: &str = "Delete what is selected";
pub(crate) const FIT: &str = "Fit";
pub(crate) const FIT_HELP: &str = "Show all of it";
pub(crate) const PLAN_VIEW: &str = "Plan";
pub(crate) const PLAN_HELP: &str = "The roof from above, north up  (1)";
pub(crate) const FACE_ON_VIEW: &str = "Face-on";
pub(crate) const FACE_ON_HELP: &str = "One face true to size, its eave down  (2)";
pub(crate) const FACE_SHOWN: &str = "Face shown";
pub(crate) const COURSES_IN_PLAN: &str = "Course lines in plan";
pub(crate) const THEME: &str = "Dark or light";
pub(crate) const TO_LIGHT: &str = "Light";
pub(crate) const TO_DARK: &str = "Dark";
pub(crate) const FEET_INCHES: &str = "Feet and inches";
pub(crate) const METRIC: &str = "Metric";
pub(crate) const CAUTIONS: &str = "Before anyone climbs";
pub(crate) const KEYS: &str = "Keys";
pub(crate) const FIND_COMMAND: &str = "Find a command…";
pub(crate) const FIND_FIELD: &str = "What to do";
pub(crate) const FIND_HINT: &str = "Type a word of what you want to do";
pub(crate) const FIND_NOTHING: &str = "No command has these words. Try one of them alone.";
pub(crate) const FIND_NOT_NOW: &str = "There is nothing that this could be done to at present.";
pub(crate) const OK: &str = "OK";
pub(crate) const CLOSE: &str = "Close";
pub(crate) const CANCEL: &str = "Cancel";

/// Keys that are no commands.
pub(crate) const OTHER_KEYS: [(&str, &str); 9] = [
    ("Nudge by 1 in", "Arrow keys"),
    ("Nudge by 1 ft", "Shift + arrow keys"),
    ("Nudge by 1/16 in", "Alt + arrow keys"),
    ("Switch the selected module", "X or double-click"),
    ("Add a corner to a side", "Double-click the side"),
    ("Drag without snapping", "Ctrl or Alt"),
    ("Drag one face's corner alone", "Shift"),
    ("Let go, give up a drag, or close a window", "Esc"),
    ("Pan", "Space, middle or right drag"),
];

// Tools
pub(crate) const TOOL_SELECT: &str = "Select";
pub(crate) const TOOL_FACE: &str = "Draw face";
pub(crate) const TOOL_PENETRATION: &str = "Penetration";
pub(crate) const TOOL_BLOCK: &str = "Block";
pub(crate) const TOOL_TAPE: &str = "Tape";
pub(crate) const NEXT_LENGTH: &str = "Length of this side";
pub(crate) const CLOSE_FACE: &str = "Close the outline";
pub(crate) const TAKE_BACK_CORNER: &str = "Take back a corner";

// The drawing
pub(crate) const NORTH: &str = "N";
pub(crate) const EAST_WEST: &str = "due east–west";
pub(crate) const NORTH_SOUTH: &str = "due north–south";
pub(crate) const DIAGONAL: &str = "at 45°";
pub(crate) const LEVEL_WITH_START: &str = "in line with a corner";
pub(crate) const CLOSES: &str = "closes the face";
pub(crate) const CENTRED: &str = "in the middle of the face";
pub(crate) const NO_DIRECTION: &str = "Point where the side should go, then press Enter.";
pub(crate) const LENGTH_NOT_POSITIVE: &str = "A side is longer than 0.";
pub(crate) const THREE_CORNERS: &str = "An outline has at least three corners: click another one.";
pub(crate) const NO_AREA: &str = "These corners lie on one line and make no outline: take one back.";
pub(crate) const HOLE_IN_NO_FACE: &str =
    "A hole lies inside one face, a courtyard inside the walls of one part: take corners back until all are.";
pub(crate) const NO_FACE_HERE: &str = "There is no face here: press on one to place a block.";
pub(crate) const NO_FACE_YET: &str = "There is no face to show yet: draw one first.";
pub(crate) const LAST_CORNERS: &str = "A face keeps its last three corners: delete the face instead.";
pub(crate) const SWITCH_ON: &str = "Switch this module on";
pub(crate) const SWITCH_OFF: &str = "Switch this module off";
pub(crate) const SWITCH_ALL_ON: &str = "Switch all modules on";
pub(crate) const ADD_CORNER: &str = "Add a corner here";
pub(crate) const DELETE_CORNER: &str = "Delete this corner";
pub(crate) const DELETE_BLOCK: &str = "Delete the block";
pub(crate) const DELETE_PENETRATION: &str = "Delete the penetration";
pub(crate) const DELETE_FACE: &str = "Delete the face";
pub(crate) const SHOW_FACE_ON: &str = "Show face-on";
pub(crate) const PLACE_BLOCK: &str = "Place a block";

// First steps
pub(crate) const EMPTY_TITLE: &str = "Start with the roof";
pub(crate) const EMPTY_STEPS: [&str; 3] = [
    "1.  Draw a face: click its corners. Type a length such as 30' 6\" for an exact side.",
    "2.  Mark what comes through the roof: vents, pipes, chimneys.",
    "3.  Place a block of modules and drag it. Findings and quantities follow as you move.",
];
pub(crate) const EMPTY_DRAW: &str = "Draw a face";
pub(crate) const EMPTY_OPEN: &str = "Open a job…";

// Fields
pub(crate) const NEW_JOB: &str = "New job";
pub(crate) const THE_JOB: &str = "The job";
pub(crate) const NAME: &str = "Name";
pub(crate) const ADDRESS: &str = "Address";
pub(crate) const NOTES: &str = "Crew notes";
pub(crate) const UNITS: &str = "Units";
pub(crate) const KIT: &str = "Kit";
pub(crate) const RULE_BOOK: &str = "Rule book";
pub(crate) const PRICES: &str = "Price list";
pub(crate) const LOAD: &str = "Load…";
pub(crate) const NO_NAME: &str = "A name is needed.";
pub(crate) const BAD_COUNT: &str = "Type a whole number from 1 to 1000.";
pub(crate) const PITCH: &str = "Pitch";
pub(crate) const PITCH_HELP: &str = "Rise in 12 of run: 6:12. An angle (26.6°) or a slope (50%) will do too.";
pub(crate) const DOWNSLOPE: &str = "Downslope";
pub(crate) const DOWNSLOPE_HELP: &str =
    "The way that water runs: degrees clockwise from north, or N, NE, E …";
pub(crate) const HEIGHT: &str = "Eave height";
pub(crate) const HEIGHT_HELP: &str =
    "Height of the face at its lower left corner, above any level that is the same for the whole job.";
pub(crate) const EXPOSURE: &str = "Exposure";
pub(crate) const EXPOSURE_HELP: &str = "How much of each course is to the weather, up the slope. Usually 5\" or 5 5/8\" (common practice, no source).";
pub(crate) const FIRST_COURSE: &str = "First course line";
pub(crate) const FIRST_COURSE_HELP: &str = "From the eave up to the first course line.";
pub(crate) const SIDES: &str = "Sides, true length";
pub(crate) const WORKED_OUT: &str = "worked out from the roof";
pub(crate) const KIND_HELP: &str =
    "The kind follows from the faces. Choose one here only where the roof is otherwise.";
pub(crate) const FACE_NOT_SOUND: &str =
    "The outline folds over itself or has no area: drag its corners apart, or undo.";
pub(crate) const EAST: &str = "East";
pub(crate) const NORTHWARD: &str = "North";
pub(crate) const CORNER_HELP: &str = "In plan, from the corner where the face's own frame begins.";
pub(crate) const KIND: &str = "Kind";
pub(crate) const SHAPE: &str = "Shape";
pub(crate) const ROUND: &str = "round";
pub(crate) const RECTANGLE: &str = "rectangle";
pub(crate) const ANY_OUTLINE: &str = "any outline";
pub(crate) const DIAMETER: &str = "Across";
pub(crate) const ALONG: &str = "Along the eave";
pub(crate) const UP_SLOPE: &str = "Up the slope";
pub(crate) const TAPED_HELP: &str = "As taped on the deck.";
pub(crate) const CLEARANCE: &str = "Clearance";
pub(crate) const CLEARANCE_HELP: &str = "How far modules stay away, measured on the slope.";
pub(crate) const AS_THE_BOOK: &str = "As the book says";
pub(crate) const MIDDLE_HELP: &str = "From the lower left of the face to the middle of it, on the slope.";
pub(crate) const BESIDE_FACES: &str = "It lies beside all faces: drag it onto one.";
pub(crate) const ROWS: &str = "Rows";
pub(crate) const ROWS_HELP: &str = "From the eave up.";
pub(crate) const COLUMNS: &str = "Modules in a row";
pub(crate) const COLUMNS_HELP: &str = "Along the eave.";
pub(crate) const MODULES_LIE: &str = "Modules lie";
pub(crate) const LANDSCAPE: &str = "long side along the eave";
pub(crate) const PORTRAIT: &str = "long side up the slope";
pub(crate) const REVEAL: &str = "Reveal";
pub(crate) const REVEAL_HELP: &str = "The gap between neighbouring modules; the kit gives its range.";
pub(crate) const FACE: &str = "On face";
pub(crate) const FROM_LEFT: &str = "From the left";
pub(crate) const FROM_LEFT_HELP: &str =
    "From the left end of the face to the block's left edge, on the slope.";
pub(crate) const FROM_EAVE: &str = "Up from the eave";
pub(crate) const FROM_EAVE_HELP: &str =
    "From the lowest point of the face up the slope. For a block: where the base rail line is snapped.";
pub(crate) const ROW_SHIFTS: &str = "Shift rows";
pub(crate) const SHIFT_HELP: &str =
    "To the right against the block's corner. Or drag the grip at a row's end.";
pub(crate) const LOCKED: &str = "Locked";
pub(crate) const LOCKED_HELP: &str = "A locked block stays where it is when an array is fitted.";

// Lists
pub(crate) const QUANTITIES: &str = "Quantities";
pub(crate) const NO_QUANTITIES: &str = "Nothing to order yet: place a block, and its parts are counted here.";
pub(crate) const NO_PRICE: &str = "no price";
pub(crate) const ACCEPTED: &str = "Accepted by a person";
pub(crate) const WAIVED: &str = "Waived";
pub(crate) const FIX_HELP: &str = "Do this; undo takes it back.";
pub(crate) const WAIVE: &str = "Waive…";
pub(crate) const WAIVE_HELP: &str = "Accept this finding, with a reason that shows in every output.";
pub(crate) const WAIVE_REASON: &str = "Why may it be built so?";
pub(crate) const WAIVE_BY: &str = "Who says so?";
pub(crate) const WAIVE_DO: &str = "Waive it";
pub(crate) const WAIVE_NEEDS: &str = "Write a reason and a name first.";
pub(crate) const UNWAIVE: &str = "Take the waiver back";
pub(crate) const SUMMARY_HELP: &str = "Modules on the roof, their rated power, and what the job is sold for: lines, tax, delivery, overhead, profit.";

// Files
pub(crate) const CANT_BE: &str = "That can't be done";
pub(crate) const CANT_OPEN: &str = "This file can't be opened";
pub(crate) const CANT_SAVE: &str = "The job could not be saved";
pub(crate) const CANT_EXPORT: &str = "The order could not be written";
pub(crate) const CANT_PRINT: &str = "The sheet could not be written";
pub(crate) const UNSAVED: &str = "The changes since it was last saved are lost unless you save them now.";
pub(crate) const SAVE_NOW: &str = "Save";
pub(crate) const DISCARD: &str = "Don't save";
pub(crate) const PATH: &str = "Path of the file";
pub(crate) const REPLACE: &str = "Replace it";
pub(crate) const NO_PATH: &str = "Type where the file is, such as /home/me/jobs/alder-court.chalk.json.";
pub(crate) const IS_FOLDER: &str = "This is a folder: add a file name.";
pub(crate) const IS_THERE: &str = "There is a file of this name. Press “Replace it” to write over it.";
pub(crate) const RECOVERED_TITLE: &str = "Unsaved work was kept";
pub(crate) const RECOVERED: &str = "The program did not end well last time. It kept a copy of what was not saved; the job files themselves are as they were.";
pub(crate) const OPEN_COPY: &str = "Open this copy";
pub(crate) const DELETE_COPY: &str = "Delete it";
pub(crate) const LATER: &str = "Ask again next time";
pub(crate) const RECOVERED_SAID: &str = "Opened from the kept copy. It is not saved yet.";

// Cautions
pub(crate) const CAUTIONS_SHORT: &str = "Planning aid only: read the cautions";
pub(crate) const CAUTION: &str = chalkcourse_takeoff::CAUTION;
pub(crate) const CAUTIONS_LONG: [&str; 4] = [
    "Chalkcourse is a planning aid. It proves nothing about your building. Confirm every limit against the codes adopted \
     locally, the product's listing and the maker's instructions.",
    "Structural design belongs to a licensed engineer. Electrical work belongs to a qualified electrician, licensed where \
     that is required.",
    "Falls kill. Keep off the roof without fall protection, on wet or icy decks, and in wind.",
    "Direct current kills, and it can't be switched off at the module: a module is live whenever light falls on it.",
];
