//! A table with a header row, from CSV or a workbook: used for prices and stock.

use crate::percent_cells;
use calamine::{Data, Reader};
use chalkcourse_words::{Said, Say, later as words};
use rust_decimal::Decimal;
use std::str::FromStr;

/// Most rows to search for the header, since titles may be above it.
const TITLES: usize = 20;

/// Rows under a header, cells as text.
pub(crate) struct Table {
    header: Vec<String>,
    rows: Vec<Row>,
    /// Number of rows above the header.
    titles: usize,
    /// Names of the workbook's sheets that were not read.
    other_sheets: Vec<String>,
    /// What a row is called: "line" of a text, "row" of a workbook.
    word: Say,
}

pub(crate) struct Row {
    cells: Vec<Cell>,
    number: u64,
    word: Say,
}

/// A cell, and what its file says about its number.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Cell {
    pub(crate) text: String,
    pub(crate) kind: Kind,
}

/// What the file says about a cell.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Kind {
    /// Text: the number format is up to the author.
    #[default]
    Text,
    /// A number in a workbook, its text with a decimal point.
    Number,
    /// A number in a workbook with a percent format; its text is the percentage.
    Percent,
}

impl Table {
    /// The delimiter is comma, semicolon or tab: the one with which some row has all `columns`, or else the most
    /// frequent one in the first row.
    pub(crate) fn from_csv(text: &str, columns: &[&[&str]]) -> Result<Self, Said> {
        let text = text.trim_start_matches('\u{feff}');
        let first = text.lines().next().unwrap_or_default();
        let count = |c: char| first.matches(c).count();
        let most = [';', '\t'].into_iter().fold(',', |best, c| if count(c) > count(best) { c } else { best });
        let mut usual = None;
        for delimiter in [most, ',', ';', '\t'] {
            let rows = csv_rows(text, delimiter)?;
            if header_at(&rows, columns).is_some() {
                return Self::of(rows, columns, words::job::LINE);
            }
            usual.get_or_insert(rows);
        }
        Self::of(usual.unwrap_or_default(), columns, words::job::LINE)
    }

    /// Reads the first sheet of a workbook that has all `columns`. A number becomes the shortest decimal that
    /// represents it, which is what was typed.
    pub(crate) fn from_workbook(bytes: &[u8], columns: &[&[&str]]) -> Result<Self, Said> {
        // The reader overflows on a cell name far outside any sheet; that is a bad file, and must not end the program.
        std::panic::catch_unwind(|| Self::from_workbook_or_panic(bytes, columns))
            .unwrap_or_else(|_| Err(words::job::THE_WORKBOOK_IS_DAMAGED_A.into()))
    }

    fn from_workbook_or_panic(bytes: &[u8], columns: &[&[&str]]) -> Result<Self, Said> {
        let mut book =
            calamine::open_workbook_auto_from_rs(std::io::Cursor::new(bytes)).map_err(|e| e.to_string())?;
        let names = book.sheet_names();
        let mut first = None;
        for (at, name) in names.iter().enumerate() {
            let Some(sheet) = book.worksheet_range_at(at) else { continue };
            let sheet = sheet.map_err(|e| e.to_string())?;
            let (top, left) = sheet.start().unwrap_or_default();
            let percent = percent_cells::of_sheet(bytes, name);
            let rows = (top..).zip(sheet.rows()).map(|(row, cells)| {
                let cells =
                    (left..).zip(cells).map(|(column, data)| cell(data, percent.contains(&(row, column))));
                (u64::from(row) + 1, cells.collect::<Vec<Cell>>())
            });
            let rows: Vec<_> = rows.collect();
            let here = header_at(&rows, columns).is_some();
            if here || first.is_none() {
                first = Some((at, rows));
            }
            if here {
                break;
            }
        }
        let (read, rows) = first.ok_or(words::job::THE_WORKBOOK_HAS_NO_SHEET)?;
        let mut table = Self::of(rows, columns, words::common::ROW)?;
        let others = names.into_iter().enumerate().filter(|(at, _)| *at != read);
        table.other_sheets = others.map(|(_, name)| name).collect();
        Ok(table)
    }

    fn of(rows: Vec<(u64, Vec<Cell>)>, columns: &[&[&str]], word: Say) -> Result<Self, Said> {
        let at = header_at(&rows, columns);
        let mut rows = rows.into_iter().filter(|(_, cells)| filled(cells));
        let titles = at.unwrap_or(0);
        let header = rows
            .nth(titles)
            .ok_or(words::job::THERE_IS_NO_HEADER_ROW)?
            .1
            .iter()
            .map(|cell| cell.text.trim().to_lowercase())
            .collect();
        let rows = rows.map(|(number, cells)| Row { cells, number, word }).collect();
        Ok(Self { header, rows, titles, other_sheets: Vec::new(), word })
    }

    /// The column with one of these names, ignoring case; the error asks for the first name.
    pub(crate) fn column(&self, names: &[&str]) -> Result<usize, Said> {
        self.header.iter().position(|cell| names.contains(&cell.as_str())).ok_or_else(|| {
            let known = self.header.iter().map(|cell| format!("{cell:?}")).collect::<Vec<_>>().join(", ");
            let name = names.first().copied().unwrap_or_default();
            let word = self.word;
            words::job::the_header_needs_a_column(&format_args!("{name:?}"), &word, &known)
        })
    }

    pub(crate) fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// How many nonempty rows are above the header.
    pub(crate) fn titles(&self) -> usize {
        self.titles
    }

    /// The workbook's sheets that were not read.
    pub(crate) fn other_sheets(&self) -> &[String] {
        &self.other_sheets
    }

    /// The first row with more cells than the header, a sign of an unquoted decimal comma.
    pub(crate) fn longer_row(&self) -> Option<&Row> {
        let wide = self.header.len();
        self.rows.iter().find(|row| row.cells.iter().skip(wide).any(|cell| !cell.text.is_empty()))
    }
}

fn csv_rows(text: &str, delimiter: char) -> Result<Vec<(u64, Vec<Cell>)>, Said> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(delimiter as u8)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    for record in reader.records() {
        let record = record.map_err(|error| error.to_string())?;
        let number = record.position().map_or(0, csv::Position::line);
        let cells = record.iter().map(|text| Cell { text: text.to_owned(), kind: Kind::Text });
        rows.push((number, cells.collect()));
    }
    Ok(rows)
}

fn cell(data: &Data, percent: bool) -> Cell {
    let (text, kind) = match data {
        Data::Empty => (String::new(), Kind::Text),
        Data::String(text) => (text.trim().to_owned(), Kind::Text),
        Data::Float(number) if percent => {
            // Multiply in decimal: 0.0825 is exactly 8.25 %.
            let share = Decimal::from_str(&number.to_string()).ok();
            let shown = share.and_then(|share| share.checked_mul(Decimal::ONE_HUNDRED));
            (
                shown.map_or_else(|| number.to_string(), |percent| percent.normalize().to_string()),
                Kind::Percent,
            )
        }
        Data::Float(number) => (number.to_string(), Kind::Number),
        Data::Int(number) => (number.to_string(), Kind::Number),
        Data::DateTime(day) => {
            let (year, month, day, ..) = day.to_ymd_hms_milli();
            (format!("{year}-{month:02}-{day:02}"), Kind::Text)
        }
        other => (other.to_string(), Kind::Text),
    };
    Cell { text, kind }
}

fn filled(cells: &[Cell]) -> bool {
    cells.iter().any(|cell| !cell.text.is_empty())
}

/// The index of the header among the nonempty rows: the first with a cell for each of `columns`.
fn header_at(rows: &[(u64, Vec<Cell>)], columns: &[&[&str]]) -> Option<usize> {
    let has = |cells: &[Cell], names: &[&str]| {
        cells.iter().any(|cell| names.contains(&cell.text.trim().to_lowercase().as_str()))
    };
    let mut filled = rows.iter().filter(|(_, cells)| filled(cells)).take(TITLES);
    filled.position(|(_, cells)| columns.iter().all(|names| has(cells, names)))
}

impl Row {
    /// A cell; empty if the row is shorter.
    pub(crate) fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| cell.text.trim())
    }

    /// What the file says about a cell.
    pub(crate) fn kind(&self, column: usize) -> Kind {
        self.cells.get(column).map_or(Kind::Text, |cell| cell.kind)
    }

    /// "line 7"
    pub(crate) fn place(&self) -> String {
        format!("{} {}", self.word, self.number)
    }
}
