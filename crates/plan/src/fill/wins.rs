//! Moves of a penetration after which a face, filled again, has more modules.
//!
//! Filling a face again takes as long as the fill did, so only a few moves get that far: those that the bound over all
//! layouts does not rule out, and of these the ones by which rows laid around the moved shape gain modules, or a few
//! that only several blocks might.

use super::every::Every;
use super::judge::Judge;
use super::lay::rows;
use super::{Fill, FillError, Site};
use crate::room::Room;
use chalkcourse_geometry::DVec2;
use chalkcourse_geometry::fit::{Barrier, HeldBack, Move, NearFit, Question, Stop};
use chalkcourse_job::{PenetrationId, Resolved};
use chalkcourse_words::Said;

/// Most moves of one penetration to lay rows for, shortest first.
const MOST_LAID: usize = 12;

/// How often to fill a face again where rows alone gain nothing.
const MOST_DOUBTFUL: usize = 2;

/// Moves closer together than this count as one, metres.
const SAME: f64 = 2e-3;

/// A fill and its surroundings.
pub(super) struct FillContext<'a> {
    pub(super) job: &'a Resolved,
    pub(super) judge: &'a Judge,
    pub(super) site: &'a Site<'a>,
    pub(super) fill: &'a Fill,
    pub(super) room: &'a Room,
}

/// For each movable penetration the shortest of the tried moves after which the face, filled again by the usual search,
/// has more modules: moves by which rows alone would gain, and those that would make room for a module that nearly
/// fits. A shorter one may gain too.
///
/// # Errors
/// Those of the fitting.
pub(super) fn wins(
    asked: &FillContext<'_>,
    held: &HeldBack,
    question: &Question,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Move>, FillError> {
    let every = Every::of(asked.judge, asked.site.face, asked.site.index, asked.fill.basis.fire.share);
    let mut doubtful = 0;
    let mut found = Vec::new();
    for &id in &question.movable {
        let Some(&what) = asked.room.things.get(id) else { continue };
        let Some(penetration) = what.penetration() else { continue };
        let mut laid = 0;
        for by in tried(held, question, id) {
            if stop() || laid >= MOST_LAID {
                break;
            }
            let known = asked.fill.modules;
            if every.moved(what, by, known, stop)? <= known {
                continue;
            }
            laid += 1;
            let (moved, fire) = (asked.room.allowed.moved(id, by), &asked.fill.basis.fire);
            let by_rows = rows(asked.site, &moved, fire, known + 1, stop)?.modules > known;
            if !by_rows {
                if doubtful >= MOST_DOUBTFUL {
                    continue;
                }
                doubtful += 1;
            }
            if let Some((wins, searched)) = asked.filled_again(penetration, by, stop) {
                found.push(Move { id, by, wins, searched });
                break;
            }
        }
    }
    Ok(found)
}

impl FillContext<'_> {
    /// How many more modules the face has when filled again with a penetration elsewhere, and what was searched; `None`
    /// if it has no more.
    fn filled_again(
        &self,
        penetration: PenetrationId,
        by: DVec2,
        stop: &dyn Fn() -> bool,
    ) -> Option<(usize, Said)> {
        let plane = self.job.face(self.site.face)?.plane();
        let after = self.job.with(|job| {
            if let Some(it) = job.penetrations.iter_mut().find(|it| it.id == penetration) {
                it.at = plane.to_plan(plane.to_frame(it.at) + by);
            }
        });
        let again = super::fill(&after, &[self.site.face], self.site.mode, stop).ok()?.into_iter().next()?;
        let wins = again.modules.checked_sub(self.fill.modules).filter(|&wins| wins > 0)?;
        Some((wins, again.searched))
    }
}

/// Moves of one obstacle that may gain modules, shortest first.
fn tried(held: &HeldBack, question: &Question, id: usize) -> Vec<DVec2> {
    let mut tried: Vec<DVec2> = held.moves.iter().filter(|step| step.id == id).map(|step| step.by).collect();
    let own = |it: &Stop| it.by == Barrier::Constraint(id);
    let alone = |place: &&NearFit| !place.stops.is_empty() && place.stops.iter().all(own);
    for place in held.near.iter().filter(alone) {
        let most = |way: fn(&Stop) -> f64| place.stops.iter().map(way).fold(0.0, |a: f64, b| a.max(b.abs()));
        for (by, axis) in [(most(|it| it.along_u), DVec2::X), (most(|it| it.along_v), DVec2::Y)] {
            if by.is_finite() && by <= question.farthest {
                // A tenth of a millimetre extra, so as not to be exactly on the limit.
                let by = (by + 1e-4) * axis;
                tried.extend([by, -by]);
            }
        }
    }
    tried.sort_by(|a, b| a.length().total_cmp(&b.length()));
    let mut apart: Vec<DVec2> = Vec::new();
    for by in tried {
        if apart.iter().all(|other| other.distance(by) > SAME) {
            apart.push(by);
        }
    }
    apart
}
