//! An independent search for the most modules that `check` passes on a face: the reference that fill claims are tested
//! against.
//!
//! It implements the rules from the wording of the rule book and the kit (`limits`), sharing no code with the fill, and
//! its results are accepted only if `check` passes them. It may lay several blocks, rows that hook by no more than the
//! book requires, base rails anywhere the kit allows, and leave any pathway for the fire service. Its result is a lower
//! bound on the true maximum, never an upper one; it is the same for the same seed.
//!
//! - `shape`, `limits`, `room`: where a module may stand
//! - `rows`, `pieces`: one block; several blocks
//! - `bands`: modules that need not hook, where blocks may touch
//! - `corridor`: pathways left free for the fire service

mod bands;
mod blocks;
mod corridor;
mod limits;
mod pieces;
mod room;
mod rows;
mod shape;

use crate::dice::Dice;
use crate::verdict::{Open, bare, open_on};
use chalkcourse_geometry::{DVec2, Roof, dvec2};
use chalkcourse_job::{FaceId, Orientation, Resolved, RowJoints};
use chalkcourse_layout::{Layout, assemble};
use corridor::corridors;
use limits::{Given, Limits, MET, fire};
use pieces::{Field, Search, total};
use room::Room;
use rows::{Effort, Laying, Piece};
use shape::Thing;
use std::sync::Arc;

/// What may remain open against a layout that counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Strict {
    /// No stops, and no two blocks closer than the kit's clearance.
    Kit,
    /// No stops: two blocks closer than the kit's clearance are a caution and allowed.
    Stops,
}

/// Limits on the search effort.
#[derive(Clone, Copy, Debug)]
pub struct Budget {
    /// How often part of a layout is removed and laid again.
    pub rounds: usize,
    /// Number of fire service pathways to try.
    pub corridors: usize,
    /// Stop as soon as more than this many modules are found.
    pub enough: usize,
}

impl Budget {
    /// A second or less on a typical face.
    pub const QUICK: Self = Self { rounds: 6, corridors: 3, enough: usize::MAX };

    /// The same effort, but stopping once more than `enough` modules are found.
    pub fn beyond(self, enough: usize) -> Self {
        Self { enough, ..self }
    }
}

/// A layout found by the independent search, passed by `check`.
#[derive(Clone, Debug)]
pub struct FoundLayout {
    /// Modules on the face, without those of locked blocks.
    pub modules: usize,
    /// The job with the layout in place.
    pub job: Resolved,
}

/// The best layout found on one face, with the other faces left as they are. Unlocked blocks of the face are removed
/// first.
pub fn climb(job: &Resolved, face: FaceId, strict: Strict, budget: Budget, seed: u64) -> FoundLayout {
    let Some(climber) = Climber::of(job, face, strict, budget) else {
        return FoundLayout { modules: 0, job: job.clone() };
    };
    let mut best = FoundLayout { modules: 0, job: blocks::with_pieces(job, face, &[]) };
    if strict == Strict::Stops {
        // What keeps the kit's clearances also passes here.
        best = climb(job, face, Strict::Kit, budget, seed);
    }
    climber.climb(&mut best, &mut Dice::new(seed));
    best
}

/// The best layouts found on several faces, filled one after the other, each given those before it: modules per face,
/// and the job.
pub fn climb_all(
    job: &Resolved,
    faces: &[FaceId],
    strict: Strict,
    budget: Budget,
    seed: u64,
) -> (Vec<usize>, Resolved) {
    let mut job = job.clone();
    job.blocks.retain(|block| !faces.contains(&block.face) || block.locked);
    let mut found = Vec::new();
    for &face in faces {
        let hand = climb(&job, face, strict, budget, seed);
        found.push(hand.modules);
        job = hand.job;
    }
    (found, job)
}

struct Climber<'a> {
    job: &'a Resolved,
    face: FaceId,
    index: usize,
    roof: Arc<Roof>,
    layout: Layout,
    strict: Strict,
    budget: Budget,
    /// Open findings before anything was laid here.
    before: Open,
}

impl<'a> Climber<'a> {
    fn of(job: &'a Resolved, face: FaceId, strict: Strict, budget: Budget) -> Option<Self> {
        let roof = Arc::new(assemble(job));
        // What is kept: locked blocks of the face, and the other faces.
        let mut stays = job.clone();
        stays.blocks.retain(|block| block.face != face || block.locked);
        let layout = Layout::on_roof(&stays, Arc::clone(&roof));
        let (index, on) = layout.face(face)?;
        let steep = job.face(face)?.pitch >= job.kit.least_pitch || job.rule_book.off.contains("pitch");
        if !on.sound || !steep {
            return None;
        }
        let before = open_on(&bare(job), &roof);
        Some(Self { job, face, index, roof, layout, strict, budget, before })
    }

    fn climb(&self, best: &mut FoundLayout, dice: &mut Dice) {
        let given = |ridge: f64| Given { ridge, beyond: self.beyond() };
        let rooms: Vec<Given> = match fire(self.job) {
            None => vec![given(0.0)],
            Some(fire) => {
                // The narrower ridge setback holds for a small array; a large one needs the wider.
                let (narrow, wide) =
                    (fire.ridge.up_to_share.value.metres(), fire.ridge.beyond.value.metres());
                vec![given(narrow), given(narrow.max(wide))]
            }
        };
        for given in rooms {
            self.within(given, best, dice);
        }
    }

    /// Whether there are modules on a face across a hip or a valley.
    fn beyond(&self) -> bool {
        let beside = self.layout.roof.faces[self.index].edges.iter().filter_map(|edge| edge.neighbour);
        beside.into_iter().any(|n| self.layout.blocks.iter().any(|block| block.face == n.face))
    }

    fn within(&self, given: Given, best: &mut FoundLayout, dice: &mut Dice) {
        let enough = |best: &FoundLayout| best.modules > self.budget.enough;
        let field = self.field(given);
        let free = self.lay(&field, self.budget.rounds, dice);
        if total(&free) <= best.modules || enough(best) {
            return;
        }
        if self.take(&free, best) {
            return;
        }
        let rects: Vec<_> = free.iter().flat_map(|piece| field.rects(piece)).collect();
        let ways = corridors(self.job, &self.layout, self.index, &rects, dice);
        let rounds = self.budget.rounds / 2;
        for way in ways.iter().take(self.budget.corridors) {
            if enough(best) {
                return;
            }
            let pieces = self.lay(&field.without(way), rounds, dice);
            if total(&pieces) > best.modules {
                self.take(&pieces, best);
            }
        }
        // The array covers too much of the roof for this ridge setback: trim it from the top until it does not.
        self.trim(free, best);
        if let Some(way) = ways.first() {
            self.trim(self.lay(&field.without(way), rounds, dice), best);
        }
    }

    /// Takes a layout if it passes and is better; returns whether it passes.
    fn take(&self, pieces: &[Piece], best: &mut FoundLayout) -> bool {
        let job = blocks::with_pieces(self.job, self.face, pieces);
        let passes = self.passes(&job);
        if passes && total(pieces) > best.modules {
            *best = FoundLayout { modules: total(pieces), job };
        }
        passes
    }

    /// Removes modules from the top and the ends of rows until the layout passes or is no better than the best.
    fn trim(&self, mut pieces: Vec<Piece>, best: &mut FoundLayout) {
        while total(&pieces) > best.modules + 1 {
            let last = pieces.iter_mut().filter(|piece| !piece.rows.is_empty());
            let Some(piece) =
                last.max_by(|a, b| (a.foot + a.rows.len() as f64).total_cmp(&(b.foot + b.rows.len() as f64)))
            else {
                return;
            };
            if let Some(row) = piece.rows.last_mut() {
                row.pop();
                if row.is_empty() {
                    piece.rows.pop();
                }
            }
            pieces.retain(|piece| piece.count() > 0);
            if self.take(&pieces, best) {
                return;
            }
        }
    }

    fn passes(&self, job: &Resolved) -> bool {
        let open = open_on(job, &self.roof);
        let none_more = open.stops.is_subset(&self.before.stops);
        none_more && (self.strict == Strict::Stops || open.near_blocks.is_subset(&self.before.near_blocks))
    }

    fn lay(&self, field: &Field, rounds: usize, dice: &mut Dice) -> Vec<Piece> {
        if self.strict == Strict::Stops {
            return bands::lay(field, rounds / 4, dice);
        }
        let effort = Effort { feet: 10 + rounds / 4, stacks: 12 + rounds / 4 };
        pieces::lay(field, Search { effort, rounds, enough: self.budget.enough }, dice)
    }

    fn field(&self, given: Given) -> Field {
        let kit = &self.job.kit;
        let limits = Limits::of(self.job, &self.layout, self.index, given);
        let frame = &self.layout.roof.faces[self.index].frame;
        let (long, short) = (kit.module.length.metres(), kit.module.width.metres());
        let rooms = kit.orientations.iter().map(|&way| {
            let size: DVec2 = match way {
                Orientation::Landscape => dvec2(long, short),
                Orientation::Portrait => dvec2(short, long),
            };
            (way, Room::of(frame, &limits, size))
        });
        let apart = match self.strict {
            Strict::Kit => kit.clearances.between_blocks.metres(),
            Strict::Stops => 0.0,
        };
        let mut field = Field { rooms: rooms.collect(), layings: self.layings(), apart };
        let locked = self.layout.blocks.iter().filter(|block| block.face == self.index);
        let rects = locked.flat_map(|block| block.modules.iter().map(|module| module.rect));
        let stays: Vec<Thing> = rects
            .map(|rect| match apart > MET {
                true => {
                    let corners = rect.corners().to_vec();
                    Thing::Convex { corners, reach: apart - MET, squeeze: 1.0, less: 0.0 }
                }
                false => Thing::Ground { rect, by: MET },
            })
            .collect();
        if !stays.is_empty() {
            field = field.without(&stays);
        }
        field
    }

    fn layings(&self) -> Vec<Laying> {
        let (job, kit) = (self.job, &self.job.kit);
        let off = |rule: &str| job.rule_book.off.contains(rule);
        let free = kit.laying.joints.contains(&RowJoints::Free) || off("laying");
        let joints = (!free).then(|| {
            let share = |joint: &RowJoints| if *joint == RowJoints::HalfLapped { 0.5 } else { 0.0 };
            kit.laying.joints.iter().map(share).collect::<Vec<f64>>()
        });
        let rail = kit.laying.base_rail;
        let courses = self.layout.faces.get(self.index).map(|face| face.courses);
        let courses =
            courses.filter(|c| !rail.anywhere && !off("laying") && c.exposure > MET).map(|courses| {
                let (from, to) = (rail.above_course_from.metres(), rail.above_course_to.metres());
                (courses.first, courses.exposure, from - MET * 0.99, to + MET * 0.99)
            });
        let hooked = if off("hook") { 0.0 } else { job.rule_book.hooked_share.value };
        // As close as the kit allows modules, and at its usual reveal.
        let least = (kit.reveal.least.metres() - MET * 0.99).max(0.0);
        [least, least, kit.reveal.usual.metres(), kit.reveal.most.metres()]
            .map(|reveal| Laying { reveal, hooked, joints: joints.clone(), courses })
            .to_vec()
    }
}

/// Intervals along the eave where a single module, on its own base rail, may start at height `v` of a face's frame:
/// within them `check` has no stop about the module itself. Metres; pathways are ignored.
pub fn starts(job: &Resolved, face: FaceId, orientation: Orientation, v: f64) -> Vec<(f64, f64)> {
    let Some(climber) = Climber::of(job, face, Strict::Kit, Budget::QUICK) else { return Vec::new() };
    let ridge = fire(job).map_or(0.0, |fire| fire.ridge.up_to_share.value.metres());
    let field = climber.field(Given { ridge, beyond: climber.beyond() });
    let room = field.rooms.iter().find(|(way, _)| *way == orientation);
    room.map_or_else(Vec::new, |(_, room)| room.starts(v, true))
}
