//! Rules run again only for what changed.
//!
//! A [`Checker`] keeps what each rule found for each face, block and penetration, together with all that such a run
//! reads: the face as it stands in the roof, what comes through it, the blocks on it. Where none of that changed, the
//! rule is not run again. [`check`](crate::check) is a checker that remembers nothing, so there is one way through.

use crate::case::{Case, Laid, Planes};
use crate::finding::Finding;
use crate::registry::{RULES, Rule, Run};
use crate::waivers;
use chalkcourse_geometry::{Roof, Units};
use chalkcourse_job::{Block, BlockId, Face, FaceId, Job, Kit, Penetration, PenetrationId, RuleBook, Site};
use chalkcourse_layout::{Layout, PlacedFace, PlacedPenetration};
use std::collections::HashMap;
use std::sync::Arc;

/// What a rule was run for.
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

/// One run of one rule: for a test, and for who wonders what is worked out anew.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Ran {
    /// The rule.
    pub rule: &'static str,
    /// What it was run for.
    pub on: Unit,
}

/// [`check`](crate::check) with a memory of the last job.
#[derive(Debug, Default)]
pub struct Checker {
    kept: Option<Kept>,
    /// The number that was given out last: everything that changed has a new one.
    last: u64,
    ran: Vec<Ran>,
}

/// What one rule found for one thing, and what else it read.
type Found = Option<(Vec<u64>, Vec<Finding>)>;

#[derive(Debug)]
struct Kept {
    kit: Arc<Kit>,
    book: Arc<RuleBook>,
    units: Units,
    site: Site,
    roof: Arc<Roof>,
    /// Changes with the faces as drawn and how they meet.
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
    through: Vec<(Penetration, PlacedPenetration)>,
    /// Changes with the face and what comes through it.
    ground: u64,
    ground_found: Vec<Found>,
    /// The blocks on it, each with its number.
    blocks: Vec<(BlockId, u64)>,
    /// Changes with the ground and the blocks.
    number: u64,
    found: Vec<Found>,
    /// Its pathways, and the numbers of the planes beside it with which they were found.
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
    placed: PlacedPenetration,
    drawn: u64,
    found: Vec<Found>,
}

fn nothing_found() -> Vec<Found> {
    vec![None; RULES.len()]
}

impl Checker {
    /// The same findings as [`check`](crate::check) gives.
    pub fn check(&mut self, job: &Job, layout: &Layout) -> Vec<Finding> {
        self.ran.clear();
        let mut case = Case::of(job, layout);
        let mut kept =
            self.kept.take().filter(|kept| kept.is_for(job)).unwrap_or_else(|| Kept::of(job, layout));
        self.renew(&mut kept, &case);
        case.numbers = kept.faces.iter().map(|face| face.number).collect();
        for (index, face) in kept.faces.iter_mut().enumerate() {
            let beside = case.numbers_beside(index);
            if let Some((with, planes)) = face.planes.take()
                && with == beside
                && let Some(there) = case.planes.get_mut(index)
            {
                *there = planes;
            }
        }
        let mut findings = Vec::new();
        for (at, rule) in RULES.iter().enumerate().filter(|(_, rule)| rule.why_not(job).is_none()) {
            self.run(&mut kept, &case, at, rule, &mut findings);
        }
        for (index, planes) in std::mem::take(&mut case.planes).into_iter().enumerate() {
            let beside = case.numbers_beside(index);
            if let Some(face) = kept.faces.get_mut(index) {
                face.planes = Some((beside, planes));
            }
        }
        self.kept = Some(kept);
        waivers::settle(job, &mut findings);
        findings.sort_by_key(|finding| finding.severity);
        findings
    }

    /// What the last check ran, in its order.
    pub fn ran(&self) -> &[Ran] {
        &self.ran
    }

    fn next(&mut self) -> u64 {
        self.last += 1;
        self.last
    }

    /// Gives a new number to whatever changed, and forgets what was found for it.
    fn renew(&mut self, kept: &mut Kept, case: &Case<'_>) {
        let (job, layout) = (case.job, case.layout);
        let same_roof = Arc::ptr_eq(&kept.roof, &layout.roof);
        let mut redrawn = kept.faces.len() != job.faces.len()
            || !same_roof && kept.roof.problems != layout.roof.problems
            || kept.drawn == 0;
        let mut through: Vec<Vec<(&Penetration, &PlacedPenetration)>> = vec![Vec::new(); job.faces.len()];
        for (penetration, placed) in job.penetrations.iter().zip(&layout.penetrations) {
            for on in &placed.on {
                if let Some(list) = through.get_mut(on.face) {
                    list.push((penetration, placed));
                }
            }
        }
        kept.faces.truncate(job.faces.len());
        for (index, (face, placed)) in job.faces.iter().zip(&layout.faces).enumerate() {
            let through = through.get(index).map(Vec::as_slice).unwrap_or_default();
            let on_roof = layout.roof.faces.get(index);
            if let Some(there) = kept.faces.get_mut(index) {
                let drawn = there.face == *face
                    && there.placed == *placed
                    && (same_roof || kept.roof.faces.get(index) == on_roof);
                let same_through = there.through.len() == through.len()
                    && there.through.iter().zip(through).all(|(a, b)| a.0 == *b.0 && a.1 == *b.1);
                redrawn |= !drawn;
                if drawn && same_through {
                    continue;
                }
            }
            let fresh = KeptFace {
                face: face.clone(),
                placed: placed.clone(),
                through: through.iter().map(|&(a, b)| (a.clone(), b.clone())).collect(),
                ground: self.next(),
                ground_found: nothing_found(),
                blocks: Vec::new(),
                number: 0,
                found: nothing_found(),
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
        self.renew_blocks(kept, case);
        self.renew_penetrations(kept, case);
    }

    fn renew_blocks(&mut self, kept: &mut Kept, case: &Case<'_>) {
        for laid in &case.blocks {
            let ground = kept.faces.get(laid.placed.face).map_or(0, |face| face.ground);
            let there = kept.blocks.get(&laid.block.id);
            if there.is_some_and(|there| there.ground == ground && there.block == *laid.block) {
                continue;
            }
            let number = self.next();
            let fresh = KeptBlock { block: laid.block.clone(), ground, number, found: nothing_found() };
            kept.blocks.insert(laid.block.id, fresh);
        }
        if kept.blocks.len() > case.blocks.len() {
            kept.blocks.retain(|id, _| case.blocks.iter().any(|laid| laid.block.id == *id));
        }
        for (index, on) in case.on_face.iter().enumerate() {
            let ids = on.iter().filter_map(|&at| case.blocks.get(at)).map(|laid| laid.block.id);
            let blocks: Vec<(BlockId, u64)> =
                ids.map(|id| (id, kept.blocks.get(&id).map_or(0, |block| block.number))).collect();
            let Some(face) = kept.faces.get_mut(index) else { continue };
            if face.number == 0 || face.blocks != blocks {
                face.number = self.next();
                face.blocks = blocks;
                face.found = nothing_found();
            }
        }
    }

    fn renew_penetrations(&mut self, kept: &mut Kept, case: &Case<'_>) {
        let drawn = kept.drawn;
        for (penetration, placed) in case.job.penetrations.iter().zip(&case.layout.penetrations) {
            let same = kept.penetrations.get(&placed.id).is_some_and(|there| {
                there.drawn == drawn && there.penetration == *penetration && there.placed == *placed
            });
            if !same {
                let (penetration, placed) = (penetration.clone(), placed.clone());
                let fresh = KeptPenetration { penetration, placed, drawn, found: nothing_found() };
                kept.penetrations.insert(fresh.placed.id, fresh);
            }
        }
        if kept.penetrations.len() > case.layout.penetrations.len() {
            let stays = |id: &PenetrationId| case.layout.penetrations.iter().any(|p| p.id == *id);
            kept.penetrations.retain(|id, _| stays(id));
        }
    }

    /// Runs a rule for all that it has not been run for, and hands out what it found for the rest.
    fn run(&mut self, kept: &mut Kept, case: &Case<'_>, at: usize, rule: &Rule, findings: &mut Vec<Finding>) {
        let mut once =
            |slot: &mut Found, on: Unit, also: Vec<u64>, run: &mut dyn FnMut(&mut Vec<Finding>)| {
                if let Some((with, found)) = slot
                    && *with == also
                {
                    findings.extend(found.iter().cloned());
                    return;
                }
                self.ran.push(Ran { rule: rule.code, on });
                let mut found = Vec::new();
                run(&mut found);
                findings.extend(found.iter().cloned());
                *slot = Some((also, found));
            };
        match rule.run {
            Run::Whole(run) => {
                self.ran.push(Ran { rule: rule.code, on: Unit::Whole });
                run(case, findings);
            }
            Run::Drawn(run) => {
                if let Some(slot) = kept.drawn_found.get_mut(at) {
                    once(slot, Unit::Whole, Vec::new(), &mut |found| run(case, found));
                }
            }
            Run::Ground(run) => each_face(kept, case, |index, id, face| {
                if let Some(slot) = face.ground_found.get_mut(at) {
                    once(slot, Unit::Face(id), Vec::new(), &mut |found| run(case, index, found));
                }
            }),
            Run::Face(run, also) => each_face(kept, case, |index, id, face| {
                if let Some(slot) = face.found.get_mut(at) {
                    once(slot, Unit::Face(id), also(case, index), &mut |found| run(case, index, found));
                }
            }),
            Run::Block(run, also) => {
                for laid in &case.blocks {
                    let slot = kept.blocks.get_mut(&laid.block.id).and_then(|block| block.found.get_mut(at));
                    let Some(slot) = slot else { continue };
                    let on = Unit::Block(laid.block.id);
                    once(slot, on, also(case, laid), &mut |found| run(case, laid, found));
                }
            }
            Run::Penetration(run) => {
                for placed in &case.layout.penetrations {
                    let slot = kept.penetrations.get_mut(&placed.id).and_then(|kept| kept.found.get_mut(at));
                    let Some(slot) = slot else { continue };
                    let on = Unit::Penetration(placed.id);
                    once(slot, on, Vec::new(), &mut |found| run(case, placed, found));
                }
            }
        }
    }
}

/// Each sound face.
fn each_face(kept: &mut Kept, case: &Case<'_>, mut each: impl FnMut(usize, FaceId, &mut KeptFace)) {
    for (index, face) in kept.faces.iter_mut().enumerate() {
        let sound = case.layout.roof.faces.get(index).is_some_and(|face| face.sound);
        if let Some(id) = case.face_id(index).filter(|_| sound) {
            each(index, id, face);
        }
    }
}

impl Kept {
    fn of(job: &Job, layout: &Layout) -> Self {
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

    /// Whether what every rule reads is as it was.
    fn is_for(&self, job: &Job) -> bool {
        self.units == job.units
            && (Arc::ptr_eq(&self.kit, &job.kit) || self.kit == job.kit)
            && (Arc::ptr_eq(&self.book, &job.rule_book) || self.book == job.rule_book)
            && self.site == job.site
    }
}

/// Nothing but the thing itself.
pub(crate) fn alone(_: &Case<'_>, _: &Laid<'_>) -> Vec<u64> {
    Vec::new()
}

/// Nothing but the face, what comes through it, and its blocks.
pub(crate) fn itself(_: &Case<'_>, _: usize) -> Vec<u64> {
    Vec::new()
}
