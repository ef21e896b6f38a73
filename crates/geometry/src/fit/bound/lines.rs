//! Straight lines a reach apart: every module, grown by its spacing, meets one, and on a line they are next to each
//! other. The minimum number of points that meet all of them on all lines is a bound on their number.

use super::super::room::Room;
use super::super::row_lines::steps;
use super::clique::Clique;
use super::field::{Field, HAIR, Kind};
use glam::dvec2;

/// The maximum number of positions of the lines to try along an axis.
const MOST_PHASES: usize = 160;

/// The lines of one axis at one phase.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Lines {
    /// 0: horizontal lines; 1: vertical lines.
    pub(super) axis: usize,
    pub(super) phase: f64,
    /// Upper bound on the modules of any layout.
    pub(super) most: usize,
}

/// All phases that were tried, best first.
pub(super) fn lines(field: &Field, stop: &dyn Fn() -> bool) -> Vec<Lines> {
    let mut found = Vec::new();
    for axis in [0, 1] {
        for phase in phases(field, axis) {
            if stop() && !found.is_empty() {
                break;
            }
            let mut most = 0;
            points(field, axis, phase, &mut |_, _| most += 1);
            if axis == 0 && field.passing.is_some() {
                most = on_lines(field, phase).map(|(_, _, most)| most).sum();
            }
            found.push(Lines { axis, phase, most });
        }
    }
    found.sort_by_key(|lines: &Lines| (lines.most, lines.axis));
    found
}

/// The cliques of the points on lines; and, if a passage is left free, of everything that meets each horizontal line.
pub(super) fn cliques(field: &Field, lines: Lines) -> Vec<Clique> {
    let mut cliques = Vec::new();
    points(field, lines.axis, lines.phase, &mut |along, line| {
        let point = if lines.axis == 0 { dvec2(along, line) } else { dvec2(line, along) };
        cliques.push(Clique::over(field, point));
    });
    if lines.axis == 0 && field.passing.is_some() {
        let fewer = on_lines(field, lines.phase).filter(|(_, points, most)| most < points);
        cliques.extend(fewer.map(|(line, _, most)| Clique::across(field, line, most)));
    }
    cliques
}

/// The horizontal lines of a phase: each with the number of points that meet all modules on it, and the maximum number
/// of those modules in a layout that leaves a passage.
fn on_lines(field: &Field, phase: f64) -> impl Iterator<Item = (f64, usize, usize)> + use<'_> {
    let span = field.span(1);
    let lines = span.map(|(from, to)| levels(field, Lines { axis: 0, phase, most: 0 }, from, to));
    lines.into_iter().flatten().map(move |line| {
        let shadows = shadows(field, 0, line);
        let mut points = 0;
        stabbed(0, &shadows, &mut |_| points += 1);
        let most = field
            .passing
            .as_ref()
            .and_then(|passing| passing.at(line).map(|free| beside(&shadows, &free, passing.reach.x)));
        (line, points, most.map_or(points, |most| most.min(points)))
    })
}

/// The maximum number of modules on a horizontal line to the left and right of one free interval, wherever that is.
fn beside(shadows: &[(&Kind, Vec<(f64, f64)>)], free: &[(f64, f64)], wide: f64) -> usize {
    // Where as many modules as possible end, one after the other from the left; and where they begin, from the right.
    let mut ends: Vec<f64> = Vec::new();
    loop {
        let from = ends.last().map_or(f64::NEG_INFINITY, |last| last - HAIR);
        let next = shadows.iter().filter_map(|(kind, stretches)| {
            let at = stretches.get(stretches.partition_point(|s| s.1 < from))?;
            Some(at.0.max(from) + kind.reach.x)
        });
        let end = next.fold(f64::INFINITY, f64::min);
        if end == f64::INFINITY {
            break;
        }
        ends.push(end);
    }
    let mut starts: Vec<f64> = Vec::new();
    loop {
        let to = starts.last().map_or(f64::INFINITY, |last| last + HAIR);
        let next = shadows.iter().filter_map(|(kind, stretches)| {
            let most = to - kind.reach.x;
            let at = stretches.iter().rev().find(|s| s.0 <= most)?;
            Some(at.1.min(most))
        });
        let start = next.fold(f64::NEG_INFINITY, f64::max);
        if start == f64::NEG_INFINITY {
            break;
        }
        starts.push(start);
    }
    let right = |at: f64| starts.iter().filter(|start| **start >= at + wide - HAIR).count();
    let first = std::iter::once((0, f64::NEG_INFINITY));
    let left = first.chain((1..).zip(ends.iter().map(|end| end - HAIR)));
    let with = left.filter_map(|(count, from)| {
        let at = free.get(free.partition_point(|s| s.1 < from))?;
        Some(count + right(at.0.max(from)))
    });
    with.max().unwrap_or(0)
}

/// For each kind: where it has positions along a line that meet it.
fn shadows(field: &Field, axis: usize, line: f64) -> Vec<(&Kind, Vec<(f64, f64)>)> {
    let across = 1 - axis;
    let shadow = |kind: &Kind| kind.shadow(axis, line - kind.reach[across] + HAIR, line - HAIR);
    field.kinds.iter().map(|kind| (kind, shadow(kind))).collect()
}

/// All lines of one axis that positions between two ends can meet.
fn levels(field: &Field, lines: Lines, from: f64, to: f64) -> impl Iterator<Item = f64> + use<> {
    let apart = spacing(field, 1 - lines.axis);
    let first = ((from - lines.phase) / apart).floor() + 1.0;
    let last = ((to - lines.phase) / apart).floor() + 1.0;
    let count = (last - first).clamp(0.0, 1e5) as u32;
    (0..=count).map(move |n| lines.phase + (first + f64::from(n)) * apart)
}

/// The distance between lines.
fn spacing(field: &Field, across: usize) -> f64 {
    field.kinds.iter().map(|kind| kind.reach[across]).fold(f64::INFINITY, f64::min)
}

/// Places lines and, on each, points from its beginning such that every module on it contains one.
fn points(field: &Field, axis: usize, phase: f64, tell: &mut dyn FnMut(f64, f64)) {
    let across = 1 - axis;
    let Some((from, to)) = field.span(across) else { return };
    for line in levels(field, Lines { axis, phase, most: 0 }, from, to) {
        stabbed(axis, &shadows(field, axis, line), &mut |along| tell(along, line));
    }
}

/// Points on one line, from its beginning, such that every module on it contains one.
fn stabbed(axis: usize, shadows: &[(&Kind, Vec<(f64, f64)>)], tell: &mut dyn FnMut(f64)) {
    let mut last = f64::NEG_INFINITY;
    loop {
        // On vertical lines a point in the room below a module meets it too.
        let ends = shadows.iter().filter_map(|(kind, stretches)| {
            let from = last + if axis == 1 { kind.drop } else { 0.0 };
            let next = stretches.get(stretches.partition_point(|s| s.1 < from + HAIR))?;
            Some(next.0.max(from) + kind.reach[axis])
        });
        let point = ends.fold(f64::INFINITY, f64::min);
        if point == f64::INFINITY {
            break;
        }
        tell(point);
        last = point;
    }
}

/// The phases to try: windows that begin or end where positions do, and where a row starts to hold fewer.
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
                // A window may begin where a row has just started to hold fewer, or end before it holds more.
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
        // Just inside what a passage must cross.
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
