//! A new block, and resizing a block.

use crate::text;
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, FaceId, Orientation, Resolved, RowShift};
use std::collections::BTreeSet;

/// A block of the default size with its corner at a point of a face's frame.
pub(crate) fn new_block(job: &Resolved, face: FaceId, at: DVec2) -> Block {
    Block {
        id: BlockId(job.next_id),
        name: text::new_block_name(job),
        face,
        at,
        rows: 3,
        columns: 4,
        orientation: job.kit.orientations.first().copied().unwrap_or(Orientation::Landscape),
        reveal: job.kit.reveal.usual,
        shifts: Vec::new(),
        off: BTreeSet::new(),
        locked: false,
    }
}

/// Rows and columns to add at each side; negative numbers remove some.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Growth {
    pub(crate) left: i64,
    pub(crate) right: i64,
    pub(crate) bottom: i64,
    pub(crate) top: i64,
}

/// The block with rows and columns added at its sides. Remaining modules stay where they are.
pub(crate) fn grown(block: &Block, job: &Resolved, growth: Growth) -> Block {
    let size = |now: u32, first: i64, last: i64| {
        let now = i64::from(now);
        // At least one remains: the moving side stops there, the opposite one never moves.
        let first = first.clamp(1 - now, 1_000);
        (first, (now + first + last.clamp(1 - now, 1_000)).clamp(1, 1_000))
    };
    let (left, columns) = size(block.columns, growth.left, growth.right);
    let (bottom, rows) = size(block.rows, growth.bottom, growth.top);
    let spacing = block.spacing(&job.kit);
    let mut next = block.clone();
    (next.rows, next.columns) = (rows as u32, columns as u32);
    next.at -= spacing * dvec2(left as f64, bottom as f64);
    let moved = |at: u32, by: i64, most: i64| {
        let at = i64::from(at) + by;
        (0..most).contains(&at).then_some(at as u32)
    };
    next.off = block
        .off
        .iter()
        .filter_map(|c| {
            Some(Cell { row: moved(c.row, bottom, rows)?, column: moved(c.column, left, columns)? })
        })
        .collect();
    next.shifts.clear();
    for shift in &block.shifts {
        let Some(row) = moved(shift.row, bottom, rows) else { continue };
        // A shift of the whole row stays one; a gap stays before its module, or ends up at the end of the row.
        let from = if shift.from == 0 { 0 } else { (i64::from(shift.from) + left).max(0) };
        if from >= columns {
            continue;
        }
        let from = from as u32;
        match next.shifts.iter_mut().find(|s| (s.row, s.from) == (row, from)) {
            Some(there) => there.by += shift.by,
            None => next.shifts.push(RowShift { row, from, by: shift.by }),
        }
    }
    next
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;
    use chalkcourse_geometry::Length;

    #[test]
    fn resizing_keeps_modules_in_place() {
        let job = sample::alder_court().unwrap();
        let block =
            job.blocks[0].with_switched(Cell { row: 1, column: 2 }).with_shift(2, Length::from_inches(8.0));
        let there = block.corner_of(Cell { row: 1, column: 2 }, &job.kit);
        let larger = grown(&block, &job, Growth { left: 2, bottom: 1, ..Growth::default() });
        assert_eq!((larger.rows, larger.columns), (4, 6));
        let off: Vec<_> = larger.off.iter().copied().collect();
        assert_eq!(off, vec![Cell { row: 2, column: 4 }]);
        assert!(larger.corner_of(off[0], &job.kit).distance(there) < 1e-9);
        assert_eq!(larger.shift(3), Length::from_inches(8.0));
        let back = grown(&larger, &job, Growth { left: -2, bottom: -1, ..Growth::default() });
        assert!(back.at.distance(block.at) < 1e-9);
        assert_eq!((back.rows, back.columns, &back.off, &back.shifts), (3, 4, &block.off, &block.shifts));
    }

    #[test]
    fn one_module_stays() {
        let job = sample::alder_court().unwrap();
        for growth in [
            Growth { left: -9, bottom: -9, ..Growth::default() },
            Growth { right: i64::MIN, top: -500, ..Growth::default() },
        ] {
            let block = grown(&job.blocks[0], &job, growth);
            assert_eq!((block.rows, block.columns), (1, 1));
        }
    }

    #[test]
    fn a_gap_in_a_row_keeps_its_place_when_the_block_grows() {
        let job = sample::alder_court().unwrap();
        let mut block = job.blocks[0].clone();
        block.shifts = vec![RowShift { row: 1, from: 2, by: Length::from_metres(0.5) }];
        let at = |block: &Block, row, column| block.corner_of(Cell { row, column }, &job.kit);
        let growth = Growth { left: 1, ..Growth::default() };
        let wider = grown(&block, &job, growth);
        assert!(at(&wider, 1, 3).distance(at(&block, 1, 2)) < 1e-9);
        assert!(at(&wider, 1, 2).distance(at(&block, 1, 1)) < 1e-9);
        let narrower = grown(&block, &job, Growth { left: -2, ..Growth::default() });
        assert!(at(&narrower, 1, 0).distance(at(&block, 1, 2)) < 1e-9);
    }
}
