//! Rules about circuits. A planning aid: electrical design and work are for licensed people where the law says so.

pub(crate) mod apart;
pub(crate) mod arc_fault;
pub(crate) mod bonding;
pub(crate) mod box_fill;
pub(crate) mod box_place;
pub(crate) mod conductors;
pub(crate) mod connection;
pub(crate) mod device;
pub(crate) mod drop;
pub(crate) mod faces;
pub(crate) mod ground_fault;
pub(crate) mod grounding;
pub(crate) mod input;
pub(crate) mod inside;
pub(crate) mod leads;
pub(crate) mod loose;
pub(crate) mod overcurrent;
pub(crate) mod parallel;
pub(crate) mod plugs;
pub(crate) mod raceway_fill;
pub(crate) mod readings;
pub(crate) mod shutdown;
pub(crate) mod size;
pub(crate) mod start;
pub(crate) mod voltage;

use crate::finding::{Finding, Location, Severity};
use crate::{Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::{Inverter, JunctionBox, KitWiring, Resolved, Subject};
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

/// The same, and rules that are for dc circuits alone.
pub(crate) fn not_dc(job: &Resolved) -> Option<WhyNot> {
    let kind = job.kit.wiring.as_ref().map(Kind::of);
    not_wired(job).or_else(|| (kind == Some(Kind::AcDevices)).then_some(WhyNot::BranchesInstead))
}

/// The same, and rules about boxes that circuits are led to.
pub(crate) fn no_box(job: &Resolved) -> Option<WhyNot> {
    not_wired(job).or_else(|| boxes(job).next().is_none().then_some(WhyNot::NoBox))
}

/// The junction boxes that circuits are led to.
pub(crate) fn boxes(job: &Resolved) -> impl Iterator<Item = &JunctionBox> {
    let led_to =
        move |junction: &&JunctionBox| job.circuits.iter().any(|circuit| circuit.to == Some(junction.id));
    job.boxes.iter().filter(led_to)
}

/// Whether a kit says something of its wires.
type Says = fn(&KitWiring) -> bool;

/// What the kit does not say of its wires.
pub(crate) fn kit_silent<const N: usize>(job: &Resolved, asked: [(KitGap, Says); N]) -> Option<WhyNot> {
    let wiring = job.kit.wiring.as_ref()?;
    let gaps: Vec<KitGap> = asked.into_iter().filter(|(_, says)| !says(wiring)).map(|(gap, _)| gap).collect();
    (!gaps.is_empty()).then_some(WhyNot::KitSilent(gaps))
}

/// The kit does not say something of an inverter that the job has.
pub(crate) fn inverter_silent(job: &Resolved, gap: KitGap, says: fn(&Inverter) -> bool) -> Option<WhyNot> {
    let wiring = job.kit.wiring.as_ref()?;
    let mut chosen = job.wiring.inverters.iter().filter_map(|number| wiring.inverter(number));
    chosen.any(|inverter| !says(inverter)).then(|| WhyNot::KitSilent(vec![gap]))
}

/// The same, and rules that need what the job may not state.
pub(crate) fn not_stated(job: &Resolved, asked: &[Unknown]) -> Option<WhyNot> {
    let unknown = |what: &Unknown| match what {
        Unknown::LowestTemperature => job.wiring.lowest_celsius.is_none(),
        Unknown::HottestCell => job.wiring.hottest_cell_celsius.is_none(),
        Unknown::Inverter => job.wiring.inverters.is_empty(),
        Unknown::HighestTemperature => job.wiring.highest_celsius.is_none(),
        Unknown::AtticTemperature => job.wiring.attic_celsius.is_none(),
        Unknown::Service => job.wiring.service.is_none(),
        Unknown::WayDown => boxes(job).any(|junction| junction.legs.is_empty()),
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

/// A finding about a junction box, at its place.
pub(crate) fn of_box(
    rule: &'static str,
    severity: Severity,
    layout: &Layout,
    junction: &JunctionBox,
    facts: Facts,
) -> Finding {
    let face = chalkcourse_wiring::face_of_box(&layout.roof, junction);
    Finding {
        place: Location {
            face: face.and_then(|(face, _)| layout.faces.get(face)).map(|face| face.id),
            shape: vec![junction.at],
            ..Location::default()
        },
        ..Finding::of(rule, severity, Subject::Box(junction.id), facts)
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
