use crate::Unknown;
use crate::wind::{Figure, Refused, Zone};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_geometry::{EdgeKind, Length};
use chalkcourse_job::{BlockId, Cell, FaceId, Missing, Waiver};
use chalkcourse_limits::Against;
use schemars::JsonSchema;
use serde::Serialize;

/// What a sentence about a finding needs beyond its key, place and amounts: which of a rule's sentences it is, and what stands
/// in it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Facts {
    /// No roof can be raised over a part of the house.
    NotRaised {
        /// Why.
        #[serde(skip)]
        why: RaiseError,
    },
    /// A part lies under others.
    Hidden,
    /// A chimney has no slope for its cricket.
    NoCricket,
    /// An outline does not enclose one area once.
    Outline {
        /// How.
        fault: Fault,
        /// 0 for the outline, n for the n-th hole.
        ring: usize,
        /// The corner, from 0.
        corner: usize,
    },
    /// Two faces that share an edge in plan do not meet in height.
    HeightGap {
        /// The lower face.
        lower: FaceId,
        /// The upper one.
        upper: FaceId,
        /// The face, drawn, whose lift closes all of the gap, and how far up; none where the gap is not the same all along.
        lift: Option<(FaceId, Length)>,
    },
    /// Sides of two faces all but meet.
    NearMiss {
        /// The face.
        face: FaceId,
        /// The other.
        other: FaceId,
    },
    /// Ground lies under two faces.
    CountedTwice {
        /// The face.
        face: FaceId,
        /// The other.
        other: FaceId,
    },
    /// A penetration comes through no face.
    NoHome,
    /// A penetration reaches over an edge of its face.
    OnePlane {
        /// Which kind of edge.
        kind: EdgeKind,
    },
    /// What a person decided or measured for sides of a face that are gone.
    LostSides {
        /// Kinds of sides that were overruled.
        overrules: usize,
        /// Whether a tape measured such sides.
        taped: bool,
    },

    /// A block lies on no sound face.
    NoDeck(NoDeck),
    /// A face is too flat for the kit.
    Pitch,
    /// Modules reach over the edge of their face.
    OffFace {
        /// The edge; `None` where it can't be told.
        edge: Option<EdgeKind>,
        /// How many of them.
        modules: usize,
        /// Of so many in the block.
        of: usize,
    },
    /// A block lies on another.
    Overlap {
        /// The block that gives way.
        block: BlockId,
        /// The other.
        other: BlockId,
    },
    /// Modules of a block lie on one another.
    OverlapWithin {
        /// How many lie on the one before.
        modules: usize,
    },
    /// Modules are too near to something that a limit without words of its own keeps them off.
    TooNear {
        /// What.
        #[serde(skip)]
        against: Against,
    },
    /// Modules are nearer to an edge than its setback.
    Setback {
        /// What the edge is.
        kind: EdgeKind,
    },
    /// Modules are too near to a penetration.
    Clearance {
        /// On which side of it.
        side: Beside,
        /// Whether the clearance was set by a person for this one.
        own: bool,
    },
    /// Side flashing comes too near to a line of water or caps.
    ValleyHip {
        /// What the edge is.
        kind: EdgeKind,
        /// How wide the side flashing is.
        flashing: Length,
    },
    /// Too few courses are left below the ridge.
    RidgeCourse {
        /// Full courses asked.
        courses: u32,
        /// The exposure of one.
        exposure: Length,
    },
    /// The base rail lies too near to the eave.
    RailAboveEave,
    /// The base rail reaches beyond the deck.
    RailOffDeck,
    /// The base rail is too long without a break.
    RailTooLong,
    /// The sheathing is too thin.
    DeckTooThin,
    /// The sheathing is of another kind.
    DeckOfKind,
    /// The sheathing spans too far.
    DeckSpan,
    /// Something of the deck is not known.
    DeckUnknown(Vec<Unknown>),
    /// Modules do not hook enough into the row below.
    Hook {
        /// How many.
        modules: usize,
    },
    /// The joints of a row fall where the kit does not let them.
    Joints {
        /// How far they are aside of those below.
        aside: Length,
    },
    /// The base rail lies among the courses where the kit does not let it. What is measured is its height over the course
    /// line that is nearest to an allowed one.
    RailAmongCourses {
        /// The exposure of a course.
        exposure: Length,
    },
    /// A reveal is out of the kit's range.
    Reveal,
    /// Two blocks leave too little room for their flashing.
    BetweenBlocks {
        /// The block that gives way.
        block: BlockId,
        /// The other.
        other: BlockId,
    },

    /// Too little room beside a ridge.
    FireRidge {
        /// Plan area of the array by that of the roof, 0 to 1.
        share: f64,
    },
    /// Too few pathways to the ridge.
    FirePaths {
        /// The modules whose removal opens what is missing at the least loss that was found, by their blocks; nothing where no
        /// removal does.
        opening: Option<Vec<(BlockId, Vec<Cell>)>>,
        /// So many on separate planes the roof has room for with no module on it, up to what is asked: no layout has more.
        room_for: u32,
    },
    /// There is no ridge to lead a pathway to; not judged.
    NoRidge,
    /// Too few pathways by a plane.
    FirePlanePath {
        /// The modules whose removal opens what is missing at the least loss that was found, by their blocks; nothing where no
        /// removal does.
        opening: Option<Vec<(BlockId, Vec<Cell>)>>,
    },
    /// Neither a plane nor one beside it has a ridge; not judged.
    NoRidgeBeside,
    /// No pathway on the street side.
    FireStreet,
    /// Too little room beside a hip or valley.
    FireHipValley {
        /// What the edge is.
        kind: EdgeKind,
    },
    /// Modules lie in the strip below an escape window.
    FireEscape,

    /// A slope is too low for shingles.
    ShingleSlope,
    /// A slope asks for a double underlayment.
    Underlayment,
    /// A wide penetration asks for a cricket.
    Cricket,
    /// The roof has no drip edge.
    DripEdge,
    /// A class against fire is missing.
    FireClass {
        /// Of what.
        of: Covering,
        /// Why it is asked.
        why: ClassAsked,
    },
    /// The deck needs repair.
    DeckCondition,

    /// Wind asks more of a fastener than it holds.
    Wind {
        /// The worst zone that a module reaches.
        zone: Zone,
        /// By which figure.
        figure: Figure,
        /// Outward pressure there, pounds a square foot.
        psf: f64,
    },
    /// Wind is not worked out.
    WindRefused(Refused),

    /// A waiver's finding is not there.
    WaiverIdle {
        /// The waiver.
        waiver: Waiver,
        /// What its key names that the job does not have; `None` where all is there.
        #[serde(skip)]
        missing: Option<Missing>,
    },
}

impl Facts {
    /// The modules whose removal opens a pathway that is missing, by their blocks, at the least loss that was found.
    pub fn opening(&self) -> Option<&[(BlockId, Vec<Cell>)]> {
        match self {
            Self::FirePaths { opening, .. } | Self::FirePlanePath { opening } => opening.as_deref(),
            _ => None,
        }
    }
}

/// What is wrong with an outline.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Fault {
    /// A corner is at no place.
    NoNumber,
    /// Less than three corners.
    TooFewCorners,
    /// Two corners in a row on one spot.
    RepeatedCorner,
    /// It encloses nothing.
    NoArea,
    /// Sides cross.
    FoldsOver,
    /// A hole lies outside.
    HoleOutside,
}

impl Fault {
    /// As keys and reports have it.
    pub fn code(self) -> &'static str {
        match self {
            Self::NoNumber => "no-number",
            Self::TooFewCorners => "too-few-corners",
            Self::RepeatedCorner => "repeated-corner",
            Self::NoArea => "no-area",
            Self::FoldsOver => "folds-over",
            Self::HoleOutside => "hole-outside",
        }
    }
}

/// Why a block has no deck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum NoDeck {
    /// The outline of its face does not hold together.
    Defective,
    /// Its face has no ground at present.
    Resting,
    /// The job has no such face.
    Absent,
}

/// On which side of a penetration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Beside {
    /// Anywhere around it.
    Around,
    /// Straight above.
    Above,
    /// Straight below.
    Below,
}

/// What has a class against fire.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Covering {
    /// The array.
    Array,
    /// The covering beyond it.
    Beyond,
}

/// Why a class against fire is asked.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ClassAsked {
    /// An edge of the roof is nearer than this to a lot line.
    LotLine(Length),
    /// The law asks for it.
    Law,
}
