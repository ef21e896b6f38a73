//! What the one-line diagram works out of a job's circuits: devices, grounding conductors, what is lost on the way.

use crate::stickers::output;
use chalkcourse_job::{Connection, Inverter, KitWiring, ModuleDevice, Resolved, Service};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::conductors::{self, Gauge, grounding_gauge, standard_rating};
use chalkcourse_wiring::connection::{self, Panel};
use chalkcourse_wiring::{Joined, Kind, Wired, amps};

/// The inverter that a circuit is led to; the job's first where it is led to none.
pub(super) fn inverter_of<'j>(job: &'j Resolved, circuit: &Wired) -> Option<&'j Inverter> {
    let wiring = job.kit.wiring.as_ref()?;
    let led_to = circuit.input.and_then(|input| job.wiring.inverters.get(input.inverter as usize));
    led_to.or(job.wiring.inverters.first()).and_then(|number| wiring.inverter(number))
}

/// The overcurrent device in a circuit, in amperes.
pub(super) fn device(job: &Resolved, circuit: &Wired) -> Option<f64> {
    match &job.kit.wiring.as_ref()?.device {
        ModuleDevice::Ac(device) => Some(device.branch_breaker_amps),
        ModuleDevice::None | ModuleDevice::Dc(_) => inverter_of(job, circuit)?.string_fuse_amps,
    }
}

/// The thinnest grounding conductor of a circuit, AWG: by its device, or the one that it would have (690.45).
pub(super) fn grounding(job: &Resolved, circuit: &Wired) -> Option<u32> {
    let own = device(job, circuit).and_then(standard_rating);
    grounding_gauge(own.or_else(|| circuit.currents.least_breaker())?).map(Gauge::awg)
}

/// What a circuit loses at its rated current down to the inverter or the combined panel: volts, and of how many. `None` where the job
/// does not state all of its way.
pub(super) fn lost(job: &Resolved, circuit: &Wired) -> Option<(f64, f64)> {
    let wiring = job.kit.wiring.as_ref()?;
    let (amps, of) = working(job, wiring, circuit)?;
    let (leads, home_run, down) =
        (size(wiring.leads.gauge?)?, size(wiring.home_run?.gauge)?, size(wiring.run_down?.gauge)?);
    let home = circuit.home?;
    let legs = &job.junction_box(home.to)?.legs;
    let legs: f64 = legs.iter().map(|leg| leg.length.metres()).sum();
    if legs <= 0.0 {
        return None;
    }
    let one_way = |gauge, metres: f64| conductors::drop_volts(gauge, metres, amps) / 2.0;
    let sections: Vec<f64> = circuit.links.iter().map(|link| copper(wiring, link)).collect();
    let array = match circuit.kind {
        Kind::AcDevices => {
            let each = amps / circuit.devices.len().max(1) as f64;
            let trunk = conductors::trunk_drop_volts(leads, &sections, 0.0, each);
            trunk + conductors::drop_volts(home_run, home.last?, amps)
        }
        Kind::Bare | Kind::DcDevices => {
            one_way(leads, sections.iter().sum()) + one_way(home_run, home.first? + home.last?)
        }
    };
    Some((array + conductors::drop_volts(down, legs, amps), of))
}

/// Amperes and volts at which a circuit works.
fn working(job: &Resolved, wiring: &KitWiring, circuit: &Wired) -> Option<(f64, f64)> {
    let (module, count) = (&job.kit.module.electrical, circuit.devices.len() as f64);
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

/// Conductor between two modules, in metres: both their leads and the extension leads between.
fn copper(wiring: &KitWiring, link: &Joined) -> f64 {
    (wiring.leads.positive + wiring.leads.negative + link.lengths).metres()
}

fn size(gauge: chalkcourse_job::Gauge) -> Option<Gauge> {
    Gauge::ALL.into_iter().find(|own| own.awg() == gauge.awg())
}

/// The currents of the whole output, its breaker, and the thinnest conductor that carries it inside the house: 30 °C, one circuit in its
/// raceway, terminals of 75 °C.
pub(super) fn output_of(job: &Resolved, plan: &Plan) -> Option<(amps::Currents, Option<u32>, Option<u32>)> {
    let (_, amps) = output(job, plan)?;
    let currents = amps::output_currents(amps);
    let breaker = currents.least_breaker();
    let run = conductors::Run {
        most_amps: currents.most,
        continuous_amps: currents.continuous,
        breaker,
        celsius: 30.0,
        together: 3,
    };
    Some((currents, breaker, conductors::least_gauge(&run).map(Gauge::awg)))
}

/// The section that allows a way of connecting, and the largest output that fits, in amperes.
pub(super) fn connection(job: &Resolved, service: &Service) -> Option<(Option<String>, f64)> {
    let way = match service.connection {
        Connection::OppositeEnds | Connection::CentreFed => connection::Connection::OppositeEnds,
        Connection::WholeBus | Connection::Feeder => connection::Connection::WholeBus,
        Connection::SumOfBreakers => connection::Connection::SumOfBreakers,
        Connection::SupplySide => connection::Connection::SupplySide,
    };
    // Those two are reckoned like the others and stand in sections of their own.
    let cited = !matches!(service.connection, Connection::CentreFed | Connection::Feeder);
    let others = match service.connection {
        Connection::SumOfBreakers => service.other_breakers_amps?,
        _ => 0.0,
    };
    let main = service.main_breaker_amps;
    let panel = Panel { bus: service.bus_amps, main, others, service: main };
    let section = cited.then(|| way.section().of(job.wiring.edition).text);
    Some((section, way.most_output_amps(&panel)))
}
