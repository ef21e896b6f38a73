//! Rows that slide: the count of each row is independent, so the total is a sum of step functions of v.

use super::kernel::{Allowed, Fit, FitError, Joints, Placed, Proof, RowRules, Tile};
use super::room::{Room, THIN};
use super::row_lines::{Domain, domains, inside, lay_row, lines, renumber, steps};
use super::space::Space;
use super::{grid, hooked};

/// Lays as many tiles as possible in horizontal rows at one pitch, by `rules`.
///
/// The result is the optimum of the space that its proof names. Hooked rows with free joints give up on large faces
/// after some tenths of a second: the bound then stays above the count, see [`Fit::gap`]. `stop` is called often; once
/// it returns true, the result is the best so far with the remaining bound.
///
/// Errors: an invalid tile, tolerance or corner; invalid courses.
pub fn fit_rows(
    allowed: &Allowed,
    tile: &Tile,
    rules: &RowRules,
    stop: &dyn Fn() -> bool,
) -> Result<Fit, FitError> {
    fit_rows_in(&Space::of(allowed, tile)?, tile, rules, stop)
}

/// Like [`fit_rows`], on a space that exists already.
///
/// Errors: invalid courses.
pub fn fit_rows_in(
    space: &Space,
    tile: &Tile,
    rules: &RowRules,
    stop: &dyn Fn() -> bool,
) -> Result<Fit, FitError> {
    lay(space, tile, rules, Effort { most: hooked::MOST_STEPS, stop, tell: &mut |_| {} })
}

/// Like [`fit_rows`], but goes on until everything is proved or `stop` returns true, and reports each better layout and
/// each lower bound on the way.
///
/// Errors: those of [`fit_rows`].
pub fn fit_rows_improving(
    allowed: &Allowed,
    tile: &Tile,
    rules: &RowRules,
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(&Fit),
) -> Result<Fit, FitError> {
    lay(&Space::of(allowed, tile)?, tile, rules, Effort { most: usize::MAX, stop, tell })
}

/// How long a search may take, and where it reports what it finds.
struct Effort<'a> {
    most: usize,
    stop: &'a dyn Fn() -> bool,
    tell: &'a mut dyn FnMut(&Fit),
}

fn lay(space: &Space, tile: &Tile, rules: &RowRules, effort: Effort<'_>) -> Result<Fit, FitError> {
    let Effort { most, stop, tell } = effort;
    let room = if rules.hooked { space.room() } else { space.footed().clone() };
    let domains = domains(&room, tile, rules.base)?;
    let pitch = tile.pitch().to_array();
    let pieces = room.pieces();
    let fit = |placed: Vec<Placed>, bound: usize, (cells, ruled_out, finished)| {
        let bound = bound.max(placed.len());
        Fit { placed, bound, proof: Proof { tile: *tile, rules: *rules, pieces, cells, ruled_out, finished } }
    };
    Ok(match (rules.joints, rules.hooked) {
        (Joints::Free, false) => {
            let sliding = slide(&room, pitch, &domains, stop);
            let placed = sliding.at.map_or(Vec::new(), |v| lay_sliding(&room, tile, v));
            fit(placed, sliding.bound, (sliding.cells, 0, sliding.finished))
        }
        (Joints::Free, true) => {
            let of = |found: &hooked::Hooked, bound, finished| {
                let mut placed = found.placed.clone();
                renumber(&mut placed);
                fit(placed, bound, (found.cells, found.ruled_out, finished))
            };
            let mut tell = |found: &hooked::Hooked, bound| tell(&of(found, bound, false));
            let found = hooked::hooked_sliding(&room, tile, &domains, most, stop, &mut tell);
            of(&found, found.bound, found.finished)
        }
        (joints, hooked) => {
            let shift = if joints == Joints::Lapped { 0.5 } else { 0.0 };
            let best = grid::lattice(&room, pitch, shift, hooked, &domains, stop);
            let placed = best.at.map_or(Vec::new(), |at| grid::lay(&room, tile, shift, hooked, at));
            fit(placed, best.bound, (best.cells, best.ruled_out, best.finished))
        }
    })
}

pub(super) struct Sliding {
    /// v of row 0.
    pub(super) at: Option<f64>,
    pub(super) bound: usize,
    pub(super) cells: usize,
    finished: bool,
}

/// The v of row 0 at which the rows hold the most tiles in total.
pub(super) fn slide(room: &Room, pitch: [f64; 2], domains: &[Domain], stop: &dyn Fn() -> bool) -> Sliding {
    let steps = steps(room, pitch[0]);
    let mut best = Sliding { at: None, bound: 0, cells: 0, finished: true };
    let mut changes: Vec<(f64, i64, i64)> = Vec::new();
    for domain in domains {
        if stop() {
            // What was not searched can hold no more than each row at its best.
            let most = steps.iter().map(|s| s.count).max().unwrap_or(0);
            let rows = room.span().map_or(0.0, |(lo, hi)| ((hi - lo) / pitch[1]).floor() + 1.0);
            return Sliding { bound: most * rows as usize, finished: false, ..best };
        }
        changes.clear();
        for step in &steps {
            let mut k = ((step.lo - domain.hi) / pitch[1]).floor().max(0.0);
            while domain.lo + k * pitch[1] < step.hi {
                let (lo, hi) =
                    ((step.lo - k * pitch[1]).max(domain.lo), (step.hi - k * pitch[1]).min(domain.hi));
                if lo < hi {
                    let count = step.count as i64;
                    let base = if k == 0.0 { count } else { 0 };
                    changes.extend([(lo, count, base), (hi, -count, -base)]);
                }
                k += 1.0;
            }
        }
        changes.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
        let (mut sum, mut base) = (0, 0);
        for (i, &(lo, count, in_base)) in changes.iter().enumerate() {
            (sum, base) = (sum + count, base + in_base);
            let Some(&(hi, ..)) = changes.get(i + 1) else { break };
            if hi - lo <= THIN {
                continue;
            }
            best.cells += 1;
            if sum > best.bound as i64 && (base > 0 || !domain.grounded) {
                best.bound = sum as usize;
                best.at = Some(inside(lo, hi, room.tolerance));
            }
        }
    }
    best
}

fn lay_sliding(room: &Room, tile: &Tile, v: f64) -> Vec<Placed> {
    let mut placed = Vec::new();
    for (row, line) in lines(room, tile.pitch().y, v) {
        if let Some(slab) = room.slab(line) {
            lay_row(slab.at(line), tile, row, line, room.tolerance, &mut placed);
        }
    }
    renumber(&mut placed);
    placed
}
