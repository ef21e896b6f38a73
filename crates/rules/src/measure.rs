//! Distances between a module and what stands in its way, all in the frame of one face.

use chalkcourse_geometry::{DVec2, Length, Polygon, Rect};
use chalkcourse_job::Quantity;

/// Metres on the slope as an amount.
pub(crate) fn length(metres: f64) -> Quantity {
    Quantity::Length(Length::from_metres(metres))
}

/// Metres in plan as an amount.
pub(crate) fn in_plan(metres: f64) -> Quantity {
    Quantity::InPlan(Length::from_metres(metres))
}

/// Distance between a rectangle and a shape without holes; 0 where they have ground in common.
pub(crate) fn to_polygon(rect: &Rect, shape: &Polygon) -> f64 {
    if shape.contains(rect.centre()) {
        return 0.0;
    }
    shape.sides().map(|(_, _, a, b)| rect.distance_to_segment(a, b)).fold(f64::INFINITY, f64::min)
}

/// How near the bounds of a segment come to a rectangle: never more than the true distance.
pub(crate) fn at_least_to_segment(rect: &Rect, a: DVec2, b: DVec2) -> f64 {
    rect.distance(&Rect { min: a.min(b), max: a.max(b) })
}
