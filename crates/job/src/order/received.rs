use super::MOST_PACKAGES;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What was counted when the order arrived.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Delivery {
    /// The day, as the person writes it.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Who counted.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub by: String,
    /// About the delivery as a whole.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// By part number. A part that is not here was not counted yet, which is not the same as none received.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub counts: BTreeMap<String, Received>,
}

/// What was counted of one part.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Received {
    /// Packages that came, damaged ones among them.
    pub packages: u64,
    /// Of those, packages that can't be used.
    #[serde(skip_serializing_if = "is_zero")]
    pub damaged: u64,
    /// What to tell the supplier.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_zero(count: &u64) -> bool {
    *count == 0
}

impl Delivery {
    /// Whether nothing was counted or said.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    pub(super) fn check(&self) -> Result<(), String> {
        for (number, count) in &self.counts {
            if count.packages > MOST_PACKAGES {
                return Err(format!(
                    "counts.{number}.packages must be at most {MOST_PACKAGES}, not {}",
                    count.packages
                ));
            }
            if count.damaged > count.packages {
                return Err(format!(
                    "counts.{number}.damaged: {} can't be damaged of {} that came",
                    count.damaged, count.packages
                ));
            }
        }
        Ok(())
    }
}
