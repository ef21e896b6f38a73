//! The house's service and where the output meets it, and what an electrician read and typed back.

use crate::CircuitId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The panel to which the output is connected, and in which way.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Service {
    /// Rating of the bus, in amperes; of the conductor, where a feeder is tapped.
    pub bus_amps: f64,
    /// The main breaker, in amperes; of a feeder, the one that protects it; on the supply side the rating of the service.
    pub main_breaker_amps: f64,
    /// All breakers but the main together, that of the output not counted, in amperes; `None` where nobody counted them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_breakers_amps: Option<f64>,
    /// In which way the output is connected.
    pub connection: Connection,
}

/// In which way an output is connected to the house: a licensed person's choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Connection {
    /// On the load side, at the end of the bus opposite to the main: 120 %.
    OppositeEnds,
    /// On the load side, anywhere on a bus that holds main and output together: 100 %.
    WholeBus,
    /// On the load side, where all breakers but the main add up to no more than the bus.
    SumOfBreakers,
    /// On the load side, at one end of a panel of a dwelling that is fed in the middle: 120 %.
    CentreFed,
    /// To a feeder, not at its end.
    Feeder,
    /// Ahead of the main.
    SupplySide,
}

impl Connection {
    /// All ways.
    pub const ALL: [Self; 6] = [
        Self::OppositeEnds,
        Self::WholeBus,
        Self::SumOfBreakers,
        Self::CentreFed,
        Self::Feeder,
        Self::SupplySide,
    ];
}

/// What an electrician read of a circuit, typed back.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Of which circuit.
    pub circuit: CircuitId,
    /// How warm the modules were, °C.
    pub celsius: f64,
    /// What the meter showed of it open; of an ac branch, its ac volts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open_volts: Option<f64>,
    /// Whether + was at the end marked +.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub polarity_right: Option<bool>,
    /// Resistance of the insulation to ground, in megohms.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub insulation_megohms: Option<f64>,
    /// The voltage at which that was tested.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub test_volts: Option<f64>,
}
