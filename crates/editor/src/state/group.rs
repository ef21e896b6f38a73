use chalkcourse_job::{BlockId, Cell, PenetrationId, Resolved};
use std::collections::BTreeSet;

/// A multiple selection. Empty if a single object or nothing is selected.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Group {
    pub(crate) blocks: BTreeSet<BlockId>,
    pub(crate) penetrations: BTreeSet<PenetrationId>,
    /// Modules of blocks that are not selected as a whole.
    pub(crate) modules: BTreeSet<(BlockId, Cell)>,
}

impl Group {
    pub(crate) fn is_empty(&self) -> bool {
        self.blocks.is_empty() && self.penetrations.is_empty() && self.modules.is_empty()
    }

    /// Everything that can be moved or deleted by itself.
    pub(crate) fn all(job: &Resolved) -> Self {
        Self {
            blocks: job.blocks.iter().map(|block| block.id).collect(),
            penetrations: job.penetrations.iter().map(|penetration| penetration.id).collect(),
            modules: BTreeSet::new(),
        }
    }

    pub(crate) fn with(mut self, other: Self) -> Self {
        self.blocks.extend(other.blocks);
        self.penetrations.extend(other.penetrations);
        self.modules.extend(other.modules);
        let blocks = &self.blocks;
        self.modules.retain(|(block, _)| !blocks.contains(block));
        self
    }

    /// Drops what the job no longer has.
    pub(crate) fn still_there(&mut self, job: &Resolved) {
        self.blocks.retain(|id| job.block(*id).is_some());
        self.penetrations.retain(|id| job.penetration(*id).is_some());
        self.modules.retain(|(id, cell)| {
            job.block(*id).is_some_and(|block| cell.row < block.rows && cell.column < block.columns)
        });
    }

    /// Whether any module of it is switched off.
    pub(crate) fn has_off(&self, job: &Resolved) -> bool {
        let off = |id: &BlockId| job.block(*id).is_some_and(|block| !block.off.is_empty());
        self.blocks.iter().any(off)
            || self.modules.iter().any(|(id, cell)| job.block(*id).is_some_and(|b| b.off.contains(cell)))
    }
}
