//! The visible faces of a house of several parts, against areas of an independent library stored as data: see `how` in
//! the file.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::Tolerances;
use chalkcourse_geometry::envelope::{Surface, envelope};
use chalkcourse_geometry::raise::{Footprint, raise};
use serde_json::Value;
use std::collections::BTreeMap;

#[test]
fn houses_show_the_areas_of_the_golden_file() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/data/envelope-golden.json");
    let golden: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let houses = golden["houses"].as_array().unwrap();
    assert!(houses.len() >= 40, "only {} houses", houses.len());
    for (number, house) in houses.iter().enumerate() {
        let parts: Vec<Footprint> = serde_json::from_value(house["parts"].clone()).unwrap();
        let mut surfaces = Vec::new();
        for (part, footprint) in parts.iter().enumerate() {
            for face in raise(footprint).unwrap().faces {
                surfaces.push(Surface { part, outline: face.outline, plane: face.plane, deck: true });
            }
        }
        let pieces = envelope(&surfaces, Tolerances::default()).unwrap();
        let mut areas: BTreeMap<usize, f64> = BTreeMap::new();
        // A piece coplanar with faces of other parts is compared as a whole, below.
        for piece in &pieces {
            *areas.entry(piece.surfaces[0]).or_default() += piece.outline.area();
        }
        let shared = |index: usize| pieces.iter().any(|p| p.surfaces[0] == index && p.surfaces.len() > 1);
        for expected in house["areas"].as_array().unwrap() {
            let index = usize::try_from(expected[0].as_u64().unwrap()).unwrap();
            let (area, sought) = (areas.get(&index).copied().unwrap_or(0.0), expected[1].as_f64().unwrap());
            let fits = (area - sought).abs() < 1e-3 || shared(index);
            assert!(fits, "house {number}: {area} m² of face {index} seen, not {sought}");
        }
        let (total, sought) = (areas.values().sum::<f64>(), house["total"].as_f64().unwrap());
        assert!((total - sought).abs() < 1e-3, "house {number}: {total} m² in all, not {sought}");
    }
}
