//! What is to be bounded: an answer with so many paths that costs less than one that is known.

use super::Problem;
use super::costs::{Costs, NEVER};

/// Costs within this are one cost: far below the unit in which they are whole.
pub(super) const DUST: f64 = 1e-4;
/// Far more than what sums of a few hundred numbers lose of their last digits.
const DIGITS: f64 = 1e-11;
/// Dearer than any path.
pub(super) const FAR: f64 = 1e17;

/// What is asked. An answer that takes at most `leads` extension leads costs at least what the links cost, the leads at any price, less that
/// price for those leads (Lagrange): the price can be small, where a lead that outweighs all length makes steps coarse.
pub(super) struct Question<'a> {
    pub(super) problem: &'a Problem,
    /// Paths.
    pub(super) count: usize,
    /// What is counted of each link and way home.
    pub(super) costs: &'a Costs,
    /// Extension leads of each link, and how many an answer may have; `None` where they are not looked at, or counted in the costs.
    pub(super) leads: Option<(&'a Costs, i64)>,
    /// What a known answer costs: only what is less is looked for.
    pub(super) good: i64,
    /// For each point and home the far sets that hold it, a bit each.
    far: Vec<u32>,
    /// Links and ways home that go in or out of each far set, at least.
    crossings: Vec<f64>,
    /// Points that may follow each point in an answer that costs less, and those of which that is known not to be are gone.
    pub(super) next: Vec<Vec<usize>>,
}

/// What is paid, so that in the end each point is wanted as often as it is there.
#[derive(Clone, Debug)]
pub(super) struct Prices {
    /// For each point.
    pub(super) points: Vec<f64>,
    /// For an extension lead.
    pub(super) lead: f64,
    /// For a link or way home that goes in or out of a far set, for each: what is paid for one.
    pub(super) far: Vec<f64>,
}

/// What a relaxed answer has, besides its cost: how often each point is wanted less how often it is visited, leads, crossings of far sets.
pub(super) struct Taken {
    pub(super) missing: Vec<f64>,
    pub(super) leads: f64,
    pub(super) crossings: Vec<f64>,
}

impl Prices {
    /// What sums with these prices may be off by at most, in the last digits that they have.
    pub(super) fn blur(&self) -> f64 {
        let all = self.points.iter().chain(&self.far).chain([&self.lead]);
        DUST + DIGITS * all.map(|price| price.abs()).sum::<f64>()
    }
}

impl<'a> Question<'a> {
    pub(super) fn of(
        problem: &'a Problem,
        count: usize,
        costs: &'a Costs,
        leads: Option<(&'a Costs, i64)>,
        good: i64,
    ) -> Self {
        let (far, crossings) = far_sets(problem, count, costs);
        let points = 0..costs.points;
        let next =
            points.clone().map(|from| points.clone().filter(|to| costs.at(from, *to) < NEVER).collect());
        Self { problem, count, costs, leads, good, far, crossings, next: next.collect() }
    }

    /// Where steps begin: each point is paid about half of its two cheapest links.
    pub(super) fn first_prices(&self) -> Prices {
        let lead = if self.leads.is_some() { self.typical() } else { 0.0 };
        let mut cheap = Vec::new();
        let points = (0..self.costs.points).map(|at| {
            cheap.clear();
            cheap.extend(self.next[at].iter().map(|to| self.cost(at, *to, lead)));
            cheap.sort_by(f64::total_cmp);
            cheap.iter().take(2).sum::<f64>() / 2.0
        });
        Prices { points: points.collect(), lead, far: vec![0.0; self.crossings.len()] }
    }

    /// About twice what a link costs.
    fn typical(&self) -> f64 {
        2.0 * self.good as f64 / (self.costs.points + self.count) as f64
    }

    /// What a link costs with the leads at a price.
    fn cost(&self, from: usize, to: usize, lead: f64) -> f64 {
        let cost = self.costs.at(from, to);
        if cost >= NEVER {
            return FAR;
        }
        cost as f64 + self.leads.map_or(0.0, |(leads, _)| lead * leads.at(from, to) as f64)
    }

    /// The same less what is paid for the far sets that it goes in or out of.
    pub(super) fn weight(&self, from: usize, to: usize, prices: &Prices) -> f64 {
        let mut weight = self.cost(from, to, prices.lead);
        let mut crossed = self.far[from] ^ self.far[to];
        while crossed != 0 {
            weight -= prices.far[crossed.trailing_zeros() as usize];
            crossed &= crossed - 1;
        }
        weight
    }

    /// What all answers as good as the known one weigh at most more than they cost: leads at their price, less what is paid for the crossings
    /// that each answer has.
    pub(super) fn beyond(&self, prices: &Prices) -> f64 {
        let paid: f64 = self.crossings.iter().zip(&prices.far).map(|(asked, price)| asked * price).sum();
        prices.lead * self.leads.map_or(0.0, |(_, most)| most as f64) - paid
    }

    /// Nothing taken yet, each point wanted so often.
    pub(super) fn nothing(&self, wanted: f64) -> Taken {
        let leads = -self.leads.map_or(0.0, |(_, most)| most as f64);
        Taken { missing: vec![wanted; self.costs.points], leads, crossings: self.crossings.clone() }
    }

    /// Takes a link or way home: its leads, and what it crosses.
    pub(super) fn take(&self, taken: &mut Taken, from: usize, to: usize) {
        if let Some((leads, _)) = self.leads {
            taken.leads += leads.at(from, to).min(MANY) as f64;
        }
        let mut crossed = self.far[from] ^ self.far[to];
        while crossed != 0 {
            taken.crossings[crossed.trailing_zeros() as usize] -= 1.0;
            crossed &= crossed - 1;
        }
    }

    /// What a value of the relaxed question at some prices proves: whole, and no more than what is known.
    pub(super) fn proved(&self, value: f64, prices: &Prices) -> i64 {
        let sure = value - prices.blur();
        if sure >= self.good as f64 { self.good } else { sure.ceil() as i64 }
    }

    /// How far a value is from what is looked for, for a step: no more than all of it, so that no step goes out of hand.
    pub(super) fn gap(&self, value: f64) -> f64 {
        (self.good as f64 - value).min(self.good.max(1) as f64)
    }
}

/// A link that can't be has more leads than this.
const MANY: i64 = 1 << 20;
/// Bits of a word.
const MOST_FAR: usize = 32;

/// Sets of the points that are farthest from home, each of a few more than some circuits hold: so many circuits and one go in and out
/// (rounded capacities; Laporte, Nobert and Desrochers, 1985). For each point and home its sets, and for each set its crossings.
fn far_sets(problem: &Problem, count: usize, costs: &Costs) -> (Vec<u32>, Vec<f64>) {
    let mut farthest: Vec<usize> = (0..costs.points).collect();
    farthest.sort_by_key(|at| std::cmp::Reverse(costs.at(*at, costs.home())));
    let sizes = (1..count).flat_map(|full| [1, 3, 6].map(|more| full * problem.most + more));
    let (mut far, mut crossings) = (vec![0; costs.points + 1], Vec::new());
    for size in sizes.filter(|size| *size < costs.points).take(MOST_FAR) {
        let ends = if problem.both_ends { 2 } else { 1 };
        farthest.iter().take(size).for_each(|at| far[*at] |= 1 << crossings.len());
        crossings.push((ends * size.div_ceil(problem.most)) as f64);
    }
    (far, crossings)
}

/// Steps towards better prices: along what is missing and a part of the last step (Camerini, Fratta and Maffioli, 1975), as long as what is
/// missing of the goal asks for (Polyak, 1969), shorter when nothing got better.
pub(super) struct Steps {
    pace: f64,
    since: u32,
    patience: u32,
    along: Vec<f64>,
    along_lead: f64,
    along_far: Vec<f64>,
}

impl Steps {
    pub(super) fn of(points: usize, patience: u32) -> Self {
        Self {
            pace: 1.0,
            since: 0,
            patience,
            along: vec![0.0; points],
            along_lead: 0.0,
            along_far: Vec::new(),
        }
    }

    /// Whether another step is worth while, after one that did or did not get better.
    pub(super) fn go_on(&mut self, better: bool) -> bool {
        self.since = if better { 0 } else { self.since + 1 };
        if self.since >= self.patience {
            (self.pace, self.since) = (self.pace * 0.6, 0);
        }
        self.pace > 1e-3
    }

    /// One step; `gap` is what the goal is away. Whether one was made: where nothing is missing there is none.
    pub(super) fn step(&mut self, prices: &mut Prices, taken: &Taken, gap: f64) -> bool {
        let crossed = taken.crossings.iter().zip(&prices.far).all(|(off, paid)| *off <= 0.0 && *paid == 0.0);
        if taken.missing.iter().all(|missing| *missing == 0.0) && taken.leads == 0.0 && crossed {
            return false;
        }
        let turn = |along: &mut f64, off: f64| *along = 0.7 * off + 0.3 * *along;
        self.along.iter_mut().zip(&taken.missing).for_each(|(along, off)| turn(along, *off));
        turn(&mut self.along_lead, taken.leads);
        self.along_far.resize(prices.far.len(), 0.0);
        self.along_far.iter_mut().zip(&taken.crossings).for_each(|(along, off)| turn(along, *off));
        // What would only make a price of nothing less does not count.
        for (along, price) in self.along_far.iter_mut().zip(&prices.far) {
            if *price == 0.0 {
                *along = along.max(0.0);
            }
        }
        if prices.lead == 0.0 {
            self.along_lead = self.along_lead.max(0.0);
        }
        let all = self.along.iter().chain(&self.along_far).chain([&self.along_lead]);
        // Where what is left of earlier steps is all there is, it does not make the step long.
        let square = all.map(|along| along * along).sum::<f64>().max(1.0);
        let step = self.pace * gap / square;
        prices.points.iter_mut().zip(&self.along).for_each(|(price, along)| *price += step * along);
        prices.lead = (prices.lead + step * self.along_lead).max(0.0);
        for (price, along) in prices.far.iter_mut().zip(&self.along_far) {
            *price = (*price + step * along).max(0.0);
        }
        true
    }
}
