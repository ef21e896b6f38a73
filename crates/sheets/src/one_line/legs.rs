//! The conductors of a one-line diagram, a row of its table each.

use super::electric::{device, grounding, lost, output_of};
use crate::wire_words::long;
use chalkcourse_job::{BoxId, KitWiring, Leg, LiesIn, Resolved};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::Wired;
use chalkcourse_wiring::tables::grounding_gauge;
use chalkcourse_words as words;

/// Conductors between two stations.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Conductors {
    /// From where to where.
    pub(super) between: String,
    /// Size, count and insulation.
    pub(super) conductors: String,
    /// The grounding conductor.
    pub(super) ground: String,
    /// In what they lie.
    pub(super) lies: String,
    /// How long they are, one way.
    pub(super) length: String,
    /// The largest current, and that by which they are chosen.
    pub(super) amps: String,
    /// The overcurrent device.
    pub(super) device: String,
    /// What they lose.
    pub(super) drop: String,
}

pub(super) fn not_stated() -> String {
    words::diagram::NOT_STATED.now().to_owned()
}

/// Metres as told: the longest of several.
fn up_to(job: &Resolved, metres: impl Iterator<Item = f64>, several: bool) -> String {
    match metres.reduce(f64::max) {
        None => not_stated(),
        Some(metres) if several => words::oneline::up_to(&long(job, metres)),
        Some(metres) => long(job, metres),
    }
}

fn amps_words(circuits: &[&Wired]) -> String {
    let most = circuits.iter().map(|circuit| circuit.currents.most).fold(0.0, f64::max);
    let continuous = circuits.iter().map(|circuit| circuit.currents.continuous).fold(0.0, f64::max);
    if circuits.is_empty() { not_stated() } else { format!("{most:.2} / {continuous:.2}") }
}

fn device_words(job: &Resolved, circuits: &[&Wired]) -> String {
    match circuits.first().and_then(|circuit| device(job, circuit)) {
        Some(amps) => format!("{amps} A"),
        None if circuits.is_empty() => not_stated(),
        None => words::oneline::NONE.now().to_owned(),
    }
}

pub(super) fn home_run(job: &Resolved, circuits: &[&Wired], between: &str) -> Conductors {
    let wiring = job.kit.wiring.as_ref();
    let conductors = wiring.and_then(|wiring| wiring.home_run).map_or_else(not_stated, |choice| {
        format!("{} × {} AWG {}", 2 * circuits.len(), choice.gauge.awg(), choice.insulation.mark())
    });
    let ground = wiring
        .and_then(|wiring| wiring.grounding)
        .map_or_else(not_stated, |gauge| words::oneline::bare_copper(&gauge.awg()));
    let homes = circuits.iter().filter_map(|circuit| circuit.home);
    let ways = homes.flat_map(|home| [home.first, home.last]).flatten();
    Conductors {
        between: between.to_owned(),
        conductors,
        ground,
        lies: words::oneline::FREE_AIR.now().to_owned(),
        length: up_to(job, ways, circuits.len() > 1),
        amps: amps_words(circuits),
        device: device_words(job, circuits),
        drop: words::oneline::SEE_BELOW.now().to_owned(),
    }
}

pub(super) fn run_down(job: &Resolved, to: Option<BoxId>, circuits: &[&Wired], between: &str) -> Conductors {
    let wiring = job.kit.wiring.as_ref();
    let conductors = wiring.and_then(|wiring| wiring.run_down).map_or_else(not_stated, |choice| {
        format!("{} × {} AWG {}", 2 * circuits.len(), choice.gauge.awg(), choice.insulation.mark())
    });
    let ground = circuits
        .first()
        .and_then(|circuit| grounding(job, circuit))
        .map_or_else(not_stated, |awg| words::oneline::at_least(&awg));
    let legs =
        to.and_then(|to| job.junction_box(to)).map(|junction| junction.legs.as_slice()).unwrap_or_default();
    let length: f64 = legs.iter().map(|leg| leg.length.metres()).sum();
    let drops = circuits.iter().filter_map(|circuit| lost(job, circuit));
    let worst = drops.max_by(|a, b| (a.0 / a.1).total_cmp(&(b.0 / b.1)));
    Conductors {
        between: between.to_owned(),
        conductors,
        ground,
        lies: if legs.is_empty() { not_stated() } else { legs_words(job, wiring, legs) },
        length: up_to(job, (!legs.is_empty()).then_some(length).into_iter(), false),
        amps: amps_words(circuits),
        device: device_words(job, circuits),
        drop: worst
            .map_or_else(not_stated, |(volts, of)| format!("{volts:.1} V, {:.1} %", 100.0 * volts / of)),
    }
}

/// In what the legs lie: "EMT 3/4 in; roof 9' 10\", attic 13' 1 1/2\"".
fn legs_words(job: &Resolved, wiring: Option<&KitWiring>, legs: &[Leg]) -> String {
    let raceway = wiring.and_then(|wiring| wiring.raceway);
    let raceway = raceway.map_or_else(not_stated, |it| format!("{} {}", it.kind.mark(), it.size.mark()));
    let each = legs.iter().map(|leg| {
        let place = match leg.lies {
            LiesIn::FreeAir => words::oneline::LEG_FREE_AIR,
            LiesIn::RoofRaceway(_) => words::oneline::LEG_ROOF,
            LiesIn::Attic => words::oneline::LEG_ATTIC,
            LiesIn::Wall => words::oneline::LEG_WALL,
        };
        format!("{} {}", place.now(), leg.length.show(job.units))
    });
    format!("{raceway}: {}", each.collect::<Vec<_>>().join(", "))
}

pub(super) fn output_conductors(job: &Resolved, plan: &Plan, between: &str) -> Conductors {
    let known = output_of(job, plan);
    let (currents, breaker) = (known.as_ref().map(|it| it.0), known.as_ref().and_then(|it| it.1));
    let gauge = known.and_then(|(_, _, gauge)| gauge);
    Conductors {
        between: between.to_owned(),
        conductors: gauge.map_or_else(not_stated, |awg| format!("3 × {}", words::oneline::at_least(&awg))),
        ground: breaker
            .and_then(grounding_gauge)
            .map(|gauge| gauge.awg())
            .map_or_else(not_stated, |awg| words::oneline::at_least(&awg)),
        lies: not_stated(),
        length: not_stated(),
        amps: currents.map_or_else(not_stated, |it| format!("{:.2} / {:.2}", it.most, it.continuous)),
        device: breaker.map_or_else(not_stated, |amps| format!("{amps} A")),
        drop: not_stated(),
    }
}
