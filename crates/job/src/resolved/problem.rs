//! What of the parts stands on no roof.

use crate::PartId;
use chalkcourse_geometry::raise::RaiseError;

/// A part that could not be worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct PartProblem {
    /// Which part.
    pub part: PartId,
    /// Why.
    pub trouble: PartTrouble,
}

/// Why a part, or something of it, is not on the roof.
#[derive(Clone, Debug, PartialEq)]
pub enum PartTrouble {
    /// No roof can be raised from its footprint.
    NotRaised(RaiseError),
    /// Nothing of it is seen: it lies under other parts.
    Hidden,
    /// A chimney's cricket has no slope to stand on: the chimney stands across a ridge, or on no roof.
    NoCricket,
}
