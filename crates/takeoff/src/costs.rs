//! From line costs to the price of the job, each step rounded to the cent.

use crate::line::{Line, Takeoff};
use crate::totals::{Totals, cents, share, sum};
use chalkcourse_job::{Group, Profit, Resolved, Stage};
use rust_decimal::Decimal;

/// Total cost of some lines; lines without a price are left out.
pub fn cost_of<'a>(lines: impl IntoIterator<Item = &'a Line>) -> Decimal {
    sum(lines.into_iter().filter_map(|line| line.cost))
}

impl Totals {
    pub(crate) fn of(lines: &[Line], job: &Resolved) -> Self {
        let costs = |keep: &dyn Fn(&Line) -> bool| cost_of(lines.iter().filter(|line| keep(line)));
        let goods = costs(&|line| line.group != Group::Labour);
        let labour = costs(&|line| line.group == Group::Labour);
        let tax = job.prices.tax_percent.map(|percent| share(costs(&|line| line.taxed), percent));
        // Without anything to order there is no delivery.
        let delivery = job.prices.delivery.map(|d| if lines.is_empty() { Decimal::ZERO } else { cents(d) });
        let cost = sum([goods, labour, tax.unwrap_or_default(), delivery.unwrap_or_default()]);
        let pricing = &job.order.pricing;
        let overhead = share(cost, pricing.overhead_percent);
        let base = cost.saturating_add(overhead);
        let profit = match pricing.profit {
            Profit::None => Decimal::ZERO,
            Profit::Markup { percent } => share(base, percent),
            // With a margin m of the price s: s = base / (1 − m), and the profit is s × m.
            Profit::Margin { percent } => {
                let rest = Decimal::ONE_HUNDRED - percent;
                let times = percent.checked_div(rest).unwrap_or_default();
                cents(base.checked_mul(times).unwrap_or(Decimal::MAX))
            }
        };
        Self { goods, labour, tax, delivery, cost, overhead, profit, total: base.saturating_add(profit) }
    }
}

impl Takeoff {
    /// Cost by stage of work; stages without lines are left out.
    pub fn cost_by_stage(&self) -> Vec<(Stage, Decimal)> {
        self.cost_by(&Stage::ALL, |line| line.stage)
    }

    /// Cost by group of the order; groups without lines are left out.
    pub fn cost_by_group(&self) -> Vec<(Group, Decimal)> {
        self.cost_by(&Group::ALL, |line| line.group)
    }

    fn cost_by<K: Copy + PartialEq>(&self, all: &[K], key: impl Fn(&Line) -> K) -> Vec<(K, Decimal)> {
        let of = |wanted: K| {
            let mut lines = self.lines.iter().filter(|line| key(line) == wanted).peekable();
            lines.peek()?;
            Some((wanted, cost_of(lines)))
        };
        all.iter().copied().filter_map(of).collect()
    }
}
