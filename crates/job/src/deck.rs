use chalkcourse_geometry::Length;
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The deck as found on site. What is unknown is not assumed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Deck {
    /// Thickness of the sheathing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Length>,
    /// Its material.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kind: Option<DeckKind>,
    /// Rafter spacing, centre to centre.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rafter_spacing: Option<Length>,
    /// Its condition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub condition: Option<DeckCondition>,
}

/// Deck material.
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

    /// Its trade name.
    pub fn name(self) -> Say {
        match self {
            Self::Osb => words::job::OSB,
            Self::Plywood => words::job::PLYWOOD,
            Self::Boards => words::job::BOARDS,
            Self::SpacedBoards => words::job::SPACED_BOARDS,
        }
    }
}

/// Condition of a deck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DeckCondition {
    /// Inspected, dry and firm.
    Sound,
    /// Soft, split, wet or unsupported somewhere.
    Repair,
}

/// Whether eaves and rakes have drip edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum DripEdge {
    /// Present, and stays.
    InPlace,
    /// To be installed with this job.
    WithThisJob,
    /// None, and none planned.
    Absent,
}

/// Fire class of a roof covering against exterior exposure (UL 790, ASTM E108); best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum FireClass {
    /// Severe fire exposure.
    A,
    /// Moderate exposure.
    B,
    /// Light exposure.
    C,
    /// Not rated.
    Unrated,
}

impl FireClass {
    /// Its name: "class A".
    pub fn name(self) -> Say {
        match self {
            Self::A => words::job::CLASS_A,
            Self::B => words::job::CLASS_B,
            Self::C => words::job::CLASS_C,
            Self::Unrated => words::job::NO_CLASS,
        }
    }
}

/// Where a kit allows its base rail.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RailLimits {
    /// Least distance from the eave up to the lower edge of the rail, on the slope.
    pub least_above_eave: Length,
    /// The longest continuous rail; a longer one needs an expansion gap.
    pub longest: Length,
}

/// Decks that a kit may be fastened to.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DeckLimits {
    /// Least thickness of the sheathing.
    pub least_thickness: Length,
    /// Allowed materials.
    pub kinds: Vec<DeckKind>,
    /// Greatest rafter spacing, centre to centre.
    pub most_span: Length,
}

/// The fire class for which a kit is listed as a roof covering.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FireListing {
    /// The class.
    pub class: FireClass,
    /// The underlayment part that the listing requires under the array.
    pub underlayment: String,
}
