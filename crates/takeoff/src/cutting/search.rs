//! Decides whether the demand can be cut at a given cost: stick by stick, pruned by dual prices.

use super::lp::Prices;
use super::{Shop, Way};
use std::collections::HashMap;

/// Result of a search.
pub(super) enum Found {
    /// A plan within the cost.
    Answer(Way),
    /// No such plan exists.
    Nothing,
    /// Undecided: out of steps.
    OutOfSteps,
}

/// Searches for a plan that costs at most `cost`.
///
/// Under prices at which no pattern is worth more than its stick, each stick wastes its cost minus the worth of its pieces, and
/// all sticks together may waste `cost` minus the worth of all pieces. Near the bound that is little, so few patterns are left to
/// try. Each step branches on the stick with the longest piece left; in some optimal plan that stick is full, since any piece
/// that still fits may be moved into it.
pub(super) fn reach(shop: &Shop, prices: &Prices, cost: u64, steps: &mut u64) -> Found {
    let worth: i128 =
        prices.piece.iter().zip(&shop.demand).map(|(&p, &d)| i128::from(p) * i128::from(d)).sum();
    let waste = i128::from(cost) * i128::from(prices.unit) - worth;
    if waste < 0 {
        return Found::Nothing;
    }
    let mut best_ratio = vec![(0, 1); shop.size.len() + 1];
    for index in (0..shop.size.len()).rev() {
        let (here, next) = ((prices.piece[index], shop.size[index]), best_ratio[index + 1]);
        let better = i128::from(here.0) * i128::from(next.1) > i128::from(next.0) * i128::from(here.1);
        best_ratio[index] = if better { here } else { next };
    }
    let mut search = Search {
        shop,
        prices,
        best_ratio,
        left: shop.demand.clone(),
        chosen: Vec::new(),
        failed: HashMap::new(),
        steps,
    };
    match search.branch(cost, waste) {
        Some(true) => {
            let mut way = Way::default();
            for (stock, count) in search.chosen {
                let pieces = count.iter().enumerate();
                let pieces = pieces.flat_map(|(i, &n)| std::iter::repeat_n(i, n as usize)).collect();
                way.push(shop, stock, pieces);
            }
            Found::Answer(way)
        }
        Some(false) => Found::Nothing,
        None => Found::OutOfSteps,
    }
}

struct Search<'a> {
    shop: &'a Shop,
    prices: &'a Prices,
    /// For each size, the best worth per length from it on, as a fraction.
    best_ratio: Vec<(i64, u64)>,
    left: Vec<u32>,
    chosen: Vec<(usize, Vec<u32>)>,
    /// For each remaining demand, a cost that was not enough.
    failed: HashMap<Vec<u32>, u64>,
    steps: &'a mut u64,
}

/// Maximum remembered failures: some megabytes.
const MOST_FAILED: usize = 50_000;

impl Search<'_> {
    /// `None`: out of steps.
    fn branch(&mut self, cost: u64, waste: i128) -> Option<bool> {
        let Some(longest) = self.left.iter().position(|&count| count > 0) else { return Some(true) };
        if self.failed.get(&self.left).is_some_and(|&failed| cost <= failed) {
            return Some(false);
        }
        *self.steps = self.steps.checked_sub(1)?;
        let mut patterns: Vec<(i128, usize, Vec<u32>)> = Vec::new();
        for stock in 0..self.shop.room.len() {
            if self.shop.cost[stock] > cost || self.shop.room[stock] < self.shop.size[longest] {
                continue;
            }
            let mut count = vec![0; self.left.len()];
            count[longest] = 1;
            let room = self.shop.room[stock] - self.shop.size[longest];
            let price = i128::from(self.shop.cost[stock]) * i128::from(self.prices.unit);
            let short = price - i128::from(self.prices.piece[longest]);
            self.patterns(longest, stock, room, short, waste, &mut count, &mut patterns)?;
        }
        patterns.sort_by(|a, b| a.0.cmp(&b.0).then_with(|| b.2.cmp(&a.2)));
        for (wasted, stock, count) in patterns {
            for (left, &taken) in self.left.iter_mut().zip(&count) {
                *left -= taken;
            }
            self.chosen.push((stock, count));
            let found = self.branch(cost - self.shop.cost[stock], waste - wasted);
            if found != Some(false) {
                return found;
            }
            if let Some((_, count)) = self.chosen.pop() {
                for (left, &taken) in self.left.iter_mut().zip(&count) {
                    *left += taken;
                }
            }
        }
        if self.failed.len() < MOST_FAILED {
            self.failed.insert(self.left.clone(), cost);
        }
        Some(false)
    }

    /// All maximal fillings of a stick, from size `at` on, within the allowed waste. `short` is the stick's worth minus that of
    /// the pieces so far.
    #[expect(clippy::too_many_arguments, reason = "the state of one recursion")]
    fn patterns(
        &mut self,
        at: usize,
        stock: usize,
        room: u64,
        short: i128,
        waste: i128,
        count: &mut Vec<u32>,
        found: &mut Vec<(i128, usize, Vec<u32>)>,
    ) -> Option<()> {
        let (worth, length) = self.best_ratio[at];
        if short - i128::from(room) * i128::from(worth) / i128::from(length) > waste {
            return Some(());
        }
        *self.steps = self.steps.checked_sub(1)?;
        if at == self.left.len() {
            let fits = |i: usize| self.left[i] > count[i] && self.shop.size[i] <= room;
            // Check maximality from the shortest piece: if that does not fit, none does.
            if short <= waste && !(0..at).rev().any(fits) {
                found.push((short, stock, count.clone()));
            }
            return Some(());
        }
        let size = self.shop.size[at];
        let most = (room / size).min(u64::from(self.left[at] - count[at])) as u32;
        let before = count[at];
        for more in (0..=most).rev() {
            count[at] = before + more;
            let worth = i128::from(self.prices.piece[at]) * i128::from(more);
            self.patterns(at + 1, stock, room - size * u64::from(more), short - worth, waste, count, found)?;
        }
        count[at] = before;
        Some(())
    }
}
