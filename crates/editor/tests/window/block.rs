use crate::hand::Hand;
use chalkcourse::Selection;
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::{Block, Cell};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

pub(crate) fn block(hand: &Hand) -> Block {
    hand.job().blocks[0].clone()
}

/// A point on the sample's block in plan, as a fraction of a module.
fn on_block(hand: &Hand, cell: Cell, part: DVec2) -> DVec2 {
    let job = hand.job();
    let block = &job.blocks[0];
    let face = job.face(block.face).unwrap();
    face.plane().to_plan(block.corner_of(cell, &job.kit) + block.module_size(&job.kit) * part)
}

pub(crate) fn select(hand: &mut Hand) {
    let at = on_block(hand, Cell { row: 0, column: 0 }, dvec2(0.3, 0.4));
    let pos = hand.at(at);
    hand.click(pos);
    assert_eq!(hand.editor().selection(), Selection::Block(block(hand).id));
}

#[test]
fn arrow_keys_nudge_by_inch_foot_and_sixteenth() {
    let mut hand = Hand::new();
    select(&mut hand);
    let start = block(&hand).at;
    for (modifiers, key, inches) in [
        (Modifiers::NONE, Key::ArrowRight, dvec2(1.0, 0.0)),
        (Modifiers::SHIFT, Key::ArrowRight, dvec2(12.0, 0.0)),
        (Modifiers::ALT, Key::ArrowUp, dvec2(0.0, 1.0 / 16.0)),
        (Modifiers::NONE, Key::ArrowDown, dvec2(0.0, -1.0)),
    ] {
        let before = block(&hand).at;
        hand.chord(modifiers, key);
        let moved = block(&hand).at - before;
        let expect = inches * Length::from_inches(1.0).metres();
        assert!((moved - expect).length() < 1e-9, "{modifiers:?} {key:?}: {moved}");
    }
    for _ in 0..4 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(block(&hand).at, start);
}

/// On a face that slopes down to the north, up on the screen is down the slope; face-on its eave is at the bottom.
#[test]
fn arrow_keys_follow_the_screen_on_a_north_face() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.key(Key::M);
    let job = hand.job();
    let north = job.blocks[1].clone();
    assert_ne!(north.face, job.blocks[0].face, "the mirror image is held");
    assert_eq!(hand.editor().selection(), Selection::Block(north.id));
    let plan = |hand: &Hand| {
        let job = hand.job();
        job.face(north.face).unwrap().plane().to_plan(job.blocks[1].at)
    };
    for (key, way) in [(Key::ArrowUp, dvec2(0.0, 1.0)), (Key::ArrowRight, dvec2(1.0, 0.0))] {
        let before = plan(&hand);
        hand.key(key);
        let moved = plan(&hand) - before;
        assert!(moved.length() > 0.02 && moved.normalize().distance(way) < 1e-9, "{key:?}: {moved}");
    }
    hand.key(Key::Num2);
    let before = hand.job().blocks[1].at;
    hand.key(Key::ArrowUp);
    let moved = hand.job().blocks[1].at - before;
    assert!((moved - dvec2(0.0, 0.0254)).length() < 1e-9, "face-on: {moved}");
}

#[test]
fn a_handle_adds_columns_and_counts_follow() {
    let mut hand = Hand::new();
    select(&mut hand);
    let right = on_block(&hand, Cell { row: 1, column: 3 }, dvec2(1.0, 0.5));
    let from = hand.at(right) + egui::vec2(7.0, 0.0);
    let wide = block(&hand).spacing(&hand.job().kit).x;
    let to = hand.at(right + dvec2(wide * 2.1, 0.0));
    hand.drag(from, to);
    hand.drop(to);
    assert_eq!((block(&hand).rows, block(&hand).columns), (3, 6));
    assert_eq!(hand.editor().document().plan().summary.modules, 18);
}

#[test]
fn redo_applies_a_cancelled_drag() {
    let mut hand = Hand::new();
    select(&mut hand);
    let from = hand.at(on_block(&hand, Cell { row: 0, column: 0 }, dvec2(0.3, 0.4)));
    let (before, to) = (block(&hand).at, from + egui::vec2(60.0, 0.0));
    hand.drag(from, to);
    hand.key(Key::Escape);
    hand.drop(to);
    assert_eq!(block(&hand).at, before);
    assert!(hand.editor().said().starts_with("Given up"), "{}", hand.editor().said());
    hand.chord(Modifiers::COMMAND, Key::Y);
    assert!(block(&hand).at.x > before.x + 0.3, "{:?}", block(&hand).at);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(block(&hand).at, before);
}

#[test]
fn a_double_click_switches_a_module() {
    let mut hand = Hand::new();
    let cell = Cell { row: 2, column: 1 };
    let at = on_block(&hand, cell, dvec2(0.5, 0.5));
    let pos = hand.at(at);
    hand.double_click(pos);
    assert!(block(&hand).off.contains(&cell));
    assert_eq!(hand.editor().document().plan().summary.modules, 11);
    hand.key(Key::X);
    assert!(block(&hand).off.is_empty(), "X switches the module that is held");
}

#[test]
fn modules_can_be_selected_by_name_only() {
    let mut hand = Hand::new();
    hand.harness.get_by_label_contains("Block A, 3 rows of 4").click_accesskit();
    hand.harness.run();
    assert_eq!(hand.editor().selection(), Selection::Block(block(&hand).id));
    hand.harness.get_by_label("Module row 3, column 4").click_accesskit();
    hand.harness.run();
    hand.key(Key::X);
    assert!(block(&hand).off.contains(&Cell { row: 2, column: 3 }));
}

#[test]
fn a_field_accepts_any_notation_of_length_and_reports_errors() {
    let mut hand = Hand::new();
    select(&mut hand);
    let field = |hand: &mut Hand, text: &str| {
        hand.harness.get_by_label("Reveal").focus();
        hand.harness.run();
        hand.chord(Modifiers::COMMAND, Key::A);
        hand.type_text(text);
        hand.key(Key::Enter);
    };
    field(&mut hand, "5 mm");
    assert!((block(&hand).reveal.mm() - 5.0).abs() < 1e-9);
    field(&mut hand, "a bit");
    assert!(hand.sees("can't read \"a bit\""));
    assert!((block(&hand).reveal.mm() - 5.0).abs() < 1e-9);
}

#[test]
fn quantities_show_what_a_drag_changes() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.press("Quantities");
    let right = on_block(&hand, Cell { row: 1, column: 3 }, dvec2(1.0, 0.5));
    let from = hand.at(right) + egui::vec2(7.0, 0.0);
    let to = hand.at(right + dvec2(block(&hand).spacing(&hand.job().kit).x * 1.1, 0.0));
    hand.drag(from, to);
    assert!(hand.sees("(+3)"), "three modules more are not told");
    hand.drop(to);
    assert!(!hand.sees("(+3)"));
}

#[test]
fn the_same_drag_works_face_on() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.key(Key::Num2);
    let before = block(&hand).at;
    let at = on_block(&hand, Cell { row: 1, column: 1 }, dvec2(0.5, 0.5));
    let face = hand.job().faces[0].plane();
    let (from, to) = (hand.at(at), hand.at(face.to_plan(face.to_frame(at) + dvec2(1.3, 0.0))));
    hand.drag(from, to);
    hand.drop(to);
    let moved = block(&hand).at - before;
    assert!((moved.x - 1.3).abs() < 0.3 && moved.y.abs() < 0.2, "{moved}");
}

/// Changes of the panel's contents must not shift the drawing.
#[test]
fn selecting_a_module_does_not_shift_the_drawing() {
    let mut hand = Hand::new();
    let still = hand.at(dvec2(0.0, 0.0));
    let cell = Cell { row: 1, column: 1 };
    let at = on_block(&hand, cell, dvec2(0.5, 0.5));
    let pos = hand.at(at);
    hand.double_click(pos);
    assert!(block(&hand).off.contains(&cell));
    assert_eq!(hand.at(dvec2(0.0, 0.0)), still);
}
