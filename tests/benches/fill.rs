//! Filling a house: the time to a first layout, and of the whole search.

#![allow(
    clippy::expect_used,
    missing_docs,
    reason = "a bench may stop at what it can't do; criterion's macros carry no docs"
)]

use chalkcourse_job::{FaceId, Resolved};
use chalkcourse_plan::{Mode, fill, fill_improving};
use chalkcourse_tests::samples;
use criterion::{Criterion, criterion_group, criterion_main};
use std::cell::Cell;
use std::hint::black_box;
use std::time::Duration;

fn steep(job: &Resolved) -> Vec<FaceId> {
    let steep = job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch);
    steep.map(|face| face.id).collect()
}

fn fills(criterion: &mut Criterion) {
    for (name, job) in [("Alder Court", samples::alder_court()), ("Quarry Lane", samples::quarry_lane())] {
        let faces = steep(&job);
        let mut group = criterion.benchmark_group(name);
        group.sample_size(10).measurement_time(Duration::from_secs(5));
        group.bench_function("a first layout of all faces", |bencher| {
            bencher.iter(|| {
                let told = Cell::new(false);
                let stop = || told.get();
                let done = fill_improving(&job, &faces, Mode::SlidingRows, &stop, &mut |_| told.set(true));
                black_box(done.expect("it can be filled"));
            });
        });
        group.bench_function("the whole fill", |bencher| {
            bencher.iter(|| {
                black_box(fill(&job, &faces, Mode::SlidingRows, &|| false).expect("it can be filled"));
            });
        });
        group.finish();
    }
}

criterion_group!(benches, fills);
criterion_main!(benches);
