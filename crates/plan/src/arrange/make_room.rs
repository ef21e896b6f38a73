//! The shortest slide of a block that clears its obstacles.
//!
//! The plane of possible slides minus all obstacles is where the block as a whole may be; the nearest point of that is
//! the answer, and the rules check it. Where the rules ask for something that no shape expresses (a pathway that may
//! run in several places, a waived finding), positions are tried one after the other: from each, the moves past each
//! limit that the block breaks there. Such an answer is not proved shortest.

use crate::fixes::ground::{Body, Ground, rows_of};
use crate::room::{Fire, path_strips, room};
use chalkcourse_geometry::fit::{Part, least_slide};
use chalkcourse_geometry::{DVec2, Roof};
use chalkcourse_job::{Block, BlockId, Edit, FindingKey, Resolved, apply};
use chalkcourse_layout::{Layout, PlacedBlock, assemble};
use chalkcourse_limits::{LIMITS, Share, array_share};
use chalkcourse_rules::{Facts, Finding, Severity};
use std::collections::BTreeSet;
use std::sync::Arc;

/// Longest sequence of moves.
const MOST_MOVES: usize = 6;
/// Most positions to check: more would keep the user waiting.
const MOST_PLACES: usize = 160;

/// A slide of a block.
#[derive(Clone, Debug, PartialEq)]
pub struct Slide {
    /// The edit.
    pub edit: Edit,
    /// How far, in the frame of the face, metres.
    pub by: DVec2,
    /// Whether it is proved that no shorter slide in any direction clears the block. Round clearances are approximated
    /// by polygons around them, half a millimetre larger at most.
    pub proved: bool,
}

/// Moves a block the shortest distance that clears its findings without causing others. `None` if moving can clear
/// nothing, or no such position was found.
pub fn make_room(job: &Resolved, block: BlockId) -> Option<Edit> {
    slide_clear(job, block, &|| false).map(|slide| slide.edit)
}

/// Like [`make_room`], with the distance and whether it is proved shortest. Pure: it may run on another thread; `stop`
/// ends it with `None`.
pub fn slide_clear(job: &Resolved, block: BlockId, stop: &dyn Fn() -> bool) -> Option<Slide> {
    let start = job.block(block)?;
    // Of two blocks the unlocked one has to move, so lock the others.
    let roof = Arc::new(assemble(job));
    let mut trial = near_job(job, start, &roof);
    for other in &mut trial.blocks {
        other.locked = other.id != block;
    }
    let mut search = Search { roof, trial, start, known: BTreeSet::new() };
    let first = search.judge(DVec2::ZERO)?;
    if first.in_the_way == 0 {
        return None;
    }
    search.known = first.keys.clone();
    if !first.waived {
        let slides = search.slides(stop);
        if stop() {
            return None;
        }
        // The shapes leave no position at all: no search would find one.
        let (least, others) = slides.split_first()?;
        let least = (*least)?;
        if search.is_clear(least)? {
            return Some(search.slide(least, true));
        }
        let mut others: Vec<DVec2> = others.iter().copied().flatten().collect();
        others.sort_by(|a, b| a.length().total_cmp(&b.length()));
        for by in others {
            if search.is_clear(by)? {
                return Some(search.slide(by, false));
            }
        }
    }
    search.by_steps(stop)
}

/// The job reduced to the blocks of one face, which is faster to check; the whole job if the other blocks change what
/// is required of this face.
fn near_job(job: &Resolved, start: &Block, roof: &Arc<Roof>) -> Resolved {
    let mut near = job.clone();
    near.blocks.retain(|block| block.face == start.face);
    let asked = |job: &Resolved| {
        let layout = Layout::on_roof(job, Arc::clone(roof));
        Share::of(job, array_share(&layout)).asked(job)
    };
    if asked(&near) == asked(job) { near } else { job.clone() }
}

struct Search<'a> {
    roof: Arc<Roof>,
    trial: Resolved,
    start: &'a Block,
    known: BTreeSet<FindingKey>,
}

/// The verdict of the rules on one position of the block.
struct Judged {
    /// Findings of the block that a move may clear.
    in_the_way: usize,
    /// Open stops and cautions of the whole job.
    keys: BTreeSet<FindingKey>,
    /// Whether a finding of the block is waived: its obstacle may stay in the way.
    waived: bool,
}

impl Search<'_> {
    /// The shortest slide past all obstacles that have a shape: first without reserving a pathway, then with each
    /// pathway that could be reserved.
    fn slides(&self, stop: &dyn Fn() -> bool) -> Vec<Option<DVec2>> {
        let layout = Layout::on_roof(&self.trial, Arc::clone(&self.roof));
        let Some((index, _)) = layout.face(self.start.face) else { return Vec::new() };
        let Some(placed) = layout.blocks.iter().find(|block| block.id == self.start.id) else {
            return Vec::new();
        };
        let parts = parts(placed);
        let share = Share::of(&self.trial, array_share(&layout));
        let strips = path_strips(&self.trial, &layout, index);
        let paths = std::iter::once(Vec::new()).chain(strips.into_iter().map(|strip| vec![strip]));
        paths
            .map(|kept| {
                let fire = Fire { share, beyond: false, kept };
                let room = room(&self.trial, &layout, index, &|id| id != self.start.id, &fire);
                least_slide(&room.allowed, &parts, stop).ok().flatten()
            })
            .collect()
    }

    /// The nearest position found by a sequence of moves.
    fn by_steps(&self, stop: &dyn Fn() -> bool) -> Option<Slide> {
        let (ground, body) = self.ground()?;
        let mut seen: BTreeSet<(i64, i64)> = BTreeSet::from([(0, 0)]);
        let mut open: Vec<(usize, DVec2)> = Vec::new();
        let mut here = (0, DVec2::ZERO);
        for _ in 0..MOST_PLACES {
            if stop() {
                break;
            }
            let (moves, by) = &here;
            if *moves < MOST_MOVES {
                for next in ground.ways_past_each(&body.at(*by)).into_iter().map(|step| *by + step) {
                    let rounded = (next * 1e6).round();
                    if seen.insert((rounded.x as i64, rounded.y as i64)) {
                        open.push((moves + 1, next));
                    }
                }
            }
            let nearest =
                (0..open.len()).min_by(|&a, &b| open[a].1.length().total_cmp(&open[b].1.length()))?;
            let (moves, by) = open.swap_remove(nearest);
            let judged = self.judge(by)?;
            if self.clear(&judged) {
                return Some(self.slide(by, false));
            }
            here = (moves, by);
        }
        None
    }

    /// The limits on the face, and the block at its initial position.
    fn ground(&self) -> Option<(Ground, Body)> {
        let layout = Layout::on_roof(&self.trial, Arc::clone(&self.roof));
        let placed = layout.block(self.start.id)?;
        let ground = Ground::of(&self.trial, &layout, placed.face, |id| id != self.start.id, Vec::new())?;
        Some((ground, Body::of(&rows_of(placed, |_| true))?))
    }

    fn clear(&self, judged: &Judged) -> bool {
        judged.in_the_way == 0 && judged.keys.is_subset(&self.known)
    }

    fn is_clear(&self, by: DVec2) -> Option<bool> {
        self.judge(by).map(|judged| self.clear(&judged))
    }

    fn slide(&self, by: DVec2, proved: bool) -> Slide {
        Slide { edit: Edit::PutBlock(self.moved(by, self.start.locked)), by, proved }
    }

    fn moved(&self, by: DVec2, locked: bool) -> Block {
        Block { at: self.start.at + by, locked, ..self.start.clone() }
    }

    fn judge(&self, by: DVec2) -> Option<Judged> {
        let moved = self.moved(by, false);
        let job = apply(&self.trial, &Edit::PutBlock(moved.clone())).ok()?;
        let layout = Layout::on_roof(&job, Arc::clone(&self.roof));
        let findings = chalkcourse_rules::check(&job, &layout);
        let weighs = |f: &&Finding| f.waived.is_none() && f.severity != Severity::Note;
        let mut judged = Judged { in_the_way: 0, keys: BTreeSet::new(), waived: false };
        judged.waived = findings.iter().any(|f| f.waived.is_some() && f.place.block == Some(moved.id));
        for finding in findings.iter().filter(weighs) {
            judged.keys.insert(finding.key.clone());
            if finding.place.block != Some(moved.id) {
                continue;
            }
            judged.in_the_way += usize::from(is_about_place(finding));
        }
        Some(judged)
    }
}

/// A block as few rectangles: its contiguous rows, merged where they are flush. The reveals belong to it.
fn parts(placed: &PlacedBlock) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    for (row, rect) in placed.stretches() {
        let below = parts.iter_mut().map(|part| &mut part.rect).find(|below| {
            let flush = |a: f64, b: f64| (a - b).abs() < 1e-9;
            flush(below.min.x, rect.min.x)
                && flush(below.max.x, rect.max.x)
                && flush(below.max.y + placed.reveal, rect.min.y)
        });
        match below {
            Some(below) => below.max.y = rect.max.y,
            None => parts.push(Part { rect, lowest: row == 0 }),
        }
    }
    parts
}

/// Whether a finding is about the position of a block as a whole.
fn is_about_place(finding: &Finding) -> bool {
    match finding.facts {
        Facts::RailTooLong | Facts::OverlapWithin { .. } | Facts::FirePlanePath { .. } => false,
        Facts::RailAmongCourses { .. } => true,
        _ => LIMITS.iter().any(|limit| limit.code == finding.rule),
    }
}
