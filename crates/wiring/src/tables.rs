//! Tables of the code about copper conductors, boxes and raceways.

#![allow(clippy::approx_constant, reason = "a thousand feet of 14 AWG have 3.14 ohms")]

use chalkcourse_job::{CodeEdition, Gauge, Insulation, RacewayKind, TradeSize};

/// How warm a conductor or a terminal may become.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rated {
    /// 60 °C.
    C60,
    /// 75 °C.
    C75,
    /// 90 °C.
    C90,
}

impl Rated {
    /// That of terminals of so many °C: 60 where they are not rated for 75.
    pub fn of_terminals(celsius: u32) -> Self {
        if celsius >= 75 { Self::C75 } else { Self::C60 }
    }
}

/// What stands in the tables of one size.
struct Row {
    gauge: Gauge,
    /// Amperes at 60 (from memory), 75 and 90 °C, three in a raceway: NEC table 310.15(B)(16), 2017; 310.16 from 2020.
    amps: [f64; 3],
    /// Amperes of one of 90 °C alone in free air: NEC table 310.15(B)(17), 2017; 310.17 from 2020; from memory.
    free_amps: f64,
    /// Ohms a thousand feet, stranded, at 75 °C: chapter 9 table 8.
    ohms: f64,
    /// The largest overcurrent device in amperes: 240.4(D), from memory.
    breaker: Option<u32>,
    /// Square inches with THHN or THWN-2, with XHHW-2, and bare and solid: chapter 9 tables 5 and 8, from memory.
    square_inches: [f64; 3],
    /// Cubic inches in a box: table 314.16(B), from memory; nothing is said of 4 AWG.
    box_inches: Option<f64>,
}

static ROWS: [Row; 6] = [
    Row {
        gauge: Gauge::Awg14,
        amps: [15.0, 20.0, 25.0],
        free_amps: 35.0,
        ohms: 3.14,
        breaker: Some(15),
        square_inches: [0.0097, 0.0139, 0.003],
        box_inches: Some(2.0),
    },
    Row {
        gauge: Gauge::Awg12,
        amps: [20.0, 25.0, 30.0],
        free_amps: 40.0,
        ohms: 1.98,
        breaker: Some(20),
        square_inches: [0.0133, 0.0181, 0.005],
        box_inches: Some(2.25),
    },
    Row {
        gauge: Gauge::Awg10,
        amps: [30.0, 35.0, 40.0],
        free_amps: 55.0,
        ohms: 1.24,
        breaker: Some(30),
        square_inches: [0.0211, 0.0243, 0.0081],
        box_inches: Some(2.5),
    },
    Row {
        gauge: Gauge::Awg8,
        amps: [40.0, 50.0, 55.0],
        free_amps: 80.0,
        ohms: 0.778,
        breaker: None,
        square_inches: [0.0366, 0.0437, 0.013],
        box_inches: Some(3.0),
    },
    Row {
        gauge: Gauge::Awg6,
        amps: [55.0, 65.0, 75.0],
        free_amps: 105.0,
        ohms: 0.491,
        breaker: None,
        square_inches: [0.0507, 0.059, 0.0206],
        box_inches: Some(5.0),
    },
    Row {
        gauge: Gauge::Awg4,
        amps: [70.0, 85.0, 95.0],
        free_amps: 140.0,
        ohms: 0.308,
        breaker: None,
        square_inches: [0.0824, 0.0814, 0.0328],
        box_inches: None,
    },
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

fn row(gauge: Gauge) -> &'static Row {
    ROWS.iter().find(|row| row.gauge == gauge).unwrap_or(&ROWS[0])
}

/// What a conductor carries at 30 °C with no more than three in a raceway, in amperes.
pub fn ampacity(gauge: Gauge, rated: Rated) -> f64 {
    let [of_60, of_75, of_90] = row(gauge).amps;
    match rated {
        Rated::C60 => of_60,
        Rated::C75 => of_75,
        Rated::C90 => of_90,
    }
}

/// What one of 90 °C carries at 30 °C alone in free air, in amperes.
pub fn free_air_ampacity(gauge: Gauge) -> f64 {
    row(gauge).free_amps
}

/// Ohms a thousand feet, stranded, at 75 °C.
pub fn ohms_per_1000_ft(gauge: Gauge) -> f64 {
    row(gauge).ohms
}

/// The largest overcurrent device of a small conductor, in amperes; `None` from 8 AWG on.
pub fn largest_breaker(gauge: Gauge) -> Option<u32> {
    row(gauge).breaker
}

/// Whole area of a conductor with its insulation, in square inches; `None` for what the tables don't have: it is as thick as its maker
/// says.
pub fn conductor_square_inches(gauge: Gauge, insulation: Insulation) -> Option<f64> {
    let [thwn, xhhw, _] = row(gauge).square_inches;
    match insulation {
        Insulation::Thwn2 => Some(thwn),
        Insulation::Xhhw2 => Some(xhhw),
        Insulation::PvWire | Insulation::Use2 | Insulation::Trunk => None,
    }
}

/// Area of a bare solid conductor, in square inches.
pub fn bare_square_inches(gauge: Gauge) -> f64 {
    row(gauge).square_inches[2]
}

/// Room that a conductor takes in a box, in cubic inches; `None` for 4 AWG and thicker.
pub fn box_cubic_inches(gauge: Gauge) -> Option<f64> {
    row(gauge).box_inches
}

/// Whole area inside a raceway, in square inches: chapter 9 table 4, from memory.
pub fn raceway_square_inches(kind: RacewayKind, size: TradeSize) -> f64 {
    let [half, three_quarters, one, one_and_a_quarter] = match kind {
        RacewayKind::Emt => [0.304, 0.533, 0.864, 1.496],
        RacewayKind::Pvc40 => [0.285, 0.508, 0.832, 1.453],
    };
    match size {
        TradeSize::Half => half,
        TradeSize::ThreeQuarters => three_quarters,
        TradeSize::One => one,
        TradeSize::OneAndAQuarter => one_and_a_quarter,
    }
}

/// The share of a raceway that so many conductors may fill, 0 to 1: chapter 9 table 1, from memory.
pub fn fill_share(conductors: u32) -> f64 {
    match conductors {
        0 | 1 => 0.53,
        2 => 0.31,
        _ => 0.40,
    }
}

/// The factor of ampacity by the temperature around a conductor; 0 where it can carry nothing. One of 60 °C is taken as carrying
/// nothing above 30 °C: no conductor here is.
pub fn ambient_factor(rated: Rated, celsius: f64) -> f64 {
    let row = AROUND.iter().find(|(most, ..)| celsius <= *most);
    row.map_or(0.0, |(most, of_75, of_90)| match rated {
        Rated::C60 => f64::from(*most <= 30.0),
        Rated::C75 => *of_75,
        Rated::C90 => *of_90,
    })
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

/// The largest standard rating that is no more than so many amperes; `None` below 15 A.
pub fn standard_within(amps: f64) -> Option<u32> {
    STANDARD.into_iter().rev().find(|rating| f64::from(*rating) <= amps + 1e-9)
}

/// The thinnest equipment grounding conductor of copper for an overcurrent device, in amperes; `None` above 300 A.
pub fn grounding_gauge(breaker: u32) -> Option<Gauge> {
    GROUNDING.iter().find(|(most, _)| breaker <= *most).map(|(_, gauge)| *gauge)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NEC table 250.122 (2017), copper: 15 A 14 AWG, 20 A 12, 30 A, 40 A and 60 A 10, 100 A 8, 200 A 6.
    #[test]
    fn grounding_conductors() {
        for (breaker, awg) in [(15, 14), (20, 12), (30, 10), (40, 10), (60, 10), (61, 8), (100, 8), (200, 6)]
        {
            assert_eq!(grounding_gauge(breaker).map(Gauge::awg), Some(awg), "{breaker} A");
        }
        assert_eq!(grounding_gauge(301), None);
    }

    /// NEC table 310.15(B)(2)(a) (2017); from 61 °C from memory. 34 °C and 33 K on a roof are 67 °C: 0.58 of a conductor of 90 °C.
    #[test]
    fn corrections() {
        for (celsius, of_75, of_90) in [
            (30.0, 1.0, 1.0),
            (31.0, 0.94, 0.96),
            (40.0, 0.88, 0.91),
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
        // 7/8 in in 2017, 3/4 in later.
        let above = 0.8 * 0.0254;
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2017, above), 33.0);
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2020, above), 0.0);
        assert_eq!(rooftop_kelvin(CodeEdition::Nec2020, 0.0), 33.0);
    }

    /// NEC 690.9(B) (2017): 1.25 × 12.5 A = 15.63 A, 20 A. Standard ratings of 240.6(A) from memory.
    #[test]
    fn standard_ratings() {
        assert_eq!(standard_rating(15.0), Some(15));
        assert_eq!(standard_rating(1.25 * 12.5), Some(20));
        assert_eq!(standard_rating(40.0), Some(40));
        assert_eq!(standard_rating(200.5), None);
        assert_eq!([14.9, 15.0, 47.0, 900.0].map(standard_within), [None, Some(15), Some(45), Some(200)]);
    }
}
