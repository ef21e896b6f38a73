//! The list of all limits.

use crate::limit::Limit;
use crate::off::OffReason;
use crate::{
    base_rail, between_blocks, border, clearance, fire, flashing, overlap, pathway, ridge_course, setback,
};
use chalkcourse_job::Resolved;

/// All limits.
pub const LIMITS: &[&Limit] = &[
    &border::LIMIT,
    &overlap::LIMIT,
    &setback::LIMIT,
    &clearance::LIMIT,
    &flashing::LIMIT,
    &ridge_course::LIMIT,
    &base_rail::LIMIT,
    &between_blocks::LIMIT,
    &fire::ridge::LIMIT,
    &fire::hip_valley::LIMIT,
    &fire::escape::LIMIT,
    &pathway::LIMIT,
];

/// The limit of a rule; `None` for a rule that is not a limit on a single module.
pub fn limit(code: &str) -> Option<&'static Limit> {
    LIMITS.iter().find(|limit| limit.code == code).copied()
}

/// Why the limit of a rule gives nothing for a job; `None` if it applies, and for a rule that is not a limit on a single module.
pub fn off(job: &Resolved, code: &str) -> Option<OffReason> {
    limit(code)?.off(job)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn codes_are_unique() {
        let codes: BTreeSet<_> = LIMITS.iter().map(|limit| limit.code).collect();
        assert_eq!(codes.len(), LIMITS.len());
    }
}
