use super::*;
use proptest::prelude::*;

fn at(latitude: f64, longitude: f64) -> Spot {
    Spot { latitude, longitude, height: 0.0 }
}

/// Reda and Andreas, Solar position algorithm for solar radiation applications (NREL/TP-560-34302, 2003), table A5.1: 17 October
/// 2003, 12:30:30 at UTC − 7 h, 39.742476° N, 105.1786° W, 1830.14 m, 820 mbar, 11 °C: zenith 50.11162°, azimuth 194.34024°.
#[test]
fn the_example_of_the_published_algorithm() {
    let spot = Spot { latitude: 39.742_476, longitude: -105.1786, height: 1830.14 };
    let date = Date::new(2003, 10, 17).unwrap();
    let moment = Moment { date, hour: 12.0 + 30.5 / 60.0, utc_offset: -7.0 };
    let sun = sun_at(spot, moment, Some(Air { pressure: 820.0, celsius: 11.0 })).unwrap();
    assert!((90.0 - sun.elevation - 50.11162).abs() < 2e-5, "{}", 90.0 - sun.elevation);
    // The example takes 67 s for delta T, two more than were measured for that day.
    assert!((sun.azimuth.degrees() - 194.34024).abs() < 5e-5, "{}", sun.azimuth.degrees());
    // The same example (these from memory): sunrise 6:12:43.46 and sunset 17:20:19.19 by the clock.
    let SunDay::Rises { rise, noon, set } = sun_day(spot, date, -7.0).unwrap() else { panic!("no day") };
    let clock = |h: f64, m: f64, s: f64| h + m / 60.0 + s / 3600.0;
    assert!((rise - clock(6.0, 12.0, 43.46)).abs() < 3.0 / 3600.0, "{rise}");
    // Its sunset is of the day in UTC, which by this clock is the evening before: days get shorter by 88 s there.
    let SunDay::Rises { set: before, .. } = sun_day(spot, Date::of_year(2003, 289), -7.0).unwrap() else {
        panic!("no day before")
    };
    assert!((before - clock(17.0, 20.0, 19.19)).abs() < 3.0 / 3600.0, "{before}");
    assert!((before - set - 88.0 / 3600.0).abs() < 3.0 / 3600.0, "{set}");
    assert!((noon - clock(11.0, 46.0, 4.97)).abs() < 3.0 / 3600.0, "{noon}");
}

#[test]
fn standard_air_thins_with_height() {
    // ISO 2533 at 1,000 m: 898.746 hPa, 8.5 °C (from memory)
    let air = Air::standard_at(1000.0);
    assert!((air.pressure - 898.746).abs() < 0.05 && (air.celsius - 8.5).abs() < 1e-9, "{air:?}");
}

#[test]
fn polar_day_and_polar_night_are_distinguished() {
    let tromso_like = at(69.65, 18.96);
    let day = |month, day| sun_day(tromso_like, Date::new(2026, month, day).unwrap(), 1.0).unwrap();
    assert!(matches!(day(6, 21), SunDay::Up { .. }), "{:?}", day(6, 21));
    assert!(matches!(day(12, 21), SunDay::Down { .. }), "{:?}", day(12, 21));
    assert!(matches!(day(3, 20), SunDay::Rises { .. }));
    assert!((day(6, 21).noon() - 11.77).abs() < 0.05, "{}", day(6, 21).noon());
}

#[test]
fn places_off_the_globe_are_refused_with_a_message() {
    let date = Date::new(2026, 6, 21).unwrap();
    let moment = Moment { date, hour: 12.0, utc_offset: 0.0 };
    for spot in [at(91.0, 0.0), at(0.0, 181.0), at(f64::NAN, 0.0)] {
        assert!(matches!(sun_at(spot, moment, None), Err(SunError::NotOnGlobe { .. })));
        assert!(sun_day(spot, date, 0.0).unwrap_err().to_string().contains("-90 to 90"));
    }
    let late = Date::new(9000, 1, 1).unwrap();
    assert!(sun_at(at(0.0, 0.0), Moment { date: late, ..moment }, None).is_err());
    assert!(sun_at(at(0.0, 0.0), Moment { hour: f64::NAN, ..moment }, None).is_err());
}

proptest! {
    /// At sunrise and sunset the sun's centre is 50′ below the horizon before refraction, on either side of noon.
    #[test]
    fn rise_and_set_are_where_the_sun_crosses(
        latitude in -89.0..89.0f64, longitude in -180.0..180.0f64, nth in 1u32..366, offset in -12i32..14,
    ) {
        let (spot, date, offset) = (at(latitude, longitude), Date::of_year(2026, nth), f64::from(offset));
        let no_air = Some(Air { pressure: 1e-6, celsius: 15.0 });
        let sun = |hour: f64| sun_at(spot, Moment { date, hour, utc_offset: offset }, no_air).unwrap();
        let day = sun_day(spot, date, offset).unwrap();
        let noon = day.noon();
        prop_assert!((0.0..=26.5).contains(&noon), "noon at {noon}");
        match day {
            SunDay::Rises { rise, set, .. } => {
                prop_assert!(rise < noon && noon < set);
                for hour in [rise, set] {
                    prop_assert!((sun(hour).elevation + 50.0 / 60.0).abs() < 1e-3, "{:?}", sun(hour));
                }
                prop_assert!(sun(noon).elevation > -0.9);
            }
            SunDay::Up { noon } => prop_assert!(sun(noon).elevation > -0.9),
            SunDay::Down { noon } => prop_assert!(sun(noon).elevation < 1.0),
        }
        prop_assert!((sun(noon).direction().length() - 1.0).abs() < 1e-12);
    }
}
