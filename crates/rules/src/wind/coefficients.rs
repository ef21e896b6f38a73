use super::{Figure, Refused};
use chalkcourse_job::LoadStandard;
use schemars::JsonSchema;
use serde::Serialize;

/// Roof shape, as the figures classify it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RoofShape {
    /// Two slopes and a ridge.
    Gable,
    /// Slopes on all sides.
    Hip,
}

/// A zone of the roof. 7-22 has 1, 2 and 3; 7-16 splits 2 and 3 by edge: e eave, n rake, r ridge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Zone {
    /// The field.
    One,
    /// Strips (7-22).
    Two,
    /// Along the eave (7-16).
    TwoEave,
    /// Along the rake (7-16).
    TwoRake,
    /// Along the ridge (7-16).
    TwoRidge,
    /// Corners; on hips, along the eaves (7-22).
    Three,
    /// Where rake and eave meet (7-16).
    ThreeEave,
    /// Where rake and ridge meet (7-16).
    ThreeRidge,
}

impl Zone {
    /// The name in the figures.
    pub fn name(self) -> &'static str {
        match self {
            Self::One => "1",
            Self::Two => "2",
            Self::TwoEave => "2e",
            Self::TwoRake => "2n",
            Self::TwoRidge => "2r",
            Self::Three => "3",
            Self::ThreeEave => "3e",
            Self::ThreeRidge => "3r",
        }
    }
}

/// A coefficient linear in the logarithm of the effective wind area between two areas, and constant beyond.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    /// Square feet, and the coefficient up to that area.
    pub from: (f64, f64),
    /// Square feet, and the coefficient from that area on.
    pub to: (f64, f64),
}

impl Curve {
    const fn new(from: f64, at: f64, to: f64, then: f64) -> Self {
        Self { from: (from, at), to: (to, then) }
    }

    /// GCp for an effective wind area in square feet.
    pub fn at(&self, square_feet: f64) -> f64 {
        let share = (square_feet / self.from.0).ln() / (self.to.0 / self.from.0).ln();
        // Invalid areas count as the smallest.
        let share = if share.is_nan() { 0.0 } else { share.clamp(0.0, 1.0) };
        self.from.1 + (self.to.1 - self.from.1) * share
    }

    fn between(&self, other: &Self, share: f64, square_feet: f64) -> f64 {
        let (low, high) = (self.at(square_feet), other.at(square_feet));
        low + (high - low) * share
    }
}

/// The coefficients of one figure, for one roof.
#[derive(Clone, Debug, PartialEq)]
pub struct Coefficients {
    /// Which figure.
    pub figure: Figure,
    zones: Vec<(Zone, Curve)>,
    /// For hips above 27°: the figure for 45°, and the fraction of the way to it.
    towards: Option<(Vec<(Zone, Curve)>, f64)>,
    inward: Option<Curve>,
}

impl Coefficients {
    /// Outward GCp of a zone (negative), for an effective wind area in square feet. `None` for a zone that the
    /// figure does not have.
    pub fn outward(&self, zone: Zone, square_feet: f64) -> Option<f64> {
        let of = |zones: &[(Zone, Curve)]| zones.iter().find(|(z, _)| *z == zone).map(|(_, curve)| *curve);
        let curve = of(&self.zones)?;
        match &self.towards {
            Some((steep, share)) => Some(curve.between(&of(steep)?, *share, square_feet)),
            None => Some(curve.at(square_feet)),
        }
    }

    /// Inward GCp of all zones; `None` where the sources do not give it.
    pub fn inward(&self, square_feet: f64) -> Option<f64> {
        self.inward.map(|curve| curve.at(square_feet))
    }

    /// The zones of the figure.
    pub fn zones(&self) -> impl Iterator<Item = Zone> {
        self.zones.iter().map(|(zone, _)| *zone)
    }
}

/// The coefficients for a roof.
///
/// For hips of 20° to 27° two sources differ on the area at which zones 2 and 3 level out (100 or 200 ft²): 200 is used, which is
/// never less.
///
/// # Errors
/// [`Refused`] if the sources have no figure: slopes of 7° or less or above 45°, and in 7-16 gables of 20° to 27° and all hips.
pub fn coefficients(standard: LoadStandard, shape: RoofShape, degrees: f64) -> Result<Coefficients, Refused> {
    use LoadStandard::{Asce716, Asce722};
    use RoofShape::{Gable, Hip};
    use Zone::{One, Three, ThreeEave, ThreeRidge, Two, TwoEave, TwoRake, TwoRidge};
    let c = Curve::new;
    let figure = |number| Figure { standard, number, towards: None };
    let plain =
        |figure, zones: Vec<(Zone, Curve)>, inward| Ok(Coefficients { figure, zones, towards: None, inward });
    let three = |one, two, three| vec![(One, one), (Two, two), (Three, three)];
    if degrees.is_nan() || degrees <= 7.0 || degrees > 45.0 {
        return Err(Refused::Slope(degrees));
    }
    let band = if degrees <= 20.0 {
        0
    } else if degrees <= 27.0 {
        1
    } else {
        2
    };
    let hip_20_27 =
        || three(c(10.0, -1.4, 100.0, -0.8), c(10.0, -2.0, 200.0, -1.0), c(10.0, -2.0, 200.0, -1.0));
    let hip_inward = Some(c(10.0, 0.7, 100.0, 0.3));
    match (standard, shape, band) {
        (Asce722, Gable, 0) => plain(
            figure("30.3-2B"),
            three(c(10.0, -2.0, 300.0, -0.5), c(10.0, -2.7, 200.0, -1.0), c(10.0, -3.6, 100.0, -1.8)),
            Some(c(10.0, 0.6, 200.0, 0.3)),
        ),
        (Asce722, Gable, 1) => plain(
            figure("30.3-2C"),
            three(c(10.0, -1.5, 200.0, -0.8), c(10.0, -2.5, 100.0, -1.2), c(10.0, -3.0, 100.0, -1.4)),
            Some(c(10.0, 0.6, 200.0, 0.3)),
        ),
        (Asce722, Gable, _) => plain(
            figure("30.3-2D"),
            three(c(10.0, -1.8, 100.0, -0.8), c(10.0, -2.0, 200.0, -1.0), c(10.0, -2.5, 200.0, -1.0)),
            Some(c(10.0, 0.9, 200.0, 0.5)),
        ),
        (Asce722, Hip, 0) => plain(
            figure("30.3-2E"),
            three(c(10.0, -1.8, 200.0, -0.8), c(10.0, -2.4, 200.0, -1.3), c(10.0, -2.6, 200.0, -1.4)),
            hip_inward,
        ),
        (Asce722, Hip, 1) => plain(figure("30.3-2F"), hip_20_27(), hip_inward),
        (Asce722, Hip, _) => Ok(Coefficients {
            figure: Figure { towards: Some("30.3-2G"), ..figure("30.3-2F") },
            zones: hip_20_27(),
            towards: Some((
                three(c(10.0, -1.5, 100.0, -0.7), c(10.0, -1.8, 100.0, -0.8), c(10.0, -2.4, 100.0, -1.0)),
                (degrees - 27.0) / 18.0,
            )),
            inward: None,
        }),
        (Asce716, Gable, 0) => {
            let (field, strip) = (c(20.0, -2.0, 100.0, -0.5), c(10.0, -3.0, 250.0, -1.0));
            plain(
                figure("30.3-2B"),
                vec![
                    (One, field),
                    (TwoEave, field),
                    (TwoRake, strip),
                    (TwoRidge, strip),
                    (ThreeEave, strip),
                    (ThreeRidge, c(10.0, -3.6, 100.0, -1.8)),
                ],
                Some(c(2.0, 0.7, 100.0, 0.3)),
            )
        }
        (Asce716, Gable, 2) => {
            let (field, strip) = (c(10.0, -1.8, 100.0, -0.8), c(10.0, -2.0, 200.0, -1.0));
            plain(
                figure("30.3-2D"),
                vec![
                    (One, field),
                    (TwoEave, field),
                    (TwoRidge, field),
                    (TwoRake, strip),
                    (ThreeRidge, strip),
                    (ThreeEave, c(2.0, -3.2, 300.0, -1.0)),
                ],
                None,
            )
        }
        (Asce716, ..) => Err(Refused::NotInSources(standard, shape, degrees)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use LoadStandard::{Asce716, Asce722};
    use RoofShape::{Gable, Hip};
    use Zone::{One, Three, Two};

    fn psf(shape: RoofShape, degrees: f64, zone: Zone, area: f64, q_kd: f64) -> f64 {
        let gcp = coefficients(Asce722, shape, degrees).unwrap().outward(zone, area).unwrap();
        q_kd * (gcp - 0.18)
    }

    fn near(got: f64, expect: f64, within: f64) {
        assert!((got - expect).abs() <= within, "{got}, expected {expect}");
    }

    /// Wind Loads guide to ASCE/SEI 7-22, example 6.2: gable of 7° to 20°, qh·Kd = 29.40 psf and GCpi = ±0.18 (both solved back
    /// from the printed pressures).
    #[test]
    fn guide_example_6_2() {
        for (zone, at_10, at_208) in [(One, -64.1, -24.7), (Two, -84.7, -34.7), (Three, -111.1, -58.2)] {
            near(psf(Gable, 15.0, zone, 10.0, 29.40), at_10, 0.06);
            near(psf(Gable, 15.0, zone, 208.0, 29.40), at_208, 0.06);
        }
    }

    /// The same guide, example 6.3: hip of 7° to 20°; an area of 32.2 ft² is solved back from the printed coefficients.
    #[test]
    fn guide_example_6_3() {
        let hip = coefficients(Asce722, Hip, 18.0).unwrap();
        for (zone, expect) in [(One, -1.41), (Two, -1.97), (Three, -2.13)] {
            near(hip.outward(zone, 32.2).unwrap(), expect, 0.006);
        }
    }

    /// A third party's hand calculations to 7-22, reworked: hip of 20° to 27°, 20 ft², 27.05 psf, and gable of 20° to 27°, 30
    /// ft², 33.69 psf. The hip's zones 2 and 3 were read with 100 ft²; the value used here is never less.
    #[test]
    fn hand_calculations() {
        near(psf(Hip, 24.0, One, 20.0, 27.05), -37.9, 0.06);
        near(27.05 * (coefficients(Asce722, Hip, 24.0).unwrap().inward(20.0).unwrap() + 0.18), 20.5, 0.06);
        near(27.05 * (Curve::new(10.0, -2.0, 100.0, -1.0).at(20.0) - 0.18), -50.8, 0.06);
        assert!(psf(Hip, 24.0, Two, 20.0, 27.05) <= -50.8 && psf(Hip, 24.0, Three, 20.0, 27.05) <= -50.8);
        for (zone, expect) in [(One, -47.9), (Two, -69.4), (Three, -81.4)] {
            near(psf(Gable, 24.0, zone, 30.0, 33.69), expect, 0.06);
        }
    }

    /// 27° to 45° on hips: linear interpolation between the figure for 20° to 27° and that for 45°.
    #[test]
    fn steep_hips_are_between_two_figures() {
        let at = |degrees: f64| coefficients(Asce722, Hip, degrees).unwrap().outward(Three, 10.0).unwrap();
        near(at(27.0), -2.0, 1e-12);
        near(at(36.0), -2.2, 1e-12);
        near(at(45.0), -2.4, 1e-12);
    }

    /// ASCE/SEI 7-16 figure 30.3-2B and 2D, ends of the curves.
    #[test]
    fn gables_of_7_16() {
        let low = coefficients(Asce716, Gable, 18.43).unwrap();
        near(low.outward(One, 20.0).unwrap(), -2.0, 1e-12);
        near(low.outward(One, 100.0).unwrap(), -0.5, 1e-12);
        near(low.outward(Zone::ThreeRidge, 5.0).unwrap(), -3.6, 1e-12);
        near(low.outward(Zone::TwoRake, 250.0).unwrap(), -1.0, 1e-12);
        let steep = coefficients(Asce716, Gable, 30.0).unwrap();
        near(steep.outward(Zone::ThreeEave, 2.0).unwrap(), -3.2, 1e-12);
        assert_eq!(steep.inward(10.0), None);
    }

    #[test]
    fn cases_outside_the_sources_are_refused() {
        for (standard, shape, degrees) in [
            (Asce722, Gable, 7.0),
            (Asce722, Hip, 45.1),
            (Asce722, Gable, f64::NAN),
            (Asce716, Gable, 26.57),
            (Asce716, Hip, 18.0),
            (Asce716, Hip, 30.0),
        ] {
            assert!(coefficients(standard, shape, degrees).is_err(), "{standard:?} {shape:?} {degrees}");
        }
    }
}
