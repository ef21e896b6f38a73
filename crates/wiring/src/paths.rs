//! Points divided into paths: which modules make a circuit, and in what order they are plugged. This module knows no roof and no
//! volts.
//!
//! All points are to be on exactly one path, each path has a number of points within limits, and its ends are led home, or its last
//! alone. First as few paths as there can be, then as few extension leads, then the least length of all links and ways home: the
//! routing of vehicles with unit demands (Dantzig and Ramser, 1959).
//!
//! - [`divide`]: an [`Answer`] to a [`Problem`], with bounds; [`Effort`] says how long it may look
//! - `search`: good answers, by moves that make one shorter
//! - `forest`: no answer is shorter than this, by links that know no limits on a path: cheap, and enough for most of the leads
//! - `parts`: the leads that it takes to go from part to part of what hangs together without any
//! - `bound`: no answer is shorter than this, by paths that may come back to a point: it knows the limits
//! - `exact`: all paths that could be in a better answer, and the best answer that they make
//! - `settled`: from the cheap to the dear, until what was found is proved

mod bound;
mod costs;
mod exact;
mod forest;
mod parts;
mod question;
mod search;
mod settled;
#[cfg(test)]
mod tests;

use costs::{Costs, NEVER};
use settled::Settled;

/// How two points can be joined.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Link {
    /// Extension leads that it takes.
    pub leads: u32,
    /// The way along it, in tenths of a millimetre.
    pub length: u32,
}

/// Points to be divided into paths.
#[derive(Clone, Debug)]
pub struct Problem {
    /// For each point, how it can be joined to each; `None` where it can't, and to itself. As many rows as columns, and the same
    /// both ways.
    pub links: Vec<Vec<Option<Link>>>,
    /// From each point home, in tenths of a millimetre.
    pub home: Vec<u32>,
    /// Whether the first point of a path is led home as well as the last.
    pub both_ends: bool,
    /// Points on a path, at least.
    pub least: usize,
    /// At most.
    pub most: usize,
    /// Orders of all points that may be good to cut into paths.
    pub orders: Vec<Vec<usize>>,
}

/// Points divided into paths, and what is known of better ways to do it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The paths, each in its order.
    pub paths: Vec<Vec<usize>>,
    /// Whether fewer paths can't hold all points within the limits.
    pub fewest_paths: bool,
    /// Extension leads of all.
    pub leads: u64,
    /// No answer with as many paths has fewer.
    pub least_leads: u64,
    /// Length of all links and ways home, in tenths of a millimetre.
    pub length: u64,
    /// No answer with as many paths and extension leads is shorter; where `least_leads` is fewer, none with as many paths is.
    pub least_length: u64,
}

/// How long may be looked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Effort {
    /// Times that an answer is shaken and mended.
    pub shakes: u32,
    /// Rounds of each bound.
    pub rounds: u32,
    /// Near points that a path of the bound remembers, itself among them, at most: 3 to 7.
    pub memory: usize,
    /// Paths begun, at most, when all that could be better are gone through.
    pub begun: usize,
}

impl Effort {
    /// For an answer that a person waits for.
    pub const FIRST: Self = Self { shakes: 2_000, rounds: 60, memory: 4, begun: 2_000 };
    /// For one that goes on in the background, and for the order within one circuit.
    pub const WHOLE: Self = Self { shakes: 40_000, rounds: 300, memory: 7, begun: 400_000 };
}

/// More points than this are cut from the given orders, and nothing more is looked for.
const MOST_SEARCHED: usize = 200;

impl Problem {
    /// The fewest paths that can hold all points within the limits, if any number can.
    pub fn fewest(&self) -> Option<usize> {
        let points = self.home.len();
        let paths = points.div_ceil(self.most.max(1));
        (self.most > 0 && paths * self.least <= points).then_some(paths)
    }
}

/// Divides points into as few paths as the limits allow; `None` where no number of paths fits the limits, or none was found that
/// joins only what can be joined.
pub fn divide(problem: &Problem, effort: Effort) -> Option<Answer> {
    let fewest = problem.fewest()?;
    let points = problem.home.len();
    if points == 0 {
        let none = Answer {
            paths: Vec::new(),
            fewest_paths: true,
            leads: 0,
            least_leads: 0,
            length: 0,
            least_length: 0,
        };
        return Some(none);
    }
    let lead = problem.lead_weight();
    let costs = Costs::of(problem, lead, true, false);
    // Where links are missing, more paths than the limits ask for may be needed.
    let most_paths = points / problem.least.max(1);
    let joined = (fewest..=most_paths).take(4).find_map(|count| {
        let mut paths = search::start(problem, &costs, count)?;
        if costs.of_all(&paths) >= NEVER {
            paths =
                search::shaken(problem, &costs, paths, effort.shakes.min(Effort::FIRST.shakes), NEVER - 1);
        }
        (costs.of_all(&paths) < NEVER).then_some(paths)
    })?;
    let count = joined.len();
    let Settled { paths: mut found, cost, least_leads, least_length } =
        Settled::of(problem, &costs, lead, joined, effort);
    let leads = cost / lead;
    let unsigned = |number: i64| u64::try_from(number).unwrap_or(0);
    // Where both ends are alike, a path begins at the one that stands first.
    for path in found.iter_mut().filter(|path| problem.both_ends && path.first() > path.last()) {
        path.reverse();
    }
    found.sort();
    Some(Answer {
        fewest_paths: count == fewest,
        leads: unsigned(leads),
        least_leads: unsigned(least_leads),
        length: unsigned(cost - leads * lead),
        least_length: unsigned(least_length),
        paths: found,
    })
}
