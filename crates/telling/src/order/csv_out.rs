use super::text::plain;
use super::words::{count_words, state_words};
use super::{Header, OutputError, cuts};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Unit;
use chalkcourse_takeoff::{Line, Takeoff, number};

const COLUMNS: [&str; 22] = [
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
    "Stage",
    "State",
    "From stock",
    "Waste by geometry %",
    "Taxed",
    "Crew",
];

/// The order as CSV for a spreadsheet: UTF-8, one record per row, every cell quoted, and no cell that a spreadsheet would take
/// for a formula. The first column is the kind of row: `job`, `kit`, `rule book`, `prices`, `part`, `off`, `cut`, `goods`,
/// `labour`, `sales tax`, `delivery`, `cost`, `overhead`, `profit`, `total`, `no price`, `crew`, `note`, `finding`, `waiver`,
/// `caution`. The `part` rows add up to `goods` and `labour`, those with tax and delivery to `cost`, and so on. Lengths are
/// decimal feet or metres, areas square feet or square metres.
///
/// # Errors
/// [`OutputError::Csv`] if the writer fails, which only lack of memory could cause.
pub fn to_csv(takeoff: &Takeoff, header: &Header, units: Units) -> Result<String, OutputError> {
    let mut rows = vec![COLUMNS.map(str::to_owned)];
    for (record, name) in [
        ("job", &header.job),
        ("kit", &header.kit),
        ("rule book", &header.rule_book),
        ("prices", &header.prices),
    ] {
        rows.push(note(record, name));
    }
    for line in &takeoff.lines {
        rows.push(part(takeoff, line, units));
    }
    for line in &takeoff.off {
        let mut cells = part(takeoff, line, units);
        "off".clone_into(&mut cells[0]);
        rows.push(cells);
    }
    for (number, _, cuts) in cuts::cut_lists(takeoff, units) {
        for cut in cuts {
            let mut cells = note("cut", &cut);
            number.clone_into(&mut cells[2]);
            rows.push(cells);
        }
    }
    let totals = &takeoff.totals;
    for (record, amount) in [
        ("goods", Some(totals.goods)),
        ("labour", Some(totals.labour)),
        ("sales tax", totals.tax),
        ("delivery", totals.delivery),
        ("cost", Some(totals.cost)),
        ("overhead", Some(totals.overhead)),
        ("profit", Some(totals.profit)),
        ("total", Some(totals.total)),
    ] {
        let mut cells = note(record, "");
        cells[13] = amount.map_or_else(|| "not known".to_owned(), |amount| amount.to_string());
        cells[14].clone_from(&takeoff.currency);
        rows.push(cells);
    }
    for crew in &takeoff.crews {
        let mut cells = note("crew", &crew.crew.now());
        cells[4] = number(crew.person_hours);
        "h".clone_into(&mut cells[5]);
        cells[15] = format!("{} people, {} h on the clock", crew.people, number(crew.hours));
        rows.push(cells);
    }
    for number in &takeoff.unpriced {
        let mut missing = note("no price", "Not in the total");
        missing[2].clone_from(number);
        rows.push(missing);
    }
    let notes: Vec<String> = takeoff.notes.iter().map(ToString::to_string).collect();
    for (record, entries) in [("note", &notes), ("finding", &header.findings), ("waiver", &header.waivers)] {
        for entry in entries {
            rows.push(note(record, entry));
        }
    }
    rows.push(note("caution", &header.caution));
    write_rows(rows)
}

/// Rows as CSV: every cell quoted and formula-safe.
pub(super) fn write_rows<const N: usize>(
    rows: impl IntoIterator<Item = [String; N]>,
) -> Result<String, OutputError> {
    let failed = |error: &dyn std::fmt::Display| OutputError::Csv(error.to_string());
    let mut writer = csv::WriterBuilder::new().quote_style(csv::QuoteStyle::Always).from_writer(Vec::new());
    for row in rows {
        writer.write_record(row.iter().map(|cell| safe_cell(cell))).map_err(|error| failed(&error))?;
    }
    let bytes = writer.into_inner().map_err(|error| failed(&error))?;
    String::from_utf8(bytes).map_err(|error| failed(&error))
}

/// Order lines to paste into a spreadsheet: a header and one row per line, tab-separated, every cell formula-safe; the sentences
/// of `below` go in the name column.
pub fn lines_for_spreadsheet(lines: &[&Line], units: Units, below: &[String]) -> String {
    let head = ["Number", "Name", "Need", "Unit", "Packages", "Package", "Price a package", "Cost"];
    let mut out = head.join("\t");
    out.push('\n');
    for line in lines {
        let (unit, scale) = spreadsheet_unit(line.unit, units);
        let money = |amount: Option<rust_decimal::Decimal>| amount.map(|a| a.to_string()).unwrap_or_default();
        let cells = [
            line.number.clone(),
            line.name.to_string(),
            number(line.need * scale),
            unit.to_owned(),
            line.packages.to_string(),
            line.package.name().to_string(),
            money(line.price),
            money(line.cost),
        ];
        out.push_str(&cells.map(|cell| safe_cell(&cell)).join("\t"));
        out.push('\n');
    }
    for sentence in below {
        out.push('\t');
        out.push_str(&safe_cell(sentence));
        out.push('\n');
    }
    out
}

fn note(record: &str, name: &str) -> [String; COLUMNS.len()] {
    let mut cells: [String; COLUMNS.len()] = Default::default();
    record.clone_into(&mut cells[0]);
    name.clone_into(&mut cells[3]);
    cells
}

/// The unit a spreadsheet gets, and how many of it make one of ours: decimal feet or metres, square feet or square metres, hours,
/// pounds or kilograms.
pub fn spreadsheet_unit(unit: Unit, units: Units) -> (&'static str, f64) {
    match (unit, units) {
        (Unit::Each, _) => ("each", 1.0),
        (Unit::Length, Units::FeetInches) => ("ft", Length::from_metres(1.0).feet()),
        (Unit::Length, Units::Metric) => ("m", 1.0),
        (Unit::Area, Units::FeetInches) => ("sq ft", Length::from_metres(1.0).feet().powi(2)),
        (Unit::Area, Units::Metric) => ("sq m", 1.0),
        (Unit::Time, _) => ("h", 1.0),
        (Unit::Mass, Units::FeetInches) => ("lb", 1.0 / 0.453_592_37),
        (Unit::Mass, Units::Metric) => ("kg", 1.0),
    }
}

fn part(takeoff: &Takeoff, line: &Line, units: Units) -> [String; COLUMNS.len()] {
    let (unit, scale) = spreadsheet_unit(line.unit, units);
    let money = |amount: Option<rust_decimal::Decimal>| match amount {
        Some(amount) => amount.to_string(),
        None => "no price".to_owned(),
    };
    [
        "part".to_owned(),
        line.group.name().to_string(),
        line.number.clone(),
        line.name.to_string(),
        number(line.need * scale),
        unit.to_owned(),
        number(line.waste * 100.0),
        number(line.with_waste * scale),
        line.packages.to_string(),
        line.package.name().to_string(),
        number(line.holds * scale),
        number(line.ordered * scale),
        money(line.price),
        if line.price.is_some() && line.cost.is_none() { "too large".into() } else { money(line.cost) },
        takeoff.currency.clone(),
        format!("{} [{}]", count_words(line, units), line.source),
        line.stage.name().to_string(),
        state_words(line, units).unwrap_or_default(),
        number(line.from_stock * scale),
        line.waste_by_geometry.map_or_else(String::new, |cut_off| number(cut_off * 100.0)),
        if line.taxed { "yes" } else { "no" }.to_owned(),
        line.crew.clone().unwrap_or_default(),
    ]
}

/// Makes a cell formula-safe: an apostrophe goes in front of every formula character where a formula could start (at the start,
/// after blanks, and after the separators at which a spreadsheet of another locale may split a cell). Control characters become
/// blanks, so that a cell stays on its line.
///
/// Characters as in the OWASP page on CSV injection: `=`, `+`, `-`, `@`, tab, carriage return, line feed, and the full-width
/// forms of the first four. Negative numbers are escaped too: an order has none.
pub fn safe_cell(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 1);
    let mut start = true;
    // A leading tab or line break is itself such a character.
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
