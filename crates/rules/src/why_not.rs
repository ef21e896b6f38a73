use chalkcourse_limits::{Exemption, Off};

/// Why a rule is not checked for a job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// It is switched off in the rule book.
    Off,
    /// The rule book does not cover it.
    NotInBook(Section),
    /// The job is exempt from fire access.
    Exempt(Exemption),
    /// The edition that the book follows does not require it.
    NotInEdition,
    /// The edition has no number for hips and valleys.
    NoNumberInEdition,
    /// The edition requires pathways on each slope with modules instead.
    EachSlopeInstead,
    /// The book omits it.
    LeftOut,
    /// The kit gives no limits for its base rail.
    KitWithoutRail,
    /// The kit gives no deck requirements.
    KitWithoutDeck,
    /// The kit requires no room between blocks.
    NoRoomBetween,
    /// The kit allows any joints and any base rail height.
    LaidAnyhow,
    /// No escape window is marked on the roof.
    NoEscapeWindow,
    /// The kit does not say how its modules are wired.
    KitWithoutWiring,
    /// The job has no circuit yet.
    NotWired,
    /// The kit has a device at each module.
    WithDevices,
    /// The kit has no device at the modules.
    WithoutDevices,
    /// The kit's circuits are ac branches.
    BranchesInstead,
    /// No circuit is led to a junction box.
    NoBox,
    /// No box has a way down that lies in a raceway.
    NoRaceway,
    /// No reading was typed back.
    NoReading,
    /// The kit does not say these.
    KitSilent(Vec<KitGap>),
    /// The job does not state these.
    NotKnown(Vec<Unknown>),
}

/// Something that a kit does not say of its wires.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KitGap {
    /// How thick the conductors of its leads are.
    LeadGauge,
    /// Conductors from the array to the box.
    HomeRun,
    /// Conductors from the box down.
    RunDown,
    /// The raceway.
    Raceway,
    /// How thick insulated conductors are that the tables don't have.
    OwnArea,
    /// Room in the box.
    BoxVolume,
    /// How large the flashing of a box is.
    BoxFlashing,
    /// The grounding conductor.
    Grounding,
    /// How the array is bonded.
    Bonding,
    /// Whether the inverter stops at arcs.
    ArcFault,
    /// Whether the inverter stops at faults to ground.
    GroundFault,
}

impl From<Off> for WhyNot {
    fn from(off: Off) -> Self {
        match off {
            Off::Switched => Self::Off,
            Off::NoSetbacks => Self::NotInBook(Section::Setbacks),
            Off::NoRoomBesideLines => Self::NotInBook(Section::ValleysAndHips),
            Off::NoFireAccess => Self::NotInBook(Section::FireAccess),
            Off::KitWithoutRail => Self::KitWithoutRail,
            Off::NoRoomBetween => Self::NoRoomBetween,
            Off::NotInEdition => Self::NotInEdition,
            Off::NoNumberInEdition => Self::NoNumberInEdition,
            Off::Exempt(exemption) => Self::Exempt(exemption),
            Off::NoEscapeWindow => Self::NoEscapeWindow,
        }
    }
}

/// A section of a rule book that a rule reads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Section {
    /// Setbacks.
    Setbacks,
    /// Fire access.
    FireAccess,
    /// Roofing.
    Roofing,
    /// Clearances beside valleys and hips.
    ValleysAndHips,
    /// Wind.
    Wind,
}

/// Something a job does not state.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unknown {
    /// Sheathing thickness.
    SheathingThickness,
    /// Sheathing material.
    SheathingKind,
    /// Rafter spacing.
    RafterSpacing,
    /// Condition of the deck.
    DeckCondition,
    /// Whether there is a drip edge.
    DripEdge,
    /// The fire class that the law requires, and the distance to the lot line.
    FireClass,
    /// On which side the street or driveway lies.
    Street,
    /// Basic wind speed.
    WindSpeed,
    /// Exposure.
    Exposure,
    /// Eave height.
    EaveHeight,
    /// Least width of the building.
    LeastWidth,
    /// Capacity of a fastener.
    FastenerHold,
    /// Deck area per fastener.
    DeckUnderFastener,
    /// The inverter.
    Inverter,
    /// The lowest temperature of the air.
    LowestTemperature,
    /// The temperature of the cells on a hot day.
    HottestCell,
    /// The highest temperature of the air.
    HighestTemperature,
    /// How warm the attic becomes.
    AtticTemperature,
    /// The panel that the output is connected to.
    Service,
    /// The other breakers of that panel.
    OtherBreakers,
    /// The way down from a junction box.
    WayDown,
}

impl Unknown {
    /// The unknown ones of a list.
    pub(crate) fn among<const N: usize>(asked: [(Self, bool); N]) -> Vec<Self> {
        asked.into_iter().filter_map(|(what, unknown)| unknown.then_some(what)).collect()
    }
}
