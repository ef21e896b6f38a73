//! What parts are counted in.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a part is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// Pieces.
    Each,
    /// Length, in metres inside.
    Length,
    /// Area on the slope, in square metres inside.
    Area,
    /// Work of one person, in hours.
    Time,
    /// Mass, in kilograms inside.
    Mass,
}
