use crate::hand::{Hand, feet};
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::Underlay;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;
use image::{DynamicImage, ImageFormat};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant};

#[derive(Debug)]
struct Dropped(PathBuf);

impl egui::DroppedFile for Dropped {
    fn path(&self) -> &Path {
        &self.0
    }
    fn bytes(&self) -> Result<Vec<u8>, String> {
        std::fs::read(&self.0).map_err(|error| error.to_string())
    }
}

fn write_picture(path: &Path, width: u32, height: u32, shade: u8) {
    let mut picture = DynamicImage::new_rgb8(width, height).into_rgb8();
    picture.pixels_mut().for_each(|pixel| pixel.0 = [shade, 120, 90]);
    let format = ImageFormat::from_path(path).unwrap();
    DynamicImage::ImageRgb8(picture).save_with_format(path, format).unwrap();
}

/// Waits for the reading thread.
fn wait(hand: &mut Hand, until: impl Fn(&Hand) -> bool) {
    let end = Instant::now() + Duration::from_secs(20);
    while !until(hand) {
        assert!(Instant::now() < end, "nothing came: {}", hand.editor().said());
        std::thread::sleep(Duration::from_millis(10));
        hand.harness.step();
    }
    hand.harness.run();
}

fn drop_file(hand: &mut Hand, path: &Path) {
    hand.harness.input_mut().dropped_files.push(Arc::new(Dropped(path.to_owned())));
    hand.harness.step();
    hand.harness.input_mut().dropped_files.clear();
}

fn laid(hand: &Hand) -> Underlay {
    hand.job().underlay.clone().unwrap()
}

fn with_picture(folder: &Path) -> Hand {
    let path = folder.join("roof.png");
    write_picture(&path, 400, 300, 30);
    let mut hand = Hand::empty();
    drop_file(&mut hand, &path);
    wait(&mut hand, |hand| hand.job().underlay.is_some());
    hand
}

fn fill(hand: &mut Hand, label: &str, typed: &str) {
    hand.harness.get_by_label(label).focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text(typed);
    hand.key(Key::Enter);
}

#[test]
fn a_dropped_picture_is_scaled_by_two_points_and_a_length() {
    let folder = tempfile::tempdir().unwrap();
    let mut hand = with_picture(folder.path());
    let first = laid(&hand);
    assert_eq!(first.pixels, [400, 300]);
    assert!(hand.sees("Picture under the plan: roof.png"), "a screen reader is not told");
    let (a, b) = (first.to_plan(dvec2(0.25, 0.5)), first.to_plan(dvec2(0.75, 0.5)));
    hand.click_plan(a.x, a.y);
    hand.click_plan(b.x, b.y);
    fill(&mut hand, "Length on the ground", "30' 6\"");
    let scaled = laid(&hand);
    let apart = scaled.to_plan(dvec2(0.25, 0.5)).distance(scaled.to_plan(dvec2(0.75, 0.5)));
    assert!((apart - feet(30.5)).abs() < feet(30.5) * 0.01, "{apart}: a click is a pixel or so off");
    assert!((scaled.size().x / scaled.size().y - 4.0 / 3.0).abs() < 1e-9);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(laid(&hand), first);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(hand.job().underlay.is_none());
}

#[test]
fn a_picture_is_moved_rotated_cropped_faded_and_removed() {
    let folder = tempfile::tempdir().unwrap();
    let mut hand = with_picture(folder.path());
    let first = laid(&hand);
    let drag = |hand: &mut Hand, mode: &str, from: DVec2, to: DVec2| {
        hand.press(mode);
        let (from, to) = (hand.at(from), hand.at(to));
        hand.drag(from, to);
        hand.drop(to);
        laid(hand)
    };
    let moved = drag(&mut hand, "Move", first.at, first.at + dvec2(2.0, 1.0));
    assert!(moved.at.distance(first.at + dvec2(2.0, 1.0)) < 0.05, "{}", moved.at);
    hand.key(Key::ArrowRight);
    assert!((laid(&hand).at.x - moved.at.x - feet(1.0 / 12.0)).abs() < 1e-9);
    hand.chord(Modifiers::COMMAND, Key::Z);
    let turned = drag(&mut hand, "Turn", moved.at + dvec2(3.0, 0.0), moved.at + dvec2(0.0, -3.0));
    assert!((turned.turn - 90.0).abs() < 1.5, "{}", turned.turn);
    hand.chord(Modifiers::COMMAND, Key::Z);
    let cropped = drag(&mut hand, "Crop", moved.to_plan(dvec2(0.2, 0.3)), moved.to_plan(dvec2(0.7, 0.8)));
    let crop = cropped.crop;
    for (got, want) in [(crop.left, 0.2), (crop.top, 0.3), (crop.right, 0.7), (crop.bottom, 0.8)] {
        assert!((got - want).abs() < 0.02, "{crop:?}");
    }
    fill(&mut hand, "Dimmed by", "60%");
    assert_eq!(laid(&hand).dim, 0.6);
    fill(&mut hand, "Width", "50'");
    assert!((laid(&hand).size().x - feet(50.0)).abs() < 1e-9);
    fill(&mut hand, "Turned by", "12.5");
    assert_eq!(laid(&hand).turn, 12.5);
    fill(&mut hand, "From the right", "99%");
    assert!(hand.editor().said().contains("must be left"), "{}", hand.editor().said());
    hand.harness.get_by_label("Take it away").scroll_to_me();
    hand.harness.run();
    hand.press("Take it away");
    assert!(hand.job().underlay.is_none());
    assert!(hand.sees("drop it on the window"));
}

/// A line clicked along an eave is made to run square.
#[test]
fn a_line_is_made_square() {
    let folder = tempfile::tempdir().unwrap();
    let mut hand = with_picture(folder.path());
    fill(&mut hand, "Turned by", "10");
    let turned = laid(&hand);
    hand.press("Turn");
    for at in [turned.to_plan(dvec2(0.2, 0.5)), turned.to_plan(dvec2(0.8, 0.5))] {
        hand.click_plan(at.x, at.y);
    }
    hand.press("Make the line square");
    let turn = laid(&hand).turn;
    assert!(turn.min(360.0 - turn) < 0.5, "{turn}");
}

#[test]
fn a_missing_or_changed_picture_is_reported() {
    let folder = tempfile::tempdir().unwrap();
    let picture = folder.path().join("roof.png");
    let mut hand = with_picture(folder.path());
    let job = folder.path().join("house.chalk.json");
    hand.chord(Modifiers::COMMAND, Key::S);
    hand.give_path(&job);
    assert!(std::fs::read_to_string(&job).unwrap().contains("\"path\": \"roof.png\""));

    let reopen = || {
        let options =
            chalkcourse::Options { open: Some(job.clone()), typed_paths: true, ..Default::default() };
        let mut hand = Hand::with(options);
        hand.key(Key::U);
        hand
    };
    write_picture(&picture, 400, 300, 200);
    let mut hand = reopen();
    wait(&mut hand, |hand| hand.sees("holds a different picture"));
    let before = laid(&hand);
    hand.press("Take it as it is now");
    assert_ne!(laid(&hand).sha256, before.sha256);
    assert_eq!(laid(&hand).size(), before.size());
    assert!(!hand.sees("holds a different picture"));

    std::fs::remove_file(&picture).unwrap();
    let mut hand = reopen();
    wait(&mut hand, |hand| hand.sees("put the picture back there, or choose it again"));
    write_picture(&picture, 400, 300, 30);
    hand.press("Look again");
    wait(&mut hand, |hand| !hand.sees("put the picture back"));
    assert!(!hand.sees("holds a different picture"));
}

#[test]
fn a_file_that_is_not_a_picture_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notes.png");
    std::fs::write(&path, "no picture at all").unwrap();
    let mut hand = Hand::new();
    let before = hand.job();
    drop_file(&mut hand, &path);
    wait(&mut hand, |hand| hand.sees("neither a PNG nor a JPEG"));
    hand.press("OK");
    assert_eq!(hand.job(), before);
    // By the path dialog, a JPEG.
    let photo = folder.path().join("photo.jpg");
    write_picture(&photo, 64, 48, 90);
    hand.key(Key::U);
    hand.harness.get_all_by_label("Choose a picture…").next().unwrap().click();
    hand.harness.run();
    hand.give_path(&photo);
    wait(&mut hand, |hand| hand.job().underlay.is_some());
    assert_eq!(laid(&hand).pixels, [64, 48]);
}
