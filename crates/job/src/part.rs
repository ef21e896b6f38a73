//! Parts of a house as decisions: a footprint, the treatment of each side, the eave heights. Their faces are derived.

mod border;
mod corners;

pub use border::{Border, SideBorders};

use crate::PartId;
use chalkcourse_geometry::raise::{Footprint, Side, SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch, Polygon};
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The kind of a part.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum PartKind {
    /// The house itself.
    #[default]
    Main,
    /// A wing at an angle to the house.
    Ell,
    /// On a slope of another part, with a wall in front.
    Dormer,
    /// A roof in front of a door, on posts or against a wall.
    Porch,
    /// A box without a roof: its eave height is the height of its top.
    Chimney,
    /// Anything else: a garage, a bay.
    Other,
}

impl PartKind {
    /// All kinds.
    pub const ALL: [Self; 6] = [Self::Main, Self::Ell, Self::Dormer, Self::Porch, Self::Chimney, Self::Other];

    /// Its trade name.
    pub fn name(self) -> Say {
        match self {
            Self::Main => words::job::MAIN_HOUSE,
            Self::Ell => words::job::ELL,
            Self::Dormer => words::job::DORMER,
            Self::Porch => words::job::PORCH,
            Self::Chimney => words::common::CHIMNEY_2,
            Self::Other => words::job::OTHER_PART,
        }
    }
}

/// A part of a house: its own footprint, pitches and eave heights. The visible roof is the upper envelope of all parts
/// of a job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RoofPart {
    /// Its id in the job.
    pub id: PartId,
    /// Display name.
    pub name: String,
    /// Its kind.
    pub kind: PartKind,
    /// Wall lines in plan: x east, y north, metres. Holes are courtyards.
    pub outline: Polygon,
    /// Height of the roof planes at the wall lines, above the job's datum; for a chimney its top.
    pub eave_height: Length,
    /// For each ring (the outline first, then the holes) one side per corner: from that corner to the next.
    pub sides: Vec<Vec<PartSide>>,
    /// The next side id. It only increases, so that no new side takes over the faces of a deleted one.
    #[serde(default)]
    pub next_side: u32,
    /// For a chimney: the pitch of the two small faces that divert water upslope of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cricket: Option<Pitch>,
}

/// One side of a part.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PartSide {
    /// Its id in the part, which it keeps when corners are added or removed.
    pub id: u32,
    /// Roof slope, gable or wall.
    pub treatment: Treatment,
    /// Overhang beyond the wall, in plan.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub overhang: Length,
    /// Height of this side's plane at its wall, if different from the part's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub eave_height: Option<Length>,
}

fn is_zero(length: &Length) -> bool {
    *length == Length::ZERO
}

/// The origin of a face: a piece of the roof on one side of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FromPart {
    /// The part.
    pub part: PartId,
    /// The id of its side: [`PartSide::id`]. The first of several coplanar sides.
    pub side: u32,
    /// Index of the piece, from 0, if other parts divide the face of a side: counted to the right along the eave.
    #[serde(default, skip_serializing_if = "is_first")]
    pub piece: u32,
}

fn is_first(piece: &u32) -> bool {
    *piece == 0
}

/// A rigid motion in plan: a rotation about a point, followed by a shift.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct PlanMove {
    /// Counter-clockwise, in degrees.
    pub turn: f64,
    /// The centre of rotation in plan: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub about: DVec2,
    /// The shift after the rotation: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub by: DVec2,
}

impl PlanMove {
    /// A shift only.
    pub fn shift(by: DVec2) -> Self {
        Self { by, ..Self::default() }
    }

    /// The image of a point.
    pub fn of(&self, point: DVec2) -> DVec2 {
        if self.turn == 0.0 {
            return point + self.by;
        }
        self.about + DVec2::from_angle(self.turn.to_radians()).rotate(point - self.about) + self.by
    }
}

impl RoofPart {
    /// A part with all sides alike.
    pub fn new(
        id: PartId,
        name: String,
        kind: PartKind,
        outline: Polygon,
        eave_height: Length,
        treatment: Treatment,
        overhang: Length,
    ) -> Self {
        let mut next_side = 0;
        let mut side = || {
            next_side += 1;
            PartSide { id: next_side - 1, treatment, overhang, eave_height: None }
        };
        let sides = outline.rings().map(|ring| ring.iter().map(|_| side()).collect()).collect();
        Self { id, name, kind, outline, eave_height, sides, next_side, cricket: None }
    }

    /// A chimney: a box whose top is at `top`, with a cricket if a pitch is given for it.
    pub fn chimney(id: PartId, name: String, outline: Polygon, top: Length, cricket: Option<Pitch>) -> Self {
        let part = Self::new(id, name, PartKind::Chimney, outline, top, Treatment::Wall, Length::ZERO);
        Self { cricket, ..part }
    }

    /// The input for raising its roof.
    pub fn footprint(&self) -> Footprint {
        let side = |side: &PartSide| Side {
            treatment: side.treatment,
            eave_height: side.eave_height.unwrap_or(self.eave_height).metres(),
            overhang: side.overhang.metres(),
        };
        Footprint {
            outline: self.outline.clone(),
            sides: self.sides.iter().map(|ring| ring.iter().map(side).collect()).collect(),
        }
    }

    /// Whether the areas of two parts, including overhangs, may overlap.
    pub fn may_meet(&self, other: &Self) -> bool {
        let reach = |part: &Self| {
            let overhangs = part.sides.iter().flatten().map(|side| side.overhang.metres());
            overhangs.fold(0.0, f64::max)
        };
        match (self.outline.bounds(), other.outline.bounds()) {
            (Some(a), Some(b)) => a.overlap(&b).min_element() > -(reach(self) + reach(other)) * 2.0 - 0.01,
            _ => false,
        }
    }

    /// A side by its position.
    pub fn side(&self, at: SideRef) -> Option<&PartSide> {
        self.sides.get(at.ring)?.get(at.side)
    }

    /// The position of the side with this id.
    pub fn place_of(&self, id: u32) -> Option<SideRef> {
        self.sides.iter().enumerate().find_map(|(ring, sides)| {
            sides.iter().position(|side| side.id == id).map(|side| SideRef { ring, side })
        })
    }

    /// The wall line of a side, from its corner to the next.
    pub fn wall_line(&self, at: SideRef) -> Option<(DVec2, DVec2)> {
        let ring = self.outline.rings().nth(at.ring)?;
        let next = if at.side + 1 == ring.len() { 0 } else { at.side + 1 };
        Some((*ring.get(at.side)?, *ring.get(next)?))
    }

    /// The part with changes to one side, which keeps its id; `None` if there is no such side.
    pub fn with_side(&self, at: SideRef, change: impl FnOnce(PartSide) -> PartSide) -> Option<Self> {
        let mut part = self.clone();
        let side = part.sides.get_mut(at.ring)?.get_mut(at.side)?;
        *side = PartSide { id: side.id, ..change(*side) };
        Some(part)
    }

    /// The part with changes to all sides, which keep their ids.
    pub fn with_all_sides(&self, change: impl Fn(PartSide) -> PartSide) -> Self {
        let mut part = self.clone();
        for side in part.sides.iter_mut().flatten() {
            *side = PartSide { id: side.id, ..change(*side) };
        }
        part
    }
}
