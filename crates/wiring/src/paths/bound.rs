//! No answer costs less than this: the limits on each path are kept, but a path may come back to a point that it no longer
//! remembers (ng-routes; Baldacci, Mingozzi and Roberti, 2011), and points are paid so that in the end each is wanted about once.

use super::question::{DUST, FAR, Prices, Question, Steps, Taken};

/// A bound, with the prices of points that make it.
pub(super) struct Bound {
    /// No answer costs less.
    pub(super) least: i64,
    /// What is paid.
    pub(super) prices: Prices,
    /// For each point and number of points, row by row: the least that a path from it home costs less what is paid, the point itself
    /// paid by half. The first column, of no points, is empty.
    pub(super) ended: Vec<f64>,
    /// For each number of paths and number of points, row by row: the least that they cost less what is paid.
    pub(super) rest: Vec<f64>,
}

/// Points that each remembers, itself first, and what is left of a memory on the way to another.
struct Memory {
    kept: usize,
    /// For each point and each place in the list of those that may follow, and each memory at the first: the memory at the second, or
    /// `FORBIDDEN`.
    next: Vec<Vec<u8>>,
}

const FORBIDDEN: u8 = u8::MAX;
/// A memory fits a byte, and one value is for what is forbidden.
const MOST_KEPT: usize = 7;

impl Memory {
    fn of(question: &Question, kept: usize) -> Self {
        let points = question.costs.points;
        let kept = kept.clamp(1, MOST_KEPT).min(points);
        let near: Vec<Vec<usize>> = (0..points)
            .map(|at| {
                let mut others: Vec<usize> = (0..points).filter(|other| *other != at).collect();
                others.sort_by_key(|other| question.costs.at(at, *other));
                std::iter::once(at).chain(others.into_iter().take(kept - 1)).collect()
            })
            .collect();
        let from = |from: usize| {
            let of_link = |to: &usize| {
                // For each point that the second remembers, its place in the memory of the first.
                let places: Vec<Option<usize>> =
                    near[*to].iter().map(|point| near[from].iter().position(|near| near == point)).collect();
                let there = near[from].iter().position(|point| point == to);
                (0..1_usize << kept).map(move |memory| {
                    let has = |place: Option<usize>| place.is_some_and(|bit| memory >> bit & 1 == 1);
                    if has(there) {
                        return FORBIDDEN;
                    }
                    let bits = places.iter().enumerate().skip(1).filter(|(_, place)| has(**place));
                    bits.fold(1_u8, |all, (bit, _)| all | 1 << bit)
                })
            };
            question.next[from].iter().flat_map(of_link).collect()
        };
        Self { kept, next: (0..points).map(from).collect() }
    }
}

/// The best begun paths: cost by number of points, point and memory, and where each came from.
struct Begun {
    cost: Vec<f64>,
    from: Vec<u32>,
}

/// What does not change from round to round.
struct Rounds<'a> {
    question: &'a Question<'a>,
    memory: Memory,
    least: usize,
    most: usize,
    /// States of one number of points.
    layer: usize,
}

impl Bound {
    /// Bounds a question in so many rounds at most, from some prices on; each point remembers so many.
    pub(super) fn of(question: &Question, from: Prices, memory: usize, rounds: u32) -> Self {
        let points = question.costs.points;
        let memory = Memory::of(question, memory);
        let layer = points << memory.kept;
        let (least, most) = (question.problem.least.max(1), question.problem.most.min(points));
        let rules = Rounds { question, memory, least, most, layer };
        let mut prices = from;
        let mut best = Self { least: i64::MIN, prices: prices.clone(), ended: Vec::new(), rest: Vec::new() };
        let (mut value_of_best, mut steps) = (f64::NEG_INFINITY, Steps::of(points, 5));
        let mut begun = Begun { cost: vec![FAR; layer * (most + 1)], from: vec![0; layer * (most + 1)] };
        for _ in 0..rounds.max(1) {
            rules.begin(&prices, false, &mut begun);
            let ends = rules.ends(&prices, &begun);
            let rest = rules.rest(&ends);
            let value = rest[question.count * (points + 1) + points] + prices.points.iter().sum::<f64>()
                - question.beyond(&prices);
            let better = value > value_of_best + DUST;
            if better {
                value_of_best = value;
                best.prices.clone_from(&prices);
                best.rest.clone_from(&rest);
            }
            let gap = question.gap(value);
            if question.proved(value, &prices) >= question.good || !steps.go_on(better) {
                break;
            }
            if !steps.step(&mut prices, &rules.taken(&ends, &rest, &begun), gap) {
                break;
            }
        }
        best.least = question.proved(value_of_best, &best.prices);
        if best.least < question.good {
            rules.begin(&best.prices, true, &mut begun);
            best.ended = rules.flat(&begun);
        }
        best
    }

    /// Leaves out links of which each path with them is too dear for an answer that is better.
    pub(super) fn leave_out(&self, question: &mut Question) {
        if self.ended.is_empty() {
            return;
        }
        let (points, row) = (question.costs.points, question.costs.points + 1);
        let (least, most) = (question.problem.least.max(1), question.problem.most.min(points));
        let room = self.room(question);
        // Begun paths cost what ended ones do where both ends are alike; else nothing is known of them here.
        if !question.problem.both_ends || self.rest.len() < row {
            return;
        }
        let cheapest = |at: usize| &self.ended[at * (most + 1)..(at + 1) * (most + 1)];
        let next = std::mem::take(&mut question.next);
        let stays = |from: usize, to: usize| {
            let link = question.weight(from, to, &self.prices)
                - (self.prices.points[from] + self.prices.points[to]) / 2.0;
            (1..most).any(|before| {
                let begun = cheapest(from)[before] + link;
                (least.max(before + 1)..=most)
                    .any(|whole| begun + cheapest(to)[whole - before] <= room[whole])
            })
        };
        let kept = next
            .into_iter()
            .enumerate()
            .map(|(from, next)| next.into_iter().filter(|to| stays(from, *to)).collect::<Vec<usize>>());
        question.next = kept.collect();
    }

    /// What a path of so many points may cost at most in a better answer, less what is paid for them.
    pub(super) fn room(&self, question: &Question) -> Vec<f64> {
        let points = question.costs.points;
        let paid: f64 = self.prices.points.iter().sum();
        let goal = question.good as f64 + question.beyond(&self.prices) - 1.0 + self.prices.blur() - paid;
        (0..=question.problem.most.min(points))
            .map(|size| {
                let others = self.rest.get((question.count - 1) * (points + 1) + points - size).copied();
                goal - others.unwrap_or(FAR)
            })
            .collect()
    }
}

impl Rounds<'_> {
    fn reduced(&self, prices: &Prices, from: usize, to: usize) -> f64 {
        let price = |point: usize| prices.points.get(point).copied().unwrap_or(0.0);
        self.question.weight(from, to, prices) - (price(from) + price(to)) / 2.0
    }

    /// The cheapest begun paths, or ended ones gone backwards.
    fn begin(&self, prices: &Prices, backwards: bool, begun: &mut Begun) {
        let (points, kept, layer) = (self.question.costs.points, self.memory.kept, self.layer);
        let home = self.question.costs.home();
        begun.cost.fill(FAR);
        let links: Vec<Vec<f64>> = self
            .question
            .next
            .iter()
            .enumerate()
            .map(|(from, next)| next.iter().map(|to| self.reduced(prices, from, *to)).collect())
            .collect();
        for at in 0..points {
            let (from, to) = if backwards { (at, home) } else { (home, at) };
            begun.cost[layer + (at << kept) + 1] = self.reduced(prices, from, to);
        }
        for size in 1..self.most {
            let (done, open) = begun.cost.split_at_mut((size + 1) * layer);
            let (here, there) = (&done[size * layer..], &mut open[..layer]);
            let came = &mut begun.from[(size + 1) * layer..(size + 2) * layer];
            for (from, next) in self.question.next.iter().enumerate() {
                // The point itself is the first of its memory, so that only odd ones come about.
                for remembered in (1..1 << kept).step_by(2) {
                    let state = (from << kept) + remembered;
                    let cost = here[state];
                    if cost >= FAR {
                        continue;
                    }
                    let memories = &self.memory.next[from];
                    for (place, (to, link)) in next.iter().zip(&links[from]).enumerate() {
                        let memory = memories[(place << kept) + remembered];
                        if memory == FORBIDDEN {
                            continue;
                        }
                        let (cost, spot) = (cost + link, (to << kept) + usize::from(memory));
                        if cost < there[spot] {
                            there[spot] = cost;
                            came[spot] = state as u32;
                        }
                    }
                }
            }
        }
    }

    /// For each number of points, the cheapest path home to home and its last state.
    fn ends(&self, prices: &Prices, begun: &Begun) -> Vec<(f64, usize)> {
        let (kept, home) = (self.memory.kept, self.question.costs.home());
        let homes: Vec<f64> =
            (0..self.question.costs.points).map(|at| self.reduced(prices, at, home)).collect();
        (0..=self.most)
            .map(|size| {
                let states = begun.cost[size * self.layer..(size + 1) * self.layer].iter().enumerate();
                let mut least = (FAR, 0);
                for (state, cost) in states {
                    let whole = cost + homes[state >> kept];
                    if whole < least.0 {
                        least = (whole, state);
                    }
                }
                if size == 0 { (FAR, 0) } else { least }
            })
            .collect()
    }

    /// The least that a number of paths with a number of points among them costs, row by row.
    fn rest(&self, ends: &[(f64, usize)]) -> Vec<f64> {
        let (points, row) = (self.question.costs.points, self.question.costs.points + 1);
        let mut rest = vec![FAR; (self.question.count + 1) * row];
        rest[0] = 0.0;
        for paths in 1..=self.question.count {
            for all in 0..=points {
                for (size, (cost, _)) in ends.iter().enumerate().take(all + 1).skip(self.least) {
                    let sum = rest[(paths - 1) * row + all - size] + cost;
                    if sum < rest[paths * row + all] {
                        rest[paths * row + all] = sum;
                    }
                }
            }
        }
        rest
    }

    /// What the paths that make the bound have.
    fn taken(&self, ends: &[(f64, usize)], rest: &[f64], begun: &Begun) -> Taken {
        let (points, kept, home) = (self.question.costs.points, self.memory.kept, self.question.costs.home());
        let row = points + 1;
        let mut taken = self.question.nothing(1.0);
        let mut all = points;
        for paths in (1..=self.question.count).rev() {
            let sizes = self.least..=self.most.min(all);
            let of = |size: usize| rest[(paths - 1) * row + all - size] + ends[size].0;
            let Some(size) = sizes.min_by(|a, b| of(*a).total_cmp(&of(*b))) else { break };
            let (mut state, mut after) = (ends[size].1, home);
            for at in (1..=size).rev() {
                let point = state >> kept;
                taken.missing[point] -= 1.0;
                self.question.take(&mut taken, point, after);
                (state, after) = (begun.from[at * self.layer + state] as usize, point);
            }
            self.question.take(&mut taken, home, after);
            all -= size;
        }
        taken
    }

    /// Begun paths, whatever they remember.
    fn flat(&self, begun: &Begun) -> Vec<f64> {
        let mut flat = vec![FAR; self.question.costs.points * (self.most + 1)];
        for (state, cost) in begun.cost.iter().enumerate() {
            let (size, point) = (state / self.layer, (state % self.layer) >> self.memory.kept);
            let spot = &mut flat[point * (self.most + 1) + size];
            *spot = spot.min(*cost);
        }
        flat
    }
}
