//! What a person decided about the wires: which modules are one circuit and in what order, junction boxes, and by which edition.

use crate::{BlockId, BoxId, Cell, CircuitId, EditError, Face, Job};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_words::later as words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

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
}

/// On which side of the deck a junction box is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum BoxStands {
    /// On the roof.
    #[default]
    OnRoof,
    /// Under the deck.
    UnderDeck,
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
    /// A metal raceway in the attic.
    Attic,
    /// A raceway on or in a wall.
    Wall,
}

/// The edition of the NEC that a job is checked by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
pub enum CodeEdition {
    /// NFPA 70, 2017.
    #[default]
    #[serde(rename = "2017")]
    Nec2017,
    /// NFPA 70, 2020.
    #[serde(rename = "2020")]
    Nec2020,
    /// NFPA 70, 2023.
    #[serde(rename = "2023")]
    Nec2023,
}

impl CodeEdition {
    /// All that a job may be checked by.
    pub const ALL: [Self; 3] = [Self::Nec2017, Self::Nec2020, Self::Nec2023];

    /// Its year.
    pub fn year(self) -> u32 {
        match self {
            Self::Nec2017 => 2017,
            Self::Nec2020 => 2020,
            Self::Nec2023 => 2023,
        }
    }
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
    /// Whether the highest voltage follows from the table of the code in place of the module's own coefficient.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub voltage_by_table: bool,
    /// Numbers of the kit's inverters that the job has, one for each.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub inverters: Vec<String>,
}

impl Circuit {
    /// Most modules in one circuit, so that a file can't ask for a million.
    pub const MOST_MODULES: usize = 1_000;
}

fn check_name(name: &str) -> Result<(), EditError> {
    if name.trim().is_empty() { Err(EditError::NoName) } else { Ok(()) }
}

/// What a circuit must be to be in a job at all. One that breaks a limit is told as a finding.
pub(crate) fn check_circuit(job: &Job<Face>, circuit: &Circuit) -> Result<(), EditError> {
    check_name(&circuit.name)?;
    let count = circuit.modules.len();
    if !(1..=Circuit::MOST_MODULES).contains(&count) {
        return Err(EditError::CircuitSize { name: circuit.name.clone(), modules: count });
    }
    let mut seen = BTreeSet::new();
    if !circuit.modules.iter().all(|module| seen.insert(module)) {
        return Err(EditError::ModuleTwice { name: circuit.name.clone() });
    }
    if let Some(module) = circuit.modules.iter().find(|module| job.block(module.block).is_none()) {
        return Err(EditError::Missing { what: words::job::BLOCK, number: module.block.0 });
    }
    if let Some(to) = circuit.to.filter(|to| job.junction_box(*to).is_none()) {
        return Err(EditError::Missing { what: words::job::JUNCTION_BOX, number: to.0 });
    }
    Ok(())
}

/// What a junction box must be to be in a job at all.
pub(crate) fn check_box(junction: &JunctionBox) -> Result<(), EditError> {
    check_name(&junction.name)?;
    let what = || words::job::junction_box_2(&junction.name);
    if !crate::check::is_place(junction.at) {
        return Err(EditError::NotAPlace { what: what() });
    }
    let sound = |length: Length| (0.0..1000.0).contains(&length.metres());
    let leg_sound = |leg: &Leg| {
        sound(leg.length)
            && match leg.lies {
                LiesIn::RoofRaceway(above) => sound(above),
                LiesIn::FreeAir | LiesIn::Attic | LiesIn::Wall => true,
            }
    };
    if junction.legs.iter().all(leg_sound) { Ok(()) } else { Err(EditError::BadLength { what: what() }) }
}

/// What the choices must be.
pub(crate) fn check_choices(choices: &WiringChoices) -> Result<(), EditError> {
    for (field, celsius) in [
        ("lowest_celsius", choices.lowest_celsius),
        ("highest_celsius", choices.highest_celsius),
        ("hottest_cell_celsius", choices.hottest_cell_celsius),
    ] {
        if let Some(celsius) = celsius.filter(|celsius| !(-90.0..=120.0).contains(celsius)) {
            return Err(EditError::Temperature { field, celsius });
        }
    }
    Ok(())
}

/// Takes the modules of a circuit out of all others: a module is in one at most. A circuit that loses all goes.
pub(crate) fn leave_others(job: &mut Job<Face>, put: &Circuit) {
    for other in job.circuits.iter_mut().filter(|other| other.id != put.id) {
        other.modules.retain(|module| !put.modules.contains(module));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
}

/// Forgets modules whose block is gone, and boxes that are. A module that is switched off, or lies beyond its block, stays named:
/// that is told as a finding, and heals when the module comes back.
pub(crate) fn forget_gone(job: &mut Job<Face>) {
    if job.circuits.is_empty() {
        return;
    }
    let blocks: BTreeSet<BlockId> = job.blocks.iter().map(|block| block.id).collect();
    let boxes: BTreeSet<BoxId> = job.boxes.iter().map(|junction| junction.id).collect();
    for circuit in &mut job.circuits {
        circuit.modules.retain(|module| blocks.contains(&module.block));
        circuit.to = circuit.to.filter(|to| boxes.contains(to));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
}
