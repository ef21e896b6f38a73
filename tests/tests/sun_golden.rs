//! Position of the sun, sunrise and sunset against pvlib's SPA (BSD-3): values written by tests/peers/sun_against_pvlib.py.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_sunlight::{Air, Date, Moment, Spot, SunDay, sun_at, sun_day};
use chalkcourse_tests::top;

fn golden() -> serde_json::Value {
    let text = std::fs::read_to_string(top().join("tests/data/sun-golden.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

fn rows(golden: &serde_json::Value, name: &str) -> Vec<Vec<f64>> {
    let numbers =
        |row: &serde_json::Value| row.as_array().unwrap().iter().map(|n| n.as_f64().unwrap()).collect();
    golden[name].as_array().unwrap().iter().map(numbers).collect()
}

fn date(year: f64, month: f64, day: f64) -> Date {
    Date::new(year as i32, month as u32, day as u32).unwrap()
}

#[test]
fn the_sun_is_where_pvlib_puts_it() {
    let rows = rows(&golden(), "positions");
    assert_eq!(rows.len(), 200);
    for row in rows {
        let [latitude, longitude, height, year, month, day, hour, pressure, celsius, azimuth, elevation] =
            row[..]
        else {
            panic!("{row:?}")
        };
        let moment = Moment { date: date(year, month, day), hour, utc_offset: 0.0 };
        let sun =
            sun_at(Spot { latitude, longitude, height }, moment, Some(Air { pressure, celsius })).unwrap();
        // Both take delta T from the same polynomials, to a few seconds for future years.
        let apart = (sun.azimuth.degrees() - azimuth + 540.0).rem_euclid(360.0) - 180.0;
        let apart = apart * elevation.to_radians().cos();
        assert!(apart.abs() < 3e-4, "{row:?}: azimuth {}", sun.azimuth.degrees());
        assert!((sun.elevation - elevation).abs() < 3e-4, "{row:?}: {}", sun.elevation);
    }
}

#[test]
fn it_rises_and_sets_when_pvlib_says() {
    let rows = rows(&golden(), "days");
    assert_eq!(rows.len(), 60);
    for row in rows {
        let [latitude, longitude, year, month, day, rise, noon, set] = row[..] else { panic!("{row:?}") };
        let spot = Spot { latitude, longitude, height: 0.0 };
        let SunDay::Rises { rise: r, noon: n, set: s } = sun_day(spot, date(year, month, day), 0.0).unwrap()
        else {
            panic!("{row:?}: no day")
        };
        // pvlib interpolates between three midnights: 30 s at these latitudes
        for (ours, theirs) in [(r, rise), (n, noon), (s, set)] {
            assert!((ours - theirs).abs() < 30.0 / 3600.0, "{row:?}: {ours} and {theirs}");
        }
    }
}
