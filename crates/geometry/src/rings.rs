//! Rings of shared nodes: chains border segments into outlines with holes, and merges close nodes.

use crate::{Polygon, signed_area};
use glam::DVec2;

/// Chains border segments into closed rings, with the inside to the left.
pub(crate) fn chain(mut border: Vec<(usize, usize)>, plan: impl Fn(usize) -> DVec2) -> Vec<Vec<usize>> {
    // A segment in both directions is on no border.
    border.sort_unstable();
    let both: Vec<bool> =
        border.iter().map(|&(from, to)| border.binary_search(&(to, from)).is_ok()).collect();
    let mut open: Vec<(usize, usize, bool)> = border
        .iter()
        .zip(both)
        .filter(|&(_, both)| !both)
        .map(|(&(from, to), _)| (from, to, false))
        .collect();
    let mut rings = Vec::new();
    for first in 0..open.len() {
        if open[first].2 {
            continue;
        }
        let mut ring = Vec::new();
        let mut at = first;
        loop {
            open[at].2 = true;
            let (from, to, _) = open[at];
            ring.push(from);
            // Back at a visited corner: that part is a ring of its own.
            if let Some(start) = ring.iter().position(|&node| node == to) {
                rings.push(ring.split_off(start));
            }
            let start = open.partition_point(|stretch| stretch.0 < to);
            let ways = open[start..].iter().take_while(|stretch| stretch.0 == to).count();
            let back = plan(from) - plan(to);
            // Where several directions continue, the first one clockwise from the incoming one keeps the inside connected.
            let turn = |way: usize| {
                let on = plan(open[way].1) - plan(to);
                on.angle_to(back).rem_euclid(std::f64::consts::TAU)
            };
            let next = (start..start + ways)
                .filter(|&way| !open[way].2)
                .min_by(|&a, &b| turn(a).total_cmp(&turn(b)));
            match next {
                Some(next) => at = next,
                None => break,
            }
        }
        // A dead end leaves the ring open, which the area check will notice.
    }
    rings
}

/// Sorts rings into outlines with their holes. A ring thinner than `thin` (metres) is dropped.
///
/// # Errors
/// A corner of a hole that is in no outline.
pub(crate) fn parts(
    rings: Vec<Vec<usize>>,
    plan: impl Fn(usize) -> DVec2,
    thin: f64,
) -> Result<Vec<Vec<Vec<usize>>>, DVec2> {
    let mut outlines = Vec::new();
    let mut holes = Vec::new();
    for ring in rings {
        let points: Vec<DVec2> = ring.iter().map(|&node| plan(node)).collect();
        let area = signed_area(&points);
        let length: f64 = (0..points.len()).map(|i| points[i].distance(points[(i + 1) % points.len()])).sum();
        if area.abs() <= thin * length {
            continue;
        }
        if area > 0.0 {
            outlines.push((vec![ring], Polygon::new(points)));
        } else {
            holes.push((ring, points));
        }
    }
    for (ring, points) in holes {
        // A hole may touch its outline at a corner: use the middle of a side.
        let point = (points[0] + points[1]) / 2.0;
        let around = outlines
            .iter_mut()
            .filter(|(_, outline)| outline.contains(point))
            .min_by(|a, b| a.1.area().total_cmp(&b.1.area()));
        match around {
            Some((rings, _)) => rings.push(ring),
            None => return Err(point),
        }
    }
    Ok(outlines.into_iter().map(|(rings, _)| rings).collect())
}

/// Merges corners closer than `tolerance` along a side, consistently over all outlines, so that they still tile. A thinner
/// outline is dropped. Each comes with its resulting rings of nodes.
pub(crate) fn tidy(
    plan: &[DVec2],
    faces: &[&[Vec<usize>]],
    tolerance: f64,
) -> Vec<(usize, Polygon, Vec<Vec<usize>>)> {
    let mut sets = Sets::new(plan.len());
    for ring in faces.iter().copied().flatten() {
        for (i, &node) in ring.iter().enumerate() {
            let next = ring[(i + 1) % ring.len()];
            if plan[node].distance(plan[next]) <= tolerance {
                sets.join(node, next);
            }
        }
    }
    let merged = sets.flat();
    let outline_of = |rings: &[Vec<usize>]| {
        let mut outlines = rings.iter().map(|ring| ring.iter().map(|&node| plan[node]).collect());
        Polygon { outer: outlines.next().unwrap_or_default(), holes: outlines.collect() }
    };
    let mut tidied = Vec::new();
    for (index, face) in faces.iter().enumerate() {
        let mut rings = Vec::new();
        for (number, ring) in face.iter().enumerate() {
            let mut kept: Vec<usize> = ring.iter().map(|&node| merged[node]).collect();
            kept.dedup();
            while kept.len() > 1 && kept.first() == kept.last() {
                kept.pop();
            }
            if kept.len() > 2 {
                rings.push(kept);
            } else if number == 0 {
                break;
            }
        }
        let outline = outline_of(&rings);
        let as_it_was = outline_of(face);
        if !rings.is_empty()
            && !outline.defects(tolerance).is_empty()
            && as_it_was.defects(tolerance).is_empty()
        {
            tidied.push((index, as_it_was, face.to_vec()));
        } else if outline.area() > tolerance * tolerance {
            tidied.push((index, outline, rings));
        }
    }
    tidied
}

/// Disjoint sets; the least member represents its set.
pub(crate) struct Sets(Vec<usize>);

impl Sets {
    pub(crate) fn new(count: usize) -> Self {
        Self((0..count).collect())
    }
    pub(crate) fn first(&mut self, mut of: usize) -> usize {
        while self.0[of] != of {
            self.0[of] = self.0[self.0[of]];
            of = self.0[of];
        }
        of
    }
    pub(crate) fn join(&mut self, a: usize, b: usize) {
        let (a, b) = (self.first(a), self.first(b));
        self.0[a.max(b)] = a.min(b);
    }
    pub(crate) fn flat(mut self) -> Vec<usize> {
        (0..self.0.len()).map(|i| self.first(i)).collect()
    }
}
