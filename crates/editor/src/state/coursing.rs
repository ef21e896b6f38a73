//! The courses of a face together with a block.

use super::{Document, Selection};
use chalkcourse_geometry::Rect;
use chalkcourse_geometry::coursing::{Coursing, Span};
use chalkcourse_job::{BlockId, FaceId};
use chalkcourse_plan::block_span;

/// The face to show courses of: that of the selection, or the previous one, or the first with a block.
pub(crate) fn face_spoken_of(document: &Document, held: Selection, before: Option<FaceId>) -> Option<FaceId> {
    let job = document.job();
    held.face(job)
        .or_else(|| before.filter(|id| job.face(*id).is_some()))
        .or_else(|| job.blocks.first().map(|block| block.face))
        .or_else(|| job.faces.first().map(|face| face.id))
}

/// The block to show on the courses of a face: the selected one, or the previous one, or the first.
pub(crate) fn block_spoken_of(
    document: &Document,
    held: Selection,
    before: Option<BlockId>,
    face: FaceId,
) -> Option<BlockId> {
    let on_face = |id: &BlockId| document.job().block(*id).is_some_and(|block| block.face == face);
    let first = || document.job().blocks.iter().find(|block| block.face == face).map(|block| block.id);
    held.block().filter(on_face).or_else(|| before.filter(on_face)).or_else(first)
}

/// A block among the courses of its face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct BlockAmongCourses {
    /// The courses of the face.
    pub(crate) courses: Coursing,
    /// Its extent along the slope.
    pub(crate) span: Span,
    /// Bounds of its modules, in the face's frame.
    pub(crate) bounds: Rect,
}

/// The block among the courses of its face; `None` without modules or a sound face.
pub(crate) fn among(document: &Document, block: BlockId) -> Option<BlockAmongCourses> {
    let layout = &document.plan().layout;
    let placed = layout.block(block)?;
    let bounds = placed.bounds?;
    layout.roof.faces.get(placed.face).filter(|face| face.sound)?;
    let lines = layout.faces.get(placed.face)?.courses;
    let span = block_span(document.job(), placed)?;
    let courses = Coursing { eave: lines.eave, top: lines.top, first: lines.first, exposure: lines.exposure };
    Some(BlockAmongCourses { courses, span, bounds })
}
