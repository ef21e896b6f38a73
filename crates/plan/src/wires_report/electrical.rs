//! Conductors, overcurrent devices, voltage drop and point of connection, for other programs and as lines of text.

use chalkcourse_geometry::Length;
use chalkcourse_job::{Connection, Gauge, Insulation, Resolved};
use chalkcourse_wiring::amps::output_currents;
use chalkcourse_wiring::cite::{GROUNDING, NO_OVERCURRENT, OVERCURRENT, Section};
use chalkcourse_wiring::conductors::least_gauge;
use chalkcourse_wiring::connection as point;
use chalkcourse_wiring::runs::{self, Part, Protection, Stretch};
use chalkcourse_wiring::{Wired, Wires};
use chalkcourse_words as words;
use schemars::JsonSchema;
use serde::Serialize;

/// Conductors of a circuit, what protects and grounds it, and what it loses.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ElectricalReport {
    /// Its conductors, stretch by stretch, as far as job and kit state enough.
    pub conductors: Vec<StretchReport>,
    /// What protects it against too much current.
    pub overcurrent: Option<OvercurrentReport>,
    /// The thinnest grounding conductor that will do.
    pub least_grounding: Option<Gauge>,
    /// What it loses on its way; left out where the kit does not say how thick its leads are.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drop: Option<DropReport>,
}

/// A stretch of a circuit's way.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct StretchReport {
    /// Which.
    pub part: Part,
    /// How thick its conductors are.
    pub gauge: Gauge,
    /// What is around them.
    pub insulation: Insulation,
    /// How long it is, one way.
    pub length: Option<f64>,
    /// How warm it is around it, °C.
    pub celsius: f64,
    /// What they carry there after all corrections, amperes.
    pub carries_amps: f64,
    /// The thinnest that will do; `None` where 4 AWG is too thin.
    pub least: Option<Gauge>,
}

/// What protects a circuit against too much current.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OvercurrentReport {
    /// The device that it has, amperes; `None` for none.
    pub device_amps: Option<u32>,
    /// Whether it needs one.
    pub needed: bool,
    /// What others on its input could send into it, amperes.
    pub others_amps: f64,
    /// The least that a device may be rated for, amperes.
    pub least_amps: f64,
    /// By whose word.
    pub source: String,
}

/// What a circuit loses on its way.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct DropReport {
    /// In volts, at its rated current.
    pub volts: f64,
    /// As a share of the voltage at which it works.
    pub share: f64,
    /// Whether all of its way is in it, down to the inverter or the combined panel.
    pub whole: bool,
}

/// The output of all inverters or ac devices, and where it meets the house.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ConnectionReport {
    /// Rated output, amperes.
    pub output_amps: f64,
    /// At so many volts.
    pub output_volts: f64,
    /// The least standard breaker, amperes; `None` above 200 A.
    pub breaker_amps: Option<u32>,
    /// The thinnest conductor for it; left out where the highest temperature is not said, or 4 AWG is too thin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub conductor: Option<Gauge>,
    /// In which way it is connected; left out where nobody looked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub way: Option<Connection>,
    /// The largest output that fits, amperes.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub most_output_amps: Option<f64>,
    /// By whose word.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
}

/// Conductors of a circuit, what protects and grounds it, and what it loses.
pub(super) fn of_circuit(job: &Resolved, wires: &Wires, circuit: &Wired) -> ElectricalReport {
    ElectricalReport {
        conductors: runs::stretches(job, wires, circuit).iter().map(stretch_report).collect(),
        overcurrent: runs::protection(job, wires, circuit).map(|found| OvercurrentReport {
            device_amps: found.device,
            needed: found.needed,
            others_amps: found.others_amps,
            least_amps: found.least,
            source: protection_section(&found).of(job.wiring.edition).text,
        }),
        least_grounding: runs::grounding(job, circuit).map(|(_, gauge)| gauge),
        drop: runs::voltage_drop(job, circuit).map(|lost| DropReport {
            volts: lost.volts,
            share: lost.volts / lost.of,
            whole: lost.whole,
        }),
    }
}

fn stretch_report(stretch: &Stretch) -> StretchReport {
    StretchReport {
        part: stretch.part,
        gauge: stretch.gauge,
        insulation: stretch.insulation,
        length: stretch.metres,
        celsius: stretch.run.celsius,
        carries_amps: stretch.run.carried(stretch.gauge),
        least: least_gauge(&stretch.run),
    }
}

/// By which section a circuit has an overcurrent device, or none.
fn protection_section(found: &Protection) -> Section {
    if found.device.is_none() { NO_OVERCURRENT } else { OVERCURRENT }
}

/// The output of a job and where it meets the house; `None` where no inverter is chosen or no circuit drawn.
pub(super) fn connection(job: &Resolved, wires: &Wires) -> Option<ConnectionReport> {
    if wires.circuits.is_empty() {
        return None;
    }
    let (output_amps, output_volts) = point::output(job, wires)?;
    let service = job.wiring.service;
    let edition = job.wiring.edition;
    Some(ConnectionReport {
        output_amps,
        output_volts,
        breaker_amps: output_currents(output_amps).least_breaker(),
        conductor: point::output_gauge(job, output_amps),
        way: service.map(|service| service.connection),
        most_output_amps: service.and_then(|service| point::most_output_amps(&service, edition)),
        source: service.map(|service| point::section(service.connection).of(edition).text),
    })
}

/// Conductors, overcurrent device, grounding conductor and voltage drop of a circuit.
pub(super) fn lines(job: &Resolved, wires: &Wires, circuit: &Wired) -> Vec<String> {
    let edition = job.wiring.edition;
    let amps = |amps: f64| format!("{amps:.2}");
    let mut lines: Vec<String> = runs::stretches(job, wires, circuit)
        .iter()
        .map(|stretch| {
            let long = stretch.metres.map_or_else(
                || words::wires::LENGTH_UNKNOWN.now().to_owned(),
                |metres| Length::from_metres(metres).show(job.units),
            );
            words::wires::stretch_line(
                &chalkcourse_telling::stretch(stretch.part),
                &chalkcourse_telling::gauge(stretch.gauge),
                &stretch.insulation.mark(),
                &long,
                &amps(stretch.run.carried(stretch.gauge)),
                &format_args!("{:.0}", stretch.run.celsius),
            )
        })
        .collect();
    if let Some(found) = runs::protection(job, wires, circuit) {
        let source = protection_section(&found).of(edition).text;
        let others = amps(found.others_amps);
        lines.push(match found.device {
            Some(device) => words::wires::device_line(&device, &amps(found.least), &source),
            None if found.needed => words::wires::device_lacking(&others, &source),
            None => words::wires::no_device(&others, &source),
        });
    }
    if let Some((device, gauge)) = runs::grounding(job, circuit) {
        let (gauge, source) = (chalkcourse_telling::gauge(gauge), GROUNDING.of(edition).text);
        lines.push(words::wires::grounding_line(&gauge, &device, &source));
    }
    if let Some(lost) = runs::voltage_drop(job, circuit) {
        let (volts, share) = (amps(lost.volts), format!("{:.1} %", 100.0 * lost.volts / lost.of));
        lines.push(if lost.whole {
            words::wires::drop_line(&volts, &share)
        } else {
            words::wires::drop_line_part(&volts, &share)
        });
    }
    lines
}

/// The output, and the largest that fits where it meets the house.
pub(super) fn connection_lines(found: &ConnectionReport) -> Vec<String> {
    let kilowatts = |amps: f64| format!("{:.2}", amps * found.output_volts / 1000.0);
    let amps = |amps: f64| format!("{amps:.2}");
    let output = (amps(found.output_amps), kilowatts(found.output_amps));
    let mut lines = vec![words::wires::output_line(&output.0, &found.output_volts, &output.1)];
    if let Some(breaker) = found.breaker_amps {
        lines.push(match found.conductor {
            Some(gauge) => words::wires::output_breaker(&breaker, &chalkcourse_telling::gauge(gauge)),
            None => words::wires::output_breaker_alone(&breaker),
        });
    }
    lines.push(match (found.way, found.most_output_amps, &found.source) {
        (Some(way), Some(most), Some(source)) => words::wires::connection_line(
            &chalkcourse_telling::connection_way(way),
            source,
            &amps(most),
            &kilowatts(most),
        ),
        _ => words::wires::CONNECTION_UNKNOWN.now().to_owned(),
    });
    lines
}
