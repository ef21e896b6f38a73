//! Currents of a circuit: the largest there can be, and what conductors and overcurrent devices are chosen by.

use crate::Kind;
use crate::cite::{DEVICE_CURRENT, MODULE_CURRENT, Section};
use crate::tables::standard_rating;
use chalkcourse_job::{Electrical, KitWiring, ModuleDevice};

/// Current that flows for hours counts as so much more (NEC 690.8(B), 2017; 210.19 and 215.2 for ac, from memory).
pub const CONTINUOUS: f64 = 1.25;

/// Light above the standard 1,000 W/m² makes so much more of the short-circuit current (NEC 690.8(A)(1), 2017).
pub const BRIGHT: f64 = 1.25;

/// Currents of a circuit, in amperes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Currents {
    /// The largest there can be for three hours.
    pub most: f64,
    /// The same again by 1.25: conductors and overcurrent devices.
    pub continuous: f64,
    /// By which section the first is so.
    pub section: Section,
}

impl Currents {
    fn of(most: f64, section: Section) -> Self {
        Self { most, continuous: CONTINUOUS * most, section }
    }

    /// The least standard overcurrent device, in amperes; `None` above 200 A.
    pub fn least_breaker(&self) -> Option<u32> {
        standard_rating(self.continuous)
    }
}

/// Currents of a circuit of so many modules. Bare modules by their short-circuit current in bright light; devices by what they are
/// rated for, without that factor.
pub fn circuit_currents(module: &Electrical, wiring: &KitWiring, modules: usize) -> Currents {
    match (&wiring.device, Kind::of(wiring)) {
        (ModuleDevice::Dc(device), _) => Currents::of(device.output_amps, DEVICE_CURRENT),
        (ModuleDevice::Ac(device), _) => Currents::of(device.output_amps * modules as f64, DEVICE_CURRENT),
        (ModuleDevice::None, _) => Currents::of(BRIGHT * module.isc_amps, MODULE_CURRENT),
    }
}

/// Currents of an inverter's output: what it is rated for.
pub fn output_currents(rated_amps: f64) -> Currents {
    Currents::of(rated_amps, DEVICE_CURRENT)
}

/// Whether a string needs no overcurrent device: what others on its input could send into it is no more than its conductors carry and
/// its modules' series fuse holds (NEC 690.9(A), exception, 2017, from memory). `each` is the largest current of one string.
pub fn needs_no_fuse(each: f64, others: u32, conductor_amps: f64, series_fuse_amps: f64) -> bool {
    let sent = f64::from(others) * each;
    sent <= conductor_amps && sent <= series_fuse_amps
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{bare, kit};

    /// NEC 690.8(A)(1), 690.8(B) and 690.9(B) (2017): Isc 10 A, 12.5 A, 15.63 A, 20 A.
    #[test]
    fn isc_of_10_amps() {
        let mut kit = bare();
        kit.module.electrical.isc_amps = 10.0;
        let currents = circuit_currents(&kit.module.electrical, kit.wiring.as_ref().unwrap(), 12);
        assert_eq!(currents.most, 12.5);
        assert!((currents.continuous - 15.625).abs() < 1e-12);
        assert_eq!(currents.least_breaker(), Some(20));
    }

    /// Rated output and 1.25 once (from memory): 13 × 1.21 A = 15.73 A, × 1.25 = 19.66 A on 20 A; 14 are too many. 32 A make 40 A.
    #[test]
    fn devices_and_inverters() {
        let kit = kit(1);
        let of = |modules| circuit_currents(&kit.module.electrical, kit.wiring.as_ref().unwrap(), modules);
        assert!((of(13).most - 15.73).abs() < 1e-9 && (of(13).continuous - 19.6625).abs() < 1e-9);
        assert_eq!((of(13).least_breaker(), of(14).least_breaker()), (Some(20), Some(25)));
        assert_eq!(output_currents(32.0).least_breaker(), Some(40));
        let dc = crate::testing::kit(0);
        let currents = circuit_currents(&dc.module.electrical, dc.wiring.as_ref().unwrap(), 12);
        assert_eq!((currents.most, currents.continuous), (15.0, 18.75));
    }

    /// 1.25 × 13.9 A are 17.4 A. One other string sends that; two send 34.75 A, more than a series fuse of 25 A.
    #[test]
    fn fuses_of_parallel_strings() {
        let each = BRIGHT * 13.9;
        assert!(needs_no_fuse(each, 0, 0.0, 0.0));
        assert!(needs_no_fuse(each, 1, 30.0, 25.0));
        assert!(!needs_no_fuse(each, 2, 40.0, 25.0));
        assert!(!needs_no_fuse(each, 1, 17.0, 25.0));
        assert!(!needs_no_fuse(each, 1, 30.0, 17.0));
    }
}
