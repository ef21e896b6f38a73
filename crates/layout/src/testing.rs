//! A block for the tests.

use chalkcourse_geometry::{Length, dvec2};
use chalkcourse_job::{Block, BlockId, FaceId, Orientation};

/// Block 1 on face 1.
pub(crate) fn block(rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(1),
        name: "A".into(),
        face: FaceId(1),
        at: dvec2(1.0, 0.5),
        rows,
        columns,
        orientation: Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}
