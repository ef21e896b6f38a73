//! The constraints on layouts of several blocks, and the layouts.

use super::super::kernel::{Base, Placed, Tile};
use super::super::room::Room;
use glam::DVec2;
use serde::{Deserialize, Serialize};

/// The constraints on a layout of several blocks.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct HookRules {
    /// Where the lower edge of each block may be.
    pub base: Base,
    /// The minimum share of its lower edge, 0 to 1, that a module above the lowest row of its block has over modules of
    /// the row below.
    pub hooked: f64,
    /// The minimum distance between modules of two blocks, metres.
    pub apart: f64,
}

/// A layout of several blocks.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Several {
    /// The tiles of each block, by rows from below and from the left; rows count within the block.
    pub blocks: Vec<Vec<Placed>>,
    /// Steps taken.
    pub steps: usize,
    /// How many of those were random steps.
    pub by_chance: usize,
}

impl Several {
    /// The number of tiles in all blocks.
    pub fn count(&self) -> usize {
        self.blocks.iter().map(Vec::len).sum()
    }
}

/// A face, a tile and the constraints on layouts.
pub(super) struct Yard<'a> {
    pub(super) room: &'a Room,
    pub(super) tile: Tile,
    pub(super) rules: HookRules,
}

impl Yard<'_> {
    /// How far apart along u tiles of two blocks must be if there are `above` metres between them up the slope.
    pub(super) fn aside(&self, above: f64) -> f64 {
        let apart = self.rules.apart;
        if above <= 0.0 { apart } else { (apart * apart - above * above).max(0.0).sqrt() }
    }
}

/// Lower left corners of tiles.
pub(super) type Spots = Vec<DVec2>;
