//! Aligning and distributing blocks.

use super::bounds;
use chalkcourse_geometry::dvec2;
use chalkcourse_job::{Block, BlockId, Edit, Resolved};

/// What to align.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// Their left ends.
    Left,
    /// Their right ends.
    Right,
    /// Their base rails.
    Bottom,
}

/// Moves a block along or up its face until it is aligned with another block. `None` if that is on another face, or
/// either has no modules.
pub fn align(job: &Resolved, block: BlockId, with: BlockId, to: Align) -> Option<Edit> {
    let (one, two) = (job.block(block)?, job.block(with).filter(|_| block != with)?);
    if one.face != two.face {
        return None;
    }
    let (here, there) = (bounds(job, one)?, bounds(job, two)?);
    let by = match to {
        Align::Left => dvec2(there.min.x - here.min.x, 0.0),
        Align::Right => dvec2(there.max.x - here.max.x, 0.0),
        Align::Bottom => dvec2(0.0, there.min.y - here.min.y),
    };
    Some(Edit::PutBlock(Block { at: one.at + by, ..one.clone() }))
}

/// The direction in which blocks are distributed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spread {
    /// Along the eave.
    Along,
    /// Up the slope.
    Up,
}

/// Moves the blocks between the first and the last one so that the gaps between neighbours are equal; those two stay.
/// Blocks are ordered by their centres. `None` for fewer than three blocks, blocks on different faces or without
/// modules, locked blocks that would have to move, or too little space between the outer ones.
pub fn distribute(job: &Resolved, blocks: &[BlockId], spread: Spread) -> Option<Edit> {
    let axis = match spread {
        Spread::Along => dvec2(1.0, 0.0),
        Spread::Up => dvec2(0.0, 1.0),
    };
    let mut order = Vec::new();
    for (at, id) in blocks.iter().enumerate() {
        if !blocks[..at].contains(id) {
            let block = job.block(*id)?;
            let bounds = bounds(job, block)?;
            order.push((block, bounds.min.dot(axis), bounds.max.dot(axis)));
        }
    }
    order.sort_by(|a, b| (a.1 + a.2).total_cmp(&(b.1 + b.2)));
    let (first, last) = (order.first()?, order.last()?);
    if order.len() < 3 || order.iter().any(|(block, ..)| block.face != first.0.face) {
        return None;
    }
    let between = order.get(1..order.len() - 1)?;
    let taken: f64 = between.iter().map(|(_, from, to)| to - from).sum();
    let gap = (last.1 - first.2 - taken) / (order.len() - 1) as f64;
    if gap < 0.0 {
        return None;
    }
    let mut next = first.2 + gap;
    let mut edits = Vec::new();
    for (block, from, to) in between {
        let by = next - from;
        next += to - from + gap;
        if by.abs() < 1e-9 {
            continue;
        }
        if block.locked {
            return None;
        }
        edits.push(Edit::PutBlock(Block { at: block.at + axis * by, ..(*block).clone() }));
    }
    (!edits.is_empty()).then_some(Edit::Several(edits))
}
