//! Metres as quantities of a finding, and edges as its place.

use chalkcourse_geometry::{DVec2, EdgeSpan, Length};
use chalkcourse_job::Quantity;

/// Metres on the slope as a quantity.
pub(crate) fn length(metres: f64) -> Quantity {
    Quantity::Length(Length::from_metres(metres))
}

/// Metres in plan as a quantity.
pub(crate) fn in_plan(metres: f64) -> Quantity {
    Quantity::InPlan(Length::from_metres(metres))
}

/// Both ends of each edge span, in plan.
pub(crate) fn ends<'s>(spans: impl IntoIterator<Item = &'s EdgeSpan>) -> Vec<DVec2> {
    spans.into_iter().flat_map(|span| [span.plan.0, span.plan.1]).collect()
}
