//! Where the sun stands, and when it rises and sets.
//!
//! - [`sun_at`]: the sun over a place at a moment
//! - [`sun_day`]: sunrise, noon and sunset of a day, or why there is none
//! - [`Date`], [`Moment`]: a day and an hour by a clock that is so many hours ahead of UTC
//!
//! The positions are those of the solar position algorithm of Reda and Andreas (NREL/TP-560-34302, 2003; Solar Energy 76
//! (2004) 577–589), ± 0.0003°, for the years −2000 to 6000. No shade, no sky and no energy yet.

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

/// The air that bends the light of a low sun.
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

/// Where the sun stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sun {
    /// The way to it in plan.
    pub azimuth: Azimuth,
    /// Degrees above the horizon, as seen through the air; below 0 it is down.
    pub elevation: f64,
}

impl Sun {
    /// The unit vector to the sun: x east, y north, z up.
    pub fn direction(&self) -> DVec3 {
        let (sin, cos) = self.elevation.to_radians().sin_cos();
        (self.azimuth.unit() * cos).extend(sin)
    }

    /// Whether its middle is above a level horizon.
    pub fn is_up(&self) -> bool {
        self.elevation > 0.0
    }
}

/// What the sun does on a day. Hours are of the clock asked for; a rise before midnight is below 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SunDay {
    /// It rises and sets. Upper edge on a level horizon: its middle 50′ below.
    Rises {
        /// Sunrise.
        rise: f64,
        /// When it stands on the meridian.
        noon: f64,
        /// Sunset.
        set: f64,
    },
    /// It stays up around the clock.
    Up {
        /// When it stands highest.
        noon: f64,
    },
    /// It stays down around the clock.
    Down {
        /// When it comes nearest to the horizon.
        noon: f64,
    },
}

impl SunDay {
    /// When the sun stands on the meridian, hours.
    pub fn noon(&self) -> f64 {
        match *self {
            Self::Rises { noon, .. } | Self::Up { noon } | Self::Down { noon } => noon,
        }
    }
}

/// Why there is no answer.
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
    /// The day is not in the calendar, or beyond the years of the algorithm.
    #[error("{}", words::solid::is_no_day_that_the(&_0))]
    NoSuchDay(String),
    /// What the algorithm refuses beyond that.
    #[error("{}", words::solid::the_suns_place_cant_be(&_0))]
    Refused(String),
}

/// The sun over a place at a moment, through air that bends its light; through [`Air::standard_at`] the place where none
/// was measured.
///
/// # Errors
/// [`SunError`] for a place off the globe or a day that there is not.
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

/// What the sun does over a place on a day, by a clock that is `utc_offset` hours ahead of UTC.
///
/// # Errors
/// [`SunError`] for a place off the globe or a day that there is not.
pub fn sun_day(spot: Spot, date: Date, utc_offset: f64) -> Result<SunDay, SunError> {
    let location = location(spot)?;
    let refused = |error: solar_positioning::Error| SunError::Refused(error.to_string());
    let delta_t = delta_t_of(date)?;
    let midnight = julian_midnight(date, delta_t)? - utc_offset / 24.0;
    let hours = |julian: f64| (julian - midnight) * 24.0;
    let events = SolarEvents::new();
    // Just before the day begins, since a search leaves its start out.
    let start = midnight - 1.0 / 86_400.0;
    let noon = events
        .next_transit_from_julian(start, start + 1.1, location.longitude, delta_t)
        .map_err(refused)?
        .ok_or_else(|| SunError::Refused(words::solid::NO_NOON_ON_THIS_DAY.now().to_owned()))?;
    let horizon = Horizon::SunriseSunset;
    // The rise before this noon and the set after it belong together, on whichever day by the clock they fall.
    let rise =
        events.next_rise_from_julian(noon - 0.55, noon, location, delta_t, horizon).map_err(refused)?;
    let set = events.next_set_from_julian(noon, noon + 0.55, location, delta_t, horizon).map_err(refused)?;
    let noon_hour = hours(noon);
    match (rise, set) {
        (Some(rise), Some(set)) => Ok(SunDay::Rises { rise: hours(rise), noon: noon_hour, set: hours(set) }),
        _ => {
            let moment = Moment { date, hour: noon_hour, utc_offset };
            let noon = sun_at(Spot { height: 0.0, ..spot }, moment, None)?;
            // On the days on which a season of light begins or ends one of the two is missing: the longer part counts.
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

/// Seconds by which the clocks of astronomers are ahead of the turning earth.
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
