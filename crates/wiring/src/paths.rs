//! Points divided into paths: which modules make a circuit, and in what order they are plugged. This module knows no roof and no
//! volts.
//!
//! All points are to be on exactly one path, each path has a number of points within limits, and its ends are led home, or its last
//! alone. First as few paths as there can be, then as few extension leads, then the least length of all links and ways home: the
//! routing of vehicles with unit demands (Dantzig and Ramser, 1959).
//!
//! - [`divide`]: an [`Answer`] to a [`Problem`], with bounds; [`Effort`] says how long it may look
//! - `search`: good answers, by moves that make one shorter
//! - `bound`: no answer is shorter than this, by paths that may come back to a point (ng-routes; Baldacci, Mingozzi and Roberti, 2011)
//! - `exact`: all paths that could be in a better answer, and the best answer that they make

mod bound;
mod exact;
mod search;
#[cfg(test)]
mod tests;

use bound::Bound;

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
    /// Rounds of the bound.
    pub rounds: u32,
    /// Near points that a path of the bound remembers, itself among them: 1 to 8.
    pub memory: usize,
    /// Paths begun, at most, when all that could be better are gone through.
    pub begun: usize,
}

impl Effort {
    /// For an answer that a person waits for.
    pub const FIRST: Self = Self { shakes: 60, rounds: 40, memory: 4, begun: 0 };
    /// For one that goes on in the background, and for the order within one circuit.
    pub const WHOLE: Self = Self { shakes: 2_000, rounds: 300, memory: 6, begun: 400_000 };
}

/// More points than this are cut from the given orders, and nothing more is looked for.
const MOST_SEARCHED: usize = 200;

/// Links that can't be: dearer than any answer.
const NEVER: i64 = 1 << 50;

/// What an answer costs: extension leads weighed so that one outweighs all length.
#[derive(Clone, Debug)]
struct Costs {
    points: usize,
    /// Row by row; the last row and column are home.
    of: Vec<i64>,
}

impl Costs {
    /// `lead` is what an extension lead weighs; `free` leaves out every link that takes one.
    fn of(problem: &Problem, lead: i64, length: bool, free: bool) -> Self {
        let points = problem.home.len();
        let mut of = vec![NEVER; (points + 1) * (points + 1)];
        for (from, row) in problem.links.iter().enumerate() {
            for (to, link) in row.iter().enumerate() {
                if let Some(link) = link.filter(|link| from != to && !(free && link.leads > 0)) {
                    let way = if length { i64::from(link.length) } else { 0 };
                    of[from * (points + 1) + to] = lead * i64::from(link.leads) + way;
                }
            }
        }
        for (point, way) in problem.home.iter().enumerate() {
            let way = if length { i64::from(*way) } else { 0 };
            of[point * (points + 1) + points] = way;
            of[points * (points + 1) + point] = if problem.both_ends { way } else { 0 };
        }
        Self { points, of }
    }

    fn at(&self, from: usize, to: usize) -> i64 {
        self.of[from * (self.points + 1) + to]
    }

    /// The same with all paths gone the other way.
    fn turned(&self) -> Self {
        let mut turned = self.clone();
        for point in 0..self.points {
            turned.of[point * (self.points + 1) + self.points] = self.at(self.points, point);
            turned.of[self.points * (self.points + 1) + point] = self.at(point, self.points);
        }
        turned
    }

    fn home(&self) -> usize {
        self.points
    }

    fn of_path(&self, path: &[usize]) -> i64 {
        let (Some(first), Some(last)) = (path.first(), path.last()) else { return 0 };
        let links: i64 = path.iter().zip(path.iter().skip(1)).map(|(a, b)| self.at(*a, *b)).sum();
        links + self.at(self.home(), *first) + self.at(*last, self.home())
    }

    fn of_all(&self, paths: &[Vec<usize>]) -> i64 {
        paths.iter().map(|path| self.of_path(path)).sum()
    }
}

impl Problem {
    /// What an extension lead weighs: more than all length of any answer.
    fn lead_weight(&self) -> i64 {
        let longest = |row: &Vec<Option<Link>>| row.iter().flatten().map(|link| link.length).max();
        let links: i64 = self.links.iter().filter_map(longest).map(i64::from).sum();
        let home: i64 = self.home.iter().map(|way| 2 * i64::from(*way)).sum();
        links + home + 1
    }

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
    let quick = Effort { shakes: effort.shakes.min(Effort::FIRST.shakes), ..effort };
    let found = (fewest..=most_paths).take(4).find_map(|count| {
        let paths = search::search(problem, &costs, count, quick)?;
        (costs.of_all(&paths) < NEVER).then_some(paths)
    })?;
    let count = found.len();
    let mut settled = Settled::of(problem, &costs, lead, found, effort);
    if !settled.is_proved(lead) && effort.shakes > quick.shakes {
        let longer = search::search(problem, &costs, count, effort);
        if let Some(longer) = longer.filter(|longer| costs.of_all(longer) < settled.cost) {
            settled = Settled::of(problem, &costs, lead, longer, effort);
        }
    }
    let Settled { paths: mut found, cost, least_leads, least_length } = settled;
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

/// An answer with its bounds.
struct Settled {
    paths: Vec<Vec<usize>>,
    cost: i64,
    least_leads: i64,
    least_length: i64,
}

impl Settled {
    /// Bounds what was found, and goes through all that could be better.
    fn of(problem: &Problem, costs: &Costs, lead: i64, found: Vec<Vec<usize>>, effort: Effort) -> Self {
        let mut paths = found;
        let mut cost = costs.of_all(&paths);
        if costs.points > MOST_SEARCHED {
            return Self { paths, cost, least_leads: 0, least_length: 0 };
        }
        let count = paths.len();
        // Answers without any extension lead use no link that takes one.
        let chosen = Costs::of(problem, lead, true, cost < lead);
        let mut bound = Bound::of(problem, &chosen, count, cost, effort);
        if effort.begun > 0
            && bound.least < cost
            && let Some(end) = exact::exact(problem, &chosen, &bound, cost, effort.begun)
        {
            paths = end.unwrap_or(paths);
            cost = costs.of_all(&paths);
            bound.least = cost;
        }
        let leads = cost / lead;
        // A bound of the whole bounds the leads too: all length weighs less than one.
        let mut least_leads = (bound.least / lead).max(0);
        if least_leads < leads {
            let of_leads = Costs::of(problem, 1, false, false);
            least_leads = least_leads.max(Bound::of(problem, &of_leads, count, leads, effort).least);
        }
        let mut least_length = bound.least - leads * lead;
        if least_length <= 0 || least_leads < leads {
            let of_length = Costs::of(problem, 0, true, false);
            least_length = Bound::of(problem, &of_length, count, cost - leads * lead, effort).least;
        }
        Self { paths, cost, least_leads, least_length }
    }

    fn is_proved(&self, lead: i64) -> bool {
        let leads = self.cost / lead;
        self.least_leads >= leads && self.least_length >= self.cost - leads * lead
    }
}
