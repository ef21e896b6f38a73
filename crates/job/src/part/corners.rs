//! Adding, removing and moving corners of a part, along with its side ids.

use super::{PartSide, RoofPart};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::sides::first_is_longer;
use chalkcourse_geometry::{DVec2, Length};
use std::collections::BTreeSet;

impl RoofPart {
    /// The part with a corner moved; `None` if there is no such corner.
    pub fn with_corner_moved(&self, ring: usize, corner: usize, to: DVec2) -> Option<Self> {
        let mut part = self.clone();
        *part.ring_mut(ring)?.get_mut(corner)? = to;
        Some(part)
    }

    /// The part with a new corner on a side; `None` if there is no such side. The longer piece remains that side; the
    /// other piece is a new side with the same properties.
    pub fn with_corner_added(&self, ring: usize, side: usize, at: DVec2) -> Option<Self> {
        let mut part = self.clone();
        let place = SideRef { ring, side };
        let ((a, b), old) = (self.wall_line(place)?, *self.side(place)?);
        let new = PartSide { id: part.take_side_id(), ..old };
        part.ring_mut(ring)?.insert(side + 1, at);
        let new_at = if first_is_longer(a.distance(at), at.distance(b)) { side + 1 } else { side };
        part.sides.get_mut(ring)?.insert(new_at, new);
        Some(part)
    }

    /// The part with a courtyard. Its sides copy the first side with a slope; if there is none they are walls.
    pub fn with_courtyard(&self, corners: Vec<DVec2>) -> Self {
        let mut part = self.clone();
        let is_slope = |side: &&PartSide| matches!(side.treatment, Treatment::Slope(_));
        let like = self.sides.iter().flatten().find(is_slope);
        let (treatment, overhang) =
            like.map_or((Treatment::Wall, Length::ZERO), |side| (side.treatment, side.overhang));
        let mut side = || PartSide { id: part.take_side_id(), treatment, overhang, eave_height: None };
        let sides = corners.iter().map(|_| side()).collect();
        part.sides.push(sides);
        part.outline.holes.push(corners);
        part
    }

    /// The part without a corner: the two sides that meet there become one, with the properties of the longer. A
    /// courtyard of three corners is removed as a whole; `None` for an outline of three.
    pub fn without_corner(&self, ring: usize, corner: usize) -> Option<Self> {
        let mut part = self.clone();
        let corners = part.ring_mut(ring)?;
        let n = corners.len();
        if corner >= n || (n <= 3 && ring == 0) {
            return None;
        }
        if n <= 3 {
            part.outline.holes.remove(ring - 1);
            part.sides.remove(ring);
            return Some(part);
        }
        let before = (corner + n - 1) % n;
        let (a, at, b) = (corners[before], corners[corner], corners[(corner + 1) % n]);
        corners.remove(corner);
        let sides = part.sides.get_mut(ring)?;
        let second = *sides.get(corner)?;
        if !first_is_longer(a.distance(at), at.distance(b)) {
            *sides.get_mut(before)? = second;
        }
        sides.remove(corner);
        Some(part)
    }

    /// A side id that was never used.
    fn take_side_id(&mut self) -> u32 {
        let id = self.side_ids_end();
        self.next_side = id.saturating_add(1);
        id
    }

    /// The id after those of all present and former sides.
    fn side_ids_end(&self) -> u32 {
        let ids = self.sides.iter().flatten().map(|side| side.id.saturating_add(1));
        ids.max().unwrap_or(0).max(self.next_side)
    }

    /// Makes sure that no side id is reused when this replaces another state of the part: an id that was deleted there
    /// is replaced by a new one.
    pub(crate) fn settle_sides(&mut self, there: Option<&Self>) {
        self.next_side = self.side_ids_end();
        let Some(there) = there else { return };
        let known: BTreeSet<u32> = there.sides.iter().flatten().map(|side| side.id).collect();
        self.next_side = self.next_side.max(there.next_side);
        for side in self.sides.iter_mut().flatten() {
            if side.id < there.next_side && !known.contains(&side.id) {
                side.id = self.next_side;
                self.next_side = self.next_side.saturating_add(1);
            }
        }
    }

    fn ring_mut(&mut self, ring: usize) -> Option<&mut Vec<DVec2>> {
        match ring {
            0 => Some(&mut self.outline.outer),
            hole => self.outline.holes.get_mut(hole - 1),
        }
    }
}
