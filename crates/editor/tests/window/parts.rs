use crate::hand::{Hand, feet};
use chalkcourse::{PartPlace, Selection};
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{EdgeKind, dvec2};
use chalkcourse_job::{PartId, PartKind, RoofPart};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

const WALLS: [(f64, f64); 4] = [(-8.0, -4.0), (8.0, -4.0), (8.0, 4.0), (-8.0, 4.0)];

fn draw(hand: &mut Hand, choices: &[&str], corners: &[(f64, f64)]) {
    hand.key(Key::D);
    choices.iter().for_each(|choice| hand.press(choice));
    hand.press("Corner by corner");
    corners.iter().for_each(|&(x, y)| hand.click_plan(x, y));
    hand.key(Key::Enter);
}

/// A gable house of 16 × 8 m as a part, selected.
fn house() -> (Hand, PartId) {
    let mut hand = Hand::empty();
    draw(&mut hand, &["Whole roof", "Gables"], &WALLS);
    let id = hand.job().parts[0].id;
    assert_eq!(hand.editor().selection(), Selection::Part(id, PartPlace::Whole));
    (hand, id)
}

fn part(hand: &Hand, id: PartId) -> RoofPart {
    hand.job().part(id).unwrap().clone()
}

fn fill(hand: &mut Hand, label: &str, typed: &str) {
    hand.harness.get_by_label(label).focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text(typed);
    hand.key(Key::Enter);
}

#[test]
fn dragging_a_corner_raises_the_roof_as_it_moves() {
    let (mut hand, id) = house();
    let before = hand.job();
    let corner = part(&hand, id).outline.outer[2];
    let area = |hand: &Hand| hand.editor().document().plan().summary.plan_area;
    let first = area(&hand);
    let (from, to) = (hand.at(corner), hand.at(corner + dvec2(2.0, 1.5)));
    hand.drag(from, to);
    assert!(area(&hand) > first + 1.0, "the roof waits for the end of the drag");
    hand.drop(to);
    assert!(part(&hand, id).outline.outer[2].distance(corner + dvec2(2.0, 1.5)) < 0.1);
    assert!(matches!(hand.editor().selection(), Selection::Part(_, PartPlace::Corner { corner: 2, .. })));
    // By keys: 1 ft east.
    let at = part(&hand, id).outline.outer[2];
    hand.chord(Modifiers::SHIFT, Key::ArrowRight);
    assert!(part(&hand, id).outline.outer[2].distance(at + dvec2(feet(1.0), 0.0)) < 1e-9);
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before, "one drag is one step");
}

#[test]
fn corners_are_added_and_removed_and_a_whole_part_is_dragged() {
    let (mut hand, id) = house();
    // A double click on the south wall line.
    let side = hand.at(dvec2(3.0, -4.0));
    hand.double_click(side);
    assert_eq!(part(&hand, id).outline.outer.len(), 5);
    hand.key(Key::Delete);
    assert_eq!(part(&hand, id).outline.outer.len(), 4);
    let before = part(&hand, id).outline.outer[0];
    let (from, to) = (hand.at(dvec2(2.0, -2.0)), hand.at(dvec2(4.0, -1.0)));
    hand.drag(from, to);
    hand.drop(to);
    let after = part(&hand, id).outline.outer[0];
    assert!(after.distance(before + dvec2(2.0, 1.0)) < 0.1, "{before} to {after}");
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), Selection::Nothing);
    // Selected again in the list of parts.
    hand.press("Main");
    assert_eq!(hand.editor().selection(), Selection::Part(id, PartPlace::Whole));
    hand.key(Key::Delete);
    assert!(hand.job().parts.is_empty() && hand.job().faces.is_empty());
}

#[test]
fn pitches_ends_and_overhangs_are_typed() {
    let (mut hand, id) = house();
    fill(&mut hand, "Pitch, all slopes", "8:12");
    let slopes = |hand: &Hand| {
        let slope =
            |t: Treatment| if let Treatment::Slope(pitch) = t { Some(pitch.rise_in_12()) } else { None };
        part(hand, id).sides[0].iter().filter_map(|side| slope(side.treatment)).collect::<Vec<_>>()
    };
    assert!(slopes(&hand).iter().all(|rise| (rise - 8.0).abs() < 1e-9), "{:?}", slopes(&hand));
    fill(&mut hand, "Overhang, all", "2'");
    assert!(part(&hand, id).sides[0].iter().all(|side| (side.overhang.feet() - 2.0).abs() < 1e-9));
    fill(&mut hand, "Eaves", "10'");
    assert!((part(&hand, id).eave_height.feet() - 10.0).abs() < 1e-9);
    // The east gable becomes a hip.
    assert_eq!(part(&hand, id).sides[0][1].treatment, Treatment::Gable);
    hand.harness.get_by_label("Stands on side 2").scroll_to_me();
    hand.harness.run();
    hand.harness.get_by_label("Stands on side 2").click();
    hand.harness.run();
    hand.press("slope");
    assert!(matches!(part(&hand, id).sides[0][1].treatment, Treatment::Slope(_)));
    assert!(hand.editor().document().plan().lines().contains_key(&EdgeKind::Hip));
    // Settings that make no roof are rejected with the location and a message, and change nothing.
    let before = hand.job();
    fill(&mut hand, "Overhang, all", "-1'");
    assert_eq!(hand.job(), before);
    assert!(hand.sees("can't be less than 0"));
}

#[test]
fn a_dormer_a_porch_and_a_chimney_are_drawn_over_the_roof() {
    let (mut hand, house) = house();
    draw(&mut hand, &["Part", "Dormer"], &[(-1.0, -3.0), (1.0, -3.0), (1.0, -1.5), (-1.0, -1.5)]);
    draw(&mut hand, &["Part", "Porch"], &[(3.0, -6.0), (6.0, -6.0), (6.0, -4.0), (3.0, -4.0)]);
    draw(&mut hand, &["Part", "Chimney"], &[(-5.0, 1.0), (-4.0, 1.0), (-4.0, 1.6), (-5.0, 1.6)]);
    let job = hand.job();
    let kinds: Vec<PartKind> = job.parts.iter().map(|part| part.kind).collect();
    assert_eq!(kinds, [PartKind::Main, PartKind::Dormer, PartKind::Porch, PartKind::Chimney]);
    assert!(job.parts[1].eave_height > job.parts[0].eave_height);
    assert_eq!(job.parts[2].sides[0][2].treatment, Treatment::Wall);
    assert!(job.parts[3].cricket.is_some());
    // They move with the house when it is dragged.
    hand.harness.get_by_label("Main").scroll_to_me();
    hand.harness.run();
    hand.press("Main");
    assert_eq!(hand.editor().selection(), Selection::Part(house, PartPlace::Whole));
    let dormer = job.parts[1].outline.outer[0];
    let (from, to) = (hand.at(dvec2(5.0, 2.0)), hand.at(dvec2(5.0, 3.0)));
    hand.drag(from, to);
    hand.drop(to);
    let moved = hand.job().parts[1].outline.outer[0];
    assert!(moved.distance(dormer + dvec2(0.0, 1.0)) < 0.1, "{moved}");
    for _ in 0..4 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(hand.job().parts.len(), 1);
}

#[test]
fn a_part_that_is_set_free_leaves_drawn_faces() {
    let (mut hand, _) = house();
    hand.harness.get_by_label("Turn into plain faces").scroll_to_me();
    hand.harness.run();
    hand.press("Turn into plain faces");
    let job = hand.job();
    assert!(job.parts.is_empty());
    assert_eq!(job.faces.len(), 2);
    assert!(job.faces.iter().all(|face| face.from.is_none()));
}

#[test]
fn a_footprint_without_a_valid_roof_is_reported() {
    let mut hand = Hand::empty();
    draw(&mut hand, &["Whole roof"], &[(-4.0, -4.0), (4.0, -4.0), (-4.0, 4.0), (5.0, 3.0)]);
    assert!(hand.job().parts.is_empty());
    assert!(hand.sees("two sides meet at"));
    // While a corner is dragged over the far side, the last valid roof is kept.
    let (mut hand, id) = house();
    let corner = part(&hand, id).outline.outer[2];
    let (from, to) = (hand.at(corner), hand.at(dvec2(-2.0, -7.0)));
    hand.drag(from, to);
    assert!(hand.editor().said().contains("can't be raised"), "{}", hand.editor().said());
    hand.key(Key::Escape);
    hand.drop(to);
    assert_eq!(part(&hand, id).outline.outer[2], corner);
}

#[test]
fn a_courtyard_is_drawn_into_a_raised_house_and_removed() {
    let (mut hand, id) = house();
    let before = hand.job();
    let covered = |hand: &Hand| hand.editor().document().plan().summary.plan_area;
    let whole = covered(&hand);
    draw(&mut hand, &["Hole"], &[(-2.0, -1.5), (2.0, -1.5), (2.0, 1.5)]);
    let court = part(&hand, id);
    assert_eq!((court.outline.holes.len(), court.sides.len()), (1, 2), "{}", hand.editor().said());
    let numbers: std::collections::BTreeSet<u32> = court.sides.iter().flatten().map(|side| side.id).collect();
    assert_eq!(numbers.len(), 7, "each side has its number");
    // 4 m by 3 m in a triangle, less the overhang that extends into it from three sides.
    assert!(covered(&hand) < whole - 1.0, "{} of {whole}", covered(&hand));
    // One outside the walls, or across them, is rejected.
    draw(&mut hand, &["Hole"], &[(-7.0, 2.5), (-5.0, 2.5), (-6.0, 5.0)]);
    assert!(hand.sees("a courtyard inside the walls of one part"));
    // Three corners, and the tool.
    (0..4).for_each(|_| hand.key(Key::Escape));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
}
