//! Wind on a roof by the components-and-cladding figures of ASCE/SEI 7: a screening, never a stamp.
//!
//! A roof-integrated array lies flush and flashed: the reductions for panels above a roof (ASCE/SEI 7-16 29.4.4) rely on an air
//! gap and open edges that it does not have, so it is treated as roof covering (engineering judgement, from memory). Plain gable
//! and hip roofs above 7° and up to 45° are covered; cases the sources do not cover are refused, not guessed. Structural design
//! is a licensed engineer's.
//!
//! Pounds, feet and miles per hour here, as in the standard.

mod coefficients;
mod conditions;
mod drawn;
mod velocity;
mod zones;

pub use coefficients::{Coefficients, Curve, RoofShape, Zone, coefficients};
pub(crate) use conditions::unknown_wind;
pub use conditions::{Conditions, shape_of};
pub use drawn::{Drawn, DrawnZone, FaceZones, drawn};
pub use velocity::{Wind, elevation_factor, exposure_coefficient, velocity_pressure_with_kd, zone_width};
pub use zones::{Near, ZoneArea, zone_areas, zone_near};

use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::LoadStandard;
use schemars::JsonSchema;
use serde::Serialize;

/// Why a case is not calculated.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Refused {
    /// A slope outside the figures, degrees.
    Slope(f64),
    /// A roof with an edge that plain gables and hips don't have.
    Edge(EdgeKind),
    /// The sources of this program don't have the edition's coefficients for a roof of this shape and slope in degrees.
    NotInSources(LoadStandard, RoofShape, f64),
    /// No zone of the figure reaches the block.
    NoZone,
}

/// A figure of a load standard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Figure {
    /// The edition.
    pub standard: LoadStandard,
    /// Its number: "30.3-2B".
    pub number: &'static str,
    /// The figure for 45°, if the slope lies between the two.
    pub towards: Option<&'static str>,
}
