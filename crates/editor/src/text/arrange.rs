//! Words for filling faces and arranging blocks.

use crate::filling::Laying;
use chalkcourse_geometry::{DVec2, Length, Units};
use chalkcourse_job::Job;
use chalkcourse_job::{Kit, RowJoints};
use chalkcourse_plan::{Align, Cut, Fill, Measure, Spread};

// Fill
pub(crate) const FILL: &str = "Fill with modules";
pub(crate) const FILL_TAB: &str = "Fill";
pub(crate) const FILL_THIS_FACE: &str = "Fill this face";
pub(crate) const FILL_ALL: &str = "Fill all faces";
pub(crate) const FILL_ALL_HELP: &str =
    "All faces that are steep enough for the kit, one after the other.  (L, with nothing selected)";
pub(crate) const FILL_HELP: &str = "The most modules that the rules allow. Locked blocks stay, the others on the face make way; undo takes it back.  (L)";
pub(crate) const FILL_HINT: &str = "Puts the most modules on a face that the rules of this job allow, proves it, and lists what holds it back. Select a face to \
     fill it alone.";
pub(crate) const WAY: &str = "Laid as";
pub(crate) const LIE_EITHER: &str = "either way";
pub(crate) const MOST_BLOCKS: &str = "Blocks at most";
pub(crate) const MOST_BLOCKS_HELP: &str = "Every corner of a block is flashed: fewer blocks, fewer corners.";
pub(crate) const WORTH_HELP: &str = "What a module earns after what it costs itself. A run of flashing and a corner cost what the price list says, so a module that pays for neither is left out.";
pub(crate) const BY_AREA: &str = "Weigh by the area of the face";
pub(crate) const BY_AREA_HELP: &str =
    "A module counts whole on the largest face that is filled, half on one of half its area.";
pub(crate) const SIZE_BY: &str = "Size by";
pub(crate) const BY_MODULES: &str = "modules";
pub(crate) const BY_POWER: &str = "kilowatts";
pub(crate) const HOW_MANY: &str = "How many modules";
pub(crate) const HOW_MUCH_POWER: &str = "Kilowatts";
pub(crate) const HOW_MANY_HELP: &str =
    "On all faces that are filled together, with those in locked blocks there.";
pub(crate) const LAID_TO_BE: &str = "As";
pub(crate) const COMPACT: &str = "compact as can be";
pub(crate) const CHEAPEST: &str = "cheap as can be";
pub(crate) const FILL_CHOSEN_HELP: &str = "The faces that are ticked in the list, one after the other.";
pub(crate) const NOTHING_YET: &str = "No layout found yet.";
pub(crate) const IMPROVING: &str =
    "Drawn on the roof, not placed yet. It goes on until this is proved best; Stop places what is there.";
pub(crate) const ASKING: &str = "Looking for what holds it back…";
pub(crate) const STOP_ASKING: &str = "Stop looking";
pub(crate) const STOP_ASKING_HELP: &str = "Keep what was found of what holds the array back.";
pub(crate) const NOT_ASKED_YET: &str = "Being looked for…";
pub(crate) const NOT_FOUND_OUT: &str = "Not looked for to the end: fill the face again to know.";
pub(crate) const ASKED_IN_PART: &str = "Not looked for to the end: there may be more.";
pub(crate) const STOP: &str = "Stop";
pub(crate) const STOP_HELP: &str =
    "Take the best that was found so far, where it is better than what is there.";
pub(crate) const SEARCHED: &str = "What was searched";
pub(crate) const HOLDS_BACK: &str = "What holds it back";
pub(crate) const NOTHING_HOLDS: &str = "Nothing but the size of the face.";
pub(crate) const NO_FACE_TO_FILL: &str = "There is no face to fill yet: draw one first.";
pub(crate) const FILL_DROPPED: &str =
    "The roof changed while it was being filled, so the answer was dropped. Fill it again.";
pub(crate) const FILL_STOPPED: &str =
    "Stopped before anything better than what is there was found: the blocks are as they were.";
pub(crate) const FILL_BROKE: &str =
    "Filling broke off by itself: a fault of this program. The job is as it was; try another way of laying.";

pub(crate) fn way(way: Laying) -> &'static str {
    match way {
        Laying::SlidingRows => "rows that slide",
        Laying::OneGrid => "one grid",
        Laying::HalfLapped => "half-lapped rows",
        Laying::OnCourses => "rows on the courses",
        Laying::WholeBlocks => "whole blocks",
        Laying::ByWorth => "by worth",
        Laying::ToNumber => "to a number",
    }
}
/// "The kit: modules landscape or portrait; joints of rows free, aligned or half-lapped; base rail anywhere."
pub(crate) fn kit_allows(kit: &Kit) -> String {
    let ways: Vec<&str> = kit.orientations.iter().map(|way| way.name()).collect();
    let joints: Vec<&str> = kit
        .laying
        .joints
        .iter()
        .map(|joints| match joints {
            RowJoints::Free => "free",
            RowJoints::Aligned => "in line",
            RowJoints::HalfLapped => "half-lapped",
        })
        .collect();
    let rail = if kit.laying.base_rail.anywhere { "anywhere" } else { "by the courses" };
    format!(
        "The kit allows modules {}, joints of rows {}, the base rail {rail}.",
        ways.join(" or "),
        joints.join(" or ")
    )
}
pub(crate) fn worth_of_module(currency: &str) -> String {
    format!("A module's worth, {currency}")
}
/// A number above 0.
///
/// # Errors
/// Words for the person.
pub(crate) fn positive_number(text: &str) -> Result<f64, &'static str> {
    match text.trim().parse::<f64>() {
        Ok(number) if number.is_finite() && number > 0.0 && number < 1e9 => Ok(number),
        _ => Err("Type a number above 0, such as 12.5."),
    }
}
pub(crate) fn some_faces(chosen: usize) -> String {
    match chosen {
        0 => "Choose several faces".to_owned(),
        1 => "1 face chosen".to_owned(),
        n => format!("{n} faces chosen"),
    }
}
pub(crate) fn fill_chosen(chosen: usize) -> String {
    if chosen == 1 { "Fill the chosen face".to_owned() } else { format!("Fill {chosen} chosen faces") }
}
/// "So far 49 of at most 52"
pub(crate) fn so_far(fills: &[Fill]) -> String {
    let modules: usize = fills.iter().map(|fill| fill.modules).sum();
    let bound: usize = fills.iter().map(|fill| fill.bound).sum();
    format!("So far {modules} of at most {bound}")
}
/// What is left open, where a fill is not proved.
pub(crate) fn gap(fill: &Fill) -> Option<String> {
    if fill.proved {
        return None;
    }
    Some(match &fill.measure {
        Some(Measure { value, bound, .. }) => {
            format!("Not proved: between {value:.2} and {bound:.2} something better may exist.")
        }
        None => {
            let open = fill.bound.saturating_sub(fill.modules);
            let modules = if open == 1 { "module" } else { "modules" };
            format!("Not proved: up to {open} more {modules} may be possible.")
        }
    })
}
pub(crate) fn cost_named(words: &str) -> String {
    format!("Costs modules: {words}")
}
pub(crate) fn win_named(words: &str) -> String {
    format!("Would win: {words}")
}
pub(crate) fn near_named(words: &str) -> String {
    format!("Nearly fits: {words}")
}
pub(crate) fn move_named(words: &str) -> String {
    format!("{}: {words}", super::MOVE_IT)
}
pub(crate) fn move_help(searched: &str) -> String {
    format!("Do this; undo takes it back. Then fill the face again. {}", sentence(searched))
}
pub(crate) fn fill_face(name: &str) -> String {
    format!("Fill {name}")
}
pub(crate) fn filling(names: &[&str], seconds: f64) -> String {
    let since = if seconds < 1.0 { String::new() } else { format!(", {seconds:.0} s") };
    match names {
        [one] => format!("Filling {one}{since}…"),
        _ => format!("Filling {} faces{since}…", names.len()),
    }
}
pub(crate) fn fill_of(job: &Job, fills: &[Fill]) -> String {
    let name = |fill: &Fill| job.face(fill.face).map_or("a face", |face| face.name.as_str());
    match fills {
        [fill] => format!("fill {}", name(fill)),
        _ => format!("fill {} faces", fills.len()),
    }
}
pub(crate) fn filled(fills: &[Fill]) -> String {
    let modules: usize = fills.iter().map(|fill| fill.modules).sum();
    let bound: usize = fills.iter().map(|fill| fill.bound).sum();
    match fills {
        [_] => format!("Filled: {modules} of at most {bound}"),
        _ => format!("Filled {} faces: {modules} of at most {bound}", fills.len()),
    }
}
/// "Face South: 25 of at most 25"
pub(crate) fn fill_row(name: &str, fill: &Fill) -> String {
    format!("{}: {} of at most {}", super::face_heading(name), fill.modules, fill.bound)
}
/// "At 2 places one more module is stopped by …"
pub(crate) fn near_row(words: &str, places: usize) -> String {
    match places {
        1 => sentence(words),
        places => format!("At {places} places {words}"),
    }
}
/// The first letter large.
pub(crate) fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

// Arrange
pub(crate) const MAKE_ROOM: &str = "Make room";
pub(crate) const MAKE_ROOM_HELP: &str = "Move it the least distance that clears its findings.  (R)";
pub(crate) const NOTHING_IN_THE_WAY: &str = "Nothing is in its way.";
pub(crate) const NO_ROOM: &str =
    "No move was found that clears this block: make it smaller, or move what is in its way.";
pub(crate) const ROOM_DROPPED: &str =
    "The roof changed while room was looked for, so the answer was dropped. Press R again.";
pub(crate) const ROOM_STOPPED: &str = "Stopped before a place was found: the block is as it was.";
pub(crate) const ROOM_BROKE: &str =
    "The search for room broke off by itself: a fault of this program. The job is as it was.";
pub(crate) const ROOM_STOP_HELP: &str = "End the search with the nearest place found so far.";
pub(crate) const MIRROR: &str = "Mirror";
pub(crate) const MIRROR_HELP: &str = "A mirror image on the slope beyond the ridge.  (M)";
pub(crate) const NO_OTHER_SLOPE: &str = "Its face shares no ridge with another face.";
pub(crate) const COPY_TO: &str = "Copy to face";
pub(crate) const COPY_TO_FACE: &str = "Copy to a face…";
pub(crate) const NO_OTHER_FACE: &str = "There is no other face.";
pub(crate) const NO_COPY: &str = "It can't be copied there: mend the outlines of both faces first.";
pub(crate) const SPLIT: &str = "Split";
pub(crate) const NO_SPLIT: &str = "A cut there leaves nothing on one side.";
pub(crate) const JOIN: &str = "Join";
pub(crate) const NOT_FLUSH: &str = "No block is flush with it: they must touch, lie the same way, and have the same reveal and rows in line.";
pub(crate) const ALIGN: &str = "Align";
pub(crate) const NOT_ALIGNED: &str = "There is no other block with modules on this face.";
pub(crate) const SELECT_A_BLOCK: &str = "Select a block first.";

pub(crate) fn making_room(name: &str) -> String {
    format!("Making room for {name}…")
}
/// "Block A moved 3 1/2" to the right: the least that clears it, proved"
pub(crate) fn moved_clear(name: &str, by: DVec2, proved: bool, units: Units) -> String {
    let sure =
        if proved { "the least that clears it, proved" } else { "the least that was found, not proved" };
    format!("{name} moved {}: {sure}", way_words(by, units))
}
/// "3 1/2" to the right and 1" up the slope"
pub(crate) fn way_words(by: DVec2, units: Units) -> String {
    let part = |metres: f64, plus: &str, minus: &str| {
        let words = if metres > 0.0 { plus } else { minus };
        (metres.abs() > 1e-6)
            .then(|| format!("{} {words}", Length::from_metres(metres.abs()).show_small(units)))
    };
    let parts = [part(by.x, "to the right", "to the left"), part(by.y, "up the slope", "down the slope")];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    if parts.is_empty() { "not at all".to_owned() } else { parts.join(" and ") }
}
pub(crate) fn spread(spread: Spread) -> &'static str {
    match spread {
        Spread::Along => "Spread along the eave",
        Spread::Up => "Spread up the slope",
    }
}
pub(crate) fn spread_of(face: &str) -> String {
    format!("spread the blocks of {face}")
}
pub(crate) const SPREAD: &str = "Spread";
pub(crate) const SPREAD_HELP: &str =
    "Equal gaps between the blocks of this face; the first and the last stay.";
pub(crate) const NOT_SPREAD: &str = "Nothing to spread: it takes three blocks on the face that are not locked, with room between the outer ones, and gaps that differ.";
pub(crate) fn align_command(to: Align) -> &'static str {
    match to {
        Align::Left => "Left end with the nearest block",
        Align::Right => "Right end with the nearest block",
        Align::Bottom => "Base rail with the nearest block",
    }
}
pub(crate) fn copy_title(name: &str) -> String {
    format!("Copy {name} to")
}
pub(crate) fn mirror_to(face: &str) -> String {
    format!("Mirror to {face}")
}
pub(crate) fn cut(cut: Cut) -> String {
    match cut {
        Cut::AboveRows(rows) => format!("above row {rows}"),
        Cut::RightOfColumns(columns) => format!("right of column {columns}"),
    }
}
pub(crate) fn align_to(to: Align, name: &str) -> String {
    match to {
        Align::Left => format!("left end with {name}"),
        Align::Right => format!("right end with {name}"),
        Align::Bottom => format!("base rail with {name}"),
    }
}
pub(crate) fn room_for(name: &str) -> String {
    format!("make room for {name}")
}
pub(crate) fn mirror_of(name: &str) -> String {
    format!("mirror {name}")
}
pub(crate) fn copy_of(name: &str) -> String {
    format!("copy {name}")
}
pub(crate) fn split_of(name: &str) -> String {
    format!("split {name}")
}
pub(crate) fn join_of(name: &str) -> String {
    format!("join {name}")
}
pub(crate) fn align_of(name: &str) -> String {
    format!("align {name}")
}
