//! What the sides of a part's face border: sides are matched by that, and not by position, when parts change.

use super::FromPart;
use crate::PartId;
use chalkcourse_geometry::SideId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Something that a side of a part's face borders.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Border {
    /// The edge of a part at one of its sides: the eave or rake of this face, or the wall of a part on it.
    Edge {
        /// The part.
        part: PartId,
        /// The id of its side.
        side: u32,
    },
    /// Another face, given by its side of a part: over a hip, ridge or valley.
    Face {
        /// The part.
        part: PartId,
        /// The id of its side.
        side: u32,
    },
}

impl Border {
    /// The face on a side of a part.
    pub(crate) fn face(from: FromPart) -> Self {
        Self::Face { part: from.part, side: from.side }
    }

    /// The part and side.
    pub(crate) fn of(self) -> (PartId, u32) {
        match self {
            Self::Edge { part, side } | Self::Face { part, side } => (part, side),
        }
    }
}

/// What a side of a part's face borders, or bordered when it was last visible.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SideBorders {
    /// The id of the side.
    pub side: SideId,
    /// What it borders.
    pub along: Vec<Border>,
}
