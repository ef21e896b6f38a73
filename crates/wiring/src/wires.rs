//! Each circuit as wired: its modules where they stand, its links with their extension leads, its ways home, its volts and amperes.

use crate::amps::{Currents, circuit_currents};
use crate::leads::{fewest_leads, together};
use crate::place::{Device, devices, face_of_box, way};
use crate::stringing::faces_alike;
use crate::volts;
use crate::window::{Kind, Unknown, Window, window};
use chalkcourse_geometry::Length;
use chalkcourse_job::{
    BoxId, Circuit, CircuitId, InverterInput, KitWiring, ModuleAt, ModuleDevice, Resolved,
};
use chalkcourse_layout::Layout;
use std::collections::{BTreeMap, BTreeSet};

/// What follows from a job's circuits.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wires {
    /// Each circuit, in the order of the job. Empty where the kit does not say how it is wired.
    pub circuits: Vec<Wired>,
    /// Modules in no circuit, once there is one.
    pub loose: Vec<ModuleAt>,
    /// How many modules a circuit may hold; `None` where the job does not state enough.
    pub window: Option<Window>,
    /// What the job does not state.
    pub unknown: Vec<Unknown>,
}

/// A circuit as wired.
#[derive(Clone, Debug, PartialEq)]
pub struct Wired {
    /// Its number.
    pub id: CircuitId,
    /// Its name.
    pub name: String,
    /// What kind of circuit.
    pub kind: Kind,
    /// Its modules that are there, in the order of plugging.
    pub devices: Vec<Device>,
    /// Modules that it names and that are not there: switched off, or beyond their block.
    pub gone: Vec<ModuleAt>,
    /// How each module is joined to the next.
    pub links: Vec<Joined>,
    /// The way to its box; `None` where it goes to none yet.
    pub home: Option<HomeWay>,
    /// The input that it is led to.
    pub input: Option<InverterInput>,
    /// Whether its modules face different ways.
    pub mixed: bool,
    /// Its volts.
    pub volts: CircuitVolts,
    /// Its amperes.
    pub currents: Currents,
    /// Rated power of its modules, in watts.
    pub watts: f64,
}

/// How a module is joined to the next.
#[derive(Clone, Debug, PartialEq)]
pub struct Joined {
    /// The way of the cable, in metres; `None` between faces that share no line.
    pub way: Option<f64>,
    /// Extension leads: places in the kit's list. `None` where none are enough.
    pub leads: Option<Vec<usize>>,
    /// What those measure together.
    pub lengths: Length,
}

/// The way of a circuit to its box.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HomeWay {
    /// The box.
    pub to: BoxId,
    /// From the first module, in metres; `None` for a branch, which is led home from its last alone, and where the way is not known.
    pub first: Option<f64>,
    /// From the last.
    pub last: Option<f64>,
}

/// The volts of a circuit.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CircuitVolts {
    /// The highest there can be; `None` where the job does not state enough.
    pub highest: Option<f64>,
    /// The lowest at which bare modules work.
    pub lowest: Option<f64>,
    /// What a meter shows of the open circuit at standard conditions: of bare modules n · Voc, of dc devices their standby volts, of a
    /// branch its ac volts.
    pub shown: f64,
}

impl Wires {
    /// What follows from the circuits of a job as laid out.
    pub fn of(job: &Resolved, layout: &Layout) -> Self {
        let Some(wiring) = &job.kit.wiring else { return Self::default() };
        let (window, unknown) = match window(job) {
            Ok(window) => (Some(window), Vec::new()),
            Err(unknown) => (None, unknown),
        };
        // Until there is a circuit, no module is told as left out of one.
        if job.circuits.is_empty() {
            return Self { window, unknown, ..Self::default() };
        }
        let standing: BTreeMap<ModuleAt, Device> =
            devices(job, layout).into_iter().map(|device| (device.at, device)).collect();
        let mut loose: BTreeSet<ModuleAt> = standing.keys().copied().collect();
        let wire = |circuit: &Circuit| {
            circuit.modules.iter().for_each(|module| {
                loose.remove(module);
            });
            wired(job, layout, wiring, circuit, &standing)
        };
        let circuits = job.circuits.iter().map(wire).collect();
        Self { circuits, loose: loose.into_iter().collect(), window, unknown }
    }

    /// The circuit of that number.
    pub fn circuit(&self, id: CircuitId) -> Option<&Wired> {
        self.circuits.iter().find(|circuit| circuit.id == id)
    }
}

fn wired(
    job: &Resolved,
    layout: &Layout,
    wiring: &KitWiring,
    circuit: &Circuit,
    standing: &BTreeMap<ModuleAt, Device>,
) -> Wired {
    let (there, gone): (Vec<ModuleAt>, Vec<ModuleAt>) =
        circuit.modules.iter().partition(|module| standing.contains_key(module));
    let devices: Vec<Device> = there.iter().filter_map(|module| standing.get(module)).copied().collect();
    let kind = Kind::of(wiring);
    let links =
        devices.iter().zip(devices.iter().skip(1)).map(|(a, b)| joined(layout, wiring, a, b)).collect();
    let home = circuit.to.and_then(|to| job.junction_box(to)).map(|junction| {
        let spot = face_of_box(&layout.roof, junction);
        let from = |device: Option<&Device>| {
            let device = device?;
            way(&layout.roof, (device.face, device.point), spot?)
        };
        let first = if kind == Kind::AcDevices { None } else { from(devices.first()) };
        HomeWay { to: junction.id, first, last: from(devices.last()) }
    });
    let face = |device: &Device| layout.roof.faces.get(device.face);
    let mixed = devices
        .iter()
        .filter_map(face)
        .zip(devices.iter().skip(1).filter_map(face))
        .any(|(a, b)| !faces_alike(a, b));
    Wired {
        id: circuit.id,
        name: circuit.name.clone(),
        kind,
        links,
        home,
        input: circuit.input,
        mixed,
        volts: volts_of(job, wiring, devices.len()),
        currents: circuit_currents(&job.kit.module.electrical, wiring, devices.len()),
        watts: devices.len() as f64 * job.kit.module.watts,
        devices,
        gone,
    }
}

fn joined(layout: &Layout, wiring: &KitWiring, a: &Device, b: &Device) -> Joined {
    let way = way(&layout.roof, (a.face, a.point), (b.face, b.point));
    let leads = way.and_then(|way| fewest_leads(way, &wiring.leads));
    let lengths = leads.as_deref().map_or(Length::ZERO, |chosen| together(chosen, &wiring.leads));
    Joined { way, leads, lengths }
}

fn volts_of(job: &Resolved, wiring: &KitWiring, modules: usize) -> CircuitVolts {
    let (module, choices, count) = (&job.kit.module.electrical, &job.wiring, modules as f64);
    match &wiring.device {
        ModuleDevice::None => CircuitVolts {
            highest: choices
                .lowest_celsius
                .and_then(|celsius| volts::highest(module, celsius, choices.voltage_by_table))
                .map(|each| count * each),
            lowest: choices
                .hottest_cell_celsius
                .map(|celsius| count * volts::lowest_working(module, wiring, celsius)),
            shown: count * module.voc_volts,
        },
        ModuleDevice::Dc(device) => CircuitVolts {
            highest: Some(device.most_string_volts.unwrap_or(count * device.most_output_volts)),
            lowest: None,
            shown: count * device.standby_volts,
        },
        ModuleDevice::Ac(device) => {
            CircuitVolts { highest: Some(device.output_volts), lowest: None, shown: device.output_volts }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{bare, circuit, gable, junction, kit, module};
    use std::sync::Arc;

    fn wires(job: &Resolved) -> Wires {
        Wires::of(job, &Layout::of(job))
    }

    /// 2 × 3 bare modules back and forth: 6 × 41.746 V at −22 °C, 6 × 25.684 V at 77 °C cells, 223.2 V open at 25 °C. By hand.
    #[test]
    fn a_string_of_six() {
        let mut job = gable();
        job.kit = Arc::new(bare());
        job.boxes = vec![junction(9, 6.0, 5.0)];
        let mut back_and_forth = circuit(20, &[(0, 0), (0, 1), (0, 2), (1, 2), (1, 1), (1, 0)]);
        back_and_forth.to = Some(BoxId(9));
        job.circuits = vec![back_and_forth];
        let all = wires(&job);
        let one = all.circuit(CircuitId(20)).unwrap();
        let near = |value: Option<f64>, expected: f64| (value.unwrap() - expected).abs() < 1e-3;
        assert!(near(one.volts.highest, 250.475) && near(one.volts.lowest, 154.103), "{:?}", one.volts);
        assert!((one.volts.shown - 223.2).abs() < 1e-9 && one.watts == 2430.0);
        assert!((one.currents.most - 17.375).abs() < 1e-9);
        let ways: Vec<f64> = one.links.iter().map(|link| link.way.unwrap()).collect();
        for (way, expected) in ways.iter().zip([1.725, 1.725, 1.137, 1.725, 1.725]) {
            assert!((way - expected).abs() < 1e-9, "{ways:?}");
        }
        assert!(one.links.iter().all(|link| link.leads.as_ref().is_some_and(Vec::is_empty)));
        // From half of the first module, 3.861 m along and 1.8505 m up, to 6 m along and 5 √1.25 m up.
        let home = one.home.unwrap();
        assert!(near(home.first, 6.0 - 3.861 + 5.0 * 1.25_f64.sqrt() - 1.8505), "{home:?}");
        assert!(all.loose.is_empty() && !one.mixed && one.gone.is_empty());
    }

    /// What is not there is told, what is in no circuit too, and a way that leads don't reach takes one.
    #[test]
    fn what_is_missing() {
        let mut job = gable();
        job.circuits = vec![circuit(20, &[(0, 0), (0, 2), (5, 5)])];
        job.blocks[0].off.insert(chalkcourse_job::Cell { row: 1, column: 1 });
        let all = wires(&job);
        let one = &all.circuits[0];
        assert_eq!((one.devices.len(), &one.gone), (2, &vec![module(3, 5, 5)]));
        assert_eq!(all.loose, [module(3, 0, 1), module(3, 1, 0), module(3, 1, 2)]);
        // 3.45 m apart, 1.85 m of leads: one of 2 m.
        assert_eq!(one.links[0].leads, Some(vec![1]));
        assert_eq!(one.links[0].lengths, Length::from_metres(2.0));
        assert_eq!((one.volts.highest, one.volts.shown), (Some(480.0), 2.0));
        assert_eq!(one.home, None);
    }

    /// A branch over the ridge faces two ways and is led home from its last module.
    #[test]
    fn a_branch_over_the_ridge() {
        let mut job = gable();
        job.kit = Arc::new(kit(1));
        job.blocks.push(crate::testing::block(4, 2, (-8.0, 4.0), 1, 2));
        job.boxes = vec![junction(9, 6.0, 5.0)];
        let mut over = circuit(20, &[(1, 0), (1, 1)]);
        over.modules.push(module(4, 0, 1));
        over.to = Some(BoxId(9));
        job.circuits = vec![over];
        let all = wires(&job);
        let one = &all.circuits[0];
        assert!(one.mixed && one.links.iter().all(|link| link.leads.is_some()), "{one:?}");
        assert!(one.home.unwrap().first.is_none() && one.home.unwrap().last.is_some());
        assert_eq!((one.volts.highest, one.currents.most), (Some(240.0), 3.63));
        let mut silent = job.clone();
        Arc::make_mut(&mut silent.kit).wiring = None;
        assert_eq!(wires(&silent), Wires::default());
    }
}
