//! Adding, removing and moving corners of a face, along with its side ids and the settings for them.

use super::{Face, Overrule};
use chalkcourse_geometry::{DVec2, EdgeKind, SideId, Sides};
use std::collections::BTreeMap;

impl Face {
    /// The face with a corner moved; `None` if there is no such corner.
    pub fn with_corner_moved(&self, ring: usize, corner: usize, to: DVec2) -> Option<Self> {
        let mut face = self.with_numbers();
        *face.ring_mut(ring)?.get_mut(corner)? = to;
        Some(face)
    }

    /// The face with a new corner on a side; `None` if there is no such side. The longer piece keeps the side's id, and
    /// both keep its user-set kind.
    pub fn with_corner_added(&self, ring: usize, side: usize, at: DVec2) -> Option<Self> {
        let mut face = self.with_numbers();
        let (.., a, b) = self.outline.sides().find(|&(r, s, ..)| (r, s) == (ring, side))?;
        face.ring_mut(ring)?.insert(side + 1, at);
        let old = face.sides.at(ring, side)?;
        let new = face.sides.split(ring, side, (a.distance(at), at.distance(b)))?;
        if let Some(kind) = face.overruled_kind(old) {
            face.overruled.push(Overrule { side: new, kind });
            face.overruled.sort_by_key(|o| o.side);
        }
        Some(face)
    }

    /// The face without a corner: the two sides that meet there become one, with the id of the longer. `None` for a
    /// ring of three corners.
    pub fn without_corner(&self, ring: usize, corner: usize) -> Option<Self> {
        let mut face = self.with_numbers();
        let corners = face.ring_mut(ring)?;
        let n = corners.len();
        if n <= 3 || corner >= n {
            return None;
        }
        let (before, at, after) = (corners[(corner + n - 1) % n], corners[corner], corners[(corner + 1) % n]);
        corners.remove(corner);
        let (lost, kept) = face.sides.join(ring, corner, (before.distance(at), at.distance(after)))?;
        // If both sides had the same user-set kind, nothing is lost.
        if face.overruled_kind(lost) == face.overruled_kind(kept) {
            face.overruled.retain(|o| o.side != lost);
        }
        Some(face)
    }

    /// The face with another hole.
    pub fn with_hole(&self, corners: Vec<DVec2>) -> Self {
        let mut face = self.with_numbers();
        face.sides.add_ring(corners.len());
        face.outline.holes.push(corners);
        face
    }

    /// The face without the `ring`-th hole, from 1; `None` if there is no such hole.
    pub fn without_hole(&self, ring: usize) -> Option<Self> {
        let mut face = self.with_numbers();
        let hole = ring.checked_sub(1).filter(|hole| *hole < face.outline.holes.len())?;
        face.outline.holes.remove(hole);
        face.sides.remove_ring(ring);
        Some(face)
    }

    /// The face with the kind of a side set by the user, or with `None` determined automatically again.
    pub fn with_side_overruled(&self, side: SideId, kind: Option<EdgeKind>) -> Self {
        let mut face = self.with_numbers();
        face.overruled.retain(|o| o.side != side);
        face.overruled.extend(kind.map(|kind| Overrule { side, kind }));
        face.overruled.sort_by_key(|o| o.side);
        face
    }

    /// The user-set kind of a side.
    pub fn overruled_kind(&self, side: SideId) -> Option<EdgeKind> {
        self.overruled.iter().find(|o| o.side == side).map(|o| o.kind)
    }

    /// Takes over the side ids of the face that this one replaces. If this face has no ids, or not one for each side,
    /// sides are matched by shape; an id that was deleted there is replaced by a new one, here and wherever it is
    /// referred to.
    pub(crate) fn settle_sides(&mut self, there: Option<&Self>) {
        if !self.sides.fit(&self.outline) {
            self.sides = match there {
                Some(there) => there.numbered().carried(&there.outline, &self.outline),
                None => Sides::in_order(&self.outline),
            };
            return;
        }
        let instead = there.map(|there| self.sides.settle(&there.sides)).unwrap_or_default();
        self.rename_sides(&instead);
    }

    fn rename_sides(&mut self, instead: &BTreeMap<SideId, SideId>) {
        if instead.is_empty() {
            return;
        }
        let named = self.overruled.iter_mut().map(|o| &mut o.side);
        for side in named.chain(self.taped.of.iter_mut().flatten()) {
            if let Some(new) = instead.get(side) {
                *side = *new;
            }
        }
        self.overruled.sort_by_key(|o| o.side);
    }

    fn with_numbers(&self) -> Self {
        Self { sides: self.numbered().into_owned(), ..self.clone() }
    }

    fn ring_mut(&mut self, ring: usize) -> Option<&mut Vec<DVec2>> {
        match ring {
            0 => Some(&mut self.outline.outer),
            hole => self.outline.holes.get_mut(hole - 1),
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::*;
    use chalkcourse_geometry::{Azimuth, EdgeKind, Length, Pitch, Polygon, SideId, Sides, dvec2};
    use std::path::Path;

    /// 10 × 6 m, facing south: sides 0 eave, 1 east rake, 2 ridge, 3 west rake.
    fn face() -> Face {
        let outline =
            Polygon::new(vec![dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(10.0, 6.0), dvec2(0.0, 6.0)]);
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        Face::new(FaceId(1), "South".into(), outline, pitch, Azimuth::SOUTH, Length::from_metres(3.0))
    }

    fn job() -> Resolved {
        let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        apply(&job, &Edit::PutFace(face())).unwrap()
    }

    fn ids(face: &Face) -> Vec<Vec<u32>> {
        face.sides.rings().iter().map(|ring| ring.iter().map(|id| id.0).collect()).collect()
    }

    fn put(job: &Resolved, face: Face) -> Resolved {
        let next = apply(job, &Edit::PutFace(face)).unwrap();
        let text = job_to_text(&next).unwrap();
        assert_eq!(job_from_text(&text, Path::new("t")).unwrap(), next);
        next
    }

    /// Two corners are added on the eave and removed again: if sides were numbered by position, the east rake would
    /// become the west one.
    #[test]
    fn corners_on_another_side_do_not_change_the_id_of_a_rake() {
        let mut now = face();
        for x in [4.0, 7.0] {
            now = now.with_corner_added(0, now.outline.outer.len() - 4, dvec2(x, 0.0)).unwrap();
        }
        let at = |face: &Face, id| {
            let (ring, side) = face.sides.place_of(SideId(id)).unwrap();
            face.outline.sides().find(|s| (s.0, s.1) == (ring, side)).map(|s| (s.2, s.3)).unwrap()
        };
        assert_eq!(at(&now, 1), at(&face(), 1));
        assert_eq!(at(&now, 3), at(&face(), 3));
        let less = now.without_corner(0, 1).and_then(|less| less.without_corner(0, 1)).unwrap();
        assert_eq!(less.outline, face().outline);
        assert_eq!((at(&less, 1), at(&less, 3)), (at(&face(), 1), at(&face(), 3)));
    }

    #[test]
    fn an_overruled_kind_applies_to_both_pieces_of_a_split_side() {
        let wall = Some(EdgeKind::WallLine);
        let said = face().with_side_overruled(SideId(1), wall);
        let two = said.with_corner_added(0, 1, dvec2(10.0, 2.0)).unwrap();
        assert_eq!(ids(&two), [[0, 4, 1, 2, 3]], "the longer piece is the rake");
        assert_eq!((two.overruled_kind(SideId(1)), two.overruled_kind(SideId(4))), (wall, wall));
        let one = two.without_corner(0, 2).unwrap();
        assert_eq!((ids(&one), &one.overruled), (vec![vec![0, 1, 2, 3]], &said.overruled));
        assert_eq!(one.lost_overrules().count(), 0);
        // A shorter side merges with a longer one that has no user-set kind: that is reported, and kept until the user
        // removes it.
        let cut = said.without_corner(0, 1).unwrap();
        assert_eq!(ids(&cut), [[0, 2, 3]]);
        assert_eq!(cut.lost_overrules().map(|o| o.side).collect::<Vec<_>>(), [SideId(1)]);
        assert!(cut.input().overruled.is_empty());
        let kept = put(&job(), cut.clone());
        assert_eq!(kept.faces[0], cut);
        assert_eq!(cut.without_lost().overruled, vec![]);
    }

    #[test]
    fn adding_and_removing_holes_keeps_ids() {
        let hole = |x: f64| vec![dvec2(x, 2.0), dvec2(x + 1.0, 2.0), dvec2(x, 3.0)];
        let two = face().with_hole(hole(2.0)).with_hole(hole(6.0));
        let said = two.with_side_overruled(SideId(8), Some(EdgeKind::Step));
        let one = said.without_hole(1).unwrap();
        assert_eq!(ids(&one), [vec![0, 1, 2, 3], vec![7, 8, 9]]);
        assert_eq!(one.input().overruled.keys().collect::<Vec<_>>(), [&(1, 1)]);
        let again = one.with_hole(hole(2.0));
        assert_eq!(ids(&again), [vec![0, 1, 2, 3], vec![7, 8, 9], vec![10, 11, 12]]);
        assert_eq!((again.without_hole(0), again.without_hole(3)), (None, None));
        put(&job(), again);
    }

    /// Sides of a face put without ids, by hand or by a program, are matched by shape.
    #[test]
    fn a_face_put_without_ids_keeps_those_of_unchanged_sides() {
        let job = job();
        let mut drawn = job.faces[0].clone();
        drawn.outline.outer.insert(1, dvec2(6.0, -1.0));
        drawn.sides = Sides::default();
        assert_eq!(ids(&put(&job, drawn).faces[0]), [[4, 5, 1, 2, 3]]);
        // A hole added directly to the outline, and a new face.
        let mut pushed = job.faces[0].clone();
        pushed.outline.holes.push(vec![dvec2(1.0, 1.0), dvec2(2.0, 1.0), dvec2(1.0, 2.0)]);
        assert_eq!(ids(&put(&job, pushed).faces[0]), [vec![0, 1, 2, 3], vec![4, 5, 6]]);
        let new = Face { id: FaceId(9), sides: Sides::default(), ..face() };
        assert_eq!(ids(&put(&job, new).faces[1]), [[0, 1, 2, 3]]);
    }

    #[test]
    fn putting_an_old_state_reuses_no_deleted_id() {
        let old = put(&job(), face().with_side_overruled(SideId(1), Some(EdgeKind::WallLine)));
        let less = put(&old, old.faces[0].without_corner(0, 1).unwrap().without_lost());
        let again = put(&less, old.faces[0].clone());
        assert_eq!(ids(&again.faces[0]), [[0, 4, 2, 3]]);
        assert_eq!(again.faces[0].overruled_kind(SideId(4)), Some(EdgeKind::WallLine));
        assert_eq!(again.faces[0].overruled.len(), 1);
        // Undo restores exactly the previous job.
        let mut history = History::new(old.clone());
        history.edit("less", &Edit::PutFace(less.faces[0].clone())).unwrap();
        history.undo();
        assert_eq!(**history.job(), old);
    }

    #[test]
    fn invalid_side_ids_are_refused() {
        let text = job_to_text(&job()).unwrap();
        let numbers = text.find("\"rings\"").unwrap();
        for (from, to) in [("0", "1"), ("3", "7")] {
            let at = numbers + text[numbers..].find(from).unwrap();
            let wrong = format!("{}{to}{}", &text[..at], &text[at + 1..]);
            let error = job_from_text(&wrong, Path::new("t")).unwrap_err().to_string();
            assert!(error.contains("faces[0]") && error.contains("a number of its own"), "{error}");
        }
    }

    #[test]
    fn tape_measurements_stay_with_their_sides() {
        let read = |m: f64| Some(Length::from_metres(m));
        let taped = TapedDeck { eave: read(9.98), left: read(6.6), ..TapedDeck::default() };
        let taped = face().with_taped(taped);
        assert_eq!(taped.taped.of, Some([SideId(0), SideId(2), SideId(3), SideId(1)]));
        // Water now runs west: the old left rake is the eave, the old eave the right rake.
        let turned = Face { downslope: Azimuth::WEST, ..taped.clone() }.taped_now();
        assert_eq!((turned.eave, turned.right, turned.left), (read(6.6), read(9.98), None));
        // With a fifth corner the measured sides still exist; after one of them is deleted they do not.
        let five = taped.with_corner_added(0, 2, dvec2(2.0, 7.0)).unwrap();
        assert_eq!((five.taped_now().eave, five.has_lost_tape()), (read(9.98), false));
        let other = five.without_corner(0, 0).unwrap();
        assert!(other.has_lost_tape() && other.taped_now().is_empty() && !other.taped.is_empty());
        assert!(other.without_lost().taped.is_empty());
        let afresh = other.with_taped(TapedDeck { head: read(3.0), ..TapedDeck::default() });
        assert!(!afresh.has_lost_tape());
        assert_eq!(face().with_taped(TapedDeck::default()).taped, TapedDeck::default());
    }
}
