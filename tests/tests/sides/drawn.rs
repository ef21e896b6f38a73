//! Corners and holes of a drawn face that are added, removed and moved at random.

use super::{again, empty, face};
use chalkcourse_geometry::{DVec2, EdgeKind, SideId, dvec2};
use chalkcourse_job::{Edit, Face, History, apply};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// A user action; indices and positions are made valid when it is applied.
#[derive(Clone, Debug)]
enum Act {
    Add(usize, f64, f64),
    Remove(usize),
    Move(usize, f64, f64),
    Hole(f64, f64),
    Fill(usize),
}

fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        3 => (0..40usize, 0.05..0.95f64, prop_oneof![Just(0.0), -2.0..2.0f64]).prop_map(|(n, t, out)| Act::Add(n, t, out)),
        3 => (0..40usize).prop_map(Act::Remove),
        3 => (0..40usize, -3.0..3.0f64, -3.0..3.0f64).prop_map(|(n, x, y)| Act::Move(n, x, y)),
        1 => (1.0..9.0f64, 1.0..5.0f64).prop_map(|(x, y)| Act::Hole(x, y)),
        1 => (0..4usize).prop_map(Act::Fill),
    ]
}

/// The face after an action, and the corner that moved: from where to where.
fn done(face: &Face, act: &Act) -> Option<(Face, Option<(DVec2, DVec2)>)> {
    let sides: Vec<(usize, usize, DVec2, DVec2)> = face.outline.sides().collect();
    let pick = |n: usize| sides[n % sides.len()];
    match *act {
        Act::Add(n, t, out) => {
            let (ring, side, a, b) = pick(n);
            let at = a.lerp(b, t) + (b - a).perp().normalize_or_zero() * out;
            Some((face.with_corner_added(ring, side, at)?, None))
        }
        Act::Remove(n) => {
            let (ring, corner, ..) = pick(n);
            Some((face.without_corner(ring, corner)?, None))
        }
        Act::Move(n, x, y) => {
            let (ring, corner, a, _) = pick(n);
            let to = a + dvec2(x, y);
            Some((face.with_corner_moved(ring, corner, to)?, Some((a, to))))
        }
        Act::Hole(x, y) => {
            let corners = [(0.0, 0.0), (0.0, 0.8), (0.9, 0.7)].map(|(u, v)| dvec2(x + u, y + v));
            Some((face.with_hole(corners.to_vec()), None))
        }
        Act::Fill(n) => Some((face.without_hole(1 + n % face.outline.holes.len().max(1))?, None)),
    }
}

fn lines(face: &Face) -> BTreeMap<SideId, (DVec2, DVec2)> {
    let ids: Vec<SideId> = face.sides.all().collect();
    let lines: BTreeMap<_, _> =
        ids.iter().copied().zip(face.outline.sides().map(|(.., a, b)| (a, b))).collect();
    assert_eq!(lines.len(), ids.len(), "a number comes twice");
    assert!(face.sides.fit(&face.outline) && face.sides.are_sound());
    lines
}

fn length((a, b): (DVec2, DVec2)) -> f64 {
    a.distance(b)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn ids_never_pass_to_another_side_of_a_drawn_face(
        acts in prop::collection::vec(act(), 1..25),
        clockwise in any::<bool>(),
    ) {
        let mut corners = [(0.0, 0.0), (5.1, -0.2), (10.3, 0.1), (9.8, 6.2), (4.4, 7.1), (-0.3, 5.9)]
            .map(|(x, y)| dvec2(x, y)).to_vec();
        if clockwise {
            corners.reverse();
        }
        let mut start = face(1, corners);
        for (side, kind) in start.sides.all().collect::<Vec<_>>().into_iter().zip(EdgeKind::ALL) {
            start = start.with_side_overruled(side, Some(kind));
        }
        let mut history = History::new(apply(&empty(), &Edit::PutFace(start)).unwrap());
        let mut past = vec![history.job().clone()];
        let mut gone: BTreeSet<SideId> = BTreeSet::new();
        for act in &acts {
            let before = history.job().faces[0].clone();
            let Some((put, moved)) = done(&before, act) else { continue };
            if !history.edit("act", &Edit::PutFace(put)).unwrap() {
                continue;
            }
            past.push(history.job().clone());
            let after = &history.job().faces[0];
            let now = |p: DVec2| moved.filter(|(from, _)| *from == p).map_or(p, |(_, to)| to);
            let (old, new) = (lines(&before), lines(after));
            let is = |was: (DVec2, DVec2), line: (DVec2, DVec2)| now(was.0) == line.0 || now(was.1) == line.1;
            for (id, line) in &new {
                prop_assert!(!gone.contains(id), "{id} came back");
                match old.get(id) {
                    Some(was) => prop_assert!(is(*was, *line), "{id} passed from {was:?} to {line:?}"),
                    None => prop_assert!(*id >= before.sides.next(), "{id} was used before"),
                }
            }
            let lost: Vec<SideId> = old.keys().filter(|id| !new.contains_key(*id)).copied().collect();
            gone.extend(&lost);
            // The longer piece keeps the number; the shorter side loses it.
            match act {
                Act::Add(..) => {
                    let (id, _) = old.iter().find(|(id, line)| new[*id] != **line).unwrap();
                    let piece = new.iter().find(|(id, _)| !old.contains_key(*id)).unwrap();
                    prop_assert!(length(new[id]) >= length(*piece.1) - 1e-6);
                }
                Act::Remove(_) => {
                    prop_assert_eq!(lost.len(), 1);
                    let (id, _) = old.iter().find(|(id, line)| new.get(*id).is_some_and(|now| now != *line)).unwrap();
                    prop_assert!(length(old[id]) >= length(old[&lost[0]]) - 1e-6);
                }
                _ => {}
            }
            // A user-set edge kind never applies to a line that was not part of its side.
            for (id, line) in &new {
                if let Some(kind) = after.overruled_kind(*id) {
                    let from = old.iter().any(|(id, was)| before.overruled_kind(*id) == Some(kind) && is(*was, *line));
                    prop_assert!(from, "{kind:?} passed to {line:?}");
                }
            }
            for lost in before.overruled.iter().filter(|o| lost.contains(&o.side)) {
                let told = after.lost_overrules().any(|o| o == lost);
                let same = new.keys().any(|id| old.contains_key(id) && after.overruled_kind(*id) == Some(lost.kind));
                prop_assert!(told || same, "what was said of {} is lost and nobody is told", lost.side);
            }
            prop_assert_eq!(&again(history.job()), &**history.job());
        }
        while past.len() > 1 {
            past.pop();
            history.undo();
            prop_assert_eq!(&**history.job(), &*past[past.len() - 1]);
        }
    }
}
