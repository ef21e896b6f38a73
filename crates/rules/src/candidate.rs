//! Changes that rules offer by what they know themselves. None was tried against the other rules.

use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{BlockId, Cell, Edit, FaceId};

/// A change that would clear a finding, as its own rule sees it.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// What it is.
    pub change: Change,
    /// The edit that makes it.
    pub edit: Edit,
}

/// What a candidate does.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Moves a block in the frame of its face, metres.
    Move(BlockId, DVec2),
    /// Takes a block away.
    Take(BlockId),
    /// Switches so many modules off.
    SwitchOff(BlockId, usize),
    /// Switches so many modules of a row on; rows count from 0.
    SwitchOn(BlockId, u32, usize),
    /// Lays a row over the row below.
    ShiftOver(BlockId, u32),
    /// Slides a row and all above it along the eave.
    Slide(BlockId, u32, Length),
    /// Sets the reveal.
    Reveal(BlockId, Length),
    /// Switches off the modules that stand in a pathway.
    OpenPathway(Vec<(BlockId, Vec<Cell>)>),
    /// Lifts a face, or lowers it.
    Lift(FaceId, Length),
    /// Takes repeated corners away.
    RepeatedCorner,
    /// Takes a hole away, by its ring.
    Hole(usize),
    /// Puts drip edge on.
    DripEdge,
    /// Takes a waiver away.
    Unwaive,
}
