//! Text on a picture: lines on a light ground at its foot, and large pale words across it.
//!
//! Glyphs are filled by the nonzero rule with four scanlines per pixel; their coverage is blended with what is below.

use crate::Picture;
use chalkcourse_words as words;
use ttf_parser::{Face, OutlineBuilder};

/// The text to put on a picture.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Caption {
    /// Large words across the picture; empty for none.
    pub across: String,
    /// How many sentences at the foot are bold, and all of them.
    pub strong: usize,
    /// The sentences, each starting a new line.
    pub lines: Vec<String>,
}

/// Why a caption could not be put on a picture.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CaptionError {
    /// The font could not be read.
    #[error(
        "{}",
        words::picture::THE_LETTERS_OF_THE_PICTURE.now()
    )]
    Letters,
    /// It does not fit: sentences are never cut.
    #[error("{}", words::picture::a_picture_of_pixels_cant_hold(&_0, &_1))]
    NoRoom(usize, usize),
}

/// Text size as a share of the picture's height; never below a legible minimum.
const SIZE: f32 = 1.0 / 46.0;
const LEAST: f32 = 11.0;
const LEAD: f32 = 1.3;
/// Maximum share of the picture for the foot.
const MOST: f32 = 0.55;
/// Scanlines per row of pixels.
const FINE: usize = 4;

impl Picture {
    /// The picture with a caption over its foot.
    ///
    /// # Errors
    /// [`CaptionError`] if it does not fit: no sentence is cut.
    pub fn captioned(mut self, caption: &Caption) -> Result<Self, CaptionError> {
        let plain = Type::of(dejavu::sans_condensed::regular()).ok_or(CaptionError::Letters)?;
        let bold = Type::of(dejavu::sans_condensed::bold()).ok_or(CaptionError::Letters)?;
        let [wide, high] = self.size.map(|side| side as f32);
        if !caption.across.is_empty() {
            let turn = high.atan2(wide) * 0.8;
            let size = 0.85 * wide.hypot(high) / bold.width(&caption.across, 1.0).max(0.1);
            let size = size.min(high * 0.3);
            let from = bold.width(&caption.across, size) / 2.0;
            let (sin, cos) = turn.sin_cos();
            let middle =
                [wide / 2.0 - cos * from + sin * size * 0.35, high / 2.0 + sin * from + cos * size * 0.35];
            let outline = bold.outline(&caption.across, size, middle, turn);
            self.fill(&outline, [176, 24, 24], 0.42);
        }
        let size = (high * SIZE).max(LEAST);
        let room = wide - 2.0 * size;
        let mut lines: Vec<(String, bool)> = Vec::new();
        for (nth, sentence) in caption.lines.iter().enumerate() {
            let strong = nth < caption.strong;
            let set = if strong { &bold } else { &plain }.lines(sentence, size, room);
            lines.extend(set.into_iter().map(|line| (line, strong)));
        }
        if lines.is_empty() {
            return Ok(self);
        }
        let foot = (lines.len() as f32 + 0.9) * size * LEAD;
        if foot > high * MOST
            || lines.iter().any(|(line, strong)| {
                let set = if *strong { &bold } else { &plain };
                set.width(line, size) > wide
            })
        {
            return Err(CaptionError::NoRoom(self.size[0], self.size[1]));
        }
        let top = high - foot;
        self.fill(&[vec![[0.0, top], [wide, top], [wide, high], [0.0, high]]], [255, 255, 255], 0.9);
        for (nth, (line, strong)) in lines.iter().enumerate() {
            let (set, ink) = if *strong { (&bold, [150, 20, 20]) } else { (&plain, [40, 44, 52]) };
            let at = [size, top + (nth as f32 + 1.1) * size * LEAD];
            let outline = set.outline(line, size, at, 0.0);
            self.fill(&outline, ink, 1.0);
        }
        Ok(self)
    }

    /// Fills rings, blending `share` of the colour over what is there.
    fn fill(&mut self, rings: &[Vec<[f32; 2]>], colour: [u8; 3], share: f32) {
        let [wide, high] = self.size;
        let ys = || rings.iter().flatten().map(|p| p[1]);
        let (low, up) = (ys().fold(f32::INFINITY, f32::min), ys().fold(f32::NEG_INFINITY, f32::max));
        if low >= up || !low.is_finite() {
            return;
        }
        let rows = low.max(0.0).floor() as usize..(up.max(0.0).ceil() as usize).min(high);
        let mut cover = vec![0.0_f32; wide];
        for row in rows {
            cover.iter_mut().for_each(|cover| *cover = 0.0);
            for line in 0..FINE {
                let y = row as f32 + (line as f32 + 0.5) / FINE as f32;
                for (from, to) in spans(rings, y) {
                    cover_span(&mut cover, from, to);
                }
            }
            let Some(pixels) = self.rgba.get_mut(row * wide * 4..(row + 1) * wide * 4) else { return };
            for (pixel, cover) in pixels.chunks_exact_mut(4).zip(&cover) {
                let cover = (cover / FINE as f32).min(1.0) * share;
                for (old, new) in pixel.iter_mut().zip(colour) {
                    *old = (f32::from(*old) * (1.0 - cover) + f32::from(new) * cover).round() as u8;
                }
            }
        }
    }
}

/// Where a scanline is inside rings, by the nonzero rule.
fn spans(rings: &[Vec<[f32; 2]>], y: f32) -> Vec<(f32, f32)> {
    let mut crossings: Vec<(f32, i32)> = Vec::new();
    for ring in rings {
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            let (down, up) = (a[1] <= y && b[1] > y, b[1] <= y && a[1] > y);
            if down || up {
                let x = a[0] + (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]);
                crossings.push((x, if down { 1 } else { -1 }));
            }
        }
    }
    crossings.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (mut turns, mut from, mut found) = (0, 0.0, Vec::new());
    for (x, turn) in crossings {
        if turns == 0 {
            from = x;
        }
        turns += turn;
        if turns == 0 {
            found.push((from, x));
        }
    }
    found
}

/// Adds the coverage of each pixel between two points of a row.
fn cover_span(cover: &mut [f32], from: f32, to: f32) {
    let (from, to) = (from.max(0.0), to.min(cover.len() as f32));
    if from >= to {
        return;
    }
    let (first, last) = (from.floor() as usize, (to.ceil() as usize).min(cover.len()));
    for (x, cover) in cover.iter_mut().enumerate().take(last).skip(first) {
        *cover += (to.min(x as f32 + 1.0) - from.max(x as f32)).max(0.0);
    }
}

struct Type {
    face: Face<'static>,
    em: f32,
}

impl Type {
    fn of(bytes: &'static [u8]) -> Option<Self> {
        let face = Face::parse(bytes, 0).ok()?;
        let em = f32::from(face.units_per_em());
        Some(Self { face, em })
    }

    fn advance(&self, c: char) -> f32 {
        let glyph = self.face.glyph_index(c).or_else(|| self.face.glyph_index('\u{fffd}'));
        glyph
            .and_then(|glyph| self.face.glyph_hor_advance(glyph))
            .map_or(0.6, |wide| f32::from(wide) / self.em)
    }

    fn width(&self, text: &str, size: f32) -> f32 {
        text.chars().map(|c| self.advance(c)).sum::<f32>() * size
    }

    /// Wraps a sentence into lines, at spaces.
    fn lines(&self, text: &str, size: f32, room: f32) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        for word in text.split_whitespace() {
            let joined = lines.last().map(|line| format!("{line} {word}"));
            match (joined, lines.last_mut()) {
                (Some(joined), Some(last)) if self.width(&joined, size) <= room => *last = joined,
                _ => lines.push(word.to_owned()),
            }
        }
        lines
    }

    /// The glyph rings of a text, from a point on its baseline, turned counter-clockwise from horizontal.
    fn outline(&self, text: &str, size: f32, at: [f32; 2], turn: f32) -> Vec<Vec<[f32; 2]>> {
        let scale = size / self.em;
        let (sin, cos) = turn.sin_cos();
        let mut rings = Vec::new();
        let mut along = 0.0;
        for c in text.chars() {
            if let Some(glyph) = self.face.glyph_index(c).or_else(|| self.face.glyph_index('\u{fffd}')) {
                let mut pen = Pen::default();
                self.face.outline_glyph(glyph, &mut pen);
                let place = |[x, y]: [f32; 2]| {
                    let (x, y) = (x * scale + along, y * scale);
                    [at[0] + x * cos - y * sin, at[1] - x * sin - y * cos]
                };
                rings.extend(pen.rings.into_iter().map(|ring| ring.into_iter().map(place).collect()));
            }
            along += self.advance(c) * size;
        }
        rings
    }
}

/// Traces a glyph outline; curves become chords.
#[derive(Default)]
struct Pen {
    rings: Vec<Vec<[f32; 2]>>,
}

impl Pen {
    const CHORDS: u8 = 8;

    fn to(&mut self, x: f32, y: f32) {
        if let Some(ring) = self.rings.last_mut() {
            ring.push([x, y]);
        }
    }

    fn curve(&mut self, at: impl Fn(f32, [f32; 2]) -> [f32; 2]) {
        let Some(from) = self.rings.last().and_then(|ring| ring.last()).copied() else { return };
        for step in 1..=Self::CHORDS {
            let [x, y] = at(f32::from(step) / f32::from(Self::CHORDS), from);
            self.to(x, y);
        }
    }
}

impl OutlineBuilder for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.rings.push(vec![[x, y]]);
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.to(x, y);
    }
    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.curve(|t, [x0, y0]| {
            let s = 1.0 - t;
            [s * s * x0 + 2.0 * s * t * x1 + t * t * x, s * s * y0 + 2.0 * s * t * y1 + t * t * y]
        });
    }
    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        self.curve(|t, [x0, y0]| {
            let s = 1.0 - t;
            let mix = |a: f32, b: f32, c: f32, d: f32| {
                s * s * s * a + 3.0 * s * s * t * b + 3.0 * s * t * t * c + t * t * t * d
            };
            [mix(x0, x1, x2, x), mix(y0, y1, y2, y)]
        });
    }
    fn close(&mut self) {}
}

#[cfg(test)]
mod tests {
    use super::*;

    fn white(size: [usize; 2]) -> Picture {
        let mut picture = Picture::default();
        (picture.size, picture.rgba) = (size, vec![255; size[0] * size[1] * 4]);
        picture
    }

    fn caption(lines: &[&str]) -> Caption {
        Caption {
            across: String::new(),
            strong: 1,
            lines: lines.iter().map(|line| (*line).to_owned()).collect(),
        }
    }

    #[test]
    fn spans_are_where_rings_are() {
        let square = |x: f32, wide: f32| vec![[x, 0.0], [x + wide, 0.0], [x + wide, 4.0], [x, 4.0]];
        assert_eq!(spans(&[square(1.0, 2.0), square(5.0, 1.0)], 1.5), [(1.0, 3.0), (5.0, 6.0)]);
        let hole: Vec<[f32; 2]> = square(1.5, 0.5).into_iter().rev().collect();
        assert_eq!(spans(&[square(1.0, 2.0), hole], 1.5), [(1.0, 1.5), (2.0, 3.0)]);
        let mut cover = vec![0.0; 3];
        cover_span(&mut cover, 0.25, 2.5);
        assert_eq!(cover, [0.75, 1.0, 0.5]);
    }

    #[test]
    fn captions_fit_in_full_or_the_picture_is_refused() {
        let long = "Planning aid only. ".repeat(30);
        let set =
            white([640, 400]).captioned(&caption(&["NOT TO BUILD: a finding", "Falls can kill."])).unwrap();
        let dark = |row: usize| {
            set.rgba[row * 640 * 4..(row + 1) * 640 * 4].chunks(4).filter(|p| p[0] < 200).count()
        };
        assert!((0..300).all(|row| dark(row) == 0), "nothing but the foot is written on");
        assert!((360..400).map(dark).sum::<usize>() > 200);
        assert_eq!(
            white([120, 60]).captioned(&caption(&[&long])).unwrap_err(),
            CaptionError::NoRoom(120, 60)
        );
        let across = Caption { across: "NOT TO BUILD".into(), ..Caption::default() };
        let set = white([640, 400]).captioned(&across).unwrap();
        let red = set.rgba.chunks(4).filter(|p| p[0] > p[1]).count();
        assert!(red > 640 * 400 / 50 && red < 640 * 400 / 3, "{red}");
    }
}
