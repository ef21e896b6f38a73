//! Several blocks next to or above each other, each of rows that slide and hook into the row below over a share of
//! their lower edge.
//!
//! A search, not a proof: [`at_most`](super::at_most) shows what is left open. Rows on one set of lines are packed from
//! the left, each tile held by the row below or far enough from everything else to be the lowest of a block of its own
//! ([`parts`]); vertical cuts divide the face, and each part gets the lines that suit it. The same is done from the
//! right. The result is grouped into blocks and checked as a whole ([`groups`]). Then some of it is removed and laid
//! again beside the rest, as long as that gains tiles ([`anew`]). What is still missing is searched for at random
//! ([`chance`]): blocks of rows that are spread to suit the row above ([`tower`]), some of them laid again many times.

mod anew;
mod chance;
mod dice;
mod groups;
mod packing;
mod parts;
mod phases;
mod tower;
mod yard;

use super::Space;
use super::kernel::{FitError, Tile};
use crate::Polygon;

pub use anew::halves;
pub use yard::{HookRules, Several};

/// How much effort to spend.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Look {
    /// The search stops at this many tiles.
    pub enough: usize,
    /// The maximum number of random steps; a million take about a second.
    pub by_chance: usize,
}

/// Lays blocks of rows with as many tiles as the search finds, or with enough; some layouts begin beside one of some
/// [`halves`]. `stop` ends it early with the best so far.
///
/// # Errors
/// Invalid courses.
pub fn fit_several(
    (space, halves): (&Space, &[Polygon]),
    tile: &Tile,
    rules: &HookRules,
    look: Look,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    // Blocks closer than a joint could not be distinguished from one block.
    let rules = HookRules { apart: rules.apart.max(tile.gap.max_element() + 1e-3), ..*rules };
    let first = packing::packed(space, tile, &rules, stop)?;
    let found = anew::improved((space, halves), tile, &rules, first, look.enough, stop)?;
    chance::climbed(space, tile, &rules, found, look, stop)
}
