//! Fills faces with an array that no layout under the same rules can beat, and states what that claim covers.
//!
//! - [`fill`], [`fill_improving`]: the fills of faces; `shares` tries both ridge setbacks, `search` handles one face
//! - `lay`, `worth`, `number`: the modes; `corridor`: pathways that may be left free; `trim`: removing modules
//! - `judge`: checks layouts; `every`: the bound over all layouts that pass
//! - [`hold_back`]: what limits a fill; `wins`: moves of obstacles; `made`: blocks and words

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

/// How to fill a face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mode {
    /// Aligned rows and columns; the grid may be anywhere.
    OneGrid,
    /// The usual mode: everything that the kit allows, in one block or several.
    SlidingRows,
    /// One grid with every other row offset by half a module.
    HalfLapped,
    /// Sliding rows, with the base rail where the kit allows it above a course line.
    OnCourses,
    /// At most this many rectangles, since every corner needs flashing.
    WholeBlocks(usize),
    /// The modules with the greatest total worth, less the cost of the flashing around them.
    ByWorth(Worth),
    /// An exact number of modules on all faces together.
    ToNumber(Target),
}

/// The worth of a module.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Worth {
    /// Worth of a module after its own cost, in the currency of the price list.
    pub module: f64,
    /// Whether modules are weighted by the area of their face: full worth on the largest filled face, half on a face
    /// with half its area.
    pub by_area: bool,
}

/// A number of modules, and how to arrange them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Target {
    /// How many, including those in locked blocks of the filled faces.
    pub size: Size,
    /// What to minimise.
    pub way: Way,
}

/// The size of an array.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Size {
    /// Exactly this many modules.
    Modules(usize),
    /// The fewest modules with this rated power, in kilowatts.
    Kilowatts(f64),
}

/// What a fill to a number minimises.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// The length of the outline.
    Compact,
    /// The cost of the flashing around the modules.
    Cheapest,
}

/// The result of a fill.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fill {
    /// The face.
    pub face: FaceId,
    /// The new blocks; they replace the unlocked blocks of the face.
    pub blocks: Vec<Block>,
    /// Modules in them.
    pub modules: usize,
    /// No layout of the kind named in the claim has more modules; for the usual mode, none that `check` passes.
    pub bound: usize,
    /// Whether the result is proved optimal among layouts of that kind.
    pub proved: bool,
    /// The optimised quantity, if it is not the number of modules.
    pub measure: Option<Measure>,
    /// The claim as text: "12 of at most 12, …".
    pub claim: Said,
    /// What was searched and how.
    pub searched: Said,
    /// What limits it, after [`hold_back`] was called.
    pub held: Option<HeldBack>,
    /// What it was computed from.
    #[serde(skip)]
    pub(crate) basis: Basis,
}

/// An optimised quantity.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Measure {
    /// Which quantity.
    pub of: MeasureOf,
    /// Its value on this face; money in the currency of the price list, lengths in metres.
    pub value: f64,
    /// No layout of the kind named in the claim has more worth, or less cost or length, with as many modules.
    pub bound: f64,
    /// No layout of any kind has more worth; `None` for cost and length.
    pub any: Option<f64>,
}

/// The quantity of a [`Measure`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum MeasureOf {
    /// Worth of the modules less the cost of the flashing around them.
    Worth,
    /// Cost of the flashing around the modules.
    FlashingCost,
    /// Length of the outline.
    LengthAround,
}

/// What a fill was computed from, to improve it and to find what limits it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Basis {
    fire: Fire,
    /// The way of laying, in words; `None` if it is not restricted.
    way: Option<Said>,
    laid: FillKind,
    /// Whether the claim is about layouts of every kind.
    every: bool,
}

#[derive(Clone, Debug, PartialEq)]
pub(crate) enum FillKind {
    /// Nothing.
    Nothing,
    /// Rows of one block.
    Rows(Box<Fit>),
    /// At most this many whole blocks.
    Blocks(usize),
    /// Several blocks, or the rest of some.
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
    /// Its outline is not sound.
    #[error("{}", words::common::face_has_no_sound_outline(&_0))]
    Unsound(String),
    /// It is too flat for the kit.
    #[error("{}", words::fill::face_is_the_kit_asks(&face, &pitch, &least))]
    TooFlat {
        /// The face.
        face: String,
        /// Its pitch.
        pitch: String,
        /// The kit's least pitch.
        least: String,
    },
    /// The kit does not allow these joints.
    #[error("{}", words::fill::the_kit_does_not_allow(&kit, &joints))]
    Joints {
        /// The kit.
        kit: String,
        /// The requested joints.
        joints: Say,
    },
    /// The kit does not allow this orientation.
    #[error("{}", words::fill::the_kit_does_not_let(&kit, &way))]
    Orientation {
        /// The kit.
        kit: String,
        /// The requested orientation.
        way: Say,
    },
    /// The cost of flashing is unknown.
    #[error("{}", words::fill::the_price_list_has_no(&_0))]
    NoPrice(String),
    /// An invalid worth or size.
    #[error("{0}")]
    FillContext(Said),
    /// There is not enough room.
    #[error("{}", words::fill::modules_were_asked_for_were(*asked, &found, &most))]
    TooFew {
        /// Requested.
        asked: usize,
        /// This many can be laid.
        found: usize,
        /// No layout has more.
        most: usize,
    },
    /// There may be room, but no layout was found.
    #[error("{}", words::fill::modules_were_asked_for_were_laid(*asked, &found, &most))]
    NotFound {
        /// Requested.
        asked: usize,
        /// This many can be laid.
        found: usize,
        /// No layout has more.
        most: usize,
    },
    /// Locked blocks have more modules than requested.
    #[error("{}", words::fill::modules_were_asked_for_and(*asked, &locked))]
    Locked {
        /// Requested.
        asked: usize,
        /// In locked blocks.
        locked: usize,
    },
    /// Stopped before any layout was found.
    #[error("{}", words::fill::stopped_before_a_layout_of(&_0))]
    Stopped(usize),
    /// The fitting rejected its input.
    #[error(transparent)]
    Fit(#[from] FitError),
}

/// Fills faces, one after the other. Locked blocks stay and the rest fits around them. `stop` is polled; once it
/// returns true, the best result so far is returned with its current bound; faces that were not started are left out.
///
/// Every result is checked: it has no new stop. Where a layout that ignores pathways has one, pathways that may be left
/// free are tried one by one, and modules removed. The usual mode ([`Mode::SlidingRows`]) makes a claim about every
/// layout of the face that `check` passes beside what stays, with no two blocks closer than the kit's clearance; the
/// other modes only about their own way of laying, whatever pathway is left. Both ridge setbacks that the book has by
/// share of the roof are tried.
///
/// # Errors
/// [`FillError`] if a face can't carry modules at all.
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

/// Like [`fill`], but continues with results that are not proved optimal until they are or `stop` returns true. `tell`
/// gets a first answer at once and then each better one, for all faces at a time: more modules, or a lower bound.
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
    // If stopped, the user keeps the reported answer; and filling one face after the other may end with fewer modules.
    if fills.len() < first.len() || modules(&fills) < modules(&first) {
        fills = first;
    }
    tell(&fills);
    search::improve(&judge, &mut fills, stop, tell)?;
    Ok(fills)
}

impl Fill {
    /// No layout of any kind that `check` passes has more modules; `None` if the claim is only about one way of laying.
    pub fn most(&self) -> Option<usize> {
        self.basis.every.then_some(self.bound)
    }

    /// The same blocks keep their ids and names.
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

/// A face to fill.
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

/// Where modules may be on a face: locked blocks stay, except those of the fill itself.
fn allowed(job: &Resolved, layout: &Layout, index: usize, fire: &Fire, own: &[Block]) -> Room {
    let mine = |id: BlockId| own.iter().any(|block| block.id == id);
    let stays = |id: BlockId| !mine(id) && job.block(id).is_some_and(|block| block.locked);
    room(job, layout, index, &stays, fire)
}

/// The job as if its kit allowed one orientation only: for a fill in an orientation that the user chose.
///
/// # Errors
/// [`FillError::Orientation`] if the kit does not allow it.
pub fn lying(job: &Resolved, way: Orientation) -> Result<Resolved, FillError> {
    if !job.kit.orientations.contains(&way) {
        return Err(FillError::Orientation { kit: job.kit.name.clone(), way: way.name() });
    }
    let kit = Kit { orientations: vec![way], ..Kit::clone(&job.kit) };
    Ok(job.with(|job| job.kit = Arc::new(kit)))
}

/// The edits that put a fill on its face in place of the unlocked blocks.
pub fn fill_edit(job: &Resolved, fill: &Fill) -> Edit {
    let gone =
        job.blocks.iter().filter(|block| block.face == fill.face && !block.locked).map(|block| block.id);
    let edits = gone.map(Edit::RemoveBlock).chain(fill.blocks.iter().cloned().map(Edit::PutBlock)).collect();
    Edit::Several(edits)
}
