//! A maker's kit: the module, its parts, and how they are counted.

mod amount;
mod check;
mod conductors;
mod group;
mod hold_down;
mod laps;
mod laying;
mod measure;
mod stage;
mod waste;
mod wiring;

pub use amount::{Amount, OtherStick, Roll, Sticks};
pub use conductors::{
    Bonding, ConductorChoice, Gauge, Insulation, Raceway, RacewayKind, TorqueSetting, TradeSize,
};
pub use group::Group;
pub use hold_down::{Fastener, HoldDown, LoadWay, OnPath};
pub use laying::{BaseRail, Laying, RowJoints};
pub use measure::{ChimneyPart, CricketPart, HomeRun, Measure};
pub use stage::Stage;
pub(crate) use waste::is_share;
pub use waste::{RoofKind, Waste};
pub use wiring::{
    AcDevice, BoxStands, DcDevice, DeviceInput, ExtensionLead, Inverter, KitWiring, Leads, ModuleDevice,
};

use crate::{DeckLimits, FireListing, Holds, Orientation, RailLimits, Source, Unit};
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
    /// What holds the modules down to the deck; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hold_down: Option<HoldDown>,
    /// How its modules are wired; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wiring: Option<KitWiring>,
    /// What an office may take with an order, and does not otherwise.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub choices: Vec<Choice>,
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
    /// Head flashing, up the slope beyond the top row: what of it stays visible below the shingles.
    pub head: Length,
    /// How far the shingles lie over the head flashing, beyond what stays visible of it.
    #[serde(default)]
    pub head_lap: Length,
    /// Side flashing, beyond each side.
    pub side: Length,
    /// Base rail, down the slope below the lowest row.
    pub base: Length,
    /// Membrane around the array, beyond the modules on all sides.
    pub membrane: Length,
    /// Membrane around what comes through the roof, on all sides.
    #[serde(default = "usual_through")]
    pub through: Length,
    /// How far underlayment and a self-adhered membrane that it meets lie over one another.
    #[serde(default = "usual_lap")]
    pub underlayment_lap: Length,
    /// How far apron and back pan of a chimney reach past each of its sides.
    #[serde(default = "usual_return")]
    pub chimney_return: Length,
}

/// Common practice, no source: half a foot of membrane around a pipe or a curb.
fn usual_through() -> Length {
    Length::from_inches(6.0)
}

/// IRC table R905.1.1(2) (2018): a course of underlayment laps the one below by 2 in.
fn usual_lap() -> Length {
    Length::from_inches(2.0)
}

/// Common practice, no source: apron and back pan reach about 4 in past each side of a chimney.
fn usual_return() -> Length {
    Length::from_inches(4.0)
}

/// Room that the kit itself asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clearances {
    /// Between two blocks on one face, for the flashing of both.
    pub between_blocks: Length,
}

/// People who work together. What an hour of one of them costs stands in the price list, under the number of the work.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Crew {
    /// What they are called.
    pub name: String,
    /// How many they are.
    pub people: u32,
    /// Whether they work on the roof, where people fall; a file that does not say puts them there.
    #[serde(default = "yes", skip_serializing_if = "is_yes")]
    pub on_roof: bool,
}

fn yes() -> bool {
    true
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_yes(value: &bool) -> bool {
    *value
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_no(value: &bool) -> bool {
    !*value
}

/// What an office may take with an order: terms of parts with its code in `when` count only then.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Choice {
    /// What terms and orders name it by.
    pub code: String,
    /// What it is.
    pub name: String,
    /// When to take it.
    pub why: String,
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
    /// At which stage of work it is laid; where none is named, the usual one of its group.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Stage>,
    /// The last stage at which some of it is laid, where that is a later one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<Stage>,
    /// Numbers of the parts that it lies over where they meet, so that water runs from it onto them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub laps: Vec<String>,
    /// Whether it comes back from the job, so that an office may have its own.
    #[serde(default, skip_serializing_if = "is_no")]
    pub comes_back: bool,
    /// For work: the name of the crew that does it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crew: Option<String>,
    /// What it is counted in.
    pub unit: Unit,
    /// How it is counted: the sum of these.
    pub needs: Vec<Term>,
    /// What is lost to breakage and cutting, as a share of the need: 0.05 is 5 %; or a share for each kind of roof.
    #[serde(default)]
    pub waste: Waste,
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
    /// At which stage of work this is needed, where that is not the part's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Stage>,
    /// The code of the [`Choice`] with which it counts; always where none is named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub when: Option<String>,
    /// Whether it counts only once circuits are drawn, or only until then; always where nothing is said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wired: Option<bool>,
    /// Whether it is to have one in hand: nothing waits for it.
    #[serde(default, skip_serializing_if = "is_no")]
    pub spare: bool,
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
    /// At which stage of work it is laid, where no term says another.
    pub fn stage(&self) -> Stage {
        self.stage.unwrap_or(self.group.usual_stage())
    }

    /// At which stage of work a term of it is needed.
    pub fn stage_of(&self, term: &Term) -> Stage {
        term.stage.unwrap_or(self.stage())
    }
}
