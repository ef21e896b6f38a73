//! Persistent numbers for the sides of an outline: they stay with their sides while corners are added, removed and
//! dragged, and a number is never reused for another side.
//!
//! - [`Sides`] holds the numbers of one outline and updates them with its corners
//! - [`again`] recognises the sides of an outline in one that was drawn or computed again

pub mod again;

use crate::Polygon;
use again::{After, Before, FormerPosition};
use glam::DVec2;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// Number of a side within its face. It stays with the side while corners are added, removed and moved, and is never
/// reused for another side.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(transparent)]
pub struct SideId(pub u32);

impl std::fmt::Display for SideId {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}", self.0)
    }
}

impl SideId {
    /// The next number.
    #[must_use]
    pub fn following(self) -> Self {
        Self(self.0.saturating_add(1))
    }
}

/// The numbers of all sides of an outline, and the next free one.
///
/// [`Sides::fit`] and [`Sides::are_sound`] check whether they match an outline and whether none occurs twice: those
/// from a file may be wrong.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Sides {
    /// For each ring (the outline first, then the holes), the number of the side that starts from each corner.
    rings: Vec<Vec<SideId>>,
    /// The number after all that were ever used. It only increases.
    next: SideId,
}

/// No outline that people draw needs this many numbers; a file that claims so is wrong.
const MOST: SideId = SideId(1 << 30);

/// Whether the first of two parts of one side is the longer one, which keeps the side's number; of equal ones it is the
/// first.
pub fn first_is_longer(first: f64, second: f64) -> bool {
    // Rounding must not decide between the halves of a side.
    first >= second - 1e-9
}

impl Sides {
    /// Numbers for an outline that had none: from 0, in its own order.
    pub fn in_order(outline: &Polygon) -> Self {
        let mut sides = Self::default();
        for ring in outline.rings() {
            sides.add_ring(ring.len());
        }
        sides
    }

    /// The numbers by ring and by the corner that the side starts from.
    pub fn rings(&self) -> &[Vec<SideId>] {
        &self.rings
    }

    /// The number after all that were ever used.
    pub fn next(&self) -> SideId {
        self.next
    }

    /// All numbers, in the order of the outline.
    pub fn all(&self) -> impl Iterator<Item = SideId> + '_ {
        self.rings.iter().flatten().copied()
    }

    /// The number of a side.
    pub fn at(&self, ring: usize, side: usize) -> Option<SideId> {
        self.rings.get(ring)?.get(side).copied()
    }

    /// Ring and first corner of the side with that number; `None` if there is no such side.
    pub fn place_of(&self, id: SideId) -> Option<(usize, usize)> {
        self.rings
            .iter()
            .enumerate()
            .find_map(|(ring, sides)| sides.iter().position(|side| *side == id).map(|side| (ring, side)))
    }

    /// The number that identifies a ring: the lowest of its sides, so that no other ring ever has it.
    pub fn of_ring(&self, ring: usize) -> Option<SideId> {
        self.rings.get(ring)?.iter().copied().min()
    }

    /// The ring that a number identifies.
    pub fn ring_of(&self, id: SideId) -> Option<usize> {
        (0..self.rings.len()).find(|&ring| self.of_ring(ring) == Some(id))
    }

    /// Whether no number was ever used.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// Whether there is one number for each side of an outline.
    pub fn fit(&self, outline: &Polygon) -> bool {
        self.rings.iter().map(Vec::len).eq(outline.rings().map(<[DVec2]>::len))
    }

    /// Whether no number occurs twice and none is beyond the next one.
    pub fn are_sound(&self) -> bool {
        let mut seen = BTreeSet::new();
        self.next <= MOST && self.all().all(|id| id < self.next && seen.insert(id))
    }

    /// Takes a number that no other side has, had or will have.
    pub fn take(&mut self) -> SideId {
        let id = self.next;
        self.next = id.following();
        id
    }

    /// Adds a corner on a side, which splits it into parts of these lengths: the longer part keeps its number. Returns
    /// the new number of the other part; `None` if there is no such side.
    pub fn split(&mut self, ring: usize, side: usize, lengths: (f64, f64)) -> Option<SideId> {
        self.at(ring, side)?;
        let new = self.take();
        let sides = self.rings.get_mut(ring)?;
        sides.insert(if first_is_longer(lengths.0, lengths.1) { side + 1 } else { side }, new);
        Some(new)
    }

    /// Removes a corner, so that the sides before and after it, of these lengths, become one, with the number of the
    /// longer. Returns the number that is dropped and the one that stays; `None` if there is no such corner.
    pub fn join(&mut self, ring: usize, corner: usize, lengths: (f64, f64)) -> Option<(SideId, SideId)> {
        let sides = self.rings.get_mut(ring)?;
        let before = (corner + sides.len()).checked_sub(1)? % sides.len();
        let (first, second) = (*sides.get(before)?, *sides.get(corner)?);
        let (stays, goes) =
            if first_is_longer(lengths.0, lengths.1) { (first, second) } else { (second, first) };
        *sides.get_mut(before)? = stays;
        sides.remove(corner);
        Some((goes, stays))
    }

    /// Adds numbers for a new last ring.
    pub fn add_ring(&mut self, corners: usize) {
        let ring = (0..corners).map(|_| self.take()).collect();
        self.rings.push(ring);
    }

    /// Removes a ring with its numbers.
    pub fn remove_ring(&mut self, ring: usize) {
        if ring < self.rings.len() {
            self.rings.remove(ring);
        }
    }

    /// The numbers for an outline that was drawn again: each goes to the side that is where its own was, or is between
    /// the same two sides; other sides get new numbers.
    pub fn carried(&self, before: &Polygon, after: &Polygon) -> Self {
        let lines = |outline: &Polygon| -> Vec<(DVec2, DVec2)> {
            let runs: Vec<bool> =
                outline.rings().enumerate().map(|(n, ring)| runs_as_meant(n, ring)).collect();
            outline
                .sides()
                .map(|(ring, _, a, b)| if runs.get(ring) == Some(&true) { (a, b) } else { (b, a) })
                .collect()
        };
        let ids: Vec<SideId> = self.all().collect();
        let was: Vec<Before<'_, ()>> = ids
            .iter()
            .zip(lines(before))
            .map(|(&id, (a, b))| Before {
                id,
                was: FormerPosition::Along(a, b),
                borders: &[],
                beside: [&[], &[]],
            })
            .collect();
        let now: Vec<After<'_, ()>> =
            lines(after).into_iter().map(|line| After { line, borders: &[], beside: [&[], &[]] }).collect();
        let mut found = again::found_again(&was, &now).into_iter();
        let mut rings: Vec<Vec<Option<SideId>>> =
            after.rings().map(|ring| found.by_ref().take(ring.len()).collect()).collect();
        self.between_the_same(&mut rings);
        self.with_found(rings)
    }

    /// The numbers that were recognised, and new ones for the other sides.
    pub fn with_found(&self, found: Vec<Vec<Option<SideId>>>) -> Self {
        let mut sides = Self { rings: Vec::with_capacity(found.len()), next: self.next };
        for ring in found {
            let ring = ring.into_iter().map(|id| id.unwrap_or_else(|| sides.take())).collect();
            sides.rings.push(ring);
        }
        sides
    }

    /// If there are as many sides as before between two recognised ones, they are the same.
    fn between_the_same(&self, rings: &mut [Vec<Option<SideId>>]) {
        for (index, ring) in rings.iter_mut().enumerate() {
            let Some(first) = ring.iter().position(Option::is_some) else {
                // Nothing was recognised: the ring as a whole may have been moved.
                let same = self.rings.get(index).filter(|old| old.len() == ring.len());
                if let Some(old) = same {
                    ring.iter_mut().zip(old).for_each(|(now, id)| *now = Some(*id));
                }
                continue;
            };
            let n = ring.len();
            let mut from = 0;
            while from < n {
                let at = (first + from) % n;
                let gap = (1..=n).find(|step| ring[(at + step) % n].is_some()).unwrap_or(n);
                if let (Some(start), Some(end)) = (ring[at], ring[(at + gap) % n]) {
                    for (step, id) in self.between(start, end, gap).into_iter().enumerate() {
                        ring[(at + 1 + step) % n] = Some(id);
                    }
                }
                from += gap;
            }
        }
        // A number that two rings claim goes to neither.
        let mut counts: BTreeMap<SideId, usize> = BTreeMap::new();
        rings.iter().flatten().flatten().for_each(|id| *counts.entry(*id).or_default() += 1);
        for now in rings.iter_mut().flatten() {
            *now = now.filter(|id| counts.get(id) == Some(&1));
        }
    }

    /// The numbers strictly between two of one ring, continuing from the first, if the second is `gap` steps away.
    fn between(&self, start: SideId, end: SideId, gap: usize) -> Vec<SideId> {
        let (Some((ring, at)), Some((other, to))) = (self.place_of(start), self.place_of(end)) else {
            return Vec::new();
        };
        let old = &self.rings[ring];
        let n = old.len();
        let steps = if at == to { n } else { (to + n - at) % n };
        if ring != other || steps != gap {
            return Vec::new();
        }
        (1..gap).map(|step| old[(at + step) % n]).collect()
    }

    /// Adjusts the numbers of an outline that replaces another one: the counter never goes back, and a number that was
    /// dropped there is not used again. Returns the replacements of such numbers.
    pub fn settle(&mut self, there: &Self) -> BTreeMap<SideId, SideId> {
        self.next = self.next.max(there.next);
        let known: BTreeSet<SideId> = there.all().collect();
        let mut instead = BTreeMap::new();
        for ring in 0..self.rings.len() {
            for side in 0..self.rings[ring].len() {
                let id = self.rings[ring][side];
                if id < there.next && !known.contains(&id) {
                    let new = self.take();
                    self.rings[ring][side] = new;
                    instead.insert(id, new);
                }
            }
        }
        instead
    }
}

/// Whether a ring has the face to its left: an outline counter-clockwise, a hole clockwise.
fn runs_as_meant(index: usize, ring: &[DVec2]) -> bool {
    (crate::signed_area(ring) > 0.0) == (index == 0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use glam::dvec2;

    fn polygon(corners: &[(f64, f64)]) -> Polygon {
        Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect())
    }

    fn rectangle() -> Polygon {
        polygon(&[(0.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0)])
    }

    fn ids(sides: &Sides) -> Vec<Vec<u32>> {
        sides.rings().iter().map(|ring| ring.iter().map(|id| id.0).collect()).collect()
    }

    #[test]
    fn a_split_leaves_the_number_with_the_longer_stretch() {
        let mut sides = Sides::in_order(&rectangle());
        assert_eq!(sides.split(0, 0, (7.0, 3.0)), Some(SideId(4)));
        assert_eq!(ids(&sides), [[0, 4, 1, 2, 3]]);
        assert_eq!(sides.split(0, 3, (1.0, 9.0)), Some(SideId(5)));
        assert_eq!(ids(&sides), [[0, 4, 1, 5, 2, 3]]);
        // In the middle it stays with the first, whatever rounding does.
        assert_eq!(sides.split(0, 0, (3.5, 3.5 + 1e-12)), Some(SideId(6)));
        assert_eq!(ids(&sides), [[0, 6, 4, 1, 5, 2, 3]]);
        assert_eq!(sides.split(0, 7, (1.0, 1.0)), None);
        assert_eq!(sides.split(1, 0, (1.0, 1.0)), None);
        assert_eq!(sides.next(), SideId(7));
    }

    #[test]
    fn a_join_keeps_the_longer_ones_and_the_other_is_gone_for_ever() {
        let mut sides = Sides::in_order(&rectangle());
        assert_eq!(sides.join(0, 1, (10.0, 6.0)), Some((SideId(1), SideId(0))));
        assert_eq!(ids(&sides), [[0, 2, 3]]);
        // The corner that the ring starts from: the side before it is the last one.
        let mut sides = Sides::in_order(&rectangle());
        assert_eq!(sides.join(0, 0, (6.0, 10.0)), Some((SideId(3), SideId(0))));
        assert_eq!(ids(&sides), [[1, 2, 0]]);
        sides.add_ring(3);
        assert_eq!(ids(&sides), [vec![1, 2, 0], vec![4, 5, 6]]);
        assert_eq!(sides.join(0, 3, (1.0, 1.0)), None);
        assert_eq!(Sides::default().join(0, 0, (1.0, 1.0)), None);
    }

    #[test]
    fn a_ring_that_comes_after_another_went_has_numbers_of_its_own() {
        let mut sides = Sides::in_order(&rectangle());
        sides.add_ring(3);
        sides.add_ring(3);
        assert_eq!((sides.of_ring(1), sides.ring_of(SideId(7))), (Some(SideId(4)), Some(2)));
        sides.remove_ring(1);
        assert_eq!((sides.of_ring(1), sides.ring_of(SideId(4))), (Some(SideId(7)), None));
        sides.add_ring(3);
        assert_eq!(ids(&sides), [vec![0, 1, 2, 3], vec![7, 8, 9], vec![10, 11, 12]]);
        assert!(sides.are_sound());
    }

    #[test]
    fn what_cannot_be_is_told() {
        let read = |text: &str| serde_json::from_str::<Sides>(text).unwrap();
        assert!(read(r#"{"rings": [[0, 2, 5]], "next": 6}"#).are_sound());
        assert!(!read(r#"{"rings": [[0, 2, 2]], "next": 6}"#).are_sound());
        assert!(!read(r#"{"rings": [[0, 2, 6]], "next": 6}"#).are_sound());
        assert!(!read(r#"{"rings": [[0, 2, 5]], "next": 4294967295}"#).are_sound());
        let sides = Sides::in_order(&rectangle());
        assert!(sides.fit(&rectangle()) && !sides.fit(&polygon(&[(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)])));
    }

    #[test]
    fn an_outline_drawn_anew_keeps_the_numbers_of_what_stayed() {
        let before = rectangle();
        let mut sides = Sides::in_order(&before);
        // One corner moved: two sides moved, and they are between the two that did not.
        let moved = polygon(&[(0.0, 0.0), (12.0, -1.0), (10.0, 6.0), (0.0, 6.0)]);
        assert_eq!(ids(&sides.carried(&before, &moved)), [[0, 1, 2, 3]]);
        // Starting from another corner, and in the other direction.
        let turned = polygon(&[(10.0, 6.0), (0.0, 6.0), (0.0, 0.0), (10.0, 0.0)]);
        assert_eq!(ids(&sides.carried(&before, &turned)), [[2, 3, 0, 1]]);
        let mirrored = polygon(&[(0.0, 6.0), (10.0, 6.0), (10.0, 0.0), (0.0, 0.0)]);
        assert_eq!(ids(&sides.carried(&before, &mirrored)), [[2, 1, 0, 3]]);
        // A corner cut off: the new side has a new number.
        let cut = polygon(&[(0.0, 0.0), (8.0, 0.0), (10.0, 2.0), (10.0, 6.0), (0.0, 6.0)]);
        assert_eq!(ids(&sides.carried(&before, &cut)), [[0, 4, 1, 2, 3]]);
        // The eave split into two.
        let notched = polygon(&[
            (0.0, 0.0),
            (3.0, 0.0),
            (3.0, 1.0),
            (4.0, 1.0),
            (4.0, 0.0),
            (10.0, 0.0),
            (10.0, 6.0),
            (0.0, 6.0),
        ]);
        assert_eq!(ids(&sides.carried(&before, &notched)), [[4, 5, 6, 7, 0, 1, 2, 3]]);
        // Moved as a whole, far from where it was.
        let away = before.map(|p| p + dvec2(100.0, 100.0));
        assert_eq!(ids(&sides.carried(&before, &away)), [[0, 1, 2, 3]]);
        // The first of two holes is removed.
        let hole = |x: f64| vec![dvec2(x, 2.0), dvec2(x, 3.0), dvec2(x + 1.0, 3.0)];
        let two = Polygon { holes: vec![hole(2.0), hole(6.0)], ..before.clone() };
        sides.add_ring(3);
        sides.add_ring(3);
        let one = Polygon { holes: vec![hole(6.0)], ..before };
        assert_eq!(ids(&sides.carried(&two, &one)), [vec![0, 1, 2, 3], vec![7, 8, 9]]);
    }

    #[test]
    fn a_lost_number_does_not_come_back() {
        let old = Sides::in_order(&rectangle());
        let mut there = old.clone();
        there.join(0, 1, (10.0, 6.0));
        there.split(0, 0, (8.0, 2.0));
        let mut put = old.clone();
        assert_eq!(put.settle(&there), BTreeMap::from([(SideId(1), SideId(5))]));
        assert_eq!(ids(&put), [[0, 5, 2, 3]]);
        assert_eq!(put.next(), SideId(6));
        assert!(there.clone().settle(&old).is_empty());
    }
}
