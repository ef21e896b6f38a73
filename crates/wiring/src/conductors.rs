//! Copper conductors: what they carry, where it is warm or crowded, what they lose, and how thick the grounding conductor is.

#![allow(clippy::approx_constant, reason = "a thousand feet of 14 AWG have 3.14 ohms")]

use chalkcourse_job::CodeEdition;
use schemars::JsonSchema;
use serde::Serialize;

/// A size of copper conductor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, JsonSchema)]
pub enum Gauge {
    /// 14 AWG.
    #[serde(rename = "14 AWG")]
    Awg14,
    /// 12 AWG.
    #[serde(rename = "12 AWG")]
    Awg12,
    /// 10 AWG.
    #[serde(rename = "10 AWG")]
    Awg10,
    /// 8 AWG.
    #[serde(rename = "8 AWG")]
    Awg8,
    /// 6 AWG.
    #[serde(rename = "6 AWG")]
    Awg6,
    /// 4 AWG.
    #[serde(rename = "4 AWG")]
    Awg4,
}

/// How warm a conductor or a terminal may become.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rated {
    /// 75 °C.
    C75,
    /// 90 °C.
    C90,
}

/// One row a size: amperes at 75 and 90 °C (NEC table 310.15(B)(16), 2017; 310.16 from 2020), ohms a thousand feet stranded (chapter
/// 9 table 8), and the largest overcurrent device in amperes (240.4(D), from memory).
const SIZES: [(Gauge, f64, f64, f64, Option<u32>); 6] = [
    (Gauge::Awg14, 20.0, 25.0, 3.14, Some(15)),
    (Gauge::Awg12, 25.0, 30.0, 1.98, Some(20)),
    (Gauge::Awg10, 35.0, 40.0, 1.24, Some(30)),
    (Gauge::Awg8, 50.0, 55.0, 0.778, None),
    (Gauge::Awg6, 65.0, 75.0, 0.491, None),
    (Gauge::Awg4, 85.0, 95.0, 0.308, None),
];

/// Factors by the temperature around a conductor: no more than so many °C, for conductors of 75 and of 90 °C; from 61 °C on from
/// memory. A conductor of 75 °C carries nothing above 70 °C, one of 90 °C nothing above 80 °C.
const AROUND: [(f64, f64, f64); 11] = [
    (30.0, 1.0, 1.0),
    (35.0, 0.94, 0.96),
    (40.0, 0.88, 0.91),
    (45.0, 0.82, 0.87),
    (50.0, 0.75, 0.82),
    (55.0, 0.67, 0.76),
    (60.0, 0.58, 0.71),
    (65.0, 0.47, 0.65),
    (70.0, 0.33, 0.58),
    (75.0, 0.0, 0.50),
    (80.0, 0.0, 0.41),
];

/// Equipment grounding conductors of copper by the overcurrent device, amperes (NEC table 250.122, 2017).
const GROUNDING: [(u32, Gauge); 6] = [
    (15, Gauge::Awg14),
    (20, Gauge::Awg12),
    (60, Gauge::Awg10),
    (100, Gauge::Awg8),
    (200, Gauge::Awg6),
    (300, Gauge::Awg4),
];

/// Standard ratings of fuses and breakers up to 200 A (NEC 240.6(A), from memory).
const STANDARD: [u32; 18] = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200];

impl Gauge {
    /// All sizes, the thinnest first.
    pub const ALL: [Self; 6] = [Self::Awg14, Self::Awg12, Self::Awg10, Self::Awg8, Self::Awg6, Self::Awg4];

    fn row(self) -> (Gauge, f64, f64, f64, Option<u32>) {
        SIZES.into_iter().find(|row| row.0 == self).unwrap_or(SIZES[0])
    }

    /// Its number.
    pub fn awg(self) -> u32 {
        match self {
            Self::Awg14 => 14,
            Self::Awg12 => 12,
            Self::Awg10 => 10,
            Self::Awg8 => 8,
            Self::Awg6 => 6,
            Self::Awg4 => 4,
        }
    }

    /// What it carries at 30 °C with no more than three in a raceway, in amperes.
    pub fn ampacity(self, rated: Rated) -> f64 {
        match rated {
            Rated::C75 => self.row().1,
            Rated::C90 => self.row().2,
        }
    }

    /// Ohms a thousand feet, stranded, at 75 °C.
    pub fn ohms_per_1000_ft(self) -> f64 {
        self.row().3
    }

    /// The largest overcurrent device of a small conductor, in amperes.
    pub fn largest_breaker(self) -> Option<u32> {
        self.row().4
    }
}

/// The factor of ampacity by the temperature around a conductor; 0 where it can carry nothing.
pub fn ambient_factor(rated: Rated, celsius: f64) -> f64 {
    let row = AROUND.iter().find(|(most, ..)| celsius <= *most);
    row.map_or(0.0, |(_, of_75, of_90)| if rated == Rated::C75 { *of_75 } else { *of_90 })
}

/// The factor of ampacity by the number of conductors that carry current in one raceway; more than 20 are no longer told apart
/// here and give 0.
pub fn bundle_factor(conductors: u32) -> f64 {
    match conductors {
        0..=3 => 1.0,
        4..=6 => 0.8,
        7..=9 => 0.7,
        10..=20 => 0.5,
        _ => 0.0,
    }
}

/// What the air in a raceway on a roof in the sun is warmer than around it, in kelvin, by how high it is above the roof in metres: NEC
/// 310.15(B)(3)(c) (2017) for less than 7/8 in; from 2020 for less than 3/4 in, from memory.
pub fn rooftop_kelvin(edition: CodeEdition, metres_above: f64) -> f64 {
    let inches = if edition == CodeEdition::Nec2017 { 7.0 / 8.0 } else { 3.0 / 4.0 };
    if metres_above < inches * 0.0254 { 33.0 } else { 0.0 }
}

/// The next standard rating of an overcurrent device, in amperes; `None` above 200 A.
pub fn standard_rating(amps: f64) -> Option<u32> {
    STANDARD.into_iter().find(|rating| f64::from(*rating) >= amps - 1e-9)
}

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
    /// Conductors in the raceway that carry current.
    pub together: u32,
}

/// The thinnest conductor of 90 °C on terminals of 75 °C that carries a run: the larger of both demands of NEC 690.8(B) (2017), not
/// both at once; and protected by its overcurrent device (240.4(D), and 240.4(B), from memory: the next standard rating above what it
/// carries will do). `None` where 4 AWG is too thin.
pub fn least_gauge(run: &Run) -> Option<Gauge> {
    Gauge::ALL.into_iter().find(|gauge| {
        let corrected = gauge.ampacity(Rated::C90)
            * ambient_factor(Rated::C90, run.celsius)
            * bundle_factor(run.together);
        let carries = corrected.min(gauge.ampacity(Rated::C75));
        let protected = run.breaker.is_none_or(|breaker| {
            gauge.largest_breaker().is_none_or(|most| breaker <= most)
                && standard_rating(carries).is_some_and(|most| breaker <= most)
        });
        corrected >= run.most_amps && gauge.ampacity(Rated::C75) >= run.continuous_amps && protected
    })
}

/// The thinnest equipment grounding conductor of copper for an overcurrent device, in amperes; `None` above 300 A.
pub fn grounding_gauge(breaker: u32) -> Option<Gauge> {
    GROUNDING.iter().find(|(most, _)| breaker <= *most).map(|(_, gauge)| *gauge)
}

/// What two conductors of one length lose together, in volts: 2 · L · I · R, length in metres.
pub fn drop_volts(gauge: Gauge, metres: f64, amps: f64) -> f64 {
    2.0 * metres / 0.3048 / 1000.0 * amps * gauge.ohms_per_1000_ft()
}

/// What a trunk with one device after the other loses, in volts, section by section: the first carries one device's current, the last
/// all of them. `home` is the way from the last device to where the branch begins.
pub fn trunk_drop_volts(gauge: Gauge, sections: &[f64], home: f64, amps: f64) -> f64 {
    let along: f64 = (1_u32..)
        .zip(sections)
        .map(|(devices, metres)| drop_volts(gauge, *metres, f64::from(devices) * amps))
        .sum();
    along + drop_volts(gauge, home, (sections.len() + 1) as f64 * amps)
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
        let volts = trunk_drop_volts(Gauge::Awg12, &[apart; 12], apart, 1.21);
        assert!(near(volts, 2.47, 0.005), "{volts}");
        assert!(near(drop_volts(Gauge::Awg12, 13.0 * apart, 13.0 * 1.21), 4.58, 0.005));
    }

    /// NEC table 250.122 (2017), copper: 15 A 14 AWG, 20 A 12, 30 A, 40 A and 60 A 10, 100 A 8, 200 A 6.
    #[test]
    fn grounding_conductors() {
        for (breaker, awg) in [(15, 14), (20, 12), (30, 10), (40, 10), (60, 10), (61, 8), (100, 8), (200, 6)]
        {
            assert_eq!(grounding_gauge(breaker).map(Gauge::awg), Some(awg), "{breaker} A");
        }
        assert_eq!(grounding_gauge(301), None);
    }

    /// NEC table 310.15(B)(16) (2017; 310.16 from 2020), copper at 75 and 90 °C; chapter 9 table 8, stranded; 240.4(D), from memory.
    #[test]
    fn sizes() {
        let table = Gauge::ALL.map(|gauge| {
            (
                gauge.awg(),
                gauge.ampacity(Rated::C75),
                gauge.ampacity(Rated::C90),
                gauge.ohms_per_1000_ft(),
                gauge.largest_breaker(),
            )
        });
        let facts = [
            (14, 20.0, 25.0, 3.14, Some(15)),
            (12, 25.0, 30.0, 1.98, Some(20)),
            (10, 35.0, 40.0, 1.24, Some(30)),
            (8, 50.0, 55.0, 0.778, None),
            (6, 65.0, 75.0, 0.491, None),
            (4, 85.0, 95.0, 0.308, None),
        ];
        assert_eq!(table, facts);
    }

    /// NEC table 310.15(B)(2)(a) (2017); from 61 °C from memory. 34 °C and 33 K on a roof are 67 °C: 0.58 of a conductor of 90 °C.
    #[test]
    fn corrections() {
        for (celsius, of_75, of_90) in [
            (30.0, 1.0, 1.0),
            (31.0, 0.94, 0.96),
            (40.0, 0.88, 0.91),
            (45.0, 0.82, 0.87),
            (50.0, 0.75, 0.82),
            (55.0, 0.67, 0.76),
            (60.0, 0.58, 0.71),
            (65.0, 0.47, 0.65),
            (34.0 + rooftop_kelvin(CodeEdition::Nec2017, 0.02), 0.33, 0.58),
            (77.0, 0.0, 0.41),
            (80.1, 0.0, 0.0),
        ] {
            assert_eq!(
                (ambient_factor(Rated::C75, celsius), ambient_factor(Rated::C90, celsius)),
                (of_75, of_90),
                "{celsius}"
            );
        }
        // NEC table 310.15(B)(3)(a) (2017).
        assert_eq!([3, 4, 6, 7, 9, 10, 20, 21].map(bundle_factor), [1.0, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5, 0.0]);
        // 7/8 in in 2017, 3/4 in later.
        let above = 0.8 * 0.0254;
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2017, above), 33.0);
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2020, above), 0.0);
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2020, 0.0), 33.0);
    }

    /// An inverter of 32 A: 40 A breaker, 8 AWG, since 240.4(D) keeps 10 AWG to 30 A. A branch of 13 devices of 1.21 A: 20 A, 12 AWG.
    #[test]
    fn sizes_of_runs() {
        let run = |most_amps: f64, celsius, together| Run {
            most_amps,
            continuous_amps: most_amps * 1.25,
            breaker: standard_rating(most_amps * 1.25),
            celsius,
            together,
        };
        assert_eq!(run(32.0, 30.0, 2).breaker, Some(40));
        assert_eq!(least_gauge(&run(32.0, 30.0, 2)), Some(Gauge::Awg8));
        assert_eq!(least_gauge(&run(13.0 * 1.21, 30.0, 2)), Some(Gauge::Awg12));
        // Under the array at 77 °C 12 AWG carries 30 × 0.41 = 12.3 A, 10 AWG 16.4 A, for which the next breaker is 20 A.
        assert_eq!(least_gauge(&run(13.0 * 1.21, 77.0, 2)), Some(Gauge::Awg10));
        // Six together: 40 × 0.41 × 0.8 = 13.1 A is too little, 8 AWG carries 18.0 A.
        assert_eq!(least_gauge(&run(13.0 * 1.21, 77.0, 6)), Some(Gauge::Awg8));
        assert_eq!(least_gauge(&run(70.0, 30.0, 2)), None);
        assert_eq!(least_gauge(&run(1.0, 81.0, 2)), None);
    }

    /// NEC 690.9(B) (2017): 1.25 × 12.5 A = 15.63 A, 20 A. Standard ratings of 240.6(A) from memory.
    #[test]
    fn standard_ratings() {
        assert_eq!(standard_rating(15.0), Some(15));
        assert_eq!(standard_rating(1.25 * 12.5), Some(20));
        assert_eq!(standard_rating(40.0), Some(40));
        assert_eq!(standard_rating(200.5), None);
    }
}
