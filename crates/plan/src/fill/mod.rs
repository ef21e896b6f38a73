//! Fills faces with the array that no layout under the same rules can beat, and says what that claim covers.
//!
//! - [`fill`], [`fill_improving`]: the fills of faces; `shares` tries both rooms beside the ridge, `search` one face
//! - `lay`, `worth`, `number`: ways of laying in some room; `corridor`: ways that may be left free; `trim`: modules taken out
//! - `judge`: what `check` says to a layout; `every`: the bound over all layouts that it passes
//! - [`hold_back`]: what holds a fill back; `wins`: moves of what is in the way; `made`: blocks and words

mod corridor;
mod every;
mod held;
mod judge;
mod lay;
mod made;
mod number;
mod outline;
mod report;
mod search;
mod shares;
mod trim;
mod wins;
mod worth;

pub use held::{Cost, HeldBack, Near, NearStop, Win, hold_back};
pub use report::{FillsReport, fills_report, fills_text};

pub(crate) use made::block_of;

use crate::room::{Fire, Room, is_checked, room};
use chalkcourse_geometry::fit::{Allowed, Base, Fit, FitError};
use chalkcourse_job::{Block, BlockId, Edit, FaceId, Kit, Orientation, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_limits::Share;
use chalkcourse_words::{self as words, Said, Say};
use corridor::Corridor;
use judge::Judge;
use made::Maker;
use search::Pace;
use serde::Serialize;
use std::sync::Arc;

/// How a face is filled.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mode {
    /// Rows and columns in line; the grid may lie anywhere.
    OneGrid,
    /// The usual way: all that the kit allows, in one block or several.
    SlidingRows,
    /// As one grid, every other row half a module aside.
    HalfLapped,
    /// As sliding rows, with the base rail where the kit allows it above a course line.
    OnCourses,
    /// At most so many rectangles, since every corner is flashed.
    WholeBlocks(usize),
    /// The modules that are worth most together, less what the flashing around them costs.
    ByWorth(Worth),
    /// Just so many modules on all faces together.
    ToNumber(Target),
}

/// What a module is worth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Worth {
    /// A module, after what it costs itself, in the currency of the price list.
    pub module: f64,
    /// Whether a module on a face counts by the face's area: whole on the largest face that is filled, half on one of half
    /// its area.
    pub by_area: bool,
}

/// A number of modules and what they should be like.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Target {
    /// How many, counted with those in locked blocks of the faces that are filled.
    pub size: Size,
    /// How they should lie.
    pub way: Way,
}

/// How large an array should be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Size {
    /// Just so many modules.
    Modules(usize),
    /// The fewest modules that have this rated power, in kilowatts.
    Kilowatts(f64),
}

/// What a number of modules should be like.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// The least length around them.
    Compact,
    /// The least cost of the flashing around them.
    Cheapest,
}

/// What a fill found.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fill {
    /// The face.
    pub face: FaceId,
    /// The blocks that it would have; blocks of the job that are not locked make way for them.
    pub blocks: Vec<Block>,
    /// Modules in them.
    pub modules: usize,
    /// No layout of the kind that the claim names holds more; in the usual fill, none that `check` passes.
    pub bound: usize,
    /// Whether nothing better of that kind exists.
    pub proved: bool,
    /// What was made as great or as small as can be, where that is not the number of modules.
    pub measure: Option<Measure>,
    /// The claim, for a person: "12 of at most 12, …".
    pub claim: Said,
    /// What was searched and how.
    pub searched: Said,
    /// What holds it back, once somebody asked [`hold_back`].
    pub held: Option<HeldBack>,
    /// What it stands on.
    #[serde(skip)]
    pub(crate) basis: Basis,
}

/// What is made as great or as small as can be.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Measure {
    /// Of what.
    pub of: MeasureOf,
    /// On this face; money in the currency of the price list, lengths in metres.
    pub value: f64,
    /// No layout of the kind that the claim names has more worth, or less cost or length, with as many modules.
    pub bound: f64,
    /// No layout of any kind has more worth; not told of cost and length.
    pub any: Option<f64>,
}

/// What a [`Measure`] is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum MeasureOf {
    /// Worth of the modules less what the flashing around them costs.
    Worth,
    /// What the flashing around the modules costs.
    FlashingCost,
    /// The length around the modules.
    LengthAround,
}

/// What a fill was worked out from, so that it can be improved and asked what holds it back.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Basis {
    fire: Fire,
    /// The way of laying, in words; `None` where nothing narrows it.
    way: Option<Said>,
    laid: Laid,
    /// Whether the claim is about layouts of every kind.
    every: bool,
}

#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Laid {
    /// Nothing.
    Nothing,
    /// Rows of one block.
    Rows(Box<Fit>),
    /// At most so many whole blocks.
    Blocks(usize),
    /// Several blocks, or what is left of some.
    Pieces,
    /// One grid, chosen by worth or to a number.
    Stacks,
}

/// Why a face can't be filled.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FillError {
    /// There is no such face.
    #[error("{}", words::common::the_job_has_no_face(&_0))]
    NoFace(FaceId),
    /// Its outline is wrong.
    #[error("{}", words::common::face_has_no_sound_outline(&_0))]
    Unsound(String),
    /// The kit allows nothing there.
    #[error("{}", words::fill::face_is_the_kit_asks(&face, &pitch, &least))]
    TooFlat {
        /// The face.
        face: String,
        /// Its pitch.
        pitch: String,
        /// The kit's least.
        least: String,
    },
    /// The kit does not let joints fall so.
    #[error("{}", words::fill::the_kit_does_not_allow(&kit, &joints))]
    Joints {
        /// The kit.
        kit: String,
        /// What was asked for.
        joints: Say,
    },
    /// The kit does not let modules lie so.
    #[error("{}", words::fill::the_kit_does_not_let(&kit, &way))]
    Orientation {
        /// The kit.
        kit: String,
        /// What was asked for.
        way: Say,
    },
    /// What the flashing costs is not known.
    #[error("{}", words::fill::the_price_list_has_no(&_0))]
    NoPrice(String),
    /// A worth or a size that is none.
    #[error("{0}")]
    Asked(Said),
    /// There is not so much room.
    #[error("{}", words::fill::modules_were_asked_for_were(*asked, &found, &most))]
    TooFew {
        /// Asked for.
        asked: usize,
        /// So many can be laid.
        found: usize,
        /// No layout has more.
        most: usize,
    },
    /// There may be room, but no layout was found.
    #[error("{}", words::fill::modules_were_asked_for_were_laid(*asked, &found, &most))]
    NotFound {
        /// Asked for.
        asked: usize,
        /// So many can be laid.
        found: usize,
        /// No layout has more.
        most: usize,
    },
    /// Locked blocks have more than what was asked for.
    #[error("{}", words::fill::modules_were_asked_for_and(*asked, &locked))]
    Locked {
        /// Asked for.
        asked: usize,
        /// In locked blocks.
        locked: usize,
    },
    /// Stopped before any layout was found.
    #[error("{}", words::fill::stopped_before_a_layout_of(&_0))]
    Stopped(usize),
    /// The fitting refused its input.
    #[error(transparent)]
    Fit(#[from] FitError),
}

/// Fills faces, one after the other. Locked blocks stay and the rest fits around them. `stop` is asked now and then; when it
/// says true the best so far comes back, with the bound that is left; faces that were not begun are left out.
///
/// What is handed out was checked: it has no stop that was not there before. Where layouts without thought for pathways have one,
/// ways that may be left free are tried one by one, and modules taken out. The usual fill ([`Mode::SlidingRows`]) claims for
/// every layout of the face that `check` passes beside what stays, two blocks no nearer than the kit asks; the others for
/// their own way of laying, whatever pathway is left. Room beside the ridge by the share of the roof is tried with both.
///
/// # Errors
/// [`FillError`] when a face can't carry modules at all.
pub fn fill(
    job: &Resolved,
    faces: &[FaceId],
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    if let Mode::ToNumber(target) = mode {
        return number::fill(job, faces, target, stop);
    }
    let judge = Judge::of(job, faces);
    shares::fill(&judge, faces, mode, Pace::Whole, stop)
}

/// As [`fill`], and then goes on with what is not proved until it is or `stop` says true. `tell` hears of a first answer at once
/// and of each better one, all faces at a time: more modules, or a lower bound.
///
/// # Errors
/// Those of [`fill`].
pub fn fill_improving(
    job: &Resolved,
    faces: &[FaceId],
    mode: Mode,
    stop: &dyn Fn() -> bool,
    tell: &mut dyn FnMut(&[Fill]),
) -> Result<Vec<Fill>, FillError> {
    if mode != Mode::SlidingRows {
        let fills = fill(job, faces, mode, stop)?;
        tell(&fills);
        return Ok(fills);
    }
    let judge = Judge::of(job, faces);
    let first = shares::fill(&judge, faces, mode, Pace::AtOnce, stop)?;
    tell(&first);
    if first.iter().all(|fill| fill.proved) {
        return Ok(first);
    }
    let modules = |fills: &[Fill]| fills.iter().map(|fill| fill.modules).sum::<usize>();
    let mut fills = shares::fill(&judge, faces, mode, Pace::Whole, stop)?;
    // A person who stops it has what was told; and what is laid one face after the other may come to less in the end.
    if fills.len() < first.len() || modules(&fills) < modules(&first) {
        fills = first;
    }
    tell(&fills);
    search::improve(&judge, &mut fills, stop, tell)?;
    Ok(fills)
}

impl Fill {
    /// No layout of any kind that `check` passes has more modules; `None` where the claim is about one way of laying.
    pub fn most(&self) -> Option<usize> {
        self.basis.every.then_some(self.bound)
    }

    /// The same blocks go on under their numbers and names.
    fn keep_names(&mut self, before: &Self) {
        for (block, old) in self.blocks.iter_mut().zip(&before.blocks) {
            (block.id, block.name) = (old.id, old.name.clone());
        }
    }
}

/// What makes one fill better than another.
fn rank(fill: &Fill) -> f64 {
    match &fill.measure {
        Some(Measure { of: MeasureOf::Worth, value, .. }) => *value,
        _ => fill.modules as f64,
    }
}

/// A face that may be filled.
struct Site<'a> {
    /// The roof with all that stays, and what was filled before.
    job: &'a Resolved,
    layout: Layout,
    face: FaceId,
    index: usize,
    mode: Mode,
    /// Whether other faces are filled too.
    beyond: bool,
}

impl<'a> Site<'a> {
    fn of(
        judge: &Judge,
        job: &'a Resolved,
        face: FaceId,
        mode: Mode,
        beyond: bool,
    ) -> Result<Self, FillError> {
        let drawn = job.face(face).ok_or(FillError::NoFace(face))?;
        let layout = judge.laid_out(job);
        let (index, on) = layout.face(face).ok_or(FillError::NoFace(face))?;
        if !on.sound {
            return Err(FillError::Unsound(drawn.name.clone()));
        }
        if drawn.pitch < job.kit.least_pitch && is_checked(job, "pitch") {
            return Err(FillError::TooFlat {
                face: drawn.name.clone(),
                pitch: drawn.pitch.to_string(),
                least: job.kit.least_pitch.to_string(),
            });
        }
        Ok(Self { job, layout, face, index, mode, beyond })
    }

    fn maker(&self) -> Maker<'a> {
        Maker { job: self.job, face: self.face }
    }

    fn base(&self) -> Base {
        lay::base(self.job, &self.layout, self.index, self.mode)
    }

    fn exposure(&self) -> f64 {
        self.layout.faces.get(self.index).map_or(0.0, |face| face.courses.exposure)
    }

    fn fire(&self, share: Share, kept: Corridor) -> Fire {
        Fire { share, beyond: self.beyond, kept }
    }

    fn allowed(&self, fire: &Fire) -> Allowed {
        allowed(self.job, &self.layout, self.index, fire, &[]).allowed
    }
}

/// Where modules may stand on a face: locked blocks stay, but for those of a fill itself.
fn allowed(job: &Resolved, layout: &Layout, index: usize, fire: &Fire, own: &[Block]) -> Room {
    let mine = |id: BlockId| own.iter().any(|block| block.id == id);
    let stays = |id: BlockId| !mine(id) && job.block(id).is_some_and(|block| block.locked);
    room(job, layout, index, &stays, fire)
}

/// A job as if its kit let modules lie in one way alone: for a fill that a person wants to have so.
///
/// # Errors
/// [`FillError::Orientation`] where the kit does not let them lie so.
pub fn lying(job: &Resolved, way: Orientation) -> Result<Resolved, FillError> {
    if !job.kit.orientations.contains(&way) {
        return Err(FillError::Orientation { kit: job.kit.name.clone(), way: way.name() });
    }
    let kit = Kit { orientations: vec![way], ..Kit::clone(&job.kit) };
    Ok(job.with(|job| job.kit = Arc::new(kit)))
}

/// The edits that put a fill on its face in place of the blocks that are not locked.
pub fn fill_edit(job: &Resolved, fill: &Fill) -> Edit {
    let gone =
        job.blocks.iter().filter(|block| block.face == fill.face && !block.locked).map(|block| block.id);
    let edits = gone.map(Edit::RemoveBlock).chain(fill.blocks.iter().cloned().map(Edit::PutBlock)).collect();
    Edit::Several(edits)
}
