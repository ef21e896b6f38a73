//! The modules to remove so that a pathway opens at the least loss.
//!
//! Straight strips up the slope are searched exactly. A winding pathway, or one that straddles two planes, is searched on a
//! lattice of positions of a disc's centre: entering the reach of a module costs that module. A result of the lattice is used
//! only if the exact search then finds a pathway; it may miss gaps wider than a pathway by less than a lattice step, so the loss
//! is the least found, not a proved minimum.

use super::free::without;
use super::pathway::{
    NEAR_END, alone, blocks_a_path, clear_to_ridge, is_inner, obstructed, shut_levels, winding,
};
use crate::view::{BesideView, FaceView};
use crate::way::{Opening, RemovedModules};
use chalkcourse_geometry::{DVec2, EdgeKind, Polygon, Rect, distance_to_segment, dvec2};
use chalkcourse_job::{BlockId, Cell, FireAccess, PathScheme, PenetrationId};
use chalkcourse_limits::{TOLERANCE, looked_at};
use std::cmp::Reverse;
use std::collections::{BTreeMap, BinaryHeap};

/// Openings of a pathway on a plane, or straddling it and an adjacent one that has none of its own, which would serve as well at no
/// loss: for each the fewest modules, fewest first. If the book requires pathways on each slope, only straight ones up the plane
/// itself.
pub(super) fn openings(view: BesideView<'_>, fire: &FireAccess) -> Vec<Opening> {
    let own = view.own;
    if !looked_at(fire, own.face) {
        return Vec::new();
    }
    let straight = straight(own, fire);
    if fire.scheme.value == PathScheme::EachSlope {
        return straight.into_iter().collect();
    }
    let straight = straight.map(|opening| pruned(&[own], fire, opening));
    let known = straight.as_ref().map(|opening| opening.away.len());
    // Lower bound: every row that closes the plane costs one module.
    let needed = rows_to_open(own, fire.path_width.value.metres() / 2.0 - TOLERANCE);
    let winding = match known {
        Some(known) if known <= needed => None,
        _ => on_lattice(&[own], fire, known),
    };
    let mut all: Vec<Opening> = winding.or(straight).into_iter().collect();
    let without = view.beside().filter(|other| alone(*other, fire, &RemovedModules::new()).is_empty());
    all.extend(without.filter_map(|other| on_lattice(&[own, other], fire, None)));
    all.sort_by_key(|opening| opening.away.len());
    all
}

/// How many rows close a plane, counted so that no module is in two of them.
fn rows_to_open(plane: FaceView<'_>, reach: f64) -> usize {
    let tallest = plane.laid().flat_map(|laid| laid.rows.iter()).map(|row| row.size().y).fold(0.0, f64::max);
    let mut count = 0;
    let mut free_from = f64::NEG_INFINITY;
    for level in shut_levels(plane, &RemovedModules::new(), reach) {
        if level >= free_from {
            count += 1;
            free_from = level + tallest;
        }
    }
    count
}

/// The best straight strip up a plane.
fn straight(plane: FaceView<'_>, fire: &FireAccess) -> Option<Opening> {
    let (face, width) = (plane.face, fire.path_width.value.metres());
    let modules: Vec<(BlockId, Cell, f64, f64)> = plane
        .laid()
        .flat_map(|laid| {
            let id = laid.block.id;
            laid.placed.modules.iter().map(move |m| (id, m.cell, m.rect.min.x, m.rect.max.x))
        })
        .collect();
    let sorted = |mut list: Vec<f64>| {
        list.sort_by(f64::total_cmp);
        list
    };
    let (lefts, rights) =
        (sorted(modules.iter().map(|m| m.2).collect()), sorted(modules.iter().map(|m| m.3).collect()));
    // Modules that start before the strip ends, minus those that end before it starts.
    let loss = |start: f64| {
        let begun = lefts.partition_point(|&left| left < start + width - TOLERANCE);
        begun - rights.partition_point(|&right| right <= start + TOLERANCE).min(begun)
    };
    let mut taken_up = obstructed(plane);
    if fire.scheme.value == PathScheme::EachSlope {
        // If two are required, exclude the existing one.
        let there = alone(plane, fire, &RemovedModules::new());
        taken_up.extend(there.iter().filter(|path| path.straight).filter_map(|path| {
            let along = path.outline.iter().map(|&p| face.plane.to_frame(p).x);
            Some((along.clone().reduce(f64::min)?, along.reduce(f64::max)?))
        }));
    }
    let rooms = without(&clear_to_ridge(face), taken_up);
    let starts =
        rooms.into_iter().filter(|(from, to)| to - from >= width - TOLERANCE).flat_map(|(from, to)| {
            // The best strip starts at an end of the interval or at the side of a module.
            let at_modules = modules.iter().flat_map(|m| [m.3, m.2 - width]);
            let inside = move |start: &f64| *start >= from - TOLERANCE && start + width <= to + TOLERANCE;
            at_modules.chain([from, to - width]).filter(inside).collect::<Vec<_>>()
        });
    let start = starts.filter(|&start| loss(start) > 0).min_by_key(|&start| loss(start))?;
    let over = |m: &&(BlockId, Cell, f64, f64)| m.3 > start + TOLERANCE && m.2 < start + width - TOLERANCE;
    let (low, high) = (face.bounds.min.y, face.bounds.max.y);
    let corners = [(start, low), (start + width, low), (start + width, high), (start, high)];
    Some(Opening {
        away: modules.iter().filter(over).map(|m| (m.0, m.1)).collect(),
        faces: vec![plane.index],
        strip: corners.map(|(u, v)| face.plane.to_plan(dvec2(u, v))).to_vec(),
    })
}

/// Lattice steps per pathway width.
const STEPS: f64 = 12.0;
/// Roofs that need more lattice points than this are not searched.
const MOST_PLACES: usize = 400_000;

/// Planes that share an edge may miss each other by a hair, metres.
const HAIR: f64 = 0.006;

/// Lattice points for the centre of a disc, with the modules in its way at each.
struct Lattice {
    origin: DVec2,
    step: f64,
    columns: usize,
    rows: usize,
    /// Where it may not be, whatever is removed.
    shut: Vec<bool>,
    /// The modules in reach, by index.
    near: Vec<Vec<u32>>,
}

impl Lattice {
    fn at(&self, place: usize) -> DVec2 {
        self.origin + dvec2((place % self.columns) as f64, (place / self.columns) as f64) * self.step
    }

    /// The lattice points within some bounds.
    fn within(&self, bounds: Rect) -> impl Iterator<Item = usize> + '_ {
        let index = |x: f64, most: usize| (x.max(0.0) as usize).min(most);
        let low = (bounds.min - self.origin) / self.step;
        let high = (bounds.max - self.origin) / self.step;
        let (from_x, to_x) = (index(low.x.floor(), self.columns), index(high.x.ceil() + 1.0, self.columns));
        let (from_y, to_y) = (index(low.y.floor(), self.rows), index(high.y.ceil() + 1.0, self.rows));
        (from_y..to_y).flat_map(move |y| (from_x..to_x).map(move |x| y * self.columns + x))
    }

    fn beside(&self, place: usize) -> impl Iterator<Item = usize> + '_ {
        let (x, y) = (place % self.columns, place / self.columns);
        let rows = y.saturating_sub(1)..=(y + 1).min(self.rows - 1);
        rows.flat_map(move |row| {
            let columns = x.saturating_sub(1)..=(x + 1).min(self.columns - 1);
            columns.map(move |column| row * self.columns + column)
        })
        .filter(move |&other| other != place)
    }
}

/// The path over some planes that costs the fewest modules, if fewer than `known`.
fn on_lattice(planes: &[FaceView<'_>], fire: &FireAccess, known: Option<usize>) -> Option<Opening> {
    let width = fire.path_width.value.metres();
    let reach = width / 2.0 - TOLERANCE;
    if !planes.iter().all(|plane| looked_at(fire, plane.face)) || reach <= 0.0 {
        return None;
    }
    let ends = |kind: EdgeKind| -> Vec<(DVec2, DVec2)> {
        let spans = planes.iter().flat_map(|plane| plane.face.edges.iter());
        spans.filter(|span| span.kind == kind).map(|span| span.plan).collect()
    };
    let (eaves, ridges) = (ends(EdgeKind::Eave), ends(EdgeKind::Ridge));
    if eaves.is_empty() || ridges.is_empty() {
        return None;
    }
    let modules: Vec<(BlockId, Cell, Polygon)> = planes
        .iter()
        .flat_map(|plane| plane.laid())
        .flat_map(|laid| {
            let plan = |p: DVec2| laid.face.plane.to_plan(p);
            let outline = move |rect: &Rect| Polygon::new(rect.corners().map(plan).to_vec());
            laid.placed.modules.iter().map(move |m| (laid.block.id, m.cell, outline(&m.rect)))
        })
        .collect();
    let lattice = lattice(planes, &modules, reach)?;
    let close = |place: usize, edges: &[(DVec2, DVec2)]| {
        let p = lattice.at(place);
        edges.iter().any(|&(a, b)| distance_to_segment(p, a, b) <= reach + NEAR_END + lattice.step)
    };
    let way = cheapest_way(&lattice, &|place| close(place, &eaves), &|place| close(place, &ridges), known)?;
    let away: RemovedModules = way
        .into_iter()
        .flat_map(|place| lattice.near.get(place).into_iter().flatten())
        .filter_map(|&module| modules.get(module as usize).map(|m| (m.0, m.1)))
        .collect();
    if away.is_empty() || known.is_some_and(|known| away.len() >= known) {
        return None;
    }
    let path = winding(planes, fire, &away)?;
    Some(pruned(planes, fire, Opening { away, faces: path.faces, strip: path.outline }))
}

/// An opening reduced by the modules that may stay: a strip snapped to the sides of modules, or a path that enters the reach of
/// one twice, takes more than a pathway winding between them needs.
fn pruned(planes: &[FaceView<'_>], fire: &FireAccess, mut opening: Opening) -> Opening {
    for module in opening.away.clone() {
        let mut fewer = opening.away.clone();
        fewer.remove(&module);
        if fewer.is_empty() {
            break;
        }
        if let Some(path) = winding(planes, fire, &fewer) {
            opening = Opening { away: fewer, faces: path.faces, strip: path.outline };
        }
    }
    opening
}

fn lattice(planes: &[FaceView<'_>], modules: &[(BlockId, Cell, Polygon)], reach: f64) -> Option<Lattice> {
    let bounds = planes.iter().filter_map(|plane| plane.face.plan.bounds()).reduce(|a, b| a.union(&b))?;
    let step = 2.0 * reach / STEPS;
    let size = (bounds.size() / step).ceil();
    if !size.is_finite() || (size.x + 1.0) * (size.y + 1.0) > MOST_PLACES as f64 {
        return None;
    }
    let (columns, rows) = (size.x as usize + 1, size.y as usize + 1);
    let places = columns * rows;
    let mut lattice = Lattice {
        origin: bounds.min,
        step,
        columns,
        rows,
        shut: vec![true; places],
        near: vec![Vec::new(); places],
    };
    let plans = || planes.iter().map(|plane| &plane.face.plan);
    for place in 0..places {
        let p = lattice.at(place);
        lattice.shut[place] = !plans().any(|plan| plan.contains(p));
    }
    // A hair outside counts as inside.
    for (_, _, a, b) in plans().flat_map(Polygon::sides) {
        let around = Rect { min: a.min(b), max: a.max(b) }.grown(HAIR);
        let near = |place: &usize| distance_to_segment(lattice.at(*place), a, b) < HAIR;
        for place in lattice.within(around).filter(near).collect::<Vec<_>>() {
            lattice.shut[place] = false;
        }
    }
    let mut solid: Vec<Polygon> = planes
        .iter()
        .flat_map(|plane| plane.face.edges.iter())
        .filter(|span| !is_inner(planes, span))
        .map(|span| Polygon::new(vec![span.plan.0, span.plan.1]))
        .collect();
    // Keyed by id, since one may cut both planes.
    let through: BTreeMap<PenetrationId, &Polygon> = planes
        .iter()
        .flat_map(|plane| plane.through())
        .filter(|it| blocks_a_path(it.placed.kind))
        .map(|it| (it.placed.id, &it.placed.plan))
        .collect();
    solid.extend(through.into_values().map(|plan| Polygon::new(plan.outer.clone())));
    // The exact search circumscribes round corners, so its reach is slightly larger.
    let wide = reach * 1.01;
    let in_reach = |lattice: &Lattice, shape: &Polygon| -> Vec<usize> {
        let Some(bounds) = shape.bounds() else { return Vec::new() };
        let near = |place: &usize| {
            let p = lattice.at(*place);
            shape.distance_to_border(p) < wide || shape.outer.len() > 2 && shape.contains(p)
        };
        lattice.within(bounds.grown(wide)).filter(near).collect()
    };
    for shape in &solid {
        for place in in_reach(&lattice, shape) {
            lattice.shut[place] = true;
        }
    }
    for (number, (_, _, shape)) in modules.iter().enumerate() {
        for place in in_reach(&lattice, shape) {
            lattice.near[place].push(number as u32);
        }
    }
    Some(lattice)
}

/// The cheapest path from one side to the other (Dijkstra): a step costs the modules whose reach it enters. `None` if every path
/// costs `known` or more.
fn cheapest_way(
    lattice: &Lattice,
    from: &dyn Fn(usize) -> bool,
    to: &dyn Fn(usize) -> bool,
    known: Option<usize>,
) -> Option<Vec<usize>> {
    let places = lattice.shut.len();
    let most = known.unwrap_or(usize::MAX);
    let mut cost = vec![usize::MAX; places];
    let mut before = vec![usize::MAX; places];
    let mut open = BinaryHeap::new();
    for place in (0..places).filter(|&place| !lattice.shut[place]) {
        let enters = lattice.near[place].len();
        if enters < most && from(place) {
            cost[place] = enters;
            open.push(Reverse((enters, place)));
        }
    }
    while let Some(Reverse((so_far, place))) = open.pop() {
        if so_far > cost[place] {
            continue;
        }
        if to(place) {
            let mut way = vec![place];
            let mut at = place;
            while let Some(&earlier) = before.get(at)
                && earlier != usize::MAX
            {
                way.push(earlier);
                at = earlier;
            }
            return Some(way);
        }
        let here = &lattice.near[place];
        for next in lattice.beside(place).filter(|&next| !lattice.shut[next]) {
            let new = lattice.near[next].iter().filter(|module| !here.contains(module)).count();
            let total = so_far + new;
            if total < cost[next] && total < most {
                cost[next] = total;
                before[next] = place;
                open.push(Reverse((total, next)));
            }
        }
    }
    None
}
