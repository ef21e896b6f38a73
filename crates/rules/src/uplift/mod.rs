//! Uplift of modules in the [wind](crate::wind): the demand, the fasteners it calls for, and the rule about it. A screening,
//! never a stamp.

mod fasteners;
pub(crate) mod rule;
mod screen;

pub use fasteners::{MoreFasteners, more_fasteners};
pub use screen::{BlockScreening, Screening, Uplift, screen};
