//! Multiple selection: by a box, by Shift and clicks, by a key.

use crate::hand::{Hand, feet};
use chalkcourse::Selection;
use chalkcourse_geometry::{DVec2, dvec2};
use egui::{Event, Key, Modifiers, PointerButton, Pos2};
use egui_kittest::kittest::Queryable;

/// Draws a box around a plan rectangle, from its upper left to its lower right.
fn draw_box(hand: &mut Hand, from: DVec2, to: DVec2) {
    let (from, to) = (hand.at(from), hand.at(to));
    hand.drag(from, to);
    hand.drop(to);
}

fn click_with_shift(hand: &mut Hand, pos: Pos2) {
    let modifiers = Modifiers::SHIFT;
    hand.harness.hover_at(pos);
    hand.harness.run();
    for pressed in [true, false] {
        let event = Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers };
        hand.harness.event_modifiers(event, modifiers);
        hand.harness.step();
    }
    hand.harness.run_steps(30);
}

/// Corners of the whole roof in plan, a little outside.
fn around(hand: &Hand) -> (DVec2, DVec2) {
    let faces = &hand.editor().document().plan().layout.roof.faces;
    let bounds = faces.iter().filter_map(|face| face.plan.bounds()).reduce(|a, b| a.union(&b)).unwrap();
    let out = DVec2::splat(feet(1.5));
    (dvec2(bounds.min.x - out.x, bounds.max.y + out.y), dvec2(bounds.max.x + out.x, bounds.min.y - out.y))
}

#[test]
fn a_box_selects_its_contents_which_move_and_are_deleted_as_one_step() {
    let mut hand = Hand::new();
    let before = hand.job();
    let (from, to) = around(&hand);
    draw_box(&mut hand, from, to);
    assert!(hand.sees("1 block, 4 penetrations"), "the box took something else");
    hand.key(Key::ArrowRight);
    let moved = hand.job();
    let inch = 0.0254;
    assert!((moved.blocks[0].at.x - before.blocks[0].at.x - inch).abs() < 1e-9);
    for (now, was) in moved.penetrations.iter().zip(&before.penetrations) {
        assert!(((now.at - was.at).length() - inch).abs() < 1e-9, "{} did not come along", now.name);
    }
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
    hand.key(Key::Delete);
    assert!(hand.job().blocks.is_empty() && hand.job().penetrations.is_empty());
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before, "more than one step");
}

/// A box over part of a block selects its modules: they are switched off together.
#[test]
fn a_box_over_modules_switches_them() {
    let mut hand = Hand::new();
    let plan = std::sync::Arc::clone(hand.editor().document().plan());
    let placed = &plan.layout.blocks[0];
    let plane = plan.layout.roof.faces[placed.face].plane;
    let bounds = placed.bounds.unwrap();
    // The two columns on the right, from outside the block above it to below its second row.
    let out = bounds.size() * 0.08;
    let from = plane.to_plan(dvec2(bounds.max.x + out.x, bounds.max.y + out.y));
    let to =
        plane.to_plan(dvec2(bounds.centre().x - out.x * 0.5, bounds.min.y + bounds.size().y / 3.0 - out.y));
    draw_box(&mut hand, from, to);
    assert!(hand.sees("4 modules"), "the box took something else");
    let modules = plan.summary.modules;
    hand.press("Switch these modules off");
    assert_eq!(hand.editor().document().plan().summary.modules, modules - 4);
    hand.key(Key::X);
    assert_eq!(hand.editor().document().plan().summary.modules, modules);
}

#[test]
fn shift_adds_and_removes_and_a_drag_moves_all() {
    let mut hand = Hand::new();
    let before = hand.job();
    let at = |hand: &Hand, name: &str| hand.harness.get_by_label_contains(name).rect().center();
    let one = at(&hand, "Pipe 1");
    hand.click(one);
    let other = at(&hand, "Pipe 2");
    click_with_shift(&mut hand, other);
    assert!(hand.sees("2 penetrations"));
    hand.drag(one, one + egui::vec2(30.0, 0.0));
    hand.drop(one + egui::vec2(30.0, 0.0));
    let by = |hand: &Hand, n: usize| hand.job().penetrations[n].at - before.penetrations[n].at;
    let (a, b) = (by(&hand, 0), by(&hand, 1));
    assert!(a.x > 0.1 && (a - b).length() < 1e-9, "{a} {b}");
    let other = at(&hand, "Pipe 2");
    click_with_shift(&mut hand, other);
    let id = before.penetrations[0].id;
    assert_eq!(hand.editor().selection(), Selection::Penetration(id), "one is left, and held as one");
}

#[test]
fn a_key_selects_all_and_esc_clears_it() {
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::A);
    assert!(hand.sees("1 block, 4 penetrations"));
    hand.key(Key::Escape);
    assert!(!hand.sees("1 block, 4 penetrations"));
}
