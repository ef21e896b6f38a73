//! Sentences about the drawing: hints, snaps, names for screen readers.

use crate::state::{Dimension, Group, OutlineFor, Shaped, Toward};
use crate::state::{Tool, View};
use crate::{Document, text};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, LengthError, RoofFace, Units};
use chalkcourse_job::{Block, Cell, PenetrationKind, Resolved};
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_words::{self as words, Put, Said, Say, later};

/// The word for a kind, as on a button.
pub(crate) fn kind(kind: PenetrationKind) -> &'static str {
    match kind {
        PenetrationKind::PipeBoot => words::canvas::PIPE_BOOT.now(),
        PenetrationKind::Vent => words::canvas::VENT.now(),
        PenetrationKind::Chimney => words::common::CHIMNEY.now(),
        PenetrationKind::Skylight => words::canvas::SKYLIGHT.now(),
        PenetrationKind::EscapeWindow => words::canvas::ESCAPE_WINDOW.now(),
        PenetrationKind::Other => words::common::OTHER.now(),
    }
}

/// Why a side has its direction: parallel to a drawn one, or to one of a face.
pub(crate) fn parallel_to(face: Option<&str>) -> String {
    match face {
        None => words::canvas::PARALLEL_TO_A_SIDE_DRAWN.now().to_owned(),
        Some(name) => words::canvas::parallel_to_a_side_of(&name),
    }
}
pub(crate) fn square_to(face: Option<&str>) -> String {
    match face {
        None => words::canvas::SQUARE_TO_A_SIDE_DRAWN.now().to_owned(),
        Some(name) => words::canvas::square_to_a_side_of(&name),
    }
}

/// What clicking a dimension does.
pub(crate) fn type_over(of: Dimension) -> &'static str {
    match of {
        Dimension::Block(..) => words::canvas::PRESS_TO_TYPE_ANOTHER_LENGTH.now(),
        Dimension::Side(..) => words::canvas::PRESS_TO_TYPE_ANOTHER_LENGTH_THE.now(),
    }
}

/// What a dimension measures.
pub(crate) fn dimension_of(of: Dimension) -> String {
    match of {
        Dimension::Block(_, Toward::Left) => words::canvas::FROM_THE_LEFT_BORDER_TO.now().to_owned(),
        Dimension::Block(_, Toward::Right) => words::canvas::FROM_THE_BLOCK_TO_THE.now().to_owned(),
        Dimension::Block(_, Toward::Eave) => words::canvas::FROM_THE_LOWER_BORDER_TO.now().to_owned(),
        Dimension::Block(_, Toward::Top) => words::canvas::FROM_THE_BLOCK_TO_THE_UPPER.now().to_owned(),
        Dimension::Side(_, _, side) => words::canvas::length_of_side(&(side + 1)),
    }
}
pub(crate) fn dimension_words(of: Dimension, length: &str) -> String {
    format!("{}: {length}", dimension_of(of))
}

pub(crate) const LINES_MEAN: Say = words::canvas::WHAT_THE_LINES_MEAN;
pub(crate) const LINE_OF_FREE: Say = words::canvas::INSIDE_MODULES_MAY_STAND;
pub(crate) const LINE_OF_LOWEST: Say = words::canvas::NOT_FOR_THE_LOWEST_ROW;
pub(crate) const HOLD_ALL: Say = words::canvas::HOLD_ALL_BLOCKS_AND_PENETRATIONS;
pub(crate) const GROUP_HELP: Say = words::canvas::DRAG_ONE_OF_THEM_AND;
pub(crate) const GROUP_ON: Say = words::canvas::SWITCH_THESE_MODULES_ON;
pub(crate) const GROUP_OFF: Say = words::canvas::SWITCH_THESE_MODULES_OFF;
pub(crate) const GROUP_DELETE: Say = words::canvas::DELETE_ALL_OF_THESE;

/// "2 blocks, 1 penetration, 3 modules"
pub(crate) fn group_words(group: &Group) -> Said {
    let count = |count: usize, one: Say, many: Say| match count {
        0 => None,
        1 => Some(Said::from(one).after("1 ")),
        count => Some(Said::from(many).after(format!("{count} "))),
    };
    let blocks = count(group.blocks.len(), words::common::BLOCK_2, words::canvas::BLOCKS);
    let penetrations = (words::common::PENETRATION, words::canvas::PENETRATIONS);
    let penetrations = count(group.penetrations.len(), penetrations.0, penetrations.1);
    let modules = count(group.modules.len(), words::common::MODULE, words::common::MODULES_2);
    Said::listed([blocks, penetrations, modules].into_iter().flatten(), ", ")
}

// Copies
pub(crate) const NOTHING_TO_COPY: Say = words::canvas::NOTHING_TO_COPY;
pub(crate) const NO_ROOM_HERE: Say = words::canvas::IT_DOES_NOT_FIT_ON;
pub(crate) const NO_ROOM_BESIDE: Say = words::canvas::NO_ROOM_BESIDE_IT;
pub(crate) const PASTE_HINT: Say = words::canvas::A_CLICK_SETS_IT_DOWN;
pub(crate) fn copied(what: &str) -> String {
    words::canvas::copied(&what)
}

/// Why the clipboard text of another program can't be placed, quoting its beginning.
pub(crate) fn other_text(text: &str) -> String {
    const MOST: usize = 40;
    let line = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let mut begins: String = line.chars().take(MOST).collect();
    if line.chars().count() > MOST {
        begins.push('…');
    }
    words::canvas::clipboard_has_other_text(&begins)
}
pub(crate) fn cant_set_down(why: &str) -> String {
    words::canvas::what_was_copied_cant_be(&why)
}

// What tools are for
pub(crate) const SELECT_HELP: Say = words::canvas::SELECT_DRAG_SWITCH_MODULES;
pub(crate) const DRAW_FACE_HELP: Say = words::canvas::DRAW_A_FACE_OF_THE;
pub(crate) const PENETRATION_HELP: Say = words::canvas::MARK_WHAT_COMES_THROUGH_THE;
pub(crate) const PLACE_BLOCK_HELP: Say = words::canvas::PLACE_A_BLOCK_OF_MODULES;
pub(crate) const TAPE_HELP: Say = words::canvas::MEASURE;
pub(crate) const RAISE_OVER_WALLS_HELP: Say = words::canvas::DRAW_THE_WALLS_THE_ROOF;

/// What an outline is drawn for.
pub(crate) fn outline_for(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => words::common::FACE.now(),
        OutlineFor::Roof => words::canvas::WHOLE_ROOF.now(),
        OutlineFor::Part => words::canvas::PART.now(),
        OutlineFor::Hole => words::canvas::HOLE.now(),
        OutlineFor::Penetration => words::canvas::PENETRATION_OUTLINE.now(),
    }
}
pub(crate) fn outline_help(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => words::canvas::A_FACE_OF_THE_ROOF.now(),
        OutlineFor::Roof => words::canvas::DRAW_THE_WALLS_THE_ROOF.now(),
        OutlineFor::Part => text::PART_HELP.now(),
        OutlineFor::Hole => words::canvas::A_COURTYARD_A_SHAFT_OR.now(),
        OutlineFor::Penetration => words::canvas::A_PENETRATION_THAT_IS_NEITHER.now(),
    }
}
pub(crate) const RAISE_ROOF: Say = words::canvas::RAISE_A_ROOF;
pub(crate) const RAISE_GABLES: Say = words::canvas::GABLES;
pub(crate) const RAISE_HIPS: Say = words::canvas::HIPS;
pub(crate) const RAISE_OVERHANG: Say = words::common::OVERHANG;
pub(crate) const RAISE_WALLS: Say = words::canvas::WALLS;
pub(crate) const RAISE_OVERHANG_HELP: Say = words::canvas::HOW_FAR_THE_ROOF_REACHES;
pub(crate) const RAISE_WALLS_HELP: Say = words::canvas::HEIGHT_OF_THE_ROOF_OVER;

/// A length that is not negative.
///
/// # Errors
/// The parse error, or that it is negative.
pub(crate) fn at_least_none(length: Result<Length, LengthError>) -> Result<Length, String> {
    match length {
        Ok(length) if length < Length::ZERO => Err(words::canvas::THIS_CANT_BE_LESS_THAN.now().to_owned()),
        Ok(length) => Ok(length),
        Err(error) => Err(error.to_string()),
    }
}

pub(crate) fn courtyard_in(part: &str) -> Said {
    later::canvas::draw_a_courtyard_in(&part)
}
pub(crate) fn hole_in(face: &str) -> Said {
    later::canvas::draw_a_hole_in(&face)
}

/// The hint for a tool.
pub(crate) fn hint(tool: Tool, corners: usize, job: &Resolved) -> &'static str {
    match (tool, corners) {
        (Tool::Select, _) if job.faces.is_empty() => words::canvas::CHOOSE_DRAW_FACE_TO_BEGIN.now(),
        (Tool::Select, _) if job.blocks.is_empty() => words::canvas::NEXT_CHOOSE_BLOCK_AND_PRESS.now(),
        (Tool::Select, _) => words::canvas::DRAG_BLOCKS_VENTS_AND_CORNERS.now(),
        (Tool::DrawFace, 0) => words::canvas::CLICK_THE_FIRST_CORNER_FOR.now(),
        (Tool::DrawFace, 1..3) => words::canvas::CLICK_OR_TYPE_A_LENGTH.now(),
        (Tool::DrawFace, _) => words::canvas::CLICK_THE_FIRST_CORNER_TO.now(),
        (Tool::Penetration, _) => words::canvas::CHOOSE_A_KIND_AND_CLICK.now(),
        (Tool::Block, _) => words::canvas::CLICK_A_FACE_FOR_3.now(),
        (Tool::Paste, _) => PASTE_HINT.now(),
        (Tool::Tape, _) => words::canvas::DRAG_FROM_ONE_PLACE_TO.now(),
        (Tool::Picture, _) => text::NO_PICTURE.now(),
        (Tool::Circuit, _) => text::STRING_HINT.now(),
        (Tool::JunctionBox, _) => text::PLACE_BOX_HINT.now(),
    }
}

/// The hint for a rectangle, an L or a T with this many corners.
pub(crate) fn shape_hint(corners: usize) -> &'static str {
    match corners {
        0 => words::canvas::CLICK_ONE_CORNER_OR_PRESS.now(),
        1 => words::canvas::CLICK_THE_CORNER_ACROSS_OR.now(),
        _ => words::canvas::CLICK_THE_INNER_CORNER_OR.now(),
    }
}

/// How far an outline is out of square.
pub(crate) fn out_of_square(degrees: f64) -> String {
    words::canvas::out_of_square(&format_args!("{degrees:.1}"))
}

pub(crate) fn square_of(name: impl Put) -> Said {
    later::canvas::square(&name)
}

/// The button of a shape.
pub(crate) fn shaped(shaped: Shaped) -> &'static str {
    match shaped {
        Shaped::Corners => words::canvas::CORNER_BY_CORNER.now(),
        Shaped::Rectangle => words::common::RECTANGLE.now(),
        Shaped::Ell => words::canvas::L.now(),
        Shaped::Tee => words::canvas::T.now(),
    }
}

pub(crate) fn shaped_help(shaped: Shaped) -> &'static str {
    match shaped {
        Shaped::Corners => words::canvas::ANY_OUTLINE_SHIFT_HOLDS_RIGHT.now(),
        Shaped::Rectangle => words::canvas::TWO_CORNERS_OR_ONE_AND.now(),
        Shaped::Ell => words::canvas::A_RECTANGLE_THEN_THE_INNER.now(),
        Shaped::Tee => words::canvas::A_RECTANGLE_THEN_ONE_OF.now(),
    }
}

pub(crate) fn size_hint(units: Units) -> &'static str {
    match units {
        Units::FeetInches => "30' x 48'",
        Units::Metric => "9 m x 14 m",
    }
}

pub(crate) fn length_hint(units: Units) -> &'static str {
    match units {
        Units::FeetInches => "12' 6 1/2\"",
        Units::Metric => "3.82 m",
    }
}

// Why something snapped
pub(crate) fn at_edge(kind: EdgeKind) -> String {
    words::canvas::at_the(&kind.name())
}
pub(crate) fn at_setback(kind: EdgeKind, setback: Length, units: Units) -> String {
    words::canvas::from_the_its_setback(&setback.show_small(units), &kind.name())
}
pub(crate) fn on_course(number: usize) -> String {
    words::canvas::on_course_line(&number)
}
pub(crate) fn clear_of(name: &str) -> String {
    words::canvas::just_clear_of(&name)
}
pub(crate) fn flush_with(name: &str) -> String {
    words::canvas::flush_with(&name)
}
pub(crate) fn clear_of_block(name: &str) -> String {
    words::canvas::just_clear_of_2(&block_heading(name))
}
pub(crate) fn reveal_to(name: &str, reveal: Length, units: Units) -> String {
    words::canvas::reveal_to(&reveal.show_small(units), &block_heading(name))
}
pub(crate) const SAME_GAPS: Say = words::canvas::THE_SAME_GAP_ON_BOTH;
pub(crate) fn middle_on_course(number: usize) -> String {
    words::canvas::its_middle_on_course_line(&number)
}
pub(crate) fn middle_in_line(name: &str) -> String {
    words::canvas::in_line_with_the_middle(&name)
}
pub(crate) const ROW_STILL_HOOKS: Say = words::canvas::AS_FAR_AS_THE_ROWS;
/// Why a shifted row stopped: its shift against the row below in half modules.
pub(crate) fn row_steps(row: u32, halves: u64) -> String {
    let below =
        if row == 0 { words::canvas::THE_BLOCKS_CORNER.now() } else { words::canvas::THE_ROW_BELOW.now() };
    match halves {
        0 => words::canvas::in_line_with(&below),
        1 => words::canvas::half_a_module_against(&below),
        2 => words::canvas::module_against(&below),
        n if n % 2 == 0 => words::canvas::modules_against(n / 2, &below),
        n => words::canvas::modules_against_2(&(n / 2), &below),
    }
}
pub(crate) fn corner_of(name: &str) -> String {
    words::canvas::corner_of(&name)
}
pub(crate) fn on_side_of(name: &str) -> String {
    words::canvas::on_a_side_of(&name)
}
pub(crate) fn level_with(name: &str) -> String {
    words::canvas::in_line_with_a_corner(&name)
}

/// "eave 60'"
pub(crate) fn edge(kind: EdgeKind, length: Length, units: Units) -> String {
    format!("{} {}", kind.name(), length.show(units))
}

pub(crate) fn face_on(name: &str) -> String {
    words::canvas::face_on_true_size_eave(&name)
}

pub(crate) fn block_label(name: &str, modules: usize) -> String {
    words::canvas::modules(&block_heading(name), modules)
}

pub(crate) fn taped(length: Length, units: Units) -> String {
    words::canvas::in_plan(&length.show(units))
}

pub(crate) fn taped_on_face(on_slope: Length, along: DVec2, in_plan: Length, units: Units) -> String {
    let part = |metres: f64| Length::from_metres(metres.abs()).show(units);
    words::canvas::on_the_slope_along_up(
        &on_slope.show(units),
        &part(along.x),
        &part(along.y),
        &in_plan.show(units),
    )
}

/// The pointer position: on its face if there is one, otherwise in plan.
pub(crate) fn pointer(document: &Document, view: View, at: DVec2) -> String {
    let units = document.job().units;
    let show = |metres: f64| Length::from_metres(metres).show(units);
    if let View::FaceOn(id) = view
        && let Some((_, face)) = document.plan().layout.face(id)
    {
        let from = face.plane.to_frame(at) - face.bounds.min;
        return words::canvas::from_the_left_up(&show(from.x), &show(from.y));
    }
    words::canvas::east_north(&show(at.x), &show(at.y))
}

// For screen readers
pub(crate) fn drawing(job: &Resolved, view: View) -> String {
    match view {
        View::Plan => words::canvas::drawing_of_plan(&job.name),
        View::FaceOn(id) => {
            let name = job.face(id).map_or(words::common::A_FACE.now(), |face| face.name.as_str());
            words::canvas::drawing_of_face_face_on(&job.name, &name)
        }
    }
}

pub(crate) fn face_words(name: &str, face: &RoofFace, units: Units) -> String {
    let area = text::area(face.slope_area, units);
    words::canvas::face_pitch_on_the_slope(&words::face_heading(name), &face.plane.pitch, &area)
}

pub(crate) fn penetration_words(penetration: &PlacedPenetration) -> String {
    format!("{}, {}", penetration.name, penetration.kind.name())
}

pub(crate) fn block_words(block: &Block, modules: usize) -> String {
    words::canvas::rows_of_modules(&block_heading(&block.name), block.rows, &block.columns, modules)
}

pub(crate) fn module_words(cell: Cell, off: bool) -> String {
    let state = if off { words::canvas::SWITCHED_OFF.now() } else { "" };
    words::canvas::module_row_column(&(cell.row + 1), &(cell.column + 1), &state)
}

// The side panel
pub(crate) use chalkcourse_words::{block_heading, face_heading};
pub(crate) fn corner_heading(corner: usize) -> String {
    words::canvas::corner(&(corner + 1))
}
pub(crate) fn side_row(side: usize, length: &str) -> String {
    format!("{}.  {length}", side + 1)
}
pub(crate) fn overruled(kind: EdgeKind) -> String {
    words::canvas::chosen(&kind.name())
}
pub(crate) fn kind_of_side(side: usize) -> String {
    words::canvas::kind_of_side(&(side + 1))
}
pub(crate) fn row_name(row: u32) -> String {
    words::canvas::row(&(row + 1))
}
pub(crate) fn own_clearance(usual: &str) -> String {
    words::canvas::the_rule_book_says(&usual)
}
pub(crate) fn bad_direction(text: &str) -> String {
    words::canvas::cant_read_as_a_direction(&format_args!("{text:?}"))
}
