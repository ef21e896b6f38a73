//! Rows packed over a whole space, from the left and from the right.

use super::super::kernel::{FitError, Tile};
use super::super::space::Space;
use super::groups::groups;
use super::yard::{HookRules, Several, Yard};
use super::{parts, phases};

/// Rows packed from either side, in parts next to each other.
pub(super) fn packed(
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
