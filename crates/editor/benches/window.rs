//! Time per frame of the headless window: the first frame, frames during a drag, and the frame after switching the
//! language. Each includes rebuilding the accessibility tree, so it is a little slower than without a screen reader;
//! tessellation and drawing are measured by `.ci/frame-times` in the real window; here the amount to draw is counted.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::print_stdout,
    missing_docs,
    reason = "a measurement may stop at the first surprise"
)]

use chalkcourse::{Editor, Options};
use chalkcourse_words::noted;
use egui::{Event, PointerButton, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

type Window = Harness<'static, Option<Editor>>;

/// Opens the window with a sample; returns how long its first frame took.
fn open(sample: &str) -> (Window, Duration) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs").join(sample);
    let options = Options { typed_paths: true, open: Some(path), ..Options::default() };
    let began = Instant::now();
    let builder = Harness::builder().with_size([1280.0, 800.0]).with_max_steps(200);
    let mut window: Window = builder.build_ui_state(
        move |ui, editor: &mut Option<Editor>| {
            editor.get_or_insert_with(|| Editor::new(ui.ctx(), options.clone(), None)).show(ui);
        },
        None,
    );
    window.step();
    let first = began.elapsed();
    window.run();
    (window, first)
}

/// A frame, timed.
fn frame(window: &mut Window) -> Duration {
    let began = Instant::now();
    window.step();
    began.elapsed()
}

fn told(what: &str, mut times: Vec<Duration>) {
    times.sort();
    let at = |share: usize| times[(times.len() - 1) * share / 100].as_secs_f64() * 1e3;
    println!("  {what}: median {:.2} ms, 99th percentile {:.2}, of {}", at(50), at(99), times.len());
}

/// The output of a frame for the graphics card: triangles, and shapes before tessellation.
fn triangles(window: &Window) -> (usize, usize) {
    let output = window.output();
    let shapes = output.shapes.clone();
    let count = shapes.len();
    let cut = window.ctx.tessellate(shapes, output.pixels_per_point);
    let mesh = |it: &egui::ClippedPrimitive| match &it.primitive {
        egui::epaint::Primitive::Mesh(mesh) => mesh.indices.len() / 3,
        egui::epaint::Primitive::Callback(_) => 0,
    };
    (cut.iter().map(mesh).sum(), count)
}

/// How long the messages of a frame take, told again as that frame told them.
fn words_of_a_frame(window: &mut Window) {
    let (_, messages) = noted(|| window.step());
    let (all, with_values) = messages.count();
    let times: Vec<Duration> = (0..200)
        .map(|_| {
            let began = Instant::now();
            black_box(messages.again());
            began.elapsed()
        })
        .collect();
    println!("  a frame tells {all} messages, {with_values} of them with values");
    told("its messages", times);
}

/// Drags back and forth over the middle of the drawing, where the samples have a block or a face.
fn drag(window: &mut Window) -> Vec<Duration> {
    let from = pos2(510.0, 472.0);
    window.hover_at(from);
    window.run();
    let button = |pressed| {
        let (button, modifiers) = (PointerButton::Primary, egui::Modifiers::NONE);
        Event::PointerButton { pos: from, button, pressed, modifiers }
    };
    window.event(button(true));
    window.step();
    let mut times = Vec::new();
    for step in 0..300 {
        let along = (step % 100 - 50_i32).abs() as f32;
        window.hover_at(from + egui::vec2(along, along / 2.0));
        times.push(frame(window));
    }
    window.event(button(false));
    window.run();
    times
}

/// From choosing a language until that frame is done, and the frame after it.
fn languages(window: &mut Window) -> Vec<Duration> {
    let mut times = Vec::new();
    for round in 0..10 {
        let (menu, language) = if round % 2 == 0 { ("View", "Español") } else { ("Ver", "English") };
        window.get_by_label(menu).click();
        window.run();
        window.get_by_label(language).click();
        times.push((0..4).map(|_| frame(window)).max().unwrap_or_default());
        window.run();
    }
    times
}

fn main() {
    for sample in ["alder-court.chalk.json", "mill-row.chalk.json"] {
        let (mut window, first) = open(sample);
        println!("{sample}");
        println!("  first frame: {:.0} ms", first.as_secs_f64() * 1e3);
        let (triangles, shapes) = triangles(&window);
        println!("  a frame has {triangles} triangles, from {shapes} shapes");
        words_of_a_frame(&mut window);
        told("still", (0..100).map(|_| frame(&mut window)).collect());
        told("a drag", drag(&mut window));
        told("the frame that a switch of language takes", languages(&mut window));
        if let Ok(status) = std::fs::read_to_string("/proc/self/status") {
            let of = |name: &str| status.lines().find(|line| line.starts_with(name)).unwrap_or_default();
            println!("  {}", of("VmHWM").replace('\t', " "));
        }
    }
}
