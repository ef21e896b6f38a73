//! What holds a fill back, asked for when a person wants to know: it lays the face again without each thing in the way.

use super::lay::{base, joints};
use super::made::Maker;
use super::report::modules;
use super::{Fill, FillError, Laid, Mode, allowed};
use crate::room::{Room, What};
use chalkcourse_geometry::fit::{
    Allowed, BlockRules, HeldBack as Held, Joints, Price, Question, RowRules, Tile, fit_best, fit_blocks,
    holds_back,
};
use chalkcourse_geometry::{DVec2, Length, Polygon, Rect};
use chalkcourse_job::{PenetrationId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_words::{pick, tell};
use serde::Serialize;

/// How near is nearly, and how far a penetration is moved to look: 8 in and 2 ft.
const NEAR: f64 = 0.2;
const FARTHEST: f64 = 0.6;

/// What holds a fill back.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct HeldBack {
    /// What each rule, setback and penetration costs, the dearest first; what costs nothing is here too.
    pub costs: Vec<Cost>,
    /// The least moves that win modules, of penetrations that can be moved at all.
    pub wins: Vec<Win>,
    /// Every place where a module nearly fits, the nearest first.
    pub near: Vec<Near>,
    /// Whether it was worked out to its end.
    pub finished: bool,
}

/// What something in the way costs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cost {
    /// What.
    pub what: What,
    /// Where it keeps modules from, in the frame of the face.
    pub shapes: Vec<Polygon>,
    /// Modules that the best layout without it has more.
    pub modules: usize,
    /// Whether both layouts are proved; else the number is what was found.
    pub proved: bool,
    /// In words.
    pub words: String,
}

/// A move of a penetration that wins.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Win {
    /// What moves.
    pub penetration: PenetrationId,
    /// How far, in the frame of the face: along the eave or up the slope, metres.
    pub by: DVec2,
    /// Modules won.
    pub modules: usize,
    /// In words.
    pub words: String,
    /// What was searched, in words.
    pub searched: String,
}

/// A place where a module nearly fits.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Near {
    /// Where it would lie, in the face's frame, metres.
    pub rect: Rect,
    /// All that stops it, the deepest first.
    pub stops: Vec<NearStop>,
    /// What stops it and by how much.
    pub words: String,
}

/// One thing that stops a module.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NearStop {
    /// What.
    pub what: What,
    /// How far the module would have to shift along the eave to come clear of it, metres; `None` where no shift helps.
    pub along: Option<f64>,
    /// The same up the slope.
    pub up: Option<f64>,
    /// The shorter way, metres.
    pub by: f64,
}

impl HeldBack {
    /// Whether nothing but the size of the face holds the fill back.
    pub fn is_empty(&self) -> bool {
        self.wins.is_empty() && self.near.is_empty() && self.costs.iter().all(|cost| cost.modules == 0)
    }

    /// What costs modules and what would win some, in words, the dearest first.
    pub fn words(&self) -> impl Iterator<Item = &str> {
        let costs = self.costs.iter().filter(|cost| cost.modules > 0).map(|cost| cost.words.as_str());
        costs.chain(self.wins.iter().map(|win| win.words.as_str()))
    }

    /// Places where a module nearly fits, those with the same trouble counted together, in the order of the list.
    pub fn near_by_words(&self) -> Vec<(&str, usize)> {
        let mut groups: Vec<(&str, usize)> = Vec::new();
        for near in &self.near {
            match groups.iter_mut().find(|(words, _)| *words == near.words) {
                Some((_, count)) => *count += 1,
                None => groups.push((&near.words, 1)),
            }
        }
        groups
    }
}

/// What holds a fill of this job back: with `mode` as it was filled, before or after the fill is in place. What a thing costs
/// is found by laying the face again without it, so this takes as long as filling it several times; `stop` ends it early with
/// what is there.
///
/// In a fill by worth or to a number the fullest grid is asked, since only that is short of room.
///
/// # Errors
/// [`FillError`] where the face is no longer there.
pub fn hold_back(
    job: &Resolved,
    fill: &Fill,
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<HeldBack, FillError> {
    let layout = Layout::of(job);
    let (index, _) = layout.face(fill.face).ok_or(FillError::NoFace(fill.face))?;
    let Room { allowed: room, things } = allowed(job, &layout, index, fill.basis.fire, &fill.blocks);
    let can_be_moved = |what: &What| {
        let through = what.penetration().and_then(|id| layout.penetration(id));
        through.is_some_and(|penetration| penetration.kind.can_be_moved())
    };
    let movable =
        things.iter().enumerate().filter(|(_, what)| can_be_moved(what)).map(|(id, _)| id).collect();
    let question = Question { near: NEAR, movable, farthest: FARTHEST };
    let held = match &fill.basis.laid {
        Laid::Nothing => Held::default(),
        Laid::Rows(fit, _) => holds_back(&room, fit, &question, stop)?,
        Laid::Stacks => {
            let maker = Maker { job, face: fill.face };
            let tiles: Vec<Tile> = maker.tiles().map(|(_, tile)| tile).collect();
            joints(job, mode)?;
            let base = base(job, &layout, index, mode);
            let rules = RowRules { joints: Joints::Aligned, base, hooked: true };
            match fit_best(&room, &tiles, &rules, stop)? {
                Some(fit) => holds_back(&room, &fit, &question, stop)?,
                None => Held::default(),
            }
        }
        Laid::Blocks(most) => blocks(job, &layout, index, fill, mode, *most, &room, stop)?,
    };
    let finished = !stop();
    let mut told = tell(job, &layout, index, &Room { allowed: room, things }, &held);
    told.finished = finished;
    Ok(told)
}

/// What each thing costs in whole blocks, and what nearly fits beside them.
#[expect(clippy::too_many_arguments, reason = "all of them say where the blocks stand")]
fn blocks(
    job: &Resolved,
    layout: &Layout,
    index: usize,
    fill: &Fill,
    mode: Mode,
    most: usize,
    room: &Allowed,
    stop: &dyn Fn() -> bool,
) -> Result<Held, FillError> {
    let maker = Maker { job, face: fill.face };
    let base = base(job, layout, index, mode);
    let rules = BlockRules { most, apart: chalkcourse_limits::apart(job), base };
    let mut held = Held::default();
    for id in room.numbers() {
        if stop() {
            break;
        }
        let without = room.without(id);
        let (mut count, mut bound) = (0, 0);
        for (_, tile) in maker.tiles() {
            let found = fit_blocks(&without, &tile, &rules, stop)?;
            (count, bound) = (count.max(found.count), bound.max(found.bound));
        }
        let proved = fill.proved && count == bound;
        held.prices.push(Price { id, tiles: count.saturating_sub(fill.modules), proved });
    }
    held.prices.sort_by_key(|price| std::cmp::Reverse(price.tiles));
    Ok(held)
}

/// Puts what the fitting found into words and places.
fn tell(job: &Resolved, layout: &Layout, index: usize, room: &Room, held: &Held) -> HeldBack {
    let Some(face) = layout.roof.faces.get(index) else { return HeldBack::default() };
    let small = |metres: f64| Length::from_metres(metres).show_small(job.units);
    let mut told = HeldBack::default();
    for price in &held.prices {
        let sure =
            if price.proved { pick("costs", "cuesta") } else { pick("seems to cost", "parece costar") };
        let Some(&what) = room.things.get(price.id) else { continue };
        let words = format!("{} {sure} {}.", capital(&what.words(layout)), modules(price.tiles));
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
        let (way, by) = direction(step.by);
        told.wins.push(Win {
            penetration,
            by: step.by,
            modules: step.wins,
            words: tell!(
                "{} moved {} {way} would win {}.",
                "{} movido {} {way} ganaría {}.",
                capital(&what.words(layout)),
                small(by),
                modules(step.wins)
            ),
            searched: step.searched.clone(),
        });
    }
    for near in &held.near {
        let mut words = Vec::new();
        let mut stops = Vec::new();
        for stop in &near.stops {
            let what = What::of_barrier(&stop.by, &room.things, &room.allowed, face);
            words.push(tell!("{}, by {}", "{}, por {}", what.words(layout), small(stop.depth())));
            let finite = |by: f64| by.is_finite().then_some(by);
            stops.push(NearStop {
                what,
                along: finite(stop.along_u),
                up: finite(stop.along_v),
                by: stop.depth(),
            });
        }
        let words = tell!(
            "one more module is stopped by {}.",
            "a un módulo más lo impide {}.",
            words.join(pick(" and ", " y "))
        );
        told.near.push(Near { rect: near.rect, stops, words });
    }
    told
}

fn direction(by: DVec2) -> (&'static str, f64) {
    if by.x.abs() > by.y.abs() {
        (
            if by.x > 0.0 {
                pick("to the right", "a la derecha")
            } else {
                pick("to the left", "a la izquierda")
            },
            by.x.abs(),
        )
    } else {
        (
            if by.y > 0.0 {
                pick("up the slope", "pendiente arriba")
            } else {
                pick("down the slope", "pendiente abajo")
            },
            by.y.abs(),
        )
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
