use super::Surface;
use crate::Rect;
use glam::DVec2;
use std::collections::{BTreeSet, HashMap};

/// A planar subdivision by segments that no longer cross. Half-edges come in pairs: `e` and `e ^ 1` are the two directions of one
/// segment.
pub(super) struct Overlay {
    pub(super) nodes: Vec<DVec2>,
    /// Start node of each half-edge.
    tails: Vec<usize>,
    /// For each half-edge, the cell border to its left.
    cell: Vec<usize>,
    /// For each cell border, a point in the cell.
    inside: Vec<DVec2>,
    near: f64,
}

/// Nodes, hashed on a grid with cells as wide as the tolerance.
struct Nodes {
    near: f64,
    list: Vec<DVec2>,
    grid: HashMap<(i64, i64), Vec<usize>>,
}

impl Nodes {
    fn at(&mut self, p: DVec2) -> usize {
        let cell = |p: DVec2| ((p.x / self.near).floor() as i64, (p.y / self.near).floor() as i64);
        let (x, y) = cell(p);
        for dx in -1..=1 {
            for dy in -1..=1 {
                for &node in self.grid.get(&(x + dx, y + dy)).into_iter().flatten() {
                    if self.list[node].distance_squared(p) <= self.near * self.near {
                        return node;
                    }
                }
            }
        }
        self.list.push(p);
        self.grid.entry((x, y)).or_default().push(self.list.len() - 1);
        self.list.len() - 1
    }
}

impl Overlay {
    /// Subdivides the plan by the borders of all surfaces and by the intersection lines of planes of different parts.
    pub(super) fn of(surfaces: &[&Surface], planes: &[usize], near: f64) -> Self {
        let mut nodes = Nodes { near, list: Vec::new(), grid: HashMap::new() };
        let mut stretches: BTreeSet<(usize, usize)> = BTreeSet::new();
        let mut add = |nodes: &mut Nodes, a: DVec2, b: DVec2| {
            let (a, b) = (nodes.at(a), nodes.at(b));
            if a != b {
                stretches.insert((a.min(b), a.max(b)));
            }
        };
        for surface in surfaces {
            for (_, _, a, b) in surface.outline.sides() {
                add(&mut nodes, a, b);
            }
        }
        let bounds: Vec<Option<Rect>> = surfaces.iter().map(|surface| surface.outline.bounds()).collect();
        for (i, one) in surfaces.iter().enumerate() {
            for (j, two) in surfaces.iter().enumerate().skip(i + 1) {
                let meet = match (bounds[i], bounds[j]) {
                    (Some(a), Some(b)) => a.overlap(&b).min_element() > 0.0,
                    _ => false,
                };
                if meet && one.part != two.part && planes[i] != planes[j] {
                    for (a, b) in crossings(one, two, near) {
                        add(&mut nodes, a, b);
                    }
                }
            }
        }
        let mut cut: Vec<(usize, usize)> = stretches.into_iter().collect();
        // Snapping a crossing to a node bends a segment slightly, so that it may touch another.
        for _ in 0..4 {
            let (next, cuts) = split_once(&mut nodes, &cut);
            cut = next;
            if cuts == 0 {
                break;
            }
        }
        Self::link(nodes.list, &cut, near)
    }

    fn link(nodes: Vec<DVec2>, stretches: &[(usize, usize)], near: f64) -> Self {
        let tails: Vec<usize> = stretches.iter().flat_map(|&(a, b)| [a, b]).collect();
        let mut leaving: Vec<Vec<(f64, usize)>> = vec![Vec::new(); nodes.len()];
        for (edge, &tail) in tails.iter().enumerate() {
            let along = nodes[tails[edge ^ 1]] - nodes[tail];
            leaving[tail].push((along.y.atan2(along.x), edge));
        }
        let mut place = vec![0; tails.len()];
        for around in &mut leaving {
            around.sort_by(|a, b| a.0.total_cmp(&b.0));
            for (i, &(_, edge)) in around.iter().enumerate() {
                place[edge] = i;
            }
        }
        let following: Vec<usize> = (0..tails.len())
            .map(|edge| {
                let back = edge ^ 1;
                let around = &leaving[tails[back]];
                around[(place[back] + around.len() - 1) % around.len()].1
            })
            .collect();
        let unset = usize::MAX;
        let mut overlay = Self { cell: vec![unset; tails.len()], tails, nodes, inside: Vec::new(), near };
        for first in 0..overlay.tails.len() {
            if overlay.cell[first] != unset {
                continue;
            }
            let (mut at, mut longest) = (first, first);
            while overlay.cell[at] == unset {
                overlay.cell[at] = overlay.inside.len();
                if overlay.length(at) > overlay.length(longest) {
                    longest = at;
                }
                at = following[at];
            }
            let inside = overlay.point_left_of(longest);
            overlay.inside.push(inside);
        }
        overlay
    }

    pub(super) fn edges(&self) -> usize {
        self.tails.len()
    }
    pub(super) fn from(&self, edge: usize) -> usize {
        self.tails[edge]
    }
    pub(super) fn to(&self, edge: usize) -> usize {
        self.tails[edge ^ 1]
    }
    pub(super) fn cell_of(&self, edge: usize) -> usize {
        self.cell[edge]
    }
    pub(super) fn cells(&self) -> impl Iterator<Item = DVec2> {
        self.inside.iter().copied()
    }

    /// The total area of the cells that satisfy a condition, in m².
    pub(super) fn ground(&self, holds: impl Fn(usize) -> bool) -> f64 {
        let origin = self.nodes.first().copied().unwrap_or_default();
        let plan = |node: usize| self.nodes[node] - origin;
        let doubled: f64 = (0..self.tails.len())
            .filter(|&edge| holds(self.cell[edge]))
            .map(|edge| plan(self.from(edge)).perp_dot(plan(self.to(edge))))
            .sum();
        doubled / 2.0
    }

    fn length(&self, edge: usize) -> f64 {
        self.nodes[self.from(edge)].distance_squared(self.nodes[self.to(edge)])
    }

    /// A point between the middle of a half-edge and the first obstacle to its left.
    fn point_left_of(&self, edge: usize) -> DVec2 {
        let (a, b) = (self.nodes[self.from(edge)], self.nodes[self.to(edge)]);
        let (middle, left) = ((a + b) / 2.0, (b - a).perp().normalize_or_zero());
        let along = left.perp();
        let mut reach = f64::INFINITY;
        for other in (0..self.tails.len()).step_by(2).filter(|&other| other != edge & !1) {
            let (p, q) = (self.nodes[self.from(other)] - middle, self.nodes[self.to(other)] - middle);
            let (u, v) = (p.dot(along), q.dot(along));
            // Grazing counts as a hit, or the point could end up on a line that runs along the ray.
            if u.min(v) > self.near || u.max(v) < -self.near {
                continue;
            }
            let away = if (u - v).abs() <= 2.0 * self.near {
                p.dot(left).min(q.dot(left))
            } else {
                p.lerp(q, (u / (u - v)).clamp(0.0, 1.0)).dot(left)
            };
            if away > 0.0 {
                reach = reach.min(away);
            }
        }
        middle + left * (if reach.is_finite() { reach / 2.0 } else { 1.0 })
    }
}

/// Splits all segments where they cross or touch; returns how many splits there were.
fn split_once(nodes: &mut Nodes, stretches: &[(usize, usize)]) -> (Vec<(usize, usize)>, usize) {
    let near = nodes.near;
    let ends = |nodes: &Nodes, i: usize| (nodes.list[stretches[i].0], nodes.list[stretches[i].1]);
    let mut order: Vec<usize> = (0..stretches.len()).collect();
    let left = |nodes: &Nodes, i: usize| {
        let (a, b) = ends(nodes, i);
        a.x.min(b.x)
    };
    order.sort_by(|&i, &j| left(nodes, i).total_cmp(&left(nodes, j)));
    let mut cuts: Vec<Vec<(f64, usize)>> = vec![Vec::new(); stretches.len()];
    let mut count = 0;
    for (at, &i) in order.iter().enumerate() {
        let (a, b) = ends(nodes, i);
        let right = a.x.max(b.x) + near;
        let (low, high) = (a.y.min(b.y) - near, a.y.max(b.y) + near);
        let ab = b - a;
        let along = ab.normalize_or_zero();
        for &j in &order[at + 1..] {
            let (c, d) = ends(nodes, j);
            if c.x.min(d.x) > right {
                break;
            }
            if c.y.min(d.y) > high || c.y.max(d.y) < low {
                continue;
            }
            let mut touch = false;
            // A node of one segment on the other.
            for (node, on, from, to) in [
                (stretches[j].0, i, a, b),
                (stretches[j].1, i, a, b),
                (stretches[i].0, j, c, d),
                (stretches[i].1, j, c, d),
            ] {
                if stretches[on].0 == node || stretches[on].1 == node {
                    touch = true;
                    continue;
                }
                let p = nodes.list[node];
                let unit = (to - from).normalize_or_zero();
                let t = (p - from).dot(unit);
                if (p - from).perp_dot(unit).abs() <= near && t > 0.0 && t < from.distance(to) {
                    cuts[on].push((t, node));
                    touch = true;
                    count += 1;
                }
            }
            let cd = d - c;
            let across = ab.perp_dot(cd);
            if touch || across == 0.0 {
                continue;
            }
            let (t, s) = ((c - a).perp_dot(cd) / across, (c - a).perp_dot(ab) / across);
            if t > 0.0 && t < 1.0 && s > 0.0 && s < 1.0 {
                let p = a + ab * t;
                let node = nodes.at(p);
                cuts[i].push(((p - a).dot(along), node));
                cuts[j].push((s * cd.length(), node));
                count += 1;
            }
        }
    }
    let mut cut: BTreeSet<(usize, usize)> = BTreeSet::new();
    for (i, &(a, b)) in stretches.iter().enumerate() {
        cuts[i].sort_by(|p, q| p.0.total_cmp(&q.0));
        let mut from = a;
        for to in cuts[i].iter().map(|&(_, node)| node).chain([b]) {
            if from != to {
                cut.insert((from.min(to), from.max(to)));
            }
            from = to;
        }
    }
    (cut.into_iter().collect(), count)
}

/// Where faces of two parts intersect: segments of the intersection line of their planes.
fn crossings(one: &Surface, two: &Surface, near: f64) -> Vec<(DVec2, DVec2)> {
    let gradient = |s: &Surface| -s.plane.downslope.unit() * s.plane.pitch.slope();
    let origin = one.plane.datum.truncate();
    // height of two over one: at the origin and its gradient
    let rise = two.plane.height_at(origin) - one.plane.datum.z;
    let slope = gradient(two) - gradient(one);
    let steep = slope.length();
    if steep < 1e-9 {
        return Vec::new();
    }
    let normal = slope / steep;
    let foot = origin - normal * (rise / steep);
    let along = normal.perp();
    let inside = |surface: &Surface| -> Vec<(f64, f64)> {
        let mut at: Vec<f64> = Vec::new();
        for (_, _, a, b) in surface.outline.sides() {
            let (u, v) = ((a - foot).dot(normal), (b - foot).dot(normal));
            // A corner on the line counts for the side that goes up from it, so that each crossing counts once.
            if (u > 0.0) != (v > 0.0) {
                let t = u / (u - v);
                at.push((a.lerp(b, t) - foot).dot(along));
            }
        }
        at.sort_by(f64::total_cmp);
        at.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
    };
    let (first, second) = (inside(one), inside(two));
    let mut found = Vec::new();
    for &(a, b) in &first {
        for &(c, d) in &second {
            let (from, to) = (a.max(c), b.min(d));
            if to - from > near {
                found.push((foot + along * from, foot + along * to));
            }
        }
    }
    found
}
