//! Rows that slide but are carried: a layout by several ways, and a bound; where the two meet it is proved.

use super::grid::{Band, Row, bands, carried, deepest, intersect, lattice, lay};
use super::room::{Room, THIN};
use super::rows::{Domain, greedy, inside, renumber, slide, steps};
use super::{Placed, Tile};
use crate::Rect;
use glam::dvec2;

pub(super) struct Hooked {
    pub(super) placed: Vec<Placed>,
    pub(super) bound: usize,
    pub(super) cells: usize,
    pub(super) ruled_out: usize,
    pub(super) finished: bool,
}

/// Rows that slide but are carried. The best of both grids and of rows packed upon rows is taken; the bound
/// lets every row be carried by any *position* that the rows below leave open, which no layout can beat.
pub(super) fn hooked_sliding(
    room: &Room,
    tile: &Tile,
    domains: &[Domain],
    stop: &dyn Fn() -> bool,
) -> Hooked {
    let pitch = tile.pitch().to_array();
    let mut best = Hooked { placed: Vec::new(), bound: 0, cells: 0, ruled_out: 0, finished: true };
    for shift in [0.0, 0.5] {
        let found = lattice(room, pitch, shift, true, domains, stop);
        (best.cells, best.ruled_out) = (best.cells + found.cells, best.ruled_out + found.ruled_out);
        best.finished &= found.finished;
        let placed = found.at.map_or(Vec::new(), |at| lay(room, tile, shift, true, at));
        if placed.len() > best.placed.len() {
            best.placed = placed;
        }
    }
    let steps = steps(room, pitch[0]);
    for domain in domains {
        for band in bands(room, pitch, &steps, domain) {
            if band.bound <= best.placed.len().max(best.bound) {
                best.ruled_out += 1;
                continue;
            }
            if stop() {
                best.finished = false;
                best.bound = best.bound.max(band.bound);
                continue;
            }
            best.cells += 1;
            let bases = if domain.grounded { 1 } else { band.rows.len() };
            for i in (0..bases).filter(|&i| !domain.grounded || band.rows[i].0 == 0) {
                let bound = carried_bound(&band, i, pitch);
                best.bound = best.bound.max(bound);
                if bound <= best.placed.len() {
                    continue;
                }
                let v = inside(band.lo, band.hi, room.tolerance);
                for placed in [
                    pack_up(&band, i, tile, v, room.tolerance, false),
                    pack_up(&band, i, tile, v, room.tolerance, true),
                    pack_columns(&band, i, tile, v, room.tolerance),
                ] {
                    if placed.len() > best.placed.len() {
                        best.placed = placed;
                    }
                }
            }
        }
    }
    let sliding = slide(room, pitch, domains, stop);
    best.bound = best.bound.min(sliding.bound).max(best.placed.len());
    renumber(&mut best.placed);
    best
}

fn carried_bound(band: &Band<'_>, from: usize, pitch: [f64; 2]) -> usize {
    let mut below: Option<(usize, Vec<(f64, f64)>)> = None;
    let mut sum = 0;
    for &(k, slab) in band.rows.iter().skip(from) {
        let lift = k as f64 * pitch[1];
        let widest: Vec<_> = slab
            .at(band.lo + lift)
            .zip(slab.at(band.hi + lift))
            .map(|(p, q)| (p.0.min(q.0), p.1.max(q.1)))
            .collect();
        let here = match &below {
            None => widest,
            Some((row, _)) if row + 1 != k => break,
            Some((_, below)) => {
                // Two tiles a pitch apart carry one between them.
                let mut bridged: Vec<(f64, f64)> = Vec::new();
                for &(a, b) in below {
                    match bridged.last_mut() {
                        Some(last) if a - last.1 <= pitch[0] => last.1 = b,
                        _ => bridged.push((a, b)),
                    }
                }
                intersect(&widest, &bridged)
            }
        };
        let count = greedy(here.iter().copied(), pitch[0], |_, _| {});
        if count == 0 {
            break;
        }
        sum += count;
        below = Some((k, here));
    }
    sum
}

/// Packs each row as it can upon the one below, from the left or, `mirrored`, from the right.
fn pack_up(band: &Band<'_>, from: usize, tile: &Tile, v: f64, tolerance: f64, mirrored: bool) -> Vec<Placed> {
    let pitch = tile.pitch();
    let mut placed: Vec<Placed> = Vec::new();
    let mut runs: Option<(usize, Vec<(f64, f64)>)> = None;
    for &(row, slab) in band.rows.iter().skip(from) {
        let line = v + row as f64 * pitch.y;
        let mut free: Vec<_> = slab.at(line).collect();
        match &runs {
            Some((below, _)) if below + 1 != row => break,
            Some((_, runs)) => free = intersect(&free, runs),
            None => {}
        }
        if mirrored {
            free = free.iter().rev().map(|&(a, b)| (-b, -a)).collect();
        }
        let mut positions = Vec::new();
        greedy(free.into_iter(), pitch.x, |u, room| positions.push((u, room)));
        if positions.is_empty() {
            break;
        }
        let slack = positions.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
        let nudge = tolerance.min(slack / 2.0);
        let mut us: Vec<f64> =
            positions.iter().map(|p| if mirrored { -p.0 - nudge } else { p.0 + nudge }).collect();
        us.sort_unstable_by(f64::total_cmp);
        let mut next: Vec<(f64, f64)> = Vec::new();
        for (column, &u) in us.iter().enumerate() {
            placed.push(Placed { row, column, rect: Rect::at(dvec2(u, line), tile.size) });
            match next.last_mut() {
                Some(last) if u - last.1 <= pitch.x + THIN * 10.0 => last.1 = u,
                _ => next.push((u, u)),
            }
        }
        // A tile straight above the end of a run is carried by it: touching counts, to the tolerance.
        runs = Some((row, next.into_iter().map(|(a, b)| (a - tolerance, b + tolerance)).collect()));
    }
    placed
}

/// Columns straight up from the base row, with an offset of their own for each of its free stretches.
fn pack_columns(band: &Band<'_>, from: usize, tile: &Tile, v: f64, tolerance: f64) -> Vec<Placed> {
    let pitch = tile.pitch();
    let line = |row: usize| v + row as f64 * pitch.y;
    let rows: Vec<Row> =
        band.rows.iter().skip(from).map(|&(row, slab)| (row, slab.at(line(row)).collect())).collect();
    let Some((_, base)) = rows.first() else { return Vec::new() };
    let mut placed: Vec<Placed> = Vec::new();
    let (mut folds, mut reach) = (Vec::new(), f64::NEG_INFINITY);
    for &(a, b) in base {
        // The stretch before may have used up some of this one.
        let part = [(a.max(reach), b)];
        if part[0].0 > b {
            continue;
        }
        let within: Vec<Row> = rows.iter().map(|(row, gaps)| (*row, intersect(gaps, &part))).collect();
        let carried = carried(&within, 0.0);
        let all = carried.iter().flat_map(|(_, gaps)| gaps.iter().map(|&gap| (false, gap)));
        let (_, offset) = deepest(all, pitch.x, false, tolerance, &mut folds);
        for (row, gaps) in &carried {
            for &(a, b) in gaps {
                let mut n = ((a - offset) / pitch.x).ceil();
                while offset + n * pitch.x <= b {
                    let u = offset + n * pitch.x;
                    placed.push(Placed {
                        row: *row,
                        column: 0,
                        rect: Rect::at(dvec2(u, line(*row)), tile.size),
                    });
                    reach = reach.max(u + pitch.x);
                    n += 1.0;
                }
            }
        }
    }
    placed.sort_by(|p, q| p.row.cmp(&q.row).then(p.rect.min.x.total_cmp(&q.rect.min.x)));
    let mut column = 0;
    for i in 0..placed.len() {
        column = if i > 0 && placed[i].row == placed[i - 1].row { column + 1 } else { 0 };
        placed[i].column = column;
    }
    placed
}
