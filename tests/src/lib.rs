//! The whole, against published standards and independent libraries: see `tests/tests`.
//!
//! [`hostile`] is what files from strangers go through. [`samples`] draws the jobs of `sample-roofs/`, so that they can be
//! written anew when the kit changes: `cargo run --package chalkcourse-tests --example write-samples`.

pub mod hostile;
pub mod samples;

use std::path::PathBuf;

/// The top of the checkout.
pub fn top() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}
