//! The date and time of the sun shown.

use super::WITHOUT_SUN;
use crate::{Document, text};
use chalkcourse_picture::Light;
use chalkcourse_sunlight::{Date, Moment, Spot, Sun, SunDay, sun_at, sun_day};
use std::time::{SystemTime, UNIX_EPOCH};

/// A day of this year and a local time.
#[derive(Debug)]
pub(crate) struct SunDial {
    /// Day of the year, from 1.
    pub(crate) day: u32,
    /// Hours since midnight.
    pub(crate) hour: f64,
    /// Hours by which the clock is ahead of UTC; `None` derives it from the longitude.
    pub(crate) utc_offset: Option<f64>,
    year: i32,
}

impl Default for SunDial {
    /// The longest day in the northern hemisphere, in the afternoon.
    fn default() -> Self {
        let seconds = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0.0, |since| since.as_secs_f64());
        // The mean year of the Gregorian calendar: off by a day at the turn of the year, which makes no visible
        // difference.
        let year = 1970 + (seconds / (365.2425 * 86_400.0)) as i32;
        Self { day: 172, hour: 15.0, utc_offset: None, year }
    }
}

impl SunDial {
    pub(crate) fn date(&self) -> Date {
        Date::of_year(self.year, self.day)
    }

    pub(crate) fn spot(document: &Document) -> Option<Spot> {
        let site = &document.job().site;
        let height = site.building.elevation.map_or(0.0, |height| height.metres());
        site.place.map(|place| Spot { latitude: place.latitude, longitude: place.longitude, height })
    }

    pub(crate) fn offset(&self, document: &Document) -> f64 {
        let longitude = Self::spot(document).map_or(0.0, |spot| spot.longitude);
        self.utc_offset.unwrap_or((longitude / 15.0).round())
    }

    /// The sun; `None` if the location is unknown.
    pub(crate) fn sun(&self, document: &Document) -> Option<Sun> {
        let moment = Moment { date: self.date(), hour: self.hour, utc_offset: self.offset(document) };
        sun_at(Self::spot(document)?, moment, None).ok()
    }

    /// Sunrise, noon and sunset of that day.
    pub(crate) fn sun_day(&self, document: &Document) -> Option<SunDay> {
        sun_day(Self::spot(document)?, self.date(), self.offset(document)).ok()
    }

    pub(crate) fn light(&self, document: &Document) -> Light {
        self.sun(document).map_or(WITHOUT_SUN, |sun| Light::Sun(sun.direction()))
    }

    /// Its position, in words.
    pub(crate) fn words(&self, document: &Document) -> String {
        match self.sun(document) {
            None => text::NO_PLACE_NO_SUN.now().to_owned(),
            Some(sun) => text::sun_words(self.date(), self.hour, &sun),
        }
    }
}
