//! Time to run all rules on 200 faces with 5,000 modules: in full, and after one block moved or one module was switched
//! off; on the job as drawn, and with every block in violation.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Cell, Edit, Resolved, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Checker, check};
use chalkcourse_tests::samples;
use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use std::time::Duration;

/// Every block moved onto the rake, over the ridge and onto the pipe.
fn all_wrong() -> Resolved {
    let mut job = samples::mill_row();
    for block in &mut job.blocks {
        block.at.x = 0.05;
        block.at.y = 2.4;
        block.reveal = chalkcourse_geometry::Length::from_inches(0.5);
    }
    for pipe in &mut job.penetrations {
        pipe.at.y -= 1.5;
    }
    job
}

fn rules(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("rules");
    group.sample_size(20).measurement_time(Duration::from_secs(4));
    for (name, job) in [("mill-row", samples::mill_row()), ("mill-row, all wrong", all_wrong())] {
        let layout = Layout::of(&job);
        group.bench_function(format!("{name}, whole"), |bencher| {
            bencher.iter(|| black_box(check(&job, &layout)));
        });
        let mut moved = job.blocks[77].clone();
        moved.at.x += 0.02;
        let mut less = job.blocks[77].clone();
        less.off.insert(Cell { row: 4, column: 4 });
        for (what, block) in [("a block moved", moved), ("a module off", less)] {
            let next = apply(&job, &Edit::PutBlock(block)).expect("the block is there");
            let next_layout = Layout::on_roof(&next, layout.roof.clone());
            let mut checker = Checker::default();
            checker.check(&job, &layout);
            let mut there = false;
            group.bench_function(format!("{name}, {what}"), |bencher| {
                bencher.iter(|| {
                    there = !there;
                    let (job, layout) = if there { (&next, &next_layout) } else { (&job, &layout) };
                    black_box(checker.check(job, layout))
                });
            });
        }
    }
    group.finish();
}

criterion_group!(benches, rules);
criterion_main!(benches);
