//! Exact fitting of equal rectangles on a face, in the face's own frame (u along the eave, v up the slope).
//!
//! The work is done in the space of allowed *positions*: a tile is represented by the point `p` of its lower left
//! corner, and the allowed points are what is left of the face when every border and every blocked shape has been swept
//! by the tile. The allowed region is cut into trapezoids once. Every question is then one about intervals whose ends
//! are linear in v, and a result can change only at finitely many offsets.
//!
//! **Tolerance.** A tile may extend over a border by at most [`Allowed::tolerance`], and every search is over open
//! cells: a count is claimed as the maximum of all layouts that need less than the tolerance. Cells narrower than 1e-12
//! m are below the arithmetic and are skipped.
//!
//! - [`fit_rows`]: rows that slide, one grid, half-lapped rows, base rail anywhere or on the courses, hooked rows
//! - [`fit_blocks`]: at most so many whole rectangles of tiles
//! - [`fit_several`]: several blocks of rows that slide and hook over a share of their lower edge; [`Space`], [`halves`]: room for
//!   who lays blocks one after the other
//! - [`at_most`]: an upper bound on every layout, whatever its kind, or on every one that leaves a way free
//! - [`fit_stacks`]: one grid at every offset, by worth or to a number, every upper tile carried
//! - [`cells`], [`fit_worth`], [`fit_number`]: choose among the places of one grid, by worth or to a number
//! - [`least_slide`]: the least move after which a group of rectangles is clear of everything
//! - [`holds_back`]: what stops the places that nearly fit, what each constraint costs, the least move that wins

mod blocked;
mod blocks;
mod bound;
#[cfg(test)]
mod brute;
mod carry;
mod cells;
mod choice;
mod cut;
#[cfg(test)]
mod foot_tests;
mod grid;
mod hold;
mod hooked;
#[cfg(test)]
mod houses;
mod kernel;
mod moves;
mod profile;
mod room;
mod row_lines;
mod rows;
mod several;
mod slide;
mod space;
mod stacks;
mod stretch;
#[cfg(test)]
mod tests;

pub use blocks::{Block, BlockRules, Blocks, fit_blocks};
pub use bound::{AtMost, Effort, Neighbours, Passage, at_most};
pub use cells::{Cell, Costs};
pub use choice::{Aim, Choice, cells, fit_number, fit_worth};
pub use hold::{Barrier, HeldBack, NearFit, Price, Question, Stop, holds_back, near_fits};
pub use kernel::{
    Allowed, Base, Constraint, FINE, Fit, FitError, Foot, Joints, Placed, Proof, RowRules, Tile, TilePlace,
};
pub use moves::Move;
pub use rows::{fit_rows, fit_rows_improving, fit_rows_in};
pub use several::{HookRules, Look, Several, fit_several, halves};
pub use slide::{Part, least_slide};
pub use space::Space;
pub use stacks::{StackCosts, Stacks, StacksFound, Want, fit_stacks};

use glam::DVec2;

/// Lays each of `tiles` (such as one upright and one rotated) and keeps the fit with most tiles, the first of equal
/// ones. The bound of the result is that of all of them together. `None` without tiles.
pub fn fit_best(
    allowed: &Allowed,
    tiles: &[Tile],
    rules: &RowRules,
    stop: &dyn Fn() -> bool,
) -> Result<Option<Fit>, FitError> {
    let mut best: Option<Fit> = None;
    let mut bound = 0;
    for tile in tiles {
        let fit = fit_rows(allowed, tile, rules, stop)?;
        bound = bound.max(fit.bound);
        if best.as_ref().is_none_or(|b| fit.count() > b.count()) {
            best = Some(fit);
        }
    }
    Ok(best.map(|fit| Fit { bound, ..fit }))
}

/// Whether a tile fits at each of some places.
///
/// # Errors
/// An invalid tile, tolerance or corner.
pub fn stands(allowed: &Allowed, tile: &Tile, places: &[TilePlace]) -> Result<Vec<bool>, FitError> {
    let room = room::Room::new(allowed, tile)?;
    let free = |place: &TilePlace| {
        let DVec2 { x, y } = place.at;
        let holds = |(a, b): (f64, f64)| a <= x && x <= b;
        room.slab(y)
            .is_some_and(|slab| if place.lowest { slab.foot_at(y).any(holds) } else { slab.at(y).any(holds) })
    };
    Ok(places.iter().map(free).collect())
}
