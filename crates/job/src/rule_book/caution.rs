use crate::Source;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A line of the work-safety checklist that is printed with a job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Caution {
    /// Its topic: "Falls", "Ladders".
    pub about: String,
    /// What to do or check.
    pub text: String,
    /// Its source.
    pub source: Source,
}
