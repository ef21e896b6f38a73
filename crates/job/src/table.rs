//! A table with a header row, out of CSV or a workbook: prices and stock come so.

use calamine::{Data, Reader};
use chalkcourse_words::pick;

/// Rows under a header, cells as texts.
pub(crate) struct Table {
    header: Vec<String>,
    rows: Vec<Row>,
    /// What a row is called for people: "line" of a text, "row" of a workbook.
    word: &'static str,
}

pub(crate) struct Row {
    cells: Vec<String>,
    number: u64,
    word: &'static str,
}

impl Table {
    /// Comma, semicolon or tab: what the header row has most of.
    pub(crate) fn from_csv(text: &str) -> Result<Self, String> {
        let text = text.trim_start_matches('\u{feff}');
        let first = text.lines().next().unwrap_or_default();
        let count = |c: char| first.matches(c).count();
        let delimiter =
            [';', '\t'].into_iter().fold(',', |best, c| if count(c) > count(best) { c } else { best });
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
            rows.push((number, record.iter().map(str::to_owned).collect()));
        }
        Self::of(rows, pick("line", "línea"))
    }

    /// The first sheet of a workbook. A number is the shortest decimal that is that number, which is what was typed.
    pub(crate) fn from_workbook(bytes: &[u8]) -> Result<Self, String> {
        // The reader overflows on the name of a cell far outside any sheet; that is a bad file, not the end of the program.
        std::panic::catch_unwind(|| Self::from_workbook_or_panic(bytes)).unwrap_or_else(|_| {
            Err(pick(
                "the workbook is damaged: a cell of it can't be read",
                "el libro de cálculo está dañado: no se puede leer una celda",
            )
            .to_owned())
        })
    }

    fn from_workbook_or_panic(bytes: &[u8]) -> Result<Self, String> {
        let mut book =
            calamine::open_workbook_auto_from_rs(std::io::Cursor::new(bytes)).map_err(|e| e.to_string())?;
        let sheet = book
            .worksheet_range_at(0)
            .ok_or(pick("the workbook has no sheet", "el libro de cálculo no tiene hojas"))?
            .map_err(|e| e.to_string())?;
        let top = sheet.start().map_or(0, |(row, _)| u64::from(row));
        let text = |cell: &Data| match cell {
            Data::Empty => String::new(),
            Data::String(text) => text.trim().to_owned(),
            Data::Float(number) => format!("{number}"),
            other => other.to_string(),
        };
        let rows = sheet.rows().zip(top + 1..).map(|(row, number)| (number, row.iter().map(text).collect()));
        Self::of(rows.collect(), "row")
    }

    fn of(rows: Vec<(u64, Vec<String>)>, word: &'static str) -> Result<Self, String> {
        let mut rows = rows
            .into_iter()
            .filter(|(_, cells)| cells.iter().any(|cell| !cell.is_empty()))
            .map(|(number, cells)| Row { cells, number, word });
        let header = rows.next().ok_or("there is no header row")?;
        let header = header.cells.iter().map(|cell| cell.trim().to_lowercase()).collect();
        Ok(Self { header, rows: rows.collect(), word })
    }

    /// The column of that name, whatever its capitals.
    pub(crate) fn column(&self, name: &str) -> Result<usize, String> {
        self.header.iter().position(|cell| cell == name).ok_or_else(|| {
            let known = self.header.iter().map(|cell| format!("{cell:?}")).collect::<Vec<_>>().join(", ");
            format!("the first {} needs a column {name:?}; it has {known}", self.word)
        })
    }

    pub(crate) fn rows(&self) -> &[Row] {
        &self.rows
    }
}

impl Row {
    /// A cell; empty where the row is shorter.
    pub(crate) fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| cell.trim())
    }

    /// "line 7"
    pub(crate) fn place(&self) -> String {
        format!("{} {}", self.word, self.number)
    }
}
