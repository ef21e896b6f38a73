//! Circuits as text and for other programs, with what is proved of those that were made automatically.

mod electrical;

pub use electrical::{ConnectionReport, DropReport, ElectricalReport, OvercurrentReport, StretchReport};

use crate::{Plan, with_standing};
use chalkcourse_geometry::Length;
use chalkcourse_job::{BoxId, CircuitId, ModuleAt, Resolved};
use chalkcourse_wiring::{Kind, LimitedBy, Stringing, Strung, Unknown, Wired, Wires};
use chalkcourse_words::{self as words, later};
use schemars::JsonSchema;
use serde::Serialize;
use std::fmt::Write;

/// The circuits of a job, in numbers. Lengths are metres.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WiresReport {
    /// That it is for planning, and who may do electrical work.
    pub planning_aid: &'static str,
    /// The edition of the NEC, and what of it is not checked.
    pub edition: u32,
    /// What no rule of this program checks.
    pub not_checked: &'static str,
    /// How many modules a circuit may hold; left out where the job does not state enough.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub window: Option<WindowReport>,
    /// What the job does not state.
    pub unknown: Vec<Unknown>,
    /// Each circuit.
    pub circuits: Vec<CircuitReport>,
    /// The output and where it meets the house; left out where no inverter is chosen or no circuit drawn.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub connection: Option<ConnectionReport>,
    /// Modules in no circuit, where there is one.
    pub loose: Vec<ModuleAt>,
    /// What is proved of circuits that were made automatically.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub strung: Vec<StrungReport>,
    /// Modules that could not be strung automatically.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub left: Vec<ModuleAt>,
}

/// How many modules a circuit may hold.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WindowReport {
    /// Not fewer.
    pub least: u32,
    /// What makes it so.
    pub least_by: LimitedBy,
    /// Not more.
    pub most: u32,
    /// What makes it so.
    pub most_by: LimitedBy,
    /// By whose word the most is.
    pub most_source: String,
}

/// A circuit.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CircuitReport {
    /// Its number.
    pub id: CircuitId,
    /// Its name.
    pub name: String,
    /// What kind of circuit.
    pub kind: Kind,
    /// Its modules in the order of plugging.
    pub modules: Vec<ModuleAt>,
    /// Modules that it names and that are not there.
    pub gone: Vec<ModuleAt>,
    /// Extension leads between each module and the next, by their numbers; `None` where none reach.
    pub extension_leads: Vec<Option<Vec<String>>>,
    /// The junction box that it goes to.
    pub to: Option<BoxId>,
    /// Ways from its first and from its last module to the box.
    pub home: [Option<f64>; 2],
    /// Rated power of its modules, watts.
    pub watts: f64,
    /// The highest voltage there can be.
    pub highest_volts: Option<f64>,
    /// The lowest at which bare modules work.
    pub lowest_volts: Option<f64>,
    /// What a meter shows of it open, at 25 °C.
    pub meter_volts: f64,
    /// The largest current, amperes.
    pub most_amps: f64,
    /// What conductors and overcurrent devices are chosen by, amperes.
    pub continuous_amps: f64,
    /// By whose word.
    pub current_source: String,
    /// Its conductors, what protects and grounds it, and what it loses.
    #[serde(flatten)]
    pub electrical: ElectricalReport,
}

/// What is proved of a group of modules that was strung automatically: over all ways to divide it into circuits within the window and
/// to plug each in any order.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct StrungReport {
    /// Modules.
    pub modules: usize,
    /// Circuits.
    pub circuits: usize,
    /// Whether fewer can't hold them.
    pub fewest_circuits: bool,
    /// Extension leads.
    pub extension_leads: u64,
    /// As many circuits can't have fewer.
    pub least_extension_leads: u64,
    /// Way of all cables.
    pub cable: f64,
    /// As many circuits, and as many extension leads where those are proved, can't have less.
    pub least_cable: f64,
}

impl From<&Strung> for StrungReport {
    fn from(group: &Strung) -> Self {
        Self {
            modules: group.modules,
            circuits: group.circuits,
            fewest_circuits: group.fewest_circuits,
            extension_leads: group.leads,
            least_extension_leads: group.least_leads,
            cable: group.way,
            least_cable: group.least_way,
        }
    }
}

/// The circuits of a job for other programs.
pub fn wires_report(job: &Resolved, plan: &Plan, strung: Option<&Stringing>) -> WiresReport {
    let wires = &plan.wires;
    WiresReport {
        planning_aid: words::wires::PLANNING_AID.now(),
        edition: job.wiring.edition.year(),
        not_checked: words::wires::NOT_CHECKED.now(),
        window: wires.window.as_ref().map(|window| WindowReport {
            least: window.least.modules,
            least_by: window.least.by,
            most: window.most.modules,
            most_by: window.most.by,
            most_source: window.most.source.text.clone(),
        }),
        unknown: wires.unknown.clone(),
        circuits: wires.circuits.iter().map(|circuit| circuit_report(job, wires, circuit)).collect(),
        connection: electrical::connection(job, wires),
        loose: wires.loose.clone(),
        strung: strung.map(|made| made.groups.iter().map(StrungReport::from).collect()).unwrap_or_default(),
        left: strung
            .map(|made| made.left.iter().flat_map(|left| left.modules.clone()).collect())
            .unwrap_or_default(),
    }
}

fn circuit_report(job: &Resolved, wires: &Wires, circuit: &Wired) -> CircuitReport {
    let number = |at: &usize| {
        let leads = job.kit.wiring.as_ref().map(|wiring| &wiring.leads.extensions);
        leads.and_then(|leads| leads.get(*at)).map(|lead| lead.number.clone()).unwrap_or_default()
    };
    CircuitReport {
        id: circuit.id,
        name: circuit.name.clone(),
        kind: circuit.kind,
        modules: circuit.devices.iter().map(|device| device.at).collect(),
        gone: circuit.gone.clone(),
        extension_leads: circuit
            .links
            .iter()
            .map(|link| link.leads.as_ref().map(|leads| leads.iter().map(number).collect()))
            .collect(),
        to: circuit.home.map(|home| home.to),
        home: circuit.home.map_or([None, None], |home| [home.first, home.last]),
        watts: circuit.watts,
        highest_volts: circuit.volts.highest,
        lowest_volts: circuit.volts.lowest,
        meter_volts: circuit.volts.shown,
        most_amps: circuit.currents.most,
        continuous_amps: circuit.currents.continuous,
        current_source: circuit.currents.section.of(job.wiring.edition).text,
        electrical: electrical::of_circuit(job, wires, circuit),
    }
}

/// What a job does not state, in words.
pub fn unknown_wires(unknown: &[Unknown]) -> String {
    let word = |what: &Unknown| match what {
        Unknown::KitWiring => words::wires::KIT_WITHOUT_WIRING.now(),
        Unknown::Inverter => words::wires::UNKNOWN_INVERTER.now(),
        Unknown::LowestTemperature => words::wires::UNKNOWN_LOWEST.now(),
        Unknown::HottestCell => words::wires::UNKNOWN_HOTTEST.now(),
    };
    let all: Vec<&str> = unknown.iter().map(word).collect();
    words::rules::the_job_does_not_say_2(&all.join(", "))
}

/// The circuits of a job as text, with where the job stands.
pub fn wires_text(job: &Resolved, plan: &Plan, strung: Option<&Stringing>) -> String {
    let wires = &plan.wires;
    let mut text = format!("{}\n", words::wires::PLANNING_AID.now());
    let mut line = |words: &str| {
        let _ = writeln!(text, "{words}");
    };
    if job.kit.wiring.is_none() {
        line(words::wires::KIT_WITHOUT_WIRING.now());
    } else if !wires.unknown.is_empty() {
        line(&unknown_wires(&wires.unknown));
    }
    if let Some(window) = &wires.window {
        line(&words::wires::window(
            &window.least.modules,
            &chalkcourse_telling::limited_by(window.least.by),
            &window.most.modules,
            &chalkcourse_telling::limited_by(window.most.by),
            &window.most.source.text,
        ));
    }
    if job.circuits.is_empty() {
        line(words::wires::NO_CIRCUIT_YET.now());
    }
    for circuit in &wires.circuits {
        line("");
        lines_of(job, circuit).iter().for_each(|words| line(words));
        electrical::lines(job, wires, circuit).iter().for_each(|words| line(words));
    }
    if let Some(found) = electrical::connection(job, wires) {
        line("");
        electrical::connection_lines(&found).iter().for_each(|words| line(words));
    }
    if !wires.loose.is_empty() {
        line(&format!("\n{}", words::wires::loose(wires.loose.len())));
    }
    if let Some(made) = strung {
        line("");
        for group in &made.groups {
            line(&claim_words(job, group));
        }
        for left in &made.left {
            line(&words::wires::left(left.modules.len(), &left.least, &left.most));
        }
    }
    line(&format!("\n{}", words::wires::edition(&job.wiring.edition.year())));
    line(words::wires::NOT_CHECKED.now());
    with_standing(job, plan, &text)
}

fn lines_of(job: &Resolved, circuit: &Wired) -> Vec<String> {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let volts = |volts: f64| format!("{volts:.1}");
    let mut lines = vec![words::wires::circuit_line(
        &circuit.name,
        &words::common::modules(circuit.devices.len()),
        &format_args!("{:.2}", circuit.watts / 1000.0),
    )];
    if let Some(highest) = circuit.volts.highest {
        lines.push(match circuit.volts.lowest {
            Some(lowest) => words::wires::volts_from_to(&volts(lowest), &volts(highest)),
            None => words::wires::volts_to(&volts(highest)),
        });
    }
    lines.push(words::wires::amps(
        &format_args!("{:.2}", circuit.currents.most),
        &format_args!("{:.2}", circuit.currents.continuous),
        &circuit.currents.section.of(job.wiring.edition).text,
    ));
    lines.push(match circuit.kind {
        Kind::AcDevices => words::wires::meter_ac(&volts(circuit.volts.shown)),
        Kind::Bare | Kind::DcDevices => words::wires::meter(&volts(circuit.volts.shown)),
    });
    lines.push(words::wires::order(&order_words(job, circuit)));
    if let Some(home) = circuit.home {
        let name = job.junction_box(home.to).map_or("", |junction| junction.name.as_str());
        let ways: Vec<String> = [home.first, home.last].into_iter().flatten().map(long).collect();
        lines.push(if ways.is_empty() {
            words::wires::home_unknown(&name)
        } else {
            words::wires::home(&name, &ways.join(", "))
        });
    }
    lines
}

/// Modules in the order of plugging, with the extension leads between them.
fn order_words(job: &Resolved, circuit: &Wired) -> String {
    let module = |at: &ModuleAt| {
        let block = job.block(at.block).map_or("", |block| block.name.as_str());
        format!("{block} {}.{}", at.cell.row + 1, at.cell.column + 1)
    };
    let leads = job.kit.wiring.as_ref().map(|wiring| wiring.leads.extensions.as_slice()).unwrap_or_default();
    let mut order = String::new();
    for (index, device) in circuit.devices.iter().enumerate() {
        if let Some(link) = index.checked_sub(1).and_then(|before| circuit.links.get(before)) {
            order += " - ";
            for lead in link.leads.iter().flatten().filter_map(|at| leads.get(*at)) {
                let _ = write!(order, "[{} {}] - ", lead.number, lead.length.show(job.units));
            }
        }
        order += &module(&device.at);
    }
    order
}

/// What is proved of a group, in a sentence.
pub fn claim_words(job: &Resolved, group: &Strung) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let circuits = if group.fewest_circuits {
        later::wires::fewest_circuits(group.circuits)
    } else {
        later::wires::circuits_found(group.circuits)
    };
    let leads = if group.leads == 0 {
        words::wires::NO_LEAD.into()
    } else if group.least_leads == group.leads {
        later::wires::fewest_leads(group.leads)
    } else {
        later::wires::leads_at_least(group.leads, &group.least_leads)
    };
    let cable = if group.way - group.least_way < 1e-3 {
        later::wires::least_cable(&long(group.way))
    } else {
        later::wires::cable_at_least(&long(group.way), &long(group.least_way))
    };
    words::wires::claim(&words::common::modules(group.modules), &circuits, &leads, &cable)
}
