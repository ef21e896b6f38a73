//! Copper conductors of a run: how thick they must be where it is warm or crowded, and what they lose.

use crate::tables::{
    Rated, ambient_factor, ampacity, bundle_factor, free_air_ampacity, largest_breaker, ohms_per_1000_ft,
    standard_rating,
};
use chalkcourse_job::Gauge;

/// What a run of conductors has to carry, and where it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// The largest current, in amperes; the conductor carries it after all corrections.
    pub most_amps: f64,
    /// The same again by 1.25 where it flows for hours; the terminals carry it before any correction.
    pub continuous_amps: f64,
    /// The overcurrent device, in amperes, where there is one.
    pub breaker: Option<u32>,
    /// The temperature around it, °C, what a roof adds included.
    pub celsius: f64,
    /// Conductors in the raceway that carry current; `None` for one alone in free air.
    pub together: Option<u32>,
    /// How warm its terminals may become.
    pub terminals: Rated,
}

impl Run {
    /// What a conductor of 90 °C carries there after all corrections, in amperes.
    pub fn carried(&self, gauge: Gauge) -> f64 {
        let (amps, bundle) = match self.together {
            Some(together) => (ampacity(gauge, Rated::C90), bundle_factor(together)),
            None => (free_air_ampacity(gauge), 1.0),
        };
        amps * ambient_factor(Rated::C90, self.celsius) * bundle
    }

    /// What of a conductor's demands a size does not meet; `None` where it does: the larger of both demands of NEC 690.8(B) (2017),
    /// not both at once; and protected by its overcurrent device (240.4(D), and 240.4(B), from memory: the next standard rating above
    /// what it carries will do).
    pub fn falls_short(&self, gauge: Gauge) -> Option<Short> {
        let (carried, at_terminals) = (self.carried(gauge), ampacity(gauge, self.terminals));
        if carried < self.most_amps - 1e-9 {
            return Some(Short::Carried(carried));
        }
        if at_terminals < self.continuous_amps - 1e-9 {
            return Some(Short::Terminals(at_terminals));
        }
        let breaker = self.breaker?;
        let most = standard_rating(carried.min(at_terminals)).unwrap_or(u32::MAX);
        let most = largest_breaker(gauge).map_or(most, |small| small.min(most));
        (breaker > most).then_some(Short::Protected(most))
    }
}

/// In what a conductor falls short.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Short {
    /// It carries no more than this after all corrections, in amperes.
    Carried(f64),
    /// Its terminals take no more than this, in amperes.
    Terminals(f64),
    /// Its overcurrent device may not be larger than this, in amperes.
    Protected(u32),
}

/// The thinnest conductor of 90 °C that carries a run; `None` where 4 AWG is too thin.
pub fn least_gauge(run: &Run) -> Option<Gauge> {
    Gauge::ALL.into_iter().find(|gauge| run.falls_short(*gauge).is_none())
}

/// What one conductor loses, in volts, length in metres.
pub fn drop_one_way(gauge: Gauge, metres: f64, amps: f64) -> f64 {
    metres / 0.3048 / 1000.0 * amps * ohms_per_1000_ft(gauge)
}

/// What two conductors of one length lose together, in volts: 2 · L · I · R, length in metres.
pub fn drop_volts(gauge: Gauge, metres: f64, amps: f64) -> f64 {
    2.0 * drop_one_way(gauge, metres, amps)
}

/// What a trunk with one device after the other loses, in volts, section by section: the first carries one device's current, the last
/// all of them.
pub fn trunk_drop_volts(gauge: Gauge, sections: &[f64], amps: f64) -> f64 {
    let each = (1_u32..).zip(sections);
    each.map(|(devices, metres)| drop_volts(gauge, *metres, f64::from(devices) * amps)).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(a: f64, b: f64, by: f64) -> bool {
        (a - b).abs() < by
    }

    /// 150 ft of 14 AWG at 8.23 A, NEC chapter 9 table 8: 2 × 150 × 8.23 × 3.14 / 1000 = 7.75 V.
    #[test]
    fn drop_of_a_string() {
        assert!(near(drop_volts(Gauge::Awg14, 150.0 * 0.3048, 8.23), 7.75, 0.005));
    }

    /// 13 devices of 1.21 A on 12 AWG, 5.66 ft apart: 2 × 5.66 × 1.98 / 1000 × 1.21 × (1 + … + 13) = 2.47 V with the last section to the
    /// box as long as the others; all current over the whole length would make 4.58 V.
    #[test]
    fn drop_of_a_trunk() {
        let apart = 5.66 * 0.3048;
        let volts = trunk_drop_volts(Gauge::Awg12, &[apart; 13], 1.21);
        assert!(near(volts, 2.47, 0.005), "{volts}");
        assert!(near(drop_volts(Gauge::Awg12, 13.0 * apart, 13.0 * 1.21), 4.58, 0.005));
    }

    fn run(most_amps: f64, celsius: f64, together: Option<u32>) -> Run {
        Run {
            most_amps,
            continuous_amps: most_amps * 1.25,
            breaker: standard_rating(most_amps * 1.25),
            celsius,
            together,
            terminals: Rated::C75,
        }
    }

    /// An inverter of 32 A: 40 A breaker, 8 AWG, since 240.4(D) keeps 10 AWG to 30 A. A branch of 13 devices of 1.21 A: 20 A, 12 AWG.
    #[test]
    fn sizes_of_runs() {
        assert_eq!(run(32.0, 30.0, Some(2)).breaker, Some(40));
        assert_eq!(run(32.0, 30.0, Some(2)).falls_short(Gauge::Awg10), Some(Short::Terminals(35.0)));
        assert_eq!(least_gauge(&run(32.0, 30.0, Some(2))), Some(Gauge::Awg8));
        assert_eq!(least_gauge(&run(13.0 * 1.21, 30.0, Some(2))), Some(Gauge::Awg12));
        // Under the array at 77 °C 12 AWG carries 30 × 0.41 = 12.3 A, 10 AWG 16.4 A, for which the next breaker is 20 A.
        let Some(Short::Carried(carried)) = run(13.0 * 1.21, 77.0, Some(2)).falls_short(Gauge::Awg12) else {
            panic!()
        };
        assert!(near(carried, 12.3, 1e-9));
        assert_eq!(least_gauge(&run(13.0 * 1.21, 77.0, Some(2))), Some(Gauge::Awg10));
        // Alone in free air 12 AWG carries 40 × 0.41 = 16.4 A there.
        assert_eq!(least_gauge(&run(13.0 * 1.21, 77.0, None)), Some(Gauge::Awg12));
        // Six together: 40 × 0.41 × 0.8 = 13.1 A is too little, 8 AWG carries 18.0 A.
        assert_eq!(least_gauge(&run(13.0 * 1.21, 77.0, Some(6))), Some(Gauge::Awg8));
        assert_eq!(least_gauge(&run(70.0, 30.0, Some(2))), None);
        assert_eq!(least_gauge(&run(1.0, 81.0, Some(2))), None);
    }

    /// 240.4(D), from memory: 12 AWG at 30 °C carries 25 A at its terminals, and is protected by 20 A at most. Terminals of 60 °C take 20 A.
    #[test]
    fn small_conductors_are_protected() {
        let with = |breaker| Run { breaker: Some(breaker), ..run(14.0, 30.0, Some(2)) };
        assert_eq!(with(20).falls_short(Gauge::Awg12), None);
        assert_eq!(with(25).falls_short(Gauge::Awg12), Some(Short::Protected(20)));
        let cool = Run { terminals: Rated::C60, ..run(16.8, 30.0, Some(2)) };
        assert_eq!(cool.falls_short(Gauge::Awg12), Some(Short::Terminals(20.0)));
    }
}
