//! Roofs raised from footprints of 20, 100, 500 and 2,000 corners with mixed pitches and some gables, and how the time grows.

use chalkcourse_geometry::raise::{Footprint, Side, raise};
use chalkcourse_geometry::{Pitch, Polygon, dvec2};
use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use std::hint::black_box;

/// A long building with wings of uneven width and depth on both sides: rectilinear, 8 corners per pair of wings.
fn winged(corners: usize) -> Footprint {
    let pairs = (corners - 4) / 8;
    // The golden ratio spreads sizes without a pattern.
    let uneven = |i: usize| (i as f64 * 0.618_034) % 1.0;
    let (mut south, mut north) = (vec![dvec2(0.0, 0.0)], vec![dvec2(0.0, 9.0)]);
    let mut x = 0.0;
    for i in 0..pairs {
        x += 3.0 + 2.0 * uneven(i);
        let (width, depth) = (4.0 + 3.0 * uneven(i + 7), 3.0 + 5.0 * uneven(i + 3));
        south
            .extend([(x, 0.0), (x, -depth), (x + width, -depth), (x + width, 0.0)].map(|(x, y)| dvec2(x, y)));
        let (width, depth) = (width * 0.8, 11.0 - depth);
        north.extend(
            [(x, 9.0), (x, 9.0 + depth), (x + width, 9.0 + depth), (x + width, 9.0)]
                .map(|(x, y)| dvec2(x, y)),
        );
        x += 7.0;
    }
    south.push(dvec2(x + 4.0, 0.0));
    north.push(dvec2(x + 4.0, 9.0));
    south.extend(north.into_iter().rev());
    let mut plan = Footprint::even(Polygon::new(south), Side::gable());
    for (i, side) in plan.sides[0].iter_mut().enumerate() {
        if i % 11 != 2 {
            let rise = [4.0, 6.0, 6.0, 8.0][i % 4];
            *side = Side::sloped(Pitch::from_rise_in_12(rise).unwrap_or(Pitch::FLAT), 0.0);
        }
    }
    plan
}

fn bench(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("raise");
    group.sample_size(20);
    for corners in [20, 100, 500, 2000] {
        let plan = winged(corners);
        assert!(raise(&plan).is_ok(), "{corners} corners");
        group.bench_with_input(BenchmarkId::from_parameter(corners), &plan, |bencher, plan| {
            bencher.iter(|| raise(black_box(plan)));
        });
    }
    group.finish();
}

criterion_group!(benches, bench);
criterion_main!(benches);
