use chalkcourse_words::{Say, later as words};
use glam::{DVec2, dvec2};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A direction in plan: degrees clockwise from north, kept in 0 ≤ d < 360.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize, JsonSchema)]
#[serde(from = "f64", into = "f64")]
#[schemars(with = "f64")]
pub struct Azimuth(f64);

impl Azimuth {
    /// Due north.
    pub const NORTH: Self = Self(0.0);
    /// Due east.
    pub const EAST: Self = Self(90.0);
    /// Due south.
    pub const SOUTH: Self = Self(180.0);
    /// Due west.
    pub const WEST: Self = Self(270.0);

    /// From degrees clockwise from north; normalised to one turn, and non-finite values become north.
    pub fn from_degrees(degrees: f64) -> Self {
        let turned = degrees.rem_euclid(360.0);
        // -1e-300 rounds to exactly 360
        Self(if turned.is_finite() && turned < 360.0 { turned } else { 0.0 })
    }

    /// The direction of a plan vector; north for a zero vector.
    pub fn of(direction: DVec2) -> Self {
        Self::from_degrees(direction.x.atan2(direction.y).to_degrees())
    }

    /// Degrees clockwise from north, 0 ≤ d < 360.
    pub fn degrees(self) -> f64 {
        self.0
    }

    /// The unit vector in plan (x east, y north), exact in the four cardinal directions.
    pub fn unit(self) -> DVec2 {
        match self.0 {
            0.0 => dvec2(0.0, 1.0),
            90.0 => dvec2(1.0, 0.0),
            180.0 => dvec2(0.0, -1.0),
            270.0 => dvec2(-1.0, 0.0),
            degrees => {
                let (sin, cos) = degrees.to_radians().sin_cos();
                dvec2(sin, cos)
            }
        }
    }

    /// The nearest of the eight compass points, `SW`.
    pub fn wind(self) -> &'static str {
        const WINDS: [&str; 8] = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];
        WINDS[(self.0 / 45.0).round() as usize % 8]
    }

    /// The nearest of the eight compass points in words, `south-west`.
    pub fn word(self) -> Say {
        match self.wind() {
            "N" => words::common::NORTH,
            "NE" => words::measures::NORTH_EAST,
            "E" => words::common::EAST,
            "SE" => words::measures::SOUTH_EAST,
            "S" => words::common::SOUTH,
            "SW" => words::measures::SOUTH_WEST,
            "W" => words::common::WEST,
            _ => words::measures::NORTH_WEST,
        }
    }
}

impl From<f64> for Azimuth {
    fn from(degrees: f64) -> Self {
        Self::from_degrees(degrees)
    }
}
impl From<Azimuth> for f64 {
    fn from(azimuth: Azimuth) -> Self {
        azimuth.0
    }
}

impl fmt::Display for Azimuth {
    /// `180° S`
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}° {}", (self.0 * 10.0).round() / 10.0, self.wind())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn turns_are_normalised() {
        assert_eq!(Azimuth::from_degrees(-90.0).degrees(), 270.0);
        assert_eq!(Azimuth::from_degrees(720.0).degrees(), 0.0);
        assert_eq!(Azimuth::from_degrees(f64::NAN).degrees(), 0.0);
        assert_eq!(Azimuth::from_degrees(-1e-300).degrees(), 0.0);
        assert_eq!(Azimuth::of(dvec2(-1.0, -1.0)).wind(), "SW");
        assert_eq!(Azimuth::from_degrees(359.0).wind(), "N");
    }
}
