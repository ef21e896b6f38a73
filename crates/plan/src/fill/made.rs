//! Converts placed tiles to blocks of a job, and states the claim that goes with them.

use super::judge::Judge;
use super::{Basis, Fill, FillKind, Measure, MeasureOf, Mode};
use crate::room::Fire;
use chalkcourse_geometry::fit::{Base, Placed, Tile};
use chalkcourse_geometry::{DVec2, Length, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, FaceId, Orientation, Resolved, RowShift};
use chalkcourse_words::{Said, later as words};
use std::collections::BTreeSet;

/// Makes blocks for a face.
pub(super) struct Maker<'a> {
    pub(super) job: &'a Resolved,
    pub(super) face: FaceId,
}

impl<'a> Maker<'a> {
    /// The module in each orientation that the kit allows.
    pub(super) fn tiles(&self) -> impl Iterator<Item = (Orientation, Tile)> + use<'a> {
        self.tiles_with(self.job.kit.reveal.usual)
    }

    /// The same with a given reveal.
    pub(super) fn tiles_with(&self, reveal: Length) -> impl Iterator<Item = (Orientation, Tile)> + use<'a> {
        let kit = &self.job.kit;
        kit.orientations.iter().map(move |&orientation| {
            let (long, short) = (kit.module.length.metres(), kit.module.width.metres());
            let size = match orientation {
                Orientation::Landscape => dvec2(long, short),
                Orientation::Portrait => dvec2(short, long),
            };
            (orientation, Tile { size, gap: DVec2::splat(reveal.metres()) })
        })
    }

    /// Tiles as the nth new block.
    pub(super) fn block(
        &self,
        nth: u32,
        orientation: Orientation,
        tile: Tile,
        placed: &[Placed],
    ) -> Option<Block> {
        let job = self.job;
        let stay = job.blocks.iter().filter(|block| block.face != self.face || block.locked);
        let mut names: Vec<String> = stay.map(|block| block.name.clone()).collect();
        for _ in 0..=nth {
            let name = Block::free_name(|name| names.iter().any(|taken| taken == name));
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
            reveal: Length::from_metres(tile.gap.x),
            shifts: Vec::new(),
            off: BTreeSet::new(),
            locked: false,
        };
        block_of(&like, &tile, placed)
    }

    /// Tiles of several new blocks.
    pub(super) fn blocks<'p>(
        &self,
        orientation: Orientation,
        tile: Tile,
        placed: impl Iterator<Item = &'p [Placed]>,
    ) -> Vec<Block> {
        (0u32..).zip(placed).filter_map(|(n, placed)| self.block(n, orientation, tile, placed)).collect()
    }

    pub(super) fn fill(
        &self,
        blocks: Vec<Block>,
        modules: usize,
        bound: usize,
        proved: bool,
        searched: impl Into<Said>,
        basis: Basis,
    ) -> Fill {
        let face = self.face;
        let (measure, held, claim) = (None, None, Said::default());
        Fill { face, blocks, modules, bound, proved, measure, claim, searched: searched.into(), held, basis }
    }

    /// A fill without modules.
    pub(super) fn nothing(&self, fire: &Fire) -> Fill {
        let basis = Basis { fire: fire.clone(), way: None, laid: FillKind::Nothing, every: false };
        self.fill(Vec::new(), 0, 0, true, words::common::NOTHING, basis)
    }
}

/// Where the base rail may be, in words.
pub(super) fn base_words(job: &Resolved, base: Base) -> Said {
    let Base::Courses { play: (from, to), .. } = base else {
        return words::fill::BASE_RAIL_ANYWHERE.into();
    };
    let small = |metres: f64| Length::from_metres(metres).show_small(job.units);
    if from == 0.0 && to == 0.0 {
        words::fill::BASE_RAIL_ON_A_COURSE.into()
    } else if from == to {
        words::fill::base_rail_above_a_course(&small(from))
    } else {
        words::fill::base_rail_to_above_a(&small(from), &small(to))
    }
}

/// States the claim of a fill: for a restricted search its kind first, then what was laid and the bound.
pub(super) fn claim(judge: &Judge, job: &Resolved, fill: &mut Fill, mode: Mode) {
    let proved = if fill.proved { words::fill::PROVED } else { words::fill::NOT_PROVED };
    let (modules, bound) = (fill.modules, fill.bound);
    let usual = matches!(mode, Mode::SlidingRows);
    fill.basis.every = usual;
    let way = fill.basis.way.clone();
    let mut parts: Vec<Said> = Vec::new();
    if let (false, Some(way)) = (usual, way.clone()) {
        parts.extend([way, Said::own(": ")]);
    }
    parts.push(if matches!(mode, Mode::ToNumber(_)) {
        Said::own(modules.to_string())
    } else if modules == bound {
        words::fill::of_at_most(&modules, &bound)
    } else {
        words::fill::none_can_hold_more_than(&modules, &bound)
    });
    parts.extend(fill.measure.as_ref().map(|measure| measure_words(job, measure)));
    parts.push(Said::own(", "));
    let ways = job.kit.orientations.iter().map(|way| Said::from(way.name()));
    parts.push(Said::listed(ways, words::common::OR));
    let narrow = fill.blocks.iter().find(|block| block.reveal < job.kit.reveal.usual);
    parts.extend(narrow.map(|block| words::fill::reveal(&block.reveal.show_small(job.units))));
    if usual {
        let base = way.map(|way| Said::joined([Said::own(", "), way]));
        parts.push(words::fill::whatever_the_blocks_rows_and(&base, &apart_words(job)));
    }
    if judge.lacks_pathways(fill.face) {
        parts.push(words::fill::WHATEVER_IS_LAID_HERE_TWO.into());
    }
    parts.extend([Said::own(" ("), proved.into(), Said::own(")")]);
    fill.claim = Said::joined(parts);
}

/// The exception to a claim over all layouts: the kit's distance between blocks is only a caution.
fn apart_words(job: &Resolved) -> Option<Said> {
    let apart = chalkcourse_limits::apart(job);
    (apart > 0.0).then(|| words::fill::blocks_apart_as_the_kit(&Length::from_metres(apart).show(job.units)))
}

fn measure_words(job: &Resolved, measure: &Measure) -> Said {
    let money = |amount: f64| chalkcourse_telling::order::worth(amount, &job.prices.currency);
    let length = |metres: f64| Length::from_metres(metres).show(job.units);
    let Measure { of, value, bound, any } = *measure;
    match of {
        MeasureOf::Worth => {
            let all = any.map(|any| words::fill::and_no_layout_of_any(&money(any)));
            words::fill::worth_of_at_most(&money(value), &money(bound), &all)
        }
        MeasureOf::FlashingCost => words::fill::flashing_around_them_of_at(&money(value), &money(bound)),
        MeasureOf::LengthAround => words::fill::around_them_of_at_least(&length(value), &length(bound)),
    }
}

/// Converts tiles to one block modelled on another: rows from the lowest, each shifted to its position, and gaps in a
/// row as shifts within it. `None` without tiles.
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
    // In a grid all rows use the same columns; otherwise each row counts its modules from the left.
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
