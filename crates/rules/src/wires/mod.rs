//! Rules about circuits. A planning aid: electrical design and work are for licensed people where the law says so.

pub(crate) mod device;
pub(crate) mod faces;
pub(crate) mod input;
pub(crate) mod leads;
pub(crate) mod loose;
pub(crate) mod parallel;
pub(crate) mod size;
pub(crate) mod start;
pub(crate) mod voltage;

use crate::finding::{Finding, Location, Severity};
use crate::{Facts, Unknown, WhyNot};
use chalkcourse_job::{Resolved, Subject};
use chalkcourse_layout::Layout;
use chalkcourse_wiring::{Kind, Wired};

/// Why nothing about circuits is checked: the kit says nothing of wires, or none is drawn.
pub(crate) fn not_wired(job: &Resolved) -> Option<WhyNot> {
    if job.kit.wiring.is_none() {
        return Some(WhyNot::KitWithoutWiring);
    }
    job.circuits.is_empty().then_some(WhyNot::NotWired)
}

/// The same, and rules that are for strings of bare modules alone.
pub(crate) fn not_bare(job: &Resolved) -> Option<WhyNot> {
    let kind = job.kit.wiring.as_ref().map(Kind::of);
    not_wired(job).or_else(|| (kind != Some(Kind::Bare)).then_some(WhyNot::WithDevices))
}

/// The same, and rules that need what the job may not state.
pub(crate) fn not_stated(job: &Resolved, asked: &[Unknown]) -> Option<WhyNot> {
    let unknown = |what: &Unknown| match what {
        Unknown::LowestTemperature => job.wiring.lowest_celsius.is_none(),
        Unknown::HottestCell => job.wiring.hottest_cell_celsius.is_none(),
        Unknown::Inverter => job.wiring.inverters.is_empty(),
        _ => false,
    };
    let missing: Vec<Unknown> = asked.iter().filter(|what| unknown(what)).copied().collect();
    (!missing.is_empty()).then_some(WhyNot::NotKnown(missing))
}

/// The number of the inverter that a circuit is led to.
pub(crate) fn led_to<'j>(job: &'j Resolved, circuit: &Wired) -> Option<&'j String> {
    circuit.input.and_then(|input| job.wiring.inverters.get(input.inverter as usize))
}

/// A finding about a circuit as a whole, with all its modules.
pub(crate) fn of_circuit(
    rule: &'static str,
    severity: Severity,
    layout: &Layout,
    circuit: &Wired,
    facts: Facts,
) -> Finding {
    Finding {
        place: place(layout, circuit, 0..circuit.devices.len()),
        ..Finding::of(rule, severity, Subject::Circuit(circuit.id), facts)
    }
}

/// Where some modules of a circuit are: of one block with their cells, else as a line from one to the next.
pub(crate) fn place(layout: &Layout, circuit: &Wired, which: std::ops::Range<usize>) -> Location {
    let devices = circuit.devices.get(which).unwrap_or_default();
    let first = devices.first();
    let in_one = first.filter(|first| devices.iter().all(|device| device.at.block == first.at.block));
    let plan = |device: &chalkcourse_wiring::Device| {
        layout.roof.faces.get(device.face).map(|face| face.plane.to_plan(device.point))
    };
    Location {
        face: first.and_then(|device| layout.faces.get(device.face)).map(|face| face.id),
        block: in_one.map(|first| first.at.block),
        cells: if in_one.is_some() {
            devices.iter().map(|device| device.at.cell).collect()
        } else {
            Vec::new()
        },
        circuit: Some(circuit.id),
        shape: if in_one.is_some() { Vec::new() } else { devices.iter().filter_map(plan).collect() },
        ..Location::default()
    }
}
