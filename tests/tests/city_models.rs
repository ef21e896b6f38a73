//! Roofs of real buildings from an open city model, against numbers that numpy and GEOS gave for the same polygons
//! (`tests/peers/city_models.py`). Data: © 3D BAG by tudelft3d and 3DGI, CC BY 4.0.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_exchange::{HouseShape, find, list};
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_job::{Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book};
use chalkcourse_plan::{Ends, RaiseAs, evaluate, roof_report};
use chalkcourse_tests::top;
use serde_json::Value;

#[test]
fn every_roof_surface_of_the_sample_is_a_face_or_reported_and_matches_the_reference() {
    let path = top().join("tests/data/3dbag-sample.city.jsonl");
    let text = std::fs::read_to_string(top().join("tests/data/3dbag-golden.json")).unwrap();
    let golden: Value = serde_json::from_str(&text).unwrap();
    let buildings = golden["buildings"].as_object().unwrap();
    let listing = list(&path).unwrap();
    assert_eq!(listing.buildings.len(), buildings.len());
    let (mut faces, mut left) = (0, 0);
    for entry in &listing.buildings {
        let expected = buildings[&entry.id].as_array().unwrap();
        assert_eq!(entry.faces + entry.left_out, expected.len(), "{}", entry.id);
        let house = find(&path, Some(&entry.id)).unwrap();
        let HouseShape::Roof(roof) = &house.shape else { panic!("a roof") };
        let mut numbers: Vec<usize> = roof.surfaces.iter().map(|s| s.number).collect();
        numbers.extend(roof.left_out.iter().map(|l| l.number));
        numbers.sort_unstable();
        assert_eq!(numbers, (1..=expected.len()).collect::<Vec<_>>(), "{}", entry.id);
        for surface in &roof.surfaces {
            let want = |name: &str| expected[surface.number - 1][name].as_f64().unwrap();
            let slack = 2e-5 + want("off") / want("plan_area").sqrt();
            let area = surface.outline.area();
            assert!((area / want("plan_area") - 1.0).abs() < 1e-5, "{} {}", entry.id, surface.number);
            let slope = area * surface.plane.pitch.slope_factor();
            assert!((slope / want("slope_area") - 1.0).abs() < slack, "{} {}", entry.id, surface.number);
            let tilt = (surface.plane.pitch.degrees() - want("pitch")).to_radians();
            assert!(tilt.abs() < 3.0 * slack, "{} {}: {tilt}", entry.id, surface.number);
            faces += 1;
        }
        left += roof.left_out.len();
    }
    assert!(faces > 40 && left >= 3, "{faces} faces, {left} left out");
}

/// The job agrees with the file: areas are preserved through faces, frames and the roof report.
#[test]
fn a_building_becomes_a_job_with_the_same_areas() {
    let path = top().join("tests/data/3dbag-sample.city.jsonl");
    let house = find(&path, Some("NL.IMBAG.Pand.0503100000004048")).unwrap();
    let empty = Resolved::new(String::new(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let how = RaiseAs { pitch: Pitch::FLAT, eave: Length::ZERO, overhang: Length::ZERO, ends: Ends::Hip };
    let job = apply(&empty, &house.edit(&empty, &how).unwrap()).unwrap();
    assert_eq!(job.name, house.name);
    let report = roof_report(&job, &evaluate(&job));
    let HouseShape::Roof(roof) = &house.shape else { panic!("a roof") };
    let slope: f64 = roof.surfaces.iter().map(|s| s.outline.area() * s.plane.pitch.slope_factor()).sum();
    assert_eq!(report.faces.len(), roof.surfaces.len());
    assert!(report.faces.iter().all(|face| face.sound));
    assert!((report.slope_area_m2 / slope - 1.0).abs() < 1e-9);
    assert!(report.ridge_m.is_some() && report.eave_m.is_some());
}
