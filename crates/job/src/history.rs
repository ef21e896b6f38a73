use crate::{Edit, EditError, Resolved, apply};
use chalkcourse_words::{Said, later as words};
use std::sync::Arc;

/// One step of the history.
#[derive(Clone, Debug)]
struct Step {
    label: Said,
    job: Arc<Resolved>,
    /// The edit that led here from the step before; `None` for the first.
    edit: Option<Arc<Edit>>,
    /// The step that it was applied to; `None` for the first.
    after: Option<usize>,
}

/// A step as shown in a list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PastStep<'a> {
    /// Its index, for [`History::jump`].
    pub number: usize,
    /// What it did.
    pub label: &'a Said,
    /// Its relation to the present job.
    pub place: StepPosition,
    /// Whether the job after it is the saved one.
    pub saved: bool,
}

/// The relation of a step to the present job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StepPosition {
    /// It led here: undo reverts it.
    Before,
    /// It is the last one that led here.
    Now,
    /// It was undone: redo repeats it.
    Ahead,
    /// It is on another branch.
    Aside,
}

/// All states of a job from the first to the newest. Undo restores an earlier state itself rather than reversing edits.
/// Undone steps that were replaced by others are kept as branches until the history is dropped.
///
/// During a gesture (a drag, typing in a field) [`preview`](Self::preview) is called on every change; it becomes one
/// step on [`commit`](Self::commit), or none on [`abort`](Self::abort); redo can still apply an aborted gesture until
/// something else is done.
#[derive(Clone, Debug)]
pub struct History {
    /// In the order in which they were made.
    steps: Vec<Step>,
    /// The steps that undo and redo walk, from the first.
    line: Vec<usize>,
    /// The index of the present job in `line`.
    at: usize,
    preview: Option<Step>,
    /// The last aborted gesture.
    given_up: Option<Step>,
    saved: Option<Arc<Resolved>>,
}

impl History {
    /// A history of a job that is saved as it is.
    pub fn new(job: Resolved) -> Self {
        let job = Arc::new(job);
        Self {
            steps: vec![Step {
                label: words::job::OPEN.into(),
                job: Arc::clone(&job),
                edit: None,
                after: None,
            }],
            line: vec![0],
            at: 0,
            preview: None,
            given_up: None,
            saved: Some(job),
        }
    }

    /// The present job, including a gesture in progress.
    pub fn job(&self) -> &Arc<Resolved> {
        &self.preview.as_ref().unwrap_or(self.now()).job
    }

    /// The job without the gesture in progress.
    pub fn settled(&self) -> &Arc<Resolved> {
        &self.now().job
    }

    fn now(&self) -> &Step {
        &self.steps[self.line[self.at]]
    }

    /// Applies an edit as a step. Returns false, without making a step, if it changes nothing.
    ///
    /// # Errors
    /// [`EditError`]; the job is then unchanged.
    pub fn edit(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<bool, EditError> {
        self.preview(label, edit).inspect_err(|_| self.preview = None)?;
        Ok(self.commit())
    }

    /// Shows what a gesture would do, relative to its start.
    ///
    /// # Errors
    /// [`EditError`]; the previous preview is then kept.
    pub fn preview(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<(), EditError> {
        let next = apply(self.settled(), edit)?;
        self.given_up = None;
        let (job, edit) = (Arc::new(next), Some(Arc::new(edit.clone())));
        self.preview = Some(Step { label: label.into(), job, edit, after: None });
        Ok(())
    }

    /// Ends a gesture as one step. Returns false if there was none or it changed nothing.
    pub fn commit(&mut self) -> bool {
        self.preview.take().is_some_and(|step| self.push(step))
    }

    /// Ends a gesture without a step and returns its label; `None` if there was none or it changed nothing.
    pub fn abort(&mut self) -> Option<Said> {
        let step = self.preview.take()?;
        self.given_up = (*step.job != **self.settled()).then_some(step);
        self.given_up.as_ref().map(|step| step.label.clone())
    }

    /// Whether a gesture is in progress.
    pub fn in_gesture(&self) -> bool {
        self.preview.is_some()
    }

    /// Undoes a step and returns its label. A gesture in progress is aborted instead.
    pub fn undo(&mut self) -> Option<Said> {
        if let Some(step) = &self.preview {
            let label = step.label.clone();
            self.abort();
            return Some(label);
        }
        let label = self.undo_label()?.clone();
        self.given_up = None;
        self.at -= 1;
        Some(label)
    }

    /// Redoes a step and returns its label. Right after a gesture was aborted, that is the step.
    pub fn redo(&mut self) -> Option<Said> {
        self.preview = None;
        let label = self.redo_label()?.clone();
        match self.given_up.take() {
            Some(step) => _ = self.push(step),
            None => self.at += 1,
        }
        Some(label)
    }

    /// The label of the step that undo would revert.
    pub fn undo_label(&self) -> Option<&Said> {
        (self.at > 0).then(|| &self.now().label)
    }

    /// The label of the step that redo would repeat.
    pub fn redo_label(&self) -> Option<&Said> {
        if let Some(step) = &self.given_up {
            return Some(&step.label);
        }
        Some(&self.steps[*self.line.get(self.at + 1)?].label)
    }

    /// All steps, in chronological order.
    pub fn past(&self) -> impl Iterator<Item = PastStep<'_>> {
        let here = self.line[self.at];
        self.steps.iter().enumerate().map(move |(number, step)| {
            let place = match self.line.binary_search(&number) {
                _ if number == here => StepPosition::Now,
                Ok(at) if at < self.at => StepPosition::Before,
                Ok(_) => StepPosition::Ahead,
                Err(_) => StepPosition::Aside,
            };
            let saved = self.saved.as_ref().is_some_and(|saved| Arc::ptr_eq(saved, &step.job));
            PastStep { number, label: &step.label, place, saved }
        })
    }

    /// The edits that lead from the opened job to the present one, one per step: without undone steps, other branches,
    /// or a gesture in progress.
    pub fn edits(&self) -> impl Iterator<Item = &Edit> {
        let line = self.line.iter().take(self.at + 1);
        line.filter_map(|&step| self.steps.get(step)?.edit.as_deref())
    }

    /// The job as it was opened.
    pub fn opened(&self) -> &Arc<Resolved> {
        &self.steps[0].job
    }

    /// Goes to the state after a step, on any branch; undo and redo then walk the branch of that step. Returns false
    /// for an invalid or the present step. A gesture in progress is dropped.
    pub fn jump(&mut self, number: usize) -> bool {
        (self.preview, self.given_up) = (None, None);
        if number >= self.steps.len() || number == self.line[self.at] {
            return false;
        }
        if let Ok(at) = self.line.binary_search(&number) {
            self.at = at;
            return true;
        }
        let mut line = vec![number];
        while let Some(before) = line.last().and_then(|last| self.steps[*last].after) {
            line.push(before);
        }
        line.reverse();
        self.at = line.len() - 1;
        // Continue along the most recent steps.
        while let Some(next) = self.steps.iter().rposition(|step| step.after == line.last().copied()) {
            line.push(next);
        }
        self.line = line;
        true
    }

    /// Marks the present job as saved.
    pub fn mark_saved(&mut self) {
        self.saved = Some(Arc::clone(self.settled()));
    }

    /// Marks the job as not saved in any file.
    pub fn mark_unsaved(&mut self) {
        self.saved = None;
    }

    /// Whether the job differs from the saved one.
    pub fn is_unsaved(&self) -> bool {
        self.saved
            .as_ref()
            .is_none_or(|saved| !Arc::ptr_eq(saved, self.settled()) && **saved != **self.settled())
    }

    fn push(&mut self, step: Step) -> bool {
        if *step.job == **self.settled() {
            return false;
        }
        let after = Some(self.line[self.at]);
        self.line.truncate(self.at + 1);
        self.line.push(self.steps.len());
        self.steps.push(Step { after, ..step });
        self.at += 1;
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use StepPosition::{Ahead, Aside, Before, Now};

    fn empty() -> Resolved {
        let (kit, book, prices) = (crate::builtin_kit(), crate::builtin_rule_book(), crate::builtin_prices());
        Resolved::new("a job".to_owned(), kit, book, prices)
    }

    fn renamed(history: &mut History, name: &str) {
        let edit = Edit::SetName(name.to_owned());
        assert!(history.edit(name, &edit).is_ok_and(|changed| changed));
    }

    fn places(history: &History) -> Vec<StepPosition> {
        history.past().map(|step| step.place).collect()
    }

    /// The result of applying the edits to the opened job.
    fn replayed(history: &History) -> Resolved {
        history.edits().fold(Resolved::clone(history.opened()), |job, edit| apply(&job, edit).unwrap())
    }

    #[test]
    fn edits_lead_to_the_present_job() {
        let mut history = start();
        assert_eq!(history.edits().count(), 3);
        history.undo();
        assert!(history.preview("x", &Edit::SetName("x".to_owned())).is_ok());
        assert_eq!(history.edits().count(), 2);
        assert!(history.commit());
        assert_eq!((history.edits().count(), replayed(&history).name.as_str()), (3, "x"));
        // An edit that changes nothing is not a step, and a rejected one leaves no gesture in progress.
        assert_eq!(history.edit("x", &Edit::SetName("x".to_owned())), Ok(false));
        assert!(history.preview("y", &Edit::SetName("y".to_owned())).is_ok());
        assert!(
            history.edit("none", &Edit::RemoveBlock(crate::BlockId(99))).is_err() && !history.in_gesture()
        );
        assert_eq!((history.edits().count(), history.job().name.as_str()), (3, "x"));
    }

    fn start() -> History {
        let mut history = History::new(empty());
        ["a", "b", "c"].into_iter().for_each(|name| renamed(&mut history, name));
        history
    }

    #[test]
    fn replaced_steps_are_kept_as_a_branch() {
        let mut history = start();
        history.undo();
        history.undo();
        assert_eq!(places(&history), [Before, Now, Ahead, Ahead]);
        renamed(&mut history, "d");
        assert_eq!(places(&history), [Before, Before, Aside, Aside, Now]);
        assert_eq!(history.redo_label(), None);
        // Jump to the middle of the other branch: it continues as it did before.
        assert!(history.jump(2));
        assert_eq!(history.job().name, "b");
        assert_eq!(places(&history), [Before, Before, Now, Ahead, Aside]);
        assert_eq!(history.redo(), Some(Said::own("c")));
        assert_eq!(history.undo_label(), Some(&Said::own("c")));
        assert!(history.jump(4));
        assert_eq!(history.job().name, "d");
        assert_eq!(history.undo(), Some(Said::own("d")));
        assert_eq!(history.job().name, "a");
    }

    #[test]
    fn a_jump_needs_an_existing_step() {
        let mut history = start();
        assert!(!history.jump(3) && !history.jump(4) && !history.jump(usize::MAX));
        assert!(history.jump(0));
        assert_eq!(history.undo_label(), None);
        assert_eq!(history.redo_label(), Some(&Said::own("a")));
        assert!(history.preview("x", &Edit::SetName("x".to_owned())).is_ok());
        assert!(history.jump(1) && !history.in_gesture());
        assert_eq!(history.job().name, "a");
    }

    #[test]
    fn the_saved_step_is_marked() {
        let mut history = start();
        assert!(history.past().next().is_some_and(|step| step.saved));
        history.mark_saved();
        let saved: Vec<usize> = history.past().filter(|step| step.saved).map(|step| step.number).collect();
        assert_eq!(saved, [3]);
        history.undo();
        assert!(history.is_unsaved());
        assert!(history.jump(3) && !history.is_unsaved());
    }

    #[test]
    fn redo_applies_an_aborted_gesture() {
        let mut history = start();
        history.undo();
        let gesture = |history: &mut History, name: &str| {
            assert!(history.preview(name, &Edit::SetName(name.to_owned())).is_ok());
        };
        gesture(&mut history, "x");
        assert_eq!(history.abort(), Some(Said::own("x")));
        assert_eq!((history.job().name.as_str(), history.redo_label()), ("b", Some(&Said::own("x"))));
        // It is not a step until it is redone.
        assert_eq!(places(&history), [Before, Before, Now, Ahead]);
        assert_eq!(history.redo(), Some(Said::own("x")));
        assert_eq!(places(&history), [Before, Before, Before, Aside, Now]);
        assert_eq!(replayed(&history).name, "x");
        // Undo during a gesture aborts it too; the next edit forgets it.
        gesture(&mut history, "y");
        assert_eq!(history.undo(), Some(Said::own("y")));
        assert_eq!(history.redo_label(), Some(&Said::own("y")));
        history.undo();
        assert_eq!(history.redo(), Some(Said::own("x")));
        gesture(&mut history, "z");
        history.abort();
        renamed(&mut history, "w");
        assert_eq!(history.redo(), None);
        gesture(&mut history, "w");
        assert_eq!((history.abort(), history.redo_label()), (None, None), "it changed nothing");
    }

    /// A thousand random steps, undos, redos and jumps, checked against a list of all states.
    #[test]
    fn every_earlier_state_can_be_restored() {
        let mut history = History::new(empty());
        let mut known = vec![history.job().name.clone()];
        let mut state = 0x9e37_79b9_u64;
        for turn in 0..1000 {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            match (state >> 33) % 4 {
                0 => drop(history.undo()),
                1 => drop(history.redo()),
                2 => {
                    let to = (state >> 40) as usize % known.len();
                    history.jump(to);
                    assert_eq!(history.job().name, known[to]);
                }
                _ => {
                    renamed(&mut history, &format!("job {turn}"));
                    known.push(history.job().name.clone());
                }
            }
            assert_eq!(history.past().count(), known.len());
            let now: Vec<_> = history.past().filter(|step| step.place == Now).collect();
            assert_eq!(now.len(), 1);
            assert_eq!(known[now[0].number], history.job().name);
            if turn % 50 == 0 {
                assert_eq!(replayed(&history), **history.job());
            }
        }
        assert!(known.len() > 100);
    }
}
