//! Words about circuits and junction boxes.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{LiesIn, Resolved};
use chalkcourse_wiring::{Window, Wired};
use chalkcourse_words::{self as words, Put, Said, Say, later};

pub(crate) const CIRCUITS: Say = words::circuits::TITLE;
pub(crate) const CIRCUITS_HELP: Say = words::circuits::TITLE_HELP;
pub(crate) const WIRES_LAYER: Say = words::circuits::LAYER;
pub(crate) const WIRES_LAYER_HELP: Say = words::circuits::LAYER_HELP;
pub(crate) const TOOL_STRING: Say = words::circuits::STRING_TOOL;
pub(crate) const TOOL_STRING_HELP: Say = words::circuits::STRING_TOOL_HELP;
pub(crate) const STRING_HINT: Say = words::circuits::STRING_HINT;
pub(crate) const TOOL_BOX: Say = words::circuits::BOX_TOOL;
pub(crate) const TOOL_BOX_HELP: Say = words::circuits::BOX_TOOL_HELP;
pub(crate) const PLACE_BOX_HINT: Say = words::circuits::BOX_HINT;
pub(crate) const STRING_AUTOMATICALLY: Say = words::circuits::AUTOMATICALLY;
pub(crate) const STRING_AUTOMATICALLY_HELP: Say = words::circuits::AUTOMATICALLY_HELP;
pub(crate) const STRINGING: Say = words::circuits::STRINGING;
pub(crate) const STOP_STRINGING: Say = words::circuits::STOP_LOOKING;
pub(crate) const STOP_STRINGING_HELP: Say = words::circuits::STOP_LOOKING_HELP;
pub(crate) const STRINGING_DROPPED: Say = words::circuits::DROPPED;
pub(crate) const NOTHING_TO_STRING: Say = words::circuits::NOTHING_TO_STRING;
pub(crate) const BEST_ORDER: Say = words::circuits::BEST_ORDER;
pub(crate) const BEST_ORDER_HELP: Say = words::circuits::BEST_ORDER_HELP;
pub(crate) const NEW_CIRCUIT: Say = words::circuits::NEW;
pub(crate) const NEW_CIRCUIT_HELP: Say = words::circuits::NEW_HELP;
pub(crate) const TURN_ABOUT: Say = words::circuits::TURN;
pub(crate) const TURN_ABOUT_HELP: Say = words::circuits::TURN_HELP;
pub(crate) const DELETE_CIRCUIT: Say = words::circuits::DELETE;
pub(crate) const DELETE_BOX: Say = words::circuits::DELETE_BOX;
pub(crate) const CHANGE_WIRING: Say = words::circuits::CHANGE_WIRING;
pub(crate) const NO_CIRCUITS_YET: Say = words::circuits::NONE_YET;
pub(crate) const LINE_OF_HOME: Say = words::circuits::HOME;
pub(crate) const LINE_OF_COPPER: Say = words::circuits::COPPER;
pub(crate) const NO_LEAD_REACHES: Say = words::circuits::NO_LEAD;
pub(crate) const KIT_WITHOUT_WIRING: Say = words::wires::KIT_WITHOUT_WIRING;
pub(crate) const PLANNING_AID_OF_WIRES: Say = words::wires::PLANNING_AID;
pub(crate) const INVERTER: Say = words::circuits::INVERTER;
pub(crate) const NO_INVERTER: Say = words::circuits::NO_INVERTER;
pub(crate) const ANOTHER_INVERTER: Say = words::circuits::ANOTHER_INVERTER;
pub(crate) const REMOVE_INVERTER: Say = words::circuits::REMOVE_INVERTER;
pub(crate) const EDITION: Say = words::circuits::EDITION;
pub(crate) const LOWEST_AIR: Say = words::circuits::LOWEST;
pub(crate) const LOWEST_AIR_HELP: Say = words::circuits::LOWEST_HELP;
pub(crate) const HIGHEST_AIR: Say = words::circuits::HIGHEST;
pub(crate) const HIGHEST_AIR_HELP: Say = words::circuits::HIGHEST_HELP;
pub(crate) const HOTTEST_CELL: Say = words::circuits::HOTTEST_CELL;
pub(crate) const HOTTEST_CELL_HELP: Say = words::circuits::HOTTEST_CELL_HELP;
pub(crate) const BY_TABLE: Say = words::circuits::BY_TABLE;
pub(crate) const BY_TABLE_HELP: Say = words::circuits::BY_TABLE_HELP;
pub(crate) const JUNCTION_BOX: Say = words::circuits::BOX;
pub(crate) const NO_BOX: Say = words::circuits::NO_BOX;
pub(crate) const INPUT: Say = words::circuits::INPUT;
pub(crate) const NO_INPUT: Say = words::circuits::NO_INPUT;
pub(crate) const STANDS: Say = words::circuits::STANDS;
pub(crate) const ON_ROOF: Say = words::circuits::ON_ROOF;
pub(crate) const UNDER_DECK: Say = words::circuits::UNDER_DECK;
pub(crate) const LEGS: Say = words::circuits::LEGS;
pub(crate) const LEGS_HELP: Say = words::circuits::LEGS_HELP;
pub(crate) const ADD_LEG: Say = words::circuits::ADD_LEG;
pub(crate) const REMOVE_LEG: Say = words::circuits::REMOVE_LEG;
pub(crate) const LIES_IN: Say = words::circuits::LIES_IN;
pub(crate) const ABOVE_ROOF: Say = words::circuits::ABOVE_ROOF;
pub(crate) const WAY_HOME: Say = words::circuits::WAY_HOME;
pub(crate) const WAY_UNKNOWN: Say = words::circuits::WAY_UNKNOWN;
pub(crate) const STRUNG_AS: Say = words::circuits::STRUNG_AS;
pub(crate) const BOXES: Say = words::circuits::BOXES;
pub(crate) const NO_BOXES: Say = words::circuits::NO_BOXES;
pub(crate) const CIRCUIT_COLUMNS_HELP: Say = words::circuits::COLUMN_HELP;

pub(crate) const ATTIC_AIR: Say = words::circuits::ATTIC_AIR;
pub(crate) const ATTIC_AIR_HELP: Say = words::circuits::ATTIC_AIR_HELP;
pub(crate) const SERVICE: Say = words::circuits::SERVICE;
pub(crate) const BUS: Say = words::circuits::BUS;
pub(crate) const BUS_HELP: Say = words::circuits::BUS_HELP;
pub(crate) const MAIN_BREAKER: Say = words::circuits::MAIN_BREAKER;
pub(crate) const OTHER_BREAKERS: Say = words::circuits::OTHER_BREAKERS;
pub(crate) const OTHER_BREAKERS_HELP: Say = words::circuits::OTHER_BREAKERS_HELP;
pub(crate) const CONNECTION: Say = words::circuits::CONNECTION;
pub(crate) const READING: Say = words::circuits::READING;
pub(crate) const READING_HELP: Say = words::circuits::READING_HELP;
pub(crate) const READING_CELSIUS: Say = words::circuits::READING_CELSIUS;
pub(crate) const READING_CELSIUS_HELP: Say = words::circuits::READING_CELSIUS_HELP;
pub(crate) const READING_VOLTS: Say = words::circuits::READING_VOLTS;
pub(crate) const READING_POLARITY: Say = words::circuits::READING_POLARITY;
pub(crate) const READING_INSULATION: Say = words::circuits::READING_INSULATION;
pub(crate) const READING_TEST: Say = words::circuits::READING_TEST;
pub(crate) const READING_TEST_HELP: Say = words::circuits::READING_TEST_HELP;
pub(crate) const REMOVE_READING: Say = words::circuits::REMOVE_READING;

pub(crate) const PRINT_WIRES: Say = words::circuits::PRINT_WIRES;
pub(crate) const PRINT_WIRES_HELP: Say = words::circuits::PRINT_WIRES_HELP;
pub(crate) const PRINT_ONE_LINE: Say = words::circuits::PRINT_ONE_LINE;
pub(crate) const PRINT_ONE_LINE_HELP: Say = words::circuits::PRINT_ONE_LINE_HELP;
pub(crate) const PRINT_HANDOVER: Say = words::circuits::PRINT_HANDOVER;
pub(crate) const PRINT_HANDOVER_HELP: Say = words::circuits::PRINT_HANDOVER_HELP;
pub(crate) const PRINT_LABELS: Say = words::circuits::PRINT_LABELS;
pub(crate) const PRINT_LABELS_HELP: Say = words::circuits::PRINT_LABELS_HELP;

/// The columns of the list of circuits.
pub(crate) const CIRCUIT_COLUMNS: [Say; 9] = [
    words::circuits::COLUMN_CIRCUIT,
    words::circuits::COLUMN_MODULES,
    words::circuits::COLUMN_POWER,
    words::circuits::COLUMN_COLD,
    words::circuits::COLUMN_STANDARD,
    words::circuits::COLUMN_HOT,
    words::circuits::COLUMN_AMPS,
    words::circuits::COLUMN_LEADS,
    words::circuits::COLUMN_TO,
];

/// What conductors can lie in, with raceways at a usual height above the roof.
pub(crate) const LYING: [(LiesIn, Say); 4] = [
    (LiesIn::RoofRaceway(Length::ZERO), words::circuits::ROOF_RACEWAY),
    (LiesIn::Attic, words::circuits::ATTIC),
    (LiesIn::Wall, words::circuits::WALL),
    (LiesIn::FreeAir, words::circuits::FREE_AIR),
];

/// Whether + was at the end marked +.
pub(crate) const POLARITIES: [(Option<bool>, Say); 3] = [
    (None, words::circuits::POLARITY_UNKNOWN),
    (Some(true), words::circuits::POLARITY_RIGHT),
    (Some(false), words::circuits::POLARITY_WRONG),
];

pub(crate) fn reading_of(name: &str) -> Said {
    later::circuits::reading_of(&name)
}

/// A number as it is read; "not set" where there is none.
pub(crate) fn number_or_none(value: Option<f64>) -> String {
    let shown = |value: f64| format!("{}", (value * 1000.0).round() / 1000.0);
    value.map_or_else(|| words::circuits::NOT_SET.now().to_owned(), shown)
}

/// A number as it is typed; nothing for none.
pub(crate) fn parse_number(text: &str) -> Result<Option<f64>, &'static str> {
    let clean = text.trim().replace('−', "-").replace(',', ".");
    if clean.is_empty() || text.trim() == words::circuits::NOT_SET.now() {
        return Ok(None);
    }
    match clean.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(Some(value)),
        _ => Err(words::circuits::BAD_NUMBER.now()),
    }
}

pub(crate) fn box_name(number: &str) -> String {
    words::circuits::box_name(&number)
}

pub(crate) fn circuit_heading(name: impl Put) -> Said {
    later::circuits::heading(&name)
}

pub(crate) fn string_of(name: &str) -> Said {
    later::circuits::string_of(&name)
}

pub(crate) fn order_is_best(name: &str) -> String {
    words::circuits::order_is_best(&name)
}

pub(crate) fn no_order(name: &str) -> String {
    words::circuits::no_order(&name)
}

pub(crate) fn circuits_made(count: usize) -> String {
    words::circuits::made(count)
}

pub(crate) fn leg(number: usize) -> String {
    words::circuits::leg(&number)
}

pub(crate) fn box_words(circuits: usize) -> String {
    words::circuits::box_words(circuits)
}

/// An input of one of the job's inverters, by the inverter's place and name.
pub(crate) fn input_of(inverter: &str, input: u32) -> String {
    words::circuits::input_of(&inverter, &(input + 1))
}

/// An input of the job's one inverter.
pub(crate) fn input_short(input: u32) -> String {
    words::circuits::input_short(&(input + 1))
}

/// How long the extension leads of a link are together.
pub(crate) fn extension(lengths: Length, units: Units) -> String {
    format!("+ {}", lengths.show(units))
}

/// Volts with one decimal; a dash where they are not known.
pub(crate) fn volts(volts: Option<f64>) -> String {
    volts.map_or_else(|| "–".to_owned(), |volts| format!("{volts:.1}"))
}

/// What one wants to know of a circuit while it is strung.
pub(crate) fn circuit_live(circuit: &Wired, window: Option<&Window>) -> String {
    let mut facts = Vec::new();
    if let Some(window) = window {
        facts.push(words::circuits::live_window(&window.least.modules, &window.most.modules));
    }
    if let Some(highest) = circuit.volts.highest {
        facts.push(words::circuits::live_volts(&volts(Some(highest))));
    }
    facts.push(words::circuits::live_amps(&format_args!("{:.1}", circuit.currents.most)));
    words::circuits::live(&circuit.name, &words::common::modules(circuit.devices.len()), &facts.join(", "))
}

/// What a meter shows, when it is cold, at 25 °C and hot.
pub(crate) fn circuit_volts(circuit: &Wired) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(highest) = circuit.volts.highest {
        lines.push(words::circuits::fact_cold(&volts(Some(highest))));
    }
    lines.push(words::wires::meter(&volts(Some(circuit.volts.shown))));
    if let Some(lowest) = circuit.volts.lowest {
        lines.push(words::circuits::fact_hot(&volts(Some(lowest))));
    }
    lines
}

/// The ways home from both ends, or from the one.
pub(crate) fn ways_home(job: &Resolved, first: Option<f64>, last: Option<f64>) -> Option<String> {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    match (first, last) {
        (Some(first), Some(last)) => Some(words::circuits::two_ways(&long(first), &long(last))),
        (None, Some(last)) => Some(long(last)),
        _ => None,
    }
}

/// A temperature as it is read where lengths are in those units; "not set" where there is none.
pub(crate) fn temperature(celsius: Option<f64>, units: Units) -> String {
    let number = |value: f64| format!("{}", (value * 10.0).round() / 10.0);
    match (celsius, units) {
        (None, _) => words::circuits::NOT_SET.now().to_owned(),
        (Some(celsius), Units::FeetInches) => format!("{} °F", number(celsius * 1.8 + 32.0)),
        (Some(celsius), Units::Metric) => format!("{} °C", number(celsius)),
    }
}

/// A temperature as it is typed, °C: with C or F, else as it is shown; nothing for none.
pub(crate) fn parse_temperature(text: &str, units: Units) -> Result<Option<f64>, &'static str> {
    let clean = text.trim().to_uppercase().replace('−', "-").replace(',', ".").replace('°', "");
    if clean.is_empty() || text.trim() == words::circuits::NOT_SET.now() {
        return Ok(None);
    }
    let (number, fahrenheit) = match clean.chars().last() {
        Some('F') => (clean.trim_end_matches('F'), true),
        Some('C') => (clean.trim_end_matches('C'), false),
        _ => (clean.as_str(), units == Units::FeetInches),
    };
    match number.trim().parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(Some(if fahrenheit { (value - 32.0) / 1.8 } else { value })),
        _ => Err(words::circuits::BAD_TEMPERATURE.now()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// −40 is the same in both; 32 °F is 0 °C, 212 °F is 100 °C.
    #[test]
    fn temperatures_in_both_scales() {
        let near = |text: &str, units: Units, expected: f64| {
            let celsius = parse_temperature(text, units).unwrap().unwrap();
            assert!((celsius - expected).abs() < 1e-9, "{text}: {celsius}");
        };
        near("-40 F", Units::Metric, -40.0);
        near("−40 °C", Units::FeetInches, -40.0);
        near("32", Units::FeetInches, 0.0);
        near("32", Units::Metric, 32.0);
        near("212 f", Units::Metric, 100.0);
        near("21,5", Units::Metric, 21.5);
        assert_eq!(parse_temperature("  ", Units::Metric), Ok(None));
        assert!(parse_temperature("cold", Units::Metric).is_err());
        assert_eq!(temperature(Some(-22.0), Units::Metric), "-22 °C");
        assert_eq!(temperature(Some(-22.0), Units::FeetInches), "-7.6 °F");
        assert_eq!(parse_temperature(&temperature(None, Units::Metric), Units::Metric), Ok(None));
    }
}
