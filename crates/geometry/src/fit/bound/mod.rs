//! How many modules any layout can have, of whatever kind: an upper bound over everything that the rules allow.
//!
//! **The layouts.** Modules of one or several orientations, each at one of its allowed positions (the region minus what
//! is blocked, with [`Allowed::tolerance`] on all sides). They form any number of blocks. In a block all have one
//! orientation and one joint within [`Neighbours::joint`]; rows are level, and one height and one joint apart;
//! neighbours in a row are at least a joint apart, and more if there is a gap; a module above the lowest row has
//! modules of the row below under a share of its lower edge. Modules of two blocks are [`Neighbours::apart`] from each
//! other. The lowest row of a block has the foot, if there is one. Base lines, the alignment of joints between rows,
//! and rectangles are not considered: a rule on those leaves fewer layouts, and the bound still holds. What a rule
//! allows within its tolerance must be in the given numbers: the tolerance of borders (including what round corners
//! drawn as polygons take away), joints a tolerance wider at both ends, blocks closer by it, the share smaller by it. A
//! distance between blocks that is only a caution is no limit for a claim on everything that may be built: give 0, or
//! less by the tolerance, and the bound holds for that too.
//!
//! **Why every such layout obeys it.** Let j be the smallest joint, a the distance between blocks, and s the spacing
//! ([`Neighbours::spacing`]): j, or a / √2 if that is less, or a if that is negative. Two modules of a layout are s
//! apart along u or along v. In one block they are j apart along one of them. In two blocks they are a apart in a
//! straight line, and that may be from corner to corner: less than a along u and along v; but if both were less than a
//! / √2, the distance would be less than a. So boxes of `w + s` by `h + s` from their lower left corners, including the
//! lower and left sides but not the others, have no point in common. From this and more follow *cliques*: sets of
//! positions of which a layout has at most one.
//!
//! - All positions whose box contains a given point.
//!
//! No clique uses both: boxes that are extended down do not lean, and those that lean are not extended down. With both
//! at once, two modules that touch corner to corner could be in one clique.
//!
//! **A passage that is left free.** If the rules require one ([`Passage`]), some interval of that width is free of
//! modules at each level between two. Modules that meet a horizontal line are to the left and right of the interval: of
//! all that meet the line, a layout has no more than fit that way, wherever the interval is ([`lines`]). Modules keep
//! no distance from it, so it is made narrower and lower by s.
//!
//! **Parts.** Modules whose lower left corners are in a part of the plane are a layout of that part, and bounded like
//! the whole, by weights on cliques that cover only the positions in it. Their number is an integer: a part with a
//! bound of seven and a half holds seven. So a part is a set of positions of which a layout has at most so many, like
//! what meets a horizontal line beside a passage ([`parts`]). A leg of a face beside a wing, where rounding down gains
//! most, is such a part.
//!
//! If weights on cliques give every position a total of 1 or more, the sum of the weights bounds the modules: each
//! module finds weight 1, and no clique's weight is found twice. This is the whole proof; how the weights are found
//! does not matter. [`coverage`] tests every cell of the plane between the sides of the cliques that contains a
//! position, and the sum is divided by the least weight found. Cliques are a ten-thousandth of a millimetre narrower
//! than they could be, and positions extend a [`FINE`](super::FINE) farther than they must, so that rounding can't lose
//! a module.
//!
//! **How weights are found.** First lines a reach apart, horizontal and vertical, at every phase where something begins
//! or ends ([`lines`]): weight 1 on the fewest points that meet all boxes on each line. That settles a gable, an ell, a
//! hip end. Then a linear programme ([`cover`]) over those cliques and others that its own solution asks for, parts
//! last. Steps are counted, not timed, so that the result is the same on every machine.
//!
//! **Cases.** What the programme leaves open is split into cases ([`cases`]): no module begins in a window, or one
//! does, in some band of it, and the positions that it excludes are removed. This combines the two constraints that no
//! clique uses both of, level rows and the distance between blocks. A number that is reached in no case is reached by
//! no layout.
//!
//! Several orientations at once: a point meets the boxes of both; leaning windows are not used. That is weaker: the
//! bound for a face may be one or two too high.

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

/// How much effort to spend on a bound.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Effort {
    /// A layout with this many modules is known: a bound as low as that is enough.
    pub known: usize,
    /// The maximum number of steps; a million take about a millisecond.
    pub steps: usize,
    /// The maximum number of further steps in cases, if the bound is still above what is known.
    pub steps_in_cases: usize,
}

/// An upper bound on the modules of any layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtMost {
    /// The bound.
    pub most: usize,
    /// The bound from straight lines alone.
    pub by_lines: usize,
    /// Steps taken.
    pub steps: usize,
    /// Whether more steps may lower it.
    pub open: bool,
}

/// Bounds the modules of any layout, or of any that leaves a passage free: `sizes` are those of the orientations that
/// the kit allows, width along u and height along v, metres. `stop` ends it early with a valid bound.
///
/// # Errors
/// An invalid size, tolerance or corner; a spacing that lets modules overlap by half.
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
