//! What a screen reader reads of the drawing and the lists, in order: a text outline of the roof.

use crate::hand::Hand;
use egui::Role;
use egui_kittest::kittest::{NodeT, Queryable};

/// Role and name of every named node, in tree order.
fn outline(hand: &Hand) -> Vec<(Role, String)> {
    let nodes = hand.harness.query_all_by(|node| node.label().is_some());
    nodes.filter_map(|node| Some((node.accesskit_node().role(), node.accesskit_node().label()?))).collect()
}

#[test]
fn the_roof_is_read_out_face_by_face_then_what_is_on_it() {
    let hand = Hand::new();
    let all = outline(&hand);
    let start = all.iter().position(|(role, _)| *role == Role::Canvas).unwrap();
    let read: Vec<&str> = all[start..].iter().map(|(_, words)| words.as_str()).collect();
    assert_eq!(
        read[..8],
        [
            "Drawing of Alder Court, plan",
            "Face South, pitch 6:12, 1006.23 sq ft on the slope",
            "Face North, pitch 6:12, 1006.23 sq ft on the slope",
            "Pipe 1, pipe boot",
            "Pipe 2, pipe boot",
            "Pipe 3, pipe boot",
            "Chimney, chimney",
            "Block A, 3 rows of 4, 12 modules",
        ]
    );
    assert!(all[start + 1..start + 8].iter().all(|(role, _)| *role == Role::ListItem));
}

/// A finding is one sentence that starts with its severity; its fixes are buttons with their full text.
#[test]
fn findings_are_read_out_with_their_severity() {
    let hand = Hand::new();
    let all = outline(&hand);
    let findings: Vec<&String> =
        all.iter().filter(|(_, words)| words.starts_with("Note: ")).map(|(_, words)| words).collect();
    assert_eq!(findings.len(), 1, "{findings:?}");
    assert!(findings[0].contains("chimney") && findings[0].contains("cricket"), "{findings:?}");
}

/// Everything that can be clicked, typed into or chosen has a name, in all panes and windows.
#[test]
fn everything_that_can_be_used_has_a_name() {
    let mut hand = Hand::new();
    let nameless = |hand: &Hand| -> Vec<String> {
        let used =
            [Role::Button, Role::CheckBox, Role::RadioButton, Role::TextInput, Role::ComboBox, Role::Slider];
        let nodes = hand.harness.query_all_by(|_| true);
        nodes
            .map(|node| node.accesskit_node())
            .filter(|node| used.contains(&node.role()) && !node.is_hidden())
            .filter(|node| {
                let named = node.label().is_some_and(|label| !label.trim().is_empty());
                let by_value = node.value().is_some_and(|value| !value.trim().is_empty());
                !named && !by_value && node.labelled_by().next().is_none()
            })
            .map(|node| format!("{:?} at {:?}", node.role(), node.bounding_box()))
            .collect()
    };
    let mut found = nameless(&hand);
    for (key, modifiers) in [
        (egui::Key::O, egui::Modifiers::NONE),
        (egui::Key::C, egui::Modifiers::NONE),
        (egui::Key::Q, egui::Modifiers::NONE),
        (egui::Key::H, egui::Modifiers::NONE),
        (egui::Key::R, egui::Modifiers::COMMAND),
        (egui::Key::D, egui::Modifiers::SHIFT),
        (egui::Key::Num3, egui::Modifiers::NONE),
    ] {
        hand.chord(modifiers, key);
        found.extend(nameless(&hand).into_iter().map(|what| format!("after {key:?}: {what}")));
    }
    assert!(found.is_empty(), "{found:#?}");
}
