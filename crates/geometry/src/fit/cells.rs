//! The places of a grid, their values, and the costs of exposed sides and corners.

use super::kernel::FitError;
use crate::Rect;
use chalkcourse_words::later as words;
use serde::{Deserialize, Serialize};

/// A place of a grid that a tile may occupy.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Cell {
    /// Column, from 0.
    pub column: usize,
    /// Row, from 0 upwards.
    pub row: usize,
    /// Its rectangle.
    pub rect: Rect,
    /// The value of a tile here, in the same unit as the costs.
    pub value: f64,
}

/// The costs of exposed sides and corners; none is negative.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Costs {
    /// A lower side without a tile below it.
    pub foot: f64,
    /// An upper side without a tile above it.
    pub head: f64,
    /// A left or right side without a neighbour.
    pub side: f64,
    /// A convex corner.
    pub outer_corner: f64,
    /// A concave corner.
    pub inner_corner: f64,
}

/// Cells by column and row.
pub(super) struct Field<'a> {
    pub(super) cells: &'a [Cell],
    pub(super) columns: usize,
    pub(super) rows: usize,
    pub(super) index: Vec<Option<usize>>,
}

impl<'a> Field<'a> {
    pub(super) fn new(cells: &'a [Cell], costs: &Costs) -> Result<Self, FitError> {
        for (name, cost) in [
            (words::fill::FOOT, costs.foot),
            (words::fill::HEAD, costs.head),
            (words::common::SIDE, costs.side),
            (words::fill::OUTER_CORNER, costs.outer_corner),
            (words::fill::INNER_CORNER, costs.inner_corner),
        ] {
            if !(0.0..1e12).contains(&cost) {
                return Err(FitError::Choice(words::fill::the_cost_of_a_is(&name, &cost)));
            }
        }
        let (columns, rows) = (
            cells.iter().map(|c| c.column + 1).max().unwrap_or(0),
            cells.iter().map(|c| c.row + 1).max().unwrap_or(0),
        );
        if columns.saturating_mul(rows) > 10_000_000 {
            return Err(FitError::Choice(words::fill::a_grid_of_x_places(&columns, &rows)));
        }
        let mut index = vec![None; columns * rows];
        for (i, cell) in cells.iter().enumerate() {
            if cell.value.is_nan() || cell.value.abs() >= 1e12 {
                return Err(FitError::Choice(words::fill::the_value_of_cell_is(&cell.value, &i)));
            }
            if index[cell.row * columns + cell.column].replace(i).is_some() {
                return Err(FitError::Choice(words::fill::two_cells_in_column_row(&cell.column, &cell.row)));
            }
        }
        Ok(Self { cells, columns, rows, index })
    }

    pub(super) fn at(&self, column: usize, row: usize) -> Option<usize> {
        if column >= self.columns {
            return None;
        }
        self.index.get(row * self.columns + column).copied().flatten()
    }

    pub(super) fn value(&self, cell: usize) -> f64 {
        self.cells.get(cell).map_or(0.0, |c| c.value)
    }
}
