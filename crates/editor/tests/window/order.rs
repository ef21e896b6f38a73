//! The order pane, as used by an estimator and a crew.

use crate::hand::Hand;
use crate::rules::{fill, menu};
use chalkcourse_job::{Group, Profit, Stage};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

/// A window with the order of the sample open.
fn opened() -> Hand {
    let mut hand = Hand::new();
    hand.key(Key::O);
    hand
}

/// Filters the lines by a search text.
fn find(hand: &mut Hand, words: &str) {
    fill(hand, "Find", words);
}

fn line(hand: &Hand, number: &str) -> chalkcourse_takeoff::Line {
    let plan = hand.editor().document().plan();
    let lines = plan.takeoff.lines.iter().chain(&plan.takeoff.off);
    lines.into_iter().find(|line| line.number == number).unwrap().clone()
}

/// Opens the details of a line under the table.
fn hold(hand: &mut Hand, number: &str) {
    let at = hand.harness.get_by_label(number).rect().center();
    hand.click(at);
}

#[test]
fn a_line_is_overridden_switched_off_and_restored() {
    let mut hand = opened();
    let before = hand.job();
    fill(&mut hand, "Packages of FH-102", "5");
    assert_eq!(hand.job().order.overrides["FH-102"].packages, 5);
    assert_eq!(line(&hand, "FH-102").cost.unwrap().to_string(), "306.25", "5 boxes at 61.25");
    hold(&mut hand, "FH-102");
    fill(&mut hand, "Reason", "two spare");
    assert_eq!(hand.job().order.overrides["FH-102"].why, "two spare");
    hand.press("As counted: 3");
    assert!(hand.job() == before, "{:?}", hand.job().order);

    hand.press("Order FH-103");
    assert!(hand.job().order.off.contains_key("FH-103"));
    hold(&mut hand, "FH-103");
    fill(&mut hand, "Reason", "left from the last job");
    assert_eq!(hand.job().order.off["FH-103"], "left from the last job");
    assert!(hand.editor().document().plan().takeoff.lines.iter().all(|line| line.number != "FH-103"));
    hand.press("Order FH-103");
    assert!(hand.job() == before, "{:?}", hand.job().order);
    // An invalid number changes nothing.
    fill(&mut hand, "Packages of FH-102", "many");
    assert!(hand.job() == before, "{:?}", hand.job().order);
}

#[test]
fn a_price_is_changed_in_the_jobs_own_list_and_undone() {
    let mut hand = opened();
    let before = hand.job();
    fill(&mut hand, "Price of FH-101", "200");
    assert_eq!(line(&hand, "FH-101").cost.unwrap().to_string(), "2400.00", "12 modules at 200.00");
    assert!(hand.job().prices.name.ends_with("changed in this job"), "{}", hand.job().prices.name);
    fill(&mut hand, "Price of FH-101", "");
    assert_eq!(line(&hand, "FH-101").cost, None, "no price is not zero");
    for _ in 0..2 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    assert!(hand.job() == before, "{:?}", hand.job().order);
}

#[test]
fn an_alternate_is_taken_and_priced_and_its_price_is_never_emptied() {
    let mut hand = opened();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("list.csv");
    std::fs::write(
        &path,
        "number,name,price,alternate for\n,currency,USD,\nFH-103,Screw,14.80,\nHS-9,Other screw,0.0125,FH-103\n",
    )
    .unwrap();
    menu(&mut hand, "File", "Load a price list…");
    hand.give_path(&path);
    assert!(hand.sees("What became of the price list"));
    assert!(
        hand.harness.query_by_label_contains("1 price taken, 0 unknown to the kit, 0 left alone").is_some()
    );
    hand.press("OK");
    let prices = hand.job().prices.clone();
    assert_eq!(prices.prices["FH-103"].alternates.len(), 1, "{}", hand.editor().said());
    hold(&mut hand, "FH-103");
    hand.press("Take instead");
    hand.press("HS-9  Other screw, 0.0125");
    assert_eq!(hand.job().order.alternates["FH-103"], "HS-9");
    assert_eq!(hand.harness.get_by_label("Price of FH-103").value().unwrap(), "0.0125");
    fill(&mut hand, "Price of FH-103", "");
    assert_eq!(hand.job().prices, prices, "nothing is taken out of the list");
    fill(&mut hand, "Price of FH-103", "0.02");
    let changed = &hand.job().prices.prices["FH-103"];
    assert_eq!(
        (changed.package, changed.alternates[0].package),
        (prices.prices["FH-103"].package, "0.02".parse().unwrap())
    );
}

#[test]
fn a_custom_line_is_added_and_removed() {
    let mut hand = opened();
    let before = hand.job();
    hand.press("Add a line");
    fill(&mut hand, "What it is", "Snow guard");
    fill(&mut hand, "A package is a", "box");
    let own = hand.job().order.added[0].clone();
    assert_eq!((own.name.as_str(), own.package.as_str()), ("Snow guard", "box"));
    assert_eq!((own.group, own.stage), (Group::Roofing, Stage::Shingles));
    find(&mut hand, "snow guard");
    fill(&mut hand, "Packages of X-1", "4");
    fill(&mut hand, "Price of X-1", "12.50");
    assert_eq!(line(&hand, "X-1").cost.unwrap().to_string(), "50.00");
    hand.press("Take the line away");
    assert!(hand.job() == before, "{:?}", hand.job().order);
}

#[test]
fn lines_are_found_sorted_and_filtered() {
    let mut hand = opened();
    find(&mut hand, "rail");
    assert!(hand.sees("FH-110") && !hand.sees("FH-101"));
    find(&mut hand, "nothing like that");
    assert!(hand.sees("No line is like that."));
    find(&mut hand, "");
    hand.harness.get_by_label("Which lines are listed").click();
    hand.harness.run();
    hand.press("Without headings");
    let rows = |hand: &Hand| {
        let mut lines: Vec<(f32, String)> = hand
            .editor()
            .document()
            .plan()
            .takeoff
            .lines
            .iter()
            .filter_map(|line| {
                let node = hand.harness.query_by_label(&line.number)?;
                Some((node.rect().top(), line.number.clone()))
            })
            .collect();
        lines.sort_by(|a, b| a.0.total_cmp(&b.0));
        lines.into_iter().map(|(_, number)| number).collect::<Vec<_>>()
    };
    assert_eq!(rows(&hand)[..2], ["FH-101", "FH-102"]);
    hand.press("Cost");
    let costs = |hand: &Hand| rows(hand).iter().map(|number| line(hand, number).cost).collect::<Vec<_>>();
    let up = costs(&hand);
    assert!(up.len() > 5 && up.is_sorted(), "{up:?}");
    hand.press("Cost ↑");
    let down = costs(&hand);
    assert!(down.len() > 5 && down.is_sorted_by(|a, b| a >= b), "{down:?}");
    let most = hand.editor().document().plan().takeoff.lines.iter().map(|line| line.cost).max().unwrap();
    assert_eq!(down[0], most);
}

#[test]
fn esc_leaves_a_field_then_the_pane_and_never_closes_it_or_lets_go_of_the_block() {
    let mut hand = Hand::new();
    hand.click_plan(5.0, 1.5);
    let held = hand.editor().selection();
    assert!(matches!(held, chalkcourse::Selection::Block(_)));
    hand.key(Key::O);
    fill(&mut hand, "Packages of FH-102", "5");
    hand.harness.get_by_label("Packages of FH-102").focus();
    hand.harness.run();
    for _ in 0..2 {
        hand.key(Key::Escape);
        assert!(hand.sees("Add a line"));
        assert_eq!(hand.editor().selection(), held, "what is held on the drawing was let go of");
    }
    // The drawing has the keyboard now, and Esc clears the selection there.
    hand.key(Key::Escape);
    assert_eq!(hand.editor().selection(), chalkcourse::Selection::Nothing);
    assert!(hand.sees("Add a line"), "a pane is closed by its key or its button");
    hand.key(Key::O);
    assert!(!hand.sees("Add a line"));
}

#[test]
fn hovering_a_line_highlights_its_places() {
    let mut hand = opened();
    let at = hand.harness.get_by_label("FH-110").rect().center();
    hand.harness.hover_at(at);
    hand.harness.run();
    assert_eq!(hand.editor().lit().as_deref(), Some("FH-110"));
}

#[test]
fn overhead_and_profit_are_added_to_the_cost() {
    let mut hand = opened();
    let before = hand.editor().document().plan().takeoff.totals.clone();
    hand.press("Roof, money, stock");
    fill(&mut hand, "Overhead, % of the cost", "10");
    hand.harness.get_by_label("Profit").scroll_to_me();
    hand.harness.run();
    hand.press("Profit");
    hand.press("margin: % of the price");
    fill(&mut hand, "Profit, %", "20");
    let totals = hand.editor().document().plan().takeoff.totals.clone();
    assert_eq!(totals.cost, before.cost);
    // 14,930.39 plus a tenth of it is 16,423.43; sold so that a fifth of the price is profit: 16,423.43 / 0.8.
    assert_eq!(totals.total.to_string(), "20529.29");
    assert!(matches!(hand.job().order.pricing.profit, Profit::Margin { .. }));
    hand.harness.get_by_label("Add what is left").scroll_to_me();
    hand.harness.run();
    hand.press("Add what is left");
    fill(&mut hand, "Part of leftover 1", "FH-121");
    fill(&mut hand, "Amount of leftover 1", "40");
    // 74 with waste, 40 of them in stock: two boxes of 25.
    assert_eq!(line(&hand, "FH-121").packages, 2);
    fill(&mut hand, "Part of leftover 1", "no such part");
    assert_eq!(hand.job().order.stock[0].number, "FH-121");
    hand.harness.get_by_label("Remove").scroll_to_me();
    hand.harness.run();
    hand.press("Remove");
    assert!(hand.job().order.stock.is_empty());
}

#[test]
fn a_delivery_is_counted_and_says_what_can_start() {
    let mut hand = opened();
    hand.press("Delivery");
    fill(&mut hand, "Came of FH-101", "12");
    fill(&mut hand, "Damaged of FH-101", "1");
    fill(&mut hand, "Note of FH-101", "glass broken");
    let count = hand.job().order.delivery.counts["FH-101"].clone();
    assert_eq!((count.packages, count.damaged, count.note.as_str()), (12, 1, "glass broken"));
    assert!(hand.sees("1 damaged"));
    // No more can be damaged than were received.
    fill(&mut hand, "Damaged of FH-101", "13");
    assert_eq!(hand.job().order.delivery.counts["FH-101"].damaged, 1);
    hand.press("The rest came whole");
    assert!(hand.sees("54 of 54 lines counted"));
    assert!(hand.sees("can start"), "tear-off has all that it needs");
    assert!(hand.sees("waits for FH-101"));
    hand.press("All of FH-101 came");
    assert!(!hand.sees("waits for FH-101"));
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("counts.csv");
    std::fs::write(&path, "number,counted,damaged,note\nFH-102,2,0,one box short\n").unwrap();
    hand.press("Load counts…");
    hand.give_path(&path);
    assert_eq!(hand.job().order.delivery.counts["FH-102"].packages, 2);
    assert!(hand.sees("1 short"));
}

#[test]
fn two_orders_and_two_suppliers_are_compared() {
    let mut hand = opened();
    hand.press("Compare");
    hand.press("Keep this order to compare");
    assert!(hand.sees("The two orders are alike, line by line."));
    hand.press("Lines");
    fill(&mut hand, "Packages of FH-101", "13");
    hand.press("Compare");
    assert!(hand.sees("12 → 13"));
    // One more module with its tax: 212.00 and 7.25 % of it.
    assert!(hand.sees("$14,930.39 → $15,157.76, +$227.37"));
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/data/harbour-supply.xlsx");
    hand.press("Add a price list…");
    hand.give_path(std::path::Path::new(file));
    assert!(hand.sees("Harbour Supply, spring"));
    assert!(hand.sees("Without a price, and not in the total: FH-107, FH-130"));
}

/// Runs more frames after pointing at the row: the drawing is painted before the pane, and must know.
#[test]
fn a_hovered_row_stays_highlighted_in_later_frames() {
    let mut hand = opened();
    let at = hand.harness.get_by_label("FH-102").rect().center();
    hand.harness.hover_at(at);
    hand.harness.run_steps(4);
    assert_eq!(hand.editor().lit().as_deref(), Some("FH-102"));
    assert_eq!(
        hand.editor().lit_when_painted().as_deref(),
        Some("FH-102"),
        "the drawing was painted without it"
    );
}

#[test]
fn delete_in_the_window_leaves_the_roof_behind_it_alone() {
    let mut hand = Hand::new();
    hand.click_plan(5.0, 1.5);
    let before = hand.job();
    assert!(before.blocks.len() == 1);
    hand.key(Key::O);
    hand.key(Key::Delete);
    assert!(hand.job() == before, "a block behind the window is gone");
    hold(&mut hand, "FH-102");
    hand.key(Key::Delete);
    hand.key(Key::ArrowRight);
    assert!(hand.job() == before, "what is held behind the window was changed");
    assert!(hand.editor().said().contains("press there first"), "{}", hand.editor().said());
    // With the pane closed the key is for the drawing again.
    hand.key(Key::O);
    hand.key(Key::Delete);
    assert!(hand.job().blocks.is_empty());
}

#[test]
fn a_field_that_refuses_keeps_keyboard_and_text_and_says_how_to_write_it() {
    let mut hand = opened();
    let before = hand.job();
    fill(&mut hand, "Price of FH-103", "12,5");
    let field = hand.harness.get_by_label("Price of FH-103");
    assert_eq!(field.value().unwrap(), "12,5");
    assert!(field.is_focused(), "the keyboard left the field");
    assert!(hand.sees("write it with a decimal point, as 184.50"));
    assert!(hand.job() == before);
    hand.key(Key::Escape);
    assert_eq!(hand.harness.get_by_label("Price of FH-103").value().unwrap(), "14.80");
}
