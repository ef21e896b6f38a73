//! User requests as actions: pure functions of the document and the selection that return actions, or a message on why
//! it can't be done. Independent of pointer and screen.

pub(crate) mod arranging;
mod block;
pub(crate) mod group;
mod held;
mod new_face;
pub(crate) mod part;
pub(crate) mod parting;
mod penetration;
pub(crate) mod pieces;
pub(crate) mod squaring;
pub(crate) mod standing;
pub(crate) mod taping;
pub(crate) mod wiring;

pub(crate) use block::{Growth, grown, new_block};
pub(crate) use held::{add_corner, delete, nudged, picture_nudged, switch};
pub(crate) use new_face::{corners_at, new_face};
pub(crate) use parting::usual_roof;
pub(crate) use penetration::new_penetration;
