//! Checking layouts during the search for fills.

use crate::fill::{Fill, fill_edit};
use chalkcourse_geometry::Roof;
use chalkcourse_job::{FaceId, FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_limits::{Share, array_share};
use chalkcourse_rules::{Checker, Finding, Severity, missing_pathways};
use std::cell::RefCell;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Checks layouts on one roof against all rules.
pub(super) struct Judge {
    /// The job without the blocks that the fill replaces.
    pub(super) bare: Resolved,
    /// Its layout.
    pub(super) layout: Layout,
    roof: Arc<Roof>,
    checker: RefCell<Checker>,
    /// Stops that existed before anything was filled.
    before: BTreeSet<FindingKey>,
    /// Faces where any module at all has a stop for lack of pathways.
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
            let missing = index.and_then(|index| missing_pathways(&judge.bare, &judge.layout, index));
            judge.unmet.extend(missing.as_ref().map(|_| face));
            judge.before.extend(missing);
        }
        judge
    }

    /// Whether the pathways can't be provided whatever is laid on the face: it is filled all the same, and the claim
    /// says so.
    pub(super) fn lacks_pathways(&self, face: FaceId) -> bool {
        self.unmet.contains(&face)
    }

    /// The layout of a job with the same roof.
    pub(super) fn laid_out(&self, job: &Resolved) -> Layout {
        Layout::on_roof(job, Arc::clone(&self.roof))
    }

    /// The job with a fill in place, and its new stops.
    pub(super) fn with(&self, job: &Resolved, fill: &Fill) -> (Resolved, Vec<Finding>) {
        let Ok(after) = apply(job, &fill_edit(job, fill)) else { return (job.clone(), Vec::new()) };
        let stops = self.stops(&after, fill.basis.fire.share);
        (after, stops)
    }

    /// Whether a fill causes no new stop.
    pub(super) fn passes(&self, job: &Resolved, fill: &Fill) -> bool {
        fill.blocks.is_empty() || self.with(job, fill).1.is_empty()
    }

    /// Whether a fill causes no stop with all other fills in place, when the array covers its final share of the roof.
    pub(super) fn passes_at_last(&self, job: &Resolved, fill: &Fill) -> bool {
        let after = apply(job, &fill_edit(job, fill));
        after.is_ok_and(|after| self.stops(&after, Share::Beyond).is_empty())
    }

    /// New stops of a job. A fill made for an array up to some share of the roof may end up covering more: the ridge
    /// setback is then dealt with after everything is laid.
    pub(super) fn stops(&self, job: &Resolved, share: Share) -> Vec<Finding> {
        let layout = self.laid_out(job);
        let grown = share == Share::Within && Share::of(job, array_share(&layout)) == Share::Beyond;
        let mut stops = self.all_stops(job, &layout);
        stops.retain(|f| !(self.before.contains(&f.key) || grown && f.rule == "fire-ridge"));
        stops
    }

    /// Whether a stop existed before anything was filled.
    pub(super) fn existed_before(&self, key: &FindingKey) -> bool {
        self.before.contains(key)
    }

    /// A waiver was given for what was there then, so waivers clear nothing here.
    fn all_stops(&self, job: &Resolved, layout: &Layout) -> Vec<Finding> {
        let findings = self.checker.borrow_mut().check(job, layout);
        findings.into_iter().filter(|finding| finding.severity == Severity::Stop).collect()
    }
}
