//! The ids of the objects in a job.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The largest id in a job.
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
    /// Id of a face in its job.
    FaceId
);
id!(
    /// Id of a part of the house in its job.
    PartId
);
id!(
    /// Id of a penetration in its job.
    PenetrationId
);
id!(
    /// Id of a block in its job.
    BlockId
);
id!(
    /// Id of a circuit in its job.
    CircuitId
);
id!(
    /// Id of a junction box in its job.
    BoxId
);
