use super::BoxStands;
use super::Kit;
use crate::{PenetrationKind, Unit};
use chalkcourse_geometry::EdgeKind;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What can be counted or measured on the placed blocks and the roof.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Measure {
    /// Each module.
    Module,
    /// Each block.
    Block,
    /// Each contiguous row of modules.
    Row,
    /// Each seam between two modules of a row.
    Seam,
    /// Each run of base rail: its length. A row above the lowest that has nothing below it has a rail of its own.
    BaseRail,
    /// Each side run: its length up the slope.
    Side,
    /// Each course that a side run crosses, plus one: the pieces of step flashing.
    SideCourse,
    /// Each run of head flashing: its length.
    Head,
    /// Each module with head flashing above it, over its whole width or part of it.
    HeadModule,
    /// Each end of a head run and each seam between modules under it.
    HeadSupport,
    /// Each left head corner.
    HeadCornerLeft,
    /// Each right head corner.
    HeadCornerRight,
    /// Each corner where a head run meets the side of a higher row.
    InsideCorner,
    /// Each left corner at the base rail.
    BaseCornerLeft,
    /// Each right corner at the base rail.
    BaseCornerRight,
    /// Area of the deck under the array, reveals included.
    Under,
    /// Area of the strip around the array given by the kit's membrane margin, on the face, counted once where blocks
    /// are close together.
    Around,
    /// Area of the deck under the array and of the strip around it, on the face: what the array's membrane covers,
    /// counted once where blocks are close together.
    ArrayMembrane,
    /// Length of the path from the lowest row past every module device to the top of the array.
    BondingPath,
    /// Each module for which the wind screening requires more fasteners than the kit's: how many more.
    WindFastener,
    /// Pieces of another part, before waste and packaging.
    Part(String),
    /// Sticks of this length in the cut list of another part.
    Sticks(String),
    /// Joints between two pieces of a run in the cut list of another part.
    Joints(String),
    /// Once per job.
    Job,
    /// Each person of the kit's crews.
    Person,
    /// Each person of those crews that work on the roof.
    PersonOnRoof,
    /// Area of the deck that gets a new roof covering.
    Deck,
    /// Area of old roofing to be torn off, each layer counted.
    TearOff,
    /// Area of the deck less that under the array.
    Shingled,
    /// Area of the deck where the rule book requires one layer of underlayment and no self-adhered membrane of the
    /// order is: neither the leak barrier at the eaves, in whole widths of its roll, nor the array's. Includes the
    /// overlap of underlayment and membrane.
    SingleUnderlayment,
    /// The same where the rule book requires two layers.
    DoubleUnderlayment,
    /// Area along the eaves that the rule book protects against ice, full length, including under the array: it is
    /// installed first.
    LeakBarrier,
    /// Area of the strip around each penetration given by the kit's margin.
    AroundThrough,
    /// Each roof line of this kind: its length.
    Edge(EdgeKind),
    /// Each wall line up the slope: its length.
    SideWall,
    /// Each course that a wall line up the slope crosses, plus one: the pieces of step flashing.
    SideWallCourse,
    /// Each wall line across the slope: its length.
    HeadWall,
    /// Each wall line up the slope that starts at an eave: water running down it must be diverted.
    KickOut,
    /// Each penetration of this kind.
    Through(PenetrationKind),
    /// Each round pipe with an outside diameter greater than the first and no greater than the second value, in
    /// millimetres.
    Pipe {
        /// Greater than this.
        over_mm: u32,
        /// No greater than this.
        to_mm: u32,
    },
    /// Each course beside a chimney or skylight, on both sides, plus one per side: the pieces of step flashing.
    CurbCourse,
    /// The lower and the upper side of each chimney and skylight: its length.
    CurbWidth,
    /// The flashing of each chimney, whether drawn as a part of the house or as a penetration.
    Chimney(ChimneyPart),
    /// Each circuit.
    Circuit,
    /// Each extension lead of this number between two modules of a circuit.
    ExtensionLead(String),
    /// Each home run from an end of a circuit to its junction box: its length.
    HomeRun(HomeRun),
    /// Length of bare copper from the upper end of the bonding path to the junction box of the block's circuit.
    GroundToBox,
    /// Each end of a circuit with a home run to a junction box.
    HomeRunEnd,
    /// Each junction box at that location.
    JunctionBox(BoxStands),
    /// Each inverter of this number in the job.
    Inverter(String),
    /// The cricket behind each chimney or other penetration that is drawn with one or for which the rule book requires
    /// one.
    Cricket(CricketPart),
}

/// A conductor of a home run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum HomeRun {
    /// Of a dc string, from its positive end.
    Positive,
    /// Of a dc string, from its negative end.
    Negative,
    /// Of an ac branch, from its last device.
    Branch,
}

/// Flashing of a chimney.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ChimneyPart {
    /// Each chimney.
    Each,
    /// Its lower side plus the kit's return at both ends: a length.
    Apron,
    /// Each course on both sides, plus one per side: pieces of step flashing.
    Course,
    /// Its upper side plus the kit's return at both ends, if there is no cricket: a length.
    BackPan,
    /// Each of its sides, along the cricket if there is one: its length.
    Counter,
}

/// Components of a cricket.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum CricketPart {
    /// Each cricket.
    Each,
    /// Each piece of its frame, its length: the ridge, a rafter on each side against what it is behind, a sleeper on
    /// the deck in each valley.
    Frame,
    /// Area of its two faces on the slope.
    Area,
    /// Each of its two valleys: its length.
    Valley,
    /// Each of the two lines where it meets what it is behind: its length.
    Wall,
}

impl Measure {
    /// Its unit. A part that the kit does not have counts as pieces.
    pub fn unit(&self, kit: &Kit) -> Unit {
        match self {
            Self::BaseRail
            | Self::Side
            | Self::Head
            | Self::BondingPath
            | Self::HomeRun(_)
            | Self::GroundToBox
            | Self::Edge(_)
            | Self::SideWall
            | Self::HeadWall
            | Self::CurbWidth
            | Self::Chimney(ChimneyPart::Apron | ChimneyPart::BackPan | ChimneyPart::Counter)
            | Self::Cricket(CricketPart::Frame | CricketPart::Valley | CricketPart::Wall) => Unit::Length,
            Self::Under
            | Self::Around
            | Self::ArrayMembrane
            | Self::Cricket(CricketPart::Area)
            | Self::Deck
            | Self::TearOff
            | Self::Shingled
            | Self::SingleUnderlayment
            | Self::DoubleUnderlayment
            | Self::LeakBarrier
            | Self::AroundThrough => Unit::Area,
            Self::Part(number) => kit.part(number).map_or(Unit::Each, |part| part.unit),
            Self::Module
            | Self::Block
            | Self::Row
            | Self::Seam
            | Self::SideCourse
            | Self::HeadModule
            | Self::HeadSupport
            | Self::WindFastener
            | Self::HeadCornerLeft
            | Self::HeadCornerRight
            | Self::InsideCorner
            | Self::BaseCornerLeft
            | Self::BaseCornerRight
            | Self::Sticks(_)
            | Self::Joints(_)
            | Self::Job
            | Self::Person
            | Self::PersonOnRoof
            | Self::KickOut
            | Self::Circuit
            | Self::ExtensionLead(_)
            | Self::HomeRunEnd
            | Self::JunctionBox(_)
            | Self::Inverter(_)
            | Self::Chimney(ChimneyPart::Each | ChimneyPart::Course)
            | Self::Cricket(CricketPart::Each)
            | Self::SideWallCourse
            | Self::Through(_)
            | Self::Pipe { .. }
            | Self::CurbCourse => Unit::Each,
        }
    }
}
