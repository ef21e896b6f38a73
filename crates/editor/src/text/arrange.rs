//! Words for filling faces and arranging blocks.

use crate::state::Laying;
use chalkcourse_geometry::{DVec2, Length, Plane, Units};
use chalkcourse_job::Resolved;
use chalkcourse_job::{Kit, RowJoints};
use chalkcourse_plan::{Align, Cut, Fill, Measure, Seen};
use chalkcourse_words::{self as words, Put, Said, Say, later, sentence};

// Fill
pub(crate) const FILL: Say = words::arrange::FILL_WITH_MODULES;
pub(crate) const FILL_TAB: Say = words::arrange::FILL;
pub(crate) const FILL_THIS_FACE: Say = words::arrange::FILL_THIS_FACE;
pub(crate) const FILL_ALL: Say = words::arrange::FILL_ALL_FACES;
pub(crate) fn fill_all_help(key: &str) -> String {
    words::arrange::all_faces_that_are_steep(&key)
}
pub(crate) const FILL_HELP: Say = words::arrange::THE_MOST_MODULES_THAT_THE;
pub(crate) const FILL_HINT: Say = words::arrange::PUTS_THE_MOST_MODULES_ON;
pub(crate) const WAY: Say = words::arrange::LAID_AS;
pub(crate) const LIE_EITHER: Say = words::arrange::EITHER_WAY;
pub(crate) const MOST_BLOCKS: Say = words::arrange::BLOCKS_AT_MOST;
pub(crate) const MOST_BLOCKS_HELP: Say = words::arrange::EVERY_CORNER_OF_A_BLOCK;
pub(crate) const WORTH_HELP: Say = words::arrange::WHAT_A_MODULE_EARNS_AFTER;
pub(crate) const BY_AREA: Say = words::arrange::WEIGH_BY_THE_AREA_OF;
pub(crate) const BY_AREA_HELP: Say = words::arrange::A_MODULE_COUNTS_WHOLE_ON;
pub(crate) const SIZE_BY: Say = words::arrange::SIZE_BY;
pub(crate) const BY_MODULES: Say = words::common::MODULES_2;
pub(crate) const BY_POWER: Say = words::arrange::KILOWATTS;
pub(crate) const HOW_MANY: Say = words::arrange::HOW_MANY_MODULES;
pub(crate) const HOW_MUCH_POWER: Say = words::arrange::KILOWATTS_2;
pub(crate) const HOW_MANY_HELP: Say = words::arrange::ON_ALL_FACES_THAT_ARE;
pub(crate) const LAID_TO_BE: Say = words::arrange::AS_2;
pub(crate) const COMPACT: Say = words::arrange::COMPACT_AS_CAN_BE;
pub(crate) const CHEAPEST: Say = words::arrange::CHEAP_AS_CAN_BE;
pub(crate) const FILL_CHOSEN_HELP: Say = words::arrange::THE_FACES_THAT_ARE_TICKED;
pub(crate) const NOTHING_YET: Say = words::arrange::NO_LAYOUT_FOUND_YET;
pub(crate) const IMPROVING: Say = words::arrange::DRAWN_ON_THE_ROOF_NOT;
pub(crate) const ASKING: Say = words::arrange::LOOKING_FOR_WHAT_HOLDS_IT;
pub(crate) const STOP_ASKING: Say = words::arrange::STOP_LOOKING;
pub(crate) const STOP_ASKING_HELP: Say = words::arrange::KEEP_WHAT_WAS_FOUND_OF;
pub(crate) const NOT_ASKED_YET: Say = words::arrange::BEING_LOOKED_FOR;
pub(crate) const NOT_FOUND_OUT: Say = words::arrange::NOT_LOOKED_FOR_TO_THE;
pub(crate) const ASKED_IN_PART: Say = words::arrange::NOT_LOOKED_FOR_TO_THE_END;
pub(crate) const STOP: Say = words::arrange::STOP;
pub(crate) const STOP_HELP: Say = words::arrange::TAKE_THE_BEST_THAT_WAS;
pub(crate) const SEARCHED: Say = words::arrange::WHAT_WAS_SEARCHED;
pub(crate) const HOLDS_BACK: Say = words::arrange::WHAT_HOLDS_IT_BACK;
pub(crate) const NOTHING_HOLDS: Say = words::arrange::NOTHING_BUT_THE_SIZE_OF;
pub(crate) const NO_FACE_TO_FILL: Say = words::arrange::THERE_IS_NO_FACE_TO;
pub(crate) const FILL_DROPPED: Say = words::arrange::THE_ROOF_CHANGED_WHILE_IT;
pub(crate) const FILL_STOPPED: Say = words::arrange::STOPPED_BEFORE_ANYTHING_BETTER_THAN;
pub(crate) const FILL_BROKE: Say = words::arrange::FILLING_BROKE_OFF_BY_ITSELF;

pub(crate) fn way(way: Laying) -> &'static str {
    match way {
        Laying::SlidingRows => words::arrange::ALL_THAT_THE_KIT_ALLOWS.now(),
        Laying::OneGrid => words::common::ONE_GRID.now(),
        Laying::HalfLapped => words::arrange::HALF_LAPPED_ROWS.now(),
        Laying::OnCourses => words::arrange::ROWS_ON_THE_COURSES_ONE.now(),
        Laying::WholeBlocks => words::arrange::WHOLE_BLOCKS.now(),
        Laying::ByWorth => words::arrange::BY_WORTH.now(),
        Laying::ToNumber => words::arrange::TO_A_NUMBER.now(),
    }
}
/// "The kit: modules landscape or portrait; joints of rows free, aligned or half-lapped; base rail anywhere."
pub(crate) fn kit_allows(kit: &Kit) -> String {
    let ways: Vec<&str> = kit.orientations.iter().map(|way| way.name().now()).collect();
    let joints: Vec<&str> = kit
        .laying
        .joints
        .iter()
        .map(|joints| match joints {
            RowJoints::Free => words::arrange::FREE.now(),
            RowJoints::Aligned => words::arrange::IN_LINE.now(),
            RowJoints::HalfLapped => words::common::HALF_LAPPED.now(),
        })
        .collect();
    let rail = if kit.laying.base_rail.anywhere {
        words::common::ANYWHERE.now()
    } else {
        words::arrange::BY_THE_COURSES.now()
    };
    words::arrange::the_kit_allows_modules_joints(
        &ways.join(words::common::OR.now()),
        &joints.join(words::common::OR.now()),
        &rail,
    )
}
pub(crate) fn worth_of_module(currency: &str) -> String {
    words::arrange::a_modules_worth(&currency)
}
/// A number above 0.
///
/// # Errors
/// A message for the user.
pub(crate) fn positive_number(text: &str) -> Result<f64, &'static str> {
    match text.trim().parse::<f64>() {
        Ok(number) if number.is_finite() && number > 0.0 && number < 1e9 => Ok(number),
        _ => Err(words::arrange::TYPE_A_NUMBER_ABOVE_0.now()),
    }
}
pub(crate) fn some_faces(chosen: usize) -> String {
    match chosen {
        0 => words::arrange::CHOOSE_SEVERAL_FACES.now().to_owned(),
        n => words::arrange::faces_chosen(n),
    }
}
pub(crate) fn fill_chosen(chosen: usize) -> String {
    words::arrange::fill_chosen_faces(chosen)
}
/// "So far 49 of at most 52"
pub(crate) fn so_far(fills: &[Fill]) -> String {
    words::arrange::so_far(&of_most(fills))
}
/// "25 of at most 26" if the bound is over layouts of any kind; a narrower claim is only shown with its kind.
fn of_most(fills: &[Fill]) -> String {
    let modules: usize = fills.iter().map(|fill| fill.modules).sum();
    let most: Option<usize> = fills.iter().map(Fill::most).sum();
    match most {
        Some(most) => words::arrange::of_at_most(&modules, &most),
        None => chalkcourse_words::modules(modules),
    }
}
/// The modules found as a share of the bound, from 0 to 1.
pub(crate) fn share_found(fills: &[Fill]) -> f32 {
    let of = |what: fn(&Fill) -> usize| fills.iter().map(what).sum::<usize>() as f32;
    of(|fill| fill.modules) / of(|fill| fill.bound).max(1.0)
}
pub(crate) const SHARE_FOUND_HELP: Say = words::arrange::WHAT_WAS_FOUND_AGAINST_THE;

/// The remaining gap, if a fill is not proved optimal.
pub(crate) fn gap(fill: &Fill) -> Option<String> {
    if fill.proved {
        return None;
    }
    Some(match &fill.measure {
        Some(Measure { value, bound, .. }) => words::arrange::not_proved_between_and_something(
            &format_args!("{value:.2}"),
            &format_args!("{bound:.2}"),
        ),
        None => {
            let open = fill.bound.saturating_sub(fill.modules);
            let modules =
                if open == 1 { words::common::MODULE.now() } else { words::common::MODULES_2.now() };
            words::arrange::not_proved_up_to_more(&open, &modules)
        }
    })
}
pub(crate) fn cost_named(words: &str) -> String {
    words::arrange::costs_modules(&words)
}
pub(crate) fn win_named(words: &str) -> String {
    words::arrange::would_win(&words)
}
pub(crate) fn near_named(words: &str) -> String {
    words::arrange::nearly_fits(&words)
}
pub(crate) fn move_named(words: &str) -> String {
    format!("{}: {words}", super::MOVE_IT)
}
pub(crate) fn move_help(searched: &str) -> String {
    words::arrange::do_this_undo_takes_it(&sentence(searched))
}
pub(crate) fn fill_face(name: &str) -> String {
    words::arrange::fill_2(&name)
}
pub(crate) fn filling(names: &[&str], seconds: f64) -> String {
    let since = if seconds < 1.0 { String::new() } else { format!(", {seconds:.0} s") };
    match names {
        [one] => words::arrange::filling(&one, &since),
        _ => words::arrange::filling_faces(&names.len(), &since),
    }
}
pub(crate) fn fill_of(job: &Resolved, fills: &[Fill]) -> Said {
    let name = |fill: &Fill| {
        job.face(fill.face).map_or_else(|| words::common::A_FACE.into(), |face| Said::own(&face.name))
    };
    match fills {
        [fill] => later::arrange::fill_3(&name(fill)),
        _ => later::arrange::fill_faces(&fills.len()),
    }
}
pub(crate) fn filled(fills: &[Fill]) -> String {
    match fills {
        [_] => words::arrange::filled(&of_most(fills)),
        _ => words::arrange::filled_faces(&fills.len(), &of_most(fills)),
    }
}
/// What a fill did, and which blocks made way for it.
pub(crate) fn filled_in_place_of(filled: &str, gone: &[&str]) -> String {
    words::arrange::filled_in_place_of(&filled, &gone.join(", "), gone.len())
}
/// "Face South: 25 of at most 25"
pub(crate) fn fill_row(name: &str, fill: &Fill) -> String {
    format!("{}: {}", super::face_heading(name), of_most(std::slice::from_ref(fill)))
}
/// "At 2 places one more module is stopped by …"
pub(crate) fn near_row(words: &str, places: usize) -> String {
    match places {
        1 => sentence(words),
        places => words::arrange::at_places(&places, &words),
    }
}

// Arrange
pub(crate) const MAKE_ROOM: Say = words::arrange::MAKE_ROOM;
pub(crate) const MAKE_ROOM_HELP: Say = words::arrange::MOVE_IT_THE_LEAST_DISTANCE;
pub(crate) const NOTHING_IN_THE_WAY: Say = words::arrange::NOTHING_IS_IN_ITS_WAY;
pub(crate) const NO_ROOM: Say = words::arrange::NO_MOVE_WAS_FOUND_THAT;
pub(crate) const ROOM_DROPPED: Say = words::arrange::THE_ROOF_CHANGED_WHILE_ROOM;
pub(crate) const ROOM_STOP_HELP: Say = words::arrange::END_THE_SEARCH_WITH_THE;
pub(crate) const MIRROR: Say = words::arrange::MIRROR;
pub(crate) const MIRROR_HELP: Say = words::arrange::A_MIRROR_IMAGE_ON_THE;
pub(crate) const NO_OTHER_SLOPE: Say = words::arrange::ITS_FACE_SHARES_NO_RIDGE;
pub(crate) const COPY_TO: Say = words::arrange::COPY_TO_FACE;
pub(crate) const COPY_TO_FACE: Say = words::arrange::COPY_TO_A_FACE;
pub(crate) const NO_OTHER_FACE: Say = words::arrange::THERE_IS_NO_OTHER_FACE;
pub(crate) const NO_COPY: Say = words::arrange::IT_CANT_BE_COPIED_THERE;
pub(crate) const SPLIT: Say = words::arrange::SPLIT;
pub(crate) const NO_SPLIT: Say = words::arrange::A_CUT_THERE_LEAVES_NOTHING;
pub(crate) const JOIN: Say = words::arrange::JOIN;
pub(crate) const NOT_FLUSH: Say = words::arrange::NO_BLOCK_IS_FLUSH_WITH;
pub(crate) const ALIGN: Say = words::arrange::ALIGN;
pub(crate) const NOT_ALIGNED: Say = words::arrange::THERE_IS_NO_OTHER_BLOCK;
pub(crate) const SELECT_A_BLOCK: Say = words::arrange::SELECT_A_BLOCK_FIRST;

pub(crate) fn making_room(name: &str) -> String {
    words::arrange::making_room_for(&name)
}
/// "Block A moved 3 1/2" to the right: the least that clears it, proved"
pub(crate) fn moved_clear(name: &str, by: DVec2, proved: bool, units: Units) -> String {
    let sure = if proved {
        words::arrange::THE_LEAST_THAT_CLEARS_IT.now()
    } else {
        words::arrange::THE_LEAST_THAT_WAS_FOUND.now()
    };
    words::arrange::moved(&name, &way_words(by, units), &sure)
}
/// "3 1/2" to the right and 1" up the slope"
pub(crate) fn way_words(by: DVec2, units: Units) -> String {
    let part = |metres: f64, plus: &str, minus: &str| {
        let words = if metres > 0.0 { plus } else { minus };
        (metres.abs() > 1e-6)
            .then(|| format!("{} {words}", Length::from_metres(metres.abs()).show_small(units)))
    };
    let parts = [
        part(by.x, words::common::TO_THE_RIGHT.now(), words::common::TO_THE_LEFT.now()),
        part(by.y, words::arrange::UP_THE_SLOPE.now(), words::arrange::DOWN_THE_SLOPE.now()),
    ];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    if parts.is_empty() {
        words::arrange::NOT_AT_ALL.now().to_owned()
    } else {
        parts.join(words::common::AND.now())
    }
}
pub(crate) const SPREAD_ALONG: Say = words::arrange::SPREAD_ALONG_THE_EAVE;
pub(crate) const SPREAD_UP: Say = words::arrange::SPREAD_UP_THE_SLOPE;
pub(crate) fn spread_of(face: impl Put) -> Said {
    later::arrange::spread_the_blocks_of(&face)
}
pub(crate) const SPREAD: Say = words::arrange::SPREAD;
pub(crate) const SPREAD_HELP: Say = words::arrange::EQUAL_GAPS_BETWEEN_THE_BLOCKS;
pub(crate) const NOT_SPREAD: Say = words::arrange::NOTHING_TO_SPREAD_IT_TAKES;
pub(crate) const ALIGN_LEFT: Say = words::arrange::LEFT_END_WITH_THE_NEAREST;
pub(crate) const ALIGN_RIGHT: Say = words::arrange::RIGHT_END_WITH_THE_NEAREST;
pub(crate) const ALIGN_BOTTOM: Say = words::arrange::BASE_RAIL_WITH_THE_NEAREST;
pub(crate) fn copy_title(name: &str) -> String {
    words::arrange::copy_to(&name)
}
pub(crate) fn mirror_to(face: &str) -> String {
    words::arrange::mirror_to(&face)
}
/// Where a block is split, as the user sees its face: rows and columns count from the left end of the eave, wherever
/// that is on the screen.
pub(crate) fn cut(cut: Cut, plane: &Plane, seen: Seen) -> String {
    let (line, way) = match cut {
        Cut::AboveRows(rows) => (words::arrange::row(&rows), DVec2::Y),
        Cut::RightOfColumns(columns) => (words::arrange::column(&columns), DVec2::X),
    };
    let shown = seen.on_screen(plane, way);
    let side = if shown.x > 0.5 {
        words::arrange::RIGHT_OF.now()
    } else if shown.x < -0.5 {
        words::arrange::LEFT_OF.now()
    } else if shown.y > 0.0 {
        words::arrange::ABOVE.now()
    } else {
        words::arrange::BELOW.now()
    };
    format!("{side} {line}")
}
pub(crate) fn align_to(to: Align, name: &str) -> String {
    match to {
        Align::Left => words::arrange::left_end_with(&name),
        Align::Right => words::arrange::right_end_with(&name),
        Align::Bottom => words::arrange::base_rail_with(&name),
    }
}
pub(crate) fn room_for(name: impl Put) -> Said {
    later::arrange::make_room_for(&name)
}
pub(crate) fn mirror_of(name: impl Put) -> Said {
    later::arrange::mirror_2(&name)
}
pub(crate) fn copy_of(name: impl Put) -> Said {
    later::arrange::copy(&name)
}
pub(crate) fn split_of(name: impl Put) -> Said {
    later::arrange::split_2(&name)
}
pub(crate) fn join_of(name: impl Put) -> Said {
    later::arrange::join_2(&name)
}
pub(crate) fn align_of(name: impl Put) -> Said {
    later::arrange::align_2(&name)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Azimuth, Pitch};

    /// In plan, north up, the right end of a north face's eave is on the left of the screen, and its ridge is below.
    #[test]
    fn cuts_are_named_as_they_are_seen() {
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        let falling_to = |degrees| Plane {
            datum: chalkcourse_geometry::dvec3(0.0, 0.0, 0.0),
            pitch,
            downslope: Azimuth::from_degrees(degrees),
        };
        let (column, row) = (Cut::RightOfColumns(2), Cut::AboveRows(1));
        for (degrees, seen, columns, rows) in [
            (180.0, Seen::Plan, "right of column 2", "above row 1"),
            (0.0, Seen::Plan, "left of column 2", "below row 1"),
            (90.0, Seen::Plan, "above column 2", "left of row 1"),
            (0.0, Seen::FaceOn, "right of column 2", "above row 1"),
        ] {
            let plane = falling_to(degrees);
            assert_eq!((cut(column, &plane, seen), cut(row, &plane, seen)), (columns.into(), rows.into()));
        }
    }
}
