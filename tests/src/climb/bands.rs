//! Single-module blocks that only must not overlap: where blocks may touch, hooks impose nothing, since each module may
//! start a block of its own. Finds the most in level bands, exact over the heights where the count of a band changes,
//! on a face that is cut by straight lines repeatedly.

use super::limits::MET;
use super::pieces::Field;
use super::room::{Room, Step, at, pack};
use super::rows::{Laying, Piece};
use super::shape::Thing;
use crate::dice::Dice;
use chalkcourse_geometry::{Rect, dvec2};
use chalkcourse_job::Orientation;

/// Two modules may overlap by this much.
const OVER: f64 = MET * 0.99;

/// The most modules found, each as a block of its own.
pub(super) fn lay(field: &Field, cuts: usize, dice: &mut Dice) -> Vec<Piece> {
    let mut best: Vec<Piece> = Vec::new();
    for ((way, room), laying) in field.rooms.iter().zip(field.layings.iter().cycle()) {
        let found = cut(room, *way, laying, cuts, 2, dice);
        if found.len() > best.len() {
            best = found;
        }
    }
    best
}

/// The better of bands over the whole room and of bands in each of its two parts.
fn cut(
    room: &Room,
    way: Orientation,
    laying: &Laying,
    cuts: usize,
    depth: usize,
    dice: &mut Dice,
) -> Vec<Piece> {
    let mut best = bands(room, way, laying);
    if best.is_empty() || depth == 0 {
        return best;
    }
    let (left, right) = room.width();
    let (low, high) = room.heights();
    let far = 1e3;
    for _ in 0..cuts {
        let [one, two] = if dice.chance(0.6) {
            let line = dice.within(left, right);
            [(line, -far, far, far), (-far, -far, line, far)]
        } else {
            let line = dice.within(low, high.max(low) + room.size.y);
            [(-far, line, far, far), (-far, -far, far, line)]
        }
        .map(|(u, v, u2, v2)| {
            let thing = Thing::Ground { rect: Rect { min: dvec2(u, v), max: dvec2(u2, v2) }, by: 0.0 };
            room.without([thing])
        });
        let mut found = cut(&one, way, laying, cuts / 3, depth - 1, dice);
        found.extend(cut(&two, way, laying, cuts / 3, depth - 1, dice));
        if found.len() > best.len() {
            best = found;
        }
    }
    best
}

/// The most modules in bands that span the room.
fn bands(room: &Room, way: Orientation, laying: &Laying) -> Vec<Piece> {
    let (apart, rise) = (room.size.x - OVER, room.size.y - OVER);
    let steps = room.steps(apart, true);
    let Some(feet) = best_feet(&steps, rise, room.heights().1, laying) else { return Vec::new() };
    let band = |v: f64| pack(&room.starts(v, true), apart);
    let alone =
        |v: f64, u: f64| Piece { orientation: way, reveal: laying.reveal, foot: v, rows: vec![vec![u]] };
    feet.into_iter().flat_map(|v| band(v).into_iter().map(move |u| alone(v, u))).collect()
}

/// Heights of bands with the greatest total. A band can be lowered until it would hold fewer modules or meets the band
/// below; so some optimum has its bands at such heights.
fn best_feet(steps: &[Step], rise: f64, high: f64, laying: &Laying) -> Option<Vec<f64>> {
    let mut heights: Vec<f64> = Vec::new();
    for step in steps.iter().filter(|step| step.most > 0) {
        let stack = (0..).map(|n| step.from + rise * f64::from(n)).take_while(|&v| v <= high);
        heights.extend(stack.map(|v| laying.foot_from(v)));
    }
    heights.retain(|&v| v <= high);
    heights.sort_by(f64::total_cmp);
    heights.dedup_by(|a, b| (*a - *b).abs() < 1e-10);
    // From the top down: the best total at or above each height.
    let mut best: Vec<(usize, usize, bool)> = vec![(0, 0, false); heights.len() + 1];
    for i in (0..heights.len()).rev() {
        let next = heights.partition_point(|&v| v < heights[i] + rise - 1e-12);
        let with = at(steps, heights[i]) + best[next].0;
        best[i] = if with > best[i + 1].0 { (with, next, true) } else { (best[i + 1].0, i + 1, false) };
    }
    if best.first()?.0 == 0 {
        return None;
    }
    let mut feet = Vec::new();
    let mut i = 0;
    while i < heights.len() {
        let (_, next, taken) = best[i];
        if taken {
            feet.push(heights[i]);
        }
        i = next;
    }
    Some(feet)
}
