//! The courses pane, and the fit-up pane.

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
fn the_rail_is_shown_among_the_courses_and_moves_onto_a_line() {
    let mut hand = Hand::new();
    hand.key(Key::C);
    assert!(hand.sees("Base rail line"), "no rail is told");
    let before = hand.job();
    // 3 in higher: between two lines 5 in apart.
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

/// By hand, in inches: the first line at 5, the rail at 24, the ridge at 201.246. From the line it is 19 to the rail
/// and 196.246 to the ridge: no exposure from 4 to 4 7/8 divides both to within 1/16. With the rail two inches lower,
/// 50 courses of 4.265 are 213.246: 4 make 17.06, 46 make 196.19, both 0.06 off.
#[test]
fn an_exposure_that_fits_both_ends_is_proposed_and_applied() {
    let mut hand = Hand::new();
    hand.key(Key::C);
    type_into(&mut hand, "Exposure from", "4\"");
    type_into(&mut hand, "Exposure to", "4 7/8\"");
    assert!(hand.sees("No exposure in this range"));
    hand.harness.get_by_label_contains("Block A, 3 rows of 4").click_accesskit();
    hand.harness.run();
    hand.key(Key::ArrowDown);
    hand.key(Key::ArrowDown);
    let before = hand.job().face(SOUTH).unwrap().courses;
    hand.harness.get_all_by_label_contains("Use it: ").next().expect("no exposure").click_accesskit();
    hand.harness.run();
    let after = hand.job().face(SOUTH).unwrap().courses;
    assert!((after.exposure.inches() - 4.265).abs() < 0.002, "{}", after.exposure.inches());
    assert_eq!(after.first, before.first);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().face(SOUTH).unwrap().courses, before);
}

/// A racked deck: 16 × 12 ft with diagonals of 20 ft 1/2 in and 19 ft 11 1/2 in. Racking by δ makes the diagonals
/// differ by about 2 w δ / D (the parallelogram law gives it exactly): for a difference of 1 in, δ is 240 · 1 / (2 ·
/// 192) = 5/8 in.
#[test]
fn a_deck_out_of_square_is_detected_by_its_diagonals() {
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
    // 58 ft to fill do not widen the reveals.
    assert!(
        hand.sees("Row 1, 4 modules: 58' to fill; it fits with its reveal of 1/8"),
        "whether the row closes is not told"
    );
    assert!(hand.sees("The reveal stays at 1/8") && hand.sees("at worst: the row fits"));
    // By hand: 24' 7 1/2" less 12" at each rake are 271.5 in; four modules with 1/8 in between are 271.556.
    for (label, reads) in [
        ("Width at the eave", "24' 7 1/2\""),
        ("Width at the head", "24' 7 1/2\""),
        ("Rising diagonal", "29' 9 1/2\""),
        ("Falling diagonal", "29' 9 1/2\""),
    ] {
        type_into(&mut hand, label, reads);
    }
    let before = hand.job();
    assert!(hand.sees("Set the reveal of the block to"));
    hand.harness.get_by_label("Set this reveal").scroll_to_me();
    hand.harness.run();
    hand.press("Set this reveal");
    let (now, then) = (hand.job().blocks[0].reveal, before.blocks[0].reveal);
    // 0.056 in too long over three reveals: each gets about 0.02 in narrower.
    assert!(
        now < then && now > before.kit.reveal.least && (then.inches() - now.inches()) < 0.03,
        "{}",
        now.inches()
    );
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
}
