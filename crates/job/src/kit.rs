//! A manufacturer's kit: the module, its parts, and how they are counted.

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
mod wiring_check;

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

/// A manufacturer's kit: the module, what is allowed with it, and every part with how it is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Kit {
    /// Its name.
    pub name: String,
    /// The issue of the kit, as the manufacturer writes it.
    pub issue: String,
    /// The module.
    pub module: ModuleSpec,
    /// Allowed orientations of the module.
    pub orientations: Vec<Orientation>,
    /// The least pitch of a face with modules.
    pub least_pitch: Pitch,
    /// The gap between adjacent modules.
    pub reveal: RevealRange,
    /// How far the flashing extends on the deck beyond the modules.
    pub flashing: Flashing,
    /// Clearances required by the kit.
    #[serde(default)]
    pub clearances: Clearances,
    /// Crews on the roof and on the ground.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crews: Vec<Crew>,
    /// How rows may be laid relative to each other and to the courses.
    #[serde(default)]
    pub laying: Laying,
    /// Where the base rail may be; `None` if the manufacturer does not specify it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base_rail: Option<RailLimits>,
    /// Decks that it may be fastened to; `None` if the manufacturer does not specify them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck: Option<DeckLimits>,
    /// The fire class for which it is listed; `None` if it is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire: Option<FireListing>,
    /// What fastens the modules to the deck; `None` if the manufacturer does not specify it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hold_down: Option<HoldDown>,
    /// How its modules are wired; `None` if the manufacturer does not specify it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wiring: Option<KitWiring>,
    /// Options of an order that are off by default.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub choices: Vec<Choice>,
    /// All parts that can be ordered.
    pub parts: Vec<Part>,
    /// Where the manufacturer's numbers come from, and cautions.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notes: String,
}

/// The module.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ModuleSpec {
    /// Its part number, which is in `parts`.
    pub part: String,
    /// The long side.
    pub length: Length,
    /// The short side.
    pub width: Length,
    /// Thickness.
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
    /// Temperature coefficient of the open-circuit voltage, percent per kelvin.
    pub voc_percent_per_kelvin: f64,
    /// Temperature coefficient of power, percent per kelvin.
    pub power_percent_per_kelvin: f64,
}

/// The reveals that a kit allows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RevealRange {
    /// Least reveal.
    pub least: Length,
    /// Greatest reveal.
    pub most: Length,
    /// The default for a new block.
    pub usual: Length,
}

/// How far flashing extends on the deck beyond the modules.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Flashing {
    /// Head flashing up the slope beyond the top row: the part that stays visible below the shingles.
    pub head: Length,
    /// How far the shingles overlap the head flashing, beyond its visible part.
    #[serde(default)]
    pub head_lap: Length,
    /// Side flashing, beyond each side.
    pub side: Length,
    /// Base rail, down the slope below the lowest row.
    pub base: Length,
    /// Membrane around the array, beyond the modules on all sides.
    pub membrane: Length,
    /// Membrane around penetrations, on all sides.
    #[serde(default = "usual_through")]
    pub through: Length,
    /// Overlap of underlayment and an adjacent self-adhered membrane.
    #[serde(default = "usual_lap")]
    pub underlayment_lap: Length,
    /// How far apron and back pan of a chimney extend past each of its sides.
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

/// Common practice, no source: apron and back pan extend about 4 in past each side of a chimney.
fn usual_return() -> Length {
    Length::from_inches(4.0)
}

/// Clearances required by the kit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clearances {
    /// Between two blocks on one face, for the flashing of both.
    pub between_blocks: Length,
}

/// A crew. The hourly rate of its members is in the price list, under the number of the labour part.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Crew {
    /// Its name.
    pub name: String,
    /// Number of people.
    pub people: u32,
    /// Whether they work on the roof, with a risk of falls; the default for files that don't say.
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

/// An option of an order: terms of parts with its code in `when` only count if it is taken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Choice {
    /// The code that terms and orders refer to.
    pub code: String,
    /// Its name.
    pub name: String,
    /// When to take it.
    pub why: String,
}

/// A part of the kit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The manufacturer's part number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Its group on the order.
    pub group: Group,
    /// The stage of work at which it is installed; by default the usual one of its group.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Stage>,
    /// The last stage at which some of it is installed, if later.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<Stage>,
    /// Part numbers that it overlaps where they meet, so that water runs from it onto them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub laps: Vec<String>,
    /// Whether it is returned after the job, so that an office may own it.
    #[serde(default, skip_serializing_if = "is_no")]
    pub comes_back: bool,
    /// For labour: the name of the crew.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crew: Option<String>,
    /// What it is counted in.
    pub unit: Unit,
    /// How it is counted: the sum of these terms.
    pub needs: Vec<Term>,
    /// Loss to breakage and cutting, as a share of the need: 0.05 is 5 %; or a share per kind of roof.
    #[serde(default)]
    pub waste: Waste,
    /// How it is packed.
    pub package: Package,
    /// The source of the count.
    pub source: Source,
}

/// One term of a count: an amount for each unit of a measure.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// The measure.
    pub of: Measure,
    /// The amount for each unit.
    pub each: Amount,
    /// The stage of work at which this is needed, if not the part's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<Stage>,
    /// The code of the [`Choice`] with which it counts; by default it always counts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub when: Option<String>,
    /// Whether it only counts once circuits are drawn, or only until then; by default it always counts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wired: Option<bool>,
    /// Whether it is a spare: no work waits for it.
    #[serde(default, skip_serializing_if = "is_no")]
    pub spare: bool,
}

/// How a part is packed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Package {
    /// Its name on the pallet list: "box", "roll", "stick".
    pub name: String,
    /// Its content, in the unit of the part.
    pub holds: Holds,
}

impl Kit {
    /// The part with this number.
    pub fn part(&self, number: &str) -> Option<&Part> {
        self.parts.iter().find(|part| part.number == number)
    }
}

impl Part {
    /// The stage of work at which it is installed, unless a term says otherwise.
    pub fn stage(&self) -> Stage {
        self.stage.unwrap_or(self.group.usual_stage())
    }

    /// The stage of work at which a term of it is needed.
    pub fn stage_of(&self, term: &Term) -> Stage {
        term.stage.unwrap_or(self.stage())
    }
}
