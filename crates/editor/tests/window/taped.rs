use crate::hand::{Hand, feet};
use chalkcourse_geometry::{Azimuth, EdgeKind};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

fn fill(hand: &mut Hand, label: &str, typed: &str) {
    hand.harness.get_by_label(label).focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    hand.type_text(typed);
}

/// Two faces by typed lengths only, the second against the ridge of the first; each is one step.
#[test]
fn a_gable_is_typed_from_a_tape() {
    let mut hand = Hand::empty();
    let empty = hand.job();
    hand.chord(Modifiers::SHIFT, Key::D);
    assert!(hand.sees("Still needed: Eave"));
    fill(&mut hand, "a   Eave", "60'");
    fill(&mut hand, "b   Right side", "16' 9 1/4\"");
    assert!(hand.sees("Nothing checks these readings"));
    fill(&mut hand, "c   Top", "60' 1\"");
    assert!(hand.sees("miss by 1/2\" at most"));
    hand.press("Add face");
    let job = hand.job();
    assert_eq!(job.faces.len(), 1);
    let eave = job.faces[0].outline.outer[0].distance(job.faces[0].outline.outer[1]);
    assert!((eave - feet(60.0 + 0.5 / 12.0)).abs() < 1e-9, "{eave}");

    // The second face is put against the top side of the first.
    let top = &job.faces[0].outline.outer;
    let on_top = top[2] + (top[3] - top[2]) * 0.2;
    hand.click_plan(on_top.x, on_top.y);
    assert!(matches!(hand.editor().selection(), chalkcourse::Selection::Side { side: 2, .. }));
    hand.harness.get_by_label("Lay it").click();
    hand.harness.run();
    hand.press("top on side 3 of Face 1");
    hand.press("Add face");
    let job = hand.job();
    assert_eq!(job.faces.len(), 2);
    assert_eq!(job.faces[1].downslope, Azimuth::NORTH);
    let roof = &hand.editor().document().plan().layout.roof;
    assert!(roof.problems.is_empty(), "{:?}", roof.problems);
    assert!(roof.lines().iter().any(|line| line.kind == EdgeKind::Ridge));
    hand.press("Close");
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), empty);
}

#[test]
fn impossible_measurements_are_reported_and_add_nothing() {
    let mut hand = Hand::empty();
    hand.draw_face();
    hand.press("From measurements…");
    hand.harness.get_by_label("Form").click();
    hand.harness.run();
    hand.press("Triangle");
    fill(&mut hand, "a   Eave", "30'");
    fill(&mut hand, "b   Right side", "10'");
    fill(&mut hand, "c   Left side", "12'");
    assert!(hand.sees("8' (2.438 m) less"));
    let before = hand.job();
    hand.press("Add face");
    assert_eq!(hand.job(), before);
    fill(&mut hand, "c   Left side", "24'");
    hand.harness.get_by_label("Pitch").click();
    hand.harness.run();
    hand.press("by a level");
    fill(&mut hand, "Rise", "14\"");
    hand.press("Add face");
    let job = hand.job();
    assert_eq!(job.faces.len(), 1, "{}", hand.editor().said());
    assert!((job.faces[0].pitch.rise_in_12() - 7.0).abs() < 1e-9);
}

#[test]
fn a_polygon_is_typed_with_its_diagonals() {
    let mut hand = Hand::empty();
    hand.chord(Modifiers::SHIFT, Key::D);
    hand.harness.get_by_label("Form").click();
    hand.harness.run();
    hand.press("Any, with diagonals");
    // A house-shaped gable wall: 20 wide, 10 to the shoulders, peak 5 above their middle.
    for (label, typed) in [
        ("a   Eave", "20'"),
        ("b   Side 2–3", "10'"),
        ("c   Side 3–4", "11' 2.164\""),
        ("d   Side 4–5", "11' 2.164\""),
        ("e   Side 5–1", "10'"),
        ("f   Diagonal 1–3", "22' 4.328\""),
        ("g   Diagonal 1–4", "18' 0.333\""),
    ] {
        fill(&mut hand, label, typed);
    }
    hand.press("Add face");
    let job = hand.job();
    assert_eq!(job.faces.len(), 1, "{}", hand.editor().said());
    assert_eq!(job.faces[0].outline.outer.len(), 5);
    let plan = hand.editor().document().plan();
    assert!(
        (plan.summary.slope_area / feet(1.0).powi(2) - 250.0).abs() < 0.05,
        "{}",
        plan.summary.slope_area
    );
}
