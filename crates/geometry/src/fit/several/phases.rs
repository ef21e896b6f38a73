//! The lines on which rows of a block may be: one set for each base line that is tried.

use super::super::kernel::{Base, FitError};
use super::super::row_lines::{domains, steps};
use super::super::stretch::Stretch;
use super::yard::Yard;

/// The maximum number to try.
const MOST: usize = 64;

/// One row: its v, and where its tiles may begin.
pub(super) struct Line {
    pub(super) v: f64,
    pub(super) free: Vec<Stretch>,
    /// Where those of the lowest row of a block may begin.
    pub(super) lowest: Vec<Stretch>,
}

/// Rows one pitch apart, from below.
pub(super) struct Phase {
    pub(super) lines: Vec<Line>,
    /// Only the first row may be the lowest of a block.
    pub(super) grounded: bool,
}

/// The sets of lines, sorted by how much their rows hold on their own, most first.
pub(super) fn phases(yard: &Yard<'_>) -> Result<Vec<Phase>, FitError> {
    let (room, pitch) = (yard.room, yard.tile.pitch());
    let steps = steps(room, pitch.x);
    let Some((_, top)) = room.span() else { return Ok(Vec::new()) };
    let mut ends: Vec<f64> = Vec::new();
    for (i, slab) in room.slabs.iter().enumerate() {
        let count = |i: Option<usize>| i.and_then(|i| room.slabs.get(i)).map_or(0, |s| s.gaps.len());
        if count(i.checked_sub(1)) != slab.gaps.len() {
            ends.push(slab.lo);
        }
        if count(Some(i + 1)) != slab.gaps.len() {
            ends.push(slab.hi);
        }
    }
    let mut found: Vec<(usize, f64, bool)> = Vec::new();
    for domain in domains(room, &yard.tile, yard.rules.base)? {
        let fold = |v: f64| {
            let k = ((v - domain.lo) / pitch.y).floor().max(0.0);
            v - k * pitch.y
        };
        let within = |v: &f64| domain.lo < *v && *v < domain.hi;
        // Just above where a step or a place begins, just below where one ends.
        let t = room.tolerance;
        let from_steps = steps.iter().flat_map(|step| [step.lo + t, step.hi - t]);
        let mut bases: Vec<f64> =
            ends.iter().flat_map(|&v| [v + t, v - t]).chain(from_steps).map(fold).collect();
        bases.extend([domain.lo + t, domain.hi - t]);
        bases.retain(within);
        bases.sort_unstable_by(f64::total_cmp);
        bases.dedup_by(|p, q| *p - *q < t / 2.0);
        for v in bases {
            let mut line = v;
            let (mut sum, mut base) = (0, 0);
            while line <= top {
                let at = steps.partition_point(|s| s.hi <= line);
                let count = steps.get(at).filter(|s| s.lo <= line).map_or(0, |s| s.count);
                if line == v {
                    base = count;
                }
                sum += count;
                line += pitch.y;
            }
            if base > 0 || !domain.grounded {
                found.push((sum, v, domain.grounded));
            }
        }
    }
    found.sort_by(|p, q| q.0.cmp(&p.0).then(p.1.total_cmp(&q.1)));
    let mut kept: Vec<(usize, f64, bool)> = Vec::new();
    for phase in found {
        // Bases that are very close to each other hold the same.
        if kept.iter().all(|k| (k.1 - phase.1).abs() > 1e-4 || k.0 < phase.0) {
            kept.push(phase);
        }
        if kept.len() == MOST {
            break;
        }
    }
    let lines = |v: f64| {
        let mut lines = Vec::new();
        let mut line = v;
        while line <= top {
            let slab = room.slab(line);
            let free = slab.map_or(Vec::new(), |slab| slab.at(line).collect());
            let lowest = slab.map_or(Vec::new(), |slab| slab.foot_at(line).collect());
            lines.push(Line { v: line, free, lowest });
            line += pitch.y;
        }
        lines
    };
    Ok(kept.into_iter().map(|(_, v, grounded)| Phase { lines: lines(v), grounded }).collect())
}

/// Whether a base line is allowed.
pub(super) fn is_base(base: Base, v: f64, tolerance: f64) -> bool {
    let Base::Courses { first, exposure, play } = base else { return true };
    let t = tolerance * 1.5;
    let n = ((v - first - play.1 - t) / exposure).ceil().max(0.0);
    let over = v - first - n * exposure;
    play.0 - t <= over && over <= play.1 + t
}
