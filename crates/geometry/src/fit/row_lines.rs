//! The horizontal lines of rows: where the lowest may be, how many tiles a row holds at each height, and how one is
//! packed.

use super::kernel::{Base, FitError, Placed, Tile};
use super::room::{Room, Slab, THIN};
use crate::Rect;
use glam::dvec2;

/// Where the lower edge of row 0 may be; other rows follow upwards, one pitch apart.
#[derive(Clone, Copy, Debug)]
pub(super) struct Domain {
    pub(super) lo: f64,
    pub(super) hi: f64,
    /// Row 0 must hold a tile: it is the base row, and the rules are about its line.
    pub(super) grounded: bool,
}

pub(super) fn domains(room: &Room, tile: &Tile, base: Base) -> Result<Vec<Domain>, FitError> {
    let Base::Courses { first, exposure, play } = base else {
        let pitch = tile.pitch().y;
        return Ok(room
            .span()
            .map(|(lo, _)| Domain { lo, hi: lo + pitch, grounded: false })
            .into_iter()
            .collect());
    };
    let near = |x: f64| x.abs() <= 100.0 * exposure;
    let usable = first.abs() <= 1e5 && (1e-3..1e5).contains(&exposure) && near(play.0) && near(play.1);
    if !(usable && play.0 <= play.1) {
        return Err(FitError::Courses { exposure, from: play.0, to: play.1 });
    }
    let Some((lo, hi)) = room.span() else { return Ok(Vec::new()) };
    let t = room.tolerance;
    let from = ((lo - first - play.1) / exposure).floor().max(0.0);
    let to = ((hi - first - play.0) / exposure).ceil();
    let mut domains: Vec<Domain> = Vec::new();
    let mut n = from;
    while n <= to {
        let line = first + n * exposure;
        let (a, b) = ((line + play.0 - t).max(lo), (line + play.1 + t).min(hi));
        match domains.last_mut() {
            // If the play is longer than a course, the ranges merge.
            Some(last) if a <= last.hi => last.hi = last.hi.max(b),
            _ if b > a => domains.push(Domain { lo: a, hi: b, grounded: true }),
            _ => {}
        }
        n += 1.0;
    }
    Ok(domains)
}

/// A band of v in which a row holds the same count.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Step {
    pub(super) lo: f64,
    pub(super) hi: f64,
    pub(super) count: usize,
}

/// The number of tiles in a row as a function of its v; bands without any are left out.
pub(super) fn steps(room: &Room, pitch: f64) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::new();
    let mut cuts = Vec::new();
    for slab in &room.slabs {
        row_events(slab, pitch, &mut cuts);
        for cut in cuts.windows(2) {
            if (cut[1] - cut[0]) * (slab.hi - slab.lo) <= THIN {
                continue;
            }
            let (lo, hi) = (slab.lo + (slab.hi - slab.lo) * cut[0], slab.lo + (slab.hi - slab.lo) * cut[1]);
            let count = greedy(slab.at((lo + hi) / 2.0), pitch, |_, _| {});
            match steps.last_mut() {
                Some(last) if last.count == count && lo - last.hi <= THIN => last.hi = hi,
                _ => steps.push(Step { lo, hi, count }),
            }
        }
    }
    steps
}

/// The fractions of a slab's height at which the count of a row in it may change, with 0 and 1.
///
/// A row packed from the left consists of chains that start at the left end of some interval. A count changes only
/// where such a chain just reaches the right end of an interval, or the left end of a later one.
fn row_events(slab: &Slab, pitch: f64, cuts: &mut Vec<f64>) {
    cuts.clear();
    cuts.extend([0.0, 1.0]);
    for (i, start) in slab.gaps.iter().enumerate() {
        let mut before = start;
        for (k, end) in slab.gaps.iter().enumerate().skip(i) {
            if k > i {
                // If the next interval is always a pitch away, no chain continues into it.
                if (0..2).all(|e| end.a[e] - before.b[e] >= pitch) {
                    break;
                }
                whole_pitches(start.a, end.a, pitch, cuts);
            }
            whole_pitches(start.a, end.b, pitch, cuts);
            before = end;
        }
    }
    if cuts.len() > 2 {
        cuts.sort_unstable_by(f64::total_cmp);
    }
}

/// Adds the fractions (0 to 1) at which `to` is a whole number of pitches from `from`.
pub(super) fn whole_pitches(from: [f64; 2], to: [f64; 2], pitch: f64, cuts: &mut Vec<f64>) {
    let (low, high) = ((to[0] - from[0]) / pitch, (to[1] - from[1]) / pitch);
    if (high - low).abs() * pitch <= THIN {
        return;
    }
    let mut n = low.min(high).ceil();
    while n <= low.max(high) {
        cuts.push(((n - low) / (high - low)).clamp(0.0, 1.0));
        n += 1.0;
    }
}

/// Packs a row from the left, which is optimal, and reports each tile's position with the room to its right.
pub(super) fn greedy(
    gaps: impl Iterator<Item = (f64, f64)>,
    pitch: f64,
    mut tell: impl FnMut(f64, f64),
) -> usize {
    let (mut count, mut next) = (0, f64::NEG_INFINITY);
    for (a, b) in gaps {
        let start = next.max(a);
        if start <= b {
            let n = ((b - start) / pitch).floor() as usize + 1;
            for i in 0..n {
                let u = start + i as f64 * pitch;
                tell(u, b - u);
            }
            count += n;
            next = start + n as f64 * pitch;
        }
    }
    count
}

/// A point in an open cell: its lower end plus the tolerance, so that a tile does not use the tolerance unnecessarily;
/// the midpoint of a cell too narrow for that.
pub(super) fn inside(lo: f64, hi: f64, tolerance: f64) -> f64 {
    (lo + tolerance).min((lo + hi) / 2.0)
}

/// The lines of all rows if row 0 is at `v`.
pub(super) fn lines(room: &Room, pitch: f64, v: f64) -> impl Iterator<Item = (usize, f64)> {
    let top = room.span().map_or(v, |s| s.1);
    (0..).map(move |k| (k, v + k as f64 * pitch)).take_while(move |&(_, line)| line <= top)
}

/// Packs one row, and stays clear of the tolerance if there is room for that.
pub(super) fn lay_row(
    gaps: impl Iterator<Item = (f64, f64)>,
    tile: &Tile,
    row: usize,
    v: f64,
    tolerance: f64,
    placed: &mut Vec<Placed>,
) -> usize {
    let mut positions = Vec::new();
    let count = greedy(gaps, tile.pitch().x, |u, room| positions.push((u, room)));
    let slack = positions.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
    let nudge = tolerance.min(slack / 2.0);
    placed.extend(positions.iter().enumerate().map(|(column, &(u, _))| Placed {
        row,
        column,
        rect: Rect::at(dvec2(u + nudge, v), tile.size),
    }));
    count
}

/// Renumbers rows from the lowest that holds a tile.
pub(super) fn renumber(placed: &mut [Placed]) {
    let lowest = placed.iter().map(|p| p.row).min().unwrap_or(0);
    for p in placed {
        p.row -= lowest;
    }
}
