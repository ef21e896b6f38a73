//! Short forms of edits to blocks.

use super::{Fields, ObjectRef, Point, StepErrorKind, find};
use crate::{Block, BlockId, Cell, Edit, Orientation, Resolved};
use chalkcourse_geometry::Length;
use chalkcourse_words::later as words;
use schemars::JsonSchema;
use serde::Deserialize;
use std::collections::BTreeSet;

/// Adds a block.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddBlock {
    /// Its name; by default the next free letter.
    #[serde(default)]
    name: Option<String>,
    /// The face.
    face: ObjectRef,
    /// Its lower left corner, from the left end of the face along the eave and from its lowest point up the slope.
    at: Point,
    /// Rows, from the eave up.
    rows: u32,
    /// Modules per row.
    columns: u32,
    /// Orientation of the modules; by default the kit's first one.
    #[serde(default)]
    orientation: Option<Orientation>,
    /// The gap between adjacent modules; by default the kit's usual one.
    #[serde(default)]
    reveal: Option<Length>,
}

impl AddBlock {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let face = find::face(job, &self.face)?;
        let taken = |name: &str| job.blocks.iter().any(|block| block.name == name);
        Ok(Edit::PutBlock(Block {
            id: BlockId(job.next_id),
            name: self.name.clone().unwrap_or_else(|| Block::free_name(taken)),
            face: face.id,
            at: find::lower_left(face) + self.at.0,
            rows: self.rows,
            columns: self.columns,
            orientation: self.orientation.or(job.kit.orientations.first().copied()).unwrap_or_default(),
            reveal: self.reveal.unwrap_or(job.kit.reveal.usual),
            shifts: Vec::new(),
            off: BTreeSet::new(),
            locked: false,
        }))
    }
}

/// Changes fields of a block. Cells and shifts beyond a smaller size are dropped.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct ChangeBlock {
    /// The block.
    block: ObjectRef,
    #[serde(flatten)]
    fields: Fields<Block>,
}

impl ChangeBlock {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let there = find::block(job, &self.block)?;
        let mut changed = self.fields.over(there)?;
        if changed.rows < there.rows || changed.columns < there.columns {
            changed.forget_beyond();
        }
        Ok(Edit::PutBlock(changed))
    }
}

/// Moves a block on its face.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct MoveBlock {
    /// The block.
    block: ObjectRef,
    /// The new position of its lower left corner, from the left end of the face and from its lowest point, or
    #[serde(default)]
    to: Option<Point>,
    /// the displacement along the eave and up the slope.
    #[serde(default)]
    by: Option<Point>,
}

impl MoveBlock {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let there = find::block(job, &self.block)?;
        let rests = || StepErrorKind::Rests { block: there.name.clone() };
        let from = find::lower_left(job.face(there.face).ok_or_else(rests)?);
        let at = find::moved(there.at - from, self.to, self.by)? + from;
        Ok(Edit::PutBlock(Block { at, ..there.clone() }))
    }
}

/// Switches modules of a block off and on.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct SwitchModules {
    /// The block.
    block: ObjectRef,
    /// Cells to switch off.
    #[serde(default)]
    off: Vec<ModulePlace>,
    /// Cells to switch on.
    #[serde(default)]
    on: Vec<ModulePlace>,
}

/// A cell of a block, counted from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct ModulePlace {
    /// From 1 at the eave.
    row: u32,
    /// From 1 at the left.
    place: u32,
}

impl ModulePlace {
    fn cell(self, block: &Block, field: &'static str) -> Result<Cell, StepErrorKind> {
        let within = |number: u32, most: u32| number.checked_sub(1).filter(|&index| index < most);
        match (within(self.row, block.rows), within(self.place, block.columns)) {
            (Some(row), Some(column)) => Ok(Cell { row, column }),
            _ => {
                let wrong = words::job::block_has_rows_1_to(
                    &block.name,
                    &block.rows,
                    &block.columns,
                    &self.row,
                    &self.place,
                );
                Err(StepErrorKind::field(field, wrong))
            }
        }
    }
}

impl SwitchModules {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let mut block = find::block(job, &self.block)?.clone();
        for place in &self.off {
            block.off.insert(place.cell(&block, "off")?);
        }
        for place in &self.on {
            let cell = place.cell(&block, "on")?;
            block.off.remove(&cell);
        }
        Ok(Edit::PutBlock(block))
    }
}

/// Shifts a row of a block along the eave.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ShiftRow {
    /// The block.
    block: ObjectRef,
    /// The row, from 1 at the eave.
    row: u32,
    /// How far to the right of its unshifted position.
    by: Length,
}

impl ShiftRow {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let block = find::block(job, &self.block)?;
        let cell = ModulePlace { row: self.row, place: 1 }.cell(block, "row")?;
        Ok(Edit::PutBlock(block.with_shift(cell.row, self.by)))
    }
}
