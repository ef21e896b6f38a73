//! Pathways: what one is, what opens one, and which planes it may cross. The search for them is in `fire/`.

use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, RoofFace};
use chalkcourse_job::{BlockId, Cell};
use std::collections::{BTreeMap, BTreeSet};

/// A pathway that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Pathway {
    /// Indices of its planes: one, or two adjacent ones.
    pub faces: Vec<usize>,
    /// Its width in plan, metres.
    pub width: f64,
    /// For a straight one, its four corners in plan; for a winding one, the region in which its centre may move.
    pub outline: Vec<DVec2>,
    /// Whether it runs straight up the slope.
    pub straight: bool,
}

/// Modules assumed removed.
pub(crate) type RemovedModules = BTreeSet<(BlockId, Cell)>;

/// Modules to remove to open a pathway, and where it then runs.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Opening {
    pub(crate) away: RemovedModules,
    /// Its planes.
    pub(crate) faces: Vec<usize>,
    /// Its outline in plan.
    pub(crate) strip: Vec<DVec2>,
}

impl Opening {
    /// The modules of each block.
    pub(crate) fn by_blocks(&self) -> Vec<(BlockId, Vec<Cell>)> {
        let mut blocks: BTreeMap<BlockId, Vec<Cell>> = BTreeMap::new();
        for (block, cell) in &self.away {
            blocks.entry(*block).or_default().push(*cell);
        }
        blocks.into_iter().collect()
    }
}

/// The planes adjacent to one, over a hip, a valley or a change of pitch. Not over the ridge: someone on the far side is not
/// beside the array.
pub(crate) fn beside(face: &RoofFace) -> impl Iterator<Item = usize> {
    let others: BTreeSet<usize> = face
        .edges
        .iter()
        .filter(|span| passable(span))
        .filter_map(|span| span.neighbour.map(|n| n.face))
        .collect();
    others.into_iter()
}

pub(crate) fn passable(span: &EdgeSpan) -> bool {
    matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley | EdgeKind::PitchChange)
}
