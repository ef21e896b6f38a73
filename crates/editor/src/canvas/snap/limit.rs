//! Snapping to limits: where a block just clears.

use super::{Pull, Scene, beside, upright};
use crate::text;
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Rect, RoofFace, distance_to_segment};
use chalkcourse_job::Block;
use chalkcourse_layout::PlacedBlock;
use chalkcourse_limits::{Against, KeepOut, KeepOutContext, Shape, keep_outs};

/// Chord length of round parts of a border, in radians.
const CHORD: f64 = 0.1;

/// Where a block just clears each keep-out of its face when moved along an axis of the frame.
pub(super) fn pulls(scene: Scene, index: usize, block: &Block, way: DVec2) -> Vec<Pull> {
    let Some(face) = scene.layout.roof.faces.get(index) else { return Vec::new() };
    let mut given = KeepOutContext::as_laid(scene.job, scene.layout);
    given.standing.retain(|id| *id != block.id);
    let all = keep_outs(scene.job, scene.layout, index, &given);
    let rows = rows(&PlacedBlock::of(block, index, &scene.job.kit));
    let borders: Vec<&KeepOut> = all.iter().filter(|it| matches!(it.shape, Shape::Outside(_))).collect();
    let mut pulls = Vec::new();
    for keep_out in all.iter().filter(|keep_out| runs_across(keep_out, face, way)) {
        let stretches = keep_out.too_near_along(&rows, way);
        for by in stretches.into_iter().flat_map(|(from, to)| [from, to]) {
            if by.abs() > scene.reach {
                continue;
            }
            let there: Vec<Part> =
                rows.iter().map(|row| Part { rect: row.rect.moved(way * by), ..*row }).collect();
            // Don't snap outside the face, or to a setback from outside.
            let own = matches!(keep_out.shape, Shape::Outside(_)) || !keep_out.edges.is_empty();
            let over = |it: &&KeepOut| there.iter().any(|row| !it.clears(row));
            if own && borders.iter().any(over) {
                continue;
            }
            pulls.push(pull(scene, face, keep_out, &there, way, by));
        }
    }
    pulls
}

/// The contiguous rows of a block.
pub(super) fn rows(placed: &PlacedBlock) -> Vec<Part> {
    placed.stretches().map(|(row, rect)| Part { rect, lowest: row == 0 }).collect()
}

/// Up the slope only level edges count; along the eave all that are steep enough.
fn runs_across(keep_out: &KeepOut, face: &RoofFace, way: DVec2) -> bool {
    let across = |span: &EdgeSpan| {
        let inward = span.inward();
        if way.y != 0.0 { inward.y.abs() >= 0.98 } else { inward.x.abs() >= 0.25 }
    };
    let mut spans = keep_out.edges.iter().filter_map(|edge| face.edges.get(*edge));
    keep_out.against != Against::Pathway && (keep_out.edges.is_empty() || spans.any(across))
}

fn pull(scene: Scene, face: &RoofFace, keep_out: &KeepOut, there: &[Part], way: DVec2, by: f64) -> Pull {
    let bounds = Rect::around(there.iter().flat_map(|row| [row.rect.min, row.rect.max]));
    let bounds = bounds.unwrap_or(Rect { min: DVec2::ZERO, max: DVec2::ZERO });
    let off = |line: &(DVec2, DVec2)| {
        there.iter().map(|row| row.rect.distance_to_segment(line.0, line.1)).fold(f64::INFINITY, f64::min)
    };
    let borders = keep_out.borders(CHORD);
    let (a, b) = borders
        .into_iter()
        .min_by(|p, q| off(p).total_cmp(&off(q)).then(q.0.distance(q.1).total_cmp(&p.0.distance(p.1))))
        .unwrap_or((bounds.min, bounds.max));
    let along = (b - a).normalize_or_zero();
    // Show the part beside the block; a slanted line is shown whole.
    let touches = (a + b) / 2.0;
    let line = if along.y.abs() < 0.02 || (way.y != 0.0 && a.distance(b) < 0.3) {
        let low = (touches.y - bounds.min.y).abs() < (touches.y - bounds.max.y).abs();
        beside(bounds, if low { bounds.min.y } else { bounds.max.y })
    } else if along.x.abs() < 0.02 || a.distance(b) < 0.3 {
        let left = (touches.x - bounds.min.x).abs() < (touches.x - bounds.max.x).abs();
        upright(bounds, if left { bounds.min.x } else { bounds.max.x })
    } else {
        (a, b)
    };
    let kind = keep_out.against_kind().unwrap_or_else(|| nearest_kind(face, touches));
    Pull { by, line, words: text::at_limit(keep_out, kind, scene.layout, scene.job.units) }
}

fn nearest_kind(face: &RoofFace, at: DVec2) -> EdgeKind {
    let away = |span: &&EdgeSpan| distance_to_segment(at, span.frame.0, span.frame.1);
    let nearest = face.edges.iter().min_by(|a, b| away(a).total_cmp(&away(b)));
    nearest.map_or(EdgeKind::Eave, |span| span.kind)
}
