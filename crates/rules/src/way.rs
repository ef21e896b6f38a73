//! Ways up a roof: what a pathway is, what opens one, and which planes it may go over. The search for them is in `fire/`.

use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, RoofFace};
use chalkcourse_job::{BlockId, Cell};
use std::collections::{BTreeMap, BTreeSet};

/// A pathway that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Pathway {
    /// Indices of the planes that it runs on: one, or two side by side.
    pub faces: Vec<usize>,
    /// Its width in plan, metres.
    pub width: f64,
    /// For a straight one its four corners in plan; for one that winds, the room in which its middle may run.
    pub outline: Vec<DVec2>,
    /// Whether it runs straight up the slope.
    pub straight: bool,
}

/// Modules that are thought away.
pub(crate) type Away = BTreeSet<(BlockId, Cell)>;

/// Modules whose removal opens a pathway, and where it then runs.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Opening {
    pub(crate) away: Away,
    /// The planes that it runs on.
    pub(crate) faces: Vec<usize>,
    /// In plan.
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

/// Planes beside one, over a hip, a valley or a change of pitch. Not over the ridge: who stands on the other side of
/// it is not beside the array.
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
