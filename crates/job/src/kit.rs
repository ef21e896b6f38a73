mod amount;
mod check;
mod group;
mod measure;

pub use amount::{Amount, OtherStick, Roll, Sticks};
pub use group::{Group, Stage};
pub use measure::Measure;

mod laying;
pub use laying::{BaseRail, Laying, RowJoints};

use crate::{DeckLimits, FireListing, Holds, Orientation, RailLimits, Source};
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
    /// Who works on the roof and on the ground.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crews: Vec<Crew>,
    /// How rows may be laid upon one another and upon the courses.
    #[serde(default)]
    pub laying: Laying,
    /// Where the base rail may be; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base_rail: Option<RailLimits>,
    /// The deck that it may be screwed to; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck: Option<DeckLimits>,
    /// The class against fire for which it is listed; `None` where it is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire: Option<FireListing>,
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
    /// Membrane around what comes through the roof, on all sides.
    #[serde(default = "usual_through")]
    pub through: Length,
}

/// Common practice, no source: half a foot of membrane around a pipe or a curb.
fn usual_through() -> Length {
    Length::from_inches(6.0)
}

/// Room that the kit itself asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clearances {
    /// Between two blocks on one face, for the flashing of both.
    pub between_blocks: Length,
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
    /// Work of one person, in hours.
    Time,
    /// Mass, in kilograms inside.
    Mass,
}

/// People who work together. What an hour of one of them costs stands in the price list, under the number of the work.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Crew {
    /// What they are called.
    pub name: String,
    /// How many they are.
    pub people: u32,
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
    /// For which stage of work it is needed; where none is named, the usual one of its group.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Stage>,
    /// For work: the name of the crew that does it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crew: Option<String>,
    /// What it is counted in.
    pub unit: Unit,
    /// How it is counted: the sum of these.
    pub needs: Vec<Term>,
    /// What is lost to breakage and cutting, as a share of the need: 0.05 is 5 %.
    #[serde(default)]
    pub waste: f64,
    /// How it is packed.
    pub package: Package,
    /// Whose word the count is.
    pub source: Source,
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

/// How a part is packed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Package {
    /// What the pallet list calls it: "box", "roll", "stick".
    pub name: String,
    /// How much is in it, in what the part is counted in.
    pub holds: Holds,
}

impl Kit {
    /// The part of that number.
    pub fn part(&self, number: &str) -> Option<&Part> {
        self.parts.iter().find(|part| part.number == number)
    }
}

impl Part {
    /// For which stage of work it is needed.
    pub fn stage(&self) -> Stage {
        self.stage.unwrap_or(self.group.usual_stage())
    }
}
