//! How the modules of a kit are wired: what stands behind each, how far its leads reach, and the inverters that it goes with.

use super::{Bonding, ConductorChoice, Gauge, Kit, Raceway, TorqueSetting};
use chalkcourse_geometry::Length;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// On which side of the deck a junction box is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum BoxStands {
    /// On the roof.
    #[default]
    OnRoof,
    /// Under the deck.
    UnderDeck,
}

/// How the modules of a kit are wired, by their makers' data sheets.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct KitWiring {
    /// The largest fuse in series with a module, in amperes.
    pub series_fuse_amps: f64,
    /// The largest system voltage that the module is listed for.
    pub system_volts: f64,
    /// Change of the voltage at the greatest power, percent a kelvin; that of power where the maker does not say, which tells a
    /// lower voltage when hot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vmp_percent_per_kelvin: Option<f64>,
    /// What stands behind each module.
    pub device: ModuleDevice,
    /// How one module is joined to the next.
    pub leads: Leads,
    /// Inverters that it goes with; none where the modules' own devices give ac.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub inverters: Vec<Inverter>,
    /// Conductors from the array to the junction box.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub home_run: Option<ConductorChoice>,
    /// Conductors from the junction box down.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub run_down: Option<ConductorChoice>,
    /// The raceway in which those lie.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub raceway: Option<Raceway>,
    /// Room in the junction box, in cubic inches, as it is marked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub box_cubic_inches: Option<f64>,
    /// How wide the flashing of a junction box on the roof is, along the eave and up the slope.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub box_flashing: Option<Length>,
    /// The bare conductor past every lug.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grounding: Option<Gauge>,
    /// How metal of the array is bonded.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bonding: Option<Bonding>,
    /// Whether the makers allow a test of the insulation with their electronics connected.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub insulation_test_connected: Option<bool>,
    /// How hard screws of terminals and lugs are turned.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub torques: Vec<TorqueSetting>,
}

/// What stands behind each module.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ModuleDevice {
    /// Nothing: plain strings of modules, without shutdown at the module.
    None,
    /// A device that gives dc at a voltage of its own.
    Dc(DcDevice),
    /// A device that gives ac.
    Ac(AcDevice),
}

/// What a module may be to a device.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DeviceInput {
    /// The highest voltage at its input.
    pub most_volts: f64,
    /// The highest short-circuit current of its module, in amperes.
    pub most_isc_amps: f64,
    /// The highest rated power of its module, in watts.
    pub most_watts: f64,
}

/// A device that gives dc at a voltage of its own: what its maker allows in one string.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DcDevice {
    /// What its module may be.
    pub input: DeviceInput,
    /// The highest voltage of one device.
    pub most_output_volts: f64,
    /// The rated continuous current of a string of them, in amperes.
    pub output_amps: f64,
    /// What a meter shows of one device that nothing has switched on.
    pub standby_volts: f64,
    /// Not fewer in a string.
    pub least_in_string: u32,
    /// Not more.
    pub most_in_string: u32,
    /// Rated power of a string at most, in watts.
    pub most_string_watts: f64,
    /// The highest voltage of a string, however many are in it, where the maker gives one (NEC 690.7(B)); else it is the sum of
    /// the devices' own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_string_volts: Option<f64>,
}

/// A device that gives ac.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AcDevice {
    /// What its module may be.
    pub input: DeviceInput,
    /// Rated voltage of a branch.
    pub output_volts: f64,
    /// Rated continuous current of one device, in amperes.
    pub output_amps: f64,
    /// The largest breaker of a branch, in amperes.
    pub branch_breaker_amps: f64,
}

/// How one module is joined to the next.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Leads {
    /// The lead of + to its plug; of a trunk, half of the way from one plug to the next.
    pub positive: Length,
    /// The lead of − to its plug; of a trunk, the other half.
    pub negative: Length,
    /// What of the two is lost to bends and clips.
    pub slack: Length,
    /// Where the leads begin: along the module, as a share of its extent along the eave.
    #[serde(default = "half")]
    pub along: f64,
    /// Where the leads begin: up the slope, as a share of its extent.
    #[serde(default = "half")]
    pub up: f64,
    /// Make and type of the plugs: two makes are never mated.
    pub plug: String,
    /// How thick the conductors in them are, and those of a trunk.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gauge: Option<Gauge>,
    /// Lengths in which extension leads are sold.
    pub extensions: Vec<ExtensionLead>,
}

fn half() -> f64 {
    0.5
}

/// An extension lead as it is sold.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ExtensionLead {
    /// The maker's number.
    pub number: String,
    /// Plug to plug.
    pub length: Length,
    /// Make and type of its plugs, where they are not those of the leads.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plug: Option<String>,
}

/// An inverter as made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Inverter {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Inputs that find their working point alone.
    pub inputs: u32,
    /// Strings on one input at most.
    pub strings_an_input: u32,
    /// The highest voltage at an input.
    pub most_volts: f64,
    /// The lowest voltage at which it works.
    pub least_volts: f64,
    /// Working current of an input at most, in amperes.
    pub most_amps: f64,
    /// Short-circuit current of an input at most, in amperes.
    pub most_isc_amps: f64,
    /// The voltage at which it holds strings of dc devices; `None` for one that takes plain strings alone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub string_volts: Option<f64>,
    /// Rated output voltage.
    pub output_volts: f64,
    /// Rated continuous output current, in amperes.
    pub output_amps: f64,
    /// Whether it stops at an arc in the dc circuits; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub arc_fault: Option<bool>,
    /// Whether it stops at a fault to ground in the dc circuits; `None` where the maker does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ground_fault: Option<bool>,
    /// The fuse that each string has in it, in amperes; `None` for none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub string_fuse_amps: Option<f64>,
    /// Make and type of the plugs at its inputs; `None` for terminals.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plug: Option<String>,
}

impl KitWiring {
    /// The inverter of that number.
    pub fn inverter(&self, number: &str) -> Option<&Inverter> {
        self.inverters.iter().find(|inverter| inverter.number == number)
    }

    /// What a module may be to its device, where it has one.
    pub fn device_input(&self) -> Option<&DeviceInput> {
        match &self.device {
            ModuleDevice::None => None,
            ModuleDevice::Dc(device) => Some(&device.input),
            ModuleDevice::Ac(device) => Some(&device.input),
        }
    }

    /// What makes sense of what the makers say: the words name the field.
    pub(super) fn check(&self) -> Result<(), Said> {
        let mut amounts = vec![
            ("series_fuse_amps".to_owned(), self.series_fuse_amps),
            ("system_volts".to_owned(), self.system_volts),
        ];
        let mut add = |field: String, value: f64| amounts.push((field, value));
        if let Some(volume) = self.box_cubic_inches {
            add("box_cubic_inches".into(), volume);
        }
        if let Some(side) = self.box_flashing {
            add("box_flashing".into(), side.metres());
        }
        if let Some(input) = self.device_input() {
            add("device.input.most_volts".into(), input.most_volts);
            add("device.input.most_isc_amps".into(), input.most_isc_amps);
            add("device.input.most_watts".into(), input.most_watts);
        }
        match &self.device {
            ModuleDevice::None => {}
            ModuleDevice::Dc(device) => {
                add("device.dc.most_output_volts".into(), device.most_output_volts);
                add("device.dc.output_amps".into(), device.output_amps);
                add("device.dc.standby_volts".into(), device.standby_volts);
                add("device.dc.least_in_string".into(), f64::from(device.least_in_string));
                add("device.dc.most_in_string".into(), f64::from(device.most_in_string));
                add("device.dc.most_string_watts".into(), device.most_string_watts);
                if let Some(volts) = device.most_string_volts {
                    add("device.dc.most_string_volts".into(), volts);
                }
            }
            ModuleDevice::Ac(device) => {
                add("device.ac.output_volts".into(), device.output_volts);
                add("device.ac.output_amps".into(), device.output_amps);
                add("device.ac.branch_breaker_amps".into(), device.branch_breaker_amps);
            }
        }
        for (index, lead) in self.leads.extensions.iter().enumerate() {
            add(format!("leads.extensions[{index}].length"), lead.length.metres());
        }
        for (index, inverter) in self.inverters.iter().enumerate() {
            let at = |field: &str| format!("inverters[{index}].{field}");
            add(at("inputs"), f64::from(inverter.inputs));
            add(at("strings_an_input"), f64::from(inverter.strings_an_input));
            add(at("most_volts"), inverter.most_volts);
            add(at("least_volts"), inverter.least_volts);
            add(at("most_amps"), inverter.most_amps);
            add(at("most_isc_amps"), inverter.most_isc_amps);
            add(at("output_volts"), inverter.output_volts);
            add(at("output_amps"), inverter.output_amps);
            if let Some(volts) = inverter.string_volts {
                add(at("string_volts"), volts);
            }
            if let Some(amps) = inverter.string_fuse_amps {
                add(at("string_fuse_amps"), amps);
            }
        }
        if let Some((field, value)) = amounts.iter().find(|(_, value)| !(*value > 0.0 && *value < 1e6)) {
            return Err(words::kit::must_be_more_than_0(&format_args!("wiring.{field}"), value));
        }
        self.check_conductors()?;
        self.check_order()
    }

    /// Limits rise from the least to the most, and leads reach somewhere.
    fn check_order(&self) -> Result<(), Said> {
        let leads = &self.leads;
        for (field, length) in
            [("positive", leads.positive), ("negative", leads.negative), ("slack", leads.slack)]
        {
            if !(0.0..1000.0).contains(&length.metres()) {
                return Err(words::kit::must_be_0_or_more(&format_args!("wiring.leads.{field}")));
            }
        }
        for (field, share) in [("along", leads.along), ("up", leads.up)] {
            if !(0.0..=1.0).contains(&share) {
                return Err(words::kit::wiring_share(&format_args!("wiring.leads.{field}"), &share));
            }
        }
        if self.vmp_percent_per_kelvin.is_some_and(|percent| !(-5.0..=0.0).contains(&percent)) {
            return Err(words::kit::WIRING_VMP.into());
        }
        if let ModuleDevice::Dc(device) = &self.device
            && device.least_in_string > device.most_in_string
        {
            return Err(words::kit::WIRING_STRING_RISES.into());
        }
        for (index, inverter) in self.inverters.iter().enumerate() {
            if inverter.least_volts > inverter.most_volts {
                return Err(words::kit::wiring_inverter_rises(&index));
            }
            if self.inverters[..index].iter().any(|other| other.number == inverter.number) {
                return Err(words::kit::wiring_inverter_twice(
                    &index,
                    &format_args!("{:?}", inverter.number),
                ));
            }
        }
        Ok(())
    }
}

impl Kit {
    /// What is said of the wires makes sense.
    pub(super) fn check_wiring(&self) -> Result<(), Said> {
        self.wiring.as_ref().map_or(Ok(()), KitWiring::check)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::builtin_kits;

    fn refused(change: impl Fn(&mut KitWiring), words: &str) {
        let mut kit = (*builtin_kits()[0]).clone();
        change(kit.wiring.as_mut().unwrap());
        let error = kit.check().unwrap_err();
        assert!(error.now().contains(words), "{error:?} does not say {words:?}");
    }

    #[test]
    fn one_kit_that_ships_has_dc_devices_and_one_ac_devices() {
        let kinds = builtin_kits().each_ref().map(|kit| {
            kit.check().unwrap();
            kit.wiring.clone().unwrap().device
        });
        assert!(matches!(kinds, [ModuleDevice::Dc(_), ModuleDevice::Ac(_)]), "{kinds:?}");
    }

    #[test]
    fn what_no_device_can_be_is_refused() {
        refused(|wiring| wiring.series_fuse_amps = 0.0, "wiring.series_fuse_amps");
        refused(|wiring| wiring.system_volts = f64::NAN, "wiring.system_volts");
        refused(|wiring| wiring.leads.slack = Length::from_metres(-0.1), "wiring.leads.slack");
        refused(|wiring| wiring.leads.up = 1.5, "wiring.leads.up");
        refused(|wiring| wiring.vmp_percent_per_kelvin = Some(0.3), "vmp_percent_per_kelvin");
        refused(|wiring| wiring.inverters[0].least_volts = 1e5, "inverters[0]");
        refused(|wiring| wiring.inverters.push(wiring.inverters[0].clone()), "FH-");
        refused(
            |wiring| {
                let ModuleDevice::Dc(device) = &mut wiring.device else { panic!() };
                device.least_in_string = device.most_in_string + 1;
            },
            "least_in_string",
        );
        refused(|wiring| wiring.leads.extensions[0].length = Length::ZERO, "extensions[0].length");
    }
}
