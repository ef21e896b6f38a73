//! All paths that could be in a better answer, and the best answer that they make: a path that begins so can be part of one only
//! if it and the cheapest rest stay below what is known.

use super::bound::Bound;
use super::costs::Costs;
use super::question::{FAR, Question};
use std::collections::HashMap;
use std::collections::hash_map::Entry;

/// The better answer if there is one, `Some(None)` if what costs `good` is best; `None` where that is not settled within the limit.
/// `whole` counts an extension lead as more than all length: by it the answers are compared, and two ways over the same points. `good` is
/// the known answer's cost by it.
pub(super) fn exact(
    question: &Question,
    bound: &Bound,
    whole: &Costs,
    good: i64,
    limit: usize,
) -> Option<Option<Vec<Vec<usize>>>> {
    let points = whole.points;
    if points > 64 {
        return None;
    }
    let paths = all_paths(question, bound, whole, limit)?;
    let paid: f64 = bound.prices.points.iter().sum();
    let mut cover = Cover {
        of_lowest: vec![Vec::new(); points],
        bound,
        // A better answer has no more leads than the known one, so that it is shorter by as much as it costs less.
        off: question.good as f64 + question.beyond(&bound.prices) - 1.0 + bound.prices.blur()
            - paid
            - good as f64,
        row: points + 1,
        best: good,
        found: None,
        steps: limit * 10,
    };
    for path in &paths.closed {
        if let Some(list) = cover.of_lowest.get_mut(path.points.trailing_zeros() as usize) {
            list.push(*path);
        }
    }
    for list in &mut cover.of_lowest {
        list.sort_by(|a, b| a.less.total_cmp(&b.less));
    }
    let all = if points == 64 { u64::MAX } else { (1 << points) - 1 };
    cover.go_on(all, question.count, 0.0, 0, &mut Vec::new())?;
    Some(cover.found.map(|chosen| chosen.iter().map(|label| paths.points_of(*label)).collect()))
}

/// A path from home to home.
#[derive(Clone, Copy)]
struct Closed {
    points: u64,
    /// Its cost, and the same less what is paid.
    cost: i64,
    less: f64,
    label: usize,
}

/// A path begun: where it is, its cost, and what it went on from.
struct Label {
    at: u8,
    cost: i64,
    less: f64,
    points: u64,
    from: usize,
}

struct Paths {
    labels: Vec<Label>,
    closed: Vec<Closed>,
}

impl Paths {
    fn points_of(&self, label: usize) -> Vec<usize> {
        let mut points = Vec::new();
        let mut next = self.labels.get(label);
        while let Some(label) = next {
            points.push(usize::from(label.at));
            next = self.labels.get(label.from);
        }
        // From home to home, as it was begun: its two ends may not be alike.
        points.reverse();
        points
    }
}

fn all_paths(question: &Question, bound: &Bound, costs: &Costs, limit: usize) -> Option<Paths> {
    let room = bound.room(question);
    let (points, most, problem) = (costs.points, room.len() - 1, question.problem);
    let price = |point: usize| bound.prices.points.get(point).copied().unwrap_or(0.0);
    let half =
        |from: usize, to: usize| question.weight(from, to, &bound.prices) - (price(from) + price(to)) / 2.0;
    // What a path begun may cost where it is, less what is paid, and still end in one that has room, by the cheapest ends of it.
    let may_cost: Vec<f64> = (0..points * (most + 1))
        .map(|spot| {
            let (at, size) = (spot / (most + 1), spot % (most + 1));
            let sizes = size.max(problem.least.max(1))..=most;
            let left = sizes.filter(|_| size > 0).map(|whole| {
                let end = bound.ended.get(at * (most + 1) + whole - size + 1);
                room[whole] - end.copied().unwrap_or(FAR)
            });
            left.fold(-FAR, f64::max)
        })
        .collect();
    let can_be = |at: usize, size: usize, less: f64| less <= may_cost[at * (most + 1) + size];
    let mut labels: Vec<Label> = Vec::new();
    let mut layer: Vec<usize> = Vec::new();
    for at in 0..points {
        let less = half(costs.home(), at);
        if can_be(at, 1, less) {
            layer.push(labels.len());
            let cost = costs.at(costs.home(), at);
            labels.push(Label { at: at as u8, cost, less, points: 1 << at, from: usize::MAX });
        }
    }
    let mut closed: HashMap<u64, Closed> = HashMap::new();
    for (size, own_room) in room.iter().enumerate().skip(1) {
        let mut next: HashMap<(u64, u8), usize> = HashMap::new();
        for &from in &layer {
            let Some(label) = labels.get(from) else { continue };
            let (at, cost, less, on) = (usize::from(label.at), label.cost, label.less, label.points);
            if size >= problem.least {
                let path = Closed {
                    points: on,
                    cost: cost + costs.at(at, costs.home()),
                    less: less + half(at, costs.home()),
                    label: from,
                };
                if path.less <= *own_room {
                    let there = closed.entry(on).or_insert(path);
                    if path.cost < there.cost {
                        *there = path;
                    }
                }
            }
            if size == most {
                continue;
            }
            for &to in question.next[at].iter().filter(|to| on >> **to & 1 == 0) {
                let less = less + half(at, to);
                if !can_be(to, size + 1, less) {
                    continue;
                }
                let label =
                    Label { at: to as u8, cost: cost + costs.at(at, to), less, points: on | 1 << to, from };
                match next.entry((label.points, label.at)) {
                    Entry::Vacant(free) => {
                        free.insert(labels.len());
                        labels.push(label);
                    }
                    Entry::Occupied(there) => {
                        if let Some(there) =
                            labels.get_mut(*there.get()).filter(|there| label.cost < there.cost)
                        {
                            *there = label;
                        }
                    }
                }
                if labels.len() > limit {
                    return None;
                }
            }
        }
        layer = next.into_values().collect();
        // Whatever order the map has, the same answer.
        layer.sort_unstable();
    }
    let mut closed: Vec<Closed> = closed.into_values().collect();
    closed.sort_by_key(|path| path.points);
    Some(Paths { labels, closed })
}

/// The search for paths that together hold each point once.
struct Cover<'a> {
    /// Paths by their lowest point.
    of_lowest: Vec<Vec<Closed>>,
    bound: &'a Bound,
    /// What is to be added to the best cost for what all paths may cost, less what is paid.
    off: f64,
    row: usize,
    best: i64,
    found: Option<Vec<usize>>,
    steps: usize,
}

impl Cover<'_> {
    fn go_on(
        &mut self,
        left: u64,
        paths: usize,
        less: f64,
        cost: i64,
        chosen: &mut Vec<usize>,
    ) -> Option<()> {
        if left == 0 || paths == 0 {
            if left == 0 && paths == 0 && cost < self.best {
                self.best = cost;
                self.found = Some(chosen.clone());
            }
            return Some(());
        }
        let lowest = left.trailing_zeros() as usize;
        for index in 0..self.of_lowest.get(lowest).map_or(0, Vec::len) {
            let Some(path) = self.of_lowest.get(lowest).and_then(|list| list.get(index)).copied() else {
                break;
            };
            self.steps = self.steps.checked_sub(1)?;
            if path.points & !left != 0 {
                continue;
            }
            let after = left & !path.points;
            let rest = self.bound.rest.get((paths - 1) * self.row + after.count_ones() as usize);
            let least = less + path.less + rest.copied().unwrap_or(f64::INFINITY);
            if least > self.best as f64 + self.off {
                continue;
            }
            chosen.push(path.label);
            self.go_on(after, paths - 1, less + path.less, cost + path.cost, chosen)?;
            chosen.pop();
        }
        Some(())
    }
}
