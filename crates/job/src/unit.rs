//! Units that parts are counted in.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The unit of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// Pieces.
    Each,
    /// Length, in metres internally.
    Length,
    /// Area on the slope, in square metres internally.
    Area,
    /// Labour, in person-hours.
    Time,
    /// Mass, in kilograms internally.
    Mass,
}
