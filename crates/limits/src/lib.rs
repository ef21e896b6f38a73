//! Every limit on where a module may be, defined once, as keep-outs.
//!
//! A limit gives [`KeepOut`]s: a shape on a face, the distance modules keep from it, in which metric, and what part of a module
//! it applies to: all of it, or the rail under the lowest row. The check measures against them, the fill lays modules in what
//! they leave, a dragged block snaps to their border, and the drawing shows their outlines as zones. What a rule book switches
//! off, or a site exempts, gives none, for all of these alike.
//!
//! - [`keep_outs`]: the keep-outs of a face; [`KeepOutContext`]: what they depend on beyond the face
//! - [`off`]: why a limit gives none for a job, as data
//! - [`room`]: what keep-outs leave of a face, for fitting; [`Zones`]: the same, for drawing
//!
//! One limit per file; [`LIMITS`] lists them. Lengths are metres in the frame of the face; no sentences in any language.

mod base_rail;
mod between_blocks;
mod border;
mod clearance;
mod context;
mod fire;
mod flashing;
mod keep_out;
mod limit;
mod off;
mod overlap;
mod pathway;
mod registry;
mod ridge_course;
mod room;
mod setback;
mod share;
mod site;
mod zones;

#[cfg(test)]
mod testing;

pub use between_blocks::apart;
pub use context::KeepOutContext;
pub use fire::{exempt, looked_at};
pub use flashing::flashing_asked;
pub use keep_out::{Against, ConstrainedPart, KeepOut, Metric, RequiredBy, Shape};
pub use limit::Limit;
pub use off::{Exemption, OffReason};
pub use registry::{LIMITS, limit, off};
pub use ridge_course::courses_asked;
pub use room::{room, room_within};
pub use share::{Share, array_share};
pub use zones::Zones;

/// Tolerance of limits, metres: far below what a tape can measure.
pub const TOLERANCE: f64 = 1e-4;

use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// The keep-outs of a face, by index; none on an unsound face.
pub fn keep_outs(job: &Resolved, layout: &Layout, face: usize, given: &KeepOutContext) -> Vec<KeepOut> {
    LIMITS.iter().flat_map(|limit| limit.keep_outs(job, layout, face, given)).collect()
}
