use crate::sketch::Stroke;
use crate::view::{BesideView, BlockView, DrawnView, FaceView, GroundView, PenetrationView, WholeView};
use crate::wind::Conditions;
use crate::{Authority, Finding, WhyNot, array, by_limit, fire, roof, roofing, wind};
use chalkcourse_job::Resolved;
use chalkcourse_limits::{KeepOut, LIMITS};
use std::sync::LazyLock;

/// One rule. Its words are in crate `telling`, under its code.
pub struct Rule {
    /// Its code, as findings carry it and a rule book switches it off by.
    pub code: &'static str,
    /// The rule as a small drawing.
    pub sketch: &'static [Stroke],
    /// By whose word, for a job with its kit and book.
    pub(crate) source: fn(&Resolved) -> Authority,
    /// Why it can't be checked for a job, where a measurement or a section of the book is missing; for the rule of a limit,
    /// what beside the limit.
    pub(crate) missing: fn(&Resolved) -> Option<WhyNot>,
    pub(crate) run: Run,
}

type Found<'f> = &'f mut Vec<Finding>;

/// What one run of a rule looks at, and so what must change before it is run again. What a rule reads beside its block or face
/// is handed to it, and compared by value.
#[derive(Clone, Copy)]
pub(crate) enum Run {
    /// The whole job: run after every change, and quick.
    Whole(fn(WholeView<'_>, Found<'_>)),
    /// The faces as drawn and how they meet.
    Drawn(fn(DrawnView<'_>, Found<'_>)),
    /// One sound face and what comes through it.
    Ground(fn(GroundView<'_>, Found<'_>)),
    /// One sound face with its blocks.
    Face(fn(FaceView<'_>, Found<'_>)),
    /// One sound face with its blocks, and the faces beside it with theirs.
    Beside(fn(BesideView<'_>, Found<'_>)),
    /// One block with its face.
    Block(fn(BlockView<'_>, Found<'_>)),
    /// One block, and what the limit of the rule keeps modules off on its face.
    KeptOff(fn(BlockView<'_>, &[KeepOut], Found<'_>)),
    /// The same, and the share of the roof that the array covers.
    KeptOffAndShare(fn(BlockView<'_>, &[KeepOut], f64, Found<'_>)),
    /// One block, and what the wind on the roof follows from, where that is known.
    BlockInWind(fn(BlockView<'_>, &Conditions, Found<'_>)),
    /// One penetration, and the faces as drawn.
    Penetration(fn(PenetrationView<'_>, Found<'_>)),
}

/// All rules, in the order in which findings of one weight are listed: those with a file of their own, then one for each other
/// limit.
pub static RULES: LazyLock<Vec<&'static Rule>> = LazyLock::new(|| {
    let own = |code: &str| OWN.iter().any(|rule| rule.code == code);
    OWN.iter().copied().chain(BY_LIMIT.iter().filter(|rule| !own(rule.code))).collect()
});

/// The rule that each limit would have without a file of its own.
static BY_LIMIT: LazyLock<Vec<Rule>> =
    LazyLock::new(|| LIMITS.iter().map(|limit| by_limit::rule(limit)).collect());

const OWN: &[&Rule] = &[
    &roof::part::RULE,
    &roof::outline::RULE,
    &roof::height_gap::RULE,
    &roof::near_miss::RULE,
    &roof::counted_twice::RULE,
    &roof::no_home::RULE,
    &roof::one_plane::RULE,
    &roof::lost::RULE,
    &array::no_deck::RULE,
    &array::pitch::RULE,
    &array::off_face::RULE,
    &array::overlap::RULE,
    &array::setback::RULE,
    &array::clearance::RULE,
    &array::water::RULE,
    &array::ridge_course::RULE,
    &array::base_rail::RULE,
    &array::deck::RULE,
    &array::hook::RULE,
    &array::laying::RULE,
    &array::reveal::RULE,
    &array::between_blocks::RULE,
    &fire::ridge::RULE,
    &fire::paths::RULE,
    &fire::plane_path::RULE,
    &fire::street::RULE,
    &fire::hip_valley::RULE,
    &fire::escape::RULE,
    &roofing::slope::RULE,
    &roofing::underlayment::RULE,
    &roofing::cricket::RULE,
    &roofing::drip_edge::RULE,
    &roofing::fire_class::RULE,
    &roofing::deck_condition::RULE,
    &wind::rule::RULE,
];

/// What is needed is there.
pub(crate) fn nothing_missing(_: &Resolved) -> Option<WhyNot> {
    None
}

impl Rule {
    /// By whose word, for a job with its kit and book.
    pub fn source(&self, job: &Resolved) -> Authority {
        (self.source)(job)
    }

    /// Why the rule is not checked for a job; `None` when it is.
    pub fn why_not(&self, job: &Resolved) -> Option<WhyNot> {
        if job.rule_book.off.contains(self.code) {
            return Some(WhyNot::Off);
        }
        chalkcourse_limits::off(job, self.code).map(WhyNot::from).or_else(|| (self.missing)(job))
    }
}
