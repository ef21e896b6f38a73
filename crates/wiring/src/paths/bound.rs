//! No answer costs less than this: the limits on each path are kept, but a path may come back to a point that it no longer
//! remembers, and points are paid so that in the end each is wanted about once (Lagrange; subgradient steps by Polyak, 1969).

use super::{Costs, Effort, NEVER, Problem};

/// Costs within this are one cost: far below the unit in which they are whole.
const DUST: f64 = 1e-4;
const FAR: f64 = 1e17;

/// A bound, with the prices of points that make it.
pub(super) struct Bound {
    /// No answer costs less.
    pub(super) least: i64,
    /// What is paid for each point.
    pub(super) prices: Vec<f64>,
    /// For each point and number of points, row by row: the least that a path from it home costs less what is paid, the point itself
    /// paid by half. The first column, of no points, is empty.
    pub(super) ended: Vec<f64>,
    /// For each number of paths and number of points, row by row: the least that they cost less what is paid.
    pub(super) rest: Vec<f64>,
}

/// Points that each remembers, itself first, and what is left of a memory on the way to another.
struct Memory {
    kept: usize,
    /// For each pair of points and each memory at the first: the memory at the second, or `FORBIDDEN`.
    next: Vec<u8>,
}

const FORBIDDEN: u8 = u8::MAX;

impl Memory {
    fn of(costs: &Costs, kept: usize) -> Self {
        let points = costs.points;
        // The table grows with the square of the points: of many, each remembers few.
        let kept = kept.clamp(1, if points > 80 { 3 } else { 7 }).min(points);
        let near: Vec<Vec<usize>> = (0..points)
            .map(|at| {
                let mut others: Vec<usize> = (0..points).filter(|other| *other != at).collect();
                others.sort_by_key(|other| costs.at(at, *other));
                std::iter::once(at).chain(others.into_iter().take(kept - 1)).collect()
            })
            .collect();
        let mut next = vec![FORBIDDEN; (points * points) << kept];
        for from in 0..points {
            for to in (0..points).filter(|to| costs.at(from, *to) < NEVER) {
                for memory in 0..1_usize << kept {
                    let has = |point: usize| {
                        near[from]
                            .iter()
                            .position(|near| *near == point)
                            .is_some_and(|bit| memory >> bit & 1 == 1)
                    };
                    if !has(to) {
                        let bits = near[to].iter().enumerate();
                        let kept_bits = bits.filter(|(bit, point)| *bit == 0 || has(**point));
                        let there = kept_bits.fold(0_u8, |all, (bit, _)| all | 1 << bit);
                        next[((from * points + to) << kept) + memory] = there;
                    }
                }
            }
        }
        Self { kept, next }
    }
}

/// The best begun paths: cost by point, number of points and memory, and where each came from.
struct Begun {
    cost: Vec<f64>,
    from: Vec<u32>,
}

impl Bound {
    /// Bounds answers with so many paths; `good` is what one costs that is known.
    pub(super) fn of(problem: &Problem, costs: &Costs, count: usize, good: i64, effort: Effort) -> Self {
        let (points, most) = (costs.points, problem.most.min(costs.points));
        let memory = Memory::of(costs, effort.memory);
        let mut prices: Vec<f64> = (0..points)
            .map(|at| {
                let mut near: Vec<i64> =
                    (0..points).map(|to| costs.at(at, to)).filter(|c| *c < NEVER).collect();
                near.sort_unstable();
                near.iter().take(2).sum::<i64>() as f64 / 2.0
            })
            .collect();
        let mut best = Self { least: i64::MIN, prices: prices.clone(), ended: Vec::new(), rest: Vec::new() };
        let (mut best_value, mut pace, mut since) = (f64::NEG_INFINITY, 1.5, 0);
        for _ in 0..effort.rounds.max(1) {
            let begun = begin(costs, most, &prices, &memory);
            let ends = ends(costs, most, &prices, &begun, &memory);
            let rest = rest(&ends, problem.least.max(1), count, points);
            let value = rest[count * (points + 1) + points] + prices.iter().sum::<f64>();
            if value > best_value + DUST {
                best_value = value;
                best.prices.clone_from(&prices);
                best.rest.clone_from(&rest);
                since = 0;
            } else {
                since += 1;
                if since >= 8 {
                    (pace, since) = (pace * 0.6, 0);
                }
            }
            let gap = good as f64 - value;
            if gap < 1.0 - DUST || value >= FAR || pace < 1e-4 {
                break;
            }
            let visits = visits(&ends, &rest, &begun, problem.least.max(1), count, points, most, memory.kept);
            let off: Vec<f64> = visits.iter().map(|count| 1.0 - f64::from(*count)).collect();
            let square: f64 = off.iter().map(|off| off * off).sum();
            if square == 0.0 {
                break;
            }
            let step = pace * gap.max(1.0) / square;
            prices.iter_mut().zip(&off).for_each(|(price, off)| *price += step * off);
        }
        let ended = begin(&costs.turned(), most, &best.prices, &memory);
        best.ended = flat(&ended, points, most, memory.kept);
        best.least = if best_value >= FAR { good } else { ((best_value - DUST).ceil() as i64).min(good) };
        best
    }
}

fn reduced(costs: &Costs, prices: &[f64], from: usize, to: usize) -> f64 {
    let price = |point: usize| prices.get(point).copied().unwrap_or(0.0);
    let cost = costs.at(from, to);
    if cost >= NEVER { FAR } else { cost as f64 - (price(from) + price(to)) / 2.0 }
}

fn begin(costs: &Costs, most: usize, prices: &[f64], memory: &Memory) -> Begun {
    let (points, kept) = (costs.points, memory.kept);
    let layer = points << kept;
    let mut begun = Begun { cost: vec![FAR; layer * (most + 1)], from: vec![0; layer * (most + 1)] };
    let links: Vec<f64> = (0..points)
        .flat_map(|from| (0..points).map(move |to| (from, to)))
        .map(|(from, to)| reduced(costs, prices, from, to))
        .collect();
    for at in 0..points {
        begun.cost[layer + (at << kept) + 1] = reduced(costs, prices, costs.home(), at);
    }
    for size in 1..most {
        let (here, there) = (size * layer, (size + 1) * layer);
        for from in 0..points {
            // The point itself is the first of its memory, so that only odd ones come about.
            for remembered in (1..1 << kept).step_by(2) {
                let state = (from << kept) + remembered;
                let cost = begun.cost[here + state];
                if cost >= FAR {
                    continue;
                }
                for to in 0..points {
                    let next = memory.next[((from * points + to) << kept) + remembered];
                    if next == FORBIDDEN {
                        continue;
                    }
                    let (cost, spot) =
                        (cost + links[from * points + to], there + (to << kept) + usize::from(next));
                    if cost < begun.cost[spot] {
                        begun.cost[spot] = cost;
                        begun.from[spot] = state as u32;
                    }
                }
            }
        }
    }
    begun
}

/// For each number of points, the cheapest path home to home and its last state.
fn ends(costs: &Costs, most: usize, prices: &[f64], begun: &Begun, memory: &Memory) -> Vec<(f64, usize)> {
    let layer = costs.points << memory.kept;
    (0..=most)
        .map(|size| {
            let of = |state: usize| {
                let home = reduced(costs, prices, state >> memory.kept, costs.home());
                (begun.cost[size * layer + state] + home, state)
            };
            let least = (0..layer).map(of).min_by(|a, b| a.0.total_cmp(&b.0));
            least.filter(|_| size > 0).unwrap_or((FAR, 0))
        })
        .collect()
}

/// The least that a number of paths with a number of points among them costs, row by row.
fn rest(ends: &[(f64, usize)], least: usize, count: usize, points: usize) -> Vec<f64> {
    let row = points + 1;
    let mut rest = vec![FAR; (count + 1) * row];
    rest[0] = 0.0;
    for paths in 1..=count {
        for all in 0..=points {
            for (size, (cost, _)) in ends.iter().enumerate().take(all + 1).skip(least) {
                let sum = rest[(paths - 1) * row + all - size] + cost;
                if sum < rest[paths * row + all] {
                    rest[paths * row + all] = sum;
                }
            }
        }
    }
    rest
}

/// How often each point is visited by the paths that make the bound.
#[expect(clippy::too_many_arguments, reason = "the sizes of the tables go with them")]
fn visits(
    ends: &[(f64, usize)],
    rest: &[f64],
    begun: &Begun,
    least: usize,
    count: usize,
    points: usize,
    most: usize,
    kept: usize,
) -> Vec<u32> {
    let (row, layer) = (points + 1, points << kept);
    let mut visits = vec![0_u32; points];
    let mut all = points;
    for paths in (1..=count).rev() {
        let sizes = least..=most.min(all);
        let of = |size: usize| rest[(paths - 1) * row + all - size] + ends[size].0;
        let Some(size) = sizes.min_by(|a, b| of(*a).total_cmp(&of(*b))) else { break };
        let mut state = ends[size].1;
        for at in (1..=size).rev() {
            visits[state >> kept] += 1;
            state = begun.from[at * layer + state] as usize;
        }
        all -= size;
    }
    visits
}

/// Begun paths, whatever they remember.
fn flat(begun: &Begun, points: usize, most: usize, kept: usize) -> Vec<f64> {
    let layer = points << kept;
    let mut flat = vec![FAR; points * (most + 1)];
    for (state, cost) in begun.cost.iter().enumerate() {
        let (size, point) = (state / layer, (state % layer) >> kept);
        let spot = &mut flat[point * (most + 1) + size];
        *spot = spot.min(*cost);
    }
    flat
}
