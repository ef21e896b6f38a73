//! Several blocks side by side or one above the other, each of rows that slide and hook into the row below over a share of
//! their lower edge.
//!
//! A search, not a proof: [`at_most`](super::at_most) says what is left open. Rows of one set of lines are packed from the
//! left, each tile held by the row below or far enough from all that stands to be the lowest of a block of its own
//! ([`parts`]); upright cuts part the face, and each part has the lines that suit it. The same from the right. What
//! comes out is put together to blocks and looked at as a whole ([`groups`]). Then some of it is taken away and laid anew
//! beside the rest, as long as that wins ([`anew`]). What is still missing is looked for by chance ([`chance`]): blocks of rows that
//! are spread as it suits the row above ([`tower`]), some of them laid anew time and again.

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

/// How far to look.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Look {
    /// So many tiles are enough.
    pub enough: usize,
    /// At most so many steps by chance; a million take about a second.
    pub by_chance: usize,
}

/// Lays blocks of rows with as many tiles as the search finds, or with enough; some layouts begin beside one of some [`halves`].
/// `stop` ends it early with what there is.
///
/// # Errors
/// Courses that can't be worked with.
pub fn fit_several(
    (space, halves): (&Space, &[Polygon]),
    tile: &Tile,
    rules: &HookRules,
    look: Look,
    stop: &dyn Fn() -> bool,
) -> Result<Several, FitError> {
    // Blocks nearer than a joint could not be told from one block.
    let rules = HookRules { apart: rules.apart.max(tile.gap.max_element() + 1e-3), ..*rules };
    let first = packing::packed(space, tile, &rules, stop)?;
    let found = anew::improved((space, halves), tile, &rules, first, look.enough, stop)?;
    chance::climbed(space, tile, &rules, found, look, stop)
}
