use super::{Courses, Face, Overrule};
use crate::{FaceId, FromPart, TapedDeck};
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, Sides};
use chalkcourse_words::tell;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A face as a job file has it: for one of a part only what a person decided.
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

impl TryFrom<FaceInFile> for Face {
    type Error = String;

    fn try_from(file: FaceInFile) -> Result<Self, String> {
        let (face, overruled) = file.split()?;
        Ok(Self { overruled, ..face })
    }
}

impl<O> FaceInFile<O> {
    /// The face without overruled kinds, and those as the file names them.
    ///
    /// # Errors
    /// What a drawn face lacks, in words.
    pub(crate) fn split(self) -> Result<(Face, Vec<O>), String> {
        let Self {
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
        } = self;
        let (outline, pitch, downslope, height) = match from {
            None => {
                let missing = |field: &str| {
                    tell!(
                        "missing field `{field}` in face {id}, which is a drawn one: it comes from no part",
                        "falta el campo `{field}` en el faldón {id}, que es dibujado: no viene de ninguna parte"
                    )
                };
                (
                    outline.ok_or_else(|| missing("outline"))?,
                    pitch.ok_or_else(|| missing("pitch"))?,
                    downslope.ok_or_else(|| missing("downslope"))?,
                    height.ok_or_else(|| missing("height"))?,
                )
            }
            // What follows from the part is worked out when all of the job is read.
            Some(_) => (Polygon::default(), Pitch::FLAT, Azimuth::NORTH, Length::ZERO),
        };
        let face = Face {
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
            overruled: Vec::new(),
            kinds: Vec::new(),
        };
        Ok((face, overruled))
    }
}

impl From<Face> for FaceInFile {
    fn from(face: Face) -> Self {
        let drawn = face.from.is_none();
        Self {
            id: face.id,
            name: face.name,
            from: face.from,
            outline: drawn.then_some(face.outline),
            sides: face.sides,
            pitch: drawn.then_some(face.pitch),
            downslope: drawn.then_some(face.downslope),
            datum: face.datum,
            height: drawn.then_some(face.height),
            courses: face.courses,
            taped: face.taped,
            overruled: face.overruled,
        }
    }
}
