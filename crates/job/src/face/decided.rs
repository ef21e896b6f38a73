use super::{Courses, Face, Overrule};
use crate::{FaceId, FromPart, SideBorders, TapedDeck};
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, Sides};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a person decided about a face, and by what numbers it and its sides are known.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "FaceInFile", into = "FaceInFile")]
#[schemars(rename = "Face")]
pub struct DecidedFace {
    /// Its number in the job.
    pub id: FaceId,
    /// What people call it.
    pub name: String,
    /// Where it lies.
    pub ground: Ground,
    /// The numbers of its sides; of a drawn face that was written without, none.
    pub sides: Sides,
    /// What the sides of a face of a part border, or bordered when they were last seen.
    pub borders: Vec<SideBorders>,
    /// The plan point where the face's own frame has its origin.
    pub datum: DVec2,
    /// How shingles are laid on it.
    pub courses: Courses,
    /// What a tape reads on its deck.
    pub taped: TapedDeck,
    /// Edge kinds that a person overruled.
    pub overruled: Vec<Overrule>,
}

/// Where a face lies, by a person's word.
#[derive(Clone, Debug, PartialEq)]
pub enum Ground {
    /// As it was drawn.
    Drawn {
        /// Outline and holes in plan: x east, y north, metres.
        outline: Polygon,
        /// Rise over run.
        pitch: Pitch,
        /// The way that water runs.
        downslope: Azimuth,
        /// Height at the datum.
        height: Length,
    },
    /// On a side of a part, from which all that follows.
    OfPart(FromPart),
}

impl From<DecidedFace> for Face {
    /// The face; of one of a part, without the ground that is yet to follow from the part.
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

/// A face as the fields of a job file.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, bound(serialize = "O: Serialize", deserialize = "O: Deserialize<'de>"))]
#[schemars(rename = "Face")]
pub(crate) struct FaceInFile<O = Overrule> {
    /// Its number in the job.
    id: FaceId,
    /// What people call it: "South", "Porch".
    name: String,
    /// The part's side that it comes from; left out for a drawn face.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    from: Option<FromPart>,
    /// A drawn face's outline and holes in plan: x east, y north, metres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    outline: Option<Polygon>,
    /// The numbers of its sides; of a drawn face without, in the order of the outline.
    #[serde(default, skip_serializing_if = "Sides::is_empty")]
    sides: Sides,
    /// What the sides of a face of a part border, or bordered when they were last seen.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    borders: Vec<SideBorders>,
    /// A drawn face's rise over run.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pitch: Option<Pitch>,
    /// The way that water runs on a drawn face, degrees clockwise from north.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    downslope: Option<Azimuth>,
    /// The plan point where the face's own frame has its origin: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    datum: DVec2,
    /// Height of a drawn face at its datum, above any level that is the same for the whole job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    height: Option<Length>,
    /// How shingles are laid on it.
    #[serde(default)]
    courses: Courses,
    /// What a tape reads on its deck.
    #[serde(default, skip_serializing_if = "TapedDeck::is_empty")]
    taped: TapedDeck,
    /// Edge kinds that a person overruled.
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
    /// The face without overruled kinds, and those as the file names them.
    ///
    /// # Errors
    /// What a drawn face lacks.
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
            // What follows from the part is worked out, whatever the file says.
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
