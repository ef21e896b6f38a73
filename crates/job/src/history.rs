use crate::{Edit, EditError, Job, apply};
use chalkcourse_words::pick;
use std::sync::Arc;

/// One step that a person took.
#[derive(Clone, Debug)]
struct Step {
    label: String,
    job: Arc<Job>,
}

/// All jobs from the first to the newest. Undo goes to an earlier job: the very same one, not one worked back.
///
/// A gesture (a drag, typing in a field) is [`preview`](Self::preview)ed as often as it moves and becomes one step
/// on [`commit`](Self::commit), or none on [`abort`](Self::abort).
#[derive(Clone, Debug)]
pub struct History {
    steps: Vec<Step>,
    at: usize,
    preview: Option<Step>,
    saved: Option<Arc<Job>>,
}

impl History {
    /// Starts with a job that is as it is on disk.
    pub fn new(job: Job) -> Self {
        let job = Arc::new(job);
        Self {
            steps: vec![Step { label: pick("open", "abrir").to_owned(), job: Arc::clone(&job) }],
            at: 0,
            preview: None,
            saved: Some(job),
        }
    }

    /// The job as it is now, in the middle of a gesture too.
    pub fn job(&self) -> &Arc<Job> {
        &self.preview.as_ref().unwrap_or(&self.steps[self.at]).job
    }

    /// The job without the gesture that is going on.
    pub fn settled(&self) -> &Arc<Job> {
        &self.steps[self.at].job
    }

    /// Takes a step. False when the edit changes nothing; then there is no step to undo.
    ///
    /// # Errors
    /// [`EditError`]; the job stays as it was.
    pub fn edit(&mut self, label: &str, edit: &Edit) -> Result<bool, EditError> {
        self.preview = None;
        let next = apply(self.settled(), edit)?;
        Ok(self.push(label.to_owned(), Arc::new(next)))
    }

    /// Shows what a gesture would do, from where it began.
    ///
    /// # Errors
    /// [`EditError`]; what was shown before stays.
    pub fn preview(&mut self, label: &str, edit: &Edit) -> Result<(), EditError> {
        let next = apply(self.settled(), edit)?;
        self.preview = Some(Step { label: label.to_owned(), job: Arc::new(next) });
        Ok(())
    }

    /// Ends a gesture as one step. False when there was none or it changed nothing.
    pub fn commit(&mut self) -> bool {
        self.preview.take().is_some_and(|step| self.push(step.label, step.job))
    }

    /// Ends a gesture as if it had not been.
    pub fn abort(&mut self) {
        self.preview = None;
    }

    /// Whether a gesture is going on.
    pub fn in_gesture(&self) -> bool {
        self.preview.is_some()
    }

    /// One step back; its label. A gesture that is going on is dropped and counts as the step.
    pub fn undo(&mut self) -> Option<String> {
        if let Some(step) = self.preview.take() {
            return Some(step.label);
        }
        let label = self.undo_label()?.to_owned();
        self.at -= 1;
        Some(label)
    }

    /// One step forward; its label.
    pub fn redo(&mut self) -> Option<String> {
        self.preview = None;
        let label = self.redo_label()?.to_owned();
        self.at += 1;
        Some(label)
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<&str> {
        (self.at > 0).then(|| self.steps[self.at].label.as_str())
    }

    /// What redo would do again.
    pub fn redo_label(&self) -> Option<&str> {
        self.steps.get(self.at + 1).map(|step| step.label.as_str())
    }

    /// Remembers that the job as it is now is on disk.
    pub fn mark_saved(&mut self) {
        self.saved = Some(Arc::clone(self.settled()));
    }

    /// Says that no file holds this job yet.
    pub fn mark_unsaved(&mut self) {
        self.saved = None;
    }

    /// Whether the job differs from the one on disk.
    pub fn is_unsaved(&self) -> bool {
        self.saved
            .as_ref()
            .is_none_or(|saved| !Arc::ptr_eq(saved, self.settled()) && **saved != **self.settled())
    }

    fn push(&mut self, label: String, job: Arc<Job>) -> bool {
        if *job == **self.settled() {
            return false;
        }
        self.steps.truncate(self.at + 1);
        self.steps.push(Step { label, job });
        self.at += 1;
        true
    }
}
