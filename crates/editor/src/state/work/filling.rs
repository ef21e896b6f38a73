//! Filling faces in the background: the window stays responsive during the fill and its improvement, and the result is
//! listed while it is valid.

use super::{News, Work};
use chalkcourse_job::{FaceId, Orientation, Resolved};
use chalkcourse_plan::{
    Fill, FillError, HeldBack, Mode, Size, Target, Way, Worth, fill_improving, hold_back, lying,
};
use std::collections::BTreeSet;
use std::sync::Arc;
use std::time::Instant;

/// A fill mode as chosen in a list; its parameters are stored beside it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Laying {
    #[default]
    SlidingRows,
    OneGrid,
    HalfLapped,
    OnCourses,
    WholeBlocks,
    ByWorth,
    ToNumber,
}

impl Laying {
    pub(crate) const ALL: [Self; 7] = [
        Self::SlidingRows,
        Self::OneGrid,
        Self::HalfLapped,
        Self::OnCourses,
        Self::WholeBlocks,
        Self::ByWorth,
        Self::ToNumber,
    ];
}

/// How to fill faces.
#[derive(Clone, Copy, Debug)]
pub(crate) struct How {
    pub(crate) mode: Mode,
    /// Orientation of the modules; `None` for any that the kit allows.
    lie: Option<Orientation>,
}

impl How {
    /// The job to fill.
    fn asked_of(self, job: &Arc<Resolved>) -> Result<Arc<Resolved>, FillError> {
        self.lie.map_or_else(|| Ok(Arc::clone(job)), |way| lying(job, way).map(Arc::new))
    }
}

/// Settings of a fill.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Asked {
    pub(crate) laying: Laying,
    /// Orientation of the modules; `None` for any that the kit allows.
    pub(crate) lie: Option<Orientation>,
    /// Most blocks, for whole blocks.
    pub(crate) most: u32,
    /// The worth of a module.
    pub(crate) worth: Worth,
    /// A number of modules, and how to arrange them.
    pub(crate) target: Target,
    /// The faces ticked by the user.
    pub(crate) faces: BTreeSet<FaceId>,
}

impl Default for Asked {
    fn default() -> Self {
        Self {
            laying: Laying::default(),
            lie: None,
            most: 2,
            worth: Worth { module: 100.0, by_area: false },
            target: Target { size: Size::Modules(12), way: Way::Compact },
            faces: BTreeSet::new(),
        }
    }
}

impl Asked {
    /// The chosen settings.
    fn how(&self) -> How {
        let mode = match self.laying {
            Laying::SlidingRows => Mode::SlidingRows,
            Laying::OneGrid => Mode::OneGrid,
            Laying::HalfLapped => Mode::HalfLapped,
            Laying::OnCourses => Mode::OnCourses,
            Laying::WholeBlocks => Mode::WholeBlocks(self.most as usize),
            Laying::ByWorth => Mode::ByWorth(self.worth),
            Laying::ToNumber => Mode::ToNumber(self.target),
        };
        How { mode, lie: self.lie }
    }
}

type Found = Result<Vec<Fill>, FillError>;

/// Settings, progress and results of fills.
#[derive(Debug, Default)]
pub(crate) struct Filling {
    pub(crate) asked: Asked,
    /// The error, or why a result was dropped.
    pub(crate) said: String,
    running: Option<Running>,
    shown: Option<Shown>,
}

/// A fill in progress. It stops when dropped.
#[derive(Debug)]
struct Running {
    job: Arc<Resolved>,
    faces: Vec<FaceId>,
    how: How,
    since: Instant,
    /// The best result so far.
    best: Vec<Fill>,
    work: Work<Found>,
}

/// A result, the job that contains it, and the search for what limits it.
#[derive(Debug)]
struct Shown {
    job: Arc<Resolved>,
    fills: Vec<Fill>,
    asking: Option<Work<Vec<Option<HeldBack>>>>,
}

/// The outcome of a fill.
pub(crate) struct Answer {
    /// The job that was filled.
    pub(crate) job: Arc<Resolved>,
    /// How it was filled.
    pub(crate) how: How,
    /// Whether the user asked for the best result so far.
    pub(crate) stopped: bool,
    /// The result; `None` if the work failed.
    pub(crate) fills: Option<Found>,
}

impl Filling {
    /// Starts to fill faces of a job; a fill in progress is dropped.
    pub(crate) fn start(&mut self, ctx: &egui::Context, job: Arc<Resolved>, faces: Vec<FaceId>) {
        let how = self.asked.how();
        let (on, filled) = (Arc::clone(&job), faces.clone());
        let work = Work::begin(ctx, move |stop, tell| {
            fill_improving(&*how.asked_of(&on)?, &filled, how.mode, stop, &mut |best| tell(Ok(best.to_vec())))
        });
        self.said.clear();
        self.running = Some(Running { job, faces, how, since: Instant::now(), best: Vec::new(), work });
    }

    /// Asks for the best result so far.
    pub(crate) fn stop(&self) {
        if let Some(running) = &self.running {
            running.work.stop();
        }
    }

    /// The faces being filled, and for how many seconds.
    pub(crate) fn running(&self) -> Option<(&[FaceId], f64)> {
        self.running.as_ref().map(|running| (running.faces.as_slice(), running.since.elapsed().as_secs_f64()))
    }

    /// The best result so far of the fill in progress.
    pub(crate) fn best_so_far(&self) -> &[Fill] {
        self.running.as_ref().map_or(&[], |running| &running.best)
    }

    /// The outcome, once, when it is available.
    pub(crate) fn answer(&mut self) -> Option<Answer> {
        let running = self.running.as_mut()?;
        let fills = match running.work.news() {
            News::Done(found) => Some(found),
            News::Broke => None,
            News::None => return None,
            News::SoFar(best) => {
                running.best = best.unwrap_or_default();
                return None;
            }
        };
        let Running { job, how, work, .. } = self.running.take()?;
        Some(Answer { job, how, stopped: work.stopped(), fills })
    }

    /// Lists the fills of a job, and starts to search what limits them.
    pub(crate) fn list(&mut self, ctx: &egui::Context, job: Arc<Resolved>, fills: Vec<Fill>, how: How) {
        self.said.clear();
        let (on, asked) = (Arc::clone(&job), fills.clone());
        let asking = Work::begin(ctx, move |stop, tell| {
            let mut held: Vec<Option<HeldBack>> = Vec::new();
            let Ok(on) = how.asked_of(&on) else { return held };
            for fill in &asked {
                held.push(hold_back(&on, fill, how.mode, stop).ok());
                tell(held.clone());
            }
            held
        });
        self.shown = Some(Shown { job, fills, asking: Some(asking) });
    }

    /// Receives what was found to limit the fills.
    pub(crate) fn hear(&mut self) {
        let Some(shown) = &mut self.shown else { return };
        let (held, done) = match shown.asking.as_ref().map_or(News::None, Work::news) {
            News::None => return,
            News::SoFar(held) => (held, false),
            News::Done(held) => (held, true),
            News::Broke => (Vec::new(), true),
        };
        for (fill, held) in shown.fills.iter_mut().zip(held) {
            fill.held = held;
        }
        if done {
            shown.asking = None;
        }
    }

    /// Whether the search for what limits the fills is in progress.
    pub(crate) fn is_asking(&self) -> bool {
        self.shown.as_ref().is_some_and(|shown| shown.asking.is_some())
    }

    /// Ends the search for what limits the fills with what was found.
    pub(crate) fn stop_asking(&self) {
        if let Some(asking) = self.shown.as_ref().and_then(|shown| shown.asking.as_ref()) {
            asking.stop();
        }
    }

    /// The listed fills.
    pub(crate) fn fills(&self) -> &[Fill] {
        self.shown.as_ref().map_or(&[], |shown| &shown.fills)
    }

    /// Removes the list if the job is no longer the one that it is about.
    pub(crate) fn keep_in_step(&mut self, job: &Arc<Resolved>) {
        self.asked.faces.retain(|id| job.face(*id).is_some());
        let Some(shown) = &mut self.shown else { return };
        if same_roof(&shown.job, job) {
            shown.job = Arc::clone(job);
        } else {
            self.shown = None;
        }
    }
}

/// Whether two jobs are equal in everything that a fill depends on.
pub(crate) fn same_roof(one: &Arc<Resolved>, two: &Arc<Resolved>) -> bool {
    let alike = |one: &Resolved, two: &Resolved| {
        one.faces == two.faces
            && one.blocks == two.blocks
            && one.penetrations == two.penetrations
            && one.kit == two.kit
            && one.rule_book == two.rule_book
            && one.prices == two.prices
            && one.site == two.site
    };
    Arc::ptr_eq(one, two) || alike(one, two)
}
