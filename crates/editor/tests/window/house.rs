//! The 3-D view of the house, and the homeowner's view, by the accessibility tree.

use crate::hand::Hand;
use chalkcourse::{Options, Selection};
use chalkcourse_job::BlockId;
use chalkcourse_words::{Language, speaking};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;
use std::time::Duration;

#[test]
fn the_house_has_a_description_and_turns_by_keys_and_buttons() {
    let mut hand = Hand::new();
    hand.key(Key::Num3);
    assert!(hand.sees("Roof seen from the south-west, from a little above, modules: 12 on South"));
    assert!(hand.sees("sun in the west"), "21 June, 15:00 at 84.5° W");
    for _ in 0..12 {
        hand.key(Key::ArrowLeft);
    }
    assert!(hand.sees("Roof seen from the south-east") || hand.sees("Roof seen from the north-west"));
    hand.press("Turn right");
    hand.press("Higher");
    hand.press("Higher");
    hand.press("Higher");
    assert!(hand.sees("from high up"));
    hand.press("Before");
    assert!(hand.sees("without the array"));
    hand.key(Key::Num1);
    assert!(hand.sees("Drawing of Alder Court, plan"));
}

#[test]
fn a_click_on_the_picture_selects_the_block_then_its_module() {
    let mut hand = Hand::new();
    hand.key(Key::Num3);
    // In the picture, not in a list beside it; a little off the seam in the middle of the block.
    let named = hand.harness.get_all_by_label_contains("Block A").map(|node| node.rect().center());
    let places: Vec<egui::Pos2> = named.collect();
    let in_picture = places.into_iter().find(|at| at.x > 100.0 && at.x < 930.0).unwrap();
    let at = in_picture + egui::vec2(8.0, 3.0);
    // The picture is rendered on another thread.
    for _ in 0..200 {
        hand.click(at);
        if hand.editor().selection() == Selection::Block(BlockId(7)) {
            break;
        }
        std::thread::sleep(Duration::from_millis(25));
    }
    assert_eq!(hand.editor().selection(), Selection::Block(BlockId(7)));
    hand.click(at);
    assert!(matches!(hand.editor().selection(), Selection::Module { block: BlockId(7), .. }));
    // The selection is the same in plan.
    hand.key(Key::Num1);
    assert!(hand.editor().selection().block().is_some());
}

#[test]
fn a_face_is_selected_by_keyboard_only() {
    let mut hand = Hand::new();
    hand.key(Key::Num3);
    hand.harness.get_all_by_label_contains("Face South, pitch").next().unwrap().click_accesskit();
    hand.harness.run();
    assert!(matches!(hand.editor().selection(), Selection::Face(_)));
}

#[test]
fn without_a_roof_it_says_what_to_do() {
    let mut hand = Hand::empty();
    hand.key(Key::Num3);
    assert!(hand.sees("There is no house to show yet: draw a face of the roof first."));
    assert!(hand.sees("the light is even"), "an empty job stands nowhere");
}

#[test]
fn the_sun_is_described_and_a_tool_returns_to_the_plan() {
    let mut hand = Hand::new();
    hand.key(Key::Num3);
    assert!(hand.sees("Sunrise 4:1"), "at UTC - 6 on the longest day");
    hand.key(Key::B);
    assert!(hand.sees("Drawing of Alder Court, plan"));
}

#[test]
fn the_picture_goes_into_a_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("house.png");
    let mut hand = Hand::new();
    hand.key(Key::Num3);
    hand.press("Save picture…");
    hand.give_path(&path);
    let bytes = std::fs::read(&path).unwrap();
    assert_eq!(&bytes[1..4], b"PNG");
    // Width and height are at fixed positions (ISO/IEC 15948, IHDR).
    assert_eq!((&bytes[16..20], &bytes[20..24]), (&1920u32.to_be_bytes()[..], &1080u32.to_be_bytes()[..]));
}

#[test]
fn the_homeowner_sees_coverage_and_cost_and_nothing_internal() {
    let mut hand = Hand::new();
    // A block on a pipe: a stop.
    let job = hand.job();
    let plane = job.faces[0].plane();
    let from = plane.to_plan(job.blocks[0].at + chalkcourse_geometry::dvec2(0.6, 0.4));
    let to = plane.to_plan(job.blocks[0].at + chalkcourse_geometry::dvec2(4.6, 0.4));
    let (from, to) = (hand.at(from), hand.at(to));
    hand.drag(from, to);
    hand.drop(to);
    assert!(!hand.editor().document().plan().findings.is_empty());
    let dragged = hand.job();
    hand.key(Key::F11);
    for words in
        ["What it covers", "What it costs", "12", "4.9 kW", "Good to know", "From above", "of the roof"]
    {
        assert!(hand.sees(words), "{words} is missing");
    }
    for words in ["FH-", "STOP", "clearance", "Findings", "Waive", "Overhead", "Profit", "margin", "Undo"] {
        assert!(!hand.sees(words), "{words} is for the office");
    }
    // Keys that change the job are ignored.
    hand.key(Key::Delete);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), dragged);
    hand.press("Before");
    assert!(hand.sees("without the array"));
    hand.key(Key::Escape);
    assert!(!hand.sees("What it costs"));
    assert!(hand.sees("Findings"));
}

/// A job with an open stop and a waiver is not presented to the homeowner as done: both are shown in full, and the
/// safety cautions.
#[test]
fn the_homeowner_sees_stops_and_waivers() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("two.chalk.json");
    let sample =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs/quarry-lane.chalk.json");
    let job = chalkcourse_job::load(&sample).unwrap();
    let plan = chalkcourse_plan::evaluate(&job);
    let waiver = plan.findings[0].waiver("seen on the roof".into(), "Tamsin".into(), "2026-03-01".into());
    let job = chalkcourse_job::apply(&job, &chalkcourse_job::Edit::Waive(waiver)).unwrap();
    chalkcourse_job::save(&job, &path).unwrap();
    let stand = chalkcourse_plan::standing(&job, &chalkcourse_plan::evaluate(&job));
    assert_eq!((stand.stops.len(), stand.waived.len()), (1, 1));
    for (language, heading, stay_off) in [
        (Language::ENGLISH, "Not ready to build", "Please stay off the roof."),
        (Language::SPANISH, "No está lista para construir", "Por favor no suba al techo."),
    ] {
        let options = Options { open: Some(path.clone()), typed_paths: true, language, ..Options::default() };
        let mut hand = Hand::with(options);
        hand.key(Key::F11);
        assert!(hand.sees(heading) && hand.sees(stay_off), "{heading}");
        let stand =
            speaking(language, || chalkcourse_plan::standing(&job, &chalkcourse_plan::evaluate(&job)));
        for sentence in stand.stops.iter().chain(&stand.waived) {
            assert!(hand.sees(sentence), "{sentence}");
        }
    }
}
