//! Reassigning blocks when the faces under them change.

use crate::{BlockId, Face, FaceId, FromPart, Job};
use chalkcourse_geometry::{DVec2, Plane};

/// A block and the face that it was on.
pub(super) struct BlockPosition {
    block: BlockId,
    face: FaceId,
    from: FromPart,
    /// The former plane of the face.
    plane: Plane,
}

/// The blocks on faces of parts.
pub(super) fn block_positions(job: &Job<Face>) -> Vec<BlockPosition> {
    job.blocks
        .iter()
        .filter_map(|block| {
            let face = job.faces.iter().find(|face| face.id == block.face)?;
            Some(BlockPosition { block: block.id, face: face.id, from: face.from?, plane: face.plane() })
        })
        .collect()
}

/// A block keeps its position on its face. If the face no longer has area under the block's centre, and another face of
/// the same side or in exactly the same plane has, the block is assigned to that without moving.
pub(super) fn reassign_blocks(job: &mut Job<Face>, stood: &[BlockPosition]) {
    let Job { blocks, faces, kit, .. } = job;
    for block in blocks.iter_mut() {
        let Some(stood) = stood.iter().find(|stood| stood.block == block.id && stood.face == block.face)
        else {
            continue;
        };
        let middle =
            block.at + block.spacing(kit) * DVec2::new(f64::from(block.columns), f64::from(block.rows)) / 2.0;
        let own = faces.iter().find(|face| face.id == block.face);
        let plane = own.map_or(stood.plane, |face| face.plane());
        let plan = plane.to_plan(middle);
        if own.is_some_and(|face| face.outline.contains(plan)) {
            continue;
        }
        let same_side = |from: FromPart| (from.part, from.side) == (stood.from.part, stood.from.side);
        let other = faces.iter().find(|face| {
            face.from.is_some_and(|from| same_side(from) || is_same(&face.plane(), &plane))
                && face.outline.contains(plan)
        });
        if let Some(other) = other {
            block.at = other.plane().to_frame(plane.to_plan(block.at));
            block.face = other.id;
        }
    }
}

fn is_same(a: &Plane, b: &Plane) -> bool {
    let gradient = |plane: &Plane| plane.downslope.unit() * plane.pitch.slope();
    gradient(a).distance(gradient(b)) < 1e-6 && (a.height_at(b.datum.truncate()) - b.datum.z).abs() < 1e-3
}
