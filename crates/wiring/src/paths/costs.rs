//! What links and ways home cost, by one weighing of extension leads and length.

use super::{Link, Problem};

/// Links that can't be: dearer than any answer.
pub(super) const NEVER: i64 = 1 << 50;

/// What an answer costs.
#[derive(Clone, Debug)]
pub(super) struct Costs {
    pub(super) points: usize,
    /// Row by row; the last row and column are home.
    of: Vec<i64>,
}

impl Costs {
    /// `lead` is what an extension lead weighs; `free` leaves out every link that takes one.
    pub(super) fn of(problem: &Problem, lead: i64, length: bool, free: bool) -> Self {
        let points = problem.home.len();
        let mut of = vec![NEVER; (points + 1) * (points + 1)];
        for (from, row) in problem.links.iter().enumerate() {
            for (to, link) in row.iter().enumerate() {
                if let Some(link) = link.filter(|link| from != to && !(free && link.leads > 0)) {
                    let way = if length { i64::from(link.length) } else { 0 };
                    of[from * (points + 1) + to] = lead * i64::from(link.leads) + way;
                }
            }
        }
        for (point, way) in problem.home.iter().enumerate() {
            let way = if length { i64::from(*way) } else { 0 };
            of[point * (points + 1) + points] = way;
            of[points * (points + 1) + point] = if problem.both_ends { way } else { 0 };
        }
        Self { points, of }
    }

    pub(super) fn at(&self, from: usize, to: usize) -> i64 {
        self.of[from * (self.points + 1) + to]
    }

    pub(super) fn home(&self) -> usize {
        self.points
    }

    fn of_path(&self, path: &[usize]) -> i64 {
        let (Some(first), Some(last)) = (path.first(), path.last()) else { return 0 };
        let links: i64 = path.iter().zip(path.iter().skip(1)).map(|(a, b)| self.at(*a, *b)).sum();
        links + self.at(self.home(), *first) + self.at(*last, self.home())
    }

    pub(super) fn of_all(&self, paths: &[Vec<usize>]) -> i64 {
        paths.iter().map(|path| self.of_path(path)).sum()
    }
}

impl Problem {
    /// What an extension lead weighs to outweigh all length of any answer.
    pub(super) fn lead_weight(&self) -> i64 {
        let longest = |row: &Vec<Option<Link>>| row.iter().flatten().map(|link| link.length).max();
        let links: i64 = self.links.iter().filter_map(longest).map(i64::from).sum();
        let home: i64 = self.home.iter().map(|way| 2 * i64::from(*way)).sum();
        links + home + 1
    }
}
