//! Circuits strung by hand and automatically, their numbers while one drags, junction boxes.

use crate::hand::Hand;
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::{Cell, ModuleAt};
use egui::{Key, Modifiers};

/// The middle of a module of the first block, in plan.
fn module(hand: &Hand, row: u32, column: u32) -> DVec2 {
    let plan = hand.editor().document().plan();
    let block = &plan.layout.blocks[0];
    let module = block.modules.iter().find(|module| module.cell == Cell { row, column }).unwrap();
    plan.layout.roof.faces[block.face].plane.to_plan(module.rect.centre())
}

fn cells(hand: &Hand, circuit: usize) -> Vec<(u32, u32)> {
    let modules = &hand.job().circuits[circuit].modules;
    modules.iter().map(|ModuleAt { cell, .. }| (cell.row, cell.column)).collect()
}

/// A drag along the lowest row from the first module to the fourth, and back to the third: three modules in that order. It is one
/// step, and the number of modules is told while it goes on.
#[test]
fn a_row_is_dragged_over() {
    let mut hand = Hand::new();
    hand.key(Key::G);
    let [first, third, fourth] = [0, 2, 3].map(|column| hand.at(module(&hand, 0, column)));
    hand.drag(first, fourth);
    assert_eq!(hand.job().circuits.len(), 1);
    assert_eq!(cells(&hand, 0), [(0, 0), (0, 1), (0, 2), (0, 3)]);
    assert!(hand.sees("Circuit 1: 4 modules"));
    assert_eq!(hand.at(module(&hand, 0, 0)), first, "the drawing jumps under the hand");
    hand.harness.hover_at(third);
    hand.harness.run_steps(2);
    hand.drop(third);
    assert_eq!(cells(&hand, 0), [(0, 0), (0, 1), (0, 2)]);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(hand.job().circuits.is_empty());
}

/// Going on from the last module, and from the first, which then is the last.
#[test]
fn a_circuit_goes_on_from_either_end() {
    let mut hand = Hand::new();
    hand.key(Key::G);
    let at = |hand: &Hand, row, column| hand.at(module(hand, row, column));
    let (a, b) = (at(&hand, 0, 1), at(&hand, 0, 2));
    hand.drag(a, b);
    hand.drop(b);
    let above = at(&hand, 1, 2);
    hand.drag(b, above);
    hand.drop(above);
    assert_eq!(cells(&hand, 0), [(0, 1), (0, 2), (1, 2)]);
    let before = at(&hand, 0, 0);
    hand.drag(a, before);
    hand.drop(before);
    assert_eq!(cells(&hand, 0), [(1, 2), (0, 2), (0, 1), (0, 0)]);
    // Esc while one drags gives it up.
    let far = at(&hand, 1, 0);
    hand.drag(before, far);
    hand.key(Key::Escape);
    hand.drop(far);
    assert_eq!(cells(&hand, 0).len(), 4);
}

/// By keys alone: the cross stands in the middle of the view; Enter takes the module under it, and Enter again takes it off.
#[test]
fn modules_are_taken_by_keys() {
    let mut hand = Hand::new();
    hand.key(Key::G);
    let goal = module(&hand, 0, 0);
    for _ in 0..200 {
        let Some(at) = hand.editor().aimed_at() else {
            hand.key(Key::ArrowDown);
            continue;
        };
        let away = goal - at;
        if away.abs().max_element() < 0.31 {
            break;
        }
        let right = if away.x > 0.0 { Key::ArrowRight } else { Key::ArrowLeft };
        let up = if away.y > 0.0 { Key::ArrowUp } else { Key::ArrowDown };
        hand.key(if away.x.abs() > away.y.abs() { right } else { up });
    }
    hand.key(Key::Enter);
    assert_eq!(cells(&hand, 0), [(0, 0)]);
    hand.key(Key::Enter);
    assert!(hand.job().circuits.is_empty());
}

/// All modules strung by one command, with what is proved, in a pane; every module is in exactly one circuit. A press on a row holds
/// its circuit, and what is held can be turned about and taken away.
#[test]
fn strung_automatically() {
    let mut hand = Hand::sized(1500.0, 1300.0);
    hand.key(Key::N);
    hand.click_plan(3.0, 3.0);
    assert_eq!(hand.job().boxes.len(), 1);
    hand.chord(Modifiers::SHIFT, Key::G);
    hand.settle();
    let job = hand.job();
    let mut strung: Vec<ModuleAt> = job.circuits.iter().flat_map(|circuit| circuit.modules.clone()).collect();
    let mut all: Vec<ModuleAt> = job
        .blocks
        .iter()
        .flat_map(|block| block.cells().map(|cell| ModuleAt { block: block.id, cell }))
        .collect();
    strung.sort();
    all.sort();
    assert_eq!(strung, all);
    assert!(job.circuits.iter().all(|circuit| circuit.to == Some(job.boxes[0].id)));
    assert!(hand.sees("12 modules that may share a circuit: one circuit") && hand.sees("Over all ways"));
    hand.press(&job.circuits[0].name);
    let before = hand.job().circuits[0].modules.clone();
    hand.press("Turn about");
    let turned: Vec<ModuleAt> = before.into_iter().rev().collect();
    assert_eq!(hand.job().circuits[0].modules, turned);
    hand.press("Delete circuit");
    assert_eq!(hand.job().circuits.len(), job.circuits.len() - 1);
    assert!(hand.sees("No circuit yet"));
}

/// What the kit's inverter and temperatures leave open is told, and can be typed in the scale that the units go with.
#[test]
fn what_is_not_stated_is_told_and_typed() {
    let mut hand = Hand::new();
    hand.key(Key::I);
    assert!(hand.sees("A planning aid. Electrical design"));
    let field = hand.harness.get_by_label("Lowest air");
    field.click();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("14 F");
    hand.key(Key::Enter);
    assert!((hand.job().wiring.lowest_celsius.unwrap() + 10.0).abs() < 1e-9);
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_ne!(hand.job().wiring.lowest_celsius, Some(-10.0));
}

use egui_kittest::kittest::Queryable;

/// A junction box is dragged, typed to a place, given a leg, and taken away.
#[test]
fn a_junction_box_is_a_thing() {
    let mut hand = Hand::new();
    hand.key(Key::N);
    hand.click_plan(4.0, 3.0);
    let (from, to) = (hand.at(dvec2(4.0, 3.0)), hand.at(dvec2(5.0, 3.5)));
    assert!((hand.job().boxes[0].at - dvec2(4.0, 3.0)).length() < 0.05);
    hand.drag(from, to);
    hand.drop(to);
    assert!((hand.job().boxes[0].at - dvec2(5.0, 3.5)).length() < 0.05);
    hand.press("Add a leg");
    assert_eq!(hand.job().boxes[0].legs.len(), 1);
    hand.key(Key::Delete);
    assert!(hand.job().boxes.is_empty());
}

/// The layer comes and goes by its key; while a circuit is strung it is there anyway.
#[test]
fn the_layer_has_a_key() {
    let mut hand = Hand::new();
    hand.key(Key::G);
    let (a, b) = (hand.at(module(&hand, 0, 0)), hand.at(module(&hand, 0, 3)));
    hand.drag(a, b);
    hand.drop(b);
    hand.key(Key::Escape);
    hand.key(Key::Escape);
    assert!(!hand.editor().shows_circuits());
    hand.key(Key::W);
    assert!(hand.editor().shows_circuits());
    hand.key(Key::W);
    assert!(!hand.editor().shows_circuits());
}

/// An electrician's reading is typed back, step by step, and taken away; the service panel is there once its bus is typed.
#[test]
fn readings_and_the_service_panel_are_typed() {
    let mut hand = Hand::sized(1500.0, 1300.0);
    hand.key(Key::G);
    let (a, b) = (hand.at(module(&hand, 0, 0)), hand.at(module(&hand, 0, 3)));
    hand.drag(a, b);
    hand.drop(b);
    let fill = |hand: &mut Hand, label: &str, typed: &str| {
        hand.harness.get_by_label(label).click();
        hand.harness.run();
        hand.chord(Modifiers::COMMAND, Key::A);
        hand.key(Key::Backspace);
        hand.type_text(typed);
        hand.key(Key::Enter);
    };
    fill(&mut hand, "Open, V", "4.1");
    fill(&mut hand, "Modules at", "50 F");
    let read = hand.job().readings[0];
    assert_eq!((read.open_volts, read.celsius), (Some(4.1), 10.0));
    hand.press("Remove what was measured");
    assert!(hand.job().readings.is_empty());
    hand.key(Key::I);
    fill(&mut hand, "Bus, A", "225");
    fill(&mut hand, "Main breaker, A", "200");
    let service = hand.job().wiring.service.unwrap();
    assert_eq!((service.bus_amps, service.main_breaker_amps), (225.0, 200.0));
    fill(&mut hand, "Bus, A", "");
    assert!(hand.job().wiring.service.is_none());
}

/// Enter ends a field beside the drawing, and is no click of the tool that is up.
#[test]
fn the_enter_of_a_field_is_for_the_field() {
    for tool in [Key::P, Key::N, Key::G] {
        let mut hand = Hand::new();
        hand.key(tool);
        let before = hand.job();
        hand.harness.get_by_label("Name").click();
        hand.harness.run();
        hand.type_text("x");
        hand.key(Key::Enter);
        let after = hand.job();
        assert_ne!(after.name, before.name);
        assert_eq!(
            (&after.penetrations, &after.boxes, &after.circuits),
            (&before.penetrations, &before.boxes, &before.circuits)
        );
    }
}

/// A box that is placed after its circuits is where they lead, in one step.
#[test]
fn circuits_lead_to_the_box_that_comes_after_them() {
    let mut hand = Hand::new();
    hand.key(Key::G);
    let (a, b) = (hand.at(module(&hand, 0, 0)), hand.at(module(&hand, 0, 3)));
    hand.drag(a, b);
    hand.drop(b);
    hand.key(Key::Escape);
    hand.key(Key::N);
    hand.click_plan(4.0, 6.0);
    let job = hand.job();
    assert_eq!(job.circuits[0].to, Some(job.boxes[0].id));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(hand.job().boxes.is_empty() && hand.job().circuits[0].to.is_none());
}
