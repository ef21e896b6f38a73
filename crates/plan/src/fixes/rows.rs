//! Sliding a row along the eave, and changing the reveal.

use super::FixRequest;
use super::change::{Change, Step};
use super::ground::{Body, rows_of};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{Block, Edit, Subject};
use chalkcourse_rules::Facts;
use std::collections::BTreeSet;

/// The block with a row slid, alone or with all rows above it.
fn slid(block: &Block, row: u32, above: bool, by: f64) -> Block {
    let last = if above { block.rows } else { row + 1 };
    (row..last)
        .fold(block.clone(), |slid, row| slid.with_shift(row, block.shift(row) + Length::from_metres(by)))
}

fn slide(block: &Block, row: u32, above: bool, by: f64) -> Step {
    Step {
        change: Change::Slide { block: block.id, row, above, by: Length::from_metres(by) },
        edit: Edit::PutBlock(slid(block, row, above, by)),
    }
}

/// Slides of the rows that a finding is about, shortest first.
pub(super) fn slides(asked: &FixRequest<'_>, block: &Block) -> Vec<Step> {
    let mut steps = match (asked.finding.rule, &asked.finding.key.subject) {
        ("laying", Subject::Row(_, row)) => to_allowed_joints(asked, block, row.saturating_sub(1)),
        ("hook", Subject::Row(_, row)) => onto_row_below(asked, block, row.saturating_sub(1)),
        _ => past(asked, block),
    };
    steps.sort_by(|a, b| a.change.distance().total_cmp(&b.change.distance()));
    steps
}

/// To the joints that the kit allows, on either side; a row may be shifted from any of its cells on.
fn to_allowed_joints(asked: &FixRequest<'_>, block: &Block, row: u32) -> Vec<Step> {
    let spacing = block.spacing(&asked.state.job.kit).x;
    let Some(below) = row.checked_sub(1) else { return Vec::new() };
    let aside = (block.shift(row) - block.shift(below)).metres();
    let Facts::Joints { aside: within } = asked.finding.facts else { return Vec::new() };
    let within = within.metres();
    let ways = asked.state.job.kit.laying.shifts(spacing).unwrap_or_default();
    ways.into_iter()
        .flat_map(|to| [to - within, to - within - spacing, -aside])
        .filter(|by| by.abs() > 1e-9)
        .flat_map(|by| [slide(block, row, true, by), slide(block, row, false, by)])
        .collect()
}

/// Over the row below: until it hooks, and flush with it.
fn onto_row_below(asked: &FixRequest<'_>, block: &Block, row: u32) -> Vec<Step> {
    let Some(below) = row.checked_sub(1) else { return Vec::new() };
    let aside = (block.shift(row) - block.shift(below)).metres();
    let least = asked.state.job.rule_book.hooked_share.value;
    let enough = aside.abs() - block.module_size(&asked.state.job.kit).x * (1.0 - least);
    let mut ways = vec![-aside];
    if let Some(ground) = asked.ground_of(block).filter(|_| enough > 0.0) {
        ways.push(-aside.signum() * ground.up(enough));
    }
    ways.into_iter()
        .filter(|by| by.abs() > 1e-9)
        .flat_map(|by| {
            let mut alone = slide(block, row, false, by);
            if by == -aside {
                alone.change = Change::ShiftOver(block.id, row, Length::from_metres(by));
            }
            [slide(block, row, true, by), alone]
        })
        .collect()
}

/// Past the obstacles of some rows: those alone, or with all rows above.
fn past(asked: &FixRequest<'_>, block: &Block) -> Vec<Step> {
    let finding = asked.finding;
    let rows: BTreeSet<u32> = match finding.place.block {
        Some(id) if id == block.id => finding.place.cells.iter().map(|cell| cell.row).collect(),
        _ => BTreeSet::new(),
    };
    let (Some(&lowest), Some(placed)) = (rows.first(), asked.state.layout.block(block.id)) else {
        return Vec::new();
    };
    let Some(ground) = asked.ground_of(block) else { return Vec::new() };
    let mut steps = Vec::new();
    for above in [false, true] {
        if above && lowest == 0 || !above && rows.len() > 1 {
            continue;
        }
        let part = |row: u32| if above { row >= lowest } else { row == lowest };
        let Some(body) = Body::of(&rows_of(placed, part)) else { continue };
        // Sliding along the courses can't fix a violation of the courses.
        let free = ground.free_along(&body, DVec2::ZERO, DVec2::X);
        steps.extend(
            free.into_iter().filter(|by| by.x.abs() > 1e-6).map(|by| slide(block, lowest, above, by.x)),
        );
    }
    steps
}

/// Moves the reveal into the kit's range; or to its minimum, if the block has to be smaller.
pub(super) fn reveal(asked: &FixRequest<'_>, block: &Block) -> Vec<Step> {
    let range = asked.state.job.kit.reveal;
    let to = match asked.finding.rule {
        "reveal" if block.reveal < range.least => range.least,
        "reveal" => range.most,
        rule if chalkcourse_limits::LIMITS.iter().any(|limit| limit.code == rule) => range.least,
        _ => return Vec::new(),
    };
    let asked_more = asked.finding.rule != "reveal" && to >= block.reveal;
    if asked_more || to == block.reveal {
        return Vec::new();
    }
    vec![Step {
        change: Change::Reveal(block.id, to),
        edit: Edit::PutBlock(Block { reveal: to, ..block.clone() }),
    }]
}
