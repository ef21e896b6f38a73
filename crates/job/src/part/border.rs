//! What the sides of a part's face border: by that, and not by where it is, a side is found again when parts change.

use super::FromPart;
use crate::PartId;
use chalkcourse_geometry::SideId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a side of a part's face borders.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Border {
    /// The edge of a part over one of its sides: the eave or rake of this face, or the wall of what stands on it.
    Edge {
        /// The part.
        part: PartId,
        /// The number of its side.
        side: u32,
    },
    /// Another face, that of one side of a part: over a hip, ridge or valley.
    Face {
        /// The part.
        part: PartId,
        /// The number of its side.
        side: u32,
    },
}

impl Border {
    /// The face that is on a side of a part.
    pub(crate) fn face(from: FromPart) -> Self {
        Self::Face { part: from.part, side: from.side }
    }

    /// The part and side that it is about.
    pub(crate) fn of(self) -> (PartId, u32) {
        match self {
            Self::Edge { part, side } | Self::Face { part, side } => (part, side),
        }
    }
}

/// What a side of a part's face borders, or bordered when it was last seen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SideBorders {
    /// The number of the side.
    pub side: SideId,
    /// What is beyond it.
    pub along: Vec<Border>,
}
