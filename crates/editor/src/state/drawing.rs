use super::Shaped;
use chalkcourse_job::{BlockId, FaceId, Resolved};

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
