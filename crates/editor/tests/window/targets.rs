//! The size of click targets.

use crate::hand::Hand;
use egui::{Key, Modifiers};
use egui_kittest::kittest::NodeT;

/// Clickable items and fields smaller than 24 by 24 points (WCAG 2.2, 2.5.8; from memory), except links within a
/// sentence and objects on the drawing, which have their own size.
fn too_small(hand: &Hand) -> Vec<String> {
    use egui::accesskit::Role;
    let pressed = [
        Role::Button,
        Role::CheckBox,
        Role::RadioButton,
        Role::ComboBox,
        Role::TextInput,
        Role::SpinButton,
        Role::Tab,
        Role::MenuItem,
    ];
    let root = hand.harness.root();
    let all = root.children_recursive();
    all.filter_map(|node| {
        let it = node.accesskit_node();
        it.bounding_box()?;
        let rect = node.rect();
        // The toolkit draws this one 14 points wide and accepts clicks up to 5 points beside it: 24 in all.
        if it.label().as_deref() == Some("Close window") {
            return None;
        }
        let small = rect.width() < 23.9 || rect.height() < 23.9;
        (pressed.contains(&it.role()) && small && rect.is_positive())
            .then(|| format!("{:?} {:?} {:?}", it.role(), it.label(), rect.size()))
    })
    .collect()
}

#[test]
fn click_targets_are_at_least_24_points_wide_and_high() {
    let mut hand = Hand::new();
    let check = |hand: &Hand, when: &str| {
        let small = too_small(hand);
        assert!(small.is_empty(), "{when}: {small:#?}");
    };
    check(&hand, "the sample");
    crate::block::select(&mut hand);
    check(&hand, "a block held");
    hand.press("Quantities");
    check(&hand, "quantities");
    for (key, when) in [(Key::D, "drawing"), (Key::P, "marking"), (Key::S, "selecting")] {
        hand.key(key);
        check(&hand, when);
    }
    let pipe = hand.job().penetrations[0].at;
    let pos = hand.at(pipe);
    hand.click(pos);
    check(&hand, "a pipe held");
    for (key, when) in [(Key::H, "steps"), (Key::C, "courses"), (Key::Q, "fit-up")] {
        hand.key(key);
        check(&hand, when);
        hand.key(Key::Escape);
    }
    hand.press("Edit");
    check(&hand, "a menu");
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND, Key::F);
    check(&hand, "finding");
}
