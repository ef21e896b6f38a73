//! What an electrician's meter should show of a circuit before it is switched on.

use crate::wires::Wired;
use crate::{Kind, volts};
use chalkcourse_job::{Electrical, KitWiring, ModuleDevice};

/// What readings of a circuit should be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expected {
    /// Volts of the open circuit; of a branch, of its ac.
    pub volts: f64,
    /// Not less.
    pub least_volts: f64,
    /// Not more.
    pub most_volts: f64,
    /// How its insulation is tested; `None` where no test is allowed with the devices connected.
    pub insulation: Option<InsulationTest>,
}

/// How the insulation of a circuit is tested.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InsulationTest {
    /// At so many volts.
    pub volts: u32,
    /// Not less, in megohms.
    pub least_megohms: f64,
}

/// A string may be this far off, as a share (common practice, in the spirit of IEC 62446-1; its section is not at hand).
const STRING: f64 = 0.05;
/// A house's voltage may be this far off, as a share (ANSI C84.1, range A at the service, from memory).
const UTILITY: f64 = 0.05;
/// Insulation is no less than this, in megohms (common practice, in the spirit of IEC 62446-1).
const MEGOHMS: f64 = 1.0;
/// Up to this voltage, times 1.25, insulation is tested at the first of these, above at the second (as above, from memory).
const TESTED_AT: (u32, u32) = (500, 1_000);

/// What readings of a circuit should be with its modules at a temperature, °C: of bare modules n · Voc at that temperature within 5 %; of
/// dc devices their standby volts, within half a device, so that one too few is told; of a branch the volts of the house.
pub fn expected_reading(module: &Electrical, wiring: &KitWiring, circuit: &Wired, celsius: f64) -> Expected {
    expected_of(module, wiring, circuit.devices.len(), celsius)
}

/// The same for a circuit of so many modules.
pub fn expected_of(module: &Electrical, wiring: &KitWiring, modules: usize, celsius: f64) -> Expected {
    let count = modules as f64;
    let (volts, off) = match &wiring.device {
        ModuleDevice::None => {
            let volts = count * volts::at_cell(module.voc_volts, module.voc_percent_per_kelvin, celsius);
            (volts, STRING * volts)
        }
        ModuleDevice::Dc(device) => (count * device.standby_volts, 0.5 * device.standby_volts),
        ModuleDevice::Ac(device) => (device.output_volts, UTILITY * device.output_volts),
    };
    let allowed = Kind::of(wiring) == Kind::Bare || wiring.insulation_test_connected == Some(true);
    let insulation = allowed.then(|| {
        let highest = match &wiring.device {
            ModuleDevice::None => count * module.voc_volts,
            ModuleDevice::Dc(device) => device.most_string_volts.unwrap_or(count * device.most_output_volts),
            ModuleDevice::Ac(device) => device.output_volts,
        };
        let (low, high) = TESTED_AT;
        let volts = if 1.25 * highest <= f64::from(low) { low } else { high };
        InsulationTest { volts, least_megohms: MEGOHMS }
    });
    Expected { volts, least_volts: volts - off, most_volts: volts + off, insulation }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{bare, kit};

    fn of(kit: &chalkcourse_job::Kit, modules: usize, celsius: f64) -> Expected {
        expected_of(&kit.module.electrical, kit.wiring.as_ref().unwrap(), modules, celsius)
    }

    /// Twelve modules of 37.2 V, −0.26 %/K: 25 °C 446.4 V, 5 °C 469.6 V, 45 °C 423.2 V; 1.25 × 446.4 V = 558 V is tested at 1,000 V, ten
    /// modules, 465 V, at 500 V. By hand.
    #[test]
    fn strings_of_bare_modules() {
        let kit = bare();
        for (celsius, volts) in [(25.0, 446.4), (5.0, 469.6128), (45.0, 423.1872)] {
            let expected = of(&kit, 12, celsius);
            assert!((expected.volts - volts).abs() < 1e-9, "{celsius}: {expected:?}");
            assert!((expected.least_volts - 0.95 * volts).abs() < 1e-9);
            assert!((expected.most_volts - 1.05 * volts).abs() < 1e-9);
        }
        let test = |modules| of(&kit, modules, 25.0).insulation.map(|test| test.volts);
        assert_eq!((test(12), test(10)), (Some(1_000), Some(500)));
    }

    /// Twelve devices of 1 V on standby: 11.5 to 12.5 V; a branch of 240 V: 228 to 252 V. Neither is tested connected unless it may be.
    #[test]
    fn devices() {
        let strings = of(&kit(0), 12, 40.0);
        assert_eq!((strings.least_volts, strings.most_volts, strings.insulation), (11.5, 12.5, None));
        let branch = of(&kit(1), 12, 40.0);
        assert_eq!((branch.least_volts, branch.most_volts), (228.0, 252.0));
        let mut may = kit(0);
        may.wiring.as_mut().unwrap().insulation_test_connected = Some(true);
        // 480 V at most: 600 V.
        assert_eq!(of(&may, 12, 40.0).insulation.map(|test| test.volts), Some(1_000));
    }
}
