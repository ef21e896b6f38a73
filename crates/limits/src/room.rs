//! What keep-outs leave of a face, for the fitting.

use crate::TOLERANCE;
use crate::keep_out::{Held, KeepOut, Shape};
use chalkcourse_geometry::RoofFace;
use chalkcourse_geometry::fit::{Allowed, Constraint, FINE, Foot};

/// Where modules of a face may stand, and the rail of the lowest row: the face, less what the keep-outs cover. Blocked shapes
/// have the number that `number` gives to their keep-out. Round parts are drawn around, outside by no more than the
/// [`TOLERANCE`], so that what fits here passes. A fill fills the face, so that its border bounds the room even where no keep-out
/// says so.
pub fn room(face: &RoofFace, keep_outs: &[KeepOut], number: &mut dyn FnMut(&KeepOut) -> usize) -> Allowed {
    room_within(face, keep_outs, TOLERANCE, number)
}

/// The same with round parts drawn outside by no more than so many metres.
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
        // What another covers whole stops nothing more, but would be looked at again and again.
        let covered = keep_outs.iter().enumerate().any(|(other, by)| {
            other != index && keep_out.is_within(by) && (other < index || !by.is_within(keep_out))
        });
        if covered {
            continue;
        }
        let id = number(keep_out);
        let shapes = keep_out.outlines_within(outside).into_iter().map(|shape| Constraint { id, shape });
        match keep_out.held {
            Held::Module => allowed.blocked.extend(shapes),
            Held::Rail { depth } => {
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
