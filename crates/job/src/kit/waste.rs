use chalkcourse_words::{Said, Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Loss to breakage and cutting, as a share of the need.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum Waste {
    /// The same on every roof: 0.05 is 5 %.
    Share(f64),
    /// By the kind of roof.
    ByRoof(ByRoof),
}

/// A share for each kind of roof.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ByRoof {
    /// Only rakes are cut.
    pub gable: f64,
    /// Hips are cut, but no valleys.
    pub hip: f64,
    /// Valleys are cut.
    pub cut_up: f64,
}

/// The kind of roof, by how much cutting it requires.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RoofKind {
    /// Neither hips nor valleys.
    Gable,
    /// Hips but no valleys.
    Hip,
    /// Valleys.
    CutUp,
}

impl RoofKind {
    /// All kinds.
    pub const ALL: [Self; 3] = [Self::Gable, Self::Hip, Self::CutUp];

    /// Its name: "gable roof".
    pub fn name(self) -> Say {
        match self {
            Self::Gable => words::kit::GABLE_ROOF,
            Self::Hip => words::kit::HIP_ROOF,
            Self::CutUp => words::kit::CUT_UP_ROOF_WITH_VALLEYS,
        }
    }
}

impl Default for Waste {
    fn default() -> Self {
        Self::Share(0.0)
    }
}

impl Waste {
    /// The share on a roof of a kind.
    pub fn share(self, kind: RoofKind) -> f64 {
        match (self, kind) {
            (Self::Share(share), _) => share,
            (Self::ByRoof(by), RoofKind::Gable) => by.gable,
            (Self::ByRoof(by), RoofKind::Hip) => by.hip,
            (Self::ByRoof(by), RoofKind::CutUp) => by.cut_up,
        }
    }

    pub(super) fn check(self) -> Result<(), Said> {
        let shares = RoofKind::ALL.map(|kind| self.share(kind));
        match shares.iter().find(|share| !is_share(**share)) {
            Some(share) => Err(words::kit::waste_is_a_share_from(&share)),
            None => Ok(()),
        }
    }
}

/// Whether a number is a valid share of waste.
pub(crate) fn is_share(share: f64) -> bool {
    (0.0..=1.0).contains(&share)
}
