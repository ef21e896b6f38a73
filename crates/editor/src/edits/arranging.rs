//! Commands on blocks, as actions; or a message on why it can't be done.

use crate::action::Action;
use crate::{Document, Selection, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Block, BlockId, Edit, Face, FaceId, FindingKey, Resolved, Subject};
use chalkcourse_plan::{Align, Cut, Seen, Spread, align, copy_to_face, distribute, join, mirror, split};
use chalkcourse_words::Said;

/// Puts a mirror image on the slope across the ridge.
pub(crate) fn mirrored(document: &Document, id: BlockId) -> Action {
    step(
        document,
        id,
        mirror(document.job(), id),
        new(document),
        |name| text::mirror_of(name),
        text::NO_OTHER_SLOPE.now(),
    )
}

/// Puts a copy on another face.
pub(crate) fn copied(document: &Document, id: BlockId, face: FaceId) -> Action {
    let edit = copy_to_face(document.job(), id, face);
    step(document, id, edit, new(document), |name| text::copy_of(name), text::NO_COPY.now())
}

/// Splits a block in two.
pub(crate) fn cut(document: &Document, id: BlockId, cut: Cut) -> Action {
    step(
        document,
        id,
        split(document.job(), id, cut),
        Selection::Block(id),
        |name| text::split_of(name),
        text::NO_SPLIT.now(),
    )
}

/// Splits a block beside the selected module: to its right, or above it at the end of its row. Without one, in half.
pub(crate) fn cut_at(document: &Document, held: Selection, id: BlockId) -> Action {
    let Some(block) = document.job().block(id) else {
        return Action::Say(text::SELECT_A_BLOCK.now().to_owned());
    };
    let at = match held {
        Selection::Module { cell, .. } if cell.column + 1 < block.columns => {
            Cut::RightOfColumns(cell.column + 1)
        }
        Selection::Module { cell, .. } => Cut::AboveRows(cell.row + 1),
        _ if block.columns > 1 => Cut::RightOfColumns(block.columns / 2),
        _ => Cut::AboveRows(block.rows / 2),
    };
    cut(document, id, at)
}

/// Joins two blocks.
pub(crate) fn joined(document: &Document, id: BlockId, with: BlockId) -> Action {
    step(
        document,
        id,
        join(document.job(), id, with),
        Selection::Block(id),
        |name| text::join_of(name),
        text::NOT_FLUSH.now(),
    )
}

/// Joins a block with the nearest one that it can be joined with.
pub(crate) fn joined_with_nearest(document: &Document, id: BlockId) -> Action {
    let with = joinable(document, id);
    match nearest(document, id, |other| with.iter().any(|block| block.id == other)) {
        Some(other) => joined(document, id, other),
        None => Action::Say(text::NOT_FLUSH.now().to_owned()),
    }
}

/// The block on the same face with the nearest centre.
fn nearest(document: &Document, id: BlockId, may: impl Fn(BlockId) -> bool) -> Option<BlockId> {
    let layout = &document.plan().layout;
    let here = layout.block(id)?;
    let middle = here.bounds?.centre();
    let others = layout.blocks.iter().filter(|other| other.id != id && other.face == here.face);
    others
        .filter(|other| may(other.id))
        .filter_map(|other| Some((other.id, other.bounds?.centre().distance(middle))))
        .min_by(|(_, a), (_, b)| a.total_cmp(b))
        .map(|(other, _)| other)
}

/// The blocks that a block can be joined with.
pub(crate) fn joinable(document: &Document, id: BlockId) -> Vec<&Block> {
    let job = document.job();
    job.blocks.iter().filter(|other| join(job, id, other.id).is_some()).collect()
}

/// The end of a block that the user sees on the left or right; if the face slopes sideways on the screen, or for base
/// rails, that of the face.
fn seen_end(job: &Resolved, id: BlockId, to: Align, seen: Seen) -> Align {
    let toward = match to {
        Align::Left => DVec2::NEG_X,
        Align::Right => DVec2::X,
        Align::Bottom => return to,
    };
    let plane = job.block(id).and_then(|block| job.face(block.face)).map(Face::plane);
    match plane.map_or(0.0, |plane| seen.on_face(&plane, toward).x) {
        along if along < 0.0 => Align::Left,
        along if along > 0.0 => Align::Right,
        _ => to,
    }
}

/// Aligns a block with another one.
pub(crate) fn aligned(document: &Document, id: BlockId, with: BlockId, to: Align, seen: Seen) -> Action {
    let to = seen_end(document.job(), id, to, seen);
    let edit = align(document.job(), id, with, to);
    step(document, id, edit, Selection::Block(id), |name| text::align_of(name), text::NOT_ALIGNED.now())
}

/// Aligns a block with the nearest one on its face.
pub(crate) fn aligned_with_nearest(document: &Document, id: BlockId, to: Align, seen: Seen) -> Action {
    match nearest(document, id, |_| true) {
        Some(other) => aligned(document, id, other, to, seen),
        None => Action::Say(text::NOT_ALIGNED.now().to_owned()),
    }
}

/// Distributes the blocks on the face of a block, with equal gaps.
pub(crate) fn spread(document: &Document, id: BlockId, way: Spread) -> Action {
    let job = document.job();
    let Some(block) = job.block(id) else { return Action::Say(text::SELECT_A_BLOCK.now().to_owned()) };
    let on_face: Vec<BlockId> =
        job.blocks.iter().filter(|other| other.face == block.face).map(|other| other.id).collect();
    match distribute(job, &on_face, way) {
        Some(edit) => {
            let name = job.face(block.face).map_or("", |face| face.name.as_str());
            Action::EditAndSelect(text::spread_of(name), edit, Selection::Block(id))
        }
        None => Action::Say(text::NOT_SPREAD.now().to_owned()),
    }
}

/// Whether an open finding is about a block.
pub(crate) fn is_in_trouble(document: &Document, id: BlockId) -> bool {
    let speaks = |key: &FindingKey| match &key.subject {
        Subject::Blocks(one, two) => *one == id || *two == id,
        _ => false,
    };
    let mut findings = document.plan().findings.iter().filter(|f| f.waived.is_none());
    findings.any(|f| f.place.block == Some(id) || speaks(&f.key))
}

/// The next block added to the job.
fn new(document: &Document) -> Selection {
    Selection::Block(BlockId(document.job().next_id))
}

fn step(
    document: &Document,
    id: BlockId,
    edit: Option<Edit>,
    then: Selection,
    label: impl FnOnce(&Said) -> Said,
    sorry: &str,
) -> Action {
    let name = document.job().block(id).map(|block| text::block_heading(&block.name));
    match (name, edit) {
        (Some(name), Some(edit)) => Action::EditAndSelect(label(&name), edit, then),
        _ => Action::Say(sorry.to_owned()),
    }
}
