//! A fix as data: its steps and its cost.

use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{BlockId, Cell, Edit, FaceId, PenetrationId};

/// The effect of one step.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Moves a block in the frame of its face, metres.
    Move(BlockId, DVec2),
    /// Moves a penetration in a face's frame, metres.
    MoveThrough {
        /// The penetration.
        penetration: PenetrationId,
        /// The face in whose frame.
        face: FaceId,
        /// How far.
        by: DVec2,
    },
    /// Removes a block.
    Take(BlockId),
    /// Switches modules off.
    SwitchOff(BlockId, Vec<Cell>),
    /// Switches on this many modules of a row; rows count from 0.
    SwitchOn(BlockId, u32, usize),
    /// Shifts a row over the row below by a length, to the right.
    ShiftOver(BlockId, u32, Length),
    /// Slides a row along the eave, alone or with all rows above it.
    Slide {
        /// The block.
        block: BlockId,
        /// The row, from 0.
        row: u32,
        /// Whether the rows above are moved too.
        above: bool,
        /// How far to the right, seen from the eave.
        by: Length,
    },
    /// Sets the reveal.
    Reveal(BlockId, Length),
    /// Switches off the modules in a pathway.
    OpenPathway(Vec<(BlockId, Vec<Cell>)>),
    /// Raises or lowers a face.
    Lift(FaceId, Length),
    /// Removes repeated corners.
    RepeatedCorner,
    /// Removes a hole, by its ring.
    Hole(usize),
    /// Removes decisions and measurements for sides of a face that no longer exist.
    TakeBack(FaceId),
    /// Adds drip edge.
    DripEdge,
    /// Removes a waiver.
    Unwaive,
}

impl Change {
    /// How far things are moved, metres: along the eave plus up the slope, as a crew measures it.
    pub(super) fn distance(&self) -> f64 {
        match self {
            Self::Move(_, by) | Self::MoveThrough { by, .. } => by.abs().element_sum(),
            Self::Slide { by, .. } | Self::ShiftOver(.., by) | Self::Lift(_, by) => by.metres().abs(),
            _ => 0.0,
        }
    }

    fn moves_the_house(&self) -> bool {
        matches!(self, Self::MoveThrough { .. })
    }
}

/// One step of a fix.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it does.
    pub change: Change,
    /// The edit that does it, on the job after the steps before it.
    pub edit: Edit,
}

/// Steps that clear a finding, verified by a full check.
#[derive(Clone, Debug, PartialEq)]
pub struct Fix {
    /// The steps in order: one, or several if no single one is enough.
    pub steps: Vec<Step>,
    /// Modules lost.
    pub lost: usize,
    /// Modules added.
    pub added: usize,
    /// How far things are moved by all steps together, metres.
    pub distance: f64,
}

impl Fix {
    pub(super) fn of(steps: Vec<Step>, before: usize, after: usize) -> Self {
        let distance = steps.iter().map(|step| step.change.distance()).sum();
        Self { steps, lost: before.saturating_sub(after), added: after.saturating_sub(before), distance }
    }

    /// All steps as one edit.
    pub fn edit(&self) -> Edit {
        match self.steps.as_slice() {
            [step] => step.edit.clone(),
            steps => Edit::Several(steps.iter().map(|step| step.edit.clone()).collect()),
        }
    }

    /// The better fix first: keeps modules and adds none that were not asked for; then leaves penetrations in place;
    /// then moves less, and has fewer steps.
    pub(super) fn rank(&self, other: &Self) -> std::cmp::Ordering {
        let house = |fix: &Self| fix.steps.iter().any(|step| step.change.moves_the_house());
        let key = |fix: &Self| (fix.lost, fix.added, house(fix));
        key(self)
            .cmp(&key(other))
            .then(self.distance.total_cmp(&other.distance))
            .then(self.steps.len().cmp(&other.steps.len()))
    }
}
