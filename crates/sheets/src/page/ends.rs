//! Page header and footer: stop findings, the caution, the page number.

use super::{BODY, GAP, LEAD, LINE, MARGIN, Mark, SMALL, SOFT, STOP, Sheet};
use crate::letters::Letters;
use chalkcourse_plan::NOT_TO_BUILD;
use chalkcourse_words as words;

/// Gap between page content and footer.
const FOOT: f32 = 18.0;
/// Space below the last footer line.
const UNDER_FOOT: f32 = 25.0;

/// Page header of a job that a finding stops.
pub(super) struct Head {
    lines: Vec<String>,
    /// Lower end, points from the top of the paper.
    pub(super) bottom: f32,
    wide: f32,
    across: bool,
}

impl Head {
    pub(super) fn of(sheet: &Sheet, letters: &[Letters; 2]) -> Self {
        let stops = &sheet.standing.stops;
        let Some(first) = stops.first() else {
            return Self { lines: Vec::new(), bottom: MARGIN, wide: sheet.wide(), across: false };
        };
        let mut text = format!("{}: {first}", NOT_TO_BUILD.now());
        match stops.len() - 1 {
            0 => {}
            1 => {
                text.push_str(words::sheets::ONE_MORE_FINDING_IS_ON.now());
            }
            more => text.push_str(&words::sheets::more_findings_are_on_page(more)),
        }
        let lines = letters[1].lines(&text, BODY, sheet.wide() - 2.0 * GAP);
        let bottom = MARGIN - 14.0 + lines.len() as f32 * BODY * LEAD + 14.0;
        Self { lines, bottom, wide: sheet.wide(), across: true }
    }

    pub(super) fn marks(&self) -> Vec<Mark> {
        if !self.across {
            return Vec::new();
        }
        let (top, high) = (MARGIN - 14.0, self.lines.len() as f32 * BODY * LEAD);
        let mut marks = vec![Mark::Across(NOT_TO_BUILD.now().to_owned())];
        marks.push(Mark::Bar { at: (MARGIN, top - 4.0), size: (self.wide, 1.4), ink: STOP });
        marks.push(Mark::Bar { at: (MARGIN, top + high + 4.0), size: (self.wide, 1.4), ink: STOP });
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

/// The caution in the footer of each page, in full.
pub(super) struct Foot {
    lines: Vec<String>,
    /// Where page content ends, points from the top of the paper.
    pub(super) top: f32,
    wide: f32,
}

impl Foot {
    pub(super) fn of(sheet: &Sheet, letters: &[Letters; 2]) -> Self {
        // Reserve room for the widest page number.
        let room = letters[0].width(&number_of(9999, 9999), SMALL) + 2.0 * GAP;
        let lines = letters[0].lines(&sheet.foot, SMALL, sheet.wide() - room);
        let high = lines.len().max(1) as f32 * SMALL * LEAD;
        Self { lines, top: sheet.paper().1 - UNDER_FOOT - high - FOOT, wide: sheet.wide() }
    }

    pub(super) fn marks(&self, letters: &[Letters; 2], page: usize, of: usize) -> Vec<Mark> {
        let number = number_of(page, of);
        let mut marks = vec![Mark::Bar { at: (MARGIN, self.top + 8.0), size: (self.wide, 0.5), ink: LINE }];
        let text = |x: f32, line: usize, text: String| Mark::Text {
            at: (x, self.top + FOOT + line as f32 * SMALL * LEAD),
            size: SMALL,
            bold: false,
            ink: SOFT,
            text,
        };
        marks.push(text(MARGIN + self.wide - letters[0].width(&number, SMALL), 0, number));
        marks.extend(self.lines.iter().enumerate().map(|(line, words)| text(MARGIN, line, words.clone())));
        marks
    }
}

fn number_of(page: usize, of: usize) -> String {
    words::sheets::page_of(&page, &of)
}
