//! Moving, adding and removing corners of parts and drawn faces.

use super::{ObjectRef, Point, Spot, StepErrorKind, find};
use crate::{Edit, Face, Resolved, RoofPart};
use chalkcourse_geometry::raise::SideRef;
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_words::later as words;
use schemars::JsonSchema;
use serde::Deserialize;

/// Moves a corner of a part or of a drawn face.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct MoveCorner {
    /// The part, or
    #[serde(default)]
    part: Option<ObjectRef>,
    /// the drawn face.
    #[serde(default)]
    face: Option<ObjectRef>,
    /// The corner.
    corner: Spot,
    /// Its new position in plan, or
    #[serde(default)]
    to: Option<Point>,
    /// the displacement.
    #[serde(default)]
    by: Option<Point>,
}

/// Adds a corner on a side of a part or of a drawn face.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddCorner {
    /// The part, or
    #[serde(default)]
    part: Option<ObjectRef>,
    /// the drawn face.
    #[serde(default)]
    face: Option<ObjectRef>,
    /// The side.
    side: Spot,
    /// Its position in plan; by default the middle of the side.
    #[serde(default)]
    at: Option<Point>,
}

/// Removes a corner of a part or of a drawn face.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct RemoveCorner {
    /// The part, or
    #[serde(default)]
    part: Option<ObjectRef>,
    /// the drawn face.
    #[serde(default)]
    face: Option<ObjectRef>,
    /// The corner.
    corner: Spot,
}

/// Something with editable corners.
enum Cornered<'a> {
    Part(&'a RoofPart),
    Face(&'a Face),
}

impl<'a> Cornered<'a> {
    fn of(
        job: &'a Resolved,
        part: Option<&ObjectRef>,
        face: Option<&ObjectRef>,
    ) -> Result<Self, StepErrorKind> {
        match (part, face) {
            (Some(part), None) => Ok(Self::Part(find::part(job, part)?)),
            (None, Some(face)) => Ok(Self::Face(find::face(job, face)?)),
            _ => Err(StepErrorKind::OneOf { one: "part", other: "face" }),
        }
    }

    fn outline(&self) -> &Polygon {
        match self {
            Self::Part(part) => &part.outline,
            Self::Face(face) => &face.outline,
        }
    }

    fn corner(&self, at: SideRef) -> Option<DVec2> {
        self.outline().rings().nth(at.ring)?.get(at.side).copied()
    }

    fn put(
        &self,
        part: impl FnOnce(&RoofPart) -> Option<RoofPart>,
        face: impl FnOnce(&Face) -> Option<Face>,
    ) -> Option<Edit> {
        match self {
            Self::Part(there) => part(there).map(Edit::PutPart),
            Self::Face(there) => face(there).map(Edit::PutFace),
        }
    }
}

impl MoveCorner {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let of = Cornered::of(job, self.part.as_ref(), self.face.as_ref())?;
        let none = || find::no_spot("corner", self.corner, of.outline());
        let SideRef { ring, side } = self.corner.0;
        let to = find::moved(of.corner(self.corner.0).ok_or_else(none)?, self.to, self.by)?;
        of.put(|part| part.with_corner_moved(ring, side, to), |face| face.with_corner_moved(ring, side, to))
            .ok_or_else(none)
    }
}

impl AddCorner {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let of = Cornered::of(job, self.part.as_ref(), self.face.as_ref())?;
        let none = || find::no_spot("side", self.side, of.outline());
        let SideRef { ring, side } = self.side.0;
        let from = of.corner(self.side.0).ok_or_else(none)?;
        let next =
            of.corner(SideRef { ring, side: side + 1 }).or_else(|| of.corner(SideRef { ring, side: 0 }));
        let at = self.at.map_or((from + next.ok_or_else(none)?) / 2.0, |at| at.0);
        of.put(|part| part.with_corner_added(ring, side, at), |face| face.with_corner_added(ring, side, at))
            .ok_or_else(none)
    }
}

impl RemoveCorner {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let of = Cornered::of(job, self.part.as_ref(), self.face.as_ref())?;
        let SideRef { ring, side } = self.corner.0;
        of.corner(self.corner.0).ok_or_else(|| find::no_spot("corner", self.corner, of.outline()))?;
        let without = of.put(|part| part.without_corner(ring, side), |face| face.without_corner(ring, side));
        without.ok_or_else(|| {
            let wrong = words::job::AN_OUTLINE_OF_THREE_CORNERS;
            StepErrorKind::field("corner", wrong)
        })
    }
}
