//! Fixes for a finding, each verified: it was applied, and a full check of the resulting job has fewer stops and none
//! that is new or worse. For a caution the same holds for stops and cautions, and so on.
//!
//! Candidates, one kind per file: a block is moved past all limits at once, a row slid, the reveal set, modules
//! switched off or on, a pathway opened, an obstacle moved, a defect of the house repaired; as a last resort a block is
//! removed. A locked block is never changed. If no single step clears a finding, sequences of up to three are tried.
//!
//! - [`fixes`]: what clears one finding
//! - [`open_findings`]: the measure that every fix reduces
//! - [`fix_words`]: a fix in words, with directions as the user sees them
//!
//! The search is not exhaustive: if nothing is offered, none of these candidates worked.

mod change;
pub(crate) mod ground;
mod house;
mod judge;
mod modules;
mod moves;
mod rows;
mod sequence;
#[cfg(test)]
mod tests;
mod words;

pub use change::{Change, Fix, Step};
pub use judge::open_findings;
pub use words::fix_words;
pub(crate) use words::ways;

use crate::{Plan, Seen};
use chalkcourse_geometry::Convex;
use chalkcourse_job::{Block, BlockId, FindingKey, Resolved, Subject};
use chalkcourse_rules::Finding;
use ground::Ground;
use judge::{Standing, State, Trials};
use std::collections::BTreeMap;

/// Most jobs to check for one finding.
const MOST_TRIALS: usize = 300;
/// Most candidates of one kind to try.
const MOST_OF_A_KIND: usize = 40;
/// Most blocks to try for one finding.
const MOST_BLOCKS: usize = 6;
/// Most fixes to offer.
const MOST_OFFERED: usize = 3;

/// Fixes found for a finding.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fixes {
    /// Single steps that clear it, best first. Removing a whole block is only included if nothing else works.
    pub single: Vec<Fix>,
    /// The best sequence, if no single step works or each of them loses modules that the sequence keeps.
    pub together: Option<Fix>,
    /// How many jobs were checked: 0 if no candidate applies to the finding.
    pub tried: usize,
    /// Whether the search was stopped early.
    pub stopped: bool,
}

impl Fixes {
    /// All fixes on offer, best first.
    pub fn offered(&self) -> Vec<&Fix> {
        let mut all: Vec<&Fix> = self.single.iter().chain(&self.together).collect();
        all.sort_by(|a, b| a.rank(b));
        all
    }

    /// Whether a single step clears it without removing a whole block.
    pub fn has_a_single_step(&self) -> bool {
        let takes = |fix: &Fix| fix.steps.iter().any(|step| matches!(step.change, Change::Take(_)));
        self.single.iter().any(|fix| !takes(fix))
    }

    /// The fix to offer first.
    pub fn best(&self) -> Option<&Fix> {
        self.offered().first().copied()
    }
}

/// Fixes found for the findings of a plan.
#[derive(Clone, Debug, Default)]
pub struct Offers(BTreeMap<FindingKey, Fixes>);

impl Offers {
    /// Searches fixes for all open findings.
    pub fn of(job: &Resolved, plan: &Plan) -> Self {
        let open = plan.findings.iter().filter(|finding| finding.waived.is_none());
        Self(open.map(|f| (f.key.clone(), fixes(job, plan, &f.key, &|| false))).collect())
    }

    /// The best fix of a finding in words, or that none was found; `None` if there were no candidates.
    pub fn words(&self, job: &Resolved, key: &FindingKey) -> Option<String> {
        let found = self.0.get(key).filter(|fixes| fixes.tried > 0);
        found.map(|fixes| words::fixes_words(job, fixes, Seen::Text).into())
    }
}

/// Searches fixes for an open finding; empty for an unknown key. Pure: it may run on another thread, and `stop` ends it
/// with what was found so far.
pub fn fixes(job: &Resolved, plan: &Plan, key: &FindingKey, stop: &dyn Fn() -> bool) -> Fixes {
    let state = State { job: job.clone(), layout: plan.layout.clone(), findings: plan.findings.clone() };
    let Some(finding) = state.finding(key).filter(|finding| finding.waived.is_none()) else {
        return Fixes::default();
    };
    let mut trials = Trials::on(&plan.layout, MOST_TRIALS, stop);
    let search = Search { key, before: Standing::of(&plan.findings), modules: state.modules() };
    let asked = FixRequest { state: &state, finding };
    let mut found = Vec::new();
    let mut near = Vec::new();
    for kind in kinds(&asked, &mut trials, stop) {
        found.extend(search.first(&state, kind, &mut trials, &mut near));
    }
    found.sort_by(Fix::rank);
    let mut together = None;
    if found.first().is_none_or(|best| best.lost > 0) {
        for kind in asked.blocks().into_iter().map(|block| moves::through_others(&asked, block, stop)) {
            found.extend(search.first(&state, kind, &mut trials, &mut near));
        }
        together = sequence::together(&search, near, &mut trials, stop);
        together = together.filter(|fix| found.iter().all(|single| fix.lost < single.lost));
    }
    if found.is_empty() {
        trials.allow(MOST_BLOCKS);
        for kind in asked.blocks().into_iter().map(modules::take) {
            found.extend(search.first(&state, kind, &mut trials, &mut Vec::new()));
        }
    }
    found.sort_by(Fix::rank);
    found.truncate(MOST_OFFERED);
    Fixes { single: found, together, tried: trials.done(), stopped: trials.stopped() }
}

/// Candidates by kind, best kind first: those that keep all modules before others.
fn kinds(asked: &FixRequest<'_>, trials: &mut Trials<'_>, stop: &dyn Fn() -> bool) -> Vec<Vec<Step>> {
    let mut kinds = vec![house::steps(asked)];
    let blocks = asked.blocks();
    for block in &blocks {
        kinds.push(moves::of_block(asked, block, stop));
        kinds.push(rows::slides(asked, block));
        kinds.push(rows::reveal(asked, block));
        kinds.push(modules::on(asked, block));
    }
    kinds.push(moves::of_penetration(asked));
    kinds.push(moves::onto_one_plane(asked));
    for block in &blocks {
        kinds.push(modules::off(asked, block, trials));
    }
    kinds.push(modules::pathway(asked));
    kinds.retain(|kind| !kind.is_empty());
    kinds
}

/// A finding in a job.
struct FixRequest<'a> {
    state: &'a State,
    finding: &'a Finding,
}

impl<'a> FixRequest<'a> {
    /// The blocks that may be changed for it: those that it is about; for a pathway those on the face or the roof.
    fn blocks(&self) -> Vec<&'a Block> {
        let job = &self.state.job;
        let place = &self.finding.place;
        let ids: Vec<BlockId> = match &self.finding.key.subject {
            Subject::Blocks(one, two) => vec![*one.max(two), *one.min(two)],
            _ => match place.block {
                Some(block) => vec![block],
                None if !self.finding.rule.starts_with("fire") => Vec::new(),
                None => {
                    let there = |block: &&Block| place.face.is_none_or(|face| block.face == face);
                    job.blocks.iter().filter(there).map(|block| block.id).collect()
                }
            },
        };
        let unlocked = ids.into_iter().filter_map(|id| job.block(id)).filter(|block| !block.locked);
        unlocked.take(MOST_BLOCKS).collect()
    }

    /// The limits on a face, including the blocks that stay.
    fn ground(&self, face: usize, stays: impl Fn(BlockId) -> bool, kept: Vec<Convex>) -> Option<Ground> {
        Ground::of(&self.state.job, &self.state.layout, face, stays, kept)
    }

    /// The limits on a row of a block, including the other blocks.
    fn ground_of(&self, block: &Block) -> Option<Ground> {
        let (face, _) = self.state.layout.face(block.face)?;
        self.ground(face, |id| id != block.id, Vec::new()).map(Ground::on_any_course)
    }
}

/// A finding to clear, and the original job.
struct Search<'a> {
    key: &'a FindingKey,
    before: Standing,
    modules: usize,
}

/// Steps that clear a finding but break something else.
struct Near {
    fix: Fix,
    state: State,
    broken: Vec<FindingKey>,
}

impl Search<'_> {
    /// The first step of a kind that clears the finding. Those that break something else are collected in `near`.
    fn first(
        &self,
        state: &State,
        kind: Vec<Step>,
        trials: &mut Trials<'_>,
        near: &mut Vec<Near>,
    ) -> Option<Fix> {
        self.first_after(state, &[], kind.into_iter().take(MOST_OF_A_KIND), trials, near)
    }

    /// The same after some steps.
    fn first_after(
        &self,
        state: &State,
        before: &[Step],
        kind: impl Iterator<Item = Step>,
        trials: &mut Trials<'_>,
        near: &mut Vec<Near>,
    ) -> Option<Fix> {
        for step in kind {
            let Some(after) = trials.run(&state.job, &step.edit) else { continue };
            let standing = Standing::of(&after.findings);
            if !self.before.is_gone(self.key, &standing) {
                continue;
            }
            let steps: Vec<Step> = before.iter().cloned().chain([step]).collect();
            let fix = Fix::of(steps, self.modules, after.modules());
            let broken = self.before.broken(self.key, &standing);
            if broken.is_empty() {
                return Some(fix);
            }
            near.push(Near { fix, state: after, broken });
        }
        None
    }
}
