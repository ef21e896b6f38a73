mod corners;
pub(crate) mod decided;

pub use decided::{DecidedFace, Ground};

use crate::{FaceId, FromPart, SideBorders, TapedDeck};
use chalkcourse_geometry::fit_up::FourSided;
use chalkcourse_geometry::{
    Azimuth, DVec2, EdgeKind, FaceInput, Length, Pitch, Plane, Polygon, SideId, Sides,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// A roof face, drawn or of a part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(from = "DecidedFace", into = "DecidedFace")]
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
    /// The numbers of its sides. In a face that was written without, none: it gets them when it comes into a job.
    pub sides: Sides,
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
    /// Edge kinds that a person overruled, by side. One whose side is gone stays, and is told, until a person takes it
    /// back: it stands for nothing, and no other side ever has that number.
    pub overruled: Vec<Overrule>,
    /// Edge kinds that follow from the part, such as its walls; a person's word goes before them. Never in a file.
    pub kinds: Vec<Overrule>,
    /// What the sides of a face of a part border: of those that are seen in the order of the outline, then of those that are
    /// hidden at present.
    pub borders: Vec<SideBorders>,
}

/// A side of the outline whose kind a person decided.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Overrule {
    /// The number of the side.
    pub side: SideId,
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
            sides: Sides::in_order(&outline),
            outline,
            pitch,
            downslope,
            datum: DVec2::ZERO,
            height,
            courses: Courses::default(),
            taped: TapedDeck::default(),
            overruled: Vec::new(),
            kinds: Vec::new(),
            borders: Vec::new(),
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
        let numbered = self.numbered();
        let overruled = self.kinds.iter().chain(&self.overruled);
        FaceInput {
            outline: self.outline.clone(),
            sides: numbered.rings().to_vec(),
            plane: self.plane(),
            overruled: overruled.filter_map(|o| Some((numbered.place_of(o.side)?, o.kind))).collect(),
        }
    }

    /// The sides that are eave, head, left and right rake; `None` for a face that has not four corners.
    pub fn deck_sides(&self) -> Option<[SideId; 4]> {
        let plane = self.plane();
        let ring: Vec<DVec2> = self.outline.outer.iter().map(|&p| plane.to_frame(p)).collect();
        let sides = FourSided::of(&ring)?.sides;
        let numbered = self.numbered();
        let id = |side| numbered.at(0, side);
        Some([id(sides[0])?, id(sides[1])?, id(sides[2])?, id(sides[3])?])
    }

    /// What the tape read, by what its sides are now; nothing where a side that was measured is gone.
    pub fn taped_now(&self) -> TapedDeck {
        match (self.taped.of, self.deck_sides()) {
            (Some(_), Some(now)) => self.taped.turned(now).unwrap_or_default(),
            (Some(_), None) if self.has_lost_tape() => TapedDeck::default(),
            _ => self.taped,
        }
    }

    /// The face with what the tape read, by what its sides are now.
    pub fn with_taped(&self, taped: TapedDeck) -> Self {
        let of = if taped.is_empty() { None } else { self.deck_sides() };
        Self { taped: TapedDeck { of, ..taped }, ..self.clone() }
    }

    /// Kinds that a person decided for sides that are gone.
    pub fn lost_overrules(&self) -> impl Iterator<Item = &Overrule> {
        self.overruled.iter().filter(|o| self.sides.place_of(o.side).is_none())
    }

    /// Whether the tape measured sides that are gone.
    pub fn has_lost_tape(&self) -> bool {
        self.taped.of.is_some_and(|of| of.iter().any(|side| self.sides.place_of(*side).is_none()))
    }

    /// The face without what was decided or measured for sides that are gone.
    pub fn without_lost(&self) -> Self {
        let mut face = self.clone();
        face.overruled.retain(|o| self.sides.place_of(o.side).is_some());
        if self.has_lost_tape() {
            face.taped = TapedDeck::default();
        }
        face
    }

    /// Whether the face has a side of that number.
    pub fn has_side(&self, id: SideId) -> bool {
        self.numbered().place_of(id).is_some()
    }

    /// Its numbers, or those in the order of the outline where it was written without.
    fn numbered(&self) -> Cow<'_, Sides> {
        if self.sides.fit(&self.outline) {
            Cow::Borrowed(&self.sides)
        } else {
            Cow::Owned(Sides::in_order(&self.outline))
        }
    }
}
