//! Fills faces with the array that no layout under the same rules can beat, and says what that claim covers.

mod held;
mod lay;
mod made;
mod number;
mod outline;
mod report;
mod trim;
mod worth;

pub use held::{Cost, HeldBack, Near, NearStop, Win, hold_back};
pub use report::{FillsReport, fills_report, fills_text};

pub(crate) use made::block_of;

use crate::room::{Fire, Room, Strip, is_checked, path_strips, room};
use chalkcourse_geometry::Length;
use chalkcourse_geometry::fit::{Allowed, Fit, FitError};
use chalkcourse_job::{Block, BlockId, Edit, FaceId, Kit, Orientation, Resolved, apply};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Share, array_share};
use chalkcourse_words::{pick, tell};
use serde::Serialize;
use std::sync::Arc;

/// How a face is filled.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mode {
    /// Rows and columns in line; the grid may lie anywhere.
    OneGrid,
    /// Rows hook into one another and each may slide along the eave by itself, as the kit allows.
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
    /// No layout in the space that was searched holds more.
    pub bound: usize,
    /// Whether nothing better exists in the space that was searched.
    pub proved: bool,
    /// What was made as great or as small as can be, where that is not the number of modules.
    pub measure: Option<Measure>,
    /// The claim, for a person: "12 of at most 12, …".
    pub claim: String,
    /// What was searched and how, in words.
    pub searched: String,
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
    /// No layout in the space that was searched has more worth, or less cost or length, with as many modules.
    pub bound: f64,
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
    /// The way of laying, in words.
    way: String,
    laid: Laid,
}

#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Laid {
    /// Nothing.
    Nothing,
    /// Rows, with the bound of each orientation of the kit.
    Rows(Box<Fit>, Vec<usize>),
    /// At most so many whole blocks.
    Blocks(usize),
    /// One grid, chosen by worth or to a number.
    Stacks,
}

/// Why a face can't be filled.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FillError {
    /// There is no such face.
    #[error("{}", tell!("the job has no face {_0}", "la obra no tiene el faldón {_0}"))]
    NoFace(FaceId),
    /// Its outline is wrong.
    #[error("{}", tell!("face {_0} has no sound outline yet: mend it first (see the findings)", "el faldón {_0} todavía no tiene un contorno válido: corríjalo primero (vea los hallazgos)"))]
    Unsound(String),
    /// The kit allows nothing there.
    #[error("{}", tell!("face {face} is {pitch}; the kit asks {least} or more, so no module may stand on it", "el faldón {face} tiene {pitch}; el kit pide {least} o más, así que ningún módulo puede ir en él"))]
    TooFlat {
        /// The face.
        face: String,
        /// Its pitch.
        pitch: String,
        /// The kit's least.
        least: String,
    },
    /// The kit does not let joints fall so.
    #[error("{}", tell!("the kit “{kit}” does not allow rows with {joints} joints: choose another way of laying", "el kit “{kit}” no permite filas con juntas {joints}: elija otra manera de colocar"))]
    Joints {
        /// The kit.
        kit: String,
        /// What was asked for.
        joints: &'static str,
    },
    /// The kit does not let modules lie so.
    #[error("{}", tell!("the kit “{kit}” does not let modules lie {way}: choose the other way, or leave it to the kit", "el kit “{kit}” no permite módulos en sentido {way}: elija el otro, o déjelo al kit"))]
    Orientation {
        /// The kit.
        kit: String,
        /// What was asked for.
        way: &'static str,
    },
    /// What the flashing costs is not known.
    #[error("{}", tell!("the price list has no price for {_0}: what flashing costs can't be weighed without it", "la lista de precios no tiene precio de {_0}: sin él no se puede ponderar lo que cuesta el tapajuntas"))]
    NoPrice(String),
    /// A worth or a size that is none.
    #[error("{0}")]
    Asked(String),
    /// There is not so much room.
    #[error("{}", tell!(
        "{asked} modules were asked for; the faces hold {}{most} in one grid each, base rail as the kit allows",
        "se pidieron {asked} módulos; en los faldones caben {}{most} en una cuadrícula cada uno, con el riel base como permite el kit",
        if *sure { "" } else { pick("at most ", "como máximo ") }
    ))]
    TooFew {
        /// Asked for.
        asked: usize,
        /// There is room for.
        most: usize,
        /// Whether there is room for just so many; no more, where the search was stopped.
        sure: bool,
    },
    /// Locked blocks have more than what was asked for.
    #[error("{}", tell!("{asked} modules were asked for, and locked blocks hold {locked} already: unlock some or ask for more", "se pidieron {asked} módulos, y los bloques fijados ya tienen {locked}: libere algunos o pida más"
    ))]
    Locked {
        /// Asked for.
        asked: usize,
        /// In locked blocks.
        locked: usize,
    },
    /// Stopped before any layout was found.
    #[error("{}", tell!("stopped before a layout of {_0} modules was found: give it more time", "se paró antes de hallar una disposición de {_0} módulos: dele más tiempo"))]
    Stopped(usize),
    /// The fitting refused its input.
    #[error(transparent)]
    Fit(#[from] FitError),
}

/// Fills faces, one after the other. Locked blocks stay and the rest fits around them. `stop` is asked now and then; when it
/// says true the best so far comes back, with the bound that is left; faces that were not begun are left out.
///
/// Where the job's rule book asks for room for the fire service, each face that has a ridge keeps a strip up the slope for a
/// pathway, at an end of the ridge or beside a chimney or skylight, whichever costs least; and the clear room beside the ridge is that for the share of the roof that is covered in the end.
/// The claim of each fill says so: layouts that keep a pathway elsewhere were not searched.
///
/// # Errors
/// [`FillError`] when a face can't carry modules at all.
pub fn fill(
    job: &Resolved,
    faces: &[FaceId],
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    let fill = |mode| fill_beside_ridges(job, faces, mode, stop);
    match mode {
        Mode::ToNumber(target) => fill(mode).map_err(|told| number::most_that_fit(target, told, fill)),
        _ => fill(mode),
    }
}

/// With the clear room beside ridges that the array asks for in the end.
fn fill_beside_ridges(
    job: &Resolved,
    faces: &[FaceId],
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    let (first, after) = fill_all(job, faces, mode, Share::Within, stop)?;
    let share = Share::of(job, array_share(&Layout::of(&after)));
    if share.asked(job) <= Share::Within.asked(job) {
        return Ok(first);
    }
    // So many modules ask for more room beside the ridge. What stands clear of that is there at any time, should a
    // person stop the second pass.
    let cut: Vec<Fill> = first.iter().map(|fill| trim::to_ridge(job, fill, share)).collect();
    if stop() {
        return Ok(cut);
    }
    let (mut second, _) = match fill_all(job, faces, mode, share, stop) {
        Err(FillError::Stopped(_)) => return Ok(cut),
        done => done?,
    };
    for old in cut {
        match second.iter_mut().find(|new| new.face == old.face) {
            None => second.push(old),
            Some(new) if !new.proved && rank(&old) > rank(new) => {
                *new = Fill { bound: new.bound.max(old.modules), ..old };
                made::claim(job, new);
            }
            Some(_) => {}
        }
    }
    Ok(second)
}

/// As [`fill`], and then goes on with what is not proved until it is or `stop` says true. `tell` hears of the first answer
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
    let mut fills = fill(job, faces, mode, stop)?;
    tell(&fills);
    let layout = Layout::of(job);
    for at in 0..fills.len() {
        if stop() {
            break;
        }
        lay::improve(job, &layout, &mut fills, at, mode, stop, tell)?;
    }
    Ok(fills)
}

/// What makes one fill better than another.
fn rank(fill: &Fill) -> f64 {
    match &fill.measure {
        Some(Measure { of: MeasureOf::Worth, value, .. }) => *value,
        _ => fill.modules as f64,
    }
}

/// Fills faces with the clear room beside ridges for a share of the roof; and the job with all of them in place.
fn fill_all(
    job: &Resolved,
    faces: &[FaceId],
    mode: Mode,
    share: Share,
    stop: &dyn Fn() -> bool,
) -> Result<(Vec<Fill>, Resolved), FillError> {
    if let Mode::ToNumber(target) = mode {
        let fills = number::fill(job, faces, target, share, stop)?;
        let after =
            fills.iter().fold(job.clone(), |job, fill| apply(&job, &fill_edit(&job, fill)).unwrap_or(job));
        return Ok((fills, after));
    }
    let mut job = job.clone();
    let mut fills = Vec::new();
    for &face in faces {
        // With nothing found yet there is still a first answer to give; after that, what was not begun stays as it is.
        if !fills.is_empty() && stop() {
            break;
        }
        let site = Site::of(&job, face, mode, faces.len() > 1)?;
        let weight = worth::weight(&job, &site.layout, faces, face, mode);
        let found = site.best(share, |site, allowed, fire| match mode {
            Mode::ByWorth(worth) => worth::fill_room(site, allowed, fire, worth, weight, stop),
            _ => lay::fill_room(site, allowed, fire, stop),
        })?;
        if let Ok(next) = apply(&job, &fill_edit(&job, &found)) {
            job = next;
        }
        fills.push(found);
    }
    Ok((fills, job))
}

/// A face that may be filled.
struct Site<'a> {
    job: &'a Resolved,
    layout: Layout,
    face: FaceId,
    index: usize,
    mode: Mode,
    /// Whether other faces are filled too.
    beyond: bool,
}

impl<'a> Site<'a> {
    fn of(job: &'a Resolved, face: FaceId, mode: Mode, beyond: bool) -> Result<Self, FillError> {
        let drawn = job.face(face).ok_or(FillError::NoFace(face))?;
        let layout = Layout::of(job);
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

    /// Ways to keep a pathway for the fire service clear on the face; one without where none is asked for.
    fn paths(&self) -> Vec<Option<Strip>> {
        let mut paths: Vec<Option<Strip>> =
            path_strips(self.job, &self.layout, self.index).map(Some).collect();
        if paths.is_empty() {
            paths.push(None);
        }
        paths
    }

    fn exposure(&self) -> f64 {
        self.layout.faces.get(self.index).map_or(0.0, |face| face.courses.exposure)
    }

    fn allowed(&self, fire: Fire) -> Allowed {
        allowed(self.job, &self.layout, self.index, fire, &[]).allowed
    }

    /// The best fill over the ways to keep a pathway. A bound holds for one strip: a pathway elsewhere is another claim.
    fn best(
        &self,
        share: Share,
        lay: impl Fn(&Self, &Allowed, Fire) -> Result<Fill, FillError>,
    ) -> Result<Fill, FillError> {
        let mut best: Option<(bool, Fill)> = None;
        for path in self.paths() {
            let fire = Fire { share, path, beyond: self.beyond };
            let mut found = lay(self, &self.allowed(fire), fire)?;
            let clear = path_is_clear(self.job, &found);
            if best.as_ref().is_none_or(|(was, best)| (clear, rank(&found)) > (*was, rank(best))) {
                found.basis.way += &self.path_words(path);
                made::claim(self.job, &mut found);
                best = Some((clear, found));
            }
        }
        best.map(|(_, fill)| fill).ok_or(FillError::NoFace(self.face))
    }

    fn path_words(&self, path: Option<Strip>) -> String {
        let left = self.layout.roof.faces.get(self.index).map_or(0.0, |face| face.bounds.min.x);
        path.map_or_else(String::new, |strip| {
            let from = Length::from_metres(strip.from - left).show(self.job.units);
            tell!(
                ", pathway kept {from} from the left end of the face",
                ", el paso se mantiene a {from} del extremo izquierdo del faldón"
            )
        })
    }
}

/// Where modules may stand on a face: locked blocks stay, but for those of a fill itself.
fn allowed(job: &Resolved, layout: &Layout, index: usize, fire: Fire, own: &[Block]) -> Room {
    let mine = |id: BlockId| own.iter().any(|block| block.id == id);
    let stays = |id: BlockId| !mine(id) && job.block(id).is_some_and(|block| block.locked);
    room(job, layout, index, &stays, fire)
}

/// Whether the plane still has its pathway with a fill in place.
fn path_is_clear(job: &Resolved, fill: &Fill) -> bool {
    let Ok(after) = apply(job, &fill_edit(job, fill)) else { return false };
    let findings = chalkcourse_rules::check(&after, &Layout::of(&after));
    !findings.iter().any(|f| f.rule == "fire-plane-path" && f.place.face == Some(fill.face))
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
