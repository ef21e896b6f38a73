//! What `check` says to layouts while they are searched for.

use crate::fill::{Fill, fill_edit};
use chalkcourse_geometry::{DVec2, Roof, dvec2};
use chalkcourse_job::{Block, BlockId, FaceId, FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_limits::{Share, array_share};
use chalkcourse_rules::{Checker, Finding, Severity};
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
}

impl Judge {
    /// For filling some faces of a job.
    pub(super) fn of(job: &Resolved, faces: &[FaceId]) -> Self {
        let mut bare = job.clone();
        bare.blocks.retain(|block| block.locked || !faces.contains(&block.face));
        let roof = Arc::new(assemble(&bare));
        let layout = Layout::on_roof(&bare, Arc::clone(&roof));
        let mut judge = Self { bare, layout, roof, checker: RefCell::default(), before: BTreeSet::new() };
        let before = judge.all_stops(&judge.bare, &judge.layout);
        judge.before = before.into_iter().map(|finding| finding.key).collect();
        judge.before.extend(judge.whatever_is_laid(faces));
        judge
    }

    /// Pathways that no layout can have: what is asked on two planes, where one alone is drawn, is missing as soon as one module
    /// lies there, wherever it does. A sketch of one face is filled all the same, and the finding tells.
    fn whatever_is_laid(&self, faces: &[FaceId]) -> BTreeSet<FindingKey> {
        let mut always: Option<BTreeSet<FindingKey>> = None;
        for &face in faces {
            let Some((_, on)) = self.layout.face(face).filter(|(_, on)| on.sound) else { continue };
            for place in 0..9_u8 {
                let share = dvec2(f64::from(place % 3), f64::from(place / 3)) / 2.0;
                let mut block = Block {
                    id: BlockId(self.bare.next_id),
                    name: String::new(),
                    face,
                    at: DVec2::ZERO,
                    rows: 1,
                    columns: 1,
                    orientation: self.bare.kit.orientations.first().copied().unwrap_or_default(),
                    reveal: self.bare.kit.reveal.usual,
                    shifts: Vec::new(),
                    off: BTreeSet::new(),
                    locked: false,
                };
                block.at = on.bounds.min
                    + (on.bounds.size() - block.module_size(&self.bare.kit)).max(DVec2::ZERO) * share;
                let probe = self.bare.with(|job| job.blocks.push(block));
                let stops = self.all_stops(&probe, &self.laid_out(&probe));
                let missing = stops.into_iter().filter(|stop| stop.rule == "fire-paths").map(|stop| stop.key);
                let missing: BTreeSet<FindingKey> = missing.collect();
                let both = always.map_or_else(|| missing.clone(), |all| &all & &missing);
                if both.is_empty() {
                    return both;
                }
                always = Some(both);
            }
        }
        always.unwrap_or_default()
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
