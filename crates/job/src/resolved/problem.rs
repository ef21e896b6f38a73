//! Parts or pieces of parts that are not on the roof.

use crate::PartId;
use chalkcourse_geometry::raise::RaiseError;

/// A problem with a part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartProblem {
    /// The part.
    pub part: PartId,
    /// The reason.
    pub trouble: PartTrouble,
}

/// Why a part, or a piece of it, is not on the roof.
#[derive(Clone, Debug, PartialEq)]
pub enum PartTrouble {
    /// Its roof can't be raised from its footprint.
    NotRaised(RaiseError),
    /// It is entirely hidden under other parts.
    Hidden,
    /// A chimney's cricket has no slope to be on: the chimney is across a ridge, or not on a roof.
    NoCricket,
}
