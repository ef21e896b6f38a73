//! Fits of typical sizes: a hip face of about 60 modules and 12 penetrations, and a large one of 2,000 and 60; and how the time
//! grows with both.

// A bench that cannot run should stop; criterion's own macros make functions without docs.
#![allow(clippy::unwrap_used, missing_docs)]

use chalkcourse_geometry::fit::{
    Allowed, Base, BlockRules, Constraint, Costs, FINE, Joints, Question, RowRules, Tile, cells, fit_blocks,
    fit_rows, fit_worth, holds_back,
};
use chalkcourse_geometry::{DVec2, Polygon, Rect, dvec2};
use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;

const MODULE: Tile = Tile { size: dvec2(1.722, 1.134), gap: dvec2(0.006, 0.006) };

/// A hip trapezoid with room for about `modules`, and clearances scattered over it: rectangles and 24-gons.
fn hip(modules: usize, penetrations: usize) -> Allowed {
    // Allow a quarter of the area for the hips and some for the clearances.
    let height = (modules as f64 * 1.722 * 1.134 * 1.7 / 2.0).sqrt();
    let width = height * 2.0;
    let slant = height * 0.45;
    let outline = [(0.0, 0.0), (width, 0.0), (width - slant, height), (slant, height)];
    let region = Polygon::new(outline.iter().map(|&(u, v)| dvec2(u, v)).collect());
    let blocked = (0..penetrations).map(|i| {
        // The golden ratio spreads them without a pattern.
        let share = (i as f64 * 0.618_034) % 1.0;
        let v = height * (0.05 + 0.85 * (i as f64 + 0.5) / penetrations as f64);
        let inset = slant * v / height;
        let at = dvec2(inset + (width - 2.0 * inset) * (0.05 + 0.9 * share), v);
        let shape = if i % 2 == 0 {
            Polygon::circle(at, 0.15, 24)
        } else {
            Polygon::new(Rect::at(at, dvec2(0.4, 0.3)).corners().to_vec())
        };
        Constraint { id: i, shape }
    });
    Allowed { region: vec![region], blocked: blocked.collect(), foot: None, tolerance: FINE }
}

fn rules(joints: Joints) -> RowRules {
    RowRules { joints, base: Base::Anywhere, hooked: false }
}

fn never() -> bool {
    false
}

fn fits(criterion: &mut Criterion) {
    for (modules, penetrations) in [(60, 12), (2000, 60)] {
        let face = hip(modules, penetrations);
        let mut group = criterion.benchmark_group(format!("{modules} modules, {penetrations} penetrations"));
        group.sample_size(if modules > 100 { 10 } else { 50 });
        for joints in [Joints::Free, Joints::Aligned, Joints::Lapped] {
            group.bench_function(format!("rows {joints:?}"), |b| {
                b.iter(|| black_box(fit_rows(&face, &MODULE, &rules(joints), &never).unwrap().count()));
            });
        }
        group.bench_function("rows Free, hooked", |b| {
            let hooked = RowRules { hooked: true, ..rules(Joints::Free) };
            b.iter(|| black_box(fit_rows(&face, &MODULE, &hooked, &never).unwrap().count()));
        });
        let base = Base::Courses { first: 0.1, exposure: 0.143, play: (0.0, 0.02) };
        group.bench_function("rows Free on the courses", |b| {
            b.iter(|| {
                fit_rows(&face, &MODULE, &RowRules { base, ..rules(Joints::Free) }, &never).unwrap().count()
            });
        });
        let places = cells(&face, &MODULE, DVec2::ZERO).unwrap();
        let costs = Costs { foot: 0.3, head: 0.4, side: 0.2, ..Costs::default() };
        group.bench_function("worth, sides", |b| {
            b.iter(|| fit_worth(&places, &costs, &never).unwrap().worth);
        });
        if modules < 100 {
            group.bench_function("two blocks", |b| {
                b.iter(|| {
                    fit_blocks(
                        &face,
                        &MODULE,
                        &BlockRules { most: 2, apart: 0.3, base: Base::Anywhere },
                        &never,
                    )
                    .unwrap()
                    .count
                });
            });
            let fit = fit_rows(&face, &MODULE, &rules(Joints::Aligned), &never).unwrap();
            let question = Question { near: 0.3, movable: vec![3, 4], farthest: 0.5, prices: true };
            group.bench_function("what holds it back", |b| {
                b.iter(|| holds_back(&face, &fit, &question, &never).unwrap().near.len());
            });
        }
    }
    let mut group = criterion.benchmark_group("growth");
    group.sample_size(10);
    for (modules, penetrations) in
        [(125, 12), (250, 12), (500, 12), (1000, 12), (500, 0), (500, 24), (500, 48), (500, 96)]
    {
        let face = hip(modules, penetrations);
        for joints in [Joints::Free, Joints::Aligned] {
            group.bench_function(format!("{joints:?} {modules} modules {penetrations} penetrations"), |b| {
                b.iter(|| fit_rows(&face, &MODULE, &rules(joints), &never).unwrap().count());
            });
        }
    }
}

criterion_group!(benches, fits);
criterion_main!(benches);
