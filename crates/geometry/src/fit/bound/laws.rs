//! The constraints that every layout obeys: distances between modules, and the passage that is left free.

use super::super::kernel::Allowed;
use std::f64::consts::FRAC_1_SQRT_2;

/// How modules of one face may be placed relative to each other: the limits of the rules minus their tolerance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Neighbours {
    /// The smallest and largest joint within a block, metres. Neighbours in a row are at least the smallest apart;
    /// between rows the joint is the same in the whole block.
    pub joint: [f64; 2],
    /// The minimum distance between modules of two blocks, metres; negative: how far they may overlap along u or along
    /// v.
    pub apart: f64,
    /// The minimum share of its lower edge that a module above the lowest row of its block has over modules of the row
    /// below; 0 if none is required.
    pub hooked: f64,
    /// Gaps of the row below up to this width count as modules for that, metres.
    pub bridged: f64,
}

impl Neighbours {
    /// Any two modules are at least this far apart along u or along v, metres; negative: how far they may overlap.
    pub(super) fn spacing(&self) -> f64 {
        self.joint[0].min(if self.apart > 0.0 { self.apart * FRAC_1_SQRT_2 } else { self.apart })
    }

    /// How much more than the spacing modules of two blocks are apart along one axis, if they are closer than it along
    /// the other.
    pub(super) fn further(&self) -> f64 {
        let spacing = self.spacing().max(0.0);
        let across = self.apart * self.apart - spacing * spacing;
        if self.apart > 0.0 { (across.max(0.0).sqrt() - spacing).max(0.0) } else { 0.0 }
    }
}

/// A passage that every layout leaves free: at each level between two, some interval without modules.
#[derive(Clone, Debug)]
pub struct Passage {
    /// Where the passage may be: the face and the areas that nobody walks over.
    pub ways: Allowed,
    /// Its width, metres, over a height of [`Self::HEIGHT`].
    pub width: f64,
    /// It crosses all levels from the first to the second.
    pub levels: [f64; 2],
}

impl Passage {
    /// The height of the free interval that is tested at each level, metres.
    pub const HEIGHT: f64 = 0.05;
}
