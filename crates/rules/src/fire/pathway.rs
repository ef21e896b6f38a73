//! Pathway geometry: strips of a plane, or of two adjacent planes, from the lowest edge to the ridge.
//!
//! A pathway exists if a disc as wide as the pathway can be moved in plan from an eave to a ridge without touching a module, a
//! chimney or a skylight, and without leaving the plane. Straight strips up the slope are searched first; only without one is the
//! free space of the disc's centre computed: the plane less everything grown by half a width. Round corners are grown as
//! circumscribed 24-gons, so that a pathway that is found is never too narrow. Pipe boots and vents do not count: the codes allow
//! minor obstructions.

use super::free::{common, joined, without};
use crate::view::{BesideView, FaceView, Snapshot, WholeView};
use crate::way::{Pathway, RemovedModules, passable};
use chalkcourse_geometry::{
    Convex, DVec2, EdgeKind, EdgeSpan, Polygon, Rect, RoofFace, distance_to_segment, dvec2,
};
use chalkcourse_job::{BlockId, Cell, FireAccess, PenetrationKind, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{TOLERANCE, looked_at};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// A disc is at an edge if its centre is no farther from it than half a width plus this, metres: it covers mismatches between
/// planes, and round corners drawn as polygons.
pub(super) const NEAR_END: f64 = 0.02;

/// All pathways of a job's roof: for each plane its straight ones, or a winding one, or else those that straddle it and an
/// adjacent plane. Empty if the rule book has no fire access.
pub fn pathways(job: &Resolved, layout: &Layout) -> Vec<Pathway> {
    let snapshot = Snapshot::of(job, layout);
    let Some(fire) = &job.rule_book.fire_access else { return Vec::new() };
    let none = RemovedModules::new();
    let mut found: Vec<Pathway> = Vec::new();
    let mut straddled: BTreeSet<[usize; 2]> = BTreeSet::new();
    for plane in snapshot.whole().faces() {
        let own = alone(plane.own, fire, &none);
        if !own.is_empty() {
            found.extend(own.iter().cloned());
            continue;
        }
        for path in straddling(plane, fire, &none).iter() {
            if let [one, two] = path.faces[..]
                && straddled.insert([one.min(two), one.max(two)])
            {
                found.push(path.clone());
            }
        }
    }
    found
}

/// The pathways on one plane: all straight ones, or else a winding one.
pub(super) fn alone<'s>(plane: FaceView<'s>, fire: &FireAccess, away: &RemovedModules) -> Cow<'s, [Pathway]> {
    if !looked_at(fire, plane.face) {
        return Cow::Borrowed(&[]);
    }
    let find = |away: &RemovedModules| {
        let straight = straight(plane, fire, away);
        // With only the border in the way, a strip would have been found, unless hips close the top.
        if straight.is_empty() { winding(&[plane], fire, away).into_iter().collect() } else { straight }
    };
    match plane.planes() {
        Some(planes) if !touches(plane, away) => {
            Cow::Borrowed(planes.alone.get_or_init(|| find(&RemovedModules::new())))
        }
        _ => Cow::Owned(find(away)),
    }
}

/// The pathways that straddle a plane and an adjacent one: one per adjacent plane.
pub(super) fn straddling<'s>(
    view: BesideView<'s>,
    fire: &FireAccess,
    away: &RemovedModules,
) -> Cow<'s, [Pathway]> {
    let own = view.own;
    if !looked_at(fire, own.face) {
        return Cow::Borrowed(&[]);
    }
    let find = |away: &RemovedModules| -> Vec<Pathway> {
        view.beside().filter_map(|other| winding(&[own, other], fire, away)).collect()
    };
    let touched = touches(own, away) || view.beside().any(|other| touches(other, away));
    match own.planes() {
        Some(planes) if !touched => {
            Cow::Borrowed(planes.straddling.get_or_init(|| find(&RemovedModules::new())))
        }
        _ => Cow::Owned(find(away)),
    }
}

/// Whether any of the modules assumed removed are on a face.
fn touches(plane: FaceView<'_>, away: &RemovedModules) -> bool {
    !away.is_empty() && plane.laid().any(|laid| of_block(away, laid.block.id).next().is_some())
}

/// Every module of a roof.
pub(super) fn every_module(view: WholeView<'_>) -> RemovedModules {
    view.laid().iter().flat_map(|laid| laid.block.cells().map(|cell| (laid.block.id, cell))).collect()
}

/// The cells of one block that are assumed removed.
pub(super) fn of_block(away: &RemovedModules, block: BlockId) -> impl Iterator<Item = Cell> + '_ {
    let first = (block, Cell { row: 0, column: 0 });
    away.range(first..).take_while(move |(of, _)| *of == block).map(|(_, cell)| *cell)
}

/// Whether a plane or an adjacent one has a ridge to lead to. A porch that ends at a wall has none.
pub(super) fn has_ridge(view: BesideView<'_>) -> bool {
    let ridge = |face: &RoofFace| face.edges.iter().any(|span| span.kind == EdgeKind::Ridge);
    ridge(view.own.face) || view.beside().any(|other| ridge(other.face))
}

/// Where along the eave a straight line up the slope reaches the ridge.
pub(super) fn clear_to_ridge(face: &RoofFace) -> Vec<(f64, f64)> {
    let range = |span: &EdgeSpan| (span.frame.0.x.min(span.frame.1.x), span.frame.0.x.max(span.frame.1.x));
    // At a slanted edge a straight strip would end in a point: leave such a plane to the winding search.
    let level = |span: &EdgeSpan| {
        let along = span.frame.1 - span.frame.0;
        matches!(span.kind, EdgeKind::Eave | EdgeKind::Ridge) && along.y.abs() <= 0.1 * along.x.abs()
    };
    let of = |kind: EdgeKind| {
        joined(face.edges.iter().filter(|s| s.kind == kind && level(s)).map(range).collect(), 1e-6)
    };
    let others =
        face.edges.iter().filter(|span| !level(span)).map(range).filter(|(from, to)| to - from > TOLERANCE);
    without(&common(&of(EdgeKind::Eave), &of(EdgeKind::Ridge)), others.collect())
}

/// The intervals along the eave taken by chimneys and skylights.
pub(super) fn obstructed(plane: FaceView<'_>) -> Vec<(f64, f64)> {
    let through = plane.through().iter().filter(|it| blocks_a_path(it.placed.kind));
    through.map(|it| (it.on.bounds.min.x, it.on.bounds.max.x)).collect()
}

/// Whether a penetration can't be walked over: chimneys, skylights and windows; pipe boots and vents are minor.
pub fn blocks_a_path(kind: PenetrationKind) -> bool {
    matches!(kind, PenetrationKind::Chimney | PenetrationKind::Skylight | PenetrationKind::EscapeWindow)
}

fn straight(plane: FaceView<'_>, fire: &FireAccess, away: &RemovedModules) -> Vec<Pathway> {
    let (face, width) = (plane.face, fire.path_width.value.metres());
    let mut blocked = obstructed(plane);
    blocked.extend(standing(plane, away).iter().map(|rect| (rect.min.x, rect.max.x)));
    let free = without(&clear_to_ridge(face), blocked);
    let (low, high) = (face.bounds.min.y, face.bounds.max.y);
    free.into_iter()
        .filter(|(from, to)| to - from >= width - TOLERANCE)
        .map(|(from, to)| {
            let corners = [(from, low), (to, low), (to, high), (from, high)];
            Pathway {
                faces: vec![plane.index],
                width: to - from,
                outline: corners.map(|(u, v)| face.plane.to_plan(dvec2(u, v))).to_vec(),
                straight: true,
            }
        })
        .collect()
}

/// A winding pathway over one plane, or over two adjacent ones.
pub(super) fn winding(planes: &[FaceView<'_>], fire: &FireAccess, away: &RemovedModules) -> Option<Pathway> {
    let width = fire.path_width.value.metres();
    let reach = width / 2.0 - TOLERANCE;
    if !planes.iter().all(|plane| looked_at(fire, plane.face)) || reach <= 0.0 {
        return None;
    }
    let spans = || planes.iter().flat_map(|plane| plane.face.edges.iter());
    let of =
        |kind: EdgeKind| spans().filter(move |span| span.kind == kind).map(|s| s.plan).collect::<Vec<_>>();
    let (eaves, ridges) = (of(EdgeKind::Eave), of(EdgeKind::Ridge));
    if eaves.is_empty() || ridges.is_empty() || matches!(planes, [only] if shut(*only, away, reach)) {
        return None;
    }
    let mut blockers: Vec<Polygon> = spans()
        .filter(|span| !is_inner(planes, span))
        .map(|span| grown(&[span.plan.0, span.plan.1], reach))
        .collect();
    for plane in planes {
        let corners = |rect: &Rect| rect.corners().map(|p| plane.face.plane.to_plan(p));
        blockers.extend(standing(*plane, away).iter().map(|rect| grown(&corners(rect), reach)));
    }
    // Keyed by id, since one may cut both planes.
    let solid: BTreeMap<_, _> = planes
        .iter()
        .flat_map(|plane| plane.through())
        .filter(|it| blocks_a_path(it.placed.kind))
        .map(|it| (it.placed.id, it.placed))
        .collect();
    blockers.extend(solid.values().map(|p| grown(&p.plan.outer, reach)));
    // Two planes that share an edge may miss by a hair; the strip this adds outside is within reach of a border.
    let ground: Vec<Polygon> = planes.iter().flat_map(|plane| plane.face.plan.offset(0.006)).collect();
    // Blockers overlap each other; without the union, what two of them cover would count as free.
    let blockers = Polygon::union(&blockers);
    let rooms = Polygon::union(&ground).into_iter().flat_map(|shape| shape.difference(&blockers));
    let touches = |room: &Polygon, edges: &[(DVec2, DVec2)]| {
        room.sides().any(|(_, _, a, b)| {
            edges.iter().any(|&(c, d)| {
                let ends = [
                    distance_to_segment(a, c, d),
                    distance_to_segment(b, c, d),
                    distance_to_segment(c, a, b),
                    distance_to_segment(d, a, b),
                ];
                ends.into_iter().fold(f64::INFINITY, f64::min) <= reach + NEAR_END
            })
        })
    };
    let room = rooms.into_iter().find(|room| touches(room, &eaves) && touches(room, &ridges))?;
    let faces = planes.iter().map(|plane| plane.index).collect();
    Some(Pathway { faces, width, outline: room.outer, straight: false })
}

/// Whether an edge span lies between two of the planes, so that it may be walked over.
pub(super) fn is_inner(planes: &[FaceView<'_>], span: &EdgeSpan) -> bool {
    passable(span) && span.neighbour.is_some_and(|n| planes.iter().any(|plane| plane.index == n.face))
}

/// The obstacles on a plane with the modules of `away` removed: whole rows, or single modules in a block with some removed.
fn standing(plane: FaceView<'_>, away: &RemovedModules) -> Vec<Rect> {
    let mut rects = Vec::new();
    for laid in plane.laid() {
        if of_block(away, laid.block.id).next().is_some() {
            let stay = laid.placed.modules.iter().filter(|m| !away.contains(&(laid.block.id, m.cell)));
            rects.extend(stay.map(|module| module.rect));
        } else {
            rects.extend(laid.rows.iter().copied());
        }
    }
    rects
}

/// Whether a row closes a plane from side to side: a disc that passes it must fit through some gap at its own height. A quick
/// test for full roofs; `false` proves nothing.
fn shut(plane: FaceView<'_>, away: &RemovedModules, reach: f64) -> bool {
    shut_levels(plane, away, reach).next().is_some()
}

/// The heights, in the frame of a plane, at which rows close it from side to side, from the eave up.
pub(super) fn shut_levels<'s>(
    plane: FaceView<'s>,
    away: &RemovedModules,
    reach: f64,
) -> impl Iterator<Item = f64> + use<'s> {
    let face = plane.face;
    let heights = |kind: EdgeKind| {
        let spans = face.edges.iter().filter(move |span| span.kind == kind);
        spans.flat_map(|span| [span.frame.0.y, span.frame.1.y])
    };
    let above = heights(EdgeKind::Eave).fold(f64::NEG_INFINITY, f64::max);
    let below = heights(EdgeKind::Ridge).fold(f64::INFINITY, f64::min);
    let rects = standing(plane, away);
    let mut levels: Vec<f64> = rects.iter().map(|rect| rect.centre().y).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|a, b| (*a - *b).abs() < TOLERANCE);
    levels.into_iter().filter(move |&v| above < v && v < below).filter(move |&v| {
        let mut crossings: Vec<f64> = face
            .frame
            .sides()
            .filter(|(_, _, a, b)| (a.y > v) != (b.y > v))
            .map(|(_, _, a, b)| a.x + (b.x - a.x) * (v - a.y) / (b.y - a.y))
            .collect();
        crossings.sort_by(f64::total_cmp);
        let inside: Vec<(f64, f64)> =
            crossings.chunks_exact(2).filter_map(|pair| Some((*pair.first()?, *pair.last()?))).collect();
        let at_level = rects.iter().filter(|rect| rect.min.y < v && v < rect.max.y);
        let gaps = without(&inside, at_level.map(|rect| (rect.min.x, rect.max.x)).collect());
        gaps.iter().all(|(from, to)| to - from < 2.0 * reach)
    })
}

/// The convex hull of some points, grown by `reach`.
fn grown(points: &[DVec2], reach: f64) -> Polygon {
    const CORNERS: u32 = 24;
    let turn = std::f64::consts::TAU / f64::from(CORNERS);
    // Circumscribed, so that the round corner is fully covered.
    let radius = reach / (turn / 2.0).cos();
    let around = points.iter().flat_map(|&p| {
        (0..CORNERS).map(move |i| p + DVec2::from_angle(turn * (f64::from(i) + 0.5)) * radius)
    });
    Convex::around(around).map_or_else(Polygon::default, |hull| Polygon::new(hull.corners().to_vec()))
}
