//! Editing dimensions on the drawing moves the block accordingly.

use crate::block::{block, select};
use crate::hand::{Hand, feet};
use egui::Key;
use egui_kittest::kittest::Queryable;

fn press_dimension(hand: &mut Hand, words: &str) {
    let at = hand.harness.get_by_label_contains(words).rect().center();
    hand.click(at);
}

#[test]
fn a_length_typed_over_a_dimension_moves_the_block() {
    let mut hand = Hand::new();
    select(&mut hand);
    let start = block(&hand).at;
    press_dimension(&mut hand, "From the left border to the block:");
    hand.type_text("10'");
    hand.key(Key::Enter);
    assert!((block(&hand).at.x - feet(10.0)).abs() < 1e-9, "{}", block(&hand).at);
    assert!((block(&hand).at.y - start.y).abs() < 1e-12);
    assert!(hand.sees("From the left border to the block: 10'"));
    press_dimension(&mut hand, "From the lower border to the block:");
    hand.type_text("3' 6\"");
    hand.key(Key::Enter);
    assert!((block(&hand).at.y - feet(3.5)).abs() < 1e-9, "{}", block(&hand).at);
    // One step each.
    hand.chord(egui::Modifiers::COMMAND, Key::Z);
    assert!((block(&hand).at.y - start.y).abs() < 1e-12);
}

#[test]
fn an_invalid_dimension_is_reported_and_esc_keeps_the_block() {
    let mut hand = Hand::new();
    select(&mut hand);
    let start = block(&hand).at;
    press_dimension(&mut hand, "From the block to the right border:");
    hand.type_text("twelve");
    hand.key(Key::Enter);
    assert!(hand.editor().said().contains("an't read \"twelve\""), "{}", hand.editor().said());
    hand.key(Key::Escape);
    assert_eq!(block(&hand).at, start);
    assert!(hand.sees("From the block to the right border:"));
}

/// A side of a drawn face: its end moves along it until its length on the slope is the typed one.
#[test]
fn a_length_typed_over_a_side_moves_its_end() {
    let mut hand = Hand::empty();
    hand.draw_face();
    for (x, y) in [(-4.0, -3.0), (4.0, -3.0), (4.0, 2.0), (-4.0, 2.0)] {
        hand.click_plan(x, y);
    }
    hand.key(Key::Enter);
    assert_eq!(hand.job().faces.len(), 1);
    let length = |hand: &Hand, side: usize| {
        let plan = hand.editor().document().plan();
        plan.layout.roof.faces[0].edges.iter().find(|edge| edge.side == side).unwrap().length
    };
    press_dimension(&mut hand, "Length of side 1:");
    hand.type_text("30'");
    hand.key(Key::Enter);
    assert!((length(&hand, 0) - feet(30.0)).abs() < 1e-9, "{}", length(&hand, 0));
    // A rake: the length on the slope, not in plan.
    press_dimension(&mut hand, "Length of side 4:");
    hand.type_text("18' 3\"");
    hand.key(Key::Enter);
    assert!((length(&hand, 3) - feet(18.25)).abs() < 1e-9, "{}", length(&hand, 3));
    let before = hand.job();
    press_dimension(&mut hand, "Length of side 1:");
    hand.type_text("0");
    hand.key(Key::Enter);
    assert_eq!(hand.job(), before);
    assert!(!hand.editor().said().is_empty());
}
