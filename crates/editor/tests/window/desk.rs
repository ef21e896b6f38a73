//! The panes beside the drawing: their arrangement, how they are reached, what is stored.

use crate::hand::{Hand, Kept};
use crate::rules::menu;
use egui::accesskit::Role;
use egui::{Key, Modifiers, Rect};
use egui_kittest::kittest::{NodeT, Queryable};

/// The rectangle of a pane, by the accessibility tree.
fn pane(hand: &Hand, name: &str) -> Option<Rect> {
    hand.harness.query_by_role_and_label(Role::Pane, name).map(|node| node.rect())
}

fn drawing(hand: &Hand) -> Rect {
    hand.harness.get_by(|node| node.role() == Role::Canvas && of(node, "Drawing of")).rect()
}

fn house(hand: &Hand) -> Option<Rect> {
    hand.harness
        .query_by(|node| node.role() == Role::Canvas && !of(node, "Drawing of"))
        .map(|node| node.rect())
}

fn of(node: &egui_kittest::kittest::AccessKitNode<'_>, words: &str) -> bool {
    node.label().is_some_and(|label| label.starts_with(words))
}

fn apart(a: Rect, b: Rect) -> bool {
    !a.shrink(1.0).intersects(b.shrink(1.0))
}

#[test]
fn the_order_opens_beside_the_drawing_at_1280_by_720() {
    let mut hand = Hand::sized(1280.0, 720.0);
    let whole = drawing(&hand);
    hand.key(Key::O);
    let (order, plan) = (pane(&hand, "Order").unwrap(), drawing(&hand));
    assert!(apart(order, plan), "{order:?} lies over {plan:?}");
    assert!(plan.width() >= 240.0 && order.width() >= 500.0, "{plan:?} {order:?}");
    assert!(whole.contains_rect(plan) && order.right() <= whole.right() + 1.0);
    hand.key(Key::O);
    assert!(pane(&hand, "Order").is_none());
    assert_eq!(drawing(&hand), whole, "all of the room is the drawing's again");
}

#[test]
fn every_pane_opens_beside_the_drawing_with_a_named_tab() {
    let mut hand = Hand::sized(1280.0, 720.0);
    for (modifiers, key, name) in [
        (Modifiers::NONE, Key::O, "Order"),
        (Modifiers::NONE, Key::C, "Courses and base rail"),
        (Modifiers::NONE, Key::Q, "Fit-up of a deck"),
        (Modifiers::NONE, Key::H, "Steps taken"),
        (Modifiers::COMMAND, Key::R, "Roof report"),
        (Modifiers::SHIFT, Key::D, "Face from measurements"),
    ] {
        hand.chord(modifiers, key);
        let at = pane(&hand, name).unwrap_or_else(|| panic!("no pane {name}"));
        assert!(apart(at, drawing(&hand)), "{name}: {at:?}");
        assert!(drawing(&hand).width() >= 240.0, "{name}");
        assert!(hand.harness.query_by_role_and_label(Role::Tab, name).is_some(), "{name}");
    }
    // All six are tabs of one column; a click brings one to the front.
    let tabs = hand.harness.query_all_by(|node| node.role() == Role::Tab).count();
    assert_eq!(tabs, 6, "the drawing alone needs none");
    hand.harness.get_by_role_and_label(Role::Tab, "Order").click();
    hand.harness.run();
    assert!(pane(&hand, "Order").is_some() && pane(&hand, "Face from measurements").is_none());
}

#[test]
fn the_house_is_shown_beside_the_plan_and_both_update() {
    let mut hand = Hand::sized(1366.0, 768.0);
    hand.key(Key::Num3);
    let (house_at, plan) = (house(&hand).unwrap(), drawing(&hand));
    assert!(apart(house_at, plan) && plan.width() > 300.0 && house_at.width() > 300.0);
    // The selection is the same in all panes.
    hand.click_plan(5.0, 1.5);
    assert!(matches!(hand.editor().selection(), chalkcourse::Selection::Block(_)));
    assert!(house(&hand).is_some());
    hand.key(Key::Num3);
    assert!(house(&hand).is_none());
    hand.key(Key::Num3);
    assert_eq!(house(&hand), Some(house_at), "it comes back to where it was");
}

#[test]
fn f6_cycles_panes_and_arrows_apply_to_the_focused_one() {
    let mut hand = Hand::sized(1280.0, 720.0);
    hand.click_plan(5.0, 1.5);
    hand.key(Key::O);
    let before = hand.job();
    hand.key(Key::ArrowDown);
    assert!(hand.job() == before, "the block moved while the order has the keyboard");
    assert!(hand.editor().lit().is_some(), "the first line is not walked to");
    hand.key(Key::F6);
    hand.key(Key::ArrowRight);
    assert!(hand.job() != before, "the drawing has the keyboard again");
    hand.chord(Modifiers::SHIFT, Key::F6);
    let moved = hand.job();
    hand.key(Key::ArrowRight);
    assert!(hand.job() == moved);
    hand.chord(Modifiers::COMMAND, Key::W);
    assert!(pane(&hand, "Order").is_none(), "the pane with the keyboard closes");
    hand.chord(Modifiers::COMMAND, Key::W);
    assert!(hand.editor().said().contains("F6"), "{}", hand.editor().said());
    assert!(drawing(&hand).width() > 600.0, "the drawing never closes");
}

#[test]
fn a_pane_goes_into_a_window_of_its_own_and_back() {
    let mut hand = Hand::sized(1280.0, 720.0);
    let whole = drawing(&hand);
    hand.key(Key::O);
    hand.press("Order in a window of its own");
    assert_eq!(drawing(&hand), whole);
    assert!(hand.sees("Add a line"), "it is open still");
    // It comes back to its last place.
    hand.key(Key::O);
    assert!(!hand.sees("Add a line"));
    hand.key(Key::O);
    assert!(hand.sees("Beside the drawing"));
    hand.press("Beside the drawing");
    assert!(drawing(&hand).width() < whole.width() - 400.0);
    hand.press("Close Order");
    assert!(!hand.sees("Add a line"));
}

/// A tab dropped outside of the window gets its own window; inside, it stays where it was dropped.
#[test]
fn a_tab_dragged_out_becomes_a_window() {
    let mut hand = Hand::sized(1280.0, 720.0);
    let whole = drawing(&hand);
    hand.key(Key::O);
    let tab = hand.harness.get_by_role_and_label(Role::Tab, "Order").rect().center();
    let out = egui::pos2(1500.0, 300.0);
    hand.drag(tab, out);
    hand.drop(out);
    hand.harness.run_steps(3);
    assert_eq!(drawing(&hand), whole, "the order stands beside the drawing still");
    assert!(hand.sees("Beside the drawing") && hand.sees("Add a line"));
}

#[test]
fn the_pane_arrangement_is_stored_and_can_be_reset() {
    let size = (1280.0, 720.0);
    let mut hand = Hand::kept(size, &Kept::default());
    hand.key(Key::O);
    // Drags the divider between drawing and order by 60 points.
    let at = egui::pos2(drawing(&hand).right() + 2.5, 400.0);
    let to = at + egui::vec2(60.0, 0.0);
    let before = pane(&hand, "Order").unwrap().width();
    hand.drag(at, to);
    hand.drop(to);
    let narrower = pane(&hand, "Order").unwrap().width();
    assert!((before - narrower - 60.0).abs() < 8.0, "{before} to {narrower}");
    hand.key(Key::O);
    hand.key(Key::O);
    assert!((pane(&hand, "Order").unwrap().width() - narrower).abs() < 4.0, "opened anew it is as wide");
    let kept = hand.end();
    let mut again = Hand::kept(size, &kept);
    let order = pane(&again, "Order").expect("it was open");
    assert!((order.width() - narrower).abs() < 4.0, "{} and {narrower}", order.width());
    menu(&mut again, "View", "Panes");
    again.press("Panes as at first");
    assert!((pane(&again, "Order").unwrap().width() - before).abs() < 8.0);
    // Settings of another version must not lose a pane.
    let mut torn = kept;
    eframe::Storage::set_string(&mut torn, "chalkcourse-desk", "(tree: None, open: [])".to_owned());
    let mut fresh = Hand::kept(size, &torn);
    assert!(drawing(&fresh).width() > 600.0);
    fresh.key(Key::O);
    assert!(pane(&fresh, "Order").is_some());
}

#[test]
fn hiding_the_side_panel_enlarges_the_drawing() {
    let mut hand = Hand::sized(1280.0, 720.0);
    let before = drawing(&hand);
    assert!(hand.sees("Quantities"));
    hand.key(Key::F9);
    assert!(!hand.sees("Quantities"));
    assert!(drawing(&hand).width() > before.width() + 250.0);
    let kept = hand.end();
    let mut again = Hand::kept((1280.0, 720.0), &kept);
    assert!(!again.sees("Quantities"), "it stays away");
    again.key(Key::F9);
    assert!(again.sees("Quantities"));
}

/// A menu taller than the window scrolls; none extends beyond it.
#[test]
fn menus_fit_a_window_of_1280_by_720() {
    for name in ["File", "Edit", "View", "Help", "Export"] {
        let mut hand = Hand::sized(1280.0, 720.0);
        let fixed: Vec<String> = names(&hand);
        hand.press(name);
        let screen = Rect::from_min_size(egui::Pos2::ZERO, egui::vec2(1280.0, 720.0));
        let layers: Vec<egui::LayerId> = hand.harness.ctx.memory(|memory| memory.layer_ids().collect());
        let areas = layers.into_iter().filter(|layer| layer.order == egui::Order::Foreground);
        assert!(names(&hand).len() > fixed.len(), "{name} did not open");
        for layer in areas {
            if let Some(rect) = hand.harness.ctx.memory(|memory| memory.area_rect(layer.id)) {
                assert!(screen.expand(1.0).contains_rect(rect), "{name}: {rect:?}");
            }
        }
    }
}

fn names(hand: &Hand) -> Vec<String> {
    let nodes = hand.harness.query_all_by(|node| node.label().is_some());
    nodes.filter_map(|node| node.accesskit_node().label()).collect()
}
