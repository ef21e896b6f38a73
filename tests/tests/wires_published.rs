//! Tables and worked numbers of the electrical code, held against a file of them that was written by hand.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_job::{CodeEdition, Connection, Gauge, Insulation, RacewayKind, Service, TradeSize};
use chalkcourse_tests::top;
use chalkcourse_wiring::amps::output_currents;
use chalkcourse_wiring::conductors::{Run, least_gauge};
use chalkcourse_wiring::connection::most_output_amps;
use chalkcourse_wiring::tables::{
    Rated, ambient_factor, ampacity, box_cubic_inches, bundle_factor, conductor_square_inches, fill_share,
    free_air_ampacity, grounding_gauge, largest_breaker, ohms_per_1000_ft, raceway_square_inches,
};
use serde_json::Value;
use std::collections::BTreeSet;

fn facts() -> Value {
    let text = std::fs::read_to_string(top().join("tests/data/nec-tables.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

/// Holds the rows of a table against what a function gives for each key.
fn hold(facts: &Value, table: &str, of: impl Fn(&str) -> Vec<f64>) {
    let table = &facts[table];
    assert!(!table["source"].as_str().unwrap().is_empty());
    assert!(["confirmed", "from-memory"].contains(&table["standing"].as_str().unwrap()));
    let rows = table["rows"].as_object().unwrap();
    assert!(!rows.is_empty());
    for (key, row) in rows {
        let row: Vec<f64> = row.as_array().unwrap().iter().map(|value| value.as_f64().unwrap()).collect();
        assert_eq!(of(key), row, "{}, {key}", table["source"]);
    }
}

fn awg(key: &str) -> Gauge {
    Gauge::ALL.into_iter().find(|gauge| gauge.awg().to_string() == key).unwrap()
}

fn size(key: &str) -> TradeSize {
    TradeSize::ALL.into_iter().find(|size| size.mark() == key).unwrap()
}

#[test]
fn tables_of_the_code() {
    let facts = facts();
    let number = |key: &str| key.parse::<f64>().unwrap();
    let count = |key: &str| key.parse::<u32>().unwrap();
    let area = |insulation| move |key: &str| vec![conductor_square_inches(awg(key), insulation).unwrap()];
    hold(&facts, "ampacity", |key| [Rated::C75, Rated::C90].map(|rated| ampacity(awg(key), rated)).to_vec());
    hold(&facts, "ampacity_60", |key| vec![ampacity(awg(key), Rated::C60)]);
    hold(&facts, "free_air", |key| vec![free_air_ampacity(awg(key))]);
    hold(&facts, "ohms_per_1000_ft", |key| vec![ohms_per_1000_ft(awg(key))]);
    hold(&facts, "largest_breaker", |key| vec![f64::from(largest_breaker(awg(key)).unwrap())]);
    for table in ["grounding", "grounding_between"] {
        hold(&facts, table, |key| vec![f64::from(grounding_gauge(count(key)).unwrap().awg())]);
    }
    for table in ["ambient", "ambient_hot"] {
        hold(&facts, table, |key| {
            [Rated::C75, Rated::C90].map(|rated| ambient_factor(rated, number(key))).to_vec()
        });
    }
    hold(&facts, "bundle", |key| vec![bundle_factor(count(key))]);
    hold(&facts, "fill_share", |key| vec![fill_share(count(key))]);
    hold(&facts, "emt", |key| vec![raceway_square_inches(RacewayKind::Emt, size(key))]);
    hold(&facts, "pvc_40", |key| vec![raceway_square_inches(RacewayKind::Pvc40, size(key))]);
    hold(&facts, "thwn_2", area(Insulation::Thwn2));
    hold(&facts, "xhhw_2", area(Insulation::Xhhw2));
    hold(&facts, "box_inches", |key| vec![box_cubic_inches(awg(key)).unwrap()]);
    // Each table of the file is held.
    let tables: BTreeSet<&String> = facts.as_object().unwrap().keys().collect();
    assert_eq!(tables.len(), 17);
}

/// NEC 705.12(B)(2)(3)(b), 690.8(B), 240.4(D) and table 310.15(B)(16) (2017): a bus of 200 A with a main of 200 A takes 32 A, 7.68 kW at
/// 240 V; 1.25 × 32 A is a breaker of 40 A, and that asks for 8 AWG, since 10 AWG is kept to 30 A.
#[test]
fn a_bus_of_200_amps_takes_8_awg() {
    let service = Service {
        bus_amps: 200.0,
        main_breaker_amps: 200.0,
        other_breakers_amps: None,
        connection: Connection::OppositeEnds,
    };
    let most = most_output_amps(&service, CodeEdition::Nec2017).unwrap();
    assert!((most * 240.0 - 7680.0).abs() < 1e-9);
    let currents = output_currents(most);
    assert_eq!(currents.least_breaker(), Some(40));
    let run = Run {
        most_amps: currents.most,
        continuous_amps: currents.continuous,
        breaker: Some(40),
        celsius: 30.0,
        together: Some(2),
        terminals: Rated::C75,
    };
    assert_eq!(least_gauge(&run), Some(Gauge::Awg8));
}

/// NEC chapter 9 (2017), from memory: three 10 AWG fill 20.8 % of 1/2 in EMT; six and one of 8 AWG, .1632 in², are more than its .122 and
/// less than the .213 of 3/4 in.
#[test]
fn six_and_one_in_three_quarters_of_an_inch() {
    let area = |gauge| conductor_square_inches(gauge, Insulation::Thwn2).unwrap();
    let emt = |size| raceway_square_inches(RacewayKind::Emt, size);
    let three = 3.0 * area(Gauge::Awg10);
    assert!((three / emt(TradeSize::Half) - 0.208).abs() < 5e-4);
    let seven = 6.0 * area(Gauge::Awg10) + area(Gauge::Awg8);
    assert!((seven - 0.1632).abs() < 1e-9);
    let holds = |size| fill_share(7) * emt(size);
    assert!(seven > holds(TradeSize::Half) && seven < holds(TradeSize::ThreeQuarters));
    assert!(
        (holds(TradeSize::Half) - 0.122).abs() < 5e-4
            && (holds(TradeSize::ThreeQuarters) - 0.213).abs() < 5e-4
    );
}
