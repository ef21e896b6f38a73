use crate::hand::Hand;
use chalkcourse::Selection;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

/// By keyboard only: search, move down the list, activate, leave.
#[test]
fn a_command_is_found_by_its_words_and_carried_out() {
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::F);
    hand.type_text("crew che");
    hand.key(Key::Enter);
    hand.harness.run();
    assert!(hand.sees("Crew checklist") && !hand.sees("What to do"), "the list is still open");
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND, Key::F);
    hand.type_text("p");
    hand.key(Key::ArrowDown);
    hand.key(Key::ArrowUp);
    hand.key(Key::Escape);
    assert!(!hand.sees("What to do"), "Esc does not leave");
    assert_eq!(hand.editor().selection(), Selection::Nothing);
}

#[test]
fn disabled_commands_do_nothing() {
    let mut hand = Hand::empty();
    hand.chord(Modifiers::COMMAND, Key::F);
    hand.type_text("fill");
    let before = hand.job();
    hand.key(Key::Enter);
    assert_eq!(hand.job(), before);
    assert!(hand.sees("What to do"), "it closed without doing anything");
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("zzz");
    assert!(hand.sees("Nothing has these words"));
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("draw");
    hand.key(Key::Enter);
    assert!(!hand.sees("What to do"));
    assert!(hand.harness.query_all_by_label_contains("Close the outline").next().is_none());
    let middle = egui::pos2(600.0, 400.0);
    hand.click(middle);
    assert!(hand.sees("Size"), "the tool was not taken");
}
