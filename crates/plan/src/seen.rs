//! Directions on a face as the user sees them: in plan the screen's, face-on the face's, in text by the compass.

use chalkcourse_geometry::{DVec2, Plane, dvec2};

/// How the user sees a face.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// From above, north up.
    Plan,
    /// The face true to size, eave at the bottom.
    FaceOn,
    /// As text, with no picture to rotate.
    Text,
}

impl Seen {
    /// The axis step in a face's frame that is nearest to a step on the screen (right, up): four keys give four
    /// directions, whichever way the face slopes.
    pub fn on_face(self, plane: &Plane, screen: DVec2) -> DVec2 {
        turned(screen, -self.quarters(plane))
    }

    /// The step on the screen (right, up) that is nearest to an axis step in a face's frame.
    pub fn on_screen(self, plane: &Plane, frame: DVec2) -> DVec2 {
        turned(frame, self.quarters(plane))
    }

    /// Quarter turns counter-clockwise from the frame of a face to the screen.
    fn quarters(self, plane: &Plane) -> i32 {
        match self {
            Self::Plan => (plane.along().to_angle() / std::f64::consts::FRAC_PI_2).round() as i32,
            Self::FaceOn | Self::Text => 0,
        }
    }
}

/// Rotated counter-clockwise by quarter turns, exactly.
fn turned(it: DVec2, quarters: i32) -> DVec2 {
    match quarters.rem_euclid(4) {
        0 => it,
        1 => dvec2(-it.y, it.x),
        2 => -it,
        _ => dvec2(it.y, -it.x),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Azimuth, Pitch, dvec3};

    fn falling_to(degrees: f64) -> Plane {
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        Plane { datum: dvec3(1.0, 2.0, 3.0), pitch, downslope: Azimuth::from_degrees(degrees) }
    }

    const KEYS: [DVec2; 4] = [DVec2::X, DVec2::NEG_X, DVec2::Y, DVec2::NEG_Y];

    #[test]
    fn on_a_north_face_up_is_down_its_slope() {
        let north = falling_to(0.0);
        assert_eq!(Seen::Plan.on_face(&north, DVec2::Y), DVec2::NEG_Y);
        assert_eq!(Seen::Plan.on_face(&north, DVec2::X), DVec2::NEG_X);
        assert_eq!(Seen::FaceOn.on_face(&north, DVec2::Y), DVec2::Y);
        // An east face slopes down to the right of the screen.
        assert_eq!(Seen::Plan.on_face(&falling_to(90.0), DVec2::X), DVec2::NEG_Y);
        assert_eq!(Seen::Plan.on_face(&falling_to(180.0), DVec2::Y), DVec2::Y);
    }

    /// By the plane's own mapping to plan: the step goes where the key points, within 45 degrees; and back.
    #[test]
    fn a_step_goes_where_the_key_points() {
        for degrees in 0..360 {
            let plane = falling_to(f64::from(degrees));
            let mut ways = Vec::new();
            for key in KEYS {
                let way = Seen::Plan.on_face(&plane, key);
                let goes = (plane.to_plan(way) - plane.to_plan(DVec2::ZERO)).normalize();
                assert!(goes.dot(key) >= 45.0_f64.to_radians().cos() - 1e-9, "{degrees}: {key} goes {goes}");
                assert_eq!(Seen::Plan.on_screen(&plane, way), key);
                assert!(!ways.contains(&way), "{degrees}: two keys, one way");
                ways.push(way);
            }
        }
    }
}
