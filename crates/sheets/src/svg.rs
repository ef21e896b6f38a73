//! Drawings as an SVG 1.1 file (W3C Recommendation, 16 August 2011), for the clipboard, a letter or a web page.

use crate::drawing::{Drawing, Ink, Shape};
use chalkcourse_geometry::DVec2;
use chalkcourse_plan::{NOT_TO_BUILD, Standing};
use std::fmt::Write as _;

/// The longer side, in user units of 1/96 in.
const LONG: f64 = 960.0;
/// User units per point.
const POINT: f64 = 96.0 / 72.0;

/// Text size of the lines below the drawing, user units.
const LETTER: f64 = 13.0;
/// Upper bound on the average character width of common sans-serif fonts, as a share of the size (common practice, no source).
const WIDE: f64 = 0.58;
/// Minimum width, so that the lines below have room.
const LEAST: f64 = 480.0;

/// A figure for an SVG file: drawings one below the other, each to a scale of its own, and what is said below them.
pub(crate) struct Figure<'a> {
    /// What it shows, as text for screen readers.
    pub(crate) title: &'a str,
    /// Each drawing with its heading; an empty one is left out.
    pub(crate) drawings: &'a [(String, Drawing)],
    /// Lines below the drawings, such as a legend.
    pub(crate) notes: &'a [String],
    /// Cautions, printed in full.
    pub(crate) cautions: &'a [&'a str],
}

impl<'a> Figure<'a> {
    /// One drawing, without a heading.
    pub(crate) fn of(drawing: &'a [(String, Drawing); 1], cautions: &'a [&'a str]) -> Self {
        Self { title: &drawing[0].1.title, drawings: drawing, notes: &[], cautions }
    }
}

/// The figure as an SVG file. Stop findings, waivers and cautions are printed below it in full; a stop also puts "not to be
/// built" across it.
pub(crate) fn svg(figure: &Figure<'_>, standing: &Standing) -> String {
    let scale = |drawing: &Drawing| LONG / drawing.bounds.size().max_element().max(1e-6);
    let wide = |(_, drawing): &(String, Drawing)| drawing.bounds.size().x * scale(drawing);
    let width = figure.drawings.iter().map(wide).fold(LEAST, f64::max);
    let mut page = Page { out: String::new(), y: 0.0, width };
    for (heading, drawing) in figure.drawings {
        if !heading.is_empty() {
            page.y += LETTER * 0.7;
            page.line(heading, Line::Heading);
        }
        page.drawing(drawing, scale(drawing));
        let beside = drawing.beside.join("; ");
        page.lines(&beside, Line::Plain);
    }
    let drawn = page.y;
    figure.notes.iter().for_each(|note| page.lines(note, Line::Plain));
    standing.lines().iter().for_each(|line| page.lines(line, Line::Stop));
    figure.cautions.iter().for_each(|caution| page.lines(caution, Line::Plain));
    if !standing.stops.is_empty() {
        page.across(NOT_TO_BUILD.now(), drawn);
    }
    let height = page.y + LETTER * 1.3;
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width:.0}\" height=\"{height:.0}\" viewBox=\"0 0 {width:.2} \
         {height:.2}\" role=\"img\">\n<title>{}</title>\n<desc>{}</desc>\n<rect width=\"100%\" height=\"100%\" \
         fill=\"#ffffff\"/>\n{}</svg>\n",
        escaped(figure.title),
        escaped(&figure.cautions.join(" ")),
        page.out
    )
}

/// How a line below a drawing looks.
#[derive(Clone, Copy)]
enum Line {
    Plain,
    Heading,
    Stop,
}

/// The file as far as it is written.
struct Page {
    out: String,
    /// How far down it is filled, user units.
    y: f64,
    width: f64,
}

impl Page {
    /// A paragraph, wrapped.
    fn lines(&mut self, text: &str, look: Line) {
        if !text.is_empty() {
            wrapped(text, self.width - 20.0).iter().for_each(|line| self.line(line, look));
        }
    }

    fn line(&mut self, text: &str, look: Line) {
        self.y += LETTER * 1.3;
        let (weight, ink) = match look {
            Line::Plain => ("normal", color(Ink::Soft)),
            Line::Heading => ("bold", color(Ink::Dark)),
            Line::Stop => ("bold", "#961414"),
        };
        let _ = writeln!(
            self.out,
            "<text x=\"10\" y=\"{:.2}\" font-family=\"sans-serif\" font-size=\"{LETTER}\" font-weight=\"{weight}\" fill=\"{ink}\">{}</text>",
            self.y,
            escaped(text)
        );
    }

    /// Slanted words across all that is drawn, `drawn` high.
    fn across(&mut self, words: &str, drawn: f64) {
        let words = escaped(words);
        let size = (self.width / (words.chars().count() as f64 * 0.75)).min(drawn);
        let (x, y) = (self.width / 2.0, drawn / 2.0);
        let turn = -(drawn.atan2(self.width)).to_degrees() * 0.6;
        let _ = writeln!(
            self.out,
            "<text x=\"{x:.2}\" y=\"{y:.2}\" dy=\"0.35em\" font-family=\"sans-serif\" font-size=\"{size:.1}\" font-weight=\"bold\" \
             text-anchor=\"middle\" transform=\"rotate({turn:.2} {x:.2} {y:.2})\" fill=\"#961414\" fill-opacity=\"0.28\">{words}</text>"
        );
    }

    /// A drawing, at a scale in user units per metre.
    fn drawing(&mut self, drawing: &Drawing, scale: f64) {
        let top = self.y;
        let at =
            |p: DVec2| ((p.x - drawing.bounds.min.x) * scale, top + (drawing.bounds.max.y - p.y) * scale);
        let path = |points: &[DVec2]| {
            let places = points.iter().map(|&p| at(p)).map(|(x, y)| format!("{x:.2} {y:.2}"));
            format!("M{}", places.collect::<Vec<_>>().join("L"))
        };
        for shape in &drawing.shapes {
            let _ = match shape {
                Shape::Line { points, width, dashes, ink } => {
                    let dashes: Vec<String> =
                        dashes.iter().map(|dash| format!("{:.1}", f64::from(*dash) * POINT)).collect();
                    let dashes = match dashes.is_empty() {
                        true => String::new(),
                        false => format!(" stroke-dasharray=\"{}\"", dashes.join(" ")),
                    };
                    let width = f64::from(*width) * POINT;
                    let (path, color) = (path(points), color(*ink));
                    writeln!(
                        self.out,
                        "<path d=\"{path}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"{width:.2}\"{dashes}/>"
                    )
                }
                Shape::Area { ring, ink } => writeln!(
                    self.out,
                    "<path d=\"{}Z\" fill=\"{}\" stroke=\"{}\" stroke-width=\"0.8\"/>",
                    path(ring),
                    color(*ink),
                    color(Ink::Dark)
                ),
                Shape::Words { at: place, turn, size, text } => {
                    let (x, y) = at(*place);
                    let (size, turn, words) = (f64::from(*size) * POINT, -turn.to_degrees(), escaped(text));
                    // Draw a wide white outline of the letters first: SVG 1.1 has no paint order within one element.
                    let ground =
                        "fill=\"none\" stroke=\"#ffffff\" stroke-width=\"3\" stroke-linejoin=\"round\"";
                    let ink = format!("fill=\"{}\"", color(Ink::Dark));
                    [ground, &ink].into_iter().try_for_each(|paint| {
                        writeln!(
                            self.out,
                            "<text x=\"{x:.2}\" y=\"{y:.2}\" dy=\"0.35em\" font-family=\"sans-serif\" font-size=\"{size:.1}\" \
                             text-anchor=\"middle\" transform=\"rotate({turn:.2} {x:.2} {y:.2})\" {paint}>{words}</text>"
                        )
                    })
                }
            };
        }
        self.y += drawing.bounds.size().y * scale;
    }
}

/// Wraps text to a width, at spaces.
fn wrapped(text: &str, width: f64) -> Vec<String> {
    let most = ((width / (LETTER * WIDE)) as usize).max(20);
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        let room = lines.last().map_or(0, |line| line.chars().count()) + 1 + word.chars().count() <= most;
        match lines.last_mut() {
            Some(line) if line.is_empty() => line.push_str(word),
            Some(line) if room => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

fn color(ink: Ink) -> &'static str {
    match ink {
        Ink::Dark => "#14161a",
        Ink::Soft | Ink::Leader => "#54585f",
        Ink::Module => "#c9d8ea",
        Ink::Penetration => "#d9cdb8",
        Ink::Paper => "#ffffff",
    }
}

/// Escapes text for XML (XML 1.0, section 2.4); characters that XML can't hold are dropped.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            c if c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}') => out.push(' '),
            c => out.push(c),
        }
    }
    out
}
