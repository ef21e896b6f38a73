//! Touch input: two fingers move the view, a long press is a right click, and handles are large enough.

use crate::block::select;
use crate::hand::Hand;
use chalkcourse_geometry::dvec2;
use egui::{Event, Modifiers, PointerButton, Pos2, TouchDeviceId, TouchId, TouchPhase, Vec2, pos2, vec2};

fn touch(hand: &mut Hand, finger: u64, phase: TouchPhase, pos: Pos2) {
    let event = Event::Touch { device_id: TouchDeviceId(1), id: TouchId(finger), phase, pos, force: None };
    hand.harness.input_mut().events.push(event);
}

/// The first finger is also reported as the pointer, as window systems do.
fn first(hand: &mut Hand, phase: TouchPhase, pos: Pos2) {
    touch(hand, 0, phase, pos);
    let events = &mut hand.harness.input_mut().events;
    events.push(Event::PointerMoved(pos));
    if matches!(phase, TouchPhase::Start | TouchPhase::End) {
        let pressed = phase == TouchPhase::Start;
        let (button, modifiers) = (PointerButton::Primary, Modifiers::NONE);
        events.push(Event::PointerButton { pos, button, pressed, modifiers });
    }
    if phase == TouchPhase::End {
        events.push(Event::PointerGone);
    }
}

fn middle_of_a(hand: &Hand) -> Pos2 {
    let placed = &hand.editor().document().plan().layout.blocks[0];
    let face = &hand.editor().document().plan().layout.roof.faces[placed.face];
    hand.at(face.plane.to_plan(placed.bounds.unwrap().centre() + dvec2(0.3, 0.3)))
}

/// Two fingers that move apart and wander: the roof between them is zoomed and moved along; the block under the first
/// finger stays in place, and there is no step.
#[test]
fn two_fingers_move_the_view_but_not_the_roof() {
    let mut hand = Hand::new();
    let before = hand.job();
    let at = middle_of_a(&hand);
    let far = |hand: &Hand| hand.at(dvec2(1.0, 0.0)) - hand.at(dvec2(0.0, 0.0));
    let (scale, shown) = (far(&hand).x, hand.at(dvec2(0.0, 0.0)));
    first(&mut hand, TouchPhase::Start, at);
    hand.harness.step();
    first(&mut hand, TouchPhase::Move, at + vec2(12.0, 0.0));
    hand.harness.step();
    touch(&mut hand, 1, TouchPhase::Start, at + vec2(100.0, 0.0));
    hand.harness.step();
    for step in 1..=10 {
        let step = step as f32;
        first(&mut hand, TouchPhase::Move, at + vec2(12.0 - 4.0 * step, 3.0 * step));
        touch(&mut hand, 1, TouchPhase::Move, at + vec2(100.0 + 4.0 * step, 3.0 * step));
        hand.harness.step();
    }
    touch(&mut hand, 1, TouchPhase::End, at + vec2(140.0, 30.0));
    first(&mut hand, TouchPhase::End, at + vec2(-28.0, 30.0));
    hand.harness.run();
    assert!(far(&hand).x > scale * 1.4, "no nearer: {} was {scale}", far(&hand).x);
    assert!((hand.at(dvec2(0.0, 0.0)) - shown).length() > 10.0, "the view did not move");
    assert_eq!(hand.job(), before, "the block was dragged");
    assert!(hand.editor().document().history().undo_label().is_none());
}

#[test]
fn a_long_press_opens_the_context_menu() {
    let mut hand = Hand::new();
    let at = middle_of_a(&hand);
    first(&mut hand, TouchPhase::Start, at);
    hand.harness.run_steps(70);
    first(&mut hand, TouchPhase::End, at);
    hand.harness.run();
    assert!(hand.sees("Delete the block"), "no menu");
    assert!(hand.editor().document().history().undo_label().is_none());
}

/// 16 points beside a handle: a miss for the mouse, a hit for a finger.
#[test]
fn handles_are_larger_after_touch_input() {
    let columns = |hand: &Hand| hand.job().blocks[0].columns;
    let drag = |hand: &mut Hand, touched: bool| {
        select(hand);
        let placed = &hand.editor().document().plan().layout.blocks[0];
        let (face, bounds) = (placed.face, placed.bounds.unwrap());
        let plane = hand.editor().document().plan().layout.roof.faces[face].plane;
        let edge = hand.at(plane.to_plan(dvec2(bounds.max.x, bounds.centre().y)));
        let inside = hand.at(plane.to_plan(bounds.centre()));
        let out = (edge - inside).normalized();
        let from = edge + out * if touched { 20.0 } else { 7.0 } + Vec2::new(-out.y, out.x) * 16.0;
        hand.drag(from, from + out * 60.0);
        hand.drop(from + out * 60.0);
    };
    let mut hand = Hand::new();
    let before = columns(&hand);
    drag(&mut hand, false);
    assert_eq!(columns(&hand), before, "the mouse took the handle from afar");
    let mut hand = Hand::new();
    first(&mut hand, TouchPhase::Start, pos2(120.0, 740.0));
    hand.harness.step();
    first(&mut hand, TouchPhase::End, pos2(120.0, 740.0));
    hand.harness.run_steps(60);
    drag(&mut hand, true);
    assert!(columns(&hand) > before, "the finger missed the handle");
}
