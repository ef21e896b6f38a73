//! A part with its roof, before other parts hide any of it.

use super::borders::{Border, Edge};
use super::{FromPart, RoofPart, chimney};
use crate::PartId;
use chalkcourse_geometry::raise::{RaiseError, raise};
use chalkcourse_geometry::{EdgeKind, Plane, Polygon, Tolerances};
use std::collections::BTreeMap;

/// A part that could not be worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct PartProblem {
    /// Which part.
    pub part: PartId,
    /// Why.
    pub trouble: PartTrouble,
}

/// Why a part, or something of it, is not on the roof.
#[derive(Clone, Debug, PartialEq)]
pub enum PartTrouble {
    /// No roof can be raised from its footprint.
    NotRaised(RaiseError),
    /// Nothing of it is seen: it lies under other parts.
    Hidden,
    /// A chimney's cricket has no slope to stand on: the chimney stands across a ridge, or on no roof.
    NoCricket,
}

/// A part with its roof, before other parts hide any of it.
#[derive(Clone, Debug)]
pub(crate) struct Body {
    part: RoofPart,
    pub(super) surfaces: Result<Vec<Surface>, RaiseError>,
    /// The edges of the ground that it covers.
    pub(super) edges: Vec<Edge>,
}

/// A face of one part.
#[derive(Clone, Debug)]
pub(super) struct Surface {
    pub(super) from: FromPart,
    /// All sides of the part that it stands on.
    pub(super) sides: Vec<u32>,
    pub(super) outline: Polygon,
    pub(super) plane: Plane,
    /// What each side borders, by ring and corner; worked out for what is seen alone.
    pub(super) borders: Vec<Vec<Vec<Border>>>,
    /// False for the top of a chimney.
    pub(super) deck: bool,
    /// Kinds that follow from the part, by ring and corner.
    pub(super) kinds: BTreeMap<(usize, usize), EdgeKind>,
}

impl Body {
    pub(super) fn of(part: &RoofPart) -> Self {
        let (surfaces, edges) = match raised(part) {
            Ok((surfaces, edges)) => (Ok(surfaces), edges),
            Err(error) => (Err(error), Vec::new()),
        };
        Self { part: part.clone(), surfaces, edges }
    }

    /// Whether it is still that of a part: a name changes nothing, nor does the next free number.
    pub(super) fn is_of(&self, part: &RoofPart) -> bool {
        let RoofPart { id, name: _, kind, outline, eave_height, sides, next_side: _, cricket } = part;
        self.part.id == *id
            && self.part.kind == *kind
            && self.part.eave_height == *eave_height
            && self.part.cricket == *cricket
            && self.part.sides == *sides
            && self.part.outline == *outline
    }
}

fn raised(part: &RoofPart) -> Result<(Vec<Surface>, Vec<Edge>), RaiseError> {
    if part.kind == super::PartKind::Chimney {
        return Ok((chimney::top(part)?, chimney::edges(part)));
    }
    let raised = raise(&part.footprint())?;
    let mut surfaces: Vec<Surface> = Vec::new();
    for (index, input) in raised.face_inputs(Tolerances::default().corner) {
        let Some(face) = raised.faces.get(index) else { continue };
        let sides: Vec<u32> = face.sides.iter().filter_map(|&at| part.side(at)).map(|side| side.id).collect();
        // Of several sides in one plane that with the least number was there before the others.
        let Some(&side) = sides.iter().min() else { continue };
        surfaces.push(Surface {
            from: FromPart { part: part.id, side, piece: 0 },
            sides,
            outline: input.outline,
            plane: input.plane,
            borders: Vec::new(),
            deck: true,
            kinds: input.overruled,
        });
    }
    let edge = |(line, at)| Some(Edge { line, side: part.side(at)?.id });
    Ok((surfaces, raised.ground_sides().filter_map(edge).collect()))
}

/// Numbers the pieces of each side to the right along its eave.
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
