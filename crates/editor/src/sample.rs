//! Initial jobs: an empty one, and the sample that opens by default.

use chalkcourse_job::{FileError, Resolved, builtin_kit, builtin_prices, builtin_rule_book, job_from_text};
use std::path::Path;

const ALDER_COURT: &str = include_str!("../../../sample-roofs/alder-court.chalk.json");

/// A job without a roof, with the built-in data files.
pub(crate) fn empty() -> Resolved {
    Resolved::new(crate::text::NEW_JOB.now().to_owned(), builtin_kit(), builtin_rule_book(), builtin_prices())
}

/// The sample: a 60 × 30 ft gable with one block on it.
///
/// # Errors
/// [`FileError`] if the built-in text can't be read, which a test rules out.
pub(crate) fn alder_court() -> Result<Resolved, FileError> {
    job_from_text(ALDER_COURT, Path::new("alder-court.chalk.json"))
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_sample_can_be_read() {
        let job = super::alder_court().unwrap();
        assert_eq!((job.faces.len(), job.penetrations.len(), job.blocks.len()), (2, 4, 1));
    }
}
