//! Rules: a job's layout and its rule book give findings. One rule a file; [`RULES`] is the list of them.
//!
//! A rule reads a snapshot through a view that reaches what its kind of run may read, and never changes a job. A finding is
//! facts: what was measured and what is asked as amounts, where, and by whose word; its key stays the same from run to run,
//! so that a waiver holds. No sentence is made here, in any language: crate `telling` has them.
//!
//! - [`check`]: all findings of a job; [`Checker`] gives the same and runs again only what changed
//! - [`Rule::why_not`]: what is not checked for a job
//! - `roof/`: whether the roof as drawn holds together
//! - `array/`: whether blocks may lie where they lie
//! - `fire/`: room for the fire service; [`pathways`] gives what was found, to draw; [`ways_up`] and [`passage`] what is to be left
//!   free, [`never_met`] what no layout can leave
//! - `roofing/`: what slopes and wide penetrations ask for
//! - [`wind`], [`uplift`], [`snow`]: a screening, never a design
//!
//! Lengths are metres in the frame of the face, limits are met when they are touched: a tenth of a millimetre too
//! little passes. Directions are those of a person who stands at the eave and looks up the slope.

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

#[cfg(test)]
mod testing;

pub use authority::Authority;
pub use checker::{Checker, RuleRun, Unit};
pub use facts::{Beside, ClassAsked, Covering, Facts, Fault, NoDeck};
pub use finding::{Finding, Location, Severity};
pub use fire::kept::{passage, ways_up};
pub use fire::paths::never_met;
pub use fire::pathway::{blocks_a_path, pathways};
pub use registry::RULES;
pub use roofing::ice_barrier::{IceBarrier, ice_barrier, ice_barrier_length};
pub use rule::Rule;
pub use way::Pathway;
pub use why_not::{Section, Unknown, WhyNot};

pub use chalkcourse_limits::{Against, Exemption};

use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// All findings of a job, the most severe first; then in the order of rules and of the job.
pub fn check(job: &Resolved, layout: &Layout) -> Vec<Finding> {
    Checker::default().check(job, layout)
}
