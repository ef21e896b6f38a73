//! What limits a fill, computed on request: the face is filled again without each obstacle in turn.

use super::every::Every;
use super::judge::Judge;
use super::lay::{fill_room, joints, rows, several};
use super::search::STEPS;
use super::trim::rects;
use super::wins::{FillContext, wins};
use super::{Fill, FillError, FillKind, Mode, Site, allowed};
use crate::Seen;
use crate::fixes::ways;
use crate::room::{Room, What};
use chalkcourse_geometry::fit::{
    Allowed, HeldBack as Held, Joints, NearFit, Placed, Price, Question, RowRules, Tile, fit_best,
    holds_back, near_fits,
};
use chalkcourse_geometry::{DVec2, Length, Polygon, Rect};
use chalkcourse_job::{FaceId, PenetrationId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_words::later::common::modules;
use chalkcourse_words::{Said, later as words};
use serde::Serialize;
use std::cell::Cell;

/// Distance within which a module nearly fits, and the farthest that a penetration is moved when looking for gains: 8
/// in and 2 ft.
const NEAR: f64 = 0.2;
const FARTHEST: f64 = 0.6;

/// What limits a fill.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct HeldBack {
    /// The cost of each rule, setback and penetration, most expensive first; including those that cost nothing.
    pub costs: Vec<Cost>,
    /// The shortest moves of movable penetrations that gain modules.
    pub wins: Vec<Win>,
    /// All places where a module nearly fits, nearest first.
    pub near: Vec<Near>,
    /// Whether the computation was completed.
    pub finished: bool,
}

/// The cost of an obstacle.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cost {
    /// The obstacle.
    pub what: What,
    /// Where it keeps modules from, in the frame of the face.
    pub shapes: Vec<Polygon>,
    /// How many more modules the best layout without it has.
    pub modules: usize,
    /// Whether both layouts are proved optimal; otherwise the number is only what was found.
    pub proved: bool,
    /// In words.
    pub words: Said,
}

/// A move of a penetration that gains modules.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Win {
    /// The penetration.
    pub penetration: PenetrationId,
    /// How far, in the frame of the face: along the eave or up the slope, metres.
    pub by: DVec2,
    /// Modules gained.
    pub modules: usize,
    /// In words, for a reader without a picture.
    pub words: Said,
    /// What was searched.
    pub searched: Said,
    /// The penetration, in words.
    #[serde(skip)]
    name: Said,
}

impl Win {
    /// The move in words, with its direction as seen by the user; `face` is the face that was filled.
    pub fn told(&self, job: &Resolved, face: FaceId, seen: Seen) -> Said {
        moved_would_win(job, face, &self.name, (self.by, self.modules), seen)
    }
}

/// What a move of a penetration gains, with its direction as seen by the user.
fn moved_would_win(
    job: &Resolved,
    face: FaceId,
    name: &Said,
    (by, wins): (DVec2, usize),
    seen: Seen,
) -> Said {
    let ways = ways(job, Some(face), by, seen);
    words::fill::moved_would_win(&name.clone().with_capital(), &ways, &modules(wins))
}

/// A place where a module nearly fits.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Near {
    /// Where it would be, in the face's frame, metres.
    pub rect: Rect,
    /// Everything that stops it, deepest first.
    pub stops: Vec<NearStop>,
    /// What stops it and by how much.
    pub words: Said,
}

/// One obstacle that stops a module.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NearStop {
    /// The obstacle.
    pub what: What,
    /// How far the module would have to shift along the eave to clear it, metres; `None` if no shift helps.
    pub along: Option<f64>,
    /// The same up the slope.
    pub up: Option<f64>,
    /// The shorter of the two, metres.
    pub by: f64,
}

impl HeldBack {
    /// Whether nothing but the size of the face limits the fill.
    pub fn is_empty(&self) -> bool {
        self.wins.is_empty() && self.near.is_empty() && self.costs.iter().all(|cost| cost.modules == 0)
    }

    /// What costs modules and what would gain some, in words, most expensive first.
    pub fn words(&self) -> impl Iterator<Item = &Said> {
        let costs = self.costs.iter().filter(|cost| cost.modules > 0).map(|cost| &cost.words);
        costs.chain(self.wins.iter().map(|win| &win.words))
    }

    /// Places where a module nearly fits, grouped by obstacle with counts, in the order of the list.
    pub fn near_by_words(&self) -> Vec<(&Said, usize)> {
        let mut groups: Vec<(&Said, usize)> = Vec::new();
        for near in &self.near {
            match groups.iter_mut().find(|(words, _)| **words == near.words) {
                Some((_, count)) => *count += 1,
                None => groups.push((&near.words, 1)),
            }
        }
        groups
    }
}

/// What limits a fill of this job; `mode` is the mode it was filled in, and the fill may be applied or not. The cost of
/// an obstacle is found by filling the face again without it, so this takes as long as several fills; `stop` ends it
/// early with what has been found.
///
/// For a fill by worth or to a number the fullest grid is examined, since only that runs out of room.
///
/// # Errors
/// [`FillError`] if the face no longer exists.
pub fn hold_back(
    job: &Resolved,
    fill: &Fill,
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<HeldBack, FillError> {
    let judge = Judge::of(job, &[fill.face]);
    let site = Site::of(&judge, &judge.bare, fill.face, mode, fill.basis.fire.beyond)?;
    let room = allowed(site.job, &site.layout, site.index, &fill.basis.fire, &fill.blocks);
    let can_be_moved = |what: &What| {
        let through = what.penetration().and_then(|id| site.layout.penetration(id));
        through.is_some_and(|penetration| penetration.kind.can_be_moved())
    };
    let ids = room.things.iter().enumerate();
    let mut movable: Vec<usize> = ids.filter(|(_, what)| can_be_moved(what)).map(|(id, _)| id).collect();
    let mut prices = Vec::new();
    let usual = mode == Mode::SlidingRows;
    if usual {
        prices = costs(&judge, &site, fill, &room, stop)?;
        // Moving an obstacle gains no more than removing it.
        movable.retain(|id| prices.iter().any(|cost| cost.price.id == *id && cost.most > fill.modules));
    }
    let question = Question { near: NEAR, movable, farthest: FARTHEST, prices: !usual };
    let mut held = match &fill.basis.laid {
        FillKind::Nothing => Held::default(),
        FillKind::Rows(fit) => holds_back(&room.allowed, fit, &question, stop)?,
        FillKind::Stacks => {
            let tiles: Vec<Tile> = site.maker().tiles().map(|(_, tile)| tile).collect();
            joints(site.job, mode)?;
            let rules = RowRules { joints: Joints::Aligned, base: site.base(), hooked: true };
            match fit_best(&room.allowed, &tiles, &rules, stop)? {
                Some(fit) => holds_back(&room.allowed, &fit, &question, stop)?,
                None => Held::default(),
            }
        }
        FillKind::Blocks(_) | FillKind::Pieces => pieces(&site, fill, &room, stop)?,
    };
    if usual {
        held.prices = prices.into_iter().map(|cost| cost.price).collect();
        let asked = FillContext { job, judge: &judge, site: &site, fill, room: &room };
        held.moves = wins(&asked, &held, &question, stop)?;
    }
    let finished = !stop();
    let mut told = tell(site.job, &site.layout, site.index, &room, &held);
    told.finished = finished;
    Ok(told)
}

/// The cost of each obstacle for blocks in one mode, and what nearly fits beside them.
fn pieces(site: &Site<'_>, fill: &Fill, room: &Room, stop: &dyn Fn() -> bool) -> Result<Held, FillError> {
    let mut held = Held { near: near(site, fill, &room.allowed)?, ..Held::default() };
    if site.mode == Mode::SlidingRows {
        return Ok(held);
    }
    for id in room.allowed.numbers() {
        if stop() {
            break;
        }
        let found = fill_room(site, &room.allowed.without(id), &fill.basis.fire, stop)?;
        let tiles = found.modules.saturating_sub(fill.modules);
        held.prices.push(Price { id, tiles, proved: fill.proved && found.modules == found.bound });
    }
    held.prices.sort_by_key(|price| std::cmp::Reverse(price.tiles));
    Ok(held)
}

/// Places beside each block where one more module nearly fits.
fn near(site: &Site<'_>, fill: &Fill, room: &Allowed) -> Result<Vec<NearFit>, FillError> {
    let base = site.base();
    let all: Vec<Rect> =
        fill.blocks.iter().flat_map(|block| rects(site, block)).map(|(_, rect)| rect).collect();
    let mut found: Vec<NearFit> = Vec::new();
    for block in &fill.blocks {
        let size = block.module_size(&site.job.kit);
        let tile = Tile { size, gap: DVec2::splat(block.reveal.metres()) };
        let placed = rects(site, block).into_iter().map(|(cell, rect)| Placed {
            row: cell.row as usize,
            column: cell.column as usize,
            rect,
        });
        let rules = RowRules { joints: Joints::Free, base, hooked: false };
        let places = near_fits(room, &tile, &rules, &placed.collect::<Vec<_>>(), NEAR)?;
        let clear = |near: &NearFit| all.iter().all(|rect| rect.overlap(&near.rect).min_element() < 1e-6);
        found.extend(places.into_iter().filter(clear));
    }
    Ok(found)
}

/// The cost of an obstacle, and the bound on modules without it.
struct Priced {
    price: Price,
    most: usize,
}

/// The cost of each obstacle over all layouts, most expensive first. Both counts are from the usual search; the cost is
/// called certain where both equal their bounds.
fn costs(
    judge: &Judge,
    site: &Site<'_>,
    fill: &Fill,
    room: &Room,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Priced>, FillError> {
    let every = Every::of(judge, site.face, site.index, fill.basis.fire.share);
    let mut costs = Vec::new();
    for id in room.allowed.numbers() {
        let Some(&what) = room.things.get(id).filter(|_| !stop()) else { continue };
        let most = every.without(what, fill.modules, STEPS, stop)?.max(fill.modules);
        let mut found = fill.modules;
        if found < most {
            let (without, fire) = (room.allowed.without(id), &fill.basis.fire);
            found = found.max(rows(site, &without, fire, most, stop)?.modules);
            if found < most {
                // No random steps: a fill is priced obstacle by obstacle while the user waits.
                let look = (most, &Cell::new(0));
                found = found.max(several(site, &without, fire, look, stop)?.modules);
            }
        }
        let price = Price { id, tiles: found - fill.modules, proved: fill.proved && found == most };
        costs.push(Priced { price, most });
    }
    costs.sort_by_key(|cost| std::cmp::Reverse(cost.price.tiles));
    Ok(costs)
}

/// Describes the results of the fitting in words and shapes.
fn tell(job: &Resolved, layout: &Layout, index: usize, room: &Room, held: &Held) -> HeldBack {
    let placed = layout.roof.faces.get(index).zip(layout.faces.get(index));
    let Some((face, face_id)) = placed.map(|(face, on)| (face, on.id)) else { return HeldBack::default() };
    let small = |metres: f64| Length::from_metres(metres).show_small(job.units);
    let mut told = HeldBack::default();
    for price in &held.prices {
        let sure = if price.proved { words::fill::COSTS } else { words::fill::SEEMS_TO_COST };
        let Some(&what) = room.things.get(price.id) else { continue };
        let space = || Said::own(" ");
        let what_words = what.words(layout, index).with_capital();
        let words =
            Said::joined([what_words, space(), sure.into(), space(), modules(price.tiles), ".".into()]);
        let below = room.allowed.foot.iter().flat_map(|foot| &foot.blocked);
        let all = room.allowed.blocked.iter().chain(below);
        let mut shapes: Vec<Polygon> = all.filter(|b| b.id == price.id).map(|b| b.shape.clone()).collect();
        if shapes.is_empty() {
            // What keeps the rail on the deck is the border.
            shapes.push(face.frame.clone());
        }
        told.costs.push(Cost { what, shapes, modules: price.tiles, proved: price.proved, words });
    }
    for step in &held.moves {
        let Some(what) = room.things.get(step.id) else { continue };
        let Some(penetration) = what.penetration() else { continue };
        let (name, searched) = (what.words(layout, index), step.searched.clone());
        let words = moved_would_win(job, face_id, &name, (step.by, step.wins), Seen::Text);
        told.wins.push(Win { penetration, by: step.by, modules: step.wins, words, searched, name });
    }
    for near in &held.near {
        let mut words = Vec::new();
        let mut stops = Vec::new();
        for stop in &near.stops {
            let what = What::of_barrier(&stop.by, &room.things, &room.allowed, face);
            words.push(words::fill::by(&what.words(layout, index), &small(stop.depth())));
            let finite = |by: f64| by.is_finite().then_some(by);
            stops.push(NearStop {
                what,
                along: finite(stop.along_u),
                up: finite(stop.along_v),
                by: stop.depth(),
            });
        }
        let words = words::fill::one_more_module_is_stopped(&Said::listed(words, words::common::AND));
        told.near.push(Near { rect: near.rect, stops, words });
    }
    told
}
