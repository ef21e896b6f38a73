use crate::text::plain;
use crate::words::number;
use crate::{Header, Line, OutputError, Takeoff};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Unit;

const COLUMNS: [&str; 16] = [
    "Record",
    "Group",
    "Number",
    "Name",
    "Need",
    "Unit",
    "Waste %",
    "With waste",
    "Packages",
    "Package",
    "Package holds",
    "Ordered",
    "Price a package",
    "Cost",
    "Currency",
    "Explanation",
];

/// The order for a spreadsheet: UTF-8, one record a row, every cell quoted, and no cell that a spreadsheet takes for a
/// formula. The first column says what a row is: `job`, `kit`, `rule book`, `prices`, `part`, `total`, `no price`,
/// `finding`, `waiver`, `caution`. Lengths are decimal feet or metres, areas square feet or square metres.
///
/// # Errors
/// [`OutputError::Csv`] when the writer gives up, which memory alone could cause.
pub fn to_csv(takeoff: &Takeoff, header: &Header, units: Units) -> Result<String, OutputError> {
    let failed = |error: &dyn std::fmt::Display| OutputError::Csv(error.to_string());
    let mut writer = csv::WriterBuilder::new().quote_style(csv::QuoteStyle::Always).from_writer(Vec::new());
    let mut write = |cells: &[String; COLUMNS.len()]| {
        writer.write_record(cells.iter().map(|cell| safe_cell(cell))).map_err(|error| failed(&error))
    };
    write(&COLUMNS.map(str::to_owned))?;
    for (record, name) in [
        ("job", &header.job),
        ("kit", &header.kit),
        ("rule book", &header.rule_book),
        ("prices", &header.prices),
    ] {
        write(&note(record, name))?;
    }
    for line in &takeoff.lines {
        write(&part(takeoff, line, units))?;
    }
    let mut total = note("total", "Parts that have a price");
    total[13] = takeoff.priced_total.to_string();
    total[14].clone_from(&takeoff.currency);
    write(&total)?;
    for number in &takeoff.unpriced {
        let mut missing = note("no price", "Not in the total");
        missing[2].clone_from(number);
        write(&missing)?;
    }
    for (record, entries) in [("finding", &header.findings), ("waiver", &header.waivers)] {
        for entry in entries {
            write(&note(record, entry))?;
        }
    }
    write(&note("caution", &header.caution))?;
    let bytes = writer.into_inner().map_err(|error| failed(&error))?;
    String::from_utf8(bytes).map_err(|error| failed(&error))
}

fn note(record: &str, name: &str) -> [String; COLUMNS.len()] {
    let mut cells: [String; COLUMNS.len()] = Default::default();
    record.clone_into(&mut cells[0]);
    name.clone_into(&mut cells[3]);
    cells
}

fn part(takeoff: &Takeoff, line: &Line, units: Units) -> [String; COLUMNS.len()] {
    let (unit, scale) = match (line.unit, units) {
        (Unit::Each, _) => ("each", 1.0),
        (Unit::Length, Units::FeetInches) => ("ft", Length::from_metres(1.0).feet()),
        (Unit::Length, Units::Metric) => ("m", 1.0),
        (Unit::Area, Units::FeetInches) => ("sq ft", Length::from_metres(1.0).feet().powi(2)),
        (Unit::Area, Units::Metric) => ("sq m", 1.0),
    };
    let words = line.terms.iter().filter(|term| term.need > 0.0).map(|term| term.words(units));
    let money = |amount: Option<rust_decimal::Decimal>| match amount {
        Some(amount) => amount.to_string(),
        None => "no price".to_owned(),
    };
    [
        "part".to_owned(),
        line.group.name().to_owned(),
        line.number.clone(),
        line.name.clone(),
        number(line.need * scale),
        unit.to_owned(),
        number(line.waste * 100.0),
        number(line.with_waste * scale),
        line.packages.to_string(),
        line.package.clone(),
        number(line.holds * scale),
        number(line.ordered * scale),
        money(line.price),
        if line.price.is_some() && line.cost.is_none() { "too large".into() } else { money(line.cost) },
        takeoff.currency.clone(),
        format!("{} [{}]", words.collect::<Vec<_>>().join(" + "), line.source),
    ]
}

/// A cell that no spreadsheet takes for a formula: where one could begin (at the start, behind blanks, and behind the
/// separators by which a spreadsheet of another country may split a cell) a sign that starts one gets an apostrophe in
/// front. Control characters become blanks, so that a cell stays on its line.
///
/// Signs as in the OWASP page on CSV injection: `=`, `+`, `-`, `@`, tab, carriage return, line feed, and the full-width
/// forms of the first four. A negative number is no exception: an order has none.
pub fn safe_cell(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 1);
    let mut start = true;
    // A tab or a line break in front is itself such a sign.
    if text.starts_with(['\t', '\r', '\n']) {
        out.push('\'');
    }
    for c in plain(text).chars() {
        let signs = ['=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}', '\u{2212}'];
        if start && signs.contains(&c) {
            out.push('\'');
        }
        out.push(c);
        let unseen = c.is_whitespace() || ('\u{200b}'..='\u{200f}').contains(&c) || c == '\u{feff}';
        start = matches!(c, ';' | '|') || start && (unseen || c == '"');
    }
    out
}
