//! Several blocks side by side or one above the other, each of rows that slide and hook into the row below over a share of
//! their lower edge.
//!
//! A search, not a proof: [`at_most`](super::at_most) says what is left open. Rows of one set of lines are packed from the
//! left, each tile held by the row below or far enough from all that stands to be the lowest of a block of its own
//! ([`parts`]); upright cuts part the face, and each part has the lines that suit it. The same from the right. What
//! comes out is put together to blocks and looked at as a whole ([`groups`]). Then some of it is taken away and laid anew
//! beside the rest, as long as that wins ([`anew`]).

mod anew;
mod groups;
mod parts;
mod phases;

use super::room::Room;
use super::{Base, FitError, Placed, Space, Tile};
use crate::Polygon;
use glam::DVec2;
use serde::{Deserialize, Serialize};

pub use anew::halves;
pub(super) use groups::groups;

/// What a layout of several blocks keeps to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct HookRules {
    /// Where the lower edge of each block may fall.
    pub base: Base,
    /// The share of its lower edge, 0 to 1, that a module above the lowest row of its block has over modules of the row
    /// below.
    pub hooked: f64,
    /// Modules of two blocks are at least so far from each other, metres.
    pub apart: f64,
}

/// A layout of several blocks.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Several {
    /// The tiles of each block, by rows from below and from the left; rows count within the block.
    pub blocks: Vec<Vec<Placed>>,
    /// Steps taken.
    pub steps: usize,
}

impl Several {
    /// Tiles in all blocks.
    pub fn count(&self) -> usize {
        self.blocks.iter().map(Vec::len).sum()
    }
}

/// A face, a tile and what layouts keep to.
pub(super) struct Yard<'a> {
    pub(super) room: &'a Room,
    pub(super) tile: Tile,
    pub(super) rules: HookRules,
}

impl Yard<'_> {
    /// How far apart along u tiles of two blocks are, when `above` metres lie between them up the slope.
    pub(super) fn aside(&self, above: f64) -> f64 {
        let apart = self.rules.apart;
        if above <= 0.0 { apart } else { (apart * apart - above * above).max(0.0).sqrt() }
    }
}

/// Lays blocks of rows with as many tiles as the search finds, or with `enough`; some layouts begin beside one of some [`halves`].
/// `stop` ends it early with what there is.
///
/// # Errors
/// Courses that can't be worked with.
pub fn fit_several(
    (space, halves): (&Space, &[Polygon]),
    tile: &Tile,
    rules: &HookRules,
    enough: usize,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    // Blocks nearer than a joint could not be told from one block.
    let rules = HookRules { apart: rules.apart.max(tile.gap.max_element() + 1e-3), ..*rules };
    let first = packed(space, tile, &rules, stop)?;
    anew::improved((space, halves), tile, &rules, first, enough, stop)
}

/// Rows packed from either side, in parts beside each other.
fn packed(
    space: &Space,
    tile: &Tile,
    rules: &HookRules,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    let room = space.room();
    let yard = Yard { room: &room, tile: *tile, rules: *rules };
    let phases = phases::phases(&yard)?;
    let mut best = Several::default();
    for mirrored in [false, true] {
        let (spots, steps) = parts::lay(&yard, &phases, mirrored, stop);
        best.steps += steps;
        for spots in spots {
            if spots.len() <= best.count() {
                continue;
            }
            if let Some(blocks) = groups(&yard, &spots) {
                best.blocks = blocks;
            }
        }
    }
    Ok(best)
}

/// Lower left corners of tiles.
pub(super) type Spots = Vec<DVec2>;
