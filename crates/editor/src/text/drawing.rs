//! Sentences about the drawing: hints, snaps, names for screen readers.

use crate::canvas::OutlineFor;
use crate::commands::Tool;
use crate::view::View;
use crate::{Document, text};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, LengthError, RoofFace, Units};
use chalkcourse_job::{Block, Cell, Job, PenetrationKind};
use chalkcourse_layout::PlacedPenetration;

/// The word for a kind, as on a button.
pub(crate) fn kind(kind: PenetrationKind) -> &'static str {
    match kind {
        PenetrationKind::PipeBoot => "Pipe boot",
        PenetrationKind::Vent => "Vent",
        PenetrationKind::Chimney => "Chimney",
        PenetrationKind::Skylight => "Skylight",
        PenetrationKind::EscapeWindow => "Escape window",
        PenetrationKind::Other => "Other",
    }
}

/// What a tool is for.
pub(crate) fn tool_help(tool: Tool) -> &'static str {
    match tool {
        Tool::Select => "Select, drag, switch modules",
        Tool::DrawFace => "Draw a face of the roof corner by corner",
        Tool::Penetration => "Mark what comes through the roof",
        Tool::Block => "Place a block of modules on a face",
        Tool::Tape => "Measure",
        Tool::Picture => text::TOOL_PICTURE_HELP,
    }
}

/// What an outline is drawn for.
pub(crate) fn outline_for(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => "Face",
        OutlineFor::Roof => "Whole roof",
        OutlineFor::Part => "Part",
        OutlineFor::Hole => "Hole",
        OutlineFor::Penetration => "Penetration outline",
    }
}
pub(crate) fn outline_help(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => "A face of the roof, corner by corner",
        OutlineFor::Roof => "Draw the walls: the roof is raised over them, all of one pitch",
        OutlineFor::Part => text::PART_HELP,
        OutlineFor::Hole => "A courtyard, a shaft or a dormer's foot: its rim counts as a wall line",
        OutlineFor::Penetration => "A penetration that is neither round nor square, by its own outline",
    }
}
pub(crate) const RAISE_ROOF: &str = "raise a roof";
pub(crate) const RAISE_GABLES: &str = "Gables";
pub(crate) const RAISE_HIPS: &str = "Hips";
pub(crate) const RAISE_OVERHANG: &str = "Overhang";
pub(crate) const RAISE_WALLS: &str = "Walls";
pub(crate) const RAISE_OVERHANG_HELP: &str =
    "How far the roof reaches beyond the walls, in plan; 1' is usual";
pub(crate) const RAISE_WALLS_HELP: &str = "Height of the roof over the walls; 9' is usual for one storey";

/// A length that is not below nothing.
///
/// # Errors
/// What was wrong with the text, or that it is below nothing.
pub(crate) fn at_least_none(length: Result<Length, LengthError>) -> Result<Length, String> {
    match length {
        Ok(length) if length < Length::ZERO => {
            Err("This can't be less than nothing: type 0 or more.".to_owned())
        }
        Ok(length) => Ok(length),
        Err(error) => Err(error.to_string()),
    }
}

pub(crate) fn courtyard_in(part: &str) -> String {
    format!("draw a courtyard in {part}")
}
pub(crate) fn hole_in(face: &str) -> String {
    format!("draw a hole in {face}")
}

/// What to do with the tool now.
pub(crate) fn hint(tool: Tool, corners: usize, job: &Job) -> &'static str {
    match (tool, corners) {
        (Tool::Select, _) if job.faces.is_empty() => "Choose “Draw face” to begin.",
        (Tool::Select, _) if job.blocks.is_empty() => {
            "Next: choose “Block” and press on a face. Penetrations first, if you know them."
        }
        (Tool::Select, _) => {
            "Drag blocks, vents and corners. Double-click switches a module. Ctrl or Alt drags without snapping."
        }
        (Tool::DrawFace, 0) => "Click the first corner. For a face begin at the eave if you can.",
        (Tool::DrawFace, 1..3) => "Click, or type a length and Enter.",
        (Tool::DrawFace, _) => "Click the first corner to close.",
        (Tool::Penetration, _) => "Choose a kind and click its middle on the roof.",
        (Tool::Block, _) => "Click a face for 3 rows of 4, or drag out the room that it may fill.",
        (Tool::Tape, _) => "Drag from one place to another.",
        (Tool::Picture, _) => text::NO_PICTURE,
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
    format!("at the {}", kind.name())
}
pub(crate) fn at_setback(kind: EdgeKind, setback: Length, units: Units) -> String {
    format!("{} from the {}: its setback", setback.show_small(units), kind.name())
}
pub(crate) fn on_course(number: usize) -> String {
    format!("on course line {number}")
}
pub(crate) fn clear_of(name: &str) -> String {
    format!("just clear of {name}")
}
pub(crate) fn flush_with(name: &str) -> String {
    format!("flush with {name}")
}
pub(crate) fn clear_of_block(name: &str) -> String {
    format!("just clear of {}", block_name(name))
}
pub(crate) fn reveal_to(name: &str, reveal: Length, units: Units) -> String {
    format!("{} reveal to {}", reveal.show_small(units), block_name(name))
}
pub(crate) const SAME_GAPS: &str = "the same gap on both sides";
pub(crate) fn middle_on_course(number: usize) -> String {
    format!("its middle on course line {number}")
}
pub(crate) fn middle_in_line(name: &str) -> String {
    format!("in line with the middle of {name}")
}
pub(crate) const ROW_STILL_HOOKS: &str = "as far as the rows still hook";
/// Why a row that is shifted stopped: so many half modules against the row below.
pub(crate) fn row_steps(row: u32, halves: u64) -> String {
    let below = if row == 0 { "the block's corner" } else { "the row below" };
    match halves {
        0 => format!("in line with {below}"),
        1 => format!("half a module against {below}"),
        2 => format!("1 module against {below}"),
        n if n % 2 == 0 => format!("{} modules against {below}", n / 2),
        n => format!("{} 1/2 modules against {below}", n / 2),
    }
}
pub(crate) fn corner_of(name: &str) -> String {
    format!("corner of {name}")
}
pub(crate) fn on_side_of(name: &str) -> String {
    format!("on a side of {name}")
}
pub(crate) fn level_with(name: &str) -> String {
    format!("in line with a corner of {name}")
}

/// "eave 60'"
pub(crate) fn edge(kind: EdgeKind, length: Length, units: Units) -> String {
    format!("{} {}", kind.name(), length.show(units))
}

pub(crate) fn face_on(name: &str) -> String {
    format!("{name}, face-on: true size, eave down")
}

/// "Block A" for a block that is called "A".
pub(crate) fn block_name(name: &str) -> String {
    if name.to_lowercase().starts_with("block") { name.to_owned() } else { format!("Block {name}") }
}

pub(crate) fn block_label(name: &str, modules: usize) -> String {
    format!("{} · {modules} modules", block_name(name))
}

pub(crate) fn taped(length: Length, units: Units) -> String {
    format!("{} in plan", length.show(units))
}

pub(crate) fn taped_on_face(on_slope: Length, along: DVec2, in_plan: Length, units: Units) -> String {
    let part = |metres: f64| Length::from_metres(metres.abs()).show(units);
    format!(
        "{} on the slope ({} along, {} up), {} in plan",
        on_slope.show(units),
        part(along.x),
        part(along.y),
        in_plan.show(units)
    )
}

/// Where the pointer is: on its face where there is one, else in plan.
pub(crate) fn pointer(document: &Document, view: View, at: DVec2) -> String {
    let units = document.job().units;
    let show = |metres: f64| Length::from_metres(metres).show(units);
    if let View::FaceOn(id) = view
        && let Some((_, face)) = document.plan().layout.face(id)
    {
        let from = face.plane.to_frame(at) - face.bounds.min;
        return format!("{} from the left, {} up", show(from.x), show(from.y));
    }
    format!("{} east, {} north", show(at.x), show(at.y))
}

// For screen readers
pub(crate) fn drawing(job: &Job, view: View) -> String {
    match view {
        View::Plan | View::Solid => format!("Drawing of {}, plan", job.name),
        View::FaceOn(id) => {
            let name = job.face(id).map_or("a face", |face| face.name.as_str());
            format!("Drawing of {}, face {name} face-on", job.name)
        }
    }
}

pub(crate) fn face_words(name: &str, face: &RoofFace, units: Units) -> String {
    let area = text::area(face.slope_area, units);
    format!("Face {name}, pitch {}, {area} on the slope", face.plane.pitch)
}

pub(crate) fn penetration_words(penetration: &PlacedPenetration) -> String {
    format!("{}, {}", penetration.name, penetration.kind.name())
}

pub(crate) fn block_words(block: &Block, modules: usize) -> String {
    format!("{}, {} rows of {}, {modules} modules", block_name(&block.name), block.rows, block.columns)
}

pub(crate) fn module_words(cell: Cell, off: bool) -> String {
    let state = if off { ", switched off" } else { "" };
    format!("Module row {}, column {}{state}", cell.row + 1, cell.column + 1)
}

// The side panel
pub(crate) fn face_heading(name: &str) -> String {
    format!("Face {name}")
}
pub(crate) fn corner_heading(corner: usize) -> String {
    format!("Corner {}", corner + 1)
}
pub(crate) fn side_row(side: usize, length: &str) -> String {
    format!("{}.  {length}", side + 1)
}
pub(crate) fn overruled(kind: EdgeKind) -> String {
    format!("{} (chosen)", kind.name())
}
pub(crate) fn kind_of_side(side: usize) -> String {
    format!("Kind of side {}", side + 1)
}
pub(crate) fn row_name(row: u32) -> String {
    format!("Row {}", row + 1)
}
pub(crate) fn own_clearance(usual: &str) -> String {
    format!("The rule book says {usual}.")
}
pub(crate) fn bad_direction(text: &str) -> String {
    format!("can't read {text:?} as a direction: type degrees clockwise from north, such as 180, or S")
}
