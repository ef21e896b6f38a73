//! Takeoff: what to order for the blocks as placed, and where each quantity comes from.
//!
//! need → waste → packages → order → price. Every count is driven by the kit file; every line can show its places.

mod line;

pub use line::{Line, LineTerm, Place, PlaceShape, Takeoff};

use chalkcourse_job::Job;
use chalkcourse_layout::Layout;

/// The takeoff of a job as laid out. Lines are in the order of the kit's parts.
pub fn take_off(job: &Job, layout: &Layout) -> Takeoff {
    let _ = layout;
    Takeoff { currency: job.prices.currency.clone(), ..Takeoff::default() }
}
