//! Fasteners that wind calls for beyond the kit's are on the order, by zone.
//!
//! ASCE/SEI 7-22 by its coefficients for components and cladding, figure 30.3-2C (read in a copy of the text); by hand for Alder
//! Court (60 × 30 ft, 6:12) with its eaves at 9 ft, 115 mph, exposure B:
//! - h = 9 + 7.5 / 2 = 12.75 ft, below 15 ft: Kz = 2.41 (15 / 3280)^(2 / 7.5) = 0.573; q Kd = 0.00256 × 0.573 × 0.85 × 115² =
//!   16.49 psf
//! - edge zones: the larger of 3 ft and 0.04 × 30 ft, and of the smaller of 0.1 × 30 and 0.4 × 12.75 ft: 3 ft
//! - dead load 22.1 kg on 21.02 sq ft, 2.318 psf, square to the deck 2.073
//! - zone 1: 16.49 × (1.5 + 0.18) = 27.7 psf, (0.6 × 27.7 − 0.6 × 2.073) × 4.204 sq ft = 64.6 lb on a fastener
//! - zone 2, along the rakes: 16.49 × (2.5 + 0.18) = 44.2 psf, 106.3 lb on a fastener; with two per foot 53.1 lb each
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a test may stop at the first surprise")]

use chalkcourse_geometry::Length;
use chalkcourse_job::{Exposure, LoadStandard, Measure, Resolved, Stage};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::{Line, take_off};
use chalkcourse_tests::samples;
use std::sync::Arc;

/// Alder Court in the wind, its block at a distance in feet from the left rake, with a fastener capacity in pounds.
fn in_wind(from_rake: f64, pounds: Option<f64>) -> Resolved {
    let mut job = samples::alder_court();
    Arc::make_mut(&mut job.rule_book).loads.as_mut().expect("loads").standard.value = LoadStandard::Asce722;
    let building = &mut job.site.building;
    building.wind_mph = Some(115.0);
    building.exposure = Some(Exposure::B);
    building.eave_height = Some(Length::from_feet(9.0));
    building.least_width = Some(Length::from_feet(30.0));
    building.fastener_pounds = pounds;
    job.blocks[0].at.x -= (12.0 - from_rake) * 0.3048;
    job
}

fn screws(job: &Resolved) -> (Line, Vec<String>) {
    let takeoff = take_off(job, &Layout::of(job));
    let line = takeoff.lines.iter().find(|line| line.number == "FH-112").expect("deck screws").clone();
    (line, takeoff.notes.iter().map(ToString::to_string).collect())
}

fn for_wind(line: &Line) -> f64 {
    let terms = line.terms.iter().filter(|term| term.of == Measure::WindFastener);
    terms.inspect(|term| assert_eq!(term.stage, Stage::Modules)).map(|term| term.need).sum()
}

#[test]
fn in_zone_1_the_kits_own_fasteners_hold() {
    let (line, _) = screws(&in_wind(12.0, None));
    assert_eq!((line.need, for_wind(&line)), (84.0, 0.0), "64.6 lb are held by 75");
    // With a capacity of 64 lb each foot of twelve modules takes another: 24 along the rail, 60 and 60 at feet, two boxes.
    let (line, notes) = screws(&in_wind(12.0, Some(64.0)));
    assert_eq!((line.need, for_wind(&line), line.packages), (144.0, 60.0, 2));
    assert!(
        notes.iter().any(|note| note.contains("2 fasteners at each foot in zone 1 on 12 of the modules")),
        "{notes:?}"
    );
    let (line, _) = screws(&in_wind(12.0, Some(65.0)));
    assert_eq!(for_wind(&line), 0.0);
}

#[test]
fn along_a_rake_the_first_column_takes_twice_as_many() {
    // The first column starts 1 ft from the rake and the second 6.7 ft: three modules of five feet are in zone 2.
    let (line, notes) = screws(&in_wind(1.0, None));
    assert_eq!((line.need, for_wind(&line), line.packages), (99.0, 15.0, 2));
    assert!(notes.iter().any(|note| note.contains("in zone 2 on 3 of the modules of block A")), "{notes:?}");
    // The shares are those of the three modules, five screws each: they can be highlighted on the roof.
    let term = line.terms.iter().find(|term| term.of == Measure::WindFastener).expect("wind");
    let shares: Vec<f64> = term.places.iter().map(|place| place.amount).collect();
    assert_eq!(shares, [5.0; 3]);
    // At 3.1 ft the column is outside the 3 ft strip.
    let (line, _) = screws(&in_wind(3.1, None));
    assert_eq!(for_wind(&line), 0.0);
}
