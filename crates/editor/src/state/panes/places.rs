//! The initial arrangement of panes, the size that each needs, and how a split provides it.

use super::{Container, LinearDir, Pane, Rect, Tile, TileId, Tiles, Tree, Vec2};
use egui_tiles::Linear;

/// What the drawing keeps when a pane opens beside it, points.
const DRAWING_KEEPS: f32 = 260.0;
/// From this width on, the house is to the right of the drawing, otherwise below it.
const SIDE_BY_SIDE: f32 = 700.0;

/// The initial arrangement: the drawing with the house, and to its right a column of tabs with all other panes.
pub(super) fn first() -> Tree<Pane> {
    let mut tiles = Tiles::default();
    let drawing = tiles.insert_pane(Pane::Drawing);
    let house = tiles.insert_pane(Pane::House);
    let others: Vec<TileId> = Pane::ALL
        .into_iter()
        .filter(|pane| !matches!(pane, Pane::Drawing | Pane::House))
        .map(|pane| tiles.insert_pane(pane))
        .collect();
    for tile in others.iter().chain([&house]) {
        tiles.set_visible(*tile, false);
    }
    let drawing = tiles.insert_tab_tile(vec![drawing]);
    let house = tiles.insert_tab_tile(vec![house]);
    let pictures = tiles.insert_horizontal_tile(vec![drawing, house]);
    let beside = tiles.insert_tab_tile(others);
    let root = tiles.insert_horizontal_tile(vec![pictures, beside]);
    Tree::new(egui::Id::unique("desk"), root, tiles)
}

/// Whether each pane is in the tree exactly once, and nothing else.
pub(super) fn is_whole(tree: &Tree<Pane>) -> bool {
    let mut found = Vec::new();
    let mut ahead: Vec<TileId> = tree.root().into_iter().collect();
    let mut steps = 0;
    while let Some(id) = ahead.pop() {
        steps += 1;
        match tree.tiles.get(id) {
            Some(Tile::Pane(pane)) => found.push(*pane),
            Some(Tile::Container(container)) => ahead.extend(container.children()),
            None => return false,
        }
        // A container that contains itself would loop forever.
        if steps > tree.tiles.len() {
            return false;
        }
    }
    found.sort();
    found == Pane::ALL && tree.tiles.len() == steps
}

/// The initial width of a pane beside the drawing, points.
fn wanted(pane: Pane, room: Vec2) -> f32 {
    match pane {
        Pane::Drawing | Pane::House => room.x / 2.0,
        Pane::Order => (room.x * 0.62).clamp(560.0, 760.0),
        Pane::RuleBook | Pane::Circuits => 480.0,
        Pane::Coursing | Pane::FitUp | Pane::RoofReport | Pane::Taped | Pane::Checklist => 420.0,
        Pane::History | Pane::Glossary => 340.0,
    }
}

/// The initial size of a pane's own window, points.
pub(super) fn own_size(pane: Pane) -> [f32; 2] {
    match pane {
        Pane::Drawing | Pane::House | Pane::Order => [860.0, 640.0],
        _ => [480.0, 640.0],
    }
}

/// The split between a pane and the drawing, and its child with the pane.
fn parting(tree: &Tree<Pane>, pane: Pane) -> Option<(TileId, TileId)> {
    let above = |from: TileId| std::iter::successors(Some(from), |id| tree.tiles.parent_of(*id));
    let of_drawing: Vec<TileId> = above(tree.tiles.find_pane(&Pane::Drawing)?).collect();
    let mut child = tree.tiles.find_pane(&pane)?;
    for id in above(child) {
        if of_drawing.contains(&id) {
            return (id != child).then_some((id, child));
        }
        child = id;
    }
    None
}

/// The width of a pane's place, or its height if it is above or below the drawing.
pub(super) fn size(tree: &Tree<Pane>, pane: Pane) -> Option<f32> {
    let (split, child) = parting(tree, pane)?;
    let Some(Container::Linear(linear)) = tree.tiles.get_container(split) else { return None };
    let rect = tree.tiles.rect(child)?;
    Some(along(linear.dir, rect.size()))
}

fn along(dir: LinearDir, size: Vec2) -> f32 {
    if dir == LinearDir::Horizontal { size.x } else { size.y }
}

/// Puts the house to the right of the drawing if that is wide, otherwise below it; only if both are alone in their
/// split.
pub(super) fn turn_beside_house(tree: &mut Tree<Pane>, room: Vec2) {
    let Some((split, _)) = parting(tree, Pane::House) else { return };
    if tree.root() == Some(split) {
        return;
    }
    let width = tree.tiles.rect(split).map_or(room.x, |rect: Rect| rect.width());
    if let Some(Tile::Container(Container::Linear(linear))) = tree.tiles.get_mut(split) {
        linear.dir = if width >= SIDE_BY_SIDE { LinearDir::Horizontal } else { LinearDir::Vertical };
    }
}

/// Gives a pane's place at least its last size, or what it needs.
pub(super) fn make_room(tree: &mut Tree<Pane>, pane: Pane, kept: Option<f32>, room: Vec2) {
    let Some((split, child)) = parting(tree, pane) else { return };
    let visible = |id: &TileId| tree.is_visible_in_layout(*id);
    let Some(Container::Linear(linear)) = tree.tiles.get_container(split) else { return };
    let whole = along(linear.dir, tree.tiles.rect(split).map_or(room, |rect| rect.size()));
    let asked = kept.unwrap_or_else(|| match linear.dir {
        LinearDir::Horizontal if pane == Pane::House => whole / 2.0,
        LinearDir::Horizontal => wanted(pane, room),
        LinearDir::Vertical => whole / 2.0,
    });
    let most = (whole - DRAWING_KEEPS).max(whole / 2.0);
    let share = (asked.min(most) / whole.max(1.0)).clamp(0.05, 0.9);
    let others: f32 =
        linear.children.iter().filter(|id| **id != child && visible(id)).map(|id| linear.shares[*id]).sum();
    let now = linear.shares[child] / (linear.shares[child] + others).max(f32::EPSILON);
    let stood = tree.tiles.rect(child).is_some();
    if others <= 0.0 || stood && now >= share {
        return;
    }
    if let Some(Tile::Container(Container::Linear(Linear { shares, .. }))) = tree.tiles.get_mut(split) {
        shares.set_share(child, others * share / (1.0 - share));
    }
}
