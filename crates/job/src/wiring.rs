//! What a person decided about the wires: which modules are one circuit and in what order, junction boxes, and by which edition.

use crate::{BlockId, BoxId, BoxStands, Cell, CircuitId, CodeEdition, Gauge, Service};
use chalkcourse_geometry::{DVec2, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A module by what it is: its block and its place in it, so that it keeps its circuit where the block goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ModuleAt {
    /// The block.
    pub block: BlockId,
    /// The place in it.
    pub cell: Cell,
}

/// A string or a branch: modules plugged one to the next.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Circuit {
    /// Its number in the job.
    pub id: CircuitId,
    /// What people call it.
    pub name: String,
    /// Its modules in the order of plugging: the lead of − of the first and the lead of + of the last stay free. Of a branch of ac
    /// devices, the last is the one beside the box.
    pub modules: Vec<ModuleAt>,
    /// The junction box that both ends go to; `None` for none yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<BoxId>,
    /// The input of an inverter that it is led to; `None` for none yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub input: Option<InverterInput>,
}

/// An input of one of the job's inverters. Both count from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct InverterInput {
    /// Which of [`WiringChoices::inverters`].
    pub inverter: u32,
    /// Which input of it.
    pub input: u32,
}

/// A junction box, in which home runs and the ground end.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct JunctionBox {
    /// Its number in the job.
    pub id: BoxId,
    /// What people call it.
    pub name: String,
    /// Where it is, in plan: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub at: DVec2,
    /// Whether it stands on the roof, with a flashing of its own, or under the deck.
    #[serde(default)]
    pub stands: BoxStands,
    /// The way from it down to the inverter or the combined panel, leg by leg.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub legs: Vec<Leg>,
    /// Conductors of other circuits of the house that pass through it and lie in its raceway.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub others: Vec<OtherConductors>,
}

/// Conductors of circuits that are not the array's, in a junction box and its raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OtherConductors {
    /// What they carry.
    pub current: Current,
    /// How thick they are.
    pub gauge: Gauge,
    /// How many.
    pub count: u32,
}

/// Direct or alternating current.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Current {
    /// Direct.
    Dc,
    /// Alternating.
    Ac,
}

/// A stretch of the way from a junction box.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Leg {
    /// How long.
    pub length: Length,
    /// What the conductors lie in.
    pub lies: LiesIn,
}

/// What conductors lie in.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum LiesIn {
    /// Free air.
    FreeAir,
    /// A raceway on the roof, so high above it.
    RoofRaceway(Length),
    /// A raceway in the attic.
    Attic,
    /// A raceway on or in a wall.
    Wall,
}

/// What is decided about the wires as a whole.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct WiringChoices {
    /// The edition of the code.
    pub edition: CodeEdition,
    /// The lowest temperature of the air that is expected, °C: the mean of the years' lowest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lowest_celsius: Option<f64>,
    /// The highest temperature of the air, °C, that two of a hundred summer hours exceed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub highest_celsius: Option<f64>,
    /// The temperature of cells, and of the leads under them, in full sun at that highest temperature, °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hottest_cell_celsius: Option<f64>,
    /// How warm the attic becomes on such a day, °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub attic_celsius: Option<f64>,
    /// Whether the highest voltage follows from the table of the code in place of the module's own coefficient.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub voltage_by_table: bool,
    /// Numbers of the kit's inverters that the job has, one for each.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub inverters: Vec<String>,
    /// The panel that the output is connected to; `None` where nobody looked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub service: Option<Service>,
    /// A person's own text in place of a label's, by the label's code.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub label_texts: BTreeMap<String, String>,
}

impl Circuit {
    /// Most modules in one circuit, so that a file can't ask for a million.
    pub const MOST_MODULES: usize = 1_000;
}

impl WiringChoices {
    /// Most labels with a text of their own.
    pub const MOST_LABELS: usize = 100;
    /// Most characters of a label's text.
    pub const MOST_LABEL_LETTERS: usize = 500;
}
