//! Small jobs to count by hand, also used by the tests of `telling`.

use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, Rect, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Courses, Face, FaceId, OrderChoices, Orientation, Resolved, RoofScope, RoofWork,
    builtin_kit, builtin_prices, builtin_rule_book,
};
use proptest::prelude::*;
use std::sync::Arc;

/// A face 60 ft long and 15 ft deep in plan at 6:12, with blocks on it. The reveal is 3 mm, so that a module and its
/// reveal are 1.725 × 1.137 m.
pub(crate) fn job(blocks: Vec<Block>) -> Resolved {
    job_on(60.0, 15.0, blocks)
}

/// A face large enough for the blocks and their flashing, with only the array on the order.
pub(crate) fn array_alone(block: Block) -> Resolved {
    let mut job = job_on(300.0, 150.0, vec![Block { at: block.at + dvec2(20.0, 12.5), ..block }]);
    let order = OrderChoices {
        roof: RoofWork { scope: RoofScope::ArrayOnly, ..RoofWork::default() },
        ..OrderChoices::default()
    };
    job.order = Arc::new(order);
    job
}

pub(crate) fn job_on(long: f64, deep: f64, blocks: Vec<Block>) -> Resolved {
    let mut job = Resolved::new("Test".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let (long, deep) = (Length::from_feet(long).metres(), Length::from_feet(deep).metres());
    let outline = Polygon::new(Rect::at(dvec2(0.0, 0.0), dvec2(long, deep)).corners().to_vec());
    let mut face = Face::new(
        FaceId(1),
        "South".into(),
        outline,
        Pitch::from_rise_in_12(6.0).unwrap(),
        Azimuth::from_degrees(180.0),
        Length::ZERO,
    );
    face.courses = Courses { exposure: Length::from_mm(125.0), first: Length::from_mm(125.0) };
    job.faces.push(face);
    job.blocks = blocks;
    job.next_id = 100;
    job
}

pub(crate) fn block(rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(2),
        name: "A".into(),
        face: FaceId(1),
        at: dvec2(2.0, 0.5),
        rows,
        columns,
        orientation: Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

pub(crate) fn without(rows: u32, columns: u32, off: &[(u32, u32)]) -> Block {
    off.iter().fold(block(rows, columns), |block, &(row, column)| block.with_switched(Cell { row, column }))
}

pub(crate) fn any_block() -> impl Strategy<Value = Block> {
    let cells = proptest::collection::btree_set((0u32..5, 0u32..7), 0..8);
    (1u32..5, 1u32..7, cells, proptest::option::of((1u32..4, -1.5f64..1.5))).prop_map(
        |(rows, columns, off, shift)| {
            let mut block = block(rows, columns);
            block.off = off
                .into_iter()
                .map(|(row, column)| Cell { row, column })
                .filter(|cell| cell.row < rows && cell.column < columns)
                .collect();
            match shift {
                Some((row, by)) if row < rows => block.with_shift(row, Length::from_metres(by)),
                _ => block,
            }
        },
    )
}
