//! What keep-outs leave of a face, for fitting.

use crate::TOLERANCE;
use crate::keep_out::{ConstrainedPart, KeepOut, Shape};
use chalkcourse_geometry::RoofFace;
use chalkcourse_geometry::fit::{Allowed, Constraint, FINE, Foot};

/// Where modules of a face may be, and the rail of the lowest row: the face minus what the keep-outs cover. `number`
/// gives the ids of the blocked shapes. Round parts are outlined too large by at most the [`TOLERANCE`], so that what
/// fits here passes the check. The border of the face always bounds the room, even if no keep-out requires it.
pub fn room(face: &RoofFace, keep_outs: &[KeepOut], number: &mut dyn FnMut(&KeepOut) -> usize) -> Allowed {
    room_within(face, keep_outs, TOLERANCE, number)
}

/// The same with round parts too large by at most `outside` metres.
pub fn room_within(
    face: &RoofFace,
    keep_outs: &[KeepOut],
    outside: f64,
    number: &mut dyn FnMut(&KeepOut) -> usize,
) -> Allowed {
    let mut allowed = Allowed { tolerance: FINE, ..Allowed::default() };
    if !face.sound {
        return allowed;
    }
    allowed.region.push(face.frame.clone());
    for (index, keep_out) in keep_outs.iter().enumerate() {
        // A keep-out that another one covers blocks nothing more; skipping it saves repeated tests.
        let covered = keep_outs.iter().enumerate().any(|(other, by)| {
            other != index && keep_out.is_within(by) && (other < index || !by.is_within(keep_out))
        });
        if covered {
            continue;
        }
        let id = number(keep_out);
        let shapes = keep_out.outlines_within(outside).into_iter().map(|shape| Constraint { id, shape });
        match keep_out.held {
            ConstrainedPart::Module => allowed.blocked.extend(shapes),
            ConstrainedPart::Rail { depth } => {
                let foot = allowed.foot.get_or_insert(Foot { depth, within: None, blocked: Vec::new() });
                foot.blocked.extend(shapes);
                if matches!(keep_out.shape, Shape::Outside(_)) {
                    foot.within = Some(id);
                }
            }
        }
    }
    allowed
}
