use crate::Unknown;
use crate::wind::{Figure, Refused, Zone};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_geometry::{EdgeKind, Length};
use chalkcourse_job::{BlockId, BoxId, Cell, CircuitId, Connection, FaceId, Gauge, Missing, Waiver};
use chalkcourse_limits::Against;
use chalkcourse_wiring::LimitedBy;
use chalkcourse_wiring::runs::Part;
use schemars::JsonSchema;
use serde::Serialize;

/// What the message of a finding needs beyond key, place and amounts: which of a rule's messages it is, and its arguments.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Facts {
    /// No roof can be raised over a part of the house.
    NotRaised {
        /// Why.
        #[serde(skip)]
        why: RaiseError,
    },
    /// A part is entirely under others.
    Hidden,
    /// A chimney has no slope for its cricket.
    NoCricket,
    /// An outline does not enclose a single area.
    Outline {
        /// How.
        fault: Fault,
        /// 0 for the outline, n for the n-th hole.
        ring: usize,
        /// The corner, 0-based.
        corner: usize,
    },
    /// Two faces that share an edge in plan do not meet in height.
    HeightGap {
        /// The lower face.
        lower: FaceId,
        /// The upper one.
        upper: FaceId,
        /// The face as drawn to lift or lower, and by how much, to close all of the gap; `None` if the gap varies along the edge.
        lift: Option<(FaceId, Length)>,
    },
    /// Sides of two faces nearly meet.
    NearMiss {
        /// The face.
        face: FaceId,
        /// The other.
        other: FaceId,
    },
    /// Two faces overlap in plan.
    CountedTwice {
        /// The face.
        face: FaceId,
        /// The other.
        other: FaceId,
    },
    /// A penetration is on no face.
    NoHome,
    /// A penetration crosses an edge of its face.
    OnePlane {
        /// Which kind of edge.
        kind: EdgeKind,
    },
    /// Decisions or measurements for sides of a face that no longer exist.
    LostSides {
        /// Number of sides whose kind was overruled.
        overrules: usize,
        /// Whether a tape measured such sides.
        taped: bool,
    },

    /// A block is not on a sound face.
    NoDeck(NoDeck),
    /// A face is too flat for the kit.
    Pitch,
    /// Modules overhang the edge of their face.
    OffFace {
        /// The edge; `None` if it can't be determined.
        edge: Option<EdgeKind>,
        /// How many modules.
        modules: usize,
        /// Modules in the block.
        of: usize,
    },
    /// A block overlaps another.
    Overlap {
        /// The block to move.
        block: BlockId,
        /// The other.
        other: BlockId,
    },
    /// Modules of a block overlap each other.
    OverlapWithin {
        /// How many overlap the one before them.
        modules: usize,
    },
    /// Modules are too near something, by a limit without a message of its own.
    TooNear {
        /// What they are too near.
        #[serde(skip)]
        against: Against,
    },
    /// Modules are inside the setback of an edge.
    Setback {
        /// The kind of edge.
        kind: EdgeKind,
    },
    /// Modules are too near a penetration.
    Clearance {
        /// On which side of it.
        side: Beside,
        /// Whether a person set the clearance for this one.
        own: bool,
    },
    /// Side flashing is too near a valley or hip.
    ValleyHip {
        /// The kind of edge.
        kind: EdgeKind,
        /// Width of the side flashing.
        flashing: Length,
    },
    /// Too few courses are left below the ridge.
    RidgeCourse {
        /// Full courses required.
        courses: u32,
        /// Exposure of a course.
        exposure: Length,
    },
    /// The base rail is too near the eave.
    RailAboveEave,
    /// The base rail extends beyond the deck.
    RailOffDeck,
    /// The base rail is too long without a gap.
    RailTooLong,
    /// The sheathing is too thin.
    DeckTooThin,
    /// The sheathing is of another kind.
    DeckOfKind,
    /// The sheathing span is too long.
    DeckSpan,
    /// Something about the deck is unknown.
    DeckUnknown(Vec<Unknown>),
    /// Modules do not hook into the row below over enough of their edge.
    Hook {
        /// How many.
        modules: usize,
    },
    /// The kit does not allow the joints of a row.
    Joints {
        /// Offset from the joints below.
        aside: Length,
    },
    /// The kit does not allow the base rail's height among the courses. Measured over the course line that is nearest to an
    /// allowed height.
    RailAmongCourses {
        /// Exposure of a course.
        exposure: Length,
    },
    /// A reveal is outside the kit's range.
    Reveal,
    /// Too little room between two blocks for their flashing.
    BetweenBlocks {
        /// The block to move.
        block: BlockId,
        /// The other.
        other: BlockId,
    },

    /// Too little room beside a ridge.
    FireRidge {
        /// Plan area of the array divided by that of the roof, 0 to 1.
        share: f64,
    },
    /// Too few pathways to the ridge.
    FirePaths {
        /// The modules to remove, by block, to open what is missing at the least loss found; `None` if removal does not help.
        opening: Option<Vec<(BlockId, Vec<Cell>)>>,
        /// How many pathways on separate planes the bare roof has room for, up to the number required: an upper bound for any
        /// layout.
        room_for: u32,
    },
    /// There is no ridge for a pathway to lead to; not judged.
    NoRidge,
    /// Too few pathways for a plane.
    FirePlanePath {
        /// The modules to remove, by block, to open what is missing at the least loss found; `None` if removal does not help.
        opening: Option<Vec<(BlockId, Vec<Cell>)>>,
    },
    /// Neither the plane nor an adjacent one has a ridge; not judged.
    NoRidgeBeside,
    /// No pathway on the street side.
    FireStreet,
    /// Too little room beside a hip or valley.
    FireHipValley {
        /// The kind of edge.
        kind: EdgeKind,
    },
    /// Modules are in the strip below an escape window.
    FireEscape,

    /// A slope is too low for shingles.
    ShingleSlope,
    /// A slope requires double underlayment.
    Underlayment,
    /// A wide penetration requires a cricket.
    Cricket,
    /// The roof has no drip edge.
    DripEdge,
    /// A fire class is missing.
    FireClass {
        /// Of array or covering.
        of: Covering,
        /// Why it is required.
        why: ClassAsked,
    },
    /// The deck needs repair.
    DeckCondition,

    /// Wind demand on a fastener exceeds its capacity.
    Wind {
        /// The worst zone that a module reaches into.
        zone: Zone,
        /// The figure used.
        figure: Figure,
        /// Outward pressure there, pounds per square foot.
        psf: f64,
    },
    /// Wind is not calculated.
    WindRefused(Refused),

    /// A string's highest voltage is too much.
    StringVoltage {
        /// Modules in it.
        modules: usize,
        /// What limits it.
        by: LimitedBy,
    },
    /// A string's lowest voltage is too little.
    StringStart {
        /// Modules in it.
        modules: usize,
    },
    /// Too many or too few modules in a circuit.
    CircuitSize {
        /// What limits it.
        by: LimitedBy,
    },
    /// A circuit is led to no input that is there.
    NoInput,
    /// Too many strings on an input.
    InputStrings,
    /// Too much current at an input.
    InputCurrent,
    /// Strings on one input differ.
    ParallelStrings {
        /// The string that it differs from.
        other: CircuitId,
        /// Whether they face different ways; else their counts differ.
        faces: bool,
    },
    /// A string has modules that face different ways.
    StringFaces,
    /// Leads don't reach.
    LeadsShort {
        /// Between how many pairs of modules.
        links: usize,
    },
    /// The module is more than its device takes.
    DeviceInput,
    /// Modules of a block are in no circuit.
    NotWired,
    /// A circuit names modules that are not there.
    CircuitGone,

    /// Nothing stops at an arc in a dc circuit.
    ArcFault,
    /// Nothing stops at a fault to ground in a dc circuit.
    GroundFault,
    /// Other strings could send more into a string than it holds, and it has no fuse.
    NoFuse,
    /// The fuse of a string is smaller than its current asks.
    FuseSmall,
    /// The fuse of a string is larger than its modules allow.
    FuseLarge,
    /// A conductor is too thin.
    ConductorThin {
        /// Of which stretch.
        part: Part,
        /// How thick it is.
        gauge: Gauge,
        /// The thinnest that will do; `None` where none of the tables does.
        least: Option<Gauge>,
        /// In what it falls short.
        how: Thin,
    },
    /// A circuit loses much voltage on its way.
    VoltageDrop {
        /// In volts.
        volts: f64,
        /// Whether all of its way is in it.
        whole: bool,
    },
    /// A junction box is too full.
    BoxFill {
        /// Which.
        junction: BoxId,
        /// Cubic inches that its conductors take.
        taken: f64,
        /// Cubic inches that it has.
        holds: f64,
    },
    /// A raceway is too full.
    RacewayFill {
        /// Of which box.
        junction: BoxId,
        /// Conductors in it.
        conductors: u32,
    },
    /// A grounding conductor is too thin.
    GroundThin {
        /// How thick it is.
        gauge: Gauge,
        /// The thinnest that will do.
        least: Gauge,
        /// The overcurrent device by which it is chosen, in amperes.
        device: u32,
    },
    /// A grounding conductor is so thin that it needs protection.
    GroundBare {
        /// How thick it is.
        gauge: Gauge,
    },
    /// The output is more than its point of connection takes.
    Connection {
        /// In which way it is connected.
        way: Connection,
        /// At so many volts.
        volts: f64,
    },
    /// Circuits of the array and others share a box and its raceway.
    NotApart {
        /// Which box.
        junction: BoxId,
    },
    /// Plain strings: no module is shut down by itself.
    NoModuleShutdown,
    /// Conductors stay live farther from the array than they may.
    ShutdownBoundary {
        /// Up to which box.
        junction: BoxId,
    },
    /// A string that is shut down keeps too many volts.
    StandbyVolts,
    /// Dc conductors lie inside the building in something that is no metal.
    InsideNotMetal {
        /// From which box.
        junction: BoxId,
    },
    /// Dc conductors lie inside the building in free air.
    InsideFree {
        /// From which box.
        junction: BoxId,
    },
    /// A box on the roof is too near something.
    BoxNear {
        /// Which.
        junction: BoxId,
        /// What it is too near.
        #[serde(skip)]
        against: Against,
    },
    /// A box on the roof is on no face.
    BoxNowhere {
        /// Which.
        junction: BoxId,
    },
    /// A box on the roof is under modules.
    BoxUnderModules {
        /// Which.
        junction: BoxId,
    },
    /// A reading is not what it should be.
    Reading {
        /// How warm the modules were, °C.
        celsius: f64,
        /// Which.
        what: ReadingWrong,
    },
    /// Lugs and jumpers have no listing.
    NotListed,
    /// A module that is taken out opens the grounding path.
    PathOpens,
    /// Plugs of two makes are to be mated.
    PlugsDiffer {
        /// Of the leads.
        plug: String,
        /// The other.
        other: String,
    },

    /// A waiver whose finding no longer exists.
    WaiverIdle {
        /// The waiver.
        waiver: Waiver,
        /// What its key names that is missing from the job; `None` if nothing is missing.
        #[serde(skip)]
        missing: Option<Missing>,
    },
}

impl Facts {
    /// The modules to remove, by block, to open a missing pathway at the least loss found.
    pub fn opening(&self) -> Option<&[(BlockId, Vec<Cell>)]> {
        match self {
            Self::FirePaths { opening, .. } | Self::FirePlanePath { opening } => opening.as_deref(),
            _ => None,
        }
    }
}

/// In what a conductor falls short.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Thin {
    /// After all corrections it carries too little.
    Carried,
    /// Its terminals take too little.
    Terminals,
    /// Its overcurrent device is too large for it.
    Protected,
}

/// What is wrong with a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ReadingWrong {
    /// Its volts.
    Volts,
    /// + and − are taken for one another.
    Polarity,
    /// Its insulation: megohms.
    Insulation,
    /// Its insulation was tested at too few volts.
    TestVolts,
    /// Its insulation was tested with electronics connected, which their makers don't allow.
    TestConnected,
}

/// What is wrong with an outline.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Fault {
    /// A coordinate is not finite.
    NoNumber,
    /// Fewer than three corners.
    TooFewCorners,
    /// Two consecutive corners coincide.
    RepeatedCorner,
    /// It encloses no area.
    NoArea,
    /// It intersects itself.
    FoldsOver,
    /// A hole lies outside.
    HoleOutside,
}

impl Fault {
    /// The code in keys and reports.
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
    /// The outline of its face is invalid.
    Defective,
    /// Its face currently has no area.
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

/// What a fire class is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Covering {
    /// The array.
    Array,
    /// The roof covering around it.
    Beyond,
}

/// Why a fire class is required.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ClassAsked {
    /// An edge of the roof is nearer than this to a lot line.
    LotLine(Length),
    /// The law requires it.
    Law,
}
