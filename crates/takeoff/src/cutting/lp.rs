//! The LP relaxation over all patterns: the dual price of each piece, and a lower bound.

use super::knapsack::fill;
use super::{Shop, Way, greedy};

/// Price of a unit of length. Prices are integers, so that the bound is exact.
const PRICE: f64 = (1u64 << 20) as f64;
/// More sizes than a roof has; a larger relaxation would take too long for a drag.
const MOST_SIZES: usize = 200;
/// Values below this are simplex rounding error.
const DUST: f64 = 1e-9;

/// A solved relaxation.
pub(super) struct Relaxed {
    /// Lower bound on the cost of any plan.
    pub(super) bound: u64,
    /// Dual prices of the pieces. No pattern is worth more than `unit` times its stick.
    pub(super) prices: Prices,
    /// Patterns and their fractional use.
    used: Vec<(Pattern, f64)>,
}

/// Integer dual prices.
pub(super) struct Prices {
    /// Per piece of each size.
    pub(super) piece: Vec<i64>,
    /// Per unit of length bought.
    pub(super) unit: i64,
}

#[derive(Clone)]
struct Pattern {
    stock: usize,
    count: Vec<u32>,
}

/// Column generation (Gilmore and Gomory, 1961) by the revised simplex method, for about `steps` steps; the bound holds even if
/// it is cut short. `None` if there are too many sizes.
pub(super) fn relax(shop: &Shop, steps: u64) -> Option<Relaxed> {
    let sizes = shop.size.len();
    if sizes > MOST_SIZES {
        return None;
    }
    let mut table = Table::start(shop)?;
    let mut best: Option<(u64, Prices)> = None;
    let mut taken = 0;
    for _ in 0..sizes * 40 + 200 {
        let worth = table.worth();
        // A negative dual: cutting more of that piece than required is better.
        if let Some(index) = (0..sizes).find(|&index| worth[index] < -DUST) {
            let mut column = vec![0.0; sizes];
            column[index] = -1.0;
            if !table.enter(&column, 0.0, None) {
                break;
            }
            continue;
        }
        let piece: Vec<i64> = worth.iter().map(|w| (w.max(0.0) * PRICE).round() as i64).collect();
        let mut entering: Option<(f64, Pattern)> = None;
        let mut least_ratio: Option<(i64, u64)> = None;
        for stock in 0..shop.room.len() {
            let filling = fill(&shop.size, &piece, &shop.demand, shop.room[stock]);
            taken += filling.steps;
            let cost = shop.cost[stock];
            // The greatest value per cost of any pattern, compared by cross-multiplication.
            if least_ratio.is_none_or(|(value, of)| {
                i128::from(filling.value) * i128::from(of) > i128::from(value) * i128::from(cost)
            }) {
                least_ratio = Some((filling.value, cost));
            }
            let gain = filling.value as f64 / PRICE - cost as f64;
            if gain > 1e-4 && entering.as_ref().is_none_or(|(most, _)| gain > *most) {
                entering = Some((gain, Pattern { stock, count: filling.count }));
            }
        }
        let (value, cost) = least_ratio?;
        // Farley (1990): prices scaled down until no pattern is worth more than its stick give a lower bound.
        let all: i128 = piece.iter().zip(&shop.demand).map(|(&p, &d)| i128::from(p) * i128::from(d)).sum();
        if value > 0 {
            let bound = (all * i128::from(cost) + i128::from(value) - 1) / i128::from(value);
            let bound = u64::try_from(bound).unwrap_or(0);
            if best.as_ref().is_none_or(|(known, _)| bound >= *known) {
                let unit = (value + cost as i64 - 1) / cost as i64;
                best = Some((bound, Prices { piece, unit }));
            }
        }
        let Some((_, pattern)) = entering.filter(|_| taken <= steps) else { break };
        let column: Vec<f64> = pattern.count.iter().map(|&count| f64::from(count)).collect();
        let cost = shop.cost[pattern.stock] as f64;
        if !table.enter(&column, cost, Some(pattern)) {
            break;
        }
    }
    let (bound, prices) = best?;
    Some(Relaxed { bound, prices, used: table.used() })
}

/// The basis, its inverse and the basic solution.
struct Table {
    inverse: Vec<Vec<f64>>,
    cost: Vec<f64>,
    level: Vec<f64>,
    pattern: Vec<Option<Pattern>>,
}

impl Table {
    /// Starting basis, one pattern per size: as many pieces as fit in the stick that is cheapest for that size.
    fn start(shop: &Shop) -> Option<Self> {
        let sizes = shop.size.len();
        let mut table =
            Self { inverse: Vec::new(), cost: Vec::new(), level: Vec::new(), pattern: Vec::new() };
        for index in 0..sizes {
            let fits =
                |stock: usize| (shop.room[stock] / shop.size[index]).min(u64::from(shop.demand[index]));
            let stock = (0..shop.room.len()).filter(|&stock| fits(stock) > 0).min_by(|&a, &b| {
                (u128::from(shop.cost[a]) * u128::from(fits(b)))
                    .cmp(&(u128::from(shop.cost[b]) * u128::from(fits(a))))
            })?;
            let times = fits(stock) as u32;
            let mut count = vec![0; sizes];
            count[index] = times;
            let mut row = vec![0.0; sizes];
            row[index] = 1.0 / f64::from(times);
            table.inverse.push(row);
            table.cost.push(shop.cost[stock] as f64);
            table.level.push(f64::from(shop.demand[index]) / f64::from(times));
            table.pattern.push(Some(Pattern { stock, count }));
        }
        Some(table)
    }

    /// Dual prices of the basis.
    fn worth(&self) -> Vec<f64> {
        let mut worth = vec![0.0; self.cost.len()];
        for (row, &cost) in self.inverse.iter().zip(&self.cost) {
            for (worth, entry) in worth.iter_mut().zip(row) {
                *worth += cost * entry;
            }
        }
        worth
    }

    /// Brings a column into the basis. False if the ratio test finds no leaving column, which does not happen on a valid problem.
    fn enter(&mut self, column: &[f64], cost: f64, pattern: Option<Pattern>) -> bool {
        let along: Vec<f64> =
            self.inverse.iter().map(|row| row.iter().zip(column).map(|(a, b)| a * b).sum()).collect();
        let leaving = (0..along.len()).filter(|&row| along[row] > 1e-7).min_by(|&a, &b| {
            let ratio = |row: usize| self.level[row].max(0.0) / along[row];
            ratio(a).total_cmp(&ratio(b)).then(along[b].total_cmp(&along[a]))
        });
        let Some(leaving) = leaving else { return false };
        let pivot = along[leaving];
        let step = self.level[leaving].max(0.0) / pivot;
        let pivot_row: Vec<f64> = self.inverse[leaving].iter().map(|entry| entry / pivot).collect();
        for (row, &by) in along.iter().enumerate() {
            if row != leaving && by != 0.0 {
                self.level[row] -= by * step;
                for (entry, from) in self.inverse[row].iter_mut().zip(&pivot_row) {
                    *entry -= by * from;
                }
            }
        }
        self.inverse[leaving] = pivot_row;
        self.level[leaving] = step;
        self.cost[leaving] = cost;
        self.pattern[leaving] = pattern;
        true
    }

    fn used(self) -> Vec<(Pattern, f64)> {
        self.pattern.into_iter().zip(self.level).filter_map(|(p, level)| Some((p?, level))).collect()
    }
}

impl Relaxed {
    /// Integer plans near the relaxation: patterns rounded down, to nearest, and up where the fraction is largest; the rest of
    /// the demand is cut separately.
    pub(super) fn rounded(&self, shop: &Shop) -> Vec<Way> {
        [0.0, 0.25, 0.5, 0.75].map(|up| self.rounded_from(shop, up)).to_vec()
    }

    fn rounded_from(&self, shop: &Shop, up: f64) -> Way {
        let mut left = shop.demand.clone();
        let mut way = Way::default();
        let mut order: Vec<&(Pattern, f64)> = self.used.iter().collect();
        order.sort_by(|a, b| b.1.fract().total_cmp(&a.1.fract()));
        for (pattern, level) in order {
            let times = (level + DUST + up).floor() as u64;
            for _ in 0..times {
                // Never exceed the demand.
                let pieces: Vec<usize> = (0..left.len())
                    .flat_map(|i| std::iter::repeat_n(i, pattern.count[i].min(left[i]) as usize))
                    .collect();
                let whole = pieces.len() == pattern.count.iter().sum::<u32>() as usize;
                if !whole {
                    break;
                }
                for &piece in &pieces {
                    left[piece] -= 1;
                }
                way.push(shop, pattern.stock, pieces);
            }
        }
        let rest = greedy::best(shop, &left);
        way.cost += rest.cost;
        way.sticks.extend(rest.sticks);
        way
    }
}
