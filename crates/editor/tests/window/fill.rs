use crate::hand::Hand;
use chalkcourse::{Options, Selection};
use chalkcourse_geometry::dvec2;
use chalkcourse_job::{BlockId, FaceId, Orientation, Resolved};
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

const SOUTH: FaceId = FaceId(1);
const NORTH: FaceId = FaceId(2);

fn press_key(hand: &mut Hand, key: Key) {
    hand.harness.key_press_modifiers(Modifiers::NONE, key);
    hand.harness.step();
    hand.harness.step();
}

/// A click on the south face beside its block.
fn select_south(hand: &mut Hand) {
    hand.click_plan(1.5, 1.0);
    assert_eq!(hand.editor().selection(), Selection::Face(SOUTH));
}

fn hold_block(hand: &mut Hand) {
    let job = hand.job();
    let block = &job.blocks[0];
    let at = job.face(block.face).unwrap().plane().to_plan(block.at + dvec2(0.6, 0.4));
    let pos = hand.at(at);
    hand.click(pos);
    assert_eq!(hand.editor().selection(), Selection::Block(block.id));
}

#[test]
fn a_face_is_filled_by_key_and_undo_brings_the_block_back() {
    let mut hand = Hand::new();
    let before = hand.job();
    select_south(&mut hand);
    press_key(&mut hand, Key::L);
    hand.settle();
    let modules = hand.editor().document().plan().summary.modules;
    assert!(modules > 12, "{modules}");
    assert!(hand.job().blocks.iter().all(|block| block.face == SOUTH && block.id != BlockId(7)));
    let stops = hand.editor().document().plan().findings.iter();
    assert_eq!(stops.filter(|f| f.severity == chalkcourse_rules::Severity::Stop).count(), 0);
    assert!(
        hand.sees(&format!("{modules} of at most "))
            || hand.sees(&format!("{modules}, none can hold more than ")),
        "the claim is not shown"
    );
    assert!(hand.sees("What holds it back"));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before, "undo does not bring the old block back");
    assert!(!hand.sees(" of at most "), "what no longer holds is still listed");
}

#[test]
fn with_nothing_selected_all_faces_are_filled_in_one_step() {
    let mut hand = Hand::new();
    let before = hand.job();
    press_key(&mut hand, Key::L);
    hand.settle();
    for face in [SOUTH, NORTH] {
        assert!(hand.job().blocks.iter().any(|block| block.face == face), "{face} has no block");
    }
    let names: std::collections::BTreeSet<String> =
        hand.job().blocks.iter().map(|b| b.name.clone()).collect();
    assert_eq!(names.len(), hand.job().blocks.len(), "two blocks have one name");
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
}

#[test]
fn hovering_a_row_highlights_where_a_module_nearly_fits() {
    let mut hand = Hand::new();
    select_south(&mut hand);
    press_key(&mut hand, Key::L);
    hand.settle();
    assert_eq!(hand.editor().lit(), None);
    let row = |hand: &Hand| {
        let mut rows = hand.harness.get_all_by_label_contains("Nearly fits");
        rows.next().expect("nothing nearly fits").rect().center()
    };
    hand.harness.get_all_by_label_contains("Nearly fits").next().unwrap().scroll_to_me();
    hand.harness.run();
    let at = row(&hand);
    hand.harness.hover_at(at);
    hand.harness.run();
    let lit = hand.editor().lit().expect("no place is lit");
    assert!(lit.contains("stopped by"), "{lit}");
}

#[test]
fn a_fill_of_a_changed_roof_is_dropped_with_a_message() {
    let mut hand = Hand::new();
    hold_block(&mut hand);
    // The fill starts, and the block moves before its result is received.
    hand.keys_at_once(&[Key::L, Key::ArrowRight]);
    let moved = hand.job();
    hand.settle();
    assert_eq!(hand.job(), moved, "the answer was put on another roof");
    assert!(hand.sees("the answer was dropped"));
}

#[test]
fn filling_a_face_that_is_too_flat_says_so() {
    let mut hand = Hand::new();
    select_south(&mut hand);
    hand.harness.get_by_label("Pitch").focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("1:12");
    hand.key(Key::Enter);
    let before = hand.job();
    hand.harness.get_by_label("Fill this face").click();
    hand.harness.step();
    hand.harness.step();
    hand.settle();
    assert!(hand.sees("no module may stand on it"));
    assert_eq!(hand.job(), before);
}

#[test]
fn room_is_made_after_a_drag_onto_a_pipe() {
    let mut hand = Hand::new();
    let job = hand.job();
    let plane = job.faces[0].plane();
    let from = plane.to_plan(job.blocks[0].at + dvec2(0.6, 0.4));
    let (from, to) = (hand.at(from), hand.at(from + dvec2(4.0, 0.0)));
    hand.drag(from, to);
    hand.drop(to);
    let on_pipe = |hand: &Hand| {
        hand.editor().document().plan().findings.iter().filter(|f| f.rule == "clearance").count()
    };
    assert!(on_pipe(&hand) > 0, "the drag put it on no pipe");
    let dragged = hand.job();
    hand.harness.get_by_label("Make room").click();
    hand.harness.step();
    hand.settle();
    assert_eq!(on_pipe(&hand), 0);
    assert_ne!(hand.job(), dragged);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), dragged, "making room is not one step");
    press_key(&mut hand, Key::R);
    hand.settle();
    assert_eq!(on_pipe(&hand), 0);
    assert!(hand.editor().said().contains("Block A moved"), "{}", hand.editor().said());
    hand.key(Key::R);
    assert!(hand.editor().said().contains("Nothing is in its way"));
}

#[test]
fn a_mirror_image_is_on_the_north_face() {
    let mut hand = Hand::new();
    hold_block(&mut hand);
    hand.press("Mirror to North");
    let job = hand.job();
    assert_eq!((job.blocks.len(), job.blocks[1].face), (2, NORTH));
    assert_eq!(hand.editor().selection(), Selection::Block(job.blocks[1].id));
    assert_eq!(hand.editor().document().plan().summary.modules, 24);
    hand.key(Key::M);
    assert_eq!(hand.job().blocks[2].face, SOUTH);
}

#[test]
fn a_block_is_cut_and_joined_and_copied_by_its_panel() {
    let mut hand = Hand::new();
    hold_block(&mut hand);
    let whole = hand.job();
    hand.press("Split…");
    hand.press("above row 1");
    assert_eq!(hand.job().blocks.iter().map(|b| b.rows).collect::<Vec<_>>(), [1, 2]);
    hand.press("Join…");
    hand.press("Block B");
    assert_eq!(hand.job().blocks, whole.blocks);
    hand.press("Copy to face…");
    hand.press("North");
    assert_eq!(hand.job().blocks[1].face, NORTH);
}

fn choose(hand: &mut Hand, list: &str, what: &str) {
    hand.press(list);
    hand.press(what);
}

/// The sample with a change.
fn with_sample(change: impl FnOnce(&mut Resolved)) -> Hand {
    let mut job = Hand::new().job();
    change(&mut job);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("changed.chalk.json");
    chalkcourse_job::save(&job, &path).unwrap();
    Hand::with(Options { open: Some(path), typed_paths: true, ..Options::default() })
}

fn fill_south(hand: &mut Hand) {
    select_south(hand);
    press_key(hand, Key::L);
    hand.settle();
}

#[test]
fn exactly_the_requested_number_of_modules_is_laid() {
    let mut hand = Hand::new();
    hand.press("Fill");
    choose(&mut hand, "How rows lie", "to a number");
    hand.harness.get_by_label("How many modules").focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("9");
    hand.key(Key::Enter);
    fill_south(&mut hand);
    assert_eq!(hand.editor().document().plan().summary.modules, 9, "{}", hand.editor().said());
    assert!(hand.sees("the most compact 9 "), "the claim is not shown");
    // 9 modules of 405 W are 3.645 kW: 3.7 kW take one more.
    hand.chord(Modifiers::COMMAND, Key::Z);
    choose(&mut hand, "Size by", "kilowatts");
    hand.harness.get_by_label("Kilowatts").focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text("3.7");
    hand.key(Key::Enter);
    fill_south(&mut hand);
    assert_eq!(hand.editor().document().plan().summary.modules, 10);
}

#[test]
fn modules_that_are_worth_too_little_are_left_out() {
    let mut hand = Hand::new();
    hand.press("Fill");
    choose(&mut hand, "How rows lie", "by worth");
    let worth = |hand: &mut Hand, worth: &str| {
        hand.harness.get_by_label_contains("A module's worth").focus();
        hand.harness.run();
        hand.chord(Modifiers::COMMAND, Key::A);
        hand.type_text(worth);
        hand.key(Key::Enter);
        fill_south(hand);
        hand.editor().document().plan().summary.modules
    };
    let many = worth(&mut hand, "1000");
    assert!(many > 12, "{many}");
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(worth(&mut hand, "0.01") < many, "modules that cost more than they are worth are there");
}

#[test]
fn ticked_faces_are_filled_together() {
    let mut hand = Hand::new();
    hand.press("Fill");
    hand.press("Choose several faces");
    for face in ["Face North", "Face South"] {
        let boxes = hand.harness.get_all_by_label(face);
        let check =
            boxes.into_iter().find(|node| node.accesskit_node().role() == egui::accesskit::Role::CheckBox);
        check.unwrap().click_accesskit();
        hand.harness.run();
    }
    hand.harness.get_by_label("Fill 2 chosen faces").click();
    hand.harness.step();
    hand.settle();
    for face in [SOUTH, NORTH] {
        assert!(hand.job().blocks.iter().any(|block| block.face == face), "{face} has no block");
    }
}

/// Every line of what limits a fill highlights its place, and a click on it selects the object.
#[test]
fn obstacles_that_cost_modules_are_highlighted_and_selected() {
    let mut hand = Hand::new();
    fill_south(&mut hand);
    // A pathway is not an object: a click on it selects the face.
    let about_things = |label: &str| label.starts_with("Costs modules: ") && !label.contains("pathway");
    let line = hand
        .harness
        .get_all_by_label_contains("Costs modules: ")
        .find(|node| node.accesskit_node().label().is_some_and(|label| about_things(&label)))
        .expect("nothing costs modules");
    line.focus();
    hand.harness.run();
    let lit = hand.editor().lit().expect("no place is lit");
    assert!(lit.contains("cost"), "{lit}");
    hand.key(Key::Enter);
    assert_ne!(hand.editor().selection(), Selection::Face(SOUTH), "{lit}");
}

/// A pipe 7 in too far right for one more module, and a chimney that would gain one if it were higher up: chimneys are
/// not moved.
#[test]
fn a_gaining_move_of_a_penetration_is_one_click() {
    let mut hand = with_sample(|job| job.penetrations[0].at = dvec2(12.53, 2.2));
    fill_south(&mut hand);
    let (before, modules) =
        (hand.job().penetrations.clone(), hand.editor().document().plan().summary.modules);
    assert!(hand.harness.query_all_by_label_contains("Chimney (chimney) moved").next().is_none());
    hand.harness.get_all_by_label_contains("Move it: Pipe 2").next().expect("no move wins").click_accesskit();
    hand.harness.run();
    assert_ne!(hand.job().penetrations, before);
    hand.click_plan(1.5, 1.0);
    press_key(&mut hand, Key::L);
    hand.settle();
    assert!(hand.editor().document().plan().summary.modules > modules, "the move wins nothing");
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job().penetrations, before);
}

/// With a kit that allows both orientations.
#[test]
fn module_orientation_can_be_chosen() {
    let mut hand = with_sample(|job| {
        let kit = std::sync::Arc::make_mut(&mut job.kit);
        kit.orientations = vec![Orientation::Landscape, Orientation::Portrait];
    });
    hand.press("Fill");
    choose(&mut hand, "Modules lie", "long side up the slope");
    fill_south(&mut hand);
    let blocks = hand.job().blocks.clone();
    assert!(!blocks.is_empty() && blocks.iter().all(|block| block.orientation == Orientation::Portrait));
    assert!(hand.sees(", portrait, whatever the blocks"), "the claim does not say what was searched");
}
