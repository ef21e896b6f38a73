//! The electrician's handover sheet: what a meter should show of each circuit, and fields for what it did show, for polarity,
//! insulation, bonding and torque. Cautions for live dc stand first.

use crate::crew::BOX;
use crate::page::{Column, Part, Row, Sheet};
use crate::stickers::{labels_of, labels_table};
use crate::wire_diagram::end_name;
use crate::wire_diagram::{DrawnGround, End, WireDiagram};
use crate::wire_words::{box_name, circuit_name, long, wires_sheet};
use chalkcourse_job::{KitWiring, Resolved};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::{Expected, Kind, Wired, expected_reading};
use chalkcourse_words::{self as words, block_heading};

/// Temperatures of modules for which the table says what a meter should show, °C.
const CELSIUS: [(f64, &str); 6] = [
    (-10.0, "\u{2212}10 °C"),
    (0.0, "0 °C"),
    (10.0, "10 °C"),
    (25.0, "25 °C"),
    (40.0, "40 °C"),
    (55.0, "55 °C"),
];
/// Standard conditions, °C.
const STANDARD: f64 = 25.0;

/// A blank to fill in.
pub(crate) fn blank() -> String {
    "…………".to_owned()
}

/// The sheet.
pub(crate) fn handover_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let mut sheet = wires_sheet(words::handover::TITLE.now().to_owned(), job, plan, false);
    let parts = &mut sheet.parts;
    let first = [
        words::handover::LIVE_DC,
        words::handover::NEVER_UNDER_LOAD,
        words::handover::METER_FIRST,
        words::handover::NO_INSULATION_TEST,
    ];
    parts.extend(first.iter().map(|caution| Part::Caution(caution.now().to_owned())));
    match &job.kit.wiring {
        Some(wiring) if !plan.wires.circuits.is_empty() => {
            parts.push(Part::Heading(words::handover::WHAT_A_METER_SHOWS.now().to_owned()));
            expected(job, plan, wiring, parts);
            parts.push(Part::Heading(words::handover::MEASURED.now().to_owned()));
            measured(plan, wiring, job, parts);
            read_back(job, plan, wiring, parts);
        }
        Some(_) => parts.push(Part::Text(words::wires::NO_CIRCUIT_YET.now().to_owned())),
        None => parts.push(Part::Text(words::wires::KIT_WITHOUT_WIRING.now().to_owned())),
    }
    parts.push(Part::Heading(words::handover::BONDING.now().to_owned()));
    bonding(job, plan, parts);
    torques(job, parts);
    parts.push(Part::Heading(words::handover::LABELS.now().to_owned()));
    parts.push(labels_table(&labels_of(job, plan)));
    parts.push(Part::Text(words::handover::SIGNED.now().to_owned()));
    sheet
}

/// A voltage as a meter shows it.
fn volts(volts: f64) -> String {
    format!("{volts:.1}")
}

/// The band in which a reading passes.
fn band(expected: &Expected) -> String {
    format!("{}\u{2013}{}", volts(expected.least_volts), volts(expected.most_volts))
}

/// What a meter should show: bare modules by temperature, devices and branches at any.
fn expected(job: &Resolved, plan: &Plan, wiring: &KitWiring, parts: &mut Vec<Part>) {
    let module = &job.kit.module.electrical;
    let (count, circuits) = (|circuit: &Wired| circuit.devices.len(), &plan.wires.circuits);
    match Kind::of(wiring) {
        Kind::Bare => {
            parts.push(Part::Text(words::handover::BARE_BY_TEMPERATURE.now().to_owned()));
            let mut columns = vec![
                Column::words(words::diagram::CIRCUIT.now(), 1.5),
                Column::numbers(words::diagram::MODULES.now(), 1.1),
            ];
            columns.extend(CELSIUS.iter().map(|(_, title)| Column::numbers(title, 1.35)));
            let row = |circuit: &Wired| {
                let mut cells = vec![circuit_name(circuit), count(circuit).to_string()];
                cells.extend(CELSIUS.iter().map(|(celsius, _)| {
                    let told = expected_reading(module, wiring, circuit, *celsius);
                    format!("{} {}", volts(told.volts), band(&told))
                }));
                Row::Cells(cells)
            };
            parts.push(Part::Table { columns, rows: circuits.iter().map(row).collect() });
        }
        kind => {
            let (text, unit) = match kind {
                Kind::AcDevices => (words::handover::AC_VOLTS, words::handover::VOLTS_AC),
                Kind::Bare | Kind::DcDevices => (words::handover::STANDBY_VOLTS, words::handover::VOLTS_DC),
            };
            parts.push(Part::Text(text.now().to_owned()));
            let row = |circuit: &Wired| {
                let told = expected_reading(module, wiring, circuit, STANDARD);
                Row::Cells(vec![
                    circuit_name(circuit),
                    count(circuit).to_string(),
                    volts(told.volts),
                    band(&told),
                ])
            };
            parts.push(Part::Table {
                columns: vec![
                    Column::words(words::diagram::CIRCUIT.now(), 2.0),
                    Column::numbers(words::diagram::MODULES.now(), 1.0),
                    Column::numbers(unit.now(), 1.4),
                    Column::numbers(words::handover::PASSES_FROM_TO.now(), 1.6),
                ],
                rows: circuits.iter().map(row).collect(),
            });
        }
    }
}

/// Fields to fill in, a row for each circuit.
fn measured(plan: &Plan, wiring: &KitWiring, job: &Resolved, parts: &mut Vec<Part>) {
    let circuits = &plan.wires.circuits;
    let branch = Kind::of(wiring) == Kind::AcDevices;
    let row = |circuit: &Wired| {
        let ends = if branch {
            end_name(circuit, End::Branch)
        } else {
            format!("{}, +", end_name(circuit, End::Negative))
        };
        let told = expected_reading(&job.kit.module.electrical, wiring, circuit, STANDARD);
        let test = match told.insulation {
            Some(test) => format!("{} V", test.volts),
            None => words::handover::BY_THE_MAKER.now().to_owned(),
        };
        let mut cells = vec![ends];
        if !branch {
            cells.push(BOX.to_owned());
        }
        cells.extend([blank(), blank(), blank(), test, blank(), blank()]);
        Row::Cells(cells)
    };
    let mut columns = vec![Column::words(words::diagram::CIRCUIT.now(), 1.7)];
    if !branch {
        columns.push(Column::words(words::handover::POLARITY_RIGHT.now(), 0.9));
    }
    columns.extend([
        Column::words(words::handover::OPEN_VOLTS.now(), 1.1),
        Column::words(words::handover::AT_CELSIUS.now(), 1.1),
        Column::words(words::handover::AMPS.now(), 1.1),
        Column::words(words::handover::INSULATION_TEST.now(), 1.3),
        Column::words(words::handover::PLUS_TO_GROUND.now(), 1.1),
        Column::words(words::handover::MINUS_TO_GROUND.now(), 1.1),
    ]);
    parts.push(Part::Table { columns, rows: circuits.iter().map(row).collect() });
    parts.push(Part::Text(words::handover::HOW_TO_MEASURE.now().to_owned()));
    if circuits.iter().all(|circuit| circuit.kind == Kind::Bare) {
        parts.push(Part::Text(words::handover::TEST_VOLTAGE.now().to_owned()));
    }
}

/// What was typed back of each circuit, beside what it should be at that temperature.
fn read_back(job: &Resolved, plan: &Plan, wiring: &KitWiring, parts: &mut Vec<Part>) {
    let rows: Vec<Row> = job
        .readings
        .iter()
        .filter_map(|reading| {
            let circuit = plan.wires.circuit(reading.circuit)?;
            let told = expected_reading(&job.kit.module.electrical, wiring, circuit, reading.celsius);
            let passes = |volts: f64| (told.least_volts..=told.most_volts).contains(&volts);
            let verdict = match reading.open_volts.map(passes) {
                None => "\u{2013}".to_owned(),
                Some(true) => words::handover::PASSES.now().to_owned(),
                Some(false) => words::handover::OUT_OF_BAND.now().to_owned(),
            };
            let polarity = match reading.polarity_right {
                None => "\u{2013}",
                Some(true) => words::handover::RIGHT.now(),
                Some(false) => words::handover::WRONG.now(),
            };
            let or_none = |value: Option<f64>| value.map_or_else(|| "\u{2013}".to_owned(), volts);
            let at = reading.test_volts.map(|at| format!(" ({at:.0} V)")).unwrap_or_default();
            Some(Row::Cells(vec![
                circuit_name(circuit),
                volts(reading.celsius),
                or_none(reading.open_volts),
                format!("{} ({})", volts(told.volts), band(&told)),
                verdict,
                polarity.to_owned(),
                format!("{}{at}", or_none(reading.insulation_megohms)),
            ]))
        })
        .collect();
    if rows.is_empty() {
        return;
    }
    parts.push(Part::Heading(words::handover::READ_BACK.now().to_owned()));
    parts.push(Part::Table {
        columns: vec![
            Column::words(words::diagram::CIRCUIT.now(), 1.5),
            Column::numbers("°C", 0.7),
            Column::numbers(words::handover::READ.now(), 0.9),
            Column::numbers(words::handover::EXPECTED.now(), 2.2),
            Column::words(words::handover::VERDICT.now(), 1.2),
            Column::words(words::handover::POLARITY.now(), 1.0),
            Column::words(words::handover::INSULATION.now(), 1.3),
        ],
        rows,
    });
}

/// Torques by the kit, each with a field for who set it; without them the makers' data sheets are asked for.
fn torques(job: &Resolved, parts: &mut Vec<Part>) {
    parts.push(Part::Heading(words::handover::TORQUES.now().to_owned()));
    let settings = job.kit.wiring.as_ref().map(|wiring| wiring.torques.as_slice()).unwrap_or_default();
    if settings.is_empty() {
        parts.push(Part::Text(words::handover::NO_TORQUES.now().to_owned()));
        return;
    }
    let rows = settings.iter().map(|setting| {
        Row::Cells(vec![
            BOX.to_owned(),
            words::of_data(&setting.what),
            setting.torque.show(job.units),
            setting.source.text.clone(),
            blank(),
        ])
    });
    parts.push(Part::Table {
        columns: vec![
            Column::words("", 0.25),
            Column::words(words::common::WHAT.now(), 2.6),
            Column::numbers(words::handover::TORQUE.now(), 1.0),
            Column::words(words::common::SOURCE.now(), 2.2),
            Column::words(words::handover::SET_BY.now(), 1.4),
        ],
        rows: rows.collect(),
    });
}

/// The bare copper of each block: continuity, and where it goes.
fn bonding(job: &Resolved, plan: &Plan, parts: &mut Vec<Part>) {
    let to = |ground: &DrawnGround| match ground.home {
        Some((to, way)) => words::diagram::to_box_so_far(&box_name(job, to), &long(job, way)),
        None => words::diagram::BOX_NOT_STATED.now().to_owned(),
    };
    let diagram = WireDiagram::of(job, plan);
    let rows = diagram.blocks.iter().map(|block| {
        Row::Cells(vec![
            BOX.to_owned(),
            block_heading(&block.name).now().to_string(),
            block.modules.len().to_string(),
            to(&block.ground),
            blank(),
        ])
    });
    parts.push(Part::Table {
        columns: vec![
            Column::words("", 0.25),
            Column::words(words::common::BLOCK.now(), 2.0),
            Column::numbers(words::handover::LUGS.now(), 0.8),
            Column::words(words::diagram::BARE_COPPER.now(), 3.0),
            Column::words(words::handover::OHMS.now(), 1.2),
        ],
        rows: rows.collect(),
    });
    parts.push(Part::Text(words::handover::CONTINUITY.now().to_owned()));
}
