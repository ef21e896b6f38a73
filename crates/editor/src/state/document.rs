use chalkcourse_job::{Edit, EditError, History, Resolved};
use chalkcourse_plan::{Evaluator, Plan};
use chalkcourse_words::Said;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The open job: its history, its plan, and its file.
///
/// A job only changes by edits through this type; after each the plan is evaluated again.
pub struct Document {
    history: History,
    evaluator: Evaluator,
    plan: Arc<Plan>,
    /// The job that `plan` was made from.
    planned: Arc<Resolved>,
    /// The plan from before the gesture in progress.
    before: Option<Arc<Plan>>,
    path: Option<PathBuf>,
}

impl Document {
    /// Opens a job that is saved at `path`, or needs no saving yet.
    pub(crate) fn new(job: Resolved, path: Option<PathBuf>) -> Self {
        let history = History::new(job);
        let mut evaluator = Evaluator::default();
        let plan = Arc::new(evaluator.evaluate(history.job()));
        Self { planned: Arc::clone(history.job()), history, evaluator, plan, before: None, path }
    }

    /// The present job, including a gesture in progress.
    pub fn job(&self) -> &Arc<Resolved> {
        self.history.job()
    }

    /// The plan of the present job.
    pub fn plan(&self) -> &Arc<Plan> {
        &self.plan
    }

    /// Undo, redo and saved state.
    pub fn history(&self) -> &History {
        &self.history
    }

    /// The file that the job was opened from or last saved to.
    pub fn path(&self) -> Option<&Path> {
        self.path.as_deref()
    }

    /// The job without the gesture in progress: what a gesture starts from.
    pub(crate) fn settled(&self) -> &Arc<Resolved> {
        self.history.settled()
    }

    /// The plan from before the gesture in progress, if any.
    pub(crate) fn plan_before(&self) -> Option<&Arc<Plan>> {
        self.before.as_ref()
    }

    pub(crate) fn edit(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<bool, EditError> {
        let changed = self.history.edit(label, edit);
        self.refresh();
        changed
    }

    pub(crate) fn preview(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<(), EditError> {
        if self.before.is_none() {
            self.before = Some(Arc::clone(&self.plan));
        }
        let shown = self.history.preview(label, edit);
        self.refresh();
        shown
    }

    pub(crate) fn commit(&mut self) -> bool {
        let changed = self.history.commit();
        self.refresh();
        changed
    }

    /// Aborts a gesture; returns its label if it had changed anything.
    pub(crate) fn abort(&mut self) -> Option<Said> {
        let given_up = self.history.abort();
        self.refresh();
        given_up
    }

    pub(crate) fn undo(&mut self) -> Option<Said> {
        let label = self.history.undo();
        self.refresh();
        label
    }

    pub(crate) fn redo(&mut self) -> Option<Said> {
        let label = self.history.redo();
        self.refresh();
        label
    }

    /// Goes to the state after a step.
    pub(crate) fn jump(&mut self, step: usize) -> bool {
        let moved = self.history.jump(step);
        self.refresh();
        moved
    }

    /// Marks the present job as saved at `path`.
    pub(crate) fn mark_saved(&mut self, path: PathBuf) {
        self.path = Some(path);
        self.history.mark_saved();
    }

    /// Marks the job as not saved in any file, as after a recovery.
    pub(crate) fn mark_unsaved(&mut self) {
        self.history.mark_unsaved();
    }

    fn refresh(&mut self) {
        if !self.history.in_gesture() {
            self.before = None;
        }
        if !Arc::ptr_eq(&self.planned, self.history.job()) {
            self.planned = Arc::clone(self.history.job());
            self.plan = Arc::new(self.evaluator.evaluate(&self.planned));
        }
    }
}
