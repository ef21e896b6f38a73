//! Incremental checking: rules run again only for what changed.
//!
//! A [`Checker`] caches what each rule found for each face, block and penetration, together with everything that the view of such
//! a run can read: the face as placed in the roof, its penetrations, its blocks. While none of that changes, the rule is not run
//! again. [`check`](crate::check) is a checker with an empty cache, so there is only one code path.

use crate::finding::Finding;
use crate::registry::RULES;
use crate::rule::{Rule, Run};
use crate::view::{BesideView, Beyond, KeptOff, PenetrationView, Planes, Snapshot};
use crate::waivers;
use crate::way;
use crate::wind::Conditions;
use chalkcourse_geometry::{Roof, RoofFace, Units};
use chalkcourse_job::{
    Block, BlockId, Face, FaceId, Kit, Penetration, PenetrationId, Resolved, RuleBook, Site,
};
use chalkcourse_layout::{Layout, PlacedFace, PlacedPenetration};
use chalkcourse_wiring::Wires;
use std::collections::HashMap;
use std::sync::Arc;

/// The subject of a rule run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Unit {
    /// The whole job, or the roof as drawn.
    Whole,
    /// One face.
    Face(FaceId),
    /// One block.
    Block(BlockId),
    /// One penetration.
    Penetration(PenetrationId),
}

/// One run of one rule, recorded so that tests can see what an edit invalidates.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct RuleRun {
    /// The code of the rule.
    pub rule: &'static str,
    /// Its subject.
    pub on: Unit,
}

/// [`check`](crate::check) with a cache of the last job.
#[derive(Debug, Default)]
pub struct Checker {
    kept: Option<Kept>,
    /// Last version number given out: everything that changes gets a new one.
    last: u64,
    runs: Vec<RuleRun>,
}

/// Cached findings of a rule for one subject, with the extra input of the run.
type Found = Option<(ExtraInput, Vec<Finding>)>;

/// Input of a run besides its subject.
#[derive(Clone, Debug, PartialEq)]
enum ExtraInput {
    Nothing,
    KeptOff(KeptOff),
    KeptOffAndShare(KeptOff, f64),
    Wind(Conditions),
    /// Versions of the adjacent faces.
    Beside(Vec<u64>),
}

#[derive(Debug)]
struct Kept {
    kit: Arc<Kit>,
    book: Arc<RuleBook>,
    units: Units,
    site: Site,
    roof: Arc<Roof>,
    /// Version of the faces as drawn and how they meet.
    drawn: u64,
    drawn_found: Vec<Found>,
    faces: Vec<KeptFace>,
    blocks: HashMap<BlockId, KeptBlock>,
    penetrations: HashMap<PenetrationId, KeptPenetration>,
}

#[derive(Debug)]
struct KeptFace {
    face: Face,
    placed: PlacedFace,
    through: Vec<(Penetration, Arc<PlacedPenetration>)>,
    /// Version of the face and its penetrations.
    ground: u64,
    ground_found: Vec<Found>,
    /// The blocks on it, with their versions.
    blocks: Vec<(BlockId, u64)>,
    /// Version of the face, its penetrations and its blocks.
    number: u64,
    found: Vec<Found>,
    /// Keep-outs by rule, each made on first use; and what they depend on beyond the face.
    kept_off: Vec<Option<KeptOff>>,
    beyond: Option<Beyond>,
    /// Its pathways, and the versions of the adjacent planes they were found with.
    planes: Option<(Vec<u64>, Planes)>,
}

#[derive(Debug)]
struct KeptBlock {
    block: Block,
    ground: u64,
    number: u64,
    found: Vec<Found>,
}

#[derive(Debug)]
struct KeptPenetration {
    penetration: Penetration,
    placed: Arc<PlacedPenetration>,
    drawn: u64,
    found: Vec<Found>,
}

/// Whether a penetration is placed as before: nearly always the very same.
fn is_as_placed(before: &Arc<PlacedPenetration>, now: &Arc<PlacedPenetration>) -> bool {
    Arc::ptr_eq(before, now) || before == now
}

fn nothing_found() -> Vec<Found> {
    vec![None; RULES.len()]
}

impl Checker {
    /// The same findings as from [`check`](crate::check).
    pub fn check(&mut self, job: &Resolved, layout: &Layout) -> Vec<Finding> {
        self.check_in(job, layout, Snapshot::of(job, layout))
    }

    /// The same, where the circuits are wired already.
    pub fn check_wired(&mut self, job: &Resolved, layout: &Layout, wires: &Wires) -> Vec<Finding> {
        self.check_in(job, layout, Snapshot::of(job, layout).wired(wires))
    }

    fn check_in(&mut self, job: &Resolved, layout: &Layout, mut snapshot: Snapshot<'_>) -> Vec<Finding> {
        self.runs.clear();
        let mut kept =
            self.kept.take().filter(|kept| kept.is_for(job)).unwrap_or_else(|| Kept::of(job, layout));
        self.renew(&mut kept, job, layout, &snapshot);
        let numbers: Vec<u64> = kept.faces.iter().map(|face| face.number).collect();
        let beside: Vec<Vec<u64>> = layout
            .roof
            .faces
            .iter()
            .enumerate()
            .map(|(index, face)| numbers_beside(&numbers, index, face))
            .collect();
        for ((face, beside), there) in kept.faces.iter_mut().zip(&beside).zip(snapshot.planes_mut()) {
            if let Some((with, planes)) = face.planes.take()
                && with == *beside
            {
                *there = planes;
            }
        }
        let mut findings = Vec::new();
        for (at, rule) in RULES.iter().enumerate().filter(|(_, rule)| rule.why_not(job).is_none()) {
            self.run(&mut kept, &snapshot, &beside, at, rule, &mut findings);
        }
        for ((face, beside), planes) in
            kept.faces.iter_mut().zip(beside).zip(std::mem::take(snapshot.planes_mut()))
        {
            face.planes = Some((beside, planes));
        }
        self.kept = Some(kept);
        waivers::settle(job, &mut findings);
        findings.sort_by_key(|finding| finding.severity);
        findings
    }

    /// The runs of the last check, in order.
    pub fn runs(&self) -> &[RuleRun] {
        &self.runs
    }

    fn next(&mut self) -> u64 {
        self.last += 1;
        self.last
    }

    /// Gives a new version to whatever changed, and drops its cached findings.
    fn renew(&mut self, kept: &mut Kept, job: &Resolved, layout: &Layout, snapshot: &Snapshot<'_>) {
        let same_roof = Arc::ptr_eq(&kept.roof, &layout.roof);
        let mut redrawn = kept.faces.len() != job.faces.len()
            || !same_roof && kept.roof.problems != layout.roof.problems
            || kept.drawn == 0;
        kept.faces.truncate(job.faces.len());
        for (index, (face, placed)) in job.faces.iter().zip(&layout.faces).enumerate() {
            let through = snapshot.through(index);
            let on_roof = layout.roof.faces.get(index);
            if let Some(there) = kept.faces.get_mut(index) {
                let drawn = there.face == *face
                    && there.placed == *placed
                    && (same_roof || kept.roof.faces.get(index) == on_roof);
                let same_through = there.through.len() == through.len()
                    && there
                        .through
                        .iter()
                        .zip(through)
                        .all(|(a, b)| a.0 == *b.penetration && is_as_placed(&a.1, b.placed));
                redrawn |= !drawn;
                if drawn && same_through {
                    continue;
                }
            }
            let fresh = KeptFace {
                face: face.clone(),
                placed: placed.clone(),
                through: through.iter().map(|it| (it.penetration.clone(), Arc::clone(it.placed))).collect(),
                ground: self.next(),
                ground_found: nothing_found(),
                blocks: Vec::new(),
                number: 0,
                found: nothing_found(),
                kept_off: vec![None; RULES.len()],
                beyond: None,
                planes: None,
            };
            match kept.faces.get_mut(index) {
                Some(there) => *there = fresh,
                None => kept.faces.push(fresh),
            }
        }
        if redrawn {
            kept.drawn = self.next();
            kept.drawn_found = nothing_found();
        }
        kept.roof = Arc::clone(&layout.roof);
        for (there, on_roof) in kept.faces.iter_mut().zip(&layout.roof.faces) {
            let beyond = Some(snapshot.beyond(on_roof));
            if there.beyond != beyond {
                there.beyond = beyond;
                there.kept_off.fill(None);
            }
        }
        self.renew_blocks(kept, snapshot);
        self.renew_penetrations(kept, job, layout);
    }

    fn renew_blocks(&mut self, kept: &mut Kept, snapshot: &Snapshot<'_>) {
        let laid = snapshot.whole().laid();
        let mut on_face: Vec<Vec<(BlockId, u64)>> = vec![Vec::new(); kept.faces.len()];
        for laid in laid {
            let ground = kept.faces.get(laid.placed.face).map_or(0, |face| face.ground);
            let there = kept.blocks.get(&laid.block.id);
            let same = there.filter(|there| there.ground == ground && there.block == *laid.block);
            let number = match same {
                Some(there) => there.number,
                None => {
                    let number = self.next();
                    let fresh =
                        KeptBlock { block: laid.block.clone(), ground, number, found: nothing_found() };
                    kept.blocks.insert(laid.block.id, fresh);
                    number
                }
            };
            if let Some(list) = on_face.get_mut(laid.placed.face) {
                list.push((laid.block.id, number));
            }
        }
        if kept.blocks.len() > laid.len() {
            kept.blocks.retain(|id, _| laid.iter().any(|laid| laid.block.id == *id));
        }
        for (face, blocks) in kept.faces.iter_mut().zip(on_face) {
            if face.number == 0 || face.blocks != blocks {
                face.number = self.next();
                face.blocks = blocks;
                face.found = nothing_found();
            }
        }
    }

    fn renew_penetrations(&mut self, kept: &mut Kept, job: &Resolved, layout: &Layout) {
        let drawn = kept.drawn;
        for (penetration, placed) in job.penetrations.iter().zip(&layout.penetrations) {
            let same = kept.penetrations.get(&placed.id).is_some_and(|there| {
                there.drawn == drawn
                    && there.penetration == *penetration
                    && is_as_placed(&there.placed, placed)
            });
            if !same {
                let (penetration, placed) = (penetration.clone(), Arc::clone(placed));
                let fresh = KeptPenetration { penetration, placed, drawn, found: nothing_found() };
                kept.penetrations.insert(fresh.placed.id, fresh);
            }
        }
        if kept.penetrations.len() > layout.penetrations.len() {
            let stays = |id: &PenetrationId| layout.penetrations.iter().any(|p| p.id == *id);
            kept.penetrations.retain(|id, _| stays(id));
        }
    }

    /// Runs a rule for every subject without a valid cache entry, and collects cached findings for the rest.
    fn run(
        &mut self,
        kept: &mut Kept,
        snapshot: &Snapshot<'_>,
        beside: &[Vec<u64>],
        at: usize,
        rule: &Rule,
        findings: &mut Vec<Finding>,
    ) {
        let mut once =
            |slot: Option<&mut Found>, on: Unit, also: ExtraInput, run: &mut dyn FnMut(&mut Vec<Finding>)| {
                let Some(slot) = slot else { return };
                if let Some((with, found)) = slot
                    && *with == also
                {
                    findings.extend(found.iter().cloned());
                    return;
                }
                self.runs.push(RuleRun { rule: rule.code, on });
                let mut found = Vec::new();
                run(&mut found);
                findings.extend(found.iter().cloned());
                *slot = Some((also, found));
            };
        match rule.run {
            Run::Whole(run) => {
                self.runs.push(RuleRun { rule: rule.code, on: Unit::Whole });
                run(snapshot.whole(), findings);
            }
            Run::Drawn(run) => {
                let slot = kept.drawn_found.get_mut(at);
                once(slot, Unit::Whole, ExtraInput::Nothing, &mut |found| run(snapshot.drawn(), found));
            }
            Run::Ground(run) => {
                for (index, face) in kept.faces.iter_mut().enumerate() {
                    let Some(view) = snapshot.ground(index) else { continue };
                    let slot = face.ground_found.get_mut(at);
                    once(slot, Unit::Face(view.on.id), ExtraInput::Nothing, &mut |found| run(view, found));
                }
            }
            Run::Face(run) => {
                for (index, face) in kept.faces.iter_mut().enumerate() {
                    let Some(view) = snapshot.face(index).filter(|view| view.face.sound) else { continue };
                    let slot = face.found.get_mut(at);
                    once(slot, Unit::Face(view.on.id), ExtraInput::Nothing, &mut |found| run(view, found));
                }
            }
            Run::Beside(run) => {
                for ((index, face), beside) in kept.faces.iter_mut().enumerate().zip(beside) {
                    let Some(own) = snapshot.face(index).filter(|view| view.face.sound) else { continue };
                    let (slot, also) = (face.found.get_mut(at), ExtraInput::Beside(beside.clone()));
                    once(slot, Unit::Face(own.on.id), also, &mut |found| run(BesideView { own }, found));
                }
            }
            Run::Block(run) => {
                for view in snapshot.blocks() {
                    let (slot, on) = kept.block(view.laid.block.id, at);
                    once(slot, on, ExtraInput::Nothing, &mut |found| run(view, found));
                }
            }
            Run::KeptOff(run) => {
                for view in snapshot.blocks() {
                    let kept_off = kept.kept_off(snapshot, rule, at, view.laid.placed.face);
                    let (slot, on) = kept.block(view.laid.block.id, at);
                    once(slot, on, ExtraInput::KeptOff(kept_off.clone()), &mut |found| {
                        run(view, &kept_off.0, found);
                    });
                }
            }
            Run::KeptOffAndShare(run) => {
                for view in snapshot.blocks() {
                    let kept_off = kept.kept_off(snapshot, rule, at, view.laid.placed.face);
                    let ((slot, on), share) = (kept.block(view.laid.block.id, at), snapshot.share());
                    let also = ExtraInput::KeptOffAndShare(kept_off.clone(), share);
                    once(slot, on, also, &mut |found| run(view, &kept_off.0, share, found));
                }
            }
            Run::BlockInWind(run) => {
                let Some(wind) = snapshot.wind() else { return };
                for view in snapshot.blocks() {
                    let (slot, on) = kept.block(view.laid.block.id, at);
                    once(slot, on, ExtraInput::Wind(wind.clone()), &mut |found| run(view, wind, found));
                }
            }
            Run::Penetration(run) => {
                for penetration in &snapshot.whole().layout().penetrations {
                    let kept = kept.penetrations.get_mut(&penetration.id);
                    let (slot, on) =
                        (kept.and_then(|kept| kept.found.get_mut(at)), Unit::Penetration(penetration.id));
                    let view = PenetrationView { drawn: snapshot.drawn(), penetration };
                    once(slot, on, ExtraInput::Nothing, &mut |found| run(view, found));
                }
            }
        }
    }
}

/// The version of a face, then those of the adjacent faces: what its pathways depend on.
fn numbers_beside(numbers: &[u64], index: usize, face: &RoofFace) -> Vec<u64> {
    let number = |index: usize| numbers.get(index).copied().unwrap_or_default();
    std::iter::once(index).chain(way::beside(face)).map(number).collect()
}

impl Kept {
    fn of(job: &Resolved, layout: &Layout) -> Self {
        Self {
            kit: Arc::clone(&job.kit),
            book: Arc::clone(&job.rule_book),
            units: job.units,
            site: job.site.clone(),
            roof: Arc::clone(&layout.roof),
            drawn: 0,
            drawn_found: nothing_found(),
            faces: Vec::new(),
            blocks: HashMap::new(),
            penetrations: HashMap::new(),
        }
    }

    /// The cache entry of a rule for a block.
    fn block(&mut self, id: BlockId, rule: usize) -> (Option<&mut Found>, Unit) {
        (self.blocks.get_mut(&id).and_then(|block| block.found.get_mut(rule)), Unit::Block(id))
    }

    /// The keep-outs of a rule's limit on a face, made once for all blocks there and kept until what they depend on changes.
    fn kept_off(&mut self, snapshot: &Snapshot<'_>, rule: &Rule, at: usize, face: usize) -> KeptOff {
        let slot = self.faces.get_mut(face).and_then(|face| face.kept_off.get_mut(at));
        let make = || snapshot.kept_off(rule.code, face);
        slot.map_or_else(make, |slot| slot.get_or_insert_with(make).clone())
    }

    /// Whether the inputs of every rule are unchanged.
    fn is_for(&self, job: &Resolved) -> bool {
        self.units == job.units
            && (Arc::ptr_eq(&self.kit, &job.kit) || self.kit == job.kit)
            && (Arc::ptr_eq(&self.book, &job.rule_book) || self.book == job.rule_book)
            && self.site == job.site
    }
}
