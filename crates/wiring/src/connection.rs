//! Where the output meets the house: what still fits on a panel.

use crate::amps::output_currents;
use crate::cite::{CENTRE_FED, FEEDER, OPPOSITE_ENDS, SUM_OF_BREAKERS, SUPPLY_SIDE, Section, WHOLE_BUS};
use crate::conductors::{Run, least_gauge};
use crate::tables::{Rated, standard_within};
use crate::{Kind, Wires};
use chalkcourse_job::{CodeEdition, Connection, Gauge, ModuleDevice, Resolved, Service};

/// By which section a way of connecting is allowed.
pub fn section(way: Connection) -> Section {
    match way {
        Connection::WholeBus => WHOLE_BUS,
        Connection::OppositeEnds => OPPOSITE_ENDS,
        Connection::SumOfBreakers => SUM_OF_BREAKERS,
        Connection::CentreFed => CENTRE_FED,
        Connection::Feeder => FEEDER,
        Connection::SupplySide => SUPPLY_SIDE,
    }
}

/// The largest rated output current of inverters that fits, in amperes; 0 where none does. `None` where the other breakers would have to
/// be known.
pub fn most_output_amps(service: &Service, edition: CodeEdition) -> Option<f64> {
    let Service { bus_amps: bus, main_breaker_amps: main, .. } = *service;
    let most = match service.connection {
        Connection::WholeBus | Connection::Feeder => (bus - main) / 1.25,
        Connection::OppositeEnds | Connection::CentreFed => (1.2 * bus - main) / 1.25,
        // The breaker of the output is one of them, and has a standard rating.
        Connection::SumOfBreakers => standard_within(bus - service.other_breakers_amps?)
            .map_or(0.0, |breaker| f64::from(breaker) / 1.25),
        // In 2017 the overcurrent device, from 2020 the output itself is held against the service.
        Connection::SupplySide if edition == CodeEdition::Nec2017 => main / 1.25,
        Connection::SupplySide => main,
    };
    Some(most.max(0.0))
}

/// Rated output of all inverters of a job, or of all ac devices in its circuits: amperes and volts. `None` where the job does not say
/// which inverter it has.
pub fn output(job: &Resolved, wires: &Wires) -> Option<(f64, f64)> {
    let wiring = job.kit.wiring.as_ref()?;
    if let ModuleDevice::Ac(device) = &wiring.device {
        let branches = wires.circuits.iter().filter(|circuit| circuit.kind == Kind::AcDevices);
        return Some((branches.map(|branch| branch.currents.most).sum(), device.output_volts));
    }
    let inverters: Vec<_> =
        job.wiring.inverters.iter().filter_map(|number| wiring.inverter(number)).collect();
    let volts = inverters.first()?.output_volts;
    Some((inverters.iter().map(|inverter| inverter.output_amps).sum(), volts))
}

/// The thinnest conductor of 90 °C for an output with its standard breaker, on terminals as the kit says, else of 60 °C. `None` where
/// the highest temperature is not said, or 4 AWG is too thin.
pub fn output_gauge(job: &Resolved, amps: f64) -> Option<Gauge> {
    let currents = output_currents(amps);
    let terminals = job
        .kit
        .wiring
        .as_ref()
        .and_then(|wiring| wiring.run_down)
        .map_or(60, |choice| choice.terminals_celsius);
    least_gauge(&Run {
        most_amps: currents.most,
        continuous_amps: currents.continuous,
        breaker: Some(currents.least_breaker()?),
        celsius: job.wiring.highest_celsius?,
        together: Some(2),
        terminals: Rated::of_terminals(terminals),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{circuit, gable, kit};
    use chalkcourse_layout::Layout;
    use std::sync::Arc;

    fn most(connection: Connection, main: f64, others: Option<f64>) -> Option<f64> {
        let service =
            Service { bus_amps: 200.0, main_breaker_amps: main, other_breakers_amps: others, connection };
        most_output_amps(&service, CodeEdition::Nec2017)
    }

    /// NEC 705.12(B)(2)(3)(b) (2017): 1.25 × I + 200 A ≤ 1.2 × 200 A: 32 A, 7.68 kW at 240 V. Nothing fits by 100 %.
    #[test]
    fn a_bus_of_200_amps() {
        let near = |found: Option<f64>, amps: f64| assert!((found.unwrap() - amps).abs() < 1e-9, "{found:?}");
        near(most(Connection::OppositeEnds, 200.0, None), 32.0);
        near(most(Connection::OppositeEnds, 200.0, None).map(|amps| amps * 240.0 / 1000.0), 7.68);
        near(most(Connection::CentreFed, 200.0, None), 32.0);
        near(most(Connection::WholeBus, 200.0, None), 0.0);
        // A smaller main makes room for more.
        near(most(Connection::OppositeEnds, 150.0, None), 72.0);
        near(most(Connection::WholeBus, 150.0, None), 40.0);
        near(most(Connection::Feeder, 150.0, None), 40.0);
        // 47 A of room hold a breaker of 45 A, 36 A.
        near(most(Connection::SumOfBreakers, 200.0, Some(150.0)), 40.0);
        near(most(Connection::SumOfBreakers, 200.0, Some(153.0)), 36.0);
        near(most(Connection::SumOfBreakers, 200.0, Some(300.0)), 0.0);
        assert_eq!(most(Connection::SumOfBreakers, 200.0, None), None);
        // 705.12(A), 2017, from memory: the overcurrent device is no larger than the service; 705.11, 2020: the output.
        near(most(Connection::SupplySide, 200.0, None), 160.0);
        let service = Service {
            bus_amps: 200.0,
            main_breaker_amps: 200.0,
            other_breakers_amps: None,
            connection: Connection::SupplySide,
        };
        near(most_output_amps(&service, CodeEdition::Nec2020), 200.0);
    }

    /// One inverter of 32 A at 240 V, two of them, and six ac devices of 1.21 A.
    #[test]
    fn outputs() {
        let mut job = gable();
        job.circuits = vec![circuit(20, &[(0, 0), (0, 1), (0, 2), (1, 2), (1, 1), (1, 0)])];
        let of = |job: &Resolved| output(job, &Wires::of(job, &Layout::of(job)));
        assert_eq!(of(&job), Some((32.0, 240.0)));
        Arc::make_mut(&mut job.wiring).inverters.push("FH-181".into());
        assert_eq!(of(&job), Some((64.0, 240.0)));
        Arc::make_mut(&mut job.wiring).inverters.clear();
        assert_eq!(of(&job), None);
        job.kit = Arc::new(kit(1));
        // 32 A: 40 A, 8 AWG.
        assert_eq!(output_gauge(&job, 32.0), Some(Gauge::Awg8));
        let (amps, volts) = of(&job).unwrap();
        assert!((amps - 7.26).abs() < 1e-9 && volts == 240.0);
    }
}
