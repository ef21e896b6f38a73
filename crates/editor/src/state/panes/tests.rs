use super::*;

/// Lays out the panes as the view would, without drawing.
fn drawn(desk: &mut PaneTree, room: Vec2) {
    struct Plain;
    impl egui_tiles::Behavior<Pane> for Plain {
        fn pane_ui(&mut self, _: &mut egui::Ui, _: TileId, _: &mut Pane) -> egui_tiles::UiResponse {
            egui_tiles::UiResponse::None
        }
        fn tab_title_for_pane(&mut self, pane: &Pane) -> egui::WidgetText {
            format!("{pane:?}").into()
        }
        fn simplification_options(&self) -> egui_tiles::SimplificationOptions {
            egui_tiles::SimplificationOptions {
                all_panes_must_have_tabs: true,
                join_nested_linear_containers: false,
                ..Default::default()
            }
        }
    }
    let ctx = egui::Context::default();
    let input = egui::RawInput {
        screen_rect: Some(Rect::from_min_size(egui::Pos2::ZERO, room)),
        ..Default::default()
    };
    let mut out = ctx.run_ui(input, |ui| {
        let mut tree = desk.lift();
        egui::CentralPanel::no_frame().show(ui, |ui| tree.ui(&mut Plain, ui));
        desk.put_back(tree, room);
    });
    out.textures_delta.clear();
}

fn width(desk: &PaneTree, pane: Pane) -> f32 {
    let tree = desk.tree.as_ref().unwrap();
    desk.tile(pane).and_then(|tile| tree.tiles.rect(tile)).map_or(0.0, |rect| rect.width())
}

fn opened(panes: &[Pane], room: Vec2) -> PaneTree {
    let mut desk = PaneTree::default();
    drawn(&mut desk, room);
    for pane in panes {
        desk.change(Change::Open(*pane));
        drawn(&mut desk, room);
    }
    desk
}

const SMALL: Vec2 = Vec2::new(848.0, 640.0);

#[test]
fn the_drawing_is_alone_at_first_and_never_closes() {
    let mut desk = opened(&[], SMALL);
    assert!(!desk.has_others() && (width(&desk, Pane::Drawing) - 848.0).abs() < 2.0);
    for change in
        [Change::Close(Pane::Drawing), Change::OpenOrClose(Pane::Drawing), Change::OwnWindow(Pane::Drawing)]
    {
        desk.change(change);
        assert!(desk.is_open(Pane::Drawing) && !desk.is_out(Pane::Drawing), "{change:?}");
    }
}

#[test]
fn the_order_opens_beside_the_drawing_and_both_fit() {
    let desk = opened(&[Pane::Order], SMALL);
    let (drawing, order) = (width(&desk, Pane::Drawing), width(&desk, Pane::Order));
    assert!(drawing >= 255.0 && order >= 540.0 && drawing + order < 849.0, "{drawing} and {order}");
    let wide = opened(&[Pane::Order], Vec2::new(1488.0, 980.0));
    assert!(width(&wide, Pane::Drawing) > 700.0, "{}", width(&wide, Pane::Drawing));
}

#[test]
fn the_house_is_on_the_right_if_wide_else_below() {
    let desk = opened(&[Pane::House], SMALL);
    assert!((width(&desk, Pane::House) - width(&desk, Pane::Drawing)).abs() < 4.0);
    let both = opened(&[Pane::Order, Pane::House], SMALL);
    assert_eq!(width(&both, Pane::House), width(&both, Pane::Drawing), "one over the other");
    assert!(width(&both, Pane::Order) > 500.0);
}

#[test]
fn a_pane_widens_the_column_only_if_it_needs_more() {
    let desk = opened(&[Pane::History, Pane::Order], SMALL);
    assert!(width(&desk, Pane::Order) > 540.0, "{}", width(&desk, Pane::Order));
    let desk = opened(&[Pane::Order, Pane::History], SMALL);
    assert!(width(&desk, Pane::History) > 540.0, "the drawing jumped");
}

#[test]
fn a_chosen_width_is_restored() {
    let mut desk = opened(&[Pane::Coursing], Vec2::new(1200.0, 700.0));
    let (split, child) = {
        let tree = desk.tree.as_ref().unwrap();
        let column = tree.tiles.parent_of(desk.tile(Pane::Coursing).unwrap()).unwrap();
        (tree.tiles.parent_of(column).unwrap(), column)
    };
    let Some(Tile::Container(Container::Linear(linear))) = desk.tree.as_mut().unwrap().tiles.get_mut(split)
    else {
        panic!("no split")
    };
    linear.shares.set_share(child, 1.0);
    drawn(&mut desk, Vec2::new(1200.0, 700.0));
    desk.change(Change::KeepWidths);
    let chosen = width(&desk, Pane::Coursing);
    assert!((chosen - 600.0).abs() < 4.0, "{chosen}");
    desk.change(Change::Close(Pane::Coursing));
    drawn(&mut desk, Vec2::new(1200.0, 700.0));
    desk.change(Change::Open(Pane::Coursing));
    drawn(&mut desk, Vec2::new(1200.0, 700.0));
    assert!((width(&desk, Pane::Coursing) - chosen).abs() < 2.0);
    desk.change(Change::Reset);
    drawn(&mut desk, Vec2::new(1200.0, 700.0));
    assert!((width(&desk, Pane::Coursing) - 420.0).abs() < 8.0, "{}", width(&desk, Pane::Coursing));
}

#[test]
fn a_key_opens_raises_and_closes_a_pane() {
    let mut desk = opened(&[Pane::Order, Pane::Coursing], SMALL);
    assert!(desk.is_in_front(Pane::Coursing) && !desk.is_in_front(Pane::Order));
    desk.change(Change::OpenOrClose(Pane::Order));
    assert!(desk.is_open(Pane::Order) && desk.is_in_front(Pane::Order), "it was behind, and is not closed");
    desk.change(Change::OpenOrClose(Pane::Order));
    assert!(!desk.is_open(Pane::Order) && desk.is_open(Pane::Coursing));
}

#[test]
fn keyboard_focus_cycles_back_to_the_drawing() {
    let mut desk = opened(&[Pane::Order, Pane::Coursing], SMALL);
    assert_eq!(desk.keys(), Pane::Order, "courses don't take it");
    desk.change(Change::NextKeys { back: false });
    assert_eq!(desk.keys(), Pane::Coursing);
    assert!(desk.is_in_front(Pane::Coursing));
    desk.change(Change::NextKeys { back: false });
    assert_eq!(desk.keys(), Pane::Drawing);
    desk.change(Change::NextKeys { back: true });
    assert_eq!(desk.keys(), Pane::Coursing);
    desk.change(Change::Close(Pane::Coursing));
    assert_eq!(desk.keys(), Pane::Drawing);
}

#[test]
fn an_own_window_is_closed_reopened_and_docked() {
    let mut desk = opened(&[Pane::Order], SMALL);
    desk.change(Change::OwnWindow(Pane::Order));
    assert!(desk.is_open(Pane::Order) && !desk.has_others());
    assert_eq!(desk.own_windows().len(), 1);
    desk.change(Change::Close(Pane::Order));
    assert!(desk.own_windows().is_empty());
    desk.change(Change::Open(Pane::Order));
    assert_eq!(desk.own_windows().len(), 1, "it comes back to where it was");
    desk.change(Change::OwnWindow(Pane::Order));
    assert!(desk.has_others() && desk.own_windows().is_empty());
}

#[test]
fn pane_changes_during_drawing_are_deferred() {
    let mut desk = opened(&[], SMALL);
    let tree = desk.lift();
    desk.change(Change::Open(Pane::Order));
    assert!(!desk.is_open(Pane::Order));
    desk.put_back(tree, SMALL);
    assert!(desk.is_open(Pane::Order));
}

/// A separate window opens at its last position, which is requested only once: a window moved by the user is left
/// alone.
#[test]
fn an_own_window_reopens_at_its_position() {
    let mut desk = PaneTree::default();
    desk.change(Change::OwnWindowAt(Pane::Order, Pos2::new(900.0, 50.0)));
    let at = |desk: &mut PaneTree| desk.own_windows().first().map(|window| window.at);
    assert_eq!(at(&mut desk), Some(Some([900.0, 50.0])));
    desk.keep_window(Pane::Order, Vec2::new(700.0, 500.0), Some(Pos2::new(400.0, 300.0)));
    assert_eq!(at(&mut desk), Some(Some([900.0, 50.0])), "it is moved while it is open");
    // A system that does not report positions loses nothing.
    desk.keep_window(Pane::Order, Vec2::new(700.0, 500.0), None);
    desk.change(Change::Close(Pane::Order));
    assert_eq!(at(&mut desk), None);
    desk.change(Change::Open(Pane::Order));
    assert_eq!(at(&mut desk), Some(Some([400.0, 300.0])));
    let text = serde_json::to_string(&desk).unwrap();
    let mut again = PaneTree::kept(Some(serde_json::from_str(&text).unwrap()));
    let window = again.own_windows()[0];
    assert_eq!((window.size, window.at), ([700.0, 500.0], Some([400.0, 300.0])));
    // Settings from before positions were stored.
    let older = text.replace(",\"at\":[400.0,300.0]", "");
    assert_ne!(older, text);
    let mut older = PaneTree::kept(Some(serde_json::from_str(&older).unwrap()));
    assert_eq!(at(&mut older), Some(None));
}

#[test]
fn stored_panes_are_restored_and_broken_ones_are_not() {
    let mut desk = opened(&[Pane::Order, Pane::House], SMALL);
    desk.change(Change::OwnWindow(Pane::House));
    let text = serde_json::to_string(&desk).unwrap();
    let mut again = PaneTree::kept(Some(serde_json::from_str(&text).unwrap()));
    drawn(&mut again, SMALL);
    assert!(again.is_in_front(Pane::Order) && again.is_out(Pane::House) && again.is_open(Pane::House));
    assert!((width(&again, Pane::Order) - width(&desk, Pane::Order)).abs() < 2.0);
    // A pane missing from the tree would never be shown again.
    let mut torn = desk.clone();
    let tile = torn.tile(Pane::Coursing).unwrap();
    torn.tree.as_mut().unwrap().remove_recursively(tile);
    let mended = PaneTree::kept(Some(torn));
    assert!(places::is_whole(mended.tree.as_ref().unwrap()) && !mended.is_open(Pane::Order));
    let Ok(bad) = serde_json::from_str::<PaneTree>(&text.replace("\"tree\":{", "\"tree\":null,\"was\":{"))
    else {
        return;
    };
    assert!(!PaneTree::kept(Some(bad)).is_open(Pane::Order));
}
