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

/// A roof face, drawn or belonging to a part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(from = "DecidedFace", into = "DecidedFace")]
pub struct Face {
    /// Its id in the job.
    pub id: FaceId,
    /// Display name: "South", "Porch".
    pub name: String,
    /// The side of the part that it belongs to; `None` for a drawn face. Outline, pitch, downslope and height of a
    /// part's face follow from the part.
    pub from: Option<FromPart>,
    /// Outline and holes in plan: x east, y north, metres.
    pub outline: Polygon,
    /// Ids of its sides. Empty for a face written without ids: they are assigned when it is added to a job.
    pub sides: Sides,
    /// Rise over run.
    pub pitch: Pitch,
    /// The direction of water runoff, degrees clockwise from north.
    pub downslope: Azimuth,
    /// The origin of the face's frame in plan. Blocks are positioned relative to it, so it does not move with the
    /// corners.
    pub datum: DVec2,
    /// Height of the face at its datum, above a level common to the whole job.
    pub height: Length,
    /// The courses of its shingles.
    pub courses: Courses,
    /// Tape measurements of its deck.
    pub taped: TapedDeck,
    /// Edge kinds set by the user, by side. If the side is deleted, the entry is kept and reported until the user
    /// removes it; it has no effect, and no other side ever gets that id.
    pub overruled: Vec<Overrule>,
    /// Edge kinds that follow from the part, such as its walls; those set by the user take precedence. Never in a file.
    pub kinds: Vec<Overrule>,
    /// What the sides of a part's face border: first the visible ones in the order of the outline, then those hidden at
    /// present.
    pub borders: Vec<SideBorders>,
}

/// An edge kind set by the user for a side of the outline.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Overrule {
    /// The id of the side.
    pub side: SideId,
    /// Its kind.
    pub kind: EdgeKind,
}

/// The courses of shingles on a face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Courses {
    /// The exposed height of each course, up the slope.
    pub exposure: Length,
    /// Distance up the slope from the eave to the first course line (the butts of the second course).
    pub first: Length,
}

impl Default for Courses {
    /// An exposure of 5 in, as for three-tab shingles of 12 × 36 in.
    fn default() -> Self {
        Self { exposure: Length::from_inches(5.0), first: Length::from_inches(5.0) }
    }
}

impl Face {
    /// A new face. Its datum is the lowest corner, and among several the leftmost one when looking up the slope, at
    /// `height`.
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
            // Unevenness below a millimetre along a drawn eave must not decide which of its ends is lower.
            ((frame.y * 1000.0).round(), frame.x)
        };
        let lowest = face.outline.outer.iter().copied().min_by(|&p, &q| {
            let (p, q) = (place(p), place(q));
            p.0.total_cmp(&q.0).then(p.1.total_cmp(&q.1))
        });
        face.datum = lowest.unwrap_or(DVec2::ZERO);
        face
    }

    /// The face as a drawn one, including everything derived from its part.
    pub(crate) fn as_drawn(&self) -> Self {
        Self { from: None, ..self.clone() }
    }

    /// The plane of the face, and thus its frame.
    pub fn plane(&self) -> Plane {
        Plane { datum: self.datum.extend(self.height.metres()), pitch: self.pitch, downslope: self.downslope }
    }

    /// The input for assembling the roof.
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

    /// The sides that are eave, head, left and right rake; `None` if the face does not have four corners.
    pub fn deck_sides(&self) -> Option<[SideId; 4]> {
        let plane = self.plane();
        let ring: Vec<DVec2> = self.outline.outer.iter().map(|&p| plane.to_frame(p)).collect();
        let sides = FourSided::of(&ring)?.sides;
        let numbered = self.numbered();
        let id = |side| numbered.at(0, side);
        Some([id(sides[0])?, id(sides[1])?, id(sides[2])?, id(sides[3])?])
    }

    /// The tape measurements by the present roles of the sides; empty if a measured side was deleted.
    pub fn taped_now(&self) -> TapedDeck {
        match (self.taped.of, self.deck_sides()) {
            (Some(_), Some(now)) => self.taped.turned(now).unwrap_or_default(),
            (Some(_), None) if self.has_lost_tape() => TapedDeck::default(),
            _ => self.taped,
        }
    }

    /// The face with tape measurements by the present roles of its sides.
    pub fn with_taped(&self, taped: TapedDeck) -> Self {
        let of = if taped.is_empty() { None } else { self.deck_sides() };
        Self { taped: TapedDeck { of, ..taped }, ..self.clone() }
    }

    /// Edge kinds set for sides that were deleted.
    pub fn lost_overrules(&self) -> impl Iterator<Item = &Overrule> {
        self.overruled.iter().filter(|o| self.sides.place_of(o.side).is_none())
    }

    /// Whether measured sides were deleted.
    pub fn has_lost_tape(&self) -> bool {
        self.taped.of.is_some_and(|of| of.iter().any(|side| self.sides.place_of(*side).is_none()))
    }

    /// The face without settings and measurements for deleted sides.
    pub fn without_lost(&self) -> Self {
        let mut face = self.clone();
        face.overruled.retain(|o| self.sides.place_of(o.side).is_some());
        if self.has_lost_tape() {
            face.taped = TapedDeck::default();
        }
        face
    }

    /// Whether the face has a side with this id.
    pub fn has_side(&self, id: SideId) -> bool {
        self.numbered().place_of(id).is_some()
    }

    /// Its side ids, or the default ones in the order of the outline if it was written without.
    fn numbered(&self) -> Cow<'_, Sides> {
        if self.sides.fit(&self.outline) {
            Cow::Borrowed(&self.sides)
        } else {
            Cow::Owned(Sides::in_order(&self.outline))
        }
    }
}
