//! What every layout keeps to: how near modules stand, and the way that is left free.

use super::super::kernel::Allowed;
use std::f64::consts::FRAC_1_SQRT_2;

/// How modules of one face may stand to each other: limits as the rules let them be, their tolerance taken off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Neighbours {
    /// The least and the greatest joint within a block, metres: between neighbours of one row at least the least, between
    /// two rows one that is the same all over the block.
    pub joint: [f64; 2],
    /// The least distance between modules of two blocks, metres; below 0, how far they may overlap along u or along v.
    pub apart: f64,
    /// The least share of its lower edge that a module above the lowest row of its block has modules of the row below
    /// under it; 0 where none is asked.
    pub hooked: f64,
    /// Gaps of the row below that are no wider than this count as modules for that, metres.
    pub bridged: f64,
}

impl Neighbours {
    /// Any two modules are so far apart along u or along v, metres; below 0, how far they may overlap.
    pub(super) fn spacing(&self) -> f64 {
        self.joint[0].min(if self.apart > 0.0 { self.apart * FRAC_1_SQRT_2 } else { self.apart })
    }

    /// How much further apart than the spacing modules of two blocks stand along one axis, when they are nearer than it along
    /// the other.
    pub(super) fn further(&self) -> f64 {
        let spacing = self.spacing().max(0.0);
        let across = self.apart * self.apart - spacing * spacing;
        if self.apart > 0.0 { (across.max(0.0).sqrt() - spacing).max(0.0) } else { 0.0 }
    }
}

/// A way that every layout leaves free: at each level between two some stretch without modules.
#[derive(Clone, Debug)]
pub struct Passage {
    /// Where the way may run: the face and what nobody walks over.
    pub ways: Allowed,
    /// How wide it is, metres, over a height of [`Self::HEIGHT`].
    pub width: f64,
    /// It crosses all levels from here to here.
    pub levels: [f64; 2],
}

impl Passage {
    /// So high the stretch is free that is looked at, metres.
    pub const HEIGHT: f64 = 0.05;
}
