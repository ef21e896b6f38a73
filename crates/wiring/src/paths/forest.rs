//! A cheap bound that knows no limits on a path: the links of an answer are a forest, each point has two links or ways home, and points are
//! paid so that in the end each has about two (Held and Karp, 1970; with several paths by Fisher, 1994).

use super::question::{DUST, FAR, Prices, Question, Steps, Taken};

/// What the forest proves.
pub(super) struct Forest {
    /// No answer costs less.
    pub(super) least: i64,
    /// What made it, a point paid once for each visit.
    pub(super) prices: Prices,
}

/// The cheapest forest with as many links as an answer has, at some prices.
struct Grown {
    /// All links that keep the points together, cheapest first, with what they cost; the first `links` are the forest.
    tree: Vec<(f64, usize, usize)>,
    links: usize,
    value: f64,
    taken: Taken,
}

impl Forest {
    /// Bounds a question in so many rounds at most, and leaves out links that no better answer can have.
    pub(super) fn of(question: &mut Question, rounds: u32) -> Self {
        let mut prices = question.first_prices();
        // Here a point is paid once for each of its two links.
        prices.points.iter_mut().for_each(|price| *price /= 2.0);
        let mut best = (f64::NEG_INFINITY, prices.clone());
        let points = prices.points.len();
        let mut steps = Steps::of(points, 6);
        let mut weights = vec![FAR; points * points];
        for _ in 0..rounds.max(1) {
            weigh(question, &prices, &mut weights);
            let grown = grow(question, &weights, &prices);
            let better = grown.value > best.0 + DUST;
            if better {
                best = (grown.value, prices.clone());
            }
            let gap = question.gap(grown.value);
            // What misses by less than one is proved: costs are whole.
            if question.proved(grown.value, &prices) >= question.good || !steps.go_on(better) {
                break;
            }
            if !steps.step(&mut prices, &grown.taken, gap) {
                break;
            }
        }
        let (value, prices) = best;
        let least = question.proved(value, &prices);
        if least < question.good {
            weigh(question, &prices, &mut weights);
            leave_out(question, &weights, &prices, value);
        }
        let points = prices.points.iter().map(|price| 2.0 * price).collect();
        Self { least, prices: Prices { points, ..prices } }
    }
}

/// What links weigh at some prices, row by row.
fn weigh(question: &Question, prices: &Prices, weights: &mut [f64]) {
    weights.fill(FAR);
    for (from, next) in question.next.iter().enumerate() {
        for to in next {
            weights[from * question.costs.points + to] = question.weight(from, *to, prices);
        }
    }
}

fn grow(question: &Question, weights: &[f64], prices: &Prices) -> Grown {
    let points = question.costs.points;
    let paid = &prices.points;
    // Prim's tree (1957); the dearest links left out make the cheapest forest with as many links.
    let mut key = vec![(f64::INFINITY, usize::MAX); points];
    let mut left: Vec<usize> = (1..points).collect();
    let mut tree = Vec::with_capacity(points);
    let mut at = 0;
    while !left.is_empty() {
        let (row, own) = (&weights[at * points..(at + 1) * points], paid[at]);
        let mut nearest = (f64::INFINITY, 0);
        for (index, to) in left.iter().enumerate() {
            let cost = row[*to] - own - paid[*to];
            if cost < key[*to].0 {
                key[*to] = (cost, at);
            }
            if key[*to].0 < nearest.0 {
                nearest = (key[*to].0, index);
            }
        }
        let to = left.swap_remove(nearest.1);
        tree.push((key[to].0, key[to].1, to));
        at = to;
    }
    tree.sort_by(|a, b| a.0.total_cmp(&b.0));
    let links = points.saturating_sub(question.count).min(tree.len());
    let mut grown = Grown {
        tree,
        links,
        value: 2.0 * paid.iter().sum::<f64>() - question.beyond(prices),
        taken: question.nothing(2.0),
    };
    for (cost, from, to) in grown.tree.iter().take(links) {
        grown.value += cost;
        grown.taken.missing[*from] -= 1.0;
        grown.taken.missing[*to] -= 1.0;
        question.take(&mut grown.taken, *from, *to);
    }
    for (cost, at) in ways_home(question, prices) {
        grown.value += cost;
        grown.taken.missing[at] -= 1.0;
        question.take(&mut grown.taken, at, question.costs.home());
    }
    grown
}

/// The cheapest ways home, two for each path; a point has one at most where a path has two points at least.
fn ways_home(question: &Question, prices: &Prices) -> Vec<(f64, usize)> {
    let home = question.costs.home();
    let cheapest = |of: &dyn Fn(usize) -> f64, count: usize| {
        let mut ways: Vec<(f64, usize)> =
            prices.points.iter().enumerate().map(|(at, paid)| (of(at) - paid, at)).collect();
        ways.sort_by(|a, b| a.0.total_cmp(&b.0));
        ways.truncate(count);
        ways
    };
    let last = |at: usize| question.weight(at, home, prices);
    if question.problem.both_ends && question.problem.least >= 2 {
        return cheapest(&last, 2 * question.count);
    }
    let mut ways = cheapest(&|at| question.weight(home, at, prices), question.count);
    ways.extend(cheapest(&last, question.count));
    ways
}

/// Leaves out links that make the cheapest forest with them as dear as what is known: each goes in for the dearest link of the ring that
/// it closes, or of all.
fn leave_out(question: &mut Question, weights: &[f64], prices: &Prices, value: f64) {
    let points = question.costs.points;
    let grown = grow(question, weights, prices);
    let Some(dearest) = grown.links.checked_sub(1).and_then(|last| grown.tree.get(last)) else { return };
    // For each pair of points the dearest link between them: links come in from the cheapest on (Kruskal, 1956).
    let mut between = vec![dearest.0; points * points];
    let mut parts: Vec<Vec<usize>> = (0..points).map(|at| vec![at]).collect();
    let mut part_of: Vec<usize> = (0..points).collect();
    for (cost, from, to) in grown.tree.iter().take(grown.links) {
        let (one, other) = (part_of[*from], part_of[*to]);
        let moved = std::mem::take(&mut parts[other]);
        for b in &moved {
            for a in &parts[one] {
                between[a * points + b] = *cost;
                between[b * points + a] = *cost;
            }
            part_of[*b] = one;
        }
        parts[one].extend(moved);
    }
    let room = question.good as f64 - 1.0 + prices.blur() - value;
    for (from, next) in question.next.iter_mut().enumerate() {
        next.retain(|to| {
            let cost = weights[from * points + to] - prices.points[from] - prices.points[*to];
            cost - between[from * points + to] <= room
        });
    }
}
