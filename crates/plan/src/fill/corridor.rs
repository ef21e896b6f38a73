//! Fire service pathways that a layout of a face may leave free: strips straight up the slope, and strips along hips
//! and valleys that straddle the face and the adjacent one. `check` decides which of them are acceptable.

use super::Site;
use super::trim::rects;
use crate::room::{path_ways, path_width, strip};
use chalkcourse_geometry::{Convex, DVec2, EdgeKind, EdgeSpan, Rect, RoofFace};
use chalkcourse_job::Block;

/// An area left free on a face, in its frame.
pub(super) type Corridor = Vec<Convex>;

/// Corners of the polygon drawn around a disc.
const CORNERS: u32 = 24;
/// A pathway is made this much wider than required, and ends this much farther from a ridge, metres.
const SPARE: f64 = 1e-3;
/// Straight strips beside modules to try in each interval.
const BESIDE: usize = 4;

/// Pathways that may be left free on a face with the given blocks, those that hit the fewest modules first.
pub(super) fn corridors(site: &Site<'_>, blocks: &[Block]) -> Vec<Corridor> {
    let laid: Vec<Rect> = blocks.iter().flat_map(|block| rects(site, block)).map(|(_, rect)| rect).collect();
    let mut found = straight(site, &laid);
    if let Some(face) = site.layout.roof.faces.get(site.index) {
        let spans = face.edges.iter().filter(|span| is_passable(span) && span.neighbour.is_some());
        found.extend(spans.flat_map(|span| along(face, span, path_width(site.job))));
    }
    let mut by_hits: Vec<(usize, Corridor)> = found
        .into_iter()
        .map(|way| (laid.iter().filter(|rect| stands_in(&way, rect)).count(), way))
        .collect();
    by_hits.sort_by_key(|(hits, _)| *hits);
    by_hits.into_iter().map(|(_, way)| way).collect()
}

/// Whether a module is in a corridor.
pub(super) fn stands_in(way: &Corridor, rect: &Rect) -> bool {
    way.iter().any(|piece| piece.bounds().overlap(rect).min_element() > 0.0 && piece.clearance(rect) < -1e-6)
}

fn straight(site: &Site<'_>, laid: &[Rect]) -> Vec<Corridor> {
    let wide = path_width(site.job);
    let mut found = Vec::new();
    for (from, to) in path_ways(site.job, &site.layout, site.index) {
        let last = (to - wide).max(from);
        let hits = |at: f64| {
            laid.iter().filter(|rect| rect.min.x < at + wide - 1e-9 && at + 1e-9 < rect.max.x).count()
        };
        let beside = laid.iter().flat_map(|rect| [rect.max.x, rect.min.x - wide]);
        let mut beside: Vec<f64> = beside.filter(|at| from < *at && *at < last).collect();
        beside.sort_by(f64::total_cmp);
        beside.dedup_by(|a, b| *a - *b < 1e-6);
        beside.sort_by_key(|at| hits(*at));
        beside.truncate(BESIDE);
        let mut starts = vec![from, last];
        starts.extend(beside);
        starts.dedup();
        found.extend(starts.into_iter().map(|at| vec![strip(site.job, &site.layout, site.index, at)]));
    }
    found
}

fn is_passable(span: &EdgeSpan) -> bool {
    matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley | EdgeKind::PitchChange)
}

/// Corridors down along an edge, from the highest point that a disc may have near a ridge there: on the edge, and to
/// either side of it.
fn along(face: &RoofFace, span: &EdgeSpan, wide: f64) -> Vec<Corridor> {
    let (half, factor) = (wide / 2.0 + SPARE, face.plane.pitch.slope_factor());
    let (mut top, mut foot) = span.plan;
    if span.frame.0.y < span.frame.1.y {
        (top, foot) = (foot, top);
    }
    let down = (foot - top).normalize_or_zero();
    let length = top.distance(foot);
    if length < wide || half <= SPARE {
        return Vec::new();
    }
    // Towards the face itself.
    let own = {
        let aside = down.perp();
        let middle = top + down * (length / 2.0);
        if face.plan.contains(middle + aside * 0.01) { aside } else { -aside }
    };
    let frame = |p: DVec2| face.plane.to_frame(p);
    let disc = |p: DVec2| {
        let turn = std::f64::consts::TAU / f64::from(CORNERS);
        let radius = half / (turn / 2.0).cos();
        (0..CORNERS).map(move |i| p + DVec2::from_angle(turn * f64::from(i)) * radius)
    };
    let between = |a: DVec2, b: DVec2| Convex::around(disc(a).chain(disc(b)).map(frame));
    debug_assert!(factor >= 1.0);
    let begin = top + down * (half + SPARE);
    [-1.0, -0.5, 0.0, 0.5, 1.0]
        .into_iter()
        .filter_map(|aside| {
            let shift = own * (aside * half);
            let bend = begin + down * half + shift;
            Some(vec![between(begin, bend)?, between(bend, foot + shift)?])
        })
        .collect()
}
