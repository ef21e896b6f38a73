//! Coordinates of a city model: from its coordinate reference system to true metres.

use crate::local::{GREAT_RADIUS, radii};
use chalkcourse_geometry::{DVec2, DVec3, dvec2};
use chalkcourse_job::GeoPoint;
use chalkcourse_words as words;

/// The coordinate system of a file.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Grid {
    /// True lengths, within 2 in 1,000, horizontally and vertically.
    True {
        /// Metres per unit.
        unit: f64,
    },
    /// Web Mercator (EPSG:3857): the scale varies with latitude.
    WebMercator,
    /// No reference system is named: lengths are taken as metres.
    Unnamed,
}

/// Why coordinates can't be used.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum GridError {
    /// Geographic coordinates.
    #[error("{}", words::formats::its_coordinates_are_degrees_turn(&_0))]
    Degrees(String),
    /// The projection distorts lengths.
    #[error("{}", words::formats::its_coordinates_stretch_lengths_by(&_0))]
    Stretched(String),
    /// An unknown system.
    #[error("{}", words::formats::its_reference_system_is_not(&format_args!("{_0:?}")))]
    Unknown(String),
    /// No system is named, and the numbers are too small to be metres.
    #[error("{}", words::formats::it_names_no_reference_system(&format_args!("{_0:.6}")))]
    TooSmall(f64),
}

/// First code, last code, kind of coordinates; sorted.
const TABLE: &str = include_str!("grids.txt");

impl Grid {
    /// From `metadata.referenceSystem`: a URL such as `https://www.opengis.net/def/crs/EPSG/0/7415`, or a URN.
    pub(crate) fn named(system: Option<&str>) -> Result<Self, GridError> {
        let Some(system) = system.map(str::trim).filter(|system| !system.is_empty()) else {
            return Ok(Self::Unnamed);
        };
        let shown: String = system.chars().take(120).collect();
        let code = system.rsplit(['/', ':']).next().and_then(|code| code.parse::<u32>().ok());
        let Some(code) = code.filter(|_| system.to_ascii_uppercase().contains("EPSG")) else {
            return Err(match system.to_ascii_uppercase().contains("CRS84") {
                true => GridError::Degrees(shown),
                false => GridError::Unknown(shown),
            });
        };
        let name = format!("EPSG:{code}");
        match looked_up(code) {
            Some("m") => Ok(Self::True { unit: 1.0 }),
            Some("ft") => Ok(Self::True { unit: 0.3048 }),
            Some("us-ft") => Ok(Self::True { unit: 1200.0 / 3937.0 }),
            Some("web-mercator") => Ok(Self::WebMercator),
            Some("degrees") => Err(GridError::Degrees(name)),
            Some("stretched") => Err(GridError::Stretched(name)),
            _ => Err(GridError::Unknown(name)),
        }
    }

    /// A point in metres around an origin in the same system. Heights are not shifted.
    pub(crate) fn metres(self, origin: DVec2, point: DVec3) -> DVec3 {
        let level = point.truncate() - origin;
        match self {
            Self::True { unit } => (level * unit).extend(point.z * unit),
            Self::Unnamed => level.extend(point.z),
            Self::WebMercator => (level * mercator_factor(origin.y)).extend(point.z),
        }
    }

    /// The position of a grid point on the globe, if it can be determined.
    pub(crate) fn place(self, origin: DVec2) -> Option<GeoPoint> {
        let place = GeoPoint {
            latitude: mercator_latitude(origin.y).to_degrees(),
            longitude: (origin.x / GREAT_RADIUS).to_degrees(),
        };
        (self == Self::WebMercator && place.is_on_globe()).then_some(place)
    }

    /// A caveat on lengths in this system, in a sentence.
    pub(crate) fn note(self, origin: DVec2) -> Option<String> {
        match self {
            Self::True { .. } => None,
            Self::Unnamed => Some(words::formats::THE_FILE_NAMES_NO_REFERENCE.now().to_owned()),
            Self::WebMercator => {
                let factor = mercator_factor(origin.y);
                Some(words::formats::the_file_is_in_web(
                    &format_args!("{:.4}", factor.x),
                    &format_args!("{:.4}", factor.y),
                    &format_args!("{:.4}", mercator_latitude(origin.y).to_degrees()),
                ))
            }
        }
    }
}

/// Latitude on WGS 84 in radians at a northing of spherical Mercator (IOGP Guidance Note 7-2, Popular Visualisation Pseudo-Mercator).
fn mercator_latitude(northing: f64) -> f64 {
    2.0 * (northing / GREAT_RADIUS).exp().atan() - std::f64::consts::FRAC_PI_2
}

/// True metres per unit of Web Mercator, east and north. It uses spherical formulas with ellipsoidal latitudes, so the two differ
/// by up to 0.7 %.
fn mercator_factor(northing: f64) -> DVec2 {
    let latitude = mercator_latitude(northing);
    let radii = radii(latitude);
    dvec2(radii.x, radii.y) * latitude.cos() / GREAT_RADIUS
}

fn looked_up(code: u32) -> Option<&'static str> {
    TABLE.lines().filter(|line| !line.starts_with('#')).find_map(|line| {
        let mut words = line.split(' ');
        let (first, last) = (words.next()?.parse().ok()?, words.next()?.parse().ok()?);
        (first..=last).contains(&code).then(|| words.next())?
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec3;

    fn epsg(code: u32) -> Result<Grid, GridError> {
        Grid::named(Some(&format!("https://www.opengis.net/def/crs/EPSG/0/{code}")))
    }

    /// Units and kinds by the EPSG registry: 7415 Amersfoort / RD New + NAP, 25832 ETRS89 / UTM 32N, 2263 New York Long Island
    /// (US survey feet), 2222 Arizona East (feet), 4979 WGS 84 3D, 6697 JGD2011 + height, 3395 World Mercator, 32662 plate carrée.
    #[test]
    fn systems_are_known_by_their_code() {
        assert_eq!(epsg(7415), Ok(Grid::True { unit: 1.0 }));
        assert_eq!(epsg(25832), Ok(Grid::True { unit: 1.0 }));
        assert_eq!(epsg(2263), Ok(Grid::True { unit: 1200.0 / 3937.0 }));
        assert_eq!(epsg(2222), Ok(Grid::True { unit: 0.3048 }));
        assert_eq!(epsg(3857), Ok(Grid::WebMercator));
        assert!(matches!(epsg(4979), Err(GridError::Degrees(_))));
        assert!(matches!(epsg(6697), Err(GridError::Degrees(_))));
        assert!(matches!(epsg(3395), Err(GridError::Stretched(_))));
        assert!(matches!(epsg(32662), Err(GridError::Stretched(_))));
        assert!(matches!(epsg(1), Err(GridError::Unknown(_))));
        assert_eq!(Grid::named(Some("urn:ogc:def:crs:EPSG::7415")), Ok(Grid::True { unit: 1.0 }));
        assert!(matches!(Grid::named(Some("OGC:CRS84h")), Err(GridError::Degrees(_))));
        assert!(matches!(Grid::named(Some("a local grid")), Err(GridError::Unknown(_))));
        assert_eq!(Grid::named(None), Ok(Grid::Unnamed));
    }

    /// Against PROJ 9.5.1 (pyproj 3.7.2: EPSG:3857 to longitude and latitude, then Karney's geodesics on WGS 84): around
    /// 1 216 000, 6 764 000 a step of 100 east is 61.96940 m long and one of 100 north 61.81009 m.
    #[test]
    fn distorted_lengths_are_corrected() {
        let origin = dvec2(1_216_000.0, 6_764_000.0);
        let step = Grid::WebMercator.metres(origin, dvec3(1_216_100.0, 6_764_100.0, 7.0));
        let place = Grid::WebMercator.place(origin).unwrap();
        assert!((place.latitude - 51.799_759_119_253_28).abs() < 1e-9, "{place:?}");
        assert!((place.longitude - 10.923_513_854_893_38).abs() < 1e-9, "{place:?}");
        assert!((step.x - 61.969_40).abs() < 1e-3 && (step.y - 61.810_09).abs() < 1e-3, "{step}");
        assert_eq!(step.z, 7.0);
    }
}
