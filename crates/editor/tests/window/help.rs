//! Every field has a tooltip that says what it is for.

use crate::block::select;
use crate::hand::Hand;
use egui::{Key, Rect, Role};
use egui_kittest::kittest::{NodeT, Queryable};

/// Visible fields: their names and rectangles.
fn fields(hand: &Hand) -> Vec<(String, Rect)> {
    let nodes = hand.harness.query_all_by(|node| matches!(node.role(), Role::TextInput | Role::ComboBox));
    nodes
        .filter(|node| !node.accesskit_node().is_disabled())
        .map(|node| {
            let access = node.accesskit_node();
            let by = access.labelled_by().find_map(|label| label.value().or(label.label()));
            (access.label().or(by).unwrap_or_default(), node.rect())
        })
        .collect()
}

fn silent(hand: &mut Hand, place: &str, found: &mut Vec<String>) {
    let room = Rect::from_min_size(egui::Pos2::ZERO, egui::vec2(1280.0, 760.0));
    for (name, rect) in fields(hand) {
        // Fields scrolled out of view, behind the lists or below the window, can't be hovered.
        let (held, lists) = (rect.max.y < 385.0, rect.min.y > 440.0);
        if !room.contains_rect(rect)
            || rect.width() < 4.0
            || !(held && place != "fill" || lists && place == "fill")
        {
            continue;
        }
        let words = |hand: &Hand| {
            hand.harness.query_all_by(|node| node.value().is_some() || node.label().is_some()).count()
        };
        hand.harness.hover_at(egui::pos2(700.0, 60.0));
        hand.harness.run_steps(4);
        let before = words(hand);
        hand.harness.hover_at(rect.center());
        hand.harness.run_steps(70);
        if words(hand) <= before {
            found.push(format!("{place}: {name}"));
        }
    }
}

#[test]
fn every_field_has_help() {
    let mut found = Vec::new();
    let mut hand = Hand::new();
    silent(&mut hand, "job", &mut found);
    select(&mut hand);
    silent(&mut hand, "block", &mut found);
    hand.key(Key::Escape);
    let face = hand.harness.get_by_label_contains("Face South").rect().left_center() + egui::vec2(20.0, 0.0);
    hand.click(face);
    silent(&mut hand, "face", &mut found);
    let pipe = hand.harness.get_by_label_contains("Pipe 1").rect().center();
    hand.click(pipe);
    silent(&mut hand, "penetration", &mut found);
    hand.press("Fill");
    silent(&mut hand, "fill", &mut found);
    assert!(found.is_empty(), "{found:#?}");
}

/// The longest menu in the smallest supported window: it starts below its button, and its last item can be scrolled to
/// and works.
#[test]
fn a_menu_that_is_higher_than_the_window_scrolls() {
    let mut hand = Hand::new();
    hand.harness.set_size(egui::Vec2::new(1280.0, 720.0));
    hand.harness.run();
    hand.press("Edit");
    let steps = hand.harness.get_by_label_contains("Steps taken").rect();
    assert!(steps.top() > 40.0, "{steps:?}");
    let last = "Face from measurements";
    assert!(hand.harness.get_by_label_contains(last).rect().bottom() > 720.0, "nothing is to be scrolled");
    hand.harness.get_by_label_contains(last).scroll_to_me();
    hand.harness.run();
    let there = hand.harness.get_by_label_contains(last).rect();
    assert!(there.bottom() < 720.0, "{there:?}");
    hand.harness.get_by_label_contains(last).click();
    hand.harness.run();
    assert!(hand.sees("Still needed"), "its window opens");
}
