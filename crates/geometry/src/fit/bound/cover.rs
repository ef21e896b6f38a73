//! The minimum weight on cliques such that every position has a total weight of 1: no layout has more modules than
//! that, since it has at most one position of each clique, or as many as the clique says. Found by alternating:
//! positions with too little weight become points of a linear programme, and cliques that hold too much of its points
//! become cliques of it.

use super::clique::{Clique, FAR};
use super::coverage::{Hole, coverage};
use super::field::Field;
use super::master::Master;
use super::parts::parts;
use super::separate;
use crate::Rect;
use glam::DVec2;

/// The maximum number of positions or cliques to add in one turn.
const MOST_NEW: usize = 40;

/// The search ends after this many turns without improvement.
const MOST_IDLE: usize = 12;

/// A weight must be this much below a number to count as below, before all positions are tested.
const GOAL: f64 = 1e-3;

/// When the programme has this many numbers, unused points and cliques are dropped.
const MOST_SIZE: usize = 150_000;

/// Parts of the face that are tested in one turn, and the steps for each, as a fraction of all.
const MOST_PARTS: usize = 10;
const SHARE_OF_A_PART: usize = 20;

pub(super) struct Cover<'a> {
    field: &'a Field,
    /// What to cover: all positions, or those of a part.
    within: Rect,
    is_part: bool,
    /// Parts that were tested without success.
    vain: Vec<Rect>,
    cliques: Vec<Clique>,
    points: Vec<Hole>,
    master: Master,
}

/// The result of a cover.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Weighed {
    /// Upper bound on the modules of any layout.
    pub(super) weight: f64,
    /// Whether no cover with these kinds of cliques has less weight, as far as the programme can tell.
    pub(super) least: bool,
    pub(super) steps: usize,
}

impl<'a> Cover<'a> {
    pub(super) fn new(field: &'a Field, seeds: Vec<Clique>) -> Self {
        Self::of(field, Rect { min: DVec2::splat(-FAR), max: DVec2::splat(FAR) }, false, seeds)
    }

    fn of(field: &'a Field, within: Rect, is_part: bool, seeds: Vec<Clique>) -> Self {
        let (cliques, points, vain, master) = (Vec::new(), Vec::new(), Vec::new(), Master::new());
        let mut cover = Self { field, within, is_part, vain, cliques, points, master };
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

    /// Lowers the weight until it is below `enough`, or can't be lowered, or the steps are used up.
    pub(super) fn lower(&mut self, enough: f64, most_steps: usize, stop: &dyn Fn() -> bool) -> Weighed {
        let mut best = Weighed { weight: f64::INFINITY, least: false, steps: 0 };
        let (mut lowest, mut idle) = (f64::INFINITY, 0);
        while idle < MOST_IDLE {
            // Add positions until all are covered, or the programme considers them covered because of rounding.
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
                let (least, mut holes) = coverage(self.field, &self.within, &used);
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
            self.master.steps += weighed.len().pow(3) * 4;
            if found.is_empty() && !self.is_part {
                let places: Vec<(DVec2, f64)> = weighed.iter().map(|(hole, of)| (hole.at, *of)).collect();
                found = self.of_parts(&places, most_steps, stop);
            }
            if found.is_empty() {
                best.least = true;
                return best;
            }
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

    /// Whether some weights add up to less than `enough`, as far as the steps allow. The programme is evaluated before
    /// all positions are: while its own points hold as much, only cliques can help.
    pub(super) fn is_below(&mut self, enough: f64, most_steps: usize, stop: &dyn Fn() -> bool) -> bool {
        loop {
            let before = self.master.pivots;
            if !self.master.solve(most_steps) || stop() {
                return false;
            }
            let weights = self.master.cliques();
            let all = self.cliques.iter().zip(&weights).map(|(clique, weight)| (clique, *weight));
            let used: Vec<(&Clique, f64)> = all.filter(|(_, weight)| *weight > 1e-12).collect();
            let total: f64 = used.iter().map(|(clique, weight)| weight * clique.most as f64).sum();
            if total >= enough - GOAL {
                if self.master.size() > MOST_SIZE {
                    self.forget();
                }
                let found = self.fuller(most_steps, stop);
                if found.is_empty() {
                    return false;
                }
                for clique in found {
                    self.add_clique(clique);
                }
                continue;
            }
            let (least, mut holes) = coverage(self.field, &self.within, &used);
            self.master.steps += used.len() * used.len() * 16 + 20_000;
            if least > 0.0 && total / least.min(1.0) < enough {
                return true;
            }
            // Because of rounding the programme considers everything covered.
            if holes.is_empty() || self.master.pivots == before && !self.points.is_empty() {
                return false;
            }
            holes.sort_by(|p, q| {
                p.weight.total_cmp(&q.weight).then(q.bounds.area().total_cmp(&p.bounds.area()))
            });
            for hole in holes.into_iter().take(MOST_NEW) {
                self.add_point(hole);
            }
        }
    }

    /// Cliques that hold more than they can in the programme so far.
    fn fuller(&mut self, most_steps: usize, stop: &dyn Fn() -> bool) -> Vec<Clique> {
        let points = self.master.points().into_iter();
        let weighed: Vec<(&Hole, f64)> = points.filter_map(|(i, w)| Some((self.points.get(i)?, w))).collect();
        let mut found = separate::boxes(self.field, &weighed);
        found.truncate(MOST_NEW / 2);
        if self.field.lean > 0.0 {
            found.extend(separate::leaning(self.field, &weighed).into_iter().take(MOST_NEW / 2));
        }
        self.master.steps += weighed.len().pow(3) * 4;
        if found.is_empty() && !self.is_part {
            found = self.of_parts(&self.places(), most_steps, stop);
        }
        found
    }

    /// The positions with weight in the programme.
    pub(super) fn places(&self) -> Vec<(DVec2, f64)> {
        let points = self.master.points().into_iter();
        points.filter_map(|(i, weight)| Some((self.points.get(i)?.at, weight))).collect()
    }

    /// The cliques with weight in it.
    pub(super) fn used(&self) -> Vec<Clique> {
        let weighed = self.cliques.iter().zip(self.master.cliques());
        weighed.filter(|(_, weight)| *weight > 1e-9).map(|(clique, _)| clique.clone()).collect()
    }

    /// Steps so far.
    pub(super) fn steps(&self) -> usize {
        self.master.steps
    }

    /// Cliques of many: parts of the face that hold more than they can, bounded by a cover of their own.
    fn of_parts(
        &mut self,
        places: &[(DVec2, f64)],
        most_steps: usize,
        stop: &dyn Fn() -> bool,
    ) -> Vec<Clique> {
        let mut found = Vec::new();
        let new = parts(places).into_iter().filter(|(rect, _)| !self.vain.contains(rect));
        for (rect, most) in new.take(MOST_PARTS).collect::<Vec<_>>() {
            let left = most_steps.saturating_sub(self.master.steps);
            if left == 0 || stop() {
                break;
            }
            let meets = |clique: &&Clique| clique.meets(&rect);
            let seeds: Vec<Clique> = self.cliques.iter().filter(meets).cloned().collect();
            let mut part = Self::of(self.field, rect, true, seeds);
            let enough = most as f64 + 1.0 - 1e-6;
            let weighed = part.lower(enough, left.min(most_steps / SHARE_OF_A_PART), stop);
            self.master.steps += weighed.steps;
            if weighed.weight < enough {
                found.push(Clique::within(self.field, rect, most));
            } else {
                self.vain.push(rect);
            }
        }
        found
    }
}
