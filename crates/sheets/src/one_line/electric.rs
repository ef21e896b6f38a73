//! What the one-line diagram asks of crate `wiring`: grounding conductors, what is lost on the way, the output and its connection.

use chalkcourse_job::{Resolved, Service};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::{Wired, amps, connection, runs};

pub(super) use chalkcourse_wiring::runs::{device, inverter_of};

/// The thinnest grounding conductor of a circuit, AWG.
pub(super) fn grounding(job: &Resolved, circuit: &Wired) -> Option<u32> {
    runs::grounding(job, circuit).map(|(_, gauge)| gauge.awg())
}

/// What a circuit loses at its rated current down to the inverter or the combined panel: volts, and of how many. `None` where the job
/// does not state all of its way.
pub(super) fn lost(job: &Resolved, circuit: &Wired) -> Option<(f64, f64)> {
    runs::voltage_drop(job, circuit).filter(|drop| drop.whole).map(|drop| (drop.volts, drop.of))
}

/// The currents of the whole output, its breaker, and the thinnest conductor for it, AWG, as far as the job says how warm it is.
pub(super) fn output_of(job: &Resolved, plan: &Plan) -> Option<(amps::Currents, Option<u32>, Option<u32>)> {
    let (amps, _) = connection::output(job, &plan.wires)?;
    let currents = amps::output_currents(amps);
    let gauge = connection::output_gauge(job, amps).map(|gauge| gauge.awg());
    Some((currents, currents.least_breaker(), gauge))
}

/// The section that allows a way of connecting, and the largest output that fits, in amperes.
pub(super) fn connection(job: &Resolved, service: &Service) -> Option<(String, f64)> {
    let edition = job.wiring.edition;
    let most = connection::most_output_amps(service, edition)?;
    Some((connection::section(service.connection).of(edition).text, most))
}
