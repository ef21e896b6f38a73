//! What is to be bounded: an answer with so many paths that costs less than one that is known.

use super::Problem;
use super::costs::{Costs, NEVER};

/// Costs within this are one cost: far below the unit in which they are whole.
pub(super) const DUST: f64 = 1e-4;
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
}

impl<'a> Question<'a> {
    pub(super) fn of(
        problem: &'a Problem,
        count: usize,
        costs: &'a Costs,
        leads: Option<(&'a Costs, i64)>,
        good: i64,
    ) -> Self {
        let points = 0..costs.points;
        let next =
            points.clone().map(|from| points.clone().filter(|to| costs.at(from, *to) < NEVER).collect());
        Self { problem, count, costs, leads, good, next: next.collect() }
    }

    /// Where steps begin: each point is paid about half of its two cheapest links.
    pub(super) fn first_prices(&self) -> Prices {
        let lead = if self.leads.is_some() { self.typical() } else { 0.0 };
        let mut cheap = Vec::new();
        let points = (0..self.costs.points).map(|at| {
            cheap.clear();
            cheap.extend(self.next[at].iter().map(|to| self.weight(at, *to, lead)));
            cheap.sort_by(f64::total_cmp);
            cheap.iter().take(2).sum::<f64>() / 2.0
        });
        Prices { points: points.collect(), lead }
    }

    /// About twice what a link costs.
    fn typical(&self) -> f64 {
        2.0 * self.good as f64 / (self.costs.points + self.count) as f64
    }

    /// What a link costs with the leads at a price.
    pub(super) fn weight(&self, from: usize, to: usize, lead: f64) -> f64 {
        let cost = self.costs.at(from, to);
        if cost >= NEVER {
            return FAR;
        }
        cost as f64 + self.leads.map_or(0.0, |(leads, _)| lead * leads.at(from, to) as f64)
    }

    /// What an answer as good as the known one costs with the leads at a price.
    pub(super) fn goal(&self, lead: f64) -> f64 {
        self.good as f64 + lead * self.allowed()
    }

    /// How many extension leads may be taken.
    pub(super) fn allowed(&self) -> f64 {
        self.leads.map_or(0.0, |(_, most)| most as f64)
    }

    /// What a value of the relaxed question proves: whole, and no more than what is known.
    pub(super) fn proved(&self, value: f64) -> i64 {
        if value >= self.good as f64 - DUST { self.good } else { (value - DUST).ceil() as i64 }
    }
}

/// Steps towards better prices: along what is missing and a part of the last step (Camerini, Fratta and Maffioli, 1975), as long as what is
/// missing of the goal asks for (Polyak, 1969), shorter when nothing got better.
pub(super) struct Steps {
    pace: f64,
    since: u32,
    patience: u32,
    along: Vec<f64>,
    along_lead: f64,
}

impl Steps {
    pub(super) fn of(points: usize, patience: u32) -> Self {
        Self { pace: 1.0, since: 0, patience, along: vec![0.0; points], along_lead: 0.0 }
    }

    /// Whether another step is worth while, after one that did or did not get better.
    pub(super) fn go_on(&mut self, better: bool) -> bool {
        self.since = if better { 0 } else { self.since + 1 };
        if self.since >= self.patience {
            (self.pace, self.since) = (self.pace * 0.6, 0);
        }
        self.pace > 1e-3
    }

    /// `missing` is how often each point is wanted less how often it was visited, `leads` how many were taken too many, `gap` what the goal is
    /// away. Whether a step was made: none is missing where all is visited once.
    pub(super) fn step(&mut self, prices: &mut Prices, missing: &[f64], leads: f64, gap: f64) -> bool {
        if missing.iter().all(|missing| *missing == 0.0) && leads == 0.0 {
            return false;
        }
        for (along, missing) in self.along.iter_mut().zip(missing) {
            *along = 0.7 * missing + 0.3 * *along;
        }
        self.along_lead = 0.7 * leads + 0.3 * self.along_lead;
        let square: f64 =
            self.along.iter().map(|along| along * along).sum::<f64>() + self.along_lead * self.along_lead;
        if square > 0.0 {
            let step = self.pace * gap / square;
            prices.points.iter_mut().zip(&self.along).for_each(|(price, along)| *price += step * along);
            prices.lead = (prices.lead + step * self.along_lead).max(0.0);
        }
        true
    }
}
