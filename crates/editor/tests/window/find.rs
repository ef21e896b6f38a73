//! Finding objects, and going there.

use crate::hand::Hand;
use chalkcourse::Selection;
use egui::{Key, Modifiers};

#[test]
fn objects_are_found_by_name_and_shown() {
    let mut hand = Hand::new();
    let job = hand.job();
    let (pipe, block, face) = (job.penetrations[1].clone(), job.blocks[0].clone(), job.faces[1].clone());
    let wanted = [
        (pipe.name.clone(), Selection::Penetration(pipe.id)),
        (format!("block {}", block.name), Selection::Block(block.id)),
        (face.name.clone(), Selection::Face(face.id)),
    ];
    for (name, thing) in wanted {
        hand.chord(Modifiers::COMMAND, Key::F);
        hand.type_text(&name);
        hand.key(Key::Enter);
        assert_eq!(hand.editor().selection(), thing, "{name}");
    }
}

/// From far away, the object is brought into view.
#[test]
fn a_found_object_is_brought_into_view() {
    let mut hand = Hand::new();
    for _ in 0..12 {
        hand.key(Key::Plus);
    }
    let pipe = hand.job().penetrations[2].clone();
    let pos = hand.at(pipe.at);
    let window = egui::Rect::from_min_size(egui::Pos2::ZERO, egui::vec2(1280.0, 800.0));
    assert!(!window.contains(pos), "{pos:?} is seen before");
    hand.chord(Modifiers::COMMAND, Key::F);
    hand.type_text(&pipe.name);
    hand.key(Key::Enter);
    assert!(window.shrink(100.0).contains(hand.at(pipe.at)), "{:?}", hand.at(pipe.at));
}
