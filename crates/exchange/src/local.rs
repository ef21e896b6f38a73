//! A local tangent plane around a point on the globe.

use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::GeoPoint;

/// Converts WGS 84 degrees to metres east and north of a point, and back.
///
/// Lengths follow the ellipsoid's radii of curvature at the origin. Away from it the error is at most distance² × tan(latitude) ÷
/// (2 × radius): less than 2 mm within 100 m up to 60° of latitude, and never worse than that formula up to 85°.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LocalPlan {
    /// Its origin.
    pub origin: GeoPoint,
    /// Metres per degree, east and north.
    scale: DVec2,
}

/// Semi-major axis of WGS 84, metres (NIMA TR8350.2).
pub(crate) const GREAT_RADIUS: f64 = 6_378_137.0;
/// Flattening of WGS 84 (NIMA TR8350.2).
const FLATTENING: f64 = 1.0 / 298.257_223_563;

/// Radii of curvature of WGS 84 at a latitude in radians, metres: across the meridian (prime vertical), and along it.
pub(crate) fn radii(latitude: f64) -> DVec2 {
    let squared: f64 = FLATTENING * (2.0 - FLATTENING);
    let root = (1.0 - squared * latitude.sin().powi(2)).sqrt();
    dvec2(GREAT_RADIUS / root, GREAT_RADIUS * (1.0 - squared) / root.powi(3))
}

impl LocalPlan {
    /// The plane around a point.
    pub fn around(origin: GeoPoint) -> Self {
        let latitude = origin.latitude.to_radians();
        let radii = radii(latitude);
        let scale = dvec2(radii.x * latitude.cos(), radii.y) * std::f64::consts::PI / 180.0;
        Self { origin, scale }
    }

    /// Metres east and north of the origin; across the antimeridian, the short way round.
    pub fn metres(&self, place: GeoPoint) -> DVec2 {
        let east = (place.longitude - self.origin.longitude + 540.0).rem_euclid(360.0) - 180.0;
        dvec2(east, place.latitude - self.origin.latitude) * self.scale
    }

    /// The point on the globe at metres east and north of the origin.
    pub fn place(&self, metres: DVec2) -> GeoPoint {
        let degrees = metres / self.scale;
        let longitude = (self.origin.longitude + degrees.x + 540.0).rem_euclid(360.0) - 180.0;
        GeoPoint { latitude: self.origin.latitude + degrees.y, longitude }
    }
}

/// A ring without consecutive duplicate corners, within `same` metres; the first corner follows the last.
pub(crate) fn without_repeats(mut ring: Vec<DVec2>, same: f64) -> Vec<DVec2> {
    ring.dedup_by(|a, b| a.distance(*b) <= same);
    while ring.len() > 1 && ring.first().zip(ring.last()).is_some_and(|(a, b)| a.distance(*b) <= same) {
        ring.pop();
    }
    ring
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// A degree at 39° N: 111,015 m of latitude and 86,630 m of longitude (closed form of the radii of curvature of WGS 84; NGA's
    /// length-of-a-degree tables give 111,015.9 and 86,629.8, from memory).
    #[test]
    fn a_thousandth_of_a_degree() {
        let at = |latitude, longitude| GeoPoint { latitude, longitude };
        let size = LocalPlan::around(at(39.0005, -84.5)).metres(at(39.0015, -84.499));
        assert!((size.x - 86.63).abs() < 0.01 && (size.y - 111.015).abs() < 0.01, "{size}");
        let over_the_line = LocalPlan::around(at(0.0, 179.9999)).metres(at(0.0, -179.9999));
        assert!((over_the_line.x - 22.26).abs() < 0.01, "{over_the_line}");
    }

    proptest! {
        #[test]
        fn there_and_back(latitude in -85.0..85.0f64, longitude in -180.0..180.0f64, x in -500.0..500.0f64, y in -500.0..500.0f64) {
            let plan = LocalPlan::around(GeoPoint { latitude, longitude });
            let back = plan.metres(plan.place(dvec2(x, y)));
            prop_assert!(back.distance(dvec2(x, y)) < 1e-5, "{back}");
        }
    }
}
