//! Words for places on the globe, and for buildings that come in and go out in open formats.

use chalkcourse_exchange::{Entry, House};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::{RoofFaceRow, area_text};
use std::path::Path;

pub(crate) const PLACE: &str = "Latitude, longitude";
pub(crate) const PLACE_HELP: &str = "Of the plan's origin, in degrees of WGS 84, as maps give them: 39.1, -84.5. Needed to write the plan as GeoJSON.";
pub(crate) const BAD_PLACE: &str =
    "Latitude from -85 to 85, a comma, then longitude from -180 to 180, in degrees: 39.1, -84.5.";

// Buildings that come in
pub(crate) const IMPORT: &str = "Import a building…";
pub(crate) const IMPORT_FOLDER: &str = "Import from a folder…";
pub(crate) const IMPORT_READING: &str = "Reading the buildings…";
pub(crate) const IMPORT_BROKE: &str =
    "Reading broke off: try again, or cut the area of one street out of the file.";
pub(crate) const IMPORT_SEARCH: &str = "Find";
pub(crate) const IMPORT_SEARCH_HINT: &str = "name or number";
pub(crate) const IMPORT_TAKE: &str = "Take this building";
pub(crate) const IMPORT_TAKE_HELP: &str = "Into this job where it has no roof yet, and undo takes it back; else into a new job with the same kit and rule book.";
pub(crate) const IMPORT_CHOOSE: &str = "Choose a building: what is to be known of it shows here.";
pub(crate) const IMPORT_WHOLE: &str = "Every roof surface of it becomes a face.";
pub(crate) const IMPORT_RAISED: &str = "Outline of the walls alone: the roof is raised over it as said here.";

// The plan that goes out
pub(crate) const EXPORT_GEOJSON: &str = "Plan as GeoJSON…";
pub(crate) const EXPORT_GLB: &str = "House as glTF…";
pub(crate) const CANT_EXPORT_PLAN: &str = "The plan could not be written";

// The roof report
pub(crate) const ROOF_REPORT: &str = "Roof report";
pub(crate) const ROOF_COPY_HELP: &str = "Put the report on the clipboard as text";
pub(crate) const ROOF_COPIED: &str = "The roof report is on the clipboard.";
pub(crate) const ROOF_SLOPE: &str = "On the slope";
pub(crate) const ROOF_SQUARES: &str = "Squares of 100 ft², no waste";
pub(crate) const ROOF_PLAN: &str = "In plan";
pub(crate) const ROOF_FOOTPRINT: &str = "Footprint, each place once";
pub(crate) const ROOF_RIDGE: &str = "Ridge height";
pub(crate) const ROOF_EAVE: &str = "Eave height";
pub(crate) const ROOF_FACES: &str = "Faces";
pub(crate) const ROOF_EDGES: &str = "Edges, true length";
pub(crate) const ROOF_UNFOLD: &str = "Press to list each line of this kind";
pub(crate) const ROOF_LEVEL: &str = "Heights are above the level from which the job measures them.";

/// What a building gives, in a line.
pub(crate) fn building_gives(entry: &Entry, units: Units) -> String {
    let area = area_text(entry.plan_area_m2, units);
    let mut words = match (entry.kind, entry.faces) {
        ("footprint", _) => format!("footprint  ·  {area}"),
        (_, 1) => format!("1 face  ·  {area} in plan"),
        (_, faces) => format!("{faces} faces  ·  {area} in plan"),
    };
    if entry.left_out > 0 {
        words += &format!("  ·  {} left out", entry.left_out);
    } else if !entry.told.is_empty() {
        words += "  ·  look at it";
    }
    words
}

pub(crate) fn building_words(entry: &Entry, gives: &str) -> String {
    format!("Building {}: {gives}", entry.name)
}

pub(crate) fn import_count(found: usize, all: usize) -> String {
    if found == all { format!("{all} buildings") } else { format!("{found} of {all}") }
}

pub(crate) fn import_not_read(trouble: &str) -> String {
    format!("Not read: {trouble}")
}

pub(crate) fn import_of(house: &House) -> String {
    format!("Import {}", house.name)
}

pub(crate) fn imported(house: &House) -> String {
    let told = house.told().len();
    let more = match told {
        0 => String::new(),
        1 => " One thing to look at was told in the list.".to_owned(),
        told => format!(" {told} things to look at were told in the list."),
    };
    format!("{} was imported. It is not saved yet.{more}", house.name)
}

pub(crate) fn plan_exported_to(path: &Path) -> String {
    format!("Written to {}", path.display())
}

pub(crate) fn face_areas(face: &RoofFaceRow, units: Units) -> String {
    format!("{}  ·  {:.2} sq", area_text(face.slope_area_m2, units), face.squares)
}

pub(crate) fn face_pitch(pitch: &str, falls: &str, degrees: f64) -> String {
    format!("{pitch} ({degrees:.1}°), falls {falls}")
}

/// One line of a kind: its number and where it starts and ends in height.
pub(crate) fn roof_line(number: usize, from: f64, to: f64, units: Units) -> String {
    let height = |metres: f64| Length::from_metres(metres).show(units);
    let (from, to) = (height(from.min(to)), height(from.max(to)));
    if from == to {
        format!("    {number}, level at {from}")
    } else {
        format!("    {number}, {from} up to {to}")
    }
}

pub(crate) fn roof_row(words: &str, said: &str, more: &str) -> String {
    let words = words.trim();
    if more.is_empty() { format!("{words}: {said}") } else { format!("{words}: {said}, {more}") }
}

pub(crate) fn roof_problems(count: usize) -> String {
    match count {
        1 => "The roof does not hold together in one place: see the findings.".to_owned(),
        count => format!("The roof does not hold together in {count} places: see the findings."),
    }
}
