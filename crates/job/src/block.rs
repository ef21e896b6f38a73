//! A block of modules on a face.

use crate::{BlockId, FaceId, Kit, Orientation};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A cell of a block: rows count from the eave, columns from the left, both from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Cell {
    /// From the eave; row 0 is on the base rail.
    pub row: u32,
    /// From the left.
    pub column: u32,
}

impl Cell {
    /// The number by which people call a module, the same everywhere: row and place in it, both from 1, from the lowest row and from
    /// the left, as the crew builds: 2-3.
    pub fn number(self) -> String {
        format!("{}-{}", self.row + 1, self.column + 1)
    }
}

/// A shift of modules in a row along the eave.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RowShift {
    /// The row; 0 is on the base rail.
    pub row: u32,
    /// The first column that is shifted, along with everything to its right: 0 shifts the whole row, a later one opens
    /// a gap, as around a pipe.
    #[serde(default, skip_serializing_if = "is_first")]
    pub from: u32,
    /// Distance to the right.
    pub by: Length,
}

fn is_first(column: &u32) -> bool {
    *column == 0
}

/// A group of modules that is flashed as a unit: rows × columns on one face, except those switched off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Block {
    /// Its id in the job.
    pub id: BlockId,
    /// Display name.
    pub name: String,
    /// The face that it is on.
    pub face: FaceId,
    /// Its lower left corner in the face's frame: u along the eave, v up the slope, metres.
    #[schemars(with = "[f64; 2]")]
    pub at: DVec2,
    /// Rows, from the eave up.
    pub rows: u32,
    /// Modules per row.
    pub columns: u32,
    /// Orientation of the modules.
    #[serde(default)]
    pub orientation: Orientation,
    /// The gap between adjacent modules, along a row and between rows.
    pub reveal: Length,
    /// Shifts, ordered by row and column. Shifts in the same row add up from the left.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shifts: Vec<RowShift>,
    /// Cells without a module.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub off: BTreeSet<Cell>,
    /// Whether it is kept as it is when the face is filled.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub locked: bool,
}

impl Block {
    /// Most cells in one block, so that a typing error can't ask for a million.
    pub const MOST_CELLS: u64 = 10_000;

    /// The first of A, B, … Z, A1 … that is not taken.
    pub fn free_name(taken: impl Fn(&str) -> bool) -> String {
        let rounds = std::iter::once(String::new()).chain((1_u64..).map(|round| round.to_string()));
        let mut names = rounds.flat_map(|round| ('A'..='Z').map(move |letter| format!("{letter}{round}")));
        names.find(|name| !taken(name)).unwrap_or_default()
    }

    /// The shift of a whole row to the right.
    pub fn shift(&self, row: u32) -> Length {
        self.shifts.iter().find(|s| (s.row, s.from) == (row, 0)).map_or(Length::ZERO, |s| s.by)
    }

    /// The block with a whole row shifted; a zero shift is removed.
    pub fn with_shift(&self, row: u32, by: Length) -> Self {
        let mut block = self.clone();
        block.shifts.retain(|s| (s.row, s.from) != (row, 0));
        if by != Length::ZERO {
            block.shifts.push(RowShift { row, from: 0, by });
            block.shifts.sort_by_key(|s| (s.row, s.from));
        }
        block
    }

    /// The block with another number of rows and columns, at least 1 × 1. Shifts and cells beyond them are dropped.
    pub fn with_size(&self, rows: u32, columns: u32) -> Self {
        let mut block = self.clone();
        (block.rows, block.columns) = (rows.max(1), columns.max(1));
        block.forget_beyond();
        block
    }

    /// Drops shifts and cells outside the block.
    pub(crate) fn forget_beyond(&mut self) {
        let (rows, columns) = (self.rows, self.columns);
        self.shifts.retain(|s| s.row < rows && s.from < columns);
        self.off.retain(|c| c.row < rows && c.column < columns);
    }

    /// The block with one module switched on or off.
    pub fn with_switched(&self, cell: Cell) -> Self {
        let mut block = self.clone();
        if !block.off.remove(&cell) && cell.row < block.rows && cell.column < block.columns {
            block.off.insert(cell);
        }
        block
    }

    /// Cells with a module, row by row from the eave, left to right.
    pub fn cells(&self) -> impl Iterator<Item = Cell> {
        let columns = self.columns;
        (0..self.rows)
            .flat_map(move |row| (0..columns).map(move |column| Cell { row, column }))
            .filter(|cell| !self.off.contains(cell))
    }

    /// Width and height of a module in its orientation, in metres.
    pub fn module_size(&self, kit: &Kit) -> DVec2 {
        let (long, short) = (kit.module.length.metres(), kit.module.width.metres());
        match self.orientation {
            Orientation::Landscape => dvec2(long, short),
            Orientation::Portrait => dvec2(short, long),
        }
    }

    /// Distance between the lower left corners of adjacent modules, along a row and up the slope, in metres.
    pub fn spacing(&self, kit: &Kit) -> DVec2 {
        self.module_size(kit) + DVec2::splat(self.reveal.metres())
    }

    /// The total shift of a cell to the right, in metres.
    fn shift_at(&self, cell: Cell) -> f64 {
        self.shifts.iter().filter(|s| s.row == cell.row && s.from <= cell.column).map(|s| s.by.metres()).sum()
    }

    /// The lower left corner of a cell in the face's frame.
    pub fn corner_of(&self, cell: Cell, kit: &Kit) -> DVec2 {
        self.at
            + self.spacing(kit) * dvec2(f64::from(cell.column), f64::from(cell.row))
            + dvec2(self.shift_at(cell), 0.0)
    }
}
