//! What findings of modules that are too near to something have in common.

use crate::clear::{Move, Obstacle, Way, least_move};
use crate::finding::Place;
use crate::view::Laid;
use chalkcourse_geometry::{Convex, DVec2, EdgeKind, EdgeSpan, Rect, SideId, Units};
use chalkcourse_job::Cell;

/// The modules of a block that are nearer to something than a limit, and how near the nearest is; `None` where none is.
pub(crate) fn nearer(laid: &Laid<'_>, limit: f64, away: impl Fn(&Rect) -> f64) -> Option<(Vec<Cell>, f64)> {
    let mut nearest = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in &laid.placed.modules {
        let away = away(&module.rect);
        if away < limit {
            cells.push(module.cell);
            nearest = nearest.min(away);
        }
    }
    (!cells.is_empty()).then_some((cells, nearest))
}

/// The stretches of one side of a face that are of one kind.
pub(crate) struct Side<'s> {
    pub(crate) id: SideId,
    pub(crate) kind: EdgeKind,
    pub(crate) spans: Vec<&'s EdgeSpan>,
}

/// Stretches of an edge by side and kind, in the order of first sight.
pub(crate) fn sides<'s>(spans: impl IntoIterator<Item = &'s EdgeSpan>) -> Vec<Side<'s>> {
    let mut sides: Vec<Side<'s>> = Vec::new();
    for span in spans {
        match sides.iter_mut().find(|side| (side.id, side.kind) == (span.id, span.kind)) {
            Some(side) => side.spans.push(span),
            None => sides.push(Side { id: span.id, kind: span.kind, spans: vec![span] }),
        }
    }
    sides
}

/// Where a block is in the way of something.
pub(crate) fn place_of(laid: &Laid<'_>, cells: Vec<Cell>, shape: Vec<DVec2>) -> Place {
    Place { face: Some(laid.on.id), block: Some(laid.block.id), cells, penetration: None, shape }
}

/// Both ends of each stretch of an edge, in plan.
pub(crate) fn ends<'s>(spans: impl IntoIterator<Item = &'s EdgeSpan>) -> Vec<DVec2> {
    spans.into_iter().flat_map(|span| [span.plan.0, span.plan.1]).collect()
}

/// The least move after which no rectangle is nearer than `reach` to stretches of one side of a face: into the face,
/// since over the edge and away is no way to keep off it.
pub(crate) fn into_the_face(rects: &[Rect], spans: &[&EdgeSpan], reach: f64, units: Units) -> Option<Move> {
    let inward = spans.first()?.inward();
    let ways: Vec<Way> = Way::ALL.into_iter().filter(|way| way.unit().dot(inward) > 0.01).collect();
    let obstacles: Vec<Obstacle> = spans
        .iter()
        .map(|span| Obstacle { piece: Convex::segment(span.frame.0, span.frame.1), reach })
        .collect();
    least_move(rects, &obstacles, &ways, units)
}
