//! Parts of a face that hold a fractional number of modules in the weights so far, such as seven and a half in one leg
//! beside a wing: a layout has an integer number there. A bound for a part holds for the modules of any layout whose
//! lower left corners are in it, and rounded down it makes a clique of many.

use super::clique::FAR;
use crate::Rect;
use glam::{DVec2, dvec2};

/// Lines along each axis at which parts are cut.
const MOST_CUTS: usize = 20;

/// Cuts closer to each other than this count as one, metres.
const NEAR: f64 = 0.05;

/// Fractions of a module above an integer that are worth testing.
const BROKEN: [f64; 2] = [0.1, 0.95];

/// Parts on one side of a line or in a corner of two, each with its weight rounded down; those whose fraction is most
/// likely too much first.
pub(super) fn parts(places: &[(DVec2, f64)]) -> Vec<(Rect, usize)> {
    let sides = |axis: usize| -> Vec<[f64; 2]> {
        let cuts = cuts(places, axis);
        let sides = cuts.iter().flat_map(|&cut| [[-FAR, cut], [cut, FAR]]);
        std::iter::once([-FAR, FAR]).chain(sides).collect()
    };
    let (us, vs) = (sides(0), sides(1));
    let mut found: Vec<(f64, Rect, usize)> = Vec::new();
    let mut seen: Vec<Vec<u64>> = Vec::new();
    for u in &us {
        let across: Vec<(usize, &(DVec2, f64))> =
            places.iter().enumerate().filter(|(_, (p, _))| u[0] <= p.x && p.x < u[1]).collect();
        for v in &vs {
            let inside = across.iter().filter(|(_, (p, _))| v[0] <= p.y && p.y < v[1]);
            let mut members = vec![0_u64; places.len().div_ceil(64)];
            let mut weight = 0.0;
            for (i, (_, of)) in inside {
                weight += of;
                if let Some(word) = members.get_mut(i / 64) {
                    *word |= 1 << (i % 64);
                }
            }
            let broken = weight - weight.floor();
            if !(BROKEN[0]..BROKEN[1]).contains(&broken) || seen.contains(&members) {
                continue;
            }
            seen.push(members);
            let rect = Rect { min: dvec2(u[0], v[0]), max: dvec2(u[1], v[1]) };
            found.push(((broken - 0.5).abs(), rect, weight.floor() as usize));
        }
    }
    found.sort_by(|p, q| p.0.total_cmp(&q.0));
    found.into_iter().map(|(_, rect, most)| (rect, most)).collect()
}

/// Cuts midway between places along an axis.
fn cuts(places: &[(DVec2, f64)], axis: usize) -> Vec<f64> {
    let mut ends: Vec<f64> = places.iter().map(|(p, _)| p[axis]).collect();
    ends.sort_by(f64::total_cmp);
    let apart = ends.windows(2).filter(|pair| pair[1] - pair[0] > NEAR);
    let cuts: Vec<f64> = apart.map(|pair| (pair[0] + pair[1]) / 2.0).collect();
    let step = cuts.len().div_ceil(MOST_CUTS).max(1);
    cuts.into_iter().step_by(step).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: two and a half to the left of 5, two to the right.
    #[test]
    fn a_broken_half_is_found() {
        let places = [(0.0, 1.0), (1.0, 1.0), (2.0, 0.5), (8.0, 2.0)].map(|(u, of)| (dvec2(u, 0.0), of));
        let found = parts(&places);
        let left = found.iter().find(|(rect, _)| rect.max.x == 5.0).unwrap();
        assert_eq!(left.1, 2);
        assert!(
            found.iter().all(|(rect, _)| rect.min.x < 5.0 && (rect.max.x > 2.0 || rect.max.x > FAR / 2.0))
        );
    }
}
