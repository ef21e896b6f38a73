//! Esc, Enter, Tab and Delete: keys belong to what has the focus, and Esc goes one step back.

use crate::block::select;
use crate::hand::Hand;
use chalkcourse::Selection;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

#[test]
fn esc_undoes_a_typed_length_then_a_corner_and_redo_restores_both() {
    let mut hand = Hand::empty();
    hand.draw_face();
    for (x, y) in [(-4.0, -4.0), (4.0, -4.0), (4.0, 2.0)] {
        hand.click_plan(x, y);
    }
    let close = |hand: &Hand| hand.harness.get_by_label("Close the outline").accesskit_node().is_disabled();
    assert!(!close(&hand), "three corners can be closed");
    hand.type_text("12 yards");
    hand.key(Key::Enter);
    assert!(hand.sees("can't read"));
    hand.key(Key::Escape);
    assert!(!hand.sees("can't read") && !close(&hand), "the words go, the corners stay");
    hand.key(Key::Escape);
    assert!(close(&hand), "one corner goes");
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert!(!close(&hand), "and comes back");
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert!(hand.harness.query_all_by_value("12 yards").next().is_some(), "what was typed too");
}

#[test]
fn esc_closes_a_menu_and_keeps_the_selection() {
    let mut hand = Hand::new();
    select(&mut hand);
    let held = hand.editor().selection();
    hand.press("Edit");
    assert!(hand.sees("Duplicate"));
    hand.key(Key::Escape);
    assert!(!hand.sees("Duplicate"), "the menu stays open");
    assert_eq!(hand.editor().selection(), held, "what is held behind the menu went");
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), Selection::Nothing);
}

/// A pane beside the drawing: Esc in it returns the keyboard to the drawing, and the selection stays.
#[test]
fn esc_in_a_pane_returns_to_the_drawing_and_keeps_the_selection() {
    let mut hand = Hand::new();
    select(&mut hand);
    let held = hand.editor().selection();
    hand.key(Key::O);
    assert!(hand.sees("Order"));
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), held, "what is held beside the pane went");
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), Selection::Nothing);
}

/// After a click on the drawing, Esc is for the drawing, and the pane stays.
#[test]
fn esc_applies_to_the_drawing_after_a_click_on_it() {
    let mut hand = Hand::new();
    hand.key(Key::H);
    let at = hand.job().penetrations[0].at;
    let pos = hand.at(at);
    hand.click(pos);
    assert!(matches!(hand.editor().selection(), Selection::Penetration(_)));
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), Selection::Nothing);
    assert!(hand.sees("Steps taken"));
}

#[test]
fn delete_is_not_for_the_roof_while_a_button_has_the_focus() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.harness.get_by_label("Quantities").focus();
    hand.harness.run();
    hand.key(Key::Delete);
    assert_eq!(hand.job().blocks.len(), 1, "a button has no use for Delete, and the roof must not have it");
    let pipe = hand.job().penetrations[0].at;
    let pos = hand.at(pipe);
    hand.click(pos);
    hand.key(Key::Delete);
    assert_eq!(hand.job().penetrations.len(), 3);
}

#[test]
fn a_refused_text_says_why_and_goes_with_esc() {
    let mut hand = Hand::new();
    select(&mut hand);
    let held = hand.editor().selection();
    hand.harness.get_by_label("Reveal").focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("a bit");
    hand.key(Key::Enter);
    assert!(hand.sees("can't read \"a bit\""));
    hand.key(Key::Escape);
    assert!(!hand.sees("can't read"));
    assert_eq!(hand.editor().selection(), held);
}
