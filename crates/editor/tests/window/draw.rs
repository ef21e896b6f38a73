use crate::hand::{Hand, feet};
use crate::rules::menu;
use chalkcourse::Selection;
use chalkcourse_geometry::{Azimuth, EdgeKind, dvec2};
use chalkcourse_job::{PenetrationKind, Shape};
use egui::{Key, Modifiers};

/// The whole first workflow: a roof by clicks, a vent, a block, a drag over the vent, the finding, undo, the order.
#[test]
fn from_an_empty_job_to_an_order() {
    let mut hand = Hand::empty();
    hand.press("Draw a face");
    for (x, y) in [(-8.0, -5.0), (8.0, -5.0), (8.0, 0.0), (-8.0, 0.0), (-8.0, -5.0)] {
        hand.click_plan(x, y);
    }
    assert_eq!(hand.job().faces.len(), 1, "{}", hand.editor().said());
    // The second face starts at corners of the first, drawn from the ridge.
    hand.draw_face();
    let corners = hand.job().faces[0].outline.outer.clone();
    let (left, right) = (corners[3], corners[2]);
    for p in [left, right, right + dvec2(0.0, 4.0), left + dvec2(0.0, 4.0)] {
        hand.click_plan(p.x, p.y);
    }
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(job.faces.len(), 2);
    assert_eq!((job.faces[0].downslope, job.faces[1].downslope), (Azimuth::SOUTH, Azimuth::NORTH));
    let roof = &hand.editor().document().plan().layout.roof;
    assert!(roof.problems.is_empty(), "{:?}", roof.problems);
    assert!(roof.lines().iter().any(|line| line.kind == EdgeKind::Ridge));

    hand.key(Key::P);
    hand.press("Vent");
    hand.click_plan(5.5, -2.5);
    assert_eq!(hand.job().penetrations.len(), 1);

    hand.key(Key::B);
    hand.click_plan(-7.0, -4.2);
    let job = hand.job();
    assert_eq!(job.blocks.len(), 1);
    let block = job.blocks[0].id;
    assert_eq!(hand.editor().selection(), Selection::Block(block));
    assert_eq!(hand.editor().document().plan().summary.modules, 12);
    let over_vent = |hand: &Hand| {
        let findings = &hand.editor().document().plan().findings;
        findings.iter().filter(|f| f.place.penetration.is_some() && f.place.block == Some(block)).count()
    };
    assert_eq!(over_vent(&hand), 0);

    let before = hand.job();
    let from = hand.at(dvec2(-5.0, -3.0));
    let to = hand.at(dvec2(1.6, -3.0));
    hand.drag(from, to);
    assert!(over_vent(&hand) > 0, "no finding while the block is over the vent");
    assert!(hand.sees("Findings: "), "the list does not tell");
    hand.drop(to);
    assert!(over_vent(&hand) > 0);
    assert_ne!(hand.job(), before);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before, "one drag is one step");
    assert_eq!(over_vent(&hand), 0);

    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("order.csv");
    hand.chord(Modifiers::COMMAND, Key::E);
    hand.give_path(&path);
    let order = std::fs::read_to_string(&path).unwrap();
    assert!(order.contains("FH-101"), "{order}");
    assert!(hand.editor().said().contains("order.csv"));

    for (line, name, begins) in [
        ("Order to print, by part…", "part.pdf", "%PDF-"),
        ("Order to print, by stage…", "stage.pdf", "%PDF-"),
        ("Order as XLSX…", "order.xlsx", "PK"),
        ("Pallet list to print…", "pallet.pdf", "%PDF-"),
        ("Delivery claim to print…", "claim.pdf", "%PDF-"),
    ] {
        let path = folder.path().join(name);
        menu(&mut hand, "Export", line);
        hand.give_path(&path);
        assert!(std::fs::read(&path).unwrap().starts_with(begins.as_bytes()), "{line}");
        assert!(hand.editor().said().contains(name), "{line}");
    }
}

#[test]
fn typed_lengths_make_exact_sides() {
    let mut hand = Hand::empty();
    hand.draw_face();
    hand.click_plan(-4.0, -4.0);
    let start = dvec2(-4.0, -4.0);
    for (toward, typed) in [
        (dvec2(3.0, 0.0), "12' 6\""),
        (dvec2(feet(12.5), 2.8), "3.2 m"),
        (dvec2(feet(12.5) - 3.0, 3.2), "12-6-0"),
    ] {
        let pos = hand.at(start + toward);
        hand.harness.hover_at(pos);
        hand.harness.run();
        hand.type_text(typed);
        hand.key(Key::Enter);
    }
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(job.faces.len(), 1, "{}", hand.editor().said());
    let sides: Vec<f64> = job.faces[0].outline.sides().map(|(_, _, a, b)| a.distance(b)).collect();
    for (side, expect) in sides.iter().zip([feet(12.5), 3.2, feet(12.5), 3.2]) {
        assert!((side - expect).abs() < 1e-6, "{sides:?}");
    }
}

#[test]
fn an_unreadable_length_is_reported_in_place() {
    let mut hand = Hand::empty();
    hand.draw_face();
    hand.click_plan(-4.0, -4.0);
    hand.type_text("twelve");
    hand.key(Key::Enter);
    assert!(hand.sees("can't read \"twelve\" as a length"));
    assert!(hand.job().faces.is_empty());
    hand.key(Key::Escape);
    assert!(!hand.sees("can't read \"twelve\""));
}

#[test]
fn a_ridge_corner_takes_both_faces_along() {
    let mut hand = Hand::new();
    hand.click_plan(2.0, 1.0);
    let ridge = dvec2(0.0, feet(15.0));
    let (from, to) = (hand.at(ridge), hand.at(ridge + dvec2(0.0, -1.0)));
    let steps = hand.job();
    hand.drag(from, to);
    hand.drop(to);
    let moved = hand.job();
    let corner = |job: &chalkcourse_job::Resolved, face: usize| {
        job.faces[face]
            .outline
            .outer
            .iter()
            .copied()
            .min_by(|a, b| a.distance(ridge).total_cmp(&b.distance(ridge)))
    };
    assert_ne!(moved, steps);
    assert_eq!(corner(&moved, 0), corner(&moved, 1));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), steps);
}

#[test]
fn escape_cancels_a_drag() {
    let mut hand = Hand::new();
    let before = hand.job();
    let at = before.faces[0].plane().to_plan(before.blocks[0].at + dvec2(0.8, 0.5));
    let (from, to) = (hand.at(at), hand.at(at + dvec2(2.0, 0.5)));
    hand.drag(from, to);
    assert_ne!(hand.job(), before);
    hand.harness.key_press(Key::Escape);
    hand.harness.run_steps(2);
    assert_eq!(hand.job(), before);
    hand.drop(to);
    assert_eq!(hand.job(), before);
    assert!(hand.editor().document().history().undo_label().is_none());
}

/// Nothing is redrawn while nothing happens.
#[test]
fn an_idle_window_asks_for_no_frame() {
    let mut hand = Hand::new();
    hand.harness.run();
    assert_eq!(hand.harness.run(), 1);
}

#[test]
fn undo_removes_the_last_corner_of_an_unfinished_face() {
    let mut hand = Hand::empty();
    hand.draw_face();
    hand.click_plan(-4.0, -4.0);
    hand.click_plan(4.0, -4.0);
    hand.click_plan(4.0, 2.0);
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.click_plan(4.0, 0.0);
    hand.click_plan(-4.0, 0.0);
    hand.key(Key::Enter);
    let corners = hand.job().faces[0].outline.outer.clone();
    assert_eq!(corners.len(), 4);
    assert!(corners.iter().all(|p| p.y < 1.0), "{corners:?}");
}

#[test]
fn keys_in_a_dialog_leave_the_drawing_alone() {
    let mut hand = Hand::new();
    let job = hand.job();
    let at = job.faces[0].plane().to_plan(job.blocks[0].at + dvec2(0.8, 0.5));
    let pos = hand.at(at);
    hand.click(pos);
    let held = hand.editor().selection();
    hand.key(Key::F1);
    assert!(hand.sees("Nudge by 1 in"));
    hand.key(Key::ArrowRight);
    hand.key(Key::Escape);
    assert!(!hand.sees("Nudge by 1 in"));
    assert_eq!((hand.job(), hand.editor().selection()), (job, held));
}

/// A shaft inside a face, and a chimney that is neither round nor square.
#[test]
fn a_hole_and_a_penetration_are_drawn_by_their_outlines() {
    let mut hand = Hand::new();
    let area = |hand: &Hand| hand.editor().document().plan().summary.plan_area;
    let before = area(&hand);
    hand.key(Key::D);
    hand.press("Hole");
    for (x, y) in [(1.0, 6.0), (2.0, 6.0), (2.0, 7.0), (1.0, 7.0)] {
        hand.click_plan(x, y);
    }
    hand.key(Key::Enter);
    assert!((before - area(&hand) - 1.0).abs() < 0.1, "{} then {}", before, area(&hand));
    let roof = &hand.editor().document().plan().layout.roof;
    assert!(roof.faces[1].edges.iter().any(|edge| edge.ring == 1 && edge.kind == EdgeKind::WallLine));

    // Beside the roof there is no face to cut.
    hand.key(Key::D);
    hand.press("Hole");
    for (x, y) in [(1.0, -1.0), (2.0, -1.0), (2.0, -0.3)] {
        hand.click_plan(x, y);
    }
    let job = hand.job();
    hand.key(Key::Enter);
    assert_eq!(hand.job(), job);
    assert!(hand.sees("A hole lies inside one face"));
    // One Esc per corner.
    (0..4).for_each(|_| hand.key(Key::Escape));

    hand.key(Key::D);
    hand.press("Penetration outline");
    hand.press("Chimney");
    for (x, y) in [(14.5, 6.0), (15.5, 6.0), (15.0, 7.0)] {
        hand.click_plan(x, y);
    }
    hand.key(Key::Enter);
    let drawn = hand.job().penetrations.last().cloned().unwrap();
    assert_eq!(drawn.kind, PenetrationKind::Chimney);
    assert!(matches!(drawn.shape, Shape::Polygon { ref corners } if corners.len() == 3));
}

/// Four clicks and a choice: a gable roof, one step to undo; then hips.
#[test]
fn a_whole_roof_is_raised_over_its_walls() {
    let mut hand = Hand::empty();
    let first = hand.job();
    for (ends, faces, kind) in [("Gables", 2, EdgeKind::Rake), ("Hips", 4, EdgeKind::Hip)] {
        hand.key(Key::D);
        hand.press("Whole roof");
        hand.press("Corner by corner");
        hand.press(ends);
        for (x, y) in [(-8.0, -4.0), (8.0, -4.0), (8.0, 4.0), (-8.0, 4.0)] {
            hand.click_plan(x, y);
        }
        hand.key(Key::Enter);
        assert_eq!(hand.job().faces.len(), faces, "{ends}: {}", hand.editor().said());
        let plan = hand.editor().document().plan();
        assert!(plan.lines().contains_key(&kind) && plan.layout.roof.problems.is_empty());
        hand.chord(Modifiers::COMMAND, Key::Z);
        assert_eq!(hand.job(), first);
    }
}

/// A house that is not aligned with the axes: the second side snaps perpendicular to the first, the third parallel to
/// it, each with its reason.
#[test]
fn sides_snap_parallel_and_square_to_those_drawn_before() {
    let mut hand = Hand::empty();
    hand.draw_face();
    let start = dvec2(-4.0, -3.0);
    let along = dvec2(20f64.to_radians().cos(), 20f64.to_radians().sin());
    hand.click_plan(start.x, start.y);
    let second = start + along * 6.0;
    hand.click_plan(second.x, second.y);
    let near = |hand: &mut Hand, plan: chalkcourse_geometry::DVec2| {
        let pos = hand.at(plan);
        hand.harness.hover_at(pos);
        hand.harness.run();
        hand.editor().guides().iter().map(|words| (*words).to_owned()).collect::<Vec<_>>()
    };
    let third = second + along.perp() * 4.0;
    let guides = near(&mut hand, third + dvec2(0.04, 0.02));
    assert!(guides.iter().any(|words| words == "square to a side drawn before"), "{guides:?}");
    hand.click_plan(third.x + 0.04, third.y + 0.02);
    let fourth = third - along * 5.0;
    let guides = near(&mut hand, fourth + dvec2(0.02, -0.04));
    assert!(guides.iter().any(|words| words == "parallel to a side drawn before"), "{guides:?}");
    hand.click_plan(fourth.x + 0.02, fourth.y - 0.04);
    hand.key(Key::Enter);
    let job = hand.job();
    let sides: Vec<_> = job.faces[0].outline.sides().map(|(_, _, a, b)| (b - a).normalize()).collect();
    assert!(sides[0].dot(sides[1]).abs() < 1e-9, "not square: {sides:?}");
    assert!(sides[0].perp_dot(sides[2]).abs() < 1e-9, "not parallel: {sides:?}");
}

/// Without a mouse: a face by measurements, a vent and a block by Enter, moved by the arrow keys.
#[test]
fn a_vent_and_a_block_are_placed_and_moved_by_keys_alone() {
    let mut hand = Hand::new();
    let before = hand.job();
    hand.key(Key::P);
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(job.penetrations.len(), before.penetrations.len() + 1);
    let placed = job.penetrations.last().unwrap().at;
    hand.key(Key::Escape);
    hand.chord(egui::Modifiers::SHIFT, Key::ArrowUp);
    assert!((hand.job().penetrations.last().unwrap().at - placed).length() > 0.2);
    hand.key(Key::B);
    hand.key(Key::Enter);
    assert_eq!(hand.job().blocks.len(), before.blocks.len() + 1);
}

/// The side lengths of the first part after drawing a whole roof, in feet.
fn walls(hand: &Hand) -> Vec<f64> {
    let sides =
        hand.job().parts[0].outline.sides().map(|(_, _, a, b)| a.distance(b) / feet(1.0)).collect::<Vec<_>>();
    sides.iter().map(|side| (side * 1000.0).round() / 1000.0).collect()
}

#[test]
fn a_house_by_two_corners_and_its_size() {
    let mut hand = Hand::empty();
    hand.key(Key::D);
    hand.press("Whole roof");
    hand.press("Rectangle");
    hand.click_plan(-5.0, -4.0);
    hand.type_toward((2.0, 1.0), "48' x 30");
    assert_eq!(walls(&hand), [48.0, 30.0, 48.0, 30.0], "{}", hand.editor().said());
    let part = &hand.job().parts[0];
    assert!(part.outline.outer.iter().any(|p| p.distance(dvec2(-5.0, -4.0)) < 0.2), "from the first corner");
    assert_eq!(hand.job().faces.len(), 2, "two slopes and two gables");
}

#[test]
fn a_rectangle_is_dragged_open_while_its_size_is_typed() {
    let mut hand = Hand::empty();
    hand.key(Key::D);
    hand.press("Whole roof");
    let (from, to) = (hand.at(dvec2(-5.0, -4.0)), hand.at(dvec2(3.0, 2.0)));
    hand.drag(from, to);
    assert!(hand.job().parts.is_empty(), "the button is still down");
    hand.type_text("40 x 24");
    hand.drop(to);
    assert_eq!(walls(&hand), [40.0, 24.0, 40.0, 24.0], "{}", hand.editor().said());
}

#[test]
fn an_ell_shaped_house_and_a_tee() {
    for (shape, sides) in [
        ("L", vec![48.0, 18.0, 32.0, 12.0, 16.0, 30.0]),
        ("T", vec![48.0, 18.0, 16.0, 12.0, 16.0, 12.0, 16.0, 18.0]),
    ] {
        let mut hand = Hand::empty();
        hand.key(Key::D);
        hand.press("Whole roof");
        hand.press(shape);
        hand.click_plan(-7.0, 4.0);
        hand.type_toward((2.0, 0.0), "48 x 30");
        // The notch is at the lower right.
        hand.type_toward((6.0, -4.5), if shape == "L" { "32 x 12" } else { "16 x 12" });
        let mut drawn = walls(&hand);
        let at = drawn.iter().position(|side| *side == 48.0).unwrap();
        drawn.rotate_left(at);
        if drawn[1] != sides[1] {
            // In the opposite direction.
            drawn[1..].reverse();
        }
        assert_eq!(drawn, sides, "{shape}: {}", hand.editor().said());
    }
}

#[test]
fn an_invalid_size_is_reported_in_place() {
    let mut hand = Hand::empty();
    hand.key(Key::D);
    hand.press("Rectangle");
    hand.click_plan(-5.0, -4.0);
    for (typed, told) in
        [("30", "Type both lengths"), ("30 x wide", "can't read \"wide\""), ("0 x 12", "longer than 0")]
    {
        hand.type_text(typed);
        hand.key(Key::Enter);
        assert!(hand.sees(told), "{typed}");
        (0..typed.len()).for_each(|_| hand.key(Key::Backspace));
    }
    assert!(hand.job().faces.is_empty());
}

/// Shift: each side is perpendicular to the previous one though the pointer is not, and the last corner makes the
/// closing side perpendicular to the first side.
#[test]
fn shift_holds_right_angles() {
    let mut hand = Hand::empty();
    hand.draw_face();
    for at in [(-5.0, -4.0), (4.0, -3.4), (4.4, 1.5), (-5.4, 1.1)] {
        hand.click_holding(at, Modifiers::SHIFT);
    }
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(job.faces.len(), 1, "{}", hand.editor().said());
    let off = chalkcourse_geometry::out_of_square(&job.faces[0].outline.outer);
    assert!(off.is_none(), "{off:?}");
}

#[test]
fn a_side_by_length_and_angle() {
    let mut hand = Hand::empty();
    hand.draw_face();
    hand.click_plan(-4.0, -4.0);
    let toward = hand.at(dvec2(0.0, -3.0));
    hand.harness.hover_at(toward);
    hand.harness.run();
    hand.type_text("20");
    hand.key(Key::Tab);
    hand.type_text("90");
    hand.key(Key::Enter);
    let toward = hand.at(dvec2(2.0, 2.0));
    hand.harness.hover_at(toward);
    hand.harness.run();
    hand.type_text("10");
    hand.key(Key::Tab);
    hand.type_text("135");
    hand.key(Key::Enter);
    let toward = hand.at(dvec2(-4.0, 3.0));
    hand.click(toward);
    hand.key(Key::Enter);
    let job = hand.job();
    assert_eq!(job.faces.len(), 1, "{}", hand.editor().said());
    let corners = &job.faces[0].outline.outer;
    assert!((corners[1] - corners[0]).distance(dvec2(feet(20.0), 0.0)) < 1e-6, "east: {corners:?}");
    let turned = (corners[2] - corners[1]) / feet(10.0);
    assert!(turned.distance(dvec2(0.5_f64.sqrt(), 0.5_f64.sqrt())) < 1e-6, "{turned}");
}

/// Esc removes one corner, and redo restores it.
#[test]
fn esc_removes_one_corner() {
    let mut hand = Hand::empty();
    hand.draw_face();
    for (x, y) in [(-4.0, -4.0), (4.0, -4.0), (4.0, 0.0), (0.0, 3.0)] {
        hand.click_plan(x, y);
    }
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    hand.key(Key::Escape);
    hand.key(Key::Enter);
    assert_eq!(hand.job().faces[0].outline.outer.len(), 3, "{}", hand.editor().said());
}

#[test]
fn an_outline_out_of_square_is_shown_and_squared() {
    let mut hand = Hand::empty();
    hand.draw_face();
    for at in [(-5.0, -4.0), (5.0, -4.0), (5.1, 1.0), (-5.0, 1.0)] {
        hand.click_holding(at, Modifiers::ALT);
    }
    hand.key(Key::Enter);
    assert_eq!(hand.job().faces.len(), 1, "{}", hand.editor().said());
    assert!(hand.sees("° out of square"));
    hand.press("Square it");
    assert!(!hand.sees("° out of square"));
    assert_eq!(chalkcourse_geometry::out_of_square(&hand.job().faces[0].outline.outer), None);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(hand.sees("° out of square"), "it can be undone");
}
