use super::*;
use crate::{CityRoof, HouseShape, Reason};
use chalkcourse_geometry::Units;
use serde_json::{Value, json};

/// A gable roof of 8 × 6 m over walls of 3 m, ridge along x at 5 m: two faces at a slope of 2 in 3.
fn barn() -> Value {
    let vertices = [
        [0, 0, 0],
        [8000, 0, 0],
        [8000, 6000, 0],
        [0, 6000, 0],
        [0, 0, 3000],
        [8000, 0, 3000],
        [8000, 6000, 3000],
        [0, 6000, 3000],
        [0, 3000, 5000],
        [8000, 3000, 5000],
    ];
    json!({
        "type": "CityJSON", "version": "2.0",
        "transform": {"scale": [0.001, 0.001, 0.001], "translate": [85000.0, 447000.0, 10.0]},
        "metadata": {"referenceSystem": "https://www.opengis.net/def/crs/EPSG/0/7415"},
        "CityObjects": {
            "barn": {"type": "Building", "attributes": {"name": "Low Barn", "year": {"from": [1900]}}, "children": ["barn-0"]},
            "barn-0": {"type": "BuildingPart", "parents": ["barn"], "geometry": [{
                "type": "Solid", "lod": "2.2",
                "boundaries": [[
                    [[0, 3, 2, 1]], [[4, 5, 9, 8]], [[6, 7, 8, 9]], [[0, 1, 5, 4]], [[2, 3, 7, 6]],
                    [[1, 2, 6, 9, 5]], [[3, 0, 4, 8, 7]]
                ]],
                "semantics": {
                    "surfaces": [{"type": "GroundSurface"}, {"type": "RoofSurface"}, {"type": "WallSurface"}],
                    "values": [[0, 1, 1, 2, 2, 2, 2]]
                }
            }]},
            "tree": {"type": "SolitaryVegetationObject", "geometry": [{"type": "GeometryInstance", "template": 0}]}
        },
        "vertices": vertices
    })
}

fn read(model: &Value) -> Result<Vec<House>, CityJsonError> {
    houses_from_cityjson(&model.to_string())
}

fn roof(model: &Value) -> CityRoof {
    match read(model).unwrap().remove(0).shape {
        HouseShape::Roof(roof) => roof,
        HouseShape::Footprint(_) => panic!("a roof was expected"),
    }
}

fn refused(model: &Value) -> String {
    read(model).unwrap_err().to_string()
}

/// A slope of 2 in 3 is 33.690°, and each face is 8 × √(3² + 2²) m (closed forms).
#[test]
fn a_barn_has_two_faces_three_metres_over_its_ground() {
    let houses = read(&barn()).unwrap();
    assert_eq!(houses.len(), 1, "the tree is no building");
    assert_eq!((houses[0].id.as_str(), houses[0].name.as_str()), ("barn", "Low Barn"));
    assert!(houses[0].told(Units::Metric).is_empty(), "{:?}", houses[0].told(Units::Metric));
    let roof = roof(&barn());
    assert_eq!((roof.surfaces.len(), roof.left_out.len(), roof.lod.as_str()), (2, 0, "2.2"));
    for (surface, azimuth) in roof.surfaces.iter().zip([180.0, 0.0]) {
        assert!((surface.plane.pitch.degrees() - 33.690_067_5).abs() < 1e-6);
        assert!((surface.plane.downslope.degrees() - azimuth).abs() < 1e-9);
        let slope_area = surface.outline.area() * surface.plane.pitch.slope_factor();
        assert!((slope_area - 8.0 * 13f64.sqrt()).abs() < 1e-9);
        assert!(surface.off < 1e-9);
        let heights = surface.outline.outer.iter().map(|&p| surface.plane.height_at(p));
        assert!(
            (heights.fold(f64::INFINITY, f64::min) - 3.0).abs() < 1e-9,
            "the eave is 3 m over the ground"
        );
    }
}

#[test]
fn feet_become_metres_and_an_unnamed_grid_is_reported() {
    let mut feet = barn();
    feet["metadata"]["referenceSystem"] = json!("https://www.opengis.net/def/crs/EPSG/0/2263");
    let surface = &roof(&feet).surfaces[0];
    let foot = 1200.0 / 3937.0;
    assert!((surface.outline.area() - 24.0 * foot * foot).abs() < 1e-9);
    assert!((surface.plane.pitch.degrees() - 33.690_067_5).abs() < 1e-6);
    let mut unnamed = barn();
    unnamed["metadata"] = json!({});
    assert!(read(&unnamed).unwrap()[0].told(Units::Metric)[0].contains("taken as meters"));
    unnamed["transform"]["scale"] = json!([1e-7, 1e-7, 1e-3]);
    assert!(refused(&unnamed).contains("degrees, not meters"));
}

#[test]
fn distorted_lengths_are_corrected_or_refused() {
    let mut web = barn();
    web["metadata"]["referenceSystem"] = json!("https://www.opengis.net/def/crs/EPSG/0/3857");
    web["transform"]["translate"] = json!([1_216_000.0, 6_764_000.0, 10.0]);
    let house = read(&web).unwrap().remove(0);
    assert!(house.told(Units::Metric)[0].contains("Web Mercator"), "{:?}", house.told(Units::Metric));
    assert!((house.place.unwrap().latitude - 51.7998).abs() < 1e-3);
    // at this latitude 8 × 3 m in the file are 4.9575 × 1.8543 m on the ground (PROJ 9.5.1 and Karney's geodesics, as in `grid`)
    assert!((roof(&web).surfaces[0].outline.area() - 24.0 * 0.619_694 * 0.618_101).abs() < 1e-4);
    for code in ["4979", "3395", "99999"] {
        web["metadata"]["referenceSystem"] = json!(format!("https://www.opengis.net/def/crs/EPSG/0/{code}"));
        assert!(refused(&web).contains("national grid"), "{code}");
    }
}

#[test]
fn every_roof_surface_is_imported_or_reported() {
    let mut model = barn();
    let boundaries = json!([[
        [[4, 5, 9, 8]],
        [[6, 7, 8, 77]],
        [[4, 5, 4, 5]],
        [[0, 1, 5, 4]],
        [[8, 9, 5, 4]],
        [[4, 6, 7, 5]],
        [[4, 5, 6, 8]],
        [[4, 5]]
    ]]);
    model["CityObjects"]["barn-0"]["geometry"][0]["boundaries"] = boundaries;
    model["CityObjects"]["barn-0"]["geometry"][0]["semantics"]["values"] = json!([[1, 1, 1, 1, 1, 1, 1, 1]]);
    let roof = roof(&model);
    let mut numbers: Vec<usize> = roof.surfaces.iter().map(|s| s.number).collect();
    numbers.extend(roof.left_out.iter().map(|l| l.number));
    numbers.sort_unstable();
    assert_eq!(numbers, (1..=8).collect::<Vec<_>>());
    let reason =
        |number| roof.left_out.iter().find(|l| l.number == number).map(|l| l.reason.clone()).unwrap();
    assert_eq!(reason(2), Reason::NoVertex);
    assert_eq!(reason(3), Reason::NoArea);
    assert!(matches!(reason(4), Reason::Upright(tilt) if (tilt - 90.0).abs() < 1e-9));
    assert_eq!(reason(5), Reason::Underside);
    assert!(matches!(reason(6), Reason::NoArea | Reason::Outline(_)));
    assert!(matches!(reason(7), Reason::OutOfPlane(off) if off > 0.3));
    assert_eq!(reason(8), Reason::TooFewCorners);
    let told = read(&model).unwrap()[0].told(Units::Metric).join("\n");
    assert!(told.contains("Roof surface 7") && told.contains("out of the plane"), "{told}");
}

#[test]
fn a_corner_slightly_off_plane_is_reported_with_its_distance() {
    let mut model = barn();
    // one corner of the ridge is 80 mm high: a quarter of that off the plane through all four, along its normal
    model["vertices"][8] = json!([0, 3000, 5080]);
    let roof = roof(&model);
    assert_eq!(roof.surfaces.len(), 2);
    assert!((roof.surfaces[0].off - 0.0166).abs() < 1e-3, "{}", roof.surfaces[0].off);
    let told = read(&model).unwrap()[0].told(Units::Metric);
    assert!(told.len() == 2 && told[0].contains("17 mm off"), "{told:?}");
}

#[test]
fn an_unmarked_geometry_is_reported_and_the_finest_marked_one_used() {
    let mut model = barn();
    let marked = model["CityObjects"]["barn-0"]["geometry"][0].clone();
    let mut coarse = marked.clone();
    coarse["lod"] = json!("1.2");
    let mut finer = marked.clone();
    finer["lod"] = json!("3");
    let mut blind = marked.clone();
    blind.as_object_mut().unwrap().remove("semantics");
    model["CityObjects"]["barn-0"]["geometry"] = json!([coarse, marked, blind, finer]);
    assert_eq!(roof(&model).lod, "2.2");
    model["CityObjects"]["barn-0"]["geometry"] = json!([blind]);
    let house = read(&model).unwrap().remove(0);
    assert_eq!(house.faces(), 0);
    assert!(
        house.told(Units::Metric)[0].contains("does not say which surfaces are roof"),
        "{:?}",
        house.told(Units::Metric)
    );
}

#[test]
fn a_sequence_is_read_line_by_line() {
    let mut head = barn();
    let mut feature = barn();
    head["CityObjects"] = json!({});
    head["vertices"] = json!([]);
    feature["type"] = json!("CityJSONFeature");
    feature.as_object_mut().unwrap().remove("transform");
    let text = format!("{head}\n{feature}\n\n");
    assert_eq!(houses_from_cityjson(&text).unwrap()[0].faces(), 2);
    let told = |text: &str| houses_from_cityjson(text).unwrap_err().to_string();
    assert!(told(&feature.to_string()).contains("CityJSONFeature"));
    assert!(told(&format!("{head}\n{feature}\nno json")).contains("text 3"));
    // a whole file may span many lines
    assert_eq!(houses_from_cityjson(&format!("{:#}", barn())).unwrap()[0].faces(), 2);
}

#[test]
fn anything_but_a_city_model_is_refused() {
    let mut old = barn();
    old["version"] = json!("1.0");
    assert!(refused(&old).contains("1.1 and 2.0"));
    let mut bare = barn();
    bare["transform"] = json!({"scale": [0.001, 0.0, 0.001], "translate": [0, 0, 0]});
    assert!(refused(&bare).contains("transform"));
    assert!(refused(&json!({"type": "Topology"})).contains("Topology"));
    let mut circle = barn();
    circle["CityObjects"]["barn"]["parents"] = json!(["barn-0"]);
    assert_eq!(
        read(&circle).unwrap().iter().map(House::faces).sum::<usize>(),
        2,
        "parents in a circle end somewhere"
    );
}
