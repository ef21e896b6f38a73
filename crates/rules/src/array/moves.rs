//! What findings have in common that one move of a block clears.

use crate::case::{Case, Laid};
use crate::clear::{Move, Obstacle, least_move};
use crate::finding::{Finding, Place, Severity};
use crate::words::{Way, block_name, length, move_fix};
use chalkcourse_geometry::{DVec2, EdgeSpan, Rect};
use chalkcourse_job::Cell;
use chalkcourse_words::{pick, tell};

/// A block that must move, and why.
pub(crate) struct MustMove<'a> {
    pub(crate) code: &'static str,
    pub(crate) severity: Severity,
    pub(crate) key: String,
    /// What is wrong and what is asked, as a sentence without its full stop.
    pub(crate) says: String,
    /// Whether other blocks are spoken of, so that this one needs its name.
    pub(crate) named: bool,
    pub(crate) measured: String,
    pub(crate) required: String,
    pub(crate) source: String,
    pub(crate) place: Place,
    pub(crate) moving: &'a Laid<'a>,
    pub(crate) by: Move,
}

impl MustMove<'_> {
    /// The finding, with the move that clears it.
    pub(crate) fn finding(self, case: &Case<'_>) -> Finding {
        let units = case.units;
        let who = if self.named {
            block_name(self.moving.block)
        } else {
            pick("the block", "el bloque").to_owned()
        };
        Finding {
            message: tell!(
                "{}. Move {who} {} {}.",
                "{}. Mueva {who} {} {}.",
                self.says,
                length(self.by.by, units),
                self.by.way.name()
            ),
            place: self.place,
            measured: self.measured,
            required: self.required,
            source: self.source,
            fix: Some(move_fix(self.moving.block, self.by, units)),
            ..Finding::of(self.code, self.severity, self.key)
        }
    }
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
pub(crate) fn into_the_face(
    rects: &[Rect],
    spans: &[&EdgeSpan],
    reach: f64,
    case: &Case<'_>,
) -> Option<Move> {
    let inward = spans.first()?.inward();
    let ways: Vec<Way> = Way::ALL.into_iter().filter(|way| way.unit().dot(inward) > 0.01).collect();
    let obstacles: Vec<Obstacle> =
        spans.iter().map(|span| Obstacle { corners: vec![span.frame.0, span.frame.1], reach }).collect();
    least_move(rects, &obstacles, &ways, case.units)
}
