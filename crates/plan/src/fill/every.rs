//! How many modules any layout of a face can have that `check` passes, whatever its kind.

use super::judge::Judge;
use super::made::Maker;
use crate::room::{Fire, Room, What, is_checked, room_within};
use chalkcourse_geometry::DVec2;
use chalkcourse_geometry::fit::{Allowed, Effort, FitError, Neighbours, Passage, at_most};
use chalkcourse_job::{FaceId, FindingKey, Resolved, Subject};
use chalkcourse_limits::{Against, Share, TOLERANCE, apart};

/// What a search takes off each number below: limits pass what misses them by a tolerance, and rounding takes a hair.
const HAIR: f64 = 1e-6;

/// Round corners are drawn outside by so much at most, metres: what is drawn outside may hold a module off that passes, so that the
/// room is made larger by as much on all sides; and that may be just what one row more needs.
const ROUND: f64 = TOLERANCE / 4.0;

/// A share of a lower edge that is less by this passes: see the rule `hook`.
const HOOK_SLACK: f64 = 1e-4;

/// Gaps in a row that are wider than the reveal by this still count as reveals: see the layout of blocks.
const REVEAL_SLACK: f64 = 5e-4;

/// Every layout of new blocks on one face beside what stays, with nothing open against it by the rules, no two blocks nearer than
/// the kit asks: as far as a bound needs to know them. Nothing in it says less than the rules do:
///
/// - where modules may stand is the room of the limits with what `check` lets pass: a tolerance at each border, and what round
///   corners, which are drawn around, are drawn outside; measured in plan, both are longer up the slope;
/// - room beside the ridge is the lesser of the book's two, unless a share of the roof was given;
/// - joints, distances and shares are the kit's and the book's, less the same tolerance;
/// - a pathway is asked for where no other plane can have it.
pub(super) struct Every {
    room: Room,
    sizes: Vec<DVec2>,
    laws: Neighbours,
    passage: Option<Passage>,
}

/// So many steps, none of them in cases.
fn without_cases(known: usize, steps: usize) -> Effort {
    Effort { known, steps, steps_in_cases: 0 }
}

impl Every {
    /// On one face; `share` is how much of the roof is covered.
    pub(super) fn of(judge: &Judge, face: FaceId, index: usize, share: Share) -> Self {
        let (job, layout) = (&judge.bare, &judge.layout);
        let fire = Fire { share, beyond: false, kept: Vec::new() };
        let stays = |id| job.block(id).is_some();
        let mut room = room_within(job, layout, index, &stays, &fire, ROUND);
        let factor = layout.roof.faces.get(index).map_or(1.0, |face| face.plane.pitch.slope_factor());
        room.allowed.tolerance = (TOLERANCE + ROUND) * factor + HAIR;
        let sizes = Maker { job, face }.tiles().map(|(_, tile)| tile.size).collect();
        let asked = !judge.had(&FindingKey::new("fire-plane-path", Subject::Face(face)));
        let passage = if asked { chalkcourse_rules::passage(job, layout, index) } else { None };
        Self { room, sizes, laws: laws(job), passage }
    }

    /// No such layout has more modules than this: `known` is how many one has, `steps` how long to look.
    pub(super) fn at_most(
        &self,
        known: usize,
        steps: usize,
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        self.within(&self.room.allowed, self.passage.as_ref(), without_cases(known, steps), stop)
    }

    /// The same, and then so many steps in cases.
    pub(super) fn at_most_in_cases(
        &self,
        known: usize,
        (steps, steps_in_cases): (usize, usize),
        stop: &dyn Fn() -> bool,
    ) -> Result<usize, FitError> {
        let effort = Effort { known, steps, steps_in_cases };
        self.within(&self.room.allowed, self.passage.as_ref(), effort, stop)
    }

    /// The same as if one thing were not in the way.
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

    /// The same by lines alone with the shapes of one thing elsewhere: `by` is the move in the face's frame, metres. For throwing
    /// out moves that win nothing.
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

/// How modules may stand to each other, less what passes.
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
