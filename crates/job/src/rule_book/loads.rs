use super::Limit;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The edition of ASCE/SEI 7 that pressures are taken from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum LoadStandard {
    /// ASCE/SEI 7-16.
    #[serde(rename = "asce-7-16")]
    Asce716,
    /// ASCE/SEI 7-22.
    #[serde(rename = "asce-7-22")]
    Asce722,
}

impl LoadStandard {
    /// Its citation.
    pub fn name(self) -> &'static str {
        match self {
            Self::Asce716 => "ASCE/SEI 7-16",
            Self::Asce722 => "ASCE/SEI 7-22",
        }
    }
}

/// A screening of wind and snow: never a design, which is the task of a licensed engineer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Loads {
    /// The edition.
    pub standard: Limit<LoadStandard>,
    /// Factor on wind uplift for allowable stress design.
    pub wind_factor: Limit<f64>,
    /// Factor on dead load against uplift.
    pub dead_factor: Limit<f64>,
    /// Least pressure on cladding, pounds per square foot.
    pub least_pressure_psf: Limit<f64>,
}

impl Loads {
    pub(super) fn check(&self) -> Result<(), Said> {
        for (field, value) in [
            ("wind_factor", self.wind_factor.value),
            ("dead_factor", self.dead_factor.value),
            ("least_pressure_psf", self.least_pressure_psf.value / 1000.0),
        ] {
            if !(0.0..=2.0).contains(&value) {
                return Err(words::rulebook::loads_is_out_of_range(&field));
            }
        }
        Ok(())
    }
}
