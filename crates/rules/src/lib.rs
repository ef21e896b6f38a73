//! Rules: a job's layout and its rule book give findings. One rule a file; [`RULES`] is the list of them.
//!
//! A rule reads a snapshot and never changes a job. A finding is data: what was measured, what is required, by how
//! much to move which way, where, and by whose word; its key stays the same from run to run, so that a waiver holds.

mod finding;

pub use finding::{Finding, Fix, Place, Severity};

use chalkcourse_job::Job;
use chalkcourse_layout::Layout;

/// All findings of a job, the most severe first; then in the order of rules and of the job.
pub fn check(job: &Job, layout: &Layout) -> Vec<Finding> {
    let _ = (job, layout);
    Vec::new()
}
