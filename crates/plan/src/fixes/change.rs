//! A fix as data: its steps, and what it costs.

use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{BlockId, Cell, Edit, FaceId, PenetrationId};

/// What one step does.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Moves a block in the frame of its face, metres.
    Move(BlockId, DVec2),
    /// Moves what comes through a face in that face's frame, metres.
    MoveThrough {
        /// What.
        penetration: PenetrationId,
        /// The face in whose frame.
        face: FaceId,
        /// How far.
        by: DVec2,
    },
    /// Takes a block away.
    Take(BlockId),
    /// Switches modules off.
    SwitchOff(BlockId, Vec<Cell>),
    /// Switches so many modules of a row on; rows count from 0.
    SwitchOn(BlockId, u32, usize),
    /// Lays a row over the row below, so far to the right.
    ShiftOver(BlockId, u32, Length),
    /// Slides a row along the eave, alone or with all above it.
    Slide {
        /// The block.
        block: BlockId,
        /// The row, from 0.
        row: u32,
        /// Whether all above it go with it.
        above: bool,
        /// How far to the right, seen from the eave.
        by: Length,
    },
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
    /// Takes back what was decided or measured for sides of a face that are gone.
    TakeBack(FaceId),
    /// Puts drip edge on.
    DripEdge,
    /// Takes a waiver away.
    Unwaive,
}

impl Change {
    /// How far something goes, metres: along the eave and up the slope added, as a crew measures it.
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

/// Steps that clear a finding, tried on the whole evaluation.
#[derive(Clone, Debug, PartialEq)]
pub struct Fix {
    /// In their order: one, or several where no single one does it.
    pub steps: Vec<Step>,
    /// Modules that are fewer after it.
    pub lost: usize,
    /// Modules that are more after it.
    pub added: usize,
    /// How far things go, metres, all steps together.
    pub distance: f64,
}

impl Fix {
    pub(super) fn of(steps: Vec<Step>, before: usize, after: usize) -> Self {
        let distance = steps.iter().map(|step| step.change.distance()).sum();
        Self { steps, lost: before.saturating_sub(after), added: after.saturating_sub(before), distance }
    }

    /// The edit that makes it, as one.
    pub fn edit(&self) -> Edit {
        match self.steps.as_slice() {
            [step] => step.edit.clone(),
            steps => Edit::Several(steps.iter().map(|step| step.edit.clone()).collect()),
        }
    }

    /// The better one first: modules kept, and none added that nobody asked for; then what comes through the roof stays
    /// where it is; then the shorter way, and the fewer steps.
    pub(super) fn rank(&self, other: &Self) -> std::cmp::Ordering {
        let house = |fix: &Self| fix.steps.iter().any(|step| step.change.moves_the_house());
        let key = |fix: &Self| (fix.lost, fix.added, house(fix));
        key(self)
            .cmp(&key(other))
            .then(self.distance.total_cmp(&other.distance))
            .then(self.steps.len().cmp(&other.steps.len()))
    }
}
