//! The projection of positions onto the eave.

use super::super::room::Slab;

/// The intervals of u that contain a position with v in a band; not sorted.
pub(super) fn level_shadow(slabs: &[Slab], lo: f64, hi: f64) -> Vec<(f64, f64)> {
    let first = slabs.partition_point(|slab| slab.hi <= lo);
    let mut found = Vec::new();
    for slab in slabs.iter().skip(first).take_while(|slab| slab.lo < hi) {
        let (s, t) = (share(slab, lo), share(slab, hi));
        found.extend(slab.gaps.iter().map(|gap| {
            let ends = |side: [f64; 2]| (mix(side, s), mix(side, t));
            let (a, b) = (ends(gap.a), ends(gap.b));
            (a.0.min(a.1), b.0.max(b.1))
        }));
    }
    found
}

fn mix(ends: [f64; 2], s: f64) -> f64 {
    ends[0] + (ends[1] - ends[0]) * s
}

fn share(slab: &Slab, v: f64) -> f64 {
    ((v - slab.lo) / (slab.hi - slab.lo)).clamp(0.0, 1.0)
}
