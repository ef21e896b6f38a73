//! Lengths and directions as a person on the roof says them.

use crate::clear::{Move, round_up, step};
use crate::finding::Fix;
use chalkcourse_geometry::{DVec2, EdgeKind, Length, Units};
use chalkcourse_job::Block;
use chalkcourse_words::{pick, tell};

/// A direction on a face, seen by a person who stands at the eave and looks up the slope.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Way {
    Left,
    Right,
    Up,
    Down,
}

impl Way {
    pub(crate) const ALL: [Self; 4] = [Self::Left, Self::Right, Self::Up, Self::Down];

    /// In the face's frame.
    pub(crate) fn unit(self) -> DVec2 {
        match self {
            Self::Left => DVec2::NEG_X,
            Self::Right => DVec2::X,
            Self::Up => DVec2::Y,
            Self::Down => DVec2::NEG_Y,
        }
    }

    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Left => pick("to the left", "a la izquierda"),
            Self::Right => pick("to the right", "a la derecha"),
            Self::Up => pick("up the slope", "pendiente arriba"),
            Self::Down => pick("down the slope", "pendiente abajo"),
        }
    }
}

/// A length to the nearest sixteenth or millimetre: inches alone up to a yard.
pub(crate) fn length(metres: f64, units: Units) -> String {
    let length = Length::from_metres(metres);
    if metres.abs() < 0.915 { length.show_small(units) } else { length.show(units) }
}

/// What was measured and is too short: rounded down, so that it never reads like what is required.
pub(crate) fn too_short(metres: f64, units: Units) -> String {
    let step = step(units);
    length(((metres / step + 1e-6).floor() * step).max(0.0), units)
}

/// What was measured and is too much: rounded up.
pub(crate) fn too_much(metres: f64, units: Units) -> String {
    length(round_up(metres, units), units)
}

/// `block A`, or `block 3` for one without a name.
pub(crate) fn block_name(block: &Block) -> String {
    if block.name.trim().is_empty() {
        tell!("block {}", "el bloque {}", block.id)
    } else {
        tell!("block {}", "el bloque {}", block.name)
    }
}

/// An edge with its article, as Spanish sentences have it.
pub(crate) fn the_edge(kind: EdgeKind) -> &'static str {
    match kind {
        EdgeKind::Eave => "el alero",
        EdgeKind::Rake => "el borde inclinado",
        EdgeKind::Ridge => "la cumbrera",
        EdgeKind::Hip => "la limatesa",
        EdgeKind::Valley => "la limahoya",
        EdgeKind::WallLine => "el encuentro con el muro",
        EdgeKind::Step => "el escalón",
        EdgeKind::PitchChange => "el quiebre de pendiente",
    }
}

/// The first letter large.
pub(crate) fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// `Move block A 7 1/2" to the left`, with its edit.
pub(crate) fn move_fix(block: &Block, it: Move, units: Units) -> Fix {
    let label =
        tell!("Move {} {} {}", "Mover {} {} {}", block_name(block), length(it.by, units), it.way.name());
    Fix { label, edit: it.edit(block) }
}

pub(crate) use chalkcourse_words::modules;
