use super::Shaped;
use chalkcourse_job::{BlockId, FaceId, PartKind, Resolved};

/// What the next outline is drawn for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum OutlineFor {
    /// A face of the roof.
    #[default]
    Face,
    /// A whole roof over the walls that are drawn.
    Roof,
    /// A part of the house over the roof that is there.
    Part,
    /// A hole in a face: a courtyard, a shaft.
    Hole,
    /// A penetration of the kind that the penetration tool places.
    Penetration,
}

impl OutlineFor {
    /// What most houses need comes first.
    pub(crate) const ALL: [Self; 5] = [Self::Roof, Self::Part, Self::Face, Self::Hole, Self::Penetration];

    /// What is drawn first where there is no roof yet, and next where there is one.
    pub(crate) fn usual(job: &Resolved) -> Self {
        match (job.faces.is_empty(), job.parts.is_empty()) {
            (true, _) => Self::Roof,
            (false, false) => Self::Part,
            (false, true) => Self::Face,
        }
    }

    /// What its corners make until a person chooses: walls are rectangles, faces seldom are.
    pub(crate) fn usual_shape(self) -> Shaped {
        match self {
            Self::Roof | Self::Part => Shaped::Rectangle,
            Self::Face | Self::Hole | Self::Penetration => Shaped::Corners,
        }
    }
}

/// A part of the house as it is drawn: what stands on its sides follows from the house that is there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum PartPreset {
    /// Stands on a slope, with a wall in front.
    #[default]
    Dormer,
    /// One slope that runs up into the roof of the house.
    Porch,
    /// One slope against the wall of the house, under its eaves.
    LeanTo,
    /// A wing whose ridge runs into the roof.
    Ell,
    Chimney,
}

impl PartPreset {
    pub(crate) const ALL: [Self; 5] = [Self::Dormer, Self::Porch, Self::LeanTo, Self::Ell, Self::Chimney];

    /// What it is to the people who build it.
    pub(crate) fn kind(self) -> PartKind {
        match self {
            Self::Dormer => PartKind::Dormer,
            Self::Porch => PartKind::Porch,
            Self::LeanTo => PartKind::Other,
            Self::Ell => PartKind::Ell,
            Self::Chimney => PartKind::Chimney,
        }
    }
}

/// Which side of the block a dimension belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Toward {
    Left,
    Right,
    Eave,
    Top,
}

/// A length on the drawing that can be typed over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Dimension {
    /// From a side of a block to the border of its face.
    Block(BlockId, Toward),
    /// A side of a face that was drawn, by ring and number; its true length.
    Side(FaceId, usize, usize),
}
