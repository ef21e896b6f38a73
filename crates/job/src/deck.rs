use chalkcourse_geometry::Length;
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The deck as somebody found it. What is not known is not assumed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Deck {
    /// How thick the sheathing is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Length>,
    /// What it is made of.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kind: Option<DeckKind>,
    /// From rafter to rafter, middle to middle.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rafter_spacing: Option<Length>,
    /// What state it is in.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub condition: Option<DeckCondition>,
}

/// What a deck is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DeckKind {
    /// Oriented strand board.
    Osb,
    /// Plywood.
    Plywood,
    /// Boards side by side.
    Boards,
    /// Boards with gaps, for shakes or tiles.
    SpacedBoards,
}

impl DeckKind {
    /// All kinds.
    pub const ALL: [Self; 4] = [Self::Osb, Self::Plywood, Self::Boards, Self::SpacedBoards];

    /// The word of the trade.
    pub fn name(self) -> Say {
        match self {
            Self::Osb => words::job::OSB,
            Self::Plywood => words::job::PLYWOOD,
            Self::Boards => words::job::BOARDS,
            Self::SpacedBoards => words::job::SPACED_BOARDS,
        }
    }
}

/// What state a deck is in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DeckCondition {
    /// Looked at, dry and firm.
    Sound,
    /// Soft, split, wet or unsupported somewhere.
    Repair,
}

/// Drip edge at eaves and rakes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DripEdge {
    /// It is there and stays.
    InPlace,
    /// It goes on with this job.
    WithThisJob,
    /// None, and none is planned.
    Absent,
}

/// The class of a roof covering against fire from outside (UL 790, ASTM E108); the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum FireClass {
    /// Severe exposure.
    A,
    /// Moderate.
    B,
    /// Light.
    C,
    /// No class.
    Unrated,
}

impl FireClass {
    /// As it is said: "class A".
    pub fn name(self) -> Say {
        match self {
            Self::A => words::job::CLASS_A,
            Self::B => words::job::CLASS_B,
            Self::C => words::job::CLASS_C,
            Self::Unrated => words::job::NO_CLASS,
        }
    }
}

/// Where a kit lets its base rail be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RailLimits {
    /// From the eave up to the lower edge of the rail, on the slope.
    pub least_above_eave: Length,
    /// A rail without a break may be so long; a longer one needs a gap in which it can grow.
    pub longest: Length,
}

/// The deck that a kit may be screwed to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DeckLimits {
    /// No thinner sheathing.
    pub least_thickness: Length,
    /// What it may be made of.
    pub kinds: Vec<DeckKind>,
    /// No wider from rafter to rafter, middle to middle.
    pub most_span: Length,
}

/// The class against fire for which a kit is listed as roof covering.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FireListing {
    /// The class.
    pub class: FireClass,
    /// The part that must lie under the array for it.
    pub underlayment: String,
}
