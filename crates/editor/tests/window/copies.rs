//! Copies of blocks and penetrations, and where blocks may be placed.

use crate::block::{block, select};
use crate::clipboard::text_copied;
use crate::hand::Hand;
use chalkcourse::Selection;
use chalkcourse_geometry::{DVec2, Length, dvec2, holds};
use chalkcourse_job::{Block, Resolved, pieces_from_text};
use chalkcourse_layout::{Layout, PlacedBlock};
use egui::{Event, Key, Modifiers};

/// Whether no module of a block is beyond the edge of its face.
fn on_its_face(job: &Resolved, block: &Block) -> bool {
    let layout = Layout::of(job);
    let (index, face) = layout.face(block.face).unwrap();
    holds(&face.frame, PlacedBlock::of(block, index, &job.kit).bounds.unwrap())
}

/// A point in plan on a face of the sample, as fractions of its width and height.
fn on_face(hand: &Hand, face: usize, x: f64, y: f64) -> DVec2 {
    let bounds = hand.editor().document().plan().layout.roof.faces[face].plan.bounds().unwrap();
    bounds.min + bounds.size() * dvec2(x, y)
}

fn copy(hand: &mut Hand) -> String {
    hand.clipboard(Event::Copy);
    text_copied(hand).unwrap()
}

fn click_at(hand: &mut Hand, plan: DVec2) {
    let pos = hand.at(plan);
    hand.click(pos);
}

#[test]
fn a_block_is_copied_and_set_down_on_the_same_face_and_on_another() {
    let mut hand = Hand::new();
    select(&mut hand);
    let before = hand.job();
    let text = copy(&mut hand);
    assert_eq!(hand.job(), before, "copying changes nothing");
    assert_eq!(pieces_from_text(&text).unwrap().blocks[0].what, before.blocks[0]);
    assert!(hand.editor().said().contains("clipboard"), "{}", hand.editor().said());
    for face in [0, 1] {
        let steps = hand.job();
        hand.clipboard(Event::Paste(text.clone()));
        let at = on_face(&hand, face, 0.75, 0.5);
        click_at(&mut hand, at);
        let job = hand.job();
        let copy = job.blocks.last().unwrap();
        assert_eq!(copy.face, job.faces[face].id, "face {face}: {}", hand.editor().said());
        assert_eq!((copy.rows, copy.columns, copy.reveal), {
            let first = &before.blocks[0];
            (first.rows, first.columns, first.reveal)
        });
        assert_ne!(copy.name, before.blocks[0].name);
        assert!(on_its_face(&job, copy));
        assert_eq!(hand.editor().selection(), Selection::Block(copy.id), "the copy is held");
        hand.chord(Modifiers::COMMAND, Key::Z);
        assert_eq!(hand.job(), steps, "one step");
    }
}

/// The text is pasted into another window, whose job has other faces and ids.
#[test]
fn copies_go_to_another_window_and_another_job() {
    let mut one = Hand::new();
    one.chord(Modifiers::COMMAND, Key::A);
    let text = copy(&mut one);
    assert_eq!(pieces_from_text(&text).unwrap().penetrations.len(), 4);
    let mut other = Hand::empty();
    other.chord(Modifiers::SHIFT, Key::W);
    other.click_plan(-8.0, -6.0);
    other.type_toward((2.0, 1.0), "70' x 50'");
    assert_eq!(other.job().faces.len(), 2, "{}", other.editor().said());
    other.clipboard(Event::Paste(text));
    let at = on_face(&other, 0, 0.5, 0.5);
    click_at(&mut other, at);
    let job = other.job();
    assert_eq!(job.blocks.len(), 1, "{}", other.editor().said());
    assert_eq!(job.penetrations.len(), 4);
    // Relative positions are kept, since the copies came from one face.
    assert!(job.faces.iter().any(|face| face.id == job.blocks[0].face));
}

#[test]
fn cut_and_paste_work_by_keys_only() {
    let mut hand = Hand::new();
    select(&mut hand);
    let before = hand.job();
    hand.clipboard(Event::Cut);
    let text = text_copied(&hand).unwrap();
    assert!(hand.job().blocks.is_empty());
    hand.clipboard(Event::Paste(text));
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(
        (job.blocks.len(), job.blocks[0].rows),
        (1, before.blocks[0].rows),
        "{}",
        hand.editor().said()
    );
    for _ in 0..2 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(hand.job(), before, "cut and paste are two steps");
}

#[test]
fn foreign_clipboard_texts_are_reported_and_change_nothing() {
    let mut hand = Hand::new();
    let before = hand.job();
    hand.clipboard(Event::Paste("Milk, eggs\nand a very long list of other things from the shop".to_owned()));
    assert!(hand.editor().said().contains("Milk, eggs and a very"), "{}", hand.editor().said());
    assert!(hand.editor().said().contains("no block"), "{}", hand.editor().said());
    select(&mut hand);
    let newer = copy(&mut hand).replace("\"version\": 1", "\"version\": 9");
    hand.clipboard(Event::Paste(newer));
    assert!(hand.editor().said().contains("version 9"), "{}", hand.editor().said());
    hand.clipboard(Event::Paste("{\"format\": \"chalkcourse-pieces\", \"version\": 1, \"da".to_owned()));
    assert!(hand.editor().said().contains("can't be set down"), "{}", hand.editor().said());
    assert_eq!(hand.job(), before);
    // With nothing selected there is nothing to copy, and a message says so.
    hand.key(Key::Escape);
    hand.clipboard(Event::Copy);
    assert!(text_copied(&hand).is_none());
    assert!(hand.editor().said().contains("Select a block"), "{}", hand.editor().said());
}

/// In a text field the clipboard keys are for its own text.
#[test]
fn clipboard_keys_belong_to_a_text_field_first() {
    let mut hand = Hand::new();
    select(&mut hand);
    let text = copy(&mut hand);
    use egui_kittest::kittest::Queryable;
    hand.harness.get_by_label("Reveal").focus();
    hand.harness.run();
    hand.clipboard(Event::Paste(text));
    hand.harness.run();
    let at = on_face(&hand, 0, 0.75, 0.5);
    let before = hand.job().blocks.len();
    hand.key(Key::Escape);
    click_at(&mut hand, at);
    assert_eq!(hand.job().blocks.len(), before, "nothing was taken up to be set down");
}

/// The duplicate clears all keep-outs, so that there is no new finding.
#[test]
fn a_duplicate_is_placed_beside_the_original_if_there_is_room() {
    let mut hand = Hand::new();
    // Half of the block: two columns, with space for two more beside the penetrations.
    select(&mut hand);
    hand.key(Key::K);
    hand.key(Key::Escape);
    let right = hand.job().blocks[1].clone();
    let middle = right.at + right.module_size(&hand.job().kit) / 2.0;
    let at = hand.job().face(right.face).unwrap().plane().to_plan(middle);
    click_at(&mut hand, at);
    hand.key(Key::Delete);
    assert_eq!(hand.job().blocks.len(), 1);
    select(&mut hand);
    let stops = |hand: &Hand| {
        let findings = &hand.editor().document().plan().findings;
        findings.iter().filter(|f| f.severity == chalkcourse_rules::Severity::Stop).count()
    };
    let before = stops(&hand);
    hand.chord(Modifiers::COMMAND, Key::D);
    let job = hand.job();
    assert_eq!(job.blocks.len(), 2, "{}", hand.editor().said());
    assert_eq!(job.blocks[1].face, job.blocks[0].face);
    assert!(on_its_face(&job, &job.blocks[1]));
    assert_eq!(stops(&hand), before);
    assert_eq!(hand.editor().selection(), Selection::Block(job.blocks[1].id));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().blocks.len(), 1);
}

/// If no position is clear it is still placed beside it, on its face and not over another block; the findings report
/// the rest.
#[test]
fn a_duplicate_without_a_clear_position_overlaps_no_block() {
    let mut hand = Hand::new();
    select(&mut hand);
    hand.chord(Modifiers::COMMAND, Key::D);
    let job = hand.job();
    assert_eq!(job.blocks.len(), 2, "{}", hand.editor().said());
    assert!(on_its_face(&job, &job.blocks[1]));
    let findings = &hand.editor().document().plan().findings;
    assert!(findings.iter().all(|finding| finding.rule != "overlap" && finding.rule != "between-blocks"));
    // And if there is no position at all, a message says so.
    hand.chord(Modifiers::COMMAND, Key::D);
    assert_eq!(hand.job(), job);
    assert!(hand.editor().said().contains("no room beside"), "{}", hand.editor().said());
}

#[test]
fn a_pipe_is_duplicated_too() {
    let mut hand = Hand::new();
    let pipe = hand.job().penetrations[0].clone();
    click_at(&mut hand, pipe.at);
    assert_eq!(hand.editor().selection(), Selection::Penetration(pipe.id));
    hand.chord(Modifiers::COMMAND, Key::D);
    let job = hand.job();
    let copy = job.penetrations.last().unwrap();
    assert_eq!(job.penetrations.len(), 5, "{}", hand.editor().said());
    assert_ne!(copy.name, pipe.name);
    assert!(copy.at.distance(pipe.at) > 0.3);
}

/// Near the ridge the block is placed below it; the preview shows the result.
#[test]
fn a_block_is_never_set_down_across_a_ridge() {
    let mut hand = Hand::new();
    for face in [0, 1] {
        for (x, y) in [(0.5, 0.98), (0.5, 0.02), (0.995, 0.5), (0.99, 0.99), (0.02, 0.01)] {
            let before = hand.job();
            hand.key(Key::B);
            let at = on_face(&hand, face, x, y);
            click_at(&mut hand, at);
            let job = hand.job();
            assert_eq!(job.blocks.len(), before.blocks.len() + 1, "{x} {y}: {}", hand.editor().said());
            assert!(on_its_face(&job, job.blocks.last().unwrap()), "face {face}, {x} {y}");
            hand.chord(Modifiers::COMMAND, Key::Z);
        }
    }
}

/// Drawn over the ridge it ends before it; dragged over it, it moves to the other face as a whole.
#[test]
fn a_block_that_is_dragged_over_a_ridge_goes_to_the_other_face() {
    let mut hand = Hand::new();
    hand.key(Key::B);
    let (from, to) = (on_face(&hand, 0, 0.6, 0.6), on_face(&hand, 1, 0.9, 0.6));
    let (from, to) = (hand.at(from), hand.at(to));
    hand.drag(from, to);
    hand.drop(to);
    let job = hand.job();
    let drawn = job.blocks.last().unwrap();
    assert_eq!((job.blocks.len(), drawn.face), (2, job.faces[0].id));
    assert!(on_its_face(&job, drawn) && drawn.columns >= 2, "{drawn:?}");
    hand.chord(Modifiers::COMMAND, Key::Z);

    select(&mut hand);
    let first = block(&hand);
    let grab = {
        let job = hand.job();
        let middle = first.at + first.module_size(&job.kit) * dvec2(1.5, 1.5);
        job.face(first.face).unwrap().plane().to_plan(middle)
    };
    let from = hand.at(grab);
    for step in 0..=20 {
        let plan = grab + dvec2(0.0, Length::from_feet(1.2).metres() * f64::from(step));
        let to = hand.at(plan);
        hand.drag(from, to);
        let job = hand.job();
        assert!(on_its_face(&job, &job.blocks[0]), "after {step} steps");
        hand.drop(to);
        let over = hand.editor().document().plan().layout.roof.faces[1].plan.contains(plan);
        assert_eq!(job.blocks[0].face == job.faces[1].id, over, "after {step} steps");
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
}
