//! An upper bound on the modules of any layout of a face that `check` passes.

use super::judge::Judge;
use super::made::Maker;
use crate::room::{Fire, Room, What, is_checked, room_within};
use chalkcourse_geometry::DVec2;
use chalkcourse_geometry::fit::{Allowed, Effort, FitError, Neighbours, Passage, at_most};
use chalkcourse_job::{FaceId, FindingKey, Resolved, Subject};
use chalkcourse_limits::{Against, Share, TOLERANCE, apart};

/// Subtracted from each limit below: the checks tolerate small misses, and rounding adds a little.
const HAIR: f64 = 1e-6;

/// Largest error of polygons drawn around round corners, metres. Such a polygon may exclude a module that passes, so
/// the room is enlarged by this much on all sides; even that may be just what one more row needs.
const ROUND: f64 = TOLERANCE / 4.0;

/// The share of a lower edge that must hook may be this much smaller: see the rule `hook`.
const HOOK_SLACK: f64 = 1e-4;

/// Gaps in a row that are wider than the reveal by this much still count as reveals: see the layout of blocks.
const REVEAL_SLACK: f64 = 5e-4;

/// All layouts of new blocks on one face beside what stays, with no open findings and no two blocks closer than the
/// kit's clearance, as far as a bound needs to model them. Every constraint here is implied by the rules:
///
/// - modules may be in the room of the limits plus what `check` tolerates: a tolerance at each border, and the error of
///   the polygons around round corners; measured in plan, both are longer up the slope;
/// - the ridge setback is the smaller of the book's two, unless a share of the roof is given;
/// - joints, distances and shares are those of the kit and the book, less the same tolerance;
/// - a pathway is required where no other plane can have it.
pub(super) struct Every {
    room: Room,
    sizes: Vec<DVec2>,
    laws: Neighbours,
    passage: Option<Passage>,
}

/// An effort with these steps, none of them on cases.
fn without_cases(known: usize, steps: usize) -> Effort {
    Effort { known, steps, steps_in_cases: 0 }
}

impl Every {
    /// For one face; `share` is how much of the roof is covered.
    pub(super) fn of(judge: &Judge, face: FaceId, index: usize, share: Share) -> Self {
        let (job, layout) = (&judge.bare, &judge.layout);
        let fire = Fire { share, beyond: false, kept: Vec::new() };
        let stays = |id| job.block(id).is_some();
        let mut room = room_within(job, layout, index, &stays, &fire, ROUND);
        let factor = layout.roof.faces.get(index).map_or(1.0, |face| face.plane.pitch.slope_factor());
        room.allowed.tolerance = (TOLERANCE + ROUND) * factor + HAIR;
        let sizes = Maker { job, face }.tiles().map(|(_, tile)| tile.size).collect();
        let asked = !judge.existed_before(&FindingKey::new("fire-plane-path", Subject::Face(face)));
        let passage = if asked { chalkcourse_rules::passage(job, layout, index) } else { None };
        Self { room, sizes, laws: laws(job), passage }
    }

    /// No such layout has more modules than this. `known` is how many some layout has, `steps` the search effort.
    pub(super) fn at_most(
        &self,
        known: usize,
        steps: usize,
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        self.within(&self.room.allowed, self.passage.as_ref(), without_cases(known, steps), stop)
    }

    /// The same, followed by a number of steps on cases.
    pub(super) fn at_most_in_cases(
        &self,
        known: usize,
        (steps, steps_in_cases): (usize, usize),
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        let effort = Effort { known, steps, steps_in_cases };
        self.within(&self.room.allowed, self.passage.as_ref(), effort, stop)
    }

    /// The same with one obstacle removed.
    pub(super) fn without(
        &self,
        what: What,
        known: usize,
        steps: usize,
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        let passage = self.passage.as_ref().filter(|_| what.against != Against::Pathway);
        let id = self.room.things.iter().position(|thing| *thing == what);
        let allowed = id.map_or_else(|| self.room.allowed.clone(), |id| self.room.allowed.without(id));
        self.within(&allowed, passage, without_cases(known, steps), stop)
    }

    /// The same, by lines only, with the shapes of one obstacle moved by `by` in the face's frame, metres. To rule out
    /// moves that gain nothing.
    pub(super) fn moved(
        &self,
        what: What,
        by: DVec2,
        known: usize,
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        let id = self.room.things.iter().position(|thing| *thing == what);
        let allowed = id.map_or_else(|| self.room.allowed.clone(), |id| self.room.allowed.moved(id, by));
        self.within(&allowed, self.passage.as_ref(), without_cases(known, 0), stop)
    }

    fn within(
        &self,
        allowed: &Allowed,
        passage: Option<&Passage>,
        effort: Effort,
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        Ok(at_most(allowed, &self.sizes, &self.laws, passage, effort, stop)?.most)
    }
}

/// How modules may be placed relative to each other, including tolerances.
fn laws(job: &Resolved) -> Neighbours {
    let reveal = job.kit.reveal;
    let joint = if is_checked(job, "reveal") {
        [reveal.least.metres() - TOLERANCE - HAIR, reveal.most.metres() + TOLERANCE + HAIR]
    } else {
        [-TOLERANCE, job.kit.module.length.metres()]
    };
    let asked = job.rule_book.hooked_share.value - HOOK_SLACK - HAIR;
    Neighbours {
        joint,
        apart: apart(job) - TOLERANCE - HAIR,
        hooked: if is_checked(job, "hook") { asked.max(0.0) } else { 0.0 },
        bridged: joint[1] + REVEAL_SLACK,
    }
}
