use chalkcourse_geometry::{Azimuth, DVec2, DVec3, dvec2};

/// A camera that looks at a point of the house from a direction and an elevation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Camera {
    /// The centre of the picture, metres.
    pub target: DVec3,
    /// Direction in plan from the house to the camera: south-west shows the south and the west side.
    pub from: Azimuth,
    /// Elevation of the camera above horizontal, degrees.
    pub above: f64,
    /// Distance from camera to target, metres.
    pub distance: f64,
}

/// Height of the field of view at a distance of 1: an angle of 30°, as one sees a house from across the street.
const FIELD: f64 = 0.535_898_384_862_245_4;

/// Maximum elevation: straight down has no left and right.
const STEEPEST: f64 = 89.0;
/// Minimum elevation: the camera may look up at a soffit, but not from below ground.
const LEAST: f64 = -5.0;

/// Range of the camera distance, metres.
const DISTANCES: std::ops::RangeInclusive<f64> = 0.5..=20_000.0;

impl Default for Camera {
    /// From the south-west, elevation 30°.
    fn default() -> Self {
        Self { target: DVec3::ZERO, from: Azimuth::from_degrees(215.0), above: 30.0, distance: 30.0 }
    }
}

/// The picture's axes, and the camera position.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Axes {
    pub(crate) eye: DVec3,
    /// Right in the picture.
    pub(crate) right: DVec3,
    /// Up in the picture.
    pub(crate) up: DVec3,
    /// Into the picture.
    pub(crate) forward: DVec3,
}

impl Camera {
    /// Orbits around the house, by degrees to the right and up.
    pub fn turned(self, right: f64, up: f64) -> Self {
        Self {
            from: Azimuth::from_degrees(self.from.degrees() + right),
            above: (self.above + up).clamp(LEAST, STEEPEST),
            ..self
        }
    }

    /// Zooms: in for a factor above 1, out for one below.
    pub fn nearer(self, factor: f64) -> Self {
        let distance = self.distance / factor;
        let distance = if distance.is_finite() { distance } else { self.distance };
        Self { distance: distance.clamp(*DISTANCES.start(), *DISTANCES.end()), ..self }
    }

    /// Pans so that the picture follows the pointer: by fractions of the picture's height to the right and down.
    pub fn moved(self, right: f64, down: f64) -> Self {
        let axes = self.axes();
        let scale = FIELD * self.distance;
        Self { target: self.target + (axes.up * down - axes.right * right) * scale, ..self }
    }

    /// The same direction, fitted to some points as closely as possible; `wide` is the aspect ratio, width over height.
    pub fn fitted(self, points: &[DVec3], wide: f64) -> Self {
        let axes = self.axes();
        let wide = if wide.is_finite() && wide > 0.0 { wide.clamp(0.05, 20.0) } else { 1.0 };
        let Some(first) = points.iter().find(|p| p.is_finite()) else { return self };
        // Leaves a margin of a twelfth on all sides.
        let half = dvec2(FIELD / 2.0 * wide, FIELD / 2.0) * 0.86;
        let mut target = *first;
        let seen_from = |target: DVec3| -> Vec<DVec3> {
            let all = points.iter().filter(|p| p.is_finite()).map(|&p| p - target);
            all.map(|p| DVec3::new(p.dot(axes.right), p.dot(axes.up), p.dot(axes.forward))).collect()
        };
        let needed = |seen: &[DVec3]| {
            let need = |p: &DVec3| (p.x.abs() / half.x).max(p.y.abs() / half.y).max(1.0) - p.z;
            seen.iter().map(need).fold(*DISTANCES.start(), f64::max)
        };
        // Moving the target changes the perspective: a few iterations converge.
        for _ in 0..8 {
            let seen = seen_from(target);
            let distance = needed(&seen);
            let (mut least, mut most) = (DVec2::splat(f64::INFINITY), DVec2::splat(f64::NEG_INFINITY));
            for p in &seen {
                let on_picture = dvec2(p.x, p.y) / (p.z + distance);
                (least, most) = (least.min(on_picture), most.max(on_picture));
            }
            let middle = least.midpoint(most) * distance;
            target += axes.right * middle.x + axes.up * middle.y;
        }
        let distance = needed(&seen_from(target)).min(*DISTANCES.end());
        Self { target, distance, ..self }
    }

    pub(crate) fn axes(&self) -> Axes {
        let (sin, cos) = self.above.clamp(LEAST, STEEPEST).to_radians().sin_cos();
        let back = (self.from.unit() * cos).extend(sin);
        let right = DVec3::Z.cross(back).normalize_or(DVec3::X);
        Axes { eye: self.target + back * self.distance, right, up: back.cross(right), forward: -back }
    }

    /// Projects a point to a picture of `size` pixels: x from the left, y from the top, and depth in metres. `None` behind the
    /// camera.
    pub fn project(&self, point: DVec3, size: [usize; 2]) -> Option<(f64, f64, f64)> {
        let axes = self.axes();
        let from = point - axes.eye;
        let deep = from.dot(axes.forward);
        if deep.is_nan() || deep <= NEAREST {
            return None;
        }
        let scale = pixels(size) / deep;
        let (x, y) = (from.dot(axes.right) * scale, from.dot(axes.up) * scale);
        Some((size[0] as f64 / 2.0 + x, size[1] as f64 / 2.0 - y, deep))
    }
}

/// Near plane, metres.
pub(crate) const NEAREST: f64 = 0.1;

/// Pixels per metre at a distance of one metre.
pub(crate) fn pixels(size: [usize; 2]) -> f64 {
    size[1] as f64 / FIELD
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec3;
    use proptest::prelude::*;

    #[test]
    fn from_the_south_the_east_is_on_the_right_and_up_is_up() {
        let camera = Camera { from: Azimuth::SOUTH, above: 0.0, ..Camera::default() };
        let at = |p: DVec3| camera.project(p, [400, 300]).unwrap();
        let (x, y, deep) = at(DVec3::ZERO);
        assert!((x - 200.0).abs() < 1e-9 && (y - 150.0).abs() < 1e-9 && (deep - 30.0).abs() < 1e-9);
        assert!(at(dvec3(1.0, 0.0, 0.0)).0 > 200.0);
        assert!(at(dvec3(0.0, 0.0, 1.0)).1 < 150.0);
        assert!(at(dvec3(0.0, 1.0, 0.0)).2 > 30.0, "north is farther away");
        assert_eq!(camera.project(dvec3(0.0, -40.0, 0.0), [400, 300]), None);
        // 30° from top to bottom
        let top = 30.0 * 15f64.to_radians().tan();
        assert!(at(dvec3(0.0, 0.0, top)).1.abs() < 1e-6);
    }

    #[test]
    fn dragging_keeps_the_point_under_the_pointer() {
        let camera = Camera::default();
        let (x, y, _) = camera.moved(0.25, 0.125).project(camera.target, [400, 400]).unwrap();
        assert!((x - 300.0).abs() < 0.5 && (y - 250.0).abs() < 0.5, "{x} {y}");
    }

    proptest! {
        #[test]
        fn fitted_points_are_visible_and_fill_the_picture(
            points in prop::collection::vec((-50.0..50.0f64, -50.0..50.0f64, 0.0..20.0f64), 2..20),
            from in 0.0..360.0f64, above in 0.0..89.0f64, width in 200usize..900,
        ) {
            let points: Vec<DVec3> = points.into_iter().map(|(x, y, z)| dvec3(x, y, z)).collect();
            let camera = Camera { from: Azimuth::from_degrees(from), above, ..Camera::default() };
            let size = [width, 400];
            let camera = camera.fitted(&points, width as f64 / 400.0);
            let seen: Vec<_> = points.iter().map(|&p| camera.project(p, size)).collect();
            prop_assert!(seen.iter().all(Option::is_some));
            let mut fill = 0.0f64;
            for (x, y, _) in seen.into_iter().flatten() {
                prop_assert!((0.0..=width as f64).contains(&x) && (0.0..=400.0).contains(&y), "{x} {y}");
                fill = fill.max((x / width as f64 - 0.5).abs().max((y / 400.0 - 0.5).abs()));
            }
            let apart = points.iter().any(|p| p.distance(points[0]) > 5.0);
            prop_assert!(!apart || fill > 0.2, "{fill}");
        }
    }
}
