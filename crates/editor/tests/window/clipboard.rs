//! Copying to the clipboard.

use crate::hand::Hand;
use crate::rules::menu;
use chalkcourse_job::{NoFiles, script_from_text};
use egui::{Key, Modifiers, OutputCommand};
use egui_kittest::kittest::Queryable;

/// The text copied in the last frame.
pub(crate) fn text_copied(hand: &Hand) -> Option<String> {
    hand.harness.output().platform_output.commands.iter().find_map(|command| match command {
        OutputCommand::CopyText(text) => Some(text.clone()),
        _ => None,
    })
}

/// A session is a script: nudges, a vent, something undone, a fill. Replayed on the job as opened it makes the same
/// job, by the clipboard and by a file.
#[test]
fn the_steps_of_a_session_are_copied_and_make_the_same_job_again() {
    let mut hand = Hand::new();
    let opened = hand.job();
    hand.chord(Modifiers::COMMAND, Key::A);
    for key in [Key::ArrowRight, Key::ArrowUp, Key::ArrowUp] {
        hand.key(key);
    }
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.key(Key::P);
    hand.click_plan(2.0, 2.0);
    hand.key(Key::Escape);
    hand.press("Edit");
    hand.harness.get_by_label("Copy the steps since opening as edits").click();
    hand.harness.step();
    let steps = text_copied(&hand).unwrap();
    let replayed = |steps: &str| {
        let script = script_from_text(steps, std::path::Path::new("edits")).unwrap();
        assert!(script.steps.len() >= 3, "{steps}");
        script.steps.iter().fold(opened.clone(), |job, step| step.apply(&job, &NoFiles).unwrap())
    };
    assert_eq!(replayed(&steps), hand.job());
    assert_ne!(opened, hand.job());
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("steps.json");
    menu(&mut hand, "Export", "Steps since opening as edits…");
    hand.give_path(&path);
    assert_eq!(replayed(&std::fs::read_to_string(&path).unwrap()), hand.job());
}

#[test]
fn the_drawing_is_copied_as_svg_in_plan_and_face_on() {
    let mut hand = Hand::new();
    let copied = |hand: &mut Hand| {
        hand.press("Edit");
        hand.harness.get_by_label("Copy the drawing as SVG").click();
        hand.harness.step();
        text_copied(hand)
    };
    let plan = copied(&mut hand).unwrap();
    assert!(plan.starts_with("<svg") && plan.contains("plan, north up"), "{plan}");
    hand.key(Key::Num2);
    let face = copied(&mut hand).unwrap();
    assert!(face.contains("true size, eave down"), "{face}");
    assert!(hand.editor().said().contains("SVG"));
}

/// Taking the picture is up to the window system: that is tested in the real window, by `.ci/check-window`.
#[test]
fn the_drawing_is_copied_as_a_picture() {
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::C);
    assert!(hand.editor().said().contains("clipboard"));
}
