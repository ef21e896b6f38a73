//! The numbers by which the things of a job are known.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// No number of a job is larger.
pub(crate) const MOST_NUMBER: u32 = 1_999_999_999;

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
    /// Number of a part of the house in its job.
    PartId
);
id!(
    /// Number of a penetration in its job.
    PenetrationId
);
id!(
    /// Number of a block in its job.
    BlockId
);
id!(
    /// Number of a circuit in its job.
    CircuitId
);
id!(
    /// Number of a junction box in its job.
    BoxId
);
