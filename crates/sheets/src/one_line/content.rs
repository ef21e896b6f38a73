//! What stands on a one-line diagram: stations from the array to the meter, and the conductors between them. Where the job does not
//! state a thing, its place says so.

use super::electric::{connection, device, inverter_of, output_of};
use super::legs::{Conductors, home_run, not_stated, output_conductors, run_down};
use crate::wire_words::box_name;
use chalkcourse_job::{BoxId, BoxStands, Inverter, ModuleDevice, Resolved, Service};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::tables::standard_rating;
use chalkcourse_wiring::{Kind, Wired, amps};
use chalkcourse_words as words;

/// A rectangle with a name and what is known of it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Station {
    pub(super) title: String,
    pub(super) lines: Vec<String>,
}

/// Circuits of one kind that go to the same box and the same kind of inverter.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Group {
    /// From the array up to where all groups meet.
    pub(super) stations: Vec<Station>,
    /// The number of the conductors behind each station.
    pub(super) tags: Vec<usize>,
}

/// The diagram.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct OneLine {
    pub(super) groups: Vec<Group>,
    /// What all groups lead to, up to the meter.
    pub(super) common: Vec<Station>,
    /// The number of the conductors before each of those.
    pub(super) common_tags: Vec<usize>,
    /// All conductors, by number from 1.
    pub(super) conductors: Vec<Conductors>,
}

/// More groups than this are told together.
const MOST_GROUPS: usize = 5;
/// More different counts than this are told from the least to the most.
const MOST_COUNTS: usize = 6;

fn station(title: &str, lines: Vec<String>) -> Station {
    Station { title: title.to_owned(), lines }
}

/// What tells groups apart.
type Key<'j> = (Option<BoxId>, Option<&'j str>);

impl OneLine {
    pub(super) fn of(job: &Resolved, plan: &Plan) -> Self {
        let mut all = Self { groups: vec![], common: vec![], common_tags: vec![], conductors: vec![] };
        let mut keys: Vec<(Key<'_>, Vec<&Wired>)> = Vec::new();
        for circuit in &plan.wires.circuits {
            let key =
                (circuit.home.map(|home| home.to), inverter_of(job, circuit).map(|it| it.number.as_str()));
            match keys.iter_mut().find(|(known, _)| *known == key) {
                Some((_, circuits)) => circuits.push(circuit),
                None => keys.push((key, vec![circuit])),
            }
        }
        if keys.len() > MOST_GROUPS {
            keys = vec![((keys[0].0.0, None), plan.wires.circuits.iter().collect())];
        }
        if keys.is_empty() {
            keys.push(((None, None), Vec::new()));
        }
        for ((to, _), circuits) in keys {
            all.group(job, plan, to, &circuits);
        }
        all.add_meter(job, plan);
        all
    }

    fn tag(&mut self, conductors: Conductors) -> usize {
        self.conductors.push(conductors);
        self.conductors.len()
    }

    fn group(&mut self, job: &Resolved, plan: &Plan, to: Option<BoxId>, circuits: &[&Wired]) {
        let boxes = words::oneline::JUNCTION_BOX.now();
        let array = words::oneline::ARRAY.now();
        let mut stations = vec![array_station(job, plan, circuits), box_station(job, to, circuits)];
        let first = self.tag(home_run(job, circuits, &format!("{array} \u{2013} {boxes}")));
        let mut tags = vec![first];
        let branch = job.kit.wiring.as_ref().is_some_and(|it| matches!(it.device, ModuleDevice::Ac(_)));
        let down_to = if branch { words::oneline::PANEL } else { words::oneline::INVERTER }.now();
        let down = self.tag(run_down(job, to, circuits, &format!("{boxes} \u{2013} {down_to}")));
        tags.push(down);
        if !branch {
            stations.push(dc_disconnect(job, circuits));
            tags.push(down);
            stations.push(inverter_station(job, circuits));
        }
        self.groups.push(Group { stations, tags });
    }

    /// What comes after the inverters, or after the branches.
    fn add_meter(&mut self, job: &Resolved, plan: &Plan) {
        let branches = job.kit.wiring.as_ref().is_some_and(|it| matches!(it.device, ModuleDevice::Ac(_)));
        let several = branches || job.wiring.inverters.len() > 1 || self.groups.len() > 1;
        let (disconnect, panel) = (words::oneline::AC_DISCONNECT.now(), words::oneline::SERVICE_PANEL.now());
        let from = if branches { words::oneline::PANEL.now() } else { words::oneline::INVERTER.now() };
        let out =
            self.tag(output_conductors(job, plan, &format!("{from} \u{2013} {disconnect} \u{2013} {panel}")));
        if several {
            self.common.push(panel_station(job, plan));
            let before = self.groups.first().and_then(|group| group.tags.last()).copied().unwrap_or(out);
            self.common_tags.push(if branches { before } else { out });
        }
        self.common.push(station(disconnect, vec![not_stated()]));
        self.common_tags.push(out);
        self.common.push(service_station(job, plan));
        self.common_tags.push(out);
        self.common
            .push(station(words::oneline::METER.now(), vec![words::oneline::UTILITY.now().to_owned()]));
    }
}

/// "3 strings of 12, 11, 11".
fn counts(circuits: &[&Wired]) -> String {
    let mut sizes: Vec<usize> = circuits.iter().map(|circuit| circuit.devices.len()).collect();
    sizes.sort_by(|a, b| b.cmp(a));
    let (most, least) = (sizes.first().copied().unwrap_or(0), sizes.last().copied().unwrap_or(0));
    let of = if sizes.len() <= MOST_COUNTS {
        sizes.iter().map(usize::to_string).collect::<Vec<_>>().join(", ")
    } else if most == least {
        most.to_string()
    } else {
        words::wires::from_to(&least, &most)
    };
    match circuits.first().map(|circuit| circuit.kind) {
        Some(Kind::AcDevices) => words::oneline::branches_of(circuits.len(), &of),
        _ => words::oneline::strings_of(circuits.len(), &of),
    }
}

fn array_station(job: &Resolved, plan: &Plan, circuits: &[&Wired]) -> Station {
    let (module, electrical) = (&job.kit.module, &job.kit.module.electrical);
    let modules: usize = circuits.iter().map(|circuit| circuit.devices.len()).sum();
    let shown = if circuits.is_empty() { plan.summary.modules } else { modules };
    let mut lines = vec![
        words::oneline::modules_of(shown, &module.part, &module.watts),
        format!("Voc {} V, Isc {} A", electrical.voc_volts, electrical.isc_amps),
        format!("Vmp {} V, Imp {} A", electrical.vmp_volts, electrical.imp_amps),
    ];
    match job.kit.wiring.as_ref().map(|wiring| &wiring.device) {
        None => lines.push(words::wires::KIT_WITHOUT_WIRING.now().to_owned()),
        Some(ModuleDevice::None) => lines.push(words::oneline::NO_DEVICES.now().to_owned()),
        Some(ModuleDevice::Dc(device)) => {
            lines.push(words::oneline::dc_device(&device.most_output_volts, &device.output_amps));
        }
        Some(ModuleDevice::Ac(device)) => {
            lines.push(words::oneline::ac_device(&device.output_volts, &device.output_amps));
        }
    }
    if circuits.is_empty() {
        lines.push(words::wires::NO_CIRCUIT_YET.now().to_owned());
        return station(words::oneline::ARRAY.now(), lines);
    }
    lines.push(counts(circuits));
    let highest = circuits.iter().filter_map(|circuit| circuit.volts.highest).reduce(f64::max);
    let amps = circuits.iter().map(|circuit| circuit.currents.most).fold(0.0, f64::max);
    lines.push(match highest {
        Some(volts) => words::oneline::each_at_most(&format_args!("{volts:.1}"), &format_args!("{amps:.2}")),
        None => words::oneline::each_amps(&format_args!("{amps:.2}")),
    });
    lines.push(format!("{:.2} kW", circuits.iter().map(|circuit| circuit.watts).sum::<f64>() / 1000.0));
    station(words::oneline::ARRAY.now(), lines)
}

fn box_station(job: &Resolved, to: Option<BoxId>, circuits: &[&Wired]) -> Station {
    let mut boxes: Vec<BoxId> = circuits.iter().filter_map(|it| it.home).map(|home| home.to).collect();
    boxes.sort();
    boxes.dedup();
    let lines = match to.and_then(|to| job.junction_box(to)) {
        None => vec![not_stated()],
        Some(_) if boxes.len() > 1 => vec![words::oneline::boxes(boxes.len())],
        Some(junction) => {
            let stands = match junction.stands {
                BoxStands::OnRoof => words::oneline::ON_THE_ROOF,
                BoxStands::UnderDeck => words::oneline::UNDER_THE_DECK,
            };
            let mut lines = vec![box_name(job, junction.id).to_owned(), stands.now().to_owned()];
            let room = job.kit.wiring.as_ref().and_then(|wiring| wiring.box_cubic_inches);
            lines.extend(room.map(|room| format!("{room} in³")));
            lines
        }
    };
    station(words::oneline::JUNCTION_BOX.now(), lines)
}

fn dc_disconnect(job: &Resolved, circuits: &[&Wired]) -> Station {
    let mut lines = vec![not_stated()];
    let shutdown = match job.kit.wiring.as_ref().map(|wiring| &wiring.device) {
        Some(ModuleDevice::None) | None => words::oneline::NO_SHUTDOWN,
        Some(ModuleDevice::Dc(_) | ModuleDevice::Ac(_)) => words::oneline::SHUTDOWN_AT_MODULES,
    };
    lines.push(shutdown.now().to_owned());
    let inverter = circuits.first().and_then(|circuit| inverter_of(job, circuit));
    let arc = match inverter.and_then(|inverter| inverter.arc_fault) {
        Some(true) => words::oneline::ARC_FAULT_IN_INVERTER.now().to_owned(),
        _ => format!("{}: {}", words::oneline::ARC_FAULT.now(), not_stated()),
    };
    lines.push(arc);
    station(words::oneline::DC_DISCONNECT.now(), lines)
}

fn inverter_station(job: &Resolved, circuits: &[&Wired]) -> Station {
    let title = words::oneline::INVERTER.now();
    let Some(inverter) = circuits.first().and_then(|circuit| inverter_of(job, circuit)) else {
        return station(title, vec![not_stated()]);
    };
    let mut used: Vec<u32> =
        circuits.iter().filter_map(|circuit| circuit.input).map(|input| input.inverter).collect();
    used.sort_unstable();
    used.dedup();
    let Inverter { number, least_volts, most_volts, output_volts, output_amps, inputs, .. } = inverter;
    let mut lines = vec![
        format!("{} × {number}", used.len().max(1)),
        words::of_data(&inverter.name),
        words::oneline::inputs(*inputs as usize),
        format!("{least_volts}\u{2013}{most_volts} V dc"),
        format!("{output_volts} V ac, {output_amps} A"),
    ];
    if circuits.iter().any(|circuit| circuit.input.is_none()) {
        lines.push(words::oneline::STRINGS_WITHOUT_INPUT.now().to_owned());
    }
    station(title, lines)
}

/// The panel in which inverters or branches come together.
fn panel_station(job: &Resolved, plan: &Plan) -> Station {
    let wiring = job.kit.wiring.as_ref();
    let breakers: Vec<Option<u32>> = match wiring.map(|wiring| &wiring.device) {
        Some(ModuleDevice::Ac(_)) => plan.wires.circuits.iter().map(|circuit| device(job, circuit)).collect(),
        _ => {
            let of =
                |inverter: &Inverter| standard_rating(amps::output_currents(inverter.output_amps).continuous);
            let inverters = job.wiring.inverters.iter();
            inverters.filter_map(|number| wiring?.inverter(number)).map(of).collect()
        }
    };
    let mut lines = Vec::new();
    let mut sizes: Vec<u32> = breakers.iter().flatten().copied().collect();
    sizes.sort_unstable();
    for group in sizes.chunk_by(|a, b| a == b) {
        lines.extend(group.first().map(|amps| words::oneline::breakers(group.len(), amps)));
    }
    if lines.is_empty() {
        lines.push(not_stated());
    }
    station(words::oneline::PANEL.now(), lines)
}

fn service_station(job: &Resolved, plan: &Plan) -> Station {
    let title = words::oneline::SERVICE_PANEL.now();
    let Some(service) = &job.wiring.service else { return station(title, vec![not_stated()]) };
    let Service { bus_amps, main_breaker_amps, connection: way, .. } = *service;
    let mut lines = vec![
        words::oneline::bus_and_main(&bus_amps, &main_breaker_amps),
        chalkcourse_telling::connected(way).to_owned(),
    ];
    let known = connection(job, service);
    lines.extend(known.iter().map(|(section, _)| section.clone()));
    if let Some((_, Some(breaker), _)) = output_of(job, plan) {
        lines.push(words::oneline::breakers(1_usize, &breaker));
    }
    lines.extend(known.map(|(_, most)| words::oneline::output_that_fits(&format_args!("{most:.1}"))));
    station(title, lines)
}
