//! Footprints from GeoJSON (RFC 7946).

use crate::local::without_repeats;
use crate::{LocalPlan, MOST_CORNERS, MOST_REACH};
use chalkcourse_geometry::{DVec2, Defect, Polygon};
use chalkcourse_job::GeoPoint;
use chalkcourse_words as words;
use geojson::{GeoJson, GeometryValue, JsonObject, Position};

/// An outline from a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    /// Its `name`, or its position in the file; duplicates get a number appended.
    pub name: String,
    /// The centre on the globe: the origin of the outline's plan.
    pub place: GeoPoint,
    /// Metres east and north of the centre, with holes (courtyards); or why it can't be used.
    pub outline: Result<Polygon, GeoJsonError>,
}

/// Why there is no outline.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum GeoJsonError {
    /// It is not GeoJSON.
    #[error("{}", words::formats::this_is_no_geojson_rfc(&_0))]
    Malformed(String),
    /// It contains no polygon.
    #[error("{}", words::formats::THIS_GEOJSON_HOLDS_NO_POLYGON.now().to_owned())]
    NoPolygon,
    /// It names another coordinate reference system.
    #[error("{}", words::formats::its_crs_is_geojson_is(&_0))]
    OtherCrs(String),
    /// A position is not valid longitude and latitude.
    #[error("{}", words::formats::position_is_no_longitude_from(&name, &position, &longitude, &latitude))]
    NotDegrees {
        /// Which outline.
        name: String,
        /// Which position of it, 1-based.
        position: usize,
        /// As given.
        longitude: f64,
        /// As given.
        latitude: f64,
    },
    /// An outline extends too far for a local plane.
    #[error("{}", words::formats::reaches_m_from_its_middle(&name, &format_args!("{metres:.0}"), &format_args!("{MOST_REACH:.0}")))]
    TooFar {
        /// Which outline.
        name: String,
        /// Its extent, metres.
        metres: f64,
    },
    /// An outline has more corners than any house.
    #[error("{}", words::formats::has_corners_a_house_has(&name, &corners, &MOST_CORNERS))]
    TooManyCorners {
        /// Which outline.
        name: String,
        /// How many.
        corners: usize,
    },
    /// Its rings do not form a valid outline.
    #[error("{name}: {}", ring_words(.defect))]
    Ring {
        /// Which outline.
        name: String,
        /// What is wrong.
        defect: Defect,
    },
}

fn ring_words(defect: &Defect) -> String {
    let ring = |ring: &usize| {
        if *ring == 0 { words::common::THE_OUTLINE.now().to_owned() } else { words::common::hole(&ring) }
    };
    match defect {
        Defect::NotFinite { ring: r, .. } => words::formats::has_a_corner_at_no(&ring(r)),
        Defect::TooFewCorners { ring: r } => words::formats::has_fewer_than_three_corners(&ring(r)),
        Defect::RepeatedCorner { ring: r, corner } => {
            words::formats::corner_of_is_on_the(&(corner + 1), &ring(r))
        }
        Defect::NoArea { ring: r } => words::formats::has_no_area(&ring(r)),
        Defect::Crosses { at } => {
            words::formats::sides_cross_or_touch_m(&format_args!("{:.2}", at.x), &format_args!("{:.2}", at.y))
        }
        Defect::HoleOutside { ring: r } => words::formats::is_not_inside_the_outline(&ring(r)),
    }
}

/// Corners closer than this are merged, metres.
const SAME: f64 = 1e-3;

/// Reads all outlines of a GeoJSON text, each into a local plan around its own centre; see [`LocalPlan`] for the accuracy. An
/// outline that can't be used keeps its place in the list, with the reason.
///
/// # Errors
/// [`GeoJsonError`] if the text as a whole is unusable.
pub fn outlines_from_geojson(text: &str) -> Result<Vec<Outline>, GeoJsonError> {
    let parsed: GeoJson =
        text.parse().map_err(|error: geojson::Error| GeoJsonError::Malformed(error.to_string()))?;
    let mut found = Found::default();
    match parsed {
        GeoJson::Geometry(geometry) => {
            check_crs(geometry.foreign_members.as_ref())?;
            found.collect(None, geometry.value);
        }
        GeoJson::Feature(feature) => found.feature(feature)?,
        GeoJson::FeatureCollection(all) => {
            check_crs(all.foreign_members.as_ref())?;
            for feature in all.features {
                found.feature(feature)?;
            }
        }
    }
    if found.polygons.is_empty() {
        return Err(GeoJsonError::NoPolygon);
    }
    let mut taken = std::collections::BTreeMap::<String, usize>::new();
    let named = found.polygons.into_iter().enumerate().map(|(index, (name, rings))| {
        let name = name.unwrap_or_else(|| words::formats::outline(&(index + 1)));
        let nth = taken.entry(name.clone()).and_modify(|n| *n += 1).or_insert(1);
        let name = if *nth == 1 { name } else { format!("{name} ({nth})") };
        let (place, outline) = local_outline(&name, &rings);
        Outline { name, place, outline }
    });
    Ok(named.collect())
}

/// Polygons with the names of their features.
#[derive(Default)]
struct Found {
    polygons: Vec<(Option<String>, Vec<Vec<Position>>)>,
}

impl Found {
    fn feature(&mut self, feature: geojson::Feature) -> Result<(), GeoJsonError> {
        check_crs(feature.foreign_members.as_ref())?;
        let name = feature.property("name").and_then(|name| name.as_str()).map(str::trim);
        let name = name.filter(|name| !name.is_empty()).map(|name| name.chars().take(120).collect());
        if let Some(geometry) = feature.geometry {
            self.collect(name, geometry.value);
        }
        Ok(())
    }

    fn collect(&mut self, name: Option<String>, value: GeometryValue) {
        match value {
            GeometryValue::Polygon { coordinates } => self.polygons.push((name, coordinates)),
            GeometryValue::MultiPolygon { coordinates } => {
                self.polygons.extend(coordinates.into_iter().map(|rings| (name.clone(), rings)));
            }
            GeometryValue::GeometryCollection { geometries } => {
                for geometry in geometries {
                    self.collect(name.clone(), geometry.value);
                }
            }
            _ => {}
        }
    }
}

/// GeoJSON before RFC 7946 could name a reference system. One that is WGS 84 degrees, or within 2 m of it as a whole, makes no
/// difference for a house; any other is refused.
fn check_crs(foreign: Option<&JsonObject>) -> Result<(), GeoJsonError> {
    let Some(crs) = foreign.and_then(|members| members.get("crs")).filter(|crs| !crs.is_null()) else {
        return Ok(());
    };
    let name = crs.get("properties").and_then(|p| p.get("name")).and_then(|name| name.as_str());
    let Some(name) = name else {
        return Err(GeoJsonError::OtherCrs(crs.to_string().chars().take(120).collect()));
    };
    let code = name.rsplit([':', '/']).next().unwrap_or_default();
    if ["CRS84", "CRS84h", "4326", "4979", "4269", "4258"].contains(&code) {
        Ok(())
    } else {
        Err(GeoJsonError::OtherCrs(name.chars().take(120).collect()))
    }
}

fn local_outline(name: &str, rings: &[Vec<Position>]) -> (GeoPoint, Result<Polygon, GeoJsonError>) {
    let nowhere = GeoPoint { latitude: 0.0, longitude: 0.0 };
    let corners = rings.iter().map(Vec::len).sum();
    if corners > MOST_CORNERS {
        return (nowhere, Err(GeoJsonError::TooManyCorners { name: name.to_owned(), corners }));
    }
    let rings: Result<Vec<Vec<GeoPoint>>, _> = rings.iter().map(|ring| degrees(name, ring)).collect();
    let rings = match rings {
        Ok(rings) => rings,
        Err(error) => return (nowhere, Err(error)),
    };
    let Some(&first) = rings.first().and_then(|ring| ring.first()) else {
        let defect = Defect::TooFewCorners { ring: 0 };
        return (nowhere, Err(GeoJsonError::Ring { name: name.to_owned(), defect }));
    };
    // Find the centre in a plan around the first corner, so that the antimeridian is not a problem.
    let rough = LocalPlan::around(first);
    let near: Vec<DVec2> = rings.iter().flatten().map(|&place| rough.metres(place)).collect();
    let middle = chalkcourse_geometry::Rect::around(near).map_or(DVec2::ZERO, |bounds| bounds.centre());
    let place = rough.place(middle);
    if !place.is_on_globe() {
        let metres = middle.length();
        return (nowhere, Err(GeoJsonError::TooFar { name: name.to_owned(), metres }));
    }
    let plan = LocalPlan::around(place);
    let mut local = rings.iter().map(|ring| {
        // RFC 7946: the last position repeats the first; other repeats carry no information either.
        without_repeats(ring.iter().map(|&place| plan.metres(place)).collect(), SAME)
    });
    let outline = Polygon { outer: local.next().unwrap_or_default(), holes: local.collect() };
    let metres = outline.rings().flatten().map(|p| p.length()).fold(0.0, f64::max);
    if metres > MOST_REACH {
        return (place, Err(GeoJsonError::TooFar { name: name.to_owned(), metres }));
    }
    match outline.defects(SAME).into_iter().next() {
        Some(defect) => (place, Err(GeoJsonError::Ring { name: name.to_owned(), defect })),
        None => (place, Ok(outline)),
    }
}

fn degrees(name: &str, ring: &[Position]) -> Result<Vec<GeoPoint>, GeoJsonError> {
    let place = |(index, position): (usize, &Position)| {
        let number = |at: usize| position.as_slice().get(at).copied().unwrap_or(f64::NAN);
        let place = GeoPoint { latitude: number(1), longitude: number(0) };
        place.is_on_globe().then_some(place).ok_or_else(|| GeoJsonError::NotDegrees {
            name: name.to_owned(),
            position: index + 1,
            longitude: place.longitude,
            latitude: place.latitude,
        })
    };
    ring.iter().enumerate().map(place).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn feature(geometry: &str) -> String {
        format!("{{\"type\":\"Feature\",\"properties\":{{\"name\":\"Mill\"}},\"geometry\":{geometry}}}")
    }

    fn polygon(rings: &str) -> String {
        feature(&format!("{{\"type\":\"Polygon\",\"coordinates\":[{rings}]}}"))
    }

    const RING: &str = "[[-84.5,39.0],[-84.499,39.0],[-84.499,39.001],[-84.5,39.001],[-84.5,39.0]]";
    const HOLE: &str =
        "[[-84.4996,39.0004],[-84.4996,39.0006],[-84.4994,39.0006],[-84.4994,39.0004],[-84.4996,39.0004]]";

    fn error_of(text: &str) -> String {
        match outlines_from_geojson(text) {
            Err(error) => error.to_string(),
            Ok(outlines) => outlines[0].outline.clone().unwrap_err().to_string(),
        }
    }

    #[test]
    fn an_outline_has_its_middle_at_the_origin_and_keeps_its_holes() {
        let outlines = outlines_from_geojson(&polygon(&format!("{RING},{HOLE}"))).unwrap();
        assert_eq!(outlines[0].name, "Mill");
        let outline = outlines[0].outline.clone().unwrap();
        let bounds = outline.bounds().unwrap();
        assert!((bounds.size().x - 86.63).abs() < 0.01 && (bounds.size().y - 111.015).abs() < 0.01);
        assert!(bounds.centre().length() < 1e-3, "{}", bounds.centre());
        assert_eq!((outline.outer.len(), outline.holes.len(), outline.holes[0].len()), (4, 1, 4));
        assert!((outlines[0].place.latitude - 39.0005).abs() < 1e-9);
        // a hole of a fifth by a fifth of the outline's size leaves 24/25 of it
        assert!((outline.area() / (bounds.area() * 0.96) - 1.0).abs() < 1e-5);
    }

    #[test]
    fn parts_of_a_multi_polygon_and_equal_names_are_distinguished() {
        let east = RING.replace("-84.5,", "-84.489,").replace("-84.499,", "-84.488,");
        let text = feature(&format!("{{\"type\":\"MultiPolygon\",\"coordinates\":[[{RING}],[{east}]]}}"));
        let names: Vec<String> =
            outlines_from_geojson(&text).unwrap().into_iter().map(|outline| outline.name).collect();
        assert_eq!(names, ["Mill", "Mill (2)"]);
        // each is in the plan around its own centre, however far apart they are
        let far = RING.replace("-84.5,", "10.0,").replace("-84.499,", "10.001,");
        let text = feature(&format!("{{\"type\":\"MultiPolygon\",\"coordinates\":[[{RING}],[{far}]]}}"));
        assert!(outlines_from_geojson(&text).unwrap().iter().all(|outline| outline.outline.is_ok()));
    }

    #[test]
    fn the_antimeridian_is_crossed_the_short_way() {
        let ring =
            "[[179.9999,-17.0],[-179.9999,-17.0],[-179.9999,-16.9999],[179.9999,-16.9999],[179.9999,-17.0]]";
        let outlines = outlines_from_geojson(&polygon(ring)).unwrap();
        let size = outlines[0].outline.clone().unwrap().bounds().unwrap().size();
        assert!((size.x - 21.3).abs() < 0.05, "{size}");
    }

    #[test]
    fn a_named_reference_system_is_heeded() {
        let crs = |name: &str| {
            polygon(RING).replacen(
                '{',
                &format!("{{\"crs\":{{\"type\":\"name\",\"properties\":{{\"name\":\"{name}\"}}}},"),
                1,
            )
        };
        assert!(outlines_from_geojson(&crs("urn:ogc:def:crs:OGC:1.3:CRS84")).is_ok());
        assert!(outlines_from_geojson(&crs("EPSG:4326")).is_ok());
        assert!(error_of(&crs("urn:ogc:def:crs:EPSG::25832")).contains("25832"));
        assert!(error_of(&crs("EPSG:3857")).contains("WGS 84"));
        assert!(error_of(&polygon(RING).replacen('{', "{\"crs\":{\"type\":\"link\"},", 1)).contains("link"));
    }

    #[test]
    fn unusable_outlines_are_reported() {
        assert!(error_of("{").contains("RFC 7946"));
        assert!(error_of("{\"type\":\"Point\",\"coordinates\":[1,2]}").contains("no Polygon"));
        let metres = polygon("[[500000,4300000],[500010,4300000],[500010,4300010],[500000,4300000]]");
        assert!(error_of(&metres).contains("degrees") && error_of(&metres).contains("Mill"));
        let far = polygon("[[-84.5,39.0],[-80.0,39.0],[-80.0,40.0],[-84.5,39.0]]");
        assert!(error_of(&far).contains("stays within 5000 m"));
        let bow = polygon("[[-84.5,39.0],[-84.499,39.001],[-84.499,39.0],[-84.5,39.001],[-84.5,39.0]]");
        assert!(error_of(&bow).contains("cross"));
        assert!(error_of(&polygon("[]")).contains("three corners"));
        assert!(error_of(&polygon(&format!("{HOLE},{RING}"))).contains("hole 1 is not inside"));
        let many: Vec<String> =
            (0..2_100).map(|i| format!("[-84.5,{}]", 39.0 + f64::from(i) * 1e-7)).collect();
        assert!(error_of(&polygon(&format!("[{}]", many.join(",")))).contains("2100 corners"));
    }
}
