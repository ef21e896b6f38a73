//! Exports in open formats, read back by third-party readers: glTF by the `gltf` crate, GeoJSON by `geojson` and `geo`.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_exchange::{LocalPlan, house_to_glb, outlines_from_geojson, plan_to_geojson};
use chalkcourse_geometry::{Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{GeoPoint, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Ends, RaiseAs, Standing, raise_roof};
use chalkcourse_solid::{Kind, Show, solid};
use chalkcourse_tests::samples;
use geo::GeodesicArea;
use geojson::{GeoJson, GeometryValue};
use std::collections::BTreeMap;

const FOOT: f64 = 0.3048;

/// Triangles by material name, with the normal written at their first vertex.
type Triangles = BTreeMap<String, Vec<([[f32; 3]; 3], [f32; 3])>>;

fn read_back(bytes: &[u8]) -> (Triangles, Vec<String>, [[f32; 3]; 2]) {
    let file = gltf::Gltf::from_slice(bytes).expect("glTF 2.0 that the reader's own checks pass");
    let blob = file.blob.clone().expect("a binary chunk");
    let (mut triangles, mut names) = (Triangles::new(), Vec::new());
    let mut bounds = [[f32::INFINITY; 3], [f32::NEG_INFINITY; 3]];
    for node in file.nodes() {
        names.push(node.name().expect("a name").to_owned());
        for primitive in node.mesh().expect("a mesh").primitives() {
            let reader = primitive.reader(|buffer| (buffer.index() == 0).then_some(blob.as_slice()));
            let points: Vec<[f32; 3]> = reader.read_positions().expect("positions").collect();
            let normals: Vec<[f32; 3]> = reader.read_normals().expect("normals").collect();
            assert_eq!(points.len(), normals.len());
            let told = primitive.bounding_box();
            for axis in 0..3 {
                let seen = points.iter().map(|p| p[axis]);
                assert_eq!(seen.clone().fold(f32::INFINITY, f32::min), told.min[axis]);
                assert_eq!(seen.fold(f32::NEG_INFINITY, f32::max), told.max[axis]);
                bounds[0][axis] = bounds[0][axis].min(told.min[axis]);
                bounds[1][axis] = bounds[1][axis].max(told.max[axis]);
            }
            let material = primitive.material().name().expect("a name").to_owned();
            let list = triangles.entry(material).or_default();
            list.extend(points.chunks(3).zip(normals.chunks(3)).map(|(t, n)| ([t[0], t[1], t[2]], n[0])));
        }
    }
    (triangles, names, bounds)
}

fn cross(t: &[[f32; 3]; 3]) -> [f64; 3] {
    let side = |i: usize| [0, 1, 2].map(|axis| f64::from(t[i][axis]) - f64::from(t[0][axis]));
    let (a, b) = (side(1), side(2));
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

fn area(triangles: &Triangles, material: &str) -> f64 {
    let all = triangles.get(material).map_or(&[][..], Vec::as_slice);
    all.iter().map(|(t, _)| cross(t).iter().map(|x| x * x).sum::<f64>().sqrt() / 2.0).sum()
}

#[test]
fn gltf_holds_every_module_face_and_penetration_true_to_size() {
    for (name, job) in samples::all() {
        let layout = Layout::of(&job);
        let house = solid(&job, &layout, Show::default());
        let (triangles, names, bounds) =
            read_back(&house_to_glb(&job, &house, &Standing::default()).unwrap());
        let modules: usize = layout.blocks.iter().map(|block| block.modules.len()).sum();
        assert_eq!(names.iter().filter(|n| n.contains(", module ")).count(), modules, "{name}");
        assert_eq!(names.iter().filter(|n| n.starts_with("Face ")).count(), job.faces.len(), "{name}");
        for penetration in &job.penetrations {
            assert!(names.contains(&penetration.name), "{name}: {}", penetration.name);
        }
        // 1,134 × 1,722 mm each, as the kit has it
        let glass = modules as f64 * 1.134 * 1.722;
        assert!((area(&triangles, "module") - glass).abs() <= 1e-4 * glass, "{name}");
        for kind in Kind::ALL.into_iter().filter(|kind| *kind != Kind::Ground) {
            let ours = house.area_of(kind);
            assert!((area(&triangles, kind.name()) - ours).abs() <= 1e-4 * ours.max(1.0), "{name}: {kind:?}");
        }
        let (least, most) = house.bounds.unwrap();
        let y_up = [[least.x, least.z, -most.y], [most.x, most.z, -least.y]];
        for (seen, expected) in bounds.iter().flatten().zip(y_up.iter().flatten()) {
            assert!((f64::from(*seen) - expected).abs() < 1e-3, "{name}: {bounds:?} {y_up:?}");
        }
        // the written normal agrees with the winding
        for (t, normal) in triangles.values().flatten() {
            let across = cross(t);
            let length = across.iter().map(|x| x * x).sum::<f64>().sqrt();
            let along: f64 = across.iter().zip(normal).map(|(x, n)| x / length * f64::from(*n)).sum();
            assert!(length < 1e-6 || along > 0.99, "{name}: {along}");
        }
    }
}

/// A hip of 60 × 30 ft at 6:12: 2,012.46 ft² on the slope (closed form), and none of its triangles faces down.
#[test]
fn a_hip_has_its_area_in_gltf() {
    let empty = Resolved::new("Hip".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let corners = [(0.0, 0.0), (60.0, 0.0), (60.0, 30.0), (0.0, 30.0)];
    let outline = Polygon::new(corners.map(|(x, y)| dvec2(x, y) * FOOT).to_vec());
    let pitch = Pitch::from_rise_in_12(6.0).unwrap();
    let how = RaiseAs { pitch, eave: Length::from_feet(9.0), overhang: Length::ZERO, ends: Ends::Hip };
    let job = apply(&empty, &raise_roof(&empty, &outline, &how).unwrap()).unwrap();
    let house = solid(&job, &Layout::of(&job), Show::default());
    let (triangles, _, _) = read_back(&house_to_glb(&job, &house, &Standing::default()).unwrap());
    assert!((area(&triangles, "roof") / FOOT.powi(2) - 2_012.461).abs() < 0.01);
    assert!(triangles["roof"].iter().all(|(t, _)| cross(t)[1] > 0.0));
    assert!(
        house_to_glb(&empty, &solid(&empty, &Layout::of(&empty), Show::default()), &Standing::default())
            .is_err()
    );
}

fn polygon(geometry: &GeometryValue) -> geo::Polygon<f64> {
    let GeometryValue::Polygon { coordinates } = geometry else { panic!("a polygon") };
    let ring = |ring: &Vec<geojson::Position>| {
        assert_eq!(ring.first(), ring.last(), "a ring is closed (RFC 7946, section 3.1.6)");
        geo::LineString::from_iter(ring.iter().map(|p| (p.as_slice()[0], p.as_slice()[1])))
    };
    geo::Polygon::new(ring(&coordinates[0]), coordinates[1..].iter().map(ring).collect())
}

/// Areas on the globe by Karney's geodesics (`geo`'s port of GeographicLib): signed, so that wrong orientation shows.
#[test]
fn geojson_has_every_thing_at_its_true_size_on_the_globe() {
    let (_, mut job) = samples::all().into_iter().find(|(name, _)| name.contains("quarry")).unwrap();
    job.site.place = None;
    let layout = Layout::of(&job);
    assert!(
        plan_to_geojson(&job, &layout, &Standing::default()).is_err(),
        "without a place there is no longitude"
    );
    for place in [(39.1, -84.5), (59.9, 10.75), (-33.9, 151.2), (0.0, 0.0)] {
        let place = GeoPoint { latitude: place.0, longitude: place.1 };
        job.site.place = Some(place);
        let text = plan_to_geojson(&job, &layout, &Standing::default()).unwrap();
        let GeoJson::FeatureCollection(all) = text.parse().unwrap() else { panic!("a collection") };
        let of = |kind: &str| -> Vec<geo::Polygon<f64>> {
            let found = all.features.iter().filter(|f| f.property("kind").unwrap() == kind);
            found.map(|f| polygon(&f.geometry.as_ref().unwrap().value)).collect()
        };
        let modules: usize = layout.blocks.iter().map(|block| block.modules.len()).sum();
        assert_eq!((of("face").len(), of("penetration").len()), (job.faces.len(), job.penetrations.len()));
        assert_eq!(of("module").len(), modules);
        for (face, on_globe) in layout.roof.faces.iter().zip(of("face")) {
            let area = on_globe.geodesic_area_signed();
            // Degrees to nine decimals move a corner by up to 0.06 mm.
            let slack = 3e-5 * face.plan_area + 3e-4 * face.plan_area.sqrt();
            assert!((area - face.plan_area).abs() < slack, "{area} {}", face.plan_area);
        }
        for module in of("module") {
            assert!(module.geodesic_area_signed() > 0.0);
        }
        // and back through this project's own reader: the same place, within a tenth of a millimetre and the variation of scale
        let outlines = outlines_from_geojson(&text).unwrap();
        let local = LocalPlan::around(place);
        for (face, outline) in layout.roof.faces.iter().zip(&outlines) {
            let shape = outline.outline.clone().unwrap();
            let slack = 3e-5 * face.plan_area + 3e-4 * face.plan_area.sqrt();
            assert!((shape.area() - face.plan_area).abs() < slack);
            let middle = local.metres(outline.place);
            assert!(middle.distance(face.plan.bounds().unwrap().centre()) < 2e-3);
        }
    }
    job.site.place = Some(GeoPoint { latitude: 10.0, longitude: 180.0 });
    assert!(plan_to_geojson(&job, &layout, &Standing::default()).unwrap_err().to_string().contains("180th"));
}
