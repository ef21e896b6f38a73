//! Footprints from GeoJSON (RFC 7946).

use chalkcourse_geometry::{DVec2, Polygon, dvec2};
use geojson::{GeoJson, GeometryValue, Position};

/// An outline from a file, in local metres.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    /// Its `name`, or where it stands in the file.
    pub name: String,
    /// East and north of the middle of the file's first outline, metres.
    pub outline: Polygon,
}

/// Why there is no outline.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum GeoJsonError {
    /// It is no GeoJSON.
    #[error("this is no GeoJSON (RFC 7946): {0}")]
    Malformed(String),
    /// There is no polygon in it.
    #[error("this GeoJSON holds no Polygon or MultiPolygon: a footprint is one of them")]
    NoPolygon,
    /// A position is not on the globe.
    #[error(
        "{name}, position {position}: {longitude}, {latitude} is no longitude from -180 to 180 and latitude from -85 to 85 in degrees; GeoJSON is always in WGS 84 degrees"
    )]
    NotDegrees {
        /// Which outline.
        name: String,
        /// Which position of it, from 1.
        position: usize,
        /// As given.
        longitude: f64,
        /// As given.
        latitude: f64,
    },
    /// An outline reaches too far for a level plan.
    #[error("{name} reaches {metres:.0} m from the first outline: a plan of one house keeps within 5 km")]
    TooFar {
        /// Which outline.
        name: String,
        /// How far.
        metres: f64,
    },
}

/// Reads all outlines of a GeoJSON text into one level plan around the first outline.
///
/// Degrees become metres with the radii of curvature of the WGS 84 ellipsoid at the middle of the first outline. Within
/// 100 m of it the plan is off by less than 2 mm at 60° of latitude (distance² × tan φ / earth's radius at most).
///
/// # Errors
/// [`GeoJsonError`] names the outline and the position.
pub fn outlines_from_geojson(text: &str) -> Result<Vec<Outline>, GeoJsonError> {
    let parsed: GeoJson =
        text.parse().map_err(|error: geojson::Error| GeoJsonError::Malformed(error.to_string()))?;
    let mut found: Vec<(Option<String>, Vec<Vec<Position>>)> = Vec::new();
    match parsed {
        GeoJson::Geometry(geometry) => collect(None, geometry.value, &mut found),
        GeoJson::Feature(feature) => collect_feature(feature, &mut found),
        GeoJson::FeatureCollection(all) => {
            for feature in all.features {
                collect_feature(feature, &mut found);
            }
        }
    }
    let mut outlines = Vec::new();
    let mut local: Option<Local> = None;
    for (index, (name, rings)) in found.into_iter().enumerate() {
        let name = name.unwrap_or_else(|| format!("Outline {}", index + 1));
        let mut polygon = Polygon::default();
        for (nth, ring) in rings.iter().enumerate() {
            let ring = local_ring(&name, ring, &mut local)?;
            if nth == 0 {
                polygon.outer = ring;
            } else {
                polygon.holes.push(ring);
            }
        }
        outlines.push(Outline { name, outline: polygon });
    }
    if outlines.is_empty() { Err(GeoJsonError::NoPolygon) } else { Ok(outlines) }
}

fn collect_feature(feature: geojson::Feature, found: &mut Vec<(Option<String>, Vec<Vec<Position>>)>) {
    let name = feature.property("name").and_then(|name| name.as_str()).map(str::to_owned);
    if let Some(geometry) = feature.geometry {
        collect(name, geometry.value, found);
    }
}

fn collect(
    name: Option<String>,
    value: GeometryValue,
    found: &mut Vec<(Option<String>, Vec<Vec<Position>>)>,
) {
    match value {
        GeometryValue::Polygon { coordinates } => found.push((name, coordinates)),
        GeometryValue::MultiPolygon { coordinates } => {
            found.extend(coordinates.into_iter().map(|rings| (name.clone(), rings)));
        }
        GeometryValue::GeometryCollection { geometries } => {
            for geometry in geometries {
                collect(name.clone(), geometry.value, found);
            }
        }
        _ => {}
    }
}

/// A level plan around a point on the ellipsoid.
struct Local {
    longitude: f64,
    latitude: f64,
    /// Metres a degree, east and north.
    scale: DVec2,
}

impl Local {
    /// Radii of curvature of WGS 84 (NIMA TR8350.2: a = 6 378 137 m, 1/f = 298.257 223 563).
    fn around(longitude: f64, latitude: f64) -> Self {
        let (a, f) = (6_378_137.0, 1.0 / 298.257_223_563);
        let squared: f64 = f * (2.0 - f);
        let (sin, cos) = latitude.to_radians().sin_cos();
        let root = (1.0 - squared * sin * sin).sqrt();
        let (across, along) = (a / root, a * (1.0 - squared) / root.powi(3));
        let scale = dvec2(across * cos, along) * std::f64::consts::PI / 180.0;
        Self { longitude, latitude, scale }
    }
}

fn local_ring(name: &str, ring: &[Position], local: &mut Option<Local>) -> Result<Vec<DVec2>, GeoJsonError> {
    let mut degrees = Vec::new();
    for (index, position) in ring.iter().enumerate() {
        let numbers = position.as_slice();
        let (longitude, latitude) =
            (numbers.first().copied().unwrap_or(f64::NAN), numbers.get(1).copied().unwrap_or(f64::NAN));
        if !((-180.0..=180.0).contains(&longitude) && (-85.0..=85.0).contains(&latitude)) {
            return Err(GeoJsonError::NotDegrees {
                name: name.to_owned(),
                position: index + 1,
                longitude,
                latitude,
            });
        }
        degrees.push((longitude, latitude));
    }
    // RFC 7946: the last position repeats the first
    if degrees.len() > 1 && degrees.first() == degrees.last() {
        degrees.pop();
    }
    let count = degrees.len().max(1) as f64;
    let middle = |pick: fn(&(f64, f64)) -> f64| degrees.iter().map(pick).sum::<f64>() / count;
    let local = local.get_or_insert_with(|| Local::around(middle(|d| d.0), middle(|d| d.1)));
    let ring: Vec<DVec2> = degrees
        .iter()
        .map(|&(longitude, latitude)| {
            // over the date line the short way is meant
            let east = (longitude - local.longitude + 540.0).rem_euclid(360.0) - 180.0;
            dvec2(east, latitude - local.latitude) * local.scale
        })
        .collect();
    let metres = ring.iter().map(|p| p.length()).fold(0.0, f64::max);
    if metres > 5_000.0 { Err(GeoJsonError::TooFar { name: name.to_owned(), metres }) } else { Ok(ring) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(inner: &str) -> String {
        format!(
            "{{\"type\":\"Feature\",\"properties\":{{\"name\":\"Mill\"}},\"geometry\":{{\"type\":\"Polygon\",\"coordinates\":[{inner}]}}}}"
        )
    }

    /// Lengths of a degree at 39° N: 111,015 m of latitude and 86,630 m of longitude (closed form of the radii of curvature of
    /// WGS 84; NGA's length-of-a-degree tables give 111,015.9 and 86,629.8, from memory).
    #[test]
    fn degrees_become_metres() {
        let text = square("[[-84.5,39.0],[-84.499,39.0],[-84.499,39.001],[-84.5,39.001],[-84.5,39.0]]");
        let outlines = outlines_from_geojson(&text).unwrap();
        assert_eq!(outlines[0].name, "Mill");
        let size = outlines[0].outline.bounds().unwrap().size();
        assert!((size.x - 86.63).abs() < 0.01 && (size.y - 111.015).abs() < 0.01, "{size}");
        assert_eq!(outlines[0].outline.outer.len(), 4);
    }

    #[test]
    fn what_cannot_be_used_is_told() {
        let told = |text: &str| outlines_from_geojson(text).unwrap_err().to_string();
        assert!(told("{").contains("RFC 7946"));
        assert!(told("{\"type\":\"Point\",\"coordinates\":[1,2]}").contains("no Polygon"));
        let metres = square("[[500000,4300000],[500010,4300000],[500010,4300010],[500000,4300000]]");
        assert!(told(&metres).contains("degrees") && told(&metres).contains("Mill"));
        let far = square("[[-84.5,39.0],[-80.0,39.0],[-80.0,40.0],[-84.5,39.0]]");
        assert!(told(&far).contains("within 5 km"));
    }
}
