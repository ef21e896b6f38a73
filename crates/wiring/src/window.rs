//! How many modules a circuit may hold: the window between the fewest and the most that inverter, device and code allow.

use crate::cite::{CONDUCTOR_CURRENT, DEVICE_VOLTAGE, LARGEST_VOLTAGE};
use crate::{amps, volts};
use chalkcourse_job::{DcDevice, Inverter, Kit, KitWiring, ModuleDevice, Resolved, Source, Standing};
use schemars::JsonSchema;
use serde::Serialize;

/// The highest dc voltage in one- and two-family dwellings (NEC 690.7, 2017).
pub const DWELLING_VOLTS: f64 = 600.0;

/// What kind of circuit it is: rules differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// A string of bare modules.
    Bare,
    /// A string of modules with dc devices.
    DcDevices,
    /// A branch of modules with ac devices.
    AcDevices,
}

impl Kind {
    /// What a kit's circuits are.
    pub fn of(wiring: &KitWiring) -> Self {
        match wiring.device {
            ModuleDevice::None => Self::Bare,
            ModuleDevice::Dc(_) => Self::DcDevices,
            ModuleDevice::Ac(_) => Self::AcDevices,
        }
    }
}

/// Something that a job does not state, without which circuits can't be judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Unknown {
    /// The kit does not say how it is wired.
    KitWiring,
    /// No inverter of the kit is chosen.
    Inverter,
    /// The lowest temperature.
    LowestTemperature,
    /// The temperature of cells on a hot day.
    HottestCell,
}

/// What limits the number of modules.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum LimitedBy {
    /// The highest voltage of the inverter's input.
    InverterVolts,
    /// The highest system voltage of the module.
    ModuleVolts,
    /// 600 V in dwellings.
    DwellingVolts,
    /// The lowest voltage at which the inverter works.
    LeastVolts,
    /// What the device's maker allows in one string.
    DeviceCount,
    /// The power that the device's maker allows in one string.
    DeviceWatts,
    /// What the string's devices and the inverter's input carry at its voltage.
    StringCurrent,
    /// The branch's breaker.
    Breaker,
    /// A circuit has a module.
    One,
}

/// One limit on the number of modules.
#[derive(Clone, Debug, PartialEq)]
pub struct Bar {
    /// So many.
    pub modules: u32,
    /// What it is.
    pub by: LimitedBy,
    /// By whose word.
    pub source: Source,
}

/// How many modules a circuit may hold. The fewest may be more than the most: then no circuit fits.
#[derive(Clone, Debug, PartialEq)]
pub struct Window {
    /// What kind of circuit.
    pub kind: Kind,
    /// Not fewer.
    pub least: Bar,
    /// Not more.
    pub most: Bar,
}

/// How many modules a circuit of a job may hold, whichever of its inverters it is led to.
///
/// # Errors
/// What the job does not state.
pub fn window(job: &Resolved) -> Result<Window, Vec<Unknown>> {
    let Some(wiring) = &job.kit.wiring else { return Err(vec![Unknown::KitWiring]) };
    let (kit, choices) = (&*job.kit, &*job.wiring);
    let kind = Kind::of(wiring);
    let inverters: Vec<&Inverter> =
        choices.inverters.iter().filter_map(|number| wiring.inverter(number)).collect();
    let mut unknown = Vec::new();
    if kind != Kind::AcDevices && inverters.is_empty() {
        unknown.push(Unknown::Inverter);
    }
    if kind == Kind::Bare {
        let told = [
            (Unknown::LowestTemperature, choices.lowest_celsius),
            (Unknown::HottestCell, choices.hottest_cell_celsius),
        ];
        unknown.extend(told.iter().filter(|(_, value)| value.is_none()).map(|(what, _)| *what));
    }
    if !unknown.is_empty() {
        return Err(unknown);
    }
    let mut bars = Bars { job, least: Vec::new(), most: Vec::new() };
    bars.least.push(Bar { modules: 1, by: LimitedBy::One, source: maker() });
    match &wiring.device {
        ModuleDevice::None => bars.of_bare(kit, wiring, &inverters),
        ModuleDevice::Dc(device) => bars.of_dc(kit, wiring, device, &inverters),
        ModuleDevice::Ac(device) => {
            let each = amps::CONTINUOUS * device.output_amps;
            let source = CONDUCTOR_CURRENT.of(choices.edition);
            bars.at_most(device.branch_breaker_amps / each, LimitedBy::Breaker, source);
        }
    }
    let least = bars.least.into_iter().max_by_key(|bar| bar.modules);
    let most = bars.most.into_iter().min_by_key(|bar| bar.modules);
    let (Some(least), Some(most)) = (least, most) else { return Err(vec![Unknown::Inverter]) };
    Ok(Window { kind, least, most })
}

/// The limits on the voltage of a circuit led to one of some inverters, each in volts and by whose word; `code` says which section limits
/// it in dwellings.
pub fn most_volts<'i>(
    wiring: &KitWiring,
    inverters: impl IntoIterator<Item = &'i Inverter>,
    code: Source,
) -> impl Iterator<Item = (f64, LimitedBy, Source)> {
    let of_inverter = |inverter: &Inverter| (inverter.most_volts, LimitedBy::InverterVolts, maker());
    let others = [
        (DWELLING_VOLTS, LimitedBy::DwellingVolts, code),
        (wiring.system_volts, LimitedBy::ModuleVolts, maker()),
    ];
    others.into_iter().chain(inverters.into_iter().map(of_inverter))
}

fn maker() -> Source {
    Source::new("the kit", Standing::Maker)
}

struct Bars<'a> {
    job: &'a Resolved,
    least: Vec<Bar>,
    most: Vec<Bar>,
}

/// A quotient this near a whole number is one: the same volts by another order of sums.
const DUST: f64 = 1e-9;

impl Bars<'_> {
    fn at_most(&mut self, modules: f64, by: LimitedBy, source: Source) {
        self.most.push(Bar { modules: (modules + DUST).floor().clamp(0.0, 1e6) as u32, by, source });
    }

    fn at_least(&mut self, modules: f64, by: LimitedBy, source: Source) {
        self.least.push(Bar { modules: (modules - DUST).ceil().clamp(0.0, 1e6) as u32, by, source });
    }

    fn of_bare(&mut self, kit: &Kit, wiring: &KitWiring, inverters: &[&Inverter]) {
        let (module, choices) = (&kit.module.electrical, &self.job.wiring);
        let (Some(lowest), Some(cell)) = (choices.lowest_celsius, choices.hottest_cell_celsius) else {
            return;
        };
        let code = LARGEST_VOLTAGE.of(choices.edition);
        // Below the end of the table no string can be told to hold.
        let highest = volts::highest(module, lowest, choices.voltage_by_table).unwrap_or(f64::INFINITY);
        for (volts, by, source) in most_volts(wiring, inverters.iter().copied(), code) {
            self.at_most(volts / highest, by, source);
        }
        let working = volts::lowest_working(module, wiring, cell).max(DUST);
        for inverter in inverters {
            self.at_least(inverter.least_volts / working, LimitedBy::LeastVolts, maker());
        }
    }

    fn of_dc(&mut self, kit: &Kit, wiring: &KitWiring, device: &DcDevice, inverters: &[&Inverter]) {
        self.at_least(f64::from(device.least_in_string), LimitedBy::DeviceCount, maker());
        self.at_most(f64::from(device.most_in_string), LimitedBy::DeviceCount, maker());
        self.at_most(device.most_string_watts / kit.module.watts, LimitedBy::DeviceWatts, maker());
        let code = DEVICE_VOLTAGE.of(self.job.wiring.edition);
        if device.most_string_volts.is_none() {
            for (volts, by, source) in most_volts(wiring, inverters.iter().copied(), code) {
                self.at_most(volts / device.most_output_volts, by, source);
            }
        }
        for inverter in inverters {
            if let Some(held) = inverter.string_volts {
                let carried = device.output_amps.min(inverter.most_amps);
                self.at_most(carried * held / kit.module.watts, LimitedBy::StringCurrent, maker());
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{bare, gable, kit};
    use std::sync::Arc;

    fn job(kit: Kit, change: impl FnOnce(&mut chalkcourse_job::WiringChoices)) -> Resolved {
        let mut job = gable();
        job.kit = Arc::new(kit);
        change(Arc::make_mut(&mut job.wiring));
        job
    }

    /// 37.2 V, −0.26 %/K at −22 °C: 41.746 V: 14 at 600 V. 31.2 V, −0.34 %/K at 77 °C cells: 25.684 V: 5 from 120 V on. By hand.
    #[test]
    fn bare_modules() {
        let found = window(&job(bare(), |_| {})).unwrap();
        assert_eq!(
            (found.kind, found.most.modules, found.most.by),
            (Kind::Bare, 14, LimitedBy::DwellingVolts)
        );
        assert_eq!((found.least.modules, found.least.by), (5, LimitedBy::LeastVolts));
        assert_eq!(found.most.source.text, "NEC 690.7 (2017)");
        // The table's 1.20 at −22 °C: 44.64 V, 13.
        let by_table = window(&job(bare(), |choices| choices.voltage_by_table = true)).unwrap();
        assert_eq!(by_table.most.modules, 13);
        let mut low = bare();
        low.wiring.as_mut().unwrap().inverters[0].most_volts = 500.0;
        let by_inverter = window(&job(low.clone(), |_| {})).unwrap();
        assert_eq!((by_inverter.most.modules, by_inverter.most.by), (11, LimitedBy::InverterVolts));
        low.wiring.as_mut().unwrap().system_volts = 400.0;
        assert_eq!(window(&job(low, |_| {})).unwrap().most.by, LimitedBy::ModuleVolts);
        // Colder than the table goes, it allows none.
        let cold = window(&job(bare(), |choices| {
            choices.voltage_by_table = true;
            choices.lowest_celsius = Some(-45.0);
        }));
        assert_eq!(cold.unwrap().most.modules, 0);
    }

    /// 5,700 W and 15 A at 380 V both hold 14 modules of 405 W; 13 ac devices of 1.21 A on 20 A.
    #[test]
    fn devices() {
        let found = window(&job(kit(0), |_| {})).unwrap();
        assert_eq!((found.least.modules, found.most.modules), (8, 14));
        assert_eq!(found.kind, Kind::DcDevices);
        // 3,300 W are 8 modules of 405 W; an input of 10 A at 380 V is 9.
        let mut watts = kit(0);
        let ModuleDevice::Dc(device) = &mut watts.wiring.as_mut().unwrap().device else { panic!() };
        device.most_string_watts = 3300.0;
        let by_watts = window(&job(watts, |_| {})).unwrap();
        assert_eq!((by_watts.most.modules, by_watts.most.by), (8, LimitedBy::DeviceWatts));
        let mut amps = kit(0);
        amps.wiring.as_mut().unwrap().inverters[0].most_amps = 10.0;
        let by_amps = window(&job(amps, |_| {})).unwrap();
        assert_eq!((by_amps.most.modules, by_amps.most.by), (9, LimitedBy::StringCurrent));
        let mut alone = kit(0);
        let wiring = alone.wiring.as_mut().unwrap();
        let ModuleDevice::Dc(device) = &mut wiring.device else { panic!() };
        device.most_string_volts = None;
        device.least_in_string = 2;
        // The sum of rated outputs: 480 V of the inverter hold 8 of 60 V.
        let summed = window(&job(alone, |_| {})).unwrap();
        assert_eq!((summed.most.modules, summed.most.by), (8, LimitedBy::InverterVolts));
        let ac = window(&job(kit(1), |choices| *choices = Default::default())).unwrap();
        assert_eq!((ac.kind, ac.least.modules, ac.most.modules), (Kind::AcDevices, 1, 13));
        assert_eq!(ac.most.by, LimitedBy::Breaker);
    }

    #[test]
    fn what_is_not_stated_is_told() {
        let nothing = |choices: &mut chalkcourse_job::WiringChoices| *choices = Default::default();
        let told = window(&job(bare(), nothing)).unwrap_err();
        assert_eq!(told, [Unknown::Inverter, Unknown::LowestTemperature, Unknown::HottestCell]);
        assert_eq!(window(&job(kit(0), nothing)).unwrap_err(), [Unknown::Inverter]);
        let mut silent = kit(0);
        silent.wiring = None;
        assert_eq!(window(&job(silent, |_| {})).unwrap_err(), [Unknown::KitWiring]);
        let strange =
            |choices: &mut chalkcourse_job::WiringChoices| choices.inverters = vec!["nobody's".into()];
        assert_eq!(window(&job(kit(0), strange)).unwrap_err(), [Unknown::Inverter]);
    }
}
