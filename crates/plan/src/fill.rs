//! Fills a face with the array that no layout under the same rules can beat, and says what that claim covers.

use crate::Plan;
use crate::arrange::free_name;
use crate::room::{Fire, Strip, barrier_words, is_checked, penetration_name, room, strips};
use chalkcourse_geometry::fit::{
    Allowed, Barrier, Base, BlockRules, Fit, FitError, HeldBack, Joints, Placed, Question, RowRules, Tile,
    fit_blocks, fit_rows, holds_back,
};
use chalkcourse_geometry::{DVec2, Length, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, Edit, FaceId, Job, Orientation, RowShift, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{array_share, ridge_room};
use serde::Serialize;
use std::collections::BTreeSet;
use std::fmt::Write;

/// How a face is filled.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mode {
    /// Rows and columns in line; the grid may lie anywhere.
    OneGrid,
    /// Rows hook into one another and each may slide along the eave by itself.
    SlidingRows,
    /// As one grid, every other row half a module aside.
    HalfLapped,
    /// As sliding rows, with the base rail on a course line.
    OnCourses,
    /// At most so many rectangles, since every corner is flashed.
    WholeBlocks(usize),
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
    /// The claim, for a person: "12 of at most 12, …".
    pub claim: String,
    /// What was searched and how, in words.
    pub searched: String,
    /// What holds it back, the dearest first.
    pub held_back: Vec<String>,
    /// Where a module nearly fits, in the face's frame.
    pub near: Vec<Near>,
}

/// A place where a module nearly fits.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Near {
    /// Where it would lie, in the face's frame, metres.
    pub rect: Rect,
    /// What stops it and by how much.
    pub words: String,
}

impl Fill {
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

/// Why a face can't be filled.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FillError {
    /// There is no such face.
    #[error("the job has no face {0}")]
    NoFace(FaceId),
    /// Its outline is wrong.
    #[error("face {0} has no sound outline yet: mend it first (see the findings)")]
    Unsound(String),
    /// The kit allows nothing there.
    #[error("face {face} is {pitch}; the kit asks {least} or more, so no module may stand on it")]
    TooFlat {
        /// The face.
        face: String,
        /// Its pitch.
        pitch: String,
        /// The kit's least.
        least: String,
    },
    /// The fitting refused its input.
    #[error(transparent)]
    Fit(#[from] FitError),
}

/// How near is nearly, and how far a penetration is moved to look: 8 in and 2 ft.
const NEAR: f64 = 0.2;
const FARTHEST: f64 = 0.6;
/// A person reads a list, not a ledger.
const MOST_NEAR: usize = 12;

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
    job: &Job,
    faces: &[FaceId],
    mode: Mode,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    let fire = job.rule_book.fire_access.as_ref().filter(|_| is_checked(job, "fire-ridge"));
    let Some(fire) = fire else { return fill_all(job, faces, mode, 0.0, stop).map(|(fills, _)| fills) };
    let narrow = fire.ridge.up_to_share.value.metres();
    let (fills, after) = fill_all(job, faces, mode, narrow, stop)?;
    let asked = ridge_room(fire, job, array_share(&Layout::of(&after))).value.metres();
    if asked <= narrow {
        return Ok(fills);
    }
    fill_all(job, faces, mode, asked, stop).map(|(fills, _)| fills)
}

/// Fills faces with one clear room beside ridges, in plan; and the job with all of them in place.
fn fill_all(
    job: &Job,
    faces: &[FaceId],
    mode: Mode,
    ridge: f64,
    stop: &dyn Fn() -> bool,
) -> Result<(Vec<Fill>, Job), FillError> {
    let mut job = job.clone();
    let mut fills = Vec::new();
    for &face in faces {
        // With nothing found yet there is still a first answer to give; after that, what was not begun stays as it is.
        if !fills.is_empty() && stop() {
            break;
        }
        let found = fill_face(&job, face, mode, ridge, stop)?;
        if let Ok(next) = apply(&job, &fill_edit(&job, &found)) {
            job = next;
        }
        fills.push(found);
    }
    Ok((fills, job))
}

/// Fills one face, with a pathway at the end of its ridge that costs less where one is asked for.
fn fill_face(
    job: &Job,
    face: FaceId,
    mode: Mode,
    ridge: f64,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
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
    let wide = job.rule_book.fire_access.as_ref().map_or(0.0, |book| book.path_width.value.metres());
    let mut paths: Vec<Option<Strip>> = Vec::new();
    if is_checked(job, "fire-paths") {
        paths.extend(strips(&layout, index, wide).into_iter().map(Some));
    }
    if paths.is_empty() {
        paths.push(None);
    }
    let mut best: Option<(bool, Fill)> = None;
    for path in paths {
        let stays = |id: BlockId| job.block(id).is_some_and(|block| block.locked);
        let allowed = room(job, &layout, index, &stays, Fire { ridge, path });
        let found = fill_room(job, &layout, face, index, mode, &allowed, stop)?;
        let clear = path_is_clear(job, &found);
        // A bound holds for one strip; a pathway elsewhere is another claim.
        if best.as_ref().is_none_or(|(was, best)| (clear, found.modules) > (*was, best.modules)) {
            let claim = match path {
                None => found.claim.clone(),
                Some(strip) => format!(
                    "{}, pathway kept {} from the left end of the face",
                    found.claim,
                    Length::from_metres(strip.from - on.bounds.min.x).show(job.units)
                ),
            };
            best = Some((clear, Fill { claim, ..found }));
        }
    }
    best.map(|(_, fill)| fill).ok_or(FillError::NoFace(face))
}

/// Whether the plane still has its pathway with a fill in place.
fn path_is_clear(job: &Job, fill: &Fill) -> bool {
    let Ok(after) = apply(job, &fill_edit(job, fill)) else { return false };
    let findings = chalkcourse_rules::check(&after, &Layout::of(&after));
    !findings.iter().any(|f| f.code == "fire-plane-path" && f.place.face == Some(fill.face))
}

/// Fills the room on a face.
fn fill_room(
    job: &Job,
    layout: &Layout,
    face: FaceId,
    index: usize,
    mode: Mode,
    allowed: &Allowed,
    stop: &dyn Fn() -> bool,
) -> Result<Fill, FillError> {
    let maker = Maker { job, face };
    let tiles = job.kit.orientations.iter().map(|&orientation| (orientation, maker.tile(orientation)));
    if let Mode::WholeBlocks(most) = mode {
        let rules = BlockRules { most, apart: job.kit.clearances.between_blocks.metres() };
        let mut best: Option<Fill> = None;
        let mut bound = 0;
        for (orientation, tile) in tiles {
            let found = fit_blocks(allowed, &tile, &rules, stop)?;
            bound = bound.max(found.bound);
            if best.as_ref().is_none_or(|best| found.count > best.modules) {
                let blocks = (0u32..)
                    .zip(&found.blocks)
                    .filter_map(|(n, block)| maker.block(n, orientation, tile, &block.placed))
                    .collect();
                best = Some(maker.fill(blocks, found.count, found.bound, &mode, found.method));
            }
        }
        return Ok(maker.claimed(best, bound));
    }

    let courses = layout.faces.get(index).map(|face| face.courses);
    let rules = RowRules {
        joints: match mode {
            Mode::OneGrid => Joints::Aligned,
            Mode::HalfLapped => Joints::Lapped,
            _ => Joints::Free,
        },
        base: match courses {
            Some(lines) if mode == Mode::OnCourses => {
                Base::Courses { first: lines.first, exposure: lines.exposure, play: (0.0, 0.0) }
            }
            _ => Base::Anywhere,
        },
        // a module with nothing below it to hook into may not be built
        hooked: true,
    };
    let mut best: Option<(Fill, Fit)> = None;
    let mut bound = 0;
    for (orientation, tile) in tiles {
        let fit = fit_rows(allowed, &tile, &rules, stop)?;
        bound = bound.max(fit.bound);
        let mut found = vec![fit];
        // Rows that hook and slide are not always proved; a grid is one way to lay them and may hold more.
        if mode == Mode::SlidingRows && found[0].gap() > 0 {
            for joints in [Joints::Aligned, Joints::Lapped] {
                found.push(fit_rows(allowed, &tile, &RowRules { joints, ..rules }, stop)?);
            }
        }
        for fit in found {
            if best.as_ref().is_none_or(|(best, _)| fit.count() > best.modules) {
                let blocks = maker.block(0, orientation, tile, &fit.placed).into_iter().collect();
                best = Some((maker.fill(blocks, fit.count(), fit.bound, &mode, fit.proof.words()), fit));
            }
        }
    }
    let Some((mut fill, fit)) = best else { return Ok(maker.claimed(None, 0)) };
    let question = Question {
        near: NEAR,
        movable: layout
            .penetrations
            .iter()
            .filter(|p| p.on_face(index).is_some())
            .map(penetration_name)
            .collect(),
        farthest: FARTHEST,
    };
    let held = holds_back(allowed, &fit, &question, stop)?;
    tell(&mut fill, &held, layout, job);
    Ok(maker.claimed(Some(fill), bound))
}

/// The edits that put a fill on its face in place of the blocks that are not locked.
pub fn fill_edit(job: &Job, fill: &Fill) -> Edit {
    let gone =
        job.blocks.iter().filter(|block| block.face == fill.face && !block.locked).map(|block| block.id);
    let edits = gone.map(Edit::RemoveBlock).chain(fill.blocks.iter().cloned().map(Edit::PutBlock)).collect();
    Edit::Several(edits)
}

/// Fills for other programs.
#[derive(Clone, Debug, Serialize)]
pub struct FillsReport<'a> {
    /// Always "chalkcourse-fit".
    pub format: &'static str,
    /// Version of this format.
    pub version: u32,
    /// Name of the job.
    pub job: &'a str,
    /// Caution.
    pub caution: &'static str,
    /// Face by face.
    pub faces: &'a [Fill],
    /// What the rules find with all of them in place.
    pub findings: &'a [chalkcourse_rules::Finding],
}

/// Fills for other programs; `plan` is that of the job with all of them in place.
pub fn fills_report<'a>(job: &'a Job, fills: &'a [Fill], plan: &'a Plan) -> FillsReport<'a> {
    FillsReport {
        format: "chalkcourse-fit",
        version: 1,
        job: &job.name,
        caution: crate::CAUTION,
        faces: fills,
        findings: &plan.findings,
    }
}

/// Fills as a person reads them; `plan` is that of the job with all of them in place.
pub fn fills_text(job: &Job, fills: &[Fill], plan: &Plan) -> String {
    let mut text = format!("{}\n", job.name);
    for fill in fills {
        let face = job.face(fill.face).map_or("", |face| face.name.as_str());
        let _ = writeln!(text, "\nFace {face}: {}", fill.claim);
        let _ = writeln!(text, "  searched: {}", fill.searched);
        for block in &fill.blocks {
            let _ = writeln!(
                text,
                "  block {}: {} rows, base rail {} up from the face's datum, left end {} along it",
                block.name,
                block.rows,
                Length::from_metres(block.at.y).show(job.units),
                Length::from_metres(block.at.x).show(job.units)
            );
            for row in 0..block.rows {
                let cells: Vec<Cell> = block.cells().filter(|cell| cell.row == row).collect();
                let at = cells.first().map_or(0.0, |cell| block.corner_of(*cell, &job.kit).x - block.at.x);
                let shown = Length::from_metres(at).show(job.units);
                let _ = writeln!(text, "    row {}: {} modules, from {shown}", row + 1, cells.len());
            }
        }
        if fill.held_back.is_empty() {
            text.push_str("  nothing but the size of the face holds it back\n");
        }
        for words in &fill.held_back {
            let _ = writeln!(text, "  {words}");
        }
        for (words, places) in fill.near_by_words() {
            let _ = writeln!(text, "  At {places} {}: {words}", if places == 1 { "place" } else { "places" });
        }
    }
    let _ = writeln!(
        text,
        "\n{} modules, {:.2} kW; {} findings\n\n{}",
        plan.summary.modules,
        plan.summary.kilowatts,
        plan.findings.len(),
        crate::CAUTION
    );
    text
}

struct Maker<'a> {
    job: &'a Job,
    face: FaceId,
}

impl Maker<'_> {
    fn tile(&self, orientation: Orientation) -> Tile {
        let (long, short) = (self.job.kit.module.length.metres(), self.job.kit.module.width.metres());
        let size = match orientation {
            Orientation::Landscape => dvec2(long, short),
            Orientation::Portrait => dvec2(short, long),
        };
        Tile { size, gap: DVec2::splat(self.job.kit.reveal.usual.metres()) }
    }

    /// Tiles as the nth new block.
    fn block(&self, nth: u32, orientation: Orientation, tile: Tile, placed: &[Placed]) -> Option<Block> {
        let job = self.job;
        let stay = job.blocks.iter().filter(|block| block.face != self.face || block.locked);
        let mut names: Vec<String> = stay.map(|block| block.name.clone()).collect();
        for _ in 0..=nth {
            let name = free_name(|name| names.iter().any(|taken| taken == name));
            names.push(name);
        }
        let like = Block {
            id: BlockId(job.next_id + nth),
            name: names.pop()?,
            face: self.face,
            at: DVec2::ZERO,
            rows: 1,
            columns: 1,
            orientation,
            reveal: job.kit.reveal.usual,
            shifts: Vec::new(),
            off: BTreeSet::new(),
            locked: false,
        };
        block_of(&like, &tile, placed)
    }

    fn fill(&self, blocks: Vec<Block>, modules: usize, bound: usize, mode: &Mode, searched: String) -> Fill {
        let way = match mode {
            Mode::OneGrid => "one grid, base rail anywhere".to_owned(),
            Mode::SlidingRows => "rows sliding, base rail anywhere".to_owned(),
            Mode::HalfLapped => "half-lapped rows, base rail anywhere".to_owned(),
            Mode::OnCourses => "rows sliding, base rail on a course line".to_owned(),
            Mode::WholeBlocks(most) => {
                format!("at most {most} whole {}", if *most == 1 { "block" } else { "blocks" })
            }
        };
        Fill {
            face: self.face,
            blocks,
            modules,
            bound,
            claim: way,
            searched,
            held_back: Vec::new(),
            near: Vec::new(),
        }
    }

    /// Puts the count and the bound over all orientations in front of the way.
    fn claimed(&self, fill: Option<Fill>, bound: usize) -> Fill {
        let mut fill = fill.unwrap_or_else(|| {
            self.fill(Vec::new(), 0, 0, &Mode::OneGrid, "no orientation is allowed".to_owned())
        });
        fill.bound = bound;
        let ways: Vec<&str> = self
            .job
            .kit
            .orientations
            .iter()
            .map(|orientation| match orientation {
                Orientation::Landscape => "landscape",
                Orientation::Portrait => "portrait",
            })
            .collect();
        let proved = if fill.modules == bound { "proved" } else { "not proved" };
        fill.claim =
            format!("{} of at most {bound}, {}, {} ({proved})", fill.modules, ways.join(" or "), fill.claim);
        fill
    }
}

/// Tiles as one block like another one: rows from the lowest, each shifted to where it lies, and gaps in a row as shifts
/// within it. `None` without tiles.
pub(crate) fn block_of(like: &Block, tile: &Tile, placed: &[Placed]) -> Option<Block> {
    let least = placed.iter().map(|p| p.row).min()?;
    let rows = placed.iter().map(|p| p.row).max()? - least + 1;
    let mut in_rows: Vec<Vec<Rect>> = vec![Vec::new(); rows];
    for p in placed {
        in_rows[p.row - least].push(p.rect);
    }
    for row in &mut in_rows {
        row.sort_by(|a, b| a.min.x.total_cmp(&b.min.x));
    }
    let left = placed.iter().map(|p| p.rect.min.x).fold(f64::INFINITY, f64::min);
    let bottom = in_rows[0].first()?.min.y;
    let pitch = tile.pitch().x;
    // In a grid all rows keep to the columns; a row of its own counts its modules from the left.
    let column_of = |rect: &Rect| (rect.min.x - left) / pitch;
    let grid = placed.iter().all(|p| (column_of(&p.rect) - column_of(&p.rect).round()).abs() * pitch < 1e-7);
    let mut cells: Vec<Cell> = Vec::new();
    let mut shifts: Vec<RowShift> = Vec::new();
    for (row, rects) in (0u32..).zip(&in_rows) {
        let mut shifted = 0.0;
        for (nth, rect) in (0u32..).zip(rects) {
            let column = if grid { column_of(rect).round() as u32 } else { nth };
            cells.push(Cell { row, column });
            let by = rect.min.x - left - f64::from(column) * pitch - shifted;
            if !grid && by.abs() > 1e-9 {
                shifts.push(RowShift { row, from: column, by: Length::from_metres(by) });
                shifted += by;
            }
        }
    }
    let columns = cells.iter().map(|cell| cell.column + 1).max()?;
    let rows = u32::try_from(rows).ok()?;
    let mut block =
        Block { at: dvec2(left, bottom), rows, columns, shifts, off: BTreeSet::new(), ..like.clone() };
    let filled: BTreeSet<Cell> = cells.into_iter().collect();
    block.off = block.cells().filter(|cell| !filled.contains(cell)).collect();
    Some(block)
}

/// What holds a fill back, in words.
fn tell(fill: &mut Fill, held: &HeldBack, layout: &Layout, job: &Job) {
    let small = |metres: f64| Length::from_metres(metres).show_small(job.units);
    let several = |n: usize| if n == 1 { "1 module".to_owned() } else { format!("{n} modules") };
    for price in held.prices.iter().filter(|price| price.tiles > 0) {
        let sure = if price.proved { "costs" } else { "seems to cost" };
        fill.held_back.push(format!(
            "{} {sure} {}.",
            capital(&barrier_words(&price.id, layout)),
            several(price.tiles)
        ));
    }
    for step in &held.moves {
        let (way, by) = direction(step.by);
        fill.held_back.push(format!(
            "{} moved {} {way} would win {}.",
            capital(&barrier_words(&step.id, layout)),
            small(by),
            several(step.wins)
        ));
    }
    fill.near = held
        .near
        .iter()
        .take(MOST_NEAR)
        .map(|near| {
            let stops: Vec<String> = near
                .stops
                .iter()
                .map(|stop| {
                    let by = match &stop.by {
                        Barrier::Constraint(id) => barrier_words(id, layout),
                        Barrier::Side { .. } => "the edge of the face".to_owned(),
                    };
                    format!("{by}, by {}", small(stop.depth()))
                })
                .collect();
            Near { rect: near.rect, words: format!("one more module is stopped by {}.", stops.join(" and ")) }
        })
        .collect();
}

fn direction(by: DVec2) -> (&'static str, f64) {
    if by.x.abs() > by.y.abs() {
        (if by.x > 0.0 { "to the right" } else { "to the left" }, by.x.abs())
    } else {
        (if by.y > 0.0 { "up the slope" } else { "down the slope" }, by.y.abs())
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
