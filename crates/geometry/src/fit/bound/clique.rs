//! Sets of positions of which a layout has at most one, or a few.

use super::field::{Field, Kind};
use crate::Rect;
use glam::{DVec2, dvec2};

/// Positions of one kind in a rectangle: the lower and left sides are included, the upper and right ones not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Piece {
    pub(super) kind: usize,
    pub(super) rect: Rect,
}

impl Piece {
    fn has(&self, kind: usize, p: DVec2) -> bool {
        let Rect { min, max } = self.rect;
        kind == self.kind && min.x <= p.x && p.x < max.x && min.y <= p.y && p.y < max.y
    }
}

/// Positions that exclude each other.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Clique {
    pub(super) pieces: Vec<Piece>,
    /// How many of them a layout has at most: more than one for those that meet a line, and for those of a part.
    pub(super) most: usize,
}

/// Beyond any face, metres.
pub(super) const FAR: f64 = 1e7;

impl Clique {
    /// All modules that cover a point, each grown by the minimum spacing.
    pub(super) fn over(field: &Field, point: DVec2) -> Self {
        let piece = |(kind, of): (usize, &Kind)| {
            let rect = Rect { min: point - of.reach, max: point + dvec2(0.0, of.drop) };
            Piece { kind, rect }
        };
        Self { pieces: field.kinds.iter().enumerate().map(piece).collect(), most: 1 }
    }

    /// All modules that meet a horizontal line; a layout has at most `most` of them.
    pub(super) fn across(field: &Field, line: f64, most: usize) -> Self {
        let piece = |(kind, of): (usize, &Kind)| {
            let rect = Rect { min: dvec2(-FAR, line - of.reach.y), max: dvec2(FAR, line) };
            Piece { kind, rect }
        };
        Self { pieces: field.kinds.iter().enumerate().map(piece).collect(), most }
    }

    /// All positions in a rectangle; a layout has at most `most` of them.
    pub(super) fn within(field: &Field, rect: Rect, most: usize) -> Self {
        let pieces = (0..field.kinds.len()).map(|kind| Piece { kind, rect });
        Self { pieces: pieces.collect(), most }
    }

    /// For kinds of one size: for each level, the v at which it begins, and the least u of a window as wide as the
    /// reach. All levels are within one reach of height, and all windows within the lean of a clique. The window of a
    /// level is the same for positions that may be held and those that may not: the two can be in one lowest row.
    pub(super) fn leaning(field: &Field, levels: &[(f64, f64)], top: f64) -> Self {
        let mut pieces = Vec::new();
        for (kind, of) in field.kinds.iter().enumerate() {
            let tops = levels.iter().skip(1).map(|level| level.0).chain([top]);
            pieces.extend(levels.iter().zip(tops).map(|(&(v, u), top)| Piece {
                kind,
                rect: Rect { min: dvec2(u, v), max: dvec2(u + of.reach.x, top) },
            }));
        }
        Self { pieces, most: 1 }
    }

    /// Whether some of its positions are in a rectangle.
    pub(super) fn meets(&self, rect: &Rect) -> bool {
        self.pieces.iter().any(|piece| piece.rect.overlap(rect).min_element() > 0.0)
    }

    pub(super) fn has(&self, kind: usize, p: DVec2) -> bool {
        self.pieces.iter().any(|piece| piece.has(kind, p))
    }
}
