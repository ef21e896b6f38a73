//! Position of the sun, sunrise and sunset.
//!
//! - [`sun_at`]: the sun over a place at a moment
//! - [`sun_day`]: sunrise, noon and sunset of a day, or why there is none
//! - [`Date`], [`Moment`]: a date, and a clock time at an offset from UTC
//!
//! Positions follow the solar position algorithm of Reda and Andreas (NREL/TP-560-34302, 2003; Solar Energy 76 (2004) 577–589), ±
//! 0.0003°, for the years −2000 to 6000. No shade, no sky and no energy yet.

mod date;

pub use date::{Date, Moment};

use chalkcourse_geometry::{Azimuth, DVec3};
use chalkcourse_words as words;
use solar_positioning::time::JulianDate;
use solar_positioning::{Horizon, Location, RefractionCorrection, SolarEvents, SolarPositions, delta_t};

/// A place on the globe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Degrees north of the equator, −90 to 90.
    pub latitude: f64,
    /// Degrees east of Greenwich, −180 to 180.
    pub longitude: f64,
    /// Metres above sea level.
    pub height: f64,
}

/// Air conditions, for refraction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// Pressure at the place, hectopascals.
    pub pressure: f64,
    /// Degrees Celsius.
    pub celsius: f64,
}

impl Air {
    /// The standard atmosphere at a height in metres (ISO 2533: 1013.25 hPa and 15 °C at sea level, 6.5 K less a kilometre;
    /// from memory).
    pub fn standard_at(height: f64) -> Self {
        let height = height.clamp(-500.0, 9_000.0);
        Self {
            pressure: 1013.25 * (1.0 - 0.0065 * height / 288.15).powf(5.255_88),
            celsius: 15.0 - 0.0065 * height,
        }
    }
}

/// Position of the sun.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sun {
    /// Its direction in plan.
    pub azimuth: Azimuth,
    /// Apparent elevation above the horizon, degrees, refraction included; negative if it is down.
    pub elevation: f64,
}

impl Sun {
    /// The unit vector to the sun: x east, y north, z up.
    pub fn direction(&self) -> DVec3 {
        let (sin, cos) = self.elevation.to_radians().sin_cos();
        (self.azimuth.unit() * cos).extend(sin)
    }

    /// Whether its centre is above a level horizon.
    pub fn is_up(&self) -> bool {
        self.elevation > 0.0
    }
}

/// The sun over a day. Hours are by the requested clock; a rise before midnight is negative.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SunDay {
    /// It rises and sets: the upper limb on a level horizon, the centre 50′ below.
    Rises {
        /// Sunrise.
        rise: f64,
        /// When it crosses the meridian.
        noon: f64,
        /// Sunset.
        set: f64,
    },
    /// It is up all day.
    Up {
        /// When it is highest.
        noon: f64,
    },
    /// It is down all day.
    Down {
        /// When it is nearest to the horizon.
        noon: f64,
    },
}

impl SunDay {
    /// When the sun crosses the meridian, hours.
    pub fn noon(&self) -> f64 {
        match *self {
            Self::Rises { noon, .. } | Self::Up { noon } | Self::Down { noon } => noon,
        }
    }
}

/// Why there is no result.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SunError {
    /// The place is not on the globe.
    #[error("{}", words::solid::latitude_longitude_degrees_from_90(&latitude, &longitude))]
    NotOnGlobe {
        /// As given.
        latitude: f64,
        /// As given.
        longitude: f64,
    },
    /// The date is not in the calendar, or beyond the range of the algorithm.
    #[error("{}", words::solid::is_no_day_that_the(&_0))]
    NoSuchDay(String),
    /// The algorithm's own error.
    #[error("{}", words::solid::the_suns_place_cant_be(&_0))]
    Refused(String),
}

/// The sun over a place at a moment, with refraction; in [`Air::standard_at`] the place if no air is given.
///
/// # Errors
/// [`SunError`] for a place off the globe or an invalid date.
pub fn sun_at(spot: Spot, moment: Moment, air: Option<Air>) -> Result<Sun, SunError> {
    let location = location(spot)?;
    let air = air.unwrap_or_else(|| Air::standard_at(spot.height));
    let refused = |error: solar_positioning::Error| SunError::Refused(error.to_string());
    let bent = RefractionCorrection::new(air.pressure, air.celsius).map_err(refused)?;
    let delta_t = delta_t_of(moment.date)?;
    let julian = julian_midnight(moment.date, delta_t)? + (moment.hour - moment.utc_offset) / 24.0;
    let time = JulianDate::new(julian, delta_t).map_err(refused)?;
    let position =
        SolarPositions::new().at_from_julian(time, location, spot.height, Some(bent)).map_err(refused)?;
    Ok(Sun { azimuth: Azimuth::from_degrees(position.azimuth()), elevation: position.elevation_angle() })
}

/// The sun over a place on a day, by a clock `utc_offset` hours ahead of UTC.
///
/// # Errors
/// [`SunError`] for a place off the globe or an invalid date.
pub fn sun_day(spot: Spot, date: Date, utc_offset: f64) -> Result<SunDay, SunError> {
    let location = location(spot)?;
    let refused = |error: solar_positioning::Error| SunError::Refused(error.to_string());
    let delta_t = delta_t_of(date)?;
    let midnight = julian_midnight(date, delta_t)? - utc_offset / 24.0;
    let hours = |julian: f64| (julian - midnight) * 24.0;
    let events = SolarEvents::new();
    // Just before the day starts, since the search excludes its start.
    let start = midnight - 1.0 / 86_400.0;
    let noon = events
        .next_transit_from_julian(start, start + 1.1, location.longitude, delta_t)
        .map_err(refused)?
        .ok_or_else(|| SunError::Refused(words::solid::NO_NOON_ON_THIS_DAY.now().to_owned()))?;
    let horizon = Horizon::SunriseSunset;
    // The rise before this noon and the set after it belong together, whichever day they fall on by the clock.
    let rise =
        events.next_rise_from_julian(noon - 0.55, noon, location, delta_t, horizon).map_err(refused)?;
    let set = events.next_set_from_julian(noon, noon + 0.55, location, delta_t, horizon).map_err(refused)?;
    let noon_hour = hours(noon);
    match (rise, set) {
        (Some(rise), Some(set)) => Ok(SunDay::Rises { rise: hours(rise), noon: noon_hour, set: hours(set) }),
        _ => {
            let moment = Moment { date, hour: noon_hour, utc_offset };
            let noon = sun_at(Spot { height: 0.0, ..spot }, moment, None)?;
            // At the start or end of midnight sun or polar night one of the two is missing: the longer part of the day decides.
            if noon.elevation > -0.25 {
                Ok(SunDay::Up { noon: noon_hour })
            } else {
                Ok(SunDay::Down { noon: noon_hour })
            }
        }
    }
}

fn location(spot: Spot) -> Result<Location, SunError> {
    let Spot { latitude, longitude, .. } = spot;
    if (-90.0..=90.0).contains(&latitude) && (-180.0..=180.0).contains(&longitude) {
        Ok(Location { latitude, longitude })
    } else {
        Err(SunError::NotOnGlobe { latitude, longitude })
    }
}

/// Delta T: seconds by which terrestrial time is ahead of universal time.
fn delta_t_of(date: Date) -> Result<f64, SunError> {
    delta_t::estimate_from_date(date.year(), date.month()).map_err(|_| SunError::NoSuchDay(date.to_string()))
}

/// Midnight UTC as a Julian date.
fn julian_midnight(date: Date, delta_t: f64) -> Result<f64, SunError> {
    JulianDate::from_utc(date.year(), date.month(), date.day(), 0, 0, 0.0, delta_t)
        .map(|julian| julian.julian_date())
        .map_err(|_| SunError::NoSuchDay(date.to_string()))
}

#[cfg(test)]
mod tests;
