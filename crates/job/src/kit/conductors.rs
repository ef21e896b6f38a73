//! What a kit says of conductors, raceway, box, bonding and torques beyond the leads of its modules.

use crate::{Source, Torque};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A size of copper conductor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
pub enum Gauge {
    /// 14 AWG.
    #[serde(rename = "14 AWG")]
    Awg14,
    /// 12 AWG.
    #[serde(rename = "12 AWG")]
    Awg12,
    /// 10 AWG.
    #[serde(rename = "10 AWG")]
    Awg10,
    /// 8 AWG.
    #[serde(rename = "8 AWG")]
    Awg8,
    /// 6 AWG.
    #[serde(rename = "6 AWG")]
    Awg6,
    /// 4 AWG.
    #[serde(rename = "4 AWG")]
    Awg4,
}

impl Gauge {
    /// All sizes, the thinnest first.
    pub const ALL: [Self; 6] = [Self::Awg14, Self::Awg12, Self::Awg10, Self::Awg8, Self::Awg6, Self::Awg4];

    /// Its number.
    pub fn awg(self) -> u32 {
        match self {
            Self::Awg14 => 14,
            Self::Awg12 => 12,
            Self::Awg10 => 10,
            Self::Awg8 => 8,
            Self::Awg6 => 6,
            Self::Awg4 => 4,
        }
    }
}

/// A type of insulation, as it is marked. All of them may become 90 °C warm.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Insulation {
    /// PV wire.
    #[serde(rename = "PV wire")]
    PvWire,
    /// USE-2.
    #[serde(rename = "USE-2")]
    Use2,
    /// THWN-2.
    #[serde(rename = "THWN-2")]
    Thwn2,
    /// XHHW-2.
    #[serde(rename = "XHHW-2")]
    Xhhw2,
    /// Trunk cable of ac devices, by its maker.
    #[serde(rename = "trunk cable")]
    Trunk,
}

impl Insulation {
    /// As it is marked.
    pub fn mark(self) -> &'static str {
        match self {
            Self::PvWire => "PV wire",
            Self::Use2 => "USE-2",
            Self::Thwn2 => "THWN-2",
            Self::Xhhw2 => "XHHW-2",
            Self::Trunk => "trunk cable",
        }
    }
}

/// Conductors of copper that a kit comes with or asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ConductorChoice {
    /// How thick.
    pub gauge: Gauge,
    /// What is around it.
    pub insulation: Insulation,
    /// How warm the terminals at its ends may become, °C: 60 or 75.
    pub terminals_celsius: u32,
}

/// A raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Raceway {
    /// What it is.
    pub kind: RacewayKind,
    /// Its trade size.
    pub size: TradeSize,
}

/// What a raceway is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum RacewayKind {
    /// Electrical metallic tubing.
    #[serde(rename = "EMT")]
    Emt,
    /// Rigid PVC conduit, schedule 40.
    #[serde(rename = "PVC 40")]
    Pvc40,
}

impl RacewayKind {
    /// As it is marked.
    pub fn mark(self) -> &'static str {
        match self {
            Self::Emt => "EMT",
            Self::Pvc40 => "PVC 40",
        }
    }
}

/// The trade size of a raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
pub enum TradeSize {
    /// 1/2 in.
    #[serde(rename = "1/2 in")]
    Half,
    /// 3/4 in.
    #[serde(rename = "3/4 in")]
    ThreeQuarters,
    /// 1 in.
    #[serde(rename = "1 in")]
    One,
    /// 1 1/4 in.
    #[serde(rename = "1 1/4 in")]
    OneAndAQuarter,
}

impl TradeSize {
    /// All sizes, the narrowest first.
    pub const ALL: [Self; 4] = [Self::Half, Self::ThreeQuarters, Self::One, Self::OneAndAQuarter];

    /// As it is written.
    pub fn mark(self) -> &'static str {
        match self {
            Self::Half => "1/2 in",
            Self::ThreeQuarters => "3/4 in",
            Self::One => "1 in",
            Self::OneAndAQuarter => "1 1/4 in",
        }
    }
}

/// How metal of the array is bonded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Bonding {
    /// The listing of lugs and jumpers; empty for none.
    pub listing: String,
    /// Whether the conductor lies in each lug uncut and stays whole when a module is taken out.
    pub lay_in: bool,
}

/// How hard a screw is turned, by its maker.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TorqueSetting {
    /// Which screw.
    pub what: String,
    /// How hard.
    pub torque: Torque,
    /// By whose word.
    pub source: Source,
}
