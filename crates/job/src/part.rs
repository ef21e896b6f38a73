//! Parts of a house as decisions: a footprint, what stands on each side, how high the eaves are. Their faces are
//! worked out from them.

mod border;
mod corners;

pub use border::{Border, SideBorders};

use crate::PartId;
use chalkcourse_geometry::raise::{Footprint, Side, SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch, Polygon};
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a part is to the people who build it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum PartKind {
    /// The house itself.
    #[default]
    Main,
    /// A wing at an angle to the house.
    Ell,
    /// Stands on a slope of another part, with a wall in front.
    Dormer,
    /// A roof before a door, on posts or against a wall.
    Porch,
    /// A box that no roof covers: its eave height is the height of its top.
    Chimney,
    /// Anything else: a garage, a bay.
    Other,
}

impl PartKind {
    /// All kinds.
    pub const ALL: [Self; 6] = [Self::Main, Self::Ell, Self::Dormer, Self::Porch, Self::Chimney, Self::Other];

    /// The word of the trade.
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

/// One part of a house: its own footprint, pitches and eave heights. The roof that one sees is the upper envelope of
/// all parts of a job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RoofPart {
    /// Its number in the job.
    pub id: PartId,
    /// What people call it.
    pub name: String,
    /// What it is.
    pub kind: PartKind,
    /// Wall lines in plan: x east, y north, metres. Holes are courtyards.
    pub outline: Polygon,
    /// How high the roof's planes are over the wall lines, above the level of the job; a chimney's top.
    pub eave_height: Length,
    /// For each ring (the outline first, then the holes) one for each corner: the side from it to the next corner.
    pub sides: Vec<Vec<PartSide>>,
    /// The number after all that its sides ever had. It only goes up, so that no side gets the faces of one that is gone.
    #[serde(default)]
    pub next_side: u32,
    /// A chimney's: the pitch of the two small faces that part the water upslope of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cricket: Option<Pitch>,
}

/// One side of a part.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PartSide {
    /// Its number in the part, which it keeps when corners come and go.
    pub id: u32,
    /// What stands on it.
    pub treatment: Treatment,
    /// How far the roof reaches beyond the wall, in plan.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub overhang: Length,
    /// How high the plane of this side is over its wall, where that is not the part's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub eave_height: Option<Length>,
}

fn is_zero(length: &Length) -> bool {
    *length == Length::ZERO
}

/// Where a face comes from: it is a piece of what stands on one side of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FromPart {
    /// The part.
    pub part: PartId,
    /// The number of its side: [`PartSide::id`]. Of several sides in one plane the first.
    pub side: u32,
    /// Which piece, from 0, where other parts cut the face of a side up: counted to the right along the eave.
    #[serde(default, skip_serializing_if = "is_first")]
    pub piece: u32,
}

fn is_first(piece: &u32) -> bool {
    *piece == 0
}

/// A move in plan that keeps lengths: turned about a point, then shifted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct PlanMove {
    /// Counter-clockwise, in degrees.
    pub turn: f64,
    /// The point that the turn leaves where it is, in plan: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub about: DVec2,
    /// The shift after the turn: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub by: DVec2,
}

impl PlanMove {
    /// A shift alone.
    pub fn shift(by: DVec2) -> Self {
        Self { by, ..Self::default() }
    }

    /// Where a point comes to be.
    pub fn of(&self, point: DVec2) -> DVec2 {
        if self.turn == 0.0 {
            return point + self.by;
        }
        self.about + DVec2::from_angle(self.turn.to_radians()).rotate(point - self.about) + self.by
    }
}

impl RoofPart {
    /// A part with the same on all sides.
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

    /// A chimney: a box whose top is at `top`, with a cricket where a pitch for it is given.
    pub fn chimney(id: PartId, name: String, outline: Polygon, top: Length, cricket: Option<Pitch>) -> Self {
        let part = Self::new(id, name, PartKind::Chimney, outline, top, Treatment::Wall, Length::ZERO);
        Self { cricket, ..part }
    }

    /// What its roof is raised from.
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

    /// Whether the grounds of two parts, with their overhangs, can come together.
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

    /// A side by its place.
    pub fn side(&self, at: SideRef) -> Option<&PartSide> {
        self.sides.get(at.ring)?.get(at.side)
    }

    /// The place of the side of that number.
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

    /// The part with other decisions on one side, which keeps its number; `None` where there is no such side.
    pub fn with_side(&self, at: SideRef, change: impl FnOnce(PartSide) -> PartSide) -> Option<Self> {
        let mut part = self.clone();
        let side = part.sides.get_mut(at.ring)?.get_mut(at.side)?;
        *side = PartSide { id: side.id, ..change(*side) };
        Some(part)
    }

    /// The part with other decisions on all sides, which keep their numbers.
    pub fn with_all_sides(&self, change: impl Fn(PartSide) -> PartSide) -> Self {
        let mut part = self.clone();
        for side in part.sides.iter_mut().flatten() {
            *side = PartSide { id: side.id, ..change(*side) };
        }
        part
    }
}
