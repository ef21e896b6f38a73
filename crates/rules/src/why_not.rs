use chalkcourse_limits::{Exemption, Off};

/// Why a rule is not checked for a job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// It is switched off in the rule book.
    Off,
    /// The rule book does not go into it.
    NotInBook(Section),
    /// The job is exempt from fire access.
    Exempt(Exemption),
    /// The edition that the book follows does not ask for it.
    NotInEdition,
    /// The edition has no number for hips and valleys.
    NoNumberInEdition,
    /// The edition asks for pathways on each slope with modules instead.
    EachSlopeInstead,
    /// The book leaves it out.
    LeftOut,
    /// The kit does not say where its base rail may be.
    KitWithoutRail,
    /// The kit does not say what deck it needs.
    KitWithoutDeck,
    /// The kit asks no room between blocks.
    NoRoomBetween,
    /// The kit lets rows slide and the base rail lie anywhere.
    LaidAnyhow,
    /// No escape window is marked on the roof.
    NoEscapeWindow,
    /// The job does not say these.
    NotKnown(Vec<Unknown>),
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

/// A part of a rule book that a rule reads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Section {
    /// Setbacks.
    Setbacks,
    /// Fire access.
    FireAccess,
    /// Roofing.
    Roofing,
    /// Room beside valleys and hips.
    ValleysAndHips,
    /// Wind.
    Wind,
}

/// What a job does not say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unknown {
    /// How thick the sheathing is.
    SheathingThickness,
    /// What it is made of.
    SheathingKind,
    /// How far apart the rafters are.
    RafterSpacing,
    /// What state the deck is in.
    DeckCondition,
    /// Whether there is a drip edge.
    DripEdge,
    /// Which class the law asks for, and how far the lot line is.
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
    /// What a fastener holds.
    FastenerHold,
    /// Deck under a fastener.
    DeckUnderFastener,
}

impl Unknown {
    /// Those of a list that are not known.
    pub(crate) fn among<const N: usize>(asked: [(Self, bool); N]) -> Vec<Self> {
        asked.into_iter().filter_map(|(what, unknown)| unknown.then_some(what)).collect()
    }
}
