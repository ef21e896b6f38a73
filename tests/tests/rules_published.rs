//! Published decision logic and numbers, in one table each: roofing by slope, fire access by edition, wind and snow.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_geometry::{EdgeKind, Length, Pitch};
use chalkcourse_job::{Building, Exposure, LoadStandard, Resolved, builtin_rule_books};
use chalkcourse_layout::Layout;
use chalkcourse_limits::Share;
use chalkcourse_rules::snow::{Snow, flat_psf, slope_factor, sloped_psf};
use chalkcourse_rules::wind::{
    RoofShape, Wind, Zone, coefficients, elevation_factor, exposure_coefficient, velocity_pressure_with_kd,
    zone_width,
};
use chalkcourse_rules::{check, ice_barrier_length};
use chalkcourse_telling::checked;
use chalkcourse_tests::samples;
use std::sync::Arc;

fn near(got: f64, expect: f64, within: f64, what: &str) {
    assert!((got - expect).abs() <= within, "{what}: {got}, expected {expect}");
}

fn codes(job: &Resolved) -> Vec<&'static str> {
    check(job, &Layout::of(job)).iter().map(|finding| finding.rule).collect()
}

/// Alder Court with both faces at a given pitch.
fn at_pitch(rise: f64) -> Resolved {
    let mut job = samples::alder_court();
    for face in &mut job.faces {
        face.pitch = Pitch::from_rise_in_12(rise).unwrap();
    }
    job
}

/// IRC R905.2.2 and table R905.1.1(2) (2018): shingles from 2:12, double underlayment below 4:12.
#[test]
fn roofing_by_slope() {
    for (rise, slope, underlayment) in [
        (1.9, true, false),
        (2.0, false, true),
        (3.99, false, true),
        (4.0, false, false),
        (12.0, false, false),
    ] {
        let codes = codes(&at_pitch(rise));
        assert_eq!(codes.contains(&"shingle-slope"), slope, "{rise}:12");
        assert_eq!(codes.contains(&"underlayment"), underlayment, "{rise}:12");
    }
}

/// IRC R905.1.2 (2018): (overhang + 24 in) × slope factor, from 8:12 no less than 36 in. Slope factors 1.1180 and 1.2019.
#[test]
fn ice_barrier() {
    let inches = Length::from_inches;
    for (rise, overhang, at_least, expect) in [
        (6.0, 12.0, None, 36.0 * 1.1180),
        (8.0, 0.0, Some(36.0), 36.0),
        (8.0, 12.0, Some(36.0), 36.0 * 1.2019),
        (4.0, 16.0, None, 40.0 * 1.0541),
    ] {
        let pitch = Pitch::from_rise_in_12(rise).unwrap();
        let got = ice_barrier_length(pitch, inches(overhang), inches(24.0), at_least.map(inches)).inches();
        near(got, expect, 0.01, &format!("{rise}:12"));
    }
}

/// IRC R324.6 / IFC 1204.2 (2018) and 1205.2 (2021, 2024): exemptions, in the order of the published decision.
#[test]
fn fire_access_exemptions() {
    let exempt = |job: &Resolved| {
        let line = checked(job).into_iter().find(|line| line.code == "fire-plane-path").unwrap();
        line.why_not
    };
    let mut job = samples::alder_court();
    assert_eq!(exempt(&job), None);
    job.site.building = Building { detached_uninhabited: true, ..Building::default() };
    assert!(exempt(&job).unwrap().contains("detached"));
    job.site.building =
        Building { no_roof_operations: "Captain Orrin, 2 March".into(), ..Building::default() };
    assert!(exempt(&job).unwrap().contains("Captain Orrin"));
    // The exemption of integrated arrays: off in every book until an office switches it on, and then with a name.
    job.site.building = Building { integrated_listing_read_by: "R. Vale".into(), ..Building::default() };
    for book in builtin_rule_books() {
        job.rule_book = Arc::clone(book);
        assert_eq!(exempt(&job), None, "{}", book.name);
    }
    let mut book = (*builtin_rule_books()[1]).clone();
    book.fire_access.as_mut().unwrap().integrated_exempt.as_mut().unwrap().value = true;
    job.rule_book = Arc::new(book);
    assert!(exempt(&job).unwrap().contains("R. Vale"));
    job.site.building = Building::default();
    assert_eq!(exempt(&job), None, "nobody read the listing");
    // 2:12 or less: the planes are exempt.
    let full = |rise: f64| {
        let mut job = at_pitch(rise);
        job.blocks[0].columns = 10;
        job.blocks[0].at.x = 0.4;
        codes(&job).contains(&"fire-plane-path")
    };
    assert!(!full(2.0) && full(2.1));
}

/// R324.6.2: r ≤ 0.33 requires 18 in, more 36 in; with sprinklers r ≤ 0.66 (from memory). 605.11: 3 ft always.
#[test]
fn ridge_by_share_and_edition() {
    let mut job = samples::alder_court();
    for (book, share, sprinklers, expect) in [
        (0, 0.33, false, 18.0),
        (0, 0.3301, false, 36.0),
        (1, 0.33, false, 18.0),
        (2, 0.34, false, 36.0),
        (0, 0.66, true, 18.0),
        (2, 0.6601, true, 36.0),
        (3, 0.05, false, 36.0),
        (3, 0.95, true, 36.0),
    ] {
        job.rule_book = Arc::clone(&builtin_rule_books()[book]);
        job.site.building.sprinklers = sprinklers;
        let fire = job.rule_book.fire_access.clone().unwrap();
        near(
            Share::of(&job, share).room(&fire).value.inches(),
            expect,
            1e-6,
            &format!("book {book}, {share}"),
        );
    }
}

/// The valley lining of R905.2.8.2 is at least 24 in wide: a setback of half of it in every book.
#[test]
fn valley_lining() {
    for book in builtin_rule_books() {
        near(book.setback(EdgeKind::Valley).inches() * 2.0, 24.0, 1e-9, &book.name);
    }
}

/// Kz by its formula (ASCE/SEI 7-16 table 26.10-1 with 2.01, 7-22 with 2.41): B, C, D at five heights in both editions.
#[test]
fn velocity_exposure_coefficients() {
    use Exposure::{B, C, D};
    use LoadStandard::{Asce716, Asce722};
    for (height, table) in [
        (15.0, [0.575, 0.573, 0.849, 0.851, 1.030, 1.035]),
        (20.0, [0.624, 0.619, 0.902, 0.903, 1.083, 1.088]),
        (25.0, [0.665, 0.656, 0.945, 0.945, 1.126, 1.131]),
        (30.0, [0.701, 0.689, 0.982, 0.980, 1.162, 1.168]),
        (40.0, [0.761, 0.744, 1.044, 1.040, 1.222, 1.228]),
    ] {
        let columns = [(Asce716, B), (Asce722, B), (Asce716, C), (Asce722, C), (Asce716, D), (Asce722, D)];
        for ((standard, exposure), expect) in columns.into_iter().zip(table) {
            let what = format!("{} {exposure:?} {height} ft", standard.name());
            near(exposure_coefficient(standard, exposure, height), expect, 6e-4, &what);
        }
    }
    // Below 15 ft as at 15 ft; printed anchors of 7-22: 0.57, 0.85, 1.03, C at 25 ft 0.94.
    near(exposure_coefficient(Asce722, C, 3.0), exposure_coefficient(Asce722, C, 15.0), 1e-12, "3 ft");
    near(exposure_coefficient(Asce722, C, 25.0), 0.94, 0.006, "C, 25 ft");
    near(elevation_factor(1000.0), 0.9645, 1e-4, "Ke at 1 000 ft");
}

/// qh·Kd of published cases and of cases by hand.
#[test]
fn velocity_pressures() {
    let q = |standard, mph, exposure, height_ft| {
        velocity_pressure_with_kd(&Wind { standard, mph, exposure, height_ft, elevation_ft: 0.0 })
    };
    // A permit calculation to 7-16: V 110, B, 15 ft, Kz 0.57, Kd 0.85: qh 15.01 psf; with 0.575 by formula 15.13.
    near(q(LoadStandard::Asce716, 110.0, Exposure::B, 15.0), 15.01, 0.15, "permit calculation");
    // Hand calculations to 7-22, reworked: V 115, C, 25 ft: 27.05; V 130, C, 22 ft: 33.69.
    near(q(LoadStandard::Asce722, 115.0, Exposure::C, 25.0), 27.05, 0.2, "V 115");
    near(q(LoadStandard::Asce722, 130.0, Exposure::C, 22.0), 33.69, 0.2, "V 130");
}

/// a = max(min(0.1 L, 0.4 h), 0.04 L, 3 ft) (ASCE/SEI 7, figure 30.3-1, notes).
#[test]
fn zone_widths() {
    for (least, height, expect) in
        [(32.0, 25.0, 3.2), (40.0, 22.0, 4.0), (20.0, 15.0, 3.0), (100.0, 10.0, 4.0), (200.0, 10.0, 8.0)]
    {
        near(zone_width(least, height), expect, 1e-12, &format!("{least} × {height} ft"));
    }
}

/// GCp at both ends of each curve: ASCE/SEI 7-22 figures 30.3-2B to 2G and 7-16 figures 30.3-2B and 2D.
#[test]
fn pressure_coefficients() {
    use LoadStandard::{Asce716, Asce722};
    use RoofShape::{Gable, Hip};
    use Zone::{One, Three, ThreeEave, ThreeRidge, Two, TwoEave, TwoRake, TwoRidge};
    type Ends = (f64, f64, f64, f64);
    let table: Vec<(LoadStandard, RoofShape, f64, Zone, Ends)> = vec![
        (Asce722, Gable, 14.0, One, (10.0, -2.0, 300.0, -0.5)),
        (Asce722, Gable, 14.0, Two, (10.0, -2.7, 200.0, -1.0)),
        (Asce722, Gable, 14.0, Three, (10.0, -3.6, 100.0, -1.8)),
        (Asce722, Gable, 25.0, One, (10.0, -1.5, 200.0, -0.8)),
        (Asce722, Gable, 25.0, Two, (10.0, -2.5, 100.0, -1.2)),
        (Asce722, Gable, 25.0, Three, (10.0, -3.0, 100.0, -1.4)),
        (Asce722, Gable, 40.0, One, (10.0, -1.8, 100.0, -0.8)),
        (Asce722, Gable, 40.0, Two, (10.0, -2.0, 200.0, -1.0)),
        (Asce722, Gable, 40.0, Three, (10.0, -2.5, 200.0, -1.0)),
        (Asce722, Hip, 14.0, One, (10.0, -1.8, 200.0, -0.8)),
        (Asce722, Hip, 14.0, Two, (10.0, -2.4, 200.0, -1.3)),
        (Asce722, Hip, 14.0, Three, (10.0, -2.6, 200.0, -1.4)),
        (Asce722, Hip, 25.0, One, (10.0, -1.4, 100.0, -0.8)),
        (Asce722, Hip, 25.0, Two, (10.0, -2.0, 200.0, -1.0)),
        (Asce722, Hip, 45.0, One, (10.0, -1.5, 100.0, -0.7)),
        (Asce722, Hip, 45.0, Two, (10.0, -1.8, 100.0, -0.8)),
        (Asce722, Hip, 45.0, Three, (10.0, -2.4, 100.0, -1.0)),
        (Asce716, Gable, 14.0, One, (20.0, -2.0, 100.0, -0.5)),
        (Asce716, Gable, 14.0, TwoEave, (20.0, -2.0, 100.0, -0.5)),
        (Asce716, Gable, 14.0, TwoRake, (10.0, -3.0, 250.0, -1.0)),
        (Asce716, Gable, 14.0, TwoRidge, (10.0, -3.0, 250.0, -1.0)),
        (Asce716, Gable, 14.0, ThreeEave, (10.0, -3.0, 250.0, -1.0)),
        (Asce716, Gable, 14.0, ThreeRidge, (10.0, -3.6, 100.0, -1.8)),
        (Asce716, Gable, 40.0, One, (10.0, -1.8, 100.0, -0.8)),
        (Asce716, Gable, 40.0, TwoRake, (10.0, -2.0, 200.0, -1.0)),
        (Asce716, Gable, 40.0, ThreeRidge, (10.0, -2.0, 200.0, -1.0)),
        (Asce716, Gable, 40.0, ThreeEave, (2.0, -3.2, 300.0, -1.0)),
    ];
    for (standard, shape, degrees, zone, (small, at_small, large, at_large)) in table {
        let figure = coefficients(standard, shape, degrees).unwrap();
        let what = format!("{} zone {} at {degrees}°", figure.figure.number, zone.name());
        for (area, expect) in [
            (small, at_small),
            (small / 2.0, at_small),
            (large, at_large),
            (large * 9.0, at_large),
            // At the midpoint of the logarithms.
            ((small * large).sqrt(), (at_small + at_large) / 2.0),
        ] {
            near(figure.outward(zone, area).unwrap(), expect, 1e-9, &what);
        }
    }
    // Not in the sources: refused, not guessed.
    for (standard, shape, degrees) in
        [(Asce716, Gable, 25.0), (Asce716, Hip, 14.0), (Asce722, Gable, 6.0), (Asce722, Hip, 50.0)]
    {
        assert!(coefficients(standard, shape, degrees).is_err());
    }
}

/// The 7-22 guide's examples 6.2 and 6.3: pressures for 10 and 208 ft², and hip coefficients at 32.2 ft² (areas and qh·Kd solved
/// back from the printed values).
#[test]
fn worked_examples_of_the_guide() {
    let gable = coefficients(LoadStandard::Asce722, RoofShape::Gable, 15.0).unwrap();
    for (zone, at_10, at_208) in
        [(Zone::One, -64.1, -24.7), (Zone::Two, -84.7, -34.7), (Zone::Three, -111.1, -58.2)]
    {
        for (area, expect) in [(10.0, at_10), (208.0, at_208)] {
            near(29.40 * (gable.outward(zone, area).unwrap() - 0.18), expect, 0.06, "example 6.2");
        }
    }
    let hip = coefficients(LoadStandard::Asce722, RoofShape::Hip, 15.0).unwrap();
    for (zone, expect) in [(Zone::One, -1.41), (Zone::Two, -1.97), (Zone::Three, -2.13)] {
        near(hip.outward(zone, 32.2).unwrap(), expect, 0.006, "example 6.3");
    }
}

/// ASCE/SEI 7 chapter 7: pg 40, Ce 1, Is 1, Ct 1.1 gives pf 30.8; 6:12 on other surfaces 30.8; slippery Cs 0.724, 22.3 psf.
#[test]
fn snow() {
    let snow = Snow {
        standard: LoadStandard::Asce716,
        ground_psf: 40.0,
        exposure: 1.0,
        thermal: 1.1,
        importance: 1.0,
    };
    let degrees = Pitch::from_rise_in_12(6.0).unwrap().degrees();
    near(flat_psf(&snow), 30.8, 1e-9, "pf");
    near(sloped_psf(&snow, degrees, false), 30.8, 1e-9, "other surfaces");
    near(slope_factor(degrees, 1.1, true), 0.724, 5e-4, "slippery Cs");
    near(sloped_psf(&snow, degrees, true), 22.3, 0.05, "slippery");
    for (thermal, other, slippery) in [(1.0, 30.0, 5.0), (1.1, 37.5, 10.0), (1.2, 45.0, 15.0)] {
        for (knee, slick) in [(other, false), (slippery, true)] {
            near(slope_factor(knee, thermal, slick), 1.0, 1e-12, "knee");
            near(slope_factor((knee + 70.0) / 2.0, thermal, slick), 0.5, 1e-12, "half way to 70°");
        }
    }
}
