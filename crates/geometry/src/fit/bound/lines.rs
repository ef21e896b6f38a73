//! Straight lines a reach apart: every module grown by its spacing meets one, and on a line they stand beside each
//! other. The fewest points that meet all of them on all lines bound their number.

use super::super::room::Room;
use super::super::rows::steps;
use super::clique::Clique;
use super::field::{Field, HAIR, Kind};
use glam::dvec2;

/// At most so many ways to lay the lines are tried along an axis.
const MOST_PHASES: usize = 160;

/// The lines of one axis at one phase.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Lines {
    /// 0: level lines, one above the other; 1: upright lines.
    pub(super) axis: usize,
    pub(super) phase: f64,
    /// No layout has more modules.
    pub(super) most: usize,
}

/// All phases that were tried, the best first.
pub(super) fn lines(field: &Field, stop: &dyn Fn() -> bool) -> Vec<Lines> {
    let mut found = Vec::new();
    for axis in [0, 1] {
        for phase in phases(field, axis) {
            if stop() && !found.is_empty() {
                break;
            }
            let mut most = 0;
            points(field, axis, phase, &mut |_, _| most += 1);
            found.push(Lines { axis, phase, most });
        }
    }
    found.sort_by_key(|lines: &Lines| (lines.most, lines.axis));
    found
}

/// The cliques of the points on lines, once pushed to the right or up and once to the left or down.
pub(super) fn cliques(field: &Field, lines: Lines) -> Vec<Clique> {
    let mut cliques = Vec::new();
    points(field, lines.axis, lines.phase, &mut |along, line| {
        let point = if lines.axis == 0 { dvec2(along, line) } else { dvec2(line, along) };
        cliques.push(Clique::over(field, point));
    });
    cliques
}

/// Lays lines and, on each, points from its beginning such that every module on it holds one.
fn points(field: &Field, axis: usize, phase: f64, tell: &mut dyn FnMut(f64, f64)) {
    let across = 1 - axis;
    let Some((from, to)) = field.span(across) else { return };
    let apart = field.kinds.iter().map(|kind| kind.reach[across]).fold(f64::INFINITY, f64::min);
    let mut n = ((from - phase) / apart).floor() + 1.0;
    loop {
        let line = phase + n * apart;
        let shadows: Vec<(&Kind, Vec<(f64, f64)>)> = field
            .kinds
            .iter()
            .map(|kind| (kind, kind.shadow(axis, line - kind.reach[across] + HAIR, line - HAIR)))
            .collect();
        let mut last = f64::NEG_INFINITY;
        loop {
            // On upright lines a point in the room below a module meets it too.
            let ends = shadows.iter().filter_map(|(kind, stretches)| {
                let from = last + if axis == 1 { kind.drop } else { 0.0 };
                let next = stretches.get(stretches.partition_point(|s| s.1 < from + HAIR))?;
                Some(next.0.max(from) + kind.reach[axis])
            });
            let point = ends.fold(f64::INFINITY, f64::min);
            if point == f64::INFINITY {
                break;
            }
            tell(point, line);
            last = point;
        }
        if line > to {
            break;
        }
        n += 1.0;
    }
}

/// Where lines are tried: windows that begin or end where positions do, and where a row comes to hold fewer.
fn phases(field: &Field, axis: usize) -> Vec<f64> {
    let across = 1 - axis;
    let mut ends = Vec::new();
    let mut less = Vec::new();
    for kind in &field.kinds {
        let reach = kind.reach[across];
        if axis == 0 {
            for (i, slab) in kind.slabs.iter().enumerate() {
                let count = |i: Option<usize>| i.and_then(|i| kind.slabs.get(i)).map_or(0, |s| s.gaps.len());
                let before =
                    i.checked_sub(1).filter(|&b| kind.slabs.get(b).is_some_and(|b| b.hi >= slab.lo - 1e-9));
                let after =
                    Some(i + 1).filter(|&a| kind.slabs.get(a).is_some_and(|a| a.lo <= slab.hi + 1e-9));
                if count(before) != slab.gaps.len() {
                    ends.push(slab.lo);
                }
                if count(after) != slab.gaps.len() {
                    ends.push(slab.hi + reach);
                }
            }
            let room = Room { slabs: kind.slabs.clone(), tolerance: 0.0 };
            less.extend(steps(&room, kind.reach.x).windows(2).filter_map(|pair| {
                let (below, above) = (pair[0], pair[1]);
                // A window may begin where a row has just come to hold fewer, or end before it holds more.
                (below.count != above.count).then_some(above.lo)
            }));
        } else {
            let sides = kind.slabs.iter().flat_map(|slab| slab.gaps.iter());
            for gap in sides {
                ends.extend(gap.a);
                ends.extend(gap.b.map(|b| b + reach));
            }
        }
    }
    let apart = field.kinds.iter().map(|kind| kind.reach[across]).fold(f64::INFINITY, f64::min);
    let Some((from, _)) = field.span(across) else { return Vec::new() };
    let mut all: Vec<f64> = Vec::new();
    for (list, nearest) in [(ends, apart * 1e-6), (less, apart * 1e-3)] {
        let mut folded: Vec<f64> = list.iter().map(|x| from + (x - from).rem_euclid(apart)).collect();
        folded.sort_unstable_by(f64::total_cmp);
        let mut near = nearest;
        loop {
            let mut kept: Vec<f64> = Vec::new();
            for &x in &folded {
                if kept.last().is_none_or(|last| x - last > near) {
                    kept.push(x);
                }
            }
            folded = kept;
            if folded.len() <= MOST_PHASES / 2 {
                break;
            }
            near *= 1.5;
        }
        all.extend(folded);
    }
    all
}
