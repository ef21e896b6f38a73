use super::Shaped;
use chalkcourse_job::{BlockId, FaceId, PartKind, Resolved};

/// What the next outline becomes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum OutlineFor {
    /// A face of the roof.
    #[default]
    Face,
    /// A whole roof over the drawn walls.
    Roof,
    /// A part of the house over the existing roof.
    Part,
    /// A hole in a face: a courtyard, a shaft.
    Hole,
    /// A penetration of the kind that the penetration tool places.
    Penetration,
}

impl OutlineFor {
    /// The most common first.
    pub(crate) const ALL: [Self; 5] = [Self::Roof, Self::Part, Self::Face, Self::Hole, Self::Penetration];

    /// The default: what to draw first if there is no roof yet, and next if there is one.
    pub(crate) fn usual(job: &Resolved) -> Self {
        match (job.faces.is_empty(), job.parts.is_empty()) {
            (true, _) => Self::Roof,
            (false, false) => Self::Part,
            (false, true) => Self::Face,
        }
    }

    /// The default shape: walls are usually rectangles, faces seldom are.
    pub(crate) fn usual_shape(self) -> Shaped {
        match self {
            Self::Roof | Self::Part => Shaped::Rectangle,
            Self::Face | Self::Hole | Self::Penetration => Shaped::Corners,
        }
    }
}

/// A kind of part to draw: the treatment of its sides follows from the existing house.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum PartPreset {
    /// On a slope, with a wall in front.
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

    /// Its kind.
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

/// The side of the block that a dimension is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Toward {
    Left,
    Right,
    Eave,
    Top,
}

/// An editable dimension on the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Dimension {
    /// From a side of a block to the border of its face.
    Block(BlockId, Toward),
    /// A side of a drawn face, by ring and index; its true length.
    Side(FaceId, usize, usize),
}
