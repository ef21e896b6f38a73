//! A circuit's conductors stretch by stretch, from module to inverter or combined panel: what they carry, where they lie, what they lose,
//! what protects and grounds them.

use crate::conductors::{Run, drop_one_way, drop_volts, trunk_drop_volts};
use crate::tables::{Rated, grounding_gauge, rooftop_kelvin};
use crate::wires::{HomeWay, Joined, Wired, Wires};
use crate::{Kind, amps};
use chalkcourse_job::{
    BoxId, CodeEdition, ConductorChoice, Gauge, Insulation, Inverter, JunctionBox, KitWiring, Leg, LiesIn,
    ModuleDevice, Resolved,
};
use schemars::JsonSchema;
use serde::Serialize;

/// Conductors of a circuit that carry current: + and −, or both lines of a branch of 240 V.
const OF_A_CIRCUIT: u32 = 2;

/// Which stretch of a circuit's way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    /// From module to module, under the array.
    Leads,
    /// From the array to the junction box.
    HomeRun,
    /// From the junction box down: which of its legs, from 0.
    Leg(usize),
}

/// One stretch of a circuit's way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Which.
    pub part: Part,
    /// How thick its conductors are.
    pub gauge: Gauge,
    /// What is around them.
    pub insulation: Insulation,
    /// How long it is, in metres, one way; `None` where that is not known.
    pub metres: Option<f64>,
    /// What they carry and where they lie.
    pub run: Run,
}

/// The stretches of a circuit of which job and kit state enough.
pub fn stretches(job: &Resolved, wires: &Wires, circuit: &Wired) -> Vec<Stretch> {
    let Some(wiring) = &job.kit.wiring else { return Vec::new() };
    let mut found = Vec::new();
    let run = |celsius: f64, together: Option<u32>, terminals: Rated| Run {
        most_amps: circuit.currents.most,
        continuous_amps: circuit.currents.continuous,
        breaker: device(job, circuit),
        celsius,
        together,
        terminals,
    };
    // Single conductors under the array lie apart in the air; both of a trunk are in one sheath.
    let alone = |insulation| match insulation {
        Insulation::PvWire | Insulation::Use2 => None,
        Insulation::Thwn2 | Insulation::Xhhw2 | Insulation::Trunk => Some(OF_A_CIRCUIT),
    };
    if let (Some(gauge), Some(celsius)) = (wiring.leads.gauge, job.wiring.hottest_cell_celsius) {
        let trunk = circuit.kind == Kind::AcDevices;
        let insulation = if trunk { Insulation::Trunk } else { Insulation::PvWire };
        found.push(Stretch {
            part: Part::Leads,
            gauge,
            insulation,
            metres: Some(circuit.links.iter().map(|link| copper(wiring, link)).sum()),
            // They end in plugs, not at terminals.
            run: run(celsius, alone(insulation), Rated::C90),
        });
    }
    let Some(home) = circuit.home else { return found };
    if let (Some(choice), Some(celsius)) = (wiring.home_run, job.wiring.hottest_cell_celsius) {
        // It begins under the modules: there it is as warm as their leads.
        let terminals = Rated::of_terminals(choice.terminals_celsius);
        let metres = [home.first, home.last].into_iter().flatten().reduce(f64::max);
        let run = run(celsius, alone(choice.insulation), terminals);
        let ConductorChoice { gauge, insulation, .. } = choice;
        found.push(Stretch { part: Part::HomeRun, gauge, insulation, metres, run });
    }
    if let (Some(choice), Some(junction)) = (wiring.run_down, job.junction_box(home.to)) {
        let terminals = Rated::of_terminals(choice.terminals_celsius);
        let together = together(wires, junction);
        for (index, leg) in junction.legs.iter().enumerate() {
            let Some(celsius) = around(job, leg, choice.insulation) else { continue };
            found.push(Stretch {
                part: Part::Leg(index),
                gauge: choice.gauge,
                insulation: choice.insulation,
                metres: Some(leg.length.metres()),
                run: run(celsius, Some(together), terminals),
            });
        }
    }
    found
}

/// How warm it is around a leg, °C; `None` where the job does not say.
fn around(job: &Resolved, leg: &Leg, insulation: Insulation) -> Option<f64> {
    let choices = &job.wiring;
    match leg.lies {
        LiesIn::Attic => choices.attic_celsius,
        LiesIn::FreeAir | LiesIn::Wall => choices.highest_celsius,
        LiesIn::RoofRaceway(above) => {
            // XHHW-2 is excepted in 2017.
            let excepted = choices.edition == CodeEdition::Nec2017 && insulation == Insulation::Xhhw2;
            let adds = if excepted { 0.0 } else { rooftop_kelvin(choices.edition, above.metres()) };
            choices.highest_celsius.map(|celsius| celsius + adds)
        }
    }
}

/// The circuits that go to a box.
pub fn led_home_to(wires: &Wires, to: BoxId) -> impl Iterator<Item = &Wired> {
    wires.circuits.iter().filter(move |circuit| circuit.home.is_some_and(|home: HomeWay| home.to == to))
}

/// Conductors that carry current in the raceway of a box.
fn together(wires: &Wires, junction: &JunctionBox) -> u32 {
    let circuits = u32::try_from(led_home_to(wires, junction.id).count()).unwrap_or(u32::MAX);
    let others: u32 = junction.others.iter().map(|others| others.count).sum();
    circuits.saturating_mul(OF_A_CIRCUIT).saturating_add(others)
}

/// The inverter that a circuit is led to; the job's first where it is led to none.
pub fn inverter_of<'j>(job: &'j Resolved, circuit: &Wired) -> Option<&'j Inverter> {
    let wiring = job.kit.wiring.as_ref()?;
    let led_to = circuit.input.and_then(|input| job.wiring.inverters.get(input.inverter as usize));
    led_to.or(job.wiring.inverters.first()).and_then(|number| wiring.inverter(number))
}

/// The overcurrent device in a circuit, in amperes: a branch's breaker, a string's fuse. `None` where it has none.
pub fn device(job: &Resolved, circuit: &Wired) -> Option<u32> {
    let wiring = job.kit.wiring.as_ref()?;
    let amps = match &wiring.device {
        ModuleDevice::Ac(device) => Some(device.branch_breaker_amps),
        ModuleDevice::None | ModuleDevice::Dc(_) => {
            inverter_of(job, circuit).and_then(|inverter| inverter.string_fuse_amps)
        }
    };
    amps.map(|amps| amps.round().clamp(0.0, 1e6) as u32)
}

/// What an overcurrent device of a circuit has to be, and whether it needs one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Protection {
    /// The device that it has, in amperes.
    pub device: Option<u32>,
    /// Whether it needs one: always a branch; a string where others on its input could send more into it than its conductors or its
    /// modules' series fuse hold.
    pub needed: bool,
    /// What others could send into it, in amperes; 0 for a branch, which the house feeds.
    pub others_amps: f64,
    /// What its conductors carry and its modules' series fuse hold, in amperes; infinite where nothing says so.
    pub held_amps: f64,
    /// The least that a device may be rated for.
    pub least: f64,
    /// The most: what the modules' maker allows; `None` for a branch, where [`Run::falls_short`] says so.
    pub most: Option<f64>,
}

/// What protects a circuit against too much current.
pub fn protection(job: &Resolved, wires: &Wires, circuit: &Wired) -> Option<Protection> {
    let wiring = job.kit.wiring.as_ref()?;
    let (device, least) = (device(job, circuit), circuit.currents.continuous);
    if circuit.kind == Kind::AcDevices {
        return Some(Protection {
            device,
            needed: true,
            others_amps: 0.0,
            held_amps: f64::INFINITY,
            least,
            most: None,
        });
    }
    let beside =
        |other: &&Wired| other.input.is_some() && other.input == circuit.input && other.id != circuit.id;
    let others = u32::try_from(wires.circuits.iter().filter(beside).count()).unwrap_or(u32::MAX);
    let carried = stretches(job, wires, circuit)
        .iter()
        .map(|stretch| stretch.run.carried(stretch.gauge))
        .fold(f64::INFINITY, f64::min);
    let held = if circuit.kind == Kind::Bare { wiring.series_fuse_amps } else { f64::INFINITY };
    let needed = !amps::needs_no_fuse(circuit.currents.most, others, carried, held);
    let others_amps = f64::from(others) * circuit.currents.most;
    let most = (circuit.kind == Kind::Bare).then_some(wiring.series_fuse_amps);
    Some(Protection { device, needed, others_amps, held_amps: carried.min(held), least, most })
}

/// The overcurrent device by which the grounding conductor of a circuit is chosen, in amperes, and the thinnest that will do: of a
/// string without a device, the one that it would have (690.45).
pub fn grounding(job: &Resolved, circuit: &Wired) -> Option<(u32, Gauge)> {
    let device = device(job, circuit).or_else(|| circuit.currents.least_breaker())?;
    Some((device, grounding_gauge(device)?))
}

/// What a circuit loses on its way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VoltageDrop {
    /// In volts, at its rated current.
    pub volts: f64,
    /// The voltage at which it works.
    pub of: f64,
    /// Whether all of its way is in it, down to the inverter or the combined panel; else what is known of it.
    pub whole: bool,
}

/// What a circuit loses at its rated current, section by section: a string in each of its conductors, a branch in both, with more
/// current behind each device. `None` where the kit does not say how thick its leads are, or at what voltage it works.
pub fn voltage_drop(job: &Resolved, circuit: &Wired) -> Option<VoltageDrop> {
    let wiring = job.kit.wiring.as_ref()?;
    let (amps, of) = working(job, wiring, circuit)?;
    let gauge = wiring.leads.gauge?;
    let legs: f64 = circuit
        .home
        .and_then(|home| job.junction_box(home.to))
        .map_or(0.0, |junction| junction.legs.iter().map(|leg| leg.length.metres()).sum());
    let sections: Vec<f64> = circuit.links.iter().map(|link| copper(wiring, link)).collect();
    let home = circuit.home.and_then(|home| {
        let choice = wiring.home_run?;
        Some(match circuit.kind {
            Kind::AcDevices => drop_volts(choice.gauge, home.last?, amps),
            Kind::Bare | Kind::DcDevices => drop_one_way(choice.gauge, home.first? + home.last?, amps),
        })
    });
    let leads = match circuit.kind {
        Kind::AcDevices => {
            let each = amps / circuit.devices.len().max(1) as f64;
            trunk_drop_volts(gauge, &sections, each)
        }
        Kind::Bare | Kind::DcDevices => drop_one_way(gauge, sections.iter().sum(), amps),
    };
    let down = wiring.run_down.filter(|_| legs > 0.0).map(|choice| drop_volts(choice.gauge, legs, amps));
    let volts = leads + home.unwrap_or(0.0) + down.unwrap_or(0.0);
    Some(VoltageDrop { volts, of, whole: home.is_some() && down.is_some() })
}

/// Amperes and volts at which a circuit works.
fn working(job: &Resolved, wiring: &KitWiring, circuit: &Wired) -> Option<(f64, f64)> {
    let module = &job.kit.module.electrical;
    let count = circuit.devices.len() as f64;
    let (amps, volts) = match &wiring.device {
        ModuleDevice::None => (module.imp_amps, count * module.vmp_volts),
        ModuleDevice::Dc(_) => {
            let volts = inverter_of(job, circuit)?.string_volts?;
            (circuit.watts / volts, volts)
        }
        ModuleDevice::Ac(device) => (count * device.output_amps, device.output_volts),
    };
    (volts > 0.0).then_some((amps, volts))
}

/// Conductor between two modules: both their leads and the extension leads between, in metres.
fn copper(wiring: &KitWiring, link: &Joined) -> f64 {
    (wiring.leads.positive + wiring.leads.negative + link.lengths).metres()
}

#[cfg(test)]
mod tests;
