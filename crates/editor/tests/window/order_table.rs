//! The lines of the order as a table for everyday work.

use crate::hand::{Hand, Kept};
use crate::rules::fill;
use egui::accesskit::Role;
use egui::{Key, Rect};
use egui_kittest::kittest::{NodeT, Queryable};

/// The texts of the visible rows, from the top.
fn rows(hand: &Hand) -> Vec<String> {
    let table = hand.harness.get_by_role_and_label(Role::Table, "Lines of the order").rect();
    let mut rows: Vec<(Rect, String)> = hand
        .harness
        .query_all_by(|node| node.role() == Role::Row)
        .map(|node| (node.rect(), node.accesskit_node().label().unwrap_or_default()))
        .filter(|(rect, _)| table.contains(rect.center()))
        .collect();
    rows.sort_by(|a, b| a.0.top().total_cmp(&b.0.top()));
    rows.into_iter().map(|(_, words)| words).collect()
}

fn list(hand: &mut Hand, which: &str) {
    hand.harness.get_by_label("Which lines are listed").click();
    hand.harness.run();
    hand.press(which);
}

/// Switches off one module of the sample, on the drawing.
fn fewer_modules(hand: &mut Hand) {
    let before = hand.editor().document().plan().summary.modules;
    hand.click_plan(5.0, 1.5);
    hand.click_plan(5.0, 1.5);
    hand.key(Key::X);
    assert_eq!(hand.editor().document().plan().summary.modules, before - 1, "no module was switched off");
}

#[test]
fn thirty_lines_fit_beside_a_narrow_drawing_at_1366_by_768() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    list(&mut hand, "Without headings");
    let rows = rows(&hand);
    assert!(rows.len() >= 30, "{} lines", rows.len());
    let total = hand.editor().document().plan().takeoff.totals.total;
    assert!(hand.sees(&chalkcourse_telling::order::show_sum(total, "USD")), "with the total over them");
}

#[test]
fn keys_select_rows_and_the_table_scrolls_along() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    list(&mut hand, "Without headings");
    hand.key(Key::ArrowDown);
    let all: Vec<String> =
        hand.editor().document().plan().takeoff.lines.iter().map(|line| line.number.clone()).collect();
    assert_eq!(hand.editor().lit().as_ref(), Some(&all[0]));
    hand.key(Key::ArrowDown);
    assert_eq!(hand.editor().lit().as_ref(), Some(&all[1]));
    hand.key(Key::PageDown);
    let at = all.iter().position(|number| Some(number) == hand.editor().lit().as_ref()).unwrap();
    assert!(at > 20, "a page is {at} rows");
    hand.key(Key::End);
    let last = hand.editor().lit().unwrap();
    hand.harness.run_steps(3);
    assert!(rows(&hand).iter().any(|row| row.contains(&last)), "{last} is out of sight");
    hand.key(Key::Home);
    assert_eq!(hand.editor().lit().as_ref(), Some(&all[0]));
    hand.key(Key::Enter);
    assert!(hand.sees("Waste, %"), "Enter opens the line");
    hand.key(Key::ArrowDown);
    assert!(hand.harness.query_by_label_contains(&format!("{}  ", all[1])).is_some(), "what is told follows");
    hand.key(Key::Enter);
    assert!(!hand.sees("By whose word"));
}

#[test]
fn a_screen_reader_reads_a_row_and_presses_it() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    let row = hand.harness.get_by(|node| {
        node.role() == Role::Row && node.label().is_some_and(|label| label.contains("FH-102"))
    });
    let words = row.accesskit_node().label().unwrap();
    assert!(words.contains("$183.75"), "{words}");
    row.click_accesskit();
    hand.harness.run();
    assert!(hand.sees("Waste, %"), "the row did not open");
}

/// All lines are rows of the table, including invisible ones, and the contents of a visible row are in its cells.
#[test]
fn the_order_is_a_table_for_screen_readers() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    let table = hand.harness.get_by_role_and_label(Role::Table, "Lines of the order");
    let below =
        |role: Role| table.children_recursive().filter(move |node| node.accesskit_node().role() == role);
    let lines = hand.editor().document().plan().takeoff.lines.len();
    assert_eq!(below(Role::Row).count(), lines);
    assert!(below(Role::ColumnHeader).count() >= 5);
    let first = below(Role::Row).next().unwrap();
    let cells: Vec<_> =
        first.children_recursive().filter(|node| node.accesskit_node().role() == Role::Cell).collect();
    assert!(cells.len() >= 6, "{} cells", cells.len());
    let holds = |role: Role| {
        cells.iter().any(|cell| cell.children_recursive().any(|n| n.accesskit_node().role() == role))
    };
    assert!(holds(Role::CheckBox) && holds(Role::TextInput) && holds(Role::Label));
    // Activating the last one scrolls it into view.
    let last = below(Role::Row).last().unwrap();
    let words = last.accesskit_node().label().unwrap();
    let bottom = table.rect().bottom();
    assert!(last.rect().top() > bottom, "all lines are in sight");
    last.click_accesskit();
    hand.harness.run_steps(30);
    let now = hand.harness.get_by_role_and_label(Role::Row, &words);
    let shown = hand.harness.get_by_role_and_label(Role::Table, "Lines of the order").rect();
    assert!(shown.bottom() < bottom, "nothing is told of it");
    assert!(now.rect().bottom() <= shown.bottom() + 1.0, "{:?} under {shown:?}", now.rect());
    assert!(now.accesskit_node().is_selected() == Some(true));
}

#[test]
fn changes_since_the_order_was_viewed_are_shown_until_seen() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    assert!(!hand.sees("since you last looked"));
    hand.key(Key::O);
    fewer_modules(&mut hand);
    hand.key(Key::O);
    assert!(hand.sees("since you last looked"));
    let words = rows(&hand);
    let modules = words.iter().find(|row| row.starts_with("FH-101")).unwrap();
    assert!(modules.contains("(−1)"), "{modules}");
    assert!(hand.sees("−1"));
    let now = hand.editor().document().plan().takeoff.totals.total;
    hand.press("Seen");
    assert!(!hand.sees("since you last looked"));
    // Undo is a change as well.
    hand.chord(egui::Modifiers::COMMAND, Key::Z);
    let more = hand.editor().document().plan().takeoff.totals.total - now;
    assert!(hand.sees(&format!("·  {}", chalkcourse_telling::order::show_sum_more(more, "USD"))));
}

#[test]
fn a_pinned_moment_stays_while_the_order_is_closed_and_opened() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    hand.press("Pin");
    fill(&mut hand, "Packages of FH-102", "5");
    assert!(hand.sees("1 line changed since the pinned moment"));
    for _ in 0..2 {
        hand.key(Key::O);
    }
    assert!(hand.sees("1 line changed since the pinned moment"));
    hand.press("Pin");
    hand.key(Key::O);
    hand.key(Key::O);
    assert!(!hand.sees("changed since"), "unpinned, and looked at since");
}

#[test]
fn manual_changes_are_marked_and_listed() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    fill(&mut hand, "Packages of FH-102", "5");
    fill(&mut hand, "Price of FH-104", "60");
    hand.press("Columns");
    hand.press("Waste, %");
    hand.key(Key::Escape);
    fill(&mut hand, "Waste of FH-110", "15");
    assert_eq!(hand.job().order.waste["FH-110"].share, 0.15);
    list(&mut hand, "Changed by hand");
    let listed = rows(&hand);
    let has = |number: &str| listed.iter().any(|row| row.starts_with(number));
    assert_eq!(listed.len(), 3, "{listed:?}");
    assert!(has("FH-102") && has("FH-104") && has("FH-110"));
    // Setting the price back to that of the list removes the change.
    fill(&mut hand, "Price of FH-104", "58.40");
    assert_eq!(rows(&hand).len(), 2);
    fill(&mut hand, "Waste of FH-110", "");
    assert_eq!(rows(&hand).len(), 1);
}

#[test]
fn the_total_expands_and_says_what_it_lacks() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    fill(&mut hand, "Price of FH-103", "");
    hand.press("1 line without a price");
    assert_eq!(rows(&hand).len(), 1);
    let takeoff = hand.editor().document().plan().takeoff.clone();
    let total = chalkcourse_telling::order::show_sum(takeoff.totals.total, "USD");
    hand.press(&total);
    for words in [
        "Materials and work",
        "Goods",
        "Labor",
        "By stage of work",
        "Without a price, and not in the total: FH-103",
    ] {
        assert!(hand.sees(words), "{words}");
    }
    for (_, cost) in takeoff.cost_by_group() {
        assert!(hand.sees(&chalkcourse_telling::order::show_money(cost)), "{cost}");
    }
    // The expanded state and the columns are stored.
    hand.press("Columns");
    hand.harness.get_by_role_and_label(Role::CheckBox, "Need").click();
    hand.harness.run();
    hand.key(Key::Escape);
    let kept = hand.end();
    let again = Hand::kept((1366.0, 768.0), &kept);
    assert!(again.sees("Materials and work"));
    assert!(again.harness.query_by_label("Need").is_none());
    let mut fresh = Hand::kept((1366.0, 768.0), &Kept::default());
    fresh.key(Key::O);
    assert!(fresh.harness.query_by_label("Need").is_some() && !fresh.sees("Materials and work"));
}

#[test]
fn another_suppliers_list_is_adopted_in_one_step() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::O);
    let before = hand.job();
    hand.press("Compare");
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/data/harbour-supply.xlsx");
    hand.press("Add a price list…");
    hand.give_path(std::path::Path::new(file));
    if hand.harness.query_by_label("OK").is_some() {
        hand.press("OK");
    }
    hand.press("Take this price list");
    assert!(hand.job().prices.name.contains("Harbour"), "{}", hand.job().prices.name);
    hand.chord(egui::Modifiers::COMMAND, Key::Z);
    assert!(hand.job() == before);
}
