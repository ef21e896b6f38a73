//! Which positions can be held by a row below, and which can only be in the lowest row of a block.
//!
//! A module that is held has modules of its own block one row below it, under a share of its lower edge. Those are
//! somewhere among the positions one row down; if all of these together are too little, the module can only be in the
//! lowest row of its block. What is below it is then another block, farther away.

use super::super::room::Slab;
use super::super::stretch::{enough, joined};
use super::laws::Neighbours;
use super::shadow::level_shadow;
use crate::Rect;
use glam::{DVec2, dvec2};

/// Positions are distinguished by band, no band higher than this (metres).
const BAND: f64 = 0.1;

/// Beyond any face, metres.
const FAR: f64 = 1e7;

/// Rectangles of positions.
#[derive(Default)]
pub(super) struct Shelf {
    /// Those that no row below can hold.
    pub(super) open: Vec<Rect>,
    /// The rest.
    pub(super) held: Vec<Rect>,
}

/// Splits all positions of a module by whether a row below can hold them.
pub(super) fn split(slabs: &[Slab], size: DVec2, laws: &Neighbours) -> Shelf {
    let mut shelf = Shelf::default();
    for pair in levels(slabs, size.y, laws).windows(2) {
        let (lo, hi) = (pair[0], pair[1]);
        let below = level_shadow(slabs, lo - size.y - laws.joint[1], hi - size.y - laws.joint[0]);
        let half = laws.bridged.max(0.0) / 2.0;
        let under = joined(below.into_iter().map(|(a, b)| (a - half, b + size.x + half)).collect(), 0.0);
        let mut from = -FAR;
        for (a, b) in enough(&under, size.x, laws.hooked * size.x) {
            add(&mut shelf.open, (from, a), (lo, hi));
            add(&mut shelf.held, (a, b), (lo, hi));
            from = b;
        }
        add(&mut shelf.open, (from, FAR), (lo, hi));
    }
    shelf
}

fn levels(slabs: &[Slab], height: f64, laws: &Neighbours) -> Vec<f64> {
    let (Some(first), Some(last)) = (slabs.first(), slabs.last()) else { return Vec::new() };
    let ends = || slabs.iter().flat_map(|slab| [slab.lo, slab.hi]);
    let mut levels: Vec<f64> = ends()
        .chain(laws.joint.into_iter().flat_map(|joint| ends().map(move |v| v + height + joint)))
        .filter(|&v| first.lo < v && v < last.hi)
        .chain([first.lo - 1.0, last.hi + 1.0])
        .collect();
    levels.sort_unstable_by(f64::total_cmp);
    let mut bands: Vec<f64> = Vec::new();
    for v in levels {
        if let Some(&last) = bands.last() {
            if v - last < 1e-6 {
                continue;
            }
            let parts = ((v - last) / BAND).ceil().min(200.0);
            bands.extend((1..parts as usize).map(|i| last + (v - last) * i as f64 / parts));
        }
        bands.push(v);
    }
    bands
}

/// Adds a rectangle of positions, or extends the one below it.
fn add(rectangles: &mut Vec<Rect>, (a, b): (f64, f64), (lo, hi): (f64, f64)) {
    if b <= a {
        return;
    }
    for rect in rectangles.iter_mut().rev().take(16) {
        if rect.max.y == lo && (rect.min.x - a).abs() < 1e-12 && (rect.max.x - b).abs() < 1e-12 {
            rect.max.y = hi;
            return;
        }
    }
    rectangles.push(Rect { min: dvec2(a, lo), max: dvec2(b, hi) });
}
