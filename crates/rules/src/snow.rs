//! Snow on a sloped roof by ASCE/SEI 7 chapter 7: a screening, never a design, which is a licensed engineer's.
//!
//! Shingles below an array hold snow back, so a roof with a roof-integrated array counts as "all other surfaces", not as
//! slippery. Drifts, sliding snow from a higher roof, and rain on snow are not included.

use chalkcourse_job::{FaceId, LoadStandard, Resolved};
use chalkcourse_layout::Layout;

/// Inputs of the flat-roof snow load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Snow {
    /// The edition.
    pub standard: LoadStandard,
    /// Ground snow load, pounds per square foot. In 7-22 it is specific to the building's risk category.
    pub ground_psf: f64,
    /// Ce, exposure.
    pub exposure: f64,
    /// Ct, thermal; 1.1 for a cold, ventilated roof.
    pub thermal: f64,
    /// Is, importance; 7-22 has none (from memory), and it is left out there.
    pub importance: f64,
}

/// pf, the flat-roof snow load, pounds per square foot (7-16 equation 7.3-1).
pub fn flat_psf(snow: &Snow) -> f64 {
    let importance = match snow.standard {
        LoadStandard::Asce716 => snow.importance,
        LoadStandard::Asce722 => 1.0,
    };
    0.7 * snow.exposure * snow.thermal * importance * snow.ground_psf
}

/// Cs, the roof slope factor (7-16 figure 7.4-1): 1 up to a knee, then linear to 0 at 70°. The knee is at 30°, 37.5° and 45° for
/// Ct 1.0, 1.1 and 1.2, for unobstructed slippery surfaces at 5°, 10° and 15°.
pub fn slope_factor(degrees: f64, thermal: f64, slippery: bool) -> f64 {
    let knees = if slippery { [5.0, 10.0, 15.0] } else { [30.0, 37.5, 45.0] };
    // Between two values of Ct use the higher: its knee comes later, so the load is never less.
    let knee: f64 = if thermal > 1.1 + 1e-9 {
        knees[2]
    } else if thermal > 1.0 + 1e-9 {
        knees[1]
    } else {
        knees[0]
    };
    if degrees.is_nan() {
        return 1.0;
    }
    (1.0 - (degrees - knee) / (70.0 - knee)).clamp(0.0, 1.0)
}

/// ps, the sloped-roof snow load on plan area, pounds per square foot (7-16 equation 7.4-1).
pub fn sloped_psf(snow: &Snow, degrees: f64, slippery: bool) -> f64 {
    slope_factor(degrees, snow.thermal, slippery) * flat_psf(snow)
}

/// The sloped-roof snow load of each sound face, pounds per square foot of plan: for a partly exposed, cold, ventilated roof of
/// usual importance (Ce 1.0, Ct 1.1, Is 1.0), to be confirmed by an engineer. `None` if the rule book does not cover loads, or
/// the site has no ground snow load.
pub fn on_faces(job: &Resolved, layout: &Layout) -> Option<Vec<(FaceId, f64)>> {
    let snow = Snow {
        standard: job.rule_book.loads.as_ref()?.standard.value,
        ground_psf: job.site.building.ground_snow_psf?,
        exposure: 1.0,
        thermal: 1.1,
        importance: 1.0,
    };
    let faces = layout.faces.iter().zip(&layout.roof.faces).filter(|(_, on_roof)| on_roof.sound);
    Some(
        faces
            .map(|(face, on_roof)| (face.id, sloped_psf(&snow, on_roof.plane.pitch.degrees(), false)))
            .collect(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn on_the_faces_of_a_job() {
        let mut job = crate::testing::gable_job();
        assert_eq!(on_faces(&job, &Layout::of(&job)), None);
        job.site.building.ground_snow_psf = Some(40.0);
        let faces = on_faces(&job, &Layout::of(&job)).unwrap();
        assert!(faces.len() == 2 && faces.iter().all(|(_, psf)| (psf - 30.8).abs() < 1e-9), "{faces:?}");
    }

    /// Worked from the equations: pg 40, Ce 1, Is 1, Ct 1.1: pf 30.8; 6:12 on other surfaces 30.8; slippery Cs 0.724, 22.3.
    #[test]
    fn six_in_twelve() {
        let snow = Snow {
            standard: LoadStandard::Asce716,
            ground_psf: 40.0,
            exposure: 1.0,
            thermal: 1.1,
            importance: 1.0,
        };
        let degrees = 0.5f64.atan().to_degrees();
        assert!((flat_psf(&snow) - 30.8).abs() < 1e-9);
        assert!((sloped_psf(&snow, degrees, false) - 30.8).abs() < 1e-9);
        assert!((slope_factor(degrees, 1.1, true) - 0.724).abs() < 5e-4);
        assert!((sloped_psf(&snow, degrees, true) - 22.3).abs() < 0.05);
    }

    /// The knees and the end of figure 7.4-1.
    #[test]
    fn knees() {
        for (thermal, other, slippery) in [(1.0, 30.0, 5.0), (1.1, 37.5, 10.0), (1.2, 45.0, 15.0)] {
            for (knee, slick) in [(other, false), (slippery, true)] {
                assert_eq!(slope_factor(knee, thermal, slick), 1.0);
                assert!(slope_factor(knee + 1.0, thermal, slick) < 1.0);
                assert_eq!(slope_factor(70.0, thermal, slick), 0.0);
            }
        }
    }
}
