//! Good answers: orders cut into paths at the best places, then moves that make them shorter, then shaken and mended again.

use super::{Costs, Effort, MOST_SEARCHED, Problem};

/// Paths that hold all points, as many as asked for; `None` where the limits do not allow that number.
pub(super) fn search(
    problem: &Problem,
    costs: &Costs,
    count: usize,
    effort: Effort,
) -> Option<Vec<Vec<usize>>> {
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
    cuts.truncate(6);
    for (cost, paths) in &mut cuts {
        mend(problem, costs, paths);
        *cost = costs.of_all(paths);
    }
    cuts.sort_by_key(|(cost, _)| *cost);
    let (mut best_cost, mut best) = cuts.into_iter().next()?;
    let mut dice = Dice(0x9e37_79b9_7f4a_7c15);
    let mut at = best.clone();
    let mut at_cost = best_cost;
    for _ in 0..effort.shakes {
        let mut next = at.clone();
        shake(problem, &mut next, &mut dice);
        mend(problem, costs, &mut next);
        let cost = costs.of_all(&next);
        // A little worse is taken now and then, so that one way is not gone for ever.
        if cost <= at_cost || (cost - at_cost) * 200 < at_cost && dice.below(8) == 0 {
            (at, at_cost) = (next, cost);
        }
        if at_cost < best_cost {
            (best, best_cost) = (at.clone(), at_cost);
        }
    }
    Some(best)
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

/// Makes paths shorter by moves of stretches, until none helps.
fn mend(problem: &Problem, costs: &Costs, paths: &mut [Vec<usize>]) {
    loop {
        let mut better = false;
        for one in 0..paths.len() {
            better |= turn(costs, &mut paths[one]);
            for other in 0..paths.len() {
                better |= shift(problem, costs, paths, one, other);
                if one < other {
                    better |= swap(costs, paths, one, other);
                    better |= tails(problem, costs, paths, one, other);
                }
            }
        }
        if !better {
            return;
        }
    }
}

/// The neighbour before or after a place on a path; home beyond its ends.
fn beside(costs: &Costs, path: &[usize], at: usize) -> (usize, usize) {
    let before = at.checked_sub(1).and_then(|at| path.get(at)).copied().unwrap_or(costs.home());
    (before, path.get(at).copied().unwrap_or(costs.home()))
}

/// Turns a stretch of a path around, where that is shorter.
fn turn(costs: &Costs, path: &mut [usize]) -> bool {
    let mut better = false;
    for from in 0..path.len() {
        for to in from + 1..path.len() {
            let (before, _) = beside(costs, path, from);
            let (_, after) = beside(costs, path, to + 1);
            let was = costs.at(before, path[from]) + costs.at(path[to], after);
            if costs.at(before, path[to]) + costs.at(path[from], after) < was {
                path[from..=to].reverse();
                better = true;
            }
        }
    }
    better
}

/// Moves a stretch of up to three points to another place on the same path or another.
fn shift(problem: &Problem, costs: &Costs, paths: &mut [Vec<usize>], one: usize, other: usize) -> bool {
    for length in 1..=3 {
        if one != other
            && (paths[one].len() < problem.least + length || paths[other].len() + length > problem.most)
        {
            return false;
        }
        for from in 0..(paths[one].len() + 1).saturating_sub(length) {
            let to = from + length;
            let stretch: Vec<usize> = paths[one][from..to].to_vec();
            let (before, first) = beside(costs, &paths[one], from);
            let (last, after) = beside(costs, &paths[one], to);
            let gained = costs.at(before, first) + costs.at(last, after) - closed(costs, before, after);
            let mut rest = paths[one].clone();
            rest.drain(from..to);
            let target = if one == other { &rest } else { &paths[other] };
            let spot = (0..=target.len()).find_map(|at| {
                let (before, after) = beside(costs, target, at);
                let open = gained + closed(costs, before, after);
                if costs.at(before, first) + costs.at(last, after) < open {
                    return Some((at, false));
                }
                (costs.at(before, last) + costs.at(first, after) < open).then_some((at, true))
            });
            if let Some((at, turned)) = spot {
                let mut stretch = stretch;
                if turned {
                    stretch.reverse();
                }
                paths[one] = rest;
                paths[other].splice(at..at, stretch);
                return true;
            }
        }
    }
    false
}

/// What a gap costs once it is closed: an empty path costs nothing.
fn closed(costs: &Costs, before: usize, after: usize) -> i64 {
    if before == costs.home() && after == costs.home() { 0 } else { costs.at(before, after) }
}

/// Swaps a point of one path with one of another.
fn swap(costs: &Costs, paths: &mut [Vec<usize>], one: usize, other: usize) -> bool {
    for a in 0..paths[one].len() {
        for b in 0..paths[other].len() {
            let ((before_a, at_a), (_, after_a)) =
                (beside(costs, &paths[one], a), beside(costs, &paths[one], a + 1));
            let ((before_b, at_b), (_, after_b)) =
                (beside(costs, &paths[other], b), beside(costs, &paths[other], b + 1));
            let with = |before, at, after| costs.at(before, at) + costs.at(at, after);
            let was = with(before_a, at_a, after_a) + with(before_b, at_b, after_b);
            if with(before_a, at_b, after_a) + with(before_b, at_a, after_b) < was {
                paths[one][a] = at_b;
                paths[other][b] = at_a;
                return true;
            }
        }
    }
    false
}

/// Exchanges what follows a place on one path with what follows one on another, or with what comes before it, turned.
fn tails(problem: &Problem, costs: &Costs, paths: &mut [Vec<usize>], one: usize, other: usize) -> bool {
    let (long, longer) = (paths[one].len(), paths[other].len());
    let fits = |size: usize| (problem.least.max(1)..=problem.most).contains(&size);
    for a in 0..=long {
        for b in 0..=longer {
            let ((end_a, start_a), (end_b, start_b)) =
                (beside(costs, &paths[one], a), beside(costs, &paths[other], b));
            let was = closed(costs, end_a, start_a) + closed(costs, end_b, start_b);
            let straight = closed(costs, end_a, start_b) + closed(costs, end_b, start_a);
            if straight < was && fits(a + longer - b) && fits(b + long - a) {
                let tail: Vec<usize> = paths[one].drain(a..).collect();
                let mut other_tail: Vec<usize> = paths[other].drain(b..).collect();
                paths[one].append(&mut other_tail);
                paths[other].extend(tail);
                return true;
            }
            let turned = closed(costs, end_a, end_b)
                + closed(costs, start_a, start_b)
                + turned_ends(costs, paths, one, other);
            if turned < was
                && fits(a + b)
                && fits(long - a + longer - b)
                && a > 0
                && b > 0
                && a < long
                && b < longer
            {
                let mut tail: Vec<usize> = paths[one].drain(a..).collect();
                let other_tail: Vec<usize> = paths[other].drain(b..).collect();
                let head = std::mem::take(&mut paths[other]);
                paths[one].extend(head.into_iter().rev());
                tail.reverse();
                tail.extend(other_tail);
                paths[other] = tail;
                return true;
            }
        }
    }
    false
}

/// What it costs more that the last of one path becomes a first, and the first of another a last.
fn turned_ends(costs: &Costs, paths: &[Vec<usize>], one: usize, other: usize) -> i64 {
    let end = |point: Option<&usize>| {
        point.map_or(0, |point| costs.at(*point, costs.home()) - costs.at(costs.home(), *point))
    };
    end(paths[other].first()) - end(paths[one].last())
}

/// Changes an answer at random: stretches of two paths change places, as the limits allow, or one path is put together anew.
fn shake(problem: &Problem, paths: &mut [Vec<usize>], dice: &mut Dice) {
    let one = dice.below(paths.len());
    let other = dice.below(paths.len());
    if one == other {
        let path = &mut paths[one];
        let long = path.len();
        if long < 4 {
            path.reverse();
            return;
        }
        // Two stretches beside one another change places.
        let mut cuts = [dice.below(long), dice.below(long), dice.below(long)];
        cuts.sort_unstable();
        path[cuts[0]..cuts[2]].rotate_left(cuts[1] - cuts[0]);
        return;
    }
    let fits = |size: usize| (problem.least.max(1)..=problem.most).contains(&size);
    let (long, longer) = (paths[one].len(), paths[other].len());
    for _ in 0..8 {
        let (a, b) = (1 + dice.below(long.min(4)), 1 + dice.below(longer.min(4)));
        if !fits(long - a + b) || !fits(longer - b + a) {
            continue;
        }
        let (from_a, from_b) = (dice.below(long - a + 1), dice.below(longer - b + 1));
        let of_a: Vec<usize> = paths[one][from_a..from_a + a].to_vec();
        let of_b: Vec<usize> = paths[other].splice(from_b..from_b + b, of_a).collect();
        paths[one].splice(from_a..from_a + a, of_b);
        return;
    }
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
