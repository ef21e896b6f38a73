//! Short forms of edits to parts of the house.

use super::{Fields, ObjectRef, Point, Spot, StepErrorKind, find};
use crate::{Edit, PartId, PartKind, PartSide, PlanMove, Resolved, RoofPart, first_free};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_words::{later as words, sentence};
use schemars::JsonSchema;
use serde::Deserialize;

/// Adds a part of the house with all sides alike.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddPart {
    /// Its name; by default the word for its kind.
    #[serde(default)]
    name: Option<String>,
    /// Its kind.
    #[serde(default)]
    kind: PartKind,
    /// Its wall lines in plan.
    corners: Vec<Point>,
    /// Height of the roof planes at the wall lines; for a chimney its top.
    eave_height: Length,
    /// The treatment of all sides; walls for a chimney.
    #[serde(default)]
    treatment: Option<Treatment>,
    /// Overhang beyond the walls, in plan.
    #[serde(default)]
    overhang: Length,
    /// For a chimney: the pitch of the two small faces upslope of it.
    #[serde(default)]
    cricket: Option<Pitch>,
}

impl AddPart {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let taken = |name: &str| job.parts.iter().any(|part| part.name == name);
        let name = self.name.clone().unwrap_or_else(|| first_free(&sentence(self.kind.name().now()), taken));
        let treatment = match (self.treatment, self.kind) {
            (Some(treatment), _) => treatment,
            (None, PartKind::Chimney) => Treatment::Wall,
            (None, _) => {
                let wrong = words::job::say_what_stands_on_its(&r#"{"slope": "6:12"}"#);
                return Err(StepErrorKind::field("treatment", wrong));
            }
        };
        let (id, outline) = (PartId(job.next_id), find::outline(&self.corners));
        let part = RoofPart::new(id, name, self.kind, outline, self.eave_height, treatment, self.overhang);
        Ok(Edit::PutPart(RoofPart { cricket: self.cricket, ..part }))
    }
}

/// Adds a courtyard to a part.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct AddCourtyard {
    /// The part.
    part: ObjectRef,
    /// Its wall lines in plan.
    corners: Vec<Point>,
}

impl AddCourtyard {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let corners = self.corners.iter().map(|corner| corner.0).collect();
        Ok(Edit::PutPart(find::part(job, &self.part)?.with_courtyard(corners)))
    }
}

/// Changes fields of a part.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct ChangePart {
    /// The part.
    part: ObjectRef,
    #[serde(flatten)]
    fields: Fields<RoofPart>,
}

impl ChangePart {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        Ok(Edit::PutPart(self.fields.over(find::part(job, &self.part)?)?))
    }
}

/// Changes fields of one side of a part, or of all its sides.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct ChangeSide {
    /// The part.
    part: ObjectRef,
    /// The side; all sides by default.
    #[serde(default)]
    side: Option<Spot>,
    #[serde(flatten)]
    fields: Fields<PartSide>,
}

impl ChangeSide {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let part = find::part(job, &self.part)?;
        if let Some(side) = self.side.filter(|side| part.side(side.0).is_none()) {
            return Err(find::no_spot("side", side, &part.outline));
        }
        let mut changed = part.clone();
        for (ring, sides) in changed.sides.iter_mut().enumerate() {
            for (side, there) in sides.iter_mut().enumerate() {
                if self.side.is_none_or(|asked| asked.0 == SideRef { ring, side }) {
                    *there = self.fields.over(there)?;
                }
            }
        }
        Ok(Edit::PutPart(changed))
    }
}

/// Moves parts without changing them, with the penetrations and blocks on them.
#[derive(Clone, Debug, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct MoveParts {
    /// The parts.
    parts: Vec<ObjectRef>,
    /// The rotation and shift.
    how: PlanMove,
}

impl MoveParts {
    pub(super) fn edit(&self, job: &Resolved) -> Result<Edit, StepErrorKind> {
        let parts = self.parts.iter().map(|which| Ok(find::part(job, which)?.id));
        Ok(Edit::MoveParts { parts: parts.collect::<Result<_, StepErrorKind>>()?, how: self.how })
    }
}
