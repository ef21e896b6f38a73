use crate::share::{Share, array_share};
use chalkcourse_geometry::{Convex, EdgeSpan};
use chalkcourse_job::{BlockId, Resolved};
use chalkcourse_layout::Layout;

/// What keep-outs follow from beyond the face itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// How much of the roof the array covers.
    pub share: Share,
    /// For each face, by its index, whether modules lie on it, or are to come there.
    pub covered: Vec<bool>,
    /// Blocks that stay where they are.
    pub standing: Vec<BlockId>,
    /// Room on the face that is kept free as a pathway.
    pub kept: Vec<Convex>,
}

impl Given {
    /// As a job is laid out, with all its blocks standing.
    pub fn as_laid(job: &Resolved, layout: &Layout) -> Self {
        let mut covered = vec![false; layout.roof.faces.len()];
        for block in layout.blocks.iter().filter(|block| block.bounds.is_some()) {
            if layout.roof.faces.get(block.face).is_some_and(|face| face.sound)
                && let Some(covered) = covered.get_mut(block.face)
            {
                *covered = true;
            }
        }
        Self {
            share: Share::of(job, array_share(layout)),
            covered,
            standing: layout.blocks.iter().map(|block| block.id).collect(),
            kept: Vec::new(),
        }
    }

    /// Whether modules lie, or are to come, on the face beyond a stretch of the border of another.
    pub fn covered_beyond(&self, span: &EdgeSpan) -> bool {
        span.neighbour.is_some_and(|beyond| self.covered.get(beyond.face).is_some_and(|&covered| covered))
    }

    /// With modules on every face.
    pub fn all_covered(self) -> Self {
        Self { covered: vec![true; self.covered.len()], ..self }
    }
}
