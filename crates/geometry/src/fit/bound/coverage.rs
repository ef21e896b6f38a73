//! The total weight of cliques at every position. The sides of the cliques divide the plane into cells on which it is
//! constant; only cells that contain a position count.

use super::clique::Clique;
use super::field::{Field, HAIR, clipped};
use crate::Rect;
use glam::{DVec2, dvec2};

/// Cells thinner than this (metres) are rounding.
const NOTHING: f64 = 1e-13;

/// A position counts as covered if no more than this is missing: the weights are raised by as much in the end.
const ENOUGH: f64 = 1e-6;

/// Positions with too little weight.
#[derive(Clone, Debug)]
pub(super) struct Hole {
    pub(super) kind: usize,
    /// One of them, well inside the cell.
    pub(super) at: DVec2,
    /// Bounds of those next to it.
    pub(super) bounds: Rect,
    /// The total weight of the cliques that contain them.
    pub(super) weight: f64,
}

/// The least weight of any position within some bounds, and the positions there with less than 1.
pub(super) fn coverage(field: &Field, within: &Rect, cliques: &[(&Clique, f64)]) -> (f64, Vec<Hole>) {
    let mut least = f64::INFINITY;
    let mut holes = Vec::new();
    for kind in 0..field.kinds.len() {
        let grid = Cells::new(kind, cliques);
        grid.scan(field, within, &mut least, &mut holes);
    }
    (least, holes)
}

/// The cells of the positions of one kind.
struct Cells {
    kind: usize,
    us: Vec<f64>,
    vs: Vec<f64>,
    /// By rows of `us.len() - 1` cells.
    weight: Vec<f64>,
}

impl Cells {
    fn new(kind: usize, cliques: &[(&Clique, f64)]) -> Self {
        let pieces = || {
            cliques.iter().flat_map(|(clique, weight)| {
                clique.pieces.iter().filter(|piece| piece.kind == kind).map(|piece| (piece.rect, *weight))
            })
        };
        let sorted = |ends: fn(&Rect) -> [f64; 2]| -> Vec<f64> {
            let mut all: Vec<f64> = pieces().flat_map(|(rect, _)| ends(&rect)).chain([-1e9, 1e9]).collect();
            all.sort_unstable_by(f64::total_cmp);
            all.dedup();
            all
        };
        let us = sorted(|rect| [rect.min.x, rect.max.x]);
        let vs = sorted(|rect| [rect.min.y, rect.max.y]);
        let wide = us.len();
        let mut weight = vec![0.0; wide * vs.len()];
        let place = |list: &[f64], x: f64| list.partition_point(|&y| y < x);
        for (rect, of) in pieces() {
            let (a, b) = (place(&us, rect.min.x), place(&us, rect.max.x));
            for row in place(&vs, rect.min.y)..place(&vs, rect.max.y) {
                for cell in weight.iter_mut().skip(row * wide + a).take(b - a) {
                    *cell += of;
                }
            }
        }
        Self { kind, us, vs, weight }
    }

    fn scan(&self, field: &Field, within: &Rect, least: &mut f64, holes: &mut Vec<Hole>) {
        let Some(kind) = field.kinds.get(self.kind) else { return };
        let wide = self.us.len();
        let mut first = 0;
        for (row, pair) in self.vs.windows(2).enumerate() {
            let (foot, head) = (pair[0].max(within.min.y), pair[1].min(within.max.y));
            if head - foot <= NOTHING {
                continue;
            }
            while kind.slabs.get(first).is_some_and(|slab| slab.hi - HAIR <= foot) {
                first += 1;
            }
            let cells = &self.weight[row * wide..(row + 1) * wide];
            let mut found: Vec<Hole> = Vec::new();
            for slab in kind.slabs.iter().skip(first).take_while(|slab| slab.lo + HAIR < head) {
                let (lo, hi) = (slab.lo.max(foot), slab.hi.min(head));
                let at = |side: [f64; 2], v: f64| {
                    side[0] + (side[1] - side[0]) * ((v - slab.lo) / (slab.hi - slab.lo))
                };
                for gap in &slab.gaps {
                    let a = (at(gap.a, lo).min(at(gap.a, hi)) + HAIR).max(within.min.x);
                    let b = (at(gap.b, lo).max(at(gap.b, hi)) - HAIR).min(within.max.x);
                    if a >= b {
                        continue;
                    }
                    let mut i = self.us.partition_point(|&u| u <= a).saturating_sub(1);
                    while self.us.get(i).is_some_and(|&u| u < b) {
                        let Some((&from, &to)) = self.us.get(i).zip(self.us.get(i + 1)) else { break };
                        let weight = cells[i];
                        if to - from > NOTHING {
                            *least = least.min(weight);
                            if weight < 1.0 - ENOUGH {
                                let window = Rect { min: dvec2(from.max(a), lo), max: dvec2(to.min(b), hi) };
                                let corners = clipped(slab, gap, &window);
                                self.tell(&corners, weight, i, &mut found);
                            }
                        }
                        i += 1;
                    }
                }
            }
            holes.append(&mut found);
        }
    }

    /// Adds a hole, or extends one of the same cell.
    fn tell(&self, corners: &[DVec2], weight: f64, cell: usize, found: &mut Vec<Hole>) {
        let Some(bounds) = Rect::around(corners.iter().copied()) else { return };
        let (from, to) = (self.us[cell], self.us[cell + 1]);
        let same = found.iter_mut().rev().find(|hole| from <= hole.at.x && hole.at.x < to);
        let at = corners.iter().sum::<DVec2>() / corners.len() as f64;
        match same {
            Some(hole) => {
                if bounds.area() > hole.bounds.area() {
                    hole.at = at;
                }
                hole.bounds = hole.bounds.union(&bounds);
            }
            None => found.push(Hole { kind: self.kind, at, bounds, weight }),
        }
    }
}
