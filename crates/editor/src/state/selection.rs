use chalkcourse_job::{BlockId, BoxId, Cell, CircuitId, FaceId, PartId, PenetrationId, Resolved};

/// What of a part of the house is selected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PartPlace {
    /// The whole part.
    Whole,
    /// A side of its footprint.
    Side {
        /// 0 for the outline, n for the n-th courtyard.
        ring: usize,
        /// The corner that it starts from.
        side: usize,
    },
    /// A corner of its footprint.
    Corner {
        /// 0 for the outline, n for the n-th courtyard.
        ring: usize,
        /// Its index, from 0.
        corner: usize,
    },
}

/// The selected object.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Selection {
    /// Nothing: the job as a whole.
    #[default]
    Nothing,
    /// A face.
    Face(FaceId),
    /// A side of a face's outline.
    Side {
        /// The face.
        face: FaceId,
        /// 0 for the outline, n for the n-th hole.
        ring: usize,
        /// The corner that it starts from.
        side: usize,
    },
    /// A corner of a face's outline.
    Corner {
        /// The face.
        face: FaceId,
        /// 0 for the outline, n for the n-th hole.
        ring: usize,
        /// Its index, from 0.
        corner: usize,
    },
    /// A part of the house, or a side or corner of it.
    Part(PartId, PartPlace),
    /// A penetration.
    Penetration(PenetrationId),
    /// A block.
    Block(BlockId),
    /// A circuit.
    Circuit(CircuitId),
    /// A junction box.
    JunctionBox(BoxId),
    /// A cell of a block.
    Module {
        /// The block.
        block: BlockId,
        /// The cell.
        cell: Cell,
    },
}

impl Selection {
    /// The selected face, or the face of the selected object.
    pub fn face(self, job: &Resolved) -> Option<FaceId> {
        match self {
            Self::Face(face) | Self::Side { face, .. } | Self::Corner { face, .. } => Some(face),
            Self::Block(block) | Self::Module { block, .. } => job.block(block).map(|b| b.face),
            Self::Part(..)
            | Self::Penetration(_)
            | Self::Circuit(_)
            | Self::JunctionBox(_)
            | Self::Nothing => None,
        }
    }

    /// The selected block, or the block of the selected module.
    pub fn block(self) -> Option<BlockId> {
        match self {
            Self::Block(block) | Self::Module { block, .. } => Some(block),
            _ => None,
        }
    }

    /// The same if the job still has it; otherwise what is closest to it.
    pub(crate) fn still_there(self, job: &Resolved) -> Self {
        let corners = |face: FaceId, ring: usize| {
            job.face(face).and_then(|f| f.outline.rings().nth(ring)).map_or(0, <[_]>::len)
        };
        match self {
            Self::Face(face) if job.face(face).is_none() => Self::Nothing,
            Self::Side { face, ring, side: at } | Self::Corner { face, ring, corner: at }
                if at >= corners(face, ring) =>
            {
                Self::Face(face).still_there(job)
            }
            Self::Part(id, place) => match (job.part(id), place) {
                (None, _) => Self::Nothing,
                (Some(part), PartPlace::Side { ring, side: at } | PartPlace::Corner { ring, corner: at })
                    if part.outline.rings().nth(ring).is_none_or(|corners| at >= corners.len()) =>
                {
                    Self::Part(id, PartPlace::Whole)
                }
                _ => self,
            },
            Self::Penetration(id) if job.penetration(id).is_none() => Self::Nothing,
            Self::Block(id) if job.block(id).is_none() => Self::Nothing,
            Self::Circuit(id) if job.circuit(id).is_none() => Self::Nothing,
            Self::JunctionBox(id) if job.junction_box(id).is_none() => Self::Nothing,
            Self::Module { block, cell } => match job.block(block) {
                None => Self::Nothing,
                Some(b) if cell.row >= b.rows || cell.column >= b.columns => Self::Block(block),
                Some(_) => self,
            },
            _ => self,
        }
    }
}
