//! Switching modules off, with those that they supported, or on; opening pathways; removing a block.

use super::FixRequest;
use super::change::{Change, Step};
use super::judge::{State, Trials};
use chalkcourse_job::{Block, BlockId, Cell, Edit, Subject};
use std::collections::BTreeSet;

/// How many times to switch off modules that lost their support.
const MOST_ROUNDS: usize = 12;

/// Switches off the modules of a block that a finding is about, and then those that hooked into them.
pub(super) fn off(asked: &FixRequest<'_>, block: &Block, trials: &mut Trials<'_>) -> Vec<Step> {
    let place = &asked.finding.place;
    if place.block != Some(block.id) || place.cells.is_empty() {
        return Vec::new();
    }
    let mut cells: BTreeSet<Cell> = place.cells.iter().copied().collect();
    for _ in 0..MOST_ROUNDS {
        let Some(step) = switched_off(block, &cells) else { return Vec::new() };
        let Some(after) = trials.run(&asked.state.job, &step.edit) else { return Vec::new() };
        let hang: BTreeSet<Cell> = hanging(asked.state, &after, block.id);
        if hang.is_empty() {
            return vec![step];
        }
        cells.extend(hang);
    }
    Vec::new()
}

/// Modules of a block that hook too little after a change, in rows that hooked before.
fn hanging(before: &State, after: &State, block: BlockId) -> BTreeSet<Cell> {
    let of = |state: &State, row: u32| {
        state.findings.iter().any(|f| f.rule == "hook" && f.key.subject == Subject::Row(block, row))
    };
    after
        .findings
        .iter()
        .filter(|f| match &f.key.subject {
            Subject::Row(id, row) => f.rule == "hook" && *id == block && !of(before, *row),
            _ => false,
        })
        .flat_map(|f| f.place.cells.iter().copied())
        .collect()
}

fn switched_off(block: &Block, cells: &BTreeSet<Cell>) -> Option<Step> {
    let off: Vec<Cell> = block.cells().filter(|cell| cells.contains(cell)).collect();
    let mut less = block.clone();
    less.off.extend(off.iter().copied());
    let some_left = less.cells().next().is_some() && !off.is_empty();
    some_left.then_some(Step { change: Change::SwitchOff(block.id, off), edit: Edit::PutBlock(less) })
}

/// Switches on what is missing below a row that hooks too little.
pub(super) fn on(asked: &FixRequest<'_>, block: &Block) -> Vec<Step> {
    let Subject::Row(_, row) = asked.finding.key.subject else { return Vec::new() };
    let Some(below) = row.checked_sub(2).filter(|_| asked.finding.rule == "hook") else { return Vec::new() };
    let kit = &asked.state.job.kit;
    let width = block.module_size(kit).x;
    let carries = |off: &Cell| {
        let under =
            |cell: &Cell| (block.corner_of(*cell, kit).x - block.corner_of(*off, kit).x).abs() < width;
        asked.finding.place.cells.iter().any(under)
    };
    let mut filled = block.clone();
    filled.off.retain(|off| off.row != below || !carries(off));
    let count = block.off.len() - filled.off.len();
    match count {
        0 => Vec::new(),
        _ => vec![Step { change: Change::SwitchOn(block.id, below, count), edit: Edit::PutBlock(filled) }],
    }
}

/// Switches off the modules in the pathway that can be opened at the least loss.
pub(super) fn pathway(asked: &FixRequest<'_>) -> Vec<Step> {
    let Some(blocks) = asked.finding.facts.opening() else { return Vec::new() };
    let less = |(id, cells): &(BlockId, Vec<Cell>)| {
        let mut less = asked.state.job.block(*id).filter(|block| !block.locked)?.clone();
        less.off.extend(cells.iter().copied());
        let some_left = less.cells().next().is_some();
        Some(if some_left { Edit::PutBlock(less) } else { Edit::RemoveBlock(*id) })
    };
    let edits: Option<Vec<Edit>> = blocks.iter().map(less).collect();
    let step = |edits| Step { change: Change::OpenPathway(blocks.to_vec()), edit: Edit::Several(edits) };
    edits.map(step).into_iter().collect()
}

/// Removes a block.
pub(super) fn take(block: &Block) -> Vec<Step> {
    vec![Step { change: Change::Take(block.id), edit: Edit::RemoveBlock(block.id) }]
}
