//! Every limit on where one module may stand, once, as what keeps it off.
//!
//! A limit gives [`KeepOut`]s: a shape on a face, how far modules stay from it, in which metric, and what of a module is
//! held off: all of it, or the rail that the lowest row carries. The check measures to them, the fill lays modules in what they
//! leave, a block that is dragged snaps to their border, the zones on the drawing are their outlines. What a rule book
//! switched off, or a site exempts, gives none, for all of them alike.
//!
//! - [`keep_outs`]: what keeps modules off a face; [`Given`]: what that follows from beyond the face
//! - [`off`]: why a limit gives none for a job, as data
//! - [`room`]: what keep-outs leave of a face, for the fitting; [`Zones`]: the same, to draw
//!
//! One limit a file, [`LIMITS`] is the list of them. Lengths are metres in the frame of the face, no sentence in any language.

mod base_rail;
mod between_blocks;
mod border;
mod clearance;
mod fire;
mod flashing;
mod given;
mod keep_out;
mod off;
mod overlap;
mod pathway;
mod registry;
mod ridge_course;
mod room;
mod setback;
mod site;
mod zones;

#[cfg(test)]
mod testing;

pub use between_blocks::apart;
pub use fire::ridge::{Share, array_share};
pub use fire::{exempt, looked_at};
pub use flashing::flashing_asked;
pub use given::Given;
pub use keep_out::{Against, By, Held, KeepOut, Metric, Shape};
pub use off::{Exemption, Off};
pub use registry::{LIMITS, Limit, limit, off};
pub use ridge_course::courses_asked;
pub use room::{room, room_within};
pub use zones::Zones;

/// A limit is met when it is missed by no more than this, metres: far below what a tape can tell.
pub const TOLERANCE: f64 = 1e-4;

use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// What keeps modules off a face, by its index; none on a face without a sound outline.
pub fn keep_outs(job: &Resolved, layout: &Layout, face: usize, given: &Given) -> Vec<KeepOut> {
    LIMITS.iter().flat_map(|limit| limit.keep_outs(job, layout, face, given)).collect()
}
