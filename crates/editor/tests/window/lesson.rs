//! The introductory lesson: it follows what the user does in the job, and can be left at any time.

use crate::block::block;
use crate::hand::Hand;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

#[test]
fn the_lesson_leads_from_nothing_to_an_order() {
    let mut hand = Hand::empty();
    hand.press("Show me, step by step");
    assert!(hand.sees("Step 1 of 6") && hand.sees("Raise a roof over the walls"));
    hand.chord(Modifiers::SHIFT, Key::W);
    hand.click_plan(-6.0, -5.0);
    hand.type_toward((2.0, 2.0), "48' x 30'");
    hand.harness.run();
    assert!(hand.sees("Step 2 of 6"), "the roof is not seen: {:?}", hand.job().faces.len());
    hand.press("Skip this step");
    assert!(hand.sees("Step 3 of 6"));
    hand.key(Key::P);
    let middle = {
        let plan = hand.editor().document().plan();
        plan.layout.roof.faces[0].plan.bounds().unwrap().centre()
    };
    hand.click_plan(middle.x, middle.y);
    hand.harness.run();
    assert!(hand.sees("Step 4 of 6"));
    hand.key(Key::Escape);
    hand.key(Key::Escape);
    hand.key(Key::L);
    hand.settle();
    assert!(hand.sees("Step 5 of 6"), "{:?}, {}", hand.job().blocks, hand.editor().said());
    // Breaking and fixing any rule will do: the array is pushed off the roof, and back.
    assert!(hand.job().blocks.iter().any(|b| b.id == block(&hand).id));
    let at = hand.job().blocks[0].at;
    let face = hand.job().face(hand.job().blocks[0].face).unwrap().plane();
    hand.click_plan(face.to_plan(at).x + 0.4, face.to_plan(at).y + 0.4);
    assert!(hand.editor().selection().block().is_some(), "no block was taken");
    for _ in 0..4 {
        hand.chord(Modifiers::SHIFT, Key::ArrowUp);
    }
    hand.harness.run();
    assert!(!hand.editor().document().plan().findings.is_empty(), "nothing is broken");
    assert!(hand.sees("Step 5 of 6"), "broken alone is not mended");
    for _ in 0..4 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    hand.harness.run();
    let findings: Vec<_> =
        hand.editor().document().plan().findings.iter().map(|f| f.key.to_string()).collect();
    assert!(hand.sees("Step 6 of 6"), "{findings:#?}");
    hand.key(Key::O);
    hand.harness.run();
    assert!(hand.sees("All done"));
}

#[test]
fn the_lesson_can_be_left_at_any_time_keeping_the_job() {
    let mut hand = Hand::empty();
    hand.press("Show me, step by step");
    hand.press("Leave the steps");
    assert!(!hand.sees("Step 1 of 6") && hand.sees("Start with the roof"));
}

#[test]
fn a_glossary_term_is_found() {
    let mut hand = Hand::new();
    hand.press("Help");
    hand.press("Words of the trade");
    assert!(hand.sees("valley") && hand.sees("ridge"));
    hand.harness.get_by_label("Find a word").click();
    hand.harness.run();
    hand.type_text("chalk");
    assert!(hand.sees("A straight line snapped on the deck"));
    assert!(!hand.sees("Where two faces meet inward"));
}
