//! Where the inverter's output meets the house: what still fits on a panel.

use crate::cite::{OPPOSITE_ENDS, SUM_OF_BREAKERS, SUPPLY_SIDE, Section, WHOLE_BUS};
use schemars::JsonSchema;
use serde::Serialize;

/// A way to connect to the house.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Connection {
    /// On the load side, and the bus holds main and output together: 100 %.
    WholeBus,
    /// On the load side at the end opposite to the main: 120 %.
    OppositeEnds,
    /// On the load side, and all breakers but the main add up to no more than the bus.
    SumOfBreakers,
    /// Ahead of the main.
    SupplySide,
}

/// A panel as it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Panel {
    /// Rating of its bus, in amperes.
    pub bus: f64,
    /// Its main breaker, in amperes.
    pub main: f64,
    /// Sum of all other breakers, in amperes.
    pub others: f64,
    /// Rating of the service, in amperes.
    pub service: f64,
}

impl Connection {
    /// All ways.
    pub const ALL: [Self; 4] = [Self::WholeBus, Self::OppositeEnds, Self::SumOfBreakers, Self::SupplySide];

    /// By which section.
    pub fn section(self) -> Section {
        match self {
            Self::WholeBus => WHOLE_BUS,
            Self::OppositeEnds => OPPOSITE_ENDS,
            Self::SumOfBreakers => SUM_OF_BREAKERS,
            Self::SupplySide => SUPPLY_SIDE,
        }
    }

    /// The largest rated output current of inverters that fits, in amperes; 0 where none does.
    pub fn most_output_amps(self, panel: &Panel) -> f64 {
        let most = match self {
            Self::WholeBus => (panel.bus - panel.main) / 1.25,
            Self::OppositeEnds => (1.2 * panel.bus - panel.main) / 1.25,
            // The breaker of the output is one of them.
            Self::SumOfBreakers => (panel.bus - panel.others) / 1.25,
            Self::SupplySide => panel.service,
        };
        most.max(0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NEC 705.12(B)(2)(3)(b) (2017): 1.25 × I + 200 A ≤ 1.2 × 200 A: 32 A, 7.68 kW at 240 V. Nothing fits by 100 %.
    #[test]
    fn a_bus_of_200_amps() {
        let panel = Panel { bus: 200.0, main: 200.0, others: 150.0, service: 200.0 };
        let most = Connection::ALL.map(|way| way.most_output_amps(&panel));
        assert_eq!(most[0], 0.0);
        assert!((most[1] - 32.0).abs() < 1e-9 && (most[1] * 240.0 - 7680.0).abs() < 1e-6);
        assert_eq!(most[2..], [40.0, 200.0]);
        // A smaller main makes room for more.
        let smaller = Panel { main: 150.0, ..panel };
        assert!((Connection::OppositeEnds.most_output_amps(&smaller) - 72.0).abs() < 1e-9);
        assert!((Connection::WholeBus.most_output_amps(&smaller) - 40.0).abs() < 1e-9);
        assert_eq!(Connection::SumOfBreakers.most_output_amps(&Panel { others: 300.0, ..panel }), 0.0);
    }
}
