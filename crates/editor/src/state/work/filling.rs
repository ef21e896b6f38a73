//! Filling faces in the background: the window goes on while it is worked out and improved, and what was found is listed while
//! it holds.

use super::{News, Work};
use chalkcourse_job::{FaceId, Orientation, Resolved};
use chalkcourse_plan::{
    Fill, FillError, HeldBack, Mode, Size, Target, Way, Worth, fill_improving, hold_back, lying,
};
use std::collections::BTreeSet;
use std::sync::Arc;
use std::time::Instant;

/// A way of laying, as it is chosen in a list; what it needs besides is kept beside it.
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

/// How faces are filled.
#[derive(Clone, Copy, Debug)]
pub(crate) struct How {
    pub(crate) mode: Mode,
    /// How modules are to lie; as the kit allows where nobody said.
    lie: Option<Orientation>,
}

impl How {
    /// The job as it is to be filled.
    fn asked_of(self, job: &Arc<Resolved>) -> Result<Arc<Resolved>, FillError> {
        self.lie.map_or_else(|| Ok(Arc::clone(job)), |way| lying(job, way).map(Arc::new))
    }
}

/// How faces are to be filled.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Asked {
    pub(crate) laying: Laying,
    /// How modules are to lie; as the kit allows where nobody said.
    pub(crate) lie: Option<Orientation>,
    /// Blocks at most, in whole blocks.
    pub(crate) most: u32,
    /// What a module is worth.
    pub(crate) worth: Worth,
    /// A number of modules, and what they should be like.
    pub(crate) target: Target,
    /// The faces that a person ticked.
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
    /// What was chosen.
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

/// How faces are filled, what is being filled, and what came out.
#[derive(Debug, Default)]
pub(crate) struct Filling {
    pub(crate) asked: Asked,
    /// What went wrong, or why an answer was dropped.
    pub(crate) said: String,
    running: Option<Running>,
    shown: Option<Shown>,
}

/// A fill that is worked out. It stops when it is dropped.
#[derive(Debug)]
struct Running {
    job: Arc<Resolved>,
    faces: Vec<FaceId>,
    how: How,
    since: Instant,
    /// The best so far.
    best: Vec<Fill>,
    work: Work<Found>,
}

/// An answer, the job that it stands in, and the search for what holds it back.
#[derive(Debug)]
struct Shown {
    job: Arc<Resolved>,
    fills: Vec<Fill>,
    asking: Option<Work<Vec<Option<HeldBack>>>>,
}

/// What came of a fill.
pub(crate) struct Answer {
    /// The job that it is for.
    pub(crate) job: Arc<Resolved>,
    /// How it was filled.
    pub(crate) how: How,
    /// Whether a person asked for the best so far.
    pub(crate) stopped: bool,
    /// What was found; `None` where the work broke off.
    pub(crate) fills: Option<Found>,
}

impl Filling {
    /// Begins to fill faces of a job; what was running is given up.
    pub(crate) fn start(&mut self, ctx: &egui::Context, job: Arc<Resolved>, faces: Vec<FaceId>) {
        let how = self.asked.how();
        let (on, filled) = (Arc::clone(&job), faces.clone());
        let work = Work::begin(ctx, move |stop, tell| {
            fill_improving(&*how.asked_of(&on)?, &filled, how.mode, stop, &mut |best| tell(Ok(best.to_vec())))
        });
        self.said.clear();
        self.running = Some(Running { job, faces, how, since: Instant::now(), best: Vec::new(), work });
    }

    /// Asks for the best that was found so far.
    pub(crate) fn stop(&self) {
        if let Some(running) = &self.running {
            running.work.stop();
        }
    }

    /// The faces that are being filled, and for how many seconds.
    pub(crate) fn running(&self) -> Option<(&[FaceId], f64)> {
        self.running.as_ref().map(|running| (running.faces.as_slice(), running.since.elapsed().as_secs_f64()))
    }

    /// The best so far of what is being filled.
    pub(crate) fn best_so_far(&self) -> &[Fill] {
        self.running.as_ref().map_or(&[], |running| &running.best)
    }

    /// The answer, once, when it has come.
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

    /// Lists what stands in a job now, and begins to look for what holds it back.
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

    /// Takes up what was found of what holds the fills back.
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

    /// Whether what holds the fills back is still looked for.
    pub(crate) fn is_asking(&self) -> bool {
        self.shown.as_ref().is_some_and(|shown| shown.asking.is_some())
    }

    /// Ends the search for what holds the fills back with what is there.
    pub(crate) fn stop_asking(&self) {
        if let Some(asking) = self.shown.as_ref().and_then(|shown| shown.asking.as_ref()) {
            asking.stop();
        }
    }

    /// What is listed.
    pub(crate) fn fills(&self) -> &[Fill] {
        self.shown.as_ref().map_or(&[], |shown| &shown.fills)
    }

    /// Takes the list away where the job is no longer the one that it speaks of.
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

/// Whether two jobs are alike in all that a fill depends on.
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
