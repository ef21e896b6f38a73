//! Converts found pieces to blocks of a job.

use super::rows::Piece;
use chalkcourse_geometry::{Length, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, FaceId, Kit, Orientation, Resolved, RowShift};
use std::collections::BTreeSet;

/// The job with these blocks on a face in place of its unlocked ones.
pub(super) fn with_pieces(job: &Resolved, face: FaceId, pieces: &[Piece]) -> Resolved {
    let mut job = job.clone();
    job.blocks.retain(|block| block.face != face || block.locked);
    for piece in pieces {
        let id = BlockId(job.next_id);
        job.next_id += 1;
        let block = block(&job.kit, id, face, piece);
        job.blocks.extend(block);
    }
    job
}

fn block(kit: &Kit, id: BlockId, face: FaceId, piece: &Piece) -> Option<Block> {
    let left = piece.rows.iter().flatten().copied().reduce(f64::min)?;
    let (long, short) = (kit.module.length.metres(), kit.module.width.metres());
    let wide = if piece.orientation == Orientation::Landscape { long } else { short };
    let apart = wide + piece.reveal;
    let mut block = Block {
        id,
        name: format!("{id}"),
        face,
        at: dvec2(left, piece.foot),
        rows: piece.rows.len() as u32,
        columns: 1,
        orientation: piece.orientation,
        reveal: Length::from_metres(piece.reveal),
        shifts: Vec::new(),
        off: BTreeSet::new(),
        locked: false,
    };
    let mut cells: BTreeSet<Cell> = BTreeSet::new();
    for (row, starts) in (0u32..).zip(&piece.rows) {
        let Some(&first) = starts.first() else { continue };
        // The whole row is shifted by less than a module; gaps in it are whole places left out, plus the remainder as a
        // shift.
        let skip = ((first - left) / apart + 1e-9).floor().max(0.0);
        let mut shift = 0.0;
        let mut column = skip as u32;
        for (nth, &u) in starts.iter().enumerate() {
            let mut by = u - left - f64::from(column) * apart - shift;
            if nth > 0 && by > apart - 1e-9 {
                let places = (by / apart + 1e-9).floor();
                column += places as u32;
                by -= places * apart;
            }
            if by.abs() > 1e-9 {
                // Shift the row from its first place, so that its joints are measured against the row below.
                block.shifts.push(RowShift {
                    row,
                    from: if nth == 0 { 0 } else { column },
                    by: Length::from_metres(by),
                });
                shift += by;
            }
            cells.insert(Cell { row, column });
            column += 1;
        }
        block.columns = block.columns.max(column);
    }
    block.off = block.cells().filter(|cell| !cells.contains(cell)).collect();
    Some(block)
}
