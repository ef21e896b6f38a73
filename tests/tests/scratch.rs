#![allow(clippy::unwrap_used, missing_docs)]
use chalkcourse_geometry::{Length, dvec2};
use chalkcourse_job::*;
use chalkcourse_tests::{houses, samples, verdict};
use std::sync::Arc;

#[test]
fn holes() {
    let mut job = samples::alder_court();
    let mut block = job.blocks[0].clone();
    block.shifts = vec![
        RowShift { row: 0, from: 1, by: Length::from_metres(-1.0) },
        RowShift { row: 1, from: 1, by: Length::from_metres(-1.0) },
        RowShift { row: 2, from: 1, by: Length::from_metres(-1.0) },
    ];
    job.blocks = vec![block.clone()];
    println!("in-row overlap: {:?}", verdict::open(&job));
    println!(
        "all codes {:?}",
        chalkcourse_plan::evaluate(&job).findings.iter().map(|f| (f.code, f.severity)).collect::<Vec<_>>()
    );
    let mut kit = (*job.kit).clone();
    kit.laying.joints = vec![RowJoints::Aligned];
    job.kit = Arc::new(kit);
    block.shifts = vec![RowShift { row: 1, from: 1, by: Length::from_metres(0.5) }];
    block.off.insert(Cell { row: 1, column: 0 });
    job.blocks = vec![block.clone()];
    println!("joints bypass: {:?}", verdict::open(&job));
    // touching blocks
    let job = houses::usual(5).job;
    let face = job.faces[0].id;
    let mut job2 = job.clone();
    for (n, u) in [(0u32, 2.0), (1, 2.0 + 1.722 - 0.00009)] {
        job2.blocks.push(Block {
            id: BlockId(900 + n),
            name: "x".into(),
            face,
            at: dvec2(u, 1.0),
            rows: 1,
            columns: 1,
            orientation: Orientation::Landscape,
            reveal: Length::from_inches(0.125),
            shifts: vec![],
            off: Default::default(),
            locked: false,
        });
    }
    println!("touching {:?}", verdict::open(&job2));
}
