//! Pathways for the fire service that a layout may leave free: strips straight up the slope, and paths over the face,
//! or over it and an adjacent one, that cost the fewest modules.

use super::limits::{Limits, MET, fire, in_plan, looked_at, on_each_slope};
use super::shape::Thing;
use crate::dice::Dice;
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Polygon, Rect, RoofFace, distance_to_segment, dvec2};
use chalkcourse_job::{PenetrationKind, Resolved};
use chalkcourse_layout::Layout;
use std::cmp::Reverse;
use std::collections::{BTreeSet, BinaryHeap};

/// Areas kept free of modules on the face.
pub(super) type Corridor = Vec<Thing>;

/// Corridors worth trying, given the modules of a layout without any, cheapest first.
pub(super) fn corridors(
    job: &Resolved,
    layout: &Layout,
    index: usize,
    modules: &[Rect],
    dice: &mut Dice,
) -> Vec<Corridor> {
    let Some(fire) = fire(job) else { return Vec::new() };
    let Some(face) = layout.roof.faces.get(index).filter(|face| looked_at(fire, face)) else {
        return Vec::new();
    };
    let width = fire.path_width.value.metres();
    let mut found = strips(layout, face, index, width, on_each_slope(fire, face), modules);
    if on_each_slope(fire, face) == 0 {
        let mut sets = vec![vec![index]];
        sets.extend(beside(face).into_iter().map(|other| vec![index, other]));
        for set in sets {
            for noise in [0.0, 0.4, 0.4] {
                found.extend(winding(layout, &set, index, width, modules, noise, dice));
            }
        }
    }
    let cost = |corridor: &Corridor| -> usize {
        let limits = Limits { modules: corridor.clone(), ..Limits::default() };
        let lost = |rect: &&Rect| !stands(&limits, rect);
        modules.iter().filter(lost).count()
    };
    let mut costed: Vec<(usize, Corridor)> =
        found.into_iter().map(|corridor| (cost(&corridor), corridor)).collect();
    costed.sort_by_key(|(cost, _)| *cost);
    costed.into_iter().map(|(_, corridor)| corridor).collect()
}

fn stands(limits: &Limits, rect: &Rect) -> bool {
    let mut out = Vec::new();
    for thing in &limits.modules {
        super::shape::Swept::of(thing, rect.size()).at(rect.min.y, &mut out);
    }
    out.iter().all(|(from, to)| rect.min.x <= *from || *to <= rect.min.x)
}

/// Planes next to this one across a hip, a valley or a change of pitch.
fn beside(face: &RoofFace) -> BTreeSet<usize> {
    let crossed = face.edges.iter().filter(|edge| can_be_crossed(edge.kind));
    crossed.filter_map(|edge| edge.neighbour.map(|n| n.face)).collect()
}

fn can_be_crossed(kind: EdgeKind) -> bool {
    matches!(kind, EdgeKind::Hip | EdgeKind::Valley | EdgeKind::PitchChange)
}

fn in_the_way(kind: PenetrationKind) -> bool {
    matches!(kind, PenetrationKind::Chimney | PenetrationKind::Skylight | PenetrationKind::EscapeWindow)
}

/// Strips of pathway width from a level eave to a level ridge: at the ends of the room, beside obstacles, and where
/// they cost the fewest modules. Where the book requires more than one pathway per slope, combinations of that many.
fn strips(
    layout: &Layout,
    face: &RoofFace,
    index: usize,
    width: f64,
    asked: usize,
    modules: &[Rect],
) -> Vec<Corridor> {
    let ends = |kind: EdgeKind| {
        let of = face.edges.iter().filter(move |edge| edge.kind == kind);
        let ends: Vec<f64> = of.flat_map(|edge| [edge.frame.0.x, edge.frame.1.x]).collect();
        Some((ends.iter().copied().reduce(f64::min)?, ends.iter().copied().reduce(f64::max)?))
    };
    let (Some(eave), Some(ridge)) = (ends(EdgeKind::Eave), ends(EdgeKind::Ridge)) else { return Vec::new() };
    let (from, to) = (eave.0.max(ridge.0), eave.1.min(ridge.1));
    let through = layout.penetrations.iter().filter(|p| in_the_way(p.kind));
    let solid: Vec<Rect> = through.filter_map(|p| p.on_face(index)).map(|on| on.bounds).collect();
    let mut starts: Vec<f64> = vec![from, to - width];
    starts.extend(solid.iter().flat_map(|rect| [rect.min.x - width, rect.max.x]));
    // Inner ends of edges: at steps of the eave, between ridges.
    let inner = face.edges.iter().filter(|edge| matches!(edge.kind, EdgeKind::Eave | EdgeKind::Ridge));
    starts.extend(inner.flat_map(|edge| [edge.frame.0.x, edge.frame.1.x]).flat_map(|u| [u, u - width]));
    starts.extend(modules.iter().flat_map(|rect| [rect.max.x, rect.min.x - width]));
    let blocked = |u: f64| solid.iter().any(|rect| rect.min.x < u + width - MET && u + MET < rect.max.x);
    starts.retain(|&u| u >= from - MET && u + width <= to + MET && !blocked(u));
    let lost =
        |u: f64| modules.iter().filter(|rect| rect.min.x < u + width - MET && u + MET < rect.max.x).count();
    starts.sort_by(|a, b| lost(*a).cmp(&lost(*b)).then(a.total_cmp(b)));
    starts.dedup_by(|a, b| (*a - *b).abs() < 1e-6);
    starts.truncate(8);
    let (low, high) = (face.bounds.min.y - 1.0, face.bounds.max.y + 1.0);
    let strip = |u: f64, many: f64| {
        // A strip may be a tenth of a millimetre too narrow.
        let rect = Rect { min: dvec2(u, low), max: dvec2(u + width * many - MET * 0.9, high) };
        Thing::Ground { rect, by: 0.0 }
    };
    if asked < 2 {
        return starts.into_iter().map(|u| vec![strip(u, 1.0)]).collect();
    }
    let mut pairs: Vec<Corridor> =
        starts.iter().filter(|&&u| u + 2.0 * width <= to + MET).map(|&u| vec![strip(u, 2.0)]).collect();
    for (i, &one) in starts.iter().enumerate() {
        let others = starts[i + 1..].iter().filter(|two| (*two - one).abs() >= width);
        pairs.extend(others.map(|&two| vec![strip(one, 1.0), strip(two, 1.0)]));
    }
    pairs
}

/// Lattice spacing, metres in plan.
const STEP: f64 = 0.11;

/// The path over one or two planes that costs the fewest modules: a disc of pathway width moves from an eave to a
/// ridge.
fn winding(
    layout: &Layout,
    set: &[usize],
    index: usize,
    width: f64,
    modules: &[Rect],
    noise: f64,
    dice: &mut Dice,
) -> Option<Corridor> {
    let planes: Vec<&RoofFace> = set.iter().filter_map(|&i| layout.roof.faces.get(i)).collect();
    let face = layout.roof.faces.get(index)?;
    let edges: Vec<&EdgeSpan> = planes.iter().flat_map(|plane| &plane.edges).collect();
    let inner =
        |edge: &&EdgeSpan| can_be_crossed(edge.kind) && edge.neighbour.is_some_and(|n| set.contains(&n.face));
    let walls: Vec<(DVec2, DVec2)> = edges.iter().copied().filter(|e| !inner(e)).map(|e| e.plan).collect();
    let of = |kind: EdgeKind| -> Vec<(DVec2, DVec2)> {
        edges.iter().filter(|edge| edge.kind == kind).map(|edge| edge.plan).collect()
    };
    let (eaves, ridges) = (of(EdgeKind::Eave), of(EdgeKind::Ridge));
    if eaves.is_empty() || ridges.is_empty() {
        return None;
    }
    let solid: Vec<&Polygon> =
        layout.penetrations.iter().filter(|p| in_the_way(p.kind)).map(|p| &p.plan).collect();
    // `check` approximates round corners by 24-gons that contain them.
    let reach = width / 2.0 * 1.009;
    let free = |p: DVec2| {
        planes.iter().any(|plane| plane.plan.contains(p))
            && walls.iter().all(|&(a, b)| distance_to_segment(p, a, b) >= reach)
            && solid.iter().all(|shape| !shape.contains(p) && shape.distance_to_border(p) >= reach)
    };
    let outlines: Vec<Polygon> =
        modules.iter().map(|rect| Polygon::new(in_plan(face, rect).to_vec())).collect();
    let bounds = planes.iter().filter_map(|plane| plane.plan.bounds()).reduce(|a, b| a.union(&b))?;
    let columns = (bounds.size().x / STEP).ceil() as usize + 1;
    let rows = (bounds.size().y / STEP).ceil() as usize + 1;
    if columns * rows > 200_000 {
        return None;
    }
    let place = |at: usize| bounds.min + dvec2((at % columns) as f64, (at / columns) as f64) * STEP;
    let open: Vec<bool> = (0..columns * rows).map(|at| free(place(at))).collect();
    let near: Vec<Vec<u32>> = (0..columns * rows)
        .map(|at| {
            if !open[at] {
                return Vec::new();
            }
            let p = place(at);
            let hit = |shape: &Polygon| shape.contains(p) || shape.distance_to_border(p) < reach;
            (0u32..).zip(&outlines).filter(|(_, shape)| hit(shape)).map(|(n, _)| n).collect()
        })
        .collect();
    let price: Vec<f64> = modules.iter().map(|_| 1.0 + noise * (dice.unit() - 0.5)).collect();
    let beside_edge = |p: DVec2, edges: &[(DVec2, DVec2)]| {
        edges.iter().any(|&(a, b)| distance_to_segment(p, a, b) <= reach + STEP * 1.5)
    };
    let way = cheapest(columns, rows, &open, &near, &price, &|at| beside_edge(place(at), &eaves), &|at| {
        beside_edge(place(at), &ridges)
    })?;
    let mut path: Vec<DVec2> = way.into_iter().map(place).collect();
    // Move the ends as close to the edges as the disc can come.
    for (end, edges) in [(0, &eaves), (path.len() - 1, &ridges)] {
        let p = path[end];
        let nearest = edges
            .iter()
            .map(|&(a, b)| chalkcourse_geometry::nearest_on_segment(p, a, b))
            .min_by(|a, b| a.distance(p).total_cmp(&b.distance(p)))?;
        let touching = nearest + (p - nearest).normalize_or_zero() * reach;
        if end == 0 {
            path.insert(0, touching);
        } else {
            path.push(touching);
        }
    }
    let flat = face.plane.pitch.slope_factor();
    let frame: Vec<DVec2> = path.into_iter().map(|p| face.plane.to_frame(p)).collect();
    let frame = straightened(&frame);
    let legs = frame.windows(2).map(|leg| Thing::Convex {
        corners: leg.to_vec(),
        reach: reach + 1e-3,
        squeeze: flat,
        less: 0.0,
    });
    Some(legs.collect())
}

/// The path without points in the middle of straight legs.
fn straightened(path: &[DVec2]) -> Vec<DVec2> {
    let mut out: Vec<DVec2> = Vec::new();
    for &p in path {
        while let [.., a, b] = out[..]
            && (b - a).perp_dot(p - b).abs() < 1e-9
            && (b - a).dot(p - b) >= 0.0
        {
            out.pop();
        }
        out.push(p);
    }
    out
}

/// The cheapest path on the lattice (Dijkstra, 1959): each step costs a little, plus the modules that it newly comes
/// near.
fn cheapest(
    columns: usize,
    rows: usize,
    open: &[bool],
    near: &[Vec<u32>],
    price: &[f64],
    from: &dyn Fn(usize) -> bool,
    to: &dyn Fn(usize) -> bool,
) -> Option<Vec<usize>> {
    // In thousandths, so that the heap is ordered by integers.
    let cost = |at: usize, before: &[u32]| -> u64 {
        let new = near[at].iter().filter(|module| !before.contains(module));
        1 + new.map(|&module| (price[module as usize] * 1000.0) as u64).sum::<u64>()
    };
    let mut best = vec![u64::MAX; open.len()];
    let mut before = vec![usize::MAX; open.len()];
    let mut heap = BinaryHeap::new();
    for at in (0..open.len()).filter(|&at| open[at] && from(at)) {
        best[at] = cost(at, &[]);
        heap.push(Reverse((best[at], at)));
    }
    while let Some(Reverse((spent, at))) = heap.pop() {
        if spent > best[at] {
            continue;
        }
        if to(at) {
            let mut way = vec![at];
            let mut at = at;
            while before[at] != usize::MAX {
                at = before[at];
                way.push(at);
            }
            way.reverse();
            return Some(way);
        }
        let (x, y) = (at % columns, at / columns);
        for (dx, dy) in [(-1i64, 0i64), (1, 0), (0, -1), (0, 1), (-1, -1), (-1, 1), (1, -1), (1, 1)] {
            let (x, y) = (x as i64 + dx, y as i64 + dy);
            if x < 0 || y < 0 || x as usize >= columns || y as usize >= rows {
                continue;
            }
            let next = y as usize * columns + x as usize;
            if !open[next] {
                continue;
            }
            let total = spent + cost(next, &near[at]);
            if total < best[next] {
                best[next] = total;
                before[next] = at;
                heap.push(Reverse((total, next)));
            }
        }
    }
    None
}
