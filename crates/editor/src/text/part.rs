//! Words about parts of the house.

use crate::state::PartPreset;
use chalkcourse_geometry::Length;
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_job::{PartKind, RoofPart};
use chalkcourse_words::{self as words, Say};

pub(crate) const PARTS: Say = words::part::PARTS_OF_THE_HOUSE;
pub(crate) const PART_HELP: Say = words::part::A_DORMER_PORCH_ELL_OR;
pub(crate) const PART_KIND: Say = words::common::WHAT_IT_IS;
pub(crate) const EAVES_HIGH: Say = words::part::EAVES;
pub(crate) const EAVES_HIGH_HELP: Say = words::part::HOW_HIGH_THE_ROOF_IS;
pub(crate) const CHIMNEY_TOP: Say = words::part::TOP;
pub(crate) const CHIMNEY_TOP_HELP: Say = words::part::HEIGHT_OF_ITS_TOP_ABOVE;
pub(crate) const CRICKET: Say = words::part::WITH_A_CRICKET;
pub(crate) const CRICKET_HELP: Say = words::part::TWO_SMALL_FACES_UPSLOPE_OF;
pub(crate) const CRICKET_PITCH: Say = words::part::CRICKET;
pub(crate) const ALL_PITCHES: Say = words::part::PITCH_ALL_SLOPES;
pub(crate) const ALL_OVERHANGS: Say = words::part::OVERHANG_ALL;
pub(crate) const MIXED: Say = words::part::VARIOUS;
pub(crate) const PART_OVERHANG_HELP: Say = words::common::HOW_FAR_THE_ROOF_REACHES;
pub(crate) const OWN_EAVE: Say = words::part::OWN_EAVE;
pub(crate) const OWN_EAVE_HELP: Say = words::part::HEIGHT_OF_THIS_SIDES_PLANE;
pub(crate) const TREATMENTS: [Say; 3] = [words::part::SLOPE, words::common::GABLE, words::part::WALL];
pub(crate) const SIDES_OF_PART: Say = words::part::SIDES_WALL_TO_WALL;
pub(crate) const SET_FREE: Say = words::part::SET_FREE;
pub(crate) const SET_FREE_HELP: Say = words::part::TURN_ITS_FACES_AND_THOSE;
pub(crate) const DELETE_PART: Say = words::part::DELETE_THE_PART;
pub(crate) fn kinds_lost(count: usize) -> String {
    words::part::the_kinds_of_edges_that(count)
}
pub(crate) const SHOW_PART: Say = words::part::ITS_PART;
pub(crate) const FOLLOWS_PART: Say = words::part::THIS_FACE_FOLLOWS_FROM_A;
pub(crate) const LAST_CORNERS_OF_PART: Say = words::part::A_PART_KEEPS_ITS_LAST;
pub(crate) const TROUBLE_HERE: Say = words::part::HERE;

/// The name of a kind of part to draw; new ones are named after it.
pub(crate) fn part_preset(preset: PartPreset) -> &'static str {
    match preset {
        PartPreset::LeanTo => words::part::LEAN_TO.now(),
        preset => part_kind(preset.kind()),
    }
}

/// Its help sentence.
pub(crate) fn part_preset_help(preset: PartPreset) -> &'static str {
    match preset {
        PartPreset::Dormer => words::part::DORMER_HELP.now(),
        PartPreset::Porch => words::part::PORCH_HELP.now(),
        PartPreset::LeanTo => words::part::LEAN_TO_HELP.now(),
        PartPreset::Ell => words::part::ELL_HELP.now(),
        PartPreset::Chimney => words::part::CHIMNEY_HELP.now(),
    }
}

/// The word for a kind, as on a button.
pub(crate) fn part_kind(kind: PartKind) -> &'static str {
    match kind {
        PartKind::Main => words::common::MAIN.now(),
        PartKind::Ell => words::common::ELL.now(),
        PartKind::Dormer => words::part::DORMER.now(),
        PartKind::Porch => words::part::PORCH.now(),
        PartKind::Chimney => words::common::CHIMNEY.now(),
        PartKind::Other => words::common::OTHER.now(),
    }
}

pub(crate) fn part_heading(name: &str) -> String {
    words::part::part(&name)
}

/// For screen readers: "Part Dormer, dormer, 4 sides".
pub(crate) fn part_words(part: &RoofPart) -> String {
    words::part::part_sides(&part.name, &part.kind.name(), &part.sides.iter().map(Vec::len).sum::<usize>())
}

pub(crate) fn part_corner_words(part: &str, corner: usize) -> String {
    words::part::corner_of_part(&(corner + 1), &part)
}

/// "slope 6:12", "gable", "wall".
pub(crate) fn treatment_words(treatment: Treatment) -> String {
    match treatment {
        Treatment::Slope(pitch) => format!("{} {pitch}", TREATMENTS[0]),
        Treatment::Gable => TREATMENTS[1].now().to_owned(),
        Treatment::Wall => TREATMENTS[2].now().to_owned(),
    }
}

/// The treatment of a side, for a screen reader.
pub(crate) fn stands_on_side(side: usize) -> String {
    words::part::stands_on_side(&(side + 1))
}

/// "Block A and Block B have no face under them now."
pub(crate) fn without_face(blocks: &[String]) -> String {
    let verb = if blocks.len() == 1 { words::part::HAS.now() } else { words::part::HAVE.now() };
    words::part::no_face_under_now_it(
        &blocks.join(", "),
        &verb,
        &if blocks.len() == 1 { words::part::IT.now() } else { words::part::THEM.now() },
    )
}

/// "12' 6"", or that the sides differ.
pub(crate) fn same_or_mixed(lengths: &[Length], show: impl Fn(Length) -> String) -> String {
    match lengths {
        [first, rest @ ..] if rest.iter().all(|other| other == first) => show(*first),
        _ => MIXED.now().to_owned(),
    }
}
pub(crate) const PART_HIDDEN: Say = words::part::NOTHING_OF_IT_IS_SEEN;
pub(crate) const PART_NO_CRICKET: Say = words::part::NO_CRICKET_STANDS_THERE_THE;
