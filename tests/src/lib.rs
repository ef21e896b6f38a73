//! Tests of the whole program against published standards and independent libraries: see `tests/tests`.
//!
//! [`houses`] makes roofs by number, [`climb`] lays as many modules on them as it can find, and [`verdict`] asks the
//! program what it claims, to be judged by what was found. [`hostile`] is what files from strangers pass through.
//! [`samples`] draws the jobs of `sample-roofs/`, so that they can be regenerated when the kit changes: `cargo run
//! --package chalkcourse-tests --example write-samples`.

pub mod arrays;
pub mod climb;
pub mod dice;
pub mod hostile;
pub mod houses;
pub mod kept;
pub mod samples;
pub mod splits;
pub mod verdict;

use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Block, BlockId, FaceId, Orientation, Resolved};
use chalkcourse_plan::Offers;
use std::collections::BTreeSet;
use std::path::PathBuf;

/// A block of one module with its lower left corner at a point of a face's frame, not yet added to the job: its id is
/// the next free one.
pub fn one_module(job: &Resolved, face: FaceId, orientation: Orientation, at: DVec2) -> Block {
    Block {
        id: BlockId(job.next_id),
        name: String::new(),
        face,
        at,
        rows: 1,
        columns: 1,
        orientation,
        reveal: job.kit.reveal.usual,
        shifts: Vec::new(),
        off: BTreeSet::new(),
        locked: false,
    }
}

/// The rules' findings on a job and what they checked, as a findings file.
///
/// # Errors
/// If it can't be serialized as JSON.
pub fn findings_of(job: &chalkcourse_job::Resolved) -> Result<String, serde_json::Error> {
    let plan = chalkcourse_plan::evaluate(job);
    let mut text = serde_json::to_string_pretty(&chalkcourse_plan::findings_report(
        job,
        &plan,
        &Offers::of(job, &plan),
    ))?;
    text.push('\n');
    Ok(text)
}

/// The root of the checkout.
pub fn top() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}
