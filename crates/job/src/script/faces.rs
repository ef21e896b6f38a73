//! Short forms of edits to faces.

use super::{Fields, ObjectRef, Point, Spot, StepErrorKind, find};
use crate::{Edit, Face, FaceId, Resolved, first_free};
use chalkcourse_geometry::raise::SideRef;
use chalkcourse_geometry::{Azimuth, EdgeKind, Length, Pitch};
use chalkcourse_words::later as words;
use schemars::JsonSchema;
use serde::Deserialize;

/// Adds a drawn face. Its datum is its lowest corner, and among several the leftmost one when looking up the slope.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddFace {
    /// Its name; "Face" by default.
    #[serde(default)]
    name: Option<String>,
    /// Its outline in plan.
    corners: Vec<Point>,
    /// Rise over run.
    pitch: Pitch,
    /// The direction of water runoff, degrees clockwise from north.
    downslope: Azimuth,
    /// Height of the lowest corner.
    height: Length,
}

impl AddFace {
    pub(super) fn edit(&self, job: &Resolved) -> Edit {
        let taken = |name: &str| job.faces.iter().chain(&job.resting).any(|face| face.name == name);
        let name = self.name.clone().unwrap_or_else(|| first_free(words::common::FACE.now(), taken));
        let (id, outline) = (FaceId(job.next_id), find::outline(&self.corners));
        Edit::PutFace(Face::new(id, name, outline, self.pitch, self.downslope, self.height))
    }
}

/// Changes fields of a face. For a part's face only: name, datum, courses, taped measurements and overruled edges.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct ChangeFace {
    /// The face.
    face: ObjectRef,
    #[serde(flatten)]
    fields: Fields<Face>,
}

impl ChangeFace {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        Ok(Edit::PutFace(self.fields.over(find::face(job, &self.face)?)?))
    }
}

/// Sets the kind of an edge of a face, or lets it be determined automatically again.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct OverruleSide {
    /// The face.
    face: ObjectRef,
    /// The side.
    side: Spot,
    /// Its kind; left out to determine it automatically.
    #[serde(default)]
    kind: Option<EdgeKind>,
}

impl OverruleSide {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let face = find::face(job, &self.face)?;
        let SideRef { ring, side } = self.side.0;
        let side = face.sides.at(ring, side);
        let side = side.ok_or_else(|| find::no_spot("side", self.side, &face.outline))?;
        Ok(Edit::PutFace(face.with_side_overruled(side, self.kind)))
    }
}
