//! Places one label after another, each at its first free candidate.

use crate::ground::{Ground, Under};
use crate::spots::each;
use crate::{Anchor, How, Label, Over, Placed, Scene};

/// How many candidates may be freed by moving the label there.
const ASKED: usize = 6;
/// Limits per drawing on leader candidates tried and on labels asked to move: a frame does not wait for labels that have no room
/// anyway. More important labels go first.
const MOST_OUT: usize = 1_000;
const MOST_ASKED: usize = 120;

/// The position of each label, in order; `None` if it found no place.
///
/// No placed label overlaps another label, a leader, an obstacle of [`crate::Weight::Line`] or more (other than the thing it
/// names), or the border of the drawing; except [`Anchor::Fixed`], which stays where it is told and is an obstacle to all others.
///
/// Labels with non-finite values have no place, nor has any label on a drawing with non-finite bounds.
pub fn place(scene: &Scene) -> Vec<Option<Placed>> {
    let size = scene.clip.size();
    if !(size.is_finite() && size.min_element() >= 0.0 && scene.clear.is_finite()) {
        return vec![None; scene.labels.len()];
    }
    let mut order: Vec<usize> = (0..scene.labels.len()).collect();
    let rank =
        |at: usize| scene.labels.get(at).map_or((true, u8::MAX), |label| (!is_fixed(label), label.rank));
    // A stable sort.
    order.sort_by_key(|&at| rank(at));
    let mut ground = Ground::of(scene);
    let mut placed: Vec<Option<Placed>> = vec![None; scene.labels.len()];
    let (mut left_out, mut left_asked) = (MOST_OUT, MOST_ASKED);
    // Within a rank, try all labels at their things before any with a leader: a leader must not end where another label belongs.
    for same in order.chunk_by(|one, other| rank(*one) == rank(*other)) {
        for out in [false, true] {
            for &at in same {
                let Some(label) = scene.labels.get(at).filter(|label| is_sound(label)) else { continue };
                if placed.get(at).is_none_or(Option::is_some) {
                    continue;
                }
                let mut all = usize::MAX;
                let left = if out { &mut left_out } else { &mut all };
                let mut found = free(scene, &ground, label, left, |how| matches!(how, How::Leader(_)) == out);
                if found.is_none() && !out {
                    found = make_room(scene, &mut ground, &mut placed, label, &mut left_asked);
                }
                if let Some(found) = &found {
                    ground.settle(at, found);
                }
                if let Some(slot) = placed.get_mut(at) {
                    *slot = found;
                }
            }
        }
    }
    placed
}

/// Whether all its values are finite.
fn is_sound(label: &Label) -> bool {
    let looks = label.tries.iter().all(|look| {
        let most = if let How::Leader(most) = look.how { most } else { 0.0 };
        look.size.is_finite() && look.size.min_element() >= 0.0 && most.is_finite()
    });
    looks
        && match &label.anchor {
            Anchor::Fixed(at) => at.is_finite(),
            Anchor::Around { thing, gap, .. } => {
                thing.min.is_finite() && thing.max.is_finite() && gap.is_finite()
            }
            Anchor::Along { from, to, gap, home, .. } => {
                from.is_finite() && to.is_finite() && gap.is_finite() && (0.0..=1.0).contains(home)
            }
            Anchor::Within { rings, home } => {
                home.is_finite() && rings.iter().flatten().all(|p| p.is_finite())
            }
        }
}

fn is_fixed(label: &Label) -> bool {
    matches!(label.anchor, Anchor::Fixed(_))
        && label.tries.iter().all(|look| !matches!(look.how, How::Leader(_)))
}

/// The first free candidate within the remaining budget. Overlapping what it may overlap comes before the next form.
fn free(
    scene: &Scene,
    ground: &Ground,
    label: &Label,
    left: &mut usize,
    may: impl Fn(How) -> bool,
) -> Option<Placed> {
    let fixed = is_fixed(label);
    for (nth, look) in label.tries.iter().enumerate().filter(|(_, look)| may(look.how)) {
        let mut first = |over: Over| {
            let mut found = None;
            each(&label.anchor, look, nth, &scene.clip, |spot| {
                *left = left.saturating_sub(1);
                let good = fixed || ground.under(&spot, label.names, over) == Under::Free;
                if good {
                    found = Some(spot);
                }
                good || *left == 0
            });
            found
        };
        // If nothing is free even then, nothing is free for a stricter search.
        let Some(any) = first(label.over) else { continue };
        let less = [Over::Nothing, Over::Faint].into_iter().filter(|over| *over < label.over);
        return Some(less.into_iter().find_map(first).unwrap_or(any));
    }
    None
}

/// A candidate occupied by one other label that can go elsewhere. That one is as important or more: it moves, but is never
/// dropped.
fn make_room(
    scene: &Scene,
    ground: &mut Ground,
    placed: &mut [Option<Placed>],
    label: &Label,
    left: &mut usize,
) -> Option<Placed> {
    if *left == 0 {
        return None;
    }
    let mut asked: Vec<(Placed, usize)> = Vec::new();
    for (nth, look) in label.tries.iter().enumerate() {
        // A leader only goes where there is room already.
        if matches!(look.how, How::Leader(_)) {
            continue;
        }
        each(&label.anchor, look, nth, &scene.clip, |spot| {
            if let Under::One(other) = ground.under(&spot, label.names, label.over) {
                asked.push((spot, other));
            }
            asked.len() >= ASKED
        });
    }
    let mut all = usize::MAX;
    for (spot, other) in asked {
        let (Some(neighbour), Some(before)) = (scene.labels.get(other), placed.get(other).copied().flatten())
        else {
            continue;
        };
        if is_fixed(neighbour) {
            continue;
        }
        let asking = scene.labels.len();
        let Some(fewer) = left.checked_sub(1) else { break };
        *left = fewer;
        ground.lift(other);
        ground.settle(asking, &spot);
        let moved = free(scene, ground, neighbour, &mut all, |how| !matches!(how, How::Leader(_)));
        ground.lift(asking);
        let stands = moved.unwrap_or(before);
        ground.settle(other, &stands);
        if let Some(slot) = placed.get_mut(other) {
            *slot = Some(stands);
        }
        if moved.is_some() {
            return Some(spot);
        }
    }
    None
}
