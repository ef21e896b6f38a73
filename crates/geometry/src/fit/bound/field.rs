//! The positions of every kind of module, and their projections.

use super::super::kernel::{Allowed, FINE, FitError, Tile};
use super::super::room::{Gap, Room, Slab};
use super::super::stretch::joined;
use super::laws::{Neighbours, Passage};
use super::shadow::level_shadow;
use super::shelf;
use crate::Rect;
use glam::{DVec2, dvec2};

/// Cliques are smaller by this than they could be, metres: far above rounding, far below anything that can be measured.
pub(super) const SHAVED: f64 = 1e-7;

/// Positions closer to a border than this (metres) don't exist: all borders are a [`FINE`] farther out than necessary.
pub(super) const HAIR: f64 = 2e-10;

/// What is known about modules of one size.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rows {
    pub(super) size: DVec2,
    /// Two positions closer than this along u and along v exclude each other.
    pub(super) reach: DVec2,
    /// The largest joint between two rows of a block.
    pub(super) joint: f64,
    /// The minimum distance between two blocks.
    pub(super) apart: f64,
}

/// Modules of one orientation that are all held by the row below, or all in the lowest row of a block.
pub(super) struct Kind {
    /// Two modules of this kind whose positions are closer than this along u and along v exclude each other.
    pub(super) reach: DVec2,
    /// How far below its lower edge a module excludes others.
    pub(super) drop: f64,
    /// Where their lower left corners may be.
    pub(super) slabs: Vec<Slab>,
}

/// The free intervals of a passage, at every level.
#[derive(Clone)]
pub(super) struct Passing {
    /// Where their lower left corners may be.
    stretches: Vec<Slab>,
    /// Their extent along u and up the slope.
    pub(super) reach: DVec2,
    pub(super) levels: [f64; 2],
}

/// Everything that may be placed.
pub(super) struct Field {
    pub(super) kinds: Vec<Kind>,
    /// How much farther apart along u two modules of different lines are than two of one line, if their heights
    /// overlap: a clique may lean by this much. 0 if this is not known to hold.
    pub(super) lean: f64,
    /// What is known about rows, if all modules are of one size.
    pub(super) rows: Option<Rows>,
    /// The passage that must stay free, if any.
    pub(super) passing: Option<Passing>,
}

impl Field {
    pub(super) fn new(
        allowed: &Allowed,
        sizes: &[DVec2],
        laws: &Neighbours,
        passage: Option<&Passage>,
    ) -> Result<Self, FitError> {
        // Positions that the arithmetic may lose are within this of a border.
        let allowed = Allowed { tolerance: allowed.tolerance.max(FINE), ..allowed.clone() };
        let least = laws.spacing();
        let further = laws.further();
        let mut kinds = Vec::new();
        for &size in sizes {
            let reach = size + least - SHAVED;
            let enough = reach.min_element() > size.min_element() / 2.0;
            if !enough {
                return Err(FitError::Tile { width: size.x, height: size.y, gap_u: least, gap_v: least });
            }
            let tile = Tile { size, gap: DVec2::ZERO };
            let room = Room::of(&allowed, &tile, None)?;
            let mut add = |slabs: Vec<Slab>, drop: f64| {
                if !slabs.is_empty() {
                    kinds.push(Kind { reach, drop, slabs });
                }
            };
            if laws.hooked > 0.0 {
                let footed = Room::footed(&allowed, &tile)?;
                let shelf = shelf::split(&room.slabs, size, laws);
                add(room.without(&shelf.open).slabs, 0.0);
                add(footed.without(&shelf.held).slabs, (further - SHAVED).max(0.0));
            } else {
                add(room.slabs, 0.0);
            }
        }
        let lean = if sizes.len() == 1 { (further - SHAVED).max(0.0) } else { 0.0 };
        let rows = match sizes {
            // The second row of a block is farther away than another block needs to be.
            [size] if lean > 0.0 && laws.apart < size.y + 2.0 * least => {
                let reach = *size + least - SHAVED;
                Some(Rows { size: *size, reach, joint: laws.joint[1], apart: laws.apart })
            }
            _ => None,
        };
        let passing = passage.map(|passage| Passing::of(passage, least.max(0.0))).transpose()?.flatten();
        Ok(Self { kinds, lean, rows, passing })
    }

    /// What is left without some rectangles of positions.
    pub(super) fn without(&self, away: &[Rect]) -> Self {
        let left = |kind: &Kind| {
            let room = Room { slabs: kind.slabs.clone(), tolerance: 0.0 };
            Kind { slabs: room.without(away).slabs, ..*kind }
        };
        Self { kinds: self.kinds.iter().map(left).collect(), passing: self.passing.clone(), ..*self }
    }

    /// Least and greatest coordinate of any position along an axis.
    pub(super) fn span(&self, axis: usize) -> Option<(f64, f64)> {
        let corners = self.kinds.iter().flat_map(|kind| kind.slabs.iter()).flat_map(|slab| {
            let us = slab.gaps.iter().flat_map(|gap| gap.a.into_iter().chain(gap.b));
            us.map(|u| dvec2(u, slab.lo)).chain([dvec2(f64::NAN, slab.hi)])
        });
        let ends = corners.map(|p| p[axis]).filter(|x| !x.is_nan());
        ends.fold(None, |span: Option<(f64, f64)>, x| {
            Some(span.map_or((x, x), |(a, b)| (a.min(x), b.max(x))))
        })
    }
}

impl Passing {
    /// With intervals narrower and lower by the spacing that the boxes of modules have on their right and above them.
    /// `None` if that leaves nothing to test.
    fn of(passage: &Passage, spacing: f64) -> Result<Option<Self>, FitError> {
        let size = dvec2(passage.width, Passage::HEIGHT) - spacing;
        let [from, to] = passage.levels;
        if size.min_element() < spacing.max(1e-3) || to <= from {
            return Ok(None);
        }
        let ways = Allowed { tolerance: passage.ways.tolerance.max(FINE), ..passage.ways.clone() };
        let room = Room::of(&ways, &Tile { size, gap: DVec2::ZERO }, None)?;
        Ok(Some(Self { stretches: room.slabs, reach: size - SHAVED, levels: passage.levels }))
    }

    /// Where along a horizontal line an interval may begin; `None` if no layout needs one there.
    pub(super) fn at(&self, line: f64) -> Option<Vec<(f64, f64)>> {
        if line < self.levels[0] || self.levels[1] < line {
            return None;
        }
        let foot = line - self.reach.y / 2.0;
        let found = joined(level_shadow(&self.stretches, foot - HAIR, foot + HAIR), 0.0);
        (!found.is_empty()).then_some(found)
    }
}

impl Kind {
    /// The projection of the positions in a band: for axis 0 the intervals of u that contain a position with v in the
    /// band, for axis 1 the intervals of v that contain one with u in the band. Sorted, without overlap.
    pub(super) fn shadow(&self, axis: usize, lo: f64, hi: f64) -> Vec<(f64, f64)> {
        let mut found: Vec<(f64, f64)> = Vec::new();
        if axis == 0 {
            found = level_shadow(&self.slabs, lo, hi);
        } else {
            for slab in &self.slabs {
                for gap in &slab.gaps {
                    let (Some(p), Some(q)) = (below(gap.a, hi), below(gap.b.map(|b| -b), -lo)) else {
                        continue;
                    };
                    let (s, t) = (p.0.max(q.0), p.1.min(q.1));
                    if s <= t {
                        let at = |s: f64| slab.lo + (slab.hi - slab.lo) * s;
                        found.push((at(s), at(t)));
                    }
                }
            }
        }
        joined(found, 0.0)
    }
}

/// The fractions of a slab's height between which a side is not above a limit.
fn below(side: [f64; 2], limit: f64) -> Option<(f64, f64)> {
    match (side[0] <= limit, side[1] <= limit) {
        (true, true) => Some((0.0, 1.0)),
        (false, false) => None,
        (low, _) => {
            let cut = ((limit - side[0]) / (side[1] - side[0])).clamp(0.0, 1.0);
            Some(if low { (0.0, cut) } else { (cut, 1.0) })
        }
    }
}

/// The corners of the part of a trapezoid of positions that is in a window.
pub(super) fn clipped(slab: &Slab, gap: &Gap, window: &Rect) -> Vec<DVec2> {
    super::super::blocks::clipped(slab.lo, slab.hi, gap, window)
}
