//! Short forms of edits to penetrations.

use super::{Fields, ObjectRef, Point, StepErrorKind, find};
use crate::{Edit, Penetration, PenetrationId, PenetrationKind, Resolved, Shape, first_free};
use chalkcourse_geometry::Length;
use chalkcourse_words::sentence;
use schemars::JsonSchema;
use serde::Deserialize;

/// Adds a penetration.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddPenetration {
    /// Its name; by default the word for its kind.
    #[serde(default)]
    name: Option<String>,
    /// Its kind.
    kind: PenetrationKind,
    /// The face on which it is measured; by default it is measured in plan.
    #[serde(default)]
    face: Option<ObjectRef>,
    /// Its centre: on a face from its left end along the eave and from its lowest point up the slope; in plan x east, y
    /// north.
    at: Point,
    /// Its size on the deck; by default the usual one for its kind.
    #[serde(default)]
    size: Option<Size>,
    /// How far modules keep off, if different from the rule book's clearance.
    #[serde(default)]
    clearance: Option<Length>,
}

/// Size of a penetration on the deck.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
#[schemars(rename = "PenetrationSize")]
enum Size {
    /// Round, with this diameter.
    Round(Length),
    /// Aligned with the eave: length along it, and up the slope.
    Square(Point),
    /// Any shape.
    Shape(Shape),
}

impl AddPenetration {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let taken = |name: &str| job.penetrations.iter().any(|there| there.name == name);
        let name = self.name.clone().unwrap_or_else(|| first_free(&sentence(self.kind.name().now()), taken));
        let at = match &self.face {
            None => self.at.0,
            Some(face) => {
                let face = find::face(job, face)?;
                face.plane().to_plan(find::lower_left(face) + self.at.0)
            }
        };
        let shape = match &self.size {
            None => self.kind.usual_shape(),
            Some(Size::Round(diameter)) => Shape::Circle { diameter: *diameter },
            Some(Size::Square(Point(size))) => {
                Shape::Rectangle { along: Length::from_metres(size.x), up: Length::from_metres(size.y) }
            }
            Some(Size::Shape(shape)) => shape.clone(),
        };
        let id = PenetrationId(job.next_id);
        Ok(Edit::PutPenetration(Penetration {
            id,
            name,
            kind: self.kind,
            at,
            shape,
            clearance: self.clearance,
        }))
    }
}

/// Changes fields of a penetration.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct ChangePenetration {
    /// The penetration.
    penetration: ObjectRef,
    #[serde(flatten)]
    fields: Fields<Penetration>,
}

impl ChangePenetration {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        Ok(Edit::PutPenetration(self.fields.over(find::penetration(job, &self.penetration)?)?))
    }
}

/// Moves a penetration.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct MovePenetration {
    /// The penetration.
    penetration: ObjectRef,
    /// The face on which the move is measured; by default it is measured in plan.
    #[serde(default)]
    face: Option<ObjectRef>,
    /// The new position of its centre: on a face from its left end and its lowest point, or
    #[serde(default)]
    to: Option<Point>,
    /// the displacement: on a face along the eave and up the slope, in plan x east and y north.
    #[serde(default)]
    by: Option<Point>,
}

impl MovePenetration {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let there = find::penetration(job, &self.penetration)?;
        let at = match &self.face {
            None => find::moved(there.at, self.to, self.by)?,
            Some(face) => {
                let face = find::face(job, face)?;
                let (plane, from) = (face.plane(), find::lower_left(face));
                plane.to_plan(find::moved(plane.to_frame(there.at) - from, self.to, self.by)? + from)
            }
        };
        Ok(Edit::PutPenetration(Penetration { at, ..there.clone() }))
    }
}
