use super::BoxStands;
use super::Kit;
use crate::{PenetrationKind, Unit};
use chalkcourse_geometry::EdgeKind;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What can be counted or measured on the blocks as placed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Measure {
    /// Each module.
    Module,
    /// Each block.
    Block,
    /// Each row of modules without a break.
    Row,
    /// Each seam between two modules of one row.
    Seam,
    /// Each run of base rail: its length. A row above the lowest with nothing below it has a rail of its own.
    BaseRail,
    /// Each side run: its length up the slope.
    Side,
    /// Each course that a side run crosses, and one more: the pieces of step flashing.
    SideCourse,
    /// Each run of head flashing: its length.
    Head,
    /// Each module with head flashing above it, over its whole width or a part.
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
    /// Area of the strip around the array that the kit's membrane margin makes, on the face and once where blocks are
    /// near one another.
    Around,
    /// Area of the deck under the array and of the strip around it, on the face: what the array's membrane covers, once
    /// where blocks are near one another.
    ArrayMembrane,
    /// Length of the way from the lowest row past every module device to the top of the array.
    BondingPath,
    /// Each module that the wind screening asks more fasteners of than the kit sets: how many more.
    WindFastener,
    /// Pieces of another part, before waste and packages.
    Part(String),
    /// Sticks of this length in the cut list of another part.
    Sticks(String),
    /// Joints between two pieces of a run in the cut list of another part.
    Joints(String),
    /// The job: one.
    Job,
    /// Each person of the kit's crews.
    Person,
    /// Each person of those crews that work on the roof.
    PersonOnRoof,
    /// Area of the deck that is covered anew.
    Deck,
    /// Area of old roofing that comes off, each layer counted.
    TearOff,
    /// Area of the deck less that under the array.
    Shingled,
    /// Area of the deck where the rule book asks for one layer of underlayment and no self-adhered membrane of the order
    /// lies: neither the leak barrier at the eaves, in whole widths of its roll, nor the array's. What underlayment and
    /// membrane lap is in it.
    SingleUnderlayment,
    /// The same where the rule book asks for two.
    DoubleUnderlayment,
    /// Area along the eaves that the rule book protects against ice, full length, under the array too: it is laid first.
    LeakBarrier,
    /// Area of the strip around each penetration that the kit's margin makes.
    AroundThrough,
    /// Each line of the roof of this kind: its length.
    Edge(EdgeKind),
    /// Each wall line up the slope: its length.
    SideWall,
    /// Each course that a wall line up the slope crosses, and one more: the pieces of step flashing.
    SideWallCourse,
    /// Each wall line across the slope: its length.
    HeadWall,
    /// Each wall line up the slope that begins at an eave: water that comes down it must be turned out.
    KickOut,
    /// Each penetration of this kind.
    Through(PenetrationKind),
    /// Each round pipe whose outside is more than the one and at most the other, in millimetres.
    Pipe {
        /// More than this.
        over_mm: u32,
        /// Not more than this.
        to_mm: u32,
    },
    /// Each course beside a chimney or skylight, on both sides, and one more a side: the pieces of step flashing.
    CurbCourse,
    /// The lower and the upper side of each chimney and skylight: its length.
    CurbWidth,
    /// What flashes each chimney, whether it is drawn as a part of the house or as what comes through a face.
    Chimney(ChimneyPart),
    /// Each circuit.
    Circuit,
    /// Each extension lead of this number between two modules of a circuit.
    ExtensionLead(String),
    /// Each way from an end of a circuit to its junction box: its length.
    HomeRun(HomeRun),
    /// Length of the bare copper from the upper end of the bonding path to the junction box of the block's circuit.
    GroundToBox,
    /// Each end of a circuit that is led to a junction box.
    HomeRunEnd,
    /// Each junction box on that side of the deck.
    JunctionBox(BoxStands),
    /// Each inverter of this number that the job has.
    Inverter(String),
    /// The cricket behind each chimney, or whatever else comes through, that is drawn with one or that the rule book asks one for.
    Cricket(CricketPart),
}

/// Which conductor of a home run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum HomeRun {
    /// Of a dc string, from its + end.
    Positive,
    /// From its − end.
    Negative,
    /// Of an ac branch, from its last device.
    Branch,
}

/// What flashes a chimney.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ChimneyPart {
    /// Each chimney.
    Each,
    /// Its lower side with the kit's return at both ends: a length.
    Apron,
    /// Each course on both sides, and one more a side: pieces of step flashing.
    Course,
    /// Its upper side with the kit's return at both ends, where no cricket is: a length.
    BackPan,
    /// Each side all around, along the cricket where there is one: its length.
    Counter,
}

/// What a cricket is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum CricketPart {
    /// Each cricket.
    Each,
    /// Each piece of its frame, its length: the ridge, a rafter on each side against what it stands behind, a sleeper on
    /// the deck in each valley.
    Frame,
    /// Area of its two faces on their slope.
    Area,
    /// Each of its two valleys: its length.
    Valley,
    /// Each of the two lines where it meets what it stands behind: its length.
    Wall,
}

impl Measure {
    /// What it is measured in. A part that the kit does not have counts as pieces.
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
