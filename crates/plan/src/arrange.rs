//! Commands on blocks: make room, copy, mirror, split, join, align. Each returns the edit, or `None` if the job has no
//! way to do it.

mod line;
mod make_room;
#[cfg(test)]
mod tests;

pub use line::{Align, Spread, align, distribute};
pub use make_room::{Slide, make_room, slide_clear};

use crate::fill::block_of;
use chalkcourse_geometry::fit::{Placed, Tile};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, Edit, FaceId, Resolved, RowShift};
use chalkcourse_layout::Layout;
use std::collections::BTreeSet;

/// Half a millimetre: anything closer counts as flush. Well below the precision of cuts on a roof.
const FLUSH: f64 = 5e-4;

/// An unused name for a new block: A, B, … Z, then A1 and so on.
pub fn new_block_name(job: &Resolved) -> String {
    Block::free_name(|name| job.blocks.iter().any(|block| block.name == name))
}

/// A new block copied from another one.
fn fresh(job: &Resolved, like: &Block) -> Block {
    Block { id: BlockId(job.next_id), name: new_block_name(job), locked: false, ..like.clone() }
}

/// Copies a block to another face, at the same distance from its left end and its lowest point. The copy gets the id
/// [`next_id`](chalkcourse_job::Job::next_id). `None` if a face has no sound outline or is the block's own.
pub fn copy_to_face(job: &Resolved, block: BlockId, face: FaceId) -> Option<Edit> {
    let block = job.block(block).filter(|block| block.face != face)?;
    let layout = Layout::of(job);
    let (_, from) = layout.face(block.face)?;
    let (_, to) = layout.face(face)?;
    let at = to.bounds.min + (block.at - from.bounds.min);
    (from.sound && to.sound).then(|| Edit::PutBlock(Block { face, at, ..fresh(job, block) }))
}

/// The face that shares the longest ridge with another one.
pub fn other_slope(layout: &Layout, face: FaceId) -> Option<FaceId> {
    ridge_of(layout, face).and_then(|(_, other)| layout.faces.get(other)).map(|face| face.id)
}

/// The longest ridge that a face shares: a point of it in plan, and the index of the face on the other side.
fn ridge_of(layout: &Layout, face: FaceId) -> Option<(DVec2, usize)> {
    let (_, on) = layout.face(face)?;
    let shared = on.edges.iter().filter(|edge| edge.kind == EdgeKind::Ridge).filter_map(|edge| {
        let other = edge.neighbour?.face;
        layout.roof.faces.get(other).filter(|face| face.sound).map(|_| (edge, other))
    });
    let (edge, other) = shared.max_by(|a, b| a.0.length.total_cmp(&b.0.length))?;
    Some((edge.plan.0, other))
}

/// Puts a mirror image of a block on the slope across the ridge: at the same position along the ridge and the same
/// distance below it. The image gets the id [`next_id`](chalkcourse_job::Job::next_id). `None` if no ridge is shared.
pub fn mirror(job: &Resolved, block: BlockId) -> Option<Edit> {
    let block = job.block(block)?;
    let layout = Layout::of(job);
    let (_, from) = layout.face(block.face)?;
    let (ridge, other) = ridge_of(&layout, block.face)?;
    let to = layout.roof.faces.get(other)?;
    let face = layout.faces.get(other)?.id;

    let spacing = block.spacing(&job.kit);
    let size = block.module_size(&job.kit);
    let columns = f64::from(block.columns.saturating_sub(1));
    let rows = f64::from(block.rows.saturating_sub(1));
    let whole = dvec2(columns, rows) * spacing + size;
    // A ridge is level, so its height up the slope is a single number on each face.
    let ridge_from = from.plane.to_frame(ridge).y;
    let ridge_to = to.plane.to_frame(ridge).y;
    let along = |u: f64| to.plane.to_frame(from.plane.to_plan(dvec2(u, ridge_from))).x;
    let (one, two) = (along(block.at.x), along(block.at.x + whole.x));
    let below = ridge_from - (block.at.y + whole.y);
    let at = dvec2(one.min(two), ridge_to - below - whole.y);

    let last = block.columns.saturating_sub(1);
    let mut shifts = Vec::new();
    for row in 0..block.rows {
        let mut so_far = 0.0;
        for from in 0..block.columns {
            let here = Cell { row, column: last - from };
            let aside = block.corner_of(here, &job.kit).x - block.at.x - spacing.x * f64::from(here.column);
            let by = -aside - so_far;
            if by.abs() > 1e-12 {
                shifts.push(RowShift { row, from, by: Length::from_metres(by) });
                so_far = -aside;
            }
        }
    }
    let off = block.off.iter().map(|cell| Cell { row: cell.row, column: last - cell.column }).collect();
    Some(Edit::PutBlock(Block { face, at, shifts, off, ..fresh(job, block) }))
}

/// Where to split a block.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cut {
    /// Above this many rows.
    AboveRows(u32),
    /// To the right of this many columns.
    RightOfColumns(u32),
}

/// Splits a block in two without moving any module. The lower or left part keeps its id, the other one gets
/// [`next_id`](chalkcourse_job::Job::next_id). `None` if either side would be empty.
pub fn split(job: &Resolved, block: BlockId, cut: Cut) -> Option<Edit> {
    let block = job.block(block)?;
    let spacing = block.spacing(&job.kit);
    let (kept, mut part) = match cut {
        Cut::AboveRows(rows) => {
            if rows == 0 || rows >= block.rows {
                return None;
            }
            let mut part = Block { rows: block.rows - rows, ..fresh(job, block) };
            part.at.y += spacing.y * f64::from(rows);
            part.shifts.retain(|shift| shift.row >= rows);
            part.shifts.iter_mut().for_each(|shift| shift.row -= rows);
            part.off = lowered(&block.off, rows, 0);
            (block.with_size(rows, block.columns), part)
        }
        Cut::RightOfColumns(columns) => {
            if columns == 0 || columns >= block.columns {
                return None;
            }
            let mut part = Block { columns: block.columns - columns, ..fresh(job, block) };
            part.at.x += spacing.x * f64::from(columns);
            // Shifts left of the cut also apply to the first module right of it.
            let carried: Vec<RowShift> = (0..block.rows)
                .filter_map(|row| {
                    let before = block.shifts.iter().filter(|s| s.row == row && s.from <= columns);
                    let by: f64 = before.map(|s| s.by.metres()).sum();
                    (by != 0.0).then(|| RowShift { row, from: 0, by: Length::from_metres(by) })
                })
                .collect();
            part.shifts.retain(|shift| shift.from > columns);
            part.shifts.iter_mut().for_each(|shift| shift.from -= columns);
            part.shifts.extend(carried);
            part.shifts.sort_by_key(|shift| (shift.row, shift.from));
            part.off = lowered(&block.off, 0, columns);
            (block.with_size(block.rows, columns), part)
        }
    };
    part.locked = block.locked;
    let some_left = kept.cells().next().is_some() && part.cells().next().is_some();
    some_left.then(|| Edit::Several(vec![Edit::PutBlock(kept), Edit::PutBlock(part)]))
}

/// Cells from a row and a column on, renumbered from there.
fn lowered(off: &BTreeSet<Cell>, rows: u32, columns: u32) -> BTreeSet<Cell> {
    off.iter()
        .filter_map(|cell| {
            Some(Cell { row: cell.row.checked_sub(rows)?, column: cell.column.checked_sub(columns)? })
        })
        .collect()
}

/// Joins two blocks that touch: on the same face, with the same orientation and reveal, and with aligned rows. The
/// first keeps its id and name. `None` if they are not flush.
pub fn join(job: &Resolved, block: BlockId, with: BlockId) -> Option<Edit> {
    let (one, two) = (job.block(block)?, job.block(with).filter(|_| block != with)?);
    let reveal = one.reveal.metres();
    let alike = one.face == two.face
        && one.orientation == two.orientation
        && (reveal - two.reveal.metres()).abs() < 1e-9;
    let (spacing, size) = (one.spacing(&job.kit), one.module_size(&job.kit));
    let steps = (two.at - one.at) / spacing;
    let rows = steps.y.round();
    if !alike || (steps.y - rows).abs() * spacing.y > FLUSH || rows.abs() > 1e6 {
        return None;
    }
    // Within half a millimetre, snap the second to the grid of the first.
    let snapped = |step: f64, spacing: f64| {
        if (step - step.round()).abs() * spacing <= FLUSH { step.round() } else { step }
    };
    let at = one.at + dvec2(snapped(steps.x, spacing.x), rows) * spacing;
    let moved = Block { at, ..two.clone() };
    let least = rows.min(0.0);
    let places = |block: &Block, first: f64| -> Vec<Placed> {
        let place = |cell: Cell| Placed {
            row: (first + f64::from(cell.row)) as usize,
            column: 0,
            rect: Rect::at(block.corner_of(cell, &job.kit), size),
        };
        block.cells().map(place).collect()
    };
    let (ones, twos) = (places(one, -least), places(&moved, rows - least));
    if !touch(&ones, &twos, reveal) {
        return None;
    }
    let placed: Vec<Placed> = ones.into_iter().chain(twos).collect();
    let tile = Tile { size, gap: DVec2::splat(reveal) };
    let whole = block_of(one, &tile, &placed)?;
    Some(Edit::Several(vec![Edit::RemoveBlock(with), Edit::PutBlock(whole)]))
}

/// Whether some modules of the two groups are adjacent and none overlap. Within a row the gap between them must be at
/// least a reveal.
fn touch(ones: &[Placed], twos: &[Placed], reveal: f64) -> bool {
    let mut neighbours = false;
    for one in ones {
        for two in twos.iter().filter(|two| two.row.abs_diff(one.row) <= 1) {
            let beside = -one.rect.overlap(&two.rect).x;
            if one.row == two.row {
                if beside < reveal - FLUSH {
                    return false;
                }
                neighbours |= beside <= reveal + FLUSH;
            } else {
                neighbours |= beside < -FLUSH;
            }
        }
    }
    neighbours
}

/// Bounds of the modules of a block, in the frame of its face.
fn bounds(job: &Resolved, block: &Block) -> Option<Rect> {
    let size = block.module_size(&job.kit);
    Rect::around(block.cells().flat_map(|cell| {
        let low = block.corner_of(cell, &job.kit);
        [low, low + size]
    }))
}
