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
            // A stretch on each level line that a way crosses is there in every layout.
            let free = if axis == 0 { heights(field, Lines { axis, phase, most }).len() } else { 0 };
            found.push(Lines { axis, phase, most: most.saturating_sub(free) });
        }
    }
    found.sort_by_key(|lines: &Lines| (lines.most, lines.axis));
    found
}

/// The cliques of the points on lines.
pub(super) fn cliques(field: &Field, lines: Lines) -> Vec<Clique> {
    let mut cliques = Vec::new();
    points(field, lines.axis, lines.phase, &mut |along, line| {
        let point = if lines.axis == 0 { dvec2(along, line) } else { dvec2(line, along) };
        cliques.push(Clique::over(field, point));
        if lines.axis == 0 && crossed(field, line).is_some() {
            cliques.push(Clique::beside(field, point));
        }
    });
    cliques
}

/// The levels of level lines that a way must cross.
pub(super) fn heights(field: &Field, lines: Lines) -> Vec<f64> {
    let Some((from, to)) = field.span(1) else { return Vec::new() };
    levels(field, lines, from, to).filter(|&line| crossed(field, line).is_some()).collect()
}

/// All lines of one axis that positions between two ends can meet.
fn levels(field: &Field, lines: Lines, from: f64, to: f64) -> impl Iterator<Item = f64> + use<> {
    let apart = spacing(field, 1 - lines.axis);
    let first = ((from - lines.phase) / apart).floor() + 1.0;
    let last = ((to - lines.phase) / apart).floor() + 1.0;
    let count = (last - first).clamp(0.0, 1e5) as u32;
    (0..=count).map(move |n| lines.phase + (first + f64::from(n)) * apart)
}

/// From one line to the next.
fn spacing(field: &Field, across: usize) -> f64 {
    let modules = field.kinds.iter().filter(|kind| !kind.free);
    modules.map(|kind| kind.reach[across]).fold(f64::INFINITY, f64::min)
}

/// The free stretches on a level line, where every layout has one.
fn crossed(field: &Field, line: f64) -> Option<(&Kind, Vec<(f64, f64)>)> {
    let passing = field.passing.as_ref().filter(|passing| passing.crosses(line))?;
    let foot = passing.foot(line);
    let stretches = passing.kind.shadow(0, foot - HAIR, foot + HAIR);
    (!stretches.is_empty()).then_some((&passing.kind, stretches))
}

/// Lays lines and, on each, points from its beginning such that every module on it holds one.
fn points(field: &Field, axis: usize, phase: f64, tell: &mut dyn FnMut(f64, f64)) {
    let across = 1 - axis;
    let Some((from, to)) = field.span(across) else { return };
    for line in levels(field, Lines { axis, phase, most: 0 }, from, to) {
        let modules = field.kinds.iter().filter(|kind| !kind.free);
        let shadow = |kind: &'_ Kind| kind.shadow(axis, line - kind.reach[across] + HAIR, line - HAIR);
        let free = if axis == 0 { crossed(field, line) } else { None };
        let shadows: Vec<(&Kind, Vec<(f64, f64)>)> =
            modules.map(|kind| (kind, shadow(kind))).chain(free).collect();
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
    }
}

/// Where lines are tried: windows that begin or end where positions do, and where a row comes to hold fewer.
fn phases(field: &Field, axis: usize) -> Vec<f64> {
    let across = 1 - axis;
    let mut ends = Vec::new();
    let mut less = Vec::new();
    for kind in field.kinds.iter().filter(|kind| !kind.free) {
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
    if let Some(passing) = field.passing.as_ref().filter(|_| axis == 0) {
        // Just within what a way must cross.
        ends.extend([passing.levels[0] + 1e-6, passing.levels[1] - 1e-6]);
    }
    let apart = spacing(field, across);
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
