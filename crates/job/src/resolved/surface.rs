//! A face of one part and the edges of its area, before they become faces of the job.

use crate::{Border, FromPart};
use chalkcourse_geometry::{DVec2, EdgeKind, Plane, Polygon};
use std::collections::BTreeMap;

/// A face of one part.
#[derive(Clone, Debug)]
pub(super) struct Surface {
    pub(super) from: FromPart,
    /// All sides of the part that are in its plane.
    pub(super) sides: Vec<u32>,
    pub(super) outline: Polygon,
    pub(super) plane: Plane,
    /// What each side borders, by ring and corner; only computed for visible faces.
    pub(super) borders: Vec<Vec<Vec<Border>>>,
    /// False for the top of a chimney.
    pub(super) deck: bool,
    /// Edge kinds that follow from the part, by ring and corner.
    pub(super) kinds: BTreeMap<(usize, usize), EdgeKind>,
}

/// An edge of the area that a part covers, with the part on its left.
#[derive(Clone, Copy, Debug)]
pub(super) struct Edge {
    pub(super) line: (DVec2, DVec2),
    pub(super) side: u32,
}

/// Numbers the pieces of each side from left to right along its eave.
pub(super) fn number_pieces(surfaces: &mut [Surface]) {
    let along = |surface: &Surface| {
        let leftmost = surface.outline.outer.iter().map(|&p| surface.plane.to_frame(p).x);
        leftmost.fold(f64::INFINITY, f64::min)
    };
    surfaces.sort_by(|a, b| {
        let key = |surface: &Surface| (surface.from.part, surface.from.side);
        key(a).cmp(&key(b)).then(along(a).total_cmp(&along(b)))
    });
    for i in 1..surfaces.len() {
        let before = surfaces[i - 1].from;
        let from = &mut surfaces[i].from;
        from.piece = if (before.part, before.side) == (from.part, from.side) { before.piece + 1 } else { 0 };
    }
}
