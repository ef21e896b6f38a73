//! Cuts sticks so that the least length is bought, with a proof: one-dimensional cutting stock with saw kerf and several stock
//! lengths. Integers throughout, so the answer is exact; knows nothing of roofs.
//!
//! A piece and its cut take `length + kerf` of a stick; the last cut may fall away, so a stick holds `stock + kerf`. Three steps:
//!
//! 1. `lp`: the LP relaxation over all cutting patterns by column generation (Gilmore and Gomory, 1961) gives a lower bound that
//!    is made exact in integers (Farley, 1990), and patterns to round.
//! 2. `greedy`: heuristics: first fit decreasing, best fill, and completions of the rounded relaxation.
//! 3. `search`: where bound and answer differ, a branch-and-bound search stick by stick, pruned by the dual prices. It ends with
//!    an answer, with a higher bound, or out of steps: then the gap is reported.

mod greedy;
mod knapsack;
mod lp;
mod search;

/// A cutting problem in integer units. The caller ensures that every piece fits in the longest stick.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cutting {
    /// Lengths and quantities, longest first, each length once.
    pub pieces: Vec<(u32, u32)>,
    /// Stock lengths, unlimited quantity of each; each length once.
    pub stocks: Vec<u32>,
    /// Saw kerf.
    pub kerf: u32,
}

/// A cutting plan.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Answer {
    /// Each stick: index of its stock, and the length index of each piece, longest first.
    pub sticks: Vec<(usize, Vec<usize>)>,
    /// Total length of the sticks.
    pub bought: u64,
    /// Lower bound: no plan buys less.
    pub least: u64,
}

impl Answer {
    /// Whether the plan is proved optimal.
    pub fn is_proved(&self) -> bool {
        self.bought == self.least
    }
}

/// Minimum steps granted to the relaxation.
const LEAST_STEPS: u64 = 200_000;

/// Default step limit of a search: some milliseconds, since a drag waits for it.
pub const USUAL_STEPS: u64 = 60_000;

/// Minimises the length bought. `steps` bounds the search for a proof; without one the plan is still valid.
pub fn cut(problem: &Cutting, steps: u64) -> Answer {
    let Some(shop) = Shop::of(problem) else { return Answer::default() };
    let mut best = greedy::best(&shop, &shop.demand);
    let mut least = shop.next_sum(shop.material_bound());
    if best.cost > least
        && let Some(relaxed) = lp::relax(&shop, LEAST_STEPS + steps.saturating_mul(20))
    {
        least = least.max(shop.next_sum(relaxed.bound));
        for rounded in relaxed.rounded(&shop) {
            if rounded.cost < best.cost {
                best = rounded;
            }
        }
        let mut left = steps;
        while best.cost > least {
            match search::reach(&shop, &relaxed.prices, least, &mut left) {
                search::Found::Answer(answer) => best = answer,
                search::Found::Nothing => least = shop.next_sum(least + 1),
                search::Found::OutOfSteps => break,
            }
        }
    }
    let mut sticks = best.sticks;
    sticks.sort_by(|a, b| b.cmp(a));
    Answer { sticks, bought: best.cost, least: least.min(best.cost) }
}

/// The problem with the kerf folded into the lengths: pieces of `size`, sticks that hold `room` and cost their length.
struct Shop {
    size: Vec<u64>,
    demand: Vec<u32>,
    room: Vec<u64>,
    cost: Vec<u64>,
    /// Every sum of stock lengths is a multiple of this.
    grain: u64,
}

/// A cutting plan for the whole demand.
#[derive(Clone, Debug, Default)]
struct Way {
    sticks: Vec<(usize, Vec<usize>)>,
    cost: u64,
}

impl Way {
    fn push(&mut self, shop: &Shop, stock: usize, pieces: Vec<usize>) {
        self.cost += shop.cost.get(stock).copied().unwrap_or(0);
        self.sticks.push((stock, pieces));
    }
}

impl Shop {
    fn of(problem: &Cutting) -> Option<Self> {
        let kerf = u64::from(problem.kerf);
        let pieces: Vec<(u32, u32)> =
            problem.pieces.iter().copied().filter(|&(length, count)| length > 0 && count > 0).collect();
        let longest = u64::from(problem.stocks.iter().copied().max()?);
        let grain = problem.stocks.iter().fold(0, |grain, &stock| gcd(grain, u64::from(stock)));
        let fits = pieces.first().is_some_and(|&(length, _)| u64::from(length) <= longest);
        (fits && grain > 0).then(|| Self {
            size: pieces.iter().map(|&(length, _)| u64::from(length) + kerf).collect(),
            demand: pieces.iter().map(|&(_, count)| count).collect(),
            room: problem.stocks.iter().map(|&stock| u64::from(stock) + kerf).collect(),
            cost: problem.stocks.iter().map(|&stock| u64::from(stock)).collect(),
            grain,
        })
    }

    /// Material bound: the length of all pieces, as if they could be cut anywhere.
    fn material_bound(&self) -> u64 {
        let all: u128 =
            self.size.iter().zip(&self.demand).map(|(&s, &d)| u128::from(s) * u128::from(d)).sum();
        let by_stock = self
            .room
            .iter()
            .zip(&self.cost)
            .map(|(&room, &cost)| (all * u128::from(cost)).div_ceil(u128::from(room.max(1))));
        u64::try_from(by_stock.min().unwrap_or(0)).unwrap_or(u64::MAX)
    }

    /// The least sum of stock lengths not below an amount; a lower bound on it if the search would be too long.
    fn next_sum(&self, amount: u64) -> u64 {
        let first = amount.div_ceil(self.grain);
        let steps: Vec<u64> = self.cost.iter().map(|cost| cost / self.grain).collect();
        let most = first + steps.iter().copied().max().unwrap_or(0);
        // Past the product of two steps with no common divisor, every multiple is a sum.
        if most > 100_000 {
            return first * self.grain;
        }
        let mut reached = vec![false; most as usize + 1];
        reached[0] = true;
        for at in 0..reached.len() {
            if reached[at] {
                if at as u64 >= first {
                    return at as u64 * self.grain;
                }
                for &step in &steps {
                    if let Some(next) = reached.get_mut(at + step as usize) {
                        *next = true;
                    }
                }
            }
        }
        first * self.grain
    }
}

fn gcd(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { gcd(b, a % b) }
}

#[cfg(test)]
mod tests;
