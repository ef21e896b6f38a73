//! Cutting sticks so that least is bought, with the proof: one-dimensional cutting stock with saw kerf and several lengths
//! of stock. Whole numbers throughout, so that an answer is exact; knows no roof.
//!
//! A piece and the cut behind it take `length + kerf` of a stick; the last cut of a stick may fall away, so that a stick
//! holds `stock + kerf`. Three steps:
//!
//! 1. `lp`: the relaxation over all cutting patterns by column generation (Gilmore and Gomory, 1961) gives a bound that
//!    is made exact in whole numbers (Farley, 1990), and patterns to round.
//! 2. `greedy`: good answers: first fit by length, best fill, and what is left of the rounded relaxation.
//! 3. `search`: where bound and answer differ, a search stick by stick in which the relaxation's prices cut off what can't
//!    reach the bound. It ends with an answer, with a higher bound, or out of steps: then the gap is told.

mod greedy;
mod knapsack;
mod lp;
mod search;

/// What to cut, in whole units. The caller sees to it that every piece fits in the longest stick.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cutting {
    /// Lengths and how many of each, longest first, no length twice.
    pub pieces: Vec<(u32, u32)>,
    /// Lengths of stock, as many of each as it takes; no length twice.
    pub stocks: Vec<u32>,
    /// What a cut takes away.
    pub kerf: u32,
}

/// How to cut it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Answer {
    /// Each stick: index of its stock, and for each of its pieces the index of the length, longest first.
    pub sticks: Vec<(usize, Vec<usize>)>,
    /// Length of all sticks together.
    pub bought: u64,
    /// No way of cutting buys less.
    pub least: u64,
}

impl Answer {
    /// Whether nothing better can be.
    pub fn is_proved(&self) -> bool {
        self.bought == self.least
    }
}

/// Steps that the relaxation may take in any case.
const LEAST_STEPS: u64 = 200_000;

/// Steps that a search may take: some milliseconds, since a drag waits for it.
pub const USUAL_STEPS: u64 = 60_000;

/// Cuts for the least length bought. `steps` bounds the search for a proof; the answer without it is good all the same.
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

/// A problem with the cut taken into lengths: pieces `size`, sticks that hold `room` and cost their length.
struct Shop {
    size: Vec<u64>,
    demand: Vec<u32>,
    room: Vec<u64>,
    cost: Vec<u64>,
    /// Every sum of stock is a multiple of this.
    grain: u64,
}

/// A way of cutting everything that was asked for.
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

    /// What the pieces would take if they could be cut anywhere.
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

    /// The least sum of stock lengths that is not below an amount; on the safe side where that is far to look for.
    fn next_sum(&self, amount: u64) -> u64 {
        let first = amount.div_ceil(self.grain);
        let steps: Vec<u64> = self.cost.iter().map(|cost| cost / self.grain).collect();
        let most = first + steps.iter().copied().max().unwrap_or(0);
        // Beyond the product of two steps without a common divisor every multiple is a sum.
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
