//! What a person asks of a block by name, as steps to take; or words on why it can't be.

use crate::action::Action;
use crate::{Document, Selection, text};
use chalkcourse_job::{Block, BlockId, Edit, FaceId};
use chalkcourse_plan::{Align, Cut, align, copy_to_face, join, make_room, mirror, split};

/// Moves a block the least that clears its findings.
pub(crate) fn make_room_for(document: &Document, id: BlockId) -> Action {
    step(document, id, make_room(document.job(), id), Selection::Block(id), text::room_for, text::NO_ROOM)
}

/// Puts a mirror image on the slope beyond the ridge.
pub(crate) fn mirrored(document: &Document, id: BlockId) -> Action {
    step(document, id, mirror(document.job(), id), new(document), text::mirror_of, text::NO_OTHER_SLOPE)
}

/// Puts a copy on another face.
pub(crate) fn copied(document: &Document, id: BlockId, face: FaceId) -> Action {
    let edit = copy_to_face(document.job(), id, face);
    step(document, id, edit, new(document), text::copy_of, text::NO_COPY)
}

/// Cuts a block in two.
pub(crate) fn cut(document: &Document, id: BlockId, cut: Cut) -> Action {
    step(document, id, split(document.job(), id, cut), Selection::Block(id), text::split_of, text::NO_SPLIT)
}

/// Makes one block of two.
pub(crate) fn joined(document: &Document, id: BlockId, with: BlockId) -> Action {
    step(document, id, join(document.job(), id, with), Selection::Block(id), text::join_of, text::NOT_FLUSH)
}

/// The blocks that a block can be joined with.
pub(crate) fn joinable(document: &Document, id: BlockId) -> Vec<&Block> {
    let job = document.job();
    job.blocks.iter().filter(|other| join(job, id, other.id).is_some()).collect()
}

/// Brings a block in line with another one.
pub(crate) fn aligned(document: &Document, id: BlockId, with: BlockId, to: Align) -> Action {
    let edit = align(document.job(), id, with, to);
    step(document, id, edit, Selection::Block(id), text::align_of, text::NOT_ALIGNED)
}

/// Whether a finding that no one accepted speaks of a block.
pub(crate) fn is_in_trouble(document: &Document, id: BlockId) -> bool {
    let named = format!("block-{id}");
    let speaks = |key: &str| key.split('/').any(|part| part == named);
    let mut findings = document.plan().findings.iter().filter(|f| f.waived.is_none());
    findings.any(|f| f.place.block == Some(id) || speaks(&f.key))
}

/// The block that comes next into the job.
fn new(document: &Document) -> Selection {
    Selection::Block(BlockId(document.job().next_id))
}

fn step(
    document: &Document,
    id: BlockId,
    edit: Option<Edit>,
    then: Selection,
    label: fn(&str) -> String,
    sorry: &str,
) -> Action {
    let name = document.job().block(id).map(|block| text::block_name(&block.name));
    match (name, edit) {
        (Some(name), Some(edit)) => Action::EditAndSelect(label(&name), edit, then),
        _ => Action::Say(sorry.to_owned()),
    }
}
