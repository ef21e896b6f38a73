//! The result of a measure.

use crate::MeasuredPlace;
use chalkcourse_job::Unit;
use std::sync::Arc;

/// A measure over the whole job: its places and its total.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Counted {
    pub(crate) unit: Unit,
    pub(crate) places: Arc<Vec<MeasuredPlace>>,
    pub(crate) total: f64,
}

impl Counted {
    pub(crate) fn new(unit: Unit, places: Vec<MeasuredPlace>) -> Self {
        // an empty sum of floats is -0
        let total = places.iter().map(|place| place.amount).sum::<f64>() + 0.0;
        Self { unit, total, places: Arc::new(places) }
    }
}
