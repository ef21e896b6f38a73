//! What holds a fit back: the places that nearly fit and what stops them, the price of each constraint in tiles, and
//! the shortest move of a constraint that gains one.

use super::blocked::{Patch, foot_strip, patches, swept};
use super::fit_rows;
use super::kernel::{Allowed, Constraint, Fit, FitError, Foot, Placed, RowRules, Tile};
use super::moves::{Lines, Move, least_moves};
use super::room::Room;
use crate::pieces::convex_pieces;
use crate::{Polygon, Rect};
use glam::{DVec2, dvec2};
use serde::Serialize;

/// What stops a tile at a place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Barrier {
    /// Blocked shapes, by their number.
    Constraint(usize),
    /// A side of the region: index of the shape, of the ring (0 is the outline), and of the corner that it starts from.
    Side {
        /// Index into [`Allowed::region`].
        shape: usize,
        /// 0 is the outline.
        ring: usize,
        /// Counted from 0.
        side: usize,
    },
}

/// One thing that stops a tile at a place, and by how much.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Stop {
    /// The thing.
    pub by: Barrier,
    /// How far the tile would have to move along u to clear this (or this would have to move the other way), metres, in
    /// the shorter direction.
    pub along_u: f64,
    /// The same along v.
    pub along_v: f64,
}

impl Stop {
    /// The shorter of the two moves, metres.
    pub fn depth(&self) -> f64 {
        self.along_u.abs().min(self.along_v.abs())
    }
}

/// A place that nearly fits.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NearFit {
    /// The place of the tile.
    pub rect: Rect,
    /// Everything that stops it, deepest first.
    pub stops: Vec<Stop>,
}

/// The price of a constraint.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Price {
    /// The number of its shapes.
    pub id: usize,
    /// How many more tiles the best fit without it has, under the same rules.
    pub tiles: usize,
    /// Whether both fits are proved; otherwise the number is just what was found.
    pub proved: bool,
}

/// What [`holds_back`] should look for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Question {
    /// A place counts as near if each thing that stops it does so by no more than this, metres.
    pub near: f64,
    /// Numbers of shapes that could be moved, such as penetrations.
    pub movable: Vec<usize>,
    /// The longest move, metres.
    pub farthest: f64,
    /// Whether to lay the region again without each number, for the prices.
    pub prices: bool,
}

/// The result of [`holds_back`].
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct HeldBack {
    /// Nearest first.
    pub near: Vec<NearFit>,
    /// For every number, most expensive first; empty unless requested.
    pub prices: Vec<Price>,
    /// For each movable number: the shortest move along u and the shortest along v that gains a tile, if there is one.
    pub moves: Vec<Move>,
}

/// What holds `fit` back. The fit must come from [`fit_rows`] on the same `allowed`.
///
/// For prices the face is laid again without each number: full optima under the fit's rules. Moves keep the array's row
/// lines (and, in a grid, its columns), and every move up to `farthest` along u and along v between critical ones is
/// tested; a layout that shifts its rows as well might need less. Moves of a hooked fit count the most tiles that are
/// carried, from any of the lines as the base. If `stop` ends it early, the result is what was found so far.
///
/// Errors: those of [`fit_rows`].
pub fn holds_back(
    allowed: &Allowed,
    fit: &Fit,
    question: &Question,
    stop: &dyn Fn() -> bool,
) -> Result<HeldBack, FitError> {
    let tile = fit.proof.tile;
    let near = near_fits(allowed, &tile, &fit.proof.rules, &fit.placed, question.near)?;
    let mut answer = HeldBack { near, ..HeldBack::default() };
    let priced = if question.prices { allowed.numbers() } else { Vec::new() };
    for id in priced {
        if stop() {
            break;
        }
        let without = fit_rows(&allowed.without(id), &tile, &fit.proof.rules, stop)?;
        let proved = without.gap() == 0 && fit.gap() == 0;
        answer.prices.push(Price { id, tiles: without.count().saturating_sub(fit.count()), proved });
    }
    answer.prices.sort_by_key(|p| std::cmp::Reverse(p.tiles));
    for &id in &question.movable {
        if stop() {
            break;
        }
        let rest = Room::new(&allowed.without(id), &tile)?;
        let own: Vec<Patch> = of_id(allowed, &tile, id);
        if let (Some(lines), false) =
            (Lines::of(allowed, &tile, &fit.proof.rules, &fit.placed), own.is_empty())
        {
            answer.moves.extend(least_moves(id, (&rest, &own), &lines, question.farthest, fit.count(), stop));
        }
    }
    Ok(answer)
}

fn of_id(allowed: &Allowed, tile: &Tile, id: usize) -> Vec<Patch> {
    let bounds = Rect { min: DVec2::ZERO, max: DVec2::ZERO };
    let own = Allowed {
        region: Vec::new(),
        blocked: allowed.blocked.iter().filter(|c| c.id == id).cloned().collect(),
        foot: None,
        tolerance: allowed.tolerance,
    };
    patches(&own, tile, bounds)
}

/// The places on the lines of some placed tiles of one block where one more nearly fits: each thing that stops it does
/// so by no more than `near`, metres.
///
/// Errors: an invalid tile, tolerance or corner.
pub fn near_fits(
    allowed: &Allowed,
    tile: &Tile,
    rules: &RowRules,
    placed: &[Placed],
    near: f64,
) -> Result<Vec<NearFit>, FitError> {
    super::kernel::check(allowed, tile)?;
    let Some(lines) = Lines::of(allowed, tile, rules, placed) else { return Ok(Vec::new()) };
    let barriers = Barriers::new(allowed, &lines.tile);
    let below = allowed.foot.as_ref().map(|foot| Barriers::below(allowed, foot, &lines.tile));
    let lowest = placed.iter().filter(|p| p.row == 0).map(|p| p.rect.min.y).fold(f64::INFINITY, f64::min);
    let mut found: Vec<NearFit> = Vec::new();
    for rect in candidates(allowed, placed, &lines) {
        // Tolerances on both sides, so that neighbours a gap apart do not count as overlapping.
        let taken = placed.iter().any(|p| (p.rect.overlap(&rect) + lines.tile.gap).min_element() > 1e-6);
        if taken || found.iter().any(|f| f.rect.min.distance(rect.min) < 1e-6) {
            continue;
        }
        let mut stops = barriers.stops(rect.min);
        if let Some((below, down)) = below.as_ref().filter(|_| rect.min.y <= lowest + 1e-9) {
            stops.extend(below.stops(rect.min - *down));
            stops.sort_by(|a, b| b.depth().total_cmp(&a.depth()));
        }
        let inside = allowed.region.iter().any(|shape| shape.contains(rect.centre()));
        if inside && stops.first().is_some_and(|s| s.depth() <= near) {
            found.push(NearFit { rect, stops });
        }
    }
    let depth = |f: &NearFit| f.stops.first().map_or(0.0, Stop::depth);
    found.sort_by(|p, q| depth(p).total_cmp(&depth(q)));
    Ok(found)
}

/// Places of the grid; in rows that slide, the places next to laid tiles and above and below them.
fn candidates(allowed: &Allowed, placed: &[Placed], lines: &Lines) -> Vec<Rect> {
    let pitch = lines.tile.pitch();
    let bounds = Rect::around(allowed.region.iter().flat_map(|s| s.outer.iter().copied()));
    let Some(bounds) = bounds else { return Vec::new() };
    let mut places = Vec::new();
    for &(v, grid) in &lines.rows {
        if let Some(u) = grid {
            let from = ((bounds.min.x - lines.tile.size.x - u) / pitch.x).floor() as i64;
            let to = ((bounds.max.x - u) / pitch.x).ceil() as i64;
            places.extend((from..=to).map(|n| dvec2(u + n as f64 * pitch.x, v)));
        } else {
            for p in placed.iter().map(|p| p.rect.min) {
                if (p.y - v).abs() < 1e-9 {
                    places.extend([dvec2(p.x - pitch.x, v), dvec2(p.x + pitch.x, v)]);
                } else if (p.y - v).abs() < pitch.y * 1.5 {
                    places.push(dvec2(p.x, v));
                }
            }
        }
    }
    places.into_iter().map(|p| Rect::at(p, lines.tile.size)).collect()
}

/// Every side and every blocked shape, swept by the tile, both as it is and with u and v swapped.
struct Barriers<'a> {
    allowed: &'a Allowed,
    constraints: Vec<(usize, Vec<[Patch; 2]>)>,
    /// With the unit normal that points into the region.
    sides: Vec<(Barrier, DVec2, [Patch; 2])>,
}

impl<'a> Barriers<'a> {
    fn new(allowed: &'a Allowed, tile: &Tile) -> Self {
        Self::of(allowed, &allowed.region, &allowed.blocked, tile)
    }

    /// Those of the foot below a tile of the lowest row, and the offset of its corner from that of the tile.
    fn below(allowed: &'a Allowed, foot: &Foot, tile: &Tile) -> (Self, DVec2) {
        let region = if foot.within.is_some() { allowed.region.as_slice() } else { &[] };
        let strip = foot_strip(foot, tile, allowed.tolerance);
        (Self::of(allowed, region, &foot.blocked, &strip), dvec2(0.0, foot.depth))
    }

    fn of(allowed: &'a Allowed, region: &[Polygon], blocked: &[Constraint], tile: &Tile) -> Self {
        let t = allowed.tolerance;
        let both = |ring: &[DVec2]| {
            let over: Vec<DVec2> = ring.iter().map(|p| dvec2(p.y, p.x)).collect();
            let turned = dvec2(tile.size.y, tile.size.x);
            Some([swept(ring, tile.size, t)?, swept(&over, turned, t)?])
        };
        let constraints = blocked
            .iter()
            .map(|c| (c.id, convex_pieces(&c.shape, t).iter().filter_map(|p| both(p)).collect()))
            .collect();
        let mut sides = Vec::new();
        for (shape, polygon) in region.iter().enumerate() {
            for (ring, side, a, b) in inward(polygon) {
                if let Some(patches) = both(&[a, b]) {
                    let normal = (b - a).perp().normalize_or_zero();
                    sides.push((Barrier::Side { shape, ring, side }, normal, patches));
                }
            }
        }
        Self { allowed, constraints, sides }
    }

    /// Everything that stops a tile at `p`, deepest first.
    fn stops(&self, p: DVec2) -> Vec<Stop> {
        let mut stops: Vec<Stop> = Vec::new();
        for (id, pieces) in &self.constraints {
            let Some(along_u) = way_out(pieces.iter().map(|p| &p[0]), p.x, p.y, 0.0) else { continue };
            let Some(along_v) = way_out(pieces.iter().map(|p| &p[1]), p.y, p.x, 0.0) else { continue };
            stops.push(Stop { by: Barrier::Constraint(*id), along_u, along_v });
        }
        for (barrier, normal, patches) in &self.sides {
            let Some(along_u) = way_out(std::iter::once(&patches[0]), p.x, p.y, normal.x) else { continue };
            let Some(along_v) = way_out(std::iter::once(&patches[1]), p.y, p.x, normal.y) else { continue };
            // Where two shapes of the region meet, their common side stops nothing.
            if self.allowed.region.len() > 1 && self.within_others(barrier) {
                continue;
            }
            stops.push(Stop { by: barrier.clone(), along_u, along_v });
        }
        stops.sort_by(|a, b| b.depth().total_cmp(&a.depth()));
        stops
    }

    fn within_others(&self, barrier: &Barrier) -> bool {
        let Barrier::Side { shape, ring, side } = *barrier else { return false };
        let others = || self.allowed.region.iter().enumerate().filter(|(i, _)| *i != shape).map(|(_, s)| s);
        let Some((_, _, a, b)) = self
            .allowed
            .region
            .get(shape)
            .and_then(|polygon| polygon.sides().find(|&(r, s, _, _)| (r, s) == (ring, side)))
        else {
            return false;
        };
        let middle = (a + b) / 2.0;
        others()
            .any(|other| other.contains(middle) || other.distance_to_border(middle) <= self.allowed.tolerance)
    }
}

/// The sides of a shape with the region on their left, with their original indices.
fn inward(polygon: &Polygon) -> Vec<(usize, usize, DVec2, DVec2)> {
    let turned: Vec<bool> =
        polygon.rings().enumerate().map(|(i, ring)| (crate::signed_area(ring) > 0.0) != (i == 0)).collect();
    polygon
        .sides()
        .map(|(ring, side, a, b)| if turned[ring] { (ring, side, b, a) } else { (ring, side, a, b) })
        .collect()
}

/// The shift along one axis that leaves all patches, from a place at `at` along the axis and `level` across it; `None`
/// if the place is in no patch. `only` above 0 allows a shift forward only, below 0 backward only, 0 the shorter one;
/// infinite if no such shift helps.
fn way_out<'p>(patches: impl Iterator<Item = &'p Patch>, at: f64, level: f64, only: f64) -> Option<f64> {
    let mut stretches: Vec<(f64, f64)> = patches
        .filter(|p| p.lo < level && level < p.hi)
        .map(|p| (p.left_at(level), p.right_at(level)))
        .collect();
    stretches.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
    let mut joined: Vec<(f64, f64)> = Vec::new();
    for (a, b) in stretches {
        match joined.last_mut() {
            Some(last) if a < last.1 => last.1 = last.1.max(b),
            _ => joined.push((a, b)),
        }
    }
    let (a, b) = joined.into_iter().find(|&(a, b)| a < at && at < b)?;
    let (forward, back) = (b - at, a - at);
    Some(if only == 0.0 && forward.is_finite() {
        if forward < -back { forward } else { back }
    } else if only > 0.0 {
        forward
    } else {
        back
    })
}
