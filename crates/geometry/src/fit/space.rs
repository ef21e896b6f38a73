//! Where a tile may be on a face, computed once: what a search lays is subtracted from it, instead of computing it
//! again for each trial.

use super::blocked::{Patch, swept};
use super::kernel::{Allowed, FitError, Placed, Tile};
use super::room::Room;
use crate::pieces::convex_pieces;
use crate::{Convex, Polygon, Rect};
use glam::DVec2;

/// Tolerance for circumscribing round corners, metres: finer corners find nothing more and take longer.
const SLACK: f64 = 2e-3;

/// All positions of a tile on a face.
#[derive(Clone, Debug)]
pub struct Space {
    size: DVec2,
    /// For tiles carried by the row below.
    upper: Room,
    /// For tiles of the lowest row, if they have something below them.
    lowest: Option<Room>,
}

impl Space {
    /// The positions that a face allows; the joints of the tile do not matter.
    ///
    /// # Errors
    /// An invalid tile, tolerance or corner.
    pub fn of(allowed: &Allowed, tile: &Tile) -> Result<Self, FitError> {
        let upper = Room::of(allowed, tile, None)?;
        let lowest = allowed.foot.as_ref().map(|_| Room::footed(allowed, tile)).transpose()?;
        Ok(Self { size: tile.size, upper, lowest })
    }

    /// What is left if tiles may not overlap some more shapes.
    pub fn less(&self, shapes: &[Polygon]) -> Self {
        let t = self.upper.tolerance;
        let pieces = shapes.iter().flat_map(|shape| convex_pieces(shape, t));
        let patches: Vec<Patch> = pieces.filter_map(|piece| swept(&piece, self.size, t)).collect();
        let lowest = self.lowest.as_ref().map(|room| room.less(&patches));
        Self { size: self.size, upper: self.upper.less(&patches), lowest }
    }

    /// What is left beside some blocks, with others at least `apart` (metres) from them.
    pub fn beside(&self, blocks: &[Vec<Placed>], apart: f64) -> Self {
        self.less(&blocks.iter().flat_map(|block| around(block, apart)).collect::<Vec<_>>())
    }

    /// The room for layouts in which only the lowest row has something below it.
    pub(super) fn room(&self) -> Room {
        self.lowest.as_ref().map_or_else(|| self.upper.clone(), |lowest| self.upper.with_lowest(lowest))
    }

    /// The room for layouts in which every tile has.
    pub(super) fn footed(&self) -> &Room {
        self.lowest.as_ref().unwrap_or(&self.upper)
    }
}

/// Shapes around the tiles of a block; neighbours in a row are merged, so that there are fewer to process.
fn around(block: &[Placed], apart: f64) -> impl Iterator<Item = Polygon> {
    let mut runs: Vec<Rect> = Vec::new();
    for placed in block {
        match runs.last_mut() {
            Some(run) if run.min.y == placed.rect.min.y && placed.rect.min.x - run.max.x < apart => {
                run.max = run.max.max(placed.rect.max);
            }
            _ => runs.push(placed.rect),
        }
    }
    runs.into_iter().map(move |run| Convex::rect(&run).outline(apart, SLACK))
}

#[cfg(test)]
mod tests {
    use super::super::brute::{Dice, random_face, rectangle, shape};
    use super::super::kernel::{Constraint, FINE, Foot, TilePlace};
    use super::super::stands;
    use super::*;
    use glam::dvec2;

    /// Whether a tile may be there, according to the room.
    fn holds(room: &Room, place: &TilePlace) -> bool {
        let holds = |(a, b): (f64, f64)| a <= place.at.x && place.at.x <= b;
        room.slab(place.at.y).is_some_and(|slab| {
            if place.lowest { slab.foot_at(place.at.y).any(holds) } else { slab.at(place.at.y).any(holds) }
        })
    }

    /// Subtracting shapes from a space is the same as computing the face again with them: against the slow way, place
    /// by place.
    #[test]
    fn less_is_what_a_face_with_more_in_the_way_leaves() {
        let tile = Tile { size: dvec2(1.722, 1.134), gap: dvec2(0.006, 0.006) };
        let (mut free, mut places_seen) = (0, 0);
        for seed in 0..60 {
            let mut dice = Dice::new(seed + 400);
            let mut allowed = random_face(&mut dice, 11.0, 7.0);
            if seed % 2 == 0 {
                allowed.foot = Some(Foot { depth: 0.15, within: Some(7), blocked: Vec::new() });
            }
            let mut in_the_way = vec![rectangle(dice.between(0.0, 9.0), dice.between(0.0, 6.0), 1.3, 0.9)];
            let (u, v) = (dice.between(0.0, 9.0), dice.between(0.0, 6.0));
            in_the_way.push(shape(&[(u, v), (u + 2.0, v + 0.4), (u + 0.3, v + 1.7)]));
            in_the_way.push(rectangle(dice.between(6.0, 10.0), -1e4, 1e4, 2e4));
            let left = Space::of(&allowed, &tile).unwrap().less(&in_the_way).room();
            let mut anew = allowed.clone();
            anew.blocked.extend(in_the_way.into_iter().map(|shape| Constraint { id: 99, shape }));
            let mut places: Vec<TilePlace> = (0..2000)
                .map(|n| TilePlace {
                    at: dvec2(dice.between(0.0, 11.0), dice.between(0.0, 7.0)),
                    lowest: n % 2 == 0,
                })
                .collect();
            // And slightly to either side of where the free intervals begin and end.
            for slab in &left.slabs {
                let v = slab.lo + (slab.hi - slab.lo) * 0.37;
                let ends = slab
                    .at(v)
                    .flat_map(|(a, b)| [a - 3.0 * FINE, a + 3.0 * FINE, b - 3.0 * FINE, b + 3.0 * FINE]);
                places.extend(ends.map(|u| TilePlace { at: dvec2(u, v), lowest: false }));
            }
            let said = stands(&anew, &tile, &places).unwrap();
            for (place, said) in places.iter().zip(said) {
                assert_eq!(holds(&left, place), said, "seed {seed}: {place:?}");
                free += usize::from(said);
                places_seen += 1;
            }
        }
        assert!(free > 5_000 && free < places_seen - 5_000, "{free} of {places_seen}");
    }
}
