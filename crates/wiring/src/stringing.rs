//! Circuits made automatically, and the best order within one.

mod held;

use crate::leads::fewest_leads;
use crate::paths::{Answer, Effort, Link, Problem, divide};
use crate::place::{Device, devices, face_of_box, way};
use crate::window::{Kind, Unknown, Window, window};
use chalkcourse_geometry::{DVec2, Roof};
use chalkcourse_job::{
    BoxId, Circuit, CircuitId, Edit, InverterInput, KitWiring, ModuleAt, Resolved, WiringChoices,
};
use chalkcourse_layout::Layout;

pub use held::{Change, Gives, HeldBack, held_back};

/// Faces whose pitch and direction differ by less than this, in rise over run and in radians, face one way.
const ALIKE: f64 = 1e-6;
/// Ways are compared in tenths of a millimetre.
const TENTHS: f64 = 1e4;

/// Circuits made automatically.
#[derive(Clone, Debug, PartialEq)]
pub struct Stringing {
    /// The circuits, with numbers that the job has free.
    pub circuits: Vec<Circuit>,
    /// What is proved of each group of modules that may share a circuit.
    pub groups: Vec<Strung>,
    /// Modules that no circuit can take.
    pub left: Vec<Left>,
    /// What holds it back, where that was asked.
    pub held: Vec<HeldBack>,
}

/// A group of modules that may share a circuit, and what is proved of its circuits: over every way to divide it into circuits within
/// the window and to plug each in any order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strung {
    /// Modules.
    pub modules: usize,
    /// Circuits.
    pub circuits: usize,
    /// Whether fewer can't hold them.
    pub fewest_circuits: bool,
    /// Extension leads.
    pub leads: u64,
    /// As many circuits can't have fewer.
    pub least_leads: u64,
    /// Way of all cables, from module to module and home to the box, in metres.
    pub way: f64,
    /// As many circuits and extension leads, where those are proved, can't have less.
    pub least_way: f64,
}

/// Modules that no number of circuits within the window can hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Left {
    /// Which.
    pub modules: Vec<ModuleAt>,
    /// Not fewer in a circuit.
    pub least: u32,
    /// Not more.
    pub most: u32,
}

/// Makes the circuits of all modules anew: within the window, as few as there can be, then as few extension leads, then the least way
/// of cable to a junction box (the job's first where none is named). Bare modules share a circuit only where their faces are of one
/// pitch and direction; others where their faces meet.
///
/// # Errors
/// What the job does not state.
pub fn string_up(
    job: &Resolved,
    layout: &Layout,
    to: Option<BoxId>,
    effort: Effort,
) -> Result<Stringing, Vec<Unknown>> {
    let window = window(job)?;
    let Some(wiring) = &job.kit.wiring else { return Err(vec![Unknown::KitWiring]) };
    let to = to.or(job.boxes.first().map(|junction| junction.id));
    let home =
        to.and_then(|id| job.junction_box(id)).and_then(|junction| face_of_box(&layout.roof, junction));
    let devices = devices(job, layout);
    let mut made = Stringing { circuits: Vec::new(), groups: Vec::new(), left: Vec::new(), held: Vec::new() };
    let mut free = (job.next_id..).map(CircuitId);
    for group in groups(&layout.roof, &devices, wiring, window.kind) {
        let problem = problem(&layout.roof, &group, wiring, home, &window);
        let Some(answer) = divide(&problem, effort) else {
            let modules = group.iter().map(|device| device.at).collect();
            made.left.push(Left { modules, least: window.least.modules, most: window.most.modules });
            continue;
        };
        made.groups.push(Strung::of(&answer, group.len()));
        for path in &answer.paths {
            let modules = path.iter().filter_map(|at| group.get(*at)).map(|device| device.at).collect();
            let Some(id) = free.next() else { break };
            let name = (made.circuits.len() + 1).to_string();
            made.circuits.push(Circuit { id, name, modules, to, input: None });
        }
    }
    let inputs = inputs(wiring, &job.wiring);
    for (circuit, input) in made.circuits.iter_mut().zip(inputs) {
        circuit.input = Some(input);
    }
    Ok(made)
}

impl Stringing {
    /// The edit that takes these circuits in place of all that there are.
    pub fn edit(&self, job: &Resolved) -> Edit {
        let removed = job.circuits.iter().map(|circuit| Edit::RemoveCircuit(circuit.id));
        Edit::Several(removed.chain(self.circuits.iter().cloned().map(Edit::PutCircuit)).collect())
    }
}

impl Strung {
    fn of(answer: &Answer, modules: usize) -> Self {
        Self {
            modules,
            circuits: answer.paths.len(),
            fewest_circuits: answer.fewest_paths,
            leads: answer.leads,
            least_leads: answer.least_leads,
            way: answer.length as f64 / TENTHS,
            least_way: answer.least_length as f64 / TENTHS,
        }
    }
}

/// The best order of plugging for the modules of one circuit, and what is proved of it. `None` where its modules can't be joined, or
/// the kit does not say how.
pub fn plugging_order(job: &Resolved, layout: &Layout, circuit: &Circuit) -> Option<(Circuit, Strung)> {
    let wiring = job.kit.wiring.as_ref()?;
    let all = devices(job, layout);
    let own: Vec<Device> = all.into_iter().filter(|device| circuit.modules.contains(&device.at)).collect();
    let home = circuit
        .to
        .and_then(|to| job.junction_box(to))
        .and_then(|junction| face_of_box(&layout.roof, junction));
    let both_ends = Kind::of(wiring) != Kind::AcDevices;
    let problem = whole_problem(&layout.roof, &own, wiring, home, both_ends, own.len(), own.len());
    let answer = divide(&problem, Effort::WHOLE)?;
    let gone = circuit.modules.iter().filter(|module| !own.iter().any(|device| device.at == **module));
    let ordered = answer.paths.iter().flatten().filter_map(|at| own.get(*at)).map(|device| device.at);
    let modules = ordered.chain(gone.copied()).collect();
    Some((Circuit { modules, ..circuit.clone() }, Strung::of(&answer, own.len())))
}

/// Groups of devices that may share a circuit: those that can be joined, one by one; bare modules only with those that face the same
/// way.
fn groups(roof: &Roof, devices: &[Device], wiring: &KitWiring, kind: Kind) -> Vec<Vec<Device>> {
    let alike = |a: usize, b: usize| match (roof.faces.get(a), roof.faces.get(b)) {
        (Some(one), Some(other)) => faces_alike(one, other),
        _ => false,
    };
    let mut left: Vec<Device> = devices.to_vec();
    let mut groups = Vec::new();
    while let Some(first) = left.first().copied() {
        let mut group = vec![first];
        left.remove(0);
        let mut next = 0;
        while let Some(device) = group.get(next).copied() {
            next += 1;
            let (joined, others) = left.into_iter().partition(|other: &Device| {
                (kind != Kind::Bare || alike(device.face, other.face))
                    && link(roof, &device, other, wiring).is_some()
            });
            left = others;
            group.extend::<Vec<Device>>(joined);
        }
        // Block by block and row by row again, as they came.
        group.sort_by_key(|device| devices.iter().position(|other| other.at == device.at));
        groups.push(group);
    }
    groups
}

/// Whether two faces have one pitch and one direction.
pub fn faces_alike(one: &chalkcourse_geometry::RoofFace, other: &chalkcourse_geometry::RoofFace) -> bool {
    (one.plane.normal() - other.plane.normal()).length() <= ALIKE
}

/// How two devices are joined.
fn link(roof: &Roof, a: &Device, b: &Device, wiring: &KitWiring) -> Option<Link> {
    let apart = way(roof, (a.face, a.point), (b.face, b.point))?;
    let leads = fewest_leads(apart, &wiring.leads)?;
    Some(Link { leads: u32::try_from(leads.len()).unwrap_or(u32::MAX), length: tenths(apart) })
}

fn tenths(metres: f64) -> u32 {
    (metres * TENTHS).round().clamp(0.0, 1e9) as u32
}

fn problem(
    roof: &Roof,
    group: &[Device],
    wiring: &KitWiring,
    home: Option<(usize, DVec2)>,
    window: &Window,
) -> Problem {
    let both_ends = window.kind != Kind::AcDevices;
    let (least, most) = (window.least.modules as usize, window.most.modules as usize);
    whole_problem(roof, group, wiring, home, both_ends, least, most)
}

fn whole_problem(
    roof: &Roof,
    group: &[Device],
    wiring: &KitWiring,
    home: Option<(usize, DVec2)>,
    both_ends: bool,
    least: usize,
    most: usize,
) -> Problem {
    let links = group
        .iter()
        .map(|a| group.iter().map(|b| if a.at == b.at { None } else { link(roof, a, b, wiring) }).collect())
        .collect();
    // What can't be told how far it is counts nothing: it is told as such elsewhere.
    let to_home = |device: &Device| {
        home.and_then(|home| way(roof, (device.face, device.point), home)).map_or(0, tenths)
    };
    Problem {
        links,
        home: group.iter().map(to_home).collect(),
        both_ends,
        least,
        most,
        orders: snakes(group),
    }
}

/// Orders back and forth: along rows from the eave up, and up and down columns.
fn snakes(group: &[Device]) -> Vec<Vec<usize>> {
    let mut along: Vec<usize> = (0..group.len()).collect();
    let key = |at: &usize| group[*at].at;
    along.sort_by_key(|at| (key(at).block, key(at).cell.row, key(at).cell.column));
    let mut up = along.clone();
    up.sort_by_key(|at| (key(at).block, key(at).cell.column, key(at).cell.row));
    let back_and_forth = |order: Vec<usize>, same: &dyn Fn(ModuleAt, ModuleAt) -> bool| {
        let lines = order.chunk_by(|a, b| key(a).block == key(b).block && same(key(a), key(b)));
        let turned = lines.enumerate().flat_map(|(line, points)| {
            let mut points = points.to_vec();
            if line % 2 == 1 {
                points.reverse();
            }
            points
        });
        turned.collect::<Vec<usize>>()
    };
    vec![
        back_and_forth(along, &|a, b| a.cell.row == b.cell.row),
        back_and_forth(up, &|a, b| a.cell.column == b.cell.column),
    ]
}

/// The first input of the job's inverters, in the order in which circuits are led to them, that has room for another. `None` where
/// there is none, or the kit has no inverters.
pub fn free_input(job: &Resolved) -> Option<InverterInput> {
    let mut taken: Vec<InverterInput> = job.circuits.iter().filter_map(|circuit| circuit.input).collect();
    inputs(job.kit.wiring.as_ref()?, &job.wiring).into_iter().find(|input| {
        let by = taken.iter().position(|other| other == input);
        by.map(|at| taken.swap_remove(at)).is_none()
    })
}

/// Inputs in the order in which circuits are led to them: one on each before any has two.
fn inputs(wiring: &KitWiring, choices: &WiringChoices) -> Vec<InverterInput> {
    let inverters: Vec<(u32, u32, u32)> = (0_u32..)
        .zip(&choices.inverters)
        .filter_map(|(at, number)| Some((at, wiring.inverter(number)?)))
        .map(|(at, inverter)| (at, inverter.inputs.min(64), inverter.strings_an_input.min(64)))
        .collect();
    let most = inverters.iter().map(|(_, _, strings)| *strings).max().unwrap_or(0);
    (0..most)
        .flat_map(|round| inverters.iter().filter(move |(_, _, strings)| round < *strings))
        .flat_map(|(inverter, inputs, _)| {
            (0..*inputs).map(|input| InverterInput { inverter: *inverter, input })
        })
        .collect()
}

#[cfg(test)]
mod tests;
