//! The rule type; `registry` lists all rules.

use crate::sketch::Stroke;
use crate::view::{BesideView, BlockView, DrawnView, FaceView, GroundView, PenetrationView, WholeView};
use crate::wind::Conditions;
use crate::{Authority, Finding, WhyNot};
use chalkcourse_job::Resolved;
use chalkcourse_limits::KeepOut;

/// One rule. Its texts are in crate `telling`, under its code.
pub struct Rule {
    /// The code in findings, by which a rule book switches it off.
    pub code: &'static str,
    /// A small drawing of the rule.
    pub sketch: &'static [Stroke],
    /// Its source, for a job with its kit and book.
    pub(crate) source: fn(&Resolved) -> Authority,
    /// Why it can't be checked for a job: a measurement or a section of the book is missing; for the rule of a limit, apart from
    /// the limit itself.
    pub(crate) missing: fn(&Resolved) -> Option<WhyNot>,
    pub(crate) run: Run,
}

type Found<'f> = &'f mut Vec<Finding>;

/// What one run of a rule reads, and so what has to change before it runs again. What a rule reads besides its block or face is
/// passed in and compared by value.
#[derive(Clone, Copy)]
pub(crate) enum Run {
    /// The whole job: run after every change, and quick.
    Whole(fn(WholeView<'_>, Found<'_>)),
    /// The faces as drawn and how they meet.
    Drawn(fn(DrawnView<'_>, Found<'_>)),
    /// One sound face and its penetrations.
    Ground(fn(GroundView<'_>, Found<'_>)),
    /// One sound face with its blocks.
    Face(fn(FaceView<'_>, Found<'_>)),
    /// One sound face with its blocks, and the adjacent faces with theirs.
    Beside(fn(BesideView<'_>, Found<'_>)),
    /// One block with its face.
    Block(fn(BlockView<'_>, Found<'_>)),
    /// One block, and the keep-outs of the rule's limit on its face.
    KeptOff(fn(BlockView<'_>, &[KeepOut], Found<'_>)),
    /// The same, and the share of the roof that the array covers.
    KeptOffAndShare(fn(BlockView<'_>, &[KeepOut], f64, Found<'_>)),
    /// One block, and the wind conditions of the roof, if known.
    BlockInWind(fn(BlockView<'_>, &Conditions, Found<'_>)),
    /// One penetration, and the faces as drawn.
    Penetration(fn(PenetrationView<'_>, Found<'_>)),
}

/// Nothing is missing.
pub(crate) fn nothing_missing(_: &Resolved) -> Option<WhyNot> {
    None
}

impl Rule {
    /// Its source, for a job with its kit and book.
    pub fn source(&self, job: &Resolved) -> Authority {
        (self.source)(job)
    }

    /// Why the rule is not checked for a job; `None` if it is.
    pub fn why_not(&self, job: &Resolved) -> Option<WhyNot> {
        if job.rule_book.off.contains(self.code) {
            return Some(WhyNot::Off);
        }
        chalkcourse_limits::off(job, self.code).map(WhyNot::from).or_else(|| (self.missing)(job))
    }
}
