use super::{FromPart, RoofPart, chimney};
use crate::PartId;
use chalkcourse_geometry::raise::{RaiseError, raise};
use chalkcourse_geometry::{EdgeKind, Plane, Polygon, Tolerances};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What was worked out from the parts of a job. It follows from them, so that it is in no file and two jobs never
/// differ by it; it is kept so that an edit works out again only what it changes.
#[derive(Clone, Default)]
pub struct WorkedOut {
    pub(super) bodies: Vec<Arc<Body>>,
    pub(super) problems: Vec<PartProblem>,
}

impl std::fmt::Debug for WorkedOut {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "WorkedOut({} parts, {:?})", self.bodies.len(), self.problems)
    }
}

impl PartialEq for WorkedOut {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl WorkedOut {
    /// What of the parts stands on no roof, and why.
    pub fn problems(&self) -> &[PartProblem] {
        &self.problems
    }
}

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
pub(super) struct Body {
    part: RoofPart,
    pub(super) surfaces: Result<Vec<Surface>, RaiseError>,
}

/// A face of one part.
#[derive(Clone, Debug)]
pub(super) struct Surface {
    pub(super) from: FromPart,
    /// All sides of the part that it stands on.
    pub(super) sides: Vec<u32>,
    pub(super) outline: Polygon,
    pub(super) plane: Plane,
    /// False for the top of a chimney.
    pub(super) deck: bool,
    /// Kinds that follow from the part, by ring and corner.
    pub(super) kinds: BTreeMap<(usize, usize), EdgeKind>,
}

impl Body {
    pub(super) fn of(part: &RoofPart) -> Self {
        Self { part: part.clone(), surfaces: surfaces(part) }
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

fn surfaces(part: &RoofPart) -> Result<Vec<Surface>, RaiseError> {
    if part.kind == super::PartKind::Chimney {
        return chimney::top(part);
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
            deck: true,
            kinds: input.overruled,
        });
    }
    Ok(surfaces)
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
