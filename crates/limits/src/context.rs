use crate::share::{Share, array_share};
use chalkcourse_geometry::{Convex, EdgeSpan};
use chalkcourse_job::{BlockId, Resolved};
use chalkcourse_layout::Layout;

/// What keep-outs depend on beyond the face itself.
#[derive(Clone, Debug, PartialEq)]
pub struct KeepOutContext {
    /// How much of the roof the array covers.
    pub share: Share,
    /// For each face, by index, whether it has modules or is to get some.
    pub covered: Vec<bool>,
    /// Blocks that stay in place.
    pub standing: Vec<BlockId>,
    /// Regions of the face reserved as a pathway.
    pub kept: Vec<Convex>,
}

impl KeepOutContext {
    /// For a job as laid out, with all its blocks in place.
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

    /// Whether the face beyond a border span has modules, or is to get some.
    pub fn covered_beyond(&self, span: &EdgeSpan) -> bool {
        span.neighbour.is_some_and(|beyond| self.covered.get(beyond.face).is_some_and(|&covered| covered))
    }

    /// With modules on every face.
    pub fn all_covered(self) -> Self {
        Self { covered: vec![true; self.covered.len()], ..self }
    }
}
