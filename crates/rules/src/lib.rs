//! Rules: findings from a job's layout and its rule book. One rule per file; [`RULES`] lists them.
//!
//! A rule reads a snapshot through a view limited to what its kind of run may read, and never changes a job. A finding is facts:
//! measured and required amounts, place and source; its key is stable from run to run, so that a waiver keeps applying. No
//! sentence is made here, in any language: that is crate `telling`.
//!
//! - [`check`]: all findings of a job; [`Checker`] gives the same and runs again only what changed
//! - [`Rule::why_not`]: what is not checked for a job
//! - `roof/`: validity of the roof as drawn
//! - `array/`: placement of blocks
//! - `fire/`: fire-service access; [`pathways`] gives those found, to draw; [`ways_up`] and [`passage`] what must stay free,
//!   [`never_met`] what no layout can provide
//! - `roofing/`: requirements of slopes and wide penetrations
//! - `wires/`: circuits
//! - [`wind`], [`uplift`], [`snow`]: a screening, never a design
//!
//! Lengths are metres in the frame of the face; touching a limit meets it, and a tenth of a millimetre short passes. Directions
//! are as seen from the eave, looking up the slope.

mod array;
mod authority;
mod by_limit;
mod checker;
mod facts;
mod finding;
mod fire;
mod measure;
mod registry;
mod roof;
mod roofing;
mod rule;
pub mod sketch;
pub mod snow;
pub mod uplift;
mod view;
mod waivers;
mod way;
mod why_not;
pub mod wind;
mod wires;

#[cfg(test)]
mod testing;

pub use authority::Authority;
pub use checker::{Checker, RuleRun, Unit};
pub use facts::{Beside, ClassAsked, Covering, Facts, Fault, NoDeck, ReadingWrong, Thin};
pub use finding::{Finding, Location, Severity};
pub use fire::kept::{passage, ways_up};
pub use fire::paths::never_met;
pub use fire::pathway::{blocks_a_path, pathways};
pub use registry::RULES;
pub use roofing::ice_barrier::{IceBarrier, ice_barrier, ice_barrier_length};
pub use rule::Rule;
pub use way::Pathway;
pub use why_not::{KitGap, Section, Unknown, WhyNot};

pub use chalkcourse_limits::{Against, Exemption};

use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// All findings of a job, most severe first; then in the order of rules and of the job.
pub fn check(job: &Resolved, layout: &Layout) -> Vec<Finding> {
    Checker::default().check(job, layout)
}
