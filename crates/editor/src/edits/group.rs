//! Edits of several objects at once, as one step.

use super::standing::room_of;
use crate::action::Action;
use crate::state::{Group, View};
use crate::{Document, Selection, text};
use chalkcourse_geometry::{DVec2, slide_in};
use chalkcourse_job::{BlockId, Cell, Edit, Penetration, Resolved};
use chalkcourse_layout::Layout;
use std::collections::BTreeSet;

/// Selects a group, or a single object directly.
pub(crate) fn held(group: Group) -> Action {
    let one = group.blocks.len() + group.penetrations.len() == 1 && group.modules.is_empty();
    let block = group.blocks.first().copied().map(Selection::Block);
    let penetration = group.penetrations.first().copied().map(Selection::Penetration);
    match block.or(penetration).filter(|_| one) {
        Some(one) => Action::Select(one),
        None if group.is_empty() => Action::Select(Selection::Nothing),
        None => Action::Hold(group),
    }
}

/// Moves blocks and penetrations in plan; modules only move with their blocks. `None` if nothing moves.
pub(crate) fn moved(group: &Group, job: &Resolved, layout: &Layout, by: DVec2) -> Option<Edit> {
    let blocks = group.blocks.iter().filter_map(|id| {
        let mut block = job.block(*id)?.clone();
        let plane = layout.face(block.face)?.1.plane;
        block.at += plane.to_frame(by) - plane.to_frame(DVec2::ZERO);
        Some(Edit::PutBlock(block))
    });
    let penetrations = group.penetrations.iter().filter_map(|id| {
        let penetration = job.penetration(*id)?;
        let at = penetration.at + by;
        Some(Edit::PutPenetration(Penetration { at, ..penetration.clone() }))
    });
    let edits: Vec<Edit> = blocks.chain(penetrations).collect();
    (!edits.is_empty()).then_some(Edit::Several(edits))
}

/// A move in plan, reduced so that no block goes over the edge of the face that all of them are on. Blocks of several
/// faces move as dragged.
pub(crate) fn within_faces(group: &Group, job: &Resolved, layout: &Layout, by: DVec2) -> DVec2 {
    let held = || {
        let blocks: Vec<_> = group.blocks.iter().filter_map(|id| job.block(*id)).collect();
        let face = blocks.first()?.face;
        let (_, on) = layout.face(face).filter(|_| blocks.iter().all(|block| block.face == face))?;
        let rooms = blocks.iter().filter_map(|block| room_of(job, layout, block));
        let around = rooms.reduce(|a, b| a.union(&b))?;
        let moved = around.moved(on.plane.to_frame(by) - on.plane.to_frame(DVec2::ZERO));
        let back = slide_in(&on.frame, moved)?;
        Some(on.plane.to_plan(back) - on.plane.to_plan(DVec2::ZERO))
    };
    by + held().unwrap_or(DVec2::ZERO)
}

/// A step on the screen, along the nearest axis of the face of the first block.
pub(crate) fn nudged(group: &Group, document: &Document, view: View, screen: DVec2) -> Option<Action> {
    let (job, layout) = (document.job(), &document.plan().layout);
    let first = group.blocks.first().and_then(|id| job.block(*id));
    let plane = first.and_then(|block| Some(layout.face(block.face)?.1.plane));
    let by = plane.map_or_else(
        || view.in_plan(layout, screen),
        |plane| plane.to_plan(view.seen().on_face(&plane, screen)) - plane.to_plan(DVec2::ZERO),
    );
    Some(Action::Edit(text::nudge_of(text::group_words(group)), moved(group, job, layout, by)?))
}

/// Removes blocks and penetrations, and switches off modules.
pub(crate) fn deleted(group: &Group, job: &Resolved) -> Option<Action> {
    let blocks = group.blocks.iter().map(|id| Edit::RemoveBlock(*id));
    let penetrations = group.penetrations.iter().map(|id| Edit::RemovePenetration(*id));
    let edits: Vec<Edit> = blocks.chain(penetrations).chain(switches(group, job, false)).collect();
    let label = text::delete_of(text::group_words(group));
    (!edits.is_empty()).then_some(Action::EditAndSelect(label, Edit::Several(edits), Selection::Nothing))
}

/// Switches all modules of it on or off: individually selected ones, and those of selected blocks.
pub(crate) fn switched(group: &Group, job: &Resolved, on: bool) -> Option<Action> {
    let whole = group.blocks.iter().filter_map(|id| {
        let mut block = job.block(*id)?.clone();
        block.off = if on { BTreeSet::new() } else { all_cells(&block) };
        Some(Edit::PutBlock(block))
    });
    let edits: Vec<Edit> = whole.chain(switches(group, job, on)).collect();
    (!edits.is_empty()).then(|| Action::Edit(text::switch_of(text::group_words(group)), Edit::Several(edits)))
}

/// Edits that switch the individually selected modules on or off.
fn switches(group: &Group, job: &Resolved, on: bool) -> Vec<Edit> {
    let blocks: BTreeSet<BlockId> = group.modules.iter().map(|(block, _)| *block).collect();
    let switched = blocks.into_iter().filter_map(|id| {
        let mut block = job.block(id)?.clone();
        let cells = group.modules.iter().filter(|(of, _)| *of == id).map(|(_, cell)| *cell);
        for cell in cells {
            if on {
                block.off.remove(&cell)
            } else {
                block.off.insert(cell)
            };
        }
        let none_left = block.off.len() as u64 >= u64::from(block.rows) * u64::from(block.columns);
        Some(if none_left { Edit::RemoveBlock(id) } else { Edit::PutBlock(block) })
    });
    switched.collect()
}

fn all_cells(block: &chalkcourse_job::Block) -> BTreeSet<Cell> {
    (0..block.rows).flat_map(|row| (0..block.columns).map(move |column| Cell { row, column })).collect()
}
