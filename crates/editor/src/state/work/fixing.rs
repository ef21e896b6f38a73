//! Fixes of findings, searched in the background when the user looks at a finding, and cached as long as the job is
//! unchanged. Not during a drag.

use super::{News, Work};
use crate::state::Document;
use chalkcourse_job::{FindingKey, Resolved};
use chalkcourse_plan::{Fixes, fixes};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Fixes found, and the search in progress.
#[derive(Debug, Default)]
pub(crate) struct Fixing {
    /// The job that they are for.
    job: Option<Arc<Resolved>>,
    found: BTreeMap<FindingKey, Fixes>,
    running: Option<(FindingKey, Work<Fixes>)>,
    /// The findings looked at in this frame, the one under the pointer first.
    looked_at: Vec<FindingKey>,
    /// The last clicked finding, which counts as looked at wherever the pointer is.
    opened: Option<FindingKey>,
}

impl Fixing {
    /// Records that a finding is looked at in this frame; `now` if it has the pointer or the focus.
    pub(crate) fn look_at(&mut self, key: &FindingKey, now: bool) {
        if now {
            self.looked_at.insert(0, key.clone());
        } else {
            self.looked_at.push(key.clone());
        }
    }

    /// Keeps a finding looked at until another one is clicked.
    pub(crate) fn open(&mut self, key: &FindingKey) {
        self.opened = Some(key.clone());
    }

    pub(crate) fn is_open(&self, key: &FindingKey) -> bool {
        self.opened.as_ref() == Some(key)
    }

    /// Fixes found for a finding of a job.
    pub(crate) fn of(&self, job: &Arc<Resolved>, key: &FindingKey) -> Option<&Fixes> {
        let is_of = self.job.as_ref().is_some_and(|of| Arc::ptr_eq(of, job));
        self.found.get(key).filter(|_| is_of)
    }

    /// Whether they are being searched.
    pub(crate) fn is_looking_for(&self, key: &FindingKey) -> bool {
        self.running.as_ref().is_some_and(|(running, _)| running == key)
    }

    pub(crate) fn is_working(&self) -> bool {
        self.running.is_some()
    }

    /// Once per frame: receives results, drops those for another job, and starts with the next finding looked at.
    pub(crate) fn go_on(&mut self, ctx: &egui::Context, document: &Document) {
        let looked_at = std::mem::take(&mut self.looked_at);
        if document.history().in_gesture() {
            self.running = None;
            return;
        }
        let job = document.job();
        if !self.job.as_ref().is_some_and(|of| Arc::ptr_eq(of, job)) {
            self.job = Some(Arc::clone(job));
            self.found.clear();
            self.running = None;
        }
        if let Some((key, work)) = &self.running {
            let found = match work.news() {
                News::Done(found) => Some(found),
                News::Broke => Some(Fixes::default()),
                News::None | News::SoFar(_) => None,
            };
            if let Some(found) = found {
                self.found.insert(key.clone(), found);
                self.running = None;
                ctx.request_repaint();
            }
        }
        let next = looked_at.into_iter().find(|key| !self.found.contains_key(key));
        match next {
            Some(key) if !self.is_looking_for(&key) => {
                let (of, plan, asked) = (Arc::clone(job), Arc::clone(document.plan()), key.clone());
                let work = Work::begin(ctx, move |stop, _| fixes(&of, &plan, &asked, stop));
                self.running = Some((key, work));
                ctx.request_repaint();
            }
            Some(_) => {}
            // Nobody looks at it any more.
            None => self.running = None,
        }
    }
}
