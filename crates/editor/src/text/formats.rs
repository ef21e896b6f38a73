//! Words for geographic positions, and for import and export in open formats.

use chalkcourse_exchange::{Entry, House};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::{RoofFaceRow, area_text};
use chalkcourse_words::{self as words, Said, Say, later};
use std::path::Path;

pub(crate) const PLACE: Say = words::formats::LATITUDE_LONGITUDE;
pub(crate) const PLACE_HELP: Say = words::formats::OF_THE_PLANS_ORIGIN_IN;
pub(crate) const BAD_PLACE: Say = words::formats::LATITUDE_FROM_85_TO_85;

// Import of buildings
pub(crate) const IMPORT: Say = words::formats::IMPORT_A_BUILDING;
pub(crate) const IMPORT_FOLDER: Say = words::formats::IMPORT_FROM_A_FOLDER;
pub(crate) const IMPORT_READING: Say = words::formats::READING_THE_BUILDINGS;
pub(crate) const IMPORT_SEARCH: Say = words::common::FIND;
pub(crate) const IMPORT_SEARCH_HINT: Say = words::formats::NAME_OR_NUMBER;
pub(crate) const IMPORT_TAKE: Say = words::formats::TAKE_THIS_BUILDING;
pub(crate) const IMPORT_TAKE_HELP: Say = words::formats::INTO_THIS_JOB_WHERE_IT;
pub(crate) const IMPORT_CHOOSE: Say = words::formats::CHOOSE_A_BUILDING_WHAT_IS;
pub(crate) const IMPORT_WHOLE: Say = words::formats::EVERY_ROOF_SURFACE_OF_IT;
pub(crate) const IMPORT_RAISED: Say = words::formats::OUTLINE_OF_THE_WALLS_ALONE;

// Export of the plan
pub(crate) const EXPORT_GEOJSON: Say = words::formats::PLAN_AS_GEOJSON;
pub(crate) const EXPORT_GLB: Say = words::formats::HOUSE_AS_GLTF;
pub(crate) const CANT_EXPORT_PLAN: Say = words::formats::THE_PLAN_COULD_NOT_BE;

// The roof report
pub(crate) const ROOF_REPORT: Say = words::formats::ROOF_REPORT;
pub(crate) const ROOF_COPY_HELP: Say = words::formats::PUT_THE_REPORT_ON_THE;
pub(crate) const ROOF_COPIED: Say = words::formats::THE_ROOF_REPORT_IS_ON;
pub(crate) const ROOF_SLOPE: Say = words::common::ON_THE_SLOPE;
pub(crate) const ROOF_SQUARES: Say = words::formats::SQUARES_OF_100_FT_NO;
pub(crate) const ROOF_PLAN: Say = words::common::IN_PLAN;
pub(crate) const ROOF_FOOTPRINT: Say = words::common::FOOTPRINT_EACH_PLACE_ONCE;
pub(crate) const ROOF_RIDGE: Say = words::common::RIDGE_HEIGHT;
pub(crate) const ROOF_EAVE: Say = words::common::EAVE_HEIGHT;
pub(crate) const ROOF_FACES: Say = words::formats::FACES;
pub(crate) const ROOF_EDGES: Say = words::formats::EDGES_TRUE_LENGTH;
pub(crate) const ROOF_UNFOLD: Say = words::formats::PRESS_TO_LIST_EACH_LINE;
pub(crate) const ROOF_LEVEL: Say = words::formats::HEIGHTS_ARE_ABOVE_THE_LEVEL;

/// What a building contains, in a line.
pub(crate) fn building_gives(entry: &Entry, units: Units) -> String {
    let area = area_text(entry.plan_area_m2, units);
    let mut words = match (entry.kind, entry.faces) {
        ("footprint", _) => words::formats::footprint(&area),
        (_, 1) => words::formats::face_in_plan(&area),
        (_, faces) => words::formats::faces_in_plan(faces, &area),
    };
    if entry.left_out > 0 {
        words += &words::formats::left_out(&entry.left_out);
    } else if !entry.told.is_empty() {
        words += words::formats::LOOK_AT_IT.now();
    }
    words
}

pub(crate) fn building_words(entry: &Entry, gives: &str) -> String {
    words::formats::building(&entry.name, &gives)
}

pub(crate) fn import_count(found: usize, all: usize) -> String {
    if found == all { words::formats::buildings(all) } else { words::formats::of(&found, &all) }
}

pub(crate) fn import_not_read(trouble: &str) -> String {
    words::formats::not_read(&trouble)
}

pub(crate) fn import_of(house: &House) -> Said {
    later::formats::import(&house.name)
}

pub(crate) fn imported(house: &House) -> String {
    let told = house.told(Units::Metric).len();
    let more = match told {
        0 => String::new(),
        told => words::formats::things_to_look_at_were(told),
    };
    words::formats::was_imported_it_is_not(&house.name, &more)
}

pub(crate) fn plan_exported_to(path: &Path) -> String {
    words::formats::written_to(&path.display())
}

pub(crate) fn face_areas(face: &RoofFaceRow, units: Units) -> String {
    format!("{}  ·  {:.2} sq", area_text(face.slope_area_m2, units), face.squares)
}

pub(crate) fn face_pitch(pitch: &str, falls: &str, degrees: f64) -> String {
    words::formats::falls(&pitch, &format_args!("{degrees:.1}"), &falls)
}

/// One line of a kind: its number and the heights of its ends.
pub(crate) fn roof_line(number: usize, from: f64, to: f64, units: Units) -> String {
    let height = |metres: f64| Length::from_metres(metres).show(units);
    let (from, to) = (height(from.min(to)), height(from.max(to)));
    if from == to {
        words::formats::level_at(&number, &from)
    } else {
        words::formats::up_to(&number, &from, &to)
    }
}

pub(crate) fn roof_row(words: &str, said: &str, more: &str) -> String {
    let words = words.trim();
    if more.is_empty() { format!("{words}: {said}") } else { format!("{words}: {said}, {more}") }
}

pub(crate) fn roof_problems(count: usize) -> String {
    words::formats::the_roof_does_not_hold(count)
}
