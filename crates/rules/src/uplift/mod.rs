//! Modules in the [wind](crate::wind): what lifts them, how many fasteners that asks for, and the rule that says so. A screening, never a
//! stamp.

mod fasteners;
pub(crate) mod rule;
mod screen;

pub use fasteners::{MoreFasteners, more_fasteners};
pub use screen::{BlockScreening, Screening, Uplift, screen};
