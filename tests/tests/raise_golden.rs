//! Raised roofs against results of an independent library, stored as data: see `how` in the file.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::dvec2;
use chalkcourse_geometry::raise::{Footprint, raise};
use serde_json::Value;

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap()
}

#[test]
fn roofs_have_the_faces_and_heights_of_the_golden_file() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/data/raise-golden.json");
    let golden: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let roofs = golden["roofs"].as_array().unwrap();
    assert!(roofs.len() >= 20, "only {} roofs", roofs.len());
    for roof in roofs {
        let name = &roof["name"];
        let footprint: Footprint = serde_json::from_value(roof["footprint"].clone()).unwrap();
        let raised = raise(&footprint).unwrap_or_else(|error| panic!("{name}: {error}"));
        let mut accounted = 0.0;
        for plane in roof["planes"].as_array().unwrap() {
            let gradient = dvec2(number(&plane["gradient"][0]), number(&plane["gradient"][1]));
            let at_origin = number(&plane["at_origin"]);
            let on_plane = |point| gradient.dot(point) + at_origin;
            let area: f64 = raised
                .faces
                .iter()
                .filter(|face| {
                    let corners = &face.outline.outer;
                    corners.iter().all(|&p| (face.plane.height_at(p) - on_plane(p)).abs() < 1e-6)
                })
                .map(|face| face.outline.area())
                .sum();
            let expected = number(&plane["plan_area"]);
            assert!((area - expected).abs() < 1e-5, "{name}: {area} m² on a plane, not {expected}");
            accounted += area;
        }
        assert!((accounted - raised.plan_area()).abs() < 1e-6, "{name}: faces on no plane of the file");
        let top = raised.nodes.iter().map(|node| node.z).fold(f64::NEG_INFINITY, f64::max);
        assert!((top - number(&roof["top"])).abs() < 1e-5, "{name}: {top} high");
    }
}
