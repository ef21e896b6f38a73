//! Text measurement and line breaking.

use crate::SheetError;
use krilla::text::Font;
use std::collections::HashMap;
use ttf_parser::Face;

/// One weight of the typeface.
pub(crate) struct Letters {
    pub(crate) font: Font,
    /// Advance widths as shares of the size, by character; a missing character has no glyph.
    widths: HashMap<char, f32>,
}

impl Letters {
    /// The typeface of all sheets, regular and bold: DejaVu Sans Condensed, which covers the alphabets of all of Europe.
    pub(crate) fn both() -> Result<[Self; 2], SheetError> {
        let plain = Self::new(dejavu::sans_condensed::regular()).ok_or(SheetError::Letters)?;
        let bold = Self::new(dejavu::sans_condensed::bold()).ok_or(SheetError::Letters)?;
        Ok([plain, bold])
    }

    fn new(bytes: &'static [u8]) -> Option<Self> {
        let face = Face::parse(bytes, 0).ok()?;
        let em = f32::from(face.units_per_em());
        let mut widths = HashMap::new();
        for table in face.tables().cmap?.subtables.into_iter().filter(ttf_parser::cmap::Subtable::is_unicode)
        {
            table.codepoints(|code| {
                let Some(c) = char::from_u32(code) else { return };
                if let Some(glyph) = face.glyph_index(c)
                    && let Some(advance) = face.glyph_hor_advance(glyph)
                {
                    widths.insert(c, f32::from(advance) / em);
                }
            });
        }
        Some(Self { font: Font::new(bytes.into(), 0)?, widths })
    }

    /// The text with a substitute for missing glyphs, and spaces for line breaks.
    pub(crate) fn shown(&self, text: &str) -> String {
        let form = |c: char| match c {
            c if c.is_control() => ' ',
            c if self.widths.contains_key(&c) => c,
            _ => '\u{fffd}',
        };
        text.chars().map(form).collect()
    }

    /// Text width, points.
    pub(crate) fn width(&self, text: &str, size: f32) -> f32 {
        text.chars().map(|c| self.widths.get(&c).copied().unwrap_or(0.6)).sum::<f32>() * size
    }

    /// Wraps text to `room` points: at spaces, or within a word that is wider than that by itself.
    pub(crate) fn lines(&self, text: &str, size: f32, room: f32) -> Vec<String> {
        let mut lines = vec![String::new()];
        for word in self.shown(text).split_whitespace() {
            let last = lines.last().map_or("", String::as_str);
            let joined = if last.is_empty() { word.to_owned() } else { format!("{last} {word}") };
            if self.width(&joined, size) <= room {
                lines.pop();
                lines.push(joined);
                continue;
            }
            if last.is_empty() {
                lines.pop();
            }
            let mut piece = String::new();
            for c in word.chars() {
                piece.push(c);
                if self.width(&piece, size) > room && piece.chars().count() > 1 {
                    piece.pop();
                    lines.push(std::mem::replace(&mut piece, c.to_string()));
                }
            }
            lines.push(piece);
        }
        lines
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_no_wider_than_their_room_and_lose_nothing() {
        let [plain, _] = Letters::both().unwrap();
        let text =
            "Head flashing, 10 ft, with aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa end\nlaps é ł Ж";
        for room in [20.0, 47.0, 120.0, 1000.0] {
            let lines = plain.lines(text, 8.0, room);
            assert!(lines.iter().all(|line| plain.width(line, 8.0) <= room), "{lines:?}");
            let kept = |text: &str| text.chars().filter(|c| !c.is_whitespace()).collect::<String>();
            assert_eq!(kept(&lines.concat()), kept(text));
        }
        assert_eq!(plain.lines("", 8.0, 50.0), vec![String::new()]);
    }

    #[test]
    fn missing_glyphs_are_shown() {
        let [plain, bold] = Letters::both().unwrap();
        assert_eq!(plain.shown("a\u{7}b"), "a b");
        assert_eq!(plain.shown("屋根 ok"), "\u{fffd}\u{fffd} ok");
        assert!(plain.width("\u{fffd}", 10.0) > 0.0 && bold.width("W", 10.0) > plain.width("i", 10.0));
    }
}
