//! Text and tables on pages of paper.

mod drawn;
mod ends;
mod setter;

use crate::SheetError;
use crate::drawing::Drawing;
use crate::letters::Letters;
use chalkcourse_plan::Standing;
use chalkcourse_words::spoken;
use drawn::draw_all;
use ends::{Foot, Head};
use krilla::Document;
use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point, Rect, Transform};
use krilla::metadata::Metadata;
use krilla::page::PageSettings;
use krilla::paint::Fill;
use krilla::surface::Surface;
use krilla::text::TextDirection;
use setter::Setter;

/// What stands on paper.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    /// What it is, large.
    pub title: String,
    /// What it is of: small lines below the title.
    pub under: Vec<String>,
    /// What stops the job and what was waived: all of it below the title, and across each page that it is not to be built.
    pub standing: Standing,
    /// What is printed at the foot of each page, with the page's number.
    pub foot: String,
    /// What stands on it, from the top.
    pub parts: Vec<Part>,
}

/// A part of a sheet.
#[derive(Clone, Debug)]
pub enum Part {
    /// A heading. It stays with what follows.
    Heading(String),
    /// A paragraph.
    Text(String),
    /// A paragraph with a line down its side, for what must not be missed.
    Caution(String),
    /// A drawing, as large as the width of the paper and a height in points let it be.
    Drawing {
        /// What is drawn.
        drawing: Drawing,
        /// The most height that it takes.
        height: f32,
    },
    /// A table; its head stands again on each page.
    Table {
        /// Its columns.
        columns: Vec<Column>,
        /// Its rows.
        rows: Vec<Row>,
    },
}

/// A column of a table.
#[derive(Clone, Debug)]
pub struct Column {
    title: &'static str,
    share: f32,
    right: bool,
}

impl Column {
    /// A column of words; `share` is its width against the other columns.
    pub fn words(title: &'static str, share: f32) -> Self {
        Self { title, share, right: false }
    }

    /// A column of numbers, which stand at its right.
    pub fn numbers(title: &'static str, share: f32) -> Self {
        Self { title, share, right: true }
    }
}

/// A row of a table.
#[derive(Clone, Debug)]
pub enum Row {
    /// A cell for each column. `\u{2610}` is a box to tick.
    Cells(Vec<String>),
    /// The same, in bold below a line: a sum.
    Sum(Vec<String>),
    /// Small words below a row, from the second column on.
    Note(String),
}

/// Letter paper (ANSI/ASME Y14.1: 8.5 × 11 in), in points of 1/72 in.
const PAPER: (f32, f32) = (612.0, 792.0);
const MARGIN: f32 = 43.0;
/// A page has at least this much room between its head and its foot.
const LEAST: f32 = 240.0;
const WIDE: f32 = PAPER.0 - 2.0 * MARGIN;
/// Between columns.
const GAP: f32 = 7.0;
const BODY: f32 = 8.6;
const SMALL: f32 = 7.2;
const LEAD: f32 = 1.28;

/// Red, green, blue.
type Ink = [u8; 3];

const INK: Ink = [20, 22, 26];
/// 7:1 on white.
const SOFT: Ink = [84, 88, 96];
const LINE: Ink = [150, 154, 162];
/// Across a page, behind all else.
const PALE: Ink = [244, 222, 222];
const STOP: Ink = [150, 20, 20];

enum Mark {
    Drawing {
        at: (f32, f32),
        scale: f32,
        drawing: Drawing,
    },
    Text {
        at: (f32, f32),
        size: f32,
        bold: bool,
        ink: Ink,
        text: String,
    },
    Bar {
        at: (f32, f32),
        size: (f32, f32),
        ink: Ink,
    },
    /// Large pale words from the lower left to the upper right.
    Across(String),
}

/// What is put on a page, and what it says from its top to its foot, line by line.
struct Page {
    marks: Vec<Mark>,
}

impl Page {
    fn words(&self) -> Vec<String> {
        let text = |mark: &Mark| match mark {
            Mark::Text { text, .. } | Mark::Across(text) => Some(text.clone()),
            Mark::Drawing { .. } | Mark::Bar { .. } => None,
        };
        self.marks.iter().filter_map(text).collect()
    }
}

/// What a sheet says, page by page and line by line, as it is set; the words of drawings are left out.
///
/// # Errors
/// As [`pdf`].
pub fn words(sheet: &Sheet) -> Result<Vec<Vec<String>>, SheetError> {
    let letters = Letters::both()?;
    Ok(set(sheet, &letters)?.iter().map(Page::words).collect())
}

/// The pages of a sheet with head and foot.
fn set(sheet: &Sheet, letters: &[Letters; 2]) -> Result<Vec<Page>, SheetError> {
    let foot = Foot::of(sheet, letters);
    let head = Head::of(sheet, letters);
    if foot.top - head.bottom < LEAST {
        return Err(SheetError::NoRoom);
    }
    let pages = Setter::set(sheet, letters, head.bottom, foot.top);
    let count = pages.len();
    let whole = (1..).zip(pages).map(|(number, mut body)| {
        let mut marks = head.marks();
        marks.append(&mut body);
        marks.extend(foot.marks(letters, number, count));
        Page { marks }
    });
    Ok(whole.collect())
}

/// A sheet as a PDF file on letter paper.
///
/// # Errors
/// [`SheetError`] when the writer gives up, or a page can't hold its caution.
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, SheetError> {
    let letters = Letters::both()?;
    let pages = set(sheet, &letters)?;
    let mut document = Document::new();
    document.set_metadata(Metadata::new().title(sheet.title.clone()).language(spoken().code().to_owned()));
    let settings = PageSettings::from_wh(PAPER.0, PAPER.1).ok_or(SheetError::Letters)?;
    for Page { marks } in pages {
        let mut page = document.start_page_with(settings.clone());
        let mut surface = page.surface();
        for mark in marks {
            draw(&mut surface, &letters, mark);
        }
        surface.finish();
        page.finish();
    }
    document.finish().map_err(|error| SheetError::Pdf(format!("{error:?}")))
}

fn draw(surface: &mut Surface<'_>, [plain, bold]: &[Letters; 2], mark: Mark) {
    let fill = |[red, green, blue]: Ink| {
        Some(Fill { paint: rgb::Color::new(red, green, blue).into(), ..Fill::default() })
    };
    match mark {
        Mark::Drawing { at, scale, drawing } => draw_all(surface, plain, at, scale, &drawing),
        Mark::Across(text) => {
            // As large as its slanted box lets it be within the margins, which a printer leaves white.
            let (wide, high) = (WIDE, PAPER.1 - 2.0 * MARGIN);
            let (sin, cos) = high.atan2(wide).sin_cos();
            let long = bold.width(&text, 1.0);
            let size = (wide / (long * cos + LEAD * sin)).min(high / (long * sin + LEAD * cos));
            surface.push_transform(&Transform::from_row(cos, -sin, sin, cos, PAPER.0 / 2.0, PAPER.1 / 2.0));
            surface.set_fill(fill(PALE));
            let at = Point::from_xy(-bold.width(&text, size) / 2.0, size * 0.35);
            surface.draw_text(at, bold.font.clone(), size, &text, false, TextDirection::LeftToRight);
            surface.pop();
        }
        Mark::Text { at, size, bold: heavy, ink, text } => {
            surface.set_fill(fill(ink));
            let font = if heavy { &bold.font } else { &plain.font };
            let at = Point::from_xy(at.0, at.1);
            surface.draw_text(at, font.clone(), size, &text, false, TextDirection::LeftToRight);
        }
        Mark::Bar { at, size, ink } => {
            let mut path = PathBuilder::new();
            if let Some(rect) = Rect::from_xywh(at.0, at.1, size.0, size.1) {
                path.push_rect(rect);
            }
            if let Some(path) = path.finish() {
                surface.set_fill(fill(ink));
                surface.draw_path(&path);
            }
        }
    }
}
