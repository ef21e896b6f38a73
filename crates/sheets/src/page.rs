//! Text and tables on pages of paper.

use crate::SheetError;
use crate::drawing::{self, Drawing, Shape};
use crate::letters::Letters;
use chalkcourse_geometry::DVec2;
use chalkcourse_plan::{NOT_TO_BUILD, Standing};
use chalkcourse_words::{pick, spoken, tell};
use krilla::Document;
use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point, Rect, Transform};
use krilla::metadata::Metadata;
use krilla::page::PageSettings;
use krilla::paint::{Fill, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::TextDirection;

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
/// Between what is on a page and the lines at its foot.
const FOOT: f32 = 18.0;
/// Below the last line at the foot.
const UNDER_FOOT: f32 = 25.0;
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

/// What stands at the top of each page of a job that something stops.
struct Head {
    lines: Vec<String>,
    /// Where it ends, points from the top of the paper.
    bottom: f32,
    across: bool,
}

impl Head {
    fn of(sheet: &Sheet, letters: &[Letters; 2]) -> Self {
        let stops = &sheet.standing.stops;
        let Some(first) = stops.first() else {
            return Self { lines: Vec::new(), bottom: MARGIN, across: false };
        };
        let mut text = format!("{}: {first}", NOT_TO_BUILD.now());
        match stops.len() - 1 {
            0 => {}
            1 => {
                text.push_str(pick(" One more finding is on page 1.", " Otro hallazgo está en la página 1."));
            }
            more => text.push_str(&tell!(
                " {more} more findings are on page 1.",
                " Otros {more} hallazgos están en la página 1."
            )),
        }
        let lines = letters[1].lines(&text, BODY, WIDE - 2.0 * GAP);
        let bottom = MARGIN - 14.0 + lines.len() as f32 * BODY * LEAD + 14.0;
        Self { lines, bottom, across: true }
    }

    fn marks(&self) -> Vec<Mark> {
        if !self.across {
            return Vec::new();
        }
        let (top, high) = (MARGIN - 14.0, self.lines.len() as f32 * BODY * LEAD);
        let mut marks = vec![Mark::Across(NOT_TO_BUILD.now().to_owned())];
        marks.push(Mark::Bar { at: (MARGIN, top - 4.0), size: (WIDE, 1.4), ink: STOP });
        marks.push(Mark::Bar { at: (MARGIN, top + high + 4.0), size: (WIDE, 1.4), ink: STOP });
        marks.extend(self.lines.iter().enumerate().map(|(nth, text)| Mark::Text {
            at: (MARGIN + GAP, top + BODY + nth as f32 * BODY * LEAD),
            size: BODY,
            bold: true,
            ink: STOP,
            text: text.clone(),
        }));
        marks
    }
}

/// The caution at the foot of each page, all of it.
struct Foot {
    lines: Vec<String>,
    /// Where what is on a page ends, points from the top of the paper.
    top: f32,
}

impl Foot {
    fn of(sheet: &Sheet, letters: &[Letters; 2]) -> Self {
        // Room for the number of the page, whichever it is.
        let room = letters[0].width(&number_of(9999, 9999), SMALL) + 2.0 * GAP;
        let lines = letters[0].lines(&sheet.foot, SMALL, WIDE - room);
        let high = lines.len().max(1) as f32 * SMALL * LEAD;
        Self { lines, top: PAPER.1 - UNDER_FOOT - high - FOOT }
    }

    fn marks(&self, letters: &[Letters; 2], page: usize, of: usize) -> Vec<Mark> {
        let number = number_of(page, of);
        let mut marks = vec![Mark::Bar { at: (MARGIN, self.top + 8.0), size: (WIDE, 0.5), ink: LINE }];
        let text = |x: f32, line: usize, text: String| Mark::Text {
            at: (x, self.top + FOOT + line as f32 * SMALL * LEAD),
            size: SMALL,
            bold: false,
            ink: SOFT,
            text,
        };
        marks.push(text(PAPER.0 - MARGIN - letters[0].width(&number, SMALL), 0, number));
        marks.extend(self.lines.iter().enumerate().map(|(line, words)| text(MARGIN, line, words.clone())));
        marks
    }
}

fn number_of(page: usize, of: usize) -> String {
    tell!("page {page} of {of}", "página {page} de {of}")
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

/// Points to a metre, and the height in points, of a drawing that may take so much.
fn scaled(drawing: &Drawing, most: f32) -> (f32, f32) {
    let size = drawing.bounds.size().as_vec2();
    let scale = (WIDE / size.x).min(most / size.y);
    (scale, size.y * scale)
}

/// A drawing with its upper left corner at a place of the page, so many points to a metre.
fn draw_all(surface: &mut Surface<'_>, letters: &Letters, at: (f32, f32), scale: f32, drawing: &Drawing) {
    let place = |p: DVec2| {
        let (x, y) = ((p.x - drawing.bounds.min.x) as f32, (drawing.bounds.max.y - p.y) as f32);
        (at.0 + x * scale, at.1 + y * scale)
    };
    let path = |points: &[DVec2], closed: bool| {
        let mut path = PathBuilder::new();
        for (nth, (x, y)) in points.iter().map(|&p| place(p)).enumerate() {
            if nth == 0 { path.move_to(x, y) } else { path.line_to(x, y) }
        }
        if closed {
            path.close();
        }
        path.finish()
    };
    let color = |ink| match ink {
        drawing::Ink::Dark => INK,
        drawing::Ink::Soft => SOFT,
        drawing::Ink::Module => [201, 216, 234],
        drawing::Ink::Penetration => [217, 205, 184],
    };
    let paint = |[red, green, blue]: Ink| rgb::Color::new(red, green, blue).into();
    for shape in &drawing.shapes {
        match shape {
            Shape::Line { points, width, dashes, ink } => {
                let dash = (!dashes.is_empty()).then(|| StrokeDash { array: dashes.clone(), offset: 0.0 });
                surface.set_fill(None);
                surface.set_stroke(Some(Stroke {
                    paint: paint(color(*ink)),
                    width: *width,
                    dash,
                    ..Stroke::default()
                }));
                if let Some(path) = path(points, false) {
                    surface.draw_path(&path);
                }
            }
            Shape::Area { ring, ink } => {
                surface.set_fill(Some(Fill { paint: paint(color(*ink)), ..Fill::default() }));
                surface.set_stroke(Some(Stroke { paint: paint(INK), width: 0.5, ..Stroke::default() }));
                if let Some(path) = path(ring, true) {
                    surface.draw_path(&path);
                }
            }
            Shape::Words { at, turn, size, text } => {
                let text = letters.shown(text);
                let wide = letters.width(&text, *size);
                let (x, y) = place(*at);
                let (sin, cos) = (-*turn as f32).sin_cos();
                surface.push_transform(&Transform::from_row(cos, sin, -sin, cos, x, y));
                surface.set_stroke(None);
                surface.set_fill(Some(Fill { paint: paint([255, 255, 255]), ..Fill::default() }));
                let ground = Rect::from_xywh(-wide / 2.0 - 1.0, -size * 0.6, wide + 2.0, size * 1.2);
                let mut back = PathBuilder::new();
                if let Some(rect) = ground {
                    back.push_rect(rect);
                }
                if let Some(path) = back.finish() {
                    surface.draw_path(&path);
                }
                surface.set_fill(Some(Fill { paint: paint(INK), ..Fill::default() }));
                let at = Point::from_xy(-wide / 2.0, size * 0.35);
                surface.draw_text(at, letters.font.clone(), *size, &text, false, TextDirection::LeftToRight);
                surface.pop();
            }
        }
    }
    surface.set_stroke(None);
}

/// Sets a sheet page by page.
struct Setter<'a> {
    letters: &'a [Letters; 2],
    pages: Vec<Vec<Mark>>,
    /// How far down the page is full, points from the top of the paper.
    y: f32,
    /// Where what is on a page begins and ends.
    top: f32,
    bottom: f32,
}

impl<'a> Setter<'a> {
    fn set(sheet: &Sheet, letters: &'a [Letters; 2], top: f32, bottom: f32) -> Vec<Vec<Mark>> {
        let mut setter = Self { letters, pages: vec![Vec::new()], y: top, top, bottom };
        setter.words(&sheet.title, 16.0, true, INK, 0.0);
        setter.y += 2.0;
        for line in &sheet.under {
            setter.words(line, BODY, false, SOFT, 0.0);
        }
        setter.y += 4.0;
        for line in sheet.standing.lines() {
            setter.caution(&line);
        }
        for (nth, part) in sheet.parts.iter().enumerate() {
            match part {
                Part::Heading(text) => {
                    setter.y += 9.0;
                    // With some of what follows; a drawing is not cut.
                    let follows = match sheet.parts.get(nth + 1) {
                        Some(Part::Drawing { drawing, height }) => scaled(drawing, *height).1 + 40.0,
                        _ => 64.0,
                    };
                    setter.keep(follows);
                    setter.words(text, 11.0, true, INK, 0.0);
                    setter.y += 2.0;
                }
                Part::Text(text) => {
                    setter.words(text, BODY, false, INK, 0.0);
                    setter.y += 3.0;
                }
                Part::Caution(text) => setter.caution(text),
                Part::Drawing { drawing, height } => setter.drawing(drawing, *height),
                Part::Table { columns, rows } => setter.table(columns, rows),
            }
        }
        setter.pages
    }

    fn mark(&mut self, mark: Mark) {
        if let Some(page) = self.pages.last_mut() {
            page.push(mark);
        }
    }

    /// Begins a page where less than this is left. Whether it did.
    fn keep(&mut self, height: f32) -> bool {
        let full = self.y + height > self.bottom && self.y > self.top;
        if full {
            self.pages.push(Vec::new());
            self.y = self.top;
        }
        full
    }

    fn words(&mut self, text: &str, size: f32, bold: bool, ink: Ink, indent: f32) {
        let letters = &self.letters[usize::from(bold)];
        for line in letters.lines(text, size, WIDE - indent) {
            self.keep(size * LEAD);
            let at = (MARGIN + indent, self.y + size);
            self.mark(Mark::Text { at, size, bold, ink, text: line });
            self.y += size * LEAD;
        }
    }

    fn caution(&mut self, text: &str) {
        let indent = 10.0;
        let lines = self.letters[1].lines(text, BODY, WIDE - indent).len() as f32;
        let height = lines * BODY * LEAD;
        self.y += 4.0;
        self.keep(height);
        self.mark(Mark::Bar { at: (MARGIN, self.y), size: (3.0, height + 2.0), ink: INK });
        self.words(text, BODY, true, INK, indent);
        self.y += 6.0;
    }

    fn drawing(&mut self, drawing: &Drawing, height: f32) {
        let size = drawing.bounds.size().as_vec2();
        let (scale, height) = scaled(drawing, height);
        self.keep(height + 4.0);
        let at = (MARGIN + (WIDE - size.x * scale) / 2.0, self.y + 2.0);
        self.mark(Mark::Drawing { at, scale, drawing: drawing.clone() });
        self.y += height + 6.0;
    }

    fn table(&mut self, columns: &[Column], rows: &[Row]) {
        let shares: f32 = columns.iter().map(|column| column.share).sum();
        let room = WIDE - GAP * columns.len().saturating_sub(1) as f32;
        let mut left = MARGIN;
        let places: Vec<(f32, f32)> = columns
            .iter()
            .map(|column| {
                let width = room * column.share / shares;
                let place = (left, width);
                left += width + GAP;
                place
            })
            .collect();
        let titles: Vec<String> = columns.iter().map(|column| column.title.to_owned()).collect();
        self.keep(48.0);
        self.head(columns, &places, &titles);
        for row in rows {
            match row {
                Row::Cells(cells) => self.row(columns, &places, &titles, cells, false),
                Row::Sum(cells) => self.row(columns, &places, &titles, cells, true),
                Row::Note(text) => {
                    let indent = places.get(1).map_or(0.0, |(x, _)| x - MARGIN);
                    let lines = self.letters[0].lines(text, SMALL, WIDE - indent);
                    for line in lines {
                        if self.keep(SMALL * LEAD) {
                            self.head(columns, &places, &titles);
                        }
                        let at = (MARGIN + indent, self.y + SMALL);
                        self.mark(Mark::Text { at, size: SMALL, bold: false, ink: SOFT, text: line });
                        self.y += SMALL * LEAD;
                    }
                }
            }
        }
        self.y += 4.0;
    }

    fn head(&mut self, columns: &[Column], places: &[(f32, f32)], titles: &[String]) {
        self.cells(columns, places, titles, SMALL, true, SOFT);
        self.mark(Mark::Bar { at: (MARGIN, self.y + 1.0), size: (WIDE, 0.7), ink: INK });
        self.y += 3.5;
    }

    fn row(
        &mut self,
        columns: &[Column],
        places: &[(f32, f32)],
        titles: &[String],
        cells: &[String],
        sum: bool,
    ) {
        let letters = &self.letters[usize::from(sum)];
        let lines =
            cells.iter().zip(places).map(|(cell, (_, width))| letters.lines(cell, BODY, *width).len());
        let height = lines.max().unwrap_or(1) as f32 * BODY * LEAD + 2.5;
        if self.keep(height) {
            self.head(columns, places, titles);
        }
        let ink = if sum { INK } else { LINE };
        if sum || !matches!(self.pages.last().and_then(|page| page.last()), Some(Mark::Bar { .. })) {
            self.mark(Mark::Bar { at: (MARGIN, self.y), size: (WIDE, 0.35), ink });
        }
        self.y += 1.5;
        self.cells(columns, places, cells, BODY, sum, INK);
        self.y += 1.0;
    }

    /// One line of cells, as high as its highest.
    fn cells(
        &mut self,
        columns: &[Column],
        places: &[(f32, f32)],
        cells: &[String],
        size: f32,
        bold: bool,
        ink: Ink,
    ) {
        let letters = &self.letters[usize::from(bold)];
        let mut highest = 1;
        for ((column, &(x, width)), cell) in columns.iter().zip(places).zip(cells) {
            let lines = letters.lines(cell, size, width);
            highest = highest.max(lines.len());
            for (line, text) in lines.into_iter().enumerate() {
                let x = if column.right { x + width - letters.width(&text, size) } else { x };
                let at = (x, self.y + size + line as f32 * size * LEAD);
                self.mark(Mark::Text { at, size, bold, ink, text });
            }
        }
        self.y += highest as f32 * size * LEAD;
    }
}
