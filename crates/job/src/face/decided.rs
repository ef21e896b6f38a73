use super::{Courses, Face, Overrule};
use crate::{FaceId, FromPart, SideBorders, TapedDeck};
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, Sides};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What the user decided about a face, and the ids of it and its sides.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "FaceInFile", into = "FaceInFile")]
#[schemars(rename = "Face")]
pub struct DecidedFace {
    /// Its id in the job.
    pub id: FaceId,
    /// Display name.
    pub name: String,
    /// Its geometry.
    pub ground: Ground,
    /// Ids of its sides; empty for a drawn face written without ids.
    pub sides: Sides,
    /// What the sides of a part's face border, or bordered when they were last visible.
    pub borders: Vec<SideBorders>,
    /// The origin of the face's frame in plan.
    pub datum: DVec2,
    /// The courses of its shingles.
    pub courses: Courses,
    /// Tape measurements of its deck.
    pub taped: TapedDeck,
    /// Edge kinds set by the user.
    pub overruled: Vec<Overrule>,
}

/// The geometry of a face as decided by the user.
#[derive(Clone, Debug, PartialEq)]
pub enum Ground {
    /// As it was drawn.
    Drawn {
        /// Outline and holes in plan: x east, y north, metres.
        outline: Polygon,
        /// Rise over run.
        pitch: Pitch,
        /// The direction of water runoff.
        downslope: Azimuth,
        /// Height at the datum.
        height: Length,
    },
    /// On a side of a part, from which the geometry follows.
    OfPart(FromPart),
}

impl From<DecidedFace> for Face {
    /// The face; for a part's face, without the geometry that is still to be derived.
    fn from(decided: DecidedFace) -> Self {
        let DecidedFace { id, name, ground, sides, borders, datum, courses, taped, overruled } = decided;
        let (from, outline, pitch, downslope, height) = match ground {
            Ground::Drawn { outline, pitch, downslope, height } => (None, outline, pitch, downslope, height),
            Ground::OfPart(from) => {
                (Some(from), Polygon::default(), Pitch::FLAT, Azimuth::NORTH, Length::ZERO)
            }
        };
        let kinds = Vec::new();
        Self {
            id,
            name,
            from,
            outline,
            sides,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
            kinds,
            borders,
        }
    }
}

impl From<Face> for DecidedFace {
    fn from(face: Face) -> Self {
        let Face {
            id,
            name,
            from,
            outline,
            sides,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
            kinds: _,
            borders,
        } = face;
        let drawn = || Ground::Drawn { outline, pitch, downslope, height };
        let ground = from.map_or_else(drawn, Ground::OfPart);
        Self { id, name, ground, sides, borders, datum, courses, taped, overruled }
    }
}

/// A face in a job file.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, bound(serialize = "O: Serialize", deserialize = "O: Deserialize<'de>"))]
#[schemars(rename = "Face")]
pub(crate) struct FaceInFile<O = Overrule> {
    /// Its id in the job.
    id: FaceId,
    /// Display name: "South", "Porch".
    name: String,
    /// The side of the part that it belongs to; left out for a drawn face.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    from: Option<FromPart>,
    /// Outline and holes of a drawn face in plan: x east, y north, metres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    outline: Option<Polygon>,
    /// Ids of its sides; by default numbered in the order of the outline for a drawn face.
    #[serde(default, skip_serializing_if = "Sides::is_empty")]
    sides: Sides,
    /// What the sides of a part's face border, or bordered when they were last visible.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    borders: Vec<SideBorders>,
    /// Rise over run of a drawn face.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pitch: Option<Pitch>,
    /// Direction of water runoff on a drawn face, degrees clockwise from north.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    downslope: Option<Azimuth>,
    /// The origin of the face's frame in plan: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    datum: DVec2,
    /// Height of a drawn face at its datum, above a level common to the whole job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    height: Option<Length>,
    /// The courses of its shingles.
    #[serde(default)]
    courses: Courses,
    /// Tape measurements of its deck.
    #[serde(default, skip_serializing_if = "TapedDeck::is_empty")]
    taped: TapedDeck,
    /// Edge kinds set by the user.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    overruled: Vec<O>,
}

impl TryFrom<FaceInFile> for DecidedFace {
    type Error = Said;

    fn try_from(file: FaceInFile) -> Result<Self, Said> {
        let (face, overruled) = file.split()?;
        Ok(Self { overruled, ..face })
    }
}

impl<O> FaceInFile<O> {
    /// The face without user-set edge kinds, and those in the form of the file.
    ///
    /// # Errors
    /// Names what a drawn face lacks.
    pub(crate) fn split(self) -> Result<(DecidedFace, Vec<O>), Said> {
        let Self {
            id,
            name,
            from,
            outline,
            sides,
            borders,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
        } = self;
        let missing = |field: &str| words::job::missing_field_in_face_which(&field, &id.0);
        let ground = match from {
            None => Ground::Drawn {
                outline: outline.ok_or_else(|| missing("outline"))?,
                pitch: pitch.ok_or_else(|| missing("pitch"))?,
                downslope: downslope.ok_or_else(|| missing("downslope"))?,
                height: height.ok_or_else(|| missing("height"))?,
            },
            // What follows from the part is derived, whatever the file says.
            Some(from) => Ground::OfPart(from),
        };
        let face =
            DecidedFace { id, name, ground, sides, borders, datum, courses, taped, overruled: Vec::new() };
        Ok((face, overruled))
    }
}

impl From<DecidedFace> for FaceInFile {
    fn from(face: DecidedFace) -> Self {
        let DecidedFace { id, name, ground, sides, borders, datum, courses, taped, overruled } = face;
        let (from, outline, pitch, downslope, height) = match ground {
            Ground::Drawn { outline, pitch, downslope, height } => {
                (None, Some(outline), Some(pitch), Some(downslope), Some(height))
            }
            Ground::OfPart(from) => (Some(from), None, None, None, None),
        };
        Self {
            id,
            name,
            from,
            outline,
            sides,
            borders,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
        }
    }
}
