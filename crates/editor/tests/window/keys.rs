//! Keyboard only: there is no pointer in these tests.

use crate::block::select;
use crate::hand::Hand;
use chalkcourse::Selection;
use chalkcourse_geometry::{DVec2, Polygon};
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

/// Area of the first part's footprint in square feet.
fn walls(hand: &Hand) -> f64 {
    Polygon::new(hand.job().parts[0].outline.outer.clone()).area() / 0.3048 / 0.3048
}

/// The focused node: its role and name.
fn focused(hand: &Hand) -> Option<(Role, String)> {
    let node = hand.harness.query_all_by(|node| node.is_focused()).last()?;
    let node = node.accesskit_node();
    let by = node.labelled_by().filter_map(|label| label.label().or_else(|| label.value())).next();
    let name = node.label().filter(|label| !label.is_empty()).or(by).unwrap_or_default();
    Some((node.role(), name))
}

/// Moves to a button by Tab, presses it by the space bar, and returns to the drawing by Esc.
fn choose(hand: &mut Hand, name: &str) {
    for _ in 0..80 {
        hand.chord(Modifiers::SHIFT, Key::Tab);
        hand.harness.run_steps(2);
        if focused(hand).is_some_and(|(role, found)| role == Role::Button && found == name) {
            break;
        }
    }
    assert_eq!(focused(hand).unwrap().1, name);
    hand.key(Key::Space);
    hand.key(Key::Escape);
}

#[test]
fn a_house_of_a_typed_size_is_drawn_where_the_arrows_aim() {
    let mut hand = Hand::empty();
    hand.chord(Modifiers::SHIFT, Key::W);
    hand.key(Key::Enter);
    hand.key(Key::ArrowLeft);
    hand.key(Key::ArrowDown);
    hand.type_text("48 x 30");
    hand.key(Key::Enter);
    assert!((walls(&hand) - 48.0 * 30.0).abs() < 1e-6, "{}", walls(&hand));
    // To the left of and below the first corner, which is the middle of the empty drawing.
    let bounds = hand.job().parts[0].outline.bounds().unwrap();
    assert!(bounds.max.x.abs() < 1e-9 && bounds.max.y.abs() < 1e-9, "{bounds:?}");
}

/// The notch of an L is at the corner that the arrows aim at.
#[test]
fn an_l_is_cut_where_the_arrows_aim() {
    let mut hand = Hand::empty();
    hand.chord(Modifiers::SHIFT, Key::W);
    choose(&mut hand, "L");
    hand.key(Key::Enter);
    hand.type_text("48 x 30");
    hand.key(Key::Enter);
    for _ in 0..3 {
        hand.chord(Modifiers::SHIFT, Key::ArrowDown);
    }
    hand.type_text("20 x 12");
    hand.key(Key::Enter);
    assert!((walls(&hand) - (48.0 * 30.0 - 20.0 * 12.0)).abs() < 1e-6, "{}", walls(&hand));
    let feet = |x: f64, y: f64| DVec2::new(x, y) * 0.3048;
    let outline = &hand.job().parts[0].outline;
    assert!(!outline.contains(feet(47.0, 1.0)) && outline.contains(feet(47.0, 29.0)), "{outline:?}");
}

#[test]
fn a_face_is_drawn_side_by_side_with_arrows_and_lengths() {
    let mut hand = Hand::empty();
    hand.key(Key::D);
    choose(&mut hand, "Face");
    hand.key(Key::Enter);
    for (way, length) in [(Key::ArrowRight, "40'"), (Key::ArrowUp, "16'"), (Key::ArrowLeft, "40'")] {
        hand.key(way);
        hand.type_text(length);
        hand.key(Key::Enter);
    }
    hand.key(Key::Enter);
    let area = Polygon::new(hand.job().faces[0].outline.outer.clone()).area() / 0.3048 / 0.3048;
    assert!((area - 640.0).abs() < 1e-6, "{area}");
    // And by arrows only: 10 ft and 1 in per step.
    hand.key(Key::D);
    choose(&mut hand, "Face");
    hand.key(Key::Enter);
    for (modifiers, way) in [
        (Modifiers::SHIFT, Key::ArrowRight),
        (Modifiers::SHIFT, Key::ArrowDown),
        (Modifiers::SHIFT, Key::ArrowLeft),
    ] {
        hand.chord(modifiers, way);
        hand.chord(Modifiers::ALT, Key::ArrowRight);
        hand.chord(Modifiers::ALT, Key::ArrowLeft);
        hand.key(Key::Enter);
    }
    hand.key(Key::Enter);
    let area = Polygon::new(hand.job().faces[1].outline.outer.clone()).area() / 0.3048 / 0.3048;
    assert!((area - 100.0).abs() < 1e-6, "{area}");
}

#[test]
fn the_tape_is_used_by_keys() {
    let mut hand = Hand::new();
    hand.key(Key::T);
    hand.key(Key::Enter);
    hand.key(Key::ArrowRight);
    hand.chord(Modifiers::SHIFT, Key::ArrowRight);
    hand.harness.run_steps(2);
    assert!(hand.editor().on_screen(DVec2::ZERO).is_some());
    hand.key(Key::Escape);
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), Selection::Nothing);
}

#[test]
fn arrow_keys_walk_menus_and_nothing_under_them() {
    let mut hand = Hand::new();
    hand.key(Key::F10);
    assert_eq!(focused(&hand), Some((Role::Button, "File".into())));
    hand.key(Key::Enter);
    hand.key(Key::ArrowDown);
    assert!(focused(&hand).unwrap().1.starts_with("New job"));
    hand.key(Key::ArrowDown);
    assert!(focused(&hand).unwrap().1.starts_with("Open job…"));
    // A submenu, where choosing an item closes both menus.
    while !focused(&hand).unwrap().1.starts_with("Export") {
        hand.key(Key::ArrowDown);
    }
    hand.key(Key::Enter);
    hand.harness.run_steps(3);
    hand.key(Key::ArrowDown);
    assert!(focused(&hand).unwrap().1.starts_with("Order to print, by stage"), "{:?}", focused(&hand));
    hand.key(Key::Enter);
    assert!(hand.sees("Path of the file") && !hand.sees("Open recent"));
}

#[test]
fn the_context_menu_opens_by_a_key_and_is_walked() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.chord(Modifiers::SHIFT, Key::F10);
    assert!(hand.sees("Delete the block"));
    let blocks = hand.job().blocks.len();
    for _ in 0..40 {
        hand.key(Key::ArrowDown);
        if focused(&hand).is_some_and(|(_, name)| name == "Delete the block") {
            break;
        }
    }
    hand.key(Key::Enter);
    assert_eq!(hand.job().blocks.len(), blocks - 1);
    assert!(!hand.sees("Delete the block"), "the menu stays open");
}

#[test]
fn the_space_bar_leaves_a_line_out_and_orders_it_again() {
    let mut hand = Hand::new();
    hand.key(Key::O);
    hand.key(Key::ArrowDown);
    let number = hand.editor().lit().unwrap();
    hand.key(Key::Space);
    assert!(hand.job().order.off.contains_key(&number));
    hand.key(Key::Space);
    assert!(!hand.job().order.off.contains_key(&number));
}

#[test]
fn a_dialog_focuses_its_default_button() {
    let mut hand = Hand::new();
    hand.key(Key::P);
    hand.key(Key::Enter);
    hand.chord(Modifiers::COMMAND, Key::N);
    assert_eq!(focused(&hand), Some((Role::Button, "Save".into())));
    hand.key(Key::Tab);
    assert_eq!(focused(&hand).unwrap().1, "Don't save");
    hand.key(Key::Enter);
    assert!(hand.job().faces.is_empty());
}

#[test]
fn read_only_panes_scroll_by_keys() {
    let mut hand = Hand::sized(1000.0, 560.0);
    hand.key(Key::F1);
    let top = |hand: &Hand| hand.harness.get_by_label("Nudge by 1 in").rect().top();
    let before = top(&hand);
    hand.key(Key::PageDown);
    hand.harness.run_steps(30);
    assert!(top(&hand) < before - 50.0, "{} to {}", before, top(&hand));
}

/// From the first to the last and round again: everything that Tab reaches has a name, and it returns to the start.
#[test]
fn tab_cycles_and_everything_it_reaches_has_a_name() {
    for open in [None, Some(Key::O), Some(Key::C), Some(Key::Num3)] {
        let mut hand = Hand::sized(1280.0, 720.0);
        if let Some(key) = open {
            hand.key(key);
        }
        hand.key(Key::F10);
        let mut stops = Vec::new();
        for _ in 0..400 {
            hand.key(Key::Tab);
            hand.harness.run_steps(2);
            let Some((role, name)) = focused(&hand) else { continue };
            assert!(!name.trim().is_empty(), "{open:?}: after {:?} a {role:?} without a name", stops.last());
            assert!(role != Role::Splitter, "{open:?}: the border after {:?}", stops.last());
            if name == "File" {
                break;
            }
            stops.push(name);
        }
        assert!(stops.len() > 20 && stops.len() < 400, "{open:?}: {} stops", stops.len());
        assert!(stops.iter().any(|name| name.starts_with("Drawing of")), "{open:?}: {stops:?}");
        // And back in the other direction: a table may have scrolled in the meantime.
        hand.chord(Modifiers::SHIFT, Key::Tab);
        hand.harness.run_steps(4);
        let (_, last) = focused(&hand).unwrap();
        assert!(stops.iter().rev().take(4).any(|stop| *stop == last), "{open:?}: {last}");
    }
}
