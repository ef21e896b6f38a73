//! The visible surfaces of all parts together.

use super::body::Body;
use super::surface::{Surface, number_pieces};
use super::{PartProblem, PartTrouble, borders, chimney};
use crate::{PartKind, RoofPart};
use chalkcourse_geometry::{DVec2, Tolerances, distance_to_segment, envelope};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// The visible pieces of all faces, numbered; adds to `problems`.
///
/// # Errors
/// [`envelope::Tangle`] if parts intersect so closely that the result is ambiguous.
pub(super) fn visible_faces(
    parts: &[RoofPart],
    bodies: &[Arc<Body>],
    problems: &mut Vec<PartProblem>,
) -> Result<Vec<Surface>, envelope::Tangle> {
    let mut surfaces: Vec<(usize, Surface)> = Vec::new();
    for (index, body) in bodies.iter().enumerate() {
        surfaces.extend(body.surfaces.iter().flatten().map(|surface| (index, surface.clone())));
    }
    let roofs: Vec<&Surface> = surfaces.iter().map(|(_, s)| s).filter(|s| s.deck).collect();
    let mut crickets = Vec::new();
    for (index, part) in parts.iter().enumerate() {
        let Some(pitch) = part.cricket.filter(|_| part.kind == PartKind::Chimney) else { continue };
        match chimney::cricket(part, pitch, &roofs) {
            Some(faces) => crickets.extend(faces.map(|face| (index, face))),
            None => problems.push(PartProblem { part: part.id, trouble: PartTrouble::NoCricket }),
        }
    }
    surfaces.extend(crickets);
    let inputs: Vec<envelope::Surface> = surfaces
        .iter()
        .map(|(part, surface)| envelope::Surface {
            part: *part,
            outline: surface.outline.clone(),
            plane: surface.plane,
            deck: surface.deck,
        })
        .collect();
    let envelope = envelope::envelope(&inputs, Tolerances::default())?;
    let mut pieces = Vec::with_capacity(envelope.len());
    let mut parts_of = Vec::with_capacity(envelope.len());
    for piece in envelope {
        let Some((_, first)) = piece.surfaces.first().and_then(|&i| surfaces.get(i)) else { continue };
        let mut kinds: BTreeMap<(usize, usize), _> = BTreeMap::new();
        for (_, surface) in piece.surfaces.iter().filter_map(|&i| surfaces.get(i)) {
            for (&place, &kind) in &surface.kinds {
                let wall = surface.outline.sides().find(|&(ring, side, ..)| (ring, side) == place);
                let Some((.., a, b)) = wall else { continue };
                let on = |p: DVec2| distance_to_segment(p, a, b) < 1e-5;
                let sides = piece.outline.sides().filter(|&(.., c, d)| on(c) && on(d));
                kinds.extend(sides.map(|(ring, side, ..)| ((ring, side), kind)));
            }
        }
        kinds.extend(piece.kinds);
        let of = piece.surfaces.iter().filter_map(|&i| surfaces.get(i));
        parts_of.push(of.map(|(_, surface)| surface.from.part).collect::<BTreeSet<_>>());
        pieces.push(Surface {
            from: first.from,
            sides: first.sides.clone(),
            borders: Vec::new(),
            outline: piece.outline,
            plane: first.plane,
            deck: true,
            kinds,
        });
    }
    borders::find(&mut pieces, &parts_of, parts, bodies);
    number_pieces(&mut pieces);
    for (part, body) in parts.iter().zip(bodies) {
        let seen = part.kind == PartKind::Chimney || pieces.iter().any(|p| p.from.part == part.id);
        if body.surfaces.is_ok() && !seen {
            problems.push(PartProblem { part: part.id, trouble: PartTrouble::Hidden });
        }
    }
    Ok(pieces)
}

/// All faces of all parts, as if no part hid any other.
pub(super) fn all_surfaces(parts: &[RoofPart], bodies: &[Arc<Body>]) -> Vec<Surface> {
    let all = bodies.iter().flat_map(|body| body.surfaces.iter().flatten());
    let mut surfaces: Vec<Surface> = all.filter(|surface| surface.deck).cloned().collect();
    let parts_of: Vec<_> = surfaces.iter().map(|surface| BTreeSet::from([surface.from.part])).collect();
    borders::find(&mut surfaces, &parts_of, parts, bodies);
    number_pieces(&mut surfaces);
    surfaces
}
