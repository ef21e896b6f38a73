//! Edits of the parts of a house: what has to move with them before their roof is raised again.

use super::take_number;
use crate::check::check_part;
use crate::{EditError, Face, Job, PartId, PlanMove, RoofPart};
use chalkcourse_geometry::DVec2;
use chalkcourse_words::later as words;
use std::collections::BTreeSet;

/// Adds or replaces a part. The datums of its faces move with their wall lines, so that what is on them keeps its
/// distance from the eave; if the wall line stays, so does the datum.
pub(super) fn put(job: &mut Job<Face>, part: &RoofPart) -> Result<(), EditError> {
    check_part(part)?;
    take_number(job, part.id.0)?;
    let mut part = part.clone();
    let Some(there) = job.parts.iter_mut().find(|there| there.id == part.id) else {
        part.settle_sides(None);
        job.parts.push(part);
        return Ok(());
    };
    part.settle_sides(Some(there));
    let before = std::mem::replace(there, part.clone());
    for face in job.faces.iter_mut().chain(&mut job.resting) {
        let Some(from) = face.from.filter(|from| from.part == part.id) else { continue };
        let lines = before
            .place_of(from.side)
            .and_then(|at| before.wall_line(at))
            .zip(part.place_of(from.side).and_then(|at| part.wall_line(at)));
        if let Some((old, new)) = lines {
            face.datum = moved_with_line(face.datum, old, new);
        }
    }
    Ok(())
}

/// A point moved with a wall line: it keeps its distance from the line, and moves as little as possible.
fn moved_with_line(datum: DVec2, old: (DVec2, DVec2), new: (DVec2, DVec2)) -> DVec2 {
    let away = |line: (DVec2, DVec2)| {
        let unit = (line.1 - line.0).normalize_or_zero();
        (unit.perp_dot(datum - line.0), unit)
    };
    let ((before, _), (after, unit)) = (away(old), away(new));
    // Dragging a corner along its own line must not accumulate rounding errors in the datum.
    if (before - after).abs() < 1e-9 || unit == DVec2::ZERO {
        return datum;
    }
    datum + unit.perp() * (before - after)
}

/// Removes a part with its faces and the blocks on them.
pub(super) fn remove(job: &mut Job<Face>, id: PartId) -> Result<(), EditError> {
    let before = job.parts.len();
    job.parts.retain(|part| part.id != id);
    if job.parts.len() == before {
        return Err(EditError::Missing { what: words::job::PART, number: id.0 });
    }
    let of_part = |face: &Face| face.from.is_some_and(|from| from.part == id);
    let gone: BTreeSet<_> =
        job.faces.iter().chain(&job.resting).filter(|face| of_part(face)).map(|face| face.id).collect();
    job.faces.retain(|face| !of_part(face));
    job.resting.retain(|face| !of_part(face));
    job.blocks.retain(|block| !gone.contains(&block.face));
    Ok(())
}

/// Moves parts without changing them, with everything on them.
pub(super) fn relocate(job: &mut Job<Face>, ids: &[PartId], how: &PlanMove) -> Result<(), EditError> {
    for id in ids {
        if job.part(*id).is_none() {
            return Err(EditError::Missing { what: words::job::PART, number: id.0 });
        }
    }
    let moves = |part: PartId| ids.contains(&part);
    for penetration in &mut job.penetrations {
        let on = job.faces.iter().any(|face| {
            face.from.is_some_and(|from| moves(from.part)) && face.outline.contains(penetration.at)
        });
        if on {
            penetration.at = how.of(penetration.at);
        }
    }
    for face in job.faces.iter_mut().chain(&mut job.resting) {
        if face.from.is_some_and(|from| moves(from.part)) {
            face.datum = how.of(face.datum);
            // So that its sides are matched at the new position.
            face.outline = face.outline.map(|p| how.of(p));
        }
    }
    for part in job.parts.iter_mut().filter(|part| moves(part.id)) {
        part.outline = part.outline.map(|p| how.of(p));
        check_part(part)?;
    }
    Ok(())
}

/// Converts the faces of a part to drawn ones, along with those of all parts joined to it: otherwise the hole that it
/// makes in the roof below would close under it.
pub(super) fn free(job: &mut Job<Face>, id: PartId) -> Result<(), EditError> {
    if job.part(id).is_none() {
        return Err(EditError::Missing { what: words::job::PART, number: id.0 });
    }
    let group = job.parts_joined_to(id);
    for face in job.faces.iter_mut().filter(|face| face.from.is_some_and(|from| group.contains(&from.part))) {
        face.from = None;
        face.borders.clear();
        for kind in std::mem::take(&mut face.kinds) {
            if face.overruled_kind(kind.side).is_none() {
                face.overruled.push(kind);
            }
        }
        face.overruled.sort_by_key(|o| o.side);
    }
    job.parts.retain(|part| !group.contains(&part.id));
    Ok(())
}
