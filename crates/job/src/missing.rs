//! What a key names and a job does not have.

use crate::{BlockId, BoxId, CircuitId, FaceId, FindingKey, PartId, PenetrationId, Resolved, Subject};
use chalkcourse_geometry::SideId;

/// Why a key names nothing in a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// There is no such part of the house.
    Part(PartId),
    /// No such face.
    Face(FaceId),
    /// The face has no such side.
    Side(FaceId, SideId),
    /// No such penetration.
    Penetration(PenetrationId),
    /// No such block.
    Block(BlockId),
    /// No such circuit.
    Circuit(CircuitId),
    /// No such junction box.
    Box(BoxId),
    /// The key can't be read.
    Unread,
}

impl FindingKey {
    /// What the job lacks of the things that the key names; `None` where all are there.
    pub fn missing(&self, job: &Resolved) -> Option<Missing> {
        let part = |id| job.part(id).is_none().then_some(Missing::Part(id));
        let on = |id| job.face(id).or_else(|| job.resting.iter().find(|face| face.id == id));
        let face = |id| on(id).is_none().then_some(Missing::Face(id));
        let side = |id: FaceId, side: SideId| {
            let there = on(id).is_some_and(|face| face.has_side(side));
            face(id).or_else(|| (!there).then_some(Missing::Side(id, side)))
        };
        let penetration = |id| job.penetration(id).is_none().then_some(Missing::Penetration(id));
        let block = |id| job.block(id).is_none().then_some(Missing::Block(id));
        match &self.subject {
            Subject::Whole | Subject::Matter(_) => None,
            Subject::Part(id, _) => part(*id),
            Subject::Face(id) | Subject::Outline(id, _) => face(*id),
            Subject::HoleOutline(id, hole, _) => side(*id, *hole),
            Subject::Faces(one, two) => face(*one).or_else(|| face(*two)),
            Subject::Penetration(id) => penetration(*id),
            Subject::Block(id) | Subject::Row(id, _) => block(*id),
            Subject::Blocks(one, two) => block(*one).or_else(|| block(*two)),
            Subject::OnFace(id, on) | Subject::OfBlock(id, on, _) => block(*id).or_else(|| face(*on)),
            Subject::Side(id, on, there, _) | Subject::Hole(id, on, there, _) => {
                block(*id).or_else(|| side(*on, *there))
            }
            Subject::Through(id, through) | Subject::BesideOf(id, through, _) => {
                block(*id).or_else(|| penetration(*through))
            }
            Subject::Circuit(id) | Subject::OfCircuit(id, _) => {
                job.circuit(*id).is_none().then_some(Missing::Circuit(*id))
            }
            Subject::Box(id) => job.junction_box(*id).is_none().then_some(Missing::Box(*id)),
            Subject::Waiver(key) => key.missing(job),
            Subject::Unread(_) => Some(Missing::Unread),
        }
    }
}
