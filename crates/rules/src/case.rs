//! What every rule reads: the job, its layout, and its blocks sorted by face.

use chalkcourse_geometry::{Rect, RoofFace, Units};
use chalkcourse_job::{Block, BlockId, FaceId, Job, RuleBook};
use chalkcourse_layout::{Layout, PlacedBlock, PlacedFace};
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
        Self { job, layout, book: &job.rule_book, units: job.units, blocks, on_face }
    }

    /// `face South`, or its number when it has no name.
    pub(crate) fn face_name(&self, index: usize) -> String {
        match self.layout.faces.get(index) {
            Some(face) if !face.name.trim().is_empty() => format!("face {}", face.name),
            Some(face) => format!("face {}", face.id),
            None => "a face".to_owned(),
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
