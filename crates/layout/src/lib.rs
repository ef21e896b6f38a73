//! Layout: the snapshot of everything in place that rules and takeoff read, computed from a job.
//!
//! - [`Layout`]: the assembled roof, and courses, penetrations and blocks in each face's frame
//! - [`known`]: building dimensions, as entered or as drawn
//! - [`PlacedBlock`]: modules, and the runs, seams and corners where flashing, rail and supports go
//!
//! Pure and total: a half-drawn roof gives a partial layout. Nothing here judges or counts packages.

mod block;
mod courses;
pub mod known;
mod memo;
mod penetration;
#[cfg(test)]
mod testing;

pub use block::{Corner, CornerKind, PlacedBlock, PlacedModule, Run, RunKind, Seam};
pub use courses::{CourseLines, courses_of};
pub use memo::Memo;
pub use penetration::{EdgeOverlap, OnFace, PlacedPenetration, outline_on_deck, reaches_over};

use chalkcourse_geometry::{Roof, RoofFace, Tolerances};
use chalkcourse_job::{BlockId, FaceId, PenetrationId, Resolved};
use std::sync::Arc;

/// Everything of a job in place. Faces, penetrations and blocks are in the order of the job.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    /// The roof; its faces are in the order of [`Layout::faces`].
    pub roof: Arc<Roof>,
    /// Data of each face other than its geometry.
    pub faces: Vec<PlacedFace>,
    /// Penetrations.
    pub penetrations: Vec<Arc<PlacedPenetration>>,
    /// Blocks. Those on an unsound face are included with their modules all the same.
    pub blocks: Vec<Arc<PlacedBlock>>,
}

/// A face with its id and courses.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedFace {
    /// Its id in the job.
    pub id: FaceId,
    /// Its name.
    pub name: String,
    /// Its course lines.
    pub courses: CourseLines,
}

impl Layout {
    /// Assembles a job's roof and everything on it.
    pub fn of(job: &Resolved) -> Self {
        Self::on_roof(job, Arc::new(assemble(job)))
    }

    /// The same on a roof already assembled from the same faces.
    pub fn on_roof(job: &Resolved, roof: Arc<Roof>) -> Self {
        Self::on_roof_with(job, roof, &mut Memo::default())
    }

    /// The same layout, reusing what has not changed since the last one.
    pub fn on_roof_with(job: &Resolved, roof: Arc<Roof>, memo: &mut Memo) -> Self {
        let faces = job
            .faces
            .iter()
            .zip(&roof.faces)
            .map(|(face, on_roof)| PlacedFace {
                id: face.id,
                name: face.name.clone(),
                courses: courses_of(face.courses, on_roof),
            })
            .collect();
        let (penetrations, blocks) = memo.placed(job, &roof);
        Self { roof, faces, penetrations, blocks }
    }

    /// The face with an id, and its index.
    pub fn face(&self, id: FaceId) -> Option<(usize, &RoofFace)> {
        let index = self.faces.iter().position(|face| face.id == id)?;
        Some((index, self.roof.faces.get(index)?))
    }

    /// The block with an id.
    pub fn block(&self, id: BlockId) -> Option<&PlacedBlock> {
        self.blocks.iter().find(|block| block.id == id).map(Arc::as_ref)
    }

    /// The penetration with an id.
    pub fn penetration(&self, id: PenetrationId) -> Option<&PlacedPenetration> {
        self.penetrations.iter().find(|penetration| penetration.id == id).map(Arc::as_ref)
    }
}

/// Assembles the roof of a job with the default tolerances.
pub fn assemble(job: &Resolved) -> Roof {
    let inputs: Vec<_> = job.faces.iter().map(chalkcourse_job::Face::input).collect();
    Roof::assemble(&inputs, Tolerances::default())
}
