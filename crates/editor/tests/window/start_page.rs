//! The start page.

use crate::hand::{Hand, Kept};
use chalkcourse::Options;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;
use std::path::Path;

/// Settings after a first start in which jobs were opened.
fn remembering(recent: &[&Path]) -> Kept {
    let mut memory = Kept::default();
    let recent: Vec<String> = recent.iter().map(|path| format!("{:?}", path.to_str().unwrap())).collect();
    memory.0.insert("chalkcourse-settings".to_owned(), format!("(recent: [{}])", recent.join(", ")));
    memory
}

fn sample(name: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs").join(format!("{name}.chalk.json"))
}

#[test]
fn the_first_window_opens_the_demo_roof() {
    let hand = Hand::new();
    assert_eq!(hand.job().name, "Alder Court");
    assert!(!hand.sees("What do you want to do?"));
}

#[test]
fn later_starts_show_recent_jobs() {
    let (last, before) = (sample("quarry-lane"), sample("low-barn"));
    let gone = Path::new("/nowhere/at-all.chalk.json");
    let mut hand = Hand::remembering(Options::default(), remembering(&[&last, &before, gone]));
    assert!(hand.sees("What do you want to do?"));
    hand.wait_until(|hand| {
        hand.sees("Quarry Lane") && hand.sees("Low Barn") && hand.sees("not there any more")
    });
    hand.harness.get_by_label_contains("Quarry Lane").click();
    hand.harness.run();
    assert_eq!(hand.job().name, "Quarry Lane");
    assert!(!hand.sees("What do you want to do?"));
    // Back again, and on by the keys of the menu.
    hand.press("File");
    hand.press("Start page");
    assert!(hand.sees("What do you want to do?"));
    hand.chord(Modifiers::COMMAND, Key::N);
    assert!(!hand.sees("What do you want to do?") && hand.job().faces.is_empty());
}

#[test]
fn the_start_page_is_skipped_if_a_file_is_given() {
    let options = Options { open: Some(sample("low-barn")), ..Options::default() };
    let hand = Hand::remembering(options, remembering(&[&sample("quarry-lane")]));
    assert_eq!(hand.job().name, "Low Barn");
    assert!(!hand.sees("What do you want to do?"));
}

#[test]
fn walls_can_be_drawn_from_the_start_page() {
    let mut hand = Hand::remembering(Options::default(), remembering(&[]));
    assert!(!hand.sees("Go on with the last job"), "there is none");
    hand.harness.get_by_label_contains("Raise a roof over the walls").click();
    hand.harness.run();
    assert!(!hand.sees("What do you want to do?"));
    hand.click_plan(-5.0, -4.0);
    hand.type_toward((2.0, 1.0), "48' x 30'");
    assert_eq!(hand.job().faces.len(), 2, "{}", hand.editor().said());
}

/// By keyboard only: the first item on the page is reached and activated.
#[test]
fn its_jobs_are_opened_by_keys() {
    let last = sample("low-barn");
    let mut hand = Hand::remembering(Options::default(), remembering(&[&last]));
    hand.wait_until(|hand| hand.sees("Low Barn"));
    hand.harness.get_by_label_contains("Low Barn").focus();
    hand.harness.run();
    hand.key(Key::Enter);
    assert_eq!(hand.job().name, "Low Barn");
}
