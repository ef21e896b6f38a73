//! The list of steps: earlier states can be seen, and returned to.

use crate::block::select;
use crate::hand::Hand;
use egui::Key;
use egui_kittest::kittest::Queryable;

fn nudge(hand: &mut Hand, key: Key) {
    hand.key(key);
}

fn left_of_a(hand: &Hand) -> f64 {
    hand.job().blocks[0].at.x
}

fn press_step(hand: &mut Hand, words: &str) {
    hand.harness.get_by_label_contains(words).click();
    hand.harness.run();
}

#[test]
fn clicking_a_step_goes_there_and_keeps_other_branches() {
    let mut hand = Hand::new();
    select(&mut hand);
    let start = left_of_a(&hand);
    nudge(&mut hand, Key::ArrowRight);
    hand.harness.run_steps(60);
    let right = left_of_a(&hand);
    assert!(right > start);
    hand.key(Key::Escape);
    hand.key(Key::H);
    assert!(hand.sees("Steps taken") && hand.sees("1.  open"));
    // Back, and something else instead.
    press_step(&mut hand, "1.  open");
    assert!((left_of_a(&hand) - start).abs() < 1e-12);
    assert!(hand.editor().said().contains("1.  open"), "{}", hand.editor().said());
    assert!(hand.sees("undone"));
    (0..2).for_each(|_| hand.key(Key::Escape));
    select(&mut hand);
    nudge(&mut hand, Key::ArrowLeft);
    hand.harness.run_steps(60);
    let left = left_of_a(&hand);
    assert!(left < start);
    hand.key(Key::H);
    assert!(hand.sees("left aside"));
    // The abandoned step is still there.
    press_step(&mut hand, "2.  nudge");
    assert!((left_of_a(&hand) - right).abs() < 1e-12);
    press_step(&mut hand, "3.  nudge");
    assert!((left_of_a(&hand) - left).abs() < 1e-12);
}
