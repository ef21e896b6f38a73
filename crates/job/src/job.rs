use crate::{Block, Face, Kit, Penetration, PriceList, RuleBook};
use chalkcourse_geometry::Units;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
        #[serde(transparent)]
        pub struct $name(pub u32);

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                write!(f, "{}", self.0)
            }
        }
    };
}

id!(
    /// Number of a face in its job.
    FaceId
);
id!(
    /// Number of a penetration in its job.
    PenetrationId
);
id!(
    /// Number of a block in its job.
    BlockId
);

/// Everything that a person decided or measured for one roof.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// What people call the job.
    pub name: String,
    /// Where it is.
    #[serde(default)]
    pub site: Site,
    /// How lengths are shown and typed.
    #[serde(default)]
    pub units: Units,
    /// Roof faces as drawn.
    pub faces: Vec<Face>,
    /// What comes through the roof.
    #[serde(default)]
    pub penetrations: Vec<Penetration>,
    /// Blocks of modules.
    #[serde(default)]
    pub blocks: Vec<Block>,
    /// Findings that a person accepted, with the reason.
    #[serde(default)]
    pub waivers: Vec<Waiver>,
    /// The maker's kit.
    pub kit: Arc<Kit>,
    /// The office's rule book.
    pub rule_book: Arc<RuleBook>,
    /// The supplier's prices.
    pub prices: Arc<PriceList>,
    /// The next free number for a face, penetration or block.
    pub next_id: u32,
}

/// Where the job is.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// As on an envelope.
    #[serde(default)]
    pub address: String,
    /// What the crew must know before they drive up.
    #[serde(default)]
    pub notes: String,
}

/// A finding that a person accepted. It stays with the job and shows in every output.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Waiver {
    /// The stable key of the finding.
    pub key: String,
    /// Why it is accepted; never empty.
    pub reason: String,
    /// Who accepted it.
    pub by: String,
    /// The day, as the person writes it.
    pub date: String,
}

impl Job {
    /// A job without a roof.
    pub fn new(name: String, kit: Arc<Kit>, rule_book: Arc<RuleBook>, prices: Arc<PriceList>) -> Self {
        Self {
            name,
            site: Site::default(),
            units: Units::default(),
            faces: Vec::new(),
            penetrations: Vec::new(),
            blocks: Vec::new(),
            waivers: Vec::new(),
            kit,
            rule_book,
            prices,
            next_id: 1,
        }
    }

    /// The face of that number.
    pub fn face(&self, id: FaceId) -> Option<&Face> {
        self.faces.iter().find(|face| face.id == id)
    }
    /// The penetration of that number.
    pub fn penetration(&self, id: PenetrationId) -> Option<&Penetration> {
        self.penetrations.iter().find(|penetration| penetration.id == id)
    }
    /// The block of that number.
    pub fn block(&self, id: BlockId) -> Option<&Block> {
        self.blocks.iter().find(|block| block.id == id)
    }
}
