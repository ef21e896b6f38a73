use crate::Source;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One line of the work-safety checklist that prints with a job.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Caution {
    /// What it is about: "Falls", "Ladders".
    pub about: String,
    /// What to do or to check.
    pub text: String,
    /// By whose word.
    pub source: Source,
}
