//! Good answers: orders cut into paths at the best places, then moves that make them shorter, then shaken and mended again. After a
//! shake only what it touched is looked at again (don't-look bits; Bentley, 1992).

mod moves;

use super::costs::Costs;
use super::{MOST_SEARCHED, Problem};
use moves::Standing;

/// Paths that hold all points, as many as asked for; `None` where the limits do not allow that number.
pub(super) fn start(problem: &Problem, costs: &Costs, count: usize) -> Option<Vec<Vec<usize>>> {
    let points = costs.points;
    let mut orders = problem.orders.clone();
    if points <= MOST_SEARCHED {
        orders.extend((0..points.min(8)).map(|at| nearest(costs, at * points / points.clamp(1, 8))));
    } else if orders.is_empty() {
        orders.push((0..points).collect());
    }
    let mut cuts: Vec<(i64, Vec<Vec<usize>>)> = orders
        .iter()
        .filter_map(|order| {
            let paths = cut(problem, costs, order, count)?;
            Some((costs.of_all(&paths), paths))
        })
        .collect();
    cuts.sort_by_key(|(cost, _)| *cost);
    cuts.dedup_by(|a, b| a.1 == b.1);
    if points > MOST_SEARCHED {
        return cuts.into_iter().next().map(|(_, paths)| paths);
    }
    cuts.truncate(4);
    let mended = cuts.into_iter().map(|(_, paths)| {
        let mut standing = Standing::of(problem, costs, &paths);
        standing.mend((0..points).collect());
        standing.paths
    });
    mended.min_by_key(|paths| costs.of_all(paths))
}

/// Shakes and mends an answer so many times; the best that came about, no worse than the given one. It ends early at a cost that none
/// can be below.
pub(super) fn shaken(
    problem: &Problem,
    costs: &Costs,
    paths: Vec<Vec<usize>>,
    shakes: u32,
    enough: i64,
) -> Vec<Vec<usize>> {
    let mut best_cost = costs.of_all(&paths);
    let best_length = best_cost % problem.lead_weight();
    let mut best = paths;
    if costs.points > MOST_SEARCHED {
        return best;
    }
    let mut dice = Dice(0x9e37_79b9_7f4a_7c15);
    let mut standing = Standing::of(problem, costs, &best);
    let (mut at, mut at_cost) = (best.clone(), best_cost);
    // Record to record: what is worse than the best by no more than two or three links is gone on from, less and less so
    // (Dueck, 1993).
    let links = (costs.points + at.len()) as i64;
    let deviation = (best_length / links) as f64 * 2.5;
    for done in 0..shakes {
        if best_cost <= enough {
            break;
        }
        let touched = shake(&mut standing, &mut dice);
        standing.mend(touched);
        let cost = costs.of_all(&standing.paths);
        let worse = deviation * f64::from(shakes - done) / f64::from(shakes);
        if cost <= at_cost || cost - best_cost < worse as i64 {
            at.clone_from(&standing.paths);
            at_cost = cost;
        } else {
            standing.put(&at);
        }
        if at_cost < best_cost {
            best.clone_from(&at);
            best_cost = at_cost;
        }
    }
    best
}

/// An order that goes on to the nearest point each time.
fn nearest(costs: &Costs, start: usize) -> Vec<usize> {
    let mut left: Vec<usize> = (0..costs.points).filter(|point| *point != start).collect();
    let mut order = vec![start];
    let mut at = start;
    while let Some((index, _)) = left.iter().enumerate().min_by_key(|(_, to)| costs.at(at, **to)) {
        at = left.swap_remove(index);
        order.push(at);
    }
    order
}

/// The best places to cut an order into so many paths: shortest way over cuts.
pub(super) fn cut(
    problem: &Problem,
    costs: &Costs,
    order: &[usize],
    count: usize,
) -> Option<Vec<Vec<usize>>> {
    let points = order.len();
    let mut along = vec![0_i64; points];
    for at in 1..points {
        along[at] = along[at - 1] + costs.at(order[at - 1], order[at]);
    }
    let of = |from: usize, to: usize| {
        costs.at(costs.home(), order[from]) + along[to - 1] - along[from]
            + costs.at(order[to - 1], costs.home())
    };
    // For each number of paths and each place, the least cost of all before it and where its last path begins.
    let mut ways: Vec<Vec<Option<(i64, usize)>>> = vec![vec![None; points + 1]; count + 1];
    ways[0][0] = Some((0, 0));
    for paths in 1..=count {
        for end in problem.least.max(1)..=points {
            let starts = end.saturating_sub(problem.most)..=end - problem.least.max(1);
            ways[paths][end] =
                starts.filter_map(|start| Some((ways[paths - 1][start]?.0 + of(start, end), start))).min();
        }
    }
    let (mut end, mut found) = (points, Vec::new());
    for paths in (1..=count).rev() {
        let (_, start) = ways[paths][end]?;
        found.push(order[start..end].to_vec());
        end = start;
    }
    found.reverse();
    Some(found)
}

/// Changes an answer at random: stretches of two paths that lie beside one another change places, as the limits allow, or one path is put
/// together anew. Gives the points whose links changed.
fn shake(standing: &mut Standing, dice: &mut Dice) -> Vec<usize> {
    let points = standing.costs.points;
    let at = dice.below(points);
    let near = &standing.near[at];
    let beside = near.get(dice.below(near.len())).copied().unwrap_or(at);
    let ((one, i), (other, j)) = (standing.spot[at], standing.spot[beside]);
    if one == other {
        let path = &mut standing.paths[one];
        let long = path.len();
        if long < 4 {
            path.reverse();
        } else {
            // Two stretches beside one another change places.
            let mut cuts = [i, j, (i.min(j) + 1 + dice.below(8)).min(long)];
            cuts.sort_unstable();
            path[cuts[0]..cuts[2]].rotate_left(cuts[1] - cuts[0]);
        }
        let touched = path.clone();
        standing.renumber(one);
        return touched;
    }
    let (long, longer) = (standing.paths[one].len(), standing.paths[other].len());
    for _ in 0..8 {
        let (a, b) = (1 + dice.below(4).min(long - i - 1), 1 + dice.below(4).min(longer - j - 1));
        if !standing.fits(long - a + b) || !standing.fits(longer - b + a) {
            continue;
        }
        let of_a: Vec<usize> = standing.paths[one][i..i + a].to_vec();
        let of_b: Vec<usize> = standing.paths[other].splice(j..j + b, of_a.iter().copied()).collect();
        standing.paths[one].splice(i..i + a, of_b.iter().copied());
        standing.renumber(one);
        standing.renumber(other);
        // What stands beside the stretches has new links too.
        let around = |path: &[usize], from: usize, size: usize| {
            path[from.saturating_sub(1)..(from + size + 1).min(path.len())].to_vec()
        };
        let mut touched = around(&standing.paths[one], i, b);
        touched.extend(around(&standing.paths[other], j, a));
        return touched;
    }
    Vec::new()
}

/// Numbers by chance that are the same in each run (Marsaglia's xorshift, 2003).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as usize % most.max(1)
    }
}
