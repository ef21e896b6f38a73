use crate::{Edit, EditError, Resolved, apply};
use chalkcourse_words::{Said, later as words};
use std::sync::Arc;

/// One step that a person took.
#[derive(Clone, Debug)]
struct Step {
    label: Said,
    job: Arc<Resolved>,
    /// What made the job from that of the step before; none for the first.
    edit: Option<Arc<Edit>>,
    /// The step that it was taken after; none for the first.
    after: Option<usize>,
}

/// A step as a list shows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Past<'a> {
    /// Its number, for [`History::jump`].
    pub number: usize,
    /// What it did.
    pub label: &'a Said,
    /// Where it stands to the job as it is now.
    pub place: PastPlace,
    /// Whether the job after it is the one on disk.
    pub saved: bool,
}

/// Where a step stands to the job as it is now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PastPlace {
    /// It led here: undo comes by it.
    Before,
    /// It is the last that led here.
    Now,
    /// It was undone: redo comes by it.
    Ahead,
    /// Something else was done in its place.
    Aside,
}

/// All jobs from the first to the newest. Undo goes to an earlier job: the very same one, not one worked back. What was undone
/// and then done otherwise is kept beside, until the history itself is dropped.
///
/// A gesture (a drag, typing in a field) is [`preview`](Self::preview)ed as often as it moves and becomes one step
/// on [`commit`](Self::commit), or none on [`abort`](Self::abort); then redo does it after all, until something else is done.
#[derive(Clone, Debug)]
pub struct History {
    /// In the order in which they were taken.
    steps: Vec<Step>,
    /// The steps that undo and redo walk, from the first.
    line: Vec<usize>,
    /// Where in the line the job is now.
    at: usize,
    preview: Option<Step>,
    /// The gesture that was given up last.
    given_up: Option<Step>,
    saved: Option<Arc<Resolved>>,
}

impl History {
    /// Starts with a job that is as it is on disk.
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

    /// The job as it is now, in the middle of a gesture too.
    pub fn job(&self) -> &Arc<Resolved> {
        &self.preview.as_ref().unwrap_or(self.now()).job
    }

    /// The job without the gesture that is going on.
    pub fn settled(&self) -> &Arc<Resolved> {
        &self.now().job
    }

    fn now(&self) -> &Step {
        &self.steps[self.line[self.at]]
    }

    /// Takes a step. False when the edit changes nothing; then there is no step to undo.
    ///
    /// # Errors
    /// [`EditError`]; the job stays as it was.
    pub fn edit(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<bool, EditError> {
        self.preview(label, edit).inspect_err(|_| self.preview = None)?;
        Ok(self.commit())
    }

    /// Shows what a gesture would do, from where it began.
    ///
    /// # Errors
    /// [`EditError`]; what was shown before stays.
    pub fn preview(&mut self, label: impl Into<Said>, edit: &Edit) -> Result<(), EditError> {
        let next = apply(self.settled(), edit)?;
        self.given_up = None;
        let (job, edit) = (Arc::new(next), Some(Arc::new(edit.clone())));
        self.preview = Some(Step { label: label.into(), job, edit, after: None });
        Ok(())
    }

    /// Ends a gesture as one step. False when there was none or it changed nothing.
    pub fn commit(&mut self) -> bool {
        self.preview.take().is_some_and(|step| self.push(step))
    }

    /// Ends a gesture as if it had not been; its label. None where there was none, or it changed nothing.
    pub fn abort(&mut self) -> Option<Said> {
        let step = self.preview.take()?;
        self.given_up = (*step.job != **self.settled()).then_some(step);
        self.given_up.as_ref().map(|step| step.label.clone())
    }

    /// Whether a gesture is going on.
    pub fn in_gesture(&self) -> bool {
        self.preview.is_some()
    }

    /// One step back; its label. A gesture that is going on is dropped and counts as the step.
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

    /// One step forward; its label. A gesture that was given up just now is that step.
    pub fn redo(&mut self) -> Option<Said> {
        self.preview = None;
        let label = self.redo_label()?.clone();
        match self.given_up.take() {
            Some(step) => _ = self.push(step),
            None => self.at += 1,
        }
        Some(label)
    }

    /// What undo would take back.
    pub fn undo_label(&self) -> Option<&Said> {
        (self.at > 0).then(|| &self.now().label)
    }

    /// What redo would do again.
    pub fn redo_label(&self) -> Option<&Said> {
        if let Some(step) = &self.given_up {
            return Some(&step.label);
        }
        Some(&self.steps[*self.line.get(self.at + 1)?].label)
    }

    /// Every step that was taken, in the order of time.
    pub fn past(&self) -> impl Iterator<Item = Past<'_>> {
        let here = self.line[self.at];
        self.steps.iter().enumerate().map(move |(number, step)| {
            let place = match self.line.binary_search(&number) {
                _ if number == here => PastPlace::Now,
                Ok(at) if at < self.at => PastPlace::Before,
                Ok(_) => PastPlace::Ahead,
                Err(_) => PastPlace::Aside,
            };
            let saved = self.saved.as_ref().is_some_and(|saved| Arc::ptr_eq(saved, &step.job));
            Past { number, label: &step.label, place, saved }
        })
    }

    /// The edits that lead from the job as it was opened to the job as it is now, one a step: those that were undone or done in
    /// another way are not among them, nor is a gesture that is going on.
    pub fn edits(&self) -> impl Iterator<Item = &Edit> {
        let line = self.line.iter().take(self.at + 1);
        line.filter_map(|&step| self.steps.get(step)?.edit.as_deref())
    }

    /// The job as it was opened.
    pub fn opened(&self) -> &Arc<Resolved> {
        &self.steps[0].job
    }

    /// Goes to the job as it was after a step, aside or not; undo and redo then walk the steps that lead there and on. False for a
    /// number that no step has, and for the step that is now. A gesture that is going on is dropped.
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
        // On from there as it went on last.
        while let Some(next) = self.steps.iter().rposition(|step| step.after == line.last().copied()) {
            line.push(next);
        }
        self.line = line;
        true
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
    use PastPlace::{Ahead, Aside, Before, Now};

    fn empty() -> Resolved {
        let (kit, book, prices) = (crate::builtin_kit(), crate::builtin_rule_book(), crate::builtin_prices());
        Resolved::new("a job".to_owned(), kit, book, prices)
    }

    fn renamed(history: &mut History, name: &str) {
        let edit = Edit::SetName(name.to_owned());
        assert!(history.edit(name, &edit).is_ok_and(|changed| changed));
    }

    fn places(history: &History) -> Vec<PastPlace> {
        history.past().map(|step| step.place).collect()
    }

    /// What the edits make of the job as it was opened.
    fn replayed(history: &History) -> Resolved {
        history.edits().fold(Resolved::clone(history.opened()), |job, edit| apply(&job, edit).unwrap())
    }

    #[test]
    fn the_edits_are_those_that_led_here() {
        let mut history = start();
        assert_eq!(history.edits().count(), 3);
        history.undo();
        assert!(history.preview("x", &Edit::SetName("x".to_owned())).is_ok());
        assert_eq!(history.edits().count(), 2);
        assert!(history.commit());
        assert_eq!((history.edits().count(), replayed(&history).name.as_str()), (3, "x"));
        // What changes nothing is no step, and what is refused leaves no gesture behind.
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
    fn what_was_done_otherwise_stays_beside() {
        let mut history = start();
        history.undo();
        history.undo();
        assert_eq!(places(&history), [Before, Now, Ahead, Ahead]);
        renamed(&mut history, "d");
        assert_eq!(places(&history), [Before, Before, Aside, Aside, Now]);
        assert_eq!(history.redo_label(), None);
        // To the other way, in its middle: it goes on from there as it went on then.
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
    fn a_jump_goes_only_where_a_step_is() {
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
    fn the_step_on_disk_is_told() {
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
    fn a_gesture_that_was_given_up_is_done_by_redo() {
        let mut history = start();
        history.undo();
        let gesture = |history: &mut History, name: &str| {
            assert!(history.preview(name, &Edit::SetName(name.to_owned())).is_ok());
        };
        gesture(&mut history, "x");
        assert_eq!(history.abort(), Some(Said::own("x")));
        assert_eq!((history.job().name.as_str(), history.redo_label()), ("b", Some(&Said::own("x"))));
        // It is no step until it is done.
        assert_eq!(places(&history), [Before, Before, Now, Ahead]);
        assert_eq!(history.redo(), Some(Said::own("x")));
        assert_eq!(places(&history), [Before, Before, Before, Aside, Now]);
        assert_eq!(replayed(&history).name, "x");
        // Undo in the middle of one gives it up as well; whatever is done next forgets it.
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

    /// A thousand steps, undos, redos and jumps by chance, against a list of every job that was.
    #[test]
    fn every_job_that_was_can_be_come_back_to() {
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
