//! Moving, copying, splitting and joining blocks by keys, and what a drag snaps to.

use crate::hand::Hand;
use chalkcourse::Selection;
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::{Block, Cell, FaceId, Penetration, Resolved};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

const SOUTH: FaceId = FaceId(1);
const NORTH: FaceId = FaceId(2);

fn hold(hand: &mut Hand, nth: usize) {
    let job = hand.job();
    let block = &job.blocks[nth];
    let at = on_face(&job, block.corner_of(Cell { row: 0, column: 0 }, &job.kit) + dvec2(1.2, 0.4));
    let pos = hand.at(at);
    hand.click(pos);
    assert_eq!(hand.editor().selection(), Selection::Block(block.id));
}

fn on_face(job: &Resolved, frame: DVec2) -> DVec2 {
    job.face(SOUTH).unwrap().plane().to_plan(frame)
}

/// Drags by a displacement in the frame of the south face; the button stays down.
fn drag_by(hand: &mut Hand, from: DVec2, by: DVec2) -> egui::Pos2 {
    let job = hand.job();
    let (start, end) = (hand.at(on_face(&job, from)), hand.at(on_face(&job, from + by)));
    hand.drag(start, end);
    end
}

#[test]
fn keys_split_at_the_selected_module_and_join_again() {
    let mut hand = Hand::new();
    let whole = hand.job();
    hold(&mut hand, 0);
    hand.key(Key::K);
    assert_eq!(hand.job().blocks.iter().map(|b| b.columns).collect::<Vec<_>>(), [2, 2], "not cut in half");
    hand.key(Key::J);
    assert_eq!(hand.job().blocks, whole.blocks);
    hand.harness.get_by_label("Module row 1, column 1").click_accesskit();
    hand.harness.run();
    hand.key(Key::K);
    assert_eq!(hand.job().blocks.iter().map(|b| b.columns).collect::<Vec<_>>(), [1, 3]);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().blocks, whole.blocks);
    hand.key(Key::J);
    assert!(hand.editor().said().contains("No block is flush"), "{}", hand.editor().said());
}

#[test]
fn a_key_asks_for_the_face_to_copy_to() {
    let mut hand = Hand::new();
    hold(&mut hand, 0);
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::D);
    assert!(hand.sees("Copy Block A to"));
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!((job.blocks.len(), job.blocks[1].face), (2, NORTH));
    assert!(!hand.sees("Copy Block A to"));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().blocks.len(), 1);
}

#[test]
fn keys_align_a_block_with_the_nearest() {
    let mut hand = Hand::new();
    let one = hand.job().blocks[0].clone();
    hold(&mut hand, 0);
    hand.key(Key::K);
    // The right half is moved 20 in to the right and 12 in down.
    hold(&mut hand, 1);
    for _ in 0..20 {
        hand.key(Key::ArrowRight);
    }
    hand.chord(Modifiers::SHIFT, Key::ArrowDown);
    let right = |hand: &Hand| hand.job().blocks[1].at;
    assert!((one.at.y - right(&hand).y - 0.3048).abs() < 1e-9);
    hand.chord(Modifiers::COMMAND, Key::ArrowDown);
    assert!((one.at.y - right(&hand).y).abs() < 1e-9, "base rails are not in line");
    hand.chord(Modifiers::COMMAND, Key::ArrowLeft);
    assert!((one.at.x - right(&hand).x).abs() < 1e-9, "left ends are not in line");
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.chord(Modifiers::COMMAND, Key::ArrowRight);
    let end = |block: &Block, job: &Resolved| block.corner_of(Cell { row: 0, column: 1 }, &job.kit).x;
    let job = hand.job();
    assert!(
        (end(&job.blocks[0], &job) - end(&job.blocks[1], &job)).abs() < 1e-9,
        "right ends are not in line"
    );
}

/// A dragged vent stops aligned with another penetration, or just clear of a block; Ctrl disables that.
#[test]
fn a_penetration_snaps_with_its_reason() {
    let mut hand = Hand::new();
    let job = hand.job();
    let pipes: Vec<&Penetration> = job.penetrations.iter().filter(|p| p.name.starts_with("Pipe")).collect();
    let plane = job.face(SOUTH).unwrap().plane();
    let [one, two] = [pipes[0], pipes[1]].map(|pipe| plane.to_frame(pipe.at));
    // 4 cm short of being above the other one: within snap distance.
    let aim = dvec2(two.x - 0.04, one.y);
    let end = drag_by(&mut hand, one, aim - one);
    let words = format!("in line with the middle of {}", pipes[1].name);
    assert!(
        hand.editor().guides().iter().any(|guide| guide.contains(&words)),
        "{:?}",
        hand.editor().guides()
    );
    hand.drop(end);
    let at = plane.to_frame(hand.job().penetration(pipes[0].id).unwrap().at);
    assert!((at.x - two.x).abs() < 1e-9, "{} against {}", at.x, two.x);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().penetrations, job.penetrations, "a drag is not one step");
}

/// A row dragged far stops where it still hooks.
#[test]
fn a_shifted_row_stays_hooked_and_says_so() {
    let mut hand = Hand::new();
    hold(&mut hand, 0);
    let job = hand.job();
    let block = job.blocks[0].clone();
    let size = block.module_size(&job.kit);
    let end = block.corner_of(Cell { row: 2, column: 3 }, &job.kit) + dvec2(size.x, size.y / 2.0);
    let from = hand.at(on_face(&job, end)) + egui::vec2(22.0, 0.0);
    let far = hand.at(on_face(&job, end + dvec2(size.x * 1.3, 0.0))) + egui::vec2(22.0, 0.0);
    hand.drag(from, far);
    assert!(
        hand.editor().guides().iter().any(|guide| guide.contains("still hook")),
        "{:?}",
        hand.editor().guides()
    );
    hand.drop(far);
    let shift = hand.job().blocks[0].shift(2).metres();
    assert!(shift > 0.3, "{shift}");
    let findings = hand.editor().document().plan().findings.iter();
    assert_eq!(findings.filter(|finding| finding.rule == "hook").count(), 0);
}

/// A block next to another one stops at its reveal, so that the two can be joined.
#[test]
fn a_block_snaps_to_the_reveal_of_another() {
    let mut hand = Hand::new();
    let whole = hand.job();
    hold(&mut hand, 0);
    hand.key(Key::K);
    hold(&mut hand, 1);
    for _ in 0..2 {
        hand.chord(Modifiers::SHIFT, Key::ArrowRight);
    }
    let job = hand.job();
    let from = job.blocks[1].at + dvec2(0.5, 0.4);
    let end = drag_by(&mut hand, from, dvec2(-Length::from_feet(2.0).metres() + 0.03, 0.01));
    assert!(
        hand.editor().guides().iter().any(|guide| guide.contains("reveal to Block A")),
        "{:?}",
        hand.editor().guides()
    );
    hand.drop(end);
    hand.key(Key::J);
    assert_eq!(hand.job().blocks.len(), 1, "{}", hand.editor().said());
    assert!((hand.job().blocks[0].at - whole.blocks[0].at).length() < 1e-6);
}

/// Room is searched on another thread, and a drag in the meantime is not overwritten.
#[test]
fn room_for_a_block_moved_meanwhile_is_dropped_with_a_message() {
    let mut hand = Hand::new();
    let job = hand.job();
    let from = job.blocks[0].at + dvec2(0.6, 0.4);
    let end = drag_by(&mut hand, from, dvec2(4.0, 0.0));
    hand.drop(end);
    // The search starts, and the block moves before its result is received.
    hand.keys_at_once(&[Key::R, Key::ArrowRight]);
    let moved = hand.job();
    hand.settle();
    assert_eq!(hand.job(), moved);
    assert!(hand.editor().said().contains("the answer was dropped"), "{}", hand.editor().said());
}

/// Three blocks: the middle one is moved to halfway between the others.
#[test]
fn a_key_distributes_the_blocks_of_a_face() {
    let mut hand = Hand::new();
    hold(&mut hand, 0);
    hand.key(Key::K);
    hold(&mut hand, 1);
    hand.key(Key::K);
    // The last of them first, so that they never overlap.
    for (nth, feet) in [(2, 12), (1, 5)] {
        hold(&mut hand, nth);
        for _ in 0..feet {
            hand.chord(Modifiers::SHIFT, Key::ArrowRight);
        }
    }
    hand.key(Key::E);
    let layout = &hand.editor().document().plan().layout;
    let mut spans: Vec<(f64, f64)> =
        layout.blocks.iter().filter_map(|b| b.bounds).map(|b| (b.min.x, b.max.x)).collect();
    spans.sort_by(|a, b| a.0.total_cmp(&b.0));
    let gaps: Vec<f64> = spans.windows(2).map(|pair| pair[1].0 - pair[0].1).collect();
    assert!(gaps.len() == 2 && (gaps[0] - gaps[1]).abs() < 1e-9, "{gaps:?}: {}", hand.editor().said());
    hand.key(Key::E);
    assert!(hand.editor().said().contains("Nothing to spread"), "{}", hand.editor().said());
}
