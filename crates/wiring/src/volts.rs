//! Voltages of a module when it is cold and when it is hot.

use chalkcourse_job::{Electrical, KitWiring};

/// Least temperature of each band of NEC table 690.7(A) (2017), °C, with the factor of the open-circuit voltage of crystalline
/// silicon.
const COLD: [(f64, f64); 13] = [
    (20.0, 1.02),
    (15.0, 1.04),
    (10.0, 1.06),
    (5.0, 1.08),
    (0.0, 1.10),
    (-5.0, 1.12),
    (-10.0, 1.14),
    (-15.0, 1.16),
    (-20.0, 1.18),
    (-25.0, 1.20),
    (-30.0, 1.21),
    (-35.0, 1.23),
    (-40.0, 1.25),
];

/// The factor of the table for a temperature of the air, °C; `None` below −40 °C, where it ends.
pub fn cold_factor(celsius: f64) -> Option<f64> {
    if celsius >= 25.0 {
        return Some(1.0);
    }
    COLD.iter().find(|(from, _)| celsius >= *from).map(|(_, factor)| *factor)
}

/// A value at standard conditions, at another cell temperature, by its linear coefficient.
pub fn at_cell(standard: f64, percent_per_kelvin: f64, cell_celsius: f64) -> f64 {
    standard * (1.0 + percent_per_kelvin / 100.0 * (cell_celsius - 25.0))
}

/// The highest open-circuit voltage of a module: at dawn its cells are as cold as the air. `None` where the table ends.
pub fn highest(module: &Electrical, lowest_celsius: f64, by_table: bool) -> Option<f64> {
    if by_table {
        return Some(module.voc_volts * cold_factor(lowest_celsius)?);
    }
    Some(at_cell(module.voc_volts, module.voc_percent_per_kelvin, lowest_celsius))
}

/// The lowest voltage at which a module works: at the temperature of its cells, never that of the air.
pub fn lowest_working(module: &Electrical, wiring: &KitWiring, cell_celsius: f64) -> f64 {
    let percent = wiring.vmp_percent_per_kelvin.unwrap_or(module.power_percent_per_kelvin);
    at_cell(module.vmp_volts, percent, cell_celsius)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn module(voc: f64, percent: f64) -> Electrical {
        Electrical {
            voc_volts: voc,
            isc_amps: 10.0,
            vmp_volts: 40.0,
            imp_amps: 9.0,
            voc_percent_per_kelvin: percent,
            power_percent_per_kelvin: -0.4,
        }
    }

    /// NEC 690.7(A) (2017) by the module's coefficient: 49.5 V, −0.28 %/K, −5 °C: 53.66 V, 18 modules at 1,000 V.
    #[test]
    fn voc_at_minus_5() {
        let volts = highest(&module(49.5, -0.28), -5.0, false).unwrap();
        assert!((volts - 53.658).abs() < 5e-4, "{volts}");
        assert_eq!((1000.0 / volts).floor(), 18.0);
    }

    /// NEC table 690.7(A) (2017) at −10 °C: 1.14, 56.43 V, 10 modules at 600 V; by −0.27 %/K 54.18 V and 11.
    #[test]
    fn table_and_coefficient_at_minus_10() {
        let by_table = highest(&module(49.5, -0.27), -10.0, true).unwrap();
        assert!((by_table - 56.43).abs() < 1e-9, "{by_table}");
        assert_eq!((600.0 / by_table).floor(), 10.0);
        let by_module = highest(&module(49.5, -0.27), -10.0, false).unwrap();
        assert!((by_module - 54.178).abs() < 5e-4, "{by_module}");
        assert_eq!((600.0 / by_module).floor(), 11.0);
    }

    /// NEC table 690.7(A) (2017): 24 to 20 °C is one band, and so on in steps of 5 down to −40 °C.
    #[test]
    fn bands_of_the_table() {
        for (celsius, factor) in [
            (40.0, 1.0),
            (25.0, 1.0),
            (24.0, 1.02),
            (20.0, 1.02),
            (19.9, 1.04),
            (0.0, 1.10),
            (-0.1, 1.12),
            (-5.0, 1.12),
            (-6.0, 1.14),
            (-22.0, 1.20),
            (-25.0, 1.20),
            (-25.1, 1.21),
            (-30.1, 1.23),
            (-40.0, 1.25),
        ] {
            assert_eq!(cold_factor(celsius), Some(factor), "{celsius}");
        }
        assert_eq!(cold_factor(-40.1), None);
        assert_eq!(highest(&module(40.0, -0.3), -41.0, true), None);
        assert!(highest(&module(40.0, -0.3), -41.0, false).is_some());
    }

    /// Expected voltage of a string of 12 × 37.2 V, −0.26 %/K, closed form: 25 °C 446.4 V, 5 °C 469.6 V, 45 °C 423.2 V.
    #[test]
    fn a_string_of_12() {
        for (celsius, volts) in [(25.0, 446.4), (5.0, 469.613), (45.0, 423.187)] {
            assert!((12.0 * at_cell(37.2, -0.26, celsius) - volts).abs() < 5e-4, "{celsius}");
        }
    }
}
