//! What goes to the clipboard.

use crate::hand::Hand;
use egui::{Key, Modifiers, OutputCommand};
use egui_kittest::kittest::Queryable;

#[test]
fn the_drawing_is_copied_as_svg_in_plan_and_face_on() {
    let mut hand = Hand::new();
    let copied = |hand: &mut Hand| {
        hand.press("Edit");
        hand.harness.get_by_label("Copy the drawing as SVG").click();
        hand.harness.step();
        hand.harness.output().platform_output.commands.iter().find_map(|command| match command {
            OutputCommand::CopyText(text) => Some(text.clone()),
            _ => None,
        })
    };
    let plan = copied(&mut hand).unwrap();
    assert!(plan.starts_with("<svg") && plan.contains("plan, north up"), "{plan}");
    hand.key(Key::Num2);
    let face = copied(&mut hand).unwrap();
    assert!(face.contains("true size, eave down"), "{face}");
    assert!(hand.editor().said().contains("SVG"));
}

/// The picture itself is the window system's: that it comes is checked in the real window, by `.ci/check-window`.
#[test]
fn the_drawing_is_asked_for_as_a_picture() {
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::C);
    assert!(hand.editor().said().contains("clipboard"));
}
