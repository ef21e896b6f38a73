//! A part with its roof, before other parts hide any of it.

use super::chimney;
use super::surface::{Edge, Surface};
use crate::{FromPart, PartKind, RoofPart};
use chalkcourse_geometry::Tolerances;
use chalkcourse_geometry::raise::{RaiseError, raise};

/// A part with its roof, before other parts hide any of it.
#[derive(Clone, Debug)]
pub(super) struct Body {
    part: RoofPart,
    pub(super) surfaces: Result<Vec<Surface>, RaiseError>,
    /// The edges of the area that it covers.
    pub(super) edges: Vec<Edge>,
}

impl Body {
    pub(super) fn of(part: &RoofPart) -> Self {
        let (surfaces, edges) = match raised(part) {
            Ok((surfaces, edges)) => (Ok(surfaces), edges),
            Err(error) => (Err(error), Vec::new()),
        };
        Self { part: part.clone(), surfaces, edges }
    }

    /// Whether it is up to date for a part: the name and the next free id don't matter.
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
    if part.kind == PartKind::Chimney {
        return Ok((chimney::top(part)?, chimney::edges(part)));
    }
    let raised = raise(&part.footprint())?;
    let mut surfaces: Vec<Surface> = Vec::new();
    for (index, input) in raised.face_inputs(Tolerances::default().corner) {
        let Some(face) = raised.faces.get(index) else { continue };
        let sides: Vec<u32> = face.sides.iter().filter_map(|&at| part.side(at)).map(|side| side.id).collect();
        // The lowest id among coplanar sides is that of the oldest.
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
