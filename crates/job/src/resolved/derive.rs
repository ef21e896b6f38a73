//! Derives the faces of a job from its parts.

use super::body::Body;
use super::surface::Surface;
use super::{PartProblem, PartTrouble, Resolved, reassign, seen, sides};
use crate::{EditError, Face, FaceId, FromPart, Job, Overrule, PartId, PartKind, RoofPart, first_free};
use chalkcourse_geometry::{Length, Plane, Polygon};
use std::collections::{BTreeSet, HashMap, HashSet};
use std::sync::Arc;

/// What to do about a part that can't be raised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Strictness {
    /// For edits: reject the edit.
    Refuse,
    /// For files: open the file, and report the part as a problem.
    Report,
}

/// Derives the faces of a job from its parts. Faces keep their ids, names and courses as long as their side exists;
/// blocks keep their position on the face, or are moved to the face that is there now.
///
/// # Errors
/// [`EditError::CantRaise`] with [`Strictness::Refuse`]; [`EditError::Tangled`].
pub(crate) fn derive_faces(job: &mut Resolved, strictness: Strictness) -> Result<(), EditError> {
    if job.parts.is_empty() && job.bodies.is_empty() && !has_faces_of_parts(job) {
        return Ok(());
    }
    let bodies = bodies(job);
    let mut problems = Vec::new();
    for (part, body) in job.parts.iter().zip(&bodies) {
        let known = job.bodies.iter().any(|before| Arc::ptr_eq(before, body));
        if let Err(error) = &body.surfaces {
            if strictness == Strictness::Refuse && !known {
                return Err(EditError::CantRaise { part: part.name.clone(), error: error.clone() });
            }
            problems.push(PartProblem { part: part.id, trouble: PartTrouble::NotRaised(error.clone()) });
        }
    }
    let surfaces = match seen::visible_faces(&job.parts, &bodies, &mut problems) {
        Ok(surfaces) => surfaces,
        Err(tangle) if strictness == Strictness::Refuse => return Err(EditError::Tangled(tangle)),
        // Treat each part as if it were alone; the overlaps are reported elsewhere.
        Err(_) => seen::all_surfaces(&job.parts, &bodies),
    };
    (job.bodies, job.problems) = (bodies, problems);
    let stood = reassign::block_positions(job);
    assign_surfaces(job, surfaces);
    // In a file the blocks are already on their faces.
    if strictness == Strictness::Refuse {
        reassign::reassign_blocks(job, &stood);
    }
    tidy_resting_faces(job);
    Ok(())
}

fn has_faces_of_parts(job: &Job<Face>) -> bool {
    !job.resting.is_empty() || job.faces.iter().any(|face| face.from.is_some())
}

/// The bodies of all parts; unchanged ones are reused.
fn bodies(job: &Resolved) -> Vec<Arc<Body>> {
    let known = |part: &RoofPart| job.bodies.iter().find(|body| body.is_of(part));
    job.parts.iter().map(|part| known(part).map_or_else(|| Arc::new(Body::of(part)), Arc::clone)).collect()
}

/// Assigns each surface to its face: its previous one, a resting one, or a new one.
fn assign_surfaces(job: &mut Job<Face>, surfaces: Vec<Surface>) {
    let mut waiting: HashMap<FromPart, Surface> = HashMap::new();
    let order: Vec<FromPart> = surfaces.iter().map(|surface| surface.from).collect();
    waiting.extend(surfaces.into_iter().map(|surface| (surface.from, surface)));
    derive_sides(job, &waiting);
    let there: BTreeSet<(PartId, u32)> = job
        .parts
        .iter()
        .flat_map(|part| part.sides.iter().flatten().map(|side| (part.id, side.id)))
        .collect();
    let mut staying = Vec::with_capacity(job.faces.len());
    for mut face in std::mem::take(&mut job.faces) {
        let Some(from) = face.from else {
            staying.push(face);
            continue;
        };
        match waiting.remove(&from) {
            Some(surface) => {
                shape(&mut face, surface, &there);
                staying.push(face);
            }
            None => job.resting.push(face),
        }
    }
    job.faces = staying;
    for from in order {
        let Some(surface) = waiting.remove(&from) else { continue };
        let rested = job.resting.iter().position(|face| face.from == Some(from));
        let mut face = match rested {
            Some(index) => job.resting.remove(index),
            None => new_face(job, &surface),
        };
        shape(&mut face, surface, &there);
        job.faces.push(face);
    }
}

/// A face whose side lost its id, or was merged behind a coplanar side, moves to that other side unless that already
/// has a face.
fn derive_sides(job: &mut Job<Face>, surfaces: &HashMap<FromPart, Surface>) {
    let mut taken: HashSet<FromPart> =
        job.faces.iter().chain(&job.resting).filter_map(|face| face.from).collect();
    for face in &mut job.faces {
        let Some(from) = face.from.filter(|from| !surfaces.contains_key(from)) else { continue };
        let stands_on = |surface: &&Surface| {
            let of = surface.from;
            (of.part, of.piece) == (from.part, from.piece) && surface.sides.contains(&from.side)
        };
        let free = surfaces.values().filter(|surface| stands_on(surface) && !taken.contains(&surface.from));
        let next = free.min_by_key(|surface| surface.from);
        if let Some(surface) = next {
            taken.insert(surface.from);
            face.from = Some(surface.from);
        }
    }
}

/// Sets the derived geometry of a face. Its datum stays.
fn shape(face: &mut Face, surface: Surface, there: &BTreeSet<(PartId, u32)>) {
    let Surface { from, sides: _, borders, outline, plane, deck: _, kinds } = surface;
    sides::carry(face, &outline, &borders, there);
    let kind_of = |((ring, side), kind)| Some(Overrule { side: face.sides.at(ring, side)?, kind });
    face.kinds = kinds.into_iter().filter_map(kind_of).collect();
    face.kinds.sort_by_key(|o| o.side);
    face.from = Some(from);
    face.outline = outline;
    face.pitch = plane.pitch;
    face.downslope = plane.downslope;
    face.height = Length::from_metres(plane.height_at(face.datum));
}

fn new_face(job: &mut Job<Face>, surface: &Surface) -> Face {
    let id = FaceId(job.next_id);
    job.next_id = job.next_id.saturating_add(1);
    let name = free_name(job, surface);
    let Plane { pitch, downslope, .. } = surface.plane;
    let mut face = Face::new(id, name, surface.outline.clone(), pitch, downslope, Length::ZERO);
    face.outline = Polygon::default();
    face
}

/// "South" on the main house, "Porch south" on a part with another name; "South 2" if that is taken.
fn free_name(job: &Job<Face>, surface: &Surface) -> String {
    let way = surface.plane.downslope.word().now();
    let of_part = job.parts.iter().find(|part| part.id == surface.from.part);
    let wanted = match of_part {
        Some(part) if part.kind != PartKind::Main && !part.name.trim().is_empty() => {
            format!("{} {way}", part.name.trim())
        }
        _ => way[..1].to_uppercase() + &way[1..],
    };
    first_free(&wanted, |name| job.faces.iter().chain(&job.resting).any(|face| face.name == name))
}

/// Resting faces are kept while their side exists, or while a block waits for them.
fn tidy_resting_faces(job: &mut Job<Face>) {
    let Job { resting, parts, blocks, .. } = job;
    resting.retain(|face| {
        let side_is_there = face.from.is_some_and(|from| {
            parts.iter().any(|part| part.id == from.part && part.place_of(from.side).is_some())
        });
        side_is_there || blocks.iter().any(|block| block.face == face.id)
    });
    resting.sort_by_key(|face| face.id);
    for face in resting.iter_mut() {
        // A resting face has no geometry; clear the old one, so that saving and loading gives the same job.
        face.outline = Polygon::default();
        face.sides = face.sides.with_found(Vec::new());
        face.kinds.clear();
        face.height = Length::ZERO;
        face.pitch = chalkcourse_geometry::Pitch::FLAT;
        face.downslope = Default::default();
    }
}
