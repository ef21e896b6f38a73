//! Circuits made automatically: a first answer at once, then a longer search on a thread of its own.

use super::{News, Work};
use chalkcourse_job::Resolved;
use chalkcourse_plan::Plan;
use chalkcourse_wiring::paths::Effort;
use chalkcourse_wiring::{HeldBack, Left, Stringing, Strung, Unknown, held_back, string_up};
use std::sync::Arc;
use std::time::Instant;

type Made = Result<Stringing, Vec<Unknown>>;

/// What is being strung, and what is proved of the circuits that were.
#[derive(Debug, Default)]
pub(crate) struct StringingUp {
    /// Why there are no circuits, or why an answer was dropped.
    pub(crate) said: String,
    running: Option<Running>,
    shown: Option<Shown>,
}

/// Work that goes on. It stops being heard when it is dropped.
#[derive(Debug)]
struct Running {
    /// The job that the next answer is for.
    job: Arc<Resolved>,
    since: Instant,
    work: Work<Made>,
}

/// What is proved, and the job that it is proved of.
#[derive(Debug)]
struct Shown {
    job: Arc<Resolved>,
    groups: Vec<Strung>,
    left: Vec<Left>,
    held: Vec<HeldBack>,
}

/// Circuits that were made.
#[derive(Debug)]
pub(crate) struct Answer {
    /// The job that they are for.
    pub(crate) job: Arc<Resolved>,
    pub(crate) made: Made,
    /// Whether a longer search goes on.
    pub(crate) goes_on: bool,
}

impl StringingUp {
    /// Begins to string all modules of a job; what was running is given up.
    pub(crate) fn start(&mut self, ctx: &egui::Context, job: Arc<Resolved>, plan: Arc<Plan>) {
        let on = Arc::clone(&job);
        let work = Work::begin(ctx, move |stop, tell| {
            let first = string_up(&on, &plan.layout, None, Effort::FIRST);
            if first.is_err() || stop() {
                return first;
            }
            tell(first);
            let mut whole = string_up(&on, &plan.layout, None, Effort::WHOLE);
            if let Ok(made) = &mut whole
                && !stop()
            {
                made.held = held_back(&on, &plan.layout, made, None);
            }
            whole
        });
        self.said.clear();
        self.running = Some(Running { job, since: Instant::now(), work });
    }

    /// For how many seconds it has been searching.
    pub(crate) fn running(&self) -> Option<f64> {
        self.running.as_ref().map(|running| running.since.elapsed().as_secs_f64())
    }

    /// Gives the longer search up; what was made stays.
    pub(crate) fn stop(&mut self) {
        self.running = None;
    }

    /// The next answer, once.
    pub(crate) fn answer(&mut self) -> Option<Answer> {
        let running = self.running.as_ref()?;
        let (made, goes_on) = match running.work.news() {
            News::None => return None,
            News::SoFar(made) => (made, true),
            News::Done(made) => (made, false),
            News::Broke => {
                self.running = None;
                self.said = chalkcourse_words::circuits::STRINGING_BROKE.now().to_owned();
                return None;
            }
        };
        let job = Arc::clone(&running.job);
        if !goes_on {
            self.running = None;
        }
        Some(Answer { job, made, goes_on })
    }

    /// Lists what is proved of circuits that stand in a job now. What goes on is for that job from here on.
    pub(crate) fn list(&mut self, job: Arc<Resolved>, made: &Stringing) {
        if let Some(running) = &mut self.running {
            running.job = Arc::clone(&job);
        }
        let (groups, left, held) = (made.groups.clone(), made.left.clone(), made.held.clone());
        self.shown = Some(Shown { job, groups, left, held });
    }

    /// What is proved of the job's circuits; empty where they were not made automatically.
    pub(crate) fn proved(&self) -> &[Strung] {
        self.shown.as_ref().map_or(&[], |shown| &shown.groups)
    }

    /// Modules that no circuit could take.
    pub(crate) fn left(&self) -> &[Left] {
        self.shown.as_ref().map_or(&[], |shown| &shown.left)
    }

    /// What holds the circuits back, once the longer search has ended.
    pub(crate) fn held(&self) -> &[HeldBack] {
        self.shown.as_ref().map_or(&[], |shown| &shown.held)
    }

    /// Takes the list away where the job is no longer the one that it speaks of.
    pub(crate) fn keep_in_step(&mut self, job: &Arc<Resolved>) {
        if let Some(shown) = &mut self.shown {
            if same_wires(&shown.job, job) {
                shown.job = Arc::clone(job);
            } else {
                self.shown = None;
            }
        }
    }
}

/// Whether two jobs are alike in all that circuits depend on, and in their circuits.
pub(crate) fn same_wires(one: &Arc<Resolved>, two: &Arc<Resolved>) -> bool {
    let alike = |one: &Resolved, two: &Resolved| {
        one.circuits == two.circuits
            && one.boxes == two.boxes
            && one.wiring == two.wiring
            && one.blocks == two.blocks
            && one.faces == two.faces
            && one.kit == two.kit
    };
    Arc::ptr_eq(one, two) || alike(one, two)
}
