//! Time to evaluate a plan during a drag: on each sample roof while a block moves, doing what the editor does on each
//! mouse move (apply the edit, then evaluate with the roof cached), and while a corner of a house is dragged. Criterion
//! prints medians; the 99th percentile is printed beside them.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::{Edit, Resolved, apply};
use chalkcourse_plan::Evaluator;
use chalkcourse_tests::samples;
use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use std::time::{Duration, Instant};

/// The job with its first block moved a step along a back-and-forth path.
fn moved(job: &Resolved, step: u32) -> Resolved {
    let mut block = job.blocks[0].clone();
    block.at.x += f64::from(step % 50) * 0.01;
    apply(job, &Edit::PutBlock(block)).expect("a block may move by half a metre")
}

fn a_block_moves(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("a block moves");
    group.sample_size(20).measurement_time(Duration::from_secs(4));
    let all = samples::all();
    let wired = all.iter().map(|(name, job)| (format!("{name} with circuits"), samples::with_circuits(job)));
    let plain = all.iter().map(|(name, job)| ((*name).to_owned(), job.clone()));
    for (name, job) in plain.chain(wired.collect::<Vec<_>>()) {
        let mut evaluator = Evaluator::default();
        let mut step = 0;
        group.bench_function(name.replace(".chalk.json", ""), |bencher| {
            bencher.iter(|| {
                step += 1;
                black_box(evaluator.evaluate(&moved(&job, step)));
            });
        });
        let mut times: Vec<Duration> = (0..500)
            .map(|step| {
                let start = Instant::now();
                black_box(evaluator.evaluate(&moved(&job, step)));
                start.elapsed()
            })
            .collect();
        times.sort();
        println!(
            "{name}: median {:?}, p99 {:?} of {}",
            times[times.len() / 2],
            times[times.len() * 99 / 100],
            times.len()
        );
    }
    group.finish();
}

/// Drags a corner of a 40-corner house with three dormers: the roof is raised again, hidden parts are removed again,
/// and the whole plan is evaluated.
fn a_corner_is_dragged(criterion: &mut Criterion) {
    let job = samples::forty_corners();
    let corners = job.parts[0].outline.outer.len();
    assert_eq!((corners, job.parts.len()), (40, 4));
    let mut evaluator = Evaluator::default();
    let mut drag = |step: u32| {
        let from = job.parts[0].outline.outer[2];
        let to = from - chalkcourse_geometry::dvec2(0.0, f64::from(step % 50) * 0.01);
        let part = job.parts[0].with_corner_moved(0, 2, to).expect("there is a corner 3");
        let next = apply(&job, &Edit::PutPart(part)).expect("it can be raised");
        black_box(evaluator.evaluate(&next));
    };
    let mut step = 0;
    criterion.bench_function("a corner is dragged", |bencher| {
        bencher.iter(|| {
            step += 1;
            drag(step);
        });
    });
    let mut times: Vec<Duration> = (0..500)
        .map(|step| {
            let start = Instant::now();
            drag(step);
            start.elapsed()
        })
        .collect();
    times.sort();
    println!("a corner is dragged: median {:?}, p99 {:?} of {}", times[250], times[495], times.len());
}

criterion_group!(benches, a_block_moves, a_corner_is_dragged);
criterion_main!(benches);
