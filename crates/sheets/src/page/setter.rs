//! Page breaking: places the parts of a sheet on pages.

use super::drawn::scaled;
use super::{BODY, Column, GAP, INK, Ink, LEAD, LINE, MARGIN, Mark, Part, Row, SMALL, SOFT, Sheet, StickOn};
use crate::drawing::Drawing;
use crate::letters::Letters;

/// Lays out a sheet page by page.
pub(super) struct Setter<'a> {
    letters: &'a [Letters; 2],
    pages: Vec<Vec<Mark>>,
    /// How far down the page is filled, points from the top of the paper.
    y: f32,
    /// Where page content starts and ends.
    top: f32,
    bottom: f32,
    /// Width between the margins.
    wide: f32,
}

impl<'a> Setter<'a> {
    pub(super) fn set(sheet: &Sheet, letters: &'a [Letters; 2], top: f32, bottom: f32) -> Vec<Vec<Mark>> {
        let mut setter = Self { letters, pages: vec![Vec::new()], y: top, top, bottom, wide: sheet.wide() };
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
                    // Keep it with the start of what follows; a drawing is never split.
                    let follows = match sheet.parts.get(nth + 1) {
                        Some(Part::Drawing { drawing, height }) => {
                            scaled(drawing, setter.wide, *height).1 + 40.0
                        }
                        // A label is cut out whole, with where it goes above it.
                        Some(Part::Label(_)) => 190.0,
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
                Part::Label(label) => setter.label(label),
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

    /// Starts a new page if less than this is left; returns whether it did.
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
        for line in letters.lines(text, size, self.wide - indent) {
            self.keep(size * LEAD);
            let at = (MARGIN + indent, self.y + size);
            self.mark(Mark::Text { at, size, bold, ink, text: line });
            self.y += size * LEAD;
        }
    }

    fn caution(&mut self, text: &str) {
        let indent = 10.0;
        let lines = self.letters[1].lines(text, BODY, self.wide - indent).len() as f32;
        let height = lines * BODY * LEAD;
        self.y += 4.0;
        self.keep(height);
        self.mark(Mark::Bar { at: (MARGIN, self.y), size: (3.0, height + 2.0), ink: INK });
        self.words(text, BODY, true, INK, indent);
        self.y += 6.0;
    }

    fn drawing(&mut self, drawing: &Drawing, height: f32) {
        let size = drawing.bounds.size().as_vec2();
        let (scale, height) = scaled(drawing, self.wide, height);
        self.keep(height + 4.0);
        let at = (MARGIN + (self.wide - size.x * scale) / 2.0, self.y + 2.0);
        self.mark(Mark::Drawing { at, scale, drawing: drawing.clone() });
        self.y += height + 6.0;
    }

    /// A label, whole on one page.
    fn label(&mut self, label: &StickOn) {
        const PADDING: f32 = 9.0;
        let room = self.wide - 2.0 * PADDING;
        let mut lines: Vec<(String, f32)> = Vec::new();
        for (text, size) in [(&label.title, label.sizes.0), (&label.text, label.sizes.1)] {
            let wrapped = self.letters[1].lines(text, size, room).into_iter();
            lines.extend(wrapped.filter(|line| !line.is_empty()).map(|line| (line, size)));
        }
        let height = lines.iter().map(|(_, size)| size * LEAD).sum::<f32>() + 2.0 * PADDING;
        self.keep(height);
        let (at, size) = ((MARGIN, self.y), (self.wide, height));
        self.mark(Mark::Bar { at, size, ink: INK });
        let (at, size) = ((at.0 + 0.7, at.1 + 0.7), (size.0 - 1.4, size.1 - 1.4));
        self.mark(Mark::Bar { at, size, ink: label.ground });
        let mut y = self.y + PADDING;
        for (text, size) in lines {
            let x = MARGIN + (self.wide - self.letters[1].width(&text, size)) / 2.0;
            self.mark(Mark::Text { at: (x, y + size), size, bold: true, ink: label.ink, text });
            y += size * LEAD;
        }
        self.y += height + 6.0;
    }

    fn table(&mut self, columns: &[Column], rows: &[Row]) {
        let shares: f32 = columns.iter().map(|column| column.share).sum();
        let room = self.wide - GAP * columns.len().saturating_sub(1) as f32;
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
                    let lines = self.letters[0].lines(text, SMALL, self.wide - indent);
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
        self.mark(Mark::Bar { at: (MARGIN, self.y + 1.0), size: (self.wide, 0.7), ink: INK });
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
            self.mark(Mark::Bar { at: (MARGIN, self.y), size: (self.wide, 0.35), ink });
        }
        self.y += 1.5;
        self.cells(columns, places, cells, BODY, sum, INK);
        self.y += 1.0;
    }

    /// One row of cells, as high as its tallest.
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
