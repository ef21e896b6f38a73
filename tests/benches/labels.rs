//! Time per frame to place the labels of a drawing of 200 faces, at the zoom that fits the window and closer in.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::{DVec2, Length, Rect, dvec2};
use chalkcourse_labels::{Anchor, Body, How, Label, Obstacle, Over, Scene, Try, Weight, place};
use chalkcourse_layout::Layout;
use chalkcourse_tests::samples;
use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;

const BELOW: &[(i8, i8)] = &[(0, 1), (0, -1), (1, 0), (-1, 0), (1, 1), (-1, 1), (1, -1), (-1, -1)];
const SCREEN: DVec2 = DVec2 { x: 848.0, y: 590.0 };

/// The labels of the roof's edges, faces and penetrations as the window requests them, with letters of 6 by 14 points.
fn scene(zoom: f64) -> Scene {
    let job = samples::mill_row();
    let layout = Layout::of(&job);
    let bounds = Rect::around(layout.roof.faces.iter().flat_map(|face| face.plan.outer.clone())).unwrap();
    let scale = (SCREEN / bounds.size()).min_element() * 0.84 * zoom;
    let at = |plan: DVec2| SCREEN / 2.0 + (plan - bounds.centre()) * dvec2(scale, -scale);
    let look = |text: &str, how| Try { size: dvec2(text.chars().count() as f64 * 6.0 + 10.0, 18.0), how };
    let (mut obstacles, mut labels) = (Vec::new(), Vec::new());
    for (number, line) in (0..).zip(layout.roof.lines()) {
        let (from, to) = (at(line.space.0.truncate()), at(line.space.1.truncate()));
        let body = Body::Line(from, to, 1.0);
        obstacles.push(Obstacle { body, weight: Weight::Line, of: Some(number) });
        let length = Length::from_metres(line.length).show(job.units);
        let whole = format!("{} {length}", line.kind.name());
        if from.distance(to) < 12.0 {
            continue;
        }
        let mut tries =
            vec![look(&whole, How::Home), look(&length, How::Home), look(&length, How::Overhanging)];
        if from.distance(to) > 22.0 {
            tries.push(look(&length, How::Leader(90.0)));
        }
        let anchor = Anchor::Along { from, to, beside: &[0.0, 1.0, -1.0], gap: 3.0, turned: true, home: 0.5 };
        labels.push(Label { rank: 6, names: Some(number), anchor, tries, over: Over::Ground });
    }
    for (face, placed) in layout.roof.faces.iter().zip(&layout.faces) {
        let rings = vec![face.plan.outer.iter().map(|&p| at(p)).collect()];
        let anchor = Anchor::Within { rings, home: at(face.plan.bounds().unwrap().centre()) };
        let tries = vec![look(&placed.name, How::Home), look(&placed.name, How::Leader(40.0))];
        labels.push(Label { rank: 7, names: None, anchor, tries, over: Over::Faint });
    }
    for penetration in &layout.penetrations {
        let ends = penetration.plan.bounds().unwrap().corners().map(at);
        let thing = Rect::around(ends).unwrap();
        obstacles.push(Obstacle { body: Body::Rect(thing), weight: Weight::Solid, of: None });
        let anchor = Anchor::Around { thing, gap: 3.0, sides: BELOW };
        let tries = vec![look(&penetration.name, How::Home), look(&penetration.name, How::Leader(60.0))];
        labels.push(Label { rank: 5, names: None, anchor, tries, over: Over::Ground });
    }
    Scene { clip: Rect { min: DVec2::ZERO, max: SCREEN }, obstacles, labels, clear: 1.0 }
}

fn labels(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("labels");
    for zoom in [1.0, 2.0, 6.0] {
        let scene = scene(zoom);
        let placed = place(&scene).iter().flatten().count();
        let name = format!("mill-row, {zoom} times what fits: {placed} of {}", scene.labels.len());
        group.bench_function(name, |bencher| bencher.iter(|| black_box(place(black_box(&scene)))));
    }
    group.finish();
}

criterion_group!(benches, labels);
criterion_main!(benches);
