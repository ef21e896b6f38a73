use super::Stage;
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The group of a part on the order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Group {
    /// Modules, their electronics and their mounting.
    Solar,
    /// Base rail, side, head and corner flashing and their fasteners.
    Flashing,
    /// Membranes and underlayment under and around the array.
    Roofing,
    /// Grounding, leads and the junction box.
    Wire,
    /// Tear-off, and the deck under it.
    Deck,
    /// Protection against falls and shock, and consumables.
    Safety,
    /// Labour, in person-hours.
    Labour,
    /// Waste to be hauled away.
    Disposal,
    /// Permits and the like.
    Fees,
}

impl Group {
    /// All groups, in the order of an order.
    pub const ALL: [Self; 9] = [
        Self::Solar,
        Self::Flashing,
        Self::Roofing,
        Self::Wire,
        Self::Deck,
        Self::Safety,
        Self::Labour,
        Self::Disposal,
        Self::Fees,
    ];

    /// Its heading on an order.
    pub fn name(self) -> Say {
        match self {
            Self::Solar => words::kit::SOLAR,
            Self::Flashing => words::kit::FLASHING,
            Self::Roofing => words::common::ROOFING,
            Self::Wire => words::kit::WIRE_AND_GROUNDING,
            Self::Deck => words::kit::TEAR_OFF_AND_DECK,
            Self::Safety => words::kit::SAFETY_AND_CONSUMABLES,
            Self::Labour => words::common::LABOUR,
            Self::Disposal => words::kit::DISPOSAL,
            Self::Fees => words::kit::PERMITS_AND_FEES,
        }
    }

    /// The stage of work at which parts of the group are usually installed, the first of several.
    pub fn usual_stage(self) -> Stage {
        match self {
            Self::Deck | Self::Safety | Self::Disposal | Self::Fees => Stage::TearOff,
            Self::Roofing => Stage::DryIn,
            Self::Solar | Self::Labour => Stage::Modules,
            Self::Flashing => Stage::BaseRail,
            Self::Wire => Stage::Wires,
        }
    }

    /// Whether its parts are delivered and can be counted: labour, disposal and fees can't.
    pub fn comes_on_a_truck(self) -> bool {
        !matches!(self, Self::Labour | Self::Disposal | Self::Fees)
    }
}
