//! The least weight on cliques such that every position lies in a weight of 1: no layout has more modules than that,
//! since it takes one position of each clique at most, or as many as the clique says. Found by turns: positions that lie in too little become points
//! of a linear programme, and cliques that hold too much of its points become cliques of it.

use super::clique::Clique;
use super::coverage::{Hole, coverage};
use super::field::Field;
use super::master::Master;
use super::separate;

/// So many positions or cliques are added in one turn at most.
const MOST_NEW: usize = 40;

/// The search ends after so many turns that lower nothing.
const MOST_IDLE: usize = 12;

/// From so many numbers in the programme on, what it has no use for is forgotten.
const MOST_SIZE: usize = 150_000;

pub(super) struct Cover<'a> {
    field: &'a Field,
    cliques: Vec<Clique>,
    points: Vec<Hole>,
    master: Master,
}

/// What a cover found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Weighed {
    /// No layout has more modules than this.
    pub(super) weight: f64,
    /// Whether no cover with these kinds of cliques weighs less, as far as the programme can tell.
    pub(super) least: bool,
    pub(super) steps: usize,
}

impl<'a> Cover<'a> {
    pub(super) fn new(field: &'a Field, seeds: Vec<Clique>) -> Self {
        let mut cover = Self { field, cliques: Vec::new(), points: Vec::new(), master: Master::new() };
        for clique in seeds {
            cover.add_clique(clique);
        }
        cover
    }

    fn add_clique(&mut self, clique: Clique) {
        let holds = self.points.iter().enumerate().filter(|(_, p)| clique.has(p.kind, p.at));
        self.master.add_clique(holds.map(|(i, _)| i).collect::<Vec<_>>().into_iter(), clique.most);
        self.cliques.push(clique);
    }

    fn add_point(&mut self, point: Hole) {
        let of: Vec<usize> =
            (0..self.cliques.len()).filter(|&i| self.cliques[i].has(point.kind, point.at)).collect();
        self.master.add_point(of.into_iter());
        self.points.push(point);
    }

    fn forget(&mut self) {
        let (points, cliques) = self.master.forget();
        let mut kept = points.into_iter();
        self.points.retain(|_| kept.next() == Some(true));
        let mut kept = cliques.into_iter();
        self.cliques.retain(|_| kept.next() == Some(true));
    }

    /// Lowers the weight until it is below `enough`, or can't be lowered, or so many steps were taken.
    pub(super) fn lower(&mut self, enough: f64, most_steps: usize, stop: &dyn Fn() -> bool) -> Weighed {
        let mut best = Weighed { weight: f64::INFINITY, least: false, steps: 0 };
        let (mut lowest, mut idle) = (f64::INFINITY, 0);
        while idle < MOST_IDLE {
            // Positions until all are covered, or rounding lets the programme think so.
            let mut pivots = usize::MAX;
            loop {
                let solved = self.master.solve(most_steps);
                let weights = self.master.cliques();
                let used: Vec<(&Clique, f64)> = self
                    .cliques
                    .iter()
                    .zip(&weights)
                    .map(|(c, w)| (c, *w))
                    .filter(|(_, w)| *w > 1e-12)
                    .collect();
                let total: f64 = used.iter().map(|(clique, w)| w * clique.most as f64).sum();
                let (least, mut holes) = coverage(self.field, &used);
                if least > 0.0 {
                    best.weight = best.weight.min(total / least.min(1.0));
                }
                self.master.steps += used.len() * used.len() * 16 + 20_000;
                best.steps = self.master.steps;
                if best.weight < enough || !solved || stop() {
                    return best;
                }
                if holes.is_empty() || self.master.pivots == pivots {
                    break;
                }
                pivots = self.master.pivots;
                holes.sort_by(|p, q| {
                    p.weight.total_cmp(&q.weight).then(q.bounds.area().total_cmp(&p.bounds.area()))
                });
                holes.truncate(MOST_NEW);
                for hole in holes {
                    self.add_point(hole);
                }
            }
            if self.master.size() > MOST_SIZE {
                self.forget();
            }
            let weighed: Vec<(&Hole, f64)> = self
                .master
                .points()
                .into_iter()
                .filter_map(|(i, w)| Some((self.points.get(i)?, w)))
                .collect();
            let mut found = separate::boxes(self.field, &weighed);
            if found.is_empty() && self.field.lean > 0.0 {
                found = separate::leaning(self.field, &weighed);
            }
            if found.is_empty() {
                best.least = true;
                return best;
            }
            self.master.steps += weighed.len().pow(3) * 4;
            for clique in found.into_iter().take(MOST_NEW) {
                self.add_clique(clique);
            }
            idle += 1;
            if best.weight < lowest - 0.02 {
                (lowest, idle) = (best.weight, 0);
            }
        }
        best
    }
}
