use crate::hand::Hand;
use chalkcourse_geometry::{EdgeKind, Length, dvec2};
use chalkcourse_rules::Finding;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

fn findings(hand: &Hand) -> Vec<Finding> {
    hand.editor().document().plan().findings.clone()
}

pub(crate) fn menu(hand: &mut Hand, menu: &str, item: &str) {
    hand.press(menu);
    hand.press(item);
}

/// Clicks an item after scrolling to it.
fn press_in_list(hand: &mut Hand, label: &str) {
    hand.harness.get_by_label(label).scroll_to_me();
    hand.harness.run();
    hand.press(label);
}

/// Types into a field of a form and leaves it with Enter.
pub(crate) fn fill(hand: &mut Hand, field: &str, typed: &str) {
    hand.harness.get_by_label(field).focus();
    hand.harness.run();
    hand.chord(Modifiers::COMMAND, Key::A);
    if typed.is_empty() {
        hand.key(Key::Backspace);
    } else {
        hand.type_text(typed);
    }
    hand.key(Key::Enter);
}

/// Drags the sample's block up towards the ridge, until the ridge setback is violated.
fn break_the_ridge_setback(hand: &mut Hand) {
    let job = hand.job();
    let at = job.faces[0].plane().to_plan(job.blocks[0].at + dvec2(0.8, 0.5));
    let (from, to) = (hand.at(at), hand.at(at + dvec2(0.0, 0.9)));
    hand.drag(from, to);
    hand.drop(to);
    assert!(findings(hand).iter().any(|f| f.rule == "setback"), "{:?}", findings(hand));
}

#[test]
fn a_rule_that_is_switched_off_finds_nothing_until_undo() {
    let mut hand = Hand::new();
    break_the_ridge_setback(&mut hand);
    let before = hand.job();
    menu(&mut hand, "File", "Rule book…");
    hand.press("Rules");
    let title = chalkcourse_rules::RULES.iter().find(|rule| rule.code == "setback").unwrap();
    // The cards of its findings name it too.
    let title = chalkcourse_telling::title(title);
    hand.harness.get_by_role_and_label(egui::accesskit::Role::CheckBox, title).scroll_to_me();
    hand.harness.run();
    hand.harness.get_by_role_and_label(egui::accesskit::Role::CheckBox, title).click();
    hand.harness.run();
    assert!(hand.job().rule_book.off.contains("setback"));
    assert!(findings(&hand).iter().all(|f| f.rule != "setback"));
    assert!(hand.sees("Not checked: switched off in the rule book"));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
    assert!(findings(&hand).iter().any(|f| f.rule == "setback"));
}

#[test]
fn a_wider_setback_is_a_step_that_finds_something_and_names_the_office() {
    let mut hand = Hand::new();
    let before = hand.job();
    assert!(findings(&hand).iter().all(|f| f.rule != "setback"));
    menu(&mut hand, "File", "Rule book…");
    fill(&mut hand, "From eave", "9'");
    let book = hand.job().rule_book.clone();
    assert_eq!(book.setback(EdgeKind::Eave), Length::from_feet(9.0));
    assert!(book.setbacks[&EdgeKind::Eave].source.text.starts_with("amended by the office"));
    assert!(findings(&hand).iter().any(|f| f.rule == "setback"), "{:?}", findings(&hand));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
    // An invalid value is reported at the field, and changes nothing.
    fill(&mut hand, "Share of a lower edge that hooks in", "120 %");
    assert!(hand.sees("Type a share"));
    assert_eq!(hand.job(), before);
}

#[test]
fn a_filter_hides_and_says_what_it_hides() {
    let mut hand = Hand::new();
    break_the_ridge_setback(&mut hand);
    let job = hand.job();
    let words = |finding: &Finding| {
        format!("{:?}: {}", finding.severity, chalkcourse_telling::message(&job, finding))
    };
    let first = findings(&hand)[0].clone();
    let alike = findings(&hand).iter().filter(|f| f.severity == first.severity).count();
    assert!(hand.sees(&words(&first)));
    hand.press(&format!("{:?} {alike}", first.severity));
    assert!(!hand.sees(&words(&first)));
    assert!(hand.sees("hidden by the filter"));
    hand.press("Show all");
    assert!(hand.sees(&words(&first)));
}

#[test]
fn unchecked_rules_are_listed_and_site_facts_change_that() {
    let mut hand = Hand::new();
    let rules = chalkcourse_telling::checked(&hand.job());
    let on = rules.iter().filter(|rule| rule.on).count();
    press_in_list(&mut hand, &format!("What was checked: {on} of {} rules", rules.len()));
    let off = rules.len() - on;
    assert!(off > 0 && hand.sees("Not checked: "));
    let before = hand.job();
    hand.press("House and place");
    fill(&mut hand, "Streets lie to", "S, 90");
    let sides: Vec<f64> = hand.job().site.building.street_sides.iter().map(|side| side.degrees()).collect();
    assert_eq!(sides, [180.0, 90.0]);
    assert!(chalkcourse_telling::checked(&hand.job()).iter().filter(|rule| !rule.on).count() < off);
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
    fill(&mut hand, "Wind, mph", "5");
    assert!(hand.sees("Type a number from 50 to 300."));
    assert_eq!(hand.job(), before);
}

#[test]
fn a_book_is_chosen_saved_and_compared() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("own.json");
    let mut hand = Hand::new();
    menu(&mut hand, "File", "Rule book…");
    fill(&mut hand, "From rake", "10\"");
    let own = hand.job().rule_book.clone();
    hand.press("Save as…");
    hand.give_path(&path);
    assert_eq!(chalkcourse_job::load_rule_book(&path).unwrap(), *own);
    hand.chord(Modifiers::COMMAND, Key::Z);
    hand.press("Compare");
    hand.press("From a file…");
    hand.give_path(&path);
    assert!(hand.sees("3 fields differ from"));
    assert!(hand.sees("Setbacks, on the slope: from rake, its source"));
    hand.harness.get_by_label("Book").click();
    hand.harness.run();
    let older = chalkcourse_job::builtin_rule_books()[3].clone();
    hand.press(&older.name);
    assert_eq!(hand.job().rule_book, older);
}

#[test]
fn the_checklist_opens_and_is_copied() {
    let mut hand = Hand::new();
    menu(&mut hand, "Help", "Crew checklist");
    for words in ["Falls", "Live dc", "Ladders"] {
        assert!(hand.sees(words), "{words}");
    }
    hand.harness.get_by_label("Copy").click();
    // The text is on the clipboard in the frame of the click.
    hand.harness.run_steps(2);
    hand.harness.run();
    assert_eq!(hand.editor().said(), "The checklist is on the clipboard.");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("checklist.pdf");
    hand.press("Print…");
    hand.give_path(&path);
    assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF-"));
    assert!(hand.editor().said().contains("checklist.pdf"), "{}", hand.editor().said());
}

#[test]
fn pathways_and_costs_are_shown_when_asked_for() {
    let mut hand = Hand::new();
    menu(&mut hand, "View", "Pathways for the fire department");
    hand.key(Key::Num2);
    hand.press("Quantities");
    press_in_list(&mut hand, "Cost by part of the order");
    let plan = hand.editor().document().plan().clone();
    for group in chalkcourse_plan::cost_by_group(&plan.takeoff) {
        assert!(hand.sees(&format!(
            "{}: {}",
            group.group.name(),
            chalkcourse_telling::order::show_sum(group.cost, "USD")
        )));
    }
    assert!(hand.sees("12 modules: $"));
    assert!(hand.sees("Bar chart of the cost by group: Solar"));
}

#[test]
fn a_part_of_the_book_is_removed_and_added_again() {
    let mut hand = Hand::new();
    let before = hand.job();
    menu(&mut hand, "File", "Rule book…");
    press_in_list(&mut hand, "Parts of this book");
    press_in_list(&mut hand, "Take out: fire access");
    assert!(hand.job().rule_book.fire_access.is_none());
    assert!(
        chalkcourse_telling::checked(&hand.job()).iter().any(|line| line.code == "fire-paths" && !line.on)
    );
    press_in_list(&mut hand, "Put in: fire access");
    assert_eq!(hand.job().rule_book, before.rule_book);
    press_in_list(&mut hand, "Put in: room beside hips and valleys");
    assert!(hand.job().rule_book.fire_access.as_ref().is_some_and(|fire| fire.hip_or_valley.is_some()));
    for _ in 0..3 {
        hand.chord(Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(hand.job(), before);
}

#[test]
fn the_deck_is_entered_and_checked() {
    let mut hand = Hand::new();
    hand.press("House and place");
    hand.harness.get_by_label("Sheathing").scroll_to_me();
    hand.harness.run();
    fill(&mut hand, "Sheathing", "3/8\"");
    let deck = hand.job().site.building.deck.clone();
    assert_eq!(deck.thickness, Some(Length::from_inches(0.375)));
    assert!(findings(&hand).iter().any(|f| f.key.to_string() == "deck/thickness"), "{:?}", findings(&hand));
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(findings(&hand).iter().all(|f| f.rule != "deck"));
}

#[test]
fn zones_of_wind_are_shown_when_asked_for() {
    let mut hand = Hand::new();
    menu(&mut hand, "View", "Zones of wind suction");
    hand.harness.run();
    hand.key(Key::Num2);
    hand.harness.run();
}

#[test]
fn each_rule_is_shown_with_its_sketch() {
    let mut hand = Hand::new();
    menu(&mut hand, "File", "Rule book…");
    hand.press("Rules");
    for rule in chalkcourse_rules::RULES.iter() {
        let title = chalkcourse_telling::title(rule);
        assert!(hand.harness.query_by_label(&format!("Sketch: {title}")).is_some(), "{title}");
    }
}
