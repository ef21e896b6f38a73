mod check;

use crate::{Holds, Orientation};
use chalkcourse_geometry::{Length, Pitch};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A maker's kit: the module, what it allows, and every part with the way it is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Kit {
    /// Its name.
    pub name: String,
    /// Which issue of the kit, as the maker writes it.
    pub issue: String,
    /// The module.
    pub module: ModuleSpec,
    /// Ways that the module may lie.
    pub orientations: Vec<Orientation>,
    /// The least pitch of a face that carries it.
    pub least_pitch: Pitch,
    /// The gap between neighbouring modules.
    pub reveal: RevealRange,
    /// How far the flashing reaches on the deck beyond the modules.
    pub flashing: Flashing,
    /// Where the base rail may be: how far the lowest row stays above the eave and what is kept free for work.
    #[serde(default)]
    pub clearances: Clearances,
    /// All parts that are ordered.
    pub parts: Vec<Part>,
    /// Where the maker's numbers come from, and cautions.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notes: String,
}

/// The module as made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ModuleSpec {
    /// Its part number, which is among the parts.
    pub part: String,
    /// The long side.
    pub length: Length,
    /// The short side.
    pub width: Length,
    /// How thick.
    pub thickness: Length,
    /// In kilograms.
    pub mass_kg: f64,
    /// Rated power at standard test conditions, in watts.
    pub watts: f64,
    /// Electrical ratings.
    pub electrical: Electrical,
}

/// Ratings of a module at standard test conditions (1000 W/m², 25 °C cell, AM 1.5; IEC 61215).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Electrical {
    /// Open-circuit voltage.
    pub voc_volts: f64,
    /// Short-circuit current.
    pub isc_amps: f64,
    /// Voltage at the greatest power.
    pub vmp_volts: f64,
    /// Current at the greatest power.
    pub imp_amps: f64,
    /// Change of the open-circuit voltage, percent a kelvin.
    pub voc_percent_per_kelvin: f64,
    /// Change of power, percent a kelvin.
    pub power_percent_per_kelvin: f64,
}

/// The reveal that a kit allows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RevealRange {
    /// Not less.
    pub least: Length,
    /// Not more.
    pub most: Length,
    /// What a new block starts with.
    pub usual: Length,
}

/// How far flashing reaches on the deck beyond the modules.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Flashing {
    /// Head flashing, up the slope beyond the top row.
    pub head: Length,
    /// Side flashing, beyond each side.
    pub side: Length,
    /// Base rail, down the slope below the lowest row.
    pub base: Length,
    /// Membrane around the array, beyond the modules on all sides.
    pub membrane: Length,
}

/// Room that the kit itself asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clearances {
    /// Between two blocks on one face, for the flashing of both.
    pub between_blocks: Length,
}

/// What a part belongs to on the order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Group {
    /// Modules, their electronics and what holds them.
    Solar,
    /// Base rail, side, head and corner flashing and their fasteners.
    Flashing,
    /// Membranes and underlayment under and around the array.
    Roofing,
    /// Grounding, leads and the junction box.
    Wire,
}

impl Group {
    /// All groups, in the order in which an order lists them.
    pub const ALL: [Self; 4] = [Self::Solar, Self::Flashing, Self::Roofing, Self::Wire];

    /// The heading on an order.
    pub fn name(self) -> &'static str {
        match self {
            Self::Solar => "Solar",
            Self::Flashing => "Flashing",
            Self::Roofing => "Roofing",
            Self::Wire => "Wire and grounding",
        }
    }
}

/// What a part is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// Pieces.
    Each,
    /// Length, in metres inside.
    Length,
    /// Area on the slope, in square metres inside.
    Area,
}

/// One part of the kit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Where it stands on the order.
    pub group: Group,
    /// What it is counted in.
    pub unit: Unit,
    /// How it is counted: the sum of these.
    pub needs: Vec<Term>,
    /// What is lost to breakage and cutting, as a share of the need: 0.05 is 5 %.
    #[serde(default)]
    pub waste: f64,
    /// How it is packed.
    pub package: Package,
    /// Whose word the count is: a section, a listing, or "common practice, no source".
    pub source: String,
}

/// One term of a count: so much for each of something.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// Of what.
    pub of: Measure,
    /// How much for each: a number; for a measured length, a part's share of it.
    pub each: Amount,
}

/// How much for each. What a term gives must be what its part is counted in; [`Kit::check`] says where it is not.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Amount {
    /// So many pieces for each piece, metre or square metre, metres of length for each metre, or square metres for
    /// each square metre.
    Count(f64),
    /// So much length for each piece or each run.
    Length(Length),
    /// Pieces of this length end to end along each run, each lapping the next; a run's last piece is cut and its
    /// offcut is not used again.
    Pieces {
        /// Length of a piece.
        length: Length,
        /// How far one laps the next.
        lap: Length,
    },
    /// One piece at this spacing, or less, along each run, and one more at its end; over an area one for each square
    /// of this spacing.
    Spaced(Length),
}

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
    /// Area of the strip around the array that the kit's membrane margin makes.
    Around,
    /// Length of the way from the lowest row past every module device to the top of the array.
    BondingPath,
    /// Pieces of another part, before waste and packages.
    Part(String),
}

/// How a part is packed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Package {
    /// What the pallet list calls it: "box", "roll", "stick".
    pub name: String,
    /// How much is in it, in what the part is counted in.
    pub holds: Holds,
}

impl Measure {
    /// What it is measured in. A part that the kit does not have counts as pieces.
    pub fn unit(&self, kit: &Kit) -> Unit {
        match self {
            Self::BaseRail | Self::Side | Self::Head | Self::BondingPath => Unit::Length,
            Self::Under | Self::Around => Unit::Area,
            Self::Part(number) => kit.part(number).map_or(Unit::Each, |part| part.unit),
            Self::Module
            | Self::Block
            | Self::Row
            | Self::Seam
            | Self::SideCourse
            | Self::HeadModule
            | Self::HeadSupport
            | Self::HeadCornerLeft
            | Self::HeadCornerRight
            | Self::InsideCorner
            | Self::BaseCornerLeft
            | Self::BaseCornerRight => Unit::Each,
        }
    }
}

impl Kit {
    /// The part of that number.
    pub fn part(&self, number: &str) -> Option<&Part> {
        self.parts.iter().find(|part| part.number == number)
    }
}
