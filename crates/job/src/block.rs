//! A block of modules on a face.

use crate::{BlockId, FaceId, Kit, Orientation};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// One place in a block: rows count from the eave, columns from the left, both from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Cell {
    /// From the eave, 0 is on the base rail.
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

/// Modules of a row that are shifted along the eave.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RowShift {
    /// Which row, 0 is on the base rail.
    pub row: u32,
    /// The first column that is shifted, with all to the right of it: 0 shifts the whole row, a later one opens a gap, as
    /// around a pipe.
    #[serde(default, skip_serializing_if = "is_first")]
    pub from: u32,
    /// To the right.
    pub by: Length,
}

fn is_first(column: &u32) -> bool {
    *column == 0
}

/// Modules that are flashed as one: rows × columns on one face, less those that are switched off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Block {
    /// Its number in the job.
    pub id: BlockId,
    /// What people call it.
    pub name: String,
    /// The face that it lies on.
    pub face: FaceId,
    /// Its lower left corner in the face's frame: u along the eave, v up the slope, metres.
    #[schemars(with = "[f64; 2]")]
    pub at: DVec2,
    /// Rows, from the eave up.
    pub rows: u32,
    /// Modules in a row.
    pub columns: u32,
    /// How the modules lie.
    #[serde(default)]
    pub orientation: Orientation,
    /// The gap between neighbouring modules, along a row and between rows.
    pub reveal: Length,
    /// What is shifted, in the order of rows and columns. Shifts of one row add up from the left.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shifts: Vec<RowShift>,
    /// Places without a module.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub off: BTreeSet<Cell>,
    /// A locked block stays where it is when an array is fitted.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub locked: bool,
}

impl Block {
    /// Most modules in one block, so that a slip of the hand can't ask for a million.
    pub const MOST_CELLS: u64 = 10_000;

    /// The first of A, B, … Z, A1 … that is not taken.
    pub fn free_name(taken: impl Fn(&str) -> bool) -> String {
        let rounds = std::iter::once(String::new()).chain((1_u64..).map(|round| round.to_string()));
        let mut names = rounds.flat_map(|round| ('A'..='Z').map(move |letter| format!("{letter}{round}")));
        names.find(|name| !taken(name)).unwrap_or_default()
    }

    /// How far a row as a whole is shifted to the right.
    pub fn shift(&self, row: u32) -> Length {
        self.shifts.iter().find(|s| (s.row, s.from) == (row, 0)).map_or(Length::ZERO, |s| s.by)
    }

    /// The block with one row shifted as a whole; a shift of nothing is forgotten.
    pub fn with_shift(&self, row: u32, by: Length) -> Self {
        let mut block = self.clone();
        block.shifts.retain(|s| (s.row, s.from) != (row, 0));
        if by != Length::ZERO {
            block.shifts.push(RowShift { row, from: 0, by });
            block.shifts.sort_by_key(|s| (s.row, s.from));
        }
        block
    }

    /// The block with another number of rows and columns. What lies beyond is forgotten; at least 1 × 1.
    pub fn with_size(&self, rows: u32, columns: u32) -> Self {
        let mut block = self.clone();
        (block.rows, block.columns) = (rows.max(1), columns.max(1));
        block.forget_beyond();
        block
    }

    /// Forgets what is said of rows and columns that are not there.
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

    /// Places that carry a module, row by row from the eave, from the left.
    pub fn cells(&self) -> impl Iterator<Item = Cell> {
        let columns = self.columns;
        (0..self.rows)
            .flat_map(move |row| (0..columns).map(move |column| Cell { row, column }))
            .filter(|cell| !self.off.contains(cell))
    }

    /// Width and height of a module as it lies, in metres.
    pub fn module_size(&self, kit: &Kit) -> DVec2 {
        let (long, short) = (kit.module.length.metres(), kit.module.width.metres());
        match self.orientation {
            Orientation::Landscape => dvec2(long, short),
            Orientation::Portrait => dvec2(short, long),
        }
    }

    /// From one module's lower left corner to the next one's, along a row and up the slope, in metres.
    pub fn spacing(&self, kit: &Kit) -> DVec2 {
        self.module_size(kit) + DVec2::splat(self.reveal.metres())
    }

    /// How far a place is shifted to the right, in metres.
    fn shift_at(&self, cell: Cell) -> f64 {
        self.shifts.iter().filter(|s| s.row == cell.row && s.from <= cell.column).map(|s| s.by.metres()).sum()
    }

    /// The lower left corner of a place in the face's frame.
    pub fn corner_of(&self, cell: Cell, kit: &Kit) -> DVec2 {
        self.at
            + self.spacing(kit) * dvec2(f64::from(cell.column), f64::from(cell.row))
            + dvec2(self.shift_at(cell), 0.0)
    }
}
