//! Orientation of modules.

use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Orientation of a module: its long side along the eave, or up the slope.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Orientation {
    /// Long side along the eave.
    #[default]
    Landscape,
    /// Long side up the slope.
    Portrait,
}

impl Orientation {
    /// Its trade name.
    pub fn name(self) -> Say {
        match self {
            Self::Landscape => words::job::LANDSCAPE,
            Self::Portrait => words::job::PORTRAIT,
        }
    }
}
