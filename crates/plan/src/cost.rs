//! Cost of an order by group, and how it grows with the array.

use crate::Plan;
use chalkcourse_job::{Group, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Takeoff, take_off};
use rust_decimal::Decimal;
use std::sync::Arc;

/// Cost of one group of the order, without the unpriced lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GroupCost {
    /// The group.
    pub group: Group,
    /// Its cost, in the currency of the price list.
    pub cost: Decimal,
    /// Its share of the priced total, 0 to 1.
    pub share: f64,
}

/// Cost of the order for a part of the array.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StepCost {
    /// Modules on the roof.
    pub modules: usize,
    /// The selling price of the job, as far as there are prices.
    pub cost: Decimal,
}

/// Most bars in the chart.
const MOST_STEPS: usize = 8;

/// Cost of each group on an order, in the order of groups.
pub fn cost_by_group(takeoff: &Takeoff) -> Vec<GroupCost> {
    let total = takeoff.priced_total;
    let of = |(group, cost): (Group, Decimal)| {
        let share = cost.checked_div(total).and_then(|share| f64::try_from(share).ok()).unwrap_or(0.0);
        GroupCost { group, cost, share }
    };
    takeoff.cost_by_group().into_iter().map(of).collect()
}

/// Cost of the order as the array grows: blocks in the order of the job, each row by row from the eave up. The last
/// step is the whole array; with many rows, some steps in between are skipped.
pub fn cost_by_rows(job: &Resolved, plan: &Plan) -> Vec<StepCost> {
    let rows: Vec<(usize, u32)> = job
        .blocks
        .iter()
        .enumerate()
        .flat_map(|(at, block)| (1..=block.rows).map(move |n| (at, n)))
        .collect();
    let count = rows.len().min(MOST_STEPS);
    let mut steps: Vec<StepCost> = Vec::new();
    for step in 1..=count {
        // Evenly spaced, always including the last one.
        let Some(&(last, rows)) = rows.get((step * rows.len()).div_ceil(count) - 1) else { continue };
        let mut part = job.clone();
        part.blocks.truncate(last + 1);
        if let Some(block) = part.blocks.last_mut() {
            block.rows = rows;
        }
        let layout = Layout::on_roof(&part, Arc::clone(&plan.layout.roof));
        let modules = layout.blocks.iter().map(|block| block.modules.len()).sum();
        // A row that is entirely switched off makes no step.
        if modules > 0 && steps.last().is_none_or(|step| step.modules != modules) {
            steps.push(StepCost { modules, cost: take_off(&part, &layout).totals.total });
        }
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::evaluate;

    fn alder_court() -> Resolved {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../sample-roofs/alder-court.chalk.json");
        chalkcourse_job::load(std::path::Path::new(path)).unwrap()
    }

    #[test]
    fn groups_add_up_to_the_total() {
        let plan = evaluate(&alder_court());
        let groups = cost_by_group(&plan.takeoff);
        assert!(groups.len() > 1);
        assert_eq!(groups.iter().map(|group| group.cost).sum::<Decimal>(), plan.takeoff.priced_total);
        assert!((groups.iter().map(|group| group.share).sum::<f64>() - 1.0).abs() < 1e-9);
        assert!(cost_by_group(&Takeoff::default()).is_empty());
    }

    #[test]
    fn cost_steps_are_separate_orders_and_end_at_the_whole_array() {
        let job = alder_court();
        let plan = evaluate(&job);
        let steps = cost_by_rows(&job, &plan);
        let modules: Vec<usize> = steps.iter().map(|step| step.modules).collect();
        assert_eq!(modules, [4, 8, 12], "three rows of four");
        assert_eq!(steps.last().unwrap().cost, plan.takeoff.totals.total);
        // The first step costs the same as a job with only that row.
        let mut one_row = job;
        one_row.blocks[0].rows = 1;
        assert_eq!(steps[0].cost, evaluate(&one_row).takeoff.totals.total);
        assert!(steps.windows(2).all(|two| two[0].cost < two[1].cost));
    }

    #[test]
    fn many_rows_are_sampled_including_the_last() {
        let mut job = alder_court();
        job.blocks[0].rows = 37;
        let plan = evaluate(&job);
        let steps = cost_by_rows(&job, &plan);
        assert_eq!(steps.len(), MOST_STEPS);
        assert_eq!(steps.last().unwrap().modules, plan.summary.modules);
        job.blocks.clear();
        assert!(cost_by_rows(&job, &evaluate(&job)).is_empty());
    }
}
