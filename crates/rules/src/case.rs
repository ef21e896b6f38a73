//! What every rule reads: the job, its layout, and its blocks sorted by face.

use crate::fire::opening::Opening;
use crate::fire::pathway::{self, Pathway};
use crate::wind::Conditions;
use chalkcourse_geometry::{Rect, RoofFace, Units};
use chalkcourse_job::{Block, BlockId, FaceId, Job, RuleBook};
use chalkcourse_layout::{Layout, OnFace, PlacedBlock, PlacedFace, PlacedPenetration};
use chalkcourse_words::{pick, tell};
use std::cell::OnceCell;
use std::collections::HashMap;

/// A snapshot for the rules.
pub(crate) struct Case<'a> {
    pub(crate) job: &'a Job,
    pub(crate) layout: &'a Layout,
    pub(crate) book: &'a RuleBook,
    pub(crate) units: Units,
    /// Blocks with modules that stand on a sound face, in the order of the job.
    pub(crate) blocks: Vec<Laid<'a>>,
    /// For each face the indices of its blocks in `blocks`.
    pub(crate) on_face: Vec<Vec<usize>>,
    /// For each face what comes through it: the index of the penetration, and its outline there.
    pub(crate) through: Vec<Vec<(usize, &'a OnFace)>>,
    /// For each face the pathways on it and beside it, once somebody asked.
    pub(crate) planes: Vec<Planes>,
    /// For each face a number that changes with it and with what lies on it; empty where nothing is remembered.
    pub(crate) numbers: Vec<u64>,
    /// The share of the plan roof area that the array covers, once somebody asked.
    pub(crate) share: OnceCell<f64>,
    wind: OnceCell<Option<Conditions>>,
}

/// What was found out about the pathways of one plane.
#[derive(Debug, Default)]
pub(crate) struct Planes {
    /// On it alone.
    pub(crate) alone: OnceCell<Vec<Pathway>>,
    /// Over it and a plane beside it, one for each such plane.
    pub(crate) straddling: OnceCell<Vec<Pathway>>,
    /// Modules whose removal opens one, the least loss first.
    pub(crate) openings: OnceCell<Vec<Opening>>,
}

/// A block on a sound face.
pub(crate) struct Laid<'a> {
    pub(crate) block: &'a Block,
    pub(crate) placed: &'a PlacedBlock,
    pub(crate) face: &'a RoofFace,
    pub(crate) on: &'a PlacedFace,
    /// Bounds of its modules in the face's frame.
    pub(crate) bounds: Rect,
    /// Each row of modules without a break as one rectangle.
    pub(crate) rows: Vec<Rect>,
}

impl<'a> Case<'a> {
    pub(crate) fn of(job: &'a Job, layout: &'a Layout) -> Self {
        let by_id: HashMap<BlockId, &Block> = job.blocks.iter().map(|block| (block.id, block)).collect();
        let blocks: Vec<Laid<'a>> = layout
            .blocks
            .iter()
            .filter_map(|placed| {
                let face = layout.roof.faces.get(placed.face).filter(|face| face.sound)?;
                Some(Laid {
                    block: by_id.get(&placed.id)?,
                    placed,
                    face,
                    on: layout.faces.get(placed.face)?,
                    bounds: placed.bounds?,
                    rows: rows_of(placed),
                })
            })
            .collect();
        let mut on_face = vec![Vec::new(); layout.roof.faces.len()];
        for (index, laid) in blocks.iter().enumerate() {
            if let Some(list) = on_face.get_mut(laid.placed.face) {
                list.push(index);
            }
        }
        let mut through = vec![Vec::new(); layout.roof.faces.len()];
        for (index, penetration) in layout.penetrations.iter().enumerate() {
            for on in &penetration.on {
                if let Some(list) = through.get_mut(on.face) {
                    list.push((index, on));
                }
            }
        }
        Self {
            job,
            layout,
            book: &job.rule_book,
            units: job.units,
            planes: layout.roof.faces.iter().map(|_| Planes::default()).collect(),
            numbers: Vec::new(),
            share: OnceCell::new(),
            wind: OnceCell::new(),
            blocks,
            on_face,
            through,
        }
    }

    /// What comes through a face, with its outline there.
    pub(crate) fn through(&self, face: usize) -> impl Iterator<Item = (&'a PlacedPenetration, &'a OnFace)> {
        let list = self.through.get(face).map(Vec::as_slice).unwrap_or_default();
        list.iter().filter_map(|&(index, on)| Some((self.layout.penetrations.get(index)?, on)))
    }

    /// The blocks of a face.
    pub(crate) fn laid_on(&self, face: usize) -> impl Iterator<Item = &Laid<'a>> {
        let list = self.on_face.get(face).map(Vec::as_slice).unwrap_or_default();
        list.iter().filter_map(|&index| self.blocks.get(index))
    }

    /// The numbers of the planes beside a face, with that of the face first: what its pathways follow from.
    pub(crate) fn numbers_beside(&self, face: usize) -> Vec<u64> {
        let number = |index: usize| self.numbers.get(index).copied().unwrap_or_default();
        let beside = self.layout.roof.faces.get(face).into_iter().flat_map(pathway::beside);
        std::iter::once(face).chain(beside).map(number).collect()
    }

    /// The plan area of the array by that of the whole roof.
    pub(crate) fn share(&self) -> f64 {
        *self.share.get_or_init(|| crate::array_share(self.layout))
    }

    /// What the wind on the roof follows from; `None` where the book or the site does not say enough.
    pub(crate) fn wind(&self) -> Option<&Conditions> {
        self.wind.get_or_init(|| Conditions::of(self.job, self.layout)).as_ref()
    }

    /// A penetration in the middle of a sentence: `the vent “Kitchen”`.
    pub(crate) fn penetration_name(&self, penetration: &PlacedPenetration) -> String {
        if penetration.name.trim().is_empty() {
            penetration.kind.with_article().to_owned()
        } else {
            format!("{} “{}”", penetration.kind.with_article(), penetration.name)
        }
    }

    /// `face South`, or its number when it has no name.
    pub(crate) fn face_name(&self, index: usize) -> String {
        match self.layout.faces.get(index) {
            Some(face) if !face.name.trim().is_empty() => tell!("face {}", "el faldón {}", face.name),
            Some(face) => tell!("face {}", "el faldón {}", face.id),
            None => pick("a face", "un faldón").to_owned(),
        }
    }

    pub(crate) fn face_id(&self, index: usize) -> Option<FaceId> {
        self.layout.faces.get(index).map(|face| face.id)
    }
}

fn rows_of(placed: &PlacedBlock) -> Vec<Rect> {
    let height = placed.modules.first().map_or(0.0, |module| module.rect.size().y);
    placed
        .strings
        .iter()
        .map(|run| Rect { min: run.from, max: run.to + chalkcourse_geometry::dvec2(0.0, height) })
        .collect()
}
