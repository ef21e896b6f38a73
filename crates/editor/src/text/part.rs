//! Words about parts of the house.

use chalkcourse_geometry::Length;
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_job::{PartKind, RoofPart};

pub(crate) const PARTS: &str = "Parts of the house";
pub(crate) const PART_HELP: &str = "A dormer, porch, ell or chimney: draw its footprint over the roof";
pub(crate) const PART_KIND: &str = "What it is";
pub(crate) const EAVES_HIGH: &str = "Eaves";
pub(crate) const EAVES_HIGH_HELP: &str =
    "How high the roof is over the wall lines, above the level of the job.";
pub(crate) const CHIMNEY_TOP: &str = "Top";
pub(crate) const CHIMNEY_TOP_HELP: &str = "Height of its top above the level of the job.";
pub(crate) const CRICKET: &str = "With a cricket";
pub(crate) const CRICKET_HELP: &str = "Two small faces upslope of it that part the water.";
pub(crate) const CRICKET_PITCH: &str = "Cricket";
pub(crate) const ALL_PITCHES: &str = "Pitch, all slopes";
pub(crate) const ALL_OVERHANGS: &str = "Overhang, all";
pub(crate) const MIXED: &str = "various";
pub(crate) const PART_OVERHANG_HELP: &str = "How far the roof reaches beyond the wall, in plan.";
pub(crate) const OWN_EAVE: &str = "Own eave";
pub(crate) const OWN_EAVE_HELP: &str = "Height of this side's plane over its wall. Empty: as the part's.";
pub(crate) const TREATMENTS: [&str; 3] = ["slope", "gable", "wall"];
pub(crate) const SIDES_OF_PART: &str = "Sides, wall to wall";
pub(crate) const SET_FREE: &str = "Set free";
pub(crate) const SET_FREE_HELP: &str =
    "Turn its faces, and those of the parts that it meets, into drawn ones that no part changes any more";
pub(crate) const DELETE_PART: &str = "Delete the part";
pub(crate) fn kinds_lost(count: usize) -> String {
    match count {
        1 => "The kind of an edge that was set by hand went with its side. Undo brings it back.".to_owned(),
        _ => format!(
            "The kinds of {count} edges that were set by hand went with their sides. Undo brings them back."
        ),
    }
}
pub(crate) const SHOW_PART: &str = "Its part…";
pub(crate) const FOLLOWS_PART: &str = "This face follows from a part of the house: change its side here.";
pub(crate) const LAST_CORNERS_OF_PART: &str = "A part keeps its last three corners: delete the part instead.";
pub(crate) const TROUBLE_HERE: &str = "here";

/// The word for a kind, as on a button.
pub(crate) fn part_kind(kind: PartKind) -> &'static str {
    match kind {
        PartKind::Main => "Main",
        PartKind::Ell => "Ell",
        PartKind::Dormer => "Dormer",
        PartKind::Porch => "Porch",
        PartKind::Chimney => "Chimney",
        PartKind::Other => "Other",
    }
}

pub(crate) fn part_heading(name: &str) -> String {
    format!("Part {name}")
}

/// For screen readers: "Part Dormer, dormer, 4 sides".
pub(crate) fn part_words(part: &RoofPart) -> String {
    format!(
        "Part {}, {}, {} sides",
        part.name,
        part.kind.name(),
        part.sides.iter().map(Vec::len).sum::<usize>()
    )
}

pub(crate) fn part_corner_words(part: &str, corner: usize) -> String {
    format!("Corner {} of part {part}", corner + 1)
}

/// "slope 6:12", "gable", "wall".
pub(crate) fn treatment_words(treatment: Treatment) -> String {
    match treatment {
        Treatment::Slope(pitch) => format!("{} {pitch}", TREATMENTS[0]),
        Treatment::Gable => TREATMENTS[1].to_owned(),
        Treatment::Wall => TREATMENTS[2].to_owned(),
    }
}

/// What stands on a side, for a screen reader.
pub(crate) fn stands_on_side(side: usize) -> String {
    format!("Stands on side {}", side + 1)
}

/// "Block A and Block B have no face under them now."
pub(crate) fn without_face(blocks: &[String]) -> String {
    let verb = if blocks.len() == 1 { "has" } else { "have" };
    format!(
        "{} {verb} no face under {} now: it waits for the face to come back, or drag it to another one.",
        blocks.join(", "),
        if blocks.len() == 1 { "it" } else { "them" }
    )
}

/// "12' 6"" or that sides differ.
pub(crate) fn same_or_mixed(lengths: &[Length], show: impl Fn(Length) -> String) -> String {
    match lengths {
        [first, rest @ ..] if rest.iter().all(|other| other == first) => show(*first),
        _ => MIXED.to_owned(),
    }
}
pub(crate) const PART_HIDDEN: &str =
    "Nothing of it is seen: it lies under other parts. Raise its eaves, or move it.";
pub(crate) const PART_NO_CRICKET: &str =
    "No cricket stands there: the chimney has no side that looks up a slope. Move it off the ridge.";
