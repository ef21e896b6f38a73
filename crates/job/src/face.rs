use crate::{FaceId, FromPart, TapedDeck};
use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, FaceInput, Length, Pitch, Plane, Polygon};
use chalkcourse_words::tell;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A roof face, drawn or of a part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "FaceInFile", into = "FaceInFile")]
pub struct Face {
    /// Its number in the job.
    pub id: FaceId,
    /// What people call it: "South", "Porch".
    pub name: String,
    /// The part's side that it comes from; `None` for one that was drawn. Outline, pitch, downslope and height of a face
    /// of a part follow from the part.
    pub from: Option<FromPart>,
    /// Outline and holes in plan: x east, y north, metres.
    pub outline: Polygon,
    /// Rise over run.
    pub pitch: Pitch,
    /// The way that water runs, degrees clockwise from north.
    pub downslope: Azimuth,
    /// The plan point where the face's own frame has its origin. Blocks are placed from here, so it stays put
    /// while corners move.
    pub datum: DVec2,
    /// Height of the face at its datum, above any level that is the same for the whole job.
    pub height: Length,
    /// How shingles are laid on it.
    pub courses: Courses,
    /// What a tape reads on its deck.
    pub taped: TapedDeck,
    /// Edge kinds that a person overruled.
    pub overruled: Vec<Overrule>,
    /// Edge kinds that follow from the part, such as its walls; a person's word goes before them. Never in a file.
    pub kinds: Vec<Overrule>,
}

/// A face as a job file has it: for one of a part only what a person decided.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(rename = "Face")]
struct FaceInFile {
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
    overruled: Vec<Overrule>,
}

impl TryFrom<FaceInFile> for Face {
    type Error = String;

    fn try_from(file: FaceInFile) -> Result<Self, String> {
        let FaceInFile {
            id,
            name,
            from,
            outline,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
        } = file;
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
        let kinds = Vec::new();
        Ok(Self {
            id,
            name,
            from,
            outline,
            pitch,
            downslope,
            datum,
            height,
            courses,
            taped,
            overruled,
            kinds,
        })
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

/// A side of the outline whose kind a person decided.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Overrule {
    /// 0 for the outline, n for the n-th hole.
    pub ring: usize,
    /// The corner that the side starts from, from 0.
    pub side: usize,
    /// What it is.
    pub kind: EdgeKind,
}

/// The courses of shingles on a face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Courses {
    /// How much of each course is to the weather, up the slope.
    pub exposure: Length,
    /// From the eave up to the first course line (the butts of the second course).
    pub first: Length,
}

impl Default for Courses {
    /// 5 in to the weather, as three-tab shingles of 12 × 36 in are laid.
    fn default() -> Self {
        Self { exposure: Length::from_inches(5.0), first: Length::from_inches(5.0) }
    }
}

impl Face {
    /// A new face. Its datum is the corner that is lowest down the slope, and of those the one to the left of a
    /// person who looks up it, at `height`.
    pub fn new(
        id: FaceId,
        name: String,
        outline: Polygon,
        pitch: Pitch,
        downslope: Azimuth,
        height: Length,
    ) -> Self {
        let mut face = Self {
            id,
            name,
            from: None,
            outline,
            pitch,
            downslope,
            datum: DVec2::ZERO,
            height,
            courses: Courses::default(),
            taped: TapedDeck::default(),
            overruled: Vec::new(),
            kinds: Vec::new(),
        };
        let plane = face.plane();
        let place = |p: DVec2| {
            let frame = plane.to_frame(p);
            // A millimetre of unevenness along a drawn eave must not decide between its two ends.
            ((frame.y * 1000.0).round(), frame.x)
        };
        let lowest = face.outline.outer.iter().copied().min_by(|&p, &q| {
            let (p, q) = (place(p), place(q));
            p.0.total_cmp(&q.0).then(p.1.total_cmp(&q.1))
        });
        face.datum = lowest.unwrap_or(DVec2::ZERO);
        face
    }

    /// The face as a drawn one, with what follows from its part written out.
    pub(crate) fn by_itself(&self) -> Self {
        Self { from: None, ..self.clone() }
    }

    /// The plane of the face, and so its frame.
    pub fn plane(&self) -> Plane {
        Plane { datum: self.datum.extend(self.height.metres()), pitch: self.pitch, downslope: self.downslope }
    }

    /// What the roof is put together from.
    pub fn input(&self) -> FaceInput {
        FaceInput {
            outline: self.outline.clone(),
            sides: Vec::new(),
            plane: self.plane(),
            overruled: self.kinds.iter().chain(&self.overruled).map(|o| ((o.ring, o.side), o.kind)).collect(),
        }
    }

    /// The face with a corner moved; `None` where there is no such corner.
    pub fn with_corner_moved(&self, ring: usize, corner: usize, to: DVec2) -> Option<Self> {
        let mut face = self.clone();
        *face.ring_mut(ring)?.get_mut(corner)? = to;
        Some(face)
    }

    /// The face with a new corner on a side, its overruled kinds kept with their sides.
    pub fn with_corner_added(&self, ring: usize, side: usize, at: DVec2) -> Option<Self> {
        let mut face = self.clone();
        let corners = face.ring_mut(ring)?;
        if side >= corners.len() {
            return None;
        }
        corners.insert(side + 1, at);
        for overrule in face.overruled.iter_mut().filter(|o| o.ring == ring && o.side > side) {
            overrule.side += 1;
        }
        if let Some(split) = self.overruled.iter().find(|o| o.ring == ring && o.side == side) {
            face.overruled.push(Overrule { side: side + 1, ..*split });
        }
        Some(face)
    }

    /// The face without a corner. A ring of three keeps its corners: `None`.
    pub fn without_corner(&self, ring: usize, corner: usize) -> Option<Self> {
        let mut face = self.clone();
        let corners = face.ring_mut(ring)?;
        if corners.len() <= 3 || corner >= corners.len() {
            return None;
        }
        corners.remove(corner);
        face.overruled.retain(|o| o.ring != ring || o.side != corner);
        for overrule in face.overruled.iter_mut().filter(|o| o.ring == ring && o.side > corner) {
            overrule.side -= 1;
        }
        Some(face)
    }

    /// The face with the kind of a side decided, or with `None` left to be worked out again.
    pub fn with_side_overruled(&self, ring: usize, side: usize, kind: Option<EdgeKind>) -> Self {
        let mut face = self.clone();
        face.overruled.retain(|o| (o.ring, o.side) != (ring, side));
        face.overruled.extend(kind.map(|kind| Overrule { ring, side, kind }));
        face.overruled.sort_by_key(|o| (o.ring, o.side));
        face
    }

    fn ring_mut(&mut self, ring: usize) -> Option<&mut Vec<DVec2>> {
        match ring {
            0 => Some(&mut self.outline.outer),
            hole => self.outline.holes.get_mut(hole - 1),
        }
    }
}
