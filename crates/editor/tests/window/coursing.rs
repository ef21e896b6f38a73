//! The window of courses, and that of a deck as measured.

use crate::hand::Hand;
use chalkcourse_geometry::dvec2;
use chalkcourse_job::FaceId;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

const SOUTH: FaceId = FaceId(1);

fn type_into(hand: &mut Hand, label: &str, text: &str) {
    hand.harness.get_by_label(label).focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text(text);
    hand.key(Key::Enter);
}

#[test]
fn the_rail_is_told_among_the_courses_and_moves_onto_a_line() {
    let mut hand = Hand::new();
    hand.key(Key::C);
    assert!(hand.sees("Base rail line"), "no rail is told");
    let before = hand.job();
    // 3 in higher: between two lines of 5 in
    let block = before.blocks[0].clone();
    let pos = hand.at(before.face(SOUTH).unwrap().plane().to_plan(block.at + dvec2(0.6, 0.4)));
    hand.click(pos);
    for _ in 0..3 {
        hand.key(Key::ArrowUp);
    }
    let row = |hand: &Hand| {
        let mut rows = hand.harness.get_all_by_label_contains("Move it: Course line");
        rows.next().expect("no place is proposed").rect().center()
    };
    let at = row(&hand);
    hand.click(at);
    let moved = hand.job().blocks[0].clone();
    let face = hand.job().face(SOUTH).unwrap().clone();
    let eave = hand.editor().document().plan().layout.face(SOUTH).unwrap().1.bounds.min.y;
    let courses = (moved.at.y - eave - face.courses.first.metres()) / face.courses.exposure.metres();
    assert!((courses - courses.round()).abs() < 1e-6, "{courses} courses");
    assert!(hand.sees(", on course line"), "{}", hand.editor().said());
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_ne!(hand.job().blocks[0].at, moved.at, "undo does not take it back");
}

/// By hand, in inches: the first line at 5, the rail at 24, 16' 9 1/4" up the slope, an array of 134.17 with 8 of head above
/// it. Between line and rail lie 19, above the head 35.07: 12 courses share that as 4.506 each, 4 of which are 18.02. With
/// the rail an inch lower both ends come out to 1/16.
#[test]
fn an_exposure_that_comes_out_at_both_ends_is_proposed_and_set() {
    let mut hand = Hand::new();
    hand.key(Key::C);
    type_into(&mut hand, "Exposure from", "4\"");
    type_into(&mut hand, "Exposure to", "4 7/8\"");
    assert!(hand.sees("No exposure in this range"));
    hand.harness.get_by_label_contains("Block A, 3 rows of 4").click_accesskit();
    hand.harness.run();
    hand.key(Key::ArrowDown);
    let before = hand.job().face(SOUTH).unwrap().courses;
    hand.harness.get_all_by_label_contains("Use it: ").next().expect("no exposure").click_accesskit();
    hand.harness.run();
    let after = hand.job().face(SOUTH).unwrap().courses;
    assert!((after.exposure.inches() - 4.506).abs() < 0.02, "{}", after.exposure.inches());
    assert_eq!(after.first, before.first);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().face(SOUTH).unwrap().courses, before);
}

/// A racked deck: 16 × 12 ft whose diagonals read 20 ft 1/2 in and 19 ft 11 1/2 in. Racking δ makes diagonals differ by
/// about 2 w δ / D (the parallelogram law gives it exactly): with 1 in between them δ is 240 · 1 / (2 · 192) = 5/8 in.
#[test]
fn a_deck_out_of_square_is_told_from_its_diagonals() {
    let mut hand = Hand::new();
    hand.key(Key::Q);
    for (label, reads) in [
        ("Width at the eave", "16'"),
        ("Width at the head", "16'"),
        ("Left rake", "12'"),
        ("Right rake", "12'"),
        ("Rising diagonal", "20' 0 1/2\""),
        ("Falling diagonal", "19' 11 1/2\""),
    ] {
        type_into(&mut hand, label, reads);
    }
    assert!(hand.sees("The left rake leans 5/8\" to the right"), "the lean is not told");
    assert!(hand.sees("Square, with this eave and left rake, both diagonals would read 20'"));
    let taped = hand.job().face(SOUTH).unwrap().taped;
    let rising = taped.rising.expect("what was measured is not in the job").inches();
    assert!((rising - 240.5).abs() < 1e-9, "{rising}");
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().face(SOUTH).unwrap().taped.falling, None, "a measure can't be undone");
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    type_into(&mut hand, "Rising diagonal", "40'");
    assert!(hand.sees("make no triangle"), "a misread diagonal is not told");
    hand.press("As drawn");
    assert!(hand.sees("The left rake is square to the eave"));
}

#[test]
fn a_row_that_closes_sets_its_reveal() {
    let mut hand = Hand::new();
    hand.key(Key::Q);
    let before = hand.job();
    assert!(hand.sees("4 modules close with a reveal of"), "whether the row closes is not told");
    assert!(hand.sees("Worst case"));
    hand.harness.get_by_label("Set this reveal").scroll_to_me();
    hand.harness.run();
    hand.press("Set this reveal");
    let most = before.kit.reveal.most;
    assert_eq!(hand.job().blocks[0].reveal, most, "an opening with room to spare takes the widest reveal");
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
}
