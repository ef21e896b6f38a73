//! Rules: a job's layout and its rule book give findings. One rule a file; [`RULES`] is the list of them.
//!
//! A rule reads a snapshot and never changes a job. A finding is data: what was measured, what is required, by how
//! much to move which way, where, and by whose word; its key stays the same from run to run, so that a waiver holds.
//!
//! - [`check`]: all findings of a job; [`Checker`] gives the same and runs again only what changed
//! - [`checked`]: what was checked, against which book, and what was not
//! - `roof/`: whether the roof as drawn holds together
//! - `array/`: whether blocks may lie where they lie
//! - `fire/`: room for the fire service; [`pathways`] gives what was found, to draw
//! - `roofing/`, [`checklist`]: what slopes and wide penetrations ask for, and what prints with a job
//! - [`wind`], [`snow`]: a screening, never a design
//!
//! Lengths are metres in the frame of the face, limits are met when they are touched: a tenth of a millimetre too
//! little passes. Directions are those of a person who stands at the eave and looks up the slope.

mod array;
mod case;
mod checker;
mod checklist;
mod clear;
mod finding;
mod fire;
mod measure;
mod registry;
mod roof;
mod roofing;
pub mod sketch;
pub mod snow;
mod waivers;
pub mod wind;
mod words;

#[cfg(test)]
mod testing;

pub use array::water::flashing_room;
pub use checker::{Checker, Ran, Unit};
pub use checklist::{checklist, ice_barrier_length};
pub use finding::{Finding, Fix, Place, Severity};
pub use fire::escape::escape_strip;
pub use fire::pathway::{Pathway, blocks_a_path, pathways};
pub use fire::ridge::{array_share, ridge_room};
pub use registry::{Checked, RULES, Rule, checked};

use chalkcourse_job::Job;
use chalkcourse_layout::Layout;

/// All findings of a job, the most severe first; then in the order of rules and of the job.
pub fn check(job: &Job, layout: &Layout) -> Vec<Finding> {
    Checker::default().check(job, layout)
}
