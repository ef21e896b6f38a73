//! Screenshots of the main states, compared with pictures in `tests/snapshots`. After an intended change:
//! `UPDATE_SNAPSHOTS=1 cargo test --package chalkcourse --test window looks`, and review each of them.

use crate::hand::Hand;
use chalkcourse::Options;
use chalkcourse_words::Language;
use egui::{Key, Modifiers};
use egui_kittest::SnapshotOptions;
use egui_kittest::kittest::Queryable;

/// A few pixels may differ because of different rounding on other processors.
fn picture(hand: &mut Hand, name: &str) {
    let allowed = SnapshotOptions::new().threshold(1.0).max_failed_pixels(300_usize);
    hand.harness.snapshot_options(name, &allowed);
}

#[test]
fn the_window_with_the_sample_in_the_dark() {
    let mut hand = Hand::painted(Options { typed_paths: true, ..Options::default() });
    picture(&mut hand, "alder-court-dark");
}

#[test]
fn a_selected_block_in_the_light_theme() {
    let mut hand = Hand::painted(Options { typed_paths: true, ..Options::default() });
    hand.press("Light");
    crate::block::select(&mut hand);
    picture(&mut hand, "block-held-light");
}

#[test]
fn the_order_in_spanish() {
    let options = Options { typed_paths: true, language: Language::SPANISH, ..Options::default() };
    let mut hand = Hand::painted(options);
    hand.key(Key::O);
    picture(&mut hand, "order-spanish");
}

#[test]
fn nothing_drawn_yet() {
    let mut hand = Hand::painted(Options { typed_paths: true, ..Options::default() });
    hand.chord(Modifiers::COMMAND, Key::N);
    assert!(hand.harness.query_by_label("Start with the roof").is_some());
    picture(&mut hand, "empty-dark");
}
