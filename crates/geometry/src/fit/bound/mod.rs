//! How many modules any layout can have, whatever its kind: an upper bound that ranges over all that the rules pass.
//!
//! **The layouts.** Modules of one or several orientations, each somewhere among its allowed positions (the region less
//! what is blocked, with [`Allowed::tolerance`] on all sides). They are put together to any number of blocks. In a block
//! all have one orientation and one joint within [`Neighbours::joint`]; rows are level and one height and one joint apart;
//! neighbours of a row are at least a joint apart, and more where a gap was opened; a module above the lowest row has
//! modules of the row below under a share of its lower edge. Modules of two blocks are [`Neighbours::apart`] from each
//! other. The lowest row of a block carries the foot, if there is one. Nothing is said of base lines, of how joints of rows
//! stand to each other, of rectangles: a rule on those leaves fewer layouts, and the bound holds all the same. What a rule lets pass within its tolerance must be in the
//! numbers given: the tolerance of borders (with what round corners drawn as polygons take away), joints a tolerance
//! wider at both ends, blocks nearer by it, the share less by it. A distance between blocks that is only a caution
//! is no limit for a claim on all that may be built: give 0, or less by the tolerance, and the bound holds for that too.
//!
//! **Why every such layout obeys it.** Let j be the least joint, a the distance between blocks, and s the spacing
//! ([`Neighbours::spacing`]): j, or a / √2 where that is less, or a where that is below 0. Two modules of a layout are s
//! apart along u or along v. In one block they are j apart along one of them. In two blocks they are a apart as the crow
//! flies, and that may be from corner to corner: less than a along u and along v, but where both were less than a / √2,
//! the way would be less than a. So boxes `w + s` by `h + s` from their lower left corners, lower and left sides included
//! and the others not, have no point in common. From this and more follow *cliques*: sets of positions of which a layout
//! takes at most one.
//!
//! - All positions whose box has a given point.
//! - A module that is not held is the lowest row of its block, so that what is below it belongs to another: its box may be
//!   drawn down by as much as two blocks must be further apart than s ([`Neighbours::further`]). Two boxes that share a
//!   point then are less than s apart along u, and so at least √(a² − s²) along v: what is left of the way from corner
//!   to corner. ([`shelf`] tells the positions that no row below can hold; where it can't tell they count as held, with
//!   the smaller box.)
//! - Modules less than a row apart in height that are not in one line belong to two blocks. They are less than s apart along
//!   v, and so at least √(a² − s²) along u. So a window as wide as a box may stand elsewhere on each line
//!   within a height of `h + s`, shifted by what that is more than s: still at most one.
//!
//! No clique uses both: boxes that are drawn down do not lean, and those that lean are not drawn down. With both at once two
//! modules from corner to corner could be in one clique.
//!
//! **A way that is left free.** Where the rules ask for one ([`Passage`]), some stretch so wide is free of modules at each
//! level between two. Modules that meet a level line stand on it to the left of the stretch and to the right: of all that meet
//! the line a layout has no more than fit so, wherever the stretch is ([`lines`]). Modules keep no distance from it, so that
//! it is made narrower and lower by s.
//!
//! **Parts.** Modules whose lower left corners lie in a part of the plane are a layout of that part, and bounded as the whole is,
//! by weights on cliques that cover the positions in it alone. Their number is whole: a part that is bounded by seven and a
//! half holds seven. So a part is a set of positions of which a layout takes so many at most, as is what meets a level line
//! beside a way ([`parts`]). A leg of a face beside a wing, where rounding wins most, is such a part.
//!
//! Weights on cliques such that every position lies in 1 or more in all bound the modules by their sum: each module finds
//! weight 1, and no clique's weight is found twice. This is all the proof there is; how weights are come by does not
//! matter. [`coverage`] looks at every cell of the plane between the sides of the cliques that holds a position, and the
//! sum is divided by the least weight found. Cliques are a ten-thousandth of a millimetre narrower than they could be
//! and positions reach a [`FINE`](super::FINE) further than they must, so that rounding can't lose a module.
//!
//! **How weights are come by.** First lines a reach apart, level and upright, at every phase where something begins or
//! ends ([`lines`]): weight 1 on the fewest points that meet all boxes on each line. A gable, an ell, a hip end are settled
//! so. Then a linear programme ([`cover`]) over those cliques and others that its own solution asks for, parts last. Steps
//! are counted, not timed, so that the answer is the same on every machine.
//!
//! **Cases.** What the programme leaves open is cut into cases ([`cases`]): no module begins in a window, or one does, in
//! some band of it, and positions go that it excludes. Here the two laws come together that no clique uses both of, level rows
//! and blocks apart. A number that no case reaches is reached by no layout.
//!
//! Several orientations at once: a point meets the boxes of both; windows that lean are not used. That is weaker: a
//! face may be claimed to hold one or two more than it does.

mod cases;
mod clique;
mod cover;
mod coverage;
mod field;
mod laws;
mod lines;
mod master;
mod parts;
mod separate;
mod shadow;
mod shelf;
#[cfg(test)]
mod tests;

use super::kernel::{Allowed, FitError};
use cases::Cases;
use cover::Cover;
use field::Field;
use glam::DVec2;
pub use laws::{Neighbours, Passage};

/// How far a search for a bound goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Effort {
    /// A layout with so many modules is known: a bound of as many is enough.
    pub known: usize,
    /// At most so many steps; a million take about a millisecond.
    pub steps: usize,
    /// And so many more in cases, where that leaves a bound above what is known.
    pub steps_in_cases: usize,
}

/// No layout has more modules.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtMost {
    /// Than so many.
    pub most: usize,
    /// What straight lines alone say.
    pub by_lines: usize,
    /// Steps taken.
    pub steps: usize,
    /// Whether more steps can lower it.
    pub open: bool,
}

/// Bounds the modules of any layout, or of any that leaves a way free: `sizes` are those of the orientations that the kit lets
/// modules have, width along u and height along v, metres. `stop` ends it early with a bound that holds.
///
/// # Errors
/// A size, a tolerance or a corner that can't be worked with; a spacing that lets modules overlap by half.
pub fn at_most(
    allowed: &Allowed,
    sizes: &[DVec2],
    laws: &Neighbours,
    passage: Option<&Passage>,
    effort: Effort,
    stop: &dyn Fn() -> bool,
) -> Result<AtMost, FitError> {
    let field = Field::new(allowed, sizes, laws, passage)?;
    let all = lines::lines(&field, stop);
    let by_lines = all.first().map_or(0, |lines| lines.most);
    let mut answer = AtMost { most: by_lines, by_lines, steps: 0, open: false };
    if by_lines <= effort.known {
        return Ok(answer);
    }
    let mut seeds = Vec::new();
    for axis in [0, 1] {
        for lines in all.iter().filter(|lines| lines.axis == axis).take(3) {
            seeds.extend(lines::cliques(&field, *lines));
        }
    }
    let mut cover = Cover::new(&field, seeds.clone());
    let weighed = cover.lower(effort.known as f64 + 1.0 - 1e-6, effort.steps, stop);
    let most = (weighed.weight + 1e-6).floor();
    answer.steps = weighed.steps;
    answer.open = !weighed.least;
    if most < by_lines as f64 {
        answer.most = most as usize;
    }
    let (enough, most_steps) = (0.0, effort.steps_in_cases);
    let mut cases = Cases { base: seeds, enough, most_steps, steps: 0, stop };
    while field.rows.is_some() && answer.most > effort.known && cases.steps < cases.most_steps {
        cases.enough = answer.most as f64 - 1e-6;
        if !cases.none(&field, cover.used(), 0) {
            break;
        }
        answer.most -= 1;
    }
    answer.steps += cases.steps;
    Ok(answer)
}
