//! Time to render the house, Mill Row (200 faces, 5,000 modules) at 1920 × 1080: while it is rotated (half the pixels
//! each way), when it is still, and after the sun moved, so that its shadows are computed again.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_layout::Layout;
use chalkcourse_picture::{Camera, Detail, Light, Look, Scene, Shot};
use chalkcourse_solid::{Show, solid};
use chalkcourse_tests::samples;
use criterion::{Criterion, criterion_group, criterion_main};
use glam::dvec3;
use std::hint::black_box;
use std::time::Duration;

fn pictures(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("a picture");
    group.sample_size(20).measurement_time(Duration::from_secs(4));
    for (name, job) in samples::all() {
        let name = name.trim_end_matches(".chalk.json");
        let layout = Layout::of(&job);
        group.bench_function(format!("{name}: solid"), |bencher| {
            bencher.iter(|| black_box(Scene::of(&solid(&job, &layout, Show::default()))));
        });
        let scene = Scene::of(&solid(&job, &layout, Show::default()));
        let camera = Camera::default().fitted(&scene.corners(), 1920.0 / 1080.0);
        let shot = |step: f64, detail: Detail, sun: f64| {
            let half = if detail == Detail::Quick { 2 } else { 1 };
            Shot {
                camera: camera.turned(step, 0.0),
                size: [1920 / half, 1080 / half],
                light: Light::Sun(dvec3(-0.5 + sun, -0.5, 0.7)),
                look: Look::default(),
                detail,
                held: None,
            }
        };
        let mut step = 0.0;
        for (what, detail, sun) in [
            ("turned", Detail::Quick, 0.0),
            ("still", Detail::Fine, 0.0),
            ("the sun moves", Detail::Quick, 1e-3),
        ] {
            group.bench_function(format!("{name}: {what}"), |bencher| {
                bencher.iter(|| {
                    step += 1.0;
                    black_box(scene.draw(&shot(step, detail, sun * (step % 100.0))));
                });
            });
        }
    }
    group.finish();
}

criterion_group!(benches, pictures);
criterion_main!(benches);
