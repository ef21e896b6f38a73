use chalkcourse_geometry::{Azimuth, DVec2, DVec3, dvec2};

/// An eye that looks at a point of the house from a way and a height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Camera {
    /// What is in the middle of the picture, metres.
    pub target: DVec3,
    /// The way in plan from the house to the eye: south-west shows the south and the west side.
    pub from: Azimuth,
    /// How far above level the eye stands, degrees.
    pub above: f64,
    /// From the eye to the target, metres.
    pub distance: f64,
}

/// The height of what is seen at a distance of 1: an angle of 30°, as a person sees a house from across the street.
const FIELD: f64 = 0.535_898_384_862_245_4;

/// How steeply one may look down: straight down has no left and right.
const STEEPEST: f64 = 89.0;
/// The eye may look up to a soffit, but not from under the ground.
const LEAST: f64 = -5.0;

/// How near and how far an eye may stand, metres.
const DISTANCES: std::ops::RangeInclusive<f64> = 0.5..=20_000.0;

impl Default for Camera {
    /// From the south-west, 30° above level.
    fn default() -> Self {
        Self { target: DVec3::ZERO, from: Azimuth::from_degrees(215.0), above: 30.0, distance: 30.0 }
    }
}

/// The picture's axes, and the eye.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Axes {
    pub(crate) eye: DVec3,
    /// To the right of the picture.
    pub(crate) right: DVec3,
    /// To the top of the picture.
    pub(crate) up: DVec3,
    /// Into the picture.
    pub(crate) forward: DVec3,
}

impl Camera {
    /// Turned around the house: by so many degrees to the right and up.
    pub fn turned(self, right: f64, up: f64) -> Self {
        Self {
            from: Azimuth::from_degrees(self.from.degrees() + right),
            above: (self.above + up).clamp(LEAST, STEEPEST),
            ..self
        }
    }

    /// Nearer by a factor above 1, farther by one below.
    pub fn nearer(self, factor: f64) -> Self {
        let distance = self.distance / factor;
        let distance = if distance.is_finite() { distance } else { self.distance };
        Self { distance: distance.clamp(*DISTANCES.start(), *DISTANCES.end()), ..self }
    }

    /// Moved so that the picture follows a hand: by shares of the picture's height to the right and down.
    pub fn moved(self, right: f64, down: f64) -> Self {
        let axes = self.axes();
        let scale = FIELD * self.distance;
        Self { target: self.target + (axes.up * down - axes.right * right) * scale, ..self }
    }

    /// The same way of looking, at all of some points and no farther than they need, in a picture so many times as wide as high.
    pub fn fitted(self, points: &[DVec3], wide: f64) -> Self {
        let axes = self.axes();
        let wide = if wide.is_finite() && wide > 0.0 { wide.clamp(0.05, 20.0) } else { 1.0 };
        let Some(first) = points.iter().find(|p| p.is_finite()) else { return self };
        // Room of a twelfth is left all around.
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
        // Moving the middle changes what is near: a few rounds settle it.
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

    /// Where a point is on a picture of so many pixels: from the left, from the top, and how far it is into the picture in
    /// metres. `None` for one behind the eye.
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

/// What is nearer to the eye than this is not drawn, metres.
pub(crate) const NEAREST: f64 = 0.1;

/// Pixels to a metre at a distance of one metre.
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
    fn a_hand_that_drags_keeps_the_point_under_it() {
        let camera = Camera::default();
        let (x, y, _) = camera.moved(0.25, 0.125).project(camera.target, [400, 400]).unwrap();
        assert!((x - 300.0).abs() < 0.5 && (y - 250.0).abs() < 0.5, "{x} {y}");
    }

    proptest! {
        #[test]
        fn what_is_fitted_is_seen_and_fills_the_picture(
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
