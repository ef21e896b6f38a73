//! The allowed positions of a tile, cut into trapezoids with level sides.

use super::blocked::{Patch, foot_patches, patches};
use super::kernel::{Allowed, FitError, Foot, Tile, check};
use crate::Rect;

/// Anything narrower (metres) is below the arithmetic.
pub(super) const THIN: f64 = 1e-12;

/// A free interval of positions along u, from `a` to `b`, at the lower (0) and upper (1) edge of its slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Gap {
    pub(super) a: [f64; 2],
    pub(super) b: [f64; 2],
}

/// A band of v in which no free interval begins, ends or bends.
#[derive(Clone, Debug)]
pub(super) struct Slab {
    pub(super) lo: f64,
    pub(super) hi: f64,
    pub(super) gaps: Vec<Gap>,
    /// Those of the lowest row, if its foot leaves less.
    pub(super) foot: Option<Vec<Gap>>,
}

impl Slab {
    /// The free intervals at `v`, left to right.
    pub(super) fn at(&self, v: f64) -> impl Iterator<Item = (f64, f64)> {
        self.stretches(&self.gaps, v)
    }

    /// Those of the lowest row.
    pub(super) fn foot_at(&self, v: f64) -> impl Iterator<Item = (f64, f64)> {
        self.stretches(self.foot.as_ref().unwrap_or(&self.gaps), v)
    }

    fn stretches<'g>(&self, gaps: &'g [Gap], v: f64) -> impl Iterator<Item = (f64, f64)> + use<'g> {
        let s = ((v - self.lo) / (self.hi - self.lo)).clamp(0.0, 1.0);
        gaps.iter().map(move |g| (mix(g.a, s), mix(g.b, s)))
    }

    /// The part of it between two heights within it.
    pub(super) fn part(&self, lo: f64, hi: f64) -> Self {
        let share = |v: f64| (v - self.lo) / (self.hi - self.lo);
        let cut = |ends: [f64; 2]| [mix(ends, share(lo)), mix(ends, share(hi))];
        let all = |gaps: &Vec<Gap>| gaps.iter().map(|gap| Gap { a: cut(gap.a), b: cut(gap.b) }).collect();
        Self { lo, hi, gaps: all(&self.gaps), foot: self.foot.as_ref().map(all) }
    }
}

fn mix(ends: [f64; 2], s: f64) -> f64 {
    ends[0] + (ends[1] - ends[0]) * s
}

/// All positions at which a tile may be.
#[derive(Clone, Debug)]
pub(super) struct Room {
    /// By increasing v, without overlap; bands without room are left out.
    pub(super) slabs: Vec<Slab>,
    pub(super) tolerance: f64,
}

impl Room {
    /// For layouts in which only the lowest row has the foot.
    pub(super) fn new(allowed: &Allowed, tile: &Tile) -> Result<Self, FitError> {
        let room = Self::of(allowed, tile, None)?;
        Ok(if allowed.foot.is_some() { room.with_lowest(&Self::footed(allowed, tile)?) } else { room })
    }

    /// For layouts in which every tile has it.
    pub(super) fn footed(allowed: &Allowed, tile: &Tile) -> Result<Self, FitError> {
        Self::of(allowed, tile, allowed.foot.as_ref())
    }

    /// For a tile with a foot, or without.
    pub(super) fn of(allowed: &Allowed, tile: &Tile, foot: Option<&Foot>) -> Result<Self, FitError> {
        check(allowed, tile)?;
        let corners = allowed.region.iter().flat_map(|shape| shape.outer.iter().copied());
        let tolerance = allowed.tolerance;
        let Some(bounds) = Rect::around(corners) else {
            return Ok(Self { slabs: Vec::new(), tolerance });
        };
        let mut patches = patches(allowed, tile, bounds);
        let mut from = bounds.min - tolerance;
        if let Some(foot) = foot {
            patches.extend(foot_patches(allowed, foot, tile, bounds));
            from.y += foot.within.map_or(0.0, |_| foot.depth);
        }
        let to = (bounds.max - tile.size + tolerance).to_array();
        Ok(Self { slabs: slabs(&patches, from.to_array(), to), tolerance })
    }

    /// The same with the room of the lowest row, where that differs.
    pub(super) fn with_lowest(&self, lowest: &Self) -> Self {
        let slabs = self.slabs.iter().flat_map(|slab| with_foot(slab, &lowest.slabs)).collect();
        Self { slabs, tolerance: self.tolerance }
    }

    /// What is left of it after some more patches. It must not have room of the lowest row yet.
    pub(super) fn less(&self, patches: &[Patch]) -> Self {
        let mut slabs = Vec::with_capacity(self.slabs.len());
        let mut sweep = Sweep::default();
        let mut bends: Vec<f64> = patches.iter().flat_map(Patch::bends).collect();
        bends.sort_unstable_by(f64::total_cmp);
        let mut levels: Vec<f64> = Vec::new();
        for slab in &self.slabs {
            debug_assert!(slab.foot.is_none());
            let here: Vec<&Patch> = patches.iter().filter(|p| p.lo < slab.hi && slab.lo < p.hi).collect();
            if here.is_empty() {
                push(&mut slabs, slab.lo, slab.hi, slab.gaps.clone());
                continue;
            }
            let within = bends.partition_point(|&v| v <= slab.lo)..bends.partition_point(|&v| v < slab.hi);
            levels.clear();
            levels.push(slab.lo);
            levels.extend(bends.get(within).unwrap_or_default());
            levels.push(slab.hi);
            for pair in levels.windows(2).filter(|pair| pair[1] - pair[0] > THIN) {
                let (lo, hi) = (pair[0], pair[1]);
                let middle = (lo + hi) / 2.0;
                sweep.strips.clear();
                sweep.between(&slab.part(lo, hi).gaps);
                let active = here.iter().filter(|p| p.lo < middle && middle < p.hi);
                sweep.strips.extend(active.map(|p| Strip::of(p, lo, hi)));
                sweep.band(lo, hi, [-BEYOND, BEYOND], &mut slabs);
            }
        }
        Self { slabs, tolerance: self.tolerance }
    }

    /// What is left of it without some rectangles of positions.
    pub(super) fn without(&self, rectangles: &[Rect]) -> Self {
        self.less(&rectangles.iter().copied().map(Patch::rectangle).collect::<Vec<_>>())
    }

    /// The part of it in some ranges of v.
    pub(super) fn within(&self, ranges: &[(f64, f64)]) -> Self {
        let mut slabs = Vec::new();
        for slab in &self.slabs {
            for range in ranges {
                let (lo, hi) = (slab.lo.max(range.0), slab.hi.min(range.1));
                if hi - lo > THIN {
                    slabs.push(slab.part(lo, hi));
                }
            }
        }
        Self { slabs, tolerance: self.tolerance }
    }

    /// The band that contains `v`.
    pub(super) fn slab(&self, v: f64) -> Option<&Slab> {
        self.slabs.get(self.slabs.partition_point(|s| s.hi <= v)).filter(|s| s.lo <= v)
    }

    /// Least and greatest v with any room.
    pub(super) fn span(&self) -> Option<(f64, f64)> {
        Some((self.slabs.first()?.lo, self.slabs.last()?.hi))
    }

    pub(super) fn pieces(&self) -> usize {
        self.slabs.iter().map(|s| s.gaps.len()).sum()
    }
}

/// Beyond any position, metres.
const BEYOND: f64 = 1e9;

/// A patch within one band: its sides at the lower and upper edge.
#[derive(Clone, Copy)]
struct Strip {
    left: [f64; 2],
    right: [f64; 2],
}

impl Strip {
    fn of(patch: &Patch, lo: f64, hi: f64) -> Self {
        let left = [patch.left_at(lo), patch.left_at(hi)];
        Self { left, right: [patch.right_at(lo), patch.right_at(hi)] }
    }
}

/// What the patches leave of the positions between two corners.
pub(super) fn slabs(patches: &[Patch], from: [f64; 2], to: [f64; 2]) -> Vec<Slab> {
    let mut slabs: Vec<Slab> = Vec::new();
    if to[0] - from[0] <= THIN || to[1] - from[1] <= THIN {
        return slabs;
    }
    let mut levels: Vec<f64> = patches
        .iter()
        .flat_map(Patch::bends)
        .filter(|&v| v > from[1] && v < to[1])
        .chain([from[1], to[1]])
        .collect();
    levels.sort_unstable_by(f64::total_cmp);
    let mut order: Vec<&Patch> = patches.iter().collect();
    order.sort_unstable_by(|p, q| p.lo.total_cmp(&q.lo));
    let (mut active, mut next) = (Vec::<&Patch>::new(), 0);
    let mut sweep = Sweep::default();
    for pair in levels.windows(2) {
        let (lo, hi) = (pair[0], pair[1]);
        if hi - lo <= THIN {
            continue;
        }
        let middle = (lo + hi) / 2.0;
        while let Some(&patch) = order.get(next).filter(|p| p.lo < middle) {
            active.push(patch);
            next += 1;
        }
        active.retain(|p| p.hi > middle);
        sweep.strips.clear();
        sweep.strips.extend(active.iter().map(|patch| Strip::of(patch, lo, hi)));
        sweep.band(lo, hi, [from[0], to[0]], &mut slabs);
    }
    slabs
}

/// The strips of one band, and where their sides cross: reused from band to band to save allocations.
#[derive(Default)]
struct Sweep {
    strips: Vec<Strip>,
    cuts: Vec<f64>,
}

impl Sweep {
    /// Adds what is between free intervals as strips.
    fn between(&mut self, gaps: &[Gap]) {
        let mut from = [-BEYOND; 2];
        for gap in gaps {
            self.strips.push(Strip { left: from, right: gap.a });
            from = gap.b;
        }
        self.strips.push(Strip { left: from, right: [BEYOND; 2] });
    }

    /// Adds the slabs that the strips leave of a band, between two limits along u.
    fn band(&mut self, lo: f64, hi: f64, limits: [f64; 2], slabs: &mut Vec<Slab>) {
        crossings(&self.strips, &mut self.cuts);
        for cut in self.cuts.windows(2) {
            if (cut[1] - cut[0]) * (hi - lo) > THIN {
                let gaps = gaps(&mut self.strips, [cut[0], cut[1]], limits);
                push(slabs, lo + (hi - lo) * cut[0], lo + (hi - lo) * cut[1], gaps);
            }
        }
    }
}

/// Where (0 at the lower edge, 1 at the upper) sides of strips cross; with 0 and 1, sorted.
fn crossings(strips: &[Strip], cuts: &mut Vec<f64>) {
    cuts.clear();
    cuts.extend([0.0, 1.0]);
    let mut cross = |p: [f64; 2], q: [f64; 2]| {
        let (low, high) = (p[0] - q[0], p[1] - q[1]);
        if low * high < 0.0 {
            cuts.push(low / (low - high));
        }
    };
    for (i, p) in strips.iter().enumerate() {
        for q in &strips[i + 1..] {
            cross(p.right, q.left);
            cross(p.left, q.right);
            cross(p.right, q.right);
            cross(p.left, q.left);
        }
    }
    cuts.sort_unstable_by(f64::total_cmp);
}

fn gaps(strips: &mut [Strip], part: [f64; 2], limits: [f64; 2]) -> Vec<Gap> {
    let middle = (part[0] + part[1]) / 2.0;
    strips.sort_unstable_by(|p, q| mix(p.left, middle).total_cmp(&mix(q.left, middle)));
    let mut gaps = Vec::new();
    let (mut reach, mut side) = (limits[0], [limits[0]; 2]);
    let ends = |side: [f64; 2]| [mix(side, part[0]), mix(side, part[1])];
    let mut add = |reach: f64, side: [f64; 2], until: f64, left: [f64; 2]| {
        if until - reach > THIN {
            gaps.push(Gap { a: ends(side), b: ends(left) });
        }
    };
    for strip in strips.iter() {
        let (left, right) = (mix(strip.left, middle), mix(strip.right, middle));
        if left >= limits[1] {
            break;
        }
        add(reach, side, left, strip.left);
        if right > reach {
            (reach, side) = (right, strip.right);
        }
    }
    add(reach, side, limits[1], [limits[1]; 2]);
    gaps
}

/// Adds a band, or extends the last one if all its sides continue straight.
fn push(slabs: &mut Vec<Slab>, lo: f64, hi: f64, gaps: Vec<Gap>) {
    if gaps.is_empty() {
        return;
    }
    if let Some(last) = slabs.last_mut().filter(|s| lo - s.hi <= THIN && s.gaps.len() == gaps.len()) {
        let share = (last.hi - last.lo) / (hi - last.lo);
        let on = |p: [f64; 2], q: [f64; 2]| {
            (p[1] - q[0]).abs() <= THIN && (p[0] + (q[1] - p[0]) * share - p[1]).abs() <= THIN
        };
        if last.gaps.iter().zip(&gaps).all(|(p, q)| on(p.a, q.a) && on(p.b, q.b)) {
            for (p, q) in last.gaps.iter_mut().zip(gaps) {
                (p.a[1], p.b[1]) = (q.a[1], q.b[1]);
            }
            last.hi = hi;
            return;
        }
    }
    slabs.push(Slab { lo, hi, gaps, foot: None });
}

/// Cuts a band where the room of the lowest row changes, and adds that room.
fn with_foot(slab: &Slab, foot: &[Slab]) -> Vec<Slab> {
    let foot = foot.get(foot.partition_point(|f| f.hi <= slab.lo)..).unwrap_or_default();
    let near = || foot.iter().take_while(|f| f.lo < slab.hi);
    let mut levels: Vec<f64> =
        near().flat_map(|f| [f.lo, f.hi]).filter(|&v| v > slab.lo && v < slab.hi).collect();
    levels.extend([slab.lo, slab.hi]);
    levels.sort_unstable_by(f64::total_cmp);
    let mut cut: Vec<Slab> = Vec::new();
    for pair in levels.windows(2).filter(|pair| pair[1] - pair[0] > THIN) {
        let (lo, hi) = (pair[0], pair[1]);
        let middle = (lo + hi) / 2.0;
        let own = slab.part(lo, hi);
        let there = near().find(|f| f.lo < middle && middle < f.hi);
        let lowest = there.map_or_else(Vec::new, |f| f.part(lo, hi).gaps);
        let same = lowest.len() == own.gaps.len()
            && lowest.iter().zip(&own.gaps).all(|(p, q)| {
                (0..2).all(|e| (p.a[e] - q.a[e]).abs() <= THIN && (p.b[e] - q.b[e]).abs() <= THIN)
            });
        match cut.last_mut() {
            // Two bands that need not have been cut.
            Some(last) if same && last.foot.is_none() => *last = slab.part(last.lo, hi),
            _ => cut.push(Slab { foot: (!same).then_some(lowest), ..own }),
        }
    }
    cut
}
