use crate::hand::Hand;
use chalkcourse_geometry::dvec2;
use chalkcourse_job::FindingKey;
use chalkcourse_plan::{Seen, fix_words, fixes};
use chalkcourse_rules::{Finding, Severity};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

fn findings(hand: &Hand) -> Vec<Finding> {
    hand.editor().document().plan().findings.clone()
}

/// Drags the sample's block up over the ridge side of its face.
fn break_a_rule(hand: &mut Hand) {
    let job = hand.job();
    let at = job.faces[0].plane().to_plan(job.blocks[0].at + dvec2(0.8, 0.5));
    let (from, to) = (hand.at(at), hand.at(at + dvec2(0.0, 0.9)));
    hand.drag(from, to);
    hand.drop(to);
    assert!(!findings(hand).is_empty(), "nothing was broken");
}

/// Looks at the first stop until its fixes were found; returns its key, and the text of the best fix.
fn look_at_the_first(hand: &mut Hand) -> (FindingKey, String) {
    let finding = findings(hand)[0].clone();
    assert_eq!(finding.severity, Severity::Stop);
    let plan = hand.editor().document().plan().clone();
    let found = fixes(&hand.job(), &plan, &finding.key, &|| false);
    let label = fix_words(&hand.job(), found.best().expect("no fix was found"), Seen::Plan);
    let words = format!("Stop: {}", chalkcourse_telling::message(&hand.job(), &finding));
    hand.harness.get_by_label(&words).hover();
    hand.settle();
    hand.settle();
    (finding.key, label.into())
}

fn stops(hand: &Hand) -> usize {
    findings(hand).iter().filter(|f| f.severity == Severity::Stop).count()
}

#[test]
fn a_visible_finding_shows_a_verified_fix_as_one_step() {
    let mut hand = Hand::new();
    break_a_rule(&mut hand);
    let (before, stopped) = (hand.job(), stops(&hand));
    let (key, label) = look_at_the_first(&mut hand);
    assert_eq!(hand.job(), before, "to look changes nothing");
    hand.harness.get_all_by_label(&label).next().unwrap().click();
    hand.harness.run();
    assert!(stops(&hand) < stopped, "the fix leaves as many stops");
    assert!(findings(&hand).iter().all(|f| f.key != key), "the fix did not clear it");
    hand.settle();
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert_eq!(hand.job(), before);
}

#[test]
fn fixes_are_not_searched_during_a_drag() {
    let mut hand = Hand::new();
    break_a_rule(&mut hand);
    hand.settle();
    let job = hand.job();
    let at = job.faces[0].plane().to_plan(job.blocks[0].at + dvec2(0.8, 0.5));
    let (from, to) = (hand.at(at), hand.at(at + dvec2(0.3, 0.1)));
    hand.drag(from, to);
    assert!(!findings(&hand).is_empty() && !hand.editor().is_working());
    hand.drop(to);
}

#[test]
fn a_waiver_needs_a_reason_and_a_name_and_stays_with_the_job() {
    let mut hand = Hand::new();
    break_a_rule(&mut hand);
    let open = findings(&hand).len();
    hand.harness.get_all_by_label("Waive…").next().unwrap().click();
    hand.harness.run();
    hand.press("Waive it");
    assert!(hand.job().waivers.is_empty(), "waived without a reason");
    hand.harness.get_by_label("Why may it be built so?").focus();
    hand.harness.run();
    hand.type_text("The inspector agreed on site");
    hand.harness.get_by_label("Who says so?").focus();
    hand.harness.run();
    hand.type_text("R. Fenn");
    hand.press("Waive it");
    let waivers = hand.job().waivers.clone();
    assert_eq!((waivers.len(), waivers[0].by.as_str()), (1, "R. Fenn"));
    assert_eq!(findings(&hand).iter().filter(|f| f.waived.is_none()).count(), open - 1);
    assert!(hand.sees("waived by R. Fenn"));
}

#[test]
fn hovering_a_row_highlights_its_place() {
    let mut hand = Hand::new();
    break_a_rule(&mut hand);
    let first = findings(&hand)[0].clone();
    assert_eq!(hand.editor().lit(), None);
    let words = format!("{:?}: {}", first.severity, chalkcourse_telling::message(&hand.job(), &first));
    hand.harness.get_by_label(&words).hover();
    hand.harness.run();
    assert_eq!(hand.editor().lit(), Some(first.key.to_string()));
    hand.press("Quantities");
    hand.harness.get_by_label_contains("FH-102, ").hover();
    hand.harness.run();
    assert_eq!(hand.editor().lit().as_deref(), Some("FH-102"));
}

#[test]
fn hovering_a_fix_previews_it_and_changes_nothing() {
    let mut hand = Hand::new();
    break_a_rule(&mut hand);
    let before = hand.job();
    let (key, label) = look_at_the_first(&mut hand);
    assert_eq!(hand.editor().previewed(), None);
    hand.harness.get_all_by_label(&label).next().unwrap().hover();
    hand.harness.run();
    assert_eq!(hand.editor().previewed(), Some(&key));
    assert_eq!(hand.job(), before);
}
