//! Editions of the electrical code.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The edition of the NEC that a job is checked by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
pub enum CodeEdition {
    /// NFPA 70, 2017.
    #[default]
    #[serde(rename = "2017")]
    Nec2017,
    /// NFPA 70, 2020.
    #[serde(rename = "2020")]
    Nec2020,
    /// NFPA 70, 2023.
    #[serde(rename = "2023")]
    Nec2023,
}

impl CodeEdition {
    /// All that a job may be checked by.
    pub const ALL: [Self; 3] = [Self::Nec2017, Self::Nec2020, Self::Nec2023];

    /// Its year.
    pub fn year(self) -> u32 {
        match self {
            Self::Nec2017 => 2017,
            Self::Nec2020 => 2020,
            Self::Nec2023 => 2023,
        }
    }
}
