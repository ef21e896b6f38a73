use chalkcourse_words::pick;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

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
    /// What comes off, and the deck under it.
    Deck,
    /// Against falls and shock, and what is used up.
    Safety,
    /// Work, in hours of one person.
    Labour,
    /// What is carted away.
    Disposal,
}

impl Group {
    /// All groups, in the order in which an order lists them.
    pub const ALL: [Self; 8] = [
        Self::Solar,
        Self::Flashing,
        Self::Roofing,
        Self::Wire,
        Self::Deck,
        Self::Safety,
        Self::Labour,
        Self::Disposal,
    ];

    /// The heading on an order.
    pub fn name(self) -> &'static str {
        match self {
            Self::Solar => pick("Solar", "Solar"),
            Self::Flashing => pick("Flashing", "Tapajuntas"),
            Self::Roofing => pick("Roofing", "Recubrimiento"),
            Self::Wire => pick("Wire and grounding", "Cable y puesta a tierra"),
            Self::Deck => pick("Tear-off and deck", "Retiro y entablado"),
            Self::Safety => pick("Safety and consumables", "Seguridad y consumibles"),
            Self::Labour => pick("Labour", "Mano de obra"),
            Self::Disposal => pick("Disposal", "Desecho"),
        }
    }

    /// The stage of work that parts of the group are usually for.
    pub fn usual_stage(self) -> Stage {
        match self {
            Self::Deck | Self::Safety | Self::Disposal => Stage::TearOff,
            Self::Roofing => Stage::DryIn,
            Self::Solar | Self::Labour => Stage::Array,
            Self::Flashing => Stage::Flashing,
            Self::Wire => Stage::Wiring,
        }
    }
}

/// A stage of the work, in the order in which a roof is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Stage {
    /// Strip the roof and make the deck sound.
    TearOff,
    /// Drip edge, leak barrier, underlayment: rain stays out from here on.
    DryIn,
    /// Base rail and modules.
    Array,
    /// Sides, head and corners of the array.
    Flashing,
    /// Shingles, caps and what goes with them.
    Roofing,
    /// Ground, leads and the junction box.
    Wiring,
}

impl Stage {
    /// All stages, first to last.
    pub const ALL: [Self; 6] =
        [Self::TearOff, Self::DryIn, Self::Array, Self::Flashing, Self::Roofing, Self::Wiring];

    /// The heading on an order.
    pub fn name(self) -> &'static str {
        match self {
            Self::TearOff => pick("Tear-off", "Retiro"),
            Self::DryIn => pick("Dry-in", "Impermeabilización"),
            Self::Array => pick("Array", "Arreglo"),
            Self::Flashing => pick("Flashing", "Tapajuntas"),
            Self::Roofing => pick("Roofing", "Recubrimiento"),
            Self::Wiring => pick("Wiring", "Cableado"),
        }
    }
}
