//! Page layout: text and tables on paper.

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

/// A printed sheet.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    /// Title, in large type.
    pub title: String,
    /// Small lines below the title: what the sheet is of.
    pub under: Vec<String>,
    /// Stop findings and waivers, in full below the title; with a stop, every page is marked "not to be built".
    pub standing: Standing,
    /// Footer of each page, beside the page number.
    pub foot: String,
    /// Whether the paper lies on its long side, as a wide drawing needs it.
    pub landscape: bool,
    /// Contents, top to bottom.
    pub parts: Vec<Part>,
}

impl Sheet {
    /// Width and height of the paper, points.
    fn paper(&self) -> (f32, f32) {
        if self.landscape { (PAPER.1, PAPER.0) } else { PAPER }
    }

    /// Width between the margins, points.
    fn wide(&self) -> f32 {
        self.paper().0 - 2.0 * MARGIN
    }
}

/// An element of a sheet.
#[derive(Clone, Debug)]
pub enum Part {
    /// A heading, kept with what follows.
    Heading(String),
    /// A paragraph.
    Text(String),
    /// A paragraph with a rule down its side, for what must not be missed.
    Caution(String),
    /// A drawing, scaled to the paper width or to `height` points, whichever is smaller.
    Drawing {
        /// The drawing.
        drawing: Drawing,
        /// Maximum height, points.
        height: f32,
    },
    /// A label to cut out and stick on.
    Label(StickOn),
    /// A table; its header is repeated on each page.
    Table {
        /// Columns.
        columns: Vec<Column>,
        /// Rows.
        rows: Vec<Row>,
    },
}

/// A label to cut out: large letters, and smaller ones below, in a colour of their own on a ground.
#[derive(Clone, Debug)]
pub struct StickOn {
    /// What stands in large letters.
    pub title: String,
    /// What stands below.
    pub text: String,
    /// Type size of both, points.
    pub sizes: (f32, f32),
    /// Red, green and blue of the ground …
    pub ground: [u8; 3],
    /// … and of the letters.
    pub ink: [u8; 3],
}

/// A column of a table.
#[derive(Clone, Debug)]
pub struct Column {
    title: &'static str,
    share: f32,
    right: bool,
}

impl Column {
    /// A text column; `share` is its width relative to the other columns.
    pub fn words(title: &'static str, share: f32) -> Self {
        Self { title, share, right: false }
    }

    /// A right-aligned column of numbers.
    pub fn numbers(title: &'static str, share: f32) -> Self {
        Self { title, share, right: true }
    }
}

/// A row of a table.
#[derive(Clone, Debug)]
pub enum Row {
    /// One cell per column. `\u{2610}` is a checkbox.
    Cells(Vec<String>),
    /// The same in bold below a rule: a total.
    Sum(Vec<String>),
    /// Small print below a row, from the second column on.
    Note(String),
}

/// Letter paper (ANSI/ASME Y14.1: 8.5 × 11 in), in points of 1/72 in.
const PAPER: (f32, f32) = (612.0, 792.0);
const MARGIN: f32 = 43.0;
/// Minimum room on a page between header and footer.
const LEAST: f32 = 240.0;
/// Gap between columns.
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
/// The watermark, behind everything else.
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
    /// A watermark from lower left to upper right.
    Across(String),
}

/// The contents of a page, and its text line by line, top to bottom.
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

/// The text of a sheet as laid out, page by page and line by line; labels of drawings are left out.
///
/// # Errors
/// As [`pdf`].
pub fn words(sheet: &Sheet) -> Result<Vec<Vec<String>>, SheetError> {
    let letters = Letters::both()?;
    Ok(set(sheet, &letters)?.iter().map(Page::words).collect())
}

/// Lays out the pages of a sheet, with header and footer.
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

/// A sheet as a PDF file on letter paper, upright or on its long side.
///
/// # Errors
/// [`SheetError`] if the writer fails, or a page has no room for its caution.
pub fn pdf(sheet: &Sheet) -> Result<Vec<u8>, SheetError> {
    let letters = Letters::both()?;
    let pages = set(sheet, &letters)?;
    let mut document = Document::new();
    document.set_metadata(Metadata::new().title(sheet.title.clone()).language(spoken().code().to_owned()));
    let paper = sheet.paper();
    let settings = PageSettings::from_wh(paper.0, paper.1).ok_or(SheetError::Letters)?;
    for Page { marks } in pages {
        let mut page = document.start_page_with(settings.clone());
        let mut surface = page.surface();
        for mark in marks {
            draw(&mut surface, &letters, paper, mark);
        }
        surface.finish();
        page.finish();
    }
    document.finish().map_err(|error| SheetError::Pdf(format!("{error:?}")))
}

fn draw(surface: &mut Surface<'_>, [plain, bold]: &[Letters; 2], paper: (f32, f32), mark: Mark) {
    let fill = |[red, green, blue]: Ink| {
        Some(Fill { paint: rgb::Color::new(red, green, blue).into(), ..Fill::default() })
    };
    match mark {
        Mark::Drawing { at, scale, drawing } => draw_all(surface, plain, at, scale, &drawing),
        Mark::Across(text) => {
            // As large as fits, slanted, within the margins, which a printer leaves white.
            let (wide, high) = (paper.0 - 2.0 * MARGIN, paper.1 - 2.0 * MARGIN);
            let (sin, cos) = high.atan2(wide).sin_cos();
            let long = bold.width(&text, 1.0);
            let size = (wide / (long * cos + LEAD * sin)).min(high / (long * sin + LEAD * cos));
            surface.push_transform(&Transform::from_row(cos, -sin, sin, cos, paper.0 / 2.0, paper.1 / 2.0));
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
