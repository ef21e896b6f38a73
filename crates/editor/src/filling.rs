//! Filling faces in the background: the window goes on while it is worked out, and the answer is listed while it holds.

use crate::background::{News, Work};
use chalkcourse_job::{FaceId, Job};
use chalkcourse_plan::{Fill, FillError, Mode, fill, hold_back};
use std::sync::Arc;

/// How faces are filled, what is being filled, and what came out.
#[derive(Debug)]
pub(crate) struct Filling {
    /// The way of laying that a person chose.
    pub(crate) way: Mode,
    /// What went wrong, or why an answer was dropped.
    pub(crate) said: String,
    running: Option<Running>,
    shown: Option<Shown>,
}

/// A fill that is worked out. It stops when it is dropped.
#[derive(Debug)]
struct Running {
    job: Arc<Job>,
    faces: Vec<FaceId>,
    work: Work<Result<Vec<Fill>, FillError>>,
}

/// An answer, and the job that it stands in.
#[derive(Debug)]
struct Shown {
    job: Arc<Job>,
    fills: Vec<Fill>,
}

/// What came of a fill.
pub(crate) struct Answer {
    /// The job that it is for.
    pub(crate) job: Arc<Job>,
    /// Whether a person asked for the best so far.
    pub(crate) stopped: bool,
    /// What was found; `None` where the work broke off.
    pub(crate) fills: Option<Result<Vec<Fill>, FillError>>,
}

impl Default for Filling {
    fn default() -> Self {
        Self { way: Mode::SlidingRows, said: String::new(), running: None, shown: None }
    }
}

impl Filling {
    /// Begins to fill faces of a job; what was running is given up.
    pub(crate) fn start(&mut self, ctx: &egui::Context, job: Arc<Job>, faces: Vec<FaceId>) {
        let asked = (Arc::clone(&job), faces.clone(), self.way);
        let work = Work::begin(ctx, move |stop, _| {
            let (job, faces, way) = asked;
            fill(&job, &faces, way, stop).map(|mut fills| {
                for fill in &mut fills {
                    fill.held = hold_back(&job, fill, way, stop).ok();
                }
                fills
            })
        });
        self.said.clear();
        self.running = Some(Running { job, faces, work });
    }

    /// Asks for the best that was found so far.
    pub(crate) fn stop(&self) {
        if let Some(running) = &self.running {
            running.work.stop();
        }
    }

    /// The faces that are being filled.
    pub(crate) fn running(&self) -> Option<&[FaceId]> {
        self.running.as_ref().map(|running| running.faces.as_slice())
    }

    /// The answer, once, when it has come.
    pub(crate) fn answer(&mut self) -> Option<Answer> {
        let fills = match self.running.as_ref()?.work.news() {
            News::Done(found) => Some(found),
            News::Broke => None,
            News::None | News::SoFar(_) => return None,
        };
        let running = self.running.take()?;
        let stopped = running.work.stopped();
        Some(Answer { job: Arc::clone(&running.job), stopped, fills })
    }

    /// Lists what stands in a job now.
    pub(crate) fn show(&mut self, job: Arc<Job>, fills: Vec<Fill>) {
        self.said.clear();
        self.shown = Some(Shown { job, fills });
    }

    /// What is listed.
    pub(crate) fn fills(&self) -> &[Fill] {
        self.shown.as_ref().map_or(&[], |shown| &shown.fills)
    }

    /// Takes the list away where the job is no longer the one that it speaks of.
    pub(crate) fn keep_in_step(&mut self, job: &Arc<Job>) {
        let Some(shown) = &mut self.shown else { return };
        if same_roof(&shown.job, job) {
            shown.job = Arc::clone(job);
        } else {
            self.shown = None;
        }
    }
}

/// Whether two jobs are alike in all that a fill depends on.
pub(crate) fn same_roof(one: &Arc<Job>, two: &Arc<Job>) -> bool {
    let alike = |one: &Job, two: &Job| {
        one.faces == two.faces
            && one.blocks == two.blocks
            && one.penetrations == two.penetrations
            && one.kit == two.kit
            && one.rule_book == two.rule_book
            && one.site == two.site
    };
    Arc::ptr_eq(one, two) || alike(one, two)
}
