//! The limit type; `registry` lists all limits.

use crate::context::KeepOutContext;
use crate::keep_out::KeepOut;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// One limit on where a module may be.
pub struct Limit {
    /// The code of its rule, by which a rule book switches it off.
    pub code: &'static str,
    /// Why it gives nothing for a job: a measurement or a section of the book is missing, or the site is exempt.
    pub(crate) missing: fn(&Resolved) -> Option<OffReason>,
    /// Adds its keep-outs on a face.
    pub(crate) gives: fn(&Site<'_>, &mut Vec<KeepOut>),
}

impl Limit {
    /// Why it gives nothing for a job; `None` if it applies.
    pub fn off(&self, job: &Resolved) -> Option<OffReason> {
        if job.rule_book.off.contains(self.code) {
            return Some(OffReason::Switched);
        }
        (self.missing)(job)
    }

    /// Its keep-outs on a face, by index; none if it is off, or on an unsound face.
    pub fn keep_outs(
        &self,
        job: &Resolved,
        layout: &Layout,
        face: usize,
        given: &KeepOutContext,
    ) -> Vec<KeepOut> {
        let mut found = Vec::new();
        if self.off(job).is_none()
            && let Some(site) = Site::of(job, layout, face, given)
        {
            (self.gives)(&site, &mut found);
            found.retain(|keep_out| !keep_out.is_bare_line());
        }
        found
    }
}

/// Nothing is ever missing.
pub(crate) fn nothing_missing(_: &Resolved) -> Option<OffReason> {
    None
}
