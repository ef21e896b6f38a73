use crate::{Azimuth, Pitch};
use chalkcourse_words::later as words;
use glam::{DVec2, DVec3};

/// The plane of a face, and the face's own frame on it.
///
/// The frame: `u` is level along the eave, to the right as seen from the eave looking up the slope; `v` is straight up the slope.
/// Both are true lengths on the deck. The frame's origin is the `datum`, a plan point that stays in place while corners of the
/// outline move.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    /// Origin of the frame: plan x, y, and the height of the plane there.
    pub datum: DVec3,
    /// Rise over run.
    pub pitch: Pitch,
    /// The direction that water runs.
    pub downslope: Azimuth,
}

/// Why no plane could be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PlaneError {
    /// The three points are collinear or not finite.
    #[error("{}", words::measures::THREE_POINTS_ON_ONE_LINE)]
    OneLine,
    /// The plane is vertical.
    #[error("{}", words::measures::THESE_HEIGHTS_MAKE_AN_UPRIGHT)]
    Upright,
}

impl Plane {
    /// The plane through three points in space; the first is its datum. A level plane falls south by convention.
    ///
    /// # Errors
    /// [`PlaneError`] if they define none.
    pub fn through(p: DVec3, q: DVec3, r: DVec3) -> Result<Self, PlaneError> {
        let normal = (q - p).cross(r - p);
        let scale = (q - p).length() * (r - p).length();
        if !normal.is_finite() || normal.length() <= 1e-12 * scale || scale == 0.0 {
            return Err(PlaneError::OneLine);
        }
        if normal.z.abs() <= 1e-9 * normal.length() {
            return Err(PlaneError::Upright);
        }
        let gradient = -normal.truncate() / normal.z;
        let downslope = if gradient.length() < 1e-12 { Azimuth::SOUTH } else { Azimuth::of(-gradient) };
        let pitch = Pitch::from_slope(gradient.length()).map_err(|_| PlaneError::Upright)?;
        Ok(Self { datum: p, pitch, downslope })
    }

    /// Unit vector of `u` in plan.
    pub fn along(&self) -> DVec2 {
        let up = -self.downslope.unit();
        DVec2::new(up.y, -up.x)
    }

    /// The height of the plane at a plan point.
    pub fn height_at(&self, plan: DVec2) -> f64 {
        self.datum.z - (plan - self.datum.truncate()).dot(self.downslope.unit()) * self.pitch.slope()
    }

    /// Converts plan to the face's frame (u, v).
    pub fn to_frame(&self, plan: DVec2) -> DVec2 {
        let from_datum = plan - self.datum.truncate();
        DVec2::new(
            from_datum.dot(self.along()),
            -from_datum.dot(self.downslope.unit()) * self.pitch.slope_factor(),
        )
    }

    /// Converts the face's frame to plan.
    pub fn to_plan(&self, frame: DVec2) -> DVec2 {
        self.datum.truncate() + self.along() * frame.x
            - self.downslope.unit() * (frame.y / self.pitch.slope_factor())
    }

    /// Converts the face's frame to space.
    pub fn to_space(&self, frame: DVec2) -> DVec3 {
        let plan = self.to_plan(frame);
        plan.extend(self.height_at(plan))
    }

    /// The unit normal, pointing out of the roof.
    pub fn normal(&self) -> DVec3 {
        (self.downslope.unit() * self.pitch.slope()).extend(1.0).normalize()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use glam::{dvec2, dvec3};
    use proptest::prelude::*;

    fn plane(rise: f64, downslope: f64) -> Plane {
        Plane {
            datum: dvec3(3.0, -2.0, 2.5),
            pitch: Pitch::from_rise_in_12(rise).unwrap(),
            downslope: Azimuth::from_degrees(downslope),
        }
    }

    #[test]
    fn a_south_slope_seen_from_its_eave() {
        let south = plane(6.0, 180.0);
        assert_eq!(south.along(), dvec2(1.0, 0.0));
        let up = south.to_frame(dvec2(3.0, 0.0));
        assert!((up.y - 2.0 * 1.25f64.sqrt()).abs() < 1e-12 && up.x.abs() < 1e-12);
        assert!((south.height_at(dvec2(3.0, 0.0)) - 3.5).abs() < 1e-12);
    }

    #[test]
    fn heights_that_make_no_face_are_refused() {
        let p = dvec3(0.0, 0.0, 0.0);
        assert_eq!(Plane::through(p, dvec3(1.0, 0.0, 0.0), dvec3(2.0, 0.0, 0.0)), Err(PlaneError::OneLine));
        assert_eq!(Plane::through(p, dvec3(1.0, 0.0, 0.0), dvec3(0.0, 0.0, 1.0)), Err(PlaneError::Upright));
        assert_eq!(Plane::through(p, p, p), Err(PlaneError::OneLine));
    }

    proptest! {
        #[test]
        fn frame_and_plan_are_inverse_and_lengths_true(
            rise in 0.0..24.0f64, azimuth in 0.0..360.0f64,
            x in -50.0..50.0f64, y in -50.0..50.0f64, x2 in -50.0..50.0f64, y2 in -50.0..50.0f64,
        ) {
            let plane = plane(rise, azimuth);
            let (p, q) = (dvec2(x, y), dvec2(x2, y2));
            let (a, b) = (plane.to_frame(p), plane.to_frame(q));
            prop_assert!((plane.to_plan(a) - p).length() < 1e-9);
            let in_space = p.extend(plane.height_at(p)).distance(q.extend(plane.height_at(q)));
            prop_assert!((a.distance(b) - in_space).abs() < 1e-9);
        }

        #[test]
        fn three_heights_determine_the_plane(rise in 0.1..24.0f64, azimuth in 0.0..360.0f64) {
            let plane = plane(rise, azimuth);
            let at = |u: f64, v: f64| plane.to_space(dvec2(u, v));
            let back = Plane::through(at(0.0, 0.0), at(4.0, 1.0), at(-1.0, 5.0)).unwrap();
            prop_assert!((back.pitch.slope() - plane.pitch.slope()).abs() < 1e-9);
            prop_assert!(back.downslope.unit().distance(plane.downslope.unit()) < 1e-9);
        }
    }
}
