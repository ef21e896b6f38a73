//! What `check` says to layouts while they are searched for.

use crate::fill::{Fill, fill_edit};
use chalkcourse_geometry::Roof;
use chalkcourse_job::{FaceId, FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_limits::{Share, array_share};
use chalkcourse_rules::{Checker, Finding, Severity, never_met};
use std::cell::RefCell;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Holds layouts of one roof against all rules.
pub(super) struct Judge {
    /// The job without what makes way for the fill.
    pub(super) bare: Resolved,
    /// Its layout.
    pub(super) layout: Layout,
    roof: Arc<Roof>,
    checker: RefCell<Checker>,
    /// Stops that were there before anything was filled.
    before: BTreeSet<FindingKey>,
    /// Faces where any module has a stop for want of pathways, wherever it lies.
    unmet: BTreeSet<FaceId>,
}

impl Judge {
    /// For filling some faces of a job.
    pub(super) fn of(job: &Resolved, faces: &[FaceId]) -> Self {
        let mut bare = job.clone();
        bare.blocks.retain(|block| block.locked || !faces.contains(&block.face));
        let roof = Arc::new(assemble(&bare));
        let layout = Layout::on_roof(&bare, Arc::clone(&roof));
        let (checker, before, unmet) = (RefCell::default(), BTreeSet::new(), BTreeSet::new());
        let mut judge = Self { bare, layout, roof, checker, before, unmet };
        let before = judge.all_stops(&judge.bare, &judge.layout);
        judge.before = before.into_iter().map(|finding| finding.key).collect();
        for &face in faces {
            let index = judge.layout.face(face).map(|(index, _)| index);
            let missing = index.and_then(|index| never_met(&judge.bare, &judge.layout, index));
            judge.unmet.extend(missing.as_ref().map(|_| face));
            judge.before.extend(missing);
        }
        judge
    }

    /// Whether two pathways can't be had whatever is laid on a face: it is filled all the same, and the claim says so.
    pub(super) fn never_met(&self, face: FaceId) -> bool {
        self.unmet.contains(&face)
    }

    /// A job of the same roof as it is laid out.
    pub(super) fn laid_out(&self, job: &Resolved) -> Layout {
        Layout::on_roof(job, Arc::clone(&self.roof))
    }

    /// The job with a fill in place, and its new stops.
    pub(super) fn with(&self, job: &Resolved, fill: &Fill) -> (Resolved, Vec<Finding>) {
        let Ok(after) = apply(job, &fill_edit(job, fill)) else { return (job.clone(), Vec::new()) };
        let stops = self.stops(&after, fill.basis.fire.share);
        (after, stops)
    }

    /// Whether nothing stops a fill that was not there before.
    pub(super) fn passes(&self, job: &Resolved, fill: &Fill) -> bool {
        fill.blocks.is_empty() || self.with(job, fill).1.is_empty()
    }

    /// Whether nothing stops a fill beside all others, which are in place: the array covers as much of the roof as it will.
    pub(super) fn passes_at_last(&self, job: &Resolved, fill: &Fill) -> bool {
        let after = apply(job, &fill_edit(job, fill));
        after.is_ok_and(|after| self.stops(&after, Share::Beyond).is_empty())
    }

    /// Stops of a job that were not there before anything was filled. What is filled with room for an array up to some share of
    /// the roof may come to more: the room beside the ridge is then seen to when all is laid.
    pub(super) fn stops(&self, job: &Resolved, share: Share) -> Vec<Finding> {
        let layout = self.laid_out(job);
        let grown = share == Share::Within && Share::of(job, array_share(&layout)) == Share::Beyond;
        let mut stops = self.all_stops(job, &layout);
        stops.retain(|f| !(self.before.contains(&f.key) || grown && f.rule == "fire-ridge"));
        stops
    }

    /// Whether a stop was there before anything was filled.
    pub(super) fn had(&self, key: &FindingKey) -> bool {
        self.before.contains(key)
    }

    /// A person who waived a finding did so for what stood there then: waivers clear none.
    fn all_stops(&self, job: &Resolved, layout: &Layout) -> Vec<Finding> {
        let findings = self.checker.borrow_mut().check(job, layout);
        findings.into_iter().filter(|finding| finding.severity == Severity::Stop).collect()
    }
}
