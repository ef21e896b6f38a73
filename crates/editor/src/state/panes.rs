//! How the drawing and the panes beside it share the room: which are open, where each stands, how wide it is, which has a window
//! of its own, and which has the keyboard.
//!
//! A pane that is closed keeps its place in the tree, so that it comes back to where the person had it.

mod places;

use egui::{Pos2, Rect, Vec2};
use egui_tiles::{Container, LinearDir, Tile, TileId, Tiles, Tree};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// The drawing, or what can stand beside it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub(crate) enum Pane {
    /// It is always there.
    #[default]
    Drawing,
    /// The house in space.
    House,
    Order,
    RuleBook,
    RoofReport,
    Coursing,
    FitUp,
    Taped,
    Checklist,
    History,
    Glossary,
    Circuits,
}

impl Pane {
    pub(crate) const ALL: [Self; 12] = [
        Self::Drawing,
        Self::House,
        Self::Order,
        Self::RuleBook,
        Self::RoofReport,
        Self::Coursing,
        Self::FitUp,
        Self::Taped,
        Self::Checklist,
        Self::History,
        Self::Glossary,
        Self::Circuits,
    ];

    /// Whether it has the keyboard as soon as it is opened: it is walked or turned with arrows.
    fn takes_keys(self) -> bool {
        matches!(self, Self::House | Self::Order)
    }
}

/// What is asked of the desk while its panes are drawn, and done after.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Change {
    Open(Pane),
    /// Open it, bring it to the front, or close it where it is there already.
    OpenOrClose(Pane),
    Close(Pane),
    /// Into a window of its own, or back beside the drawing.
    OwnWindow(Pane),
    /// Into a window of its own whose corner is there on the screen, points.
    OwnWindowAt(Pane, Pos2),
    /// The keyboard to a pane.
    Keys(Pane),
    /// The keyboard to the next pane, or the one before.
    NextKeys {
        back: bool,
    },
    /// Widths are kept as they are now.
    KeepWidths,
    Reset,
}

/// A window of its own that a pane has or had.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
struct Own {
    /// It stands there whenever it is open.
    out: bool,
    /// Of the window's inside, points.
    size: [f32; 2],
    /// Its corner on the screen, points; none until it is known.
    #[serde(default)]
    at: Option<[f32; 2]>,
    /// The corner that it was opened with: asked for once, so that a window that a person moves is left alone.
    #[serde(skip)]
    opened: Option<Option<[f32; 2]>>,
}

/// A window of its own that is open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct OwnWindow {
    pub(crate) pane: Pane,
    /// Of its inside, points.
    pub(crate) size: [f32; 2],
    /// The corner that it opens at, points on the screen; none leaves it to the system.
    pub(crate) at: Option<[f32; 2]>,
}

/// The arrangement.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(crate) struct PaneTree {
    /// None while its panes are drawn.
    tree: Option<Tree<Pane>>,
    open: BTreeSet<Pane>,
    own: BTreeMap<Pane, Own>,
    /// How wide, or high, a person made the place of a pane, points.
    sizes: BTreeMap<Pane, f32>,
    /// Which pane has the keyboard.
    #[serde(skip)]
    keys: Pane,
    /// The keyboard changed hands; the view moves the focus.
    #[serde(skip)]
    keys_moved: bool,
    #[serde(skip)]
    later: Vec<Change>,
    /// The room that all had last, points.
    #[serde(skip)]
    room: Vec2,
}

impl Default for PaneTree {
    fn default() -> Self {
        Self {
            tree: Some(places::first()),
            open: BTreeSet::from([Pane::Drawing]),
            own: BTreeMap::new(),
            sizes: BTreeMap::new(),
            keys: Pane::Drawing,
            keys_moved: false,
            later: Vec::new(),
            room: Vec2::ZERO,
        }
    }
}

impl PaneTree {
    /// Where it is kept between two starts.
    pub(crate) const KEY: &str = "chalkcourse-desk";

    /// As it was kept; as at first where that is not whole, since a tree that lacks a pane would never show it.
    pub(crate) fn kept(kept: Option<Self>) -> Self {
        kept.filter(|desk| desk.tree.as_ref().is_some_and(places::is_whole)).map_or_else(
            Self::default,
            |mut desk| {
                desk.open.insert(Pane::Drawing);
                desk.own.remove(&Pane::Drawing);
                desk.show_open();
                desk
            },
        )
    }

    pub(crate) fn is_open(&self, pane: Pane) -> bool {
        self.open.contains(&pane)
    }

    /// Whether anything stands beside the drawing.
    pub(crate) fn has_others(&self) -> bool {
        Pane::ALL.into_iter().any(|pane| pane != Pane::Drawing && self.is_docked(pane))
    }

    /// Whether it is open beside the drawing, and not in a window of its own.
    fn is_docked(&self, pane: Pane) -> bool {
        self.is_open(pane) && !self.is_out(pane)
    }

    /// Whether it stands in a window of its own whenever it is open.
    pub(crate) fn is_out(&self, pane: Pane) -> bool {
        self.own.get(&pane).is_some_and(|own| own.out)
    }

    /// The pane that has the keyboard.
    pub(crate) fn keys(&self) -> Pane {
        self.keys
    }

    /// Whether the keyboard changed hands since this was asked last.
    pub(crate) fn took_keys(&mut self) -> bool {
        std::mem::take(&mut self.keys_moved)
    }

    /// The own windows that are open.
    pub(crate) fn own_windows(&mut self) -> Vec<OwnWindow> {
        let mut windows = Vec::new();
        for (&pane, own) in &mut self.own {
            if own.out && self.open.contains(&pane) {
                let at = *own.opened.get_or_insert(own.at);
                windows.push(OwnWindow { pane, size: own.size, at });
            } else {
                own.opened = None;
            }
        }
        windows
    }

    /// How large the own window of a pane is now, and where its corner is, as far as the system tells.
    pub(crate) fn keep_window(&mut self, pane: Pane, size: Vec2, at: Option<Pos2>) {
        if let Some(own) = self.own.get_mut(&pane) {
            own.size = size.into();
            own.at = at.map(Into::into).or(own.at);
        }
    }

    /// Changes something; while the panes are drawn, after that.
    pub(crate) fn change(&mut self, change: Change) {
        if self.tree.is_none() {
            self.later.push(change);
            return;
        }
        match change {
            Change::Open(pane) => self.open(pane),
            Change::OpenOrClose(pane) if self.is_in_front(pane) => self.close(pane),
            Change::OpenOrClose(pane) => self.open(pane),
            Change::Close(pane) => self.close(pane),
            Change::OwnWindow(Pane::Drawing) | Change::OwnWindowAt(Pane::Drawing, _) => {}
            Change::OwnWindow(pane) => {
                let own = self.own_of(pane);
                own.out = !own.out;
                self.open(pane);
            }
            Change::OwnWindowAt(pane, at) => {
                let own = self.own_of(pane);
                (own.out, own.at) = (true, Some(at.into()));
                self.open(pane);
            }
            Change::Keys(pane) => self.give_keys(pane),
            Change::NextKeys { back } => self.next_keys(back),
            Change::KeepWidths => self.keep_widths(),
            Change::Reset => {
                let open = std::mem::take(&mut self.open);
                *self = Self { open, room: self.room, keys: self.keys, ..Self::default() };
                self.show_open();
                self.make_rooms();
            }
        }
    }

    /// Hands the tree out to be drawn.
    pub(crate) fn lift(&mut self) -> Tree<Pane> {
        self.tree.take().unwrap_or_else(places::first)
    }

    /// Takes the tree back, and does what was asked meanwhile.
    pub(crate) fn put_back(&mut self, tree: Tree<Pane>, room: Vec2) {
        let first = self.room == Vec2::ZERO;
        (self.tree, self.room) = (Some(tree), room);
        if first {
            self.make_rooms();
        }
        for change in std::mem::take(&mut self.later) {
            self.change(change);
        }
    }

    fn own_of(&mut self, pane: Pane) -> &mut Own {
        let usual = Own { out: false, size: places::own_size(pane), at: None, opened: None };
        self.own.entry(pane).or_insert(usual)
    }

    fn open(&mut self, pane: Pane) {
        let fresh = self.open.insert(pane);
        self.show_open();
        if !self.is_out(pane)
            && let (Some(tile), Some(tree)) = (self.tile(pane), &mut self.tree)
        {
            tree.make_active(|id, _| id == tile);
        }
        if fresh {
            self.make_room(pane);
        }
        if pane.takes_keys() {
            self.give_keys(pane);
        }
    }

    fn close(&mut self, pane: Pane) {
        if pane == Pane::Drawing {
            return;
        }
        self.open.remove(&pane);
        self.show_open();
        if self.keys == pane {
            self.give_keys(Pane::Drawing);
        }
    }

    fn give_keys(&mut self, pane: Pane) {
        let pane = if self.is_open(pane) { pane } else { Pane::Drawing };
        self.keys_moved |= self.keys != pane;
        self.keys = pane;
        if let (Some(tile), Some(tree)) = (self.tile(pane), &mut self.tree) {
            tree.make_active(|id, _| id == tile);
        }
    }

    fn next_keys(&mut self, back: bool) {
        let open: Vec<Pane> = Pane::ALL.into_iter().filter(|pane| self.is_docked(*pane)).collect();
        let at = open.iter().position(|pane| *pane == self.keys).unwrap_or(0);
        let step = if back { open.len().saturating_sub(1) } else { 1 };
        if let Some(next) = open.get((at + step) % open.len().max(1)) {
            self.give_keys(*next);
            self.keys_moved = true;
        }
    }

    /// Whether it is open and no other tab lies over it.
    fn is_in_front(&self, pane: Pane) -> bool {
        let on_top = |tile| self.tree.as_ref().is_some_and(|tree| tree.active_tiles().contains(&tile));
        self.is_open(pane) && (self.is_out(pane) || self.tile(pane).is_some_and(on_top))
    }

    fn tile(&self, pane: Pane) -> Option<TileId> {
        self.tree.as_ref()?.tiles.find_pane(&pane)
    }

    /// Shows the panes that are open beside the drawing, and no others.
    fn show_open(&mut self) {
        for pane in Pane::ALL {
            let docked = self.is_docked(pane);
            if let (Some(tile), Some(tree)) = (self.tile(pane), &mut self.tree) {
                tree.set_visible(tile, docked);
            }
        }
    }

    /// Gives panes that are open at the start their room, once that is known.
    fn make_rooms(&mut self) {
        for pane in Pane::ALL {
            if self.is_docked(pane) {
                self.make_room(pane);
            }
        }
    }

    /// A pane that opens has at least the room that a person gave it last, or what it needs; the drawing keeps some.
    fn make_room(&mut self, pane: Pane) {
        let room = self.room;
        if self.is_out(pane) || room == Vec2::ZERO {
            return;
        }
        let kept = self.sizes.get(&pane).copied();
        if let Some(tree) = &mut self.tree {
            if pane == Pane::House && kept.is_none() {
                places::turn_beside_house(tree, room);
            }
            places::make_room(tree, pane, kept, room);
        }
    }

    /// Remembers the room of each pane that is in front.
    fn keep_widths(&mut self) {
        let Some(tree) = &self.tree else { return };
        let beside = Pane::ALL.into_iter().filter(|pane| *pane != Pane::Drawing && self.is_in_front(*pane));
        let sizes: Vec<_> = beside.filter_map(|pane| Some((pane, places::size(tree, pane)?))).collect();
        self.sizes.extend(sizes);
    }
}

/// A container that holds no other pane that is open than the drawing: it needs no tabs.
pub(crate) fn holds_drawing_alone(tree: &Tree<Pane>) -> Option<TileId> {
    let drawing = tree.tiles.find_pane(&Pane::Drawing)?;
    let parent = tree.tiles.parent_of(drawing)?;
    let Some(Tile::Container(Container::Tabs(tabs))) = tree.tiles.get(parent) else { return None };
    tabs.children.iter().all(|child| *child == drawing || !tree.is_visible(*child)).then_some(parent)
}

#[cfg(test)]
mod tests;
