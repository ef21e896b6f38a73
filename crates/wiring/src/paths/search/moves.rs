//! Moves that make paths shorter, each by bringing two near points beside one another.

use super::super::Problem;
use super::super::costs::{Costs, NEVER};

/// Each point looks at so many near ones.
const NEAR: usize = 8;
/// Stretches of up to so many points are moved whole.
const STRETCH: usize = 3;

/// Paths, and where each point stands on them.
pub(super) struct Standing<'a> {
    pub(super) costs: &'a Costs,
    pub(super) paths: Vec<Vec<usize>>,
    /// For each point its path and its place there.
    pub(super) spot: Vec<(usize, usize)>,
    /// For each point its near ones.
    pub(super) near: Vec<Vec<usize>>,
    least: usize,
    most: usize,
}

/// One move. Places are those before it.
#[derive(Clone, Copy)]
enum Move {
    /// A stretch of a path, from one place to another, is turned around.
    Turn { path: usize, from: usize, to: usize },
    /// What follows a place on one path changes places with what follows one on another; `turned`: with what stands before it, turned.
    Tails { one: usize, a: usize, other: usize, b: usize, turned: bool },
    /// A stretch goes before a place of what is left, there or on another path.
    Shift { path: usize, from: usize, size: usize, to: usize, before: usize, turned: bool },
    /// Two points change places.
    Swap { a: usize, b: usize },
}

impl<'a> Standing<'a> {
    pub(super) fn of(problem: &Problem, costs: &'a Costs, paths: &[Vec<usize>]) -> Self {
        let near = |at: usize| {
            let mut others: Vec<usize> =
                (0..costs.points).filter(|to| *to != at && costs.at(at, *to) < NEVER).collect();
            others.sort_by_key(|to| costs.at(at, *to));
            others.truncate(NEAR);
            others
        };
        let mut standing = Self {
            costs,
            paths: Vec::new(),
            spot: vec![(0, 0); costs.points],
            near: (0..costs.points).map(near).collect(),
            least: problem.least.max(1),
            most: problem.most,
        };
        standing.put(paths);
        standing
    }

    /// Takes other paths.
    pub(super) fn put(&mut self, paths: &[Vec<usize>]) {
        paths.clone_into(&mut self.paths);
        (0..paths.len()).for_each(|path| self.renumber(path));
    }

    /// Notes where the points of a path stand.
    pub(super) fn renumber(&mut self, path: usize) {
        for (at, point) in self.paths[path].iter().enumerate() {
            self.spot[*point] = (path, at);
        }
    }

    pub(super) fn fits(&self, size: usize) -> bool {
        (self.least..=self.most).contains(&size)
    }

    /// Makes moves from some points on, until none helps.
    pub(super) fn mend(&mut self, from: Vec<usize>) {
        let mut asked = vec![false; self.costs.points];
        from.iter().for_each(|point| asked[*point] = true);
        let mut queue = from;
        while let Some(at) = queue.pop() {
            asked[at] = false;
            while let Some(best) = self.best(at) {
                for point in self.make(best) {
                    if !asked[point] {
                        asked[point] = true;
                        queue.push(point);
                    }
                }
            }
        }
    }

    /// The point at a place of a path; home beyond its ends. Places count from one here, so that the first has one before it.
    fn at(&self, path: usize, from_one: usize) -> usize {
        let point = from_one.checked_sub(1).and_then(|at| self.paths[path].get(at));
        point.copied().unwrap_or(self.costs.home())
    }

    fn link(&self, from: usize, to: usize) -> i64 {
        let home = self.costs.home();
        if from == home && to == home { 0 } else { self.costs.at(from, to) }
    }

    /// The move that gains most of those that bring a point beside one of its near ones.
    fn best(&self, a: usize) -> Option<Move> {
        let mut best: (i64, Option<Move>) = (0, None);
        let mut take = |cost: i64, what: Move| {
            if cost < best.0 {
                best = (cost, Some(what));
            }
        };
        let (one, i) = self.spot[a];
        // Of the two links that a move begins with, one at least gets shorter (Lin and Kernighan, 1973).
        let dearest = self.link(self.at(one, i), a).max(self.link(a, self.at(one, i + 2)));
        for &b in self.near[a].iter().take_while(|b| self.costs.at(a, **b) < dearest) {
            let (other, j) = self.spot[b];
            if one == other {
                self.turns(one, i.min(j), i.max(j), &mut take);
            } else {
                self.tails((one, i), (other, j), &mut take);
            }
            self.shifts(a, b, &mut take);
            self.swaps(a, b, &mut take);
        }
        best.1
    }

    /// Turns that bring the points at two places of one path beside one another.
    fn turns(&self, path: usize, i: usize, j: usize, take: &mut impl FnMut(i64, Move)) {
        for (from, to) in [(i + 1, j), (i, j.wrapping_sub(1))] {
            if to >= self.paths[path].len() || from >= to {
                continue;
            }
            let (before, after) = (self.at(path, from), self.at(path, to + 2));
            let (first, last) = (self.at(path, from + 1), self.at(path, to + 1));
            let was = self.link(before, first) + self.link(last, after);
            take(self.link(before, last) + self.link(first, after) - was, Move::Turn { path, from, to });
        }
    }

    /// Exchanges of tails that bring a point of one path beside one of another.
    fn tails(&self, (one, i): (usize, usize), (other, j): (usize, usize), take: &mut impl FnMut(i64, Move)) {
        let (long, longer) = (self.paths[one].len(), self.paths[other].len());
        // Cut between places: `a` points of the one stand before the cut, `b` of the other.
        for (a, b) in [(i + 1, j), (i, j + 1)] {
            if self.fits(a + longer - b) && self.fits(b + long - a) {
                let (end_a, start_a) = (self.at(one, a), self.at(one, a + 1));
                let (end_b, start_b) = (self.at(other, b), self.at(other, b + 1));
                let was = self.link(end_a, start_a) + self.link(end_b, start_b);
                let cost = self.link(end_a, start_b) + self.link(end_b, start_a) - was;
                take(cost, Move::Tails { one, a, other, b, turned: false });
            }
        }
        for (a, b) in [(i + 1, j + 1), (i, j)] {
            if a > 0
                && b > 0
                && a < long
                && b < longer
                && self.fits(a + b)
                && self.fits(long + longer - a - b)
            {
                let (end_a, start_a) = (self.at(one, a), self.at(one, a + 1));
                let (end_b, start_b) = (self.at(other, b), self.at(other, b + 1));
                let was = self.link(end_a, start_a) + self.link(end_b, start_b);
                // The first of the other becomes a last, the last of the one a first.
                let (first, last) = (self.at(other, 1), self.at(one, long));
                let home = self.costs.home();
                let ends = self.link(first, home) - self.link(home, first) + self.link(home, last)
                    - self.link(last, home);
                let cost = self.link(end_a, end_b) + self.link(start_a, start_b) + ends - was;
                take(cost, Move::Tails { one, a, other, b, turned: true });
            }
        }
    }

    /// Stretches that end at one point, moved beside another.
    fn shifts(&self, a: usize, b: usize, take: &mut impl FnMut(i64, Move)) {
        let ((path, i), (to, j)) = (self.spot[a], self.spot[b]);
        let long = self.paths[path].len();
        for size in 1..=STRETCH.min(long) {
            if path != to && (long < self.least + size || self.paths[to].len() + size > self.most) {
                break;
            }
            for from in [i, (i + 1).wrapping_sub(size)] {
                if from > i || from + size > long || path == to && (from..from + size).contains(&j) {
                    continue;
                }
                let (before, after) = (self.at(path, from), self.at(path, from + size + 1));
                let (first, last) = (self.at(path, from + 1), self.at(path, from + size));
                let gained = self.link(before, first) + self.link(last, after) - self.link(before, after);
                // Into the gap before or behind the other point, its end at that point.
                for gap in [j, j + 1] {
                    if path == to && (from..=from + size).contains(&gap) {
                        continue;
                    }
                    let (left, right) = (self.at(to, gap), self.at(to, gap + 1));
                    let turned = if gap == j { last != a } else { first != a };
                    let (head, tail) = if turned { (last, first) } else { (first, last) };
                    let cost =
                        self.link(left, head) + self.link(tail, right) - self.link(left, right) - gained;
                    // Places of what is left once the stretch is out.
                    let before = if path == to && gap > from { gap - size } else { gap };
                    take(cost, Move::Shift { path, from, size, to, before, turned });
                }
            }
        }
    }

    /// Swaps that put a point in the place of one beside another.
    fn swaps(&self, a: usize, b: usize, take: &mut impl FnMut(i64, Move)) {
        let ((one, i), (other, j)) = (self.spot[a], self.spot[b]);
        for place in [j.wrapping_sub(1), j + 1] {
            // Places beside one another or around one point are other moves'.
            if place >= self.paths[other].len() || one == other && i.abs_diff(place) <= 1 {
                continue;
            }
            let point = self.paths[other][place];
            let (before_a, after_a) = (self.at(one, i), self.at(one, i + 2));
            let (before, after) = (self.at(other, place), self.at(other, place + 2));
            let with = |before, at, after| self.link(before, at) + self.link(at, after);
            let was = with(before_a, a, after_a) + with(before, point, after);
            let cost = with(before_a, point, after_a) + with(before, a, after) - was;
            take(cost, Move::Swap { a, b: point });
        }
    }

    /// Makes a move; gives the points whose links changed, and some beside them.
    fn make(&mut self, what: Move) -> Vec<usize> {
        let (mut touched, paths) = match what {
            Move::Turn { path, from, to } => {
                self.paths[path][from..=to].reverse();
                let ends = [from, from + 1, to + 1, to + 2].map(|at| self.at(path, at));
                (ends.to_vec(), [path, path])
            }
            Move::Tails { one, a, other, b, turned } => {
                let cut = [(one, a), (one, a + 1), (other, b), (other, b + 1)];
                let mut ends: Vec<usize> = cut.iter().map(|(path, at)| self.at(*path, *at)).collect();
                let mut tail: Vec<usize> = self.paths[one].drain(a..).collect();
                let other_tail: Vec<usize> = self.paths[other].drain(b..).collect();
                if turned {
                    ends.extend(self.paths[other].first().copied().into_iter().chain(tail.last().copied()));
                    let head = std::mem::take(&mut self.paths[other]);
                    self.paths[one].extend(head.into_iter().rev());
                    tail.reverse();
                    tail.extend(other_tail);
                    self.paths[other] = tail;
                } else {
                    self.paths[one].extend(other_tail);
                    self.paths[other].extend(tail);
                }
                (ends, [one, other])
            }
            Move::Shift { path, from, size, to, before, turned } => {
                let mut ends = vec![self.at(path, from), self.at(path, from + size + 1)];
                let mut stretch: Vec<usize> = self.paths[path].drain(from..from + size).collect();
                ends.extend([self.at(to, before), self.at(to, before + 1)]);
                if turned {
                    stretch.reverse();
                }
                ends.extend(&stretch);
                self.paths[to].splice(before..before, stretch);
                (ends, [path, to])
            }
            Move::Swap { a, b } => {
                let (of_a, of_b) = (self.spot[a], self.spot[b]);
                let around = [of_a, of_b].map(|(path, at)| [self.at(path, at), self.at(path, at + 2)]);
                self.paths[of_a.0][of_a.1] = b;
                self.paths[of_b.0][of_b.1] = a;
                let mut ends = around.concat();
                ends.extend([a, b]);
                (ends, [of_a.0, of_b.0])
            }
        };
        paths.into_iter().for_each(|path| self.renumber(path));
        touched.retain(|point| *point != self.costs.home());
        touched
    }
}
